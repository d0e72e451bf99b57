package bolewalk.app.look

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.OutlinedTextField
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.produceState
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.OfferedChoice
import bolewalk.book.OfferedInput

/** With more choices than this, letters find the tile. */
private const val MANY = 60

/** One choice, a tile each; the chosen one tapped again is let go where it may be left out. */
@Composable
internal fun ChoiceInput(input: OfferedInput, choices: List<OfferedChoice>, chosen: String, enter: (String) -> Unit) =
    Searched(input, choices, setOf(chosen)) { choice ->
        val here = choice.id == chosen
        // What is drawn and said in a sentence takes the whole width.
        val wide = if (choice.drawing != null && choice.help.isNotEmpty()) Modifier.fillMaxWidth() else Modifier
        ChoiceTile(choice.words, choice.help, here, "${input.id}/${choice.id}", wide, choice.drawing) {
            enter(if (here && !input.needed) "" else choice.id)
        }
    }

@Composable
internal fun ChoicesInput(input: OfferedInput, choices: List<OfferedChoice>, chosen: List<String>, enter: (List<String>) -> Unit) =
    Searched(input, choices, chosen.toSet()) { choice ->
        ToggleTile(choice.words, choice.help, choice.id in chosen, "${input.id}/${choice.id}", drawing = choice.drawing) { on ->
            enter(if (on) chosen + choice.id else chosen - choice.id)
        }
    }

@Composable
private fun Searched(input: OfferedInput, choices: List<OfferedChoice>, chosen: Set<String>, tile: @Composable (OfferedChoice) -> Unit) {
    var sought by rememberSaveable(input.id) { mutableStateOf("") }
    var all by rememberSaveable(input.id, "all") { mutableStateOf(false) }
    if (choices.size > MANY) {
        val words = LocalWords.current.searchList
        OutlinedTextField(
            sought, { sought = it }, Modifier.fillMaxWidth().testTag("${input.id}/search").semantics { contentDescription = words },
            textStyle = MaterialTheme.typography.bodyLarge,
        )
    }
    val fitting = if (choices.size <= MANY) choices else {
        choices.filter { it.id in chosen } + choices.filter { it.id !in chosen && it.words.contains(sought, ignoreCase = true) }
    }
    val (aside, here) = fitting.partition { it.aside && !all }
    Tiles {
        here.take(MANY).forEach { tile(it) }
        if (aside.isNotEmpty()) ActionTile(LocalWords.current.more, "${input.id}/more", weight = Weight.QUIET, sign = Sign.MORE) { all = true }
    }
}

/** One choice of many: what was used last at hand, else found by letters, which forgive what is mistyped. */
@Composable
internal fun SearchInput(input: OfferedInput, kind: InputKind.Search, shown: EntryValue?, enter: (EntryValue?) -> Unit) {
    val form = LocalForm.current
    val chosen = (shown as? EntryValue.Choice)?.id
    var letters by rememberSaveable(input.id) {
        mutableStateOf((shown as? EntryValue.Words)?.text ?: kind.first.find { it.id == chosen }?.words ?: kind.chosen)
    }
    val found by produceState(kind.first, letters) {
        value = if (letters.isBlank() || letters == kind.chosen) kind.first else form.suggest(input.id, letters)
    }
    Typed(input, letters, KeyboardOptions.Default, Modifier.fillMaxWidth()) {
        letters = it
        enter(if (it.isBlank()) EntryValue.Choice("") else EntryValue.Words(it))
    }
    Tiles {
        found.take(NEAREST).forEach { choice ->
            ChoiceTile(choice.words, choice.help, choice.id == chosen, "${input.id}/${choice.id}") {
                letters = choice.words
                enter(EntryValue.Choice(choice.id))
            }
        }
    }
}

/** How many finds of a search are shown. */
private const val NEAREST = 8
