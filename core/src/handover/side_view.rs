//! The side view of a tree with its findings, seen from where its lean shows in full.

use std::sync::Arc;

use super::paper::{Figure, Rich};
use super::paper_input::{PaperDesk, TreeSeen};
use crate::draw::{
    BarUnit, DrawnFrame, ProfileInput, ProfileMark, ProfileMarkKind, TextWidth, profile,
};
use crate::record::{Finding, LifeState, Quantity, TreePart};
use crate::words::{Said, UnitSystem};

/// The frame beside the facts of a record, in points.
const FRAME: DrawnFrame = DrawnFrame {
    width_pt: 222.0,
    height_pt: 232.0,
    text_pt: 7.5,
    round_scale: false,
};

/// The side view, where the height is known; a tree without one cannot be drawn.
pub(super) fn figure(desk: &PaperDesk, seen: &TreeSeen, width: TextWidth) -> Option<Figure> {
    let input = profile_of(desk, seen)?;
    let viewer = desk.words.side(viewer_deg(seen));
    let caption = desk
        .words
        .say("summary.profile-caption", &[("side", Said::Text(&viewer))]);
    Some(Figure {
        drawing: Arc::new(profile(&input, &FRAME, width)),
        height_pt: FRAME.height_pt as f32 + 1.0,
        caption: Rich::from(caption),
        legend_columns: 0,
        framed: false,
    })
}

/// The reader's unit for a scale bar.
pub(super) fn bar_unit(desk: &PaperDesk) -> BarUnit {
    BarUnit {
        sign: desk.words.unit_symbol(Quantity::LengthM),
        unit_m: match desk.words.units() {
            UnitSystem::Imperial => 0.3048,
            _ => 1.0,
        },
    }
}

fn profile_of(desk: &PaperDesk, seen: &TreeSeen) -> Option<ProfileInput> {
    let height_m = seen.newest(|look| look.height.as_ref())?.height_m;
    if height_m <= 0.0 {
        return None;
    }
    let height_words = desk.words.number(height_m, Quantity::LengthM);
    let crown = seen.newest(|look| look.crown.as_ref());
    let girth = seen.newest(|look| look.girth.as_ref());
    let lean = seen.newest(|look| look.lean.as_ref());
    let viewer = desk.words.side(viewer_deg(seen));
    Some(ProfileInput {
        described: desk.words.say(
            "summary.profile-described",
            &[
                ("tag", Said::Text(&seen.tree.tag)),
                ("height", Said::Text(&height_words)),
                ("side", Said::Text(&viewer)),
            ],
        ),
        about: seen.tree.id.to_string(),
        height_m,
        height_words,
        lean_deg: lean.map_or(0.0, |lean| lean.lean_deg),
        diameter_m: girth.map(|girth| girth.girth_cm / 100.0 / std::f64::consts::PI),
        crown_radius_m: crown.map(|crown| crown.radius_m),
        crown_base_m: crown.and_then(|crown| crown.base_m),
        dead: seen.newest(|look| look.life) == Some(LifeState::Dead),
        marks: marks(desk, seen),
        keep_clear: Vec::new(),
        bar_unit: bar_unit(desk),
    })
}

/// Where the reader stands, as a bearing from the tree: so that the tree leans to the right. South
/// of a tree whose lean has no direction.
fn viewer_deg(seen: &TreeSeen) -> f64 {
    right_deg(seen) + 90.0
}

/// The bearing that lies to the right in the drawing.
fn right_deg(seen: &TreeSeen) -> f64 {
    seen.newest(|look| look.lean.as_ref())
        .filter(|lean| lean.lean_deg > 0.0)
        .and_then(|lean| lean.toward_deg)
        .unwrap_or(90.0)
}

/// The findings whose height is known, with the numbers of their list.
fn marks(desk: &PaperDesk, seen: &TreeSeen) -> Vec<ProfileMark> {
    let right_deg = right_deg(seen);
    seen.findings()
        .into_iter()
        .enumerate()
        .filter_map(|(at, finding)| {
            let height_m = height_of(finding)?;
            let across_deg = finding.side_deg.map(|side_deg| side_deg - right_deg);
            let behind = across_deg.is_some_and(|deg| libm::sin(deg.to_radians()) < -0.3);
            Some(ProfileMark {
                about: finding.id.to_string(),
                kind: ProfileMarkKind::Finding,
                height_m,
                side: across_deg.map_or(0.0, |deg| libm::cos(deg.to_radians())),
                reach_m: None,
                number: (at + 1).to_string(),
                words: if behind {
                    desk.say("summary.profile-behind")
                } else {
                    String::new()
                },
            })
        })
        .collect()
}

/// Height on the tree; roots and base are at the ground. Nothing is drawn at a height that nobody
/// read.
fn height_of(finding: &Finding) -> Option<f64> {
    match finding.part {
        TreePart::Roots | TreePart::Base => Some(finding.height_m.unwrap_or(0.0)),
        _ => finding.height_m,
    }
}
