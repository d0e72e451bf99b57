package bolewalk.app.look

import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.OutlinedTextField
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics

/** Searches on the page: the core answers at every letter. */
@Composable
fun SearchField(sought: String, hand: Hand) {
    var text by rememberSaveable { mutableStateOf(sought) }
    val words = LocalWords.current.search
    OutlinedTextField(
        text,
        {
            text = it
            hand.search(it)
        },
        Modifier.fillMaxWidth().defaultMinSize(minHeight = Spacing.target).testTag("page.search").semantics { contentDescription = words },
        placeholder = { Text(words) }, singleLine = true, textStyle = MaterialTheme.typography.bodyLarge,
    )
}

/** What to do where there is nothing yet. */
@Composable
fun Lead(words: String) {
    if (words.isNotEmpty()) Card { Text(words, style = MaterialTheme.typography.bodyLarge) }
}
