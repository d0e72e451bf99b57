//! A file as columns and rows, whatever it was written in.

use crate::record::Fault;

/// A file as columns and rows.
pub(super) struct Rows {
    /// The headers or the names of properties, trimmed.
    pub columns: Vec<String>,
    /// The rows that can be read.
    pub rows: Vec<Row>,
    /// The rows that cannot, each with its reason.
    pub broken: Vec<Fault>,
    /// Rows without any content.
    pub blank: u32,
    /// Whether positions are geometries, not columns.
    pub has_points: bool,
    /// What separates the columns, in delimited text.
    pub delimiter: Option<char>,
}

/// One row.
pub(super) struct Row {
    /// Its place in the file.
    pub place: Place,
    /// Its filled cells by column, in the order of columns.
    pub cells: Vec<(usize, Cell)>,
    /// Longitude and latitude of its geometry.
    pub point: Option<Point>,
}

/// Where a row is.
#[derive(Clone, Copy)]
pub(super) enum Place {
    /// The line it begins on, from 1.
    Line(u64),
    /// Its index among the features, from 0.
    Feature(usize),
}

/// A filled cell.
pub(super) struct Cell {
    /// As written, trimmed.
    pub text: String,
    /// The number, where the file itself says that it is one.
    pub number: Option<f64>,
}

/// A place as a geometry gives it.
#[derive(Clone, Copy)]
pub(super) struct Point {
    pub lon_deg: f64,
    pub lat_deg: f64,
}

impl Row {
    pub fn cell(&self, column: usize) -> Option<&Cell> {
        let at = self
            .cells
            .binary_search_by_key(&column, |cell| cell.0)
            .ok()?;
        self.cells.get(at).map(|cell| &cell.1)
    }
}

impl Place {
    /// The row.
    pub fn row(self) -> String {
        match self {
            Place::Line(line) => format!("line {line}"),
            Place::Feature(index) => format!("/features/{index}"),
        }
    }

    /// A cell of the row.
    pub fn cell(self, column: &str) -> String {
        match self {
            Place::Line(line) => format!("line {line}, column {column}"),
            Place::Feature(index) => format!("/features/{index}/properties/{column}"),
        }
    }

    /// The row's position.
    pub fn position(self) -> String {
        match self {
            Place::Line(line) => format!("line {line}"),
            Place::Feature(index) => format!("/features/{index}/geometry"),
        }
    }
}
