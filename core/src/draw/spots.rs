//! Reckoning with spots and rectangles, rounded to a tenth of a millimetre.

use super::drawing::{DrawnExtent, Spot};

impl Spot {
    /// A spot rounded to a tenth of a millimetre.
    pub fn new(x_m: f64, y_m: f64) -> Self {
        Spot {
            x_m: tenth_mm(x_m),
            y_m: tenth_mm(y_m),
        }
    }

    /// Straight distance to `other` in metres.
    pub fn distance_m(self, other: Spot) -> f64 {
        libm::hypot(self.x_m - other.x_m, self.y_m - other.y_m)
    }

    /// The spot `distance_m` away at `bearing_deg`, clockwise from up (north on a plan).
    pub fn towards(self, bearing_deg: f64, distance_m: f64) -> Spot {
        let radians = bearing_deg.to_radians();
        Spot::new(
            self.x_m + distance_m * libm::sin(radians),
            self.y_m + distance_m * libm::cos(radians),
        )
    }
}

impl DrawnExtent {
    /// The smallest rectangle around `spots`; nothing when there are none.
    pub fn around(spots: impl IntoIterator<Item = Spot>) -> Option<Self> {
        spots.into_iter().fold(None, |extent, spot| {
            let at = DrawnExtent {
                left_m: spot.x_m,
                bottom_m: spot.y_m,
                right_m: spot.x_m,
                top_m: spot.y_m,
            };
            Some(extent.map_or(at, |known: DrawnExtent| known.with(at)))
        })
    }

    /// The smallest rectangle around both.
    pub fn with(self, other: DrawnExtent) -> Self {
        DrawnExtent {
            left_m: self.left_m.min(other.left_m),
            bottom_m: self.bottom_m.min(other.bottom_m),
            right_m: self.right_m.max(other.right_m),
            top_m: self.top_m.max(other.top_m),
        }
    }

    /// The rectangle grown by `by_m` on every side.
    pub fn grown(self, by_m: f64) -> Self {
        DrawnExtent {
            left_m: tenth_mm(self.left_m - by_m),
            bottom_m: tenth_mm(self.bottom_m - by_m),
            right_m: tenth_mm(self.right_m + by_m),
            top_m: tenth_mm(self.top_m + by_m),
        }
    }

    /// Width in metres.
    pub fn width_m(self) -> f64 {
        self.right_m - self.left_m
    }

    /// Height in metres.
    pub fn height_m(self) -> f64 {
        self.top_m - self.bottom_m
    }

    /// The middle.
    pub fn middle(self) -> Spot {
        Spot::new(
            (self.left_m + self.right_m) / 2.0,
            (self.bottom_m + self.top_m) / 2.0,
        )
    }

    /// Whether `spot` lies inside or on the edge.
    pub fn holds(self, spot: Spot) -> bool {
        (self.left_m..=self.right_m).contains(&spot.x_m)
            && (self.bottom_m..=self.top_m).contains(&spot.y_m)
    }

    /// Whether the two rectangles share more than an edge.
    pub fn overlaps(self, other: DrawnExtent) -> bool {
        self.left_m < other.right_m
            && other.left_m < self.right_m
            && self.bottom_m < other.top_m
            && other.bottom_m < self.top_m
    }
}

/// Rounded to a tenth of a millimetre, never minus zero.
pub(crate) fn tenth_mm(value_m: f64) -> f64 {
    (value_m * 10_000.0).round() / 10_000.0 + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bearings_turn_clockwise_from_up() {
        let east = Spot::new(0.0, 0.0).towards(90.0, 2.0);
        assert_eq!((east.x_m, east.y_m), (2.0, 0.0));
        let south_west = Spot::new(1.0, 1.0).towards(225.0, 2f64.sqrt());
        assert_eq!((south_west.x_m, south_west.y_m), (0.0, 0.0));
    }

    #[test]
    fn rounding_leaves_no_minus_zero() {
        assert!(Spot::new(-0.000_01, 0.0).x_m.is_sign_positive());
        assert_eq!(Spot::new(1.234_56, 0.0).x_m, 1.234_6);
    }

    #[test]
    fn rectangles_that_touch_do_not_overlap() {
        let left = DrawnExtent::around([Spot::new(0.0, 0.0), Spot::new(1.0, 1.0)]).unwrap();
        let right = DrawnExtent::around([Spot::new(1.0, 0.0), Spot::new(2.0, 1.0)]).unwrap();
        assert!(!left.overlaps(right));
        assert!(left.overlaps(right.grown(0.1)));
    }
}
