package bolewalk.app.device

import android.graphics.SurfaceTexture
import androidx.compose.runtime.staticCompositionLocalOf
import kotlin.math.abs

/** What the phone senses and reaches: small parts, each with a double for tests. */
class Device(
    val position: PositionSense,
    val held: HeldSense,
    val camera: Camera,
    val files: FilePicker,
    val sharing: Sharing,
    val sight: Sight = NoSight,
    val settings: SystemSettings = SystemSettings { false },
)

val LocalDevice = staticCompositionLocalOf<Device> { error("no device") }

/** A position as the receiver gave it: degrees, the radius in metres that holds the true place with 68 %, and when. */
data class PlaceFix(val latDeg: Double, val lonDeg: Double, val accuracyM: Double?, val atMs: Long = 0)

/** How the phone is held: degrees above the horizon of its line of sight, degrees from north (true north where the
 *  phone knows where it is), degrees between its long edge and the plumb line, and what of these is seen in the picture:
 *  its turn about the line of sight. */
data class HowHeld(val tiltDeg: Double, val bearingDeg: Double, val edgeDeg: Double = abs(tiltDeg), val rollDeg: Double = edgeDeg)

/** The camera's live picture: its sides in pixels as the sensor lies, and the turn that sets it upright, in degrees. */
data class SightPicture(val width: Int, val height: Int, val turnDeg: Int)

/** What a sense says while it is listened to. */
sealed interface Heard<out T> {
    data class Value<T>(val value: T) : Heard<T>

    /** It works, and has nothing to say yet. */
    data object Waiting : Heard<Nothing>

    /** The person refused the permission. */
    data object Refused : Heard<Nothing>

    /** It is switched off on this phone, or another app holds it. */
    data object Off : Heard<Nothing>

    /** This phone has no such sensor, or one that sends no numbers. */
    data object Lacking : Heard<Nothing>
}

/** Ends the listening. */
fun interface Listening {
    fun stop()
}

/** Where the phone is. */
fun interface PositionSense {
    /** Every fix of the receiver. Asks for the permission where it was not given yet. */
    fun listen(hear: (Heard<PlaceFix>) -> Unit): Listening

    /** The phone's time, by which fixes are told from older ones. */
    fun nowMs(): Long = System.currentTimeMillis()

    /** Whether it may be listened to without asking anybody. */
    fun allowed(): Boolean = false

    /** Where the phone last knew to be; asks nobody. */
    fun known(): PlaceFix? = null
}

/** How the phone is held. */
fun interface HeldSense {
    fun listen(hear: (Heard<HowHeld>) -> Unit): Listening
}

/** What the camera at the phone's back sees, live: for aiming, nothing is kept. Asks for its permission when first used. */
interface Sight {
    /** Whether this phone has no such camera. */
    val lacking: Boolean

    fun watch(on: SurfaceTexture, hear: (Heard<SightPicture>) -> Unit): Listening
}

/** A phone without a camera at its back. */
object NoSight : Sight {
    override val lacking = true

    override fun watch(on: SurfaceTexture, hear: (Heard<SightPicture>) -> Unit): Listening {
        hear(Heard.Lacking)
        return Listening {}
    }
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

/** Gives a file of ours to another app; false where no app takes it. */
interface Sharing {
    /** For an app of the person's choice to send or keep. */
    fun hand(path: String): Boolean

    /** To be looked at. */
    fun open(path: String): Boolean

    /** Whether it is for other apps to look at: a pack is for another phone. */
    fun isToLookAt(path: String): Boolean = typeOf(path) != PACK_TYPE
}

/** Where the person can lift a refusal. */
enum class Setting { POSITION, PERMISSIONS }

/** Opens the system's settings; false where there are none. */
fun interface SystemSettings {
    fun open(setting: Setting): Boolean
}
