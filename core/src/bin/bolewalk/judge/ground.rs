//! What follows on the ground: what to close, move, guard and empty, which trees may not be worked
//! on together, and what the site as a whole still lacks.

use std::collections::{BTreeMap, BTreeSet};

use bolewalk_core::record::{Id, Reason, SiteFile, SiteJudgement, ZoneAction};
use bolewalk_core::words::{Said, Words};

use super::names;
use super::table::shown_zone;
use crate::lines::Lines;

pub fn told(file: &SiteFile, judgement: &SiteJudgement, words: &Words, lines: &mut Lines) {
    site_wide(&judgement.stops, "desk.site-stops", words, lines);
    site_wide(&judgement.gaps, "desk.site-gaps", words, lines);
    inside(file, judgement, words, lines);
    apart(judgement, words, lines);
}

fn site_wide(reasons: &[Reason], heading: &str, words: &Words, lines: &mut Lines) {
    if reasons.is_empty() {
        return;
    }
    lines.heading(&words.say(heading, &[]));
    for said in words.reasons(reasons) {
        lines.hung("  - ", &said);
    }
}

/// The trees for which one thing has to be done.
struct Concerned {
    said: String,
    trees: Vec<String>,
    landing: Vec<String>,
}

fn inside(file: &SiteFile, judgement: &SiteJudgement, words: &Words, lines: &mut Lines) {
    let mut found: BTreeMap<(ZoneAction, Id), Concerned> = BTreeMap::new();
    let mut order = Vec::new();
    for judged in &judgement.trees {
        // Where the work is done nothing is closed any more.
        let tree = names::tree(file, &judged.tree).filter(|tree| !tree.work_is_done());
        let zone = tree.and_then(|tree| shown_zone(tree, judged));
        for inside in zone.iter().flat_map(|zone| &zone.inside) {
            let key = (inside.action, inside.record.clone());
            let entry = found.entry(key.clone()).or_insert_with(|| {
                order.push(key);
                Concerned {
                    said: words.reason(&inside.reason),
                    trees: Vec::new(),
                    landing: Vec::new(),
                }
            });
            entry.trees.push(judged.tag.clone());
            if inside.in_drop_zone {
                entry.landing.push(judged.tag.clone());
            }
        }
    }
    lines.heading(&words.say("desk.inside", &[]));
    if found.is_empty() {
        lines.hung("  ", &words.say("desk.inside-nothing", &[]));
    }
    for (_, concerned) in found {
        lines.hung("  - ", &concerned.said);
        let trees = counted("desk.inside-trees", &concerned.trees, words);
        lines.hung("    ", &trees);
        if !concerned.landing.is_empty() {
            lines.hung(
                "    ",
                &counted("desk.inside-landing", &concerned.landing, words),
            );
        }
    }
}

fn counted(key: &str, tags: &[String], words: &Words) -> String {
    words.say(
        key,
        &[
            ("count", Said::Count(tags.len() as i64)),
            ("trees", Said::Text(&tags.join(", "))),
        ],
    )
}

fn apart(judgement: &SiteJudgement, words: &Words, lines: &mut Lines) {
    lines.heading(&words.say("desk.apart", &[]));
    if judgement.conflicts.is_empty() {
        lines.hung("  ", &words.say("desk.apart-none", &[]));
        return;
    }
    let mut apart: BTreeMap<&Id, BTreeSet<&Id>> = BTreeMap::new();
    for pair in &judgement.conflicts {
        apart.entry(&pair.tree).or_default().insert(&pair.other);
        apart.entry(&pair.other).or_default().insert(&pair.tree);
    }
    for judged in &judgement.trees {
        let Some(own) = apart.get(&judged.tree) else {
            continue;
        };
        // In walking order, as everywhere.
        let others = judgement.trees.iter().filter(|one| own.contains(&one.tree));
        let others: Vec<String> = others.map(|one| one.tag.clone()).collect();
        if !others.is_empty() {
            let said = words.say(
                "desk.apart-tree",
                &[
                    ("tree", Said::Text(&judged.tag)),
                    ("others", Said::Text(&others.join(", "))),
                ],
            );
            lines.hung("  - ", &said);
        }
    }
}
