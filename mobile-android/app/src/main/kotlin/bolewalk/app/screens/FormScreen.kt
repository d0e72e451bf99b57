package bolewalk.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import bolewalk.app.field.FieldModel
import bolewalk.app.field.FieldState
import bolewalk.app.field.FilledOffer
import bolewalk.app.look.ActionTile
import bolewalk.app.look.Card
import bolewalk.app.look.FieldInput
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.LocalWords
import bolewalk.app.look.Sign
import bolewalk.app.look.Spacing
import bolewalk.app.look.Weight

/** The form of an offer: its inputs in the core's order, then one button. What is entered is kept until it is closed. */
@Composable
fun FormScreen(form: FilledOffer, state: FieldState, field: FieldModel) = Column(Modifier.fillMaxSize().testTag("form")) {
    Row(Modifier.fillMaxWidth().padding(Spacing.apart), Arrangement.spacedBy(Spacing.apart), Alignment.CenterVertically) {
        IconTile(Sign.CLOSE, LocalWords.current.close, "form.close") { field.close() }
        Text(form.offer.words, Modifier.weight(1f).semantics { heading() }, style = MaterialTheme.typography.titleLarge)
    }
    Column(
        Modifier.weight(1f).fillMaxWidth().verticalScroll(rememberScrollState()).padding(Spacing.page),
        Arrangement.spacedBy(Spacing.between),
    ) {
        if (form.rehearsed.isNotEmpty()) Card { Text(form.rehearsed, Modifier.testTag("form.rehearsed"), style = MaterialTheme.typography.titleMedium) }
        form.offer.inputs.forEach { input ->
            FieldInput(input, form.shown(input), form.faults[input.id]) { field.enter(input.id, it) }
        }
    }
    SaidBar(state, field)
    HorizontalDivider(color = LocalPalette.current.edge)
    ActionTile(LocalWords.current.keep, "form.confirm", Modifier.fillMaxWidth().padding(Spacing.apart), Weight.PRIMARY, onClick = field::confirm)
}
