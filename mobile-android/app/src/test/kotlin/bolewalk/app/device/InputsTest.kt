package bolewalk.app.device

import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.Walk
import bolewalk.app.app
import bolewalk.book.EntryValue
import bolewalk.book.SensedFix
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** What the senses say, in the forms of the real screens. */
@RunWith(RobolectricTestRunner::class)
class InputsTest {
    @get:Rule val rule = createEmptyComposeRule()
    private val place = app.doubles.place
    private val held = app.doubles.held

    private fun onASite() = Walk(rule).tap("site.add").type("site.name", "Heron Mill").tap("form.confirm")

    private fun inAnInspection() = onASite().tap("tree.add").tap("form.confirm").tap("full_check.start")

    private fun Walk.entered(input: String) = state.form!!.draft[input]

    @Test fun aLeanByTheEdgeOrByThePictureAndTypedWithoutSensor() {
        held.say(Heard.Value(HowHeld(2.0, 0.0, 5.0, 4.0)))
        val walk = inAnInspection().tap("inspection.record")
        walk.tap("tree.lean/sense")
        assertEquals(EntryValue.Tilt(5.0), walk.entered("tree.lean"))
        walk.tap("tree.lean/aim")
        assertTrue(walk.sees(walk.state.words.sightLacking))
        walk.tap("tree.lean/sense")
        assertEquals(EntryValue.Tilt(4.0), walk.entered("tree.lean"))
        held.say(Heard.Lacking)
        walk.settle()
        assertTrue(walk.sees(walk.state.words.noSensor))
        walk.type("tree.lean", "6")
        assertEquals(EntryValue.Number("6"), walk.entered("tree.lean"))
        walk.end()
        assertEquals(0, held.listened)
    }

    @Test fun aHeightTakesTheLineOfSight() {
        held.say(Heard.Value(HowHeld(31.5, 0.0, 40.0, 3.0)))
        val walk = inAnInspection().tap("inspection.height_by_angles")
        walk.tap("height.up/aim").tap("height.up/sense")
        assertEquals(EntryValue.Tilt(31.5), walk.entered("height.up"))
        walk.end()
    }

    @Test fun aPictureThatIsNoneGetsTheCoresWordsAndNothingIsLost() {
        val walk = inAnInspection().tap("photo.add")
        app.doubles.next = File(app.cacheDir, "oak.jpg").apply { writeText("no picture at all") }
        walk.tap("photo.file/choose")
        assertTrue(walk.entered("photo.file") is EntryValue.PhotoFile)
        walk.tap("form.confirm")
        assertTrue(walk.state.said!!.refused)
        assertTrue(walk.state.said!!.words.isNotBlank())
        assertTrue("the form stays", walk.state.form != null)
        walk.end()
    }

    @Test fun aPositionThatIsOffOrRefusedShowsTheWayOn() {
        val walk = onASite().tap("tree.add").tap("tree.position/sense")
        assertTrue(walk.sees(walk.state.words.positionWaiting))
        for ((heard, words) in with(walk.state.words) { mapOf(Heard.Off to positionOff, Heard.Refused to positionRefused) }) {
            place.say(heard)
            walk.settle()
            assertTrue(walk.sees(words))
            assertTrue(walk.exists(hasTestTag("tree.position/settings")))
        }
        place.say(Heard.Value(PlaceFix(42.1, -73.5, 4.0, 7)))
        walk.settle()
        assertEquals(EntryValue.Fixes(listOf(SensedFix(42.1, -73.5, 4.0, 7)), 0), walk.entered("tree.position"))
        assertFalse(walk.exists(hasTestTag("tree.position/settings")))
        walk.tap("tree.position/sense")
        assertEquals(0, place.listened)
        walk.end()
    }
}
