//! Words for errors and faults: what happened, and what to do.

use super::catalogue::{Said, Words};
use super::terms::capitalised;
use crate::error::BookError;
use crate::record::Fault;

/// The file that a field book lies in.
const BOOK_FILE: &str = "field-book.db";

/// Faults of what another phone wrote: nobody can mend them by typing.
const OF_PACKS: [&str; 3] = ["fault.pack-", "fault.change", "fault.record-elsewhere"];

/// The catalogue entry of an error.
pub fn error_key(error: &BookError) -> &'static str {
    match error {
        BookError::Refused { .. } => "error.refused",
        BookError::NotFound { .. } => "error.not-found",
        BookError::Newer { .. } => "error.newer",
        BookError::Damaged { .. } => "error.damaged",
        BookError::DiskFull { .. } => "error.disk-full",
        BookError::Unwritable { .. } => "error.unwritable",
        BookError::Unreadable { .. } => "error.unreadable",
        BookError::Busy { .. } => "error.busy",
        BookError::Stopped => "error.stopped",
        BookError::Defect { .. } => "error.defect",
    }
}

impl Words {
    /// The words of an error for the person who meets it: what happened and what to do. A refusal
    /// lists each fault on a line of its own.
    pub fn error(&self, error: &BookError) -> String {
        let say = |args: &[(&str, Said<'_>)]| capitalised(&self.say(error_key(error), args));
        match error {
            BookError::Refused { faults } => self.refusal(faults),
            BookError::NotFound { kind, id } => say(&[
                ("kind", Said::Text(&self.noun(kind))),
                ("id", Said::Text(id)),
            ]),
            BookError::Newer {
                place,
                found,
                known,
            } => say(&[
                ("place", Said::Text(&self.place(place))),
                ("found", Said::Count(i64::from(*found))),
                ("known", Said::Count(i64::from(*known))),
            ]),
            BookError::Damaged {
                place,
                detail,
                kept,
            } => say(&[
                ("place", Said::Text(&self.place(place))),
                ("detail", Said::Text(detail)),
                ("what-we-did", Said::Text(&self.what_became_of(kept))),
            ]),
            BookError::DiskFull { place } | BookError::Busy { place } => {
                say(&[("place", Said::Text(&self.place(place)))])
            }
            BookError::Unwritable { place, reason } | BookError::Unreadable { place, reason } => {
                say(&[
                    ("place", Said::Text(&self.place(place))),
                    ("cause", Said::Text(reason)),
                ])
            }
            BookError::Stopped => say(&[]),
            BookError::Defect { detail } => say(&[("detail", Said::Text(detail))]),
        }
    }

    /// The words of one fault: where, what is wrong, what was found, what is allowed. What the
    /// sentence of its code does not name itself is added after it.
    pub fn fault(&self, fault: &Fault) -> String {
        let found = [("found", Said::Text(fault.found.as_str()))];
        let allowed = [("allowed", Said::Text(fault.allowed.as_str()))];
        let shown_place = self.place_of_fault(fault);
        let place = [("place", Said::Text(&shown_place))];
        let all = [found, allowed, place].concat();
        let mut sentence = self.say(&fault.code, &all);
        let bare = self.say(&fault.code, &[]);
        if !fault.found.is_empty() && !bare.contains("{$found}") {
            sentence.push(' ');
            sentence.push_str(&self.say("fault.found", &found));
        }
        if !fault.allowed.is_empty() && !bare.contains("{$allowed}") {
            sentence.push(' ');
            sentence.push_str(&self.say("fault.allowed", &allowed));
        }
        if fault.place.is_empty() || bare.contains("{$place}") {
            return sentence;
        }
        self.say(
            "fault.at-place",
            &[
                ("place", Said::Text(&shown_place)),
                ("sentence", Said::Text(&sentence)),
            ],
        )
    }

    /// The label of the input, as the screen shows it; any other place as it is.
    fn place_of_fault(&self, fault: &Fault) -> String {
        let label = format!("input.{}", fault.place);
        if self.has(&label) {
            self.say(&label, &[])
        } else {
            fault.place.clone()
        }
    }

    fn refusal(&self, faults: &[Fault]) -> String {
        let is_of_pack = |fault: &Fault| OF_PACKS.iter().any(|code| fault.code.starts_with(code));
        let key = match faults.iter().all(is_of_pack) {
            true => "error.pack-refused",
            false => "error.refused",
        };
        let mut lines = vec![self.say(key, &[("count", Said::Count(faults.len() as i64))])];
        lines.extend(faults.iter().map(|fault| self.fault(fault)));
        lines.join("\n")
    }

    /// What could not be read or written: the field book by its name, any other file by its path.
    fn place(&self, place: &str) -> String {
        match place.ends_with(BOOK_FILE) {
            true => self.say("error.place-field-book", &[]),
            false => self.say("error.place-quoted", &[("name", Said::Text(place))]),
        }
    }

    fn noun(&self, kind: &str) -> String {
        let key = format!("noun.{}", kind.replace([' ', '_'], "-"));
        if self.has(&key) {
            self.say(&key, &[])
        } else {
            kind.to_owned()
        }
    }

    fn what_became_of(&self, kept: &str) -> String {
        if kept.is_empty() {
            self.say("error.damaged-left-in-place", &[])
        } else {
            // The folder as it lies in the field book's own; where that is, the phone alone knows.
            let parts: Vec<&str> = kept.rsplit(['/', '\\']).take(2).collect();
            let kept = parts.into_iter().rev().collect::<Vec<_>>().join("/");
            self.say("error.damaged-moved-aside", &[("kept", Said::Text(&kept))])
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::catalogue::Language;
    use super::super::units::UnitSystem;
    use super::*;

    fn words() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    #[test]
    fn a_refusal_lists_every_fault_with_its_place() {
        let faults = vec![
            Fault::new(
                "fault.too-large",
                "/site/trees/0/height",
                400,
                "0.5 m to 116 m",
            ),
            Fault::new("fault.not-a-number", "tree.girth", "wide", "such as 188 cm"),
        ];
        let text = words().error(&BookError::Refused { faults });
        let lines: Vec<&str> = text.lines().collect();
        assert_eq!(lines.len(), 3);
        assert!(lines[1].starts_with("/site/trees/0/height:"));
        assert!(lines[1].contains("400") && lines[1].contains("0.5 m to 116 m"));
        assert!(lines[2].starts_with("Girth: "));
        assert!(lines[2].contains("wide") && lines[2].contains("188 cm"));
    }

    #[test]
    fn a_fault_names_nothing_twice() {
        let fault = Fault::new("fault.too-few", "/site/outline", 2, "3");
        assert_eq!(
            words().fault(&fault),
            "/site/outline: Too few entries: 2. At least 3 are needed."
        );
        let fault = Fault::new("fault.ring-crosses-itself", "", "", "");
        assert_eq!(
            words().fault(&fault),
            "This outline crosses itself. Enter its corners in order around the edge."
        );
    }

    #[test]
    fn the_field_book_is_called_by_its_name_and_other_files_by_their_path() {
        let full = |place: &str| {
            let place = place.to_owned();
            words().error(&BookError::DiskFull { place })
        };
        let book = full("/data/books/phone-1/field-book.db");
        assert!(book.starts_with("There is no room left to write the field book."));
        assert!(full("/a/summary.pdf").contains("“/a/summary.pdf”"));
        let damaged = words().error(&BookError::Damaged {
            place: "field-book.db".into(),
            detail: "torn page".into(),
            kept: "/data/books/phone-1/quarantine/20261125T101500".into(),
        });
        assert!(damaged.starts_with("The field book is damaged: torn page."));
        assert!(damaged.contains("“quarantine/20261125T101500”"));
        assert!(!damaged.contains("/data"));
    }

    #[test]
    fn every_error_is_worded_whole() {
        let text = |name: &str| format!("«{name}»");
        let place = text("place");
        let errors = [
            BookError::Refused { faults: vec![] },
            BookError::NotFound {
                kind: "tree".into(),
                id: text("id"),
            },
            BookError::Newer {
                place: place.clone(),
                found: 9,
                known: 1,
            },
            BookError::Damaged {
                place: place.clone(),
                detail: text("detail"),
                kept: text("kept"),
            },
            BookError::Damaged {
                place: place.clone(),
                detail: text("detail"),
                kept: String::new(),
            },
            BookError::DiskFull {
                place: place.clone(),
            },
            BookError::Unwritable {
                place: place.clone(),
                reason: text("cause"),
            },
            BookError::Unreadable {
                place: place.clone(),
                reason: text("cause"),
            },
            BookError::Busy { place },
            BookError::Stopped,
            BookError::Defect {
                detail: text("detail"),
            },
        ];
        let readers = Language::ALL.map(|language| Words::new(language, UnitSystem::Metric));
        for (error, words) in errors
            .iter()
            .flat_map(|error| readers.map(|words| (error, words)))
        {
            let said = words.error(error);
            assert!(!said.contains(['⟦', '{', '$']), "{said}");
            let debug = format!("{error:?}");
            for name in ["id", "place", "detail", "kept", "cause"] {
                assert_eq!(
                    debug.contains(&text(name)),
                    said.contains(&text(name)),
                    "{name} in: {said}"
                );
            }
        }
    }
}
