package bolewalk.app.field

import java.io.File

/** Where papers are written, to be handed on from there. [written] is what is said when one is. */
class Papers(private val folder: File, val written: String) {
    fun path(name: String): String {
        folder.mkdirs()
        return File(folder, name).path
    }
}
