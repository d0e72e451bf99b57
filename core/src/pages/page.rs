//! The pages and their addresses.

use super::anchor::AnchorPage;
use super::book::BookPage;
use super::finding::FindingPage;
use super::hand_over::HandOverPage;
use super::judgement::JudgementPage;
use super::site::SitePage;
use super::tree::TreePage;
use crate::record::Id;

/// Where a page is: what it shows, by id.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, serde::Deserialize, uniffi::Enum)]
#[serde(tag = "page", rename_all = "snake_case")]
pub enum PageAddress {
    /// The field book: its sites, people and gear.
    Book,
    /// A site: its trees and what lies around them.
    Site {
        /// The site.
        site: Id,
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
    /// An anchor: its readings and its margins.
    Anchor {
        /// The anchor.
        anchor: Id,
    },
    /// The judgement of a tree, with its reasons and its working.
    Judgement {
        /// The tree.
        tree: Id,
    },
    /// What is handed over of a site.
    HandOver {
        /// The site.
        site: Id,
    },
}

/// A page: what is there, what is missing, and what can be done.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum Page {
    /// The field book.
    Book(BookPage),
    /// A site.
    Site(SitePage),
    /// A tree.
    Tree(TreePage),
    /// A finding.
    Finding(FindingPage),
    /// An anchor.
    Anchor(AnchorPage),
    /// A judgement.
    Judgement(JudgementPage),
    /// What is handed over.
    HandOver(HandOverPage),
}
