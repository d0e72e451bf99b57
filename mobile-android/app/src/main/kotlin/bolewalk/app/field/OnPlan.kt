package bolewalk.app.field

import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import bolewalk.book.InputKind
import bolewalk.book.LatLon
import bolewalk.book.OfferedInput
import bolewalk.book.PageAddress
import bolewalk.book.PlanOverlay
import bolewalk.book.SensedFix
import bolewalk.book.Spot

/** How large a drawing is asked for: by zoom step, and by the reader's text size in percent. */
data class DrawnSize(val zoom: Int, val lettersPct: Int)

/** The plan of the site that the open form is about; nothing where there is none yet. */
suspend fun FieldModel.planOfForm(size: DrawnSize): Drawing? {
    val about = state.value.form?.offer?.about?.takeIf { it.isNotEmpty() } ?: return null
    return drawing(DrawingAddress.SitePlan(about), size.zoom, size.lettersPct)
}

/** What is entered in the open form, to be laid over that plan. */
suspend fun FieldModel.enteredOnPlan(): PlanOverlay? {
    val form = state.value.form ?: return null
    val entries = form.offer.inputs.mapNotNull { input -> form.shown(input)?.let { Entry(input.id, it) } }
    return (answer { enteredOnPlan(form.offer.command, form.offer.about, entries) } as? Answer.Given)?.value
}

/** A tap on that plan: one corner more of an outline, or the place itself. Why it is none is said. */
suspend fun FieldModel.tapOnPlan(input: OfferedInput, size: DrawnSize, at: Spot) {
    val about = state.value.form?.offer?.about ?: return
    val place = when (val said = answer { placeOnPlan(about, size.zoom.toUInt(), at, size.lettersPct.toUInt()) }) {
        is Answer.Given -> said.value
        is Answer.Refused -> return say(said.words, refused = true)
    }
    if (input.kind is InputKind.Outline) {
        // The corners as they are now: another tap may have been answered meanwhile.
        val corners = (state.value.form?.shown(input) as? EntryValue.Outline)?.points.orEmpty()
        enter(input.id, EntryValue.Outline(corners + LatLon(place.latDeg, place.lonDeg)))
    } else {
        enter(input.id, EntryValue.OnPlan(place.latDeg, place.lonDeg, place.accuracyM))
    }
}

/** The page of the tree under a finger on a site's plan. */
suspend fun FieldModel.treeOnPlan(site: String, size: DrawnSize, at: Spot): PageAddress? =
    (answer { treeOnPlan(site, size.zoom.toUInt(), at, size.lettersPct.toUInt()) } as? Answer.Given)?.value

/** Where the phone is, to be laid over a site's plan. */
suspend fun FieldModel.meOnPlan(site: String, size: DrawnSize, fix: SensedFix): PlanOverlay? =
    (answer { meOnPlan(site, size.zoom.toUInt(), fix, size.lettersPct.toUInt()) } as? Answer.Given)?.value
