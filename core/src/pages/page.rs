//! The pages and their addresses.

use super::aloft::AloftPage;
use super::anchor::AnchorPage;
use super::book::BookPage;
use super::codebook::CodebookPage;
use super::compare::ComparePage;
use super::finding::FindingPage;
use super::gear::GearPage;
use super::hand_over::HandOverPage;
use super::judgement::JudgementPage;
use super::people::PeoplePage;
use super::person::PersonPage;
use super::rule_set::RuleSetPage;
use super::settings::SettingsPage;
use super::site::SitePage;
use super::stem_section::StemSectionPage;
use super::tree::TreePage;
use crate::record::{Id, LatLon};

/// Where a page is: what it shows, by id. What is searched for and where the phone stands are part
/// of the address, so that a page follows from its address and the records alone.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize, uniffi::Enum)]
#[serde(tag = "page", rename_all = "snake_case")]
pub enum PageAddress {
    /// The field book: its sites, and the ways to all that is managed.
    Book {
        /// Where the phone is, if it knows: sites near it come first. Nothing is kept of it.
        near: Option<LatLon>,
        /// What is searched for in names, clients and addresses; empty shows every site.
        search: String,
    },
    /// This phone's settings.
    Settings,
    /// The codebook: what findings are called, and from which grade they stop.
    Codebook,
    /// A rule set: every distance and factor with its source, and the house values.
    RuleSet {
        /// The rule set, such as `us`.
        rule_set: Id,
    },
    /// The crew.
    People,
    /// One person with the training record.
    Person {
        /// The person.
        person: Id,
    },
    /// The gear, what must not be used first.
    Gear,
    /// A site: its trees and what lies around them.
    Site {
        /// The site.
        site: Id,
        /// What is searched for in tags and species; empty shows every tree.
        search: String,
    },
    /// A tree: what is known of it, and the inspection of the day.
    Tree {
        /// The tree.
        tree: Id,
    },
    /// A finding: its place and its grade.
    Finding {
        /// The finding.
        finding: Id,
    },
    /// A stem section: the mallet clock and the readings of its wall.
    StemSection {
        /// The section.
        section: Id,
    },
    /// An anchor: its readings and its margins.
    Anchor {
        /// The anchor.
        anchor: Id,
    },
    /// The climb of a tree, and what it leaves behind.
    Aloft {
        /// The tree.
        tree: Id,
    },
    /// The judgement of a tree, with its reasons and its working.
    Judgement {
        /// The tree.
        tree: Id,
    },
    /// This look at a tree beside the last one.
    Compare {
        /// The tree.
        tree: Id,
    },
    /// What is handed over of a site.
    HandOver {
        /// The site.
        site: Id,
    },
}

impl PageAddress {
    /// The field book with every site.
    pub fn book() -> PageAddress {
        PageAddress::Book {
            near: None,
            search: String::new(),
        }
    }

    /// A site with every tree.
    pub fn site(site: &Id) -> PageAddress {
        PageAddress::Site {
            site: site.clone(),
            search: String::new(),
        }
    }
}

/// A page: what is there, what is missing, and what can be done.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
// A page is made once and handed over: none lies in a list.
#[allow(clippy::large_enum_variant)]
pub enum Page {
    /// The field book.
    Book(BookPage),
    /// This phone's settings.
    Settings(SettingsPage),
    /// The codebook.
    Codebook(CodebookPage),
    /// A rule set.
    RuleSet(RuleSetPage),
    /// The crew.
    People(PeoplePage),
    /// One person.
    Person(PersonPage),
    /// The gear.
    Gear(GearPage),
    /// A site.
    Site(SitePage),
    /// A tree.
    Tree(TreePage),
    /// A finding.
    Finding(FindingPage),
    /// A stem section.
    StemSection(StemSectionPage),
    /// An anchor.
    Anchor(AnchorPage),
    /// A climb.
    Aloft(AloftPage),
    /// A judgement.
    Judgement(JudgementPage),
    /// Two looks compared.
    Compare(ComparePage),
    /// What is handed over.
    HandOver(HandOverPage),
}
