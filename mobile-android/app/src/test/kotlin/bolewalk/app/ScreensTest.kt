package bolewalk.app

import androidx.compose.ui.test.junit4.createEmptyComposeRule
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.ParameterizedRobolectricTestRunner
import org.robolectric.ParameterizedRobolectricTestRunner.Parameters

/** Every screen in every state: legible, for a gloved hand, and as its committed picture shows it. */
@RunWith(ParameterizedRobolectricTestRunner::class)
class ScreensTest(private val look: Look) {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    @Test fun everyScreenKeepsTheLawsAndItsPicture() {
        look.setPhone()
        val faults = mutableListOf<String>()
        for ((inBook, states) in screenStates.groupBy { it.inBook }) {
            inBook.lay(look, rule)
            for (state in states) {
                try {
                    faults += look(state)
                } catch (fault: Throwable) {
                    faults += "${state.name}: ${fault.message ?: fault}\n" + fault.stackTrace.filter { "bolewalk" in it.className }.take(8).joinToString("\n")
                }
            }
        }
        faults.distinct().forEach(::println)
        assertEquals("what is printed above is wrong with $look", 0, faults.distinct().size)
    }

    private fun look(state: ScreenState): List<String> {
        try {
            val walk = Walk(rule)
            state.reach(walk)
            val faults = mutableListOf<String>()
            var screenful = 0
            do {
                screenful++
                val picture = walk.picture()
                faults += (Controls.faults(walk) + Letters.faults(walk, picture)).map { "${state.name}, screenful $screenful: $it" }
                if (screenful <= minOf(look.screenfuls, state.screenfuls)) {
                    val name = if (screenful == 1) state.name else "${state.name}-$screenful"
                    Album.compare("$look/$name", picture)?.let { faults += it }
                }
            } while (screenful < MOST && walk.scroll())
            return faults
        } finally {
            Walk.endAll()
        }
    }

    companion object {
        /** No screen is longer. */
        private const val MOST = 40

        @JvmStatic
        @Parameters(name = "{0}")
        fun looks(): List<Array<Any>> = Look.entries.map { arrayOf(it) }
    }
}
