package bolewalk.app.device

import android.os.Looper
import androidx.activity.ComponentActivity
import androidx.lifecycle.SavedStateHandle
import bolewalk.app.app
import bolewalk.app.field.FieldModel
import bolewalk.app.field.Papers
import java.io.File
import java.time.Duration
import org.robolectric.Robolectric
import org.robolectric.Shadows.shadowOf
import org.robolectric.android.controller.ActivityController

/** A bare window with the real device parts and a real field model. */
class OnPhone {
    val controller: ActivityController<ComponentActivity> = Robolectric.buildActivity(ComponentActivity::class.java).create()
    val window: ComponentActivity = controller.get()
    val field = FieldModel(app.keeper, SavedStateHandle(), Papers(File(app.cacheDir, "handed")))
    val device = phoneDevice(window, field)

    init {
        controller.start().resume()
        settle()
    }

    /** Until nothing is under way. */
    fun settle(until: () -> Boolean = { field.state.value.pending == 0 }) {
        val end = System.nanoTime() + 30_000_000_000
        do {
            shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(20))
            if (until()) return
            Thread.sleep(5)
        } while (System.nanoTime() < end)
        throw AssertionError("does not come to rest: ${field.state.value}")
    }

    fun said(): String? = field.state.value.said?.words
}

/** All that a sense says. */
class Heardings<T> : (Heard<T>) -> Unit {
    val all = mutableListOf<Heard<T>>()
    val last: Heard<T>? get() = all.lastOrNull()

    override fun invoke(heard: Heard<T>) {
        all += heard
    }
}
