package bolewalk.app.device

import android.content.Context
import android.hardware.Sensor
import android.hardware.SensorEvent
import android.hardware.SensorEventListener
import android.hardware.SensorManager
import kotlin.math.asin

/** How the phone is held, from the rotation vector: its line of sight is the one out of the camera at its back. */
class PhoneHeld(private val context: Context) : HeldSense {
    override fun listen(hear: (Heard<HowHeld>) -> Unit): Listening {
        val sensors = checkNotNull(context.getSystemService(SensorManager::class.java))
        val sensor = sensors.getDefaultSensor(Sensor.TYPE_ROTATION_VECTOR)
        if (sensor == null) {
            hear(Heard.Lacking)
            return Listening {}
        }
        val listener = object : SensorEventListener {
            override fun onSensorChanged(event: SensorEvent) {
                heldAt(event.values)?.let { hear(Heard.Value(it)) }
            }

            override fun onAccuracyChanged(sensor: Sensor?, accuracy: Int) = Unit
        }
        sensors.registerListener(listener, sensor, SensorManager.SENSOR_DELAY_UI)
        return Listening { sensors.unregisterListener(listener) }
    }
}

/** Elevation and bearing of the line of sight; nothing where the sensor sent no numbers. */
internal fun heldAt(rotation: FloatArray): HowHeld? {
    if (rotation.any { !it.isFinite() }) return null
    val matrix = FloatArray(9)
    SensorManager.getRotationMatrixFromVector(matrix, rotation)
    // The camera looks along the phone's −z axis; the matrix turns it into east, north and up.
    val (east, north, up) = listOf(-matrix[2], -matrix[5], -matrix[8]).map(Float::toDouble)
    val tilt = Math.toDegrees(asin(up.coerceIn(-1.0, 1.0)))
    val bearing = (Math.toDegrees(kotlin.math.atan2(east, north)) + 360) % 360
    return HowHeld(tilt, bearing)
}
