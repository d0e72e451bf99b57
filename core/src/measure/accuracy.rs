//! How sure an averaged position is: circular Gaussian errors, sessions, scatter.

use super::place::EastNorth;

/// 95 % radius over 68 % radius of a circular Gaussian error.
pub const R95_OVER_R68: f64 = 1.621_462_3;
/// 95 % radius over the two-dimensional root mean square error (63.2 % radius).
pub const R95_OVER_RMS: f64 = 1.730_818_4;

/// Radius in metres that holds the true place with 95 % probability, from the 68 % radius.
pub fn r95_of_r68(r68_m: f64) -> f64 {
    R95_OVER_R68 * r68_m
}

/// Radius with a given probability (0 to under 1) over the standard error of one axis of a
/// circular Gaussian error: √(−2 ln(1 − p)).
pub fn circular_radius(probability: f64) -> f64 {
    libm::sqrt(-2.0 * libm::log1p(-probability))
}

/// A fix on the plane of its session.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed {
    pub(super) place: EastNorth,
    pub(super) accuracy_m: f64,
    pub(super) session: u32,
}

/// The mean with weights 1/accuracy².
pub(super) fn weighted_mean(placed: &[Placed]) -> EastNorth {
    let (mut weights, mut east, mut north) = (0.0, 0.0, 0.0);
    for fix in placed {
        let weight = 1.0 / (fix.accuracy_m * fix.accuracy_m);
        weights += weight;
        east += weight * fix.place.east_m;
        north += weight * fix.place.north_m;
    }
    EastNorth {
        east_m: east / weights,
        north_m: north / weights,
    }
}

/// 68 % radius in metres if every fix were independent.
pub(super) fn formal_accuracy(placed: &[Placed]) -> f64 {
    let weights: f64 = placed
        .iter()
        .map(|fix| 1.0 / (fix.accuracy_m * fix.accuracy_m))
        .sum();
    1.0 / libm::sqrt(weights)
}

/// Each session counts as its best fix, or as the scatter of its fixes where that is larger;
/// only sessions are independent of each other.
pub(super) fn reported_accuracy(placed: &[Placed]) -> f64 {
    let mut sessions: Vec<u32> = placed.iter().map(|fix| fix.session).collect();
    sessions.sort_unstable();
    sessions.dedup();
    let weights: f64 = sessions
        .iter()
        .map(|session| {
            let own: Vec<Placed> = placed
                .iter()
                .filter(|fix| fix.session == *session)
                .copied()
                .collect();
            let best = own
                .iter()
                .map(|fix| fix.accuracy_m)
                .fold(f64::MAX, f64::min);
            let accuracy = best.max(scatter_of_mean(&own));
            1.0 / (accuracy * accuracy)
        })
        .sum();
    1.0 / libm::sqrt(weights)
}

/// 68 % radius of the mean that the scatter of the fixes alone speaks for, 0 for a single fix.
fn scatter_of_mean(placed: &[Placed]) -> f64 {
    let count = placed.len() as f64;
    if count < 2.0 {
        return 0.0;
    }
    let mean = weighted_mean(placed);
    let squares: f64 = placed
        .iter()
        .map(|fix| {
            let off = fix.place.distance_m(mean);
            off * off
        })
        .sum();
    // One axis has half of the squares; r68 = 1.5096 standard errors (circular Gaussian).
    let axis = libm::sqrt(squares / 2.0 / (count - 1.0) / count);
    circular_radius(0.68) * axis
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ratios_follow_from_the_circular_gaussian() {
        // √(ln 0.05 / ln 0.32) and √(−2 ln 0.05)/√2.
        let ratio = circular_radius(0.95) / circular_radius(0.68);
        assert!((ratio - R95_OVER_R68).abs() < 1e-6, "{ratio}");
        let ratio = circular_radius(0.95) / libm::sqrt(2.0);
        assert!((ratio - R95_OVER_RMS).abs() < 1e-6, "{ratio}");
    }
}
