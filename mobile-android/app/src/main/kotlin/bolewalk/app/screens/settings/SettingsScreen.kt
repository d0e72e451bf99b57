package bolewalk.app.screens.settings

import androidx.compose.foundation.lazy.LazyListScope
import bolewalk.app.look.Hand
import bolewalk.app.look.Lines
import bolewalk.app.screens.Placed
import bolewalk.app.screens.part
import bolewalk.app.screens.ways
import bolewalk.book.SettingsPage

/** This phone's settings. */
fun LazyListScope.settingsPage(page: SettingsPage, hand: Hand, placed: Placed) {
    placed.heading(this, "lines", page.lines.isEmpty())
    part("lines") { Lines(page.lines) }
    placed.heading(this, "ways", page.ways.isEmpty())
    ways(page.ways, hand)
    placed.rest(this)
}
