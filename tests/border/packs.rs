//! Packs between two phones: everything of a site comes across, and comes back.

use std::path::{Path, PathBuf};

use bolewalk_core::field_book::PackTaken;
use bolewalk_core::pages::{CommandKind, EntryValue};
use bolewalk_core::record::{Id, Verdict};

use super::{Hand, choice, words};

/// A pack of a site, written by this hand.
fn packed(hand: &Hand, site: &Id, folder: &Path, name: &str) -> PathBuf {
    let path = folder.join(name);
    let to = path.display().to_string();
    hand.book.write_pack(site.0.clone(), to).unwrap();
    path
}

fn taken(hand: &Hand, pack: &Path) -> PackTaken {
    hand.book.read_pack(pack.display().to_string()).unwrap()
}

fn photo(name: &str) -> EntryValue {
    let root = env!("CARGO_MANIFEST_DIR");
    EntryValue::PhotoFile {
        path: format!("{root}/fixtures/photos/{name}"),
    }
}

#[test]
fn a_site_goes_over_with_people_and_photos_and_comes_back_with_what_was_added() {
    let folder = tempfile::tempdir().unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    let there = Hand::on(&folder.path().join("there"), "phone-2").unwrap();
    let nobody = Id::default();
    here.made(
        CommandKind::AddPerson,
        &nobody,
        &[("person.name", words("Ana"))],
    );
    let (site, tree, inspection) = here.site_with_tree();
    let shot = [("photo.file", photo("progressive.jpg"))];
    here.made(CommandKind::AddPhoto, &inspection, &shot);

    let pack = packed(&here, &site, folder.path(), "over.zip");
    let came = taken(&there, &pack);
    assert_eq!((came.record.clone(), came.photos), (site.clone(), 1));
    assert_eq!((came.known, came.to_settle), (0, 0));
    assert_eq!(came.notices, Vec::<String>::new());
    assert!(came.words.contains("one new photo"), "{}", came.words);
    assert_eq!(there.book_page().sites.len(), 1);
    assert_eq!(there.people_page().people.len(), 1);
    let shown = &there.tree_page(&tree).photos[0];
    assert!(Path::new(&shown.small_path).is_file(), "{shown:?}");
    // Both phones judge alike.
    assert_eq!(
        there.tree_page(&tree).verdict,
        here.tree_page(&tree).verdict
    );

    let again = taken(&there, &pack);
    assert_eq!((again.changes, again.photos), (0, 0));
    assert_eq!(again.known, came.changes);
    assert!(again.words.contains("Nothing new"), "{}", again.words);

    let dead = [("tree.life", choice("dead"))];
    there
        .act(CommandKind::RecordMeasures, &inspection, &dead)
        .unwrap();
    let back = taken(&here, &packed(&there, &site, folder.path(), "back.zip"));
    assert_eq!((back.changes, back.photos), (1, 0));
    assert_eq!(here.tree_page(&tree).verdict, Verdict::Barred);
    let third = taken(&there, &packed(&here, &site, folder.path(), "third.zip"));
    assert_eq!(third.changes, 0, "there is nothing left to hand over");
}

#[test]
fn what_both_entered_is_told_and_undo_takes_back_only_ones_own() {
    let folder = tempfile::tempdir().unwrap();
    let here = Hand::on(&folder.path().join("here"), "phone-1").unwrap();
    let there = Hand::on(&folder.path().join("there"), "phone-2").unwrap();
    let (site, tree, inspection) = here.site_with_tree();
    taken(&there, &packed(&here, &site, folder.path(), "1.zip"));
    for (hand, life) in [(&here, "alive"), (&there, "dead")] {
        let entry = [("tree.life", choice(life))];
        hand.act(CommandKind::RecordMeasures, &inspection, &entry)
            .unwrap();
    }
    let came = taken(&here, &packed(&there, &site, folder.path(), "2.zip"));
    assert_eq!(came.to_settle, 1);
    assert!(came.notices[0].contains("in two ways"), "{came:?}");
    assert_eq!(here.tree_page(&tree).verdict, Verdict::Barred);
    // Undo takes "alive" back; what the other phone entered stays, and stands alone.
    here.act(CommandKind::Undo, &site, &[]).unwrap();
    assert!(here.site_page(&site).unsettled.is_empty());
    assert_eq!(here.tree_page(&tree).verdict, Verdict::Barred);
    let life = here.tree_page(&tree).lines;
    let life = life.iter().find(|line| line.id == "tree.life").unwrap();
    assert_eq!(life.words, "dead");
}
