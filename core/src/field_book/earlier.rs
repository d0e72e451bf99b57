//! What a tree was like at the visit before the newest one: as signed then, else worked out anew.

use super::inner::Inner;
use super::judged::{JudgedSite, hour_that_counts, judge_file};
use crate::error::BookError;
use crate::pages::{Earlier, days_compared, seen_until};
use crate::record::{Day, Inspection, Judgement, Moment, Noun, Site, SiteFile, Tree};

impl Inner {
    /// The tree and its judgement at the visit before the newest one; nothing before there are two.
    pub(super) fn earlier(
        &self,
        judged: &JudgedSite,
        tree: &Tree,
    ) -> Result<Option<Earlier>, BookError> {
        let file = &judged.loaded.file;
        let Some((day, _)) = days_compared(&file.site, tree) else {
            return Ok(None);
        };
        let then = seen_until(&file.site, tree, day);
        let signed = self.signed_on(&then)?;
        let judgement = match &signed {
            Some(judgement) => Some(judgement.clone()),
            None => judged_on(file, &then, day)?,
        };
        Ok(judgement.map(|judgement| Earlier {
            day,
            tree: then,
            judgement,
            signed: signed.is_some(),
        }))
    }

    /// The judgement that was signed last on the newest look at a tree; one that this version cannot
    /// read counts as not signed.
    fn signed_on(&self, tree: &Tree) -> Result<Option<Judgement>, BookError> {
        let begun = |look: &&Inspection| look.at.map_or(i64::MIN, |at| at.utc_ms);
        let mut looks: Vec<&Inspection> = tree.inspections.iter().collect();
        looks.sort_by_key(begun);
        let Some(newest) = looks.pop() else {
            return Ok(None);
        };
        let record = self.store.read().record(Noun::Inspection, &newest.id)?;
        let signed = record.get("signed").and_then(|signed| signed.as_array());
        let last = signed.and_then(|signed| signed.last()?.get("judgement").cloned());
        Ok(last.and_then(|judgement| serde_json::from_value(judgement).ok()))
    }
}

/// A tree judged by what was known on a day, at the hour of the last look.
fn judged_on(file: &SiteFile, then: &Tree, day: Day) -> Result<Option<Judgement>, BookError> {
    let alone = SiteFile {
        site: Site {
            trees: vec![then.clone()],
            ..file.site.clone()
        },
        ..file.clone()
    };
    let last = then
        .inspections
        .iter()
        .filter_map(|look| look.at)
        .max_by_key(|at| at.utc_ms);
    let hour = last
        .map(local_hour)
        .and_then(|hour| hour_that_counts(&alone, day, hour));
    let judged = judge_file(&alone, day, hour, &|_| None)?;
    Ok(judged.trees.into_iter().next())
}

fn local_hour(at: Moment) -> u32 {
    let local_ms = at.utc_ms + i64::from(at.offset_min) * 60_000;
    (local_ms.rem_euclid(86_400_000) / 3_600_000) as u32
}
