//! A site that was loaded, brought up to what was edited since: after most edits one tree is read
//! anew and not five thousand.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::{Connection, OptionalExtension, params};

use super::change::{GONE, ORDER, PARENT, SEEN};
use super::nest::record_of;
use super::read::{LoadedSite, Reader};
use super::standing::{standing_of, unread_of};
use super::{log, removed};
use crate::error::BookError;
use crate::record::{Id, Noun, Site, Tree};

/// Of more changes than this the whole site is read.
const MOST_CHANGES: usize = 500;

type Kept<T> = Result<T, BookError>;

impl Reader<'_> {
    /// The number of the last change in the log.
    ///
    /// # Errors
    /// As the database reports.
    pub fn last_seq(&self) -> Kept<i64> {
        self.placed(log::last_seq(self.conn))
    }

    /// Brings a site up to the changes of this phone since number `seq`, when it was loaded. Gives
    /// the trees that were read anew, are new or are gone. Nothing, and the site as it was, where
    /// more than trees was changed or where something stands side by side or cannot be read: then
    /// it has to be loaded whole. So it has after a merge.
    ///
    /// # Errors
    /// As the database reports.
    pub fn refresh_site(&self, loaded: &mut LoadedSite, seq: i64) -> Kept<Option<BTreeSet<Id>>> {
        self.placed(refreshed(self.conn, loaded, seq))
    }
}

/// What was changed on a site.
#[derive(Default)]
struct Touched {
    trees: BTreeSet<Id>,
    /// Whether trees were made, removed or moved in their list.
    list: bool,
    /// Whether something was removed or brought back.
    gone: bool,
}

fn refreshed(conn: &Connection, loaded: &mut LoadedSite, seq: i64) -> Kept<Option<BTreeSet<Id>>> {
    let plain = loaded.standing.is_empty()
        && loaded.unread.is_empty()
        && loaded.removed_but_changed.is_empty();
    let site = &mut loaded.file.site;
    let touched = match touched(conn, &site.id, seq)? {
        Some(touched) if plain => touched,
        _ => return Ok(None),
    };
    if touched.trees.is_empty() {
        return Ok(Some(touched.trees));
    }
    let own = Some(&site.id);
    if !standing_of(conn, own)?.is_empty()
        || !unread_of(conn, own)?.is_empty()
        || (touched.gone && !removed::find(conn, own)?.is_empty())
    {
        return Ok(None);
    }
    let mut fresh = BTreeMap::new();
    for id in &touched.trees {
        match record_of(conn, Noun::Tree, id) {
            Ok(json) => match serde_json::from_value::<Tree>(json) {
                Ok(tree) => fresh.insert(id.clone(), tree),
                Err(_) => return Ok(None),
            },
            Err(BookError::NotFound { .. }) => None,
            Err(other) => return Err(other),
        };
    }
    let is_whole = match touched.list {
        true => put_in_order(conn, site, &touched.trees, fresh)?,
        false => put_in_place(site, &touched.trees, fresh),
    };
    Ok(is_whole.then_some(touched.trees))
}

/// The trees that changed where they stood.
fn put_in_place(site: &mut Site, touched: &BTreeSet<Id>, mut fresh: BTreeMap<Id, Tree>) -> bool {
    let here = |tree: &&mut Tree| touched.contains(&tree.id);
    let stood: Vec<&mut Tree> = site.trees.iter_mut().filter(here).collect();
    if stood.len() != fresh.len() || !stood.iter().all(|tree| fresh.contains_key(&tree.id)) {
        return false;
    }
    for tree in stood {
        if let Some(anew) = fresh.remove(&tree.id) {
            *tree = anew;
        }
    }
    true
}

/// All trees in the order of their list.
fn put_in_order(
    conn: &Connection,
    site: &mut Site,
    touched: &BTreeSet<Id>,
    mut fresh: BTreeMap<Id, Tree>,
) -> Kept<bool> {
    let mut query =
        conn.prepare_cached("SELECT id FROM tree WHERE site IS ?1 AND gone = 0 ORDER BY ord, id")?;
    let ids = query.query_map([site.id.as_str()], |row| row.get::<_, String>(0).map(Id))?;
    let order: Vec<Id> = ids.collect::<rusqlite::Result<_>>()?;
    let kept = site.trees.iter().filter(|tree| !touched.contains(&tree.id));
    let known: BTreeSet<&Id> = kept.map(|tree| &tree.id).chain(fresh.keys()).collect();
    if known.len() != order.len() || !order.iter().all(|id| known.contains(id)) {
        return Ok(false);
    }
    let stood = std::mem::take(&mut site.trees).into_iter();
    let mut stood: BTreeMap<Id, Tree> = stood.map(|tree| (tree.id.clone(), tree)).collect();
    let next = |id: &Id| fresh.remove(id).or_else(|| stood.remove(id));
    site.trees = order.iter().filter_map(next).collect();
    Ok(true)
}

/// The trees that changes since touched; nothing where anything else was.
fn touched(conn: &Connection, site: &Id, seq: i64) -> Kept<Option<Touched>> {
    let mut query = conn.prepare_cached(
        "SELECT noun, record, field, replaces FROM change
         WHERE seq > ?1 AND (site = ?2 OR site IS NULL) AND field <> ?3 LIMIT ?4",
    )?;
    let most = MOST_CHANGES as i64 + 1;
    let rows = query.query_map(params![seq, site.as_str(), SEEN, most], |row| {
        Ok((
            row.get::<_, String>(0)?,
            row.get::<_, String>(1)?,
            row.get::<_, String>(2)?,
            row.get::<_, String>(3)?,
        ))
    })?;
    let mut touched = Touched::default();
    let mut met = BTreeSet::new();
    for (number, row) in rows.enumerate() {
        let (table, record, field, replaces) = row?;
        let noun = Noun::of_table(&table);
        // What was carried to another record changes two.
        let carried = field == PARENT && replaces != "[]";
        let Some(noun) = noun.filter(|_| !carried && number < MOST_CHANGES) else {
            return Ok(None);
        };
        touched.gone |= field == GONE;
        touched.list |= noun == Noun::Tree && [GONE, ORDER, PARENT].contains(&field.as_str());
        if met.insert((noun, record.clone())) {
            match tree_of(conn, noun, record)? {
                Some(tree) => touched.trees.insert(tree),
                None => return Ok(None),
            };
        }
    }
    Ok(Some(touched))
}

/// The tree that a record is or lies in; nothing where it lies in none.
fn tree_of(conn: &Connection, noun: Noun, record: String) -> Kept<Option<Id>> {
    let (mut noun, mut record) = (noun, record);
    while noun != Noun::Tree {
        let place = noun.place();
        let Some((holder, _)) = place.held_by else {
            return Ok(None);
        };
        let query = format!("SELECT parent FROM {} WHERE id = ?1", place.table);
        let parent: Option<Option<String>> = conn
            .prepare_cached(&query)?
            .query_row([&record], |row| row.get(0))
            .optional()?;
        let Some(parent) = parent.flatten() else {
            return Ok(None);
        };
        (noun, record) = (holder, parent);
    }
    Ok(Some(Id(record)))
}
