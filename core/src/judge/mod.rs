//! The judgement: stops, gaps, caps, score, anchors, zones. Pure: no clock, no disk, no language.

pub mod rules;
pub mod sampling;
pub mod section;
pub mod wood;
