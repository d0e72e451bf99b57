package bolewalk.app

import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.ComposeTestRule
import androidx.compose.ui.test.onFirst
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performScrollToNode
import androidx.compose.ui.test.performTextReplacement
import androidx.test.core.app.ApplicationProvider
import bolewalk.app.field.FieldState
import org.robolectric.Robolectric
import org.robolectric.android.controller.ActivityController

val app: TestApplication get() = ApplicationProvider.getApplicationContext()

/** A finger on the real activity: finds what it taps by tag, and counts what it does. */
class Walk(private val rule: ComposeTestRule) {
    var controller: ActivityController<MainActivity> = Robolectric.buildActivity(MainActivity::class.java).setup()
    var taps = 0
        private set

    val state: FieldState get() = controller.get().field.state.value

    /** Waits until the core has answered everything. */
    fun settle() {
        rule.waitUntil(30_000) {
            rule.waitForIdle()
            state.pending == 0 && (state.page != null || state.trouble != null)
        }
        rule.waitForIdle()
    }

    fun tap(tag: String): Walk = apply { tap(node(hasTestTag(tag))) }

    fun tap(node: SemanticsNodeInteraction) {
        taps++
        node.performClick()
        settle()
    }

    /** A key counts as a tap. */
    fun type(tag: String, text: String): Walk = apply {
        taps += text.length
        node(hasTestTag(tag)).performTextReplacement(text)
        settle()
    }

    fun sees(text: String): Boolean = exists(hasText(text, substring = true))

    /** Whether it is on the screen, or in the list where one can scroll to it. */
    fun exists(matcher: SemanticsMatcher): Boolean {
        if (rule.onAllNodes(matcher).fetchSemanticsNodes().isNotEmpty()) return true
        if (rule.onAllNodes(hasTestTag("page")).fetchSemanticsNodes().isEmpty()) return false
        return runCatching { rule.onNode(hasTestTag("page")).performScrollToNode(matcher) }.isSuccess
    }

    /** Brings it into sight. */
    fun node(matcher: SemanticsMatcher): SemanticsNodeInteraction {
        if (!exists(matcher)) throw AssertionError("not on the screen: ${matcher.description}")
        val node = rule.onAllNodes(matcher).onFirst()
        runCatching { node.performScrollTo() }
        return node
    }

    fun end() {
        controller.pause().stop().destroy()
    }
}
