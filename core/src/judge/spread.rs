//! The spread of what was measured: its own standard error, else its method's from the rule set. A
//! method that nobody named counts as the least certain one.

use crate::record::{
    AnchorPoint, DiameterRead, Girth, GirthMethod, Height, HeightMethod, Lean, LeanMethod,
    ShellMethod, ShellReading,
};

use super::rules::{Rule, RuleSet};

/// Coefficient of variation of a height.
pub(crate) fn height_cv(height: &Height, rules: &RuleSet) -> f64 {
    let rule = match height.method {
        Some(HeightMethod::Tangent) => Rule::MeasureHeightTangentCv,
        Some(HeightMethod::Percent) => Rule::MeasureHeightPercentCv,
        Some(HeightMethod::Sine) => Rule::MeasureHeightSineCv,
        Some(HeightMethod::TwoPositions) => Rule::MeasureHeightTwoPositionsCv,
        Some(HeightMethod::Stick) => Rule::MeasureHeightStickCv,
        Some(HeightMethod::Tape) => Rule::MeasureHeightTapeCv,
        Some(HeightMethod::TakenOver) => Rule::MeasureHeightTakenOverCv,
        Some(HeightMethod::ByEye) | None => Rule::MeasureHeightByEyeCv,
    };
    height
        .se_m
        .map_or_else(|| rules.number(rule), |se| se / height.height_m)
}

/// Coefficient of variation of a girth.
pub(crate) fn girth_cv(girth: &Girth, rules: &RuleSet) -> f64 {
    let rule = match girth.method {
        Some(GirthMethod::Tape) => Rule::MeasureGirthTapeCv,
        Some(GirthMethod::Diameter) => Rule::MeasureGirthDiameterCv,
        Some(GirthMethod::TakenOver) => Rule::MeasureGirthTakenOverCv,
        Some(GirthMethod::ByEye) | None => Rule::MeasureGirthByEyeCv,
    };
    girth
        .se_cm
        .map_or_else(|| rules.number(rule), |se| se / girth.girth_cm)
}

/// Standard error of a lean in degrees.
pub(crate) fn lean_se_deg(lean: &Lean, rules: &RuleSet) -> f64 {
    let rule = match lean.method {
        Some(LeanMethod::TwoSides) => Rule::MeasureLeanTwoSidesDeg,
        Some(LeanMethod::OneSide) => Rule::MeasureLeanOneSideDeg,
        Some(LeanMethod::TakenOver) => Rule::MeasureLeanTakenOverDeg,
        Some(LeanMethod::ByEye) | None => Rule::MeasureLeanByEyeDeg,
    };
    lean.se_deg.unwrap_or_else(|| rules.number(rule))
}

/// Coefficient of variation of an anchor's diameter.
pub(crate) fn anchor_cv(anchor: &AnchorPoint, rules: &RuleSet) -> f64 {
    rules.number(match anchor.diameter_read {
        Some(DiameterRead::TapeAloft) => Rule::MeasureAnchorTapeAloftCv,
        Some(DiameterRead::BesideKnownSize) => Rule::MeasureAnchorKnownSizeCv,
        Some(DiameterRead::ScaledPhoto) => Rule::MeasureAnchorScaledPhotoCv,
        Some(DiameterRead::ByEye) | None => Rule::MeasureAnchorByEyeCv,
    })
}

/// Standard error of a reading of the sound wall in centimetres.
pub(crate) fn shell_se_cm(wall: &ShellReading, rules: &RuleSet) -> f64 {
    wall.se_cm.unwrap_or_else(|| {
        rules.number(match wall.method {
            Some(ShellMethod::Drill) => Rule::MeasureShellDrillCm,
            Some(ShellMethod::Core) => Rule::MeasureShellCoreCm,
            Some(ShellMethod::Probe) => Rule::MeasureShellProbeCm,
            // A method that nobody named is no better than the least of them.
            Some(ShellMethod::SectionPicture) | None => Rule::MeasureShellPictureCm,
        })
    })
}
