package bolewalk.app.screens.tree

import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.OfferRow
import bolewalk.book.PartOfWalk

/** A part of the walk-round with a button for each way it can have been seen: one tap a part, and none for all. */
@Composable
fun WalkCard(walked: PartOfWalk, hand: Hand) = Card(Modifier.testTag("record.walk." + walked.part)) {
    Text(said(walked), style = MaterialTheme.typography.titleMedium)
    OfferRow(walked.offers, hand)
}

/** The parts of a walk-round that nobody has begun, and what it waits for. */
@Composable
fun WalkThatWaits(parts: List<PartOfWalk>, waits: String) = Card {
    Text(waits, style = MaterialTheme.typography.bodyLarge, fontWeight = FontWeight.SemiBold)
    parts.forEach { Text(said(it), style = MaterialTheme.typography.bodyLarge) }
}

private fun said(walked: PartOfWalk) = listOf(walked.words, walked.lookWords).filter { it.isNotEmpty() }.joinToString(" · ")
