//! Where several values stand, or a value cannot be read, the lower verdict counts.

use std::collections::BTreeMap;

use super::judged::{SharedKey, judge_file};
use crate::error::BookError;
use crate::record::{Id, Judgement, Reason, SiteJudgement, Tree, Verdict};
use crate::store::{LoadedSite, UnreadValue};

/// Judges the site with each other standing value; the lower verdict of each tree counts until a
/// person settles it.
pub(super) fn lower_for_standing(
    loaded: &LoadedSite,
    judged: &mut SiteJudgement,
    hour: Option<u32>,
    keys: &BTreeMap<Id, String>,
) -> Result<(), BookError> {
    let plain: BTreeMap<Id, Judgement> = match loaded.standing.is_empty() {
        true => BTreeMap::new(),
        false => {
            let answers = judged.trees.iter();
            answers.map(|one| (one.tree.clone(), one.clone())).collect()
        }
    };
    for standing in &loaded.standing {
        let others = standing.values.len().saturating_sub(1);
        for value in standing.values.iter().take(others) {
            let Some(file) = loaded.with_value(standing, value) else {
                continue;
            };
            let shared = SharedKey::of(&file, judged.as_of, hour)?;
            // Most trees are as they were: their answers stand.
            let stands = |tree: &Tree| {
                let key = shared.key(tree).ok()?;
                let known = keys.get(&tree.id) == Some(&key);
                known.then(|| plain.get(&tree.id).cloned()).flatten()
            };
            let other = judge_file(&file, judged.as_of, hour, &stands)?;
            for answer in &mut judged.trees {
                let theirs = other.trees.iter().find(|one| one.tree == answer.tree);
                if let Some(theirs) = theirs
                    && is_lower(theirs, answer)
                {
                    *answer = theirs.clone();
                }
            }
        }
    }
    if !loaded.standing.is_empty() {
        let count = loaded.standing.len() as f64;
        judged.gaps.push(Reason::new("gap.standing-values").number(
            "count",
            count,
            crate::record::Quantity::Count,
        ));
    }
    Ok(())
}

/// The lower verdict; among equal ones the lower score.
fn is_lower(one: &Judgement, other: &Judgement) -> bool {
    let low = |answer: &Judgement| answer.score.as_ref().map_or(0, |score| score.low);
    (one.verdict, low(one)) < (other.verdict, low(other))
}

/// What this version cannot read is a gap: a tree, or where it is not known of which tree the whole
/// site, is judged no better than still to check.
pub(super) fn lower_for_unread(loaded: &LoadedSite, judged: &mut SiteJudgement) {
    for unread in &loaded.unread {
        let tree = tree_of(loaded, unread);
        let gap = Reason::new("gap.unread-value").term("noun", &noun_key(&unread.noun));
        if tree.is_none() {
            judged.gaps.push(gap.clone());
        }
        for answer in &mut judged.trees {
            if tree.as_ref().is_none_or(|tree| *tree == answer.tree) {
                answer.gaps.push(gap.clone());
                answer.verdict = answer.verdict.min(Verdict::Incomplete);
            }
        }
    }
}

/// The catalogue entry of a noun by its table name; one that this version does not know is a
/// record.
fn noun_key(table: &str) -> String {
    match crate::record::Noun::of_table(table) {
        Some(_) => format!("noun.{}", table.replace('_', "-")),
        None => "noun.record".to_owned(),
    }
}

/// The tree that holds a record which is there; a record that was left out whole is not found, and
/// counts for every tree.
fn tree_of(loaded: &LoadedSite, unread: &UnreadValue) -> Option<crate::record::Id> {
    if unread.field.is_empty() {
        return None;
    }
    let holds = |tree: &&crate::record::Tree| {
        serde_json::to_value(tree).is_ok_and(|tree| has_record(&tree, unread.record.as_str()))
    };
    let trees = &loaded.file.site.trees;
    trees.iter().find(holds).map(|tree| tree.id.clone())
}

fn has_record(value: &serde_json::Value, id: &str) -> bool {
    match value {
        serde_json::Value::Object(fields) => {
            fields.get("id").and_then(|own| own.as_str()) == Some(id)
                || fields.values().any(|part| has_record(part, id))
        }
        serde_json::Value::Array(items) => items.iter().any(|item| has_record(item, id)),
        _ => false,
    }
}
