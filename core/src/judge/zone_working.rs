//! The working of the zones: stem length, and each radius with the rule that fixed it.

use crate::record::{Arg, Quantity, ZoneAnswer};

use super::falling::stem_length_m;
use super::rules::Rule;
use super::spread::height_cv;
use super::tree_case::TreeCase;
use super::working::Working;
use super::zone_reach::end_m;

/// Lines for the stem length and every way of working.
pub(crate) fn explain(case: &TreeCase, zones: &[ZoneAnswer], lines: &mut Working) {
    let look = case.look();
    let rules = case.site.rules;
    if let (Some(height), Some(lean)) = (look.height, look.lean) {
        let cv = height_cv(&height, rules);
        let high = end_m(height.height_m, cv);
        lines
            .line(
                "work.height-95",
                "H95 = H exp(1.644854 √ln(1 + v²))",
                high,
                Quantity::LengthM,
            )
            .input("H", height.height_m, Quantity::LengthM)
            .input("v", cv, Quantity::Ratio)
            .spread(cv * height.height_m)
            .source("Lognormal 95 % end; standard error as read or by method");
        lines
            .line(
                "work.stem-length",
                "L = H95/cos θ",
                stem_length_m(high, lean.lean_deg),
                Quantity::LengthM,
            )
            .input("H95", high, Quantity::LengthM)
            .input("θ", lean.lean_deg, Quantity::AngleDeg)
            .source("Plane trigonometry");
    }
    for zone in zones {
        let what = format!("work.keep-out.{}", kebab(zone));
        let mut line = lines.line(
            &what,
            formula(&zone.rule.code),
            zone.keep_out_m,
            Quantity::LengthM,
        );
        for Arg { name, value } in &zone.rule.args {
            if let crate::record::ArgValue::Number { value, quantity } = value {
                line = line.input(name, *value, *quantity);
            }
        }
        line.source(&zone.source);
    }
    let slope = look.slope.filter(|slope| slope.slope_pct > 0.0);
    if let (Some(slope), Some(zone)) = (slope, zones.first()) {
        lines
            .line(
                "work.downhill",
                "R (1 + k min(s/100, most))",
                zone.keep_out_downhill_m,
                Quantity::LengthM,
            )
            .input("R", zone.keep_out_m, Quantity::LengthM)
            .input("k", rules.number(Rule::ZoneSlopeShare), Quantity::Ratio)
            .input("s", slope.slope_pct, Quantity::Percent)
            .input("most", rules.number(Rule::ZoneSlopeMost), Quantity::Ratio)
            .source("Bolewalk house value; the published rule says only more");
    }
}

/// The formula behind each rule of the zones.
fn formula(code: &str) -> &'static str {
    match code {
        "zone.fell" => "lengths · length",
        "zone.removal" => "crown + 6.1 m",
        "zone.pieces" => "crown + 2 · piece",
        "zone.flight" => "hold + piece + v √(2 cut/g)",
        "zone.swing" => "crown + swing · piece + 6.1 m",
        "zone.prune-barrier" => "crown + 3.05 m",
        "zone.beyond-drop" => "crown + piece + 6.1 m",
        _ => "as the rule says",
    }
}

fn kebab(zone: &ZoneAnswer) -> &'static str {
    use crate::record::WayOfWorking::{
        FellShortened, FellWhole, InspectOnly, NoWork, PlatformOrCrane, Prune, SectionFreeDrop,
        SectionRigged,
    };
    match zone.way {
        InspectOnly => "inspect-only",
        Prune => "prune",
        SectionFreeDrop => "section-free-drop",
        SectionRigged => "section-rigged",
        FellWhole => "fell-whole",
        FellShortened => "fell-shortened",
        PlatformOrCrane => "platform-or-crane",
        NoWork => "no-work",
    }
}
