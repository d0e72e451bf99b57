package bolewalk.app

import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import androidx.compose.ui.test.onFirst
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import bolewalk.app.device.Heard
import bolewalk.app.device.PlaceFix
import bolewalk.app.look.filled
import bolewalk.book.EntryValue
import java.io.File
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

/** What a form does beyond its inputs: keeps what was entered, says what would be recorded, and what is wrong. */
@RunWith(RobolectricTestRunner::class)
class FormsTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    private fun onATree(): Walk {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        return Walk(rule).to("site").to("tree").tap("full_check.start")
    }

    private fun shown(tag: String) = rule.onAllNodes(hasTestTag(tag)).onFirst()

    @Test fun aFormThatIsLeftShowsWhatWasEnteredWhenItIsOpenedAgain() {
        val walk = onATree()
        val entered = mapOf("tree.girth" to EntryValue.Number("188"), "tree.life" to EntryValue.Choice("alive"))
        walk.tap("inspection.record").type("tree.girth", "188").tap("tree.life/alive")
        for (leave in listOf<Walk.() -> Unit>({ back() }, { tap("form.close") })) {
            walk.leave()
            assertNull(walk.state.form)
            walk.back()
            walk.endOfProcess(orderly = false)
            walk.to("tree").tap("inspection.record")
            assertEquals(entered, walk.state.form?.draft)
            assertTrue(walk.sees(walk.state.words.draftKept))
            assertTrue(walk.exists(hasTestTag("tree.girth") and hasText("188")))
            walk.endOfProcess(orderly = true)
            assertTrue("it is said after the end of the process too", walk.sees(walk.state.words.draftKept))
        }
        walk.tap("form.confirm").tap("inspection.record")
        assertFalse("what is kept is no draft", walk.sees(walk.state.words.draftKept))
        assertEquals(emptyMap<String, EntryValue>(), walk.state.form?.draft)
        walk.end()
    }

    @Test fun aFormStartedAnewIsEmptyAndOthersAreNot() {
        val walk = onATree()
        walk.tap("finding.add").tap("finding.part/limb").back()
        walk.tap("photo.add")
        app.doubles.next = File(root, "mobile-android/app/src/test/photos/04-bracket-at-base.jpg")
        walk.tap("photo.file/take")
        val photo = walk.state.form?.draft?.get("photo.file") as EntryValue.PhotoFile
        val wanted = hasText(walk.state.words.needed, substring = true) and hasAnyAncestor(hasTestTag("input.photo.file"))
        assertFalse("what is there is no longer wanted", walk.exists(wanted))
        walk.back().tap("photo.add")
        assertTrue("a photo that nobody kept stays", File(photo.path).exists())
        walk.tap("form.start_anew")
        assertEquals(emptyMap<String, EntryValue>(), walk.state.form?.draft)
        assertFalse(File(photo.path).exists())
        walk.back().tap("photo.add")
        assertFalse(walk.sees(walk.state.words.draftKept))
        walk.back().tap("finding.add")
        assertEquals(EntryValue.Choice("limb"), walk.state.form?.draft?.get("finding.part"))
        walk.end()
    }

    @Test fun aFormThatWasOnlyLookedAtLeavesNothing() {
        val walk = onATree()
        walk.tap("finding.add").back().tap("finding.add")
        assertFalse(walk.sees(walk.state.words.draftKept))
        walk.end()
    }

    @Test fun whatWouldBeRecordedStaysInSightWithLargeLettersToo() {
        RuntimeEnvironment.setFontScale(2f)
        setBook("units" to "metric")
        val walk = onATree()
        walk.tap("inspection.height_by_angles").type("height.distance", "20")
        shown("form.open").assertIsDisplayed()
        walk.tap("height.distance_by/tape").type("height.up", "35").type("height.down", "-4")
        assertTrue(walk.sees("±"))
        shown("form.live").assertIsDisplayed()
        val screen = walk.activity.window.decorView.height
        assertTrue(shown("form.live").fetchSemanticsNode().size.height <= screen / 3)
        val polite = SemanticsMatcher.expectValue(SemanticsProperties.LiveRegion, LiveRegionMode.Polite)
        assertTrue(walk.exists(hasTestTag("form.live") and polite))
        walk.end()
    }

    private fun onASection(): Walk {
        InBook.DEMO.lay(Look.LIGHT, rule)
        return Walk(rule).to("site").to("tree", "04").to("stem_section")
    }

    @Test fun theSectionIsDrawnWithTheReadingThatIsBeingTaken() {
        val walk = onASection().tap("section.read")
        val before = walk.state.form?.rehearsed
        shown("form.drawing").assertIsDisplayed()
        walk.type("reading.bearing", "45").type("reading.shell", "1")
        val after = walk.state.form?.rehearsed
        assertTrue("${before?.words}", before?.words.orEmpty() != after?.words)
        assertTrue(before?.drawing != after?.drawing)
        shown("form.drawing").assertIsDisplayed()
        assertTrue(walk.sees(after!!.words))
        walk.end()
    }

    @Test fun aPointOfTheClockOpensItsAnswersAndSaysWhatWasHeard() {
        for (letters in listOf(1f, 2f)) {
            RuntimeEnvironment.setFontScale(letters)
            val walk = onASection()
            val answer = walk.run {
                tap("clock.90")
                rule.onAllNodes(hasAnyAncestor(hasTestTag("record.clock.90")) and hasText("Hollow", ignoreCase = true)).onFirst()
            }
            answer.performScrollTo().performClick()
            walk.settle()
            assertTrue(walk.exists(hasTestTag("clock.90") and hasText("hollow", substring = true, ignoreCase = true)))
            walk.end()
        }
    }

    @Test fun thePositionShownIsTheMeanThatIsKeptAndItsRingStands() {
        val walk = Walk(rule).tap("site.add").type("site.name", "Heron Mill").tap("form.confirm").tap("tree.add").tap("tree.position/sense")
        for ((lat, at) in listOf(42.10000, 42.10004, 42.10008).zip(listOf(0L, 20_000L, 40_000L))) {
            app.doubles.place.say(Heard.Value(PlaceFix(lat, -73.5, 4.0, at)))
            walk.settle()
        }
        assertTrue(walk.exists(hasTestTag("tree.position") and hasText("42.10004, -73.50000")))
        assertTrue(walk.exists(hasTestTag("tree.position/ring")))
        walk.end()
    }

    @Test fun aPhotoOpensLargeAndBackClosesIt() {
        InBook.DEMO.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("site").to("tree", "04").tap("photo.show")
        assertTrue(rule.onAllNodes(hasTestTag("photo.large")).fetchSemanticsNodes().isNotEmpty())
        rule.onNode(hasTestTag("photo.large/larger")).performClick()
        walk.settle()
        rule.onNode(hasTestTag("photo.large/close")).performClick()
        walk.settle()
        assertTrue(rule.onAllNodes(hasTestTag("photo.large")).fetchSemanticsNodes().isEmpty())
        walk.end()
    }

    @Test fun aRefusalIsShortAndTheFirstFaultComesIntoSight() {
        RuntimeEnvironment.setFontScale(2f)
        val walk = onATree()
        walk.tap("inspection.record").type("tree.girth", "188 litres").type("inspection.note", "x").tap("form.confirm")
        assertTrue(rule.onAllNodes(hasText(walk.state.words.refusedMarked.filled("count" to 1))).fetchSemanticsNodes().isNotEmpty())
        shown("fault.tree.girth").assertIsDisplayed()
        assertTrue(shown("said").fetchSemanticsNode().size.height < walk.activity.window.decorView.height / 6)
        walk.end()
    }
}
