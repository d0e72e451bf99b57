package bolewalk.app.look

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import bolewalk.book.Offer
import bolewalk.book.PageGap

/** What is still to check; a gap that one offer closes is its button. */
@Composable
fun Gaps(gaps: List<PageGap>, hand: Hand) {
    if (gaps.isEmpty()) return
    Card {
        gaps.forEach { gap ->
            val offer = gap.offer?.takeIf(Offer::enabled)
            if (offer == null) Text(gap.words, style = MaterialTheme.typography.bodyLarge) else GapRow(gap.words, offer, hand)
        }
    }
}

@Composable
private fun GapRow(words: String, offer: Offer, hand: Hand) = Row(
    Modifier.fillMaxWidth().testTag(offer.id).clip(RoundedCornerShape(12.dp))
        .clickable(onClickLabel = offer.words, role = Role.Button) { hand.take(offer, emptyMap()) }
        .defaultMinSize(minHeight = Spacing.target).padding(4.dp),
    Arrangement.spacedBy(8.dp), Alignment.CenterVertically,
) {
    Text(words, Modifier.weight(1f), style = MaterialTheme.typography.bodyLarge)
    SignMark(Sign.GO)
}
