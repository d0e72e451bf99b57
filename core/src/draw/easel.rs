//! A drawing in the making: marks with their sizes, scale bar and north arrow.

use super::drawing::{
    Drawing, DrawnExtent, DrawnMark, DrawnText, LegendLine, PointSymbol, Spot, StyleRole, TextHold,
};
use super::frame::{BarUnit, DrawnFrame, TextWidth, metres_per_point, text_extent};
use super::symbol::shapes_used;

/// A drawing in the making.
pub(crate) struct Easel<'a> {
    pub frame: DrawnFrame,
    pub scale: f64,
    pub extent: DrawnExtent,
    pub width: TextWidth<'a>,
    pub marks: Vec<DrawnMark>,
}

impl Easel<'_> {
    /// Metres in a point.
    pub fn m_per_pt(&self) -> f64 {
        metres_per_point(self.scale)
    }

    /// Metres in `points` points.
    pub fn metres(&self, points: f64) -> f64 {
        points * self.m_per_pt()
    }

    pub fn area(&mut self, rings: Vec<Vec<Spot>>, role: StyleRole, about: &str) {
        let rings: Vec<_> = rings.into_iter().filter(|ring| ring.len() > 2).collect();
        if !rings.is_empty() {
            self.marks.push(DrawnMark::Polygon {
                rings,
                role,
                about: about.to_owned(),
            });
        }
    }

    pub fn line(&mut self, spots: Vec<Spot>, role: StyleRole, about: &str) {
        if spots.len() > 1 {
            self.marks.push(DrawnMark::Polyline {
                spots,
                role,
                about: about.to_owned(),
            });
        }
    }

    pub fn circle(&mut self, centre: Spot, radius_m: f64, role: StyleRole, about: &str) {
        if radius_m > 0.0 {
            self.marks.push(DrawnMark::Circle {
                centre,
                radius_m: super::spots::tenth_mm(radius_m),
                role,
                about: about.to_owned(),
            });
        }
    }

    pub fn symbol(
        &mut self,
        at: Spot,
        symbol: PointSymbol,
        size_pt: f64,
        turn_deg: f64,
        role: StyleRole,
        about: &str,
    ) {
        self.marks.push(DrawnMark::Symbol {
            at,
            symbol,
            size_pt: hundredth(size_pt),
            turn_deg,
            role,
            about: about.to_owned(),
        });
    }

    pub fn write(
        &mut self,
        words: &str,
        at: Spot,
        hold: TextHold,
        role: StyleRole,
        about: &str,
    ) -> DrawnExtent {
        let text = DrawnText {
            words: words.to_owned(),
            at,
            size_pt: self.frame.text_pt,
            hold,
            halo: true,
        };
        let taken = text_extent(&text, self.m_per_pt(), self.width);
        if !words.is_empty() {
            self.marks.push(DrawnMark::Written {
                text,
                role,
                about: about.to_owned(),
            });
        }
        taken
    }

    /// Writes a number on a symbol, without a halo.
    pub fn write_on_symbol(&mut self, words: &str, at: Spot, size_pt: f64, about: &str) {
        self.marks.push(DrawnMark::Written {
            text: DrawnText {
                words: words.to_owned(),
                at,
                size_pt: hundredth(size_pt),
                hold: TextHold::Middle,
                halo: false,
            },
            role: StyleRole::OnSymbol,
            about: about.to_owned(),
        });
    }

    /// Height in points of the strip at the foot that carries scale bar and north arrow.
    pub fn foot_pt(frame: &DrawnFrame) -> f64 {
        3.2 * frame.text_pt
    }

    /// The rectangle above the foot.
    pub fn body(&self) -> DrawnExtent {
        DrawnExtent {
            bottom_m: self.extent.bottom_m + self.metres(Self::foot_pt(&self.frame)),
            ..self.extent
        }
    }

    /// Draws the foot: bare paper, the scale bar at the left, and north, when there is a letter
    /// for it, at the right.
    pub fn foot(&mut self, unit: &BarUnit, north: &str) {
        let (extent, body) = (self.extent, self.body());
        self.area(
            vec![vec![
                Spot::new(extent.left_m, extent.bottom_m),
                Spot::new(extent.right_m, extent.bottom_m),
                Spot::new(extent.right_m, body.bottom_m),
                Spot::new(extent.left_m, body.bottom_m),
            ]],
            StyleRole::Paper,
            "",
        );
        let text_pt = self.frame.text_pt;
        let edge_m = self.metres(text_pt);
        if !north.is_empty() {
            let middle_m = (extent.bottom_m + body.bottom_m) / 2.0;
            let at = Spot::new(extent.right_m - edge_m * 1.2, middle_m);
            self.symbol(
                at,
                PointSymbol::Arrow,
                2.2 * text_pt,
                0.0,
                StyleRole::North,
                "",
            );
            let beside = Spot::new(at.x_m - edge_m, middle_m);
            self.write(north, beside, TextHold::End, StyleRole::North, "");
        }
        self.scale_bar(unit, Spot::new(extent.left_m + edge_m, extent.bottom_m));
    }

    /// The scale bar from the left end `from` at the lower edge: half of it filled, numbers above.
    fn scale_bar(&mut self, unit: &BarUnit, from: Spot) {
        let text_pt = self.frame.text_pt;
        let room_m = self.metres((self.frame.width_pt * 0.4).min(16.0 * text_pt));
        let Some(units) = bar_units(room_m, unit.unit_m) else {
            return;
        };
        let long_m = units * unit.unit_m;
        let far = format!("{units} {}", unit.sign);
        let numbers_pt = (self.width)("0", text_pt) + (self.width)(&far, text_pt) / 2.0;
        if long_m < self.metres(numbers_pt + 0.5 * text_pt) {
            return;
        }
        let (low_m, high_m) = (
            from.y_m + self.metres(0.6 * text_pt),
            from.y_m + self.metres(1.1 * text_pt),
        );
        let corner = |share: f64, y_m: f64| Spot::new(from.x_m + share * long_m, y_m);
        let block = |from: f64, to: f64| {
            vec![
                corner(from, low_m),
                corner(to, low_m),
                corner(to, high_m),
                corner(from, high_m),
            ]
        };
        self.area(vec![block(0.0, 0.5)], StyleRole::ScaleBar, "");
        let mut rim = block(0.0, 1.0);
        rim.extend(rim.first().copied());
        self.line(rim, StyleRole::ScaleBar, "");
        let above_m = from.y_m + self.metres(2.0 * text_pt);
        let role = StyleRole::ScaleBar;
        self.write("0", corner(0.0, above_m), TextHold::Start, role, "");
        let beyond = self.write(&far, corner(1.0, above_m), TextHold::Middle, role, "");
        let words = format!("1:{}", self.scale);
        let left_m = beyond.right_m + self.metres(text_pt);
        let right_m = left_m + self.metres((self.width)(&words, text_pt));
        // North takes four letters' room at the right.
        if self.frame.round_scale && right_m < self.extent.right_m - self.metres(4.0 * text_pt) {
            let at = Spot::new(left_m, above_m);
            self.write(&words, at, TextHold::Start, role, "");
        }
    }

    /// The finished drawing.
    pub fn finish(self, described: &str, legend: Vec<LegendLine>) -> Drawing {
        let symbols = shapes_used(&self.marks, &legend);
        Drawing {
            described: described.to_owned(),
            extent: self.extent,
            scale: self.scale,
            marks: self.marks,
            legend,
            symbols,
        }
    }
}

/// A size in points rounded to a hundredth.
fn hundredth(size_pt: f64) -> f64 {
    (size_pt * 100.0).round() / 100.0
}

/// The largest of 1, 2, 5, 10, 20, 50 … units that fits `room_m`; nothing when not even one does.
fn bar_units(room_m: f64, unit_m: f64) -> Option<f64> {
    let room = room_m / unit_m;
    if !room.is_finite() || room < 1.0 {
        return None;
    }
    let ten = libm::pow(10.0, libm::floor(libm::log10(room)));
    [5.0, 2.0, 1.0]
        .into_iter()
        .map(|step| step * ten)
        .find(|units| *units <= room)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_bar_has_a_round_length() {
        assert_eq!(bar_units(47.0, 1.0), Some(20.0));
        assert_eq!(bar_units(50.0, 1.0), Some(50.0));
        // 47 m are 154 feet.
        assert_eq!(bar_units(47.0, 0.3048), Some(100.0));
        assert_eq!(bar_units(0.4, 1.0), None);
        assert_eq!(bar_units(1.0, 0.0), None);
    }
}
