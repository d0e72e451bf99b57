package bolewalk.app.screens.codebook

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.lazy.LazyListScope
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.OfferRow
import bolewalk.app.look.Sign
import bolewalk.app.look.SignMark
import bolewalk.app.look.Sketch
import bolewalk.app.look.Spacing
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.records
import bolewalk.book.CodeOfBook
import bolewalk.book.CodebookPage
import bolewalk.book.DrawingAddress
import bolewalk.book.GradeOfCode
import bolewalk.book.LineState

/** The codebook: what findings are called, and from which grade they stop. */
fun LazyListScope.codebookPage(page: CodebookPage, hand: Hand, placed: Placed) {
    part("lead") { Lead(page.lead) }
    records("unsettled", page.unsettled, hand)
    (page.codes + page.retired).forEach { code -> item("code." + code.id, "code") { CodeCard(code, hand) } }
    placed.rest(this)
}

@Composable
private fun CodeCard(code: CodeOfBook, hand: Hand) = Card(Modifier.testTag("record." + code.id)) {
    Text(code.name, style = MaterialTheme.typography.titleMedium)
    if (code.detail.isNotEmpty()) Text(code.detail, style = MaterialTheme.typography.bodyMedium, color = LocalPalette.current.quietInk)
    code.grades.forEach { GradeText(code, it) }
    OfferRow(code.offers, hand)
}

@Composable
private fun GradeText(code: CodeOfBook, grade: GradeOfCode) = Row(
    horizontalArrangement = Arrangement.spacedBy(Spacing.inside), verticalAlignment = Alignment.CenterVertically,
) {
    Sketch(DrawingAddress.Grade(code.id, null, grade.grade))
    Column(Modifier.weight(1f)) {
        Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
            if (grade.state != LineState.KNOWN) SignMark(Sign.MISSING, 18.dp)
            if (grade.stops) SignMark(Sign.CLOSE, 18.dp)
            Text(grade.words, style = MaterialTheme.typography.titleSmall)
        }
        Text(grade.sentence, style = MaterialTheme.typography.bodyMedium, fontWeight = if (grade.stops) FontWeight.SemiBold else null)
    }
}
