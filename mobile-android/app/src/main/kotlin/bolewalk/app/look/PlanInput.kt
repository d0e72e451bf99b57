package bolewalk.app.look

import androidx.compose.foundation.ExperimentalFoundationApi
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.relocation.BringIntoViewRequester
import androidx.compose.foundation.relocation.bringIntoViewRequester
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.compositionLocalOf
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.layout.onSizeChanged
import bolewalk.app.field.DrawnSize
import bolewalk.book.Drawing
import bolewalk.book.OfferedInput
import bolewalk.book.PlanOverlay
import bolewalk.book.Spot

/** The plan of the site that a form is about, and what is entered on it so far. */
class PlanOfForm(
    val drawing: suspend (DrawnSize) -> Drawing?,
    val entered: PlanOverlay?,
    /** A tap for an input. */
    val tap: (input: OfferedInput, size: DrawnSize, at: Spot) -> Unit,
)

/** Nothing where the site has no plan yet, or the form asks for no place. */
val LocalPlan = compositionLocalOf<PlanOfForm?> { null }

/** The tile that opens the plan in the form, and the plan on which the finger shows the place. */
@OptIn(ExperimentalFoundationApi::class)
@Composable
internal fun OnPlan(input: OfferedInput, tapped: () -> Unit = {}) {
    val plan = LocalPlan.current ?: return
    var open by rememberSaveable(input.id) { mutableStateOf(false) }
    val words = LocalWords.current
    Column(verticalArrangement = Arrangement.spacedBy(Spacing.apart)) {
        ActionTile(if (open) words.closePlan else words.tapPlan, "${input.id}/plan", weight = if (open) Weight.QUIET else Weight.PLAIN) { open = !open }
        if (!open) return@Column
        val sight = remember { BringIntoViewRequester() }
        var shown by remember { mutableStateOf(false) }
        // The plan comes below the tile: it is brought into sight when it is there.
        LaunchedEffect(shown) { if (shown) sight.bringIntoView() }
        Column(Modifier.bringIntoViewRequester(sight).onSizeChanged { shown = it.height > it.width / 2 }, Arrangement.spacedBy(Spacing.apart)) {
            Told(words.planWanted)
            ZoomedDrawing("${input.id}/on_plan", input.id, plan.drawing, over = { plan.entered }) { size, at ->
                tapped()
                plan.tap(input, size, at)
            }
        }
    }
}
