// One walk through the border in Kotlin: a site, a tree, a finding, a photo, the judgement, the
// summary while asking how far it is, and every kind of error. Prints a line a check.

import bolewalk.book.*
import java.io.File
import java.io.RandomAccessFile
import java.nio.file.Files
import kotlin.concurrent.thread
import kotlin.system.exitProcess

fun check(what: String, held: Boolean) {
    if (!held) {
        println("FAILED: Kotlin: $what")
        exitProcess(1)
    }
    println("ok: Kotlin: $what")
}

inline fun <reified E : BookException> fails(what: String, book: FieldBook?, act: () -> Unit) {
    val error = try {
        act()
        null
    } catch (known: BookException) {
        known
    }
    check("$what is ${E::class.simpleName}", error is E)
    if (error != null) {
        // A book that did not open has no words of its own.
        val said = book?.wordsOf(error) ?: wordsOfError(error, "es-MX")
        check("$what has its words", said.length > 20)
    }
}

class Hand(val book: FieldBook) {
    private var taps = 0

    fun act(command: CommandKind, about: String, vararg entries: Pair<String, EntryValue>): Done {
        taps += 1
        return book.act(command, about, entries.map { Entry(it.first, it.second) }, "kotlin-$taps")
    }
}

fun words(text: String) = EntryValue.Words(text)
fun choice(id: String) = EntryValue.Choice(id)

fun walk(folder: String, photo: String): String {
    check("the shell's words are there before any book", wordsOfShell("es-MX").keep == "Guardar")
    val book = FieldBook.open(folder, "phone")
    check("the shell's words are the reader's", book.shellWords() == wordsOfShell("en-US"))
    val hand = Hand(book)
    val site = hand.act(CommandKind.ADD_SITE, "", "site.name" to words("Heron Mill")).record
    val tree = hand.act(
        CommandKind.ADD_TREE, site,
        "tree.tag" to words("1"), "tree.species" to words("Quercus rubra"),
        "tree.position" to EntryValue.Fix(42.3314, -71.1211, 4.0),
    ).record
    hand.act(CommandKind.START_VISIT, site)
    val inspection =
        hand.act(CommandKind.START_INSPECTION, tree, "inspection.level" to choice("full_check")).record
    hand.act(
        CommandKind.ADD_FINDING, inspection,
        "finding.code" to choice("hanger"), "finding.part" to choice("crown"),
        "finding.grade" to choice("2"), "finding.height" to EntryValue.Number("12 m"),
    )
    val taken = hand.act(CommandKind.ADD_PHOTO, inspection, "photo.file" to EntryValue.PhotoFile(photo))
    check("a photo is taken in", taken.record.isNotEmpty())

    val page = (book.page(PageAddress.Tree(tree)) as Page.Tree).v1
    check("the tree's page shows the finding and the photo", page.findings.size == 1 && page.photos.size == 1)
    check("the tree's page offers something", page.offers.any { it.enabled })
    val judged = (book.page(PageAddress.Judgement(tree)) as Page.Judgement).v1
    check("a hanger bars the climb", judged.verdict == Verdict.BARRED && judged.stops.isNotEmpty())

    val pdf = "$folder/summary.pdf"
    var asked = 0
    val writer = thread { book.writeSummary(site, pdf) }
    while (writer.isAlive) {
        book.howFar()
        asked += 1
        Thread.sleep(1)
    }
    val after = book.howFar()
    check("the summary is written while asking how far it is", File(pdf).length() > 10_000 && asked > 0)
    check("the work has come to its end", !after.running && after.done == after.of)
    errors(book, hand, site, folder)
    book.close()
    return site
}

fun errors(book: FieldBook, hand: Hand, site: String, folder: String) {
    fails<BookException.Refused>("a tree without a tag", book) { hand.act(CommandKind.ADD_TREE, site) }
    fails<BookException.NotFound>("a tree that is not there", book) { book.page(PageAddress.Tree("none")) }
    fails<BookException.Unreadable>("a folder as a site file", book) { book.importSiteFile(folder) }
    fails<BookException.Unwritable>("a summary into nowhere", book) {
        book.writeSummary(site, "$folder/no/such/folder/summary.pdf")
    }
    fails<BookException.Defect>("a clock beyond the calendar", book) {
        FixedClock.at(Moment(Long.MAX_VALUE, 0))
    }
    book.boundPages(1u)
    fails<BookException.DiskFull>("an edit on a full disk", book) {
        repeat(200) { hand.act(CommandKind.ADD_TREE, site, "tree.tag" to words("full $it")) }
    }
    book.boundPages(0u)
    busyAndStopped(book, folder)
}

/** A large site, so that its summary takes long enough to be met and stopped. */
fun busyAndStopped(book: FieldBook, folder: String) {
    val trees = (1..600).joinToString(",") {
        """{"tag":"$it","species":"Acer rubrum","inspections":[{"visit":"2026-05-14","level":"triage",
           "findings":[{"code":"dead-limb","part":"limb","grade":1,"height_m":6}]}]}"""
    }
    val file = File(folder, "large.json")
    file.writeText("""{"format":1,"site":{"name":"Long Row","visits":[{"day":"2026-05-14"}],"trees":[$trees]}}""")
    val site = book.importSiteFile(file.path).record
    val pdf = "$folder/long.pdf"
    var stopped: Throwable? = null
    val writer = thread {
        try {
            book.writeSummary(site, pdf)
        } catch (error: BookException) {
            stopped = error
        }
    }
    while (writer.isAlive && !book.howFar().running) Thread.onSpinWait()
    fails<BookException.Busy>("a second long work", book) { book.writeSummary(site, "$folder/second.pdf") }
    book.stopWork()
    writer.join()
    check("stopped work is Stopped", stopped is BookException.Stopped)
    check("stopped work leaves nothing behind", !File(pdf).exists())
}

/** Writes over bytes of the book's file, as a newer version or a failing disk would. */
fun overwrite(folder: String, at: Long, bytes: ByteArray) {
    RandomAccessFile(File(folder, "field-book.db"), "rw").use {
        it.seek(at)
        it.write(bytes)
    }
}

fun damage(folder: String, site: String) {
    val book = FieldBook.open(folder, "phone")
    check("a restart keeps everything", (book.page(PageAddress.Book(null, "")) as Page.Book).v1.sites.any { it.id == site })
    val size = File(folder, "field-book.db").length()
    overwrite(folder, 4096, ByteArray((size - 4096).toInt()) { 0x5a })
    fails<BookException.Damaged>("a wrecked book", book) { book.backup() }
    book.close()
    // The format's number stands in bytes 60 to 63 of an SQLite file.
    overwrite(folder, 60, byteArrayOf(0, 0, 3, 1))
    fails<BookException.Newer>("a book of a newer version", null) { FieldBook.open(folder, "phone").close() }
}

fun main(args: Array<String>) {
    val folder = Files.createTempDirectory("bolewalk").toFile()
    try {
        val site = walk(folder.path, "${args[0]}/photos/progressive.jpg")
        damage(folder.path, site)
    } finally {
        folder.deleteRecursively()
    }
}
