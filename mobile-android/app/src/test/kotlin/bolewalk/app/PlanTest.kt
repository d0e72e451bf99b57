package bolewalk.app

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import androidx.compose.ui.test.performScrollToKey
import bolewalk.app.device.Heard
import bolewalk.app.device.PlaceFix
import bolewalk.app.look.Ground
import bolewalk.book.DrawingAddress
import bolewalk.book.Drawing
import bolewalk.book.DrawnMark
import bolewalk.book.EntryValue
import bolewalk.book.PageAddress
import bolewalk.book.Spot
import bolewalk.book.StyleRole
import java.io.File
import kotlin.math.hypot
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** A finger on the plan of the site. */
@RunWith(RobolectricTestRunner::class)
class PlanTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    /** The plan in sight, and drawn. */
    private fun Walk.onThePlan() {
        rule.onNode(hasTestTag("page")).performScrollToKey("drawing.plan")
        settle()
        assertTrue(exists(hasTestTag("plan")))
    }

    private fun onTheDemo(): Walk {
        InBook.DEMO.lay(Look.LIGHT, rule)
        return Walk(rule).to("site")
    }

    private fun Walk.plan(zoom: Int = 0): Drawing =
        app.keeper.book().drawing(DrawingAddress.SitePlan((state.way.last { it is PageAddress.Site } as PageAddress.Site).site), zoom.toUInt(), 100u)

    private fun Walk.corners(input: String = "target.ground") = (state.form?.draft?.get(input) as? EntryValue.Outline)?.points.orEmpty()

    private fun Drawing.symbols(role: StyleRole) = marks.filterIsInstance<DrawnMark.Symbol>().filter { it.role == role }

    private fun apart(one: Spot, other: Spot) = hypot(one.xM - other.xM, one.yM - other.yM)

    @Test fun threeCornersTappedOnThePlanAreATarget() {
        val walk = onTheDemo()
        walk.tap("target.add").type("target.name", "Bee house").tap("target.kind/other").tap("target.ground/plan")
        val tapped = listOf(Offset(.3f, .3f), Offset(.5f, .3f), Offset(.5f, .5f), Offset(.35f, .45f))
        tapped.forEach { walk.touch("target.ground/on_plan", it) }
        assertEquals(4, walk.corners().size)
        assertTrue("what is entered is explained", walk.sees("Entered now"))
        walk.tap("target.ground/drop")
        assertEquals(3, walk.corners().size)
        val entered = walk.corners()
        for (orderly in listOf(true, false)) {
            walk.recreate()
            walk.endOfProcess(orderly)
            assertEquals(entered, walk.corners())
        }
        // What was tapped may be walked on.
        app.doubles.place.say(Heard.Value(PlaceFix(entered[0].latDeg, entered[0].lonDeg + 1e-5, 3.0, 1)))
        walk.tap("target.ground/sense")
        assertEquals(4, walk.corners().size)
        walk.tap("target.ground/drop").tap("form.confirm")
        assertTrue(walk.sees("Bee house"))
        val plan = walk.plan()
        val made = plan.marks.filterIsInstance<DrawnMark.Polygon>().filter { it.role == StyleRole.TARGET }.map { it.rings[0] }
        val side = plan.extent.rightM - plan.extent.leftM
        val wanted = tapped.take(3).map { Spot(plan.extent.leftM + it.x * side, plan.extent.topM - it.y * (plan.extent.topM - plan.extent.bottomM)) }
        assertTrue("the target lies where it was tapped", made.any { ring -> ring.size == 3 && ring.zip(wanted).all { (one, other) -> apart(one, other) < side / 100 } })
        walk.end()
    }

    @Test fun aTreeIsPlacedByATapWithTheAccuracyOfAFinger() {
        val walk = onTheDemo().tap("tree.add").tap("tree.position/plan")
        fun tapped(): EntryValue.OnPlan {
            walk.touch("tree.position/on_plan", Offset(.5f, .5f))
            return walk.state.form!!.draft["tree.position"] as EntryValue.OnPlan
        }
        val whole = tapped()
        assertTrue(walk.sees("tapped on the plan, house value"))
        walk.tap("tree.position/on_plan/more").tap("tree.position/on_plan/more")
        val near = tapped()
        assertTrue("${near.accuracyM} is better than ${whole.accuracyM}", near.accuracyM < whole.accuracyM)
        walk.tap("form.confirm")
        assertTrue(walk.sees("± ${near.accuracyM} m"))
        walk.end()
    }

    @Test fun aTapOnATreeOpensIt() {
        val walk = onTheDemo()
        val plan = walk.plan()
        val tree = plan.symbols(StyleRole.TREE).first()
        walk.onThePlan()
        val size = walk.node(hasTestTag("plan")).fetchSemanticsNode().size
        val at = Ground(plan.extent, Size(size.width.toFloat(), size.height.toFloat())).at(tree.at)
        walk.touch("plan", Offset(at.x / size.width, at.y / size.height))
        assertEquals(PageAddress.Tree(tree.about), walk.state.address)
        walk.end()
    }

    @Test fun thePhoneStandsOnThePlanOnlyWhereItMayKnowItsPlace() {
        val walk = onTheDemo()
        val place = app.doubles.place
        walk.onThePlan()
        assertEquals("nobody is asked", 0, place.listened)
        val tree = walk.plan().symbols(StyleRole.TREE).first()
        app.doubles.positionAllowed = true
        walk.recreate()
        walk.onThePlan()
        assertEquals(1, place.listened)
        assertFalse("no fix, no place", walk.sees("You are here"))
        val at = app.keeper.book().placeOnPlan((walk.state.address as PageAddress.Site).site, 0u, tree.at, 100u)
        place.say(Heard.Value(PlaceFix(at.latDeg, at.lonDeg, 4.0, 1)))
        walk.settle()
        assertTrue(walk.sees("You are here"))
        place.say(Heard.Value(PlaceFix(0.0, 0.0, 4.0, 2)))
        walk.settle()
        assertFalse("a receiver without a place", walk.sees("You are here"))
        walk.to("tree")
        assertEquals("off the plan nothing is sensed", 0, place.listened)
        walk.end()
    }

    @Test fun edgeAndTargetsComeInFromAMapFileOrItIsSaidWhyNot() {
        InBook.ONE_TREE.lay(Look.LIGHT, rule)
        val walk = Walk(rule).to("site")
        fun file(text: String) = File(app.cacheDir, "ground.geojson").apply { writeText(text) }
        app.doubles.next = file(
            """{"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[-71.122,42.331],[-71.12,42.331],[-71.12,42.332],[-71.122,42.331]]]}},
            {"type":"Feature","properties":{"name":"Mill Lane"},"geometry":{"type":"LineString","coordinates":[[-71.122,42.3305],[-71.12,42.3305]]}}]}""",
        )
        walk.tap("ground.import")
        assertFalse(walk.state.said!!.words, walk.state.said!!.refused)
        assertTrue(walk.sees("Mill Lane"))
        assertTrue("the plan is there", walk.exists(hasTestTag("plan")))
        walk.tap("edit.undo")
        assertFalse(walk.sees("Mill Lane"))
        app.doubles.next = file("""{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[0,0]}}""")
        walk.tap("ground.import")
        assertTrue("${walk.state.said}", walk.state.said!!.refused)
        assertTrue(walk.state.said!!.words, "0, 0" in walk.state.said!!.words)
        walk.end()
    }
}
