package bolewalk.app

import android.os.Looper
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.isEnabled
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.book.BookException
import bolewalk.book.wordsOfError
import bolewalk.book.wordsOfShell
import java.io.File
import java.io.RandomAccessFile
import java.util.concurrent.CountDownLatch
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf

/** The shell says everything in the reader's language: the phone's until the field book is open, the book's afterwards. */
@RunWith(RobolectricTestRunner::class)
class WordsTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    /** Why a field book cannot be opened: how it comes to that, how it is mended, and what is said of it. */
    private enum class Closed(val spoil: () -> Unit, val mend: () -> Unit, val english: String, val spanish: String) {
        NEWER({ format(9_999) }, { format(was) }, "was written by a newer version", "lo escribió una versión más nueva"),
        OF_ANOTHER_PROGRAM({ application(7) }, { application(ours) }, "cannot be read", "No se puede leer"),
        UNWRITABLE(
            { app.book.renameTo(aside).also { app.book.writeText("in the way") } }, { app.book.delete().also { aside.renameTo(app.book) } },
            "cannot be written", "No se puede escribir",
        ),
        DISK_FULL(
            { app.refuseToOpen(BookException.DiskFull("field-book.db")) }, { app.refuseToOpen(null) },
            "Free some space and try again", "Liberar espacio y volver a intentarlo",
        ),
        DAMAGED(
            { app.refuseToOpen(BookException.Damaged("field-book.db", "page 7", "")) }, { app.refuseToOpen(null) },
            "is damaged", "está dañado",
        ),
        IN_USE({ app.refuseToOpen(BookException.Busy("field-book.db")) }, { app.refuseToOpen(null) }, "is in use", "Otro programa está usando"),
    }

    @Test fun whyTheFieldBookCannotBeOpenedIsSaidInThePhonesLanguageAndItOpensOnceItCan() {
        for (closed in Closed.entries) {
            InBook.ONE_TREE.lay(Look.LIGHT, rule)
            app.keeper.forget()?.destroy()
            closed.spoil()
            RuntimeEnvironment.setQualifiers("+es-rMX")
            val walk = Walk(rule)
            assertTrue("$closed: ${walk.state.trouble}", walk.sees(closed.spanish))
            RuntimeEnvironment.setQualifiers("+en-rUS")
            walk.recreate()
            assertTrue("$closed: ${walk.state.trouble}", walk.sees(closed.english))
            walk.endOfProcess(orderly = false)
            assertTrue("$closed: ${walk.state.trouble}", walk.sees(closed.english))
            closed.mend()
            walk.away()
            assertTrue("$closed: nothing was lost", walk.sees("Heron Mill"))
            walk.end()
        }
    }

    @Test fun aDamagedBookThatWasMendedSaysSoOnItsFirstPage() {
        InBook.DAMAGED.lay(Look.LIGHT, rule)
        val walk = Walk(rule)
        assertTrue(walk.sees("was damaged"))
        setBook("language" to "spanish")
        walk.away()
        assertTrue(walk.sees("no había ninguna copia buena"))
        assertTrue(walk.exists(hasTestTag("site.add")))
        walk.end()
    }

    @Test fun whileItOpensThePhonesLanguageIsSpoken() {
        RuntimeEnvironment.setQualifiers("+es")
        val opens = CountDownLatch(1)
        app.beforeOpening = { opens.await() }
        val window = Robolectric.buildActivity(MainActivity::class.java).setup()
        rule.waitForIdle()
        rule.onNode(hasText("Abriendo el cuaderno de campo")).assertExists()
        opens.countDown()
        rule.waitUntil(30_000) {
            shadowOf(Looper.getMainLooper()).idle()
            window.get().field.state.value.run { page != null && pending == 0 }
        }
        window.pause().stop().destroy()
    }

    @Test fun theBooksLanguageIsSpokenOnceItIsOpen() {
        RuntimeEnvironment.setQualifiers("+en-rUS")
        InBook.NOTHING.lay(Look.SPANISH, rule)
        val walk = Walk(rule).tap("site.add")
        assertTrue(walk.exists(hasTestTag("form.confirm") and hasText("Guardar")))
        walk.tap("form.close").to("settings").tap("settings.change").tap("settings.language/english").tap("form.confirm").tap("settings.change")
        assertEquals("the language changed while the app was open", wordsOfShell("en").keep, walk.state.words.keep)
        assertTrue(walk.exists(hasTestTag("form.confirm") and hasText("Save")))
        walk.end()
    }

    @Test fun theCalendarSpeaksTheBooksLanguageToo() {
        RuntimeEnvironment.setQualifiers("+en-rUS")
        InBook.NOTHING.lay(Look.SPANISH, rule)
        val walk = Walk(rule).to("gear").tap("gear.add").type("gear.first_use", "2026-05-19").tap("gear.first_use/pick")
        val read = rule.onAllNodes(isEnabled()).fetchSemanticsNodes().flatMap { node ->
            node.config.getOrNull(SemanticsProperties.Text).orEmpty().map { it.text } + node.config.getOrNull(SemanticsProperties.ContentDescription).orEmpty()
        }
        assertTrue("$read", read.any { "mayo" in it })
        // What the toolkit reads out to those who do not see.
        assertTrue("$read", read.any { "mes siguiente" in it.lowercase() })
        walk.end()
    }

    @Test fun aLanguageThatTheCatalogueLacksIsEnglish() {
        assertEquals(wordsOfShell("en"), wordsOfShell("mi-NZ"))
        assertEquals(wordsOfError(BookException.Stopped(), "en"), wordsOfError(BookException.Stopped(), ""))
    }
}

/** Where a book lies meanwhile. */
private val aside get() = File(app.book.parentFile, "aside")

/** What stands in the head of the book's file, by its place in SQLite's file format, section 1.3. */
private fun head(at: Long, number: Int): Int = RandomAccessFile(File(app.book, "field-book.db"), "rw").use { file ->
    file.seek(at)
    file.readInt().also {
        file.seek(at)
        file.writeInt(number)
    }
}

private var was = 0
private var ours = 0

private fun format(number: Int) {
    was = head(60, number)
}

private fun application(number: Int) {
    ours = head(68, number)
}
