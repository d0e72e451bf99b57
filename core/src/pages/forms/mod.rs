//! What every command asks, one file a noun.

mod book;
mod site;
mod tree;

use super::ask::Ask;
use super::command_kind::CommandKind;

/// What a command asks.
pub fn asks_of(command: CommandKind) -> &'static [Ask] {
    match command {
        CommandKind::ChangeSettings => book::SETTINGS,
        CommandKind::AddSite | CommandKind::ChangeSite => site::SITE,
        CommandKind::ChangeTree => tree::CHANGE,
        CommandKind::AddTree => tree::ADD,
    }
}
