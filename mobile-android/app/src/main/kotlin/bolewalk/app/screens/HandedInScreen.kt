package bolewalk.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import bolewalk.app.field.FieldModel
import bolewalk.app.field.HandedIn
import bolewalk.app.look.ActionTile
import bolewalk.app.look.LocalWords
import bolewalk.app.look.Spacing
import bolewalk.app.look.Told
import bolewalk.app.look.Weight

/** Asks before a file of another app comes into the field book: any app can hand one in. */
@Composable
fun HandedInScreen(handed: HandedIn, field: FieldModel) = Column(
    Modifier.fillMaxSize().verticalScroll(rememberScrollState()).padding(Spacing.page).testTag("handed"),
    Arrangement.spacedBy(Spacing.between),
) {
    Text(LocalWords.current.handedTitle, Modifier.semantics { heading() }, style = MaterialTheme.typography.titleLarge)
    if (handed.name.isNotEmpty()) Text(handed.name, style = MaterialTheme.typography.titleMedium)
    Told(LocalWords.current.handedWhat)
    ActionTile(LocalWords.current.handedTake, "handed.take", Modifier.fillMaxWidth(), Weight.PRIMARY) { field.takeHandedIn() }
    ActionTile(LocalWords.current.handedLeave, "handed.leave", Modifier.fillMaxWidth(), Weight.QUIET) { field.leaveHandedIn() }
}
