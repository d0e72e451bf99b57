package bolewalk.app.field

import androidx.lifecycle.SavedStateHandle
import bolewalk.book.CommandKind
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import bolewalk.book.FfiConverterRustBuffer
import bolewalk.book.FfiConverterTypeEntry
import bolewalk.book.FfiConverterTypePageAddress
import bolewalk.book.PageAddress
import java.nio.ByteBuffer

/** What has to survive the end of the process: where the person is, and what is half entered. Written as the border
 *  writes it, so that no address and no kind of entry can be forgotten here. What cannot be read, after an upgrade,
 *  counts as not kept. */
class Kept(private val saved: SavedStateHandle) {
    var way: List<PageAddress>
        get() = all(WAY) { FfiConverterTypePageAddress.read(it) }.ifEmpty { listOf(PageAddress.Book) }
        set(way) = keep(WAY, way, FfiConverterTypePageAddress)

    /** Which offer is being filled in. */
    var offer: OfferKept?
        get() {
            val (id, about, token) = saved.get<Array<String>>(OFFER)?.takeIf { it.size == 3 } ?: return null
            return OfferKept(id, about, token)
        }
        set(offer) {
            saved[OFFER] = offer?.let { arrayOf(it.id, it.about, it.token) }
        }

    var draft: Map<String, EntryValue>
        get() = all(DRAFT) { FfiConverterTypeEntry.read(it) }.associate { it.input to it.value }
        set(draft) = keep(DRAFT, draft.map { (input, value) -> Entry(input, value) }, FfiConverterTypeEntry)

    /** What waits for a file that another app gives. */
    var awaited: Awaited?
        get() {
            val (into, path) = saved.get<Array<String>>(AWAITED)?.takeIf { it.size == 2 } ?: return null
            return Awaited(into, path)
        }
        set(awaited) {
            saved[AWAITED] = awaited?.let { arrayOf(it.into, it.path) }
        }

    /** What another app handed in, until the person says whether to take it. */
    var handedIn: HandedIn?
        get() {
            val (command, path, name) = saved.get<Array<String>>(HANDED_IN)?.takeIf { it.size == 3 } ?: return null
            return CommandKind.entries.find { it.name == command }?.let { HandedIn(it, path, name) }
        }
        set(handedIn) {
            saved[HANDED_IN] = handedIn?.let { arrayOf(it.command.name, it.path, it.name) }
        }

    private fun <T> keep(name: String, values: List<T>, converter: FfiConverterRustBuffer<T>) {
        val sizes = values.sumOf { converter.allocationSize(it).toInt() }
        val buffer = ByteBuffer.allocate(sizes)
        values.forEach { converter.write(it, buffer) }
        saved[name] = buffer.array().copyOf(buffer.position())
    }

    private fun <T> all(name: String, read: (ByteBuffer) -> T): List<T> {
        val buffer = ByteBuffer.wrap(saved.get<ByteArray>(name) ?: return emptyList())
        return runCatching { buildList { while (buffer.hasRemaining()) add(read(buffer)) } }.getOrDefault(emptyList())
    }

    private companion object {
        const val WAY = "way"
        const val OFFER = "offer"
        const val DRAFT = "draft"
        const val AWAITED = "awaited"
        const val HANDED_IN = "handed in"
    }
}

/** An offer, to be found again on the page after the process has ended. Its token is kept too: if the end came while
 *  the command was under way, the same token does not do it twice. */
data class OfferKept(val id: String, val about: String, val token: String)

/** A file to come: for an input by its id, or for a command by its name. */
data class Awaited(val into: String, val path: String)
