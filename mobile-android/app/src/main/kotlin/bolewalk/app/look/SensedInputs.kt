package bolewalk.app.look

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import bolewalk.app.device.Heard
import bolewalk.app.device.HowHeld
import bolewalk.app.device.LocalDevice
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.OfferedInput
import java.util.Locale

/** A bearing: where the phone points, or typed as degrees or as a side. */
@Composable
internal fun BearingInput(input: OfferedInput, shown: EntryValue?, enter: (EntryValue?) -> Unit) {
    val text = (shown as? EntryValue.Bearing)?.let { degrees(it.degrees) } ?: typed(shown)
    Typed(input, text, KeyboardOptions.Default, Modifier.fillMaxWidth()) { enter(EntryValue.Number(it)) }
    HeldTile(input, LocalWords.current.takeBearing) { enter(EntryValue.Bearing(it.bearingDeg)) }
}

/** An angle: up or down along the line of sight, or from the plumb line along the phone's edge; or typed. */
@Composable
internal fun TiltInput(input: OfferedInput, shown: EntryValue?, enter: (EntryValue?) -> Unit) {
    val text = (shown as? EntryValue.Tilt)?.let { degrees(it.degrees) } ?: typed(shown)
    Typed(input, text, KeyboardOptions.Default, Modifier.fillMaxWidth()) { enter(EntryValue.Number(it)) }
    // Below and above the horizon: a line of sight. Else an angle from the plumb line.
    val sight = input.kind.let { it is InputKind.Tilt && it.min < 0 }
    var aiming by rememberSaveable(input.id) { mutableStateOf(false) }
    val angle: (HowHeld) -> Double = { if (sight) it.tiltDeg else if (aiming) it.rollDeg else it.edgeDeg }
    val words = LocalWords.current
    val how = if (sight) words.takeSight else if (aiming) words.takeLean else words.takeTilt
    HeldTile(input, how, { if (aiming) SightFinder(words.degrees.filled("degrees" to degrees(angle(it))), "${input.id}/sight") }) {
        enter(EntryValue.Tilt(angle(it)))
    }
    if (!aiming) ActionTile(LocalWords.current.aim, "${input.id}/aim", weight = Weight.QUIET) { aiming = true }
}

/** Takes how the phone is held when tapped. */
@Composable
private fun HeldTile(input: OfferedInput, words: String, live: @Composable (HowHeld) -> Unit = {}, take: (HowHeld) -> Unit) {
    var heard by remember { mutableStateOf<Heard<HowHeld>>(Heard.Waiting) }
    val sense = LocalDevice.current.held
    DisposableEffect(sense) {
        val listening = sense.listen { heard = it }
        onDispose { listening.stop() }
    }
    when (val now = heard) {
        is Heard.Value -> {
            live(now.value)
            ActionTile(words, "${input.id}/sense") { take(now.value) }
        }
        is Heard.Waiting -> ActionTile(words, "${input.id}/sense", enabled = false) {}
        is Heard.Lacking, is Heard.Off, is Heard.Refused -> Told(LocalWords.current.noSensor)
    }
}

internal fun degrees(value: Double) = String.format(Locale.ROOT, "%.1f", value)

@Composable
internal fun Told(words: String) = Text(
    words, Modifier.semantics { liveRegion = LiveRegionMode.Polite },
    style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk,
)
