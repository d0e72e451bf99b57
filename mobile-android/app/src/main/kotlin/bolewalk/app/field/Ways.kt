package bolewalk.app.field

import bolewalk.book.CommandKind
import bolewalk.book.CommandKind.*
import bolewalk.book.Entry
import bolewalk.book.FieldBook
import bolewalk.book.MapFileKind

/** How a command is carried out. */
sealed interface Way {
    /** Takes back or does again: stands at the foot of every page. */
    data object Step : Way

    /** Makes a record: what the form shows is proposed, and is sent along as it stands. */
    data object Make : Way

    /** Changes what is there: only what the person entered is sent. */
    data object Change : Way

    /** Removes; undo brings it back, so nothing is asked twice. */
    data object Remove : Way

    /** Long work that writes a file to be handed on; gives what is to be said, nothing where that is plain. */
    class Write(val name: String, val write: FieldBook.(site: String, path: String, chosen: List<Entry>) -> String?) : Way

    /** Long work that takes a file of the person's choice in; gives what is to be said. */
    class BringIn(val read: FieldBook.(about: String, path: String) -> String) : Way

    /** Long work that copies the book. */
    data object Backup : Way
}

/** Every command has its way, so that the compiler refuses a shell that forgets one. */
fun wayOf(command: CommandKind): Way = when (command) {
    UNDO, REDO -> Way.Step
    ADD_PERSON, SIGN_OFF_SKILL, LOG_CLIMB, ADD_GEAR, ADD_CODE, ADD_SITE, ADD_TARGET, ADD_OVERHEAD_LINE, ADD_PERMISSION,
    ADD_TREE, ADD_WORK, STOP_ON_SIGHT, START_FULL_CHECK, START_INSPECTION, LOOK_AT_PART, LOOK_AGAIN, SAME_WEATHER,
    RECORD_HEIGHT_BY_ANGLES, RECORD_HEIGHT_FROM_TWO_POSITIONS, RECORD_LEAN_FROM_TWO_SIDES, RECORD_LEAN_BY_EYE,
    MEASURE_WIRE, ADD_FINDING, ADD_SECTION, READ_WALL, ADD_ANCHOR, PLAN_CLIMB, ADD_LIMB, ADD_PHOTO, ADD_RISK,
    SIGN_JUDGEMENT, FIND_ALOFT, LAND_ELSEWHERE, NOTE_NEAR_MISS,
    -> Way.Make
    CHANGE_SETTINGS, SETTLE_VALUE, KEEP_REMOVED, CHANGE_PERSON, CHANGE_CLIMB, CHANGE_GEAR, CHECK_GEAR, PUT_GEAR_OUT,
    BRING_GEAR_BACK, SHOCK_GEAR, CHANGE_CODE, BRING_CODE_BACK, MOVE_CODE_UP, MOVE_CODE_DOWN, CHANGE_RULE, RESET_RULE,
    CHANGE_SITE, WRITE_RESCUE_PLAN, CHANGE_TARGET, CHANGE_OVERHEAD_LINE, CHANGE_PERMISSION, START_VISIT, NOTE_WEATHER,
    CHANGE_TREE, CHANGE_WORK, FINISH_WORK, LEAVE_WORK, RECORD_TRIAGE, RECORD_FULL_CHECK, RECORD_MEASURES, RECORD_GIRTH,
    CHANGE_FINDING, GRADE_FINDING, CLEAR_FINDING, CHANGE_SECTION, SOUND_SECTION, CHANGE_ANCHOR, TEST_ANCHOR, CHANGE_PLAN,
    CHANGE_PHOTO, SET_NEXT_LOOK,
    -> Way.Change
    REMOVE_ANEW, REMOVE_PERSON, REMOVE_SIGN_OFF, REMOVE_CLIMB, REMOVE_GEAR, RETIRE_CODE, REMOVE_SITE, REMOVE_TARGET,
    REMOVE_OVERHEAD_LINE, REMOVE_PERMISSION, REMOVE_TREE, REMOVE_WORK, REMOVE_WIRE, REMOVE_INSPECTION, REMOVE_FINDING, REMOVE_READING,
    REMOVE_SECTION, REMOVE_ANCHOR, FORGET_LIMBS, REMOVE_PLAN, REMOVE_PHOTO, REMOVE_RISK, REMOVE_NEAR_MISS,
    -> Way.Remove
    WRITE_SUMMARY -> written("site-summary.pdf") { site, path, chosen -> writeSummary(site, path, chosen) }
    WRITE_CLIMB_SHEETS -> written("climb-sheets.pdf") { site, path, chosen -> writeClimbSheets(site, path, chosen) }
    WRITE_TABLE -> written("trees.csv") { site, path, _ -> writeMapFile(site, MapFileKind.CSV, path) }
    WRITE_GEO_JSON -> written("trees.geojson") { site, path, _ -> writeMapFile(site, MapFileKind.GEO_JSON, path) }
    WRITE_GEO_PACKAGE -> written("trees.gpkg") { site, path, _ -> writeMapFile(site, MapFileKind.GEO_PACKAGE, path) }
    WRITE_PACK -> Way.Write("site.bolewalk-pack") { site, path, _ -> writePack(site, path).words }
    IMPORT_SITE_FILE -> Way.BringIn { _, path -> importSiteFile(path).words }
    IMPORT_GROUND -> Way.BringIn { site, path -> importGround(site, path).words }
    READ_PACK -> Way.BringIn { _, path -> with(readPack(path)) { (listOf(words) + notices).joinToString("\n") } }
    MAKE_BACKUP -> Way.Backup
    WRITE_DAMAGED -> written("damaged-field-book.zip") { _, path, _ -> writeDamaged(path) }
}

private fun written(name: String, write: FieldBook.(String, String, List<Entry>) -> Unit) = Way.Write(name) { site, path, chosen ->
    write(site, path, chosen)
    null
}
