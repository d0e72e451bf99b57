//! What a header says: the name without its unit, and the unit.

use super::field::{LengthUnit, TreeField};

/// A header taken apart.
pub(super) struct Header {
    /// Letters and digits in lower case, without the unit.
    pub name: String,
    /// The same with the unit's letters.
    pub whole: String,
    /// The unit it names.
    pub unit: Option<LengthUnit>,
}

impl Header {
    pub fn read(text: &str) -> Self {
        let whole = letters(text);
        if let Some((name, unit)) = in_brackets(text) {
            return Header {
                name: letters(name),
                whole,
                unit: LengthUnit::read(unit),
            };
        }
        let parted = text.trim().rsplit_once(['_', ' ', '.', '-']);
        if let Some((name, unit)) = parted
            && let Some(unit) = LengthUnit::read(unit)
        {
            return Header {
                name: letters(name),
                whole,
                unit: Some(unit),
            };
        }
        Header {
            name: whole.clone(),
            whole,
            unit: None,
        }
    }
}

/// `DBH (cm)` and `Height [m]`.
fn in_brackets(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let (open, close) = match text.chars().last()? {
        ')' => ('(', ')'),
        ']' => ('[', ']'),
        _ => return None,
    };
    let (name, unit) = text.strip_suffix(close)?.rsplit_once(open)?;
    Some((name, unit))
}

fn letters(text: &str) -> String {
    text.chars()
        .filter(|letter| letter.is_alphanumeric())
        .flat_map(char::to_lowercase)
        .collect()
}

/// Names by which a field is known, the surest first; letters and digits only.
pub(super) fn names_of(field: TreeField) -> &'static [&'static str] {
    match field {
        TreeField::Tag => &[
            "tag",
            "treetag",
            "tagno",
            "tagnumber",
            "tagid",
            "treeno",
            "treenumber",
            "treenr",
            "treeid",
            "number",
            "no",
            "nr",
            "label",
            "baumnummer",
            "baumnr",
            "numero",
        ],
        TreeField::Key => &[
            "key", "uniqueid", "recordid", "rowid", "globalid", "uuid", "objectid", "gid", "fid",
            "id",
        ],
        TreeField::Species => &[
            "scientificname",
            "latinname",
            "botanicalname",
            "sciname",
            "scientific",
            "botanical",
            "latin",
            "taxon",
            "species",
            "speciesname",
            "speciesscientific",
            "art",
            "genus",
        ],
        TreeField::CommonName => &[
            "commonname",
            "common",
            "vernacularname",
            "vernacular",
            "speciescommon",
        ],
        TreeField::Lat => &["lat", "latitude", "latdeg", "latwgs84", "breite", "latitud"],
        TreeField::Lon => &[
            "lon",
            "long",
            "lng",
            "longitude",
            "londeg",
            "lonwgs84",
            "longdeg",
            "laenge",
            "longitud",
        ],
        TreeField::Accuracy => &[
            "accuracy",
            "positionaccuracy",
            "horizontalaccuracy",
            "gpsaccuracy",
            "hacc",
        ],
        TreeField::Height => &[
            "height",
            "treeheight",
            "treeht",
            "totalheight",
            "heighttotal",
            "ht",
            "hoehe",
            "höhe",
            "baumhöhe",
            "hauteur",
            "altura",
        ],
        TreeField::Girth => &[
            "girth",
            "circumference",
            "gbh",
            "cbh",
            "stemgirth",
            "trunkgirth",
            "trunkcircumference",
            "stemcircumference",
            "umfang",
            "stammumfang",
            "circonference",
        ],
        TreeField::Diameter => &[
            "dbh",
            "diameter",
            "diameteratbreastheight",
            "diameterbreastheight",
            "stemdiameter",
            "trunkdiameter",
            "bhd",
            "stammdurchmesser",
            "diametre",
            "diámetro",
        ],
        TreeField::CrownRadius => &["crownradius", "canopyradius", "kronenradius"],
        TreeField::CrownDiameter => &[
            "crowndiameter",
            "crownspread",
            "crownwidth",
            "canopydiameter",
            "canopyspread",
            "canopywidth",
            "avgcdia",
            "crowndia",
            "cdia",
            "spread",
            "kronendurchmesser",
        ],
        TreeField::Lean => &["lean", "leandeg", "leanangle", "leandegrees", "neigung"],
        TreeField::Note => &["note", "notes", "comment", "comments", "remark", "remarks"],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_header_gives_its_unit_away() {
        for (text, name, unit) in [
            ("DBH (cm)", "dbh", Some(LengthUnit::Centimetre)),
            ("Height [m]", "height", Some(LengthUnit::Metre)),
            ("HEIGHT_FT", "height", Some(LengthUnit::Foot)),
            ("dbh in", "dbh", Some(LengthUnit::Inch)),
            ("Tree Height", "treeheight", None),
            ("Crown spread (average)", "crownspread", None),
        ] {
            let read = Header::read(text);
            assert_eq!((read.name.as_str(), read.unit), (name, unit), "{text}");
        }
    }

    #[test]
    fn no_name_stands_for_two_fields() {
        let mut met = std::collections::BTreeSet::new();
        for field in TreeField::ALL {
            for name in names_of(field) {
                assert!(met.insert(name), "{name}");
                assert_eq!(*name, letters(name));
            }
        }
    }
}
