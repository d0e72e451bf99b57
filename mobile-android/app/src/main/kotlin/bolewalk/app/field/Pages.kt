package bolewalk.app.field

import bolewalk.book.Offer
import bolewalk.book.Page
import bolewalk.book.PageAddress
import bolewalk.book.PageHeading

/** The first page of all. */
val bookAddress: PageAddress = PageAddress.Book(near = null, search = "")

/** The page above a page; none above the book. */
fun Page.up(): PageAddress? = when (this) {
    is Page.Book -> null
    is Page.Settings, is Page.Codebook, is Page.RuleSet, is Page.People, is Page.Gear, is Page.Site -> bookAddress
    is Page.Person -> PageAddress.People
    is Page.Tree -> v1.sitePage
    is Page.Finding -> v1.tree
    is Page.StemSection -> v1.tree
    is Page.Anchor -> v1.tree
    is Page.Aloft -> v1.tree
    is Page.Judgement -> v1.tree
    is Page.Compare -> v1.tree
    is Page.HandOver -> v1.site
}

/** The name of a kind of page: part of the test tags of what leads there. */
fun PageAddress.kind(): String = when (this) {
    is PageAddress.Book -> "book"
    is PageAddress.Settings -> "settings"
    is PageAddress.Codebook -> "codebook"
    is PageAddress.RuleSet -> "rule_set"
    is PageAddress.People -> "people"
    is PageAddress.Person -> "person"
    is PageAddress.Gear -> "gear"
    is PageAddress.Site -> "site"
    is PageAddress.Tree -> "tree"
    is PageAddress.Finding -> "finding"
    is PageAddress.StemSection -> "stem_section"
    is PageAddress.Anchor -> "anchor"
    is PageAddress.Aloft -> "aloft"
    is PageAddress.Judgement -> "judgement"
    is PageAddress.Compare -> "compare"
    is PageAddress.HandOver -> "hand_over"
}

/** Whether two addresses lead to one page, whatever is searched for on it. */
fun PageAddress.leadsWhere(other: PageAddress): Boolean = when (this) {
    is PageAddress.Book -> other is PageAddress.Book
    is PageAddress.Site -> other is PageAddress.Site && other.site == site
    is PageAddress.Settings, is PageAddress.Codebook, is PageAddress.RuleSet, is PageAddress.People, is PageAddress.Person,
    is PageAddress.Gear, is PageAddress.Tree, is PageAddress.Finding, is PageAddress.StemSection, is PageAddress.Anchor,
    is PageAddress.Aloft, is PageAddress.Judgement, is PageAddress.Compare, is PageAddress.HandOver,
    -> this == other
}

/** The title of a page. */
fun Page.title(): String = when (this) {
    is Page.Book -> v1.title
    is Page.Settings -> v1.title
    is Page.Codebook -> v1.title
    is Page.RuleSet -> v1.title
    is Page.People -> v1.title
    is Page.Person -> v1.title
    is Page.Gear -> v1.title
    is Page.Site -> v1.title
    is Page.Tree -> v1.title
    is Page.Finding -> v1.title
    is Page.StemSection -> v1.title
    is Page.Anchor -> v1.title
    is Page.Aloft -> v1.title
    is Page.Judgement -> v1.title
    is Page.Compare -> v1.title
    is Page.HandOver -> v1.title
}

/** What a page offers, besides its records. */
fun Page.offers(): List<Offer> = when (this) {
    is Page.Book -> v1.offers
    is Page.Settings -> v1.offers
    is Page.Codebook -> v1.offers
    is Page.RuleSet -> v1.offers
    is Page.People -> v1.offers
    is Page.Person -> v1.offers
    is Page.Gear -> v1.offers
    is Page.Site -> v1.offers
    is Page.Tree -> v1.offers
    is Page.Finding -> v1.offers
    is Page.StemSection -> v1.offers
    is Page.Anchor -> v1.offers
    is Page.Aloft -> v1.offers
    is Page.Judgement -> v1.offers
    is Page.Compare -> emptyList()
    is Page.HandOver -> v1.offers
}

/** The headings of a page's lists. */
fun Page.headings(): List<PageHeading> = when (this) {
    is Page.Book -> v1.headings
    is Page.Settings -> v1.headings
    is Page.Codebook -> v1.headings
    is Page.RuleSet -> v1.headings
    is Page.People -> v1.headings
    is Page.Person -> v1.headings
    is Page.Gear -> v1.headings
    is Page.Site -> v1.headings
    is Page.Tree -> v1.headings
    is Page.Finding -> v1.headings
    is Page.StemSection -> v1.headings
    is Page.Anchor -> v1.headings
    is Page.Aloft -> v1.headings
    is Page.Judgement -> v1.headings
    is Page.Compare -> v1.headings
    is Page.HandOver -> v1.headings
}
