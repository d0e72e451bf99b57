package bolewalk.app.look

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.OutlinedTextField
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.input.KeyboardCapitalization
import androidx.compose.ui.text.input.KeyboardType
import bolewalk.book.InputKind
import bolewalk.book.OfferedInput
import java.text.DecimalFormatSymbols
import java.util.Locale
import kotlin.math.roundToLong

/** How many tiles a small range of whole numbers may have. */
private const val FEW = 13

/** How many suggestions are shown at a time. */
private const val SUGGESTED = 6

@Composable
internal fun Typed(input: OfferedInput, text: String, keyboard: KeyboardOptions, modifier: Modifier = Modifier, unit: String = "", enter: (String) -> Unit) {
    OutlinedTextField(
        text, enter,
        modifier.defaultMinSize(minHeight = Spacing.target).testTag(input.id).semantics { contentDescription = input.words },
        textStyle = MaterialTheme.typography.bodyLarge,
        // Not beside a unit that stands in the text itself.
        suffix = if (unit.isEmpty() || text.any { it.isLetter() || it in "%°′″'\"" }) null else { { Text(unit) } },
        keyboardOptions = keyboard,
    )
}

/** A number: a tile each for a small range of whole numbers, else typed, with a step down and up. */
@Composable
internal fun NumberInput(input: OfferedInput, kind: InputKind.Number, text: String, enter: (String) -> Unit) {
    if (kind.whole && kind.max - kind.min < FEW) {
        NumberTiles(input, kind.min.toInt()..kind.max.toInt(), text, enter)
        return
    }
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically) {
        StepTile(input, Sign.LESS, LocalWords.current.less) { enter(stepped(text, kind, -1)) }
        Typed(input, text, KeyboardOptions(keyboardType = KeyboardType.Decimal), Modifier.weight(1f), kind.unit, enter)
        StepTile(input, Sign.MORE, LocalWords.current.more) { enter(stepped(text, kind, 1)) }
    }
    Dial(kind, input.words, numberIn(text), "${input.id}/dial") { enter(written(it, kind)) }
    Text(kind.range, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun NumberTiles(input: OfferedInput, range: IntRange, text: String, enter: (String) -> Unit) = Tiles {
    range.forEach { number ->
        val chosen = text.trim().substringBefore(' ') == "$number"
        ChoiceTile("$number", "", chosen, "${input.id}/$number") { enter(if (chosen) "" else "$number") }
    }
}

@Composable
private fun StepTile(input: OfferedInput, sign: Sign, words: String, step: () -> Unit) = ActionTile(
    "", "${input.id}/${sign.name.lowercase()}", Modifier.semantics { contentDescription = "$words: ${input.words}" },
    Weight.QUIET, sign = sign, onClick = step,
)

/** The number at the head of what was typed. */
internal fun numberIn(text: String): Double? =
    text.trim().substringBefore(' ').replace(DecimalFormatSymbols.getInstance().decimalSeparator, '.').toDoubleOrNull()

/** The number a step up or down, on the steps of its rule and within its range; begins at the nearer end. */
internal fun stepped(text: String, kind: InputKind.Number, by: Int): String {
    val step = if (kind.step > 0) kind.step else 1.0
    val now = numberIn(text)
    val next = if (now == null) (if (by > 0) kind.min else kind.max) else ((now / step).roundToLong() + by) * step
    return written(next.coerceIn(kind.min, kind.max), kind)
}

/** A number with as many decimals as its step has. */
internal fun written(value: Double, kind: InputKind.Number): String {
    val step = if (kind.step > 0) kind.step else 1.0
    val decimals = generateSequence(step) { it * 10 }.takeWhile { it % 1.0 > 1e-9 && 1 - it % 1.0 > 1e-9 }.take(4).count()
    return String.format(Locale.getDefault(), "%.${decimals}f", value)
}

/** A text; what was entered before can be tapped, found by the letters typed so far. */
@Composable
internal fun WordsInput(input: OfferedInput, kind: InputKind.Words, text: String, enter: (String) -> Unit) {
    Typed(input, text, KeyboardOptions(KeyboardCapitalization.Sentences), Modifier.fillMaxWidth()) { enter(it.take(kind.most.toInt())) }
    val fitting = kind.suggested.filter { it.contains(text, ignoreCase = true) && it != text }.take(SUGGESTED)
    if (fitting.isNotEmpty()) Tiles { fitting.forEach { ActionTile(it, "${input.id}/$it", weight = Weight.QUIET) { enter(it) } } }
}

/** A day, as the border writes it. */
@Composable
internal fun DayInput(input: OfferedInput, text: String, enter: (String) -> Unit) {
    var picking by rememberSaveable { mutableStateOf(false) }
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically) {
        Typed(input, text, KeyboardOptions(keyboardType = KeyboardType.Number), Modifier.weight(1f), enter = enter)
        ActionTile(LocalWords.current.pickDay, "${input.id}/pick", weight = Weight.QUIET) { picking = true }
    }
    if (picking) {
        DayPicker(text, { picking = false }) {
            enter(it)
            picking = false
        }
    }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
internal fun Tiles(content: @Composable () -> Unit) = FlowRow(
    horizontalArrangement = Arrangement.spacedBy(Spacing.apart),
    verticalArrangement = Arrangement.spacedBy(Spacing.apart),
) { content() }

@Composable
internal fun YesNoInput(input: OfferedInput, yes: Boolean?, enter: (Boolean) -> Unit) = Tiles {
    ChoiceTile(LocalWords.current.answerYes, "", yes == true, "${input.id}/true") { enter(true) }
    ChoiceTile(LocalWords.current.answerNo, "", yes == false, "${input.id}/false") { enter(false) }
}

@Composable
internal fun Stacked(content: @Composable () -> Unit) = Column(verticalArrangement = Arrangement.spacedBy(Spacing.apart)) { content() }
