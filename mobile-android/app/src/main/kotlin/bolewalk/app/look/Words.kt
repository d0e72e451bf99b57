package bolewalk.app.look

import androidx.compose.runtime.staticCompositionLocalOf
import bolewalk.book.ShellWords

/** The shell's own words, in the reader's language. */
val LocalWords = staticCompositionLocalOf<ShellWords> { error("no words") }

/** Words with the numbers that they name put in. */
internal fun String.filled(vararg numbers: Pair<String, Any>): String =
    numbers.fold(this) { words, (name, number) -> words.replace("{\$$name}", number.toString()) }
