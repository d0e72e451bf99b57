//! What a command would record, said while the readings come in; nothing is written.

use super::entries::Entered;
use super::fill::new_record;
use super::inner::Inner;
use super::measuring::{Measuring, Taken};
use crate::draw::Drawing;
use crate::error::BookError;
use crate::pages::{CommandKind, Entry, girth_words, height_words, lean_words};
use crate::record::{Fault, Id};
use crate::words::Words;

/// What would be recorded with the entries so far.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct Rehearsal {
    /// What would be recorded, in words; empty where it cannot be said yet.
    pub words: String,
    /// What is missing or does not fit, in the order of the inputs.
    pub open: Vec<OpenInput>,
    /// Whether the command could be given as it is.
    pub ready: bool,
    /// What it would look like, where there is something to draw: a stem section with the reading
    /// that is being taken.
    pub drawing: Option<Drawing>,
}

/// An input that is missing or does not fit.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct OpenInput {
    /// The input.
    pub input: String,
    /// What is missing or does not fit, and what to do.
    pub words: String,
}

impl Inner {
    /// What a command would record. Entries that do not fit are named, and the others still count.
    pub(super) fn rehearse(
        &mut self,
        command: CommandKind,
        about: &Id,
        entries: &[Entry],
    ) -> Result<Rehearsal, BookError> {
        let words = self.settings.words();
        let mut faults: Vec<Fault> = Vec::new();
        let mut sound: Vec<Entry> = Vec::new();
        for entry in entries {
            let one = std::slice::from_ref(entry);
            let read = self
                .averaged(about, one)
                .and_then(|averaged| Entered::read(command, &averaged, &words).map(|_| averaged));
            match read {
                Ok(averaged) => sound.extend(averaged),
                Err(BookError::Refused { faults: found }) => faults.extend(found),
                Err(other) => return Err(other),
            }
        }
        let entered = Entered::read(command, &sound, &words)?;
        for missing in entered.lacking() {
            if !faults.iter().any(|fault| fault.place == missing.place) {
                faults.push(missing);
            }
        }
        let mut said = String::new();
        let mut drawing = None;
        if command == CommandKind::ReadWall {
            faults.extend(self.wall_fault(about, &entered)?);
            let reading = faults
                .is_empty()
                .then(|| new_record(&entered))
                .transpose()?;
            let seen = self.wall_seen(about, reading)?;
            (said, drawing) = (seen.words, seen.drawing);
        }
        let rules = self.rules_around(about)?;
        let measuring = Measuring {
            rules: &rules,
            words,
        };
        if faults.is_empty() {
            match measuring.taken(command, &entered) {
                Ok(taken) if said.is_empty() => said = in_words(&words, &taken),
                Ok(_) => {}
                Err(fault) => faults.push(fault),
            }
        }
        let place = |id: &str| entered.asks().iter().position(|ask| ask.id == id);
        faults.sort_by_key(|fault| place(&fault.place));
        Ok(Rehearsal {
            words: said,
            ready: faults.is_empty(),
            open: faults.iter().map(|fault| open(&words, fault)).collect(),
            drawing,
        })
    }
}

/// What is missing is asked for in the words of its input, where there are such.
fn open(words: &Words, fault: &Fault) -> OpenInput {
    let asked = format!("rehearse.{}", fault.place);
    OpenInput {
        input: fault.place.clone(),
        words: if fault.code == "fault.needed" && words.has(&asked) {
            words.say(&asked, &[])
        } else {
            words.fault(fault)
        },
    }
}

fn in_words(words: &Words, taken: &Taken) -> String {
    let said = [
        taken.height.map(|height| height_words(words, &height)),
        taken.girth.map(|girth| girth_words(words, &girth)),
        taken.lean.map(|lean| lean_words(words, &lean)),
    ];
    said.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}
