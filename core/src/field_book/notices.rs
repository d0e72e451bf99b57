//! What a person has to be told first: damage repaired, an upgrade, values that stand side by side.

use chrono::DateTime;

use super::inner::Inner;
use crate::pages::{CommandKind, Unsettled};
use crate::record::{Day, Id, Noun, Person, Site};
use crate::store::{Book, LoadedSite, RemovedButChanged, Standing};
use crate::words::{Said, Words};

impl Inner {
    /// What opening found and did, and what of the book this version cannot read.
    pub(super) fn notices_of_book(&self, book: &Book) -> Vec<String> {
        let words = self.settings.words();
        let mut notices = Vec::new();
        let opening = self.store.opening();
        if let Some(repair) = &opening.repair {
            let saved = Said::Count(repair.saved_changes.into());
            notices.push(match repair.backup_ms.and_then(day_of_ms) {
                Some(day) => {
                    let day = ("day", Said::Day(day));
                    words.say("notice.repaired", &[day, ("saved", saved)])
                }
                None => words.say("notice.repaired-without-backup", &[("saved", saved)]),
            });
        }
        if opening.upgraded_from.is_some() {
            notices.push(words.say("notice.upgraded", &[]));
        }
        notices.extend(standing_notice(&words, book.standing.len()));
        notices.extend(unread_notice(&words, book.unread.len()));
        notices
    }

    /// What has to be said of a site before anything else.
    pub(super) fn notices_of_site(&self, loaded: &LoadedSite) -> Vec<String> {
        let words = self.settings.words();
        let mut notices = Vec::new();
        notices.extend(standing_notice(&words, loaded.standing.len()));
        notices.extend(unread_notice(&words, loaded.unread.len()));
        notices
    }

    /// What a person has to settle on a site: an entry for every way to settle it.
    pub(super) fn unsettled(&self, loaded: &LoadedSite) -> Vec<Unsettled> {
        let file = &loaded.file;
        let mut unsettled = self.unsettled_values(&loaded.standing, &file.crew, Some(&file.site));
        unsettled.extend(self.unsettled_removals(&loaded.removed_but_changed, &file.crew));
        unsettled
    }

    /// The same for people, gear, codes and house values.
    pub(super) fn unsettled_of_book(&self, book: &Book) -> Vec<Unsettled> {
        let mut unsettled = self.unsettled_values(&book.standing, &book.crew, None);
        unsettled.extend(self.unsettled_removals(&book.removed_but_changed, &book.crew));
        unsettled
    }

    fn unsettled_values(
        &self,
        all: &[Standing],
        crew: &[Person],
        site: Option<&Site>,
    ) -> Vec<Unsettled> {
        let words = self.settings.words();
        let mut unsettled = Vec::new();
        for standing in all {
            for value in &standing.values {
                let said =
                    words.say(
                        "page.standing-value",
                        &[
                            ("what", Said::Text(&what_of(&words, standing))),
                            (
                                "tree",
                                Said::Text(&site.map_or_else(String::new, |site| {
                                    tag_of(site, &standing.record)
                                })),
                            ),
                            ("value", Said::Text(&plain(&value.value))),
                            ("by", Said::Text(&name_of(crew, &value.person))),
                        ],
                    );
                unsettled.push(Unsettled {
                    command: CommandKind::SettleValue,
                    about: value.change.clone(),
                    words: said,
                });
            }
        }
        unsettled
    }

    fn unsettled_removals(&self, all: &[RemovedButChanged], crew: &[Person]) -> Vec<Unsettled> {
        let words = self.settings.words();
        let mut unsettled = Vec::new();
        for removed in all {
            let noun = format!("noun.{}", removed.noun.replace('_', "-"));
            let said = words.say(
                "page.removed-but-changed",
                &[
                    ("noun", Said::Term(&noun)),
                    ("removed", Said::Text(&name_of(crew, &removed.removed_by))),
                    ("changed", Said::Text(&name_of(crew, &removed.changed_by))),
                ],
            );
            for command in [CommandKind::KeepRemoved, CommandKind::RemoveAnew] {
                unsettled.push(Unsettled {
                    command,
                    about: Id(format!("{}/{}", removed.noun, removed.record)),
                    words: said.clone(),
                });
            }
        }
        unsettled
    }
}

/// The name of a person; the id where the crew lacks it.
fn name_of(crew: &[Person], id: &Id) -> String {
    let known = crew.iter().find(|person| person.id == *id);
    known.map_or_else(|| id.to_string(), |person| person.name.clone())
}

fn standing_notice(words: &Words, standing: usize) -> Option<String> {
    let count = [("count", Said::Count(standing as i64))];
    (standing > 0).then(|| words.say("notice.standing", &count))
}

fn unread_notice(words: &Words, unread: usize) -> Option<String> {
    let count = [("count", Said::Count(unread as i64))];
    (unread > 0).then(|| words.say("notice.unread", &count))
}

fn day_of_ms(utc_ms: i64) -> Option<Day> {
    DateTime::from_timestamp_millis(utc_ms).map(|at| Day(at.date_naive()))
}

/// The noun and the field that stand.
fn what_of(words: &Words, standing: &Standing) -> String {
    let noun = match Noun::of_table(&standing.noun) {
        Some(noun) => words.say(
            &format!("noun.{}", noun.place().table.replace('_', "-")),
            &[],
        ),
        None => standing.noun.clone(),
    };
    let field = standing.field.trim_start_matches('@').replace('_', " ");
    format!("{noun}, {field}")
}

/// The tag of the tree that a record is or lies in; empty for what lies in none.
fn tag_of(site: &Site, record: &Id) -> String {
    let holds = |tree: &&crate::record::Tree| {
        tree.id == *record
            || tree.inspections.iter().any(|look| {
                look.id == *record
                    || look.findings.iter().any(|one| one.id == *record)
                    || look.anchors.iter().any(|one| one.id == *record)
                    || look.sections.iter().any(|one| one.id == *record)
            })
    };
    let mut trees = site.trees.iter();
    trees
        .find(holds)
        .map_or_else(String::new, |tree| tree.tag.clone())
}

/// A value for a person to compare: numbers and texts as they are, the rest field by field.
fn plain(value: &serde_json::Value) -> String {
    match value {
        serde_json::Value::Null => "–".to_owned(),
        serde_json::Value::String(text) => text.replace('_', " "),
        serde_json::Value::Object(fields) => {
            let parts = fields.iter().map(|(name, part)| {
                let name = name.replace('_', " ");
                format!("{name} {}", plain(part))
            });
            parts.collect::<Vec<_>>().join(", ")
        }
        serde_json::Value::Array(items) => {
            let parts = items.iter().map(plain);
            parts.collect::<Vec<_>>().join("; ")
        }
        other => other.to_string(),
    }
}
