package bolewalk.app.look

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
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
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.dp
import bolewalk.app.field.Way
import bolewalk.app.field.kind
import bolewalk.app.field.wayOf
import bolewalk.book.LineState
import bolewalk.book.Offer
import bolewalk.book.PageAddress
import bolewalk.book.PageLine
import bolewalk.book.PageRecord
import bolewalk.book.PageWay

private val rounded = RoundedCornerShape(12.dp)

/** What belongs together. */
@Composable
fun Card(modifier: Modifier = Modifier, ground: Color = LocalPalette.current.card, content: @Composable ColumnScope.() -> Unit) = Column(
    modifier.fillMaxWidth().background(ground, rounded).border(1.dp, LocalPalette.current.edge, rounded).padding(Spacing.inside),
    Arrangement.spacedBy(Spacing.apart),
    content = content,
)

/** A line: what it is about, what is known; where nothing is, a sign and why it matters. */
@Composable
fun LineText(line: PageLine) = Column(Modifier.fillMaxWidth().testTag("line." + line.id).semantics(mergeDescendants = true) {}) {
    val palette = LocalPalette.current
    Text(line.label, style = MaterialTheme.typography.labelMedium, color = palette.quietInk)
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        when (line.state) {
            LineState.KNOWN -> Unit
            LineState.MISSING -> SignMark(Sign.MISSING, 18.dp, palette.bark)
            LineState.DOUBTFUL -> SignMark(Sign.DOUBT, 18.dp, palette.bark)
        }
        Text(line.words, style = MaterialTheme.typography.bodyLarge)
    }
    if (line.why.isNotEmpty()) Text(line.why, style = MaterialTheme.typography.bodySmall, color = palette.quietInk)
}

@Composable
fun Lines(lines: List<PageLine>) {
    if (lines.isNotEmpty()) Card { lines.forEach { LineText(it) } }
}

/** Sentences of one kind: what bars, what is still to check, what is always said. */
@Composable
fun Sentences(sentences: List<String>, weight: FontWeight = FontWeight.Normal, ground: Color = LocalPalette.current.card) {
    if (sentences.isEmpty()) return
    Card(ground = ground) {
        sentences.forEach { Text(it, style = MaterialTheme.typography.bodyLarge, fontWeight = weight) }
    }
}

/** What a person has to be told first. */
@Composable
fun Notices(notices: List<String>) = Sentences(notices, FontWeight.SemiBold)

/** A record of a list: what it is, what is known, its page, and what can be done to it. */
@Composable
fun RecordCard(record: PageRecord, hand: Hand) = Card(Modifier.testTag("record." + record.id)) {
    val to = record.goTo
    if (to == null) RecordWords(record.words, record.detail) else WayRow(to, hand) { RecordWords(record.words, record.detail) }
    OfferRow(record.offers, hand)
}

@Composable
fun RecordWords(words: String, detail: String) = Column {
    Text(words, style = MaterialTheme.typography.titleMedium)
    if (detail.isNotEmpty()) Text(detail, style = MaterialTheme.typography.bodyLarge, color = LocalPalette.current.quietInk)
}

/** Leads to another page. */
@Composable
fun WayRow(to: PageAddress, hand: Hand, modifier: Modifier = Modifier, content: @Composable () -> Unit) = Row(
    modifier.fillMaxWidth().testTag("go." + to.kind()).clip(rounded).clickable(role = Role.Button) { hand.open(to) }
        .defaultMinSize(minHeight = Spacing.target).padding(4.dp),
    Arrangement.spacedBy(8.dp), Alignment.CenterVertically,
) {
    Column(Modifier.weight(1f)) { content() }
    SignMark(Sign.GO)
}

/** A way to another page, in the core's words. */
@Composable
fun WayRowOf(way: PageWay, hand: Hand) = Card(Modifier.testTag("record." + way.id)) {
    WayRow(way.goTo, hand) { RecordWords(way.words, way.detail) }
}

/** A way to another page of the same tree, in the shell's words. */
@Composable
fun WayCard(to: PageAddress, hand: Hand) = Card { WayRow(to, hand) { RecordWords(wayWords(to), "") } }

/** The offers of a record, side by side. */
@OptIn(ExperimentalLayoutApi::class)
@Composable
fun OfferRow(offers: List<Offer>, hand: Hand) {
    if (offers.isEmpty()) return
    // What bars all of them is said once, in their place.
    offers.map { it.whyNot }.distinct().singleOrNull()?.takeIf { offers.size > 1 && offers.none(Offer::enabled) }?.let { why ->
        return Text(why, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
    }
    // What removes stands by itself, last and away from what a glove reaches for.
    val (removing, others) = offers.partition { wayOf(it.command) == Way.Remove }
    if (others.isNotEmpty()) {
        FlowRow(horizontalArrangement = Arrangement.spacedBy(Spacing.apart), verticalArrangement = Arrangement.spacedBy(Spacing.apart)) {
            others.forEach { OfferButton(it, hand) }
        }
    }
    if (removing.isNotEmpty()) {
        FlowRow(
            Modifier.fillMaxWidth().padding(top = if (others.isEmpty()) 0.dp else Spacing.apart),
            Arrangement.spacedBy(Spacing.apart, Alignment.End), Arrangement.spacedBy(Spacing.apart),
        ) {
            removing.forEach { OfferButton(it, hand, weight = Weight.QUIET) }
        }
    }
}

/** The button of an offer; where it cannot be taken, why not and what to do first. */
@Composable
fun OfferButton(offer: Offer, hand: Hand, modifier: Modifier = Modifier, weight: Weight = Weight.PLAIN) = Column(modifier) {
    val take = { hand.take(offer, emptyMap()) }
    if (offer.chosen) StandingTile(offer.words, offer.id, offer.enabled, take) else ActionTile(offer.words, offer.id, Modifier, weight, offer.enabled, onClick = take)
    if (!offer.enabled) Text(offer.whyNot, style = MaterialTheme.typography.bodySmall, color = LocalPalette.current.quietInk)
}

@Composable
fun Heading(words: String) = Text(words, Modifier.semantics { heading() }, style = MaterialTheme.typography.titleLarge)

/** What is read on a way that the core gives no words for. */
@Composable
private fun wayWords(to: PageAddress): String = when (to) {
    is PageAddress.Aloft -> LocalWords.current.goAloft
    is PageAddress.Compare -> LocalWords.current.goCompare
    is PageAddress.RuleSet -> LocalWords.current.goRules
    is PageAddress.HandOver -> LocalWords.current.goHandOver
    is PageAddress.Book, is PageAddress.Settings, is PageAddress.Codebook, is PageAddress.People, is PageAddress.Person,
    is PageAddress.Gear, is PageAddress.Site, is PageAddress.Tree, is PageAddress.Finding, is PageAddress.StemSection,
    is PageAddress.Anchor, is PageAddress.Judgement,
    -> LocalWords.current.goOn
}
