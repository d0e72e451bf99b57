package bolewalk.app

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasAnyDescendant
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.junit4.ComposeTestRule
import bolewalk.app.device.Heard
import bolewalk.app.device.PlaceFix
import bolewalk.app.field.kind
import java.io.File

/** What is in the book when a screen is looked at. */
enum class InBook {
    NOTHING, ONE_TREE, DEMO, DAMAGED;

    /** Lays a new book, with the settings of a look. */
    fun lay(look: Look, rule: ComposeTestRule) {
        app.keeper.forget()?.destroy()
        app.book.deleteRecursively()
        app.clock.setTo(moment(Demo.DAY))
        if (this != DAMAGED) look.setBook()
        when (this) {
            NOTHING -> Unit
            DEMO -> Demo.bringIn()
            ONE_TREE -> Walk(rule).apply {
                tap("site.add").type("site.name", "Heron Mill").tap("form.confirm")
                tap("tree.add").tap("form.confirm")
                end()
            }
            DAMAGED -> File(app.book.apply { mkdirs() }, "field-book.db").writeText("This is no field book. ".repeat(400))
        }
    }
}

/** A screen in one of its states: how one comes to it from the book's page, and how many of its screenfuls are
 *  pictured. */
class ScreenState(val name: String, val inBook: InBook, val screenfuls: Int = 1, val reach: Walk.() -> Unit)

/** Every screen: empty, typical, crowded, and where something is wrong. */
val screenStates: List<ScreenState> = buildList {
    fun on(inBook: InBook, name: String, screenfuls: Int = 1, reach: Walk.() -> Unit = {}) = add(ScreenState(name, inBook, screenfuls, reach))

    on(InBook.NOTHING, "book-empty")
    on(InBook.NOTHING, "form-site") { tap("site.add") }
    on(InBook.ONE_TREE, "book")
    on(InBook.ONE_TREE, "site") { to("site") }
    on(InBook.ONE_TREE, "site-rescue-plan") { to("site").tap("rescue.write") }
    on(InBook.ONE_TREE, "tree-new", 2) { to("site").to("tree") }
    on(InBook.ONE_TREE, "tree-change") { to("site").to("tree").tap("tree.change") }
    on(InBook.ONE_TREE, "judgement-new") { to("site").to("tree").to("judgement") }
    on(InBook.ONE_TREE, "hand-over-new") { to("site").to("hand_over") }
    on(InBook.DEMO, "book-crowded", 2)
    on(InBook.DEMO, "people") { to("people") }
    on(InBook.DEMO, "person", 2) { to("people").to("person", "Ines") }
    on(InBook.DEMO, "gear", 2) { to("gear") }
    on(InBook.DEMO, "codebook", 2) { to("codebook") }
    on(InBook.DEMO, "code-change") { to("codebook").tap("code.change") }
    on(InBook.DEMO, "rule-set") { to("rule_set") }
    on(InBook.DEMO, "rule-change") { to("rule_set").tap("house_value.set") }
    on(InBook.DEMO, "settings") { to("settings") }
    on(InBook.DEMO, "settings-change", 2) { to("settings").tap("settings.change") }
    on(InBook.DEMO, "site-crowded", 3) { to("site") }
    on(InBook.DEMO, "target-on-plan") {
        to("site").tap("target.add").type("target.name", "Shed").tap("target.kind/other").tap("target.ground/plan")
        listOf(Offset(.3f, .3f), Offset(.5f, .3f), Offset(.5f, .5f)).forEach { touch("target.ground/on_plan", it) }
    }
    on(InBook.DEMO, "tree-crowded", 4) { to("site").to("tree", "04") }
    on(InBook.DEMO, "measures") { to("site").to("tree", "04").tap("inspection.record") }
    on(InBook.DEMO, "measures-refused") {
        to("site").to("tree", "04").tap("inspection.record").type("tree.girth", "188 m").tap("form.confirm")
    }
    on(InBook.DEMO, "height") { to("site").to("tree", "04").tap("inspection.height_by_angles") }
    on(InBook.DEMO, "height-live") {
        to("site").to("tree", "04").tap("inspection.height_by_angles")
        type("height.distance", "20").tap("height.distance_by/tape").type("height.up", "35").type("height.down", "-4")
    }
    on(InBook.DEMO, "lean-two-sides") { to("site").to("tree", "04").tap("inspection.lean_from_two_sides") }
    on(InBook.DEMO, "form-left") {
        to("site").to("tree", "04").tap("inspection.record").type("tree.girth", "188").back().tap("inspection.record")
    }
    on(InBook.DEMO, "position-averaging") {
        to("site").tap("tree.add").tap("tree.position/sense")
        for ((at, accuracy) in listOf(9.0, 6.0, 5.0, 4.0, 4.0).withIndex()) {
            app.doubles.place.say(Heard.Value(PlaceFix(42.1 + at * 1e-5, -73.5, accuracy, at * 20_000L)))
            settle()
        }
    }
    on(InBook.DEMO, "position-refused") {
        app.doubles.place.say(Heard.Refused)
        to("site").tap("tree.add").tap("tree.position/sense")
    }
    on(InBook.DEMO, "read-wall") {
        to("site").to("tree", "04").to("stem_section").tap("section.read").type("reading.bearing", "45").type("reading.shell", "3")
    }
    on(InBook.DEMO, "section-clock") { to("site").to("tree", "04").to("stem_section").tap("clock.90") }
    on(InBook.DEMO, "weather") { to("site").tap("weather.note") }
    on(InBook.DEMO, "load-test") { to("site").to("tree", "04").to("anchor").tap("anchor.test") }
    on(InBook.ONE_TREE, "visit") { to("site").tap("visit.start") }
    on(InBook.ONE_TREE, "triage") { to("site").to("tree").tap("triage.record") }
    on(InBook.ONE_TREE, "full-check") { to("site").to("tree").tap("full_check.start").tap("full_check.record") }
    on(InBook.DEMO, "finding-new", 2) { to("site").to("tree", "04").tap("finding.add") }
    on(InBook.DEMO, "finding-of-part", 2) { to("site").to("tree", "04").tap("finding.add").tap("finding.part/base").tap("finding.code/wound") }
    on(InBook.DEMO, "finding") { to("site").to("tree", "04").to("finding") }
    on(InBook.DEMO, "photo-new") {
        app.doubles.next = File(root, "mobile-android/app/src/test/photos/04-bracket-at-base.jpg")
        to("site").to("tree", "04").tap("photo.add").tap("photo.file/take")
    }
    on(InBook.DEMO, "anchor") { to("site").to("tree", "04").to("anchor") }
    on(InBook.DEMO, "anchor-new", 2) { to("site").to("tree", "04").tap("anchor.add") }
    on(InBook.DEMO, "section-new") { to("site").to("tree", "04").tap("section.add") }
    on(InBook.DEMO, "section", 2) { to("site").to("tree", "04").to("stem_section") }
    on(InBook.DEMO, "aloft") { to("site").to("tree", "04").to("aloft") }
    on(InBook.DEMO, "compare") { to("site").to("tree", "04").to("compare") }
    on(InBook.DEMO, "stop-on-sight") { to("site").to("tree", "24").tap("stop.on_sight") }
    on(InBook.DEMO, "climb-new") { to("site").to("tree", "04").tap("climb.add") }
    on(InBook.DEMO, "judgement", 3) { to("site").to("tree", "04").to("judgement") }
    on(InBook.DEMO, "hand-over") { to("site").to("hand_over") }
    on(InBook.DEMO, "hand-over-written") { to("site").to("hand_over").tap("geojson.write") }
    on(InBook.DEMO, "disk-full") {
        to("site").tap("target.add").type("target.name", "Shed").tap("target.kind/other")
        app.keeper.book().boundPages(1u)
        tap("form.confirm")
        app.keeper.book().boundPages(0u)
    }
    on(InBook.DAMAGED, "book-damaged")
}

/** Goes to a page of this kind, unless one is there; where several ways lead to one, to that whose entry shows these words. */
fun Walk.to(page: String, of: String? = null): Walk {
    if (of == null && state.address.kind() == page) return this
    val leads = hasTestTag("go.$page")
    val words = of?.let { hasText(it, substring = true) } ?: return tap(leads)
    return tap(leads and (words or hasAnyDescendant(words) or hasAnyAncestor(isRecord and hasAnyDescendant(words))))
}

/** A card of a record. */
val isRecord = SemanticsMatcher("is a record") { it.config.getOrNull(SemanticsProperties.TestTag).orEmpty().startsWith("record.") }
