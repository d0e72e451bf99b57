package bolewalk.app.look

import android.graphics.BitmapFactory
import androidx.compose.foundation.Image
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.asImageBitmap
import androidx.compose.ui.layout.ContentScale
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import bolewalk.app.device.LocalDevice
import bolewalk.book.OfferedInput
import java.io.File
import java.util.UUID
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.withContext

/** A photo: taken now, or chosen among the pictures of the phone. */
@Composable
internal fun PhotoInput(input: OfferedInput, path: String?) {
    val device = LocalDevice.current
    val form = LocalForm.current
    val folder = LocalContext.current.filesDir
    fun next() = File(folder, "taken/${UUID.randomUUID()}.jpg").path.also { form.await(input.id, it) }
    if (path != null) {
        Text(LocalWords.current.photoReady, Modifier.testTag(input.id), style = MaterialTheme.typography.bodyLarge)
        Picture(path, LocalWords.current.photoReady)
    }
    Tiles {
        ActionTile(LocalWords.current.takePhoto, "${input.id}/take", weight = if (path == null) Weight.PRIMARY else Weight.PLAIN) { device.camera.take(next()) }
        ActionTile(LocalWords.current.choosePhoto, "${input.id}/choose", weight = Weight.QUIET) { device.files.picture(next()) }
    }
}

/** A picture file, small in memory whatever its size. */
@Composable
fun Picture(path: String, words: String, modifier: Modifier = Modifier, place: Modifier = Modifier.fillMaxWidth().height(220.dp), most: Int = LARGEST) {
    val picture by produceState<ImageBitmap?>(null, path) { value = withContext(Dispatchers.IO) { small(path, most) } }
    picture?.let { Image(it, words, modifier.then(place), contentScale = ContentScale.Fit) }
}

private fun small(path: String, most: Int): ImageBitmap? {
    val bounds = BitmapFactory.Options().apply { inJustDecodeBounds = true }
    BitmapFactory.decodeFile(path, bounds)
    var less = 1
    while (bounds.outWidth / less > most || bounds.outHeight / less > most) less *= 2
    return BitmapFactory.decodeFile(path, BitmapFactory.Options().apply { inSampleSize = less })?.asImageBitmap()
}

private const val LARGEST = 1200

/** Enough for what a zoom shows, and still little memory. */
internal const val WHOLE = 2400
