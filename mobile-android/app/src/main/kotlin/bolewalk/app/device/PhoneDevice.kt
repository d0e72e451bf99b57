package bolewalk.app.device

import android.Manifest.permission.ACCESS_COARSE_LOCATION
import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.Manifest.permission.CAMERA
import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import android.provider.Settings
import androidx.activity.ComponentActivity
import bolewalk.app.field.FieldModel

/** The real parts. Made before the window starts, so that what another app gives arrives even where the system ended
 *  this one meanwhile. */
fun phoneDevice(activity: ComponentActivity, field: FieldModel): Device {
    val position = Permission(activity, ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION)
    val camera = Permission(activity, CAMERA)
    return Device(
        PhonePosition(activity, position), PhoneHeld(activity), PhoneCamera(activity, field, camera),
        PhonePicker(activity, field), PhoneSharing(activity), PhoneSight(activity, camera), PhoneSettings(activity),
    )
}

/** The system's settings, of the phone and of this app. */
class PhoneSettings(private val activity: ComponentActivity) : SystemSettings {
    override fun open(setting: Setting): Boolean = activity.reaches {
        startActivity(
            when (setting) {
                Setting.POSITION -> Intent(Settings.ACTION_LOCATION_SOURCE_SETTINGS)
                Setting.PERMISSIONS -> Intent(Settings.ACTION_APPLICATION_DETAILS_SETTINGS, Uri.fromParts("package", packageName, null))
            },
        )
    }
}

/** Reaches another app; false where there is none, or it may not be reached. */
internal fun ComponentActivity.reaches(reach: ComponentActivity.() -> Unit): Boolean = try {
    reach()
    true
} catch (_: ActivityNotFoundException) {
    false
} catch (_: SecurityException) {
    false
}
