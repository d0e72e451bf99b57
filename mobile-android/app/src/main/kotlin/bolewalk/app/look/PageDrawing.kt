package bolewalk.app.look

import androidx.compose.foundation.horizontalScroll
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableIntStateOf
import androidx.compose.runtime.produceState
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.runtime.withFrameNanos
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import bolewalk.app.field.DrawnSize
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.PlanOverlay
import bolewalk.book.Spot
import kotlin.math.roundToInt

/** The zoom steps that a screen offers; each doubles the sides. */
private const val STEPS = 3

/** A drawing of a page, asked for anew when the [page] is another. */
@Composable
fun PageDrawing(which: DrawingAddress, page: Any, hand: Hand, tag: String) =
    ZoomedDrawing(tag, page to which, { size -> hand.drawing(which, size.zoom, size.lettersPct) })

/** A drawing in a frame of its own, asked for anew when [changed] is another. Larger ones are moved about in the frame.
 *  [over] is laid over it; a finger on it is told to [tap]. */
@Composable
internal fun ZoomedDrawing(
    tag: String,
    changed: Any,
    ask: suspend (DrawnSize) -> Drawing?,
    over: @Composable (DrawnSize) -> PlanOverlay? = { null },
    tap: ((DrawnSize, at: Spot) -> Unit)? = null,
) {
    var zoom by rememberSaveable(tag) { mutableIntStateOf(0) }
    val size = DrawnSize(zoom, (LocalDensity.current.fontScale * 100).roundToInt())
    val drawing by produceState<Drawing?>(null, changed, size) { value = ask(size) }
    val now = drawing ?: return
    val laid = over(size)
    Card {
        Frame(now, zoom) { DrawingCanvas(now.under(laid), tag, tap?.let { told -> { at -> told(size, at) } }) }
        if (laid != null) LegendRows(laid.legend, laid.symbols)
        DrawingLegend(now, tag)
        Row(horizontalArrangement = Arrangement.spacedBy(Spacing.apart)) {
            ZoomTile(tag, Sign.LESS, LocalWords.current.smaller, zoom > 0) { zoom -= 1 }
            ZoomTile(tag, Sign.MORE, LocalWords.current.larger, zoom < STEPS - 1) { zoom += 1 }
        }
    }
}

/** A window onto a drawing, as high as the whole of it at the first step; what was in its middle stays there. */
@Composable
private fun Frame(drawing: Drawing, zoom: Int, content: @Composable () -> Unit) = BoxWithConstraints {
    val (across, down) = rememberScrollState() to rememberScrollState()
    val (wide, high) = maxWidth to maxWidth / sidesOf(drawing)
    val (wideAt, highAt) = with(LocalDensity.current) { wide.toPx() to high.toPx() }
    var before by rememberSaveable { mutableIntStateOf(zoom) }
    LaunchedEffect(zoom) {
        if (before == zoom) return@LaunchedEffect
        val times = if (zoom > before) (1 shl (zoom - before)).toFloat() else 1f / (1 shl (before - zoom))
        fun kept(at: Int, side: Float) = ((at + side / 2) * times - side / 2).roundToInt()
        val (left, top) = kept(across.value, wideAt) to kept(down.value, highAt)
        before = zoom
        // Not before the larger drawing lies there.
        repeat(2) { withFrameNanos {} }
        across.scrollTo(left)
        down.scrollTo(top)
    }
    // The whole of it is not held: a finger on it moves the page.
    val moved = if (zoom > 0) Modifier.horizontalScroll(across).verticalScroll(down) else Modifier
    Box(Modifier.height(high).then(moved)) {
        Box(Modifier.width(wide * (1 shl zoom))) { content() }
    }
}

/** The drawing with what is laid over it. */
@Composable
private fun Drawing.under(over: PlanOverlay?): Drawing = remember(this, over) {
    if (over == null) return@remember this
    copy(marks = marks + over.marks, symbols = (symbols + over.symbols).distinctBy { it.symbol })
}

@Composable
private fun ZoomTile(tag: String, sign: Sign, words: String, enabled: Boolean, onClick: () -> Unit) = ActionTile(
    "", "$tag/${sign.name.lowercase()}", Modifier.semantics { contentDescription = words }, Weight.QUIET, enabled, sign, onClick,
)
