//! The page of this phone's settings. They are kept beside the log: nobody else's phone takes them
//! over, and undo does not reach them.

use serde_json::Value;

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{PageLine, PageWay};
use super::offer::Offer;
use super::page::PageAddress;
use crate::record::{Id, Quantity, Theme};

/// This phone's settings.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SettingsPage {
    /// Title.
    pub title: String,
    /// What is set.
    pub lines: Vec<PageLine>,
    /// The colours of the screen.
    pub theme: Theme,
    /// Size of letters in percent, on top of what the phone is set to.
    pub text_size_pct: f64,
    /// Whether buttons lie for the left hand.
    pub left_hand: bool,
    /// Ways to other pages.
    pub ways: Vec<PageWay>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// What is set on this phone.
#[derive(Debug, Clone, PartialEq)]
pub struct SettingsFacts {
    /// The settings, as JSON.
    pub settings: Value,
    /// The colours of the screen.
    pub theme: Theme,
    /// Size of letters in percent.
    pub text_size_pct: f64,
    /// Whether buttons lie for the left hand.
    pub left_hand: bool,
}

/// The page of this phone's settings.
pub fn settings_page(desk: &PageDesk, facts: SettingsFacts) -> SettingsPage {
    let words = &desk.words;
    let holder = desk.holder_name();
    let hand = if facts.left_hand {
        "page.left-hand"
    } else {
        "page.right-hand"
    };
    let line = |ask: &str, known: String| desk.line(ask, "", Some(known));
    SettingsPage {
        title: desk.say("page.settings"),
        lines: vec![
            desk.line("settings.person", "settings.person.why", holder),
            line("settings.language", words.label_of(&words.language())),
            line("settings.units", words.word_of(&words.units())),
            line("settings.theme", words.word_of(&facts.theme)),
            line(
                "settings.text_size",
                words.number(facts.text_size_pct, Quantity::Percent),
            ),
            line("settings.left_hand", desk.say(hand)),
        ],
        theme: facts.theme,
        text_size_pct: facts.text_size_pct,
        left_hand: facts.left_hand,
        ways: vec![PageWay {
            id: "settings.people".to_owned(),
            words: desk.say("page.people"),
            detail: people_count(desk),
            go_to: PageAddress::People,
        }],
        offers: vec![desk.offer(
            CommandKind::ChangeSettings,
            &Id::default(),
            Some(&facts.settings),
        )],
        headings: Vec::new(),
    }
}

/// How many people there are, in words.
pub(super) fn people_count(desk: &PageDesk) -> String {
    let count = crate::words::Said::Count(desk.crew.len() as i64);
    desk.words.say("page.people-count", &[("count", count)])
}
