package bolewalk.app

import android.content.Intent
import android.os.Bundle
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.activity.viewModels
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.lifecycle.compose.collectAsStateWithLifecycle
import androidx.lifecycle.createSavedStateHandle
import androidx.lifecycle.viewmodel.initializer
import androidx.lifecycle.viewmodel.viewModelFactory
import bolewalk.app.device.Device
import bolewalk.app.device.LocalDevice
import bolewalk.app.device.takeHandedIn
import bolewalk.app.field.FieldModel
import bolewalk.app.field.Papers
import bolewalk.app.look.ForReader
import bolewalk.app.look.LocalWords
import bolewalk.app.screens.FieldScreen
import bolewalk.book.LatLon
import java.io.File

/** The one window: it shows the page where the person is, and listens to camera, sensors and fingers. */
class MainActivity : ComponentActivity() {
    val field: FieldModel by viewModels {
        viewModelFactory {
            initializer {
                FieldModel((application as BolewalkApplication).keeper, createSavedStateHandle(), Papers(File(cacheDir, "handed")))
            }
        }
    }

    private lateinit var device: Device

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        enableEdgeToEdge()
        device = (application as BolewalkApplication).deviceOf(this, field)
        // The phone may have got another language.
        if (savedInstanceState == null) takeHandedIn(this, intent, field) else field.refresh()
        setContent {
            val state by field.state.collectAsStateWithLifecycle()
            CompositionLocalProvider(LocalDevice provides device, LocalWords provides state.words) {
                ForReader(state.reader) {
                    BackHandler(state.handedIn != null || state.form != null || state.way.size > 1) { field.back() }
                    FieldScreen(state, field)
                }
            }
        }
    }

    /** Sites near the person come first, wherever the phone was carried meanwhile. */
    override fun onStart() {
        super.onStart()
        device.position.known()?.let { field.near(LatLon(it.latDeg, it.lonDeg)) }
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        takeHandedIn(this, intent, field)
    }

    /** The day may have changed meanwhile. */
    override fun onRestart() {
        super.onRestart()
        field.refresh()
    }
}
