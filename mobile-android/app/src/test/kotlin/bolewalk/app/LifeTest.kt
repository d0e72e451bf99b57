package bolewalk.app

import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.book.EntryValue
import bolewalk.book.PageAddress
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment

/** Nothing is lost by rotation, by a call, or by the system ending the app. */
@RunWith(RobolectricTestRunner::class)
class LifeTest {
    @get:Rule val rule = createEmptyComposeRule()

    private fun onATree(): Walk = Walk(rule).apply {
        metric()
        // What is made is opened.
        tap("site.add").type("site.name", "Heron Mill").tap("form.confirm")
        tap("tree.add").tap("form.confirm")
        tap("full_check.start")
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
        assertTrue(walk.sees("188"))
        walk.end()
    }

    @Test fun rotationAndRecreationKeepPageAndDraft() {
        val walk = onATree()
        walk.tap("finding.add").tap("finding.part/limb")
        walk.recreate()
        RuntimeEnvironment.setQualifiers("+land")
        walk.recreate()
        assertEquals(EntryValue.Choice("limb"), walk.state.form?.draft?.get("finding.part"))
        RuntimeEnvironment.setQualifiers("+port")
        walk.recreate()
        walk.tap("form.close")
        assertTrue(walk.state.address is PageAddress.Tree)
        walk.end()
    }

    @Test fun everyPageComesBack() {
        val walk = onATree()
        for (page in listOf("judgement", "tree", "site", "hand_over")) {
            walk.tap("go.$page")
            val before = walk.state.address to walk.state.way
            walk.endOfProcess(orderly = false)
            assertEquals(before, walk.state.address to walk.state.way)
        }
        walk.end()
    }

    @Test fun twoQuickTapsDoOneThing() {
        val walk = Walk(rule)
        walk.tap("go.people")
        for (name in listOf("Ana", "Ben")) {
            walk.tap("person.add").type("person.name", name).tap(hasTestTag("form.confirm"), times = 2).tap("go.people")
            assertEquals(1, walk.rule.onAllNodes(hasText(name)).fetchSemanticsNodes().size)
        }
        walk.tap(hasTestTag("edit.undo"), times = 2)
        assertTrue(walk.sees("Ana"))
        assertTrue(!walk.sees("Ben"))
        walk.end()
    }

    @Test fun backLeadsOutOfTheFormThenUp() {
        val walk = onATree()
        walk.tap("finding.add")
        walk.activity.onBackPressedDispatcher.onBackPressed()
        walk.settle()
        assertNull(walk.state.form)
        walk.activity.onBackPressedDispatcher.onBackPressed()
        walk.settle()
        assertTrue(walk.state.address is PageAddress.Site)
        walk.end()
    }
}
