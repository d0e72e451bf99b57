package bolewalk.app.device

import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.hardware.Sensor
import android.hardware.SensorManager
import android.location.Location
import android.location.LocationManager
import bolewalk.app.app
import kotlin.math.cos
import kotlin.math.sin
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.SensorEventBuilder
import org.robolectric.shadows.ShadowSensor

/** How the phone is held, by the framework's own arithmetic. */
@RunWith(RobolectricTestRunner::class)
class HeldTest {
    private val sensors = app.getSystemService(SensorManager::class.java)!!
    private val sensor = ShadowSensor.newInstance(Sensor.TYPE_ROTATION_VECTOR)
    private val heard = Heardings<HowHeld>()

    /** A turn about one axis as a rotation vector: Android lays x east, y north, z up. */
    private fun turn(degrees: Double, x: Double, y: Double, z: Double) = Quaternion.about(degrees, x, y, z).vector()

    private fun send(values: FloatArray) =
        shadowOf(sensors).sendSensorEventToListeners(SensorEventBuilder.newBuilder().setSensor(sensor).setTimestamp(1).setValues(values).build())

    @Test fun lineOfSightAndEdgeByKnownTurns() {
        // Flat on a table, screen up: the camera looks straight down, the long edge lies level.
        assertHeld(-90.0, null, 90.0, heldAt(turn(0.0, 1.0, 0.0, 0.0), 0.0))
        // Stood up on its foot, screen to the south: the camera looks level to the north, the edge is plumb.
        assertHeld(0.0, 0.0, 0.0, heldAt(turn(90.0, 1.0, 0.0, 0.0), 0.0))
        // Tipped back by 30 degrees more: the camera looks 30 degrees up.
        assertHeld(30.0, 0.0, 30.0, heldAt(turn(120.0, 1.0, 0.0, 0.0), 0.0))
        // Tipped forward: 20 degrees down.
        assertHeld(-20.0, 0.0, 20.0, heldAt(turn(70.0, 1.0, 0.0, 0.0), 0.0))
        // Upside down: the edge is plumb again.
        assertHeld(0.0, 180.0, 0.0, heldAt(turn(-90.0, 1.0, 0.0, 0.0), 0.0))
    }

    @Test fun theCompassIsBroughtToTrueNorth() {
        assertHeld(0.0, 349.0, 0.0, heldAt(turn(90.0, 1.0, 0.0, 0.0), -11.0))
        assertHeld(0.0, 12.0, 0.0, heldAt(turn(90.0, 1.0, 0.0, 0.0), 12.0))
    }

    @Test fun declinationOfThePlaceWherePhoneWasLast() {
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION)
        val locations = app.getSystemService(LocationManager::class.java)!!
        val place = Location(LocationManager.GPS_PROVIDER).apply {
            latitude = 44.0
            longitude = -71.0
            accuracy = 4f
            time = 1
            elapsedRealtimeNanos = 1
        }
        shadowOf(locations).simulateLocation(place)
        shadowOf(sensors).addSensor(sensor)
        val phone = OnPhone()
        phone.device.held.listen(heard)
        send(turn(90.0, 1.0, 0.0, 0.0))
        // World Magnetic Model: about 14 to 15 degrees west in New Hampshire in these years (from memory).
        assertEquals(345.5, (heard.last as Heard.Value).value.bearingDeg, 1.5)
    }

    @Test fun noNumbersAreNoReading() {
        assertNull(heldAt(floatArrayOf(Float.NaN, 0f, 0f, 1f), 0.0))
        assertNull(heldAt(floatArrayOf(0f, Float.POSITIVE_INFINITY, 0f), 0.0))
        assertNull(heldAt(floatArrayOf(), 0.0))
        shadowOf(sensors).addSensor(sensor)
        val phone = OnPhone()
        phone.device.held.listen(heard)
        send(floatArrayOf(Float.NaN, Float.NaN, Float.NaN, Float.NaN))
        assertEquals(Heard.Lacking, heard.last)
        send(turn(120.0, 1.0, 0.0, 0.0))
        assertEquals(30.0, (heard.last as Heard.Value).value.tiltDeg, 0.01)
    }

    @Test fun aPhoneWithoutTheSensorSaysSo() {
        OnPhone().device.held.listen(heard)
        assertEquals(listOf(Heard.Lacking), heard.all)
    }

    @Test fun theSensorRestsBehindAnotherAppAndWhenNobodyListens() {
        shadowOf(sensors).addSensor(sensor)
        val phone = OnPhone()
        val listening = phone.device.held.listen(heard)
        assertEquals(1, shadowOf(sensors).listeners.size)
        phone.controller.pause().stop()
        assertEquals(0, shadowOf(sensors).listeners.size)
        phone.controller.restart().start().resume()
        assertEquals(1, shadowOf(sensors).listeners.size)
        listening.stop()
        assertEquals(0, shadowOf(sensors).listeners.size)
    }

    @Test fun aLeaningStemIsSeenInThePicture() {
        // Held level to the north, then turned by 12 degrees about the line of sight, which points north: a lean of 12.
        val upright = Quaternion.about(90.0, 1.0, 0.0, 0.0)
        val turned = Quaternion.about(12.0, 0.0, 1.0, 0.0) * upright
        val held = heldAt(turned.vector(), 0.0)!!
        assertEquals(12.0, held.rollDeg, 0.01)
        assertEquals(12.0, held.edgeDeg, 0.1)
        // Looking up by 25 degrees beforehand changes the edge, not what is seen.
        val up = Quaternion.about(115.0, 1.0, 0.0, 0.0)
        assertEquals(0.0, heldAt(up.vector(), 0.0)!!.rollDeg, 0.01)
        assertEquals(25.0, heldAt(up.vector(), 0.0)!!.edgeDeg, 0.1)
    }

    private data class Quaternion(val x: Double, val y: Double, val z: Double, val w: Double) {
        operator fun times(o: Quaternion) = Quaternion(
            w * o.x + x * o.w + y * o.z - z * o.y, w * o.y - x * o.z + y * o.w + z * o.x,
            w * o.z + x * o.y - y * o.x + z * o.w, w * o.w - x * o.x - y * o.y - z * o.z,
        )

        fun vector() = listOf(x, y, z, w).map { it.toFloat() }.toFloatArray()

        companion object {
            fun about(degrees: Double, x: Double, y: Double, z: Double): Quaternion {
                val half = Math.toRadians(degrees) / 2
                return Quaternion(x * sin(half), y * sin(half), z * sin(half), cos(half))
            }
        }
    }

    private fun assertHeld(tilt: Double, bearing: Double?, edge: Double, held: HowHeld?) {
        assertEquals(tilt, held!!.tiltDeg, 0.02)
        assertEquals(edge, held.edgeDeg, 0.1)
        if (bearing != null) assertEquals(0.0, (held.bearingDeg - bearing + 540) % 360 - 180, 0.02)
    }
}
