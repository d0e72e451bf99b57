package bolewalk.app

import android.app.Application
import android.content.Context
import bolewalk.app.field.BookKeeper
import bolewalk.book.FieldBook
import java.io.File
import java.util.UUID

/** Holds the one open field book of the phone. */
open class BolewalkApplication : Application() {
    val keeper: BookKeeper by lazy { BookKeeper(::openBook) }

    /** The field book lies in a folder of its own, so that a new phone can take it over whole. */
    protected open fun openBook(): FieldBook =
        FieldBook.open(File(filesDir, "book").path, deviceName())

    /** This phone's lasting name in the log of changes. */
    protected fun deviceName(): String {
        val kept = getSharedPreferences("phone", Context.MODE_PRIVATE)
        kept.getString(NAME, null)?.let { return it }
        val name = "phone-" + UUID.randomUUID()
        kept.edit().putString(NAME, name).apply()
        return name
    }

    private companion object {
        const val NAME = "name"
    }
}
