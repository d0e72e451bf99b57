package bolewalk.app.screens

import androidx.compose.foundation.ExperimentalFoundationApi
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.relocation.BringIntoViewRequester
import androidx.compose.foundation.relocation.bringIntoViewRequester
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.remember
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import bolewalk.app.field.FieldModel
import bolewalk.app.field.FieldState
import bolewalk.app.field.FilledOffer
import bolewalk.app.field.Said
import bolewalk.app.look.ActionTile
import bolewalk.app.look.FieldInput
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.LocalWords
import bolewalk.app.look.LocalPlan
import bolewalk.app.look.Sign
import bolewalk.app.look.SmallDrawing
import bolewalk.app.look.Spacing
import bolewalk.app.look.Told
import bolewalk.app.look.Weight
import bolewalk.app.look.filled

/** The form of an offer: its inputs in the core's order, and in sight below them what would be recorded, and one
 *  button. What is entered lies aside when the form is left, until it is kept or started anew. */
@Composable
fun FormScreen(form: FilledOffer, state: FieldState, field: FieldModel) = Column(Modifier.fillMaxSize().testTag("form")) {
    Row(Modifier.fillMaxWidth().padding(Spacing.apart), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically) {
        IconTile(Sign.CLOSE, LocalWords.current.close, "form.close") { field.close() }
        Text(form.offer.words, Modifier.weight(1f).semantics { heading() }, style = MaterialTheme.typography.titleLarge)
    }
    form.rehearsed?.drawing?.let { SmallDrawing(it, "form.drawing") }
    Column(
        Modifier.weight(1f).fillMaxWidth().verticalScroll(rememberScrollState()).padding(Spacing.page),
        Arrangement.spacedBy(Spacing.between),
    ) {
        if (form.fromBefore) FromBefore(field)
        val wrong = form.offer.inputs.map { it.id }.find { it in form.faults }
        CompositionLocalProvider(LocalPlan provides planOf(form, field)) {
            form.inputs.forEach { input ->
                InSight(state.said.takeIf { it?.refused == true && input.id == wrong }) {
                    FieldInput(input, form.shown(input), form.faults[input.id]) { field.enter(input.id, it) }
                }
            }
        }
    }
    RehearsedBar(form)
    SaidBar(state.copy(said = state.said?.let { shortly(it, form) }), field)
    HorizontalDivider(color = LocalPalette.current.edge)
    ActionTile(LocalWords.current.keep, "form.confirm", Modifier.fillMaxWidth().padding(Spacing.apart), Weight.PRIMARY, onClick = field::confirm)
}

@Composable
private fun FromBefore(field: FieldModel) = Column(Modifier.testTag("form.from_before"), Arrangement.spacedBy(Spacing.apart)) {
    Told(LocalWords.current.draftKept)
    ActionTile(LocalWords.current.startAnew, "form.start_anew", weight = Weight.QUIET, onClick = field::startAnew)
}

/** What would be recorded as it stands, and what is wanted next; of large letters two lines at a time. */
@Composable
private fun RehearsedBar(form: FilledOffer) {
    val rehearsed = form.rehearsed ?: return
    val begun = form.draft.isNotEmpty() && form.faults.isEmpty()
    val next = if (begun) rehearsed.open.firstOrNull()?.words.orEmpty() else ""
    if (rehearsed.words.isEmpty() && next.isEmpty()) return
    val palette = LocalPalette.current
    HorizontalDivider(color = palette.edge)
    Column(
        Modifier.fillMaxWidth().heightIn(max = MOST_REHEARSED).background(palette.card).verticalScroll(rememberScrollState())
            .padding(Spacing.page, 8.dp).testTag("form.live").semantics { liveRegion = LiveRegionMode.Polite },
    ) {
        if (rehearsed.words.isNotEmpty()) Text(rehearsed.words, Modifier.testTag("form.rehearsed"), style = MaterialTheme.typography.titleMedium)
        if (next.isNotEmpty()) Text(next, Modifier.testTag("form.open"), style = MaterialTheme.typography.bodyMedium)
    }
}

private val MOST_REHEARSED = 116.dp

/** A refusal whose every fault stands at its input is said in short: the words are there. */
@Composable
private fun shortly(said: Said, form: FilledOffer): Said {
    val asked = form.offer.inputs.map { it.id }.toSet()
    if (!said.refused || form.faults.isEmpty() || !asked.containsAll(form.faults.keys)) return said
    return said.copy(words = LocalWords.current.refusedMarked.filled("count" to form.faults.size))
}

/** Comes into sight when something is said of it. */
@OptIn(ExperimentalFoundationApi::class)
@Composable
private fun InSight(said: Said?, content: @Composable () -> Unit) {
    val sight = remember { BringIntoViewRequester() }
    LaunchedEffect(said) { if (said != null) sight.bringIntoView() }
    Box(Modifier.bringIntoViewRequester(sight)) { content() }
}
