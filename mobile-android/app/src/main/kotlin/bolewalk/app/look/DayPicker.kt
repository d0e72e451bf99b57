package bolewalk.app.look

import androidx.compose.material3.DatePicker
import androidx.compose.material3.DatePickerDialog
import androidx.compose.material3.ExperimentalMaterial3Api
import androidx.compose.material3.rememberDatePickerState
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.platform.LocalConfiguration
import androidx.compose.ui.platform.LocalContext
import java.time.Instant
import java.time.LocalDate
import java.time.ZoneOffset
import java.time.format.DateTimeParseException

/** The calendar; gives a day as the border writes it. */
@OptIn(ExperimentalMaterial3Api::class)
@Composable
internal fun DayPicker(text: String, close: () -> Unit, pick: (String) -> Unit) {
    val state = rememberDatePickerState(millisOf(text))
    // A dialog is a window of its own, which would go by the phone's language again.
    val (context, configuration) = LocalContext.current to LocalConfiguration.current
    DatePickerDialog(
        close,
        confirmButton = {
            ActionTile(LocalWords.current.keep, "day.confirm", weight = Weight.PRIMARY) { state.selectedDateMillis?.let { pick(dayOf(it)) } ?: close() }
        },
        dismissButton = { ActionTile(LocalWords.current.close, "day.close", weight = Weight.QUIET, onClick = close) },
    ) { CompositionLocalProvider(LocalContext provides context, LocalConfiguration provides configuration) { DatePicker(state) } }
}

private fun millisOf(day: String): Long? = try {
    LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli()
} catch (_: DateTimeParseException) {
    null
}

private fun dayOf(millis: Long): String = Instant.ofEpochMilli(millis).atZone(ZoneOffset.UTC).toLocalDate().toString()
