//! The outline of a standing person, for scale beside a tree.

use super::drawing::Spot;

/// Half of the outline from the crown of the head down to the inside of the foot, as shares of the
/// body's height: how far to the side, how high.
const HALF: [(f64, f64); 19] = [
    (0.0, 1.0),
    (0.035, 0.99),
    (0.058, 0.96),
    (0.06, 0.92),
    (0.045, 0.885),
    (0.032, 0.865),
    (0.04, 0.84),
    (0.115, 0.815),
    (0.14, 0.77),
    (0.16, 0.63),
    (0.165, 0.48),
    (0.135, 0.475),
    (0.115, 0.62),
    (0.1, 0.70),
    (0.095, 0.5),
    (0.085, 0.28),
    (0.08, 0.0),
    (0.025, 0.0),
    (0.012, 0.46),
];

/// The outline of a person of `height_m`, standing on the ground at 0, 0.
pub(crate) fn person_outline(height_m: f64) -> Vec<Spot> {
    let side = |sign: f64| move |(x, y): &(f64, f64)| Spot::new(sign * x * height_m, y * height_m);
    let right = HALF.iter().map(side(1.0));
    // The crown of the head is shared by both halves.
    let left = HALF.iter().skip(1).rev().map(side(-1.0));
    right.chain(left).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_person_is_as_tall_as_said_and_stands_on_the_ground() {
        let outline = person_outline(1.8);
        let highest = outline.iter().map(|spot| spot.y_m).fold(0.0, f64::max);
        let lowest = outline.iter().map(|spot| spot.y_m).fold(9.0, f64::min);
        assert_eq!((lowest, highest), (0.0, 1.8));
        let sum: f64 = outline.iter().map(|spot| spot.x_m).sum();
        assert!(sum.abs() < 1e-9, "both halves mirror each other");
    }
}
