package bolewalk.app.look

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.gestures.detectHorizontalDragGestures
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clipToBounds
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.input.pointer.positionChange
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.ProgressBarRangeInfo
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.progressBarRangeInfo
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.setProgress
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import bolewalk.book.InputKind
import java.util.Locale
import kotlin.math.abs
import kotlin.math.floor
import kotlin.math.max
import kotlin.math.roundToLong

/** How far the finger moves for one step of a number while it moves slowly. */
internal const val STEP_DP = 6f

/** Slower than this, in dp a second, every step counts; faster, each counts as many more. */
internal const val SLOW_DP_PER_S = 60f

/** A number by one drag: a slow finger moves it step by step, a quick one runs through the range. Grey until it is set. */
@Composable
internal fun Dial(kind: InputKind.Number, words: String, set: Double?, tag: String, enter: (Double) -> Unit) {
    val palette = LocalPalette.current
    val value = set ?: kind.min.coerceAtLeast(0.0.coerceAtMost(kind.max))
    val figures = rememberTextMeasurer()
    val latest by rememberUpdatedState(value)
    val taken by rememberUpdatedState(enter)
    val step = if (kind.step > 0) kind.step else 1.0
    val rounded = RoundedCornerShape(12.dp)
    Canvas(
        Modifier.fillMaxWidth().height(Spacing.target).background(palette.card, rounded).border(1.dp, palette.edge, rounded).clipToBounds()
            .testTag(tag).semantics {
                contentDescription = words
                progressBarRangeInfo = ProgressBarRangeInfo(value.toFloat(), kind.min.toFloat()..kind.max.toFloat())
                setProgress { wanted ->
                    taken(wanted.toDouble().coerceIn(kind.min, kind.max))
                    true
                }
            }
            .pointerInput(kind) {
                var rest = 0f
                detectHorizontalDragGestures(onDragStart = { rest = 0f }) { change, _ ->
                    val moved = change.positionChange().x.toDp().value
                    rest += moved / STEP_DP * gain(moved, change.uptimeMillis - change.previousUptimeMillis)
                    val steps = rest.toInt()
                    if (steps != 0) {
                        rest -= steps
                        taken((((latest / step).roundToLong() + steps) * step).coerceIn(kind.min, kind.max))
                    }
                }
            },
    ) {
        // A ruler that moves under a mark in the middle: ten steps from one long line to the next.
        val apart = STEP_DP.dp.toPx()
        val first = floor(value / step - size.width / 2 / apart).toLong()
        for (line in first..first + (size.width / apart).toLong() + 1) {
            if (line * step < kind.min - step / 2 || line * step > kind.max + step / 2) continue
            val x = size.width / 2 + ((line - value / step) * apart).toFloat()
            val long = line % 10 == 0L
            drawLine(palette.edge, Offset(x, size.height), Offset(x, size.height * if (long) .5f else .7f), if (long) 2.dp.toPx() else 1.dp.toPx())
            if (!long) continue
            val laid = figures.measure(figure(line * step), TextStyle(palette.quietInk, FIGURE.toSp()), softWrap = false)
            drawText(laid, topLeft = Offset(x - laid.size.width / 2f, 2.dp.toPx()))
        }
        val mark = if (set == null) palette.edge else palette.ink
        drawLine(mark, Offset(size.width / 2, size.height * .35f), Offset(size.width / 2, size.height), 3.dp.toPx())
    }
}

/** The words beside it say the number and its unit; these help the finger, and keep their size. */
private val FIGURE = 13.dp

private fun figure(value: Double): String = String.format(Locale.getDefault(), if (value % 1.0 == 0.0) "%.0f" else "%.1f", value)

/** How many steps each step of the finger counts. */
internal fun gain(movedDp: Float, millis: Long): Float = max(1f, abs(movedDp) * 1000f / max(1L, millis) / SLOW_DP_PER_S)
