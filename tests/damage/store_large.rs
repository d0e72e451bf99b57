//! A town's inventory as one edit.

use std::time::Instant;

use super::store::{ana, at, open, property};

#[test]
fn an_inventory_of_14487_trees_is_one_edit_and_one_undo() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), 0).unwrap();
    let file = property(14_487);
    let start = Instant::now();
    let (site, done) = store.put_site_file(&ana(0), &file).unwrap();
    let put = start.elapsed();
    let loaded = store.read().load_site(&site).unwrap().file;
    let read = start.elapsed() - put;
    assert_eq!(loaded, file);
    assert!(done.changes > 14_487 * 8);
    println!("put {put:?}, read {read:?}");
    store.undo(None, &ana(1)).unwrap().unwrap();
    assert!(store.read().load_book().unwrap().sites.is_empty());
    store.redo(None, &ana(2)).unwrap().unwrap();
    assert_eq!(store.read().load_site(&site).unwrap().file, file);
    drop(store);
    let start = Instant::now();
    let store = open(folder.path(), 3).unwrap();
    println!("open {:?}", start.elapsed());
    store.backup(at(3)).unwrap();
}
