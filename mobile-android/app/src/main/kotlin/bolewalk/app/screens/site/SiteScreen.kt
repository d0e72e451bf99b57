package bolewalk.app.screens.site

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Notices
import bolewalk.app.look.Sentences
import bolewalk.app.look.VerdictMark
import bolewalk.app.look.WayRow
import bolewalk.app.screens.drawing
import bolewalk.app.screens.offer
import bolewalk.app.screens.otherOffers
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CommandKind
import bolewalk.book.DrawingAddress
import bolewalk.book.SitePage
import bolewalk.book.TreeOfSite

private val placed = setOf(
    CommandKind.START_VISIT, CommandKind.NOTE_WEATHER, CommandKind.WRITE_RESCUE_PLAN, CommandKind.ADD_TARGET,
    CommandKind.ADD_OVERHEAD_LINE, CommandKind.ADD_PERMISSION,
)

/** A site: what bars today, the plan, the trees in walking order, then what lies around them. */
fun LazyListScope.sitePage(page: SitePage, hand: Hand, primary: Set<CommandKind>) {
    part("notices") { Notices(page.notices) }
    records("unsettled", page.unsettled, hand)
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    part("gaps") { Sentences(page.gaps) }
    drawing(DrawingAddress.SitePlan(page.id), page, hand, "plan")
    page.trees.forEach { tree -> item("tree." + tree.id, "tree") { TreeRow(tree, hand) } }
    part("conflicts") { Sentences(page.conflicts, FontWeight.SemiBold) }
    part("lines") { Lines(page.lines) }
    offer(page.offers, CommandKind.START_VISIT, hand)
    offer(page.offers, CommandKind.NOTE_WEATHER, hand)
    offer(page.offers, CommandKind.WRITE_RESCUE_PLAN, hand)
    records("target", page.targets, hand)
    offer(page.offers, CommandKind.ADD_TARGET, hand)
    records("line", page.overheadLines, hand)
    offer(page.offers, CommandKind.ADD_OVERHEAD_LINE, hand)
    records("permission", page.permissions, hand)
    offer(page.offers, CommandKind.ADD_PERMISSION, hand)
    otherOffers(page.offers, primary + placed, hand)
}

/** A tree of the site: tag, species, verdict and the first reason. */
@Composable
private fun TreeRow(tree: TreeOfSite, hand: Hand) = Card(Modifier.testTag("record." + tree.id)) {
    WayRow(tree.goTo, hand) {
        Column(verticalArrangement = Arrangement.spacedBy(6.dp)) {
            Text("${tree.tag} · ${tree.species}", style = MaterialTheme.typography.titleMedium)
            VerdictMark(tree.verdict, tree.words)
            if (tree.reason.isNotEmpty()) Text(tree.reason, style = MaterialTheme.typography.bodyMedium, color = LocalPalette.current.quietInk)
        }
    }
}
