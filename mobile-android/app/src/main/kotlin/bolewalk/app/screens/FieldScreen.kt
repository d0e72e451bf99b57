package bolewalk.app.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.WindowInsets
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.ime
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawing
import androidx.compose.foundation.layout.union
import androidx.compose.foundation.layout.windowInsetsPadding
import androidx.compose.foundation.lazy.LazyColumn
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.key
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveableStateHolder
import androidx.compose.ui.ExperimentalComposeUiApi
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.testTagsAsResourceId
import bolewalk.app.device.LocalDevice
import bolewalk.app.field.FieldModel
import bolewalk.app.field.FieldState
import bolewalk.app.field.Way
import bolewalk.app.field.meOnPlan
import bolewalk.app.field.treeOnPlan
import bolewalk.app.field.wayOf
import bolewalk.app.look.Hand
import bolewalk.app.look.FormHand
import bolewalk.app.look.LocalDrawings
import bolewalk.app.look.LocalForm
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.LocalWords
import bolewalk.app.look.Spacing
import bolewalk.app.look.Told
import bolewalk.app.screens.anchor.anchorPage
import bolewalk.app.screens.book.bookPage
import bolewalk.app.screens.finding.findingPage
import bolewalk.app.screens.handover.handOverPage
import bolewalk.app.screens.judgement.judgementPage
import bolewalk.app.screens.site.sitePage
import bolewalk.app.screens.tree.treePage
import bolewalk.app.screens.settings.settingsPage
import bolewalk.app.screens.codebook.codebookPage
import bolewalk.app.screens.ruleset.ruleSetPage
import bolewalk.app.screens.people.peoplePage
import bolewalk.app.screens.person.personPage
import bolewalk.app.screens.gear.gearPage
import bolewalk.app.screens.stemsection.stemSectionPage
import bolewalk.app.screens.aloft.aloftPage
import bolewalk.app.screens.compare.comparePage
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.Page
import java.io.File

/** The window: the page where the person is, or the form of the offer being filled in. */
@OptIn(ExperimentalComposeUiApi::class)
@Composable
fun FieldScreen(state: FieldState, field: FieldModel) {
    val hand = handOf(field)
    val holder = rememberSaveableStateHolder()
    Box(
        Modifier.fillMaxSize().background(LocalPalette.current.ground)
            .windowInsetsPadding(WindowInsets.safeDrawing.union(WindowInsets.ime)).semantics { testTagsAsResourceId = true },
    ) {
        val (form, handed) = state.form to state.handedIn
        val drawings: suspend (DrawingAddress) -> Drawing? = remember(field) { { field.drawing(it, 0, 100) } }
        CompositionLocalProvider(LocalDrawings provides drawings) {
            if (handed != null) {
                HandedInScreen(handed, field)
            } else if (form == null) {
                holder.SaveableStateProvider(state.address.toString()) { PageScreen(state, hand, field) }
            } else {
                val formHand = remember(field) { FormHand({ input, path -> field.await(input, path) }, field::suggest, field::average) }
                CompositionLocalProvider(LocalForm provides formHand) { key(form.offer.token, form.anew) { FormScreen(form, state, field) } }
            }
        }
    }
}

@Composable
private fun PageScreen(state: FieldState, hand: Hand, field: FieldModel) = Column(Modifier.fillMaxSize()) {
    val page = state.page
    TopBar(page, hand)
    VerdictBar(page, hand)
    LazyColumn(
        Modifier.weight(1f).fillMaxWidth().testTag("page"), contentPadding = PaddingValues(Spacing.page, Spacing.page - Spacing.inside, Spacing.page, Spacing.page),
    ) {
        val parts = PartsApart(this)
        if (page == null) parts.part("opening") { Told(state.trouble ?: LocalWords.current.opening) } else parts.pageItems(page, hand)
    }
    SaidBar(state, field)
    if (page != null) FootBar(page, hand, state.reader.leftHand)
}

/** Every page has its screen, so that the compiler refuses a shell that forgets one. */
private fun LazyListScope.pageItems(page: Page, hand: Hand) {
    val placed = Placed(page, hand)
    when (page) {
        is Page.Book -> bookPage(page.v1, hand, placed)
        is Page.Settings -> settingsPage(page.v1, hand, placed)
        is Page.Codebook -> codebookPage(page.v1, hand, placed)
        is Page.RuleSet -> ruleSetPage(page.v1, hand, placed)
        is Page.People -> peoplePage(page.v1, hand, placed)
        is Page.Person -> personPage(page.v1, hand, placed)
        is Page.Gear -> gearPage(page.v1, hand, placed)
        is Page.Site -> sitePage(page.v1, hand, placed)
        is Page.Tree -> treePage(page.v1, hand, placed)
        is Page.Finding -> findingPage(page.v1, hand, placed)
        is Page.StemSection -> stemSectionPage(page.v1, hand, placed)
        is Page.Anchor -> anchorPage(page.v1, hand, placed)
        is Page.Aloft -> aloftPage(page.v1, hand, placed)
        is Page.Judgement -> judgementPage(page.v1, hand, placed)
        is Page.Compare -> comparePage(page.v1, hand, placed)
        is Page.HandOver -> handOverPage(page.v1, hand, placed)
    }
}

@Composable
private fun handOf(field: FieldModel): Hand {
    val files = LocalDevice.current.files
    val brought = File(LocalContext.current.filesDir, "brought/file").path
    return remember(field, files, brought) {
        Hand(
            open = field::open,
            search = field::search,
            take = { offer, entered ->
                if (wayOf(offer.command) is Way.BringIn && offer.enabled) {
                    field.await(offer, brought)
                    files.any(brought)
                } else {
                    field.take(offer, entered)
                }
            },
            drawing = field::drawing,
            treeOnPlan = field::treeOnPlan,
            meOnPlan = field::meOnPlan,
        )
    }
}
