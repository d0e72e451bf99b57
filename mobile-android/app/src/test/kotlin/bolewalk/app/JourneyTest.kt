package bolewalk.app

import androidx.compose.ui.test.junit4.createEmptyComposeRule
import java.io.File
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.ParameterizedRobolectricTestRunner
import org.robolectric.ParameterizedRobolectricTestRunner.Parameters

/** Every journey comes to its end on the real screens; its taps are counted and printed. */
@RunWith(ParameterizedRobolectricTestRunner::class)
class JourneyTest(private val name: String) {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    @Test fun comesToItsEnd() {
        val journey = Journey(File(journeys, "$name.toml"))
        val walk = Walk(rule)
        val faults = mutableSetOf<String>()
        walk.look = { Controls.faults(it).mapTo(faults) { fault -> "${it.state.address}, form ${it.state.form?.offer?.id}: $fault" } }
        val walker = JourneyWalker(walk, journey)
        journey.steps.forEachIndexed { number, step ->
            try {
                walker.step(step)
            } catch (fault: Throwable) {
                throw AssertionError("step ${number + 1}, $step: ${fault.message}", fault)
            }
        }
        println("$name: ${journey.steps.size} steps, ${walk.taps} taps and keys")
        walk.end()
        assertEquals("", faults.joinToString("\n"))
    }

    companion object {
        private val journeys = File(root, "tests/journeys")

        @JvmStatic
        @Parameters(name = "{0}")
        fun names(): List<Array<Any>> = journeys.listFiles { file -> file.extension == "toml" }.orEmpty()
            .map { it.nameWithoutExtension }.sorted().map { arrayOf(it) }
    }
}
