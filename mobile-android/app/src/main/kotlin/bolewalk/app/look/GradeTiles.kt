package bolewalk.app.look

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import bolewalk.book.EntryValue
import bolewalk.book.GradeTile
import bolewalk.book.InputKind
import bolewalk.book.Offer

/** An offer that asks for one choice among a few: a tile each, so that one tap says and does it. */
@OptIn(ExperimentalLayoutApi::class)
@Composable
fun OfferTiles(offer: Offer, hand: Hand) {
    val input = offer.inputs.singleOrNull()
    val choices = (input?.kind as? InputKind.Choice)?.choices
    if (!offer.enabled || input == null || choices == null) return OfferButton(offer, hand, weight = Weight.PRIMARY)
    FlowRow(horizontalArrangement = Arrangement.spacedBy(Spacing.apart), verticalArrangement = Arrangement.spacedBy(Spacing.apart)) {
        choices.forEach { choice ->
            ActionTile(choice.words, "${offer.id}/${choice.id}", weight = Weight.PRIMARY) {
                hand.take(offer, mapOf(input.id to EntryValue.Choice(choice.id)))
            }
        }
    }
}

/** The grades of a code, a tile each with its sentence; a tap grades. */
@Composable
fun GradeTiles(grades: List<GradeTile>, offer: Offer, hand: Hand) = Stacked {
    // The grade is the one choice that the command needs.
    val input = offer.inputs.firstOrNull { it.needed && it.kind is InputKind.Choice } ?: return@Stacked
    grades.forEach { tile ->
        ChoiceTile(tile.words, tile.sentence, tile.chosen, "${offer.id}/${tile.grade}", Modifier.fillMaxWidth()) {
            hand.take(offer, mapOf(input.id to EntryValue.Choice("${tile.grade}")))
        }
    }
}
