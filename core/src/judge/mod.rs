//! The judgement: stops, gaps, caps, score, anchors, zones. Pure: no clock, no disk, no language.

pub mod codebook;
pub mod electricity;
pub mod falling;
pub mod risk;
pub mod rules;
pub mod sampling;
pub mod section;
pub mod statics;
pub mod stem_load;
pub mod weather;
pub mod wood;
pub mod zone;
