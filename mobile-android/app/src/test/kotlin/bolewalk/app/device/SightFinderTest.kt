package bolewalk.app.device

import android.graphics.SurfaceTexture
import android.view.TextureView
import android.view.View
import android.view.ViewGroup
import androidx.activity.ComponentActivity
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onNodeWithText
import bolewalk.app.SenseDouble
import bolewalk.app.app
import bolewalk.app.look.BolewalkTheme
import bolewalk.app.look.LightPalette
import bolewalk.app.look.LocalWords
import bolewalk.app.look.SightFinder
import bolewalk.book.wordsOfShell
import org.junit.Assert.assertEquals
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** The live picture under its crosshair, on a screen. */
@RunWith(RobolectricTestRunner::class)
class SightFinderTest {
    @get:Rule val rule = createAndroidComposeRule<ComponentActivity>()
    private val seen = SenseDouble<SightPicture>()
    private val words = wordsOfShell("en")

    private fun textureIn(view: View): TextureView? = when (view) {
        is TextureView -> view
        is ViewGroup -> (0 until view.childCount).firstNotNullOfOrNull { textureIn(view.getChildAt(it)) }
        else -> null
    }

    private fun show() {
        val phone = OnPhone()
        val sight = object : Sight {
            override val lacking = false

            override fun watch(on: SurfaceTexture, hear: (Heard<SightPicture>) -> Unit) = seen.listen(hear)
        }
        val device = with(phone.device) { Device(position, held, camera, files, sharing, sight, settings) }
        rule.setContent { CompositionLocalProvider(LocalDevice provides device, LocalWords provides words) { BolewalkTheme(LightPalette) { SightFinder("12.5°", "finder") } } }
        rule.waitForIdle()
    }

    @Test fun theAngleStandsUnderTheCrosshairWhateverTheCameraSays() {
        show()
        rule.onNodeWithText("12.5°").assertIsDisplayed()
        assertEquals(0, seen.listened)
        // The system has a surface to draw on.
        val texture = textureIn(rule.activity.window.decorView)!!
        rule.runOnUiThread { texture.surfaceTextureListener!!.onSurfaceTextureAvailable(SurfaceTexture(0), 300, 400) }
        rule.waitForIdle()
        assertEquals(1, seen.listened)
        rule.runOnUiThread { seen.say(Heard.Value(SightPicture(1280, 960, 90))) }
        rule.waitForIdle()
        val size = rule.onNodeWithTag("finder").fetchSemanticsNode().size
        assertEquals(0.75, size.width.toDouble() / size.height, 0.01)
        for ((heard, said) in with(words) { listOf(Heard.Off to sightOff, Heard.Refused to sightRefused, Heard.Lacking to sightLacking) }) {
            rule.runOnUiThread { seen.say(heard) }
            rule.waitForIdle()
            rule.onNodeWithText(said).assertIsDisplayed()
        }
    }
}
