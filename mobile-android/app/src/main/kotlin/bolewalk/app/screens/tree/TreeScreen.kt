package bolewalk.app.screens.tree

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.Gaps
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Notices
import bolewalk.app.look.OfferRow
import bolewalk.app.look.PhotoCard
import bolewalk.app.look.Sentences
import bolewalk.app.look.WayCard
import bolewalk.app.look.lettersAreLarge
import bolewalk.app.screens.Placed
import bolewalk.app.screens.drawing
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CommandKind
import bolewalk.book.DrawingAddress
import bolewalk.book.Offer
import bolewalk.book.PartOfWalk
import bolewalk.book.TreePage

/** A tree: the ways in, the way of working, what is still to check, then one sheet in the order of the walk. */
fun LazyListScope.treePage(page: TreePage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    part("reason") { if (lettersAreLarge()) Sentences(listOf(page.reason).filter { it.isNotEmpty() }) }
    if (page.inspection.isNotEmpty()) part("doors") { OfferRow(page.doors, hand) }
    placed.heading(this, "ways_of_working", page.waysOfWorking.isEmpty())
    part("ways_of_working") { OfferRow(page.waysOfWorking, hand) }
    placed.heading(this, "gaps", page.gaps.isEmpty())
    part("gaps") { Gaps(page.gaps, hand) }
    looksAround(page, hand, placed)
    measures(page, hand, placed)
    placed.heading(this, "findings", page.findings.isEmpty())
    records("finding", page.findings, hand)
    placed.offer(this, CommandKind.ADD_FINDING)
    placed.heading(this, "sections", page.sections.isEmpty())
    records("section", page.sections, hand)
    placed.offer(this, CommandKind.ADD_SECTION)
    placed.heading(this, "anchors", page.anchors.isEmpty())
    records("anchor", page.anchors, hand)
    placed.offer(this, CommandKind.ADD_ANCHOR)
    placed.heading(this, "plans", page.plans.isEmpty())
    records("climb", page.plans, hand)
    placed.offer(this, CommandKind.PLAN_CLIMB)
    placed.heading(this, "photos", page.photos.isEmpty())
    page.photos.forEach { photo -> item("photo." + photo.id, "photo") { PhotoCard(photo, hand) } }
    placed.offer(this, CommandKind.ADD_PHOTO)
    placed.heading(this, "work", page.work.isEmpty())
    records("work", page.work, hand)
    placed.offer(this, CommandKind.ADD_WORK)
    placed.heading(this, "notes", page.notes.isEmpty())
    part("notes") { Lines(page.notes) }
    placed.heading(this, "risks", page.risks.isEmpty())
    records("risk", page.risks, hand)
    placed.offer(this, CommandKind.ADD_RISK)
    placed.heading(this, "history", page.history.isEmpty())
    records("history", page.history, hand)
    part("aloft") { WayCard(page.aloft, hand) }
    page.compare?.let { part("compare") { WayCard(it, hand) } }
    placed.rest(this)
}

/** What is asked anew the same day, the walk-round, and how far the wires are. */
private fun LazyListScope.looksAround(page: TreePage, hand: Hand, placed: Placed) {
    placed.heading(this, "again", page.again.isEmpty())
    walk("again", page.again, hand)
    placed.offer(this, CommandKind.SAME_WEATHER)
    placed.heading(this, "walk_round", page.walkRound.isEmpty())
    walk("walk", page.walkRound, hand)
    placed.heading(this, "wires", page.wires.isEmpty())
    records("wire", page.wires, hand)
    placed.offer(this, CommandKind.MEASURE_WIRE)
}

/** What is known of the tree, what measures it, and how it stands. */
private fun LazyListScope.measures(page: TreePage, hand: Hand, placed: Placed) {
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offers(
        this, CommandKind.RECORD_FULL_CHECK, CommandKind.RECORD_GIRTH, CommandKind.RECORD_HEIGHT_BY_ANGLES,
        CommandKind.RECORD_HEIGHT_FROM_TWO_POSITIONS, CommandKind.RECORD_LEAN_FROM_TWO_SIDES, CommandKind.RECORD_LEAN_BY_EYE,
        CommandKind.RECORD_MEASURES, CommandKind.CHANGE_TREE,
    )
    drawing(DrawingAddress.TreeSide(page.id), page, hand, "side")
}

private fun LazyListScope.walk(key: String, parts: List<PartOfWalk>, hand: Hand) {
    val waits = parts.flatMap { it.offers }.takeIf { offers -> offers.none(Offer::enabled) }.orEmpty().map { it.whyNot }.distinct().singleOrNull()
    if (waits == null) {
        parts.forEach { walked -> item("$key.${walked.part}", "walk") { WalkCard(walked, hand) } }
    } else {
        // What all of them wait for is said once.
        part("$key.waits") { WalkThatWaits(parts, waits) }
    }
}
