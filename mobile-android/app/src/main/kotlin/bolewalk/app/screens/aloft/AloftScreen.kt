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
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    records("plan", page.plans, hand)
    records("found", page.found, hand)
    placed.offers(this, CommandKind.STOP_ON_SIGHT, CommandKind.NOTE_NEAR_MISS)
    records("miss", page.nearMisses, hand)
    records("hanger", page.hangers, hand)
    records("gear", page.gear, hand)
    records("work", page.work, hand)
    part("next") { Lines(listOf(page.nextLook)) }
    placed.rest(this)
}
