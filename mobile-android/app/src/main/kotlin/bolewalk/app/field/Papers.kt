package bolewalk.app.field

import java.io.File

/** Where papers are written, to be handed on from there. */
class Papers(private val folder: File) {
    fun path(name: String): String {
        folder.mkdirs()
        return File(folder, name).path
    }
}
