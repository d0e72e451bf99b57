package bolewalk.app.look

import androidx.compose.runtime.staticCompositionLocalOf
import bolewalk.app.field.DrawnSize
import bolewalk.book.AveragedFix
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.EntryValue
import bolewalk.book.Offer
import bolewalk.book.OfferedChoice
import bolewalk.book.PageAddress
import bolewalk.book.PlanOverlay
import bolewalk.book.SensedFix
import bolewalk.book.Spot

/** What a finger on a page can do. */
class Hand(
    /** Goes to a page. */
    val open: (PageAddress) -> Unit,
    /** Takes an offer, with what a tile already says. */
    val take: (Offer, Map<String, EntryValue>) -> Unit,
    /** Searches on the page. */
    val search: (String) -> Unit,
    /** A drawing, by zoom step and text size in percent; nothing where there is none to be drawn. */
    val drawing: suspend (DrawingAddress, Int, Int) -> Drawing?,
    /** The page of the tree under a finger on a site's plan, as large as it is drawn. */
    val treeOnPlan: suspend (site: String, size: DrawnSize, at: Spot) -> PageAddress?,
    /** Where the phone is, to be laid over a site's plan. */
    val meOnPlan: suspend (site: String, size: DrawnSize, fix: SensedFix) -> PlanOverlay?,
)

/** What the inputs of a form ask for beyond themselves. */
class FormHand(
    /** Says that another app is about to give something for an input, at a path. */
    val await: (input: String, path: String) -> Unit,
    /** The choices of a search that come near what was typed. */
    val suggest: suspend (input: String, typed: String) -> List<OfferedChoice>,
    /** Many fixes averaged. */
    val average: suspend (fixes: List<SensedFix>, sinceMs: Long) -> AveragedFix?,
)

val LocalForm = staticCompositionLocalOf<FormHand> { error("no form") }
