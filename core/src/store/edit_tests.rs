//! Edits, undo, redo, merging and what stands side by side, as two phones would meet them.

use serde_json::json;

use super::*;
use crate::record::{Moment, SiteFile, Tree};
use crate::store::change::Change;

fn author(person: &str, minute: i64) -> Author {
    Author {
        person: Id::from(person),
        at: Moment {
            utc_ms: 1_780_000_000_000 + minute * 60_000,
            offset_min: 120,
        },
    }
}

fn file() -> SiteFile {
    serde_json::from_value(json!({
        "format": 1,
        "site": {"id": "s", "name": "Hill House", "trees": [
            {"id": "t1", "tag": "1", "species": "Quercus robur", "inspections": [
                {"id": "i1", "level": "full_check", "height": {"height_m": 21.5, "se_m": 0.5},
                 "findings": [{"id": "f1", "code": "decay", "part": "stem", "grade": 2}]}]},
            {"id": "t2", "tag": "2"}]},
        "crew": [{"id": "ana", "name": "Ana", "trainee": false,
                  "sign_offs": [{"id": "so", "skill": "moving_rope", "by": "Ben", "on": "2026-03-01"}]}],
        "gear": [{"id": "line", "name": "Line", "kind": "climbing_line", "diameter_mm": 11.7}]
    }))
    .unwrap()
}

fn book() -> Store {
    let mut store = Store::in_memory("one").unwrap();
    store.put_site_file(&author("ana", 0), &file()).unwrap();
    store
}

fn site() -> Id {
    Id::from("s")
}

fn tag(store: &Store, tree: &str) -> String {
    let tree: Tree = store.read().record_as(Noun::Tree, &Id::from(tree)).unwrap();
    tree.tag
}

fn set_tag(store: &mut Store, who: &str, minute: i64, tag: &str) -> Done {
    let author = author(who, minute);
    let set = |edit: &mut Edit<'_>| edit.set(Noun::Tree, &Id::from("t1"), "tag", json!(tag));
    store.edit(&author, set).unwrap()
}

fn all(store: &Store) -> Vec<Change> {
    store.read().changes_since(0, 100_000).unwrap().changes
}

fn meet(one: &mut Store, other: &mut Store) {
    let at = author("", 900).at;
    let (here, there) = (all(one), all(other));
    one.absorb(&there, at).unwrap();
    other.absorb(&here, at).unwrap();
}

fn two_phones() -> (Store, Store) {
    let (mut one, mut other) = (book(), Store::in_memory("two").unwrap());
    meet(&mut one, &mut other);
    (one, other)
}

#[test]
fn a_site_file_comes_back_as_it_was() {
    let store = book();
    let loaded = store.read().load_site(&site()).unwrap();
    assert_eq!(loaded.file, file());
    assert!(loaded.standing.is_empty() && loaded.unread.is_empty());
    let book = store.read().load_book().unwrap();
    assert_eq!((book.sites.len(), book.sites[0].trees), (1, 2));
    assert!(store.check().unwrap().is_sound());
}

#[test]
fn the_same_file_again_changes_nothing() {
    let mut store = book();
    let changes = all(&store).len();
    let (_, done) = store.put_site_file(&author("ana", 1), &file()).unwrap();
    assert_eq!((done.changes, all(&store).len()), (0, changes));
}

#[test]
fn undo_and_redo_go_back_and_forth_and_a_new_edit_clears_redo() {
    let mut store = book();
    set_tag(&mut store, "ana", 1, "7");
    set_tag(&mut store, "ana", 2, "8");
    for tag_then in ["7", "1"] {
        store
            .undo(Some(&site()), &author("ana", 3))
            .unwrap()
            .unwrap();
        assert_eq!(tag(&store, "t1"), tag_then);
    }
    for tag_then in ["7", "8"] {
        store
            .redo(Some(&site()), &author("ana", 4))
            .unwrap()
            .unwrap();
        assert_eq!(tag(&store, "t1"), tag_then);
    }
    store
        .undo(Some(&site()), &author("ana", 5))
        .unwrap()
        .unwrap();
    set_tag(&mut store, "ana", 6, "9");
    assert!(!store.can_redo(Some(&site())).unwrap());
    store
        .undo(Some(&site()), &author("ana", 7))
        .unwrap()
        .unwrap();
    assert_eq!(tag(&store, "t1"), "7");
    assert!(store.check().unwrap().tables_match_log);
}

#[test]
fn undo_takes_away_what_was_made_and_brings_back_what_was_removed() {
    let mut store = book();
    let before = store.read().site_json(&site()).unwrap();
    let mut made = Id::default();
    store
        .edit(&author("ana", 1), |edit| {
            let tree = json!({"tag": "3", "inspections": [{"level": "triage"}]});
            made = edit.create(Noun::Tree, Some(&site()), tree)?;
            edit.remove(Noun::Tree, &Id::from("t1"))
        })
        .unwrap();
    let after = store.read().site_json(&site()).unwrap();
    assert_eq!(after["trees"].as_array().unwrap().len(), 2);
    assert_eq!(after["trees"][1]["id"], json!(made.0));
    store
        .undo(Some(&site()), &author("ana", 2))
        .unwrap()
        .unwrap();
    assert_eq!(store.read().site_json(&site()).unwrap(), before);
    store
        .redo(Some(&site()), &author("ana", 3))
        .unwrap()
        .unwrap();
    assert_eq!(store.read().site_json(&site()).unwrap(), after);
}

#[test]
fn undo_leaves_what_another_has_changed_since() {
    let (mut one, mut two) = two_phones();
    set_tag(&mut one, "ana", 1, "7");
    meet(&mut one, &mut two);
    set_tag(&mut two, "ben", 2, "8");
    meet(&mut one, &mut two);
    one.undo(Some(&site()), &author("ana", 3)).unwrap().unwrap();
    assert_eq!(tag(&one, "t1"), "8");
}

#[test]
fn values_nobody_replaced_stand_side_by_side_until_settled_and_undo_parts_them_again() {
    let (mut one, mut two) = two_phones();
    set_tag(&mut one, "ana", 1, "7");
    set_tag(&mut two, "ben", 2, "8");
    meet(&mut one, &mut two);
    for store in [&one, &two] {
        let standing = store.read().standing(Some(&site())).unwrap();
        let values: Vec<&Value> = standing[0]
            .values
            .iter()
            .map(|value| &value.value)
            .collect();
        assert_eq!(
            (standing.len(), values),
            (1, vec![&json!("7"), &json!("8")])
        );
        assert_eq!(tag(store, "t1"), "8");
    }
    let loaded = one.read().load_site(&site()).unwrap();
    let other = &loaded.standing[0].values[0];
    let with_other = loaded.with_value(&loaded.standing[0], other).unwrap();
    assert_eq!(with_other.site.trees[0].tag, "7");
    assert_eq!(loaded.file.site.trees[0].tag, "8");
    set_tag(&mut one, "ana", 3, "7");
    meet(&mut one, &mut two);
    assert!(two.read().standing(Some(&site())).unwrap().is_empty());
    assert_eq!(tag(&two, "t1"), "7");
    one.undo(Some(&site()), &author("ana", 4)).unwrap().unwrap();
    let standing = one.read().standing(Some(&site())).unwrap();
    assert_eq!(standing[0].values.len(), 2);
}

#[test]
fn the_same_value_from_two_people_is_no_dispute() {
    let (mut one, mut two) = two_phones();
    set_tag(&mut one, "ana", 1, "7");
    set_tag(&mut two, "ben", 2, "7");
    meet(&mut one, &mut two);
    assert!(one.read().standing(Some(&site())).unwrap().is_empty());
}

/// Ana removes a tree at one minute, Ben inspects it at another; neither knows of the other.
fn removed_and_inspected(removed_at: i64, inspected_at: i64) -> (Store, Store) {
    let (mut one, mut two) = two_phones();
    let remove = |edit: &mut Edit<'_>| edit.remove(Noun::Tree, &Id::from("t1"));
    one.edit(&author("ana", removed_at), remove).unwrap();
    two.edit(&author("ben", inspected_at), |edit| {
        let finding = json!({"code": "hanger", "part": "crown", "grade": 3});
        edit.create(Noun::Finding, Some(&Id::from("i1")), finding)
            .map(|_| ())
    })
    .unwrap();
    meet(&mut one, &mut two);
    (one, two)
}

#[test]
fn what_one_removed_and_another_inspected_does_not_vanish_silently() {
    // Also where the inspection is the earlier of the two.
    for (removed_at, inspected_at, stays) in
        [(1, 2, true), (2, 1, true), (1, 2, false), (2, 1, false)]
    {
        let (mut one, mut two) = removed_and_inspected(removed_at, inspected_at);
        for store in [&one, &two] {
            let found = store.read().load_site(&site()).unwrap().removed_but_changed;
            assert_eq!((found.len(), found[0].changed_by.as_str()), (1, "ben"));
        }
        let settle = |edit: &mut Edit<'_>| edit.settle_removal(Noun::Tree, &Id::from("t1"), stays);
        one.edit(&author("ana", 3), settle).unwrap();
        meet(&mut one, &mut two);
        for store in [&one, &two] {
            let loaded = store.read().load_site(&site()).unwrap();
            assert!(loaded.removed_but_changed.is_empty() && loaded.standing.is_empty());
            assert_eq!(loaded.file.site.trees.len(), if stays { 2 } else { 1 });
        }
    }
}

#[test]
fn what_was_known_when_it_was_removed_is_no_dispute() {
    let (mut one, mut two) = two_phones();
    set_tag(&mut two, "ben", 5, "7");
    meet(&mut one, &mut two);
    let remove = |edit: &mut Edit<'_>| edit.remove(Noun::Tree, &Id::from("t1"));
    let done = one.edit(&author("ana", 6), remove).unwrap();
    assert_eq!(done.changes, 1, "what she knew is nothing she entered");
    meet(&mut one, &mut two);
    for store in [&one, &two] {
        let loaded = store.read().load_site(&site()).unwrap();
        assert!(loaded.removed_but_changed.is_empty() && loaded.unread.is_empty());
    }
}

#[test]
fn a_removed_site_on_which_somebody_worked_is_told_in_the_book() {
    let (mut one, mut two) = two_phones();
    let remove = |edit: &mut Edit<'_>| edit.remove(Noun::Site, &site());
    one.edit(&author("ana", 2), remove).unwrap();
    set_tag(&mut two, "ben", 1, "7");
    meet(&mut one, &mut two);
    for store in [&mut one, &mut two] {
        let book = store.read().load_book().unwrap();
        assert_eq!(book.removed_but_changed[0].noun, "site");
        assert!(book.sites.is_empty());
    }
    let keep = |edit: &mut Edit<'_>| edit.settle_removal(Noun::Site, &site(), true);
    one.edit(&author("ana", 3), keep).unwrap();
    assert_eq!(tag(&one, "t1"), "7");
    let book = one.read().load_book().unwrap();
    assert!(book.removed_but_changed.is_empty() && book.sites.len() == 1);
}

#[test]
fn what_a_newer_version_wrote_is_kept_named_and_passed_on() {
    let mut store = book();
    let mut newer = all(&store)[0].clone();
    let set = |change: &mut Change, noun: &str, record: &str, field: &str, value: Value| {
        change.id = format!("new {noun} {field}");
        change.noun = noun.to_owned();
        change.record = record.to_owned();
        change.field = field.to_owned();
        change.value = value;
        change.site = Some("s".to_owned());
        change.hlc = "ffff000000000000".to_owned();
        change.clone()
    };
    let changes = [
        set(&mut newer, "tree", "t1", "resonance_hz", json!(3.5)),
        set(&mut newer, "tree", "t1", "way", json!("by_balloon")),
        set(&mut newer, "root_plate", "r1", "depth_m", json!(1)),
    ];
    let absorbed = store.absorb(&changes, author("", 1).at).unwrap();
    assert!(absorbed.taken == 3 && absorbed.ahead_ms.is_some());
    let loaded = store.read().load_site(&site()).unwrap();
    assert_eq!(loaded.file.site.trees[0].way, None);
    let unread: Vec<&str> = loaded
        .unread
        .iter()
        .map(|unread| unread.field.as_str())
        .collect();
    assert_eq!(unread, ["depth_m", "resonance_hz", "way"]);
    let passed_on = store.read().changes_of_site(&site()).unwrap();
    assert!(changes.iter().all(|change| passed_on.contains(change)));
}

#[test]
fn two_sites_with_the_same_short_ids_do_not_meet() {
    let mut store = book();
    let mut other = file();
    other.site.id = Id::from("s2");
    for _ in 0..2 {
        store.put_site_file(&author("ana", 1), &other).unwrap();
    }
    let first = store.read().load_site(&site()).unwrap().file;
    let second = store.read().load_site(&Id::from("s2")).unwrap().file;
    assert_eq!(first, file());
    assert_eq!(second.site.trees.len(), 2);
    assert_ne!(second.site.trees[0].id, first.site.trees[0].id);
}

#[test]
fn bad_edits_are_refused_whole() {
    let mut store = book();
    let before = all(&store).len();
    let t1 = Id::from("t1");
    type Act = Box<dyn Fn(&mut Edit<'_>) -> Result<(), BookError>>;
    let refused: [Act; 5] = [
        Box::new(|edit| edit.set(Noun::Tree, &Id::from("t1"), "tag", json!(7))),
        Box::new(|edit| edit.set(Noun::Tree, &Id::from("t1"), "way", json!("by_balloon"))),
        Box::new(|edit| edit.set(Noun::Tree, &Id::from("t1"), "tag", Value::Null)),
        Box::new(|edit| {
            edit.create(Noun::Tree, Some(&site()), json!({"id": "t2", "tag": "9"}))
                .map(|_| ())
        }),
        Box::new(|edit| {
            edit.create(Noun::Finding, Some(&Id::from("i1")), json!({"grade": 1}))
                .map(|_| ())
        }),
    ];
    for act in refused {
        let fault = store
            .edit(&author("ana", 1), |edit| {
                edit.set(Noun::Tree, &t1, "note", json!("lost with the rest"))?;
                act(edit)
            })
            .unwrap_err();
        assert!(matches!(fault, BookError::Refused { .. }), "{fault:?}");
    }
    let missing = store.edit(&author("ana", 1), |edit| {
        edit.remove(Noun::Tree, &Id::from("t9"))
    });
    assert!(matches!(missing, Err(BookError::NotFound { .. })));
    assert_eq!(all(&store).len(), before);
}

#[test]
fn history_tells_who_and_when() {
    let mut store = book();
    set_tag(&mut store, "ben", 5, "7");
    let history = store.read().history(Noun::Tree, &Id::from("t1")).unwrap();
    let last = history.last().unwrap();
    assert_eq!(
        (last.person.as_str(), last.utc_ms()),
        ("ben", author("", 5).at.utc_ms)
    );
    assert_eq!(last.replaces.len(), 1);
}

#[test]
fn settings_and_answers_stand_outside_the_log() {
    let mut store = book();
    let before = all(&store).len();
    store.set_setting("language", "fr").unwrap();
    let answer = ("key".to_owned(), "{}".to_owned());
    store.keep_judgements(&site(), &[answer]).unwrap();
    assert_eq!(
        store.read().setting("language").unwrap().as_deref(),
        Some("fr")
    );
    assert_eq!(
        store.read().kept_judgement("key").unwrap().as_deref(),
        Some("{}")
    );
    store.forget_judgements(&site()).unwrap();
    assert_eq!(store.read().kept_judgement("key").unwrap(), None);
    assert_eq!(all(&store).len(), before);
}
