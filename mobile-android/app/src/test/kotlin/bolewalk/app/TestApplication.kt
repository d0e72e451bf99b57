package bolewalk.app

import androidx.activity.ComponentActivity
import androidx.core.content.FileProvider
import bolewalk.app.device.Device
import bolewalk.app.field.FieldModel
import bolewalk.book.BookException
import bolewalk.book.FieldBook
import bolewalk.book.FixedClock
import bolewalk.book.Moment
import java.io.File
import java.time.OffsetDateTime

/** The app with a clock that stands still until a test sets it, and with senses that say what the test tells them. */
class TestApplication : BolewalkApplication() {
    val clock: FixedClock by lazy { FixedClock.at(moment("2026-05-14T09:10:00-04:00")) }
    val doubles = Doubles()

    /** Which phone is in the hand; each has a book of its own. */
    var phone = "phone-1"

    /** Lies where the tests run, so that what is said of its file is the same every time. */
    val book: File get() = File(BOOKS, phone)

    /** Whether windows have the phone's own parts instead of doubles. */
    var realParts = false

    override fun onCreate() {
        super.onCreate()
        BOOKS.deleteRecursively()
        // It keeps its folders for the whole process, but every test has folders of its own.
        (FileProvider::class.java.getDeclaredField("sCache").apply { isAccessible = true }.get(null) as MutableMap<*, *>).clear()
    }

    /** Is done before a field book is opened: it may take its time, or throw. */
    var beforeOpening: () -> Unit = {}

    /** Whether opening comes to an error that no test can bring about on a real disk. */
    fun refuseToOpen(error: BookException?) {
        beforeOpening = { error?.let { throw it } }
    }

    override fun openBook(): FieldBook {
        beforeOpening()
        return FieldBook.openWithClock(book.path, phone, clock)
    }

    override fun deviceOf(activity: ComponentActivity, field: FieldModel): Device =
        if (realParts) super.deviceOf(activity, field) else doubles.device(field)

    private companion object {
        val BOOKS = File("books")
    }
}

/** A moment as RFC 3339 writes it. */
fun moment(text: String): Moment = OffsetDateTime.parse(text).let {
    Moment(it.toInstant().toEpochMilli(), it.offset.totalSeconds / 60)
}
