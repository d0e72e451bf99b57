//! Shapes on the ground that cannot be: rings that cross themselves, coordinates that look swapped.

use geo::{Coord, LineString, Polygon, Validation};

use crate::record::{Fault, GroundForm, LatLon, Site};

/// Faults in the outlines of a site.
pub(super) fn shape_faults(site: &Site) -> Vec<Fault> {
    let mut faults = Vec::new();
    if !site.outline.is_empty() {
        faults.extend(ring_fault(&site.outline, "/site/outline"));
    }
    for (index, target) in site.targets.iter().enumerate() {
        let place = format!("/site/targets/{index}/ground");
        match target.form {
            GroundForm::Area => faults.extend(ring_fault(&target.ground, &place)),
            GroundForm::Way if target.ground.len() < 2 => {
                faults.push(Fault::new("fault.too-few", place, target.ground.len(), "2"));
            }
            GroundForm::Way | GroundForm::Spot => {}
        }
    }
    faults.extend(swapped_fault(site));
    faults
}

pub(super) fn ring_fault(points: &[LatLon], place: &str) -> Option<Fault> {
    let distinct = match points.split_last() {
        Some((last, rest)) if rest.first() == Some(last) => rest,
        _ => points,
    };
    if distinct.len() < 3 {
        return Some(Fault::new("fault.too-few", place, distinct.len(), "3"));
    }
    let ring = LineString::new(unwrapped(distinct));
    let polygon = Polygon::new(ring, Vec::new());
    (!polygon.is_valid()).then(|| Fault::new("fault.ring-crosses-itself", place, "", ""))
}

/// Longitudes continued across 180°, so that a ring there does not seem to cross itself.
fn unwrapped(points: &[LatLon]) -> Vec<Coord> {
    let first = points.first().map_or(0.0, |point| point.lon_deg);
    points
        .iter()
        .map(|point| {
            let turns = ((point.lon_deg - first) / 360.0).round();
            Coord {
                x: point.lon_deg - 360.0 * turns,
                y: point.lat_deg,
            }
        })
        .collect()
}

/// A tree far from the property's outline, targets and lines, yet near them once latitude and
/// longitude are exchanged.
fn swapped_fault(site: &Site) -> Vec<Fault> {
    let target = || site.targets.iter().find_map(|target| target.ground.first());
    let line = || site.lines.iter().find_map(|line| line.way.first());
    let Some(home) = site.outline.first().or_else(target).or_else(line) else {
        return Vec::new();
    };
    let near = |lat: f64, lon: f64| (lat - home.lat_deg).abs() + (lon - home.lon_deg).abs() < 1.0;
    site.trees
        .iter()
        .enumerate()
        .filter_map(|(index, tree)| {
            let at = tree.position?;
            let swapped = !near(at.lat_deg, at.lon_deg) && near(at.lon_deg, at.lat_deg);
            swapped.then(|| {
                Fault::new(
                    "fault.coordinates-swapped",
                    format!("/site/trees/{index}/position"),
                    format!("{}, {}", at.lat_deg, at.lon_deg),
                    "",
                )
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(lat_deg: f64, lon_deg: f64) -> LatLon {
        LatLon { lat_deg, lon_deg }
    }

    #[test]
    fn a_bow_tie_is_a_fault_and_a_square_is_not() {
        let square = [at(0.0, 0.0), at(0.0, 1.0), at(1.0, 1.0), at(1.0, 0.0)];
        let bow_tie = [at(0.0, 0.0), at(1.0, 1.0), at(0.0, 1.0), at(1.0, 0.0)];
        assert_eq!(ring_fault(&square, "/x"), None);
        assert_eq!(
            ring_fault(&bow_tie, "/x").map(|f| f.code),
            Some("fault.ring-crosses-itself".to_owned())
        );
    }

    #[test]
    fn a_square_across_the_date_line_is_sound() {
        let square = [
            at(10.0, 179.9),
            at(10.0, -179.9),
            at(10.2, -179.9),
            at(10.2, 179.9),
        ];
        assert_eq!(ring_fault(&square, "/x"), None);
    }
}
