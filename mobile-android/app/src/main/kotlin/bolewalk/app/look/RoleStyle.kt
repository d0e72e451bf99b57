package bolewalk.app.look

import androidx.compose.ui.graphics.Color
import bolewalk.book.StyleRole
import bolewalk.book.StyleRole.*

/** How what a mark stands for is drawn: ink, width in points of the screen, dashes, a fill, and slanting lines over it. */
internal class RoleStyle(
    val ink: Color, val width: Float = 1.5f, val dash: FloatArray? = null, val fill: Color? = null, val hatched: Boolean = false,
)

private val LONG = floatArrayOf(10f, 6f)
private val SHORT = floatArrayOf(3f, 4f)

internal fun styleOf(role: StyleRole, palette: Palette): RoleStyle = with(palette) {
    when (role) {
        PROPERTY_EDGE -> RoleStyle(ink, 2f, LONG)
        CROWN -> RoleStyle(lichen, 1f, fill = lichen.copy(alpha = .16f))
        DEAD_CROWN -> RoleStyle(bark, 1f, SHORT, bark.copy(alpha = .14f))
        DROP_ZONE -> RoleStyle(mark, 2f, fill = orange.copy(alpha = .18f))
        KEEP_OUT_EVERYONE -> RoleStyle(refusal, 2.5f, LONG)
        KEEP_OUT_CREW -> RoleStyle(refusal, 1.5f, SHORT)
        TARGET -> RoleStyle(slate, 1.5f, fill = slate.copy(alpha = .14f))
        OVERHEAD_LINE -> RoleStyle(refusal, 2.5f)
        APPROACH_STRIP -> RoleStyle(refusal, 1f, SHORT, refusal.copy(alpha = .12f))
        ACCURACY_RING -> RoleStyle(quietInk, 1f, SHORT)
        TREE -> RoleStyle(ink, fill = ink)
        LABEL -> RoleStyle(ink)
        LEADER -> RoleStyle(quietInk, .8f)
        SCALE_BAR -> RoleStyle(ink, 2f)
        NORTH -> RoleStyle(ink, fill = ink)
        SHEET_EDGE -> RoleStyle(quietInk, 1f)
        OUTLINE -> RoleStyle(ink, 1.2f)
        BARK -> RoleStyle(bark, 3f)
        SOUND_WOOD -> RoleStyle(bark, 1f, fill = bark.copy(alpha = .28f))
        DECAY -> RoleStyle(ink, 1f, SHORT, quietInk.copy(alpha = .35f))
        // Not told by colour alone: the weakest direction is an arrow, an opening is hatched.
        OPENING -> RoleStyle(ink, 2f, fill = card, hatched = true)
        READING -> RoleStyle(slate, 2.5f)
        WEAKEST_DIRECTION -> RoleStyle(mark, 3f, fill = mark)
        FINDING -> RoleStyle(mark, 2f, fill = orange)
        STEM -> RoleStyle(bark, 1.5f, fill = bark.copy(alpha = .28f))
        GROUND -> RoleStyle(ink, 2f)
        TIE_IN -> RoleStyle(slate, 2.5f, fill = slate)
        DIMENSION -> RoleStyle(quietInk, 1f)
        SECTION_HEIGHT -> RoleStyle(bark, 1.5f, LONG)
        KEEP_CLEAR -> RoleStyle(refusal, 2f, LONG)
        ON_SYMBOL -> RoleStyle(onOrange, fill = onOrange)
        PAPER -> RoleStyle(card, fill = card)
        ME -> RoleStyle(slate, fill = slate)
        ENTERED -> RoleStyle(ink, 3f, fill = orange.copy(alpha = .3f))
        DEFECT -> RoleStyle(ink, 2f, fill = ink)
    }
}
