package bolewalk.app.field

import bolewalk.book.BookException
import bolewalk.book.FieldBook
import bolewalk.book.ShellWords
import bolewalk.book.wordsOfError
import bolewalk.book.wordsOfShell
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.ExperimentalCoroutinesApi
import kotlinx.coroutines.withContext

/** Opens the field book when it is first asked for, and asks it on two queues: pages and edits on one, long work on
 *  the other, so that a paper being written holds up no page. Until it is open, what is said is in the phone's own
 *  language. */
@OptIn(ExperimentalCoroutinesApi::class)
class BookKeeper(private val languageTag: () -> String, private val open: () -> FieldBook) {
    private val queue: CoroutineDispatcher = Dispatchers.IO.limitedParallelism(1)
    private val longQueue: CoroutineDispatcher = Dispatchers.IO.limitedParallelism(1)
    private var opened: FieldBook? = null

    /** The open book; opened now if it is not. */
    @Synchronized
    fun book(): FieldBook = opened ?: open().also { opened = it }

    /** Lets go of the book; the next question opens it anew. */
    @Synchronized
    fun forget(): FieldBook? = opened.also { opened = null }

    suspend fun <T> ask(question: FieldBook.() -> T): Answer<T> = withContext(queue) { answer(question) }

    suspend fun <T> work(question: FieldBook.() -> T): Answer<T> = withContext(longQueue) { answer(question) }

    /** The shell's own words, in the reader's language. */
    suspend fun words(): ShellWords = when (val answer = ask { shellWords() }) {
        is Answer.Given -> answer.value
        is Answer.Refused -> wordsBefore()
    }

    /** The same before anything was asked of the book: they need no disk. */
    fun wordsBefore(): ShellWords = wordsOfShell(languageTag())

    private fun <T> answer(question: FieldBook.() -> T): Answer<T> {
        val book = try {
            book()
        } catch (error: BookException) {
            return Answer.Refused(error, wordsOfError(error, languageTag()))
        }
        return try {
            Answer.Given(book.question())
        } catch (error: BookException) {
            Answer.Refused(error, book.wordsOf(error))
        }
    }
}

/** What the book answered. */
sealed interface Answer<out T> {
    data class Given<T>(val value: T) : Answer<T>

    /** It could not; [words] say what happened and what to do. */
    data class Refused(val error: BookException, val words: String) : Answer<Nothing>
}
