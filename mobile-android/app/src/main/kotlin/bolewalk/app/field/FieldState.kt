package bolewalk.app.field

import bolewalk.book.CommandKind
import bolewalk.book.EntryValue
import bolewalk.book.HowFarItIs
import bolewalk.book.Offer
import bolewalk.book.OfferedInput
import bolewalk.book.Page
import bolewalk.book.PageAddress

/** What the screen shows now. */
data class FieldState(
    /** The pages that lead here, the present one last. */
    val way: List<PageAddress>,
    /** The present page; none until the first answer. */
    val page: Page? = null,
    /** Why there is no page. */
    val trouble: String? = null,
    /** What the app said last. */
    val said: Said? = null,
    /** The offer being filled in. */
    val form: FilledOffer? = null,
    /** Long work going on. */
    val work: HowFarItIs? = null,
    /** A file that long work wrote, to be handed on. */
    val written: String? = null,
    /** A file that another app handed in; the person has not said yet whether to take it. */
    val handedIn: HandedIn? = null,
    /** How many answers are still to come. */
    val pending: Int = 0,
) {
    val address: PageAddress get() = way.last()
}

/** A file from another app: the command that takes it in, where it lies, and the name that app gave it. */
data class HandedIn(val command: CommandKind, val path: String, val name: String)

/** What a command did, or why it was refused and what to do. */
data class Said(val words: String, val refused: Boolean)

/** An offer with what the person has entered so far. */
data class FilledOffer(
    val offer: Offer,
    val draft: Map<String, EntryValue> = emptyMap(),
    /** What is wrong, by input. */
    val faults: Map<String, String> = emptyMap(),
) {
    /** What an input shows: what was entered, else what is there now. */
    fun shown(input: OfferedInput): EntryValue? = draft[input.id] ?: input.current
}
