package bolewalk.app

import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.device.PlaceFix
import bolewalk.book.PageAddress
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** The first minute with an empty phone. */
@RunWith(RobolectricTestRunner::class)
class FirstStepsTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    @Test fun aSiteIsMadeAndOpened() {
        val walk = Walk(rule)
        assertTrue(walk.sees("Field book"))
        walk.tap("site.add").type("site.name", "Heron Mill").tap("form.confirm")
        assertTrue(walk.state.address is PageAddress.Site)
        assertTrue(walk.sees("Heron Mill"))
        assertTrue(walk.sees("There is no rescue plan for this property."))
        walk.tap("go.book").tap("edit.undo")
        assertTrue(walk.state.address is PageAddress.Book)
        assertFalse(walk.sees("Heron Mill"))
        walk.end()
    }

    @Test fun whereThePhoneIsIsAskedAgainWheneverItComesBack() {
        val walk = Walk(rule)
        assertEquals(null, (walk.state.address as PageAddress.Book).near)
        app.doubles.lastKnown = PlaceFix(42.3314, -71.1211, 4.0, 1_000)
        walk.away()
        assertEquals(42.3314, (walk.state.address as PageAddress.Book).near!!.latDeg, 0.0)
        walk.end()
    }
}
