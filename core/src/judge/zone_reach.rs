//! Ends of distributions that distances are taken at.

use super::sampling::lognormal_factor;

/// Ratio of the 95 % to the 68 % radius of a circular Gaussian error (reference sheet §9.5).
pub(crate) const R95_OF_R68: f64 = 1.6215;
/// Normal quantile of the 95 % end.
const Z95: f64 = 1.644_854;

/// The 95 % end of a lognormal length with this coefficient of variation.
pub(crate) fn end_m(median_m: f64, cv: f64) -> f64 {
    median_m * lognormal_factor(Z95, cv)
}
