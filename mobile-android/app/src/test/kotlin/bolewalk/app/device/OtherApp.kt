package bolewalk.app.device

import android.content.ContentProvider
import android.content.ContentValues
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.provider.OpenableColumns
import bolewalk.app.app
import java.io.IOException
import java.io.InputStream
import java.util.concurrent.CountDownLatch
import org.robolectric.Robolectric
import org.robolectric.Shadows.shadowOf

/** A file of another app, behind a content address. */
fun fileOfAnotherApp(name: String?, size: Any?, stream: () -> InputStream): Uri {
    val authority = "org.other.files${count++}"
    Robolectric.buildContentProvider(OtherApp::class.java).create(authority).get().answer = { wanted ->
        val known = mapOf(OpenableColumns.DISPLAY_NAME to name, OpenableColumns.SIZE to size)
        MatrixCursor(wanted).apply { addRow(wanted.map(known::get)) }
    }
    val uri = Uri.parse("content://$authority/document/7")
    shadowOf(app.contentResolver).registerInputStreamSupplier(uri, stream)
    return uri
}

private var count = 0

class OtherApp : ContentProvider() {
    var answer: (Array<String>) -> Cursor? = { null }

    override fun onCreate() = true

    override fun query(uri: Uri, wanted: Array<out String>?, where: String?, values: Array<out String>?, order: String?): Cursor? =
        answer(wanted.orEmpty().map { it }.toTypedArray())

    override fun getType(uri: Uri) = "application/octet-stream"

    override fun insert(uri: Uri, values: ContentValues?): Uri? = null

    override fun delete(uri: Uri, where: String?, values: Array<out String>?) = 0

    override fun update(uri: Uri, values: ContentValues?, where: String?, which: Array<out String>?) = 0
}

/** Gives bytes without end. */
class Endless : InputStream() {
    override fun read() = 7

    override fun read(into: ByteArray, from: Int, length: Int) = length
}

/** Gives a few bytes, then breaks. */
class Breaking : InputStream() {
    private var given = false

    override fun read(): Int = throw IOException("broken")

    override fun read(into: ByteArray, from: Int, length: Int): Int {
        if (given) throw IOException("broken")
        given = true
        return 100
    }
}

/** Never gives a byte, until it is closed. */
class Silent : InputStream() {
    val closed = CountDownLatch(1)

    override fun read(): Int {
        closed.await()
        return -1
    }

    override fun read(into: ByteArray, from: Int, length: Int) = read()

    override fun close() = closed.countDown()
}
