package bolewalk.app.field

import bolewalk.book.CommandKind
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import bolewalk.book.HowFarItIs
import bolewalk.book.Offer
import bolewalk.book.OfferedInput
import bolewalk.book.Page
import bolewalk.book.PageAddress
import bolewalk.book.Rehearsal
import bolewalk.book.ShellWords
import bolewalk.book.Theme

/** What the screen shows now. */
data class FieldState(
    /** The pages that lead here, the present one last. */
    val way: List<PageAddress>,
    /** The shell's own words, in the reader's language. */
    val words: ShellWords,
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
    /** How this phone's reader wants the screen. */
    val reader: Reader = Reader(),
    /** An answer takes longer than a moment. */
    val late: Boolean = false,
    /** How many answers are still to come. */
    val pending: Int = 0,
) {
    val address: PageAddress get() = way.last()
}

/** A file from another app: the command that takes it in, where it lies, and the name that app gave it. */
data class HandedIn(val command: CommandKind, val path: String, val name: String)

/** What a command did, or why it was refused and what to do. */
data class Said(val words: String, val refused: Boolean)

/** The settings that the shell itself follows. */
data class Reader(
    val theme: Theme = Theme.FOLLOW_PHONE,
    val textSizePct: Double = 100.0,
    val leftHand: Boolean = false,
    /** The language's id in the core; none until it is known. */
    val language: String? = null,
)

/** The same form of the same record, whenever it is offered. */
fun placeOf(offer: Offer): String = offer.id + " " + offer.about

/** An offer with what the person has entered so far. */
data class FilledOffer(
    val offer: Offer,
    val draft: Map<String, EntryValue> = emptyMap(),
    /** What the tile that opened the form already said. */
    val given: Map<String, EntryValue> = emptyMap(),
    /** Whether it shows what was entered when it was open before. */
    val fromBefore: Boolean = false,
    /** How often it was started anew. */
    val anew: Int = 0,
    /** What is wrong, by input. */
    val faults: Map<String, String> = emptyMap(),
    /** What would be recorded as it stands, and what is missing for it. */
    val rehearsed: Rehearsal? = null,
    /** What is asked, as it follows from what was entered. */
    val inputs: List<OfferedInput> = offer.inputs,
) {
    /** What a person entered, worth keeping when the form is left: not what a tile said or a sense came to by itself. */
    val byHand: Map<String, EntryValue>
        get() = if (draft.any { (input, value) -> given[input] != value && value !is EntryValue.Fixes }) draft else emptyMap()

    /** What an input shows: what was entered, else what is there now. */
    fun shown(input: OfferedInput): EntryValue? = draft[input.id] ?: input.current

    /** What is sent: what nobody is asked for, what the form proposes for a new record, and all that was entered. */
    fun entries(): List<Entry> = offer.fixed + offer.inputs.mapNotNull { input ->
        val proposed = input.current.takeIf { wayOf(offer.command) == Way.Make }
        (draft[input.id] ?: proposed)?.let { Entry(input.id, it) }
    }
}
