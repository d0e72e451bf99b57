package bolewalk.app.screens.handover

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.Gaps
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Sentences
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.HandOverPage

/** What is handed over: what was looked at, what was not, and what can be written. */
fun LazyListScope.handOverPage(page: HandOverPage, hand: Hand, placed: Placed) {
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.heading(this, "gaps", page.gaps.isEmpty())
    part("gaps") { Gaps(page.gaps, hand) }
    placed.heading(this, "cautions", page.cautions.isEmpty())
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}
