package bolewalk.app.device

import android.content.ContentResolver.SCHEME_CONTENT
import android.content.Context
import android.net.Uri
import android.os.Handler
import android.os.Looper
import android.provider.OpenableColumns
import java.io.Closeable
import java.io.File
import java.io.IOException
import java.io.InputStream
import java.util.UUID
import kotlin.concurrent.thread

/** How the copy of a file from another app ended. */
enum class Copied { DONE, TOO_LARGE, NO_ROOM, UNREADABLE, NOT_OURS_TO_READ }

/** The largest file that is taken in: a pack of a day's photos is far smaller. */
const val LARGEST_BYTES = 500L * 1000 * 1000

/** What stays free on the phone. */
private const val RESERVE_BYTES = 50L * 1000 * 1000

/** So long another app may stay silent. */
private const val SILENCE_MS = 20_000L

/** Copies in the background what a content address gives, and says on the screen's thread how it went. The app behind the
 *  address may be broken or hostile: it may throw, lie about its size, never end or never begin. */
fun copyAside(context: Context, from: Uri, to: File, most: Long = LARGEST_BYTES, silenceMs: Long = SILENCE_MS, then: (Copied) -> Unit) {
    val copy = Copy(context, from, to, most)
    val worker = thread(isDaemon = true, name = "copy") { copy.go() }
    thread(isDaemon = true, name = "copy watch") {
        var before = -1L
        worker.join(silenceMs)
        while (worker.isAlive && copy.moved != before) {
            before = copy.moved
            worker.join(silenceMs)
        }
        val outcome = copy.end()
        Handler(Looper.getMainLooper()).post { then(outcome) }
    }
}

/** Whether a content address is another app's. One of a file, or of our own files, could make this app read its own
 *  field book for somebody else. */
internal fun isOfAnotherApp(context: Context, uri: Uri): Boolean {
    // "10@authority" names another user of the phone.
    val authority = uri.authority?.substringAfterLast('@').orEmpty()
    return uri.scheme == SCHEME_CONTENT && authority.isNotEmpty() && !authority.startsWith(context.packageName + ".")
}

internal class Copy(private val context: Context, private val from: Uri, private val to: File, private val most: Long) {
    @Volatile var moved = 0L
        private set
    private var outcome: Copied? = null
    private var open: Closeable? = null

    /** Ends it, whatever it is doing, and says how it went. A copy that is not done by now is not taken any more. */
    fun end(): Copied {
        val (found, left) = synchronized(this) { (outcome ?: Copied.UNREADABLE.also { outcome = it }) to open }
        runCatching { left?.close() }
        return found
    }

    fun go() {
        val aside = File(to.parentFile, UUID.randomUUID().toString())
        val ended = try {
            if (isOfAnotherApp(context, from)) copy(aside) else Copied.NOT_OURS_TO_READ
        } catch (_: IOException) {
            if (roomIn(aside) < RESERVE_BYTES) Copied.NO_ROOM else Copied.UNREADABLE
        } catch (_: RuntimeException) {
            // Another app answers a content address: whatever it throws, this one goes on.
            Copied.UNREADABLE
        } catch (_: OutOfMemoryError) {
            Copied.UNREADABLE
        }
        synchronized(this) {
            if (outcome == null) outcome = if (ended != Copied.DONE || aside.renameTo(to)) ended else Copied.UNREADABLE
        }
        aside.delete()
    }

    private fun copy(aside: File): Copied {
        aside.parentFile?.mkdirs()
        val said = saidSize()
        if (said > most) return Copied.TOO_LARGE
        if (said + RESERVE_BYTES > roomIn(aside)) return Copied.NO_ROOM
        val input = context.contentResolver.openInputStream(from) ?: return Copied.UNREADABLE
        synchronized(this) { open = input }
        return input.use { pour(it, aside) }
    }

    private fun pour(input: InputStream, aside: File): Copied = aside.outputStream().use { output ->
        val buffer = ByteArray(1 shl 16)
        while (true) {
            val read = input.read(buffer)
            if (read < 0) break
            output.write(buffer, 0, read)
            moved += read
            if (moved > most) return Copied.TOO_LARGE
        }
        output.fd.sync()
        if (moved == 0L) Copied.UNREADABLE else Copied.DONE
    }

    /** The size that the other app states; 0 where it states none. It may be wrong, so bytes are counted too. */
    private fun saidSize(): Long = try {
        context.contentResolver.query(from, arrayOf(OpenableColumns.SIZE), null, null, null)?.use { row ->
            val column = row.getColumnIndex(OpenableColumns.SIZE)
            if (column >= 0 && row.moveToFirst() && !row.isNull(column)) row.getLong(column).coerceAtLeast(0) else 0
        } ?: 0
    } catch (_: RuntimeException) {
        0
    }

    private fun roomIn(file: File): Long = file.parentFile?.usableSpace ?: 0
}
