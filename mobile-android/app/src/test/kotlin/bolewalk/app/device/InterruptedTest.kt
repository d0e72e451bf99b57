package bolewalk.app.device

import android.net.Uri
import android.provider.MediaStore
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.InBook
import bolewalk.app.Look
import bolewalk.app.Walk
import bolewalk.app.app
import bolewalk.app.root
import bolewalk.app.to
import bolewalk.book.EntryValue
import bolewalk.book.Page
import java.io.File
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** A call comes in while the phone's own parts are at work in the real window. */
@RunWith(RobolectricTestRunner::class)
class InterruptedTest {
    @get:Rule val rule = createEmptyComposeRule()
    private val phone = RealParts()

    @After fun end() = Walk.endAll()

    private fun onATree(): Walk {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        return Walk(rule).to("site").to("tree").tap("full_check.start")
    }

    private fun Walk.fixes() = (state.form?.draft?.get("tree.position") as? EntryValue.Fixes)?.fixes.orEmpty().map { it.latDeg }

    @Test fun whileAPositionIsAveraged() {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        // The position was allowed before, so it is taken without asking.
        val walk = Walk(rule).to("site").tap("tree.add")
        fun fix(lat: Double) {
            phone.fix(lat, -73.5)
            walk.settle()
        }
        fix(42.10001)
        fix(42.10002)
        assertEquals(listOf(42.10001, 42.10002), walk.fixes())
        walk.away {
            assertEquals("nothing is sensed behind a call", 0, phone.receivers)
            phone.fix(43.0, -73.5)
        }
        assertEquals(1, phone.receivers)
        fix(42.10003)
        assertEquals("what was averaged before goes on, and nothing of meanwhile", listOf(42.10001, 42.10002, 42.10003), walk.fixes())
        for (orderly in listOf(true, false)) walk.endOfProcess(orderly)
        assertEquals(1, phone.receivers)
        fix(42.10004)
        assertEquals(4, walk.fixes().size)
        walk.tap("tree.position/sense")
        assertEquals(0, phone.receivers)
        walk.tap("form.confirm")
        assertTrue(walk.sees("42.1000"))
        walk.end()
    }

    @Test fun whileAPhotoIsOutToTheCameraApp() {
        val walk = onATree().tap("photo.add").tap("photo.file/take")
        val asked = phone.asked(walk, MediaStore.ACTION_IMAGE_CAPTURE)
        walk.away()
        // The camera app needs the memory, and the system ends ours.
        walk.endOfProcess(orderly = false)
        @Suppress("DEPRECATION") val into = asked.intent.getParcelableExtra<Uri>(MediaStore.EXTRA_OUTPUT)!!
        app.contentResolver.openOutputStream(into)!!.use { it.write(File(root, "fixtures/photos/progressive.jpg").readBytes()) }
        phone.given(walk, asked)
        assertTrue(walk.state.form?.draft?.get("photo.file") is EntryValue.PhotoFile)
        assertTrue(walk.sees(walk.state.words.photoReady))
        walk.tap("form.confirm")
        assertTrue(walk.state.said!!.words, !walk.state.said!!.refused)
        assertEquals(1, (walk.state.page as Page.Tree).v1.photos.size)
        walk.end()
    }
}
