package bolewalk.app.look

import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.graphics.Color

/** The app's own colours, named for what they are used for. Text stands on its ground with at least 7:1. */
data class Palette(
    val dark: Boolean,
    val ground: Color,
    val card: Color,
    val ink: Color,
    val quietInk: Color,
    val edge: Color,
    /** Buttons. */
    val slate: Color,
    val onSlate: Color,
    /** The next thing to do, and what bars. */
    val orange: Color,
    val onOrange: Color,
    /** Lines and signs of a drawing that must be seen first. */
    val mark: Color,
    /** What is well. */
    val lichen: Color,
    val onLichen: Color,
    /** What asks for another way. */
    val bark: Color,
    val onBark: Color,
    val refusal: Color,
    val onRefusal: Color,
)

private val Black = Color(0xFF000000)
private val White = Color(0xFFFFFFFF)
private val SignalOrange = Color(0xFFFF8A1F)
private val BarkBlack = Color(0xFF1D1A15)

val LightPalette = Palette(
    dark = false,
    ground = Color(0xFFF4F1E7), card = White, ink = BarkBlack, quietInk = Color(0xFF453F35), edge = Color(0xFF6B6457),
    slate = Color(0xFF1F3442), onSlate = White, orange = SignalOrange, onOrange = BarkBlack, mark = Color(0xFFB85000),
    lichen = Color(0xFF2B4F2C), onLichen = White, bark = Color(0xFF5A3514), onBark = White,
    refusal = Color(0xFF6E1A0B), onRefusal = White,
)

val DarkPalette = Palette(
    dark = true,
    ground = Color(0xFF12171A), card = Color(0xFF1C2327), ink = Color(0xFFF3F0E7), quietInk = Color(0xFFCFC9BA), edge = Color(0xFF8C8677),
    slate = Color(0xFFA9CADC), onSlate = Color(0xFF0D1418), orange = SignalOrange, onOrange = BarkBlack, mark = SignalOrange,
    lichen = Color(0xFFB5D39A), onLichen = Color(0xFF10190C), bark = Color(0xFFE2BE93), onBark = Color(0xFF1F1408),
    refusal = Color(0xFFFFB9A6), onRefusal = Color(0xFF2A0903),
)

/** For the sun on the glass: black on white, nothing in between. */
val SunPalette = LightPalette.copy(
    ground = White, card = White, ink = Black, quietInk = Black, edge = Black, slate = Black, onSlate = White,
    onOrange = Black, mark = Color(0xFF9C3F00), lichen = Color(0xFF123312), bark = Color(0xFF3A1F06), refusal = Color(0xFF520F04),
)

val LocalPalette = staticCompositionLocalOf { LightPalette }
