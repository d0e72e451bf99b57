package bolewalk.app

import android.content.res.Configuration
import android.os.Looper
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.book.EntryValue
import bolewalk.book.PageAddress
import java.time.Duration
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf

/** Nothing is lost by rotation, by a call, by a slow disk, or by the system ending the app. */
@RunWith(RobolectricTestRunner::class)
class LifeTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    private fun onATree(): Walk {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        return Walk(rule).to("site").to("tree").tap("full_check.start")
    }

    @Test fun whatIsHalfEnteredSurvivesTheEndOfTheProcess() {
        val walk = onATree()
        walk.tap("inspection.record").type("tree.girth", "188").tap("tree.life/alive")
        for (orderly in listOf(true, false)) {
            walk.endOfProcess(orderly)
            val draft = walk.state.form?.draft
            assertEquals(mapOf("tree.girth" to EntryValue.Number("188"), "tree.life" to EntryValue.Choice("alive")), draft)
            assertTrue(walk.exists(hasTestTag("tree.girth") and hasText("188")))
        }
        walk.tap("form.confirm")
        assertNull(walk.state.form)
        assertTrue(walk.sees("188 cm"))
        walk.end()
    }

    @Test fun rotationAndAnotherLanguageKeepPageAndDraft() {
        val walk = onATree()
        walk.tap("finding.add").tap("finding.part/limb")
        for (change in listOf("+land", "+port", "+es", "+night")) {
            RuntimeEnvironment.setQualifiers(change)
            walk.recreate()
            assertEquals(change, EntryValue.Choice("limb"), walk.state.form?.draft?.get("finding.part"))
        }
        assertTrue(walk.activity.resources.configuration.uiMode and Configuration.UI_MODE_NIGHT_YES != 0)
        setBook("language" to "spanish")
        walk.endOfProcess(orderly = true)
        assertTrue("the shell's own words are in the book's language", walk.exists(hasText("Guardar")))
        walk.tap("form.close")
        assertTrue(walk.state.address is PageAddress.Tree)
        walk.end()
    }

    @Test fun everyScreenComesBackFromItsSavedState() {
        val faults = mutableListOf<String>()
        for ((inBook, states) in screenStates.groupBy { it.inBook }) {
            inBook.lay(Look.LIGHT, rule)
            for (state in states) {
                val walk = Walk(rule)
                state.reach(walk)
                fun here() = listOf(walk.state.way, walk.state.form?.offer?.id, walk.state.form?.draft)
                val before = here()
                RuntimeEnvironment.setQualifiers("+land")
                walk.recreate()
                if (here() != before) faults += "${state.name}, turned: ${here()}, not $before"
                RuntimeEnvironment.setQualifiers("+es-port")
                walk.recreate()
                if (here() != before) faults += "${state.name}, in another language: ${here()}, not $before"
                RuntimeEnvironment.setQualifiers("+en-rUS")
                walk.endOfProcess(orderly = false)
                if (here() != before) faults += "${state.name}, process made anew: ${here()}, not $before"
                walk.end()
            }
        }
        assertEquals("", faults.joinToString("\n"))
    }

    @Test fun twoQuickTapsDoOneThing() {
        InBook.NOTHING.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("people")
        for (name in listOf("Ana", "Ben")) {
            walk.tap("person.add").type("person.name", name).tap(hasTestTag("form.confirm"), times = 2).to("people")
            assertEquals(1, rule.onAllNodes(hasText(name)).fetchSemanticsNodes().size)
        }
        // Undo takes one edit back however often it is tapped at once.
        walk.tap(hasTestTag("edit.undo"), times = 2)
        assertTrue(walk.sees("Ana"))
        assertFalse(walk.sees("Ben"))
        walk.end()
    }

    @Test fun aSlowDiskHoldsUpNoFinger() {
        val walk = onATree()
        walk.tap("inspection.record").type("tree.girth", "188").tap("tree.life/alive")
        walk.onSlowDisk {
            // The first measure is on its way; the hand goes on, and changes its mind twice about where to go.
            walk.tap("form.confirm").tap("form.close").tap("go.site").tap("go.book")
        }
        assertTrue("an answer that came late is not shown", walk.state.address is PageAddress.Book)
        walk.to("site").to("tree")
        assertTrue(walk.sees("188 cm"))
        walk.end()
    }

    @Test fun theEndOfTheProcessInTheMiddleOfAnEditLosesNothingAndDoesNothingTwice() {
        val walk = onATree()
        walk.tap("finding.add").tap("finding.part/limb").tap("finding.code/dead-limb")
        walk.onSlowDisk { walk.tap("form.confirm").endOfProcess(orderly = false) }
        if (walk.state.form != null) walk.tap("form.confirm")
        walk.tap("edit.undo")
        assertFalse("there were two", walk.exists(isRecord and hasTestTag("go.finding")))
        walk.end()
    }

    @Test fun aCallInBetweenAndTheNextDayShowTheDay() {
        InBook.NOTHING.lay(Look.LIGHT, rule)
        val walk = Walk(rule)
        assertTrue(walk.sees("May 19, 2026"))
        app.clock.setTo(moment("2026-05-20T06:30:00-04:00"))
        walk.away()
        assertTrue(walk.sees("May 20, 2026"))
        walk.end()
    }

    @Test fun aSlowDiskIsSaidAfterASecondAndTwoTapsDoOneThing() {
        InBook.NOTHING.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("people").tap("person.add").type("person.name", "Ana")
        val busy = hasTestTag("busy") and hasText(walk.state.words.busy)
        walk.onSlowDisk {
            walk.tap("form.confirm")
            rule.onNode(busy).assertDoesNotExist()
            shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(1100))
            rule.onNode(busy).assertIsDisplayed()
            walk.tap("form.confirm")
        }
        rule.onNode(busy).assertDoesNotExist()
        walk.to("people")
        assertEquals(1, rule.onAllNodes(hasText("Ana")).fetchSemanticsNodes().size)
        walk.end()
    }

    @Test fun timeSetBackBetweenTwoEditsLosesNeither() {
        val walk = onATree()
        for ((tag, clock) in listOf("A-88" to "2026-05-19T15:20:00-04:00", "A-92" to "2026-05-19T11:00:00-04:00", "A-95" to "2019-01-01T00:00:00-05:00")) {
            app.clock.setTo(moment(clock))
            walk.away()
            walk.tap("tree.change").type("tree.tag", tag).tap("form.confirm")
            assertFalse(walk.state.said!!.words, walk.state.said!!.refused)
            assertTrue(clock, walk.sees(tag))
        }
        walk.endOfProcess(orderly = false)
        assertTrue(walk.sees("A-95"))
        // The last edit is the one that undo takes back, whatever the clock said.
        walk.tap("edit.undo")
        assertTrue(walk.sees("A-92"))
        walk.end()
    }

    @Test fun backLeadsOutOfTheFormThenUp() {
        val walk = onATree()
        walk.tap("finding.add").back()
        assertNull(walk.state.form)
        walk.back()
        assertTrue(walk.state.address is PageAddress.Site)
        walk.end()
    }
}
