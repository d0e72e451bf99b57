//! Which command does what.

use super::entries::Entered;
use super::fill::defect;
use super::inner::{Done, Inner};
use crate::error::BookError;
use crate::pages::{CommandKind, Entry, PageAddress};
use crate::record::{
    AnchorPoint, ClimbPlan, Gear, Id, Noun, OverheadLine, Person, RiskEntry, StemSection, Work,
};

/// What a command did: the record, and how many values were written.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Outcome {
    pub(super) record: Id,
    pub(super) changes: u32,
}

impl Inner {
    /// Takes an offer, once.
    pub(super) fn act(
        &mut self,
        command: CommandKind,
        about: &Id,
        entries: &[Entry],
        token: &str,
    ) -> Result<Done, BookError> {
        if let Some(done) = self.done_before(token) {
            return Ok(done);
        }
        let entries = self.averaged(about, entries)?;
        let entered = Entered::read(command, &entries, &self.settings.words())?;
        self.see_room()?;
        self.command = Some(command);
        let outcome = self.obey(command, about, entered);
        self.command = None;
        let outcome = outcome?;
        let done = Done {
            go_to: page_made(command, &outcome.record),
            record: outcome.record,
            words: self
                .settings
                .words()
                .say(&format!("done.{}", command.verb()), &[]),
            changes: outcome.changes,
            done_before: false,
        };
        self.remember(token, &done)?;
        self.judge_after_edit();
        Ok(done)
    }

    fn obey(&mut self, command: CommandKind, id: &Id, entered: Entered) -> Obeyed {
        use CommandKind as C;
        match command {
            C::ChangeSettings => self.act_change_settings(entered),
            C::Undo => self.act_undo(id),
            C::Redo => self.act_redo(id),
            C::SettleValue => self.act_settle_value(id),
            C::KeepRemoved => self.act_settle_removal(id, true),
            C::RemoveAnew => self.act_settle_removal(id, false),

            C::AddCode => self.act_add_code(entered),
            C::ChangeCode => self.act_change_code(id, &entered),
            C::RetireCode => self.act_retire_code(id, true),
            C::BringCodeBack => self.act_retire_code(id, false),
            C::MoveCodeUp => self.act_move_code(id, true),
            C::MoveCodeDown => self.act_move_code(id, false),
            C::ChangeRule => self.act_change_rule(id, entered),
            C::ResetRule => self.act_reset_rule(id),

            C::AddPerson => self.make_entered::<Person>(Noun::Person, None, entered),
            C::ChangePerson => self.change_entered::<Person>(Noun::Person, id, &entered),
            C::SignOffSkill => self.act_sign_off(id, entered),
            C::LogClimb => self.act_log_climb(id, entered),
            C::ChangeClimb => self.act_change_climb(id, &entered),
            C::AddGear => self.make_entered::<Gear>(Noun::Gear, None, entered),
            C::ChangeGear => self.change_entered::<Gear>(Noun::Gear, id, &entered),

            C::AddSite => self.act_add_site(entered),
            C::ChangeSite | C::WriteRescuePlan => self.act_change_site(id, &entered),
            C::AddTarget => self.act_add_target(id, entered),
            C::ChangeTarget => self.act_change_target(id, &entered),
            C::AddOverheadLine => {
                self.make_entered::<OverheadLine>(Noun::OverheadLine, Some(id), entered)
            }
            C::ChangeOverheadLine => {
                self.change_entered::<OverheadLine>(Noun::OverheadLine, id, &entered)
            }
            C::AddPermission => self.act_add_permission(id, entered),
            C::ChangePermission => self.act_change_permission(id, entered),
            C::StartVisit => self.act_start_visit(id, &entered),
            C::NoteWeather => self.act_note_weather(id, entered),

            C::AddTree => self.act_add_tree(id, entered),
            C::ChangeTree => self.act_change_tree(id, &entered),
            C::AddWork => self.make_entered::<Work>(Noun::Work, Some(id), entered),
            C::ChangeWork => self.change_entered::<Work>(Noun::Work, id, &entered),

            C::StopOnSight => self.act_stop_on_sight(id, entered),
            C::RecordTriage => self.act_record_triage(id, entered),
            C::StartFullCheck => self.act_start_full_check(id),
            C::RecordFullCheck => self.act_record_full_check(id, &entered),
            C::LookAgain => self.act_look_again(id, entered),
            C::SameWeather => self.act_same_weather(id),
            C::StartInspection => self.act_start_inspection(id, entered),
            C::RecordMeasures => self.act_record_measures(id, &entered),
            C::RecordHeightByAngles
            | C::RecordHeightFromTwoPositions
            | C::RecordLeanFromTwoSides
            | C::RecordLeanByEye
            | C::RecordGirth => self.act_take_measure(command, id, entered),
            C::LookAtPart => self.act_look_at_part(id, entered),
            C::MeasureWire => self.act_measure_wire(id, entered),

            C::AddFinding => self.act_add_finding(id, entered),
            C::ChangeFinding => self.act_change_finding(id, &entered),
            C::GradeFinding => self.act_change_finding(id, &entered.whole()?),
            C::ClearFinding => self.act_clear_finding(id, entered),

            C::FindAloft => self.act_find_aloft(id, entered),
            C::LandElsewhere => self.act_land_elsewhere(id, entered),
            C::NoteNearMiss => self.act_note_near_miss(id, entered),
            C::ShockGear => self.act_shock_gear(id, &entered),
            C::FinishWork => self.act_finish_work(id),
            C::LeaveWork => self.act_leave_work(id, entered),
            C::SetNextLook => self.act_set_next_look(id, entered),

            C::AddSection => self.make_entered::<StemSection>(Noun::StemSection, Some(id), entered),
            C::ChangeSection => self.change_entered::<StemSection>(Noun::StemSection, id, &entered),
            C::SoundSection => self.act_sound_section(id, &entered),
            C::ReadWall => self.act_read_wall(id, entered),

            C::AddAnchor => self.act_add_anchor(id, entered),
            C::ChangeAnchor => self.change_entered::<AnchorPoint>(Noun::AnchorPoint, id, &entered),
            C::TestAnchor => self.act_test_anchor(id, entered),
            C::PlanClimb => self.make_entered::<ClimbPlan>(Noun::ClimbPlan, Some(id), entered),
            C::ChangePlan => self.change_entered::<ClimbPlan>(Noun::ClimbPlan, id, &entered),
            C::AddLimb => self.act_add_limb(id, entered),
            C::ForgetLimbs => self.act_forget_limbs(id),

            C::AddPhoto => self.act_add_photo(id, entered),
            C::ChangePhoto => self.act_change_photo(id, &entered),
            C::AddRisk => self.make_entered::<RiskEntry>(Noun::RiskEntry, Some(id), entered),
            C::SignJudgement => self.act_sign_judgement(id),

            C::CheckGear => self.act_check_gear(id, entered),
            C::PutGearOut => self.change_entered::<Gear>(Noun::Gear, id, &entered.whole()?),
            C::BringGearBack => self.act_bring_gear_back(id),

            C::RemoveClimb => self.remove(Noun::LoggedClimb, id),
            C::RemovePerson => self.remove(Noun::Person, id),
            C::RemoveSignOff => self.remove(Noun::SignOff, id),
            C::RemoveGear => self.remove(Noun::Gear, id),
            C::RemoveSite => self.act_remove_site(id),
            C::RemoveTarget => self.remove(Noun::Target, id),
            C::RemoveOverheadLine => self.remove(Noun::OverheadLine, id),
            C::RemovePermission => self.remove(Noun::Permission, id),
            C::RemoveTree => self.remove(Noun::Tree, id),
            C::RemoveWork => self.remove(Noun::Work, id),
            C::RemoveWire => self.remove(Noun::WireDistance, id),
            C::RemoveInspection => self.remove(Noun::Inspection, id),
            C::RemoveFinding => self.remove(Noun::Finding, id),
            C::RemoveReading => self.remove(Noun::ShellReading, id),
            C::RemoveSection => self.remove(Noun::StemSection, id),
            C::RemoveAnchor => self.remove(Noun::AnchorPoint, id),
            C::RemovePlan => self.remove(Noun::ClimbPlan, id),
            C::RemovePhoto => self.remove(Noun::Photo, id),
            C::RemoveNearMiss => self.remove(Noun::NearMiss, id),
            C::RemoveRisk => self.remove(Noun::RiskEntry, id),

            C::WriteSummary
            | C::WriteClimbSheets
            | C::WriteTable
            | C::WriteGeoJson
            | C::WriteGeoPackage
            | C::WritePack
            | C::ReadPack
            | C::ImportGround
            | C::ImportSiteFile
            | C::MakeBackup
            | C::WriteDamaged => {
                let detail = format!("{} is long work, with a call of its own", command.id());
                Err(defect(detail))
            }
        }
    }
}

/// The page of what a command makes, where that has one to go on with.
fn page_made(command: CommandKind, made: &Id) -> Option<PageAddress> {
    match command {
        CommandKind::AddSite => Some(PageAddress::site(made)),
        CommandKind::AddTree => Some(PageAddress::Tree { tree: made.clone() }),
        CommandKind::AddPerson => Some(PageAddress::Person {
            person: made.clone(),
        }),
        _ => None,
    }
}

type Obeyed = Result<Outcome, BookError>;
