//! One catalogue of words for papers and screens; units, numbers and dates by locale.
//!
//! [`Words`] is the way in: a language and a unit system. `say` words an entry of the catalogue,
//! `word_of` an enum of the record, `reason`, `fault` and `error` what the core answers; `number`,
//! `measure`, `distance_up` and their like show values; `read` takes what a person typed.

#[cfg(test)]
mod alike;
mod catalogue;
mod change;
#[cfg(test)]
mod complete;
mod dates;
mod faults;
mod fold;
mod numbers;
mod outcome;
mod places;
mod reading;
mod reasons;
mod search;
mod shell;
mod shown;
mod starters;
mod terms;
mod units;

pub use catalogue::{Language, Said, Words, catalogue_id};
pub use dates::DayStyle;
pub use faults::error_key;
pub use fold::{Search, folded};
pub use numbers::Rounding;
pub use places::read_place;
pub use search::closeness;
pub use shell::ShellWords;
pub use terms::{Worded, all_term_keys};
pub use units::UnitSystem;
