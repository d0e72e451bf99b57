//! What was noted is read where it belongs.

use bolewalk_core::pages::{CommandKind, Page, PageAddress, PageLine};

use super::{choice, here, number, words};

fn says(lines: &[PageLine], note: &str) -> bool {
    lines.iter().any(|line| line.words == note)
}

#[test]
fn every_note_is_read_on_the_page_of_what_it_is_about() {
    let (_folder, hand) = here();
    let (site, tree, inspection) = hand.site_with_tree();
    let text = |input: &'static str, text: &str| (input, words(text));
    hand.made(
        CommandKind::ChangeSite,
        &site,
        &[text("site.note", "Dog in the yard")],
    );
    assert!(says(&hand.site_page(&site).lines, "Dog in the yard"));
    let asked = [
        ("permission.kind", choice("bats")),
        text("permission.note", "Call again in June"),
    ];
    hand.made(CommandKind::AddPermission, &site, &asked);
    let permission = &hand.site_page(&site).permissions[0];
    assert!(permission.detail.ends_with(" · Call again in June"));
    hand.made(
        CommandKind::ChangeTree,
        &tree,
        &[text("tree.note", "Swing on the west limb")],
    );
    let page = hand.tree_page(&tree);
    assert_eq!(page.notes.len(), 1);
    assert!(says(&page.notes, "Swing on the west limb"));
    let anchor = [
        text("anchor.name", "A"),
        ("anchor.height", number("12 m")),
        ("anchor.diameter", number("20 cm")),
        ("anchor.diameter_read", choice("by_eye")),
        text("anchor.note", "Left of the old cut"),
    ];
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &anchor);
    match hand.book.page(PageAddress::Anchor { anchor }).unwrap() {
        Page::Anchor(page) => assert!(says(&page.lines, "Left of the old cut")),
        other => panic!("{other:?}"),
    }
    let section = [
        ("section.height", number("1 m")),
        ("section.girth", number("200 cm")),
        text("section.note", "Conks all around"),
    ];
    let section = hand.made(CommandKind::AddSection, &inspection, &section);
    match hand
        .book
        .page(PageAddress::StemSection { section })
        .unwrap()
    {
        Page::StemSection(page) => assert!(says(&page.lines, "Conks all around")),
        other => panic!("{other:?}"),
    }
}
