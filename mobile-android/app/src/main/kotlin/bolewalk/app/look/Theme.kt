package bolewalk.app.look

import androidx.compose.material3.ColorScheme
import androidx.compose.material3.LocalContentColor
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Typography
import androidx.compose.material3.darkColorScheme
import androidx.compose.material3.lightColorScheme
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp

/** Sizes for a gloved hand. */
object Spacing {
    /** The least side of what can be tapped. */
    val target = 56.dp

    /** The least width of a large tile with a drawing. */
    val wideTarget = 104.dp

    /** The least distance between two of them. */
    val apart = 8.dp

    val inside = 12.dp
    val page = 16.dp
    val between = 20.dp
}

/** Whether letters are so large that a bar has to leave room for the page. */
@Composable
fun lettersAreLarge() = LocalDensity.current.fontScale > 1.3f

@Composable
fun BolewalkTheme(palette: Palette, content: @Composable () -> Unit) {
    CompositionLocalProvider(LocalPalette provides palette) {
        MaterialTheme(colorScheme = scheme(palette), typography = letters) {
            // What stands on the ground itself; without it, text there would be black in the dark too.
            CompositionLocalProvider(LocalContentColor provides palette.ink, content = content)
        }
    }
}

private fun scheme(palette: Palette): ColorScheme {
    val base = if (palette.dark) darkColorScheme() else lightColorScheme()
    return base.copy(
        primary = palette.slate, onPrimary = palette.onSlate, secondary = palette.lichen, onSecondary = palette.onLichen,
        background = palette.ground, onBackground = palette.ink, surface = palette.ground, onSurface = palette.ink,
        surfaceVariant = palette.card, onSurfaceVariant = palette.quietInk, outline = palette.edge,
        outlineVariant = palette.edge, error = palette.refusal, onError = palette.onRefusal,
        surfaceContainer = palette.card, surfaceContainerHigh = palette.card, surfaceContainerHighest = palette.card,
    )
}

private fun letter(size: TextUnit, weight: FontWeight = FontWeight.Normal, line: Float = 1.35f) =
    TextStyle(fontSize = size, fontWeight = weight, lineHeight = size * line)

private val letters = Typography(
    headlineSmall = letter(24.sp, FontWeight.SemiBold, 1.2f),
    titleLarge = letter(22.sp, FontWeight.SemiBold, 1.2f),
    titleMedium = letter(18.sp, FontWeight.SemiBold),
    titleSmall = letter(16.sp, FontWeight.SemiBold),
    bodyLarge = letter(18.sp),
    bodyMedium = letter(16.sp),
    bodySmall = letter(15.sp),
    labelLarge = letter(17.sp, FontWeight.SemiBold, 1.2f),
    labelMedium = letter(15.sp, FontWeight.Medium, 1.2f),
)
