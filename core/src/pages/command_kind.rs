//! The commands that pages offer, each with its stable id.

macro_rules! commands {
    ($($(#[$doc:meta])* $kind:ident = $id:literal,)+) => {
        /// What a person can do; the offers of a page name it, and a shell draws each its own way.
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, uniffi::Enum,
        )]
        pub enum CommandKind {
            $($(#[$doc])* $kind,)+
        }

        impl CommandKind {
            /// Every command.
            pub const ALL: &'static [CommandKind] = &[$(CommandKind::$kind,)+];

            /// The stable id, `noun.verb`: test tag of its button, and first part of its words,
            /// `offer.<id>`.
            pub fn id(self) -> &'static str {
                match self {
                    $(CommandKind::$kind => $id,)+
                }
            }
        }
    };
}

commands! {
    /// Changes this phone's settings.
    ChangeSettings = "settings.change",
    /// Takes the last edit back, on a site or in the book.
    Undo = "edit.undo",
    /// Does again what was taken back last.
    Redo = "edit.redo",
    /// Makes one of several standing values count.
    SettleValue = "value.settle",
    /// Brings a record back that one removed and another changed.
    KeepRemoved = "removed.keep",
    /// Removes anew a record that another changed meanwhile.
    RemoveAnew = "removed.remove",

    /// Makes a code of the codebook.
    AddCode = "code.add",
    /// Renames a code, writes the sentences of its grades, says from which grade it stops.
    ChangeCode = "code.change",
    /// Takes a code off the tiles.
    RetireCode = "code.retire",
    /// Puts a retired code back.
    BringCodeBack = "code.bring_back",
    /// Moves a code up among the tiles.
    MoveCodeUp = "code.move_up",
    /// Moves a code down among the tiles.
    MoveCodeDown = "code.move_down",
    /// Sets the crew's own value in place of a rule set's.
    ChangeRule = "house_value.set",
    /// Lets the value that ships hold again.
    ResetRule = "house_value.reset",

    /// Makes a person of the crew.
    AddPerson = "person.add",
    /// Changes a person.
    ChangePerson = "person.change",
    /// Removes a person.
    RemovePerson = "person.remove",
    /// Confirms a skill of a person.
    SignOffSkill = "sign_off.add",
    /// Takes a sign-off off the record.
    RemoveSignOff = "sign_off.remove",
    /// Enters a climb in a person's log.
    LogClimb = "climb_log.add",
    /// Changes a climb in the log.
    ChangeClimb = "climb_log.change",
    /// Takes a climb out of the log.
    RemoveClimb = "climb_log.remove",
    /// Makes a piece of gear.
    AddGear = "gear.add",
    /// Changes a piece of gear.
    ChangeGear = "gear.change",
    /// Notes that a piece of gear was checked.
    CheckGear = "gear.check",
    /// Puts a piece of gear out of use, with the reason.
    PutGearOut = "gear.put_out",
    /// Brings a piece of gear back into use.
    BringGearBack = "gear.bring_back",
    /// Removes a piece of gear.
    RemoveGear = "gear.remove",

    /// Makes a site.
    AddSite = "site.add",
    /// Changes a site's own facts.
    ChangeSite = "site.change",
    /// Removes a site with all that lies in it.
    RemoveSite = "site.remove",
    /// Writes the rescue plan of a site.
    WriteRescuePlan = "rescue.write",
    /// Makes a target.
    AddTarget = "target.add",
    /// Changes a target.
    ChangeTarget = "target.change",
    /// Removes a target.
    RemoveTarget = "target.remove",
    /// Brings the property's edge and targets in from a map file; with a call of its own.
    ImportGround = "ground.import",
    /// Makes an overhead line.
    AddOverheadLine = "line.add",
    /// Changes an overhead line.
    ChangeOverheadLine = "line.change",
    /// Removes an overhead line.
    RemoveOverheadLine = "line.remove",
    /// Notes a permission with its answer.
    AddPermission = "permission.add",
    /// Changes a permission.
    ChangePermission = "permission.change",
    /// Removes a permission.
    RemovePermission = "permission.remove",
    /// Begins the visit of the day, or says who is there.
    StartVisit = "visit.start",
    /// Notes the weather of an hour.
    NoteWeather = "weather.note",

    /// Makes a tree on a site.
    AddTree = "tree.add",
    /// Changes a tree's own facts.
    ChangeTree = "tree.change",
    /// Removes a tree.
    RemoveTree = "tree.remove",
    /// Makes a piece of work.
    AddWork = "work.add",
    /// Changes a piece of work.
    ChangeWork = "work.change",
    /// Removes a piece of work.
    RemoveWork = "work.remove",

    /// Bars a tree for what is seen at first sight.
    StopOnSight = "stop.on_sight",
    /// Records the triage of a tree.
    RecordTriage = "triage.record",
    /// Begins the full check of a tree.
    StartFullCheck = "full_check.start",
    /// Records measures of the full check, several at once.
    RecordFullCheck = "full_check.record",
    /// Says how a part was seen when the same tree is climbed again.
    LookAgain = "again.look",
    /// Says that the weather is as it was noted last that day.
    SameWeather = "weather.same",
    /// Begins an inspection of a tree.
    StartInspection = "inspection.start",
    /// Records what was measured and seen.
    RecordMeasures = "inspection.record",
    /// Records the height from two angles and a distance.
    RecordHeightByAngles = "inspection.height_by_angles",
    /// Records the height from two positions on one line.
    RecordHeightFromTwoPositions = "inspection.height_from_two_positions",
    /// Records the lean from two sides at right angles.
    RecordLeanFromTwoSides = "inspection.lean_from_two_sides",
    /// Records the lean by eye: upright, or so much.
    RecordLeanByEye = "inspection.lean_by_eye",
    /// Records the girth.
    RecordGirth = "inspection.girth",
    /// Says how a part of the walk-round was seen.
    LookAtPart = "walk.look",
    /// Records the distance to a conductor.
    MeasureWire = "wire.measure",
    /// Removes the distance to a conductor.
    RemoveWire = "wire.remove",
    /// Removes an inspection.
    RemoveInspection = "inspection.remove",

    /// Makes a finding.
    AddFinding = "finding.add",
    /// Changes a finding's place and notes.
    ChangeFinding = "finding.change",
    /// Grades a finding.
    GradeFinding = "finding.grade",
    /// Clears a finding, by name and day.
    ClearFinding = "finding.clear",
    /// Removes a finding.
    RemoveFinding = "finding.remove",

    /// Makes a stem section.
    AddSection = "section.add",
    /// Changes a stem section.
    ChangeSection = "section.change",
    /// Records the mallet clock of a section.
    SoundSection = "section.sound",
    /// Records a reading of the sound wall.
    ReadWall = "section.read",
    /// Removes a reading.
    RemoveReading = "reading.remove",
    /// Removes a section.
    RemoveSection = "section.remove",

    /// Makes an anchor.
    AddAnchor = "anchor.add",
    /// Changes an anchor.
    ChangeAnchor = "anchor.change",
    /// Records the load test of an anchor.
    TestAnchor = "anchor.test",
    /// Removes an anchor.
    RemoveAnchor = "anchor.remove",
    /// Makes a climb plan.
    PlanClimb = "climb.add",
    /// Changes a climb plan.
    ChangePlan = "climb.change",
    /// Adds a limb that the climb has to reach.
    AddLimb = "climb.add_limb",
    /// Takes all limbs out of a plan.
    ForgetLimbs = "climb.forget_limbs",
    /// Removes a climb plan.
    RemovePlan = "climb.remove",

    /// Records what was found aloft.
    FindAloft = "aloft.find",
    /// Says that the line landed on another anchor than planned.
    LandElsewhere = "aloft.land",
    /// Notes a near miss, for the crew only.
    NoteNearMiss = "near_miss.note",
    /// Removes a near miss.
    RemoveNearMiss = "near_miss.remove",
    /// Puts gear that took a shock load out of use.
    ShockGear = "gear.shock",
    /// Says that a piece of work is done.
    FinishWork = "work.finish",
    /// Says what of a piece of work was not done, and why.
    LeaveWork = "work.leave",
    /// Says when to look again.
    SetNextLook = "next_look.set",

    /// Takes a photo in.
    AddPhoto = "photo.add",
    /// Changes a photo's caption or finding.
    ChangePhoto = "photo.change",
    /// Removes a photo.
    RemovePhoto = "photo.remove",
    /// Enters a risk rating of a named assessor.
    AddRisk = "risk.add",
    /// Removes a risk rating.
    RemoveRisk = "risk.remove",
    /// Freezes the judgement of the day, signed.
    SignJudgement = "judgement.sign",

    /// Writes the site summary; long work, with a call of its own.
    WriteSummary = "site_summary.write",
    /// Writes the climb sheets; long work, with a call of its own.
    WriteClimbSheets = "climb_sheets.write",
    /// Writes the trees as a table; long work, with a call of its own.
    WriteTable = "table.write",
    /// Writes the map as GeoJSON; long work, with a call of its own.
    WriteGeoJson = "geojson.write",
    /// Writes the map as GeoPackage; long work, with a call of its own.
    WriteGeoPackage = "geopackage.write",
    /// Writes a pack for another phone; long work, with a call of its own.
    WritePack = "pack.write",
    /// Takes a pack of another phone in; long work, with a call of its own.
    ReadPack = "pack.read",
    /// Brings a site file in; long work, with a call of its own.
    ImportSiteFile = "site_file.import",
    /// Makes a backup; long work, with a call of its own.
    MakeBackup = "book.backup",
    /// Writes the files of a damaged book into one, for someone who can repair them; long work, with
    /// a call of its own.
    WriteDamaged = "damage.write",
}

impl CommandKind {
    /// The command of this id.
    pub fn of_id(id: &str) -> Option<CommandKind> {
        CommandKind::ALL
            .iter()
            .copied()
            .find(|kind| kind.id() == id)
    }

    /// What is done, without its noun: `add`, `change`, `remove`.
    pub fn verb(self) -> &'static str {
        self.id().split_once('.').map_or("", |(_, verb)| verb)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pages::{AskKind, asks_of};
    use crate::words::{Language, UnitSystem, Words};

    fn words() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    #[test]
    fn every_command_has_an_id_of_its_own_and_words() {
        for kind in CommandKind::ALL {
            assert_eq!(CommandKind::of_id(kind.id()), Some(*kind));
            for key in [
                format!("offer.{}", kind.id()),
                format!("done.{}", kind.verb()),
            ] {
                assert!(words().has(&key), "{key}");
            }
        }
    }

    #[test]
    fn every_input_has_a_label_and_every_number_a_reason() {
        for kind in CommandKind::ALL {
            for ask in asks_of(*kind) {
                assert!(words().has(&ask.label_key()), "{}", ask.label_key());
                if let AskKind::Number(_) | AskKind::Whole(_) | AskKind::Bearing(_) = ask.kind {
                    assert!(words().has(&ask.why_key()), "{}", ask.why_key());
                }
            }
        }
    }

    #[test]
    fn inputs_of_one_command_have_ids_of_their_own() {
        for kind in CommandKind::ALL {
            let mut ids: Vec<&str> = asks_of(*kind).iter().map(|ask| ask.id).collect();
            ids.sort_unstable();
            ids.dedup();
            assert_eq!(ids.len(), asks_of(*kind).len(), "{kind:?}");
        }
    }
}
