//! A stem section with its readings of the wall.

use super::{bar_unit, width};
use crate::draw::{
    Drawing, DrawnFrame, LegendLine, PointSymbol, SectionInput, StyleRole, WallMark, WallOpening,
    section,
};
use crate::pages::desk::PageDesk;
use crate::pages::section_left::weakest_mark;
use crate::record::{Id, Quantity, Site, StemSection};
use crate::words::Said;

/// The section; nothing while its size is not known.
pub(super) fn section_through(desk: &PageDesk, id: &Id, frame: &DrawnFrame) -> Option<Drawing> {
    let (site, _) = desk.site?;
    drawing_of_section(desk, site, section_of(site, id)?, frame)
}

/// A section of a site, or the same with readings that are not kept yet.
pub(super) fn drawing_of_section(
    desk: &PageDesk,
    site: &Site,
    known: &StemSection,
    frame: &DrawnFrame,
) -> Option<Drawing> {
    let girth_cm = known
        .girth_cm
        .or_else(|| known.diameter_cm.map(|cm| cm * std::f64::consts::PI))?;
    let height = desk.words.number(known.height_m, Quantity::LengthM);
    let mut input = SectionInput {
        described: desk
            .words
            .say("page.section-at", &[("height", Said::Text(&height))]),
        about: known.id.to_string(),
        radius_m: girth_cm / 100.0 / std::f64::consts::TAU,
        bark_m: known.bark_cm.unwrap_or(0.0) / 100.0,
        readings: known
            .readings
            .iter()
            .map(|reading| WallMark {
                about: reading.id.to_string(),
                bearing_deg: reading.bearing_deg,
                wall_m: reading.shell_cm / 100.0,
                words: desk.words.number(reading.shell_cm, Quantity::LengthCm),
            })
            .collect(),
        decay: Vec::new(),
        openings: known
            .opening
            .iter()
            .map(|at| opening(desk, at, girth_cm))
            .collect(),
        weakest: weakest_mark(desk, site, known),
        legend: Vec::new(),
        north: desk.say("plan.north"),
        bar_unit: bar_unit(desk, Quantity::LengthCm),
    };
    input.legend = legend(desk, &input);
    Some(section(&input, frame, &width).drawing)
}

/// What stands for the weakest direction and for an opening: both are drawn on the rim.
fn legend(desk: &PageDesk, input: &SectionInput) -> Vec<LegendLine> {
    let arrow = (
        input.weakest.is_some(),
        StyleRole::WeakestDirection,
        Some(PointSymbol::Arrow),
        "legend.weakest",
    );
    let gap = (
        !input.openings.is_empty(),
        StyleRole::Opening,
        None,
        "legend.opening",
    );
    [arrow, gap]
        .into_iter()
        .filter(|(there, ..)| *there)
        .map(|(_, role, symbol, key)| LegendLine {
            role,
            symbol,
            words: desk.say(key),
        })
        .collect()
}

/// The section of this id.
pub(in crate::pages) fn section_of<'a>(site: &'a Site, id: &Id) -> Option<&'a StemSection> {
    let looks = site.trees.iter().flat_map(|tree| &tree.inspections);
    let mut sections = looks.flat_map(|look| &look.sections);
    sections.find(|section| section.id == *id)
}

/// An opening by the angle that its width takes on the bark.
fn opening(desk: &PageDesk, at: &crate::record::Opening, girth_cm: f64) -> WallOpening {
    let half_deg = (180.0 * at.width_cm / girth_cm).min(180.0);
    WallOpening {
        from_bearing_deg: at.bearing_deg - half_deg,
        to_bearing_deg: at.bearing_deg + half_deg,
        words: desk.words.say(
            "page.opening-wide",
            &[("width", Said::Number(at.width_cm, Quantity::LengthCm))],
        ),
    }
}
