package bolewalk.app.screens.compare

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.WayRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.ComparePage
import bolewalk.book.ComparedFinding
import bolewalk.book.ComparedLine

/** This look beside the last one: what changed by more than the readings can tell, and what became of each finding. */
fun LazyListScope.comparePage(page: ComparePage, hand: Hand, placed: Placed) {
    part("days") { Lead(page.days) }
    placed.heading(this, "lines", page.lines.isEmpty())
    page.lines.forEach { line -> item("line." + line.id, "line") { LineCard(line, page) } }
    placed.heading(this, "findings", page.findings.isEmpty())
    page.findings.forEach { finding -> item("finding." + finding.id, "finding") { FindingCard(finding, page, hand) } }
}

@Composable
private fun LineCard(line: ComparedLine, page: ComparePage) = Card {
    Text(line.label, style = MaterialTheme.typography.titleMedium)
    ThenAndNow(page, line.then, line.now)
    Became(line.change)
}

@Composable
private fun FindingCard(finding: ComparedFinding, page: ComparePage, hand: Hand) = Card(Modifier.testTag("record." + finding.id)) {
    WayRow(finding.goTo, hand) {
        Column(verticalArrangement = Arrangement.spacedBy(4.dp)) {
            Text(finding.words, style = MaterialTheme.typography.titleMedium)
            ThenAndNow(page, finding.then, finding.now)
            Became(finding.change)
        }
    }
}

/** What stood on either day, each under its day. */
@Composable
private fun ThenAndNow(page: ComparePage, then: String, now: String) {
    OnDay(page.then, then)
    OnDay(page.now, now)
}

@Composable
private fun OnDay(day: String, words: String) {
    if (words.isEmpty()) return
    Column {
        Text(day, style = MaterialTheme.typography.labelMedium, color = LocalPalette.current.quietInk)
        Text(words, style = MaterialTheme.typography.bodyLarge)
    }
}

/** What became of it: better, worse, new, gone, the same, in the core's words. */
@Composable
private fun Became(words: String) {
    if (words.isNotEmpty()) Text(words, style = MaterialTheme.typography.titleSmall)
}
