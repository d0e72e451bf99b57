//! What every command asks, one file a noun.

mod aloft;
mod anchor;
mod book;
mod codebook;
mod crew;
mod field;
mod finding;
mod inspection;
mod measures;
mod measuring;
mod paper;
mod photo;
mod section;
mod site;
mod tree;
mod visit;

use super::ask::Ask;
use super::command_kind::CommandKind;

/// What a command asks, in order.
pub fn asks_of(command: CommandKind) -> &'static [Ask] {
    use CommandKind as C;
    match command {
        C::ChangeSettings => book::SETTINGS,
        C::AddCode => codebook::ADD,
        C::ChangeCode => codebook::CHANGE,
        C::ChangeRule => codebook::RULE,
        C::AddPerson | C::ChangePerson => crew::PERSON,
        C::SignOffSkill => crew::SIGN_OFF,
        C::LogClimb | C::ChangeClimb => crew::CLIMB,
        C::AddGear | C::ChangeGear => crew::GEAR,
        C::CheckGear => crew::CHECK,
        C::PutGearOut => crew::PUT_OUT,
        C::AddSite | C::ChangeSite => site::SITE,
        C::WriteRescuePlan => site::RESCUE,
        C::AddTarget | C::ChangeTarget => site::TARGET,
        C::AddOverheadLine | C::ChangeOverheadLine => site::LINE,
        C::AddPermission | C::ChangePermission => site::PERMISSION,
        C::StartVisit => visit::VISIT,
        C::NoteWeather => visit::WEATHER,
        C::AddTree => tree::ADD,
        C::ChangeTree => tree::CHANGE,
        C::AddWork | C::ChangeWork => tree::WORK,
        C::StopOnSight => field::STOP_ON_SIGHT,
        C::RecordTriage => field::TRIAGE,
        C::RecordFullCheck => field::FULL_CHECK,
        C::LookAgain => inspection::LOOK,
        C::StartInspection => inspection::START,
        C::RecordMeasures => inspection::MEASURES,
        C::RecordHeightByAngles => measuring::HEIGHT_BY_ANGLES,
        C::RecordHeightFromTwoPositions => measuring::HEIGHT_FROM_TWO_POSITIONS,
        C::RecordLeanFromTwoSides => measuring::LEAN_FROM_TWO_SIDES,
        C::RecordLeanByEye => measuring::LEAN_BY_EYE,
        C::RecordGirth => measuring::GIRTH,
        C::LookAtPart => inspection::LOOK,
        C::MeasureWire => inspection::WIRE,
        C::AddFinding => finding::ADD,
        C::ChangeFinding => finding::CHANGE,
        C::GradeFinding => finding::GRADE,
        C::ClearFinding => finding::CLEAR,
        C::FindAloft => finding::ADD,
        C::LandElsewhere => aloft::LAND,
        C::NoteNearMiss => aloft::NEAR_MISS,
        C::ShockGear => aloft::SHOCK,
        C::LeaveWork => aloft::LEAVE,
        C::SetNextLook => aloft::NEXT_LOOK,
        C::AddSection | C::ChangeSection => section::SECTION,
        C::SoundSection => section::SOUND,
        C::ReadWall => section::READING,
        C::AddAnchor | C::ChangeAnchor => anchor::ANCHOR,
        C::TestAnchor => anchor::TEST,
        C::PlanClimb | C::ChangePlan => anchor::PLAN,
        C::AddLimb => anchor::LIMB,
        C::AddPhoto => photo::ADD,
        C::ChangePhoto => photo::CHANGE,
        C::AddRisk => photo::RISK,
        C::WriteSummary => paper::SUMMARY,
        C::WriteClimbSheets => paper::CLIMB_SHEETS,
        C::StartFullCheck
        | C::RemoveNearMiss
        | C::ImportGround
        | C::FinishWork
        | C::SameWeather
        | C::Undo
        | C::Redo
        | C::SettleValue
        | C::KeepRemoved
        | C::RemoveAnew
        | C::RetireCode
        | C::BringCodeBack
        | C::MoveCodeUp
        | C::MoveCodeDown
        | C::ResetRule
        | C::RemovePerson
        | C::RemoveSignOff
        | C::RemoveClimb
        | C::BringGearBack
        | C::RemoveGear
        | C::RemoveSite
        | C::RemoveTarget
        | C::RemoveOverheadLine
        | C::RemovePermission
        | C::RemoveTree
        | C::RemoveWork
        | C::RemoveWire
        | C::RemoveInspection
        | C::RemoveFinding
        | C::RemoveReading
        | C::RemoveSection
        | C::RemoveAnchor
        | C::ForgetLimbs
        | C::RemovePlan
        | C::RemovePhoto
        | C::RemoveRisk
        | C::SignJudgement
        | C::WriteTable
        | C::WriteGeoJson
        | C::WriteGeoPackage
        | C::WritePack
        | C::ReadPack
        | C::ImportSiteFile
        | C::MakeBackup
        | C::WriteDamaged => &[],
    }
}
