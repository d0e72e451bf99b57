package bolewalk.app.screens.gear

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.OfferRow
import bolewalk.app.look.Sign
import bolewalk.app.look.SignMark
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.GearOfBook
import bolewalk.book.GearPage
import bolewalk.book.GearState

/** The gear: what must not be used comes first. */
fun LazyListScope.gearPage(page: GearPage, hand: Hand, placed: Placed) {
    part("lead") { Lead(page.lead) }
    records("unsettled", page.unsettled, hand)
    placed.heading(this, "pieces", page.pieces.isEmpty())
    page.pieces.forEach { piece -> item("piece." + piece.id, "piece") { PieceCard(piece, hand) } }
    placed.rest(this)
}

@Composable
private fun PieceCard(piece: GearOfBook, hand: Hand) = Card(Modifier.testTag("record." + piece.id)) {
    Text(piece.name, style = MaterialTheme.typography.titleMedium)
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        SignMark(signOf(piece.state))
        Text(piece.stateWords, style = MaterialTheme.typography.titleSmall)
    }
    if (piece.reason.isNotEmpty()) Text(piece.reason, style = MaterialTheme.typography.bodyLarge)
    if (piece.detail.isNotEmpty()) Text(piece.detail, style = MaterialTheme.typography.bodyMedium, color = LocalPalette.current.quietInk)
    OfferRow(piece.offers, hand)
}

private fun signOf(state: GearState): Sign = when (state) {
    GearState.NOT_TO_BE_USED -> Sign.MISSING
    GearState.OUT_OF_USE -> Sign.CLOSE
    GearState.IN_ORDER -> Sign.CHOSEN
}
