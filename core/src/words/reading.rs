//! What people type: `5 ft 11`, `1,80`, `71 in`, `60'`, `12 m`, `45°`, `NW`.

use super::catalogue::{Language, Said, Words};
use super::numbers::{Rounding, rounded};
use super::units::{UnitSystem, unit_of};
use crate::record::{Fault, NumberField, Quantity};

mod figures;
mod known_units;

use figures::{Token, tokens_of};
use known_units::{KnownUnit, follower_of, known_unit};

/// Why a text could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unread {
    NotANumber,
    UnitDoesNotFit,
}

impl Unread {
    fn code(self) -> &'static str {
        match self {
            Unread::NotANumber => "fault.not-a-number",
            Unread::UnitDoesNotFit => "fault.unit-does-not-fit",
        }
    }
}

impl Words {
    /// Reads what a person typed for a quantity, in the reader's unit where none is typed. The
    /// result is in the base unit of the quantity.
    ///
    /// # Errors
    /// `fault.not-a-number` or `fault.unit-does-not-fit` at `place`, with what can be typed.
    pub fn read(&self, typed: &str, quantity: Quantity, place: &str) -> Result<f64, Fault> {
        self.value_of(typed, quantity).map_err(|unread| {
            Fault::new(unread.code(), place, typed.trim(), self.can_type(quantity))
        })
    }

    /// Reads what a person typed for a number field, and holds it against the field's range.
    ///
    /// # Errors
    /// As [`Words::read`], and `fault.out-of-range` with the range in the reader's units.
    pub fn read_field(&self, typed: &str, field: &NumberField, place: &str) -> Result<f64, Fault> {
        let value = self.read(typed, field.quantity, place)?;
        if field.allows(value) {
            return Ok(value);
        }
        let allowed = self.range_of(field);
        Err(Fault::new(
            "fault.out-of-range",
            place,
            typed.trim(),
            allowed,
        ))
    }

    /// What can be typed for a quantity, in the reader's units: `a number with or without its
    /// unit, such as 21.5 m`.
    pub fn can_type(&self, quantity: Quantity) -> String {
        let key = match (quantity, self.units()) {
            (Quantity::BearingDeg, _) => "read.bearing-example",
            (Quantity::LengthM, UnitSystem::Imperial) => "read.feet-example",
            _ => "read.number-example",
        };
        let example = self.number(example_of(quantity), quantity);
        self.say(key, &[("example", Said::Text(&example))])
    }

    fn value_of(&self, typed: &str, quantity: Quantity) -> Result<f64, Unread> {
        if quantity == Quantity::BearingDeg
            && let Some(bearing) = bearing_of(typed, self.language())
        {
            return Ok(bearing);
        }
        let tokens = tokens_of(typed, self.language()).ok_or(Unread::NotANumber)?;
        let value = self.value_of_tokens(&tokens, quantity)?;
        if value.is_finite() {
            Ok(without_noise(value))
        } else {
            Err(Unread::NotANumber)
        }
    }

    fn value_of_tokens(&self, tokens: &[Token], quantity: Quantity) -> Result<f64, Unread> {
        match tokens {
            [Token::Number(number)] => Ok(unit_of(quantity, self.units()).base(*number)),
            // `force 4` has its unit in front.
            [Token::Unit(unit), Token::Number(number)] if quantity == Quantity::Beaufort => {
                unit_for(unit, quantity).map(|unit| unit.base(*number))
            }
            [Token::Number(number), Token::Unit(unit)] => {
                unit_for(unit, quantity).map(|unit| unit.base(*number))
            }
            [Token::Number(number), Token::Unit(unit), rest @ ..] => {
                let first = unit_for(unit, quantity)?;
                if number.is_sign_negative() {
                    return Err(Unread::NotANumber);
                }
                smaller_part(first, rest, quantity).map(|part| first.base(*number) + part)
            }
            _ => Err(Unread::NotANumber),
        }
    }
}

/// What the conversion adds beyond the ninth decimal is taken off, so that 140 °F is 60 °C.
fn without_noise(value: f64) -> f64 {
    if value.abs() < 1e5 {
        rounded(value, 9, Rounding::Nearest)
    } else {
        value
    }
}

/// The second part of `5 ft 11 in` or `1 m 80`, in the base unit. `5 ft 14 in` is a slip of the
/// hand, not a length.
fn smaller_part(first: KnownUnit, rest: &[Token], quantity: Quantity) -> Result<f64, Unread> {
    let follower = follower_of(first.name).ok_or(Unread::NotANumber)?;
    let unit = known_unit(follower, quantity).ok_or(Unread::NotANumber)?;
    let number = match rest {
        [Token::Number(number)] => *number,
        [Token::Number(number), Token::Unit(named)]
            if unit_for(named, quantity)?.name == follower =>
        {
            *number
        }
        _ => return Err(Unread::NotANumber),
    };
    let part = unit.base(number);
    if number.is_sign_positive() && part < first.base(1.0) {
        Ok(part)
    } else {
        Err(Unread::NotANumber)
    }
}

fn unit_for(typed: &str, quantity: Quantity) -> Result<KnownUnit, Unread> {
    known_unit(typed, quantity).ok_or(Unread::UnitDoesNotFit)
}

/// Sixteen points of the compass by letters or words: `NW`, `north-west`, `SSE`; in Spanish also
/// `NO`, `noroeste`.
fn bearing_of(typed: &str, language: Language) -> Option<f64> {
    const POINTS: [&str; 16] = [
        "n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw",
        "nw", "nnw",
    ];
    const ENGLISH: [(&str, &str); 4] =
        [("north", "n"), ("east", "e"), ("south", "s"), ("west", "w")];
    // West goes before east, which it holds.
    const SPANISH: [(&str, &str); 7] = [
        ("oeste", "w"),
        ("este", "e"),
        ("norte", "n"),
        ("nor", "n"),
        ("sur", "s"),
        ("sud", "s"),
        ("o", "w"),
    ];
    let own: &[(&str, &str)] = match language {
        Language::English => &[],
        Language::Spanish => &SPANISH,
    };
    let named = typed.to_lowercase().replace("nordeste", "ne");
    let letters: String = (ENGLISH.iter().chain(own))
        .fold(named, |named, (word, letter)| named.replace(word, letter))
        .chars()
        .filter(|letter| !letter.is_whitespace() && *letter != '-')
        .collect();
    let point = POINTS.iter().position(|point| *point == letters)?;
    Some(point as f64 * 22.5)
}

/// A value of an everyday size, to show how a quantity is typed.
fn example_of(quantity: Quantity) -> f64 {
    match quantity {
        Quantity::LengthM => 21.5,
        Quantity::LengthCm => 188.0,
        Quantity::LengthMm => 12.7,
        Quantity::AreaM2 => 120.0,
        Quantity::MassKg => 90.0,
        Quantity::DensityKgM3 => 960.0,
        Quantity::ForceKn => 24.0,
        Quantity::MomentKnM => 12.0,
        Quantity::StressMpa => 40.0,
        Quantity::ModulusCm3 => 21_206.0,
        Quantity::AngleDeg => 45.0,
        Quantity::BearingDeg => 315.0,
        Quantity::DegreesLatLon => 42.3314,
        Quantity::Percent => 20.0,
        Quantity::Ratio => 0.7,
        Quantity::SpeedMs => 5.0,
        Quantity::Beaufort => 4.0,
        Quantity::TemperatureC => 18.0,
        Quantity::VoltageKv => 12.47,
        Quantity::DurationS => 45.0,
        Quantity::DurationMin => 30.0,
        Quantity::DurationDays => 14.0,
        Quantity::DurationMonths => 12.0,
        Quantity::DurationYears => 3.0,
        Quantity::Points => 70.0,
        Quantity::Count => 3.0,
    }
}

/// Every quantity, for tests.
#[cfg(test)]
pub(super) const EVERY_QUANTITY: [Quantity; 26] = [
    Quantity::LengthM,
    Quantity::LengthCm,
    Quantity::LengthMm,
    Quantity::AreaM2,
    Quantity::MassKg,
    Quantity::DensityKgM3,
    Quantity::ForceKn,
    Quantity::MomentKnM,
    Quantity::StressMpa,
    Quantity::ModulusCm3,
    Quantity::AngleDeg,
    Quantity::BearingDeg,
    Quantity::DegreesLatLon,
    Quantity::Percent,
    Quantity::Ratio,
    Quantity::SpeedMs,
    Quantity::Beaufort,
    Quantity::TemperatureC,
    Quantity::VoltageKv,
    Quantity::DurationS,
    Quantity::DurationMin,
    Quantity::DurationDays,
    Quantity::DurationMonths,
    Quantity::DurationYears,
    Quantity::Points,
    Quantity::Count,
];

#[cfg(test)]
mod tests;
