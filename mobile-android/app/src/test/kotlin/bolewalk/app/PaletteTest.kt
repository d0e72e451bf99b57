package bolewalk.app

import androidx.compose.ui.graphics.Color
import bolewalk.app.look.DarkPalette
import bolewalk.app.look.LightPalette
import bolewalk.app.look.Palette
import bolewalk.app.look.SunPalette
import org.junit.Assert.assertTrue
import org.junit.Test

/** What stands on what, in every light; the pictures are measured too, see [Letters]. */
class PaletteTest {
    private fun pairs(palette: Palette) = with(palette) {
        mapOf(
            "ink on ground" to (ink to ground), "ink on card" to (ink to card), "quiet ink on ground" to (quietInk to ground),
            "quiet ink on card" to (quietInk to card), "on slate" to (onSlate to slate), "on orange" to (onOrange to orange),
            "on lichen" to (onLichen to lichen), "on bark" to (onBark to bark), "on refusal" to (onRefusal to refusal),
            "refusal on ground" to (refusal to ground), "refusal on card" to (refusal to card),
        )
    }

    @Test fun textStandsOutInEveryLight() {
        for ((light, palette) in mapOf("light" to LightPalette, "dark" to DarkPalette, "sun" to SunPalette)) {
            for ((name, pair) in pairs(palette)) {
                val found = contrast(pair.first, pair.second)
                assertTrue("$light, $name: $found", found >= 7f)
            }
        }
    }

    @Test fun edgesAndMarksCanBeSeen() {
        for (palette in listOf(LightPalette, DarkPalette, SunPalette)) with(palette) {
            for (line in listOf(edge, mark, refusal, bark, slate, lichen, quietInk)) {
                assertTrue("$line", contrast(line, ground) >= 3f && contrast(line, card) >= 3f)
            }
        }
    }
}
