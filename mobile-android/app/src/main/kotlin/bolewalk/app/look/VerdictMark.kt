package bolewalk.app.look

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathFillType
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import bolewalk.book.Verdict
import kotlin.math.cos
import kotlin.math.sin

private val rounded = RoundedCornerShape(8.dp)

/** A verdict: its shape, which is the one on the plan, and its words. */
@Composable
fun VerdictMark(verdict: Verdict, words: String, modifier: Modifier = Modifier, style: TextStyle = MaterialTheme.typography.titleSmall) {
    val (ground, ink) = coloursOf(verdict)
    Row(
        modifier.background(ground, rounded).border(1.dp, if (verdict == Verdict.INCOMPLETE) LocalPalette.current.edge else ground, rounded).padding(10.dp, 6.dp),
        Arrangement.spacedBy(10.dp), Alignment.CenterVertically,
    ) {
        VerdictShape(verdict, ink, 26.dp)
        Text(words, color = ink, style = style)
    }
}

@Composable
fun coloursOf(verdict: Verdict): Pair<Color, Color> = with(LocalPalette.current) {
    when (verdict) {
        Verdict.NO_STOP -> lichen to onLichen
        Verdict.LIMITED -> slate to onSlate
        Verdict.REFER -> bark to onBark
        Verdict.BARRED -> orange to onOrange
        Verdict.INCOMPLETE -> card to ink
    }
}

@Composable
fun VerdictShape(verdict: Verdict, colour: Color, size: Dp) {
    Canvas(Modifier.size(size).testTag("sign")) {
        when (verdict) {
            Verdict.NO_STOP -> drawPath(leaf(.45f), colour)
            Verdict.LIMITED -> {
                drawPath(leaf(.26f), colour)
                drawPath(polygon(4, .56f, 45.0), colour, style = Stroke(pen))
            }
            Verdict.REFER -> drawPath(polygon(3, .48f, -90.0).without(bar(.28f, .34f)), colour)
            Verdict.BARRED -> drawPath(polygon(8, .48f, 22.5).without(bar(.64f, .16f)), colour)
            Verdict.INCOMPLETE -> {
                drawArc(colour, -50f, 280f, false, at(-.4f, -.4f), androidx.compose.ui.geometry.Size(.8f * this.size.width, .8f * this.size.height), style = Stroke(pen))
                drawCircle(colour, pen, center)
            }
        }
    }
}

private val DrawScope.pen get() = size.minDimension * .1f

private fun DrawScope.at(x: Float, y: Float) =
    androidx.compose.ui.geometry.Offset(center.x + x * size.width, center.y + y * size.height)

private fun DrawScope.polygon(corners: Int, radius: Float, firstDeg: Double) = Path().apply {
    for (corner in 0 until corners) {
        val angle = Math.toRadians(firstDeg + 360.0 * corner / corners)
        val at = at(radius * cos(angle).toFloat(), radius * sin(angle).toFloat())
        if (corner == 0) moveTo(at.x, at.y) else lineTo(at.x, at.y)
    }
    close()
}

private fun DrawScope.leaf(half: Float) = Path().apply {
    val (top, foot) = at(0f, -half) to at(0f, half)
    val (left, right) = at(-half * 1.1f, 0f) to at(half * 1.1f, 0f)
    moveTo(top.x, top.y)
    quadraticTo(right.x, right.y, foot.x, foot.y)
    quadraticTo(left.x, left.y, top.x, top.y)
    close()
}

private fun DrawScope.bar(width: Float, height: Float) = Path().apply {
    val (a, b) = at(-width / 2, -height / 2) to at(width / 2, height / 2)
    addRect(androidx.compose.ui.geometry.Rect(a, b))
}

private fun Path.without(hole: Path) = Path().also {
    it.fillType = PathFillType.EvenOdd
    it.addPath(this)
    it.addPath(hole)
}
