//! One line of a page: what is there, what is missing, and why it matters.

/// A line of a page.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct PageLine {
    /// Stable id, such as `tree.girth`: the input that changes it, where there is one.
    pub id: String,
    /// What it is about.
    pub label: String,
    /// What is known, in the reader's units; what is missing, where nothing is.
    pub words: String,
    /// Why it matters; empty where that is plain.
    pub why: String,
    /// Whether it is known.
    pub state: LineState,
}

/// Whether what a line shows is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Enum)]
pub enum LineState {
    /// It is there.
    Known,
    /// Nobody looked or measured yet.
    Missing,
    /// It is there, and in doubt: several values stand, or part of it could not be seen.
    Doubtful,
}
