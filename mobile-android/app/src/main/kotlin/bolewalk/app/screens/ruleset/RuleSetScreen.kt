package bolewalk.app.screens.ruleset

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Heading
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.OfferRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.RuleOfSet
import bolewalk.book.RuleSetPage

/** A rule set: every distance and factor with its source; house values can be changed. */
fun LazyListScope.ruleSetPage(page: RuleSetPage, hand: Hand, placed: Placed) {
    part("lead") { Lead(page.lead) }
    records("unsettled", page.unsettled, hand)
    placed.heading(this, "groups", page.groups.isEmpty())
    page.groups.forEach { group ->
        part("group." + group.id) { Heading(group.words) }
        group.rows.forEach { row -> item("rule." + row.id, "rule") { RuleCard(row, hand) } }
    }
    placed.rest(this)
}

@Composable
private fun RuleCard(rule: RuleOfSet, hand: Hand) = Card(Modifier.testTag("record." + rule.id)) {
    Text(rule.words, style = MaterialTheme.typography.bodyLarge)
    Text(rule.value, style = MaterialTheme.typography.titleMedium)
    if (rule.isChanged) Text(rule.changed, style = MaterialTheme.typography.bodyMedium, fontWeight = FontWeight.SemiBold)
    listOf(rule.source, rule.range).filter { it.isNotEmpty() }.forEach {
        Text(it, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
    }
    OfferRow(rule.offers, hand)
}
