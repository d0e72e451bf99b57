package bolewalk.app.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import bolewalk.app.device.LocalDevice
import bolewalk.app.field.FieldModel
import bolewalk.app.field.FieldState
import bolewalk.app.field.Way
import bolewalk.app.field.bookAddress
import bolewalk.app.field.kind
import bolewalk.app.field.offers
import bolewalk.app.field.title
import bolewalk.app.field.up
import bolewalk.app.field.wayOf
import bolewalk.app.look.ActionTile
import bolewalk.app.look.Hand
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.LocalWords
import bolewalk.app.look.Sign
import bolewalk.app.look.Spacing
import bolewalk.app.look.VerdictMark
import bolewalk.app.look.Weight
import bolewalk.app.look.WayRow
import bolewalk.app.look.filled
import bolewalk.app.look.lettersAreLarge
import bolewalk.book.CommandKind
import bolewalk.book.LineState
import bolewalk.book.Offer
import bolewalk.book.Page
import bolewalk.book.Verdict

/** Where the person is, the page above, and the field book. */
@Composable
fun TopBar(page: Page?, hand: Hand) = Row(
    Modifier.fillMaxWidth().padding(Spacing.apart).defaultMinSize(minHeight = Spacing.target), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically,
) {
    val up = page?.up()
    if (up != null) IconTile(Sign.UP, LocalWords.current.goUp, "go." + up.kind()) { hand.open(up) }
    Text(
        page?.title().orEmpty(), Modifier.weight(1f).padding(horizontal = 8.dp).semantics { heading() },
        style = if (lettersAreLarge()) MaterialTheme.typography.titleMedium else MaterialTheme.typography.titleLarge,
    )
    if (up != null && up != bookAddress) IconTile(Sign.BOOK, LocalWords.current.goBook, "go.book") { hand.open(bookAddress) }
}

@Composable
fun IconTile(sign: Sign, words: String, tag: String, enabled: Boolean = true, onClick: () -> Unit) =
    ActionTile("", tag, Modifier.semantics { contentDescription = words }, Weight.QUIET, enabled, sign, onClick)

/** The verdict, always in sight on a tree's pages, with the first reason, which large letters put on the page itself; on a
 *  site the way to the papers. */
@Composable
fun VerdictBar(page: Page?, hand: Hand) = when (page) {
    is Page.Tree -> Bar { WayRow(page.v1.judgement, hand) { VerdictWords(page.v1.verdict, page.v1.verdictWords, if (lettersAreLarge()) "" else page.v1.reason) } }
    is Page.Judgement -> Bar { VerdictWords(page.v1.verdict, page.v1.verdictWords, "") }
    is Page.Site -> Bar { WayRow(page.v1.handOver, hand) { Text(LocalWords.current.goHandOver, style = MaterialTheme.typography.titleSmall) } }
    is Page.Aloft -> Bar { VerdictWords(page.v1.verdict, page.v1.verdictWords, page.v1.reason) }
    null, is Page.Book, is Page.Settings, is Page.Codebook, is Page.RuleSet, is Page.People, is Page.Person, is Page.Gear,
    is Page.Finding, is Page.StemSection, is Page.Anchor, is Page.Compare, is Page.HandOver,
    -> Unit
}

@Composable
private fun Bar(content: @Composable () -> Unit) = Column {
    Column(Modifier.padding(Spacing.page, 0.dp, Spacing.page, Spacing.apart)) { content() }
    HorizontalDivider(color = LocalPalette.current.edge)
}

@Composable
private fun VerdictWords(verdict: Verdict, words: String, reason: String) = Column(Modifier.testTag("verdict"), Arrangement.spacedBy(4.dp)) {
    VerdictMark(verdict, words, style = MaterialTheme.typography.titleMedium)
    if (reason.isNotEmpty()) Text(reason, style = MaterialTheme.typography.bodyMedium)
}

/** What the app said last, and how far long work is. */
@Composable
fun SaidBar(state: FieldState, field: FieldModel) {
    val palette = LocalPalette.current
    val sharing = LocalDevice.current.sharing
    val words = LocalWords.current
    state.work?.let { work ->
        Row(Modifier.fillMaxWidth().padding(Spacing.page, 4.dp), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically) {
            Text(words.working.filled("done" to work.done, "of" to work.of), Modifier.weight(1f), style = MaterialTheme.typography.bodyLarge)
            ActionTile(words.stopWork, "work.stop") { field.stopWork() }
        }
    }
    if (state.late) {
        Text(
            words.busy, Modifier.fillMaxWidth().padding(Spacing.page, 10.dp).testTag("busy").semantics { liveRegion = LiveRegionMode.Polite },
            style = MaterialTheme.typography.bodyLarge,
        )
    }
    val said = state.said ?: return
    val (ground, ink) = if (said.refused) palette.refusal to palette.onRefusal else palette.lichen to palette.onLichen
    Text(
        said.words,
        Modifier.fillMaxWidth().background(ground).padding(Spacing.page, 10.dp).testTag("said").semantics { liveRegion = LiveRegionMode.Polite },
        color = ink, style = MaterialTheme.typography.bodyLarge,
    )
    state.written?.let { path ->
        Column(Modifier.fillMaxWidth().padding(Spacing.page, Spacing.apart), Arrangement.spacedBy(Spacing.apart)) {
            ActionTile(words.share, "work.share", Modifier.fillMaxWidth(), Weight.PRIMARY) {
                if (!sharing.hand(path)) field.say(words.noApp, refused = true)
            }
            if (sharing.isToLookAt(path)) {
                ActionTile(words.openFile, "work.open", Modifier.fillMaxWidth()) { if (!sharing.open(path)) field.say(words.noApp, refused = true) }
            }
        }
    }
}

/** What a page is there for: the large buttons in the thumb's reach. */
internal fun footOffers(page: Page): List<Offer> = when (page) {
    is Page.Book -> page.offering(CommandKind.ADD_SITE)
    is Page.Settings -> page.offering(CommandKind.CHANGE_SETTINGS)
    is Page.Codebook -> page.offering(CommandKind.ADD_CODE)
    is Page.RuleSet, is Page.Compare -> emptyList()
    is Page.People -> page.offering(CommandKind.ADD_PERSON)
    is Page.Person -> page.offering(CommandKind.LOG_CLIMB)
    is Page.Gear -> page.offering(CommandKind.ADD_GEAR)
    is Page.Site -> if (page.begun()) page.offering(CommandKind.ADD_TREE) else page.offering(CommandKind.START_VISIT) + page.offering(CommandKind.ADD_TREE)
    is Page.Tree -> if (page.v1.inspection.isEmpty()) page.v1.doors else page.offering(CommandKind.ADD_FINDING)
    is Page.Finding -> page.offering(CommandKind.ADD_PHOTO)
    is Page.StemSection -> page.offering(CommandKind.READ_WALL)
    is Page.Anchor -> page.offering(CommandKind.TEST_ANCHOR)
    is Page.Aloft -> page.offering(CommandKind.FIND_ALOFT)
    is Page.Judgement -> page.offering(CommandKind.SIGN_JUDGEMENT)
    is Page.HandOver -> page.offering(CommandKind.WRITE_SUMMARY)
}

/** Whether today's visit was begun. */
private fun Page.Site.begun() = v1.visit.none { it.id == "visit.day" && it.state == LineState.MISSING }

private fun Page.offering(command: CommandKind) = offers().filter { it.command == command }.take(1)

/** Undo and redo. */
internal fun steps(page: Page): List<Offer> = page.offers().filter { wayOf(it.command) is Way.Step }

/** At the foot of every page: undo and redo, and what the page is there for; on the side of the hand that holds the phone. */
@OptIn(ExperimentalLayoutApi::class)
@Composable
fun FootBar(page: Page, hand: Hand, leftHand: Boolean) = Column {
    HorizontalDivider(color = LocalPalette.current.edge)
    val (offers, side) = footOffers(page) to if (leftHand) Alignment.Start else Alignment.End
    // Why one cannot be taken stands over the row, so that the row stays one.
    offers.filterNot(Offer::enabled).map { it.whyNot }.distinct().forEach {
        Text(it, Modifier.align(side).padding(Spacing.page, Spacing.apart, Spacing.page, 0.dp), LocalPalette.current.quietInk, style = MaterialTheme.typography.bodySmall)
    }
    FlowRow(
        Modifier.fillMaxWidth().padding(Spacing.apart), Arrangement.spacedBy(Spacing.apart, side), Arrangement.spacedBy(Spacing.apart),
    ) {
        val large: @Composable () -> Unit = {
            offers.forEach { ActionTile(it.words, it.id, weight = Weight.PRIMARY, enabled = it.enabled) { hand.take(it, emptyMap()) } }
        }
        if (leftHand) large()
        steps(page).forEach { step ->
            val sign = if (step.command == CommandKind.UNDO) Sign.UNDO else Sign.REDO
            IconTile(sign, step.words, step.id, step.enabled) { hand.take(step, emptyMap()) }
        }
        if (!leftHand) large()
    }
}
