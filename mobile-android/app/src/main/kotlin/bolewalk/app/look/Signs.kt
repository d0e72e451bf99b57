package bolewalk.app.look

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.material3.LocalContentColor
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp

/** The few signs of the shell, each a line in a square of side 1; words always stand beside them or are spoken. */
enum class Sign(vararg val lines: List<Pair<Float, Float>>) {
    UP(listOf(.62f to .15f, .25f to .5f, .62f to .85f)),
    BOOK(
        listOf(.5f to .25f, .15f to .18f, .15f to .78f, .5f to .85f, .85f to .78f, .85f to .18f, .5f to .25f, .5f to .85f),
    ),
    CLOSE(listOf(.2f to .2f, .8f to .8f), listOf(.8f to .2f, .2f to .8f)),
    CHOSEN(listOf(.15f to .55f, .4f to .8f, .85f to .2f)),
    LESS(listOf(.15f to .5f, .85f to .5f)),
    MORE(listOf(.15f to .5f, .85f to .5f), listOf(.5f to .15f, .5f to .85f)),
    UNDO(listOf(.45f to .15f, .15f to .4f, .45f to .65f), listOf(.15f to .4f, .7f to .4f, .85f to .6f, .7f to .82f, .4f to .82f)),
    REDO(listOf(.55f to .15f, .85f to .4f, .55f to .65f), listOf(.85f to .4f, .3f to .4f, .15f to .6f, .3f to .82f, .6f to .82f)),
    GO(listOf(.38f to .15f, .75f to .5f, .38f to .85f)),
    MISSING(listOf(.5f to .15f, .85f to .5f, .5f to .85f, .15f to .5f, .5f to .15f)),
    DOUBT(listOf(.15f to .4f, .35f to .25f, .65f to .4f, .85f to .25f), listOf(.15f to .75f, .35f to .6f, .65f to .75f, .85f to .6f)),
}

@Composable
fun SignMark(sign: Sign, size: Dp = 24.dp, colour: Color = LocalContentColor.current) {
    Canvas(Modifier.size(size).testTag("sign")) {
        for (line in sign.lines) {
            val path = Path()
            line.forEachIndexed { index, (x, y) ->
                val at = Offset(x * this.size.width, y * this.size.height)
                if (index == 0) path.moveTo(at.x, at.y) else path.lineTo(at.x, at.y)
            }
            drawPath(path, colour, style = Stroke(this.size.width * .12f, cap = StrokeCap.Round, join = StrokeJoin.Round))
        }
    }
}
