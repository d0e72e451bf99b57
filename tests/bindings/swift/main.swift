// One walk through the border in Swift: a site, a tree, a finding, a photo, the judgement, the
// summary while asking how far it is, and every kind of error. Prints a line a check.

import BolewalkCore
import Foundation

func check(_ what: String, _ held: Bool) {
    if !held {
        print("FAILED: Swift: \(what)")
        exit(1)
    }
    print("ok: Swift: \(what)")
}

func fails(
    _ what: String, _ kind: String, _ book: FieldBook?, _ isKind: (BookError) -> Bool,
    _ act: () throws -> Void
) {
    do {
        try act()
        check("\(what) is \(kind)", false)
    } catch let known as BookError {
        check("\(what) is \(kind)", isKind(known))
        // A book that did not open has no words of its own.
        let said = try? book?.wordsOf(error: known) ?? wordsOfError(error: known, languageTag: "es_MX")
        check("\(what) has its words", (said ?? "").count > 20)
    } catch {
        check("\(what) is \(kind), not \(error)", false)
    }
}

final class Hand {
    let book: FieldBook
    private var taps = 0

    init(_ book: FieldBook) { self.book = book }

    @discardableResult
    func act(_ command: CommandKind, _ about: String, _ entries: [(String, EntryValue)] = []) throws
        -> Done
    {
        taps += 1
        return try book.act(
            command: command, about: about,
            entries: entries.map { Entry(input: $0.0, value: $0.1) },
            offerToken: "swift-\(taps)")
    }
}

/// Long work on a thread of its own; its error, once it has ended.
final class Work: @unchecked Sendable {
    private let lock = NSLock()
    private let ended = DispatchSemaphore(value: 0)
    private var failure: Error?
    private var alive = true

    init(_ work: @escaping @Sendable () throws -> Void) {
        Thread.detachNewThread { [self] in
            var met: Error?
            do { try work() } catch { met = error }
            lock.withLock {
                failure = met
                alive = false
            }
            ended.signal()
        }
    }

    var isAlive: Bool { lock.withLock { alive } }
    var error: Error? { lock.withLock { failure } }

    func join() { ended.wait() }
}

func sizeOf(_ path: String) -> Int {
    let facts = try? FileManager.default.attributesOfItem(atPath: path)
    return (facts?[.size] as? NSNumber)?.intValue ?? 0
}

func walk(_ folder: String, _ photo: String) throws -> String {
    check(
        "the shell's words are there before any book",
        try wordsOfShell(languageTag: "es-MX").keep == "Guardar")
    let book = try FieldBook.open(folder: folder, device: "phone")
    check(
        "the shell's words are the reader's",
        try book.shellWords() == wordsOfShell(languageTag: "en-US"))
    let hand = Hand(book)
    let site = try hand.act(.addSite, "", [("site.name", .words(text: "Heron Mill"))]).record
    let tree = try hand.act(
        .addTree, site,
        [
            ("tree.tag", .words(text: "1")), ("tree.species", .words(text: "Quercus rubra")),
            ("tree.position", .fix(latDeg: 42.3314, lonDeg: -71.1211, accuracyM: 4.0)),
        ]
    ).record
    try hand.act(.startVisit, site)
    let inspection = try hand.act(
        .startInspection, tree, [("inspection.level", .choice(id: "full_check"))]
    ).record
    try hand.act(
        .addFinding, inspection,
        [
            ("finding.code", .choice(id: "hanger")), ("finding.part", .choice(id: "crown")),
            ("finding.grade", .choice(id: "2")), ("finding.height", .number(typed: "12 m")),
        ])
    let taken = try hand.act(.addPhoto, inspection, [("photo.file", .photoFile(path: photo))])
    check("a photo is taken in", !taken.record.isEmpty)

    guard case .tree(let page) = try book.page(address: .tree(tree: tree)) else {
        check("the tree's page", false)
        exit(1)
    }
    check(
        "the tree's page shows the finding and the photo",
        page.findings.count == 1 && page.photos.count == 1)
    check("the tree's page offers something", page.offers.contains { $0.enabled })
    guard case .judgement(let judged) = try book.page(address: .judgement(tree: tree)) else {
        check("the judgement's page", false)
        exit(1)
    }
    check("a hanger bars the climb", judged.verdict == .barred && !judged.stops.isEmpty)

    let pdf = folder + "/summary.pdf"
    let writer = Work { try book.writeSummary(site: site, path: pdf) }
    var asked = 0
    while writer.isAlive {
        _ = try book.howFar()
        asked += 1
        usleep(1000)
    }
    writer.join()
    check("the summary is written while asking how far it is", sizeOf(pdf) > 10_000 && asked > 0)
    let after = try book.howFar()
    check("the work has come to its end", !after.running && after.done == after.of)
    try errors(book, hand, site, folder)
    return site
}

func errors(_ book: FieldBook, _ hand: Hand, _ site: String, _ folder: String) throws {
    fails("a tree without a tag", "Refused", book, { if case .Refused = $0 { true } else { false } })
    {
        try hand.act(.addTree, site)
    }
    fails(
        "a tree that is not there", "NotFound", book,
        { if case .NotFound = $0 { true } else { false } }
    ) {
        _ = try book.page(address: .tree(tree: "none"))
    }
    fails(
        "a folder as a site file", "Unreadable", book,
        { if case .Unreadable = $0 { true } else { false } }
    ) {
        _ = try book.importSiteFile(path: folder)
    }
    fails(
        "a summary into nowhere", "Unwritable", book,
        { if case .Unwritable = $0 { true } else { false } }
    ) {
        try book.writeSummary(site: site, path: folder + "/no/such/folder/summary.pdf")
    }
    fails(
        "a clock beyond the calendar", "Defect", book,
        { if case .Defect = $0 { true } else { false } }
    ) {
        _ = try FixedClock.at(moment: Moment(utcMs: Int64.max, offsetMin: 0))
    }
    try book.boundPages(pages: 1)
    fails(
        "an edit on a full disk", "DiskFull", book,
        { if case .DiskFull = $0 { true } else { false } }
    ) {
        for number in 0..<200 {
            try hand.act(.addTree, site, [("tree.tag", .words(text: "full \(number)"))])
        }
    }
    try book.boundPages(pages: 0)
    try busyAndStopped(book, folder)
}

/// A large site, so that its summary takes long enough to be met and stopped.
func busyAndStopped(_ book: FieldBook, _ folder: String) throws {
    let trees = (1...600).map {
        """
        {"tag":"\($0)","species":"Acer rubrum","inspections":[{"visit":"2026-05-14","level":"triage",
        "findings":[{"code":"dead-limb","part":"limb","grade":1,"height_m":6}]}]}
        """
    }.joined(separator: ",")
    let file = folder + "/large.json"
    let text = """
        {"format":1,"site":{"name":"Long Row","visits":[{"day":"2026-05-14"}],"trees":[\(trees)]}}
        """
    try text.write(toFile: file, atomically: true, encoding: .utf8)
    let site = try book.importSiteFile(path: file).record
    let pdf = folder + "/long.pdf"
    let writer = Work { try book.writeSummary(site: site, path: pdf) }
    while writer.isAlive, try !book.howFar().running { usleep(50) }
    fails("a second long work", "Busy", book, { if case .Busy = $0 { true } else { false } }) {
        try book.writeSummary(site: site, path: folder + "/second.pdf")
    }
    try book.stopWork()
    writer.join()
    if case .some(BookError.Stopped) = writer.error {
        check("stopped work is Stopped", true)
    } else {
        check("stopped work is Stopped, not \(String(describing: writer.error))", false)
    }
    check("stopped work leaves nothing behind", !FileManager.default.fileExists(atPath: pdf))
}

/// Writes over bytes of the book's file, as a newer version or a failing disk would.
func overwrite(_ folder: String, at offset: UInt64, with bytes: Foundation.Data) throws {
    let file = try FileHandle(forUpdating: URL(fileURLWithPath: folder + "/field-book.db"))
    try file.seek(toOffset: offset)
    try file.write(contentsOf: bytes)
    try file.close()
}

func damage(_ folder: String, _ site: String) throws {
    try wreck(folder, site)
    // The format's number stands in bytes 60 to 63 of an SQLite file.
    try overwrite(folder, at: 60, with: Foundation.Data([0, 0, 3, 1]))
    fails(
        "a book of a newer version", "Newer", nil, { if case .Newer = $0 { true } else { false } }
    ) {
        _ = try FieldBook.open(folder: folder, device: "phone")
    }
}

/// The book is let go of at the end, which closes it.
func wreck(_ folder: String, _ site: String) throws {
    let book = try FieldBook.open(folder: folder, device: "phone")
    guard case .book(let page) = try book.page(address: .book(near: nil, search: "")) else {
        check("the book's page", false)
        return
    }
    check("a restart keeps everything", page.sites.contains { $0.id == site })
    let size = sizeOf(folder + "/field-book.db")
    try overwrite(folder, at: 4096, with: Foundation.Data(repeating: 0x5a, count: size - 4096))
    fails("a wrecked book", "Damaged", book, { if case .Damaged = $0 { true } else { false } }) {
        _ = try book.backup()
    }
}

let folder = NSTemporaryDirectory() + "bolewalk-" + UUID().uuidString
try FileManager.default.createDirectory(atPath: folder, withIntermediateDirectories: true)
defer { try? FileManager.default.removeItem(atPath: folder) }
let site = try walk(folder, CommandLine.arguments[1] + "/photos/progressive.jpg")
try damage(folder, site)
