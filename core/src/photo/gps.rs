//! Position, altitude and direction of the camera (Exif 2.32 §4.6.6, GPS attributes).

use exif::{Exif, Tag};

use super::facts::{PhotoFacts, PhotoGap, PhotoGapKind};
use super::tags::{self, Rationals};
use crate::record::{ACCURACY_M, LAT_DEG, LON_DEG, Position, PositionMethod};

/// Where the camera looked, with the north it is counted from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CameraDirection {
    /// Bearing in degrees, 0 to under 360, clockwise.
    pub bearing_deg: f64,
    /// From which north.
    pub north: North,
}

impl CameraDirection {
    /// The bearing from true north; `declination_deg` (east positive) is needed for a magnetic
    /// one and nothing is guessed without it.
    pub fn true_bearing_deg(&self, declination_deg: Option<f64>) -> Option<f64> {
        match self.north {
            North::True => Some(self.bearing_deg),
            North::Magnetic => {
                let declination = declination_deg?;
                Some((self.bearing_deg + declination).rem_euclid(360.0))
            }
        }
    }
}

/// The north a bearing is counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum North {
    /// Geographic north.
    True,
    /// Where the needle points.
    Magnetic,
}

/// Fills position, altitude and direction, or their gaps.
pub(super) fn read_into(record: &Exif, facts: &mut PhotoFacts) {
    match position(record) {
        Ok(found) => facts.position = Some(found),
        Err(gap) => facts.gaps.push(gap),
    }
    facts.altitude_m = altitude_m(record);
    match direction(record) {
        Ok(found) => facts.direction = found,
        Err(gap) => facts.gaps.push(gap),
    }
}

fn position(record: &Exif) -> Result<Position, PhotoGap> {
    let lat = axis_deg(record, Tag::GPSLatitude)?;
    let lon = axis_deg(record, Tag::GPSLongitude)?;
    if tags::text(record, Tag::GPSStatus).is_some_and(|status| status.starts_with('V')) {
        return Err(PhotoGap::new(PhotoGapKind::PositionVoid, "V"));
    }
    if lat == 0.0 && lon == 0.0 {
        return Err(PhotoGap::new(PhotoGapKind::PositionVoid, "0 0"));
    }
    let lat_sign = hemisphere(record, Tag::GPSLatitudeRef, 'N', 'S')?;
    let lon_sign = hemisphere(record, Tag::GPSLongitudeRef, 'E', 'W')?;
    let (lat_deg, lon_deg) = (lat * lat_sign, lon * lon_sign);
    if !LAT_DEG.allows(lat_deg) || !LON_DEG.allows(lon_deg) {
        return Err(PhotoGap::new(
            PhotoGapKind::PositionBroken,
            format!("{lat_deg} {lon_deg}"),
        ));
    }
    Ok(Position {
        lat_deg,
        lon_deg,
        accuracy_m: tags::rational(record, Tag::GPSHPositioningError)
            .filter(|&radius| ACCURACY_M.allows(radius)),
        method: Some(PositionMethod::PhotoRecord),
    })
}

/// Degrees, minutes and seconds as degrees. Seconds of 60, which careless rounding writes, carry
/// over; anything beyond is broken.
fn axis_deg(record: &Exif, tag: Tag) -> Result<f64, PhotoGap> {
    let values = match tags::rationals(record, tag) {
        Rationals::Absent => return Err(PhotoGap::new(PhotoGapKind::NoPosition, "")),
        Rationals::Broken(found) => {
            return Err(PhotoGap::new(PhotoGapKind::PositionBroken, found));
        }
        Rationals::Read(values) => values,
    };
    match values.as_slice() {
        [degrees, minutes, seconds]
            if *degrees <= 180.0 && *minutes <= 60.0 && *seconds <= 60.0 =>
        {
            Ok(degrees + (minutes + seconds / 60.0) / 60.0)
        }
        other => Err(PhotoGap::new(
            PhotoGapKind::PositionBroken,
            format!("{other:?}"),
        )),
    }
}

/// +1 or −1; without the letter a position could lie on either half of the globe.
fn hemisphere(record: &Exif, tag: Tag, plus: char, minus: char) -> Result<f64, PhotoGap> {
    let letter = tags::text(record, tag).unwrap_or_default();
    match letter.chars().next().map(|c| c.to_ascii_uppercase()) {
        Some(c) if c == plus => Ok(1.0),
        Some(c) if c == minus => Ok(-1.0),
        _ => Err(PhotoGap::new(
            PhotoGapKind::PositionWithoutHemisphere,
            letter,
        )),
    }
}

fn altitude_m(record: &Exif) -> Option<f64> {
    let height_m = tags::rational(record, Tag::GPSAltitude)?;
    // Without its reference the standard's default counts: above sea level.
    match tags::whole(record, Tag::GPSAltitudeRef).unwrap_or(0) {
        0 | 2 => Some(height_m),
        1 | 3 => Some(-height_m),
        _ => None,
    }
}

fn direction(record: &Exif) -> Result<Option<CameraDirection>, PhotoGap> {
    let bearing_deg = match tags::rationals(record, Tag::GPSImgDirection) {
        Rationals::Absent => return Ok(None),
        Rationals::Broken(found) => {
            return Err(PhotoGap::new(PhotoGapKind::DirectionBroken, found));
        }
        Rationals::Read(values) => values.first().copied().unwrap_or(f64::NAN),
    };
    if !(0.0..=360.0).contains(&bearing_deg) {
        return Err(PhotoGap::new(
            PhotoGapKind::DirectionBroken,
            bearing_deg.to_string(),
        ));
    }
    let north = match tags::text(record, Tag::GPSImgDirectionRef).as_deref() {
        Some("T") => North::True,
        Some("M") => North::Magnetic,
        other => {
            return Err(PhotoGap::new(
                PhotoGapKind::DirectionWithoutNorth,
                other.unwrap_or_default(),
            ));
        }
    };
    Ok(Some(CameraDirection {
        bearing_deg: bearing_deg % 360.0,
        north,
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::testing::{facts_of, letters, ratios};

    fn place(lat: &[(u32, u32)], north: &str, lon: &[(u32, u32)], east: &str) -> PhotoFacts {
        facts_of(vec![
            letters(Tag::GPSLatitudeRef, north),
            ratios(Tag::GPSLatitude, lat),
            letters(Tag::GPSLongitudeRef, east),
            ratios(Tag::GPSLongitude, lon),
        ])
    }

    const LAT: [(u32, u32); 3] = [(42, 1), (19, 1), (5304, 100)];
    const LON: [(u32, u32); 3] = [(71, 1), (7, 1), (1596, 100)];

    fn gap_of(facts: &PhotoFacts) -> PhotoGapKind {
        assert_eq!(facts.position, None);
        facts.gaps[0].kind
    }

    // Reference sheet §9.3: 42/1 19/1 5304/100 N is 42.3314; 71/1 7/1 1596/100 W is −71.1211.
    #[test]
    fn the_worked_example_reads_back() {
        let found = place(&LAT, "N", &LON, "W").position.unwrap();
        assert!((found.lat_deg - 42.3314).abs() < 1e-12);
        assert!((found.lon_deg + 71.1211).abs() < 1e-12);
        assert_eq!(found.accuracy_m, None);
        assert_eq!(found.method, Some(PositionMethod::PhotoRecord));
        let south = place(&LAT, "S", &LON, "E").position.unwrap();
        assert!(south.lat_deg < 0.0 && south.lon_deg > 0.0);
    }

    #[test]
    fn wrong_positions_are_gaps() {
        use PhotoGapKind as Kind;
        let zero = [(0, 1); 3];
        type Case = (&'static [(u32, u32)], &'static str, Kind);
        let cases: [Case; 8] = [
            (&[(42, 0), (19, 1), (5, 1)], "N", Kind::PositionBroken),
            (&[(0, 0), (0, 0), (0, 0)], "N", Kind::PositionBroken),
            (&[(42, 1), (61, 1), (5, 1)], "N", Kind::PositionBroken),
            (&[(42, 1), (19, 1), (601, 10)], "N", Kind::PositionBroken),
            (&[(95, 1), (0, 1), (0, 1)], "N", Kind::PositionBroken),
            (&[(42, 1)], "N", Kind::PositionBroken),
            (&LAT, "", Kind::PositionWithoutHemisphere),
            (&LAT, "X", Kind::PositionWithoutHemisphere),
        ];
        for (lat, north, kind) in cases {
            assert_eq!(
                gap_of(&place(lat, north, &LON, "W")),
                kind,
                "{lat:?} {north}"
            );
        }
        assert_eq!(gap_of(&place(&zero, "N", &zero, "E")), Kind::PositionVoid);
        assert_eq!(
            gap_of(&facts_of(vec![letters(Tag::Model, "x")])),
            Kind::NoPosition
        );
    }

    #[test]
    fn sixty_seconds_carry_over() {
        let lat = [(42, 1), (19, 1), (60, 1)];
        let found = place(&lat, "N", &LON, "W").position.unwrap();
        assert!((found.lat_deg - (42.0 + 20.0 / 60.0)).abs() < 1e-12);
    }

    #[test]
    fn a_fix_the_camera_calls_void_is_none() {
        let facts = facts_of(vec![
            letters(Tag::GPSStatus, "V"),
            letters(Tag::GPSLatitudeRef, "N"),
            ratios(Tag::GPSLatitude, &LAT),
            letters(Tag::GPSLongitudeRef, "W"),
            ratios(Tag::GPSLongitude, &LON),
        ]);
        assert_eq!(gap_of(&facts), PhotoGapKind::PositionVoid);
    }

    #[test]
    fn directions_need_their_north() {
        let turned = |north: Option<&str>, pair: (u32, u32)| {
            let mut fields = vec![ratios(Tag::GPSImgDirection, &[pair])];
            fields.extend(north.map(|letter| letters(Tag::GPSImgDirectionRef, letter)));
            facts_of(fields)
        };
        let magnetic = turned(Some("M"), (2215, 10)).direction.unwrap();
        assert_eq!(magnetic.north, North::Magnetic);
        assert_eq!(magnetic.true_bearing_deg(None), None);
        assert_eq!(magnetic.true_bearing_deg(Some(-14.5)), Some(207.0));
        assert_eq!(
            turned(Some("T"), (360, 1)).direction.unwrap().bearing_deg,
            0.0
        );
        for (north, pair, kind) in [
            (None, (90, 1), PhotoGapKind::DirectionWithoutNorth),
            (Some("Q"), (90, 1), PhotoGapKind::DirectionWithoutNorth),
            (Some("T"), (90, 0), PhotoGapKind::DirectionBroken),
            (Some("T"), (0, 0), PhotoGapKind::DirectionBroken),
            (Some("T"), (361, 1), PhotoGapKind::DirectionBroken),
        ] {
            let facts = turned(north, pair);
            assert_eq!(facts.direction, None);
            assert!(facts.gaps.iter().any(|gap| gap.kind == kind), "{pair:?}");
        }
    }
}
