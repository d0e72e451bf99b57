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
    placed.heading(this, "reasons", page.reasons.isEmpty())
    part("reasons") { Sentences(page.reasons, FontWeight.SemiBold) }
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.heading(this, "margins", page.margins.isEmpty())
    part("margins") { Lines(page.margins) }
    placed.heading(this, "cautions", page.cautions.isEmpty())
    part("cautions") { Sentences(page.cautions) }
    placed.rest(this)
}
