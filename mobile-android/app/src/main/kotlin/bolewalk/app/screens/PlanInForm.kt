package bolewalk.app.screens

import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.runtime.rememberCoroutineScope
import bolewalk.app.field.DrawnSize
import bolewalk.app.field.FieldModel
import bolewalk.app.field.FilledOffer
import bolewalk.app.field.enteredOnPlan
import bolewalk.app.field.planOfForm
import bolewalk.app.field.tapOnPlan
import bolewalk.app.look.PlanOfForm
import bolewalk.book.InputKind
import bolewalk.book.PlanOverlay
import kotlinx.coroutines.launch

/** The plan of the site, where the form asks for a place and there is one. */
@Composable
internal fun planOf(form: FilledOffer, field: FieldModel): PlanOfForm? {
    val asked = form.offer.inputs.any { it.kind is InputKind.Fix || it.kind is InputKind.Outline }
    val there by produceState(false, form.offer.token) { value = asked && field.planOfForm(DrawnSize(0, 100)) != null }
    val entered by produceState<PlanOverlay?>(null, there, form.draft) { value = if (there) field.enteredOnPlan() else null }
    val scope = rememberCoroutineScope()
    return if (there) {
        PlanOfForm(field::planOfForm, entered) { input, size, at -> scope.launch { field.tapOnPlan(input, size, at) } }
    } else {
        null
    }
}
