package bolewalk.app.look

import android.graphics.Matrix
import android.graphics.RectF
import android.graphics.SurfaceTexture
import android.view.Surface
import android.view.TextureView
import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.wrapContentWidth
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clipToBounds
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.platform.LocalConfiguration
import androidx.compose.ui.platform.LocalView
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.viewinterop.AndroidView
import bolewalk.app.device.Heard
import bolewalk.app.device.LocalDevice
import bolewalk.app.device.SightPicture
import kotlin.math.max

/** The camera's live picture under a crosshair, with the angle that would be taken now. Without a camera the words say
 *  how to go on; the angle is still there. */
@Composable
internal fun SightFinder(angle: String, tag: String) {
    val sight = LocalDevice.current.sight
    var on by remember { mutableStateOf<SurfaceTexture?>(null) }
    var heard by remember { mutableStateOf<Heard<SightPicture>>(if (sight.lacking) Heard.Lacking else Heard.Waiting) }
    on?.let { texture ->
        DisposableEffect(sight, texture) {
            val watching = sight.watch(texture) { heard = it }
            onDispose { watching.stop() }
        }
    }
    when (heard) {
        is Heard.Value, is Heard.Waiting -> Unit
        is Heard.Refused -> Told(LocalWords.current.sightRefused)
        is Heard.Off -> Told(LocalWords.current.sightOff)
        is Heard.Lacking -> Told(LocalWords.current.sightLacking)
    }
    val picture = (heard as? Heard.Value)?.value
    if (picture == null && heard != Heard.Waiting) return
    val words = LocalWords.current.sightPicture
    Box(Modifier.fillMaxWidth().wrapContentWidth().testTag(tag).semantics { contentDescription = words }, Alignment.Center) {
        LivePicture(picture) { on = it }
        val ink = LocalPalette.current
        Canvas(Modifier.matchParentSize()) {
            crosshair(6.dp.toPx(), ink.ground)
            crosshair(2.dp.toPx(), ink.ink)
        }
        Text(angle, Modifier.align(Alignment.BottomCenter).padding(Spacing.apart), ink.onSlate, style = onGround(ink.slate))
    }
}

@Composable
private fun onGround(ground: androidx.compose.ui.graphics.Color) = MaterialTheme.typography.titleLarge.copy(background = ground)

/** Two hair lines that leave the middle open. */
private fun DrawScope.crosshair(width: Float, colour: androidx.compose.ui.graphics.Color) {
    val (open, reach) = size.minDimension * 0.03f to size.minDimension * 0.3f
    for (way in listOf(Offset(1f, 0f), Offset(-1f, 0f), Offset(0f, 1f), Offset(0f, -1f))) {
        drawLine(colour, center + way * open, center + way * reach, width)
    }
}

@Composable
private fun LivePicture(picture: SightPicture?, ready: (SurfaceTexture?) -> Unit) {
    LocalConfiguration.current // a turned phone turns the picture
    @Suppress("DEPRECATION") // its successor is newer than the oldest system
    val turned = LocalView.current.display?.rotation ?: Surface.ROTATION_0
    AndroidView(
        factory = { context -> TextureView(context).apply { surfaceTextureListener = Ready(ready) } },
        modifier = Modifier.heightIn(max = 420.dp).aspectRatio(shape(picture, turned)).clipToBounds(),
        update = { view -> picture?.let { view.setTransform(upright(view, it, turned)) } },
    )
}

/** Width by height of the picture as it is seen: the sensor lies across the phone. */
internal fun shape(picture: SightPicture?, turned: Int): Float {
    val sensor = if (picture == null) 4f / 3 else picture.width.toFloat() / picture.height
    val sensorLiesAcross = (picture?.turnDeg ?: 90) % 180 == 90
    val phoneLies = turned == Surface.ROTATION_90 || turned == Surface.ROTATION_270
    return if (sensorLiesAcross != phoneLies) 1 / sensor else sensor
}

/** The system sets the picture upright for a phone that stands; for one that lies it has to be turned. */
private fun upright(view: TextureView, picture: SightPicture, turned: Int): Matrix {
    val matrix = Matrix()
    if (view.width == 0 || view.height == 0 || turned == Surface.ROTATION_0) return matrix
    val seen = RectF(0f, 0f, view.width.toFloat(), view.height.toFloat())
    if (turned != Surface.ROTATION_180) {
        val buffer = RectF(0f, 0f, picture.height.toFloat(), picture.width.toFloat())
        buffer.offset(seen.centerX() - buffer.centerX(), seen.centerY() - buffer.centerY())
        matrix.setRectToRect(seen, buffer, Matrix.ScaleToFit.FILL)
        val scale = max(seen.height() / picture.height, seen.width() / picture.width)
        matrix.postScale(scale, scale, seen.centerX(), seen.centerY())
    }
    matrix.postRotate(if (turned == Surface.ROTATION_180) 180f else 90f * (turned - 2), seen.centerX(), seen.centerY())
    return matrix
}

private class Ready(private val ready: (SurfaceTexture?) -> Unit) : TextureView.SurfaceTextureListener {
    override fun onSurfaceTextureAvailable(surface: SurfaceTexture, width: Int, height: Int) = ready(surface)

    override fun onSurfaceTextureSizeChanged(surface: SurfaceTexture, width: Int, height: Int) = Unit

    override fun onSurfaceTextureDestroyed(surface: SurfaceTexture): Boolean {
        ready(null)
        return true
    }

    override fun onSurfaceTextureUpdated(surface: SurfaceTexture) = Unit
}
