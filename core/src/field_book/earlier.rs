//! What a tree was like at the visit before the newest one: as signed then, else worked out anew.

use super::inner::Inner;
use super::judged::{JudgedSite, hour_that_counts, judge_file};
use crate::error::BookError;
use crate::pages::{Earlier, SignedAnswer, days_compared, seen_until};
use crate::record::{Day, Id, Inspection, Judgement, Moment, Noun, Site, SiteFile, Tree};

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
        let last = self.signatures(&newest.id)?.pop();
        Ok(last.and_then(|signed| signed.judgement))
    }

    /// Who signed a judgement of a tree last, and what it said.
    pub(super) fn signed_last(
        &mut self,
        site: &Id,
        tree: &Id,
    ) -> Result<Option<SignedAnswer>, BookError> {
        let judged = self.judged(site)?;
        let mut trees = judged.loaded.file.site.trees.iter();
        let known = trees.find(|one| one.id == *tree);
        let mut all = Vec::new();
        for look in known.iter().flat_map(|tree| &tree.inspections) {
            all.extend(self.signatures(&look.id)?);
        }
        Ok(all.into_iter().max_by_key(|signed| signed.at.utc_ms))
    }

    /// The signatures of an inspection, in the order in which they were made.
    fn signatures(&self, look: &Id) -> Result<Vec<SignedAnswer>, BookError> {
        let record = self.store.read().record(Noun::Inspection, look)?;
        let signed = record.get("signed").and_then(|signed| signed.as_array());
        let read = |one: &serde_json::Value| {
            let judgement = one.get("judgement").cloned();
            Some(SignedAnswer {
                by: one.get("by")?.as_str()?.to_owned(),
                at: serde_json::from_value(one.get("at")?.clone()).ok()?,
                judgement: judgement.and_then(|judged| serde_json::from_value(judged).ok()),
            })
        };
        Ok(signed.map_or_else(Vec::new, |signed| signed.iter().filter_map(read).collect()))
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
