//! What the exported object guards: store, clock, settings, and the tokens already used.

use std::path::Path;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use super::clock::BookClock;
use super::fill::defect;
use super::judged::JudgedSite;
use super::settings::Settings;
use super::settings_file::folder_of;
use crate::error::BookError;
use crate::pages::{CommandKind, PageAddress};
use crate::record::Id;
use crate::store::{self, Author, Edit, Store};

/// Name of the used tokens in the store.
const TOKENS: &str = "used-tokens";
/// Name of what is written to see whether there is room.
const ROOM: &str = "room";
/// How many used tokens are remembered.
const REMEMBERED: usize = 64;

/// What a command did.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Done {
    /// The record that was made or changed; empty where there is none.
    pub record: Id,
    /// What happened, in words.
    pub words: String,
    /// How many values were written; 0 when everything was as it is.
    pub changes: u32,
    /// Whether this offer had been taken before, so that nothing was done again.
    pub done_before: bool,
    /// The page to open now: that of the property, tree or person that was made. Nothing where the
    /// page in front stays.
    #[serde(default)]
    pub go_to: Option<PageAddress>,
}

/// What the exported object guards.
#[derive(Debug)]
pub(super) struct Inner {
    pub(super) store: Store,
    pub(super) clock: BookClock,
    pub(super) settings: Settings,
    /// Whether settings were ever kept on this phone.
    pub(super) settings_stand: bool,
    /// Part of every token, made anew at each opening.
    nonce: String,
    pages_made: u64,
    used: Vec<(String, Done)>,
    /// The command that is being obeyed.
    pub(super) command: Option<CommandKind>,
    /// Whether the book's size is bounded, as on a full disk.
    bounded: bool,
    /// The site judged last, as it is now.
    pub(super) judged: Option<Arc<JudgedSite>>,
    /// The site judged last, as it was before an edit.
    pub(super) judged_before: Option<Arc<JudgedSite>>,
}

/// Settings of an earlier version, moved out of the store into their file.
fn moved_out(store: &Store) -> Result<Option<Settings>, BookError> {
    let settings = Settings::in_store(store)?;
    if let (Some(settings), Some(folder)) = (&settings, folder_of(store)) {
        // On a full disk the book opens all the same; they are moved the next time.
        let _ = settings.keep(&folder);
    }
    Ok(settings)
}

impl Inner {
    pub(super) fn open(folder: &Path, device: &str, clock: BookClock) -> Result<Inner, BookError> {
        // Before the book: they outlive it when it is damaged.
        let kept = Settings::in_folder(folder);
        let store = Store::open(folder, device, clock.now())?;
        let settings = match kept {
            Some(kept) => Some(kept),
            None => moved_out(&store)?,
        };
        let used = store
            .read()
            .setting(TOKENS)?
            .and_then(|text| serde_json::from_str(&text).ok())
            .unwrap_or_default();
        Ok(Inner {
            store,
            clock,
            settings_stand: settings.is_some(),
            settings: settings.unwrap_or_default(),
            nonce: uuid::Uuid::now_v7().simple().to_string(),
            pages_made: 0,
            used,
            command: None,
            bounded: false,
            judged: None,
            judged_before: None,
        })
    }

    /// Repairs the book after a call met damage, and says where the damaged files are.
    pub(super) fn mend(&mut self, place: String, detail: String) -> BookError {
        self.judged = None;
        self.judged_before = None;
        match self.store.mend(&detail, self.clock.now()) {
            Ok(()) => {
                let repair = self.store.opening().repair.as_ref();
                BookError::Damaged {
                    place,
                    detail,
                    kept: repair.map_or_else(String::new, |repair| repair.kept.clone()),
                }
            }
            Err(error) => error,
        }
    }

    /// The first part of the tokens of a new page.
    pub(super) fn new_token(&mut self) -> String {
        self.pages_made += 1;
        format!("{}-{}", self.nonce, self.pages_made)
    }

    /// What a token did when it was used before.
    pub(super) fn done_before(&self, token: &str) -> Option<Done> {
        let found = self.used.iter().find(|(used, _)| used == token);
        found.map(|(_, done)| Done {
            done_before: true,
            ..done.clone()
        })
    }

    /// Remembers what a token did, also over a restart.
    pub(super) fn remember(&mut self, token: &str, done: &Done) -> Result<(), BookError> {
        self.used.push((token.to_owned(), done.clone()));
        let surplus = self.used.len().saturating_sub(REMEMBERED);
        self.used.drain(..surplus);
        let text = serde_json::to_string(&self.used).map_err(defect)?;
        self.store.set_setting(TOKENS, &text)
    }

    /// Makes one edit in the name of whoever holds the phone.
    pub(super) fn edit(
        &mut self,
        act: impl FnOnce(&mut Edit<'_>) -> Result<(), BookError>,
    ) -> Result<store::Done, BookError> {
        let author = self.author();
        self.outdate_judgement();
        let command = self.command.map_or("", CommandKind::id);
        self.store.edit(&author, |edit| {
            edit.named(command);
            act(edit)
        })
    }

    /// Bounds the size of the book's file; 0 lifts the bound.
    pub(super) fn bound_pages(&mut self, pages: u32) -> Result<(), BookError> {
        self.bounded = pages > 0;
        self.store.bound_pages(pages)
    }

    /// Under a bound, sees whether there is a megabyte of room. The last page of a table may have
    /// room for a small edit even then; a full disk would not let it be written all the same.
    pub(super) fn see_room(&self) -> Result<(), BookError> {
        if !self.bounded {
            return Ok(());
        }
        self.store.set_setting(ROOM, &" ".repeat(1_048_576))?;
        self.store.set_setting(ROOM, "")
    }

    /// Who edits, and when.
    pub(super) fn author(&self) -> Author {
        Author {
            person: self.settings.person.clone(),
            at: self.clock.now(),
        }
    }
}
