package bolewalk.app.device

import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.TakePicture
import bolewalk.app.field.FieldModel
import java.io.File

/** The system's camera, writing into a file of ours. An app that declares the camera permission, as the live picture
 *  needs it, may ask the camera app only while it has that permission: so it is asked for here too. Whoever refuses it
 *  can still choose a picture. */
class PhoneCamera(private val activity: ComponentActivity, private val field: FieldModel, private val permission: Permission) : Camera {
    private val camera = activity.registerForActivityResult(TakePicture()) { taken ->
        field.awaited()?.let { if (taken) field.arrived(it) else File(it.path).delete() }
    }

    override fun take(path: String) {
        permission.ask { given -> if (given) launch(path) else field.say(field.words.cameraRefused, refused = true) }
    }

    private fun launch(path: String) {
        File(path).parentFile?.mkdirs()
        val reached = activity.reaches { camera.launch(contentUri(activity, path)) }
        if (!reached) field.say(field.words.noCameraApp, refused = true)
    }
}
