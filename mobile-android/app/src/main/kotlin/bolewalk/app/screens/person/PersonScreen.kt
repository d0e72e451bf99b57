package bolewalk.app.screens.person

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.OfferRow
import bolewalk.app.look.RecordWords
import bolewalk.app.look.Sign
import bolewalk.app.look.SignMark
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CommandKind
import bolewalk.book.Offer
import bolewalk.book.PageRecord
import bolewalk.book.PersonPage
import bolewalk.book.TrainingState

/** A person: the skills in training order, the knots by what they are for, the log of climbs. */
fun LazyListScope.personPage(page: PersonPage, hand: Hand, placed: Placed) {
    records("unsettled", page.unsettled, hand)
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offer(this, CommandKind.CHANGE_PERSON)
    part("training") { Lead(page.training) }
    placed.heading(this, "skills", page.skills.isEmpty())
    page.skills.forEach { one -> item("skill." + one.skill, "skill") { TrainingCard("skill." + one.skill, one.words, one.state, one.detail, one.signOffs, one.offers, hand) } }
    part("knots") { Lead(page.knotsLead) }
    placed.heading(this, "knots", page.knots.isEmpty())
    page.knots.forEach { one -> item("knot." + one.knot, "skill") { TrainingCard("knot." + one.knot, one.words, one.state, one.detail, one.signOffs, one.offers, hand) } }
    part("climbs") { Lead(page.climbsLead) }
    placed.heading(this, "climbs", page.climbs.isEmpty())
    records("climb", page.climbs, hand)
    placed.rest(this)
}

/** What is trained: how it stands, by a sign and in words, and who confirmed it. */
@Composable
private fun TrainingCard(tag: String, words: String, state: TrainingState, detail: String, signOffs: List<PageRecord>, offers: List<Offer>, hand: Hand) =
    Card(Modifier.testTag("record.$tag")) {
        Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
            signOf(state)?.let { SignMark(it) }
            Text(words, style = MaterialTheme.typography.titleMedium)
        }
        if (detail.isNotEmpty()) Text(detail, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
        OfferRow(offers, hand)
        signOffs.forEach {
            if (it.words != detail) RecordWords(it.words, it.detail)
            OfferRow(it.offers, hand)
        }
    }

private fun signOf(state: TrainingState): Sign? = when (state) {
    TrainingState.CONFIRMED -> Sign.CHOSEN
    TrainingState.LAPSED -> Sign.DOUBT
    TrainingState.NEXT -> Sign.GO
    TrainingState.LATER -> null
}
