package bolewalk.app.device

import android.content.pm.PackageManager.PERMISSION_GRANTED
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.RequestMultiplePermissions
import androidx.lifecycle.Lifecycle
import androidx.lifecycle.LifecycleEventObserver

/** A permission that is asked for when it is first needed. The first of the [names] decides. */
class Permission(private val activity: ComponentActivity, private vararg val names: String) {
    private val waiting = mutableListOf<(Boolean) -> Unit>()
    private val question = activity.registerForActivityResult(RequestMultiplePermissions()) { answers ->
        val told = waiting.toList()
        // No answers at all: an earlier question was still open, and its answer comes later.
        if (allowed || answers.isNotEmpty()) waiting.clear()
        told.forEach { it(allowed) }
    }

    val allowed: Boolean get() = activity.checkSelfPermission(names.first()) == PERMISSION_GRANTED

    fun ask(then: (Boolean) -> Unit): Listening {
        if (allowed) {
            then(true)
            return Listening {}
        }
        waiting += then
        if (waiting.size == 1) question.launch(arrayOf(*names))
        return Listening { waiting -= then }
    }

    /** Listens while the window is in sight and the permission is given. The person is asked once; later the answer may
     *  still change in the system's settings. */
    fun whileGiven(refused: () -> Unit, listen: () -> Listening): Listening {
        var asked = false
        return activity.whileInSight {
            if (asked && !allowed) {
                refused()
                return@whileInSight Listening {}
            }
            asked = true
            var open: Listening? = null
            val question = ask { given -> if (given) open = listen() else refused() }
            Listening {
                question.stop()
                open?.stop()
            }
        }
    }
}

/** Listens while the window is in sight: behind another app nothing is sensed and no battery is used. */
internal fun ComponentActivity.whileInSight(listen: () -> Listening): Listening {
    var open: Listening? = null
    val watch = LifecycleEventObserver { _, event ->
        when (event) {
            Lifecycle.Event.ON_START -> open = listen()
            Lifecycle.Event.ON_STOP -> {
                open?.stop()
                open = null
            }
            else -> Unit
        }
    }
    // A window that is in sight already says so to a new observer at once.
    lifecycle.addObserver(watch)
    return Listening {
        lifecycle.removeObserver(watch)
        open?.stop()
        open = null
    }
}
