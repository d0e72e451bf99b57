package bolewalk.app

import androidx.compose.ui.graphics.toArgb
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.look.LightPalette
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** What the comparison of pictures sees: each word and each sign that is missing, and nothing where nothing is. */
@RunWith(RobolectricTestRunner::class)
class AlbumTest {
    @get:Rule val rule = createEmptyComposeRule()

    @Before fun lay() = InBook.DEMO.lay(Look.LIGHT, rule)

    @After fun end() = Walk.endAll()

    private fun tree() = Walk(rule).to("site").to("tree", "04")

    @Test fun noWordAndNoSignIsSmallerThanTheTolerance() {
        val walk = tree()
        val picture = walk.picture()
        val whole = picture.small()
        val words = Letters.words(walk)
        val signs = rule.onAllNodes(hasTestTag("sign"), useUnmergedTree = true).fetchSemanticsNodes()
            .filter { it.boundsInRoot.height >= it.size.height - 1 }.map { "a sign" to it.boundsInRoot }
        assertTrue("${words.size} words and ${signs.size} signs", words.size > 20 && signs.size > 2)
        for (kind in listOf(words, signs)) {
            for ((what, place) in kind.sortedBy { (_, place) -> place.width * place.height }.take(SMALLEST)) {
                val differs = whole.differs(picture.without(place).small())
                assertTrue("without $what at $place only $differs pixels differ", differs > Album.TOLERANCE)
            }
        }
    }

    @Test fun theSameScreenTakenAgainIsTheSame() {
        val (once, again) = List(2) { tree().run { picture().also { end() } } }
        assertEquals(0, once.small().differs(again.small()))
    }

    @Test fun groundsAndInksStayAsTheyAre() {
        val kept = Walk(rule).picture().small().pixels.toSet()
        with(LightPalette) { for (one in listOf(ground, card, ink, slate, onSlate)) assertTrue("$one", one.toArgb() in kept) }
    }

    private companion object {
        const val SMALLEST = 8
    }
}
