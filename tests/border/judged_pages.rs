//! The page of a judgement on the demo property: the score with its interval, the next measurement
//! with its offer, who signed and what has changed since.

use std::path::Path;
use std::sync::atomic::AtomicU32;

use bolewalk_core::field_book::{FieldBook, FixedClock};
use bolewalk_core::pages::{CommandKind, JudgementPage, Offer, Page, PageAddress, ScoreOfTree};
use bolewalk_core::record::{Id, Moment, Verdict};
use serde_json::Value;

use super::{Hand, choice};

/// 2026-05-19, 15:00 at UTC−4: the afternoon of the demo's visit.
const AFTERNOON: Moment = Moment {
    utc_ms: 1_779_217_200_000,
    offset_min: -240,
};

/// A field book with the demo property, without its photos.
fn with_the_demo(folder: &Path) -> Hand {
    let clock = FixedClock::at(AFTERNOON).unwrap();
    let path = folder.join("book").display().to_string();
    let book = FieldBook::open_with_clock(path, "phone-1".to_owned(), clock).unwrap();
    let text = include_str!("../../core/src/bin/bolewalk/demo/property.json");
    let mut file: Value = serde_json::from_str(text).unwrap();
    for tree in file["site"]["trees"].as_array_mut().unwrap() {
        for look in tree["inspections"].as_array_mut().unwrap() {
            look.as_object_mut().unwrap().remove("photos");
        }
    }
    let path = folder.join("property.json");
    std::fs::write(&path, file.to_string()).unwrap();
    book.import_site_file(path.display().to_string()).unwrap();
    Hand {
        book,
        taps: AtomicU32::new(0),
    }
}

fn tree(hand: &Hand, tag: &str) -> Id {
    let site = match hand.book_page().sites[0].go_to.clone() {
        PageAddress::Site { site, .. } => site,
        other => panic!("{other:?}"),
    };
    let page = hand.site_page(&site);
    let mut trees = page.trees.into_iter();
    trees.find(|tree| tree.tag == tag).unwrap().id
}

fn judged(hand: &Hand, tree: &Id) -> JudgementPage {
    let address = PageAddress::Judgement { tree: tree.clone() };
    match hand.book.page(address).unwrap() {
        Page::Judgement(page) => page,
        other => panic!("{other:?}"),
    }
}

fn sign(page: &JudgementPage) -> &Offer {
    let mut offers = page.offers.iter();
    let is_sign = |offer: &&Offer| offer.command == CommandKind::SignJudgement;
    offers.find(is_sign).unwrap()
}

/// The first number of a text.
fn figure(words: &str) -> u32 {
    let digits = words.chars().take_while(char::is_ascii_digit);
    digits.collect::<String>().parse().unwrap()
}

fn shares_add_up(score: &ScoreOfTree) {
    let lost: u32 = score.shares.iter().map(|share| figure(&share.words)).sum();
    assert_eq!(lost, 100 - score.points, "{:?}", score.shares);
    assert_eq!(figure(&score.lost), lost);
}

#[test]
fn a_score_says_its_range_what_it_is_not_and_where_its_points_went() {
    let folder = tempfile::tempdir().unwrap();
    let hand = with_the_demo(folder.path());
    let wide = judged(&hand, &tree(&hand, "02")).score.unwrap();
    assert!(wide.low < wide.points && wide.points < wide.high);
    let range = format!("{} of 100, from {} to {}", wide.points, wide.low, wide.high);
    assert_eq!(wide.words, range);
    assert!(wide.about[0].contains("lower end"), "{:?}", wide.about);
    assert!(wide.about[1].contains("no leave to climb"));
    shares_add_up(&wide);
    // Every margin of this tree is beyond the full one in 9 samples of 10.
    let narrow = judged(&hand, &tree(&hand, "01")).score.unwrap();
    assert_eq!(narrow.low, narrow.high);
    assert_eq!(narrow.words, format!("{} of 100", narrow.points));
    assert!(narrow.about[0].contains("came out the same"));
    assert!(narrow.about[0].contains("gives no more points"));
    shares_add_up(&narrow);
}

#[test]
fn the_next_best_measurement_is_taken_where_it_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let hand = with_the_demo(folder.path());
    let tree = tree(&hand, "02");
    let before = judged(&hand, &tree);
    let next = before.next_measurement.unwrap();
    assert!(next.words.contains("stem, north side"), "{next:?}");
    assert!(next.detail.starts_with("Takes about "));
    let seen = &next.offers[0];
    assert_eq!(seen.id, "walk.look.stem_north.seen");
    let (about, token) = (seen.about.clone(), seen.token.clone());
    hand.book
        .act(seen.command, about, seen.fixed.clone(), token)
        .unwrap();
    let after = judged(&hand, &tree);
    assert!(after.score.unwrap().low > before.score.unwrap().low);
    let same = after
        .next_measurement
        .is_some_and(|one| one.words == next.words);
    assert!(!same, "it was taken");
}

#[test]
fn a_signature_is_shown_and_what_has_changed_since() {
    let folder = tempfile::tempdir().unwrap();
    let hand = with_the_demo(folder.path());
    let tree = tree(&hand, "02");
    let unsigned = judged(&hand, &tree);
    assert!(unsigned.signed.is_empty());
    assert!(!sign(&unsigned).enabled && sign(&unsigned).why_not.contains("who you are"));
    let people = hand.people_page().people;
    let holder = [("settings.person", choice(people[0].id.as_str()))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &holder)
        .unwrap();
    assert!(sign(&judged(&hand, &tree)).enabled);
    hand.act(CommandKind::SignJudgement, &tree, &[]).unwrap();
    let page = judged(&hand, &tree);
    let by = format!("Signed by {}, May 19, 2026", people[0].name);
    assert!(page.signed[0].starts_with(&by), "{:?}", page.signed);
    assert_eq!(page.signed[1], "It is the same now.");
    assert!(!sign(&page).enabled && sign(&page).why_not.contains("signed as it stands"));
    let hanger = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    hand.act(CommandKind::FindAloft, &tree, &hanger).unwrap();
    let page = judged(&hand, &tree);
    assert_eq!(page.verdict, Verdict::Barred);
    assert_eq!(page.signed[1], "Changed since:");
    let said = page.signed.join("\n");
    assert!(said.contains("it is “do not climb” now"), "{said}");
    assert!(said.contains("New: ") && sign(&page).enabled, "{said}");
}
