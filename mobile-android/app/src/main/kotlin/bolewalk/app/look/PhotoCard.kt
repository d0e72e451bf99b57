package bolewalk.app.look

import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import bolewalk.book.PagePhoto

/** A photo with its words and what can be done to it. */
@Composable
fun PhotoCard(photo: PagePhoto, hand: Hand) = Card(Modifier.testTag("record." + photo.id)) {
    Picture(photo.smallPath, photo.words)
    Text(photo.words, style = MaterialTheme.typography.bodyLarge)
    OfferRow(photo.offers, hand)
}
