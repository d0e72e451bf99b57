//! A property with one tree whose full check is complete, to be changed by the laws.

use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::judge::{SiteContext, judge_tree};
use bolewalk_core::record::{Day, Id, Judgement, SiteFile, Verdict};
use serde_json::{Value, json};

/// The day of the full check.
pub fn day() -> Day {
    "2026-05-14".parse().unwrap()
}

/// The rule set of the United States.
pub fn rules() -> RuleSet {
    RuleSet::shipped(&Id::from("us")).unwrap()
}

fn signed(skills: &[&str]) -> Vec<Value> {
    skills
        .iter()
        .map(|skill| json!({"skill": skill, "by": "Mara Lind", "on": "2025-02-01"}))
        .collect()
}

fn gear() -> Value {
    let piece = |id: &str, kind: &str| {
        json!({"id": id, "name": id, "kind": kind, "rating_kn": 24.0, "diameter_mm": 11.7,
            "length_m": 60.0, "last_check": "2026-03-01", "double_locking": true,
            "chin_strap": true})
    };
    let kinds = [
        "climbing_line",
        "lanyard",
        "second_attachment",
        "harness",
        "helmet",
        "connector",
        "hitch_cord",
    ];
    let pieces = kinds
        .iter()
        .flat_map(|kind| [1, 2].map(|set| piece(&format!("{kind}-{set}"), kind)));
    Value::Array(pieces.collect())
}

/// A site file with one complete tree: a red oak with one anchor, everything seen.
pub fn complete() -> Value {
    let all = [
        "inspection",
        "gear_check",
        "electrical_awareness",
        "first_aid",
        "knot",
        "friction_hitch",
        "moving_rope",
        "throw_line",
        "limb_walk",
        "aerial_rescue",
        "stationary_rope",
        "chainsaw_aloft",
    ];
    json!({
        "format": 1,
        "crew": [
            {"id": "ana", "name": "Ana Ruiz", "mass_with_gear_kg": 85.0, "throw_m": 24.0,
             "sign_offs": signed(&all)},
            {"id": "ben", "name": "Ben Okoro", "mass_with_gear_kg": 90.0,
             "sign_offs": signed(&all)},
        ],
        "gear": gear(),
        "site": {
            "id": "hill", "name": "Hill House",
            "rescue": {"meeting_point": "Gate", "grid_reference": "42.3314 -71.1211",
                "signal": "good", "first_aider": "ben", "casualty_unit": "County hospital"},
            "visits": [{"id": "v", "day": "2026-05-14", "weather": [{"hour": 9, "wind_force": 2,
                "no_thunder": true, "ice": false, "wet_bark": false, "light": "day"}]}],
            "trees": [{
                "id": "oak", "tag": "1", "species": "Quercus rubra", "way": "prune",
                "other_access": ["no_other"],
                "position": {"lat_deg": 42.3314, "lon_deg": -71.1211, "accuracy_m": 4.0},
                "work": [{"operation": "crown_reduction", "piece_length_m": 2.0}],
                "inspections": [full_check()],
            }],
        },
    })
}

/// A full check of that tree, everything seen.
fn full_check() -> Value {
    let parts = [
        "wires",
        "hangers",
        "insects",
        "roots",
        "base",
        "stem_north",
        "stem_east",
        "stem_south",
        "stem_west",
        "unions",
        "crown",
    ];
    let walk: Vec<Value> = parts
        .iter()
        .map(|part| json!({"part": part, "look": "seen"}))
        .collect();
    json!({
                    "id": "look", "visit": "v", "level": "full_check", "life": "alive",
                    "wires_near": false,
                    "height": {"height_m": 22.0, "method": "sine"},
                    "girth": {"girth_cm": 220.0, "method": "tape"},
                    "lean": {"lean_deg": 2.0, "method": "two_sides"},
                    "lean_is_new": false,
                    "crown": {"radius_m": 6.0, "base_m": 6.0},
                    "slope": {"slope_pct": 0.0},
                    "ground_dug": {"dug": false},
                    "base_mallet": {"north": "sound", "east": "sound", "south": "sound",
                        "west": "sound"},
                    "walk_round": walk,
                    "anchors": [{"id": "a", "height_m": 14.0, "diameter_cm": 26.0,
                        "diameter_read": "tape_aloft", "parent_diameter_cm": 45.0,
                        "from_union_cm": 10.0, "limb_angle_deg": 20.0, "limb_bearing_deg": 90.0,
                        "limb_length_m": 6.0, "union": "bark_ridge", "state": "live"}],
                    "plans": [{"id": "p", "anchor": "a", "system": "moving_rope",
                        "ascent_side_deg": 90.0, "climber": "ana", "second": "ben",
                        "open_system": false}],
    })
}

/// The inspection of the tree of [`complete`].
pub fn look(file: &mut Value) -> &mut Value {
    &mut file["site"]["trees"][0]["inspections"][0]
}

/// Judges the first tree with `draws` samples.
pub fn judge(file: &Value, draws: u32) -> Judgement {
    let file: SiteFile = serde_json::from_value(file.clone()).unwrap();
    let rules = rules();
    let site = SiteContext::new(&file, &rules, day(), Some(9)).with_draws(draws);
    judge_tree(&site, &file.site.trees[0])
}

/// The 10 % end of the score; nothing counts as 0.
pub fn low(judgement: &Judgement) -> u32 {
    judgement.score.as_ref().map_or(0, |score| score.low)
}

/// The points of the score; nothing counts as 0.
pub fn points(judgement: &Judgement) -> u32 {
    judgement.score.as_ref().map_or(0, |score| score.points)
}

#[test]
fn a_complete_sound_tree_has_no_stop() {
    let judged = judge(&complete(), 1000);
    assert_eq!(judged.stops, Vec::new());
    assert_eq!(judged.gaps, Vec::new());
    assert_eq!(judged.verdict, Verdict::NoStop);
}
