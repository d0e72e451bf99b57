package bolewalk.app.look

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.error
import androidx.compose.ui.semantics.semantics
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.OfferedInput

/** One input of an offer, by what it asks. [enter] takes what was typed, chosen or sensed; nothing takes it back. */
@Composable
fun FieldInput(input: OfferedInput, shown: EntryValue?, fault: String?, enter: (EntryValue?) -> Unit) = Column(
    Modifier.fillMaxWidth().testTag("input." + input.id).semantics { if (fault != null) error(fault) },
    Arrangement.spacedBy(Spacing.apart),
) {
    val palette = LocalPalette.current
    val label = if (input.needed && !stands(shown)) input.words + " · " + LocalWords.current.needed else input.words
    Text(label, style = MaterialTheme.typography.titleSmall)
    if (input.help.isNotEmpty()) Text(input.help, style = MaterialTheme.typography.bodySmall, color = palette.quietInk)
    when (val kind = input.kind) {
        is InputKind.Number -> NumberInput(input, kind, typed(shown)) { enter(EntryValue.Number(it)) }
        is InputKind.Choice -> ChoiceInput(input, kind.choices, (shown as? EntryValue.Choice)?.id.orEmpty()) { enter(EntryValue.Choice(it)) }
        is InputKind.Choices -> ChoicesInput(input, kind.choices, (shown as? EntryValue.Choices)?.ids.orEmpty()) { enter(EntryValue.Choices(it)) }
        is InputKind.Words -> WordsInput(input, kind, typed(shown)) { enter(EntryValue.Words(it)) }
        is InputKind.Search -> SearchInput(input, kind, shown, enter)
        is InputKind.YesNo -> YesNoInput(input, (shown as? EntryValue.YesNo)?.yes) { enter(EntryValue.YesNo(it)) }
        is InputKind.Bearing -> BearingInput(input, shown, enter)
        is InputKind.Tilt -> TiltInput(input, shown, enter)
        is InputKind.Fix -> FixInput(input, shown, enter)
        is InputKind.PhotoFile -> PhotoInput(input, (shown as? EntryValue.PhotoFile)?.path)
        is InputKind.Outline -> OutlineInput(input, kind, (shown as? EntryValue.Outline)?.points.orEmpty()) { enter(EntryValue.Outline(it)) }
        is InputKind.OnDay -> DayInput(input, typed(shown)) { enter(EntryValue.Words(it)) }
    }
    if (fault != null) Text(fault, Modifier.testTag("fault." + input.id), color = palette.refusal, style = MaterialTheme.typography.bodyLarge)
}

/** Whether an input holds something, so that nothing is wanted any more. */
private fun stands(shown: EntryValue?): Boolean = when (shown) {
    null -> false
    is EntryValue.Number -> shown.typed.isNotBlank()
    is EntryValue.Words -> shown.text.isNotBlank()
    is EntryValue.Choice -> shown.id.isNotEmpty()
    is EntryValue.Choices -> shown.ids.isNotEmpty()
    is EntryValue.Fixes -> shown.fixes.isNotEmpty()
    is EntryValue.Outline -> shown.points.isNotEmpty()
    is EntryValue.YesNo, is EntryValue.Bearing, is EntryValue.Tilt, is EntryValue.Fix, is EntryValue.PhotoFile,
    is EntryValue.OnPlan,
    -> true
}

/** The text of what was typed; nothing of what was sensed or chosen. */
internal fun typed(value: EntryValue?): String = when (value) {
    is EntryValue.Number -> value.typed
    is EntryValue.Words -> value.text
    null, is EntryValue.Choice, is EntryValue.Choices, is EntryValue.YesNo, is EntryValue.Bearing, is EntryValue.Tilt,
    is EntryValue.Fix, is EntryValue.Fixes, is EntryValue.OnPlan, is EntryValue.PhotoFile, is EntryValue.Outline,
    -> ""
}
