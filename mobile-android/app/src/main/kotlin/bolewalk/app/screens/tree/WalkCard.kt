package bolewalk.app.screens.tree

import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import bolewalk.app.look.Card
import bolewalk.app.look.ChoiceTile
import bolewalk.app.look.Hand
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Spacing
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.Offer
import bolewalk.book.OfferedChoice
import bolewalk.book.OfferedInput
import bolewalk.book.PartOfWalk

/** A part of the walk-round with a tile for each way it can have been seen: one tap a part, and no tile for all. */
@OptIn(ExperimentalLayoutApi::class)
@Composable
fun WalkCard(walked: PartOfWalk, offer: Offer, hand: Hand) = Card(Modifier.testTag("record.walk." + walked.part)) {
    Text(walked.words, style = MaterialTheme.typography.titleMedium)
    if (walked.lookWords.isNotEmpty()) Text(walked.lookWords, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
    // The two choices that the command needs: which part, and how it was seen.
    val choices = offer.inputs.filter { it.needed && it.kind is InputKind.Choice }
    if (!offer.enabled || choices.size != 2) return@Card
    val (part, look) = choices
    val partId = choicesOf(part).find { it.words == walked.words || it.id == walked.part.name.lowercase() }?.id ?: return@Card
    FlowRow(horizontalArrangement = Arrangement.spacedBy(Spacing.apart), verticalArrangement = Arrangement.spacedBy(Spacing.apart)) {
        choicesOf(look).forEach { choice ->
            val chosen = walked.today && walked.look?.name?.lowercase() == choice.id
            ChoiceTile(choice.words, "", chosen, "${offer.id}/$partId/${choice.id}") {
                hand.take(offer, mapOf(part.id to EntryValue.Choice(partId), look.id to EntryValue.Choice(choice.id)))
            }
        }
    }
}

private fun choicesOf(input: OfferedInput): List<OfferedChoice> = (input.kind as? InputKind.Choice)?.choices.orEmpty()
