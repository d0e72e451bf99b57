package bolewalk.app.screens.judgement

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.LineText
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Notices
import bolewalk.app.look.Sentences
import bolewalk.app.screens.drawing
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.DrawingAddress
import bolewalk.book.JudgementPage
import bolewalk.book.ScoreOfTree
import bolewalk.book.WorkingOfTree
import bolewalk.book.ZoneOfTree

/** A judgement: its reasons first; the number stands small, and the working last. */
fun LazyListScope.judgementPage(page: JudgementPage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    part("day") { Sentences(listOf(page.day).filter { it.isNotEmpty() }) }
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    part("gaps") { Sentences(page.gaps) }
    part("refer") { Sentences(page.referCaps, FontWeight.SemiBold) }
    part("limits") { Sentences(page.limits) }
    part("remarks") { Sentences(page.remarks) }
    part("climbers") { Lines(page.climbers) }
    part("lines") { Lines(page.lines) }
    drawing(DrawingAddress.TreeZones(page.id), page, hand, "zones")
    page.zones.forEachIndexed { index, zone -> item("zone.$index", "zone") { ZoneCard(zone) } }
    page.score?.let { part("score") { ScoreCard(it) } }
    part("next") { Sentences(listOf(page.nextMeasurement).filter { it.isNotEmpty() }) }
    part("margins") { Lines(page.margins) }
    part("cautions") { Sentences(page.cautions) }
    page.working.forEachIndexed { index, working -> item("working.$index", "working") { WorkingCard(working) } }
    placed.rest(this)
}

@Composable
private fun ZoneCard(zone: ZoneOfTree) = Card {
    Text(zone.words, style = if (zone.planned) MaterialTheme.typography.titleMedium else MaterialTheme.typography.titleSmall)
    zone.distances.forEach { Text(it, style = MaterialTheme.typography.bodyLarge) }
    (zone.inside + zone.gaps).forEach { Text(it, style = MaterialTheme.typography.bodyMedium, fontWeight = FontWeight.SemiBold) }
    listOf(zone.rule, zone.source).filter { it.isNotEmpty() }.forEach { Quiet(it) }
}

@Composable
private fun ScoreCard(score: ScoreOfTree) = Card {
    Text(score.words, style = MaterialTheme.typography.bodyMedium)
    score.shares.forEach { LineText(it) }
}

@Composable
private fun WorkingCard(working: WorkingOfTree) = Card {
    Text(working.what, style = MaterialTheme.typography.titleSmall)
    listOf(working.formula, working.inputs, working.result, working.source).filter { it.isNotEmpty() }.forEach { Quiet(it) }
}

@Composable
private fun Quiet(words: String) = Text(words, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
