package bolewalk.app.device

import android.Manifest.permission.ACCESS_COARSE_LOCATION
import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.content.pm.PackageManager
import android.location.Location
import android.location.LocationManager
import android.location.LocationManager.GPS_PROVIDER
import android.provider.Settings
import bolewalk.app.app
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** The real receiver part, on the framework's own location service. */
@RunWith(RobolectricTestRunner::class)
class PositionTest {
    private val locations = app.getSystemService(LocationManager::class.java)!!
    private val heard = Heardings<PlaceFix>()
    private var seconds = 0L

    private fun location(lat: Double, lon: Double, accuracy: Float = 4f) = Location(GPS_PROVIDER).apply {
        latitude = lat
        longitude = lon
        this.accuracy = accuracy
        // The satellites' time is another than the phone's.
        time = 1_790_000_000_000
        elapsedRealtimeNanos = ++seconds * 1_000_000_000
    }

    private fun OnPhone.at(lat: Double, lon: Double, accuracy: Float = 4f) {
        shadowOf(locations).simulateLocation(location(lat, lon, accuracy))
        settle()
    }

    private fun receivers() = shadowOf(locations).getLegacyLocationRequests(GPS_PROVIDER).size

    private fun allowed(): OnPhone {
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION)
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        return OnPhone()
    }

    @Test fun everyFixIsHeardUntilNobodyListens() {
        val phone = allowed()
        val listening = phone.device.position.listen(heard)
        assertEquals(listOf(Heard.Waiting), heard.all)
        phone.at(42.10001, -73.5)
        phone.at(42.10002, -73.5, 3f)
        phone.at(42.10003, -73.5, 2f)
        assertEquals(listOf(4.0, 3.0, 2.0), heard.all.drop(1).map { (it as Heard.Value).value.accuracyM })
        assertEquals(PlaceFix(42.10003, -73.5, 2.0, 3000), (heard.last as Heard.Value).value)
        listening.stop()
        assertEquals(0, receivers())
        phone.at(42.2, -73.5)
        assertEquals(4, heard.all.size)
    }

    @Test fun aFixIsHandedOnAsItCame() {
        // Which fix can be used is the core's to say.
        assertEquals(PlaceFix(0.0, 0.0, 4.0, 1000), fixOf(location(0.0, 0.0)))
        assertTrue(fixOf(location(Double.NaN, 8.0)).latDeg.isNaN())
        assertNull(fixOf(Location(GPS_PROVIDER)).accuracyM)
    }

    @Test fun whereThePhoneLastWasAsksNobody() {
        val phone = OnPhone()
        assertNull(phone.device.position.known())
        assertNull(shadowOf(phone.window).lastRequestedPermission)
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION)
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        phone.at(42.1, -73.5)
        assertEquals(42.1, phone.device.position.known()!!.latDeg, 0.0)
    }

    @Test fun switchedOffAndOnAgain() {
        val phone = allowed()
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, false)
        phone.device.position.listen(heard)
        phone.settle()
        assertEquals(Heard.Off, heard.last)
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        phone.settle()
        assertEquals(Heard.Waiting, heard.last)
        phone.at(42.1, -73.5)
        assertEquals(42.1, (heard.last as Heard.Value).value.latDeg, 0.0)
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, false)
        phone.settle()
        assertEquals(Heard.Off, heard.last)
    }

    @Test fun theFirstListeningAsksAndARefusalIsHeard() {
        val phone = OnPhone()
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        assertNull(shadowOf(phone.window).lastRequestedPermission)
        phone.device.position.listen(heard)
        val asked = shadowOf(phone.window).lastRequestedPermission
        assertEquals(listOf(ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION), asked.requestedPermissions.toList())
        phone.answer(asked.requestCode, asked.requestedPermissions, PackageManager.PERMISSION_DENIED)
        assertEquals(Heard.Refused, heard.last)
        assertEquals(0, receivers())
        // Later the person allows it in the system's settings and comes back.
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION)
        phone.controller.pause().stop().restart().start().resume()
        phone.at(42.1, -73.5)
        assertEquals(42.1, (heard.last as Heard.Value).value.latDeg, 0.0)
    }

    @Test fun anAnswerThatComesLateOrNotAtAll() {
        val phone = OnPhone()
        shadowOf(locations).setProviderEnabled(GPS_PROVIDER, true)
        phone.device.position.listen(heard).stop()
        val asked = shadowOf(phone.window).lastRequestedPermission
        // The framework answers at once with nothing where an earlier question is still open.
        phone.device.position.listen(heard)
        assertEquals(Heard.Refused, heard.last)
        shadowOf(app).grantPermissions(ACCESS_FINE_LOCATION)
        phone.answer(asked.requestCode, asked.requestedPermissions, PackageManager.PERMISSION_GRANTED)
        assertEquals(Heard.Waiting, heard.last)
    }

    @Test fun nothingIsReceivedBehindAnotherApp() {
        val phone = allowed()
        val listening = phone.device.position.listen(heard)
        assertEquals(1, receivers())
        phone.controller.pause().stop()
        assertEquals(0, receivers())
        phone.controller.restart().start().resume()
        assertEquals(1, receivers())
        listening.stop()
        phone.controller.pause().stop().restart().start().resume()
        assertEquals(0, receivers())
    }

    @Test fun aPhoneWithoutAReceiverSaysSo() {
        val phone = allowed()
        shadowOf(locations).removeProvider(GPS_PROVIDER)
        phone.device.position.listen(heard)
        assertEquals(listOf(Heard.Lacking), heard.all)
    }

    @Test fun theSettingsOpenWhereTheRefusalCanBeLifted() {
        val phone = OnPhone()
        phone.device.settings.open(Setting.POSITION)
        assertEquals(Settings.ACTION_LOCATION_SOURCE_SETTINGS, shadowOf(phone.window).nextStartedActivity.action)
        phone.device.settings.open(Setting.PERMISSIONS)
        val opened = shadowOf(phone.window).nextStartedActivity
        assertEquals(Settings.ACTION_APPLICATION_DETAILS_SETTINGS, opened.action)
        assertEquals("package:bolewalk.app", opened.dataString)
    }
}

internal fun OnPhone.answer(code: Int, names: Array<String>, with: Int) {
    @Suppress("DEPRECATION") // as the framework itself answers
    window.onRequestPermissionsResult(code, names, IntArray(names.size) { with })
    settle()
}
