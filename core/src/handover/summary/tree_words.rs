//! How a tree, its measures and its work are said to a client.

use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::judge::wood::find_species;
use crate::record::{
    ClimbNeed, Look, OtherAccess, Priority, Quantity, Verdict, WayOfWorking, Work,
};
use crate::words::Said;

impl PaperDesk<'_> {
    /// The species by its common name, where the table has one; else as it was written down.
    pub fn species(&self, seen: &TreeSeen) -> String {
        let Some(written) = &seen.tree.species else {
            return self.say("summary.species-unknown");
        };
        let Some(species) = find_species(written) else {
            return written.clone();
        };
        self.alone(&self.words.species_name(species))
    }

    /// The common name with the Latin one.
    pub fn species_in_full(&self, seen: &TreeSeen) -> String {
        let common = self.species(seen);
        match &seen.tree.species {
            Some(latin) if *latin != common => self.words.say(
                "summary.species-in-full",
                &[
                    ("common", Said::Text(&common)),
                    ("latin", Said::Text(latin)),
                ],
            ),
            _ => common,
        }
    }

    /// Tag and species.
    pub fn tree_name(&self, seen: &TreeSeen) -> String {
        self.words.say(
            "summary.tree-name",
            &[
                ("tag", Said::Text(&seen.tree.tag)),
                ("species", Said::Text(&self.species_in_full(seen))),
            ],
        )
    }

    /// The height with its standard error, where one was given.
    pub fn height(&self, seen: &TreeSeen) -> Option<String> {
        let height = seen.newest(|look| look.height.as_ref())?;
        Some(
            self.words
                .measure_with_se(height.height_m, height.se_m, Quantity::LengthM),
        )
    }

    /// The girth over bark.
    pub fn girth(&self, seen: &TreeSeen) -> Option<String> {
        let girth = seen.newest(|look| look.girth.as_ref())?;
        Some(self.words.girth(girth.girth_cm))
    }

    /// The work in one line each, with its priority.
    pub fn work_lines(&self, seen: &TreeSeen) -> Vec<String> {
        seen.tree
            .work
            .iter()
            .map(|work| self.work_line(work))
            .collect()
    }

    /// The work in a few words, without priority and note.
    pub fn work_short(&self, seen: &TreeSeen) -> Vec<String> {
        let work = &seen.tree.work;
        work.iter()
            .map(|work| self.words.word_of(&work.operation))
            .collect()
    }

    fn work_line(&self, work: &Work) -> String {
        let mut said = self.words.label_of(&work.operation);
        if let Some(priority) = work.priority {
            let priority = self.words.word_of(&priority);
            said = self.words.say(
                "summary.work-with-priority",
                &[
                    ("work", Said::Text(&said)),
                    ("priority", Said::Text(&priority)),
                ],
            );
        }
        if let Some(note) = &work.note {
            said = self.words.say(
                "summary.work-note",
                &[("work", Said::Text(&said)), ("note", Said::Text(note))],
            );
        }
        match &work.outcome {
            Some(outcome) => format!("{said} – {}", self.words.outcome(outcome)),
            None => said,
        }
    }

    /// The most urgent work of a tree.
    pub fn most_urgent(&self, seen: &TreeSeen) -> Option<Priority> {
        seen.tree.work.iter().filter_map(|work| work.priority).min()
    }

    /// How the crew would reach the work; never the verdict on a climb.
    pub fn reach(&self, seen: &TreeSeen) -> String {
        let judgement = seen.judgement;
        let key = match seen.tree.way {
            Some(WayOfWorking::NoWork) => "summary.reach-no-work",
            Some(WayOfWorking::InspectOnly) => "summary.reach-inspect",
            Some(WayOfWorking::PlatformOrCrane) => "summary.reach-platform",
            Some(WayOfWorking::FellWhole) => "summary.reach-ground",
            None => "summary.reach-open",
            Some(_) => {
                let other = seen.tree.other_access.as_deref().unwrap_or_default();
                let may_climb = judgement.is_some_and(|judgement| {
                    judgement.climb == ClimbNeed::Needed
                        && matches!(judgement.verdict, Verdict::NoStop | Verdict::Limited)
                });
                let no_climb = judgement.is_some_and(|j| j.climb == ClimbNeed::NotNeeded);
                match other.first() {
                    _ if may_climb => "summary.reach-climber",
                    Some(OtherAccess::Ground) => "summary.reach-ground",
                    Some(OtherAccess::Platform | OtherAccess::Crane) => "summary.reach-platform",
                    Some(OtherAccess::NeighbouringTree) => "summary.reach-neighbour-tree",
                    _ if no_climb => "summary.reach-ground",
                    _ => "summary.reach-open",
                }
            }
        };
        self.say(key)
    }

    /// The parts of the walk-round that were not, or not fully, seen, with what hid them.
    pub fn unseen_parts(&self, seen: &TreeSeen) -> Vec<String> {
        seen.parts()
            .into_iter()
            .filter(|(_, look, _)| *look != Look::Seen)
            .map(|(part, look, hidden_by)| {
                let part = self.words.word_of(&part);
                let key = match (look, hidden_by) {
                    (Look::PartSeen, Some(_)) => "summary.part-of-hidden",
                    (Look::PartSeen, None) => "summary.part-of",
                    (_, Some(_)) => "summary.part-hidden",
                    (_, None) => return part,
                };
                self.words.say(
                    key,
                    &[
                        ("part", Said::Text(&part)),
                        ("hidden", Said::Text(hidden_by.unwrap_or_default())),
                    ],
                )
            })
            .collect()
    }
}
