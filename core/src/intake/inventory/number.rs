//! Numbers as people write them: decimal comma or point, groups of thousands, a unit behind.

use super::field::LengthUnit;

/// The sign between a number's whole part and its fraction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum DecimalMark {
    Point,
    Comma,
}

impl DecimalMark {
    fn sign(self) -> char {
        match self {
            DecimalMark::Point => '.',
            DecimalMark::Comma => ',',
        }
    }

    fn grouping(self) -> char {
        match self {
            DecimalMark::Point => ',',
            DecimalMark::Comma => '.',
        }
    }
}

/// A number with the unit written behind it, where there is one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Written {
    pub value: f64,
    pub unit: Option<LengthUnit>,
}

/// Whether a cell says that nothing was recorded.
pub(super) fn says_nothing(text: &str) -> bool {
    let text = text.trim();
    text.is_empty()
        || matches!(
            text.to_lowercase().as_str(),
            "na" | "n/a"
                | "n.a."
                | "#n/a"
                | "nan"
                | "null"
                | "none"
                | "nil"
                | "nd"
                | "-"
                | "--"
                | "–"
                | "—"
                | "?"
                | "unknown"
                | "\\n"
        )
}

/// Reads a number by the file's decimal mark; nothing where it is none.
pub(super) fn read_number(text: &str, mark: DecimalMark) -> Option<Written> {
    let text = text.trim();
    let digits_end = text
        .rfind(|letter: char| letter.is_ascii_digit() || letter == mark.sign())
        .map(|at| at + 1)?;
    let (number, behind) = text.split_at_checked(digits_end)?;
    let unit = match behind.trim() {
        "" | "°" => None,
        unit => Some(LengthUnit::read(unit)?),
    };
    let value = plain(number, mark)?.parse::<f64>().ok()?;
    value.is_finite().then_some(Written { value, unit })
}

/// The number with a decimal point and without groups.
fn plain(number: &str, mark: DecimalMark) -> Option<String> {
    let number = number.replace(['\u{a0}', '\u{202f}', '\u{2009}'], " ");
    let number = number.replace('−', "-");
    let mut parts = number.split(mark.sign());
    let (whole, fraction) = (parts.next()?, parts.next());
    let unsigned = whole.trim_start_matches(['+', '-']);
    let fits = parts.next().is_none()
        && whole.len() - unsigned.len() <= 1
        && fraction.is_none_or(is_fraction)
        && (fraction.is_some_and(|part| !part.is_empty()) || !unsigned.is_empty());
    let whole = ungrouped(whole, unsigned, mark)?;
    let fraction = fraction.unwrap_or("0");
    fits.then(|| format!("{whole}.{fraction}"))
}

/// Digits, perhaps with a power of ten.
fn is_fraction(part: &str) -> bool {
    let (digits, power) = match part.split_once(['e', 'E']) {
        Some((digits, power)) => (digits, power.trim_start_matches(['+', '-'])),
        None => (part, "0"),
    };
    let all_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    all_digits(digits) && all_digits(power) && !power.is_empty() && power.len() <= 3
}

/// Groups are three digits each, all with the same sign between them.
fn ungrouped(whole: &str, unsigned: &str, mark: DecimalMark) -> Option<String> {
    let all_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if all_digits(unsigned) {
        return Some(whole.to_owned());
    }
    let between = unsigned.chars().find(|letter| !letter.is_ascii_digit())?;
    if ![mark.grouping(), ' ', '\'', '’'].contains(&between) {
        return None;
    }
    let mut groups = unsigned.split(between);
    let first = groups.next()?;
    let fits = !first.is_empty()
        && first.len() <= 3
        && all_digits(first)
        && groups.all(|group| group.len() == 3 && all_digits(group));
    fits.then(|| whole.replace(between, ""))
}

/// Which mark a file uses, by what its numbers leave no doubt about; `usual` decides the rest.
pub(super) fn decimal_mark<'a>(
    numbers: impl Iterator<Item = &'a str>,
    usual: DecimalMark,
) -> DecimalMark {
    let (mut points, mut commas) = (0_u32, 0_u32);
    for text in numbers {
        match sure_mark(text) {
            Some(DecimalMark::Point) => points += 1,
            Some(DecimalMark::Comma) => commas += 1,
            None => {}
        }
    }
    match points.cmp(&commas) {
        std::cmp::Ordering::Greater => DecimalMark::Point,
        std::cmp::Ordering::Less => DecimalMark::Comma,
        std::cmp::Ordering::Equal => usual,
    }
}

fn sure_mark(text: &str) -> Option<DecimalMark> {
    let of = |sign| match sign {
        ',' => DecimalMark::Comma,
        _ => DecimalMark::Point,
    };
    let at = text.rfind([',', '.'])?;
    let sign = if text.get(at..)?.starts_with(',') {
        ','
    } else {
        '.'
    };
    let (before, behind) = (text.get(..at)?, text.get(at + 1..)?);
    let digits = behind.bytes().take_while(u8::is_ascii_digit).count();
    if before.contains(sign) {
        // The same sign twice parts thousands.
        return Some(of(if sign == ',' { '.' } else { ',' }));
    }
    let doubtful = digits == 3 && !before.contains([',', '.']);
    (digits > 0 && !doubtful).then(|| of(sign))
}

#[cfg(test)]
mod tests {
    use super::*;
    use DecimalMark::{Comma, Point};

    fn value(text: &str, mark: DecimalMark) -> Option<f64> {
        read_number(text, mark).map(|written| written.value)
    }

    #[test]
    fn numbers_are_read_by_the_files_mark() {
        for (text, mark, expected) in [
            ("12.5", Point, 12.5),
            ("12,5", Comma, 12.5),
            ("1,234.5", Point, 1234.5),
            ("1.234,5", Comma, 1234.5),
            ("1 234,5", Comma, 1234.5),
            ("1'234.5", Point, 1234.5),
            ("-121.015", Point, -121.015),
            ("−3,5", Comma, -3.5),
            (".5", Point, 0.5),
            ("7.", Point, 7.0),
            ("1.5e2", Point, 150.0),
            ("1,234", Point, 1234.0),
            ("1,234", Comma, 1.234),
        ] {
            assert_eq!(value(text, mark), Some(expected), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_none() {
        for text in [
            "", "tall", "12 or 13", "12-13", "1,2.5", "12,34.5", "inf", "nan", "0x10", "1e999",
            ".", "-", "+-3", "12 yd", "1.2.3", "e5",
        ] {
            assert_eq!(value(text, Point), None, "{text}");
        }
        assert_eq!(value("12,5", Point), None);
    }

    #[test]
    fn a_unit_behind_the_number_is_kept() {
        let read = |text: &str| read_number(text, Point).and_then(|written| written.unit);
        assert_eq!(read("40 ft"), Some(LengthUnit::Foot));
        assert_eq!(read("40'"), Some(LengthUnit::Foot));
        assert_eq!(read("24\""), Some(LengthUnit::Inch));
        assert_eq!(read("12.5m"), Some(LengthUnit::Metre));
        assert_eq!(read("12.5"), None);
    }

    #[test]
    fn the_mark_is_told_by_numbers_without_doubt() {
        let mark = |numbers: &[&str], usual| decimal_mark(numbers.iter().copied(), usual);
        assert_eq!(mark(&["1,234", "12,5"], Point), Comma);
        assert_eq!(mark(&["1,234", "12.5"], Comma), Point);
        assert_eq!(mark(&["1,234"], Comma), Comma);
        assert_eq!(mark(&["1.234.567"], Point), Comma);
        assert_eq!(mark(&["1.234,5"], Point), Comma);
        assert_eq!(mark(&["37.639492", "1,234"], Comma), Point);
    }
}
