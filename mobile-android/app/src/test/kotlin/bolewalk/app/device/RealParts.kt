package bolewalk.app.device

import android.Manifest.permission.ACCESS_COARSE_LOCATION
import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.Manifest.permission.CAMERA
import android.app.Activity
import android.content.Intent
import android.hardware.Sensor
import android.hardware.SensorManager
import android.location.Location
import android.location.LocationManager
import android.location.LocationManager.GPS_PROVIDER
import android.net.Uri
import bolewalk.app.Walk
import bolewalk.app.app
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.SensorEventBuilder
import org.robolectric.shadows.ShadowActivity.IntentForResult
import org.robolectric.shadows.ShadowSensor

/** The real window with the phone's own parts, and what comes to them from outside. */
class RealParts {
    private val locations = app.getSystemService(LocationManager::class.java)!!
    private val sensors = app.getSystemService(SensorManager::class.java)!!
    private val sensor = ShadowSensor.newInstance(Sensor.TYPE_ROTATION_VECTOR)
    private var seconds = 0L

    init {
        app.realParts = true
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION, CAMERA)
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        shadowOf(sensors).addSensor(sensor)
    }

    /** Who listens for fixes. */
    val receivers: Int get() = shadowOf(locations).getLegacyLocationRequests(GPS_PROVIDER).size

    /** A fix of the receiver, a second after the one before. */
    fun fix(lat: Double, lon: Double, accuracyM: Float = 4f) = shadowOf(locations).simulateLocation(
        Location(GPS_PROVIDER).apply {
            latitude = lat
            longitude = lon
            accuracy = accuracyM
            time = 1_790_000_000_000
            elapsedRealtimeNanos = ++seconds * 1_000_000_000
        },
    )

    /** What the rotation vector sends. */
    fun turned(vararg values: Float) =
        shadowOf(sensors).sendSensorEventToListeners(SensorEventBuilder.newBuilder().setSensor(sensor).setTimestamp(1).setValues(values).build())

    /** What another app was asked for last. */
    fun asked(walk: Walk, action: String): IntentForResult =
        generateSequence { shadowOf(walk.activity).nextStartedActivityForResult }.last { it.intent.action == action }

    /** What it gives back, to whichever window is there by now. */
    fun given(walk: Walk, asked: IntentForResult, file: Uri? = null) {
        @Suppress("DEPRECATION") // as the framework itself answers
        shadowOf(walk.activity).callOnActivityResult(asked.requestCode, Activity.RESULT_OK, file?.let { Intent().setData(it) })
        walk.settle()
    }
}
