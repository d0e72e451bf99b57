package bolewalk.app.look

import androidx.compose.foundation.horizontalScroll
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableIntStateOf
import androidx.compose.runtime.produceState
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import kotlin.math.roundToInt

/** The zoom steps that a screen offers; each doubles the sides. */
private const val STEPS = 3

/** A drawing of a page, asked for anew when the [page] is another. Larger ones are moved sideways. */
@Composable
fun PageDrawing(which: DrawingAddress, page: Any, hand: Hand, tag: String) {
    var zoom by rememberSaveable(tag) { mutableIntStateOf(0) }
    val lettersPct = (LocalDensity.current.fontScale * 100).roundToInt()
    val drawing by produceState<Drawing?>(null, which, zoom, page, lettersPct) { value = hand.drawing(which, zoom, lettersPct) }
    val now = drawing ?: return
    Card {
        BoxWithConstraints {
            val whole = maxWidth
            Box(Modifier.horizontalScroll(rememberScrollState())) {
                Box(Modifier.width(whole * (1 shl zoom))) { DrawingCanvas(now, tag) }
            }
        }
        Row(horizontalArrangement = Arrangement.spacedBy(Spacing.apart)) {
            ZoomTile(tag, Sign.LESS, LocalWords.current.smaller, zoom > 0) { zoom -= 1 }
            ZoomTile(tag, Sign.MORE, LocalWords.current.larger, zoom < STEPS - 1) { zoom += 1 }
        }
    }
}

@Composable
private fun ZoomTile(tag: String, sign: Sign, words: String, enabled: Boolean, onClick: () -> Unit) = ActionTile(
    "", "$tag/${sign.name.lowercase()}", Modifier.semantics { contentDescription = words }, Weight.QUIET, enabled, sign, onClick,
)
