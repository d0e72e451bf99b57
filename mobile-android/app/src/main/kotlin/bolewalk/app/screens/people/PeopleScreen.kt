package bolewalk.app.screens.people

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.WayRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.PeoplePage
import bolewalk.book.PersonOfBook

/** The crew, each with how far the training has come. */
fun LazyListScope.peoplePage(page: PeoplePage, hand: Hand, placed: Placed) {
    part("lead") { Lead(page.lead) }
    placed.heading(this, "people", page.people.isEmpty())
    page.people.forEach { person -> item("person." + person.id, "person") { PersonRow(person, hand) } }
    placed.rest(this)
}

@Composable
private fun PersonRow(person: PersonOfBook, hand: Hand) = Card(Modifier.testTag("record." + person.id)) {
    WayRow(person.goTo, hand) {
        Column {
            Text(person.name, style = MaterialTheme.typography.titleMedium)
            person.lapses.forEach { Text(it, style = MaterialTheme.typography.bodyLarge, fontWeight = FontWeight.SemiBold) }
            listOf(person.detail, person.training).filter { it.isNotEmpty() }.forEach {
                Text(it, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
            }
        }
    }
}
