//! The laws of the judgement: a careful recorder never fares worse than a careless one.
//!
//! Each holds for 2,000 trees drawn at random, with 200 samples a judgement instead of 1,000.

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use serde_json::{Value, json};

use super::judge_trees::{complete, judge, look, low, points};
use bolewalk_core::record::{Judgement, Verdict};

const DRAWS: u32 = 200;

/// Cases a law: 2,000 as they are counted, in release; fewer where the build is slow.
const CASES: u32 = if cfg!(debug_assertions) { 60 } else { 2000 };

/// Codes that weigh on the score without being a stop by themselves at grades 1 and 2.
const CODES: [(&str, &str); 9] = [
    ("wound", "stem"),
    ("canker", "stem"),
    ("girdling-roots", "roots"),
    ("wound", "base"),
    ("limb-crack", "limb"),
    ("climbers", "stem"),
    ("included-bark", "union"),
    ("dieback", "crown"),
    ("decay", "limb"),
];

#[derive(Debug, Clone)]
struct Drawn {
    lean_deg: f64,
    height_m: f64,
    girth_cm: f64,
    anchor_cm: f64,
    anchor_angle_deg: f64,
    mass_kg: f64,
    included: bool,
    by_eye: bool,
    species: &'static str,
    findings: Vec<(usize, u32, Option<f64>, Option<f64>)>,
    /// Height, diameter and walls over the radius of a section.
    section: Option<(f64, f64, Vec<f64>)>,
    part_seen: Option<&'static str>,
}

fn finding() -> impl Strategy<Value = (usize, u32, Option<f64>, Option<f64>)> {
    (
        0..CODES.len(),
        1..=3u32,
        prop::option::of(0.0..20.0f64),
        prop::option::of(0.0..360.0f64),
    )
}

fn drawn() -> impl Strategy<Value = Drawn> {
    let measures = (
        0.0..30.0f64,
        12.0..30.0f64,
        120.0..300.0f64,
        12.0..35.0f64,
        0.0..100.0f64,
        60.0..120.0f64,
    );
    let section = (
        0.3..6.0f64,
        40.0..90.0f64,
        prop::collection::vec(0.3..1.0f64, 1..6),
    );
    let species = prop::sample::select(vec!["Quercus rubra", "Acer", "Acer saccharinum"]);
    let parts = prop::sample::select(vec!["roots", "stem_north", "unions", "crown", "hangers"]);
    (
        measures,
        any::<bool>(),
        any::<bool>(),
        species,
        prop::collection::vec(finding(), 0..4),
        prop::option::weighted(0.4, section),
        prop::option::weighted(0.2, parts),
    )
        .prop_map(
            |(measures, included, by_eye, species, findings, section, part_seen)| {
                let (lean_deg, height_m, girth_cm, anchor_cm, anchor_angle_deg, mass_kg) = measures;
                Drawn {
                    lean_deg,
                    height_m,
                    girth_cm,
                    anchor_cm,
                    anchor_angle_deg,
                    mass_kg,
                    included,
                    by_eye,
                    species,
                    findings,
                    section,
                    part_seen,
                }
            },
        )
}

impl Drawn {
    fn file(&self) -> Value {
        let mut file = complete();
        file["crew"][0]["mass_with_gear_kg"] = self.mass_kg.into();
        file["site"]["trees"][0]["species"] = self.species.into();
        let look = look(&mut file);
        look["lean"]["lean_deg"] = self.lean_deg.into();
        look["height"]["height_m"] = self.height_m.into();
        look["girth"]["girth_cm"] = self.girth_cm.into();
        let read = if self.by_eye { "by_eye" } else { "tape_aloft" };
        let union = if self.included {
            "included_bark"
        } else {
            "bark_ridge"
        };
        let anchor = &mut look["anchors"][0];
        anchor["diameter_cm"] = self.anchor_cm.into();
        anchor["diameter_read"] = read.into();
        anchor["limb_angle_deg"] = self.anchor_angle_deg.into();
        anchor["union"] = union.into();
        anchor["height_m"] = (0.6 * self.height_m).into();
        let findings = self.findings.iter().enumerate();
        look["findings"] = findings
            .map(|(place, (code, grade, height, side))| {
                finding_json(&format!("f{place}"), *code, *grade, *height, *side)
            })
            .collect();
        if let Some((height_m, diameter_cm, walls)) = &self.section {
            let readings: Vec<Value> = walls
                .iter()
                .enumerate()
                .map(|(place, wall)| {
                    json!({"bearing_deg": 360.0 * place as f64 / walls.len() as f64,
                        "shell_cm": wall * 0.45 * diameter_cm, "se_cm": 0.5, "method": "drill"})
                })
                .collect();
            look["sections"] = json!([{"id": "s", "height_m": height_m,
                "diameter_cm": diameter_cm, "bark_cm": 1.5, "readings": readings}]);
        }
        if let Some(part) = self.part_seen {
            see(&mut file, part, "part_seen");
        }
        file
    }
}

fn finding_json(
    id: &str,
    code: usize,
    grade: u32,
    height_m: Option<f64>,
    side_deg: Option<f64>,
) -> Value {
    let (code, part) = CODES[code];
    let mut finding = json!({"id": id, "code": code, "part": part, "grade": grade});
    finding["height_m"] = height_m.into();
    finding["side_deg"] = side_deg.into();
    finding
}

fn see(file: &mut Value, part: &str, seen: &str) {
    let walk = look(file)["walk_round"].as_array_mut().unwrap();
    for entry in walk.iter_mut().filter(|entry| entry["part"] == part) {
        entry["look"] = seen.into();
    }
}

/// Order of how much is allowed, gaps apart: a tree still to check allows nothing.
fn allows(judgement: &Judgement) -> Verdict {
    judgement.verdict
}

fn never_better(worse: &Judgement, better: &Judgement) -> Result<(), TestCaseError> {
    prop_assert!(
        allows(worse) <= allows(better),
        "{:?} after {:?}",
        worse.verdict,
        better.verdict
    );
    let (now, before) = ((points(worse), low(worse)), (points(better), low(better)));
    prop_assert!(
        now.0 <= before.0 && now.1 <= before.1,
        "{now:?} after {before:?}"
    );
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: CASES, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_higher_grade_never_helps(tree in drawn(), extra in finding()) {
        let mut before = tree.clone();
        before.findings.push((extra.0, extra.1.min(2), extra.2, extra.3));
        let mut after = before.clone();
        after.findings.last_mut().unwrap().1 += 1;
        never_better(&judge(&after.file(), DRAWS), &judge(&before.file(), DRAWS))?;
    }

    #[test]
    fn more_lean_never_helps(tree in drawn(), more in 0.1..20.0f64) {
        let mut after = tree.clone();
        after.lean_deg += more;
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_heavier_climber_never_helps(tree in drawn(), more in 1.0..60.0f64) {
        let mut after = tree.clone();
        after.mass_kg += more;
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_flatter_limb_never_helps(tree in drawn(), more in 1.0..40.0f64) {
        let mut after = tree.clone();
        after.anchor_angle_deg += more;
        // Past 20° the limb's bearing is known here, so that the route does not change.
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_thinner_wall_never_helps(tree in drawn(), which in 0..6usize, share in 0.1..0.99f64) {
        let mut after = tree.clone();
        if let Some((_, _, walls)) = &mut after.section {
            let place = which % walls.len();
            walls[place] *= share;
        }
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_thinner_anchor_never_helps(tree in drawn(), share in 0.5..0.99f64) {
        let mut after = tree.clone();
        after.anchor_cm *= share;
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_thinner_stem_never_helps(tree in drawn(), share in 0.5..0.99f64) {
        // The section's own diameter stays: its walls are kept in centimetres.
        let mut after = tree.clone();
        after.girth_cm *= share;
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn one_more_finding_never_helps(tree in drawn(), extra in finding()) {
        let mut after = tree.clone();
        after.findings.push(extra);
        never_better(&judge(&after.file(), DRAWS), &judge(&tree.file(), DRAWS))?;
    }

    #[test]
    fn a_part_not_fully_seen_never_beats_grade_2_of_what_it_could_hide(
        tree in drawn(),
        pick in 0..4usize,
        unseen in any::<bool>(),
    ) {
        let (part, code) = [("roots", 2), ("stem_south", 0), ("unions", 6), ("base", 3)][pick];
        let mut seen = tree.clone();
        seen.part_seen = None;
        let mut hidden = seen.file();
        see(&mut hidden, part, if unseen { "not_seen" } else { "part_seen" });
        seen.findings.push((code, 2, None, None));
        never_better(&judge(&hidden, DRAWS), &judge(&seen.file(), DRAWS))?;
    }

    #[test]
    fn leaving_something_out_never_helps(tree in drawn(), pick in 0..9usize) {
        let before = judge(&tree.file(), DRAWS);
        let mut file = tree.file();
        let look = look(&mut file);
        let part = ["height", "girth", "lean", "crown", "life", "ground_dug", "base_mallet", "walk_round", "anchors"][pick];
        look.as_object_mut().unwrap().remove(part);
        let after = judge(&file, DRAWS);
        prop_assert!(!after.gaps.is_empty());
        // A stop stays a stop where it does not rest on what was left out.
        prop_assert!(after.verdict <= Verdict::Incomplete, "{:?}", after.verdict);
        prop_assert!(after.verdict <= before.verdict || before.verdict == Verdict::Barred);
    }

    #[test]
    fn the_same_input_gives_the_same_bytes(tree in drawn()) {
        let bytes = || serde_json::to_vec(&judge(&tree.file(), DRAWS)).unwrap();
        prop_assert_eq!(bytes(), bytes());
    }

    #[test]
    fn points_lost_add_up(tree in drawn()) {
        if let Some(score) = judge(&tree.file(), DRAWS).score {
            let lost: u32 = score.shares.iter().map(|share| share.points).sum();
            prop_assert_eq!(lost, 100 - score.points);
            prop_assert!(score.points < 100 && score.low <= score.high);
        }
    }

    #[test]
    fn feet_and_metres_are_the_same_tree(tree in drawn()) {
        // 1 ft = 0.3048 m, 1 in = 25.4 mm, 1 lb = 0.45359237 kg: exact by definition.
        let mut turned = tree.clone();
        turned.height_m = turned.height_m / 0.3048 * 0.3048;
        turned.girth_cm = turned.girth_cm / 2.54 * 2.54;
        turned.anchor_cm = turned.anchor_cm / 2.54 * 2.54;
        turned.mass_kg = turned.mass_kg / 0.453_592_37 * 0.453_592_37;
        let (one, other) = (judge(&tree.file(), DRAWS), judge(&turned.file(), DRAWS));
        prop_assert_eq!(one.verdict, other.verdict);
        prop_assert_eq!(printed(&one), printed(&other));
    }
}

/// Score and zones to the printed digit.
fn printed(judgement: &Judgement) -> (u32, u32, Vec<String>) {
    let zones = judgement
        .zones
        .iter()
        .map(|zone| format!("{:.1}", zone.keep_out_m));
    (points(judgement), low(judgement), zones.collect())
}

#[test]
fn most_of_the_trees_drawn_have_a_score() {
    // A law about scores says nothing where there are none.
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut seen = std::collections::BTreeMap::new();
    for _ in 0..300 {
        let tree = drawn().new_tree(&mut runner).unwrap().current();
        let judged = judge(&tree.file(), DRAWS);
        *seen.entry(format!("{:?}", judged.verdict)).or_insert(0) += 1;
    }
    let scored: i32 = ["NoStop", "Limited", "Refer"]
        .iter()
        .filter_map(|v| seen.get(*v))
        .sum();
    assert!(scored > 120, "{seen:?}");
}
