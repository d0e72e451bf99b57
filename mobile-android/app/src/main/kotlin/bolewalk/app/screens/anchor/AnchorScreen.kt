package bolewalk.app.screens.anchor

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Sentences
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.AnchorPage

/** An anchor: what the judgement says of it, its readings, its margins. */
fun LazyListScope.anchorPage(page: AnchorPage, hand: Hand, placed: Placed) {
    part("reasons") { Sentences(page.reasons, FontWeight.SemiBold) }
    part("lines") { Lines(page.lines) }
    part("margins") { Lines(page.margins) }
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}
