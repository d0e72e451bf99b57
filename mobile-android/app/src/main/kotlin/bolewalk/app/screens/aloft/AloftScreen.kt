package bolewalk.app.screens.aloft

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Notices
import bolewalk.app.look.OfferButton
import bolewalk.app.look.RecordCard
import bolewalk.app.look.Sentences
import bolewalk.app.look.Spacing
import bolewalk.app.look.ToggleTile
import bolewalk.app.look.Weight
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.AloftPage
import bolewalk.book.CommandKind

/** The climb, for one hand, and what it leaves behind. */
fun LazyListScope.aloftPage(page: AloftPage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    placed.heading(this, "stops", page.stops.isEmpty())
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    placed.heading(this, "plans", page.plans.isEmpty())
    records("plan", page.plans, hand)
    placed.heading(this, "found", page.found.isEmpty())
    records("found", page.found, hand)
    placed.offers(this, CommandKind.STOP_ON_SIGHT, CommandKind.NOTE_NEAR_MISS)
    placed.heading(this, "near_misses", page.nearMisses.isEmpty())
    records("miss", page.nearMisses, hand)
    placed.heading(this, "hangers", page.hangers.isEmpty())
    records("hanger", page.hangers, hand)
    placed.heading(this, "gear", page.gear.isEmpty())
    records("gear", page.gear, hand)
    if (page.otherGear.isNotEmpty()) item("gear.other", "fold") { OtherGear(page, hand) }
    item("gear.undo", "offer") { OfferButton(page.undoGear, hand, Modifier.fillMaxWidth(), Weight.QUIET) }
    placed.heading(this, "work", page.work.isEmpty())
    records("work", page.work, hand)
    part("next") { Lines(listOf(page.nextLook)) }
    placed.rest(this)
}

/** The gear of the others, folded away between what the climber needs until somebody asks for it. */
@Composable
private fun OtherGear(page: AloftPage, hand: Hand) = Column(verticalArrangement = Arrangement.spacedBy(Spacing.apart)) {
    var open by rememberSaveable { mutableStateOf(false) }
    ToggleTile(page.otherGearWords, "", open, "gear.other", Modifier.fillMaxWidth()) { open = it }
    if (open) page.otherGear.forEach { RecordCard(it, hand) }
}
