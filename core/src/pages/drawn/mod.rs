//! The drawings of the pages, laid out for a phone's screen.

mod grade;
mod on_plan;
mod plan;
mod section;
mod side;
mod zones;

pub use on_plan::{
    EnteredGround, PlaceOnPlan, PlanOverlay, entered_on_plan, me_on_plan, place_on_plan,
    tree_on_plan,
};
pub(super) use plan::plane_of;
pub(super) use section::section_of;

use serde::{Deserialize, Serialize};

use super::desk::PageDesk;
use crate::draw::{BarUnit, Drawing, DrawnFrame, estimated_width_pt, part_drawing, union_drawing};
use crate::record::{Id, Quantity, Site, StemSection, TreePart, UnionForm};
use crate::words::UnitSystem;

/// Which drawing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, uniffi::Enum)]
#[serde(tag = "drawing", rename_all = "snake_case")]
pub enum DrawingAddress {
    /// The plan of a site: trees with their verdicts, crowns, zones, targets, lines.
    SitePlan {
        /// The site, or a record that lies on it, such as a target or a tree.
        site: Id,
    },
    /// A tree from the side, with findings, anchors and sections.
    TreeSide {
        /// The tree.
        tree: Id,
    },
    /// The zones around a tree, with the distances to be paced.
    TreeZones {
        /// The tree.
        tree: Id,
    },
    /// A stem section with its wall.
    SectionThrough {
        /// The section.
        section: Id,
    },
    /// What a grade of a code looks like. The same for every tree.
    Grade {
        /// The code.
        code: Id,
        /// The part of the tree; without one, where the code is met most.
        part: Option<TreePart>,
        /// 1 to 3.
        grade: u32,
    },
    /// Where a part of a tree is. The same for every tree.
    PartOfTree {
        /// The part.
        part: TreePart,
    },
    /// What a union looks like. The same for every tree.
    UnionOfForm {
        /// Its form.
        form: UnionForm,
    },
}

/// The largest zoom step.
pub const MOST_ZOOM: u32 = 5;

/// Width, height and letters of the frame at zoom step 0, in points of the screen.
const FRAME_PT: (f64, f64, f64) = (360.0, 420.0, 11.0);

/// How large letters may become, in percent: beyond it a drawing would hold nothing else.
const LETTERS_PCT: std::ops::RangeInclusive<u32> = 100..=200;

/// How large a drawing is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DrawnSize {
    /// The zoom step: each doubles the sides while the letters stay, so that there is room for more
    /// words; the screen shows a part of it.
    pub zoom: u32,
    /// The reader's text size, 100 to 200 percent.
    pub letters_pct: u32,
}

impl DrawnSize {
    /// A zoom step in letters of the usual size.
    #[cfg(test)]
    fn at_zoom(zoom: u32) -> Self {
        let letters_pct = *LETTERS_PCT.start();
        DrawnSize { zoom, letters_pct }
    }
}

fn frame(size: DrawnSize) -> DrawnFrame {
    let (width_pt, height_pt, text_pt) = FRAME_PT;
    let times = f64::from(1_u32 << size.zoom.min(MOST_ZOOM));
    DrawnFrame {
        width_pt: width_pt * times,
        height_pt: height_pt * times,
        text_pt: text_pt
            * f64::from(
                size.letters_pct
                    .clamp(*LETTERS_PCT.start(), *LETTERS_PCT.end()),
            )
            / 100.0,
        round_scale: false,
    }
}

fn width(words: &str, size_pt: f64) -> f64 {
    estimated_width_pt(words, size_pt)
}

/// The reader's unit of a scale bar.
fn bar_unit(desk: &PageDesk, quantity: Quantity) -> BarUnit {
    let unit_m = match (desk.words.units(), quantity) {
        (UnitSystem::Metric, Quantity::LengthCm) => 0.01,
        (UnitSystem::Metric, _) => 1.0,
        (UnitSystem::Imperial, Quantity::LengthCm) => 0.0254,
        (UnitSystem::Imperial, _) => 0.3048,
    };
    BarUnit {
        sign: desk.words.unit_symbol(quantity),
        unit_m,
    }
}

/// A drawing on a site's pages, or on the book's; nothing where the record is not there, or where
/// nobody took what it is drawn from.
pub fn drawing_of(desk: &PageDesk, which: &DrawingAddress, size: DrawnSize) -> Option<Drawing> {
    let frame = &frame(size);
    match which {
        DrawingAddress::SitePlan { .. } => plan::site_drawing(desk, frame),
        DrawingAddress::TreeSide { tree } => side::tree_side(desk, tree, frame),
        DrawingAddress::TreeZones { tree } => zones::tree_zones(desk, tree, frame),
        DrawingAddress::SectionThrough { section } => {
            section::section_through(desk, section, frame)
        }
        DrawingAddress::Grade { code, part, grade } => grade::grade_of(desk, code, *part, *grade),
        DrawingAddress::PartOfTree { part } => {
            Some(part_drawing(*part, &desk.words.label_of(part)))
        }
        DrawingAddress::UnionOfForm { form } => union_drawing(*form, &desk.words.label_of(form)),
    }
}

/// A stem section, also one with a reading that is not kept yet, as small as it is drawn.
pub(super) fn section_at_hand(
    desk: &PageDesk,
    site: &Site,
    section: &StemSection,
) -> Option<Drawing> {
    let size = DrawnSize {
        zoom: 0,
        letters_pct: *LETTERS_PCT.start(),
    };
    section::drawing_of_section(desk, site, section, &frame(size))
}
