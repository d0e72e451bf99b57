//! The wood of a stem section: bark, sound wood, decay and the gaps of openings.

use super::drawing::{Spot, StyleRole};
use super::easel::Easel;
use super::lines::pieces;
use super::section::{SectionInput, WallOpening};

/// Spots on a full ring.
const RIM_SPOTS: u32 = 144;

/// The middle of the section.
pub(crate) const PITH: Spot = Spot { x_m: 0.0, y_m: 0.0 };

pub(crate) fn held(value: f64, least: f64, most: f64) -> f64 {
    if value.is_nan() {
        least
    } else {
        value.clamp(least, most)
    }
}

pub(crate) fn full_turn(degrees: f64) -> f64 {
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
pub(crate) fn decay_ring(input: &SectionInput, wood_m: f64) -> Vec<Spot> {
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

pub(crate) fn draw_wood(
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

pub(crate) fn opening_arc(opening: &WallOpening) -> Option<(f64, f64)> {
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
