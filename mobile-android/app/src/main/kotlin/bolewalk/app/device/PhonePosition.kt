package bolewalk.app.device

import android.Manifest.permission.ACCESS_COARSE_LOCATION
import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.annotation.SuppressLint
import android.content.pm.PackageManager.PERMISSION_GRANTED
import android.location.Location
import android.location.LocationListener
import android.location.LocationManager
import android.os.Bundle
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.RequestMultiplePermissions

/** The framework's own location service: no service of a vendor, and it works without a network. */
class PhonePosition(private val activity: ComponentActivity) : PositionSense {
    private var waiting: (() -> Unit)? = null
    private val permission = activity.registerForActivityResult(RequestMultiplePermissions()) {
        waiting?.invoke()
        waiting = null
    }

    override fun listen(hear: (Heard<PlaceFix>) -> Unit): Listening {
        val locations = checkNotNull(activity.getSystemService(LocationManager::class.java))
        val listener = object : LocationListener {
            override fun onLocationChanged(location: Location) {
                fixOf(location)?.let { hear(Heard.Value(it)) }
            }

            override fun onProviderDisabled(provider: String) = hear(Heard.Off)

            override fun onProviderEnabled(provider: String) = Unit

            @Suppress("OVERRIDE_DEPRECATION") // systems before Android 10 call it
            override fun onStatusChanged(provider: String?, status: Int, extras: Bundle?) = Unit
        }
        val start = { start(locations, listener, hear) }
        if (allowed()) {
            start()
        } else {
            waiting = { if (allowed()) start() else hear(Heard.Refused) }
            permission.launch(arrayOf(ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION))
        }
        return Listening {
            waiting = null
            locations.removeUpdates(listener)
        }
    }

    private fun allowed() = activity.checkSelfPermission(ACCESS_FINE_LOCATION) == PERMISSION_GRANTED

    @SuppressLint("MissingPermission")
    private fun start(locations: LocationManager, listener: LocationListener, hear: (Heard<PlaceFix>) -> Unit) {
        val provider = LocationManager.GPS_PROVIDER
        when {
            provider !in locations.allProviders -> hear(Heard.Lacking)
            !locations.isProviderEnabled(provider) -> hear(Heard.Off)
            else -> locations.requestLocationUpdates(provider, EVERY_MS, 0f, listener, activity.mainLooper)
        }
    }

    private companion object {
        const val EVERY_MS = 1000L
    }
}

/** A fix that can be meant: a receiver without a fix may say 0°/0°, or no number at all. */
internal fun fixOf(location: Location): PlaceFix? {
    val (lat, lon) = location.latitude to location.longitude
    if (!lat.isFinite() || !lon.isFinite() || lat == 0.0 && lon == 0.0) return null
    val accuracy = location.accuracy.toDouble().takeIf { location.hasAccuracy() && it.isFinite() && it > 0 }
    return PlaceFix(lat, lon, accuracy)
}
