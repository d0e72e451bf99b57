package bolewalk.app

import bolewalk.book.FieldBook
import bolewalk.book.FixedClock
import bolewalk.book.Moment
import java.io.File
import java.time.OffsetDateTime

/** The app with a clock that stands still until a test sets it; everything else is as on a phone. */
class TestApplication : BolewalkApplication() {
    val clock: FixedClock by lazy { FixedClock.at(moment("2026-05-14T09:10:00-04:00")) }

    override fun openBook(): FieldBook = FieldBook.openWithClock(File(filesDir, "book").path, deviceName(), clock)
}

/** A moment as RFC 3339 writes it. */
fun moment(text: String): Moment = OffsetDateTime.parse(text).let {
    Moment(it.toInstant().toEpochMilli(), it.offset.totalSeconds / 60)
}
