package bolewalk.app

import androidx.compose.ui.test.junit4.createEmptyComposeRule
import java.io.File
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** Every journey comes to its end on the real screens; its taps are counted and printed. */
@RunWith(RobolectricTestRunner::class)
class JourneyTest {
    @get:Rule val rule = createEmptyComposeRule()

    @Test fun everyJourneyComesToItsEnd() {
        val files = File(root, "tests/journeys").listFiles { file -> file.extension == "toml" }.orEmpty().sorted()
        assertTrue(files.isNotEmpty())
        files.forEach { file ->
            app.keeper.forget()?.destroy()
            app.filesDir.deleteRecursively()
            app.phone = "phone-1"
            val walk = Walk(rule)
            val journey = Journey(file)
            walk.look = Controls(file.name)::check
            val walker = JourneyWalker(walk, journey)
            journey.steps.forEachIndexed { number, step ->
                try {
                    walker.step(step)
                } catch (fault: Throwable) {
                    throw AssertionError("${file.name}, step ${number + 1}, $step: ${fault.message}", fault)
                }
            }
            println("${file.name}: ${journey.steps.size} steps, ${walk.taps} taps and keys")
            walk.end()
        }
    }
}
