package bolewalk.app.device

import android.content.Intent
import android.net.Uri
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.InBook
import bolewalk.app.Look
import bolewalk.app.MainActivity
import bolewalk.app.Walk
import bolewalk.app.app
import bolewalk.app.root
import bolewalk.app.to
import bolewalk.book.EntryValue
import bolewalk.book.Page
import bolewalk.book.PageAddress
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.io.File
import java.util.zip.ZipEntry
import java.util.zip.ZipFile
import java.util.zip.ZipOutputStream
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** What is no input at all, through the real window with the phone's own parts: words and a way on, and nothing lost. */
@RunWith(RobolectricTestRunner::class)
class BadInputTest {
    @get:Rule val rule = createEmptyComposeRule()
    private val phone = RealParts()

    @After fun end() = Walk.endAll()

    private fun onATree(): Walk {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        return Walk(rule).to("site").to("tree").tap("full_check.start")
    }

    private fun Walk.waitFor(until: () -> Boolean): Walk = apply {
        rule.waitUntil(30_000) {
            rule.waitForIdle()
            until()
        }
        settle()
    }

    private fun Walk.pick(bytes: ByteArray) {
        val before = state.form?.draft?.get("photo.file")
        val asked = phone.asked(tap("photo.file/choose"), Intent.ACTION_OPEN_DOCUMENT)
        phone.given(this, asked, fileOfAnotherApp("oak.jpg", bytes.size) { ByteArrayInputStream(bytes) })
        waitFor { state.form?.draft?.get("photo.file") != before }
    }

    @Test fun aPickedPhotoThatIsNone() {
        val walk = onATree().tap("photo.add")
        for (bytes in listOf("no picture at all".toByteArray(), byteArrayOf(-1, -40, -1, -32, 0, 16), ByteArray(70_000))) {
            walk.pick(bytes)
            walk.tap("form.confirm")
            assertTrue(walk.state.said!!.refused)
            assertTrue("the form stays", walk.state.form != null)
        }
        walk.pick(File(root, "fixtures/photos/progressive.jpg").readBytes())
        walk.tap("form.confirm")
        assertFalse(walk.state.said!!.words, walk.state.said!!.refused)
        assertEquals(1, (walk.state.page as Page.Tree).v1.photos.size)
        walk.end()
    }

    @Test fun aFixAtZeroAndOneWithoutNumbers() {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("site").tap("tree.add").type("tree.tag", "88")
        for ((lat, lon) in listOf(0.0 to 0.0, Double.NaN to 8.0, 91.0 to 8.0, 0.0 to 0.0)) {
            phone.fix(lat, lon)
            walk.settle()
        }
        walk.tap("form.confirm")
        assertTrue(walk.state.said!!.words, walk.state.said!!.refused)
        assertEquals(EntryValue.Words("88"), walk.state.form?.draft?.get("tree.tag"))
        // The way on: later fixes, or none.
        phone.fix(42.1, -73.5)
        phone.fix(42.1, -73.5)
        walk.settle()
        walk.tap("form.confirm")
        assertFalse(walk.state.said!!.words, walk.state.said!!.refused)
        assertTrue(walk.sees("88"))
        walk.end()
    }

    @Test fun aSensorThatSendsNoNumbers() {
        val walk = onATree().tap("inspection.record").type("tree.girth", "188")
        walk.node(hasTestTag("input.tree.lean"))
        phone.turned(Float.NaN, Float.NaN, Float.NaN, Float.NaN)
        walk.settle()
        assertTrue(walk.sees(walk.state.words.noSensor))
        walk.type("tree.lean", "6")
        // It has come to its senses.
        phone.turned(0.7071068f, 0f, 0f, 0.7071068f)
        walk.settle()
        walk.tap("tree.lean/sense")
        assertTrue(walk.state.form?.draft?.get("tree.lean") is EntryValue.Tilt)
        assertEquals(EntryValue.Number("188"), walk.state.form?.draft?.get("tree.girth"))
        walk.end()
    }

    private fun view(uri: Uri) = Intent(Intent.ACTION_VIEW).setDataAndType(uri, "application/zip").setClass(app, MainActivity::class.java)

    @Test fun hostileIntentsWhileAFormIsHalfEntered() {
        val walk = onATree().tap("inspection.record").type("tree.girth", "188")
        val database = app.book.listFiles()!!.first { it.isFile && it.length() > 0 }
        for ((intent, said) in with(walk.state.words) {
            listOf(
                view(Uri.fromFile(database)) to notHanded,
                view(Uri.parse("content://bolewalk.app.files/brought/../../book/field-book.db")) to notHanded,
                view(Uri.parse("content://org.nobody/7")) to notReadable,
                view(fileOfAnotherApp("film.zip", 2L shl 30) { Endless() }) to tooLarge,
            )
        }) {
            walk.sent(intent).waitFor { walk.state.said?.words == said }
            assertTrue(walk.sees(said))
            assertNull(walk.state.handedIn)
            assertEquals(EntryValue.Number("188"), walk.state.form?.draft?.get("tree.girth"))
        }
        walk.tap("form.confirm")
        assertTrue(walk.sees("188 cm"))
        walk.end()
    }

    /** A pack as a later version would write it. */
    private fun newer(pack: File): ByteArray = ByteArrayOutputStream().also { bytes ->
        ZipFile(pack).use { zip ->
            ZipOutputStream(bytes).use { out ->
                for (entry in zip.entries()) {
                    val whole = zip.getInputStream(entry).readBytes()
                    out.putNextEntry(ZipEntry(entry.name))
                    out.write(if (entry.name == "pack.json") newer(String(whole)).toByteArray() else whole)
                }
            }
        }
    }.toByteArray()

    private fun newer(json: String): String = json.replaceFirst(Regex("\"format\": ?1\\b"), "\"format\": 9").also { check(it != json) { json } }

    @Test fun aPackOfANewerVersion() {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("site")
        val pack = File(app.cacheDir, "one.bolewalk-pack")
        app.keeper.book().writePack((walk.state.address as PageAddress.Site).site, pack.path)
        val bytes = newer(pack)
        walk.sent(view(fileOfAnotherApp("one.bolewalk-pack", bytes.size) { ByteArrayInputStream(bytes) })).waitFor { walk.state.handedIn != null }
        walk.tap("handed.take").waitFor { walk.state.said != null }
        assertTrue(walk.state.said!!.refused)
        assertTrue(walk.state.said!!.words, walk.sees("newer version"))
        assertTrue(walk.sees("Heron Mill"))
        walk.end()
    }
}
