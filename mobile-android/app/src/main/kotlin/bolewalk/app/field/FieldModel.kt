package bolewalk.app.field

import androidx.lifecycle.SavedStateHandle
import androidx.lifecycle.ViewModel
import androidx.lifecycle.viewModelScope
import bolewalk.book.AveragedFix
import bolewalk.book.BookException
import bolewalk.book.CommandKind
import bolewalk.book.Drawing
import bolewalk.book.DrawingAddress
import bolewalk.book.EntryValue
import bolewalk.book.FieldBook
import bolewalk.book.LatLon
import bolewalk.book.Offer
import bolewalk.book.OfferedChoice
import bolewalk.book.Page
import bolewalk.book.PageAddress
import bolewalk.book.SensedFix
import bolewalk.book.ShellWords
import java.io.File
import kotlinx.coroutines.delay
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow
import kotlinx.coroutines.flow.asStateFlow
import kotlinx.coroutines.flow.collectLatest
import kotlinx.coroutines.flow.distinctUntilChanged
import kotlinx.coroutines.flow.map
import kotlinx.coroutines.flow.update
import kotlinx.coroutines.launch

/** Asks the core for pages and carries out what it offers. It alone touches the bindings' object. */
class FieldModel(private val keeper: BookKeeper, saved: SavedStateHandle, private val papers: Papers) : ViewModel() {
    private val kept = Kept(saved)
    private val now = MutableStateFlow(
        FieldState(kept.way, keeper.wordsBefore(), handedIn = kept.handedIn, form = kept.offer?.let { reopened(it, kept.draft) }),
    )
    val state: StateFlow<FieldState> = now.asStateFlow()

    /** What the shell says itself. */
    val words: ShellWords get() = now.value.words

    /** Number the questions for a page and for a rehearsal: an answer to an older one is stale. */
    private var asked = 0
    private var rehearsed = 0

    init {
        refresh()
        rehearse()
        viewModelScope.launch {
            state.map { it.pending > 0 && it.work == null }.distinctUntilChanged().collectLatest { waiting ->
                if (waiting) delay(MOMENT_MS)
                now.update { it.copy(late = waiting) }
            }
        }
    }

    /** Goes to a page. On the way back from it the present one comes again. */
    fun open(address: PageAddress) {
        val way = now.value.way
        val at = way.indexOfFirst { it.leadsWhere(address) }
        go(if (at >= 0) way.take(at + 1) else way + address)
    }

    /** Closes what is open: the question about a file handed in, the form, else the page. False on the last page. */
    fun back(): Boolean {
        if (now.value.handedIn != null) {
            leaveHandedIn()
            return true
        }
        if (now.value.form != null) {
            close()
            return true
        }
        if (now.value.way.size == 1) return false
        go(now.value.way.dropLast(1))
        return true
    }

    private fun go(way: List<PageAddress>) {
        close()
        lead(way)
        now.update { it.copy(said = null, written = null) }
        show()
    }

    private fun lead(way: List<PageAddress>) {
        kept.way = way
        now.update { it.copy(way = way) }
    }

    /** Searches on the present page; what is searched for is part of its address. */
    fun search(text: String) {
        val present = when (val address = now.value.address) {
            is PageAddress.Book -> address.copy(search = text)
            is PageAddress.Site -> address.copy(search = text)
            else -> return
        }
        lead(now.value.way.dropLast(1) + present)
        show()
    }

    /** The phone knows its place: sites near it come first in the book. */
    fun near(place: LatLon) {
        lead(now.value.way.map { if (it is PageAddress.Book) it.copy(near = place) else it })
        if (now.value.address is PageAddress.Book) show()
    }

    /** Takes an offer: does it where it asks nothing, else opens its form. */
    fun take(offer: Offer, entered: Map<String, EntryValue> = emptyMap()) {
        when {
            !offer.enabled -> say(offer.whyNot, refused = true)
            offer.inputs.isEmpty() || covers(offer, entered) -> carryOut(FilledOffer(offer, entered))
            else -> fill(reopened(offer, kept.laidAside(placeOf(offer)) + entered).copy(given = entered))
        }
    }

    /** Whether a tile said everything that the command asks for. */
    private fun covers(offer: Offer, entered: Map<String, EntryValue>) =
        entered.isNotEmpty() && offer.inputs.all { !it.needed || it.id in entered }

    /** The form of an offer; it says so where something was entered into it before it was left. */
    private fun reopened(offer: Offer, draft: Map<String, EntryValue>) =
        FilledOffer(offer, draft, fromBefore = kept.laidAside(placeOf(offer)).isNotEmpty())

    /** Opens the form of an offer with what a tile already said. */
    private fun fill(form: FilledOffer) {
        kept.offer = form.offer
        kept.draft = form.draft
        now.update { it.copy(form = form, said = null) }
        rehearse()
    }

    /** What was typed, chosen or sensed for an input of the open form; nothing takes it back. */
    fun enter(input: String, value: EntryValue?) {
        now.update { state ->
            val form = state.form ?: return@update state
            val draft = if (value == null) form.draft - input else form.draft + (input to value)
            kept.draft = draft
            state.copy(form = form.copy(draft = draft, faults = form.faults - input))
        }
        rehearse()
    }

    /** Asks what follows from what was entered, and what would be recorded, for measures shown while they are taken. */
    private fun rehearse() = launch {
        val number = ++rehearsed
        val form = now.value.form ?: return@launch
        val asks = keeper.ask { narrowed(form.offer, form.entries()) }
        if (number != rehearsed) return@launch
        if (asks is Answer.Given) now.update { state -> state.copy(form = state.form?.copy(inputs = asks.value)) }
        if (wayOf(form.offer.command) !is Way.Make && wayOf(form.offer.command) !is Way.Change) return@launch
        val answer = keeper.ask { rehearse(form.offer.command, form.offer.about, form.entries()) }
        if (number != rehearsed || answer !is Answer.Given) return@launch
        now.update { state -> state.copy(form = state.form?.copy(rehearsed = answer.value)) }
    }

    fun confirm() {
        now.value.form?.let(::carryOut)
    }

    /** Lets go of what was entered, with the photos that nobody kept. */
    fun startAnew() {
        val form = now.value.form ?: return
        form.draft.values.forEach { if (it is EntryValue.PhotoFile) File(it.path).delete() }
        kept.layAside(placeOf(form.offer), emptyMap())
        fill(FilledOffer(form.offer, form.given, given = form.given, anew = form.anew + 1))
    }

    /** Closes the form; what was entered by hand lies aside until it is opened again. */
    fun close() {
        now.value.form?.let { kept.layAside(placeOf(it.offer), it.byHand) }
        leave()
    }

    private fun leave() {
        kept.offer = null
        kept.draft = emptyMap()
        kept.awaited = null
        now.update { it.copy(form = null) }
    }

    private fun carryOut(form: FilledOffer) {
        val offer = form.offer
        when (val way = wayOf(offer.command)) {
            is Way.Step, is Way.Make, is Way.Change, is Way.Remove -> act(form)
            is Way.Write -> {
                val path = papers.path(way.name)
                val chosen = form.entries()
                kept.layAside(placeOf(form.offer), emptyMap())
                leave()
                work({ way.write(this, offer.about, path, chosen) ?: words.written }) { words ->
                    now.update { it.copy(said = Said(words, refused = false), written = path) }
                }
            }
            is Way.Backup -> work({ backup() }) { say(words.written, refused = false) }
            // The person chooses the file first: see `arrived`.
            is Way.BringIn -> Unit
        }
    }

    private fun act(form: FilledOffer) = launch {
        val offer = form.offer
        when (val answer = keeper.ask { act(offer.command, offer.about, form.entries(), offer.token) }) {
            is Answer.Given -> {
                val done = answer.value
                if (now.value.form?.offer?.token == offer.token) leave()
                kept.layAside(placeOf(form.offer), emptyMap())
                // What was made is opened, once, however often the button was tapped.
                done.goTo?.let { to -> if (now.value.way.none { it.leadsWhere(to) }) lead(now.value.way + to) }
                say(done.words, refused = false)
                if (offer.command == CommandKind.CHANGE_SETTINGS) readSettings()
            }
            is Answer.Refused -> refuse(form, answer)
        }
        ask()
    }

    /** Says what is wrong, all of it in the bar, and each fault at its input. */
    private suspend fun refuse(form: FilledOffer, answer: Answer.Refused) {
        val faults = (answer.error as? BookException.Refused)?.faults.orEmpty()
        val words = faults.associate { fault ->
            val said = (keeper.ask { wordsOfFault(fault) } as? Answer.Given)?.value ?: answer.words
            val label = form.offer.inputs.find { it.id == fault.place }?.words.orEmpty()
            fault.place to said.removePrefix("$label: ")
        }
        now.update { state ->
            val open = state.form?.takeIf { it.offer.token == form.offer.token }
            state.copy(said = Said(answer.words, refused = true), form = open?.copy(faults = words) ?: state.form)
        }
    }

    private fun show() = launch { ask() }

    /** Asks for the present page. Where what it is about is gone, the page before it comes. */
    private suspend fun ask() {
        val number = ++asked
        val address = now.value.address
        val answer = keeper.ask { page(address) }
        if (number != asked) return
        when {
            answer is Answer.Given -> now.update { it.copy(page = answer.value, trouble = null) }
            answer is Answer.Refused && answer.error is BookException.NotFound && now.value.way.size > 1 -> {
                lead(now.value.way.dropLast(1))
                ask()
            }
            answer is Answer.Refused -> now.update { it.copy(page = null, trouble = answer.words) }
        }
    }

    /** How the reader wants the screen, and in which words. */
    private suspend fun readSettings() {
        val words = keeper.words()
        now.update { it.copy(words = words) }
        val answer = keeper.ask { page(PageAddress.Settings) }
        val page = ((answer as? Answer.Given)?.value as? Page.Settings)?.v1 ?: return
        val language = page.offers.flatMap { it.inputs }.find { it.id == LANGUAGE }?.current as? EntryValue.Choice
        now.update { it.copy(reader = Reader(page.theme, page.textSizePct, page.leftHand, language?.id)) }
    }

    private fun <T> work(question: FieldBook.() -> T, done: (T) -> Unit) = launch {
        val watch = viewModelScope.launch {
            while (true) {
                delay(POLL_MS)
                val far = keeper.ask { howFar() }
                if (far is Answer.Given && far.value.running) now.update { it.copy(work = far.value) }
            }
        }
        val answer = keeper.work(question)
        watch.cancel()
        now.update { it.copy(work = null) }
        when (answer) {
            is Answer.Given -> done(answer.value)
            is Answer.Refused -> say(answer.words, refused = true)
        }
        ask()
    }

    fun stopWork() = launch { keeper.ask { stopWork() } }

    /** Says something; where the shell has to say it itself, in its own words. */
    fun say(words: String, refused: Boolean) = now.update { it.copy(said = Said(words, refused)) }

    /** A drawing of the present page; nothing where nobody took what it is drawn from. */
    suspend fun drawing(which: DrawingAddress, zoom: Int, lettersPct: Int): Drawing? = counted {
        (keeper.ask { drawing(which, zoom.toUInt(), lettersPct.toUInt()) } as? Answer.Given)?.value
    }

    /** Asks the core something beside the page. */
    internal suspend fun <T> answer(question: FieldBook.() -> T): Answer<T> = counted { keeper.ask(question) }

    /** The choices of a search that come near what was typed. */
    suspend fun suggest(input: String, typed: String): List<OfferedChoice> = counted {
        (keeper.ask { suggest(input, typed) } as? Answer.Given)?.value.orEmpty()
    }

    /** Many fixes of one place averaged, and what of them was left out. */
    suspend fun average(fixes: List<SensedFix>, sinceMs: Long): AveragedFix? = counted {
        val about = now.value.form?.offer?.about.orEmpty()
        (keeper.ask { average(about, fixes, sinceMs) } as? Answer.Given)?.value
    }

    /** Another app is about to give a file at [path], for an input of the open form. */
    fun await(input: String, path: String) {
        kept.awaited = Awaited(input, "", path)
    }

    /** The same for an offer that takes a file in. */
    fun await(offer: Offer, path: String) {
        kept.awaited = Awaited(offer.command.name, offer.about, path)
    }

    /** What was awaited, once. */
    fun awaited(): Awaited? = kept.awaited.also { kept.awaited = null }

    /** What was awaited lies at its path. */
    fun arrived(awaited: Awaited) {
        val command = CommandKind.entries.find { it.name == awaited.into }
        when (val way = command?.let(::wayOf)) {
            is Way.BringIn -> work({ way.read(this, awaited.about, awaited.path) }) { say(it, refused = false) }
            null, is Way.Step, is Way.Make, is Way.Change, is Way.Remove, is Way.Write, is Way.Backup ->
                enter(awaited.into, EntryValue.PhotoFile(awaited.path))
        }
    }

    /** Another app handed a file in: the person is asked first. */
    fun offerHandedIn(command: CommandKind, path: String, name: String) = hold(HandedIn(command, path, name))

    fun takeHandedIn() {
        val handed = now.value.handedIn ?: return
        hold(null)
        arrived(Awaited(handed.command.name, "", handed.path))
    }

    fun leaveHandedIn() {
        val left = now.value.handedIn ?: return
        hold(null)
        File(left.path).delete()
    }

    private fun hold(handed: HandedIn?) {
        kept.handedIn = handed
        now.update { it.copy(handedIn = handed) }
    }

    /** The day may have changed, the phone's language or the room on it: asks anew. */
    fun refresh() = launch {
        readSettings()
        ask()
    }

    private fun launch(block: suspend () -> Unit) = viewModelScope.launch { counted(block) }

    private suspend fun <T> counted(question: suspend () -> T): T {
        now.update { it.copy(pending = it.pending + 1) }
        return try {
            question()
        } finally {
            now.update { it.copy(pending = it.pending - 1) }
        }
    }

    private companion object {
        const val POLL_MS = 200L

        /** Longer than this without an answer, the person is told that it is on its way. */
        const val MOMENT_MS = 1000L

        /** The input of the settings that says in which language the reader reads. */
        const val LANGUAGE = "settings.language"
    }
}
