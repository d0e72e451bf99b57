//! A table of trees into a field book.

use std::path::PathBuf;
use std::process::Command;

use bolewalk_core::store::DATABASE;

use super::{looked_at, rows_of};
use crate::bench::{Bench, Outcome, TREES, desk};
use crate::peer::{ogr2ogr, succeeded};
use crate::row::Row;
use crate::times::timed;

pub fn rows(bench: &Bench) -> Outcome<Vec<Row>> {
    let (table, which) = bench.trees()?;
    let book = bench.path("book");
    let ours = || {
        let mut command = Command::new(desk());
        command.arg("import").arg(&table).arg("--into").arg(&book);
        let (seconds, ()) = timed(|| succeeded(&mut command))?;
        let trees = rows_of(&looked_at(&book.join(DATABASE))?, "tree")?;
        std::fs::remove_dir_all(&book)?;
        all_there(trees)?;
        Ok(seconds)
    };
    let mut arguments = vec![table.clone()];
    let options = "-nln trees -a_srs EPSG:4326 -oo X_POSSIBLE_NAMES=Long -oo Y_POSSIBLE_NAMES=Lat \
                   -oo AUTODETECT_TYPE=YES";
    arguments.extend(options.split_whitespace().map(PathBuf::from));
    let peer = ogr2ogr(arguments, bench.path("inventory.gpkg"), |package| {
        Ok(rows_of(&looked_at(package)?, "trees")?.into())
    })?;
    let row = Row::beside("inventory: 14,487 trees from CSV", ours, peer, |made| {
        all_there(made.as_i64().unwrap_or_default())
    })?;
    let note = format!(
        "{which}. Both are whole commands, their start included. The peer copies cells; ours guesses \
         units, checks every value, and writes each as a change that can be undone."
    );
    Ok(vec![row.noted(note)])
}

fn all_there(trees: i64) -> Outcome<()> {
    match trees == TREES as i64 {
        true => Ok(()),
        false => Err(format!("{trees} trees of {TREES}").into()),
    }
}
