package bolewalk.app.device

import androidx.compose.runtime.staticCompositionLocalOf

/** What the phone senses and reaches: small parts, each with a double for tests. */
class Device(
    val position: PositionSense,
    val held: HeldSense,
    val camera: Camera,
    val files: FilePicker,
    val sharing: Sharing,
)

val LocalDevice = staticCompositionLocalOf<Device> { error("no device") }

/** A position as the receiver gave it: degrees, and the radius in metres that holds the true place with 68 %. */
data class PlaceFix(val latDeg: Double, val lonDeg: Double, val accuracyM: Double?)

/** How the phone is held: degrees above the horizon of its line of sight, and degrees from true north. */
data class HowHeld(val tiltDeg: Double, val bearingDeg: Double)

/** What a sense says while it is listened to. */
sealed interface Heard<out T> {
    data class Value<T>(val value: T) : Heard<T>

    /** The person refused the permission. */
    data object Refused : Heard<Nothing>

    /** It is switched off on this phone. */
    data object Off : Heard<Nothing>

    /** This phone has no such sensor. */
    data object Lacking : Heard<Nothing>
}

/** Ends the listening. */
fun interface Listening {
    fun stop()
}

/** Where the phone is; asks for its permission when first listened to. */
fun interface PositionSense {
    fun listen(hear: (Heard<PlaceFix>) -> Unit): Listening
}

/** How the phone is held. */
fun interface HeldSense {
    fun listen(hear: (Heard<HowHeld>) -> Unit): Listening
}

/** The system's camera. The photo lies at [path] when the field model hears that it arrived. */
fun interface Camera {
    fun take(path: String)
}

/** The system's file picker: what the person chose is copied to [path]. */
interface FilePicker {
    fun picture(path: String)

    fun any(path: String)
}

/** Hands a file to another app; false where no app takes it. */
fun interface Sharing {
    fun hand(path: String): Boolean
}
