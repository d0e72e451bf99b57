//! Which column holds what: as a person mapped it, else as its header lets guess.

use std::collections::{BTreeMap, BTreeSet};

use super::field::{ColumnMapping, LengthUnit, TreeField};
use super::header::{Header, names_of};
use super::rows::Rows;
use crate::error::BookError;
use crate::record::{Fault, Reason};

/// The column of a field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Source {
    pub column: usize,
    /// The unit of its lengths, for fields that have one.
    pub unit: Option<LengthUnit>,
}

/// Which column holds what.
pub(super) struct Plan {
    sources: BTreeMap<TreeField, Source>,
    /// What was guessed, to be told.
    pub guesses: Vec<Reason>,
}

impl Plan {
    /// The column of a field.
    pub fn source(&self, field: TreeField) -> Option<Source> {
        self.sources.get(&field).copied()
    }

    /// Whether a field has a column.
    pub fn has(&self, field: TreeField) -> bool {
        self.sources.contains_key(&field)
    }

    /// Makes the plan.
    ///
    /// # Errors
    /// [`BookError::Refused`] with every mapping that names no column or a field twice, or where
    /// nothing in the file can be told.
    pub fn of(rows: &Rows, mapped: &[ColumnMapping]) -> Result<Self, BookError> {
        let mut plan = Plan {
            sources: BTreeMap::new(),
            guesses: Vec::new(),
        };
        let faults: Vec<Fault> = mapped
            .iter()
            .filter_map(|mapping| plan.map(rows, mapping).err())
            .collect();
        if !faults.is_empty() {
            return Err(BookError::Refused { faults });
        }
        for field in TreeField::ALL {
            plan.guess(rows, field);
        }
        if plan.sources.is_empty() && !rows.has_points {
            let fault = Fault::new("fault.no-known-column", "", listed(rows), "");
            return Err(BookError::refused(fault));
        }
        Ok(plan)
    }

    fn map(&mut self, rows: &Rows, mapping: &ColumnMapping) -> Result<(), Fault> {
        let name = mapping.field.name();
        if self.has(mapping.field) {
            let place = format!("--map {name}");
            return Err(Fault::new("fault.mapped-twice", place, &mapping.column, ""));
        }
        let column = find(rows, &mapping.column).ok_or_else(|| {
            let place = format!("--map {name}");
            Fault::new("fault.no-such-column", place, &mapping.column, listed(rows))
        })?;
        let header = rows.columns.get(column).map_or("", String::as_str);
        let unit = mapping.field.usual_unit().map(|usual| {
            let named = mapping.unit.or(Header::read(header).unit);
            named.unwrap_or(usual)
        });
        self.sources.insert(mapping.field, Source { column, unit });
        Ok(())
    }

    fn guess(&mut self, rows: &Rows, field: TreeField) {
        let places_are_points = rows.has_points && matches!(field, TreeField::Lat | TreeField::Lon);
        if self.has(field) || places_are_points || self.is_said_otherwise(field) {
            return;
        }
        let headers: Vec<Header> = rows.columns.iter().map(|name| Header::read(name)).collect();
        let named = names_of(field).iter().flat_map(|name| {
            let headers = headers.iter().enumerate();
            headers.filter(move |(_, header)| header.name == *name || header.whole == *name)
        });
        let ends_like_a_key = headers
            .iter()
            .enumerate()
            .filter(|(_, header)| field == TreeField::Key && header.whole.ends_with("id"));
        let mut candidates = named.chain(ends_like_a_key);
        let found = candidates.find(|(column, _)| {
            let fits = match field {
                TreeField::Key => is_unique(rows, *column),
                TreeField::Tag => is_mostly_unique(rows, *column),
                _ => true,
            };
            fits && !self.takes(*column)
        });
        let Some((column, header)) = found else {
            return;
        };
        let unit = field.usual_unit().map(|usual| header.unit.unwrap_or(usual));
        let assumed = header.unit.is_none();
        let name = rows.columns.get(column).map_or("", String::as_str);
        self.guesses.push(told(field, name, unit, assumed));
        self.sources.insert(field, Source { column, unit });
    }

    fn takes(&self, column: usize) -> bool {
        self.sources.values().any(|source| source.column == column)
    }

    /// A mapped girth makes a guessed diameter needless, and the other way round.
    fn is_said_otherwise(&self, field: TreeField) -> bool {
        match field {
            TreeField::Diameter => self.has(TreeField::Girth),
            TreeField::Girth => self.has(TreeField::Diameter),
            TreeField::CrownDiameter => self.has(TreeField::CrownRadius),
            TreeField::CrownRadius => self.has(TreeField::CrownDiameter),
            _ => false,
        }
    }
}

fn told(field: TreeField, column: &str, unit: Option<LengthUnit>, assumed: bool) -> Reason {
    let code = match unit {
        None => "import.column",
        Some(_) if assumed => "import.column-unit-assumed",
        Some(_) => "import.column-with-unit",
    };
    let reason = Reason::new(code)
        .term("field", &field.term())
        .text("column", column);
    match unit {
        Some(unit) => reason.text("unit", unit.symbol()),
        None => reason,
    }
}

/// Exactly, else in other letters of the same name.
fn find(rows: &Rows, wanted: &str) -> Option<usize> {
    let wanted = wanted.trim();
    let columns = || rows.columns.iter();
    columns()
        .position(|name| name == wanted)
        .or_else(|| columns().position(|name| name.to_lowercase() == wanted.to_lowercase()))
}

fn listed(rows: &Rows) -> String {
    let names: Vec<&str> = rows.columns.iter().take(40).map(String::as_str).collect();
    names.join(", ")
}

/// Whether a column has a value in every row and none twice.
fn is_unique(rows: &Rows, column: usize) -> bool {
    let mut met = BTreeSet::new();
    let mut values = rows.rows.iter().map(|row| row.cell(column));
    values.all(|cell| cell.is_some_and(|cell| met.insert(cell.text.as_str())))
}

/// Whether a column tells at least half of the rows apart: a guess at tags, no more.
fn is_mostly_unique(rows: &Rows, column: usize) -> bool {
    let cells = rows.rows.iter().filter_map(|row| row.cell(column));
    let different: BTreeSet<&str> = cells.map(|cell| cell.text.as_str()).collect();
    different.len() * 2 >= rows.rows.len()
}
