package bolewalk.app.screens.handover

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Sentences
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.HandOverPage

/** What is handed over: what was looked at, what was not, and what can be written. */
fun LazyListScope.handOverPage(page: HandOverPage, hand: Hand, placed: Placed) {
    part("lines") { Lines(page.lines) }
    part("gaps") { Sentences(page.gaps) }
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}
