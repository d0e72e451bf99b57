package bolewalk.app.screens.stemsection

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.RowScope
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.height
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableDoubleStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.traversalIndex
import bolewalk.app.look.ActionTile
import bolewalk.app.look.Card
import bolewalk.app.look.Hand
import bolewalk.app.look.OfferRow
import bolewalk.app.look.Spacing
import bolewalk.app.look.Weight
import bolewalk.book.ClockPoint

/** The places of a compass, a line each; the middle is the stem. */
private val COMPASS = listOf(listOf(315.0, 0.0, 45.0), listOf(270.0, null, 90.0), listOf(225.0, 180.0, 135.0))

private const val NO_POINT = -1.0

/** Larger letters than this do not fit into the places of a compass: two points stand side by side then. */
private const val COMPASS_LETTERS = 1.3f

/** Whether the letters are so large that the points of the clock do not fit into the places of a compass. */
@Composable
internal fun lettersAreLarge(): Boolean = LocalDensity.current.fontScale > COMPASS_LETTERS

/** The mallet clock in the places of a compass; a point that is tapped shows its answers beneath. A screen reader goes
 *  round from north. */
@Composable
internal fun MalletClock(points: List<ClockPoint>, hand: Hand) {
    var open by rememberSaveable { mutableDoubleStateOf(NO_POINT) }
    val at = points.associateBy { it.bearingDeg }
    val tap = { bearing: Double -> open = if (open == bearing) NO_POINT else bearing }
    Column(Modifier.testTag("clock").semantics { isTraversalGroup = true }, Arrangement.spacedBy(Spacing.apart)) {
        if (lettersAreLarge()) {
            points.chunked(2).forEach { pair ->
                Line { pair.forEach { Point(it, it.bearingDeg == open, Modifier.weight(1f).fillMaxHeight()) { tap(it.bearingDeg) } } }
                pair.find { it.bearingDeg == open }?.let { Answers(it, hand) }
            }
        } else {
            COMPASS.forEach { line ->
                Line {
                    line.forEach { bearing ->
                        val point = at[bearing]
                        if (point == null) Spacer(Modifier.weight(1f)) else Point(point, bearing == open, Modifier.weight(1f).fillMaxHeight()) { tap(point.bearingDeg) }
                    }
                }
            }
            at[open]?.let { Answers(it, hand) }
        }
    }
}

@Composable
private fun Line(content: @Composable RowScope.() -> Unit) =
    Row(Modifier.height(IntrinsicSize.Min), Arrangement.spacedBy(Spacing.apart), content = content)

@Composable
private fun Point(point: ClockPoint, open: Boolean, modifier: Modifier, onClick: () -> Unit) = ActionTile(
    listOf(point.words, point.soundWords).filter { it.isNotEmpty() }.joinToString("\n"), "clock." + point.bearingDeg.toInt(),
    modifier.semantics {
        traversalIndex = point.bearingDeg.toFloat()
        selected = open
    },
    if (open) Weight.PRIMARY else if (point.sound == null) Weight.QUIET else Weight.PLAIN, onClick = onClick,
)

@Composable
private fun Answers(point: ClockPoint, hand: Hand) = Card(Modifier.testTag("record.clock." + point.bearingDeg.toInt())) {
    Text(point.words, style = MaterialTheme.typography.titleMedium)
    OfferRow(point.offers, hand)
}
