//! Readings and mallet sounds of one section, each as a wall at a bearing.

use crate::judge::rules::{Rule, RuleSet};
use crate::judge::spread::shell_se_cm;
use crate::measure::shell as reading;
use crate::record::{MalletSound, ShellReading, StemSection};

use super::run::{BearingLength, Run};
use super::shell::{ShellBasis, ShellPoint, WallSpread};

/// Bearings of the mallet clock are this far apart.
const CLOCK_STEP_DEG: f64 = 45.0;

/// A reading as a point: off-radius drill paths brought to the radius.
pub(super) fn read_point(wall: &ShellReading, radius_cm: f64, rules: &RuleSet) -> ShellPoint {
    let angle = wall.drill_angle_deg.unwrap_or(0.0);
    let wall_cm = reading::off_radius_wall_cm(radius_cm, wall.shell_cm, angle);
    let se_cm = shell_se_cm(wall, rules);
    ShellPoint {
        bearing_deg: wall.bearing_deg,
        wall_cm,
        spread: WallSpread::Normal { se_cm },
    }
}

/// The mallet clock's points that count beside readings. Without a reading all of them; beside one
/// or two readings those that are not at a reading; beside three or more only the ones that sound
/// worse than the walls read around them, so that sounding more never helps.
pub(super) fn sounded_points(
    section: &StemSection,
    read: &[ShellPoint],
    radius_cm: f64,
    rules: &RuleSet,
) -> Vec<ShellPoint> {
    let between = Run::through(
        read.iter()
            .map(|point| BearingLength {
                bearing_deg: point.bearing_deg,
                length_cm: point.wall_cm,
            })
            .collect(),
    );
    let any_sounded = section.mallet.iter().any(|m| *m != MalletSound::NotSounded);
    let sounded = section.mallet.iter().filter(|_| any_sounded);
    sounded
        .enumerate()
        .map(|(place, sound)| mallet_point(place, *sound, radius_cm, rules))
        .filter(|point| {
            let apart = |other: &ShellPoint| {
                let turn = (point.bearing_deg - other.bearing_deg).abs() % 360.0;
                turn.min(360.0 - turn) > CLOCK_STEP_DEG / 2.0
            };
            let worse = read.is_empty() || point.wall_cm < between.at(point.bearing_deg);
            read.iter().all(apart) && (read.len() < 3 || worse)
        })
        .collect()
}

fn mallet_point(place: usize, sound: MalletSound, radius_cm: f64, rules: &RuleSet) -> ShellPoint {
    let range = reading::mallet_range(sound, rules_of_mallet(rules));
    let (low_cm, high_cm) = (range.low * radius_cm, range.high * radius_cm);
    ShellPoint {
        bearing_deg: CLOCK_STEP_DEG * place as f64,
        wall_cm: (low_cm + high_cm) / 2.0,
        spread: WallSpread::Uniform { low_cm, high_cm },
    }
}

fn rules_of_mallet(rules: &RuleSet) -> reading::MalletRule {
    let range = |low, high| reading::WallRange {
        low: rules.number(low),
        high: rules.number(high),
    };
    reading::MalletRule {
        sound: range(Rule::MeasureMalletSoundLow, Rule::MeasureMalletSoundHigh),
        dull: range(Rule::MeasureMalletDullLow, Rule::MeasureMalletDullHigh),
        hollow: range(Rule::MeasureMalletHollowLow, Rule::MeasureMalletHollowHigh),
    }
}

/// What few readings leave open about the walls between them.
pub(super) fn between_cv(basis: ShellBasis, section: &StemSection, rules: &RuleSet) -> f64 {
    let sounded = section
        .mallet
        .iter()
        .filter(|m| **m != MalletSound::NotSounded)
        .count();
    match basis {
        // A full clock says how the rest of the round sounds.
        ShellBasis::OneReading | ShellBasis::TwoReadings if sounded == 8 => 0.0,
        ShellBasis::OneReading => rules.number(Rule::MeasureShellOneReadingSpread),
        ShellBasis::TwoReadings => rules.number(Rule::MeasureShellTwoReadingsSpread),
        _ => 0.0,
    }
}
