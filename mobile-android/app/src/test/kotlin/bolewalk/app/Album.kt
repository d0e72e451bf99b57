package bolewalk.app

import java.io.File

/** The committed pictures. `build.py pictures` takes them anew. */
object Album {
    /** What may differ, in pixels of the small picture: less than the shortest word or the smallest sign has ([AlbumTest]). */
    const val TOLERANCE = 40

    private val anew = System.getProperty("bolewalk.pictures.anew") == "true"
    private val committed = File(root, "mobile-android/pictures")

    /** Where a picture goes that is not as committed, to be looked at. */
    private val aside = File(checkNotNull(System.getProperty("bolewalk.pictures")) { "bolewalk.pictures is not set" })

    /** What is wrong with a picture; nothing where it is as committed. */
    fun compare(name: String, taken: Picture): String? {
        val (file, small) = File(committed, "$name.png") to taken.small()
        if (anew) {
            small.write(file)
            return null
        }
        if (!file.exists()) return "$name: there is no picture of it".also { small.write(File(aside, "$name.png")) }
        val differs = small.differs(Picture.read(file))
        if (differs <= TOLERANCE) return null
        small.write(File(aside, "$name.png"))
        return "$name: $differs pixels are not as committed; see ${File(aside, "$name.png")}"
    }
}
