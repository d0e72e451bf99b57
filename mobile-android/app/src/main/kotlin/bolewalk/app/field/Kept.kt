package bolewalk.app.field

import androidx.lifecycle.SavedStateHandle
import bolewalk.book.CommandKind
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import bolewalk.book.FfiConverterRustBuffer
import bolewalk.book.FfiConverterTypeEntry
import bolewalk.book.FfiConverterTypeOffer
import bolewalk.book.FfiConverterTypePageAddress
import bolewalk.book.Offer
import bolewalk.book.PageAddress
import java.io.ByteArrayOutputStream
import java.nio.ByteBuffer
import java.util.zip.GZIPInputStream
import java.util.zip.GZIPOutputStream

/** What has to survive the end of the process: where the person is, and what is half entered. Written as the border
 *  writes it, so that no address and no kind of entry can be forgotten here, and packed, for a long list of choices has
 *  to fit into the system's saved state. What cannot be read, after an upgrade, counts as not kept. */
class Kept(private val saved: SavedStateHandle) {
    var way: List<PageAddress>
        get() = all(WAY, FfiConverterTypePageAddress).ifEmpty { listOf(bookAddress) }
        set(way) = keep(WAY, way, FfiConverterTypePageAddress)

    /** The offer being filled in, with its token: if the end came while the command was under way, the same token does
     *  not do it twice. */
    var offer: Offer?
        get() = all(OFFER, FfiConverterTypeOffer).firstOrNull()
        set(offer) = keep(OFFER, listOfNotNull(offer), FfiConverterTypeOffer)

    var draft: Map<String, EntryValue>
        get() = all(DRAFT, FfiConverterTypeEntry).associate { it.input to it.value }
        set(draft) = keep(DRAFT, draft.map { (input, value) -> Entry(input, value) }, FfiConverterTypeEntry)

    /** What was entered into forms that were left, by [placeOf], the last left last. */
    private var places: List<String>
        get() = saved.get<Array<String>>(PLACES).orEmpty().toList()
        set(places) {
            saved[PLACES] = places.toTypedArray()
        }

    fun laidAside(place: String): Map<String, EntryValue> =
        all(LAID + place, FfiConverterTypeEntry).associate { it.input to it.value }

    /** Lays a draft aside; nothing of it where it is empty. The saved state has little room: of many, the oldest go. */
    fun layAside(place: String, draft: Map<String, EntryValue>) {
        val others = places - place
        val kept = if (draft.isEmpty()) others else (others + place).takeLast(MOST_LAID)
        (places + place - kept.toSet()).forEach { saved.remove<ByteArray>(LAID + it) }
        if (draft.isNotEmpty()) keep(LAID + place, draft.map { (input, value) -> Entry(input, value) }, FfiConverterTypeEntry)
        places = kept
    }

    /** What waits for a file that another app gives. */
    var awaited: Awaited?
        get() {
            val (into, about, path) = saved.get<Array<String>>(AWAITED)?.takeIf { it.size == 3 } ?: return null
            return Awaited(into, about, path)
        }
        set(awaited) {
            saved[AWAITED] = awaited?.let { arrayOf(it.into, it.about, it.path) }
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
        val buffer = ByteBuffer.allocate(values.sumOf { converter.allocationSize(it).toInt() })
        values.forEach { converter.write(it, buffer) }
        val packed = ByteArrayOutputStream()
        GZIPOutputStream(packed).use { it.write(buffer.array(), 0, buffer.position()) }
        saved[name] = packed.toByteArray()
    }

    private fun <T> all(name: String, converter: FfiConverterRustBuffer<T>): List<T> {
        val packed = saved.get<ByteArray>(name) ?: return emptyList()
        return runCatching {
            val buffer = ByteBuffer.wrap(GZIPInputStream(packed.inputStream()).readBytes())
            buildList { while (buffer.hasRemaining()) add(converter.read(buffer)) }
        }.getOrDefault(emptyList())
    }

    private companion object {
        const val WAY = "way"
        const val OFFER = "offer"
        const val DRAFT = "draft"
        const val PLACES = "laid aside"
        const val LAID = "laid aside: "
        const val MOST_LAID = 30
        const val AWAITED = "awaited"
        const val HANDED_IN = "handed in"
    }
}

/** A file to come: for an input by its id, or for a command by its name and what it is about. */
data class Awaited(val into: String, val about: String, val path: String)
