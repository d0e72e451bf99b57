//! A stem section from above: bark, sound wood, decay, opening, readings and the weakest direction.

use super::drawing::{LegendLine, PointSymbol, Spot, StyleRole};
use super::easel::Easel;
use super::frame::{BarUnit, DrawnFrame, TextWidth, frame_extent, symbol_extent};
use super::labels::{LabelGround, LabelWish, PlacedLabels, place_labels};
use super::plan::LaidOut;
use super::section_wood::{PITH, decay_ring, draw_wood, full_turn, held, opening_arc};

/// A stem section: bearings in degrees clockwise from north, lengths in metres.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionInput {
    /// What the drawing shows, in words for people who do not see it.
    pub described: String,
    /// Id of the section.
    pub about: String,
    /// Radius over bark, more than 0.
    pub radius_m: f64,
    /// Thickness of the bark; less than the radius.
    pub bark_m: f64,
    /// The readings of the wall.
    pub readings: Vec<WallMark>,
    /// The edge of the decay as the judgement took it, around the pith at 0, 0. Without one it is
    /// drawn through the readings: between two of them the wall changes evenly with the bearing.
    pub decay: Vec<Spot>,
    /// Openings in the wall.
    pub openings: Vec<WallOpening>,
    /// Where the section is weakest against bending, with the words beside the arrow.
    pub weakest: Option<WeakestMark>,
    /// The lines of the legend, in order.
    pub legend: Vec<LegendLine>,
    /// The letter for north.
    pub north: String,
    /// The reader's unit for the scale bar.
    pub bar_unit: BarUnit,
}

/// One reading of the wall.
#[derive(Debug, Clone, PartialEq)]
pub struct WallMark {
    /// Id of the reading.
    pub about: String,
    /// Where on the stem.
    pub bearing_deg: f64,
    /// Sound wall under the bark in metres; sound to the pith when it is the radius or more.
    pub wall_m: f64,
    /// What is written beside it.
    pub words: String,
}

/// An opening, clockwise from one bearing to the other.
#[derive(Debug, Clone, PartialEq)]
pub struct WallOpening {
    /// Where it begins.
    pub from_bearing_deg: f64,
    /// Where it ends.
    pub to_bearing_deg: f64,
    /// What is written beside it.
    pub words: String,
}

/// The weakest direction.
#[derive(Debug, Clone, PartialEq)]
pub struct WeakestMark {
    /// Its bearing.
    pub bearing_deg: f64,
    /// What is written beside the arrow.
    pub words: String,
}

/// The drawing of a stem section in `frame`.
pub fn section(input: &SectionInput, frame: &DrawnFrame, width: TextWidth) -> LaidOut {
    let frame = frame.held();
    let radius_m = held(input.radius_m, 0.005, 20.0);
    let wood_m = radius_m - held(input.bark_m, 0.0, 0.95 * radius_m);
    let text_pt = frame.text_pt;
    let widest_pt = words_of(input)
        .map(|words| width(words, text_pt))
        .fold(0.0, f64::max);
    // Room beside the stem for the longest words and above it for one line; never less than half
    // the frame for the stem itself.
    let aside_pt = (widest_pt + 3.0 * text_pt).min(0.22 * frame.width_pt);
    let room_pt = (
        frame.width_pt - 2.0 * aside_pt,
        frame.height_pt - Easel::foot_pt(&frame) - 7.0 * text_pt,
    );
    let scale = frame.scale_for((2.0 * radius_m, 2.0 * radius_m), room_pt);
    let stem_pt = 2.0 * radius_m / super::frame::metres_per_point(scale);
    let frame = frame.cut_to(stem_pt + 10.0 * text_pt + Easel::foot_pt(&frame));
    let mut easel = Easel {
        frame,
        scale,
        extent: frame_extent(&frame, scale, PITH, Easel::foot_pt(&frame)),
        width,
        marks: Vec::new(),
    };
    let decay = decay_ring(input, wood_m);
    draw_wood(&mut easel, input, (radius_m, wood_m), &decay);
    let wishes = draw_signs(&mut easel, input, (radius_m, wood_m));
    easel.foot(&input.bar_unit, &input.north);
    let placed = label(&easel, input, &wishes, radius_m);
    easel.marks.extend(placed.marks);
    LaidOut {
        drawing: easel.finish(&input.described, input.legend.clone()),
        unlabelled: placed.left_out,
        led: placed.led as u32,
    }
}

fn words_of(input: &SectionInput) -> impl Iterator<Item = &str> {
    let readings = input.readings.iter().map(|reading| reading.words.as_str());
    let openings = input.openings.iter().map(|opening| opening.words.as_str());
    let weakest = input.weakest.iter().map(|weakest| weakest.words.as_str());
    readings.chain(openings).chain(weakest)
}

fn draw_signs(
    easel: &mut Easel,
    input: &SectionInput,
    (radius_m, wood_m): (f64, f64),
) -> Vec<LabelWish> {
    let text_pt = easel.frame.text_pt;
    let (tick_m, arrow_m) = (easel.metres(0.5 * text_pt), easel.metres(1.6 * text_pt));
    let wish = |about: &str, words: &str, (bearing_deg, out_m): (f64, f64), role| LabelWish {
        about: about.to_owned(),
        words: words.to_owned(),
        places: vec![PITH.towards(bearing_deg, radius_m + out_m)],
        clear_pt: 0.5 * text_pt,
        size_pt: text_pt,
        role,
        may_lead: true,
        outward_deg: Some(full_turn(bearing_deg)),
        last: role == StyleRole::WeakestDirection,
    };
    let mut wishes = Vec::new();
    if let Some(weakest) = input.weakest.as_ref().filter(|w| w.bearing_deg.is_finite()) {
        let role = StyleRole::WeakestDirection;
        easel.line(
            vec![
                PITH,
                PITH.towards(weakest.bearing_deg, radius_m + 0.4 * arrow_m),
            ],
            role,
            &input.about,
        );
        let head = PITH.towards(weakest.bearing_deg, radius_m + 0.5 * arrow_m);
        let turn_deg = full_turn(weakest.bearing_deg);
        easel.symbol(
            head,
            PointSymbol::Arrow,
            1.4 * text_pt,
            turn_deg,
            role,
            &input.about,
        );
        let at = (weakest.bearing_deg, arrow_m);
        wishes.push(wish(&input.about, &weakest.words, at, role));
    }
    for opening in &input.openings {
        if let Some((from_deg, wide_deg)) = opening_arc(opening) {
            let at = (from_deg + wide_deg / 2.0, 0.0);
            wishes.push(wish(&input.about, &opening.words, at, StyleRole::Label));
        }
    }
    for reading in input.readings.iter().filter(|r| r.bearing_deg.is_finite()) {
        let outer = PITH.towards(reading.bearing_deg, radius_m + tick_m);
        let wall_m = held(reading.wall_m, 0.0, wood_m);
        let inner = PITH.towards(reading.bearing_deg, wood_m - wall_m);
        easel.line(vec![outer, inner], StyleRole::Reading, &reading.about);
        wishes.push(wish(
            &reading.about,
            &reading.words,
            (reading.bearing_deg, tick_m),
            StyleRole::Reading,
        ));
    }
    wishes
}

fn label(easel: &Easel, input: &SectionInput, wishes: &[LabelWish], radius_m: f64) -> PlacedLabels {
    let m_per_pt = easel.m_per_pt();
    let text_pt = easel.frame.text_pt;
    let head = input.weakest.iter().map(|weakest| {
        let out_m = radius_m + easel.metres(0.8 * text_pt);
        let at = PITH.towards(weakest.bearing_deg, out_m);
        symbol_extent(at, 1.4 * text_pt, m_per_pt)
    });
    let tick_m = easel.metres(0.5 * text_pt);
    let ground = LabelGround {
        bounds: Some(easel.body()),
        taken: head.collect(),
        discs: vec![(PITH, radius_m)],
        lines: input
            .readings
            .iter()
            .map(|reading| {
                let rim = |out_m| PITH.towards(reading.bearing_deg, radius_m + out_m);
                (rim(0.0), rim(tick_m))
            })
            .collect(),
    };
    place_labels(wishes, &ground, m_per_pt, easel.width)
}
