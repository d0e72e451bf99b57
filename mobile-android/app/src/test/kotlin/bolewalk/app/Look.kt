package bolewalk.app

import bolewalk.book.CommandKind
import bolewalk.book.Entry
import bolewalk.book.EntryValue
import org.robolectric.RuntimeEnvironment

/** How the screens are looked at: the phone's own settings, and the app's. */
enum class Look(
    private val qualifiers: String = "",
    private val fontScale: Float = 1f,
    private val theme: String? = null,
    private val language: String? = null,
    /** How many screenfuls of a state are pictured at most. */
    val screenfuls: Int = 9,
) {
    LIGHT,
    DARK("+night", theme = "dark", screenfuls = 0),
    SUN(theme = "bright_sun", screenfuls = 1),
    LARGE(fontScale = 2f, screenfuls = 1),
    SPANISH("+es", language = "spanish", screenfuls = 1);

    /** Sets the phone; before a window is opened. */
    fun setPhone() {
        if (qualifiers.isNotEmpty()) RuntimeEnvironment.setQualifiers(qualifiers)
        RuntimeEnvironment.setFontScale(fontScale)
    }

    /** Sets the app; metres and centimetres, as the demo property is measured. */
    fun setBook() = setBook(*listOfNotNull("units" to "metric", theme?.let { "theme" to it }, language?.let { "language" to it }).toTypedArray())

    override fun toString() = name.lowercase()
}

/** Changes this phone's settings, each by its name and the id of a choice. */
fun setBook(vararg choices: Pair<String, String>) {
    val entries = choices.map { (name, choice) -> Entry("settings.$name", EntryValue.Choice(choice)) }
    app.keeper.book().act(CommandKind.CHANGE_SETTINGS, "", entries, "settings $entries ${System.nanoTime()}")
}
