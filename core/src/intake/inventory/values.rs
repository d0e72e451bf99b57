//! The values of one row, each in the base unit of its record; what cannot be meant is left out and
//! told with its place.

use super::field::TreeField;
use super::number::{DecimalMark, read_number, says_nothing};
use super::plan::Plan;
use super::rows::{Cell, Row, Rows};
use crate::record::{
    Crown, Fault, Girth, GirthMethod, Height, HeightMethod, LAT_DEG, LON_DEG, Lean, LeanMethod,
    Position, PositionMethod,
};

/// Reads the values of one row after another.
pub(super) struct Reader<'a> {
    pub rows: &'a Rows,
    pub plan: &'a Plan,
    pub mark: DecimalMark,
    /// Values left out so far.
    pub left_out: Vec<Fault>,
}

/// The measures of a tree in another inventory.
pub(super) struct Measures {
    pub height: Option<Height>,
    pub girth: Option<Girth>,
    pub crown: Option<Crown>,
    pub lean: Option<Lean>,
}

impl Reader<'_> {
    /// A text, or nothing where the cell is blank.
    pub fn text(&self, row: &Row, field: TreeField) -> Option<String> {
        let cell = row.cell(self.plan.source(field)?.column)?;
        let text = cell.text.trim();
        // An apostrophe in front keeps a spreadsheet from taking a text for a formula.
        let bare = text
            .strip_prefix('\'')
            .filter(|rest| rest.starts_with(['=', '+', '-', '@']));
        let text = bare.unwrap_or(text);
        (!text.is_empty()).then(|| text.to_owned())
    }

    /// A text in which words like `NA` stand for nothing.
    pub fn known_text(&self, row: &Row, field: TreeField) -> Option<String> {
        self.text(row, field).filter(|text| !says_nothing(text))
    }

    /// What was measured, all of it taken over.
    pub fn measures(&mut self, row: &Row) -> Measures {
        let height_m = self.length(row, TreeField::Height, 1000.0, 1.0);
        let girth_cm = self.length(row, TreeField::Girth, 10.0, 1.0);
        // Circumference of a circle, as girth tapes and callipers are compared.
        let girth_cm =
            girth_cm.or_else(|| self.length(row, TreeField::Diameter, 10.0, std::f64::consts::PI));
        let radius_m = self.length(row, TreeField::CrownRadius, 1000.0, 1.0);
        let radius_m = radius_m.or_else(|| self.length(row, TreeField::CrownDiameter, 1000.0, 0.5));
        let lean_deg = self.measured(row, TreeField::Lean, |value, _| value);
        Measures {
            height: height_m.map(|height_m| Height {
                height_m,
                se_m: None,
                method: Some(HeightMethod::TakenOver),
            }),
            girth: girth_cm.map(|girth_cm| Girth {
                girth_cm,
                se_cm: None,
                method: Some(GirthMethod::TakenOver),
                at_height_m: None,
            }),
            crown: radius_m.map(|radius_m| Crown {
                radius_m,
                radius_se_m: None,
                base_m: None,
            }),
            lean: lean_deg.map(|lean_deg| Lean {
                lean_deg,
                toward_deg: None,
                se_deg: None,
                method: Some(LeanMethod::TakenOver),
            }),
        }
    }

    /// Where the tree stands; its accuracy stays unknown where nobody knew it.
    pub fn position(&mut self, row: &Row) -> Option<Position> {
        let columns = self.plan.has(TreeField::Lat) || self.plan.has(TreeField::Lon);
        let (lat_deg, lon_deg, place) = if columns {
            let lat = self.degrees(row, TreeField::Lat);
            let lon = self.degrees(row, TreeField::Lon);
            match (lat, lon) {
                (Some(lat), Some(lon)) => (lat, lon, row.place.row()),
                (None, None) => return None,
                (lat, _) => {
                    let (has, lacks) = if lat.is_some() {
                        (TreeField::Lat, TreeField::Lon)
                    } else {
                        (TreeField::Lon, TreeField::Lat)
                    };
                    let place = row.place.cell(self.column(has));
                    let fault = Fault::new("fault.half-a-position", place, "", lacks.name());
                    self.left_out.push(fault);
                    return None;
                }
            }
        } else {
            let point = row.point?;
            (point.lat_deg, point.lon_deg, row.place.position())
        };
        if let Some(code) = place_fault(lat_deg, lon_deg) {
            let found = format!("{lat_deg}, {lon_deg}");
            let allowed = format!(
                "{} to {}, {} to {}",
                LAT_DEG.min, LAT_DEG.max, LON_DEG.min, LON_DEG.max
            );
            self.left_out.push(Fault::new(code, place, found, allowed));
            return None;
        }
        Some(Position {
            lat_deg,
            lon_deg,
            accuracy_m: self.length(row, TreeField::Accuracy, 1000.0, 1.0),
            method: Some(PositionMethod::TakenOver),
        })
    }

    /// A length in a unit of `base_mm` millimetres, times a factor; rounded to a millionth, which
    /// no tape reads and which hides the noise of conversion.
    fn length(&mut self, row: &Row, field: TreeField, base_mm: f64, factor: f64) -> Option<f64> {
        self.measured(row, field, |value, unit_mm| {
            let base = value * unit_mm / base_mm * factor;
            (base * 1e6).round() / 1e6
        })
    }

    /// A measured number in its base unit: below zero stands for missing.
    fn measured(
        &mut self,
        row: &Row,
        field: TreeField,
        to_base: impl Fn(f64, f64) -> f64,
    ) -> Option<f64> {
        let source = self.plan.source(field)?;
        let cell = row.cell(source.column)?;
        if says_nothing(&cell.text) {
            return None;
        }
        let Some((value, unit)) = self.number(cell) else {
            self.leave_out("fault.not-a-number", row, field, cell, "");
            return None;
        };
        if value < 0.0 {
            return None;
        }
        let unit = unit.or(source.unit);
        let base = to_base(value, unit.map_or(1.0, |unit| unit.mm()));
        let range = field.number()?;
        if range.allows(base) {
            return Some(base);
        }
        let own = |limit: f64| limit / to_base(1.0, unit.map_or(1.0, |unit| unit.mm()));
        let allowed = format!(
            "{:.2} to {:.1} {}",
            own(range.min),
            own(range.max),
            unit.map_or("", |unit| unit.symbol())
        );
        self.leave_out("fault.out-of-range", row, field, cell, allowed.trim());
        None
    }

    /// A latitude or a longitude: below zero is south or west.
    fn degrees(&mut self, row: &Row, field: TreeField) -> Option<f64> {
        let cell = row.cell(self.plan.source(field)?.column)?;
        if says_nothing(&cell.text) {
            return None;
        }
        let value = self.number(cell).map(|(value, _)| value);
        if value.is_none() {
            self.leave_out("fault.not-a-number", row, field, cell, "");
        }
        value
    }

    fn number(&self, cell: &Cell) -> Option<(f64, Option<super::field::LengthUnit>)> {
        if let Some(number) = cell.number {
            return number.is_finite().then_some((number, None));
        }
        let written = read_number(&cell.text, self.mark)?;
        Some((written.value, written.unit))
    }

    fn leave_out(&mut self, code: &str, row: &Row, field: TreeField, cell: &Cell, allowed: &str) {
        let place = row.place.cell(self.column(field));
        self.left_out
            .push(Fault::new(code, place, &cell.text, allowed));
    }

    fn column(&self, field: TreeField) -> &str {
        self.plan
            .source(field)
            .and_then(|source| self.rows.columns.get(source.column))
            .map_or(field.name(), String::as_str)
    }
}

/// What is wrong with a place; 0, 0 is what many a program writes for none.
fn place_fault(lat_deg: f64, lon_deg: f64) -> Option<&'static str> {
    if lat_deg == 0.0 && lon_deg == 0.0 {
        return Some("fault.no-place");
    }
    if LAT_DEG.allows(lat_deg) && LON_DEG.allows(lon_deg) {
        return None;
    }
    if LAT_DEG.allows(lon_deg) && LON_DEG.allows(lat_deg) {
        Some("fault.coordinates-swapped")
    } else {
        Some("fault.not-degrees")
    }
}
