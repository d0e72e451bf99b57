package bolewalk.app.look

import androidx.compose.foundation.BorderStroke
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.selection.selectable
import androidx.compose.foundation.selection.toggleable
import androidx.compose.foundation.clickable
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Surface
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.draw.drawWithContent
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import bolewalk.book.DrawingAddress

/** How much a button asks to be tapped. */
enum class Weight { PRIMARY, PLAIN, QUIET }

private val rounded = RoundedCornerShape(12.dp)

/** A button. */
@Composable
fun ActionTile(
    words: String,
    tag: String,
    modifier: Modifier = Modifier,
    weight: Weight = Weight.PLAIN,
    enabled: Boolean = true,
    sign: Sign? = null,
    onClick: () -> Unit,
) = Face(
    words, "", modifier.testTag(tag).clip(rounded).clickable(enabled, role = Role.Button, onClick = onClick), weight, enabled,
    sign = sign,
)

/** A button for the answer that stands now: told by its sign and by the screen reader, not by colour. */
@Composable
fun StandingTile(words: String, tag: String, enabled: Boolean, onClick: () -> Unit) =
    ActionTile(words, tag, Modifier.semantics { selected = true }, Weight.PRIMARY, enabled, Sign.CHOSEN, onClick)

/** One of several, of which one can be chosen: told by its border, its sign and by the screen reader, not by colour. */
@Composable
fun ChoiceTile(
    words: String,
    help: String,
    chosen: Boolean,
    tag: String,
    modifier: Modifier = Modifier,
    drawing: DrawingAddress? = null,
    onClick: () -> Unit,
) = Face(
    words, help, modifier.testTag(tag).clip(rounded).selectable(chosen, role = Role.RadioButton, onClick = onClick),
    if (chosen) Weight.PRIMARY else Weight.QUIET, true, if (chosen) Sign.CHOSEN else null, drawing,
)

/** One of several, of which any number can be chosen. */
@Composable
fun ToggleTile(
    words: String,
    help: String,
    chosen: Boolean,
    tag: String,
    modifier: Modifier = Modifier,
    drawing: DrawingAddress? = null,
    onChange: (Boolean) -> Unit,
) = Face(
    words, help, modifier.testTag(tag).clip(rounded).toggleable(chosen, role = Role.Checkbox, onValueChange = onChange),
    if (chosen) Weight.PRIMARY else Weight.QUIET, true, if (chosen) Sign.CHOSEN else null, drawing,
)

@Composable
private fun Face(
    words: String,
    help: String,
    modifier: Modifier,
    weight: Weight,
    enabled: Boolean,
    sign: Sign?,
    drawing: DrawingAddress? = null,
) {
    val palette = LocalPalette.current
    val (ground, ink) = when {
        !enabled -> palette.ground to palette.quietInk
        weight == Weight.PRIMARY -> palette.slate to palette.onSlate
        else -> palette.card to palette.ink
    }
    val edge = if (weight == Weight.QUIET || !enabled) palette.edge else palette.slate
    val border = BorderStroke(if (weight == Weight.QUIET) 1.dp else 2.dp, edge).takeIf { enabled }
    Surface(if (enabled) modifier else modifier.dashed(edge), rounded, ground, ink, border = border) {
        if (drawing != null && help.isEmpty()) {
            // A large tile: its drawing over its words.
            Column(
                Modifier.defaultMinSize(Spacing.wideTarget, Spacing.target).padding(8.dp),
                Arrangement.spacedBy(4.dp), Alignment.CenterHorizontally,
            ) {
                Sketch(drawing)
                SignedWords(words, help, sign)
            }
        } else {
            Row(
                Modifier.defaultMinSize(Spacing.target, Spacing.target).padding(Spacing.inside, 8.dp),
                Arrangement.spacedBy(8.dp, if (help.isEmpty()) Alignment.CenterHorizontally else Alignment.Start), Alignment.CenterVertically,
            ) {
                drawing?.let { Sketch(it) }
                SignedWords(words, help, sign)
            }
        }
    }
}

@Composable
private fun SignedWords(words: String, help: String, sign: Sign?) = Row(
    horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically,
) {
    sign?.let { SignMark(it) }
    Column(horizontalAlignment = if (help.isEmpty()) Alignment.CenterHorizontally else Alignment.Start) {
        if (words.isNotEmpty()) {
            Text(words, style = MaterialTheme.typography.labelLarge, textAlign = if (help.isEmpty()) TextAlign.Center else TextAlign.Start)
        }
        if (help.isNotEmpty()) Text(help, style = MaterialTheme.typography.bodySmall)
    }
}

/** The edge of what cannot be tapped now: told without colour, in the sun too. */
private fun Modifier.dashed(colour: Color) = drawWithContent {
    drawContent()
    val (pen, corner) = 1.dp.toPx() to 12.dp.toPx()
    val dashes = PathEffect.dashPathEffect(floatArrayOf(4.dp.toPx(), 5.dp.toPx()))
    drawRoundRect(
        colour, Offset(pen / 2, pen / 2), Size(size.width - pen, size.height - pen), CornerRadius(corner), Stroke(pen, pathEffect = dashes),
    )
}
