//! The headings of a page's lists: what a list holds, and, while it holds nothing, what it is for and
//! what to do first.

use super::page::Page;
use crate::words::Words;

/// The heading of a list of a page.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
pub struct PageHeading {
    /// The list: the name of its field, such as `near_misses`.
    pub list: String,
    /// The heading.
    pub words: String,
    /// What the list is for and what to do first, while it holds nothing; empty while it holds
    /// something, and for a list that needs no heading then.
    pub empty: String,
}

/// A page with the headings of its lists.
macro_rules! headed {
    ($words:expr, $page:ident, $id:literal: $($list:ident),+) => {
        $page.headings = vec![
            $(heading($words, $id, stringify!($list), $page.$list.is_empty()),)+
        ]
    };
}

impl Page {
    /// The page with the heading of every list, in the reader's words.
    pub fn with_headings(mut self, words: &Words) -> Page {
        match &mut self {
            Page::Book(page) => {
                headed!(words, page, "book": notices, unsettled, lines, sites, ways, health, offers)
            }
            Page::Settings(page) => headed!(words, page, "settings": lines, ways, offers),
            Page::Codebook(page) => {
                headed!(words, page, "codebook": unsettled, codes, retired, offers)
            }
            Page::RuleSet(page) => headed!(words, page, "rule_set": unsettled, groups, offers),
            Page::People(page) => headed!(words, page, "people": people, offers),
            Page::Person(page) => {
                headed!(words, page, "person": unsettled, lines, skills, knots, climbs, offers)
            }
            Page::Gear(page) => headed!(words, page, "gear": unsettled, pieces, offers),
            Page::Site(page) => {
                headed!(words, page, "site": notices, unsettled, stops, gaps, visit, to_close, lines, trees, conflicts, targets, overhead_lines, permissions, offers)
            }
            Page::Tree(page) => {
                headed!(words, page, "tree": notices, gaps, doors, ways_of_working, again, lines, walk_round, wires, findings, sections, anchors, plans, photos, work, notes, risks, history, offers)
            }
            Page::Finding(page) => headed!(words, page, "finding": lines, grades, photos, offers),
            Page::StemSection(page) => {
                headed!(words, page, "stem_section": lines, clock, readings, cautions, offers)
            }
            Page::Anchor(page) => {
                headed!(words, page, "anchor": lines, margins, reasons, cautions, offers)
            }
            Page::Aloft(page) => {
                headed!(words, page, "aloft": notices, stops, plans, found, near_misses, hangers, gear, other_gear, work, offers)
            }
            Page::Judgement(page) => {
                headed!(words, page, "judgement": notices, stops, gaps, refer_caps, limits, remarks, signed, climbers, lines, zones, margins, working, cautions, offers);
                let score = heading(words, "judgement", "score", page.score.is_none());
                let next = page.next_measurement.is_none();
                let next = heading(words, "judgement", "next_measurement", next);
                page.headings.extend([score, next]);
            }
            Page::Compare(page) => headed!(words, page, "compare": lines, findings),
            Page::HandOver(page) => {
                headed!(words, page, "hand_over": lines, gaps, cautions, offers)
            }
        }
        self
    }
}

/// The heading of a list: the page's own, else the one that all pages share.
fn heading(words: &Words, page: &str, list: &str, is_empty: bool) -> PageHeading {
    let own = format!("list.{page}.{list}");
    let shared = format!("list.{list}");
    let key = if words.has(&own) { own } else { shared };
    let for_empty = format!("{key}.empty");
    PageHeading {
        list: list.to_owned(),
        words: words.say(&key, &[]),
        empty: match is_empty && words.has(&for_empty) {
            true => words.say(&for_empty, &[]),
            false => String::new(),
        },
    }
}
