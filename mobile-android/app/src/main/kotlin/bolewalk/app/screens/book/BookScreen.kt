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
import bolewalk.app.look.Lead
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Notices
import bolewalk.app.look.SearchField
import bolewalk.app.look.WayRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.app.screens.ways
import bolewalk.book.BookPage
import bolewalk.book.CommandKind
import bolewalk.book.SiteOfBook

/** With more sites or trees than this, letters find them. */
internal const val MANY = 6

/** The field book: its sites, near ones first, and the ways to all that is managed. */
fun LazyListScope.bookPage(page: BookPage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    records("unsettled", page.unsettled, hand)
    if (page.sites.size > MANY || page.search.isNotEmpty()) part("search") { SearchField(page.search, hand) }
    part("lead") { Lead(page.lead) }
    placed.heading(this, "sites", page.sites.isEmpty())
    page.sites.forEach { site -> item("site." + site.id, "site") { SiteRow(site, hand) } }
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offer(this, CommandKind.CHANGE_SETTINGS)
    placed.heading(this, "ways", page.ways.isEmpty())
    ways(page.ways, hand)
    placed.heading(this, "health", page.health.isEmpty())
    part("health") { Lines(page.health) }
    placed.rest(this)
}

@Composable
private fun SiteRow(site: SiteOfBook, hand: Hand) = Card(Modifier.testTag("record." + site.id)) {
    WayRow(site.goTo, hand) {
        Column {
            Text(site.name, style = MaterialTheme.typography.titleMedium)
            listOf(site.words, site.away).filter { it.isNotEmpty() }.forEach {
                Text(it, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
            }
        }
    }
}
