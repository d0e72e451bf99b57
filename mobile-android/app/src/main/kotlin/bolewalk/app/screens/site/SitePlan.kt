package bolewalk.app.screens.site

import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberCoroutineScope
import bolewalk.app.device.Heard
import bolewalk.app.device.LocalDevice
import bolewalk.app.device.PlaceFix
import bolewalk.app.look.Hand
import bolewalk.app.look.ZoomedDrawing
import bolewalk.app.look.heardWhile
import bolewalk.book.DrawingAddress
import bolewalk.book.PlanOverlay
import bolewalk.book.SensedFix
import bolewalk.book.SitePage
import kotlinx.coroutines.launch

/** The plan of a site: a tap on a tree opens it, and the phone stands on it where it may know its place. */
@Composable
internal fun SitePlan(page: SitePage, hand: Hand) {
    val scope = rememberCoroutineScope()
    val me = placeKnown()
    ZoomedDrawing(
        "plan", page, { size -> hand.drawing(DrawingAddress.SitePlan(page.id), size.zoom, size.lettersPct) },
        over = { size ->
            val laid by produceState<PlanOverlay?>(null, page, size, me) { value = me?.let { hand.meOnPlan(page.id, size, it) } }
            laid
        },
    ) { size, at -> scope.launch { hand.treeOnPlan(page.id, size, at)?.let(hand.open) } }
}

/** Where the phone is now. Listened to only while the plan is in sight and nobody has to be asked for it. */
@Composable
private fun placeKnown(): SensedFix? {
    val position = LocalDevice.current.position
    val allowed = remember(position) { position.allowed() }
    val heard = heardWhile(allowed) {}
    val fix: PlaceFix = (heard as? Heard.Value)?.value ?: return null
    return SensedFix(fix.latDeg, fix.lonDeg, fix.accuracyM, fix.atMs)
}
