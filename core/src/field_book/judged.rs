//! The judgement of a site, worked out after each edit and kept: in memory, and beside the log.
//!
//! A tree's answer is kept with a key made of all that goes into it (records, rule set, version of
//! the method, day, hour), so that an edit to one tree judges one tree anew.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use super::fill::defect;
use super::inner::Inner;
use super::standing::{lower_for_standing, lower_for_unread};
use crate::error::BookError;
use crate::judge::{METHOD_VERSION, SiteContext, judge_context_by, judge_tree, rules_for};
use crate::record::{Day, Id, Judgement, Position, Site, SiteFile, SiteJudgement, Tree, Visit};
use crate::store::{LoadedSite, Reader};

/// A site with its judgement of the day and hour.
#[derive(Debug)]
pub(super) struct JudgedSite {
    /// The site and what has to be said beside it.
    pub(super) loaded: LoadedSite,
    /// Its judgement.
    pub(super) judged: SiteJudgement,
    /// The hour that picked the weather.
    pub(super) hour: Option<u32>,
    /// The last change in the log when it was loaded.
    pub(super) seq: i64,
    pub(super) keys: BTreeMap<Id, String>,
    /// What goes into every tree's key.
    pub(super) shared: SharedKey,
    /// The trees' answers before they were lowered for what stands or cannot be read; nothing where
    /// none was.
    pub(super) before_lowering: Option<Vec<Judgement>>,
}

impl JudgedSite {
    /// The trees' answers as the records alone give them.
    fn plain(&self) -> &[Judgement] {
        self.before_lowering.as_ref().unwrap_or(&self.judged.trees)
    }
}

/// A tree's answer with its key, as kept in the store.
#[derive(Serialize, Deserialize)]
struct KeptAnswer {
    key: String,
    judgement: Judgement,
}

/// Answers at hand, by tree, each with its key.
pub(super) type Answers = BTreeMap<Id, (String, Judgement)>;

impl Inner {
    /// The judgement of a site for now: what is kept where nothing changed, else worked out.
    pub(super) fn judged(&mut self, site: &Id) -> Result<Arc<JudgedSite>, BookError> {
        let today = self.clock.today();
        if let Some(known) = &self.judged
            && known.loaded.file.site.id == *site
            && known.judged.as_of == today
            && known.hour == hour_that_counts(&known.loaded.file, today, self.clock.hour())
        {
            return Ok(known.clone());
        }
        if let Some(refreshed) = self.refreshed(site)? {
            return Ok(refreshed);
        }
        let seq = self.store.read().last_seq()?;
        let loaded = self.store.read().load_site(site)?;
        let at_hand = self.answers_at_hand(&loaded.file)?;
        let mut judged = judge_loaded(loaded, today, self.clock.hour(), &at_hand)?;
        judged.seq = seq;
        let mut fresh = Vec::new();
        for judgement in judged.plain() {
            let Some(key) = judged.keys.get(&judgement.tree) else {
                continue;
            };
            if at_hand
                .get(&judgement.tree)
                .is_none_or(|(known, _)| known != key)
            {
                fresh.push(kept_text(key, judgement)?);
            }
        }
        if !fresh.is_empty() {
            self.store.keep_judgements(site, &fresh)?;
        }
        let judged = Arc::new(judged);
        self.judged = Some(judged.clone());
        Ok(judged)
    }

    /// The answers of the last judgement of the site, else those kept in the store.
    fn answers_at_hand(&mut self, file: &SiteFile) -> Result<Answers, BookError> {
        let last = self.judged.take().or_else(|| self.judged_before.take());
        if let Some(last) = last.filter(|last| last.loaded.file.site.id == file.site.id) {
            let of = |judgement: &Judgement| {
                let key = last.keys.get(&judgement.tree)?.clone();
                Some((judgement.tree.clone(), (key, judgement.clone())))
            };
            return Ok(last.plain().iter().filter_map(of).collect());
        }
        kept_answers(&self.store.read(), file)
    }

    /// What was judged is no longer what is there; its answers may still serve.
    pub(super) fn outdate_judgement(&mut self) {
        if let Some(judged) = self.judged.take() {
            self.judged_before = Some(judged);
        }
    }

    /// Judges the site that was judged last, so that its pages are ready. What keeps it from being
    /// judged is told by the page that needs it.
    pub(super) fn judge_after_edit(&mut self) {
        self.outdate_judgement();
        let site = self
            .judged_before
            .as_ref()
            .map(|judged| judged.loaded.file.site.id.clone());
        if let Some(site) = site {
            let _ = self.judged(&site);
        }
    }
}

/// The hour whose weather counts: the present one if it was noted, else the one before it. A note
/// holds to the end of the next hour (house); after that the weather is a gap again.
pub(super) fn hour_that_counts(file: &SiteFile, today: Day, now: u32) -> Option<u32> {
    let noted = |hour: u32| {
        let mut visits = file.site.visits.iter().filter(|visit| visit.day == today);
        visits.any(|visit: &Visit| visit.weather.iter().any(|at| at.hour == hour))
    };
    let before = now.checked_sub(1).filter(|before| noted(*before));
    Some(if noted(now) {
        now
    } else {
        before.unwrap_or(now)
    })
}

/// The answers that the store keeps for the trees of a site.
pub(super) fn kept_answers(reader: &Reader<'_>, file: &SiteFile) -> Result<Answers, BookError> {
    let mut kept = Answers::new();
    for tree in &file.site.trees {
        let text = reader.kept_judgement(tree.id.as_str())?;
        // What an older version kept in another form is worked out anew.
        if let Some(text) = text
            && let Ok(answer) = serde_json::from_str::<KeptAnswer>(&text)
        {
            kept.insert(tree.id.clone(), (answer.key, answer.judgement));
        }
    }
    Ok(kept)
}

/// Judges a site that was read; an answer at hand serves where its key is the same.
pub(super) fn judge_loaded(
    loaded: LoadedSite,
    today: Day,
    now: u32,
    at_hand: &Answers,
) -> Result<JudgedSite, BookError> {
    let hour = hour_that_counts(&loaded.file, today, now);
    let shared = SharedKey::of(&loaded.file, today, hour)?;
    let trees = loaded.file.site.trees.iter();
    let keys = trees
        .map(|tree| Ok((tree.id.clone(), shared.key(tree)?)))
        .collect::<Result<BTreeMap<Id, String>, BookError>>()?;
    let mut judged = judge_file(&loaded.file, today, hour, &|tree| {
        let (known, answer) = at_hand.get(&tree.id)?;
        (keys.get(&tree.id) == Some(known)).then(|| answer.clone())
    })?;
    let doubtful = !loaded.standing.is_empty() || !loaded.unread.is_empty();
    let before_lowering = doubtful.then(|| judged.trees.clone());
    lower_for_standing(&loaded, &mut judged, hour, &keys)?;
    lower_for_unread(&loaded, &mut judged);
    Ok(JudgedSite {
        loaded,
        judged,
        hour,
        seq: 0,
        keys,
        shared,
        before_lowering,
    })
}

/// Judges a site file; `kept` may have the answer of a tree.
pub(super) fn judge_file(
    file: &SiteFile,
    today: Day,
    hour: Option<u32>,
    kept: &(dyn Fn(&Tree) -> Option<Judgement> + Sync),
) -> Result<SiteJudgement, BookError> {
    let rules = rules_for(file)?;
    let context = SiteContext::new(file, &rules, today, hour);
    Ok(judge_context_by(&context, &|tree| {
        kept(tree).unwrap_or_else(|| judge_tree(&context, tree))
    }))
}

/// The first part of the key of every tree of a site: all that goes into its answer beside the tree.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct SharedKey {
    around: blake3::Hash,
    /// The plane of a site without an outline lies around its first tree.
    first: Option<Position>,
}

impl SharedKey {
    pub(super) fn of(
        file: &SiteFile,
        today: Day,
        hour: Option<u32>,
    ) -> Result<SharedKey, BookError> {
        let first = first_position(file);
        // Named one by one, so that no new part is forgotten.
        let SiteFile {
            format,
            site,
            crew,
            gear,
            codebook,
            house_values,
        } = file;
        let Site {
            id,
            name,
            client,
            address,
            rule_set,
            outline,
            rescue,
            note,
            targets,
            lines,
            permissions,
            visits,
            trees: _,
        } = site;
        let site = (id, name, client, address, rule_set, outline, rescue, note);
        let beside = (targets, lines, permissions, visits);
        let book = (crew, gear, codebook, house_values);
        let around = (
            METHOD_VERSION,
            today,
            hour,
            format,
            site,
            beside,
            book,
            first,
        );
        let around = blake3::hash(&serde_json::to_vec(&around).map_err(defect)?);
        Ok(SharedKey { around, first })
    }

    /// Whether it is still that of a site of which only trees have changed.
    pub(super) fn holds(&self, file: &SiteFile) -> bool {
        self.first == first_position(file)
    }

    /// The key of a tree.
    pub(super) fn key(&self, tree: &Tree) -> Result<String, BookError> {
        let mut hasher = blake3::Hasher::new();
        hasher.update(self.around.as_bytes());
        hasher.update(&serde_json::to_vec(tree).map_err(defect)?);
        Ok(hasher.finalize().to_hex().to_string())
    }
}

fn first_position(file: &SiteFile) -> Option<Position> {
    file.site.trees.iter().find_map(|tree| tree.position)
}

/// A tree's answer as the store keeps it.
pub(super) fn kept_text(key: &str, judgement: &Judgement) -> Result<(String, String), BookError> {
    let kept = KeptAnswer {
        key: key.to_owned(),
        judgement: judgement.clone(),
    };
    let text = serde_json::to_string(&kept).map_err(defect)?;
    Ok((judgement.tree.0.clone(), text))
}
