package bolewalk.app

import androidx.compose.runtime.snapshots.Snapshot
import bolewalk.app.device.Camera
import bolewalk.app.device.Device
import bolewalk.app.device.FilePicker
import bolewalk.app.device.Heard
import bolewalk.app.device.HeldSense
import bolewalk.app.device.HowHeld
import bolewalk.app.device.Listening
import bolewalk.app.device.PlaceFix
import bolewalk.app.device.PositionSense
import bolewalk.app.device.Sharing
import bolewalk.app.field.FieldModel
import java.io.File

/** Senses that say what a test tells them. */
class Doubles {
    val place = SenseDouble<PlaceFix>()

    /** Where the phone was last, without asking the receiver. */
    var lastKnown: PlaceFix? = null
    val held = SenseDouble<HowHeld>()

    /** Whether the person allowed the position before. */
    var positionAllowed = false

    /** The file that the camera or the picker gives next; none, when the person turns back. */
    var next: File? = null
    val handed = mutableListOf<String>()
    val opened = mutableListOf<String>()

    fun device(field: FieldModel): Device {
        fun give(path: String) {
            val awaited = field.awaited()
            val file = next
            if (file != null && awaited != null) {
                file.copyTo(File(path), overwrite = true)
                field.arrived(awaited)
            }
        }
        val files = object : FilePicker {
            override fun picture(path: String) = give(path)

            override fun any(path: String) = give(path)
        }
        val sharing = object : Sharing {
            override fun hand(path: String) = handed.add(path)

            override fun open(path: String) = opened.add(path)
        }
        val position = object : PositionSense {
            override fun listen(hear: (Heard<PlaceFix>) -> Unit) = place.listen(hear)

            override fun nowMs() = 0L

            override fun allowed() = positionAllowed

            override fun known(): PlaceFix? = lastKnown
        }
        return Device(position, HeldSense(held::listen), Camera(::give), files, sharing)
    }
}

class SenseDouble<T> {
    private val listeners = mutableListOf<(Heard<T>) -> Unit>()
    private var last: Heard<T>? = null

    val listened: Int get() = listeners.size

    fun say(heard: Heard<T>?) {
        last = heard
        if (heard != null) listeners.toList().forEach { it(heard) }
        // What a sense says comes between two frames: nobody else tells Compose of it here.
        Snapshot.sendApplyNotifications()
    }

    fun listen(hear: (Heard<T>) -> Unit): Listening {
        listeners += hear
        last?.let(hear)
        return Listening { listeners -= hear }
    }
}
