//! How near a conductor somebody may come, by qualification.
//!
//! Distances are least ones for people with the stated qualification; the owner of the line
//! decides. A distance of qualified people is never given for anybody else.

use crate::record::{ElectricalLevel, VoltageBetween};

use super::rules::{Rule, RuleLabel, RuleSet};

/// The square root of three: phase to phase over phase to ground.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// What somebody must keep from a conductor.
#[derive(Debug, Clone, PartialEq)]
pub struct Approach {
    /// How far.
    pub keep: Keep,
    /// For whom the rule is.
    pub level: ElectricalLevel,
    /// The published work.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
}

/// How far to keep from a conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Keep {
    /// At least this distance in metres.
    AtLeast {
        /// Metres.
        distance_m: f64,
    },
    /// No contact; no distance is published for qualified people at this voltage.
    NoContact,
    /// Nobody knows the voltage, or no rule covers it: stay away and ask the owner.
    AskOwner,
}

/// The approach rule for a conductor. Without a voltage it is [`Keep::AskOwner`] for everybody;
/// a voltage that is not known to be to ground counts as phase to phase, which is the larger.
pub fn approach(
    voltage_kv: Option<f64>,
    between: Option<VoltageBetween>,
    level: ElectricalLevel,
    altitude_m: f64,
    rules: &RuleSet,
) -> Approach {
    let Some(kv) = voltage_kv.filter(|kv| kv.is_finite() && *kv > 0.0) else {
        return ask_owner(level, rules);
    };
    match level {
        ElectricalLevel::LineClearance => {
            qualified_approach(phase_to_phase_kv(kv, between), altitude_m, rules)
        }
        ElectricalLevel::Unqualified => general_approach(kv, rules),
    }
}

fn ask_owner(level: ElectricalLevel, rules: &RuleSet) -> Approach {
    let row = rules.row(Rule::WireConsultM);
    Approach {
        keep: Keep::AskOwner,
        level,
        source: row.source.clone(),
        label: row.label,
    }
}

/// Least distance in metres of unqualified people: 3.05 m up to 50 kV and 0.10 m more for every
/// 10 kV *or part of it* above (29 CFR 1910.333(c)(3)(i)(A), the larger of its two readings).
pub fn unqualified_distance_m(voltage_kv: f64, rules: &RuleSet) -> f64 {
    let steps = steps_over(voltage_kv, rules);
    // Counted part of a step: whole steps up.
    rules.number(Rule::WireApproachM) + rules.number(Rule::WireApproachStepM) * libm::ceil(steps)
}

/// The same rule read without steps, in metres. For comparison; the judgement takes the larger.
pub fn unqualified_distance_without_steps_m(voltage_kv: f64, rules: &RuleSet) -> f64 {
    rules.number(Rule::WireApproachM)
        + rules.number(Rule::WireApproachStepM) * steps_over(voltage_kv, rules)
}

/// The published figure in feet, by steps: 10 ft and 4 in for each. For readers in feet; distances
/// are compared in metres.
pub fn unqualified_distance_ft(voltage_kv: f64, rules: &RuleSet) -> f64 {
    10.0 + libm::ceil(steps_over(voltage_kv, rules)) * 4.0 / 12.0
}

fn steps_over(voltage_kv: f64, rules: &RuleSet) -> f64 {
    let over = voltage_kv - rules.number(Rule::WireApproachFromKv);
    // A billionth of a step is what unit conversion leaves, not a step.
    (over / rules.number(Rule::WireApproachStepKv) - 1e-9).max(0.0)
}

fn general_approach(voltage_kv: f64, rules: &RuleSet) -> Approach {
    let row = rules.row(Rule::WireApproachM);
    Approach {
        keep: Keep::AtLeast {
            distance_m: unqualified_distance_m(voltage_kv, rules),
        },
        level: ElectricalLevel::Unqualified,
        source: row.source.clone(),
        label: row.label,
    }
}

/// Phase-to-phase voltage in kilovolts; an unknown kind counts as phase to phase already.
pub fn phase_to_phase_kv(voltage_kv: f64, between: Option<VoltageBetween>) -> f64 {
    match between {
        Some(VoltageBetween::PhaseAndGround) => voltage_kv * SQRT_3,
        Some(VoltageBetween::Phases) | None => voltage_kv,
    }
}

/// Phase-to-ground voltage in kilovolts of a phase-to-phase voltage: over √3.
pub fn phase_to_ground_kv(phase_to_phase_kv: f64) -> f64 {
    phase_to_phase_kv / SQRT_3
}

/// Tables of 29 CFR 1910.269, by phase-to-phase voltage, with the larger of the two
/// exposures and the factor for the altitude.
fn qualified_approach(phase_kv: f64, altitude_m: f64, rules: &RuleSet) -> Approach {
    let level = ElectricalLevel::LineClearance;
    let band = rules
        .approach_bands()
        .iter()
        .find(|band| phase_kv <= band.to_kv + 1e-9);
    let Some(band) = band else {
        return ask_owner(level, rules);
    };
    let keep = match (band.phase_to_phase_m, altitude_factor(altitude_m, rules)) {
        (None, _) => Keep::NoContact,
        (Some(_), None) => Keep::AskOwner,
        (Some(distance), Some(factor)) => Keep::AtLeast {
            distance_m: distance.max(band.phase_to_ground_m.unwrap_or(0.0)) * factor,
        },
    };
    Approach {
        keep,
        level,
        source: band.source.clone(),
        label: band.label,
    }
}

/// Factor on the distances of qualified people for an altitude in metres; nothing above the table.
pub fn altitude_factor(altitude_m: f64, rules: &RuleSet) -> Option<f64> {
    rules
        .altitude_bands()
        .iter()
        .find(|band| altitude_m <= band.to_m)
        .map(|band| band.factor)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Id;

    fn us() -> RuleSet {
        RuleSet::shipped(&Id::default()).unwrap()
    }

    fn keep(kv: Option<f64>, between: Option<VoltageBetween>, level: ElectricalLevel) -> Keep {
        approach(kv, between, level, 0.0, &us()).keep
    }

    #[test]
    fn an_unknown_voltage_means_ask_the_owner_whoever_asks() {
        for level in [ElectricalLevel::Unqualified, ElectricalLevel::LineClearance] {
            assert_eq!(keep(None, None, level), Keep::AskOwner);
            assert_eq!(keep(Some(f64::NAN), None, level), Keep::AskOwner);
        }
        assert_eq!(
            keep(Some(1000.0), None, ElectricalLevel::LineClearance),
            Keep::AskOwner
        );
    }

    #[test]
    fn an_unqualified_person_never_reads_a_qualified_distance() {
        // 29 CFR 1910.333(c)(3)(i)(A): never under 10 ft.
        let rules = us();
        for kv in [0.12, 0.48, 7.2, 12.47, 34.5, 69.0, 138.0, 500.0] {
            let given = approach(Some(kv), None, ElectricalLevel::Unqualified, 0.0, &rules);
            assert!(matches!(given.keep, Keep::AtLeast { distance_m } if distance_m >= 3.05));
        }
    }

    #[test]
    fn a_voltage_to_ground_is_brought_to_phase_to_phase_for_the_tables() {
        // 7.2 kV to ground is 12.47 kV phase to phase: 5.1 to 15.0 kV, 0.68 m (Table R-6).
        let level = ElectricalLevel::LineClearance;
        let ground = keep(Some(7.2), Some(VoltageBetween::PhaseAndGround), level);
        assert_eq!(ground, Keep::AtLeast { distance_m: 0.68 });
        assert_eq!(keep(Some(0.2), None, level), Keep::NoContact);
    }
}
