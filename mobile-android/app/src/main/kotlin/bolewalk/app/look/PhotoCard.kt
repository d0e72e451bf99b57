package bolewalk.app.look

import androidx.compose.foundation.clickable
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import bolewalk.book.PagePhoto

/** A photo with its words and what can be done to it; a tap shows it large. */
@Composable
fun PhotoCard(photo: PagePhoto, hand: Hand) = Card(Modifier.testTag("record." + photo.id)) {
    var large by rememberSaveable(photo.id) { mutableStateOf(false) }
    val show = Modifier.testTag("photo.show").clickable(onClickLabel = LocalWords.current.photoLarge, role = Role.Button) { large = true }
    Picture(photo.smallPath, photo.words, show)
    Text(photo.words, style = MaterialTheme.typography.bodyLarge)
    OfferRow(photo.offers, hand)
    if (large) LargePhoto(photo.viewPath, photo.words) { large = false }
}
