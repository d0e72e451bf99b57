//! Every list of every page has a heading, and an empty one says what to do first.

use std::collections::BTreeSet;

use bolewalk_core::pages::{CommandKind, Page, PageAddress, PageHeading};
use bolewalk_core::record::Id;
use serde_json::Value;

use super::{Hand, choice, here, number, pages_of_the_book, words};

/// Every kind of page of a small book.
fn pages(hand: &Hand) -> Vec<Page> {
    let (site, tree, inspection) = hand.site_with_tree();
    let person = hand.add_person("Ana");
    let finding = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    let finding = hand.made(CommandKind::AddFinding, &inspection, &finding);
    let section = [
        ("section.height", number("1 m")),
        ("section.girth", number("200 cm")),
    ];
    let section = hand.made(CommandKind::AddSection, &inspection, &section);
    let anchor = [
        ("anchor.name", words("A")),
        ("anchor.height", number("12 m")),
        ("anchor.diameter", number("20 cm")),
        ("anchor.diameter_read", choice("by_eye")),
    ];
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &anchor);
    let of_the_site = [
        PageAddress::site(&site),
        PageAddress::Tree { tree: tree.clone() },
        PageAddress::Finding { finding },
        PageAddress::StemSection { section },
        PageAddress::Anchor { anchor },
        PageAddress::Aloft { tree: tree.clone() },
        PageAddress::Judgement { tree: tree.clone() },
        PageAddress::Compare { tree },
        PageAddress::HandOver { site },
    ];
    pages_of_the_book(person)
        .into_iter()
        .chain(of_the_site)
        .map(|address| hand.book.page(address).unwrap())
        .collect()
}

/// The lists of a page as a shell gets it, each with whether it is empty, and the headings.
fn lists(page: &Page) -> (Vec<(String, bool)>, Vec<PageHeading>) {
    let json = serde_json::to_value(page).unwrap();
    let (_, fields) = json.as_object().unwrap().iter().next().unwrap();
    let of = |(name, value): (&String, &Value)| Some((name.clone(), value.as_array()?.is_empty()));
    let fields = fields.as_object().unwrap();
    let lists = fields.iter().filter(|(name, _)| *name != "headings");
    // What there is one of or none has a heading where it stands by itself.
    let of = move |(name, value): (&String, &Value)| match name.as_str() {
        "score" | "next_measurement" => Some((name.clone(), value.is_null())),
        _ => of((name, value)),
    };
    let heading = |value: &Value| PageHeading {
        list: value["list"].as_str().unwrap().to_owned(),
        words: value["words"].as_str().unwrap().to_owned(),
        empty: value["empty"].as_str().unwrap().to_owned(),
    };
    let headings = fields["headings"].as_array().unwrap();
    (
        lists.filter_map(of).collect(),
        headings.iter().map(heading).collect(),
    )
}

#[test]
fn every_list_of_every_page_has_its_heading_in_both_languages() {
    let (_folder, hand) = here();
    for language in ["english", "spanish"] {
        let language = [("settings.language", choice(language))];
        hand.act(CommandKind::ChangeSettings, &Id::default(), &language)
            .unwrap();
        for page in pages(&hand) {
            let (lists, headings) = lists(&page);
            let named: Vec<&str> = headings.iter().map(|one| one.list.as_str()).collect();
            let there: BTreeSet<&str> = lists.iter().map(|(name, _)| name.as_str()).collect();
            assert_eq!(named.iter().copied().collect::<BTreeSet<_>>(), there);
            assert_eq!(named.len(), there.len(), "none twice: {named:?}");
            let json = serde_json::to_string(&page).unwrap();
            assert!(!json.contains("\" · "), "a part is missing: {json}");
            for heading in &headings {
                let words = &heading.words;
                assert!(!words.is_empty() && !words.contains('⟦'), "{heading:?}");
                let mut of = lists.iter().filter(|(name, _)| *name == heading.list);
                let holds_nothing = of.any(|(_, empty)| *empty);
                assert!(holds_nothing || heading.empty.is_empty(), "{heading:?}");
            }
        }
    }
}

#[test]
fn an_empty_list_says_what_to_do_first_until_it_holds_something() {
    let (_folder, hand) = here();
    let (site, tree, inspection) = hand.site_with_tree();
    let said = |headings: &[PageHeading], list: &str| {
        let mut headings = headings.iter();
        headings.find(|one| one.list == list).unwrap().empty.clone()
    };
    let permissions = |hand: &Hand| said(&hand.site_page(&site).headings, "permissions");
    assert!(permissions(&hand).starts_with("Nothing is asked yet."));
    let kind = [("permission.kind", choice("bats"))];
    hand.made(CommandKind::AddPermission, &site, &kind);
    assert_eq!(permissions(&hand), "");
    let findings = |hand: &Hand| said(&hand.tree_page(&tree).headings, "findings");
    assert!(findings(&hand).contains("not sound"));
    let finding = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    hand.made(CommandKind::AddFinding, &inspection, &finding);
    assert_eq!(findings(&hand), "");
}
