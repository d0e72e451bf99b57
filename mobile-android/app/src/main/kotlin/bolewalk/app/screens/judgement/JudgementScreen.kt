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
import bolewalk.app.screens.records
import bolewalk.book.DrawingAddress
import bolewalk.book.JudgementPage
import bolewalk.book.ScoreOfTree
import bolewalk.book.WorkingOfTree
import bolewalk.book.ZoneOfTree

/** A judgement: its reasons first; the number stands small, and the working last. */
fun LazyListScope.judgementPage(page: JudgementPage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    part("day") { Sentences(listOf(page.day).filter { it.isNotEmpty() }) }
    placed.heading(this, "stops", page.stops.isEmpty())
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    placed.heading(this, "gaps", page.gaps.isEmpty())
    part("gaps") { Sentences(page.gaps) }
    placed.heading(this, "next_measurement", page.nextMeasurement == null)
    records("next", listOfNotNull(page.nextMeasurement), hand)
    placed.heading(this, "refer_caps", page.referCaps.isEmpty())
    part("refer") { Sentences(page.referCaps, FontWeight.SemiBold) }
    placed.heading(this, "limits", page.limits.isEmpty())
    part("limits") { Sentences(page.limits) }
    placed.heading(this, "remarks", page.remarks.isEmpty())
    part("remarks") { Sentences(page.remarks) }
    placed.heading(this, "score", page.score == null)
    page.score?.let { part("score") { ScoreCard(it) } }
    placed.heading(this, "signed", page.signed.isEmpty())
    part("signed") { Sentences(page.signed) }
    placed.heading(this, "climbers", page.climbers.isEmpty())
    part("climbers") { Lines(page.climbers) }
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    drawing(DrawingAddress.TreeZones(page.id), page, hand, "zones")
    placed.heading(this, "zones", page.zones.isEmpty())
    page.zones.forEachIndexed { index, zone -> item("zone.$index", "zone") { ZoneCard(zone) } }
    placed.heading(this, "margins", page.margins.isEmpty())
    part("margins") { Lines(page.margins) }
    placed.heading(this, "cautions", page.cautions.isEmpty())
    part("cautions") { Sentences(page.cautions) }
    placed.heading(this, "working", page.working.isEmpty())
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
    Text(score.words, style = MaterialTheme.typography.bodyLarge)
    score.about.forEach { Text(it, style = MaterialTheme.typography.bodyMedium) }
    Text(score.lost, style = MaterialTheme.typography.titleSmall)
    score.shares.forEach { LineText(it) }
}

@Composable
private fun WorkingCard(working: WorkingOfTree) = Card {
    Text(working.what, style = MaterialTheme.typography.titleSmall)
    listOf(working.formula, working.inputs, working.result, working.source).filter { it.isNotEmpty() }.forEach { Quiet(it) }
}

@Composable
private fun Quiet(words: String) = Text(words, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
