//! Species by the names that people know, looked for by typing.

use super::desk::PageDesk;
use super::offer::OfferedChoice;
use crate::judge::wood::{all_species, find_species};
use crate::words::{Said, Words, closeness};

/// Most choices in an answer: what a screen shows without scrolling far.
const MOST: usize = 12;
/// Most choices to be tapped without typing.
const MOST_FIRST: usize = 6;

/// Species, then genera, that come near what was typed, the nearest first; what was used last where
/// nothing is typed. Found by the common name in the reader's language, in English, or by the Latin
/// one.
pub fn species_suggested(words: &Words, typed: &str, used: &[String]) -> Vec<OfferedChoice> {
    if typed.trim().is_empty() {
        return used_first(words, used, MOST);
    }
    let recent = |latin: &str| {
        used.iter()
            .position(|one| one == latin)
            .unwrap_or(used.len())
    };
    let mut found: Vec<((u32, usize), OfferedChoice)> = Vec::new();
    for species in all_species() {
        let names = [
            &words.species_name(species),
            &species.common_name,
            &species.latin_name,
        ];
        let near = names.iter().filter_map(|name| closeness(typed, name)).min();
        if let Some(near) = near {
            let latin = &species.latin_name;
            found.push(((near, recent(latin)), choice(words, latin)));
        }
    }
    for genus in genera() {
        if let Some(near) = closeness(typed, genus) {
            // After the species that come as near.
            found.push(((near, used.len() + 1), choice(words, genus)));
        }
    }
    found.sort_by_key(|(rank, _)| *rank);
    found.dedup_by(|(_, one), (_, other)| one.id == other.id);
    found
        .into_iter()
        .map(|(_, choice)| choice)
        .take(MOST)
        .collect()
}

fn used_first(words: &Words, used: &[String], most: usize) -> Vec<OfferedChoice> {
    used.iter()
        .take(most)
        .map(|name| choice(words, name))
        .collect()
}

/// Genera of which the table has a species.
fn genera() -> Vec<&'static str> {
    let mut genera: Vec<&str> = all_species().iter().map(|one| one.genus.as_str()).collect();
    genera.dedup();
    genera
}

fn choice(words: &Words, name: &str) -> OfferedChoice {
    OfferedChoice::of(name, species_words(words, name))
}

/// A species as people know it, with its Latin name; a genus as a genus.
pub(super) fn species_words(words: &Words, name: &str) -> String {
    match find_species(name) {
        Some(known) if known.latin_name == known.genus => {
            words.say("page.genus", &[("genus", Said::Text(name))])
        }
        Some(known) => words.say(
            "summary.species-in-full",
            &[
                ("common", Said::Text(&words.species_name(known))),
                ("latin", Said::Text(&known.latin_name)),
            ],
        ),
        None if genera().contains(&name) => words.say("page.genus", &[("genus", Said::Text(name))]),
        None => name.to_owned(),
    }
}

impl PageDesk<'_> {
    /// Choices of a species to be tapped without typing.
    pub(super) fn species_first(&self) -> Vec<OfferedChoice> {
        used_first(&self.words, &self.species_used, MOST_FIRST)
    }

    /// The species as people know it, with its Latin name.
    pub fn species(&self, name: Option<&str>) -> String {
        match name {
            None => self.say("summary.species-unknown"),
            Some(name) => species_words(&self.words, name),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, UnitSystem};

    fn found(typed: &str, used: &[&str]) -> Vec<String> {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let used: Vec<String> = used.iter().map(|one| (*one).to_owned()).collect();
        let choices = species_suggested(&words, typed, &used);
        choices.into_iter().map(|choice| choice.id).collect()
    }

    #[test]
    fn typing_is_forgiven_in_common_and_latin_names() {
        // Names of USDA, NRCS: PLANTS database.
        assert_eq!(found("Quercus rubr", &[])[0], "Quercus rubra");
        assert_eq!(found("nothern red oak", &[])[0], "Quercus rubra");
        assert_eq!(found("LONDON PLANE", &[])[0], "Platanus x acerifolia");
        assert_eq!(found("doglas fir", &[])[0], "Pseudotsuga menziesii");
        assert_eq!(found("sycamre", &[]).len(), 2);
        assert!(found("xyzzy", &[]).is_empty());
    }

    #[test]
    fn what_was_used_last_comes_first_among_equals_and_when_nothing_is_typed() {
        assert_eq!(
            found(" ", &["Tilia cordata", "Malus"]),
            ["Tilia cordata", "Malus"]
        );
        assert_eq!(
            found("quercus", &["Quercus velutina"])[0],
            "Quercus velutina"
        );
        assert_eq!(
            found("quercus alba", &["Quercus velutina"])[0],
            "Quercus alba"
        );
    }

    #[test]
    fn a_genus_is_enough() {
        assert!(found("tilia", &[]).contains(&"Tilia".to_owned()));
        let words = Words::new(Language::English, UnitSystem::Metric);
        assert_eq!(species_words(&words, "Tilia"), "Tilia, any species");
        assert_eq!(species_words(&words, "Strange tree"), "Strange tree");
    }
}
