//! What stands outside the log: this phone's settings, and the cache of judgements.

use rusqlite::{OptionalExtension, params};

use super::Store;
use super::read::Reader;
use crate::error::BookError;
use crate::record::Id;

impl Reader<'_> {
    /// A setting of this phone.
    ///
    /// # Errors
    /// As the database reports.
    pub fn setting(&self, name: &str) -> Result<Option<String>, BookError> {
        self.one_text("SELECT value FROM setting WHERE name = ?1", name)
    }

    /// An answer kept under this key (inputs, rule set, method version).
    ///
    /// # Errors
    /// As the database reports.
    pub fn kept_judgement(&self, key: &str) -> Result<Option<String>, BookError> {
        self.one_text("SELECT value FROM judgement_cache WHERE key = ?1", key)
    }

    fn one_text(&self, query: &str, key: &str) -> Result<Option<String>, BookError> {
        let read = || -> Result<Option<String>, BookError> {
            Ok(self
                .conn
                .prepare_cached(query)?
                .query_row([key], |row| row.get(0))
                .optional()?)
        };
        self.placed(read())
    }
}

impl Store {
    /// Keeps a setting of this phone; it is no part of the log.
    ///
    /// # Errors
    /// As the database reports.
    pub fn set_setting(&self, name: &str, value: &str) -> Result<(), BookError> {
        self.conn
            .execute(
                "INSERT INTO setting (name, value) VALUES (?1, ?2)
                 ON CONFLICT (name) DO UPDATE SET value = ?2",
                [name, value],
            )
            .map_err(|fault| self.placed(fault.into()))?;
        Ok(())
    }

    /// Keeps answers of a site, key and JSON each, in one transaction.
    ///
    /// # Errors
    /// As the database reports.
    pub fn keep_judgements(
        &mut self,
        site: &Id,
        answers: &[(String, String)],
    ) -> Result<(), BookError> {
        let place = self.place();
        let keep = || -> Result<(), BookError> {
            let conn = self.conn.transaction()?;
            for (key, value) in answers {
                conn.prepare_cached(
                    "INSERT INTO judgement_cache (key, site, value) VALUES (?1, ?2, ?3)
                     ON CONFLICT (key) DO UPDATE SET value = ?3",
                )?
                .execute(params![key, site.as_str(), value])?;
            }
            Ok(conn.commit()?)
        };
        let mut keep = keep;
        keep().map_err(|fault| super::faults::placed(fault, &place))
    }

    /// Forgets the answers kept for a site.
    ///
    /// # Errors
    /// As the database reports.
    pub fn forget_judgements(&self, site: &Id) -> Result<(), BookError> {
        self.conn
            .execute(
                "DELETE FROM judgement_cache WHERE site = ?1",
                [site.as_str()],
            )
            .map_err(|fault| self.placed(fault.into()))?;
        Ok(())
    }
}
