//! What a column of somebody's inventory can hold, and in which unit.

use crate::record::{
    ACCURACY_M, CROWN_RADIUS_M, Fault, GIRTH_CM, HEIGHT_M, LAT_DEG, LEAN_DEG, LON_DEG, NumberField,
};

/// What a column can hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum TreeField {
    /// The tag on the tree.
    Tag,
    /// A key that is unique in the file, such as the row id of a database.
    Key,
    /// Species by its Latin name, or a genus.
    Species,
    /// Species by its common name.
    CommonName,
    /// Latitude on WGS 84 in degrees.
    Lat,
    /// Longitude on WGS 84 in degrees.
    Lon,
    /// Radius that holds the true place with 68 % probability.
    Accuracy,
    /// Height.
    Height,
    /// Girth over bark.
    Girth,
    /// Diameter over bark; it becomes girth.
    Diameter,
    /// Crown radius.
    CrownRadius,
    /// Crown diameter; half of it is the radius.
    CrownDiameter,
    /// Lean from the vertical in degrees.
    Lean,
    /// Notes.
    Note,
}

impl TreeField {
    /// Every field, in the order of a guess.
    pub const ALL: [TreeField; 14] = [
        TreeField::Tag,
        TreeField::Key,
        TreeField::Species,
        TreeField::CommonName,
        TreeField::Lat,
        TreeField::Lon,
        TreeField::Accuracy,
        TreeField::Height,
        TreeField::Girth,
        TreeField::Diameter,
        TreeField::CrownRadius,
        TreeField::CrownDiameter,
        TreeField::Lean,
        TreeField::Note,
    ];

    /// The name a mapping uses, with the unit that counts if none is given.
    pub fn name(self) -> &'static str {
        match self {
            TreeField::Tag => "tag",
            TreeField::Key => "key",
            TreeField::Species => "species",
            TreeField::CommonName => "common_name",
            TreeField::Lat => "lat_deg",
            TreeField::Lon => "lon_deg",
            TreeField::Accuracy => "accuracy_m",
            TreeField::Height => "height_m",
            TreeField::Girth => "girth_cm",
            TreeField::Diameter => "diameter_cm",
            TreeField::CrownRadius => "crown_radius_m",
            TreeField::CrownDiameter => "crown_diameter_m",
            TreeField::Lean => "lean_deg",
            TreeField::Note => "note",
        }
    }

    /// The catalogue entry that names the field.
    pub(super) fn term(self) -> String {
        let name = self.name();
        let bare = ["_deg", "_cm", "_m"]
            .iter()
            .find_map(|unit| name.strip_suffix(unit))
            .unwrap_or(name);
        format!("import.field-{}", bare.replace('_', "-"))
    }

    /// The field of a name; its unit may be left out.
    fn named(name: &str) -> Option<Self> {
        let name = name.trim().to_lowercase();
        Self::ALL.into_iter().find(|field| {
            let whole = field.name();
            let bare = ["_deg", "_cm", "_m"]
                .iter()
                .find_map(|unit| whole.strip_suffix(unit));
            whole == name || bare == Some(name.as_str())
        })
    }

    /// The unit of lengths in this field where nothing else is said; nothing for other fields.
    pub(super) fn usual_unit(self) -> Option<LengthUnit> {
        match self {
            TreeField::Height
            | TreeField::Accuracy
            | TreeField::CrownRadius
            | TreeField::CrownDiameter => Some(LengthUnit::Metre),
            TreeField::Girth | TreeField::Diameter => Some(LengthUnit::Centimetre),
            _ => None,
        }
    }

    /// The range of the record's number that the field becomes.
    pub(super) fn number(self) -> Option<&'static NumberField> {
        match self {
            TreeField::Lat => Some(&LAT_DEG),
            TreeField::Lon => Some(&LON_DEG),
            TreeField::Accuracy => Some(&ACCURACY_M),
            TreeField::Height => Some(&HEIGHT_M),
            TreeField::Girth | TreeField::Diameter => Some(&GIRTH_CM),
            TreeField::CrownRadius | TreeField::CrownDiameter => Some(&CROWN_RADIUS_M),
            TreeField::Lean => Some(&LEAN_DEG),
            _ => None,
        }
    }
}

/// A unit of length that inventories use.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LengthUnit {
    /// Metre.
    Metre,
    /// Centimetre.
    Centimetre,
    /// Millimetre.
    Millimetre,
    /// Foot, 0.3048 m.
    Foot,
    /// Inch, 25.4 mm.
    Inch,
}

impl LengthUnit {
    /// Millimetres in the unit; exact (NIST Special Publication 811, 2008, appendix B).
    pub(super) fn mm(self) -> f64 {
        match self {
            LengthUnit::Metre => 1000.0,
            LengthUnit::Centimetre => 10.0,
            LengthUnit::Millimetre => 1.0,
            LengthUnit::Foot => 304.8,
            LengthUnit::Inch => 25.4,
        }
    }

    /// The unit's symbol.
    pub fn symbol(self) -> &'static str {
        match self {
            LengthUnit::Metre => "m",
            LengthUnit::Centimetre => "cm",
            LengthUnit::Millimetre => "mm",
            LengthUnit::Foot => "ft",
            LengthUnit::Inch => "in",
        }
    }

    /// The unit of a symbol or a name.
    pub(super) fn read(text: &str) -> Option<Self> {
        match text.trim().trim_end_matches('.').to_lowercase().as_str() {
            "m" | "metre" | "metres" | "meter" | "meters" => Some(LengthUnit::Metre),
            "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => {
                Some(LengthUnit::Centimetre)
            }
            "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => {
                Some(LengthUnit::Millimetre)
            }
            "ft" | "foot" | "feet" | "'" | "′" | "’" => Some(LengthUnit::Foot),
            "in" | "inch" | "inches" | "\"" | "″" | "”" => Some(LengthUnit::Inch),
            _ => None,
        }
    }
}

/// A column that a person named for a field.
#[derive(Debug, Clone, PartialEq)]
pub struct ColumnMapping {
    /// What it holds.
    pub field: TreeField,
    /// The column's header, or the property's name.
    pub column: String,
    /// The unit of its lengths; without it the header's, else the one in the field's name.
    pub unit: Option<LengthUnit>,
}

impl ColumnMapping {
    /// Reads `field=COLUMN` or `field=COLUMN:unit`, such as `height_m=HEIGHT:ft`.
    ///
    /// # Errors
    /// A fault that says what is allowed.
    pub fn read(text: &str) -> Result<Self, Fault> {
        let fault = |allowed: String| Fault::new("fault.not-a-mapping", "--map", text, allowed);
        let names = || TreeField::ALL.map(TreeField::name).join(", ");
        let (name, column) = text
            .split_once('=')
            .ok_or_else(|| fault("height_m=HEIGHT:ft".to_owned()))?;
        let field = TreeField::named(name).ok_or_else(|| fault(names()))?;
        let (column, unit) = match column.rsplit_once(':') {
            Some((column, unit)) => match (LengthUnit::read(unit), field.usual_unit()) {
                (Some(unit), Some(_)) => (column, Some(unit)),
                (Some(_), None) => return Err(fault(format!("{name}={column}"))),
                // A colon may be part of a header; a unit is a short word.
                (None, Some(_)) if unit.len() <= 3 && !unit.trim().is_empty() => {
                    return Err(fault("m, cm, mm, ft, in".to_owned()));
                }
                (None, _) => (text.split_once('=').map_or("", |(_, rest)| rest), None),
            },
            None => (column, None),
        };
        if column.trim().is_empty() {
            return Err(fault("height_m=HEIGHT:ft".to_owned()));
        }
        Ok(ColumnMapping {
            field,
            column: column.trim().to_owned(),
            unit,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mapping_names_field_column_and_unit() {
        let read = ColumnMapping::read("height_m=HEIGHT:ft").unwrap();
        assert_eq!(read.field, TreeField::Height);
        assert_eq!(read.column, "HEIGHT");
        assert_eq!(read.unit, Some(LengthUnit::Foot));
        let read = ColumnMapping::read("diameter = DBH (cm)").unwrap();
        assert_eq!((read.field, read.unit), (TreeField::Diameter, None));
        assert_eq!(read.column, "DBH (cm)");
        let read = ColumnMapping::read("note=Remarks: all").unwrap();
        assert_eq!(read.column, "Remarks: all");
    }

    #[test]
    fn a_wrong_mapping_says_what_is_allowed() {
        let allowed = |text: &str| ColumnMapping::read(text).unwrap_err().allowed;
        assert!(allowed("tall=HEIGHT").contains("height_m"));
        assert!(allowed("height_m").contains('='));
        assert!(allowed("height_m=HEIGHT:yd").contains("ft"));
        assert_eq!(allowed("tag=ID:ft"), "tag=ID");
        assert!(!allowed("height_m=").is_empty());
    }

    #[test]
    fn every_field_is_found_by_its_name() {
        for field in TreeField::ALL {
            assert_eq!(TreeField::named(field.name()), Some(field));
        }
        assert_eq!(TreeField::named("Height"), Some(TreeField::Height));
    }
}
