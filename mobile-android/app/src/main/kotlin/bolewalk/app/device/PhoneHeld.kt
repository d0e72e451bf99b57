package bolewalk.app.device

import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.content.pm.PackageManager.PERMISSION_GRANTED
import android.hardware.GeomagneticField
import android.hardware.Sensor
import android.hardware.SensorEvent
import android.hardware.SensorEventListener
import android.hardware.SensorManager
import android.location.LocationManager
import androidx.activity.ComponentActivity
import kotlin.math.abs
import kotlin.math.acos
import kotlin.math.asin
import kotlin.math.atan2
import kotlin.math.min

/** How the phone is held, from the rotation vector: its line of sight is the one out of the camera at its back. */
class PhoneHeld(private val activity: ComponentActivity) : HeldSense {
    override fun listen(hear: (Heard<HowHeld>) -> Unit): Listening = activity.whileInSight { sense(hear) }

    private fun sense(hear: (Heard<HowHeld>) -> Unit): Listening {
        val sensors = activity.getSystemService(SensorManager::class.java)
        val sensor = sensors?.getDefaultSensor(Sensor.TYPE_ROTATION_VECTOR)
        val east = declinationDeg()
        val listener = object : SensorEventListener {
            override fun onSensorChanged(event: SensorEvent) {
                hear(heldAt(event.values, east)?.let { Heard.Value(it) } ?: Heard.Lacking)
            }

            override fun onAccuracyChanged(sensor: Sensor?, accuracy: Int) = Unit
        }
        if (sensor == null || !sensors.registerListener(listener, sensor, SensorManager.SENSOR_DELAY_UI)) {
            hear(Heard.Lacking)
            return Listening {}
        }
        return Listening { sensors.unregisterListener(listener) }
    }

    /** How far the compass points east of true north where the phone was last; 0 where it does not know. */
    private fun declinationDeg(): Double {
        if (activity.checkSelfPermission(ACCESS_FINE_LOCATION) != PERMISSION_GRANTED) return 0.0
        val locations = activity.getSystemService(LocationManager::class.java) ?: return 0.0
        val last = locations.allProviders.firstNotNullOfOrNull { name ->
            try {
                locations.getLastKnownLocation(name)
            } catch (_: SecurityException) {
                null
            }
        } ?: return 0.0
        val field = GeomagneticField(last.latitude.toFloat(), last.longitude.toFloat(), last.altitude.toFloat(), System.currentTimeMillis())
        return field.declination.toDouble().takeIf { it.isFinite() } ?: 0.0
    }
}

/** The rotation vector in degrees; nothing where the sensor sent no numbers. */
internal fun heldAt(rotation: FloatArray, declinationDeg: Double): HowHeld? {
    if (rotation.size < 3 || rotation.any { !it.isFinite() }) return null
    val matrix = FloatArray(9)
    SensorManager.getRotationMatrixFromVector(matrix, rotation)
    // The camera looks along the phone's −z axis; the matrix turns it into east, north and up.
    val (east, north, up) = listOf(-matrix[2], -matrix[5], -matrix[8]).map(Float::toDouble)
    val tilt = Math.toDegrees(asin(up.coerceIn(-1.0, 1.0)))
    val bearing = (Math.toDegrees(atan2(east, north)) + declinationDeg + 720) % 360
    // The long edge is the y axis; it is laid along a stem either way up.
    val edge = Math.toDegrees(acos(matrix[7].toDouble().coerceIn(-1.0, 1.0)))
    val roll = abs(Math.toDegrees(atan2(matrix[6].toDouble(), matrix[7].toDouble())))
    val all = listOf(tilt, bearing, min(edge, 180 - edge), min(roll, 180 - roll))
    return if (all.all { it.isFinite() }) HowHeld(all[0], all[1], all[2], all[3]) else null
}
