//! The training record: which sign-offs hold on a day.

use crate::record::{Day, KnotUse, Person, SignOff, Skill};

/// Knots that a climber on rope needs, by what they are for (common practice, no source).
pub const CLIMBING_KNOTS: [KnotUse; 3] =
    [KnotUse::Stopper, KnotUse::Termination, KnotUse::Gripping];

/// Whether a sign-off was given by the day and has not ended before it.
pub fn sign_off_holds(sign: &SignOff, as_of: Day) -> bool {
    sign.on <= as_of && sign.until.is_none_or(|until| until >= as_of)
}

/// Whether a knot was confirmed, by what it is for; a sign-off for knots that names no use stands
/// for all.
pub fn knows_knot(person: &Person, knot: KnotUse, as_of: Day) -> bool {
    person.sign_offs.iter().any(|sign| {
        sign.skill == Skill::Knot
            && sign.knot.is_none_or(|known| known == knot)
            && sign_off_holds(sign, as_of)
    })
}

/// Whether a skill was confirmed by the day and still holds; knots when all that a climber needs
/// are.
pub fn is_signed_off(person: &Person, skill: Skill, as_of: Day) -> bool {
    if skill == Skill::Knot {
        let mut needed = CLIMBING_KNOTS.into_iter();
        return needed.all(|knot| knows_knot(person, knot, as_of));
    }
    let mut signs = person.sign_offs.iter();
    signs.any(|sign| sign.skill == skill && sign_off_holds(sign, as_of))
}

/// A sign-off whose time is up, or soon will be, and that no other one stands in for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Lapse {
    /// The skill.
    pub skill: Skill,
    /// What a knot is for.
    pub knot: Option<KnotUse>,
    /// The last day on which it holds, or held.
    pub until: Day,
}

/// What has lapsed by a day, or lapses within so many days after it, what ended first leading.
pub fn lapses(person: &Person, as_of: Day, within_days: u64) -> Vec<Lapse> {
    let soon = as_of.plus_days(within_days);
    let mut found: Vec<Lapse> = Vec::new();
    for sign in person.sign_offs.iter().filter(|sign| sign.on <= as_of) {
        // Another one for the same skill may hold longer.
        let same = |other: &&SignOff| {
            other.skill == sign.skill
                && other.on <= as_of
                && (other.knot == sign.knot || other.knot.is_none())
        };
        let last = person.sign_offs.iter().filter(same).map(|one| one.until);
        let Some(until) = last
            .collect::<Option<Vec<Day>>>()
            .and_then(|all| all.into_iter().max())
        else {
            continue;
        };
        let lapse = Lapse {
            skill: sign.skill,
            knot: sign.knot,
            until,
        };
        if until <= soon && !found.contains(&lapse) {
            found.push(lapse);
        }
    }
    found.sort_by_key(|lapse| lapse.until);
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn person(signs: serde_json::Value) -> Person {
        serde_json::from_value(serde_json::json!({"id": "b", "name": "Ben", "sign_offs": signs}))
            .unwrap()
    }

    #[test]
    fn a_sign_off_holds_from_its_day_to_its_last() {
        let ben = person(serde_json::json!([
            {"skill": "first_aid", "by": "Ana", "on": "2026-05-01", "until": "2026-05-31"}]));
        let holds = |day: &str| is_signed_off(&ben, Skill::FirstAid, day.parse().unwrap());
        assert!(!holds("2026-04-30") && !holds("2026-06-01"));
        assert!(holds("2026-05-01") && holds("2026-05-31"));
    }

    #[test]
    fn what_lapses_within_a_month_is_told_unless_another_holds_longer() {
        let ben = person(serde_json::json!([
            {"skill": "first_aid", "by": "Ana", "on": "2023-05-01", "until": "2026-05-01"},
            {"skill": "first_aid", "by": "Ana", "on": "2026-04-20", "until": "2029-04-20"},
            {"skill": "aerial_rescue", "by": "Ana", "on": "2025-06-01", "until": "2026-06-01"},
            {"skill": "chainsaw_aloft", "by": "Ana", "on": "2025-03-01", "until": "2026-03-01"},
            {"skill": "knot", "by": "Ana", "on": "2025-03-01"}]));
        let told = |day: &str| {
            let told = lapses(&ben, day.parse().unwrap(), 30);
            told.into_iter().map(|one| one.skill).collect::<Vec<_>>()
        };
        assert_eq!(
            told("2026-05-14"),
            [Skill::ChainsawAloft, Skill::AerialRescue]
        );
        assert_eq!(told("2026-02-01"), [Skill::ChainsawAloft]);
        assert_eq!(told("2026-01-01"), []);
    }

    #[test]
    fn knots_are_known_when_all_that_a_climber_needs_are() {
        let knot = |of: &str| serde_json::json!({"skill": "knot", "knot": of, "by": "Ana", "on": "2026-05-01"});
        let day = "2026-05-14".parse().unwrap();
        let some = person(serde_json::json!([knot("stopper"), knot("gripping")]));
        assert!(!is_signed_off(&some, Skill::Knot, day));
        let all = person(serde_json::json!([
            knot("stopper"),
            knot("gripping"),
            knot("termination")
        ]));
        assert!(is_signed_off(&all, Skill::Knot, day));
    }
}
