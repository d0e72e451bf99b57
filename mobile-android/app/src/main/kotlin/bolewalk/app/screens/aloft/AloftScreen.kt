package bolewalk.app.screens.aloft

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.Notices
import bolewalk.app.look.Sentences
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
    placed.heading(this, "work", page.work.isEmpty())
    records("work", page.work, hand)
    part("next") { Lines(listOf(page.nextLook)) }
    placed.rest(this)
}
