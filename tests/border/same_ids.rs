//! Site files with short ids on two phones: one property stays one, two stay two.

use std::path::{Path, PathBuf};

use bolewalk_core::intake::write_site_file;
use bolewalk_core::record::Id;
use bolewalk_core::store::Store;

use super::Hand;

/// A site file with the short ids that a template leaves: everybody's first tree is `t1`.
fn template(folder: &Path, name: &str, lat_deg: f64, climber: &str, girth_cm: f64) -> PathBuf {
    let path = folder.join(format!("{name}.json"));
    let text = serde_json::json!({
        "format": 1,
        "site": {"id": "s1", "name": "Front garden", "trees": [
            {"id": "t1", "tag": "1", "species": "Quercus robur",
             "position": {"lat_deg": lat_deg, "lon_deg": -71.0},
             "inspections": [{"id": "i1", "level": "full_check", "by": "p1",
                "girth": {"girth_cm": girth_cm}}]}]},
        "crew": [{"id": "p1", "name": climber, "sign_offs": [
            {"id": "o1", "skill": "first_aid", "by": "Bea", "on": "2026-03-01"}]}],
    });
    std::fs::write(&path, text.to_string()).unwrap();
    path
}

fn brought_in(hand: &Hand, file: &Path) -> Id {
    let path = file.display().to_string();
    hand.book.import_site_file(path).unwrap().record
}

/// Hands a site from one phone to the other; gives how much is to be settled there.
fn handed(from: &Hand, to: &Hand, site: &Id, folder: &Path) -> u32 {
    let pack = folder.join(format!("{site}.zip")).display().to_string();
    from.book.write_pack(site.0.clone(), pack.clone()).unwrap();
    to.book.read_pack(pack).unwrap().to_settle
}

#[test]
fn two_properties_of_one_template_stay_two_with_their_own_people() {
    let folder = tempfile::tempdir().unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    let there = Hand::on(&folder.path().join("there"), "phone-2").unwrap();
    let mine = brought_in(
        &here,
        &template(folder.path(), "a", 42.0, "Ana Ruiz", 150.0),
    );
    let theirs = brought_in(&there, &template(folder.path(), "b", 43.0, "Ben Oak", 90.0));
    assert_ne!(mine, theirs);
    assert_eq!(handed(&there, &here, &theirs, folder.path()), 0);
    assert_eq!(handed(&here, &there, &mine, folder.path()), 0);
    for hand in [&here, &there] {
        assert_eq!(hand.book_page().sites.len(), 2);
        // Each keeps the sign-off that is theirs: nobody climbs on another's.
        let people = hand.people_page().people;
        let mut names: Vec<&str> = people.iter().map(|one| one.name.as_str()).collect();
        names.sort_unstable();
        assert_eq!(names, ["Ana Ruiz", "Ben Oak"]);
        let book = hand.book_page();
        assert!(book.unsettled.is_empty() && book.notices.is_empty());
    }
}

#[test]
fn one_property_brought_in_on_two_phones_is_one_and_a_second_time_updates_it() {
    let folder = tempfile::tempdir().unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    let there = Hand::on(&folder.path().join("there"), "phone-2").unwrap();
    let file = template(folder.path(), "a", 42.0, "Ana Ruiz", 150.0);
    let mine = brought_in(&here, &file);
    assert_eq!(brought_in(&there, &file), mine);
    assert_eq!(handed(&there, &here, &mine, folder.path()), 0);
    assert_eq!(here.site_page(&mine).trees.len(), 1);
    assert_eq!(here.people_page().people.len(), 1);

    // The tree was put right by a metre and measured again; the file is brought in once more.
    let moved = template(folder.path(), "a", 42.000_01, "Ana Ruiz", 160.0);
    assert_eq!(brought_in(&here, &moved), mine);
    assert_eq!(here.book_page().sites.len(), 1);
    let tree = here.site_page(&mine).trees[0].id.clone();
    let lines = here.tree_page(&tree).lines;
    let girth = lines.iter().find(|line| line.id == "tree.girth").unwrap();
    // 160 cm are 63.0 in (NIST SP 811: 2.54 cm in an inch).
    assert!(girth.words.contains("5 ft 3 in"), "{}", girth.words);
}

#[test]
fn what_goes_out_as_a_site_file_comes_in_as_the_same_property_elsewhere() {
    let folder = tempfile::tempdir().unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    let there = Hand::on(&folder.path().join("there"), "phone-2").unwrap();
    let file = template(folder.path(), "a", 42.0, "Ana Ruiz", 150.0);
    let mine = brought_in(&here, &file);
    let out = folder.path().join("out.json");
    drop(here);
    let store = Store::open(&folder.path().join("here"), "phone-1", super::MORNING).unwrap();
    let loaded = store.read().load_site(&mine).unwrap();
    drop(store);
    write_site_file(&loaded.file, &out).unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    assert_eq!(brought_in(&there, &out), mine);
    assert_eq!(handed(&there, &here, &mine, folder.path()), 0);
    let again = here.book.import_site_file(out.display().to_string());
    assert_eq!(again.unwrap().changes, 0);
}
