//! Tables of published values: the first line of each names the work it was taken from.

/// A table with its source.
pub struct Table {
    pub source: String,
    columns: Vec<String>,
    lines: Vec<Vec<String>>,
}

/// One line of a table.
pub struct Line<'a> {
    table: &'a Table,
    cells: &'a [String],
}

impl Table {
    /// Reads a table; without a source line it is refused.
    pub fn read(text: &str) -> Table {
        let (source, rest) = text.split_once('\n').expect("a source line");
        let mut reader = csv::Reader::from_reader(rest.as_bytes());
        let columns = reader.headers().expect("columns").iter().map(str::to_owned);
        let columns: Vec<String> = columns.collect();
        let lines = reader
            .records()
            .map(|line| line.expect("a line").iter().map(str::to_owned).collect())
            .collect();
        Table {
            source: source.strip_prefix("# ").expect("a source").to_owned(),
            columns,
            lines,
        }
    }

    pub fn lines(&self) -> impl Iterator<Item = Line<'_>> {
        self.lines.iter().map(|cells| Line { table: self, cells })
    }

    pub fn columns(&self) -> &[String] {
        &self.columns
    }
}

impl Line<'_> {
    pub fn text(&self, column: &str) -> &str {
        let place = self.table.columns.iter().position(|name| name == column);
        &self.cells[place.unwrap_or_else(|| panic!("no column {column}"))]
    }

    pub fn number(&self, column: &str) -> f64 {
        let text = self.text(column);
        text.parse()
            .unwrap_or_else(|_| panic!("{text} in {column} is no number"))
    }

    /// A number, or nothing where the cell is empty.
    pub fn maybe(&self, column: &str) -> Option<f64> {
        (!self.text(column).is_empty()).then(|| self.number(column))
    }
}

/// Counts checks and names the source of the one that fails.
pub struct Checks {
    source: String,
    count: u32,
}

impl Checks {
    pub fn new() -> Self {
        Checks {
            source: String::new(),
            count: 0,
        }
    }

    pub fn count(&self) -> u32 {
        self.count
    }

    /// The work that the following checks are from.
    pub fn from(&mut self, source: &str) -> &mut Self {
        source.clone_into(&mut self.source);
        self
    }

    /// `got` is `published` to within `within`.
    pub fn near(&mut self, what: &str, got: f64, published: f64, within: f64) {
        assert!(
            (got - published).abs() <= within,
            "{what}: {got}, published {published} ± {within} ({})",
            self.source
        );
        self.count += 1;
    }

    /// `got` is exactly what is published.
    pub fn same<T: PartialEq + core::fmt::Debug>(&mut self, what: &str, got: T, published: T) {
        assert!(
            got == published,
            "{what}: {got:?}, published {published:?} ({})",
            self.source
        );
        self.count += 1;
    }
}
