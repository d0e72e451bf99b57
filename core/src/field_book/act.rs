//! Which command does what.

use super::entries::Entered;
use super::inner::{Done, Inner};
use crate::error::BookError;
use crate::pages::{CommandKind, Entry};
use crate::record::Id;

/// What a command did: the record, and how many values were written.
pub(super) struct Outcome {
    pub(super) record: Id,
    pub(super) changes: u32,
}

impl Inner {
    /// Takes an offer, once.
    pub(super) fn act(
        &mut self,
        command: CommandKind,
        about: &Id,
        entries: &[Entry],
        token: &str,
    ) -> Result<Done, BookError> {
        if let Some(done) = self.done_before(token) {
            return Ok(done);
        }
        let words = self.settings.words();
        let entered = Entered::read(command, entries, &words)?;
        let outcome = self.obey(command, about, entered)?;
        let done = Done {
            record: outcome.record,
            words: words.say(&format!("done.{}", command.id()), &[]),
            changes: outcome.changes,
            done_before: false,
        };
        self.remember(token, &done)?;
        Ok(done)
    }

    fn obey(
        &mut self,
        command: CommandKind,
        about: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        match command {
            CommandKind::ChangeSettings => self.act_change_settings(entered),
            CommandKind::ChangeSite => self.act_change_site(about, entered),
            CommandKind::ChangeTree => self.act_change_tree(about, entered),
            CommandKind::AddSite => self.act_add_site(entered),
            CommandKind::AddTree => self.act_add_tree(about, entered),
        }
    }
}
