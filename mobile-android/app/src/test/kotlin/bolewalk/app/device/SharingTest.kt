package bolewalk.app.device

import android.content.ComponentName
import android.content.Intent
import android.content.IntentFilter
import android.net.Uri
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.InBook
import bolewalk.app.Look
import bolewalk.app.Walk
import bolewalk.app.app
import bolewalk.app.to
import java.io.File
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** Papers, exports and packs on their way to another app. */
@RunWith(RobolectricTestRunner::class)
class SharingTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    private val viewer = ComponentName("org.other.viewer", "org.other.viewer.Viewer")

    private fun written(name: String) = File(app.cacheDir, "handed/$name").apply { parentFile!!.mkdirs(); writeText("bytes") }

    @Test fun oneFileIsHandedOverToReadAndNoMore() {
        val phone = OnPhone()
        assertTrue(phone.device.sharing.hand(written("site-summary.pdf").path))
        val chooser = shadowOf(phone.window).nextStartedActivity
        assertEquals(Intent.ACTION_CHOOSER, chooser.action)
        @Suppress("DEPRECATION") val send = chooser.getParcelableExtra<Intent>(Intent.EXTRA_INTENT)!!
        @Suppress("DEPRECATION") val uri = send.getParcelableExtra<Uri>(Intent.EXTRA_STREAM)!!
        assertEquals("application/pdf", send.type)
        assertEquals(Intent.FLAG_GRANT_READ_URI_PERMISSION, send.flags and (Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION))
        assertEquals(uri, send.clipData!!.getItemAt(0).uri)
        assertEquals("bytes", app.contentResolver.openInputStream(uri)!!.reader().readText())
        @Suppress("DEPRECATION") val left = chooser.getParcelableArrayExtra(Intent.EXTRA_EXCLUDE_COMPONENTS)!!
        assertEquals(listOf(ComponentName(phone.window, phone.window.javaClass)), left.toList())
    }

    @Test fun oneFileIsOpenedToReadAndNoMore() {
        shadowOf(app.packageManager).addActivityIfNotPresent(viewer)
        shadowOf(app.packageManager).addIntentFilterForActivity(
            viewer,
            IntentFilter(Intent.ACTION_VIEW).apply {
                addCategory(Intent.CATEGORY_DEFAULT)
                addDataScheme("content")
                addDataType("application/pdf")
            },
        )
        shadowOf(app).checkActivities(true)
        val phone = OnPhone()
        assertTrue(phone.device.sharing.open(written("site-summary.pdf").path))
        val view = shadowOf(phone.window).nextStartedActivity
        assertEquals(listOf(Intent.ACTION_VIEW, "application/pdf"), listOf(view.action, view.type))
        assertEquals(Intent.FLAG_GRANT_READ_URI_PERMISSION, view.flags and (Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION))
        app.contentResolver.openInputStream(view.data!!)!!.use { assertEquals("bytes", it.reader().readText()) }
        // No app shows this one.
        assertFalse(phone.device.sharing.open(written("trees.gpkg").path))
    }

    @Test fun theScreenOffersToOpenWhatItWroteAndSaysWhenNoAppDoes() {
        RealParts()
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("site").to("hand_over").tap("geojson.write")
        shadowOf(app).checkActivities(true)
        walk.tap("work.open")
        assertEquals(walk.state.words.noApp, walk.state.said?.words)
        // It is still there to be shared.
        assertTrue(walk.exists(hasTestTag("work.share")))
        walk.tap("pack.write")
        assertTrue(walk.exists(hasTestTag("work.share")))
        assertFalse(walk.exists(hasTestTag("work.open")))
        walk.end()
    }

    @Test fun aPackIsForAnotherPhone() {
        val sharing = OnPhone().device.sharing
        assertFalse(sharing.isToLookAt("/x/site.bolewalk-pack"))
        assertTrue(sharing.isToLookAt("/x/site-summary.pdf"))
    }

    @Test fun typesAsOtherAppsKnowThem() {
        assertEquals("application/zip", typeOf("/x/site.bolewalk-pack"))
        assertEquals("text/csv", typeOf("trees.csv"))
        assertEquals("application/octet-stream", typeOf("trees"))
    }

    @Test fun theFieldBookItselfHasNoAddress() {
        OnPhone()
        val book = File(app.filesDir, "book/book.db").apply { parentFile!!.mkdirs(); writeText("x") }
        assertThrows(IllegalArgumentException::class.java) { contentUri(app, book.path) }
        assertThrows(IllegalArgumentException::class.java) { contentUri(app, File(app.cacheDir, "handed/../../files/book/book.db").path) }
    }

    @Test fun whatIsNotThereIsNotHandedOver() {
        assertFalse(OnPhone().device.sharing.hand(File(app.cacheDir, "handed/none.pdf").path))
    }
}
