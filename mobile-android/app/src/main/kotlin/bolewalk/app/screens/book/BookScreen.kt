package bolewalk.app.screens.book

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Notices
import bolewalk.app.look.OfferRow
import bolewalk.app.look.RecordCard
import bolewalk.app.look.WayRow
import bolewalk.app.screens.offer
import bolewalk.app.screens.otherOffers
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.BookPage
import bolewalk.book.CommandKind
import bolewalk.book.PersonOfBook
import bolewalk.book.SiteOfBook

/** The field book: its sites, then its people and its gear. */
fun LazyListScope.bookPage(page: BookPage, hand: Hand, primary: Set<CommandKind>) {
    part("notices") { Notices(page.notices) }
    page.sites.forEach { site -> item("site." + site.id, "site") { SiteRow(site, hand) } }
    part("lines") { Lines(page.lines) }
    page.crew.forEach { person -> item("person." + person.id, "person") { PersonCard(person, hand) } }
    offer(page.offers, CommandKind.ADD_PERSON, hand)
    records("gear", page.gear, hand)
    offer(page.offers, CommandKind.ADD_GEAR, hand)
    otherOffers(page.offers, primary + setOf(CommandKind.ADD_PERSON, CommandKind.ADD_GEAR), hand)
}

@Composable
private fun SiteRow(site: SiteOfBook, hand: Hand) = Card(Modifier.testTag("record." + site.id)) {
    WayRow(site.goTo, hand) {
        Column {
            Text(site.name, style = MaterialTheme.typography.titleMedium)
            Text(site.words, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
        }
    }
}

/** A person with the training record. */
@Composable
private fun PersonCard(person: PersonOfBook, hand: Hand) = Card(Modifier.testTag("record." + person.id)) {
    Text(person.name, style = MaterialTheme.typography.titleMedium)
    if (person.detail.isNotEmpty()) Text(person.detail, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
    OfferRow(person.offers, hand)
    person.signOffs.forEach { RecordCard(it, hand) }
}
