//! The method of the judgement, paragraph by paragraph, on one tree that is changed by hand.

use bolewalk_core::judge::{SiteContext, judge_site, judge_tree};
use bolewalk_core::record::{
    ClimbNeed, Day, Judgement, Reason, SiteFile, SiteJudgement, Verdict, ZoneAction,
};
use bolewalk_core::words::{Language, UnitSystem, Words};
use serde_json::{Value, json};

mod days;
mod stops;

use super::judge_trees::{complete, day, judge, look, points, rules};

const DRAWS: u32 = 1000;

fn has(reasons: &[Reason], code: &str) -> bool {
    reasons.iter().any(|reason| reason.code == code)
}

fn with(change: impl FnOnce(&mut Value)) -> Judgement {
    let mut file = complete();
    change(&mut file);
    judge(&file, DRAWS)
}

fn site(file: &Value, on: &str) -> SiteJudgement {
    let file: SiteFile = serde_json::from_value(file.clone()).unwrap();
    let on: Day = on.parse().unwrap();
    judge_site(&file, &rules(), on, None)
}

fn find(code: &str, part: &str, grade: u32) -> Value {
    json!([{"id": "f", "code": code, "part": part, "grade": grade}])
}

fn stops_with(change: impl FnOnce(&mut Value), code: &str) {
    let judged = with(change);
    assert!(has(&judged.stops, code), "{code}: {:?}", judged.stops);
    assert_eq!(judged.verdict, Verdict::Barred);
    assert_eq!(judged.score, None);
}

// Method, section 4.
#[test]
fn caps() {
    let refer = with(|file| look(file)["findings"] = find("bracket-unnamed", "stem", 1));
    assert!(has(&refer.refer_caps, "cap.bracket-not-named"));
    assert_eq!(refer.verdict, Verdict::Refer);
    let grave = with(|file| look(file)["findings"] = find("wound", "stem", 3));
    assert!(has(&grave.refer_caps, "cap.grade-3-on-route"));
    let dull = with(|file| look(file)["base_mallet"]["east"] = "dull".into());
    assert!(has(&dull.refer_caps, "cap.base-needs-section"));
    let part = with(|file| look(file)["walk_round"][0]["look"] = "part_seen".into());
    assert_eq!(part.verdict, Verdict::Limited);
    assert!(has(&part.limit_caps, "cap.part-seen"));
    let bark = with(|file| {
        look(file)["findings"] = json!([{"id": "f", "code": "included-bark", "part": "union",
            "grade": 1, "height_m": 6.0, "side_deg": 90.0, "aspect_ratio": 0.75}]);
    });
    assert!(has(&bark.limit_caps, "cap.included-bark"));
}

// Reference sheet, section 3.1: t/R = 0.30 gives Wagener 34.3 %, Coder 24.0 %.
#[test]
fn a_thin_shell_refers_and_a_thinner_one_bars() {
    let ring = |wall_cm: f64| {
        with(|file| {
            let readings: Vec<Value> = (0..4)
                .map(|quarter| {
                    json!({"bearing_deg": 90.0 * f64::from(quarter),
                    "shell_cm": wall_cm, "se_cm": 0.5, "method": "drill"})
                })
                .collect();
            look(file)["sections"] = json!([{"id": "s", "height_m": 1.0, "diameter_cm": 64.0,
                "bark_cm": 2.0, "readings": readings}]);
        })
    };
    let thin = ring(8.7);
    assert!(has(&thin.refer_caps, "cap.shell-thin") && has(&thin.refer_caps, "cap.strength-loss"));
    assert_eq!(thin.verdict, Verdict::Refer);
    let line = |judged: &Judgement, what: &str| {
        let mut lines = judged.working.iter();
        lines
            .find(|line| line.what == what)
            .map(|line| line.value)
            .unwrap()
    };
    let sheet = ring(9.0);
    assert!((line(&sheet, "work.wagener") - 34.30).abs() < 0.01);
    assert!((line(&sheet, "work.coder") - 24.01).abs() < 0.01);
    assert!((line(&sheet, "work.modulus-left") - 75.99).abs() < 0.05);
    // t/R = 0.20: Wagener 51.2 %.
    let thinner = ring(6.0);
    assert!(has(&thinner.stops, "stop.strength-loss"));
}

// Method, section 6: redone by hand from the printed inputs.
#[test]
fn the_working_can_be_redone_with_a_calculator() {
    let judged = with(|file| look(file)["anchors"][0]["diameter_cm"] = 13.0.into());
    let line = |what: &str| {
        let mut lines = judged.working.iter();
        lines
            .find(|line| line.what == what)
            .map(|line| line.value)
            .unwrap()
    };
    // Red oak: bark 20 % of the wood's volume; 13 cm over bark is 13/√1.2 = 11.867 cm of wood.
    assert!((line("work.anchor-wood") - 11.867).abs() < 0.001);
    // 85 kg · 9.80665 · 1 · 2.0 = 1.66713 kN.
    assert!((line("work.anchor-force") - 1.667_13).abs() < 1e-4);
    // Half of 13 cm and 5 cm: 11.5 cm; sin(20° + 45°) = 0.906308.
    let moment = 1.667_13 * 0.115 * 0.906_308;
    assert!((line("work.anchor-pull") - moment).abs() < 1e-4);
    // σ = 32 M/(π d³); R = 57.2 · 0.75 = 42.9 MPa.
    let stress = 32.0 * moment / (std::f64::consts::PI * 0.118_67_f64.powi(3)) / 1000.0;
    assert!((line("work.anchor-stress") - stress).abs() < 0.001);
    assert!((line("work.anchor-margin") - 42.9 / stress).abs() < 0.02);
    assert!(
        (line("work.stem-length") - line("work.height-95") / 2f64.to_radians().cos()).abs() < 1e-9
    );
}

// Method, section 5: 0.95/0.80/0.50; within reach √, elsewhere ∜; others √; once.
#[test]
fn factors_of_findings() {
    let limb = |id: &str, code: &str, grade: u32, side: f64| {
        json!({"id": id, "code": code, "part": "limb", "grade": grade, "height_m": 12.0,
            "side_deg": side})
    };
    let score = |findings: Value| {
        let judged = with(|file| look(file)["findings"] = findings);
        points(&judged)
    };
    // 85 · 0.8 = 68; √0.8 = 0.8944: 76.03; ∜0.8 = 0.9457: 80.39.
    assert_eq!(score(json!([limb("f", "wound", 2, 90.0)])), 68);
    assert_eq!(score(json!([limb("f", "wound", 2, 170.0)])), 76);
    assert_eq!(score(json!([limb("f", "wound", 2, 270.0)])), 80);
    // The worst in full, the other by its root: 85 · 0.8 · √0.8 = 60.82.
    let two = json!([limb("f", "wound", 2, 90.0), limb("g", "canker", 2, 90.0)]);
    assert_eq!(score(two), 60);
    let twice = json!([limb("f", "wound", 2, 91.0), limb("g", "wound", 2, 92.0)]);
    assert_eq!(score(twice), 68);
}

// Method, sections 6 and 7: a load test that held.
#[test]
fn a_load_test_that_held_counts_for_its_day() {
    let tested = |on: &str| {
        with(|file| {
            look(file)["anchors"][0]["load_test"] =
                json!({"outcome": "held", "mass_kg": 180.0, "on": on});
        })
    };
    let today = tested("2026-05-14");
    assert_eq!(points(&today), 90);
    assert!(has(&today.remarks, "remark.load-test-held"));
    let before = tested("2026-05-13");
    assert_eq!(points(&before), 85);
    assert!(has(&before.remarks, "remark.load-test-first"));
    let not_on_dead = with(|file| {
        look(file)["life"] = "dead".into();
        look(file)["dead_since"] = "2026-03-01".into();
    });
    assert!(!has(&not_on_dead.remarks, "remark.load-test-first"));
}
