//! The gear: in date, whole, and of a rating that fits its kind.

use crate::record::{ArgValue, Day, Gear, GearKind, Person, Quantity, Reason};

use super::case::SiteContext;
use super::rules::{Rule, RuleSet};

/// Days in a month, for checks whose next day nobody wrote down.
const DAYS_PER_MONTH: f64 = 30.4375;

/// Why a piece may not be used today; nothing when it may.
pub(crate) fn fault_of(gear: &Gear, site: &SiteContext) -> Option<Reason> {
    gear_fault(gear, site.rules, site.as_of)
}

/// Why a piece may not be used on a day, by the rules of a region; nothing when it may.
pub fn gear_fault(gear: &Gear, rules: &RuleSet, as_of: Day) -> Option<Reason> {
    let about = |code: &str| Reason::new(code).about(&gear.id).text("gear", &gear.name);
    if let Some(why) = &gear.out_of_use {
        return Some(about("stop.gear-out-of-use").text("why", why));
    }
    if gear.shock_loaded == Some(true) {
        return Some(about("stop.gear-shock-loaded"));
    }
    match next_check(gear, rules) {
        None => return Some(about("stop.gear-never-checked")),
        Some(day) if day < as_of => {
            return Some(about("stop.gear-check-due").with("day", ArgValue::OnDay { day }));
        }
        Some(_) => {}
    }
    if let Some(least) = least_rating(gear.kind) {
        let least = rules.number(least);
        match gear.rating_kn {
            None => return Some(about("stop.gear-not-rated")),
            Some(rating) if rating < least => {
                return Some(
                    about("stop.gear-rating")
                        .number("rating", rating, Quantity::ForceKn)
                        .number("least", least, Quantity::ForceKn),
                );
            }
            Some(_) => {}
        }
    }
    match gear.kind {
        GearKind::Connector if gear.double_locking != Some(true) => {
            Some(about("stop.gear-connector-locking"))
        }
        GearKind::Helmet if gear.chin_strap != Some(true) => Some(about("stop.gear-helmet-strap")),
        GearKind::ClimbingLine => line_diameter(gear, rules),
        _ => None,
    }
}

/// The day by which a piece has to be checked again; nothing for one that never was.
pub fn next_check(gear: &Gear, rules: &RuleSet) -> Option<Day> {
    gear.next_check.or_else(|| {
        let months = rules.number(Rule::GearCheckMonths);
        let days = libm::floor(months * DAYS_PER_MONTH).max(0.0) as u64;
        gear.last_check.map(|day| day.plus_days(days))
    })
}

/// The row of the least rating; nothing for kinds that no rule rates.
fn least_rating(kind: GearKind) -> Option<Rule> {
    match kind {
        GearKind::ClimbingLine | GearKind::Lanyard | GearKind::SecondAttachment => {
            Some(Rule::GearLineKn)
        }
        GearKind::Connector => Some(Rule::GearConnectorKn),
        GearKind::FrictionSaver => Some(Rule::GearFrictionSaverKn),
        _ => None,
    }
}

fn line_diameter(gear: &Gear, rules: &RuleSet) -> Option<Reason> {
    let least = rules.number(Rule::GearLineLeastMm);
    let most = rules.number(Rule::GearLineMostMm);
    let about = |code: &str| Reason::new(code).about(&gear.id).text("gear", &gear.name);
    match gear.diameter_mm {
        None => Some(about("stop.gear-line-unmeasured")),
        Some(mm) if mm < least || mm > most => Some(
            about("stop.gear-line-diameter")
                .number("diameter", mm, Quantity::LengthMm)
                .number("least", least, Quantity::LengthMm)
                .number("most", most, Quantity::LengthMm),
        ),
        Some(_) => None,
    }
}

/// Whether a person may use a piece: their own, or nobody's.
fn is_for(gear: &Gear, person: &Person) -> bool {
    gear.used_by.is_empty() || gear.used_by == person.id
}

/// The best a person can put on of one kind, once `taken` pieces of the common stock are gone:
/// a piece in order, or why there is none.
pub(crate) fn best_of_kind<'a>(
    site: &SiteContext<'a>,
    person: &Person,
    kind: GearKind,
    taken: usize,
    fits: impl Fn(&Gear) -> Option<Reason>,
) -> Result<&'a Gear, Reason> {
    let mut fault = None;
    let mut left_to_others = taken;
    // Own pieces first: what a person owns is not taken by another.
    let mut pieces: Vec<&Gear> = site
        .file
        .gear
        .iter()
        .filter(|gear| gear.kind == kind && is_for(gear, person))
        .collect();
    pieces.sort_by_key(|gear| gear.used_by.is_empty());
    for gear in pieces {
        match fault_of(gear, site).or_else(|| fits(gear)) {
            Some(found) => {
                fault.get_or_insert(found);
            }
            None if gear.used_by.is_empty() && left_to_others > 0 => left_to_others -= 1,
            None => return Ok(gear),
        }
    }
    Err(fault.unwrap_or_else(|| Reason::new("stop.gear-missing").term("kind", kind_term(kind))))
}

/// The catalogue's word for a kind of gear.
pub(crate) fn kind_term(kind: GearKind) -> &'static str {
    match kind {
        GearKind::ClimbingLine => "gear-kind.climbing-line",
        GearKind::Lanyard => "gear-kind.lanyard",
        GearKind::SecondAttachment => "gear-kind.second-attachment",
        GearKind::Harness => "gear-kind.harness",
        GearKind::Helmet => "gear-kind.helmet",
        GearKind::Connector => "gear-kind.connector",
        GearKind::HitchCord => "gear-kind.hitch-cord",
        GearKind::FrictionSaver => "gear-kind.friction-saver",
        GearKind::ThrowLine => "gear-kind.throw-line",
        GearKind::RescueKit => "gear-kind.rescue-kit",
        GearKind::FirstAidKit => "gear-kind.first-aid-kit",
        GearKind::Spurs => "gear-kind.spurs",
        GearKind::RiggingLine => "gear-kind.rigging-line",
        GearKind::RiggingBlock => "gear-kind.rigging-block",
        GearKind::TopHandledSaw => "gear-kind.top-handled-saw",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{Id, SiteFile};

    fn fault(json: serde_json::Value) -> Option<String> {
        let file: SiteFile = serde_json::from_value(serde_json::json!({
            "format": 1, "site": {"name": "Hill House"}, "gear": [json]
        }))
        .unwrap();
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        let day = "2026-05-14".parse().unwrap();
        let site = SiteContext::new(&file, &rules, day, None);
        fault_of(&file.gear[0], &site).map(|reason| reason.code)
    }

    #[test]
    fn a_piece_is_in_date_whole_and_rated() {
        let line = |change: serde_json::Value| {
            let mut line = serde_json::json!({"id": "l", "name": "Line", "kind": "climbing_line",
                "rating_kn": 24.0, "diameter_mm": 11.7, "last_check": "2026-03-01"});
            for (key, value) in change.as_object().unwrap() {
                line[key] = value.clone();
            }
            fault(line)
        };
        assert_eq!(line(serde_json::json!({})), None);
        // Six months (LOLER 1998, regulation 9) and a day.
        let due = line(serde_json::json!({"last_check": "2025-11-10"}));
        assert_eq!(due.as_deref(), Some("stop.gear-check-due"));
        // ANSI Z133: 5,400 lbf, 24.02 kN, carried as 24.
        let weak = line(serde_json::json!({"rating_kn": 22.0}));
        assert_eq!(weak.as_deref(), Some("stop.gear-rating"));
        // Common practice, no source: 11 mm to half an inch.
        let thin = line(serde_json::json!({"diameter_mm": 9.0}));
        assert_eq!(thin.as_deref(), Some("stop.gear-line-diameter"));
        let shock = line(serde_json::json!({"shock_loaded": true}));
        assert_eq!(shock.as_deref(), Some("stop.gear-shock-loaded"));
    }

    #[test]
    fn connectors_lock_twice_and_helmets_have_a_strap() {
        // ANSI Z133, second-hand; chin strap: common practice.
        let connector = serde_json::json!({"id": "c", "name": "Karabiner", "kind": "connector",
            "rating_kn": 23.0, "last_check": "2026-05-01"});
        assert_eq!(
            fault(connector).as_deref(),
            Some("stop.gear-connector-locking")
        );
        let helmet = serde_json::json!({"id": "h", "name": "Helmet", "kind": "helmet",
            "last_check": "2026-05-01", "chin_strap": true});
        assert_eq!(fault(helmet), None);
    }
}
