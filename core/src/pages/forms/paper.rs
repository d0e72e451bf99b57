//! What is asked of a paper: its language, which may be another than the reader's, and what its
//! photos are for.

use crate::pages::ask::{Ask, AskKind};

pub(super) const SUMMARY: &[Ask] = &[
    Ask::of(
        "site_summary.language",
        "language",
        AskKind::Choice("language"),
    ),
    Ask::of(
        "site_summary.photos",
        "photos",
        AskKind::Choice("report-for"),
    ),
];

pub(super) const CLIMB_SHEETS: &[Ask] = &[Ask::of(
    "climb_sheets.language",
    "language",
    AskKind::Choice("language"),
)];
