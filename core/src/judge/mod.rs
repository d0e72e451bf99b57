//! The judgement: stops, gaps, caps, score, anchors, zones. Pure: no clock, no disk, no language.

mod anchor;
mod attribution;
mod caps;
mod case;
mod clearance;
pub mod codebook;
mod conflict;
pub mod electricity;
pub mod falling;
mod findings;
mod gaps;
mod gear;
mod ground;
mod inputs;
mod inside;
mod judge_plan;
mod judge_site;
mod judge_tree;
mod looks;
mod plan_case;
mod remarks;
pub mod risk;
mod route;
pub mod rules;
pub mod sampling;
mod score;
pub mod section;
mod section_working;
mod sensitivity;
pub(crate) mod spread;
pub mod statics;
mod stem;
pub mod stem_load;
mod stops;
pub mod to_close;
mod training;
mod tree_case;
pub mod weather;
mod who;
pub mod wood;
mod working;
pub mod zone;
mod zone_reach;
mod zone_working;

pub use case::SiteContext;
pub use gear::{gear_fault, next_check};
pub use judge_site::{judge_again, judge_context, judge_context_by, judge_site, rules_for};
pub use judge_tree::judge_tree;
pub use looks::CountingLooks;
pub use training::{CLIMBING_KNOTS, Lapse, is_signed_off, knows_knot, lapses, sign_off_holds};

/// Version of the method: an answer of another version is another answer.
pub const METHOD_VERSION: u32 = 1;
