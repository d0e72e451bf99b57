package bolewalk.app

import androidx.activity.ComponentActivity
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

    override fun onCreate() {
        super.onCreate()
        BOOKS.deleteRecursively()
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

    override fun deviceOf(activity: ComponentActivity, field: FieldModel): Device = doubles.device(field)

    private companion object {
        val BOOKS = File("books")
    }
}

/** A moment as RFC 3339 writes it. */
fun moment(text: String): Moment = OffsetDateTime.parse(text).let {
    Moment(it.toInstant().toEpochMilli(), it.offset.totalSeconds / 60)
}
