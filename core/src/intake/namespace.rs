//! Which property a site file is about: the namespace that its short keys are exchanged in.
//!
//! A file whose site has a UUID is about that property everywhere. Any other is known by its own
//! id, its name and where it lies, to about two kilometres (house): the same file gives the same
//! property on every phone, so that two phones that brought it in merge; another property of the
//! same id and name, as a copied template leaves them, gives another. A property that the field
//! book already holds from the same source takes the file, also where its first position moved by
//! a little or was not known at first.
//!
//! What remains open: two files of one id and one name of which neither has a position, or that lie
//! within two kilometres, are taken for one property; and a file of which a position was added
//! before a second phone brought it in makes a second property there.

use uuid::Uuid;

use crate::record::{Id, LatLon, Site};

/// The side of the squares that tell one place from another, in degrees: about two kilometres.
const SQUARE_DEG: f64 = 0.02;

/// A property that the field book holds.
#[derive(Debug, Clone, PartialEq)]
pub struct HeldSite {
    /// Its id in the book.
    pub id: Id,
    /// Where it lies: the first point of its outline, else the first tree with a position.
    pub place: Option<LatLon>,
}

/// The namespace of whatever belongs to the crew and not to one property.
pub(super) fn of_the_book() -> Uuid {
    Uuid::new_v5(&Uuid::NAMESPACE_OID, b"bolewalk field book")
}

/// The id of the property that a file's site is.
pub(super) fn of_site(site: &Site, held: &[HeldSite]) -> Uuid {
    if let Ok(id) = Uuid::parse_str(site.id.as_str()) {
        return id;
    }
    let source = format!("{}/{}", site.id, site.name);
    let square = place_of(site).map(Square::of);
    let own = named(&source, square);
    let is_held = |id: &Uuid| held.iter().any(|held| held.id.0 == id.to_string());
    if is_held(&own) {
        return own;
    }
    held.iter()
        .find_map(|held| from_source(&source, square, held))
        .unwrap_or(own)
}

/// The held property's id, if it came from the source and does not lie elsewhere.
fn from_source(source: &str, square: Option<Square>, held: &HeldSite) -> Option<Uuid> {
    let there = held.place.map(Square::of);
    if let (Some(here), Some(there)) = (square, there)
        && !here.touches(there)
    {
        return None;
    }
    let squares = square.into_iter().chain(there).flat_map(Square::around);
    let id = Uuid::parse_str(held.id.as_str()).ok()?;
    let mut names = squares.map(Some).chain([None]);
    names.any(|at| named(source, at) == id).then_some(id)
}

fn named(source: &str, square: Option<Square>) -> Uuid {
    let name = match square {
        Some(Square { row, column }) => format!("{source}/{row},{column}"),
        None => source.to_owned(),
    };
    Uuid::new_v5(&of_the_book(), name.as_bytes())
}

fn place_of(site: &Site) -> Option<LatLon> {
    let of_a_tree = || {
        let position = site.trees.iter().find_map(|tree| tree.position)?;
        Some(LatLon {
            lat_deg: position.lat_deg,
            lon_deg: position.lon_deg,
        })
    };
    site.outline.first().copied().or_else(of_a_tree)
}

/// A square of the map.
#[derive(Clone, Copy)]
struct Square {
    row: i64,
    column: i64,
}

impl Square {
    fn of(at: LatLon) -> Square {
        Square {
            row: (at.lat_deg / SQUARE_DEG).floor() as i64,
            column: (at.lon_deg / SQUARE_DEG).floor() as i64,
        }
    }

    fn touches(self, other: Square) -> bool {
        self.row.abs_diff(other.row) <= 1 && self.column.abs_diff(other.column) <= 1
    }

    fn around(self) -> impl Iterator<Item = Square> {
        (-1..=1).flat_map(move |up| {
            (-1..=1).map(move |along| Square {
                row: self.row + up,
                column: self.column + along,
            })
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn site(id: &str, name: &str, lat_deg: Option<f64>) -> Site {
        let outline: Vec<LatLon> = lat_deg.into_iter().map(at).collect();
        let json = serde_json::json!({"id": id, "name": name, "outline": outline});
        serde_json::from_value(json).unwrap()
    }

    fn at(lat_deg: f64) -> LatLon {
        LatLon {
            lat_deg,
            lon_deg: -71.005,
        }
    }

    fn held(id: Uuid, lat_deg: Option<f64>) -> [HeldSite; 1] {
        let id = Id(id.to_string());
        let place = lat_deg.map(at);
        [HeldSite { id, place }]
    }

    #[test]
    fn a_uuid_is_the_property_everywhere() {
        let id = "81dc1671-800f-58d9-980f-ea78004ca935";
        let is = |name, lat_deg| of_site(&site(id, name, lat_deg), &[]).to_string();
        assert_eq!(is("Hill", Some(42.0)), id);
        assert_eq!(is("Valley", None), id);
    }

    #[test]
    fn id_name_and_place_tell_properties_apart_alike_on_every_phone() {
        let of = |id, name, lat_deg| of_site(&site(id, name, lat_deg), &[]);
        let hill = of("s1", "Hill", Some(42.01));
        assert_eq!(of("s1", "Hill", Some(42.01)), hill);
        for other in [
            of("s2", "Hill", Some(42.01)),
            of("s1", "Valley", Some(42.01)),
            of("s1", "Hill", Some(42.11)),
            of("s1", "Hill", None),
        ] {
            assert_ne!(other, hill);
        }
    }

    #[test]
    fn a_held_property_takes_the_file_that_it_came_from() {
        let of = |lat_deg, held: &[HeldSite]| of_site(&site("s1", "Hill", lat_deg), held);
        // Over the edge of a square by a few metres.
        let before = of(Some(42.019_99), &[]);
        assert_ne!(of(Some(42.020_01), &[]), before);
        let known = held(before, Some(42.019_99));
        assert_eq!(of(Some(42.020_01), &known), before);
        // Brought in without a position first, and the other way round.
        let without = of(None, &[]);
        assert_eq!(of(Some(42.01), &held(without, None)), without);
        assert_eq!(of(None, &known), before);
    }

    #[test]
    fn a_held_property_elsewhere_does_not_take_the_file() {
        let of = |lat_deg, held: &[HeldSite]| of_site(&site("s1", "Hill", lat_deg), held);
        let without = of(None, &[]);
        let elsewhere = held(without, Some(43.0));
        assert_eq!(of(Some(42.01), &elsewhere), of(Some(42.01), &[]));
        // Nor does one that came from another file, however near.
        let other = held(Uuid::from_u128(7), Some(42.01));
        assert_eq!(of(Some(42.01), &other), of(Some(42.01), &[]));
    }
}
