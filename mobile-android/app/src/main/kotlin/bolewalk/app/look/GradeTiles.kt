package bolewalk.app.look

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import bolewalk.book.EntryValue
import bolewalk.book.GradeTile
import bolewalk.book.InputKind
import bolewalk.book.Offer

/** The grades of a code, a tile each with its sentence; a tap grades. */
@Composable
fun GradeTiles(grades: List<GradeTile>, offer: Offer, hand: Hand) = Stacked {
    // The grade is the one choice that the command needs.
    val input = offer.inputs.firstOrNull { it.needed && it.kind is InputKind.Choice } ?: return@Stacked
    grades.forEach { tile ->
        ChoiceTile(tile.words, tile.sentence, tile.chosen, "${offer.id}/${tile.grade}", Modifier.fillMaxWidth(), tile.drawing) {
            hand.take(offer, mapOf(input.id to EntryValue.Choice("${tile.grade}")))
        }
    }
}
