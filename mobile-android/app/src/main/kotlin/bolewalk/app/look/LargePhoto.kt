package bolewalk.app.look

import androidx.compose.foundation.background
import androidx.compose.foundation.gestures.detectTransformGestures
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableFloatStateOf
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clipToBounds
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.graphicsLayer
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.Dialog
import androidx.compose.ui.window.DialogProperties

private const val MOST_LARGE = 8f
private const val STEP = 1.5f

/** A photo over the whole screen: larger and smaller by two fingers or by tiles; back leads to the page. */
@Composable
internal fun LargePhoto(path: String, words: String, close: () -> Unit) {
    // What a dialog takes from its own window is handed on, so that it looks as the reader set it.
    val density = LocalDensity.current
    Dialog(close, DialogProperties(usePlatformDefaultWidth = false)) {
        CompositionLocalProvider(LocalDensity provides density) {
            var large by rememberSaveable { mutableFloatStateOf(1f) }
            var moved by remember { mutableStateOf(Offset.Zero) }
            fun zoom(by: Float) {
                large = (large * by).coerceIn(1f, MOST_LARGE)
                if (large == 1f) moved = Offset.Zero
            }
            Column(Modifier.fillMaxSize().background(LocalPalette.current.ground).testTag("photo.large")) {
                Row(Modifier.padding(Spacing.apart), Arrangement.spacedBy(Spacing.apart)) {
                    PhotoTile(Sign.CLOSE, LocalWords.current.close, "close", true, close)
                    PhotoTile(Sign.LESS, LocalWords.current.smaller, "smaller", large > 1f) { zoom(1 / STEP) }
                    PhotoTile(Sign.MORE, LocalWords.current.larger, "larger", large < MOST_LARGE) { zoom(STEP) }
                }
                Box(
                    Modifier.weight(1f).fillMaxWidth().clipToBounds().pointerInput(Unit) {
                        detectTransformGestures { _, pan, by, _ ->
                            zoom(by)
                            if (large > 1f) moved += pan
                        }
                    },
                    Alignment.Center,
                ) {
                    val placed = Modifier.fillMaxSize().graphicsLayer(large, large, translationX = moved.x, translationY = moved.y)
                    Picture(path, words, place = placed, most = WHOLE)
                }
                Text(
                    words, Modifier.fillMaxWidth().heightIn(max = 160.dp).verticalScroll(rememberScrollState()).padding(Spacing.page),
                    LocalPalette.current.ink, style = MaterialTheme.typography.bodyLarge,
                )
            }
        }
    }
}

@Composable
private fun PhotoTile(sign: Sign, words: String, tag: String, enabled: Boolean, onClick: () -> Unit) =
    ActionTile("", "photo.large/$tag", Modifier.semantics { contentDescription = words }, Weight.QUIET, enabled, sign, onClick)
