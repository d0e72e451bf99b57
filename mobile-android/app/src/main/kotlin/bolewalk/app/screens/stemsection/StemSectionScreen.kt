package bolewalk.app.screens.stemsection

import androidx.compose.foundation.ExperimentalFoundationApi
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Sentences
import bolewalk.app.look.SmallDrawing
import bolewalk.app.screens.Placed
import bolewalk.app.screens.drawing
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CommandKind
import bolewalk.book.Drawing
import bolewalk.book.StemSectionPage

/** A stem section: drawn anew after each reading; the mallet clock, a tap a point. */
fun LazyListScope.stemSectionPage(page: StemSectionPage, hand: Hand, placed: Placed) {
    drawing(page.drawing, page, hand, "section")
    part("weakest") { Sentences(listOf(page.weakest).filter { it.isNotEmpty() }, FontWeight.SemiBold) }
    placed.heading(this, "clock", page.clock.isEmpty())
    sectionAbove(page, hand)
    part("clock") { MalletClock(page.clock, hand) }
    placed.heading(this, "readings", page.readings.isEmpty())
    records("reading", page.readings, hand)
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offer(this, CommandKind.CHANGE_SECTION)
    placed.heading(this, "cautions", page.cautions.isEmpty())
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}

/** With large letters the clock is longer than the screen: the section stays in sight above it. */
@OptIn(ExperimentalFoundationApi::class)
private fun LazyListScope.sectionAbove(page: StemSectionPage, hand: Hand) = stickyHeader("above", "drawing") {
    if (lettersAreLarge()) {
        val drawing by produceState<Drawing?>(null, page) { value = hand.drawing(page.drawing, 0, USUAL_LETTERS_PCT) }
        Box(Modifier.fillMaxWidth().background(LocalPalette.current.ground).testTag("above")) { drawing?.let { SmallDrawing(it, "section.above") } }
    }
}

private const val USUAL_LETTERS_PCT = 100
