//! What undo takes back, in words: the one value that was changed, else the step, and of what.

use super::inner::Inner;
use crate::error::BookError;
use crate::pages::{CommandKind, asks_of};
use crate::record::{Id, Noun};
use crate::store::LastEdit;
use crate::words::{Said, Words};

/// So many letters of a step are shown, and so many of a name: both stand on one button.
const STEP_LETTERS: usize = 32;
const NAME_LETTERS: usize = 20;

impl Inner {
    /// What undo takes back (`back`) or redo does again, on a site or in the book where none is
    /// named; nothing if there is none.
    pub(super) fn step_words(
        &self,
        site: Option<&Id>,
        back: bool,
    ) -> Result<Option<String>, BookError> {
        let edit = self.store.last_edit(site, back)?;
        Ok(edit.map(|edit| worded(&edit, &self.settings.words())))
    }
}

fn worded(edit: &LastEdit, words: &Words) -> String {
    let command = CommandKind::of_id(&edit.command);
    let value = command.and_then(|command| value_of(command, edit.field.as_deref()?, words));
    let step = || match command {
        Some(command) => step_of(command, words),
        None => words.say(
            &format!("noun.{}", edit.noun.place().table.replace('_', "-")),
            &[],
        ),
    };
    let kind = if value.is_some() { "value" } else { "step" };
    let what = cut(&lower_first(&value.unwrap_or_else(step)), STEP_LETTERS);
    let Some((noun, name)) = &edit.whose else {
        return what;
    };
    let key = match (kind, noun) {
        ("value", Noun::Tree) => "edit.value-of-tree",
        ("value", _) => "edit.value-of",
        (_, Noun::Tree) => "edit.step-at-tree",
        _ => "edit.step-at",
    };
    let name = cut(name.trim(), NAME_LETTERS);
    words.say(
        key,
        &[("what", Said::Text(&what)), ("name", Said::Text(&name))],
    )
}

/// The label of the input that a field goes to.
fn value_of(command: CommandKind, field: &str, words: &Words) -> Option<String> {
    let head = |of: &str| of.split('.').next() == Some(field);
    let ask = asks_of(command).iter().find(|ask| head(ask.field))?;
    Some(words.say(&ask.label_key(), &[]))
}

/// The step by its name; as it is offered where that names it well enough.
fn step_of(command: CommandKind, words: &Words) -> String {
    let own = format!("edit.step.{}", command.id());
    if words.has(&own) {
        words.say(&own, &[])
    } else {
        words.say(&format!("offer.{}", command.id()), &[])
    }
}

/// The text as it stands within a sentence.
fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else {
        return String::new();
    };
    if letters.clone().next().is_some_and(char::is_uppercase) {
        return text.to_owned();
    }
    first.to_lowercase().chain(letters).collect()
}

/// At most so many letters; cut after a word where one ends in the second half.
fn cut(text: &str, most: usize) -> String {
    if text.chars().count() <= most {
        return text.to_owned();
    }
    let kept: String = text.chars().take(most.saturating_sub(1)).collect();
    let kept = match kept.rfind(' ').map(|at| kept.split_at(at).0) {
        Some(words) if 2 * words.chars().count() >= most => words,
        _ => kept.as_str(),
    };
    format!("{}…", kept.trim_end_matches([' ', ',', ':', '·']))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, UnitSystem};

    fn edit(command: &str, field: Option<&str>, whose: Option<(Noun, &str)>) -> LastEdit {
        LastEdit {
            command: command.to_owned(),
            noun: Noun::Inspection,
            field: field.map(str::to_owned),
            whose: whose.map(|(noun, name)| (noun, name.to_owned())),
        }
    }

    fn said(edit: &LastEdit, language: Language) -> String {
        worded(edit, &Words::new(language, UnitSystem::Metric))
    }

    #[test]
    fn one_value_is_named_and_several_are_the_step() {
        let tree = Some((Noun::Tree, "04"));
        let girth = edit("inspection.record", Some("girth"), tree);
        assert_eq!(said(&girth, Language::English), "girth of tree 04");
        assert_eq!(said(&girth, Language::Spanish), "perímetro del árbol 04");
        let several = edit("inspection.record", None, tree);
        assert_eq!(said(&several, Language::English), "measures, tree 04");
        let mass = edit(
            "person.change",
            Some("mass_with_gear_kg"),
            Some((Noun::Person, "Ana")),
        );
        assert_eq!(said(&mass, Language::English), "mass with gear of Ana");
    }

    #[test]
    fn an_edit_of_an_older_version_is_named_by_its_record() {
        let old = edit("", Some("girth"), Some((Noun::Tree, "04")));
        assert_eq!(said(&old, Language::English), "inspection, tree 04");
        let newer = edit("tree.by_balloon", None, None);
        assert_eq!(said(&newer, Language::English), "inspection");
    }

    #[test]
    fn long_names_are_cut_after_a_word() {
        assert_eq!(
            cut("Oak by the eastern gate of the farm", 20),
            "Oak by the eastern…"
        );
        assert_eq!(
            cut("ABCDEFGHIJKLMNOPQRSTUVWXYZ", 20),
            "ABCDEFGHIJKLMNOPQRS…"
        );
        assert_eq!(cut("árbol nº 4", 20), "árbol nº 4");
        assert_eq!(lower_first("GPS fix"), "GPS fix");
        assert_eq!(lower_first("Árbol"), "árbol");
    }
}
