//! Delimited text (RFC 4180 and what goes by that name): the delimiter is found out, not asked.

use std::borrow::Cow;

use csv::{ReaderBuilder, StringRecord};

use super::rows::{Cell, Place, Row, Rows};
use crate::error::BookError;
use crate::record::Fault;

const DELIMITERS: [u8; 4] = *b",;\t|";
/// Records that are looked at to tell the delimiter.
const LOOKED_AT: usize = 100;
/// Quoted text over many lines that is longer than this, in bytes, is a quote that was never closed.
const LONGEST_OVER_LINES: usize = 4000;
/// The most columns that are read.
const MOST_COLUMNS: usize = 4096;

/// Reads delimited text with a header.
///
/// # Errors
/// [`BookError::Refused`] where there is no header and no row.
pub(super) fn delimited(text: &str) -> Result<Rows, BookError> {
    // Lines that end in a carriage return alone are counted like the others.
    let text = if text.contains('\n') {
        Cow::Borrowed(text)
    } else {
        Cow::Owned(text.replace('\r', "\n"))
    };
    let (body, skipped, named) = without_sep_line(&text);
    let delimiter = named.unwrap_or_else(|| likeliest(body));
    let mut records = ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(delimiter)
        .from_reader(body.as_bytes())
        .into_records();
    let header = match records.next() {
        Some(Ok(header)) if header.len() <= MOST_COLUMNS => header,
        Some(Ok(header)) => {
            let fault = Fault::new("fault.too-many", "line 1", header.len(), "4096");
            return Err(BookError::refused(fault));
        }
        _ => return Err(BookError::refused(Fault::new("fault.no-rows", "", "", ""))),
    };
    let mut read = Rows {
        columns: headers(&header),
        rows: Vec::new(),
        broken: Vec::new(),
        blank: 0,
        has_points: false,
        delimiter: Some(char::from(delimiter)),
    };
    let mut lines = Lines::of(body, skipped);
    for record in records {
        match record {
            Ok(record) => {
                let line = lines.of_position(record.position());
                take(&mut read, &record, line);
            }
            Err(cause) => {
                let line = lines.of_position(cause.position());
                let fault = Fault::new("fault.syntax", format!("line {line}"), cause, "");
                read.broken.push(fault);
            }
        }
    }
    Ok(read)
}

fn headers(header: &StringRecord) -> Vec<String> {
    (1..)
        .zip(header)
        .map(|(number, name)| match name.trim() {
            "" => format!("#{number}"),
            name => name.to_owned(),
        })
        .collect()
}

/// Counts lines. The reader's own count names the line before the blank ones that it skips.
struct Lines<'a> {
    rest: &'a [u8],
    at: u64,
    line: u64,
}

impl<'a> Lines<'a> {
    fn of(text: &'a str, skipped: u64) -> Self {
        Lines {
            rest: text.as_bytes(),
            at: 0,
            line: skipped + 1,
        }
    }

    /// The line on which a record begins; records come in the order of the text.
    fn of_position(&mut self, position: Option<&csv::Position>) -> u64 {
        let to = position.map_or(self.at, csv::Position::byte);
        self.pass(usize::try_from(to.saturating_sub(self.at)).unwrap_or(usize::MAX));
        let blank = self.rest.iter().take_while(|byte| b"\r\n".contains(byte));
        self.pass(blank.count());
        self.line
    }

    fn pass(&mut self, count: usize) {
        let count = count.min(self.rest.len());
        let (passed, rest) = self.rest.split_at(count);
        self.line += passed.iter().filter(|byte| **byte == b'\n').count() as u64;
        self.at += count as u64;
        self.rest = rest;
    }
}

fn take(read: &mut Rows, record: &StringRecord, line: u64) {
    let place = Place::Line(line);
    let filled = record.iter().enumerate();
    let filled = filled.filter(|(_, cell)| !cell.trim().is_empty());
    let Some((last, _)) = filled.last() else {
        read.blank += 1;
        return;
    };
    let unclosed = |cell: &str| cell.len() > LONGEST_OVER_LINES && cell.contains(['\n', '\r']);
    if record.iter().any(unclosed) {
        let fault = Fault::new("fault.quote-not-closed", place.row(), "", "");
        read.broken.push(fault);
        return;
    }
    // A row of another length has its values in the wrong columns, unless only empty cells at the
    // end are too many.
    let columns = read.columns.len();
    if last >= columns || record.len() < columns {
        let count = record.len();
        let fault = Fault::new("fault.row-length", place.row(), count, columns.to_string());
        read.broken.push(fault);
        return;
    }
    let cells = record
        .iter()
        .enumerate()
        .map(|(column, cell)| (column, cell.trim()))
        .filter(|(_, cell)| !cell.is_empty())
        .map(|(column, cell)| {
            let text = cell.to_owned();
            (column, Cell { text, number: None })
        })
        .collect();
    read.rows.push(Row {
        place,
        cells,
        point: None,
    });
}

/// Some spreadsheets name the delimiter in a line before the header: `sep=;`.
fn without_sep_line(text: &str) -> (&str, u64, Option<u8>) {
    let Some((line, rest)) = text.split_once('\n') else {
        return (text, 0, None);
    };
    let named = line.trim().strip_prefix("sep=").map(str::as_bytes);
    match named {
        Some(&[delimiter]) if DELIMITERS.contains(&delimiter) => (rest, 1, Some(delimiter)),
        Some([]) if line.contains('\t') => (rest, 1, Some(b'\t')),
        _ => (text, 0, None),
    }
}

/// The delimiter by which most rows have as many cells as the header, and more than one.
fn likeliest(text: &str) -> u8 {
    let score = |delimiter: u8| {
        let mut records = ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .delimiter(delimiter)
            .from_reader(text.as_bytes())
            .into_records();
        let columns = records.next().and_then(Result::ok).map_or(0, |r| r.len());
        if columns < 2 {
            return (0, 0);
        }
        let even = records
            .take(LOOKED_AT)
            .filter(|record| record.as_ref().is_ok_and(|r| r.len() == columns))
            .count();
        (even + 1, columns)
    };
    let mut best = (b',', (0, 0));
    for delimiter in DELIMITERS {
        let scored = score(delimiter);
        if scored > best.1 {
            best = (delimiter, scored);
        }
    }
    best.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_delimiter_is_found() {
        for (text, delimiter, columns) in [
            ("a,b,c\n1,2,3\n", ',', 3),
            ("a;b;c\n1,5;2,5;3,5\n", ';', 3),
            ("a\tb\n1,5\t2,5\n", '\t', 2),
            ("a|b|c|d\r\n1|2|3|4\r\n", '|', 4),
            ("sep=;\na;b\n1;2\n", ';', 2),
            ("\"a;x\",b,c\n\"1;2\",3,4\n", ',', 3),
            ("alone\n1\n", ',', 1),
        ] {
            let read = delimited(text).unwrap();
            assert_eq!(read.delimiter, Some(delimiter), "{text}");
            assert_eq!(read.columns.len(), columns, "{text}");
            assert_eq!(read.rows.len(), 1, "{text}");
            assert!(read.broken.is_empty());
        }
    }

    #[test]
    fn rows_of_another_length_are_told_with_their_line() {
        let read = delimited("a,b\n1,2\n\"x\ny\",2\n1,2,3\n,\n1\n1,2,\n").unwrap();
        assert_eq!(read.rows.len(), 3);
        assert_eq!(read.blank, 1);
        let places: Vec<&str> = read.broken.iter().map(|f| f.place.as_str()).collect();
        assert_eq!(places, ["line 5", "line 7"]);
        assert!(read.rows[1].cell(0).unwrap().text == "x\ny");
    }

    #[test]
    fn a_quote_that_is_never_closed_does_not_become_a_tree() {
        let text = format!("a,b\n1,\"two{}", "\n3,4".repeat(2000));
        let read = delimited(&text).unwrap();
        assert!(read.rows.is_empty());
        assert_eq!(read.broken[0].code, "fault.quote-not-closed");
    }

    #[test]
    fn nothing_is_refused() {
        assert!(delimited("").is_err());
    }
}
