package bolewalk.app

import android.content.Intent
import android.os.Bundle
import android.os.Looper
import android.os.Parcel
import androidx.activity.ComponentActivity
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.click
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.ComposeTestRule
import androidx.compose.ui.test.onFirst
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performScrollToNode
import androidx.compose.ui.test.performSemanticsAction
import androidx.compose.ui.test.performTextReplacement
import androidx.compose.ui.test.performTouchInput
import androidx.test.core.app.ApplicationProvider
import androidx.test.espresso.IdlingPolicies
import bolewalk.app.field.FieldState
import bolewalk.app.look.STEP_DP
import bolewalk.app.look.numberIn
import bolewalk.app.look.typed
import bolewalk.book.CommandKind
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import java.time.Duration
import java.util.concurrent.CountDownLatch
import java.util.concurrent.TimeUnit
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.launch
import kotlin.math.abs
import kotlin.math.sign
import kotlin.math.sqrt
import org.junit.Assert.assertEquals
import org.robolectric.Robolectric
import org.robolectric.Shadows.shadowOf
import org.robolectric.android.controller.ActivityController

val app: TestApplication get() = ApplicationProvider.getApplicationContext()

/** A finger on the real activity: finds what it taps by tag, and counts what it does. */
class Walk(val rule: ComposeTestRule) {
    private var controller: ActivityController<MainActivity> = Robolectric.buildActivity(MainActivity::class.java).setup()

    /** Taps and keys. */
    var taps = 0
        private set

    /** Whether the book answers nothing just now. */
    private var slow = false

    /** Is called when the screen has come to rest. */
    var look: (Walk) -> Unit = {}

    val activity: MainActivity get() = controller.get()
    val state: FieldState get() = activity.field.state.value

    init {
        IdlingPolicies.setMasterPolicyTimeout(10, TimeUnit.SECONDS)
        open += this
        settle()
    }

    /** Waits until the core has answered everything. */
    fun settle() {
        rest()
        if (!slow) look(this)
    }

    private fun rest() {
        // What was put off to the next frame: the test's clock stands still, and nothing else would bring that frame.
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(50))
        if (slow) return rule.waitForIdle()
        rule.waitUntil(60_000) {
            rule.waitForIdle()
            state.pending == 0 && (state.page != null || state.trouble != null)
        }
        rule.waitForIdle()
    }

    fun tap(tag: String): Walk = tap(hasTestTag(tag))

    fun tap(matcher: SemanticsMatcher, times: Int = 1): Walk = apply {
        val node = node(matcher)
        if (times > 1) onSlowDisk { repeat(times) { node.performClick() } } else node.performClick()
        taps += times
        settle()
    }

    /** What is done meanwhile gets no answer before it is done: so two quick taps both find the button. */
    fun onSlowDisk(act: () -> Unit) {
        val (began, done) = CountDownLatch(1) to CountDownLatch(1)
        CoroutineScope(Dispatchers.Default).launch {
            app.keeper.ask {
                began.countDown()
                done.await()
            }
        }
        began.await()
        slow = true
        try {
            act()
        } finally {
            slow = false
            done.countDown()
        }
        settle()
    }

    /** A key counts as a tap. */
    fun type(tag: String, text: String): Walk = apply {
        taps += 1 + text.length
        node(hasTestTag(tag)).performTextReplacement(text)
        settle()
    }

    /** Touches a drawing at parts of its width and height. */
    fun touch(tag: String, at: Offset): Walk = apply {
        node(hasTestTag(tag)).performTouchInput { click(Offset(at.x * width, at.y * height)) }
        taps++
        settle()
    }

    /** Drags a dial to a number, without letting it go: one drag, quick while it is far and slow when it is near. */
    fun dial(input: String, target: Double): Walk = apply {
        taps++
        val dial = node(hasTestTag("$input/dial"))
        val step = dial.fetchSemanticsNode().layoutInfo.density.density * STEP_DP
        dial.performTouchInput { down(center) }
        dial.performTouchInput { moveBy(Offset(viewConfiguration.touchSlop + step, 0f), 1000) }
        for (turn in 1..200) {
            settle()
            val left = target - (numberIn(typed(state.form?.draft?.get(input))) ?: 0.0)
            if (abs(left) < 1e-9) break
            val steps = left / stepOf(input)
            if (abs(steps) > 20) {
                dial.performTouchInput { moveBy(Offset((sqrt(abs(steps) / 8) * sign(steps)).toFloat() * step, 0f), 16) }
            } else {
                dial.performTouchInput { moveBy(Offset(steps.toFloat() * step, 0f), 10_000) }
            }
        }
        dial.performTouchInput { up() }
        settle()
        assertEquals(target, numberIn(typed(state.form?.draft?.get(input))))
    }

    private fun stepOf(input: String): Double =
        (state.form?.offer?.inputs?.find { it.id == input }?.kind as InputKind.Number).step

    fun sees(text: String): Boolean = exists(hasText(text, substring = true))

    /** Whether it is on the screen, or in the list where one can scroll to it. */
    fun exists(matcher: SemanticsMatcher): Boolean {
        if (rule.onAllNodes(matcher).fetchSemanticsNodes().isNotEmpty()) return true
        rest()
        if (rule.onAllNodes(hasTestTag("page")).fetchSemanticsNodes().isEmpty()) return false
        return runCatching { rule.onNode(hasTestTag("page")).performScrollToNode(matcher) }.isSuccess
    }

    /** Brings it into sight. */
    fun node(matcher: SemanticsMatcher): SemanticsNodeInteraction {
        if (!exists(matcher) && !exists(matcher)) throw AssertionError("not on the screen: ${matcher.description}; ${state.address}, form ${state.form?.offer?.id}, said ${state.said}")
        val node = rule.onAllNodes(matcher).onFirst()
        runCatching { node.performScrollTo() }
        // A drawing that comes now moves what stands below it.
        rest()
        exists(matcher)
        runCatching { node.performScrollTo() }
        return node
    }

    /** A reader of metres; a new phone reads feet. */
    fun units(system: String) {
        val units = Entry("settings.units", EntryValue.Choice(system))
        app.keeper.book().act(CommandKind.CHANGE_SETTINGS, "", listOf(units), "units $system")
        away()
    }

    fun metric() = units("metric")

    /** The window, when all that is drawn apart from the page has come. */
    fun picture(): Picture {
        var before = IntArray(0)
        repeat(LOOKS) {
            rest()
            val now = pictureOf(activity)
            if (now.pixels.contentEquals(before)) return now
            before = now.pixels
            Thread.sleep(40)
        }
        error("the screen does not come to rest")
    }

    /** Scrolls what is on the screen on by most of its height; false at its end. */
    fun scroll(): Boolean {
        val parts = rule.onAllNodes(SemanticsMatcher("scrolls") { node ->
            val range = node.config.getOrNull(SemanticsProperties.VerticalScrollAxisRange)
            range != null && range.value() < range.maxValue()
        })
        if (parts.fetchSemanticsNodes().isEmpty()) return false
        val part = parts.onFirst()
        val height = part.fetchSemanticsNode().size.height
        part.performSemanticsAction(SemanticsActions.ScrollBy) { it(0f, height * MOST_OF_IT) }
        rule.waitForIdle()
        return true
    }

    fun back(): Walk = apply {
        activity.onBackPressedDispatcher.onBackPressed()
        settle()
    }

    /** Another app was in front meanwhile, and did something. */
    fun away(there: () -> Unit = {}) {
        controller.pause()
        val other = Robolectric.buildActivity(ComponentActivity::class.java).setup()
        controller.stop()
        there()
        other.pause().stop().destroy()
        controller.restart().start().resume()
        settle()
    }

    /** Another app sends something to the open window. */
    fun sent(intent: Intent): Walk = apply {
        controller.newIntent(intent)
        settle()
    }

    fun recreate() {
        controller.recreate()
        settle()
    }

    /** The system ends the process and brings the window back from its saved state, as it came through a Parcel. */
    fun endOfProcess(orderly: Boolean) {
        val out = Bundle()
        controller.pause().stop().saveInstanceState(out).destroy()
        val book = app.keeper.forget()
        if (orderly) book?.destroy()
        val saved = Parcel.obtain().run {
            writeBundle(out)
            setDataPosition(0)
            readBundle(javaClass.classLoader).also { recycle() }
        }
        controller = Robolectric.buildActivity(MainActivity::class.java).setup(saved)
        settle()
    }

    /** Puts this phone down and takes up another. */
    fun takeUp(phone: String) {
        controller.pause().stop().destroy()
        app.keeper.forget()?.destroy()
        app.phone = phone
        controller = Robolectric.buildActivity(MainActivity::class.java).setup()
        settle()
    }

    fun end() {
        if (!open.remove(this)) return
        controller.pause().stop().destroy()
        // What is still posted would be lost between two tests, and whoever waits for it would wait for ever.
        shadowOf(Looper.getMainLooper()).idle()
    }

    companion object {
        private val open = mutableListOf<Walk>()

        /** A test that failed leaves no window to the next one. */
        fun endAll() = open.toList().forEach { it.end() }

        private const val LOOKS = 50
        private const val MOST_OF_IT = .85f
    }
}
