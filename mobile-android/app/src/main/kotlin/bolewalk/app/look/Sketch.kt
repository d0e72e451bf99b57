package bolewalk.app.look

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.unit.coerceAtMost
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress

/** Gives the drawings that stand beside words; nothing where there is none. */
val LocalDrawings = staticCompositionLocalOf<suspend (DrawingAddress) -> Drawing?> { { null } }

private val rounded = RoundedCornerShape(6.dp)

/** A small drawing of what the words beside it say: a screen reader reads the words alone. It grows with the letters. */
@Composable
fun Sketch(which: DrawingAddress) {
    val drawings = LocalDrawings.current
    val drawing by produceState<Drawing?>(null, which) { value = drawings(which) }
    val side = with(LocalDensity.current) { 72.sp.toDp() }.coerceAtMost(104.dp)
    // Its place is kept while it is still to come.
    Box(Modifier.size(side).clip(rounded).background(LocalPalette.current.card).clearAndSetSemantics {}) {
        drawing?.let { DrawingCanvas(it, "") }
    }
}
