//! The steps from one format of the database to the next.

use rusqlite::{Connection, TransactionBehavior};

use super::project;
use crate::error::BookError;

/// Marks a database as a field book: the letters `BOLE`.
pub const APPLICATION_ID: u32 = 0x424F_4C45;

/// One file a step; the number of steps is the format this version knows.
const STEPS: [&str; 4] = [
    include_str!("../../migrations/0001_start.sql"),
    include_str!("../../migrations/0002_climb_log.sql"),
    include_str!("../../migrations/0003_aloft.sql"),
    include_str!("../../migrations/0004_undo_by_name.sql"),
];

/// The newest format that this version knows.
pub const KNOWN_FORMAT: u32 = STEPS.len() as u32;

/// Format and application id of an open database.
pub fn found(conn: &Connection) -> Result<(u32, u32), BookError> {
    let format = conn.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    let application = conn.query_row("PRAGMA application_id", [], |row| row.get(0))?;
    Ok((format, application))
}

/// Takes a database to the newest format, one transaction a step with the format set in it, and
/// works out the tables anew after the last.
pub fn migrate(conn: &mut Connection) -> Result<(), BookError> {
    let (start, _) = found(conn)?;
    for (format, step) in (1_u32..).zip(STEPS) {
        if format <= start {
            continue;
        }
        let step_of = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
        step_of.execute_batch(step)?;
        if format == KNOWN_FORMAT && start > 0 {
            // What an older version kept without knowing it becomes visible here.
            project::rebuild(&step_of)?;
        }
        step_of.pragma_update(None, "application_id", APPLICATION_ID)?;
        step_of.pragma_update(None, "user_version", format)?;
        step_of.commit()?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::fmt::Write as _;

    use super::*;
    use crate::store::fields::{self, NounFields};

    const SCHEMA: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/core/migrations/schema.sql");
    /// Set, `schema.sql` is written instead of compared.
    const WRITE: &str = "BOLEWALK_WRITE_SCHEMA";

    fn table_of(known: &NounFields) -> String {
        let table = known.place.table;
        let mut sql = format!(
            "CREATE TABLE {table} (\n    id TEXT PRIMARY KEY,\n    parent TEXT,\n    site TEXT,\n    ord REAL NOT NULL,\n    gone INTEGER NOT NULL"
        );
        for field in &known.fields {
            write!(
                sql,
                ",\n    \"{}\" {}",
                field.name,
                field.kind.column_type()
            )
            .unwrap();
        }
        sql.push_str("\n) STRICT;\n");
        if known.place.held_by.is_some() {
            writeln!(sql, "CREATE INDEX {table}_parent ON {table} (parent);").unwrap();
        }
        if known.in_site {
            writeln!(sql, "CREATE INDEX {table}_site ON {table} (site);").unwrap();
        }
        sql
    }

    fn fresh() -> Connection {
        let mut conn = Connection::open_in_memory().unwrap();
        migrate(&mut conn).unwrap();
        conn
    }

    fn schema_of(conn: &Connection) -> String {
        let mut query = conn
            .prepare("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type DESC, name")
            .unwrap();
        let parts: Vec<String> = query
            .query_map([], |row| row.get(0))
            .unwrap()
            .map(Result::unwrap)
            .collect();
        format!(
            "-- The schema after all steps; compared by a test.\n{};\n",
            parts.join(";\n")
        )
    }

    #[test]
    fn every_field_of_the_records_has_its_column() {
        let conn = fresh();
        for known in fields::all() {
            let query = format!(
                "SELECT name, type FROM pragma_table_info('{}')",
                known.place.table
            );
            let found: Vec<String> = conn
                .prepare(&query)
                .unwrap()
                .query_map([], |row| {
                    Ok(format!(
                        "{} {}",
                        row.get::<_, String>(0)?,
                        row.get::<_, String>(1)?
                    ))
                })
                .unwrap()
                .map(Result::unwrap)
                .skip(5)
                .collect();
            let wanted = known.fields.iter();
            let wanted: Vec<String> = wanted
                .map(|field| format!("{} {}", field.name, field.kind.column_type()))
                .collect();
            let missing: Vec<_> = wanted
                .iter()
                .filter(|column| !found.contains(column))
                .collect();
            let surplus: Vec<_> = found
                .iter()
                .filter(|column| !wanted.contains(column))
                .collect();
            assert!(
                missing.is_empty() && surplus.is_empty(),
                "missing {missing:?}, surplus {surplus:?}; a new table would be\n{}",
                table_of(known)
            );
        }
    }

    #[test]
    fn the_schema_is_the_one_written_down() {
        let schema = schema_of(&fresh());
        if std::env::var_os(WRITE).is_some() {
            std::fs::write(SCHEMA, &schema).unwrap();
            return;
        }
        assert_eq!(schema, std::fs::read_to_string(SCHEMA).unwrap());
    }

    #[test]
    fn a_book_of_every_older_format_gets_the_same_schema() {
        for (format, _) in (1_u32..).zip(STEPS) {
            let mut conn = Connection::open_in_memory().unwrap();
            for step in STEPS.into_iter().take(format as usize) {
                conn.execute_batch(step).unwrap();
            }
            conn.pragma_update(None, "user_version", format).unwrap();
            migrate(&mut conn).unwrap();
            assert_eq!(
                schema_of(&conn),
                schema_of(&fresh()),
                "from format {format}"
            );
        }
    }

    #[test]
    fn format_and_application_are_set_with_the_step() {
        assert_eq!(found(&fresh()).unwrap(), (KNOWN_FORMAT, APPLICATION_ID));
    }

    #[test]
    fn the_log_can_be_neither_altered_nor_shortened() {
        let conn = fresh();
        conn.execute_batch(
            "INSERT INTO change VALUES (1, 'a', '0', 'd', 'p', 'e', NULL, 'tree', 't', 'tag', '1', '[]')",
        )
        .unwrap();
        for sql in ["UPDATE change SET value = '2'", "DELETE FROM change"] {
            let refused = conn.execute_batch(sql).unwrap_err().to_string();
            assert!(refused.contains("never altered"), "{refused}");
        }
    }
}
