//! A tree from the side, seen from where its lean shows in full.

use super::{bar_unit, width};
use crate::draw::{Drawing, DrawnFrame, ProfileInput, ProfileMark, ProfileMarkKind, profile};
use crate::pages::desk::PageDesk;
use crate::pages::looks::Looks;
use crate::record::{Finding, Id, LifeState, Quantity, TreePart};
use crate::words::Said;

/// The side view; nothing while the height is not known.
pub(super) fn tree_side(desk: &PageDesk, id: &Id, frame: &DrawnFrame) -> Option<Drawing> {
    let (site, _) = desk.site?;
    let (tree, _) = desk.tree(id)?;
    let looks = Looks::of(tree, site, desk.today, &desk.rules);
    let height_m = looks.newest(|look| look.height)?.height_m;
    let height = desk.words.number(height_m, Quantity::LengthM);
    let crown = looks.newest(|look| look.crown);
    let lean = looks.newest(|look| look.lean);
    // The reader stands so that the tree leans to the right; south of one that does not lean.
    let right_deg = lean
        .filter(|lean| lean.lean_deg > 0.0)
        .and_then(|lean| lean.toward_deg)
        .unwrap_or(90.0);
    let viewer = desk.words.side(right_deg + 90.0);
    let girth = looks.newest(|look| look.girth);
    let input = ProfileInput {
        described: desk.words.say(
            "summary.profile-described",
            &[
                ("tag", Said::Text(&tree.tag)),
                ("height", Said::Text(&height)),
                ("side", Said::Text(&viewer)),
            ],
        ),
        about: tree.id.to_string(),
        height_m,
        height_words: height,
        lean_deg: lean.map_or(0.0, |lean| lean.lean_deg),
        diameter_m: girth.map(|girth| girth.girth_cm / 100.0 / std::f64::consts::PI),
        crown_radius_m: crown.map(|crown| crown.radius_m),
        crown_base_m: crown.and_then(|crown| crown.base_m),
        dead: looks.newest(|look| look.life) == Some(LifeState::Dead),
        marks: marks(desk, &looks, right_deg),
        keep_clear: Vec::new(),
        bar_unit: bar_unit(desk, Quantity::LengthM),
    };
    Some(profile(&input, frame, &width))
}

/// Findings by their numbers, anchors by their names, sections: each whose height is known.
fn marks(desk: &PageDesk, looks: &Looks, right_deg: f64) -> Vec<ProfileMark> {
    let across = |bearing_deg: Option<f64>| {
        bearing_deg.map_or(0.0, |deg| libm::cos((deg - right_deg).to_radians()))
    };
    let findings = looks.all(|look| &look.findings);
    let findings = findings.into_iter().zip(1_u32..);
    let findings = findings.filter_map(|(finding, number)| {
        Some(ProfileMark {
            about: finding.id.to_string(),
            kind: ProfileMarkKind::Finding,
            height_m: height_of(finding)?,
            side: across(finding.side_deg),
            reach_m: None,
            number: number.to_string(),
            words: String::new(),
        })
    });
    let anchors = looks.all(|look| &look.anchors);
    let anchors = anchors.into_iter().filter_map(|anchor| {
        Some(ProfileMark {
            about: anchor.id.to_string(),
            kind: ProfileMarkKind::TieIn,
            height_m: anchor.height_m?,
            side: across(anchor.limb_bearing_deg),
            reach_m: anchor.from_union_cm.map(|cm| cm / 100.0),
            number: String::new(),
            words: desk.anchor_name(anchor),
        })
    });
    let sections = looks.all(|look| &look.sections);
    let sections = sections.into_iter().map(|section| ProfileMark {
        about: section.id.to_string(),
        kind: ProfileMarkKind::SectionHeight,
        height_m: section.height_m,
        side: 0.0,
        reach_m: None,
        number: String::new(),
        words: desk.words.number(section.height_m, Quantity::LengthM),
    });
    findings.chain(anchors).chain(sections).collect()
}

/// Height on the tree; roots and base are at the ground. Nothing is drawn at a height that nobody
/// read.
fn height_of(finding: &Finding) -> Option<f64> {
    match finding.part {
        TreePart::Roots | TreePart::Base => Some(finding.height_m.unwrap_or(0.0)),
        _ => finding.height_m,
    }
}
