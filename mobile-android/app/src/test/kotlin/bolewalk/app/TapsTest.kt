package bolewalk.app

import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.createEmptyComposeRule
import bolewalk.app.device.Heard
import bolewalk.app.device.HowHeld
import bolewalk.app.device.PlaceFix
import bolewalk.book.Page
import bolewalk.book.Verdict
import java.io.File
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** Counted on the real screens: a tap, a key and a drag on a dial are one each. The system camera's own buttons do not
 *  count; tag and position are offered ready. Scrolling is not counted. */
@RunWith(RobolectricTestRunner::class)
class TapsTest {
    @get:Rule val rule = createEmptyComposeRule()

    @After fun end() = Walk.endAll()

    /** At a site where an oak was entered before, so that its species is at hand. */
    private fun atASite(): Walk = Walk(rule).apply {
        metric()
        app.doubles.positionAllowed = true
        app.doubles.place.say(Heard.Value(PlaceFix(42.3314, -71.1211, 4.0, 1_000)))
        app.doubles.next = File(root, "fixtures/photos/progressive.jpg")
        tap("site.add").type("site.name", "Hill").tap("form.confirm")
        tap("visit.start").tap("form.confirm")
        tap("tree.add").type("tree.species", "Quercus rubra").tap("form.confirm").tap("go.site")
    }

    private fun Walk.tree(): bolewalk.book.TreePage = (state.page as Page.Tree).v1

    private fun Walk.counted(what: String, most: Int, go: Walk.() -> Unit): Walk = apply {
        val before = taps
        go()
        val count = taps - before
        println("$what: $count taps of at most $most")
        assertTrue("$what took $count taps, not $most", count <= most)
    }

    private fun Walk.aim(input: String, tilt: Double) {
        app.doubles.held.say(Heard.Value(HowHeld(tilt, 0.0)))
        settle()
        tap("$input/sense")
    }

    @Test fun aStopOnSight() {
        val walk = atASite().tap("go.tree")
        walk.counted("stop on sight", 3) {
            tap("stop.on_sight")
            val tile = state.form!!.offer.inputs.first { it.needed }
            tap(hasTestTag("${tile.id}/${(tile.kind as bolewalk.book.InputKind.Choice).choices.first().id}"))
            tap("form.confirm")
        }
        assertEquals(Verdict.BARRED, walk.tree().verdict)
        walk.end()
    }

    @Test fun aTriage() {
        val walk = atASite()
        walk.counted("triage, from the list of trees", 10) {
            tap("go.tree").tap("triage.record")
            tap("triage.size/medium").tap("tree.wires_near/false").tap("tree.life/alive").tap("tree.base_sound/true").tap("tree.way/prune")
            tap("form.confirm")
        }
        walk.end()
    }

    @Test fun aFullCheckAndTheSameTreeAgain() {
        val walk = atASite()
        walk.counted("full check", 45) {
            tap("tree.add").tap("tree.species/Quercus rubra").tap("tree.way/prune").tap("form.confirm")
            tap("full_check.start")
            tap("full_check.record").tap("tree.life/alive").dial("tree.girth", 188.0).dial("height.distance", 20.0)
            aim("height.up", 41.0)
            aim("height.down", -4.5)
            tap("lean.upright/true").tap("form.confirm")
            tree().walkRound.forEach { part -> tap(part.offers.first { it.id.endsWith(".seen") }.id) }
            tap("finding.add.crown").tap("finding.code/dead-limb").tap("finding.part/limb").tap("finding.grade/1").tap("photo.file/take").tap("form.confirm")
            tap("finding.add.base").tap("finding.code/wound").tap("finding.grade/1").tap("photo.file/take").tap("form.confirm")
            tap("photo.add").tap("photo.file/take").tap("form.confirm")
            tap("anchor.add").dial("anchor.height", 12.0).dial("anchor.diameter", 22.0).tap("anchor.diameter_read/by_eye")
            tap("anchor.union/bark_ridge").tap("anchor.state/live").tap("form.confirm")
        }
        with(walk.tree()) { assertEquals(listOf(2, 3, 1), listOf(findings.size, photos.size, anchors.size)) }
        walk.tap("go.site").tap("weather.note").tap("weather.wind_force/2").tap("weather.no_thunder/true").tap("weather.ice/false")
        walk.tap("weather.wet_bark/false").tap("weather.light/day").tap("form.confirm")
        app.clock.setTo(moment("2026-05-14T13:10:00-04:00"))
        walk.away()
        walk.tap(hasTestTag("go.tree") and androidx.compose.ui.test.hasText("2 ·", substring = true))
        walk.counted("the same tree again that day", 6) {
            tree().again.forEach { part -> tap(part.offers.first { it.id.endsWith(".seen") }.id) }
            tap("weather.same")
        }
        assertTrue(walk.tree().again.all { it.today })
        walk.end()
    }
}
