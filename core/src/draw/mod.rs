//! Plans, stem sections and tree profiles as plain marks in metres.
//!
//! The room knows neither language nor colour: words come in already worded, colours are chosen by
//! the paper or the screen from the [`StyleRole`] of each mark. Everything is laid out for a frame
//! in points and a scale, and rounded to a tenth of a millimetre, so that the same input gives the
//! same drawing to the last byte.

mod callouts;
mod drawing;
mod easel;
mod frame;
mod grades;
mod hit;
mod label_table;
mod labels;
mod lines;
mod merged;
mod plan;
mod plan_fit;
mod plan_input;
mod profile;
mod profile_tree;
mod section;
mod section_wood;
mod sheets;
mod silhouette;
mod spots;
mod symbol;
mod zones;

#[cfg(test)]
mod looks;

pub use drawing::{
    Drawing, DrawnExtent, DrawnMark, DrawnText, LegendLine, PointSymbol, Spot, StyleRole,
    SymbolShape, TextHold,
};
pub use frame::{
    BarUnit, DrawnFrame, TextWidth, estimated_width_pt, metres_per_point, symbol_extent,
    text_extent,
};
pub use grades::{grade_drawing, part_drawing, union_drawing};
pub use hit::{point_under_finger, under_finger};
pub use plan::{LaidOut, plan, plan_part};
pub use plan_fit::plan_ground;
pub use plan_input::{PlanArea, PlanDistance, PlanInput, PlanLine, PlanTarget, PlanTree, PlanZone};
pub use profile::{KeepClearMark, PERSON_M, ProfileInput, ProfileMark, ProfileMarkKind, profile};
pub use section::{SectionInput, WallMark, WallOpening, WeakestMark, section};
pub use sheets::{NamedSheet, PlanSheets, plan_sheets};
pub use symbol::{shape_of, shapes_used};
pub use zones::{PacedZone, ZonesInput, zones};
