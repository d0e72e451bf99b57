package bolewalk.app.device

import android.annotation.SuppressLint
import android.location.Location
import android.location.LocationListener
import android.location.LocationManager
import android.location.LocationManager.GPS_PROVIDER
import android.os.Bundle
import android.os.SystemClock
import androidx.activity.ComponentActivity

/** The framework's own location service: no service of a vendor, and it works without a network. */
class PhonePosition(private val activity: ComponentActivity, private val permission: Permission) : PositionSense {
    override fun listen(hear: (Heard<PlaceFix>) -> Unit): Listening =
        permission.whileGiven(refused = { hear(Heard.Refused) }) { receive(hear) }

    @SuppressLint("MissingPermission")
    private fun receive(hear: (Heard<PlaceFix>) -> Unit): Listening {
        val locations = activity.getSystemService(LocationManager::class.java)
        if (locations == null || GPS_PROVIDER !in locations.allProviders) {
            hear(Heard.Lacking)
            return Listening {}
        }
        val receiver = Receiver(hear)
        try {
            // Asked even while it is switched off: fixes come as soon as it is switched on.
            locations.requestLocationUpdates(GPS_PROVIDER, EVERY_MS, 0f, receiver, activity.mainLooper)
            hear(if (locations.isProviderEnabled(GPS_PROVIDER)) Heard.Waiting else Heard.Off)
        } catch (_: SecurityException) {
            hear(Heard.Refused)
        }
        return Listening { locations.removeUpdates(receiver) }
    }

    override fun allowed(): Boolean = permission.allowed

    override fun nowMs(): Long = SystemClock.elapsedRealtime()

    @SuppressLint("MissingPermission")
    override fun known(): PlaceFix? {
        val locations = activity.getSystemService(LocationManager::class.java)
        if (locations == null || !permission.allowed || GPS_PROVIDER !in locations.allProviders) return null
        return try {
            locations.getLastKnownLocation(GPS_PROVIDER)?.let(::fixOf)
        } catch (_: SecurityException) {
            null
        }
    }

    private class Receiver(private val hear: (Heard<PlaceFix>) -> Unit) : LocationListener {
        override fun onLocationChanged(location: Location) {
            hear(Heard.Value(fixOf(location)))
        }

        override fun onProviderDisabled(provider: String) = hear(Heard.Off)

        override fun onProviderEnabled(provider: String) = hear(Heard.Waiting)

        @Suppress("OVERRIDE_DEPRECATION") // systems before Android 10 call it
        override fun onStatusChanged(provider: String?, status: Int, extras: Bundle?) = Unit
    }

    private companion object {
        const val EVERY_MS = 1000L
    }
}

/** A fix as it came; the core says which can be used. Its time is the phone's steady clock: a receiver takes its own from
 *  the satellites, and a phone's may be set wrong or set back meanwhile. */
internal fun fixOf(location: Location): PlaceFix {
    val accuracy = location.accuracy.toDouble().takeIf { location.hasAccuracy() }
    return PlaceFix(location.latitude, location.longitude, accuracy, location.elapsedRealtimeNanos / 1_000_000)
}
