//! How long the judgement of a property takes, in release.

use std::time::Instant;

use bolewalk_core::judge::{SiteContext, judge_tree};
use bolewalk_core::record::SiteFile;
use serde_json::{Value, json};

use super::judge_trees::{complete, day, look, rules};

/// A property of copies of one tree, each with a place of its own.
fn property(tree: &Value, count: usize) -> SiteFile {
    let mut file = complete();
    let copies = (0..count).map(|place| {
        let mut tree = tree.clone();
        tree["id"] = format!("tree-{place}").into();
        tree["tag"] = format!("{place}").into();
        tree["position"]["lon_deg"] = (-71.1211 + 0.0004 * place as f64).into();
        tree
    });
    file["site"]["trees"] = copies.collect();
    serde_json::from_value(file).unwrap()
}

/// Seconds that this thread has worked, which other tests beside it do not lengthen; the clock on
/// the wall where the system does not tell.
fn worked_s(start: Instant) -> f64 {
    std::fs::read_to_string("/proc/thread-self/schedstat")
        .ok()
        .and_then(|text| text.split(' ').next()?.parse::<f64>().ok())
        .map_or_else(
            || start.elapsed().as_secs_f64(),
            |nanoseconds| nanoseconds / 1e9,
        )
}

/// Seconds on one core for all trees.
fn taken_s(file: &SiteFile) -> f64 {
    let rules = rules();
    let start = Instant::now();
    let before_s = worked_s(start);
    let site = SiteContext::new(file, &rules, day(), Some(9));
    let trees = &file.site.trees;
    let judged = trees.iter().map(|tree| judge_tree(&site, tree));
    assert_eq!(
        judged.filter(|judged| judged.score.is_none()).count() % trees.len(),
        0
    );
    worked_s(start) - before_s
}

#[test]
fn thirty_full_checks_take_less_than_a_second() {
    let mut file = complete();
    let readings: Vec<Value> = (0..6)
        .map(|place| {
            json!({"bearing_deg": 60.0 * f64::from(place), "shell_cm": 18.0, "method": "drill"})
        })
        .collect();
    look(&mut file)["sections"] = json!([
        {"id": "low", "height_m": 0.5, "diameter_cm": 66.0, "readings": readings},
        {"id": "high", "height_m": 3.0, "diameter_cm": 60.0, "readings": readings},
    ]);
    let file = property(&file["site"]["trees"][0], 30);
    let taken_s = taken_s(&file);
    println!("30 full checks with two sections each: {taken_s:.3} s");
    let most_s = if cfg!(debug_assertions) { 60.0 } else { 1.0 };
    assert!(taken_s < most_s, "{taken_s} s");
}

#[test]
fn a_street_of_triaged_trees_takes_microseconds_each() {
    let mut tree = complete()["site"]["trees"][0].clone();
    tree["work"] = json!([]);
    tree["inspections"] = json!([{"id": "t", "visit": "v", "level": "triage", "life": "alive",
        "height": {"height_m": 12.0}, "girth": {"girth_cm": 90.0}, "crown": {"radius_m": 4.0}}]);
    let file = property(&tree, 5000);
    let taken_s = taken_s(&file);
    println!("5,000 triaged trees: {taken_s:.3} s");
    let most_s = if cfg!(debug_assertions) { 20.0 } else { 1.0 };
    assert!(taken_s < most_s, "{taken_s} s");
}
