package bolewalk.app.screens.tree

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Notices
import bolewalk.app.look.OfferTiles
import bolewalk.app.look.PhotoCard
import bolewalk.app.look.Sentences
import bolewalk.app.screens.drawing
import bolewalk.app.screens.offer
import bolewalk.app.screens.otherOffers
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CommandKind
import bolewalk.book.DrawingAddress
import bolewalk.book.TreePage

private val placed = setOf(
    CommandKind.START_INSPECTION, CommandKind.RECORD_MEASURES, CommandKind.RECORD_HEIGHT_BY_ANGLES, CommandKind.LOOK_AT_PART,
    CommandKind.ADD_FINDING, CommandKind.ADD_SECTION, CommandKind.ADD_ANCHOR, CommandKind.PLAN_CLIMB, CommandKind.ADD_PHOTO,
    CommandKind.ADD_WORK, CommandKind.ADD_RISK, CommandKind.CHANGE_TREE,
)

/** A tree: what is still to check first, then one sheet in the order of the walk. */
fun LazyListScope.treePage(page: TreePage, hand: Hand, primary: Set<CommandKind>) {
    fun offer(command: CommandKind) {
        if (command !in primary) offer(page.offers, command, hand)
    }
    part("notices") { Notices(page.notices) }
    part("gaps") { Sentences(page.gaps) }
    if (CommandKind.START_INSPECTION !in primary) {
        page.offers.find { it.command == CommandKind.START_INSPECTION }?.let { part("levels") { OfferTiles(it, hand) } }
    }
    page.offers.find { it.command == CommandKind.LOOK_AT_PART }?.let { look ->
        page.walkRound.forEach { walked -> item("walk." + walked.part, "walk") { WalkCard(walked, look, hand) } }
    }
    offer(CommandKind.LOOK_AT_PART)
    part("lines") { Lines(page.lines) }
    offer(CommandKind.RECORD_MEASURES)
    offer(CommandKind.RECORD_HEIGHT_BY_ANGLES)
    offer(CommandKind.CHANGE_TREE)
    records("finding", page.findings, hand)
    offer(CommandKind.ADD_FINDING)
    records("section", page.sections, hand)
    offer(CommandKind.ADD_SECTION)
    records("anchor", page.anchors, hand)
    offer(CommandKind.ADD_ANCHOR)
    records("climb", page.plans, hand)
    offer(CommandKind.PLAN_CLIMB)
    page.photos.forEach { photo -> item("photo." + photo.id, "photo") { PhotoCard(photo, hand) } }
    offer(CommandKind.ADD_PHOTO)
    records("work", page.work, hand)
    offer(CommandKind.ADD_WORK)
    drawing(DrawingAddress.TreeSide(page.id), page, hand, "side")
    records("risk", page.risks, hand)
    offer(CommandKind.ADD_RISK)
    records("history", page.history, hand)
    otherOffers(page.offers, primary + placed, hand)
}
