//! A stem section from above: bark, sound wood, decay, opening, readings and the weakest direction.

use super::drawing::{PointSymbol, Spot, StyleRole};
use super::easel::Easel;
use super::frame::{BarUnit, DrawnFrame, TextWidth, frame_extent, symbol_extent};
use super::labels::{LabelGround, LabelWish, PlacedLabels, place_labels};
use super::lines::pieces;
use super::plan::LaidOut;

/// Spots on a full ring.
const RIM_SPOTS: u32 = 144;

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

const PITH: Spot = Spot { x_m: 0.0, y_m: 0.0 };

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
        drawing: easel.finish(&input.described, Vec::new()),
        unlabelled: placed.left_out,
        led: placed.led as u32,
    }
}

fn held(value: f64, least: f64, most: f64) -> f64 {
    if value.is_nan() {
        least
    } else {
        value.clamp(least, most)
    }
}

fn words_of(input: &SectionInput) -> impl Iterator<Item = &str> {
    let readings = input.readings.iter().map(|reading| reading.words.as_str());
    let openings = input.openings.iter().map(|opening| opening.words.as_str());
    let weakest = input.weakest.iter().map(|weakest| weakest.words.as_str());
    readings.chain(openings).chain(weakest)
}

fn full_turn(degrees: f64) -> f64 {
    let turned = libm::fmod(degrees, 360.0);
    if turned < 0.0 { turned + 360.0 } else { turned }
}

fn ring(radius_m: f64) -> Vec<Spot> {
    (0..RIM_SPOTS)
        .map(|step| PITH.towards(360.0 / f64::from(RIM_SPOTS) * f64::from(step), radius_m))
        .collect()
}

/// The edge of the decay: as handed in, else drawn through the readings; nothing where nothing was
/// read or every wall reaches the pith.
fn decay_ring(input: &SectionInput, wood_m: f64) -> Vec<Spot> {
    if input.decay.len() > 2 {
        return input
            .decay
            .iter()
            .map(|spot| Spot::new(spot.x_m, spot.y_m))
            .collect();
    }
    let mut walls: Vec<(f64, f64)> = input
        .readings
        .iter()
        .filter(|reading| reading.bearing_deg.is_finite() && reading.wall_m.is_finite())
        .map(|reading| {
            (
                full_turn(reading.bearing_deg),
                reading.wall_m.clamp(0.0, wood_m),
            )
        })
        .collect();
    walls.sort_by(|one, other| one.0.total_cmp(&other.0));
    let hollow = walls.iter().any(|(_, wall_m)| *wall_m < wood_m);
    if !hollow {
        return Vec::new();
    }
    (0..RIM_SPOTS)
        .map(|step| {
            let bearing_deg = 360.0 / f64::from(RIM_SPOTS) * f64::from(step);
            PITH.towards(bearing_deg, wood_m - wall_at(&walls, bearing_deg))
        })
        .collect()
}

/// The wall between the readings before and after a bearing, changing evenly with the bearing.
fn wall_at(walls: &[(f64, f64)], bearing_deg: f64) -> f64 {
    let after = walls.iter().find(|wall| wall.0 > bearing_deg);
    let before = walls.iter().rev().find(|wall| wall.0 <= bearing_deg);
    let (Some(first), Some(last)) = (walls.first(), walls.last()) else {
        return 0.0;
    };
    let from = before.copied().unwrap_or((last.0 - 360.0, last.1));
    let to = after.copied().unwrap_or((first.0 + 360.0, first.1));
    if to.0 - from.0 <= 0.0 {
        return from.1;
    }
    from.1 + (to.1 - from.1) * (bearing_deg - from.0) / (to.0 - from.0)
}

fn draw_wood(
    easel: &mut Easel,
    input: &SectionInput,
    (radius_m, wood_m): (f64, f64),
    decay: &[Spot],
) {
    easel.area(
        vec![ring(radius_m), ring(wood_m)],
        StyleRole::Bark,
        &input.about,
    );
    easel.area(
        vec![ring(wood_m), decay.to_vec()],
        StyleRole::SoundWood,
        &input.about,
    );
    easel.area(vec![decay.to_vec()], StyleRole::Decay, &input.about);
    for opening in &input.openings {
        if let Some(wedge) = wedge_of(opening, radius_m, decay) {
            easel.area(vec![wedge], StyleRole::Opening, &input.about);
        }
    }
}

/// The gap of an opening: from the rim in to the decay, or to the pith where none is drawn.
fn wedge_of(opening: &WallOpening, radius_m: f64, decay: &[Spot]) -> Option<Vec<Spot>> {
    let (from_deg, wide_deg) = opening_arc(opening)?;
    let steps = (wide_deg / 2.5).ceil().clamp(2.0, 144.0) as u32;
    let along = |step: u32| full_turn(from_deg + wide_deg * f64::from(step) / f64::from(steps));
    let rim = (0..=steps).map(|step| PITH.towards(along(step), radius_m));
    let inner = (0..=steps)
        .rev()
        .map(|step| PITH.towards(along(step), reach_of(decay, along(step), radius_m)));
    Some(rim.chain(inner).collect())
}

fn opening_arc(opening: &WallOpening) -> Option<(f64, f64)> {
    let wide_deg = full_turn(opening.to_bearing_deg - opening.from_bearing_deg);
    (wide_deg.is_finite() && wide_deg > 0.0)
        .then_some((full_turn(opening.from_bearing_deg), wide_deg))
}

/// How far from the pith a ring lies at a bearing: its outermost crossing with the ray, 0 without.
fn reach_of(ring: &[Spot], bearing_deg: f64, radius_m: f64) -> f64 {
    let tip = PITH.towards(bearing_deg, 2.0 * radius_m);
    pieces(ring, true)
        .into_iter()
        .filter_map(|(from, to)| {
            let (along_x, along_y) = (to.x_m - from.x_m, to.y_m - from.y_m);
            let across = tip.x_m * along_y - tip.y_m * along_x;
            let on_ray = (from.x_m * along_y - from.y_m * along_x) / across;
            let on_side = (from.x_m * tip.y_m - from.y_m * tip.x_m) / across;
            let hit = across != 0.0 && (0.0..=1.0).contains(&on_side) && on_ray >= 0.0;
            hit.then_some(on_ray * 2.0 * radius_m)
        })
        .fold(0.0, f64::max)
        .min(radius_m)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_wall_changes_evenly_between_readings_and_across_north() {
        let walls = [(90.0, 0.10), (270.0, 0.20)];
        for (bearing_deg, wall_m) in [
            (90.0, 0.10),
            (180.0, 0.15),
            (270.0, 0.20),
            (0.0, 0.15),
            (315.0, 0.175),
            (45.0, 0.125),
        ] {
            assert!(
                (wall_at(&walls, bearing_deg) - wall_m).abs() < 1e-12,
                "{bearing_deg}"
            );
        }
        assert_eq!(wall_at(&[(10.0, 0.07)], 200.0), 0.07);
    }

    #[test]
    fn a_ray_finds_the_rim_of_an_off_centre_hollow() {
        let hollow: Vec<Spot> = ring(0.2)
            .into_iter()
            .map(|spot| Spot::new(spot.x_m + 0.1, spot.y_m))
            .collect();
        assert!((reach_of(&hollow, 90.0, 0.5) - 0.3).abs() < 1e-3);
        assert!((reach_of(&hollow, 270.0, 0.5) - 0.1).abs() < 1e-3);
        assert_eq!(reach_of(&[], 90.0, 0.5), 0.0);
    }

    #[test]
    fn an_opening_over_north_is_the_short_way_clockwise() {
        let opening = WallOpening {
            from_bearing_deg: 350.0,
            to_bearing_deg: 20.0,
            words: String::new(),
        };
        assert_eq!(opening_arc(&opening), Some((350.0, 30.0)));
        let wedge = wedge_of(&opening, 0.5, &ring(0.3)).unwrap();
        assert!(wedge.iter().all(|spot| spot.y_m > 0.25));
    }
}
