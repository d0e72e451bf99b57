package bolewalk.app.look

import android.content.res.Configuration
import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.remember
import androidx.compose.ui.platform.LocalConfiguration
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.Density
import bolewalk.app.field.Reader
import bolewalk.book.Theme
import java.util.Locale

/** The screen as the reader set it: colours, size of letters, and the language of the calendar, which brings its own words. */
@Composable
fun ForReader(reader: Reader, content: @Composable () -> Unit) {
    val palette = when (reader.theme) {
        Theme.FOLLOW_PHONE -> if (isSystemInDarkTheme()) DarkPalette else LightPalette
        Theme.LIGHT -> LightPalette
        Theme.DARK -> DarkPalette
        Theme.BRIGHT_SUN -> SunPalette
    }
    val density = LocalDensity.current
    val letters = Density(density.density, density.fontScale * (reader.textSizePct / 100).toFloat())
    val locale = reader.language?.let(::localeOf)
    val context = LocalContext.current
    val configuration = LocalConfiguration.current
    val own = remember(configuration, locale) { Configuration(configuration).apply { if (locale != null) setLocale(locale) } }
    // Only words are taken from it: what starts activities keeps the window's own context.
    val worded = remember(context, own) { WordedContext(context, own) }
    CompositionLocalProvider(LocalDensity provides letters, LocalContext provides worded, LocalConfiguration provides own) {
        BolewalkTheme(palette, content)
    }
}

/** The locale of one of the core's languages, found by its English name. */
private fun localeOf(language: String): Locale? =
    Locale.getAvailableLocales().find { it.country.isEmpty() && it.getDisplayLanguage(Locale.ENGLISH).equals(language, ignoreCase = true) }
