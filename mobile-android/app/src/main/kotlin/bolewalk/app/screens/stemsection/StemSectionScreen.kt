package bolewalk.app.screens.stemsection

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.OfferRow
import bolewalk.app.look.Sentences
import bolewalk.app.screens.Placed
import bolewalk.app.screens.drawing
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.ClockPoint
import bolewalk.book.CommandKind
import bolewalk.book.StemSectionPage

/** A stem section: drawn anew after each reading; the mallet clock, a tap a point. */
fun LazyListScope.stemSectionPage(page: StemSectionPage, hand: Hand, placed: Placed) {
    drawing(page.drawing, page, hand, "section")
    part("weakest") { Sentences(listOf(page.weakest).filter { it.isNotEmpty() }, FontWeight.SemiBold) }
    placed.heading(this, "clock", page.clock.isEmpty())
    page.clock.forEach { point -> item("clock." + point.bearingDeg, "clock") { PointCard(point, hand) } }
    placed.heading(this, "readings", page.readings.isEmpty())
    records("reading", page.readings, hand)
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offer(this, CommandKind.CHANGE_SECTION)
    placed.heading(this, "cautions", page.cautions.isEmpty())
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}

@Composable
private fun PointCard(point: ClockPoint, hand: Hand) = Card(Modifier.testTag("record.clock." + point.bearingDeg)) {
    Text(listOf(point.words, point.soundWords).filter { it.isNotEmpty() }.joinToString(" · "), style = MaterialTheme.typography.titleMedium)
    OfferRow(point.offers, hand)
}
