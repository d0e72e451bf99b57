package bolewalk.app.look

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp

/** How well the position is known: the ring of the mean now, within that of the first fix. It shrinks no faster than the
 *  core's own radius. */
@Composable
internal fun PositionRing(nowM: Double, firstM: Double, words: String, tag: String) {
    val palette = LocalPalette.current
    Canvas(
        Modifier.fillMaxWidth().height(132.dp).testTag("$tag/ring").semantics {
            contentDescription = words
            role = Role.Image
        },
    ) {
        val radius = size.height * MOST_OF_IT / maxOf(nowM, firstM).toFloat()
        val dashes = PathEffect.dashPathEffect(floatArrayOf(4.dp.toPx(), 4.dp.toPx()))
        drawCircle(palette.quietInk, radius * firstM.toFloat(), style = Stroke(1.5f.dp.toPx(), pathEffect = dashes))
        drawCircle(palette.lichen.copy(alpha = .3f), radius * nowM.toFloat())
        drawCircle(palette.ink, radius * nowM.toFloat(), style = Stroke(2.dp.toPx()))
        drawCircle(palette.ink, 4.dp.toPx())
    }
}

private const val MOST_OF_IT = .46f
