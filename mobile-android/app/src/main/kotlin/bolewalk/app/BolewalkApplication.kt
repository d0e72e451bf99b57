package bolewalk.app

import android.app.Application
import android.content.Context
import androidx.activity.ComponentActivity
import bolewalk.app.device.Device
import bolewalk.app.device.phoneDevice
import bolewalk.app.device.sweepLeftovers
import bolewalk.app.field.BookKeeper
import bolewalk.app.field.FieldModel
import bolewalk.book.BookException
import bolewalk.book.FieldBook
import java.io.File
import java.util.UUID
import kotlin.concurrent.thread

/** Holds the one open field book of the phone. */
open class BolewalkApplication : Application() {
    val keeper: BookKeeper by lazy { BookKeeper(::languageTag) { openBook().also(::meet) } }

    override fun onCreate() {
        super.onCreate()
        thread(isDaemon = true) { sweepLeftovers(this) }
    }

    /** The field book lies in a folder of its own, so that a new phone can take it over whole. */
    protected open fun openBook(): FieldBook =
        FieldBook.open(File(filesDir, "book").path, deviceName())

    private fun languageTag(): String = resources.configuration.locales[0].toLanguageTag()

    /** A new book begins in the phone's language and units; where there is no room to keep them, it opens all the same. */
    private fun meet(book: FieldBook) {
        try {
            book.meetPhone(languageTag())
        } catch (_: BookException) {
            return
        }
    }

    /** What the phone senses and reaches, for a window. */
    open fun deviceOf(activity: ComponentActivity, field: FieldModel): Device = phoneDevice(activity, field)

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
