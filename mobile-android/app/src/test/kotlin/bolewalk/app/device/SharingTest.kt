package bolewalk.app.device

import android.content.ComponentName
import android.content.Intent
import android.net.Uri
import bolewalk.app.app
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** Papers, exports and packs on their way to another app. */
@RunWith(RobolectricTestRunner::class)
class SharingTest {
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
