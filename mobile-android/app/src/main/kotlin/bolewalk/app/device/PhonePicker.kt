package bolewalk.app.device

import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.OpenDocument
import bolewalk.app.field.FieldModel
import bolewalk.book.ShellWords
import java.io.File

/** The system's file picker: it needs no permission, and gives one file. */
class PhonePicker(private val activity: ComponentActivity, private val field: FieldModel) : FilePicker {
    private val picker = activity.registerForActivityResult(OpenDocument()) { uri ->
        field.awaited()?.let { awaited ->
            if (uri != null) {
                copyAside(activity.applicationContext, uri, File(awaited.path)) { outcome ->
                    val trouble = outcome.words(field.words)
                    if (trouble == null) field.arrived(awaited) else field.say(trouble, refused = true)
                }
            }
        }
    }

    // Some providers know a picture only as a file: whether it is one, the core says.
    override fun picture(path: String) = pick("image/*", "application/octet-stream")

    // Packs, site files and outlines have no type that every provider knows.
    override fun any(path: String) = pick("*/*")

    private fun pick(vararg types: String) {
        if (!activity.reaches { picker.launch(arrayOf(*types)) }) field.say(field.words.noApp, refused = true)
    }
}

/** The words for a copy that failed. */
internal fun Copied.words(words: ShellWords): String? = when (this) {
    Copied.DONE -> null
    Copied.TOO_LARGE -> words.tooLarge
    Copied.NO_ROOM -> words.noRoom
    Copied.UNREADABLE -> words.notReadable
    Copied.NOT_OURS_TO_READ -> words.notHanded
}
