package bolewalk.app

import java.io.File
import org.tomlj.Toml
import org.tomlj.TomlArray
import org.tomlj.TomlTable

/** The root of the repository. */
val root: File get() = File(System.getProperty("bolewalk.root") ?: error("bolewalk.root is not set"))

/** A journey, as tests/journeys/README.md fixes it. An unknown key fails. */
class Journey(file: File) {
    private val toml = Toml.parse(file.toPath()).also { read -> check(!read.hasErrors()) { "$file: ${read.errors()}" } }
    val units: String = toml.getString("units") ?: "metric"
    val clock: String = checkNotNull(toml.getString("clock"))
    val steps: List<Step> = checkNotNull(toml.getArray("step")).tables().map(::Step)

    init {
        check(toml.getLong("format") == 1L) { "$file has another format" }
        known(toml, "format", "title", "units", "language", "clock", "step")
    }
}

class Step(toml: TomlTable) {
    val open: String? = toml.getString("open")
    val of: String? = toml.getString("of")
    val tap: String? = toml.getString("tap")
    val about: String? = toml.getString("about")
    val twice: Boolean = toml.getBoolean("twice") ?: false
    val phone: String? = toml.getString("phone")
    val file: String? = toml.getString("file")
    val clock: String? = toml.getString("clock")
    val fault: String? = toml.getString("fault")
    val see: List<String> = texts(toml, "see")
    val notSee: List<String> = texts(toml, "not_see")

    /** What is typed or chosen, by input, in the order of the file. */
    val enter: Map<String, Any> = toml.getTable("enter")?.let { table -> table.keySet().associateWith { checkNotNull(table.get(listOf(it))) } }.orEmpty()
    val sense: List<Sensed> = toml.getArray("sense")?.tables().orEmpty().map(::Sensed)

    init {
        known(toml, "open", "of", "tap", "about", "twice", "phone", "file", "clock", "fault", "see", "not_see", "enter", "sense")
    }

    override fun toString() = listOfNotNull(open?.let { "open $it" }, of, tap?.let { "tap $it" }, about, fault).joinToString(" ")
}

class Sensed(toml: TomlTable) {
    val into: String = checkNotNull(toml.getString("into"))
    val fix: List<Double>? = toml.getArray("fix")?.numbers()
    val fixes: List<List<Double>>? = toml.getArray("fixes")?.let { fixes -> List(fixes.size()) { fixes.getArray(it).numbers() } }
    val tilt: Double? = toml.get("tilt")?.let(::number)
    val bearing: Double? = toml.get("bearing")?.let(::number)
    val photo: String? = toml.getString("photo")
    val outline: List<List<Double>>? = toml.getArray("outline")?.let { points -> List(points.size()) { points.getArray(it).numbers() } }

    init {
        known(toml, "into", "fix", "fixes", "tilt", "bearing", "photo", "outline")
    }
}

private fun known(toml: TomlTable, vararg names: String) = check(names.toSet().containsAll(toml.keySet())) {
    "unknown key: ${toml.keySet() - names.toSet()}"
}

private fun TomlArray.tables() = List(size()) { getTable(it) }

private fun TomlArray.numbers() = List(size()) { number(get(it)) }

private fun number(value: Any): Double = (value as Number).toDouble()

private fun texts(toml: TomlTable, name: String): List<String> = when (val value = toml.get(name)) {
    null -> emptyList()
    is TomlArray -> List(value.size()) { value.getString(it) }
    else -> listOf(value as String)
}

/** The texts of a list of choices. */
fun choices(value: Any): List<String> = if (value is TomlArray) List(value.size()) { value.getString(it) } else listOf("$value")
