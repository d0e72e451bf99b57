package bolewalk.app.device

import android.content.Intent
import android.net.Uri
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.MainActivity
import bolewalk.app.Walk
import bolewalk.app.app
import bolewalk.book.CommandKind
import java.io.ByteArrayInputStream
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** What other apps hand in, through the real window. */
@RunWith(RobolectricTestRunner::class)
class HandedInTest {
    @get:Rule val rule = createEmptyComposeRule()

    private fun view(uri: Uri?) = Intent(Intent.ACTION_VIEW).setDataAndType(uri, "application/octet-stream")
        .setClass(app, MainActivity::class.java)

    private fun Walk.handed(intent: Intent) {
        val before = state.said
        activity.runOnUiThread { takeHandedIn(activity, intent, activity.field) }
        rule.waitUntil(30_000) {
            rule.waitForIdle()
            state.handedIn != null || state.said !== before
        }
        settle()
    }

    private fun pack(site: String): File {
        val file = File(app.cacheDir, "one.bolewalk-pack")
        app.keeper.book().writePack(site, file.path)
        return file
    }

    @Test fun aPackIsTakenInOnlyWhenThePersonSaysSo() {
        val walk = Walk(rule)
        walk.tap("site.add").type("site.name", "Heron Mill").tap("form.confirm")
        val site = (walk.state.address as bolewalk.book.PageAddress.Site).site
        val bytes = pack(site).readBytes()
        val intent = view(fileOfAnotherApp("../../databases/heron.bolewalk-pack", bytes.size) { ByteArrayInputStream(bytes) })
        walk.handed(intent)
        assertTrue(walk.sees("heron.bolewalk-pack"))
        assertFalse(walk.sees(".."))
        // The question outlives the end of the process; leaving it takes the file away.
        walk.endOfProcess(orderly = true)
        assertEquals(CommandKind.READ_PACK, walk.state.handedIn?.command)
        val path = walk.state.handedIn!!.path
        assertTrue(File(path).exists())
        walk.tap("handed.leave")
        assertNull(walk.state.handedIn)
        assertFalse(File(path).exists())
        walk.handed(intent)
        walk.tap("handed.take")
        rule.waitUntil(30_000) { walk.state.said != null }
        walk.settle()
        assertFalse(walk.state.said!!.words, walk.state.said!!.refused)
        walk.end()
    }

    @Test fun whatIsNoPackGetsTheCoresWords() {
        val walk = Walk(rule)
        for (bytes in listOf("PK but nothing else", "just words", "{}", "\u0000\u0001\u0002")) {
            walk.handed(view(fileOfAnotherApp("x.zip", null) { ByteArrayInputStream(bytes.toByteArray()) }))
            walk.tap("handed.take")
            rule.waitUntil(30_000) { walk.state.said != null }
            walk.settle()
            assertTrue(bytes, walk.state.said!!.refused)
            assertTrue(walk.state.said!!.words.length > 10)
            walk.activity.field.open(bolewalk.app.field.bookAddress)
            walk.settle()
        }
        assertTrue(walk.exists(hasTestTag("site.add")))
        walk.end()
    }

    @Test fun intentsWithNothingOrTheWrongThing() {
        val walk = Walk(rule)
        val database = app.book.listFiles()!!.first { it.isFile && it.length() > 0 }
        for (intent in listOf(
            view(null), view(Uri.fromFile(database)), view(Uri.parse("content://")), Intent(Intent.ACTION_SEND),
            Intent(Intent.ACTION_SEND).putExtra(Intent.EXTRA_STREAM, "text"), Intent(Intent.ACTION_SEND).putExtra(Intent.EXTRA_STREAM, 7),
            Intent(Intent.ACTION_SEND).putExtra(Intent.EXTRA_STREAM, Uri.fromFile(database)),
        )) {
            walk.handed(intent)
            assertTrue("$intent", walk.state.said!!.refused)
            assertNull(walk.state.handedIn)
            walk.activity.field.open(bolewalk.app.field.bookAddress)
            walk.settle()
        }
        assertEquals(HandedIn.Nothing, handedIn(Intent(Intent.ACTION_MAIN)))
        assertEquals(HandedIn.Nothing, handedIn(Intent()))
        walk.end()
    }

    @Test fun namesAreShownPlain() {
        assertEquals("book.db", cleanName("../../../data/data/bolewalk.app/files/book/book.db"))
        assertEquals("pack.zip", cleanName("C:\\Users\\x\\pack.zip"))
        assertEquals("gpj.exe", cleanName("\u202Egpj.exe"))
        assertEquals("ab", cleanName("a\u0000\nb"))
        assertEquals(61, cleanName("x".repeat(5000)).length)
        assertEquals("", cleanName("../.."+"/"))
    }
}
