package bolewalk.app

import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasAnyDescendant
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.hasText
import bolewalk.app.device.Heard
import bolewalk.app.device.HowHeld
import bolewalk.app.device.PlaceFix
import bolewalk.book.InputKind
import bolewalk.book.OfferedChoice
import bolewalk.book.OfferedInput
import java.io.File

/** Walks a journey through the real activity: what it taps it finds by tag, what it sees stands on the screen. */
class JourneyWalker(private val walk: Walk, private val journey: Journey) {
    private val phones = mutableSetOf(app.phone)

    /** The pack that was written last, on whichever phone. */
    private var pack: File? = null

    init {
        app.clock.setTo(moment(journey.clock))
        walk.units(journey.units)
    }

    fun step(step: Step) {
        step.phone?.let {
            closeForm()
            walk.takeUp(it)
            if (phones.add(it)) walk.units(journey.units)
        }
        step.clock?.let {
            app.clock.setTo(moment(it))
            walk.away()
        }
        step.fault?.let(::fault)
        step.open?.let { open(it, step.of) }
        step.tap?.let { take(it, step) }
        val missing = step.see.filterNot(::seen).let { left ->
            if (left.isNotEmpty()) closeForm()
            left.filterNot(::seen)
        }
        check(missing.isEmpty()) { "not to be seen: $missing; said: ${walk.state.said?.words}" }
        if (step.notSee.isNotEmpty()) closeForm()
        step.notSee.forEach { check(!seen(it)) { "to be seen: $it" } }
    }

    private fun seen(text: String) = walk.sees(text)

    private fun closeForm() {
        if (walk.state.form != null) walk.tap("form.close")
    }

    private fun fault(fault: String) {
        closeForm()
        when (fault) {
            "disk_full" -> app.keeper.book().boundPages(1u)
            "disk_free" -> app.keeper.book().boundPages(0u)
            "restart" -> walk.endOfProcess(orderly = true)
            "kill" -> walk.endOfProcess(orderly = false)
            else -> error("unknown fault $fault")
        }
    }

    private fun open(page: String, of: String?) {
        closeForm()
        walk.to(page, of)
    }

    /** Stands in a record that shows these words. */
    private fun recordShows(words: String) = hasAnyAncestor(isRecord and hasAnyDescendant(hasText(words, substring = true)))

    private fun take(offer: String, step: Step) {
        closeForm()
        // A tile that says all of it is the shorter way.
        val tile = hasTestTag((listOf(offer) + step.enter.values).joinToString("/"))
        val times = if (step.twice) 2 else 1
        if (step.enter.isNotEmpty() && step.sense.isEmpty() && walk.exists(tile)) {
            walk.tap(tile, times)
            return
        }
        val button = hasTestTag(offer)
        val meant = step.about?.let { button and recordShows(it) } ?: button
        val asksNothing = step.enter.isEmpty() && step.sense.isEmpty()
        app.doubles.next = step.file?.let { File(root, it) } ?: pack
        walk.tap(meant, if (asksNothing) times else 1)
        keepPack()
        if (walk.state.form == null) {
            check(asksNothing) { "$offer opened no form: ${walk.state.said?.words}" }
            return
        }
        // A step says all that it enters, whatever was left in the form before.
        if (walk.state.form?.fromBefore == true) walk.tap("form.start_anew")
        // From the top of the form downward, for what one input offers follows from those above it.
        val order = walk.state.form?.offer?.inputs.orEmpty().map { it.id }
        step.enter.keys.sortedBy(order::indexOf).forEach { enter(inputOf(it), step.enter.getValue(it)) }
        step.sense.forEach(::sense)
        walk.tap(hasTestTag("form.confirm"), times)
    }

    private fun keepPack() {
        val written = walk.state.written?.let(::File)?.takeIf { it.extension == "bolewalk-pack" } ?: return
        pack = written.copyTo(File(app.cacheDir, "given/last.bolewalk-pack"), overwrite = true)
    }

    private fun inputOf(id: String): OfferedInput = checkNotNull(walk.state.form?.offer?.inputs?.find { it.id == id }) { "no input $id" }

    private fun enter(input: OfferedInput, value: Any) {
        when (val kind = input.kind) {
            is InputKind.Choice -> choose(input, kind.choices, "$value")
            is InputKind.Choices -> choices(value).forEach { choose(input, kind.choices, it) }
            is InputKind.YesNo -> walk.tap("${input.id}/$value")
            is InputKind.Number -> if (walk.exists(hasTestTag("${input.id}/$value"))) walk.tap("${input.id}/$value") else walk.type(input.id, "$value")
            is InputKind.Search -> kind.first.find { it.words == value }?.let { walk.tap("${input.id}/${it.id}") } ?: walk.type(input.id, "$value")
            is InputKind.Words, is InputKind.Bearing, is InputKind.Tilt, is InputKind.OnDay, is InputKind.Fix -> walk.type(input.id, "$value")
            is InputKind.PhotoFile, is InputKind.Outline -> error("${input.id} is sensed, not entered")
        }
    }

    private fun choose(input: OfferedInput, choices: List<OfferedChoice>, wanted: String) {
        val choice = checkNotNull(choices.find { it.id == wanted || it.words.equals(wanted, ignoreCase = true) }) { "$wanted is none of the choices" }
        val tile = hasTestTag("${input.id}/${choice.id}")
        if (!walk.exists(tile)) {
            if (walk.exists(hasTestTag("${input.id}/more"))) walk.tap("${input.id}/more") else walk.type("${input.id}/search", choice.words)
        }
        walk.tap(tile)
    }

    private fun sense(sensed: Sensed) {
        inputOf(sensed.into)
        val (place, held) = app.doubles.place to app.doubles.held
        (sensed.fixes ?: sensed.fix?.let { listOf(it + 1.0) })?.let { fixes ->
            place.say(null)
            walk.tap("${sensed.into}/sense")
            fixes.forEach { (lat, lon, accuracy, seconds) ->
                place.say(Heard.Value(PlaceFix(lat, lon, accuracy, (seconds * 1000).toLong())))
                walk.settle()
            }
            walk.tap("${sensed.into}/sense")
        }
        sensed.outline?.forEach { (lat, lon) ->
            place.say(Heard.Value(PlaceFix(lat, lon, 3.0, 0)))
            walk.tap("${sensed.into}/sense")
        }
        val turned = sensed.tilt?.let { HowHeld(it, 0.0) } ?: sensed.bearing?.let { HowHeld(0.0, it) }
        turned?.let {
            held.say(Heard.Value(it))
            walk.settle()
            walk.tap("${sensed.into}/sense")
        }
        sensed.photo?.let {
            app.doubles.next = File(root, it)
            walk.tap("${sensed.into}/take")
        }
    }
}
