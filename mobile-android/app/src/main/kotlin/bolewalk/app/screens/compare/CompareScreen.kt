package bolewalk.app.screens.compare

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
import androidx.compose.ui.unit.dp
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.Lead
import bolewalk.app.look.LocalPalette
import bolewalk.app.look.Sign
import bolewalk.app.look.SignMark
import bolewalk.app.look.WayRow
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.ChangeKind
import bolewalk.book.ComparePage
import bolewalk.book.ComparedFinding
import bolewalk.book.ComparedLine
import bolewalk.book.FindingFate

/** This look beside the last one: what changed by more than the readings can tell, and what became of each finding. */
fun LazyListScope.comparePage(page: ComparePage, hand: Hand, placed: Placed) {
    part("days") { Lead(page.days) }
    placed.heading(this, "lines", page.lines.isEmpty())
    page.lines.forEach { line -> item("line." + line.id, "line") { LineCard(line) } }
    placed.heading(this, "findings", page.findings.isEmpty())
    page.findings.forEach { finding -> item("finding." + finding.id, "finding") { FindingCard(finding, hand) } }
}

@Composable
private fun LineCard(line: ComparedLine) = Card {
    Text(line.label, style = MaterialTheme.typography.labelMedium, color = LocalPalette.current.quietInk)
    ThenAndNow(line.then, line.now)
    Marked(signOf(line.kind), line.change)
}

@Composable
private fun FindingCard(finding: ComparedFinding, hand: Hand) = Card(Modifier.testTag("record." + finding.id)) {
    WayRow(finding.goTo, hand) {
        Column(verticalArrangement = Arrangement.spacedBy(4.dp)) {
            Text(finding.words, style = MaterialTheme.typography.titleMedium)
            ThenAndNow(finding.then, finding.now)
            Marked(signOf(finding.fate), finding.change)
        }
    }
}

@Composable
private fun ThenAndNow(then: String, now: String) {
    if (then.isNotEmpty()) Text(then, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
    if (now.isNotEmpty()) Text(now, style = MaterialTheme.typography.bodyLarge)
}

@Composable
private fun Marked(sign: Sign?, words: String) {
    if (words.isEmpty()) return
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        sign?.let { SignMark(it, 20.dp) }
        Text(words, style = MaterialTheme.typography.titleSmall)
    }
}

private fun signOf(kind: ChangeKind): Sign? = when (kind) {
    ChangeKind.LARGER -> Sign.MORE
    ChangeKind.SMALLER -> Sign.LESS
    ChangeKind.WITHIN -> null
    ChangeKind.UNKNOWN -> Sign.MISSING
}

private fun signOf(fate: FindingFate): Sign? = when (fate) {
    FindingFate.NEWLY, FindingFate.WORSE -> Sign.MORE
    FindingFate.BETTER -> Sign.LESS
    FindingFate.CLEARED -> Sign.CHOSEN
    FindingFate.UNCHANGED -> null
    FindingFate.NOT_FOUND, FindingFate.NOT_LOOKED_AT -> Sign.MISSING
}
