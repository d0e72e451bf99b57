package bolewalk.app.device

import android.content.ActivityNotFoundException
import android.content.Context
import android.content.Intent
import android.net.Uri
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.OpenDocument
import androidx.activity.result.contract.ActivityResultContracts.TakePicture
import androidx.core.content.FileProvider
import bolewalk.app.R
import bolewalk.app.field.FieldModel
import java.io.File
import java.io.IOException

/** The real parts. Registered before the activity starts, so that what another app gives arrives even where the system
 *  ended this one meanwhile. */
fun phoneDevice(activity: ComponentActivity, field: FieldModel): Device {
    val files = PhoneFiles(activity, field)
    return Device(PhonePosition(activity), PhoneHeld(activity), files, files, files)
}

/** What other apps give and take: photos, files. */
class PhoneFiles(private val activity: ComponentActivity, private val field: FieldModel) : Camera, FilePicker, Sharing {
    private val camera = activity.registerForActivityResult(TakePicture()) { taken ->
        field.awaited()?.let { if (taken) field.arrived(it) }
    }
    private val picker = activity.registerForActivityResult(OpenDocument()) { uri ->
        field.awaited()?.let { if (uri != null) copy(uri, it.path) { field.arrived(it) } }
    }

    override fun take(path: String) = reach {
        File(path).parentFile?.mkdirs()
        camera.launch(contentUri(activity, path))
    }

    override fun picture(path: String) = reach { picker.launch(arrayOf("image/jpeg", "image/png")) }

    override fun any(path: String) = reach { picker.launch(arrayOf("*/*")) }

    override fun hand(path: String): Boolean {
        val uri = contentUri(activity, path)
        val send = Intent(Intent.ACTION_SEND).setType(activity.contentResolver.getType(uri))
            .putExtra(Intent.EXTRA_STREAM, uri)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        return runCatching { activity.startActivity(Intent.createChooser(send, null)) }.isSuccess
    }

    private fun reach(ask: () -> Unit) = try {
        ask()
    } catch (_: ActivityNotFoundException) {
        field.say(activity.getString(R.string.no_app), refused = true)
    } catch (_: SecurityException) {
        field.say(activity.getString(R.string.no_app), refused = true)
    }

    private fun copy(from: Uri, path: String, then: () -> Unit) {
        when (copied(activity, from, File(path))) {
            Copied.DONE -> then()
            Copied.TOO_LARGE -> field.say(activity.getString(R.string.too_large), refused = true)
            Copied.UNREADABLE -> field.say(activity.getString(R.string.not_a_picture), refused = true)
        }
    }
}

enum class Copied { DONE, TOO_LARGE, UNREADABLE }

/** Copies what a content address gives, up to a size that a phone can spare. */
fun copied(context: Context, from: Uri, to: File, most: Long = 256L shl 20): Copied {
    to.parentFile?.mkdirs()
    val outcome = try {
        context.contentResolver.openInputStream(from)?.use { input ->
            to.outputStream().use { output ->
                val buffer = ByteArray(1 shl 16)
                var total = 0L
                while (total <= most) {
                    val read = input.read(buffer)
                    if (read < 0) break
                    output.write(buffer, 0, read)
                    total += read
                }
                if (total > most) Copied.TOO_LARGE else Copied.DONE
            }
        } ?: Copied.UNREADABLE
    } catch (_: IOException) {
        Copied.UNREADABLE
    } catch (_: RuntimeException) {
        // Another app answers a content address: whatever it throws, this one goes on.
        Copied.UNREADABLE
    }
    if (outcome != Copied.DONE) to.delete()
    return outcome
}

internal fun contentUri(context: Context, path: String): Uri =
    FileProvider.getUriForFile(context, context.packageName + ".files", File(path))
