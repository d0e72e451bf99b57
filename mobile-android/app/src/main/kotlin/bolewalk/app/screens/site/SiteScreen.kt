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
import bolewalk.app.look.Gaps
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LineText
import bolewalk.app.look.Lines
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Notices
import bolewalk.app.look.SearchField
import bolewalk.app.look.Sentences
import bolewalk.app.look.VerdictMark
import bolewalk.app.look.WayCard
import bolewalk.app.look.WayRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.book.MANY
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.ActionOfSite
import bolewalk.book.CommandKind
import bolewalk.book.SitePage
import bolewalk.book.TreeOfSite

/** A site: what bars today, the visit, what to close, the plan, the trees in walking order, then what lies around them. */
fun LazyListScope.sitePage(page: SitePage, hand: Hand, placed: Placed) {
    part("notices") { Notices(page.notices) }
    records("unsettled", page.unsettled, hand)
    placed.heading(this, "stops", page.stops.isEmpty())
    part("stops") { Sentences(page.stops, FontWeight.SemiBold) }
    placed.heading(this, "visit", page.visit.isEmpty())
    part("visit") { Lines(page.visit) }
    placed.offers(this, CommandKind.START_VISIT, CommandKind.SAME_WEATHER, CommandKind.NOTE_WEATHER)
    placed.heading(this, "gaps", page.gaps.isEmpty())
    part("gaps") { Gaps(page.gaps, hand) }
    placed.heading(this, "to_close", page.toClose.isEmpty())
    page.toClose.forEach { action -> item("action.${action.action}", "action") { ActionCard(action) } }
    placed.heading(this, "conflicts", page.conflicts.isEmpty())
    part("conflicts") { Sentences(page.conflicts, FontWeight.SemiBold) }
    part("no_plan") { Lead(page.noPlan) }
    item("drawing.plan", "drawing") { SitePlan(page, hand) }
    if (page.trees.size > MANY || page.search.isNotEmpty()) part("search") { SearchField(page.search, hand) }
    part("lead") { Lead(page.lead) }
    placed.heading(this, "trees", page.trees.isEmpty())
    page.trees.forEach { tree -> item("tree." + tree.id, "tree") { TreeRow(tree, hand) } }
    placed.heading(this, "targets", page.targets.isEmpty())
    records("target", page.targets, hand)
    placed.offers(this, CommandKind.ADD_TARGET, CommandKind.IMPORT_GROUND)
    placed.heading(this, "overhead_lines", page.overheadLines.isEmpty())
    records("line", page.overheadLines, hand)
    placed.offer(this, CommandKind.ADD_OVERHEAD_LINE)
    placed.heading(this, "permissions", page.permissions.isEmpty())
    records("permission", page.permissions, hand)
    placed.offer(this, CommandKind.ADD_PERMISSION)
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.offers(this, CommandKind.CHANGE_SITE, CommandKind.WRITE_RESCUE_PLAN)
    part("rules") { WayCard(page.rules, hand) }
    placed.rest(this)
}

/** What to close, move, guard or ask for, thing by thing. */
@Composable
private fun ActionCard(action: ActionOfSite) = Card(Modifier.testTag("record.to_close.${action.action}")) {
    Text(action.words, style = MaterialTheme.typography.titleMedium)
    action.things.forEach { LineText(it) }
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
