package bolewalk.app.look

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableLongStateOf
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.produceState
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import bolewalk.app.device.Heard
import bolewalk.app.device.LocalDevice
import bolewalk.app.device.PlaceFix
import bolewalk.app.device.Setting
import bolewalk.book.AveragedFix
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.LatLon
import bolewalk.book.OfferedInput
import bolewalk.book.SensedFix
import java.util.Locale

/** A position: many fixes of where the phone stands, averaged as they come until the person stops; or tapped on the plan,
 *  or typed. */
@Composable
internal fun FixInput(input: OfferedInput, shown: EntryValue?, enter: (EntryValue?) -> Unit) {
    val form = LocalForm.current
    var listening by rememberSaveable(input.id) { mutableStateOf(false) }
    var since by rememberSaveable(input.id) { mutableLongStateOf(0) }
    val position = LocalDevice.current.position
    val now by rememberUpdatedState(shown as? EntryValue.Fixes)
    val heard = heardWhile(listening) { fix ->
        val sensed = SensedFix(fix.latDeg, fix.lonDeg, fix.accuracyM, fix.atMs)
        // One that the receiver tells again, as when it is listened to anew, makes nothing surer.
        val before = now?.fixes.orEmpty()
        if (sensed != before.lastOrNull()) enter(EntryValue.Fixes(before + sensed, since))
    }
    // A position comes by itself where nothing stands yet and nobody has to be asked.
    LaunchedEffect(position) {
        if (shown == null && position.allowed()) {
            since = position.nowMs()
            listening = true
        }
    }
    val averaged by produceState<AveragedFix?>(null, shown) {
        value = (shown as? EntryValue.Fixes)?.let { form.average(it.fixes, it.sinceMs) }
    }
    Typed(input, typed(shown).ifEmpty { meanWords(averaged).ifEmpty { fixWords(shown) } }, KeyboardOptions.Default, Modifier.fillMaxWidth()) {
        listening = false
        enter(if (it.isBlank()) null else EntryValue.Words(it))
    }
    averaged?.let { mean ->
        val first = (shown as? EntryValue.Fixes)?.fixes?.firstOrNull()?.accuracyM
        val now = mean.accuracyM
        if (first != null && now != null) PositionRing(now, first, mean.words, input.id)
        (listOf(mean.words) + mean.leftOut).forEach { Told(it) }
    }
    LocalPlan.current?.entered?.words.orEmpty().takeIf { shown is EntryValue.OnPlan && it.isNotEmpty() }?.let { Told(it) }
    if (listening) Trouble(heard, input.id)
    Tiles {
        ActionTile(if (listening) LocalWords.current.stopPosition else LocalWords.current.takePosition, "${input.id}/sense") {
            if (!listening) {
                // Taken anew, what was averaged before is let go.
                since = position.nowMs()
                enter(EntryValue.Fixes(emptyList(), since))
            }
            listening = !listening
        }
        if (shown is EntryValue.Fixes || shown is EntryValue.OnPlan) {
            ActionTile(LocalWords.current.clear, "${input.id}/clear", weight = Weight.QUIET) {
                listening = false
                enter(null)
            }
        }
    }
    OnPlan(input) { listening = false }
    if (shown == null && !listening) Told(LocalWords.current.positionWanted)
}

/** What the receiver says while it is listened to. */
@Composable
internal fun heardWhile(listening: Boolean, take: (PlaceFix) -> Unit): Heard<PlaceFix>? {
    var heard by remember { mutableStateOf<Heard<PlaceFix>?>(null) }
    val taken by rememberUpdatedState(take)
    val sense = LocalDevice.current.position
    if (listening) {
        DisposableEffect(sense) {
            heard = null
            val open = sense.listen { said ->
                heard = said
                if (said is Heard.Value) taken(said.value)
            }
            onDispose { open.stop() }
        }
    }
    return heard
}

/** Why the position is not heard, and the way to where that can be changed. */
@Composable
private fun Trouble(heard: Heard<PlaceFix>?, tag: String) {
    positionTrouble(heard)?.let { Told(it) }
    when (heard) {
        is Heard.Off -> SettingsTile(tag, Setting.POSITION)
        is Heard.Refused -> SettingsTile(tag, Setting.PERMISSIONS)
        null, is Heard.Value, is Heard.Waiting, is Heard.Lacking -> Unit
    }
}

@Composable
private fun SettingsTile(tag: String, setting: Setting) {
    val settings = LocalDevice.current.settings
    ActionTile(LocalWords.current.openSettings, "$tag/settings", weight = Weight.QUIET) { settings.open(setting) }
}

@Composable
private fun positionTrouble(heard: Heard<PlaceFix>?): String? = when (heard) {
    is Heard.Value -> null
    null, is Heard.Waiting -> LocalWords.current.positionWaiting
    is Heard.Refused -> LocalWords.current.positionRefused
    is Heard.Off -> LocalWords.current.positionOff
    is Heard.Lacking -> LocalWords.current.noSensor
}

/** The mean that is kept, not the last fix. */
private fun meanWords(mean: AveragedFix?): String = mean?.at?.let { String.format(Locale.ROOT, "%.5f, %.5f", it.latDeg, it.lonDeg) }.orEmpty()

private fun fixWords(shown: EntryValue?): String {
    val (lat, lon) = when (shown) {
        is EntryValue.Fix -> shown.latDeg to shown.lonDeg
        is EntryValue.OnPlan -> shown.latDeg to shown.lonDeg
        else -> return ""
    }
    return String.format(Locale.ROOT, "%.5f, %.5f", lat, lon)
}

/** Points on the ground, walked or tapped on the plan corner by corner. */
@Composable
internal fun OutlineInput(input: OfferedInput, kind: InputKind.Outline, points: List<LatLon>, enter: (List<LatLon>) -> Unit) {
    var listening by rememberSaveable(input.id) { mutableStateOf(false) }
    val now by rememberUpdatedState(points)
    val heard = heardWhile(listening) {
        listening = false
        enter(now + LatLon(it.latDeg, it.lonDeg))
    }
    Text(LocalWords.current.corners.filled("count" to points.size), Modifier.testTag(input.id), style = MaterialTheme.typography.bodyLarge)
    if (points.size < kind.least.toInt()) Told(LocalWords.current.cornersLeast.filled("count" to kind.least))
    if (listening) Trouble(heard, input.id)
    ActionTile(LocalWords.current.addCorner, "${input.id}/sense") { listening = true }
    OnPlan(input)
    if (points.isNotEmpty()) {
        ActionTile(LocalWords.current.dropCorner, "${input.id}/drop", weight = Weight.QUIET) { enter(points.dropLast(1)) }
    }
}
