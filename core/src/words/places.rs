//! Positions that people type: `42.3314, -71.1211`, `42,3314; -71,1211`, `42° 19′ 53″ N 71° 7′ 16″ W`.

use crate::record::{LAT_DEG, LON_DEG, LatLon};

/// Latitude and longitude from a text, decimal or in degrees, minutes and seconds; nothing where it
/// is no position on Earth.
pub fn read_place(typed: &str) -> Option<LatLon> {
    // A comma parts two numbers where points do the decimals, else it is a decimal comma.
    let decimal_comma =
        typed.contains(',') && !typed.contains('.') && typed.matches(',').count() > 1;
    let mut numbers: Vec<f64> = Vec::new();
    let mut halves: Vec<(usize, char)> = Vec::new();
    let mut figure = String::new();
    for letter in typed.chars().chain([' ']) {
        let is_figure = letter.is_ascii_digit()
            || letter == '.'
            || (letter == ',' && decimal_comma && !figure.is_empty())
            || ("-−+".contains(letter) && figure.is_empty());
        if is_figure {
            figure.push(match letter {
                ',' => '.',
                '−' => '-',
                other => other,
            });
            continue;
        }
        if !figure.is_empty() {
            numbers.push(figure.trim_end_matches('.').parse().ok()?);
            figure.clear();
        }
        match letter.to_ascii_uppercase() {
            half @ ('N' | 'S' | 'E' | 'W') => halves.push((numbers.len(), half)),
            ' ' | ',' | ';' | '°' | '\'' | '"' | '′' | '″' | '’' | '”' => {}
            _ => return None,
        }
    }
    let each = numbers.len() / 2;
    if !matches!(numbers.len(), 2 | 4 | 6) {
        return None;
    }
    let (lat, lon) = numbers.split_at(each);
    let (mut lat_deg, mut lon_deg) = (in_degrees(lat)?, in_degrees(lon)?);
    for (_, half) in halves {
        match half {
            'S' => lat_deg = -lat_deg.abs(),
            'W' => lon_deg = -lon_deg.abs(),
            _ => {}
        }
    }
    let place = LatLon { lat_deg, lon_deg };
    (LAT_DEG.allows(lat_deg) && LON_DEG.allows(lon_deg)).then_some(place)
}

/// Degrees, minutes and seconds as degrees; minutes and seconds below 60.
fn in_degrees(parts: &[f64]) -> Option<f64> {
    let whole = parts.first().copied()?;
    let mut size = whole.abs();
    let mut share = 60.0;
    for part in parts.iter().skip(1) {
        if !(0.0..60.0).contains(part) {
            return None;
        }
        size += part / share;
        share *= 60.0;
    }
    Some(if whole.is_sign_negative() {
        -size
    } else {
        size
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(typed: &str) -> Option<(f64, f64)> {
        let round = |degrees: f64| (degrees * 1e6).round() / 1e6;
        read_place(typed).map(|at| (round(at.lat_deg), round(at.lon_deg)))
    }

    #[test]
    fn decimals_and_degrees_minutes_seconds_are_read() {
        // ISO 6709 (2008), annex D: how people write latitude before longitude.
        let boston = Some((42.3314, -71.1211));
        assert_eq!(read("42.3314, -71.1211"), boston);
        assert_eq!(read("42.3314 -71.1211"), boston);
        assert_eq!(read("42,3314; -71,1211"), boston);
        assert_eq!(read("42.3314 N, 71.1211 W"), boston);
        assert_eq!(read("42° 19′ 53.04″ N 71° 7′ 15.96″ W"), boston);
        assert_eq!(read("33 52 S 151 12 E"), Some((-33.866_667, 151.2)));
    }

    #[test]
    fn what_is_no_position_is_none() {
        for typed in [
            "",
            "42.33",
            "somewhere",
            "95, 10",
            "42 61 0 N 71 0 0 W",
            "1 2 3",
        ] {
            assert_eq!(read(typed), None, "{typed}");
        }
    }
}
