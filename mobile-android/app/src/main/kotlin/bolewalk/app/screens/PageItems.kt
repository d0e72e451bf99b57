package bolewalk.app.screens

import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.runtime.Composable
import bolewalk.app.look.Hand
import bolewalk.app.look.OfferButton
import bolewalk.app.look.PageDrawing
import bolewalk.app.look.RecordCard
import bolewalk.book.CommandKind
import bolewalk.book.DrawingAddress
import bolewalk.book.Offer
import bolewalk.book.PageRecord
import androidx.compose.ui.Modifier
import androidx.compose.foundation.layout.fillMaxWidth

/** One part of a page. */
fun LazyListScope.part(key: String, content: @Composable () -> Unit) = item(key, "part") { content() }

/** A list of records, then the offer that makes another. */
fun LazyListScope.records(key: String, records: List<PageRecord>, hand: Hand) {
    records.forEachIndexed { index, record -> item("$key.$index.${record.id}", "record") { RecordCard(record, hand) } }
}

fun LazyListScope.offer(offers: List<Offer>, command: CommandKind, hand: Hand) {
    offers.find { it.command == command }?.let { offer ->
        item("offer." + offer.id, "offer") { OfferButton(offer, hand, Modifier.fillMaxWidth()) }
    }
}

fun LazyListScope.drawing(which: DrawingAddress, page: Any, hand: Hand, tag: String) = item("drawing.$tag", "drawing") {
    PageDrawing(which, page, hand, tag)
}

/** Every offer of the page that stands nowhere else on it. */
fun LazyListScope.otherOffers(offers: List<Offer>, shown: Set<CommandKind>, hand: Hand) {
    offers.filter { it.command !in shown && it.command !in atTheFoot }.forEach { offer ->
        item("offer.${offer.id}.${offer.about}", "offer") { OfferButton(offer, hand, Modifier.fillMaxWidth()) }
    }
}

/** What every page has at its foot. */
internal val atTheFoot = setOf(CommandKind.UNDO, CommandKind.REDO)
