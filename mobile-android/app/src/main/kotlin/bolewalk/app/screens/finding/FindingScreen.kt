package bolewalk.app.screens.finding

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.GradeTiles
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.look.PhotoCard
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.book.CommandKind
import bolewalk.book.FindingPage

/** A finding: its grades first, each with its sentence, then its place and its photos. */
fun LazyListScope.findingPage(page: FindingPage, hand: Hand, placed: Placed) {
    placed.take(CommandKind.GRADE_FINDING)?.let { offer -> part("grades") { GradeTiles(page.grades, offer, hand) } }
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.heading(this, "photos", page.photos.isEmpty())
    page.photos.forEach { photo -> item("photo." + photo.id, "photo") { PhotoCard(photo, hand) } }
    placed.rest(this)
}
