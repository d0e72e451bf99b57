package bolewalk.app.look

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.OutlinedTextField
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.res.stringResource
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import bolewalk.app.R
import bolewalk.book.OfferedChoice
import bolewalk.book.OfferedInput

/** With more choices than this, letters find the tile. */
private const val MANY = 60

/** One choice, a tile each; the chosen one tapped again is let go where it may be left out. */
@Composable
internal fun ChoiceInput(input: OfferedInput, choices: List<OfferedChoice>, chosen: String, enter: (String) -> Unit) =
    Searched(input, choices, setOf(chosen)) { choice ->
        val here = choice.id == chosen
        ChoiceTile(choice.words, choice.help, here, "${input.id}/${choice.id}") { enter(if (here && !input.needed) "" else choice.id) }
    }

@Composable
internal fun ChoicesInput(input: OfferedInput, choices: List<OfferedChoice>, chosen: List<String>, enter: (List<String>) -> Unit) =
    Searched(input, choices, chosen.toSet()) { choice ->
        ToggleTile(choice.words, choice.help, choice.id in chosen, "${input.id}/${choice.id}") { on ->
            enter(if (on) chosen + choice.id else chosen - choice.id)
        }
    }

@Composable
private fun Searched(input: OfferedInput, choices: List<OfferedChoice>, chosen: Set<String>, tile: @Composable (OfferedChoice) -> Unit) {
    var sought by rememberSaveable(input.id) { mutableStateOf("") }
    if (choices.size > MANY) {
        val words = stringResource(R.string.search)
        OutlinedTextField(
            sought, { sought = it }, Modifier.fillMaxWidth().testTag("${input.id}/search").semantics { contentDescription = words },
            textStyle = MaterialTheme.typography.bodyLarge,
        )
    }
    val fitting = choices.filter { it.id in chosen } + choices.filter { it.id !in chosen && it.words.contains(sought, ignoreCase = true) }
    Tiles { fitting.take(MANY).forEach { tile(it) } }
}
