//! From degrees to metres and back: geodesics on WGS 84, a local plane, outlines.
//!
//! Geodesics are Karney's (2013, Algorithms for geodesics, Journal of Geodesy 87:43–55), by a
//! library whose last bits may differ between machines: outlines are rounded to 10⁻⁸ degrees
//! (about a millimetre). The local plane uses only portable arithmetic.

use core::f64::consts::PI;

use geo::{Bearing, Destination, Distance, Geodesic, Point};

use crate::record::LatLon;

/// Equatorial radius of WGS 84 in metres.
pub const EQUATORIAL_RADIUS_M: f64 = 6_378_137.0;
/// Flattening of WGS 84.
pub const FLATTENING: f64 = 1.0 / 298.257_223_563;
/// Square of the first eccentricity of WGS 84, f (2 − f).
pub const ECCENTRICITY_SQUARED: f64 = FLATTENING * (2.0 - FLATTENING);
/// Mean radius R1 of WGS 84 in metres.
pub const MEAN_RADIUS_M: f64 = 6_371_008.8;

/// Metres in one degree of latitude at a latitude.
pub fn metres_per_degree_lat(lat_deg: f64) -> f64 {
    let root = curvature_root(lat_deg);
    let meridian = EQUATORIAL_RADIUS_M * (1.0 - ECCENTRICITY_SQUARED) / (root * root * root);
    meridian * PI / 180.0
}

/// Metres in one degree of longitude at a latitude.
pub fn metres_per_degree_lon(lat_deg: f64) -> f64 {
    let normal = EQUATORIAL_RADIUS_M / curvature_root(lat_deg);
    normal * libm::cos(radians(lat_deg)) * PI / 180.0
}

fn curvature_root(lat_deg: f64) -> f64 {
    let sine = libm::sin(radians(lat_deg));
    libm::sqrt(1.0 - ECCENTRICITY_SQUARED * sine * sine)
}

/// A geodesic line between two points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GeodesicLine {
    /// Length in metres.
    pub distance_m: f64,
    /// Azimuth at the first point, 0 to under 360 degrees.
    pub azimuth_deg: f64,
    /// Azimuth onward at the second point, 0 to under 360 degrees.
    pub azimuth_at_end_deg: f64,
}

/// The shortest line from one point to another on WGS 84.
pub fn line_between(from: LatLon, to: LatLon) -> GeodesicLine {
    let (start, end) = (point(from), point(to));
    GeodesicLine {
        distance_m: Geodesic.distance(start, end),
        azimuth_deg: round_turn(Geodesic.bearing(start, end)),
        azimuth_at_end_deg: round_turn(Geodesic.bearing(end, start) + 180.0),
    }
}

/// The point at a distance in metres and an azimuth in degrees from another, on WGS 84.
pub fn point_from(from: LatLon, azimuth_deg: f64, distance_m: f64) -> LatLon {
    let end = Geodesic.destination(point(from), azimuth_deg, distance_m);
    LatLon {
        lat_deg: end.y(),
        lon_deg: wrapped_lon(end.x()),
    }
}

/// Great-circle distance in metres on a sphere of the mean radius (haversine); 0.1 to 0.5 % off.
pub fn haversine_m(from: LatLon, to: LatLon) -> f64 {
    let half = |degrees: f64| libm::sin(radians(degrees) / 2.0);
    let (dlat, dlon) = (
        half(to.lat_deg - from.lat_deg),
        half(unwrapped_lon(to.lon_deg, from.lon_deg) - from.lon_deg),
    );
    let across = libm::cos(radians(from.lat_deg)) * libm::cos(radians(to.lat_deg));
    let square = dlat * dlat + across * dlon * dlon;
    2.0 * MEAN_RADIUS_M * libm::asin(libm::sqrt(square.min(1.0)))
}

/// Metres east and north of a plane's origin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EastNorth {
    /// Metres east.
    pub east_m: f64,
    /// Metres north.
    pub north_m: f64,
}

impl EastNorth {
    /// Distance to another place of the same plane in metres.
    pub fn distance_m(self, other: EastNorth) -> f64 {
        libm::hypot(other.east_m - self.east_m, other.north_m - self.north_m)
    }

    /// Bearing to another place of the same plane, 0 to under 360 degrees.
    pub fn bearing_deg(self, other: EastNorth) -> f64 {
        let angle = libm::atan2(other.east_m - self.east_m, other.north_m - self.north_m);
        round_turn(angle * 180.0 / PI)
    }

    /// The place at a distance in metres and a bearing in degrees from this one.
    pub fn moved(self, bearing_deg: f64, distance_m: f64) -> EastNorth {
        EastNorth {
            east_m: self.east_m + distance_m * libm::sin(radians(bearing_deg)),
            north_m: self.north_m + distance_m * libm::cos(radians(bearing_deg)),
        }
    }
}

/// A plane that touches the ellipsoid near a site: lengths from its origin are good to a millimetre
/// over 100 m, to two centimetres over a kilometre up to 60° of latitude. Longitudes may run across 180°.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LocalPlane {
    origin: LatLon,
}

impl LocalPlane {
    /// The plane around a point.
    pub fn around(origin: LatLon) -> Self {
        LocalPlane { origin }
    }

    /// The point that is (0, 0).
    pub fn origin(&self) -> LatLon {
        self.origin
    }

    /// Metres east and north of the origin.
    pub fn metres(&self, point: LatLon) -> EastNorth {
        let middle = (self.origin.lat_deg + point.lat_deg) / 2.0;
        let dlat = point.lat_deg - self.origin.lat_deg;
        let dlon = unwrapped_lon(point.lon_deg, self.origin.lon_deg) - self.origin.lon_deg;
        EastNorth {
            east_m: dlon * metres_per_degree_lon(middle),
            north_m: dlat * metres_per_degree_lat(middle),
        }
    }

    /// The point at a place of the plane, with its longitude from −180 to 180.
    pub fn degrees(&self, place: EastNorth) -> LatLon {
        let unwrapped = self.degrees_unwrapped(place);
        LatLon {
            lat_deg: unwrapped.lat_deg,
            lon_deg: wrapped_lon(unwrapped.lon_deg),
        }
    }

    /// The same with a longitude near the origin's, which may lie beyond ±180; for outlines that
    /// are cut at 180° only when they are written.
    pub fn degrees_unwrapped(&self, place: EastNorth) -> LatLon {
        let mut lat_deg = self.origin.lat_deg;
        for _ in 0..4 {
            let middle = (self.origin.lat_deg + lat_deg) / 2.0;
            lat_deg = self.origin.lat_deg + place.north_m / metres_per_degree_lat(middle);
        }
        let middle = (self.origin.lat_deg + lat_deg) / 2.0;
        LatLon {
            lat_deg,
            lon_deg: self.origin.lon_deg + place.east_m / metres_per_degree_lon(middle),
        }
    }
}

/// A longitude moved by whole turns until it lies within 180° of `near_deg`.
pub fn unwrapped_lon(lon_deg: f64, near_deg: f64) -> f64 {
    lon_deg - 360.0 * libm::round((lon_deg - near_deg) / 360.0)
}

/// A longitude brought to −180 up to and including 180.
pub fn wrapped_lon(lon_deg: f64) -> f64 {
    let wrapped = unwrapped_lon(lon_deg, 0.0);
    if wrapped <= -180.0 {
        wrapped + 360.0
    } else {
        wrapped
    }
}

/// A point rounded to 10⁻⁸ degrees, as outlines are kept.
pub fn rounded(point: LatLon) -> LatLon {
    let round = |degrees: f64| libm::round(degrees * 1e8) / 1e8;
    LatLon {
        lat_deg: round(point.lat_deg),
        lon_deg: round(point.lon_deg),
    }
}

/// Factor on a radius so that a ring of `corners` straight sides stands outside the circle:
/// 1/cos(π/n).
pub fn circumscribed_factor(corners: u32) -> f64 {
    1.0 / libm::cos(PI / f64::from(corners.max(3)))
}

/// The outline around a circle, standing outside it: `corners` points by geodesics from north,
/// clockwise, rounded, not closed.
pub fn circle_outline(centre: LatLon, radius_m: f64, corners: u32) -> Vec<LatLon> {
    let corners = corners.max(3);
    let reach = radius_m * circumscribed_factor(corners);
    (0..corners)
        .map(|k| {
            let azimuth = 360.0 * f64::from(k) / f64::from(corners);
            rounded(point_from(centre, azimuth, reach))
        })
        .collect()
}

fn point(place: LatLon) -> Point<f64> {
    Point::new(place.lon_deg, place.lat_deg)
}

fn radians(degrees: f64) -> f64 {
    degrees * PI / 180.0
}

fn round_turn(degrees: f64) -> f64 {
    let turned = degrees - 360.0 * libm::floor(degrees / 360.0);
    if turned >= 360.0 { 0.0 } else { turned }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(lat_deg: f64, lon_deg: f64) -> LatLon {
        LatLon { lat_deg, lon_deg }
    }

    #[test]
    fn the_plane_agrees_with_geodesics_and_leads_back() {
        // Karney's geodesics as the outside reference.
        for origin in [at(42.3314, -71.1211), at(-33.9, 151.2), at(60.0, 179.999)] {
            let plane = LocalPlane::around(origin);
            for (azimuth, distance, within) in [(37.5, 100.0, 0.001), (250.0, 1000.0, 0.02)] {
                let there = point_from(origin, azimuth, distance);
                let place = plane.metres(there);
                let expected = EastNorth {
                    east_m: 0.0,
                    north_m: 0.0,
                }
                .moved(azimuth, distance);
                // Direction differs by the convergence of meridians, length by nothing.
                let length = libm::hypot(place.east_m, place.north_m);
                assert!((length - distance).abs() < within, "{length}");
                assert!(place.distance_m(expected) < distance * distance * 3e-7 + 0.001);
                let back = plane.degrees(place);
                assert!(line_between(there, back).distance_m < 1e-6);
            }
        }
    }

    #[test]
    fn longitudes_run_across_the_date_line() {
        let plane = LocalPlane::around(at(10.0, 179.9999));
        let east = plane.metres(at(10.0, -179.9999));
        assert!((east.east_m - 0.0002 * metres_per_degree_lon(10.0)).abs() < 1e-6);
        assert!((plane.degrees(east).lon_deg - -179.9999).abs() < 1e-9);
        assert!((plane.degrees_unwrapped(east).lon_deg - 180.0001).abs() < 1e-9);
        assert_eq!(wrapped_lon(180.0), 180.0);
        assert_eq!(wrapped_lon(-180.0), 180.0);
        assert_eq!(wrapped_lon(540.5), -179.5);
    }

    #[test]
    fn the_outline_never_cuts_into_the_circle() {
        // Geometry: the middle of each side touches the circle.
        let centre = at(42.3314, -71.1211);
        let outline = circle_outline(centre, 42.567, 64);
        let plane = LocalPlane::around(centre);
        for pair in outline.windows(2) {
            let (one, other) = (plane.metres(pair[0]), plane.metres(pair[1]));
            let middle = libm::hypot(
                (one.east_m + other.east_m) / 2.0,
                (one.north_m + other.north_m) / 2.0,
            );
            assert!((middle - 42.567).abs() < 0.002, "{middle}");
        }
    }
}
