package bolewalk.app.look

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.gestures.detectTapGestures
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.widthIn
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clipToBounds
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.PathFillType
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Fill
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipPath
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.graphics.drawscope.rotate
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.toSize
import bolewalk.book.Drawing
import bolewalk.book.DrawnExtent
import bolewalk.book.DrawnMark
import bolewalk.book.DrawnText
import bolewalk.book.LegendLine
import bolewalk.book.PointSymbol
import bolewalk.book.Spot
import bolewalk.book.SymbolShape
import bolewalk.book.TextHold

/** Width over height of a drawing on the screen. */
internal fun sidesOf(drawing: Drawing): Float = with(drawing.extent) { (rightM - leftM) / (topM - bottomM) }.coerceIn(.4, 3.0).toFloat()

/** A drawing of the core, as wide as its place. A finger on it is told to [tap], in metres of the drawing. */
@Composable
fun DrawingCanvas(drawing: Drawing, tag: String, tap: ((Spot) -> Unit)? = null) {
    val palette = LocalPalette.current
    val measurer = rememberTextMeasurer()
    val shapes = drawing.symbols.associateBy { it.symbol }
    val extent = drawing.extent
    val told by rememberUpdatedState(tap)
    val touch = if (tap == null) Modifier else Modifier.pointerInput(extent) { detectTapGestures { at -> told?.invoke(Ground(extent, size.toSize()).spot(at)) } }
    Canvas(
        Modifier.fillMaxWidth().aspectRatio(sidesOf(drawing)).background(palette.card).clipToBounds().testTag(tag).then(touch).semantics {
            contentDescription = drawing.described
            role = Role.Image
        },
    ) {
        val ground = Ground(extent, size)
        drawing.marks.forEach { draw(it, ground, palette, shapes, measurer) }
    }
}

/** What the signs mean, where a person asks. */
@Composable
internal fun DrawingLegend(drawing: Drawing, tag: String) {
    if (drawing.legend.isEmpty()) return
    var shown by rememberSaveable(tag) { mutableStateOf(false) }
    ToggleTile(LocalWords.current.legend, "", shown, "$tag/legend") { shown = it }
    if (shown) LegendRows(drawing.legend, drawing.symbols)
}

/** A drawing that leaves room for what stands under it: without its legend, and never higher than a third of a screen. */
@Composable
fun SmallDrawing(drawing: Drawing, tag: String) = Box(Modifier.fillMaxWidth().padding(bottom = Spacing.apart), Alignment.TopCenter) {
    Box(Modifier.widthIn(max = SMALL)) { DrawingCanvas(drawing, tag) }
}

private val SMALL = 280.dp

@Composable
internal fun LegendRows(lines: List<LegendLine>, symbols: List<SymbolShape>) {
    val shapes = symbols.associateBy { it.symbol }
    lines.forEach { LegendRow(it, LocalPalette.current, shapes) }
}

/** Metres of the drawing to pixels of the screen and back: whole, in the middle. */
internal class Ground(private val extent: DrawnExtent, size: Size) {
    val pixelsPerMetre = minOf(size.width / (extent.rightM - extent.leftM), size.height / (extent.topM - extent.bottomM))
    private val left = (size.width - (extent.rightM - extent.leftM) * pixelsPerMetre) / 2
    private val top = (size.height - (extent.topM - extent.bottomM) * pixelsPerMetre) / 2

    fun at(spot: Spot) = Offset(
        (left + (spot.xM - extent.leftM) * pixelsPerMetre).toFloat(),
        (top + (extent.topM - spot.yM) * pixelsPerMetre).toFloat(),
    )

    fun spot(at: Offset) = Spot(extent.leftM + (at.x - left) / pixelsPerMetre, extent.topM - (at.y - top) / pixelsPerMetre)
}

private fun DrawScope.draw(mark: DrawnMark, ground: Ground, palette: Palette, shapes: Map<PointSymbol, SymbolShape>, measurer: TextMeasurer) {
    when (mark) {
        is DrawnMark.Polygon -> {
            val style = styleOf(mark.role, palette)
            val path = pathOf(mark.rings.map { ring -> ring.map(ground::at) }, closed = true)
            style.fill?.let { drawPath(path, it) }
            if (style.hatched) clipPath(path) { hatch(path.getBounds(), style) }
            drawPath(path, style.ink, style = strokeOf(style))
        }
        is DrawnMark.Polyline -> {
            val style = styleOf(mark.role, palette)
            drawPath(pathOf(listOf(mark.spots.map(ground::at)), closed = false), style.ink, style = strokeOf(style))
        }
        is DrawnMark.Circle -> {
            val style = styleOf(mark.role, palette)
            val radius = (mark.radiusM * ground.pixelsPerMetre).toFloat()
            style.fill?.let { drawCircle(it, radius, ground.at(mark.centre)) }
            drawCircle(style.ink, radius, ground.at(mark.centre), style = strokeOf(style))
        }
        is DrawnMark.Symbol -> shapes[mark.symbol]?.let { shape ->
            rotate(mark.turnDeg.toFloat(), ground.at(mark.at)) {
                drawShape(shape, ground.at(mark.at), mark.sizePt.dp.toPx(), styleOf(mark.role, palette))
            }
        }
        is DrawnMark.Written -> write(mark.text, styleOf(mark.role, palette), ground, palette, measurer)
    }
}

private fun DrawScope.hatch(at: Rect, style: RoleStyle) {
    var x = at.left - at.height
    while (x < at.right) {
        drawLine(style.ink, Offset(x, at.bottom), Offset(x + at.height, at.top), 1.dp.toPx())
        x += HATCH.toPx()
    }
}

private val HATCH = 5.dp

private fun DrawScope.strokeOf(style: RoleStyle) = Stroke(
    style.width.dp.toPx(),
    pathEffect = style.dash?.let { dash -> PathEffect.dashPathEffect(FloatArray(dash.size) { dash[it].dp.toPx() }) },
)

private fun pathOf(rings: List<List<Offset>>, closed: Boolean) = Path().apply {
    fillType = PathFillType.EvenOdd
    for (ring in rings) {
        ring.forEachIndexed { index, at -> if (index == 0) moveTo(at.x, at.y) else lineTo(at.x, at.y) }
        if (closed) close()
    }
}

/** A symbol from its form in a square of side 1; the form's y points up. */
private fun DrawScope.drawShape(shape: SymbolShape, middle: Offset, side: Float, style: RoleStyle) {
    fun placed(spot: Spot) = Offset(middle.x + (spot.xM * side).toFloat(), middle.y - (spot.yM * side).toFloat())
    val fill = pathOf(shape.filled.map { it.map(::placed) }, closed = true)
    drawPath(fill, style.fill ?: style.ink)
    shape.lines.forEach { drawPath(pathOf(listOf(it.map(::placed)), closed = false), style.ink, style = Stroke(side * .1f)) }
}

private fun DrawScope.write(text: DrawnText, style: RoleStyle, ground: Ground, palette: Palette, measurer: TextMeasurer) {
    // Letters keep the size the drawing was laid out for; the words themselves stand in the list too.
    val letters = TextStyle(style.ink, text.sizePt.dp.toSp())
    val laid = measurer.measure(text.words, letters, softWrap = false)
    val at = ground.at(text.at)
    val left = when (text.hold) {
        TextHold.START -> at.x
        TextHold.MIDDLE -> at.x - laid.size.width / 2f
        TextHold.END -> at.x - laid.size.width
    }
    val corner = Offset(left, at.y - laid.size.height / 2f)
    if (text.halo) drawText(laid, palette.card, corner, drawStyle = Stroke(3.dp.toPx()))
    // Said each time: the laid-out text keeps the style it was drawn in last.
    drawText(laid, style.ink, corner, drawStyle = Fill)
}

@Composable
private fun LegendRow(line: LegendLine, palette: Palette, shapes: Map<PointSymbol, SymbolShape>) =
    Row(horizontalArrangement = Arrangement.spacedBy(10.dp), verticalAlignment = Alignment.CenterVertically) {
        val style = styleOf(line.role, palette)
        Canvas(Modifier.size(28.dp, 20.dp)) {
            val shape = line.symbol?.let { shapes[it] }
            when {
                shape != null -> drawShape(shape, center, size.height, style)
                style.fill != null -> {
                    drawRect(style.fill)
                    if (style.hatched) clipRect { hatch(Rect(Offset.Zero, size), style) }
                    drawRect(style.ink, style = strokeOf(style))
                }
                else -> drawLine(style.ink, Offset(0f, center.y), Offset(size.width, center.y), style.width.dp.toPx(), pathEffect = strokeOf(style).pathEffect)
            }
        }
        Text(line.words, style = MaterialTheme.typography.bodySmall)
    }
