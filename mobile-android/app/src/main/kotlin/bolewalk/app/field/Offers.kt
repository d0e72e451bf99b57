package bolewalk.app.field

import bolewalk.book.Offer
import bolewalk.book.Page
import bolewalk.book.PagePhoto
import bolewalk.book.PageRecord

/** Every offer of a page, those of its records too. */
fun allOffers(page: Page): List<Offer> = page.offers() + when (page) {
    is Page.Book -> page.v1.crew.flatMap { it.offers + of(it.signOffs) } + of(page.v1.gear)
    is Page.Site -> with(page.v1) { of(unsettled, targets, overheadLines, permissions) }
    is Page.Tree -> with(page.v1) { of(findings, sections, anchors, plans, work, risks, history) + ofPhotos(photos) }
    is Page.Finding -> ofPhotos(page.v1.photos)
    is Page.Anchor, is Page.Judgement, is Page.HandOver -> emptyList()
}

private fun of(vararg lists: List<PageRecord>) = lists.flatMap { list -> list.flatMap { it.offers } }

private fun ofPhotos(photos: List<PagePhoto>) = photos.flatMap { it.offers }
