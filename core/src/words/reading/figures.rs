//! Splits what was typed into numbers and units; reads decimal points and thousands.

use super::super::catalogue::Language;

/// A piece of what was typed.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Token {
    /// A number, finite.
    Number(f64),
    /// A unit as typed, in lower case, without spaces.
    Unit(String),
}

/// The pieces of what was typed, with at least one number; nothing where it cannot be read.
pub(super) fn tokens_of(typed: &str, language: Language) -> Option<Vec<Token>> {
    let text = plain(typed);
    let mut tokens = Vec::new();
    let mut rest = text.trim();
    while let Some(first) = rest.chars().next() {
        let numeric = first.is_ascii_digit() || matches!(first, '.' | ',' | '-' | '+');
        let end = if numeric {
            number_end(rest)
        } else {
            rest.find(|letter: char| letter.is_ascii_digit())
                .unwrap_or(rest.len())
        };
        let (piece, after) = rest.split_at_checked(end)?;
        if numeric {
            tokens.push(Token::Number(number_of(piece.trim(), language)?));
        } else {
            tokens.push(unit_in(piece)?);
        }
        rest = after.trim_start();
    }
    tokens
        .iter()
        .any(|token| matches!(token, Token::Number(_)))
        .then(|| joined_fractions(tokens))
}

/// One writing for signs that look alike.
fn plain(typed: &str) -> String {
    typed
        .to_lowercase()
        .replace("''", "\"")
        .replace("½", " 1/2")
        .replace("¼", " 1/4")
        .replace("¾", " 3/4")
        .chars()
        .map(|letter| match letter {
            '’' | '‘' | '′' | '´' => '\'',
            '“' | '”' | '″' => '"',
            '−' | '–' => '-',
            'º' => '°',
            letter if letter.is_whitespace() => ' ',
            letter => letter,
        })
        .collect()
}

/// Where a number ends: digits, points and commas, and spaces between groups of three digits.
fn number_end(text: &str) -> usize {
    let bytes = text.as_bytes();
    let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
    let mut at = 1;
    while let Some(byte) = bytes.get(at) {
        let in_number = byte.is_ascii_digit() || matches!(byte, b'.' | b',');
        let group_space = *byte == b' '
            && digit(at - 1)
            && digit(at + 1)
            && digit(at + 2)
            && digit(at + 3)
            && !digit(at + 4);
        if !in_number && !group_space {
            break;
        }
        at += 1;
    }
    at
}

fn unit_in(piece: &str) -> Option<Token> {
    let unit: String = piece.chars().filter(|letter| *letter != ' ').collect();
    // A point or comma after a unit ends it: `12 ft.`; a superscript belongs to it.
    let unit = unit.trim_end_matches(['.', ',']).to_owned();
    (!unit.is_empty()).then_some(Token::Unit(unit))
}

fn number_of(piece: &str, language: Language) -> Option<f64> {
    let (sign, digits) = match piece.strip_prefix(['-', '+']) {
        Some(digits) if piece.starts_with('-') => (-1.0, digits),
        Some(digits) => (1.0, digits),
        None => (1.0, piece),
    };
    let plain = without_thousands(digits, language)?;
    let starts_well = plain.starts_with(|first: char| first.is_ascii_digit() || first == '.');
    let value: f64 = plain.parse().ok()?;
    if starts_well && plain.ends_with(|last: char| last.is_ascii_digit()) && value.is_finite() {
        Some(sign * value)
    } else {
        None
    }
}

/// The digits with a point for the decimals and nothing between the thousands.
fn without_thousands(digits: &str, language: Language) -> Option<String> {
    let spaced = digits.contains(' ');
    let digits: String = match (spaced, grouped_by(digits, ' ')) {
        (false, _) => digits.to_owned(),
        (true, true) => digits.replace(' ', ""),
        (true, false) => return None,
    };
    let points = digits.matches('.').count();
    let commas = digits.matches(',').count();
    match (points, commas) {
        (0, 0) => Some(digits),
        (1, 0) if spaced => Some(digits),
        (1, 0) => one_mark(&digits, '.', language),
        (0, 1) if spaced => Some(digits.replace(',', ".")),
        (0, 1) => one_mark(&digits, ',', language),
        (0, _) if grouped_by(&digits, ',') => Some(digits.replace(',', "")),
        (_, 0) if grouped_by(&digits, '.') => Some(digits.replace('.', "")),
        (1, _) if digits.rfind('.') > digits.rfind(',') => {
            let (whole, decimals) = digits.split_once('.').unwrap_or((&digits, ""));
            if grouped_by(whole, ',') {
                Some(format!("{}.{decimals}", whole.replace(',', "")))
            } else {
                None
            }
        }
        (_, 1) => {
            let (whole, decimals) = digits.split_once(',').unwrap_or((&digits, ""));
            if grouped_by(whole, '.') {
                Some(format!("{}.{decimals}", whole.replace('.', "")))
            } else {
                None
            }
        }
        _ => None,
    }
}

/// A single point or comma: `21,5` and `21.5` have decimals in any language. Before exactly three
/// digits it stands for thousands where the language groups with it: `5,400` in English, `5.400` in
/// Spanish. `0,125` can only have decimals.
fn one_mark(digits: &str, mark: char, language: Language) -> Option<String> {
    let grouping = match language {
        Language::English => ',',
        Language::Spanish => '.',
    };
    if mark == grouping && grouped_by(digits, mark) && !digits.starts_with('0') {
        Some(digits.replace(mark, ""))
    } else {
        Some(digits.replace(mark, "."))
    }
}

/// Whether the separator stands before each group of exactly three digits and nowhere else.
fn grouped_by(digits: &str, separator: char) -> bool {
    let whole = digits.split(['.', ',']).next().unwrap_or(digits);
    let checked = if separator == ' ' { whole } else { digits };
    let mut groups = checked.split(separator);
    let first = groups.next().unwrap_or("");
    let all_digits = |group: &str| group.bytes().all(|byte| byte.is_ascii_digit());
    (1..=3).contains(&first.len())
        && all_digits(first)
        && groups.all(|group| group.len() == 3 && all_digits(group))
}

/// `5 1/2 in` and `1/2 in` become one number each.
fn joined_fractions(tokens: Vec<Token>) -> Vec<Token> {
    let mut joined: Vec<Token> = Vec::with_capacity(tokens.len());
    for token in tokens {
        let (Token::Number(below), Some([Token::Number(above), Token::Unit(bar)])) =
            (&token, joined.last_chunk::<2>())
        else {
            joined.push(token);
            continue;
        };
        let whole_numbers = above.fract() == 0.0 && below.fract() == 0.0 && *above >= 0.0;
        if bar != "/" || !whole_numbers || above >= below {
            joined.push(token);
            continue;
        }
        let part = above / below;
        joined.truncate(joined.len().saturating_sub(2));
        match joined.last_mut() {
            Some(Token::Number(whole)) if whole.fract() == 0.0 => *whole += part.copysign(*whole),
            _ => joined.push(Token::Number(part)),
        }
    }
    joined
}
