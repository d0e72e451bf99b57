//! The judgement brought up to an edit: after most edits one tree is read, judged, and set against
//! the trees around it; everything else stands as it was judged.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::inner::Inner;
use super::judged::{JudgedSite, hour_that_counts, kept_text};
use crate::error::BookError;
use crate::judge::{SiteContext, judge_again, rules_for};
use crate::record::{Id, Judgement};

impl Inner {
    /// The site judged last, brought up to what this phone edited since. Nothing where it has to be
    /// read whole; what was judged then stays at hand.
    pub(super) fn refreshed(&mut self, site: &Id) -> Result<Option<Arc<JudgedSite>>, BookError> {
        let last = self.judged.take().or_else(|| self.judged_before.take());
        let Some(last) = last else {
            return Ok(None);
        };
        let today = self.clock.today();
        let hour = hour_that_counts(&last.loaded.file, today, self.clock.hour());
        let as_of = (last.judged.as_of, last.hour);
        let fits = last.loaded.file.site.id == *site && as_of == (today, hour);
        let mut last = match Arc::try_unwrap(last) {
            Ok(last) if fits && last.before_lowering.is_none() => last,
            Ok(last) => return self.put_back(Arc::new(last)),
            Err(shared) => return self.put_back(shared),
        };
        let reader = self.store.read();
        let seq = reader.last_seq()?;
        let changed = match reader.refresh_site(&mut last.loaded, last.seq)? {
            Some(changed) if last.shared.holds(&last.loaded.file) => changed,
            _ => return self.put_back(Arc::new(last)),
        };
        last.seq = seq;
        if changed.is_empty() {
            return Ok(Some(self.hold(last)));
        }
        let last = judged_anew(last, &changed)?;
        self.keep(site, &last, &changed)?;
        Ok(Some(self.hold(last)))
    }

    fn hold(&mut self, judged: JudgedSite) -> Arc<JudgedSite> {
        let judged = Arc::new(judged);
        self.judged = Some(judged.clone());
        judged
    }

    fn put_back(&mut self, last: Arc<JudgedSite>) -> Result<Option<Arc<JudgedSite>>, BookError> {
        self.judged_before = Some(last);
        Ok(None)
    }

    /// Keeps the answers of the trees that changed.
    fn keep(
        &mut self,
        site: &Id,
        judged: &JudgedSite,
        changed: &BTreeSet<Id>,
    ) -> Result<(), BookError> {
        let is_fresh = |answer: &&Judgement| changed.contains(&answer.tree);
        let mut fresh = Vec::new();
        for answer in judged.judged.trees.iter().filter(is_fresh) {
            if let Some(key) = judged.keys.get(&answer.tree) {
                fresh.push(kept_text(key, answer)?);
            }
        }
        match fresh.is_empty() {
            true => Ok(()),
            false => self.store.keep_judgements(site, &fresh),
        }
    }
}

/// The trees that changed are judged, whatever their key was.
fn judged_anew(last: JudgedSite, changed: &BTreeSet<Id>) -> Result<JudgedSite, BookError> {
    let JudgedSite {
        loaded,
        judged,
        hour,
        seq,
        mut keys,
        shared,
        before_lowering,
    } = last;
    keys.retain(|tree, _| !changed.contains(tree));
    let trees = loaded.file.site.trees.iter();
    for tree in trees.filter(|tree| changed.contains(&tree.id)) {
        keys.insert(tree.id.clone(), shared.key(tree)?);
    }
    let rules = rules_for(&loaded.file)?;
    let as_of = judged.as_of;
    let context = SiteContext::new(&loaded.file, &rules, as_of, hour);
    let judged = judge_again(&context, judged, changed);
    Ok(JudgedSite {
        loaded,
        judged,
        hour,
        seq,
        keys,
        shared,
        before_lowering,
    })
}

#[cfg(test)]
mod tests {
    use super::super::clock::{BookClock, FixedClock};
    use super::super::judged::{Answers, judge_loaded};
    use super::*;
    use crate::intake::{make_unique, read_site_file};
    use crate::pages::{CommandKind as C, Entry, EntryValue};
    use crate::record::{Moment, Site};

    /// 2026-05-14, 09:10 at UTC−4.
    const MORNING: Moment = Moment {
        utc_ms: 1_778_764_200_000,
        offset_min: -240,
    };

    /// Trees to be felled, near each other, of which the first has no work.
    fn grove() -> String {
        let trees: Vec<serde_json::Value> = (0..9)
            .map(|tag| {
                let work = if tag == 0 {
                    "[]"
                } else {
                    r#"[{"operation": "removal"}]"#
                };
                let work: serde_json::Value = serde_json::from_str(work).unwrap();
                serde_json::json!({"tag": tag.to_string(), "species": "Acer rubrum",
                    "way": "fell_whole", "work": work,
                    "position": {"lat_deg": 42.33 + f64::from(tag) * 0.0002, "lon_deg": -71.12},
                    "inspections": [{"visit": "2026-05-14", "level": "full_check",
                        "life": "alive", "height": {"height_m": 11}, "lean": {"lean_deg": 0},
                        "crown": {"radius_m": 3}}]})
            })
            .collect();
        serde_json::json!({"format": 1, "site": {"name": "Grove", "rule_set": "us",
            "visits": [{"day": "2026-05-14"}], "trees": trees}})
        .to_string()
    }

    fn entry(input: &str, value: EntryValue) -> Vec<Entry> {
        let input = input.to_owned();
        vec![Entry { input, value }]
    }

    fn typed(input: &str, typed: &str) -> Vec<Entry> {
        let typed = typed.to_owned();
        entry(input, EntryValue::Number { typed })
    }

    fn text(input: &str, text: &str) -> Vec<Entry> {
        let text = text.to_owned();
        entry(input, EntryValue::Words { text })
    }

    fn chosen(input: &str, id: &str) -> Vec<Entry> {
        entry(input, EntryValue::Choice { id: id.to_owned() })
    }

    /// An edit by number: of a tree, of the list of trees, of the site, of the book, or back.
    fn edit_of(number: u64, site: &Site) -> (C, Id, Vec<Entry>) {
        let trees = &site.trees;
        let at = (number / 16) as usize % trees.len().max(1);
        let Some(tree) = trees.get(at) else {
            return (C::Undo, site.id.clone(), Vec::new());
        };
        let look = tree.inspections.first().map(|look| look.id.clone());
        let work = tree.work.first().map(|work| work.id.clone());
        let of_tree = tree.id.clone();
        match (number % 16, look, work) {
            (0 | 1, Some(look), _) => {
                let height = typed("tree.height", &format!("{} m", 5 + number % 23));
                (C::RecordMeasures, look, height)
            }
            (2, Some(look), _) => {
                let crown = typed("tree.crown_radius", &format!("{} m", 1 + number % 9));
                (C::RecordMeasures, look, crown)
            }
            (3, Some(look), _) => (C::RecordMeasures, look, chosen("tree.life", "dead")),
            (4, _, Some(work)) => (C::FinishWork, work, Vec::new()),
            (5, _, Some(work)) => (C::RemoveWork, work, Vec::new()),
            (6, _, _) => (C::AddWork, of_tree, chosen("work.operation", "removal")),
            (7, _, _) => (C::ChangeTree, of_tree, chosen("tree.way", "prune")),
            (8, _, _) => (
                C::ChangeTree,
                of_tree,
                text("tree.tag", &format!("n{number}")),
            ),
            (9, _, _) => {
                let place = EntryValue::Fix {
                    lat_deg: 42.33 + (number % 50) as f64 * 0.000_05,
                    lon_deg: -71.12,
                    accuracy_m: Some(3.0),
                };
                (C::ChangeTree, of_tree, entry("tree.position", place))
            }
            (10, _, _) => {
                let walk = typed("tree.walk_order", &(1 + number % 12).to_string());
                (C::ChangeTree, of_tree, walk)
            }
            (11, _, _) => (C::RemoveTree, of_tree, Vec::new()),
            (12, _, _) => {
                let tag = text("tree.tag", &format!("m{number}"));
                (C::AddTree, site.id.clone(), tag)
            }
            (13, _, _) => (
                C::ChangeSite,
                site.id.clone(),
                text("site.note", &number.to_string()),
            ),
            (14, _, _) => {
                let name = text("person.name", &format!("Ana {number}"));
                (C::AddPerson, Id::default(), name)
            }
            _ if number.is_multiple_of(3) => (C::Redo, site.id.clone(), Vec::new()),
            _ => (C::Undo, site.id.clone(), Vec::new()),
        }
    }

    #[test]
    fn after_any_edit_the_kept_judgement_is_the_one_made_anew() {
        let folder = tempfile::tempdir().unwrap();
        let clock = BookClock::Fixed(FixedClock::at(MORNING).unwrap());
        let mut inner = Inner::open(folder.path(), "phone", clock).unwrap();
        let mut file = read_site_file(grove().as_bytes(), &BTreeSet::new()).unwrap();
        make_unique(&mut file, &[]);
        let site = inner.put_site_file(&file).unwrap().record;
        inner.judged(&site).unwrap();
        let (mut number, mut patched) = (20_260_514_u64, 0);
        for turn in 0..240 {
            // A linear congruential generator (Knuth's constants), its upper bits.
            number = number
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            let now = inner.judged(&site).unwrap();
            let (command, about, entries) = edit_of(number >> 33, &now.loaded.file.site);
            drop(now);
            let token = format!("turn {turn}");
            // What cannot be done, such as a tag used twice, is refused and changes nothing.
            let before = inner.judged.take();
            let _ = inner.act(command, &about, &entries, &token);
            (inner.judged, inner.judged_before) = (None, before);
            patched += u32::from(inner.refreshed(&site).unwrap().is_some());
            let kept = inner.judged(&site).unwrap();

            let loaded = inner.store.read().load_site(&site).unwrap();
            let today = inner.clock.today();
            let hour = inner.clock.hour();
            let anew = judge_loaded(loaded, today, hour, &Answers::new()).unwrap();
            assert_eq!(kept.loaded, anew.loaded, "turn {turn}, {command:?}");
            assert_eq!(kept.judged, anew.judged, "turn {turn}, {command:?}");
            assert_eq!(kept.keys, anew.keys, "turn {turn}, {command:?}");
        }
        assert!(
            patched > 100,
            "{patched} of 240 were brought up to the edit"
        );
    }
}
