package bolewalk.app.look

import androidx.compose.runtime.staticCompositionLocalOf
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.EntryValue
import bolewalk.book.Offer
import bolewalk.book.PageAddress

/** What a finger on a screen can do. */
class Hand(
    /** Goes to a page. */
    val open: (PageAddress) -> Unit,
    /** Takes an offer, with what a tile already says. */
    val take: (Offer, Map<String, EntryValue>) -> Unit,
    /** A drawing, by zoom step; nothing where there is none to be drawn. */
    val drawing: suspend (DrawingAddress, Int) -> Drawing?,
)

/** Says that another app is about to give something for an input, at a path. */
val LocalAwait = staticCompositionLocalOf<(input: String, path: String) -> Unit> { { _, _ -> } }
