package bolewalk.app.device

import android.net.Uri
import bolewalk.app.app
import java.io.ByteArrayInputStream
import java.io.File
import java.util.concurrent.CountDownLatch
import java.util.concurrent.TimeUnit
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** Files of other apps, which may be broken or hostile. */
@RunWith(RobolectricTestRunner::class)
class CopyingTest {
    private val to = File(app.filesDir, "brought/file")
    private val phone by lazy { OnPhone() }

    private fun copied(from: Uri, most: Long = 1_000_000, silenceMs: Long = 5_000): Copied {
        var outcome: Copied? = null
        copyAside(app, from, to, most, silenceMs) { outcome = it }
        phone.settle { outcome != null }
        if (outcome != Copied.DONE) phone.settle { to.parentFile?.list().orEmpty().isEmpty() }
        return outcome!!
    }

    private fun file(size: Any?, stream: () -> java.io.InputStream) = fileOfAnotherApp("day.bolewalk-pack", size, stream)

    @Test fun aFileArrivesWhole() {
        val bytes = ByteArray(300_000) { (it % 251).toByte() }
        assertEquals(Copied.DONE, copied(file(bytes.size) { ByteArrayInputStream(bytes) }))
        assertArrayEquals(bytes, to.readBytes())
        assertEquals(listOf("file"), to.parentFile!!.list()!!.toList())
    }

    @Test fun aLargeFileIsRefusedBeforeItIsOpened() {
        var opened = false
        val uri = file(2L shl 30) {
            opened = true
            Endless()
        }
        assertEquals(Copied.TOO_LARGE, copied(uri, LARGEST_BYTES))
        assertFalse(opened)
    }

    @Test fun aFileWithoutEndIsLeftAtTheLimitWhateverSizeItStates() {
        for (stated in listOf(null, 10, -5, "many")) assertEquals(Copied.TOO_LARGE, copied(file(stated) { Endless() }))
    }

    @Test fun aFullPhoneIsFoundBeforeItIsFull() {
        assertEquals(Copied.NO_ROOM, copied(file(Long.MAX_VALUE / 4) { Endless() }, Long.MAX_VALUE / 2))
    }

    @Test fun whateverTheOtherAppThrows() {
        assertEquals(Copied.UNREADABLE, copied(file(10) { Breaking() }))
        assertEquals(Copied.UNREADABLE, copied(file(10) { throw SecurityException("no grant") }))
        assertEquals(Copied.UNREADABLE, copied(file(10) { throw IllegalStateException("gone") }))
        assertEquals(Copied.UNREADABLE, copied(file(0) { ByteArrayInputStream(ByteArray(0)) }))
        assertEquals(Copied.UNREADABLE, copied(Uri.parse("content://org.nobody/7")))
    }

    @Test fun anAppThatStaysSilentIsLeft() {
        val silent = Silent()
        assertEquals(Copied.UNREADABLE, copied(file(null) { silent }, silenceMs = 200))
        assertTrue(silent.closed.await(5, TimeUnit.SECONDS))
        // One that does not even open holds nothing up.
        assertEquals(Copied.UNREADABLE, copied(file(null) { CountDownLatch(1).await().let { Endless() } }, silenceMs = 200))
    }

    @Test fun onlyOtherAppsFilesAreRead() {
        val own = File(app.filesDir, "book/book.db").apply { parentFile!!.mkdirs(); writeText("secret") }
        for (uri in listOf(
            Uri.fromFile(own), Uri.parse("file:${own.path}"), Uri.parse("content://bolewalk.app.files/handed/x.pdf"),
            Uri.parse("content://10@bolewalk.app.files/taken/x"), Uri.parse("http://example.org/x"), Uri.parse("content:"), Uri.EMPTY,
            Uri.parse("android.resource://bolewalk.app/1"),
        )) {
            assertEquals(uri.toString(), Copied.NOT_OURS_TO_READ, copied(uri))
        }
        assertEquals("secret", own.readText())
    }
}
