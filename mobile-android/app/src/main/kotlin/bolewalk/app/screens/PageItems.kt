package bolewalk.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.lazy.LazyItemScope
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.layout.layout
import bolewalk.app.field.headings
import bolewalk.app.field.offers
import bolewalk.app.look.Hand
import bolewalk.app.look.Heading
import bolewalk.app.look.Lead
import bolewalk.app.look.OfferButton
import bolewalk.app.look.PageDrawing
import bolewalk.app.look.RecordCard
import bolewalk.app.look.Spacing
import bolewalk.app.look.WayRowOf
import bolewalk.book.CommandKind
import bolewalk.book.DrawingAddress
import bolewalk.book.Offer
import bolewalk.book.Page
import bolewalk.book.PageRecord
import bolewalk.book.PageWay

/** A list whose items stand apart from each other, but where one holds nothing. */
class PartsApart(private val list: LazyListScope) : LazyListScope by list {
    override fun item(key: Any?, contentType: Any?, content: @Composable LazyItemScope.() -> Unit) = list.item(key, contentType) {
        val within = this
        Box(Modifier.layout { measurable, constraints ->
            val placed = measurable.measure(constraints)
            val above = if (placed.height == 0) 0 else Spacing.inside.roundToPx()
            layout(placed.width, placed.height + above) { placed.place(0, above) }
        }) { within.content() }
    }
}

/** One part of a page. */
fun LazyListScope.part(key: String, content: @Composable () -> Unit) = item(key, "part") {
    Column(verticalArrangement = Arrangement.spacedBy(Spacing.apart)) { content() }
}

fun LazyListScope.records(key: String, records: List<PageRecord>, hand: Hand) =
    records.forEachIndexed { index, record -> item("$key.$index.${record.id}", "record") { RecordCard(record, hand) } }

fun LazyListScope.ways(ways: List<PageWay>, hand: Hand) = ways.forEach { way -> item("way." + way.id, "way") { WayRowOf(way, hand) } }

fun LazyListScope.drawing(which: DrawingAddress, page: Any, hand: Hand, tag: String) = item("drawing.$tag", "drawing") {
    PageDrawing(which, page, hand, tag)
}

/** The offers of a page, each put in one place: some at the foot, some beside their lists, the rest at the end; and the
 *  headings of its lists. */
class Placed(page: Page, private val hand: Hand) {
    private val left = (page.offers() - (footOffers(page) + steps(page)).toSet()).toMutableList()
    private val headings = page.headings().associateBy { it.list }

    /** The heading of a list by its name; while the list holds nothing, what it is for, where the core says so. */
    fun heading(list: LazyListScope, name: String, isEmpty: Boolean) {
        val heading = headings[name] ?: return
        if (isEmpty && heading.empty.isEmpty()) return
        list.part("heading.$name") {
            Heading(heading.words)
            Lead(heading.empty)
        }
    }

    /** Puts the offers of these commands here. */
    fun offers(list: LazyListScope, vararg commands: CommandKind) = commands.forEach { offer(list, it) }

    fun offer(list: LazyListScope, command: CommandKind) {
        val here = left.filter { it.command == command }
        left -= here.toSet()
        here.forEach { put(list, it) }
    }

    /** Takes an offer out, to be shown in a way of its own. */
    fun take(command: CommandKind): Offer? = left.find { it.command == command }?.also { left -= it }

    fun rest(list: LazyListScope) {
        left.forEach { put(list, it) }
        left.clear()
    }

    private fun put(list: LazyListScope, offer: Offer) = list.item("offer.${offer.id}.${offer.about}", "offer") {
        OfferButton(offer, hand, Modifier.fillMaxWidth())
    }
}
