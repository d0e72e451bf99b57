package bolewalk.app.device

import android.content.Context
import android.content.Intent
import android.net.Uri
import android.provider.OpenableColumns
import androidx.activity.ComponentActivity
import androidx.core.content.IntentCompat
import bolewalk.app.field.FieldModel
import bolewalk.book.CommandKind
import java.io.File
import java.util.UUID

/** Takes what another app hands in, by opening a file with this one or by sharing it. The person is asked before it
 *  comes into the field book: any app can send an intent. */
fun takeHandedIn(activity: ComponentActivity, intent: Intent, field: FieldModel) {
    when (val handed = handedIn(intent)) {
        HandedIn.Nothing -> Unit
        HandedIn.Unreadable -> field.say(field.words.notReadable, refused = true)
        is HandedIn.From -> {
            val context = activity.applicationContext
            val to = File(context.filesDir, "brought/${UUID.randomUUID()}")
            copyAside(context, handed.uri, to) { outcome ->
                val trouble = outcome.words(field.words)
                if (trouble == null) field.offerHandedIn(whatIs(to), to.path, shownName(context, handed.uri))
                else field.say(trouble, refused = true)
            }
        }
    }
}

sealed interface HandedIn {
    data object Nothing : HandedIn

    /** Something was meant, but no file came with it. */
    data object Unreadable : HandedIn

    data class From(val uri: Uri) : HandedIn
}

/** Reads an intent of another app. Its contents may be anything: even looking at them may throw. */
internal fun handedIn(intent: Intent): HandedIn = try {
    val uri = when (intent.action) {
        Intent.ACTION_VIEW -> intent.data
        Intent.ACTION_SEND -> IntentCompat.getParcelableExtra(intent, Intent.EXTRA_STREAM, Uri::class.java)
        else -> return HandedIn.Nothing
    }
    if (uri == null) HandedIn.Unreadable else HandedIn.From(uri)
} catch (_: RuntimeException) {
    HandedIn.Unreadable
}

/** A pack is a zip; all else that can be handed in is a site file. Whether it is one indeed, the core says. */
internal fun whatIs(file: File): CommandKind {
    val head = file.inputStream().use { listOf(it.read(), it.read()) }
    return if (head == listOf('P'.code, 'K'.code)) CommandKind.READ_PACK else CommandKind.IMPORT_SITE_FILE
}

/** The name that the other app gives the file: shown, never used as a path. */
internal fun shownName(context: Context, uri: Uri): String {
    val given = try {
        context.contentResolver.query(uri, arrayOf(OpenableColumns.DISPLAY_NAME), null, null, null)?.use { row ->
            if (row.moveToFirst() && row.columnCount > 0) row.getString(0) else null
        }
    } catch (_: RuntimeException) {
        null
    }
    return cleanName(given ?: uri.lastPathSegment.orEmpty())
}

/** The last part of a name, without what could hide or turn its letters on the screen. */
internal fun cleanName(given: String): String {
    val last = given.substringAfterLast('/').substringAfterLast('\\')
    val plain = last.filterNot { it.isISOControl() || Character.getType(it) == Character.FORMAT.toInt() }.trim()
    return if (plain.length <= LONGEST_NAME) plain else plain.take(LONGEST_NAME) + "…"
}

private const val LONGEST_NAME = 60
