//! A tree chosen among many: looked for by its tag or its species.

use super::desk::PageDesk;
use super::offer::{InputKind, OfferedChoice};
use super::species::species_words;
use crate::record::{Id, Site, Tree};
use crate::words::{Words, closeness};

/// Up to so many trees are all shown to be tapped (house).
const ALL_SHOWN: usize = 12;
/// Most trees in an answer, and most to be tapped without typing.
const MOST: usize = 12;
const MOST_FIRST: usize = 6;

impl PageDesk<'_> {
    /// The input for one tree of the site: all of a few, a search among many.
    pub(super) fn tree_input(&self) -> InputKind {
        let trees = self.site.map_or(&[][..], |(site, _)| &site.trees);
        let choices = |most: usize| {
            let shown = in_walking_order(trees).into_iter().take(most);
            shown.map(|tree| choice(&self.words, tree)).collect()
        };
        if trees.len() <= ALL_SHOWN {
            return InputKind::Choice {
                choices: choices(ALL_SHOWN),
            };
        }
        InputKind::Search {
            first: choices(MOST_FIRST),
            chosen: String::new(),
        }
    }

    /// The tag of a tree of the site.
    pub(super) fn tag_of(&self, id: &str) -> String {
        let trees = self.site.map_or(&[][..], |(site, _)| &site.trees);
        let found = trees.iter().find(|tree| tree.id.as_str() == id);
        found.map_or_else(String::new, |tree| tree.tag.clone())
    }
}

/// The trees whose tag or species comes near what was typed, the nearest first; the first of the
/// walk where nothing is typed.
pub fn trees_suggested(words: &Words, site: &Site, typed: &str) -> Vec<OfferedChoice> {
    let trees = in_walking_order(&site.trees);
    if typed.trim().is_empty() {
        let first = trees.into_iter().take(MOST);
        return first.map(|tree| choice(words, tree)).collect();
    }
    let mut found: Vec<(u32, &Tree)> = trees
        .into_iter()
        .filter_map(|tree| Some((nearness(typed, tree)?, tree)))
        .collect();
    found.sort_by_key(|(far, _)| *far);
    let nearest = found.into_iter().take(MOST);
    nearest.map(|(_, tree)| choice(words, tree)).collect()
}

/// The tree that a tag names, if one of the site has it; capitals do not matter.
pub fn tree_of_tag(site: &Site, tag: &str) -> Option<Id> {
    let wanted = tag.trim().to_lowercase();
    let mut trees = site.trees.iter();
    trees
        .find(|tree| tree.tag.trim().to_lowercase() == wanted)
        .map(|tree| tree.id.clone())
}

/// The tag itself first, then tags that begin so, then what is near.
fn nearness(typed: &str, tree: &Tree) -> Option<u32> {
    if typed.trim().eq_ignore_ascii_case(tree.tag.trim()) {
        return Some(0);
    }
    let by_tag = closeness(typed, &tree.tag).map(|far| 1 + far);
    let by_species = || {
        let species = tree.species.as_deref()?;
        closeness(typed, species).map(|far| 2 + far)
    };
    by_tag.or_else(by_species)
}

fn in_walking_order(trees: &[Tree]) -> Vec<&Tree> {
    let mut order: Vec<&Tree> = trees.iter().collect();
    order.sort_by_key(|tree| tree.walk_order.unwrap_or(u32::MAX));
    order
}

fn choice(words: &Words, tree: &Tree) -> OfferedChoice {
    OfferedChoice {
        id: tree.id.0.clone(),
        words: tree.tag.clone(),
        help: match &tree.species {
            Some(name) => species_words(words, name),
            None => String::new(),
        },
        aside: false,
        drawing: None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, UnitSystem};

    fn site() -> Site {
        let trees: Vec<serde_json::Value> = (1..=40)
            .map(|tag| {
                let species = if tag == 7 { "Fagus sylvatica" } else { "Acer rubrum" };
                serde_json::json!({"id": format!("t{tag}"), "tag": tag.to_string(), "species": species})
            })
            .collect();
        serde_json::from_value(serde_json::json!({"name": "Hill", "trees": trees})).unwrap()
    }

    fn found(typed: &str) -> Vec<String> {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let choices = trees_suggested(&words, &site(), typed);
        choices.into_iter().map(|one| one.words).collect()
    }

    #[test]
    fn the_tag_itself_comes_first_then_tags_that_begin_so() {
        assert_eq!(found("3")[..3], ["3", "30", "31"]);
        assert_eq!(found("fagus"), ["7"]);
        assert_eq!(found("").len(), MOST);
        assert!(found("zelkova").is_empty());
    }

    #[test]
    fn a_tag_names_its_tree_whatever_its_capitals() {
        let mut site = site();
        site.trees[4].tag = "Oak 5".to_owned();
        assert_eq!(tree_of_tag(&site, " oak 5 "), Some(Id::from("t5")));
        assert_eq!(tree_of_tag(&site, "5"), None);
    }
}
