//! The judgement of a property, on one core.

use bolewalk_core::judge::{SiteContext, judge_site, judge_tree};
use bolewalk_core::record::{SiteFile, Tree, Verdict};
use serde_json::{Value, json};

use crate::bench::{Bench, Outcome, latest_day, rules};
use crate::row::Row;
use crate::times::timed;

pub fn rows(bench: &Bench) -> Outcome<Vec<Row>> {
    let (_, demo) = bench.demo()?;
    let sound = sound_tree(&demo)?;
    Ok(vec![
        row(
            "judgement: 30 full checks, two sections each",
            &property(&demo, &with_sections(&sound)?, 30),
            true,
        )?,
        row(
            "judgement: 5,000 triaged trees",
            &property(&demo, &triaged(&sound)?, 5000),
            false,
        )?,
    ])
}

fn row(job: &str, file: &SiteFile, scored: bool) -> Outcome<Row> {
    let (rules, day) = (rules()?, latest_day(file)?);
    let ours = || {
        let (seconds, scores) = timed(|| {
            let site = SiteContext::new(file, &rules, day, None);
            let judged = file.site.trees.iter().map(|tree| judge_tree(&site, tree));
            Ok(judged.filter(|judged| judged.score.is_some()).count())
        })?;
        // A tree that stops or gaps hold back before its score would make a light job of it.
        match scored && scores < file.site.trees.len() {
            true => Err(format!("only {scores} trees have a score").into()),
            false => Ok(seconds),
        }
    };
    Ok(Row::alone(job, ours)?.noted("on one core; the app works out the trees of a site on all."))
}

/// A tree of the demo that nothing keeps from being climbed: every part of the judgement runs.
fn sound_tree(demo: &SiteFile) -> Outcome<Tree> {
    let judged = judge_site(demo, &rules()?, latest_day(demo)?, None);
    let sound = judged
        .trees
        .iter()
        .find(|tree| tree.verdict == Verdict::NoStop);
    let id = &sound.ok_or("no tree of the demo may be climbed")?.tree;
    let tree = demo.site.trees.iter().find(|tree| tree.id == *id);
    Ok(tree.ok_or("a judgement without its tree")?.clone())
}

/// The tree's last look alone, with two sections of six readings.
fn with_sections(tree: &Tree) -> Outcome<Tree> {
    let readings: Vec<Value> = (0..6)
        .map(|place| json!({"bearing_deg": 60 * place, "shell_cm": 18.0, "method": "drill"}))
        .collect();
    let mut tree = tree.clone();
    let mut look = tree
        .inspections
        .pop()
        .ok_or("a tree that nobody looked at")?;
    look.sections = serde_json::from_value(json!([
        {"id": "low", "height_m": 0.5, "diameter_cm": 66.0, "readings": readings},
        {"id": "high", "height_m": 3.0, "diameter_cm": 60.0, "readings": readings},
    ]))?;
    look.wires_near = Some(false);
    tree.inspections = vec![look];
    Ok(tree)
}

/// The tree as a first look leaves it.
fn triaged(tree: &Tree) -> Outcome<Tree> {
    let visit = tree.inspections.last().map(|look| look.visit.to_string());
    let mut tree = tree.clone();
    tree.work = Vec::new();
    tree.inspections = serde_json::from_value(json!([{
        "id": "first", "visit": visit, "level": "triage", "life": "alive",
        "height": {"height_m": 12.0}, "girth": {"girth_cm": 90.0}, "crown": {"radius_m": 4.0},
    }]))?;
    Ok(tree)
}

/// The demo property with copies of one tree in place of its own, each on a spot of its own
/// and none under wires.
fn property(demo: &SiteFile, tree: &Tree, count: u32) -> SiteFile {
    let mut file = demo.clone();
    file.site.lines = Vec::new();
    file.site.trees = (0..count)
        .map(|place| {
            let mut tree = tree.clone();
            tree.id = format!("tree-{place}").as_str().into();
            tree.tag = place.to_string();
            if let Some(at) = &mut tree.position {
                at.lon_deg += 0.0004 * f64::from(place);
            }
            tree
        })
        .collect();
    file
}
