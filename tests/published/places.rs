//! Geodesy and the errors of fixes.

use bolewalk_core::measure::place::{
    ECCENTRICITY_SQUARED, EQUATORIAL_RADIUS_M, FLATTENING, LocalPlane, circumscribed_factor,
    haversine_m, line_between, metres_per_degree_lat, metres_per_degree_lon, point_from,
};
use bolewalk_core::measure::position::{
    Fix, R95_OVER_R68, R95_OVER_RMS, average, circular_radius, r95_of_r68,
};
use bolewalk_core::record::LatLon;

use super::table::{Checks, Table};

pub fn all(checks: &mut Checks) {
    ellipsoid(checks);
    lines(checks);
    circles(checks);
    fixes(checks);
}

fn at(lat_deg: f64, lon_deg: f64) -> LatLon {
    LatLon { lat_deg, lon_deg }
}

fn dms(degrees: f64, minutes: f64, seconds: f64) -> f64 {
    let size = degrees.abs() + minutes / 60.0 + seconds / 3600.0;
    if degrees < 0.0 { -size } else { size }
}

fn ellipsoid(checks: &mut Checks) {
    checks.from("World Geodetic System 1984, defining constants");
    let polar = EQUATORIAL_RADIUS_M * (1.0 - FLATTENING);
    checks.near("b", polar, 6_356_752.314_245, 1e-5);
    checks.near("e²", ECCENTRICITY_SQUARED, 0.006_694_379_990_1, 1e-13);
    let table = Table::read(include_str!("metres_per_degree.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let lat = line.number("lat_deg");
        checks.near(
            "latitude",
            metres_per_degree_lat(lat),
            line.number("per_lat_m"),
            0.001,
        );
        checks.near(
            "longitude",
            metres_per_degree_lon(lat),
            line.number("per_lon_m"),
            0.001,
        );
    }
}

fn lines(checks: &mut Checks) {
    checks.from("Geoscience Australia: Vincenty's example, Flinders Peak to Buninyong");
    let flinders = at(dms(-37.0, 57.0, 3.720_30), dms(144.0, 25.0, 29.524_40));
    let buninyong = at(dms(-37.0, 39.0, 10.156_10), dms(143.0, 55.0, 35.383_90));
    let line = line_between(flinders, buninyong);
    checks.near("distance", line.distance_m, 54_972.271_1, 0.000_2);
    checks.near("azimuth", line.azimuth_deg, dms(306.0, 52.0, 5.373), 2e-6);
    let reverse = line.azimuth_at_end_deg - 180.0;
    checks.near("reverse", reverse, dms(127.0, 10.0, 25.070), 2e-6);
    checks.from("Karney 2013, Algorithms for geodesics, and the GeographicLib manual");
    for (from, to, metres, azimuth) in [
        (
            at(40.6, -73.8),
            at(51.6, -0.5),
            5_551_759.400_3,
            Some(51.198_882_846),
        ),
        (
            at(-41.32, 174.81),
            at(40.96, -5.50),
            19_959_679.267_4,
            Some(161.067_669_986),
        ),
        (
            at(0.0, 0.0),
            at(0.5, 179.7),
            19_944_127.420_8,
            Some(15.556_882_793),
        ),
        (at(0.0, 0.0), at(0.0, 1.0), 111_319.490_8, None),
        (at(0.0, 0.0), at(1.0, 0.0), 110_574.388_6, None),
        (at(45.0, 0.0), at(46.0, 0.0), 111_141.548_5, None),
        (at(0.0, 0.0), at(90.0, 0.0), 10_001_965.729_3, None),
        (
            at(42.3314, -71.1211),
            at(42.3316, -71.1208),
            33.240_243,
            Some(48.060_452),
        ),
    ] {
        let line = line_between(from, to);
        checks.near("distance", line.distance_m, metres, 0.000_1);
        if let Some(azimuth) = azimuth {
            checks.near("azimuth", line.azimuth_deg, azimuth, 1e-6);
        }
    }
    for (from, to, onward) in [
        (at(40.6, -73.8), at(51.6, -0.5), 107.821_776_735),
        (at(-41.32, 174.81), at(40.96, -5.50), 18.825_195_123),
        (at(0.0, 0.0), at(0.5, 179.7), 164.442_513_891),
    ] {
        checks.near(
            "onward",
            line_between(from, to).azimuth_at_end_deg,
            onward,
            1e-6,
        );
    }
    let end = point_from(at(40.6, -73.8), 53.5, 5_850_000.0);
    checks.near("direct, latitude", end.lat_deg, 49.005_321_86, 1e-8);
    checks.near("direct, longitude", end.lon_deg, 2.495_751_67, 1e-8);
    let sphere = haversine_m(at(42.3314, -71.1211), at(42.3316, -71.1208));
    checks.near("haversine", sphere, 33.207_254, 1e-6);
    let plane = LocalPlane::around(at(42.3314, -71.1211));
    let there = plane.metres(at(42.3316, -71.1208));
    let here = plane.metres(plane.origin());
    checks.near("local plane", here.distance_m(there), 33.240_243, 0.001);
}

fn circles(checks: &mut Checks) {
    let centre = at(42.3314, -71.1211);
    let table = Table::read(include_str!("circle_points.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let point = point_from(centre, line.number("azimuth_deg"), 42.567);
        checks.near("latitude", point.lat_deg, line.number("lat_deg"), 0.6e-8);
        checks.near("longitude", point.lon_deg, line.number("lon_deg"), 0.6e-8);
    }
    let point = point_from(centre, 37.5, 36.0);
    checks.near(
        "36 m at 37.5°, latitude",
        point.lat_deg,
        42.331_657_12,
        0.6e-8,
    );
    checks.near(
        "36 m at 37.5°, longitude",
        point.lon_deg,
        -71.120_834_10,
        0.6e-8,
    );
    let plane = LocalPlane::around(centre);
    let ring: Vec<_> = (0..64)
        .map(|k| plane.metres(point_from(centre, 360.0 * f64::from(k) / 64.0, 42.567)))
        .collect();
    let next = |k: usize| ring[(k + 1) % ring.len()];
    let perimeter: f64 = (0..64).map(|k| ring[k].distance_m(next(k))).sum();
    checks.near("perimeter of 64 corners", perimeter, 267.349, 0.0015);
    let twice: f64 = (0..64)
        .map(|k| ring[k].east_m * next(k).north_m - next(k).east_m * ring[k].north_m)
        .sum();
    checks.near("area of 64 corners", twice.abs() / 2.0, 5683.267, 0.05);
    let inscribed = 5683.267 * circumscribed_factor(64) * circumscribed_factor(64);
    checks.same("circumscribed holds the circle", inscribed > 5692.407, true);
}

fn fixes(checks: &mut Checks) {
    checks.from("Circular Gaussian error: r = s √(−2 ln(1 − p))");
    for (p, radius) in [(0.5, 1.1774), (0.68, 1.5096), (0.95, 2.4477)] {
        checks.near("radius", circular_radius(p), radius, 0.00005);
    }
    checks.near("95 over 68", R95_OVER_R68, 1.6215, 0.00005);
    checks.near("95 over RMS", R95_OVER_RMS, 1.7308, 0.00005);
    checks.near("5 m", r95_of_r68(5.0), 8.107, 0.0005);
    checks.near("5 m RMS", R95_OVER_RMS * 5.0, 8.654, 0.0005);
    checks.near("zone grown", 40.617 + r95_of_r68(5.0), 48.724, 0.0006);
    checks.from("Weighted mean with weights 1/accuracy²");
    let plane = LocalPlane::around(at(42.3314, -71.1211));
    let fix = |east_m, north_m, accuracy_m| Fix {
        point: plane.degrees(bolewalk_core::measure::place::EastNorth { east_m, north_m }),
        accuracy_m,
        at_ms: 0,
        session: 1,
    };
    let three = [fix(0.0, 0.0, 4.0), fix(3.0, 0.0, 6.0), fix(0.0, 4.0, 12.0)];
    let mean = average(&three, 0, 3.0).unwrap();
    let place = plane.metres(mean.point);
    checks.near("east", place.east_m, 0.857, 0.0005);
    checks.near("north", place.north_m, 0.286, 0.0005);
    checks.near("formal", mean.formal_accuracy_m, 3.207, 0.0005);
    checks.same("reported", mean.accuracy_m, 4.0);
}

#[test]
fn places_are_as_published() {
    all(&mut Checks::new());
}
