//! Settings, codes of the codebook, values of the rule set, and their undo.

use bolewalk_core::pages::{CodebookPage, CommandKind, EntryValue, Page, PageAddress, RuleOfSet};
use bolewalk_core::record::{Id, Theme, Verdict};
use bolewalk_core::store::Store;
use bolewalk_core::words::UnitSystem;

use super::{Hand, MORNING, choice, here, number, refused, words};

impl Hand {
    fn codebook(&self) -> CodebookPage {
        match self.book.page(PageAddress::Codebook).unwrap() {
            Page::Codebook(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn rule(&self, id: &str) -> RuleOfSet {
        let rule_set = Id::from("us");
        let Page::RuleSet(page) = self.book.page(PageAddress::RuleSet { rule_set }).unwrap() else {
            panic!("no rule set");
        };
        let rows = page.groups.into_iter().flat_map(|group| group.rows);
        rows.into_iter().find(|row| row.id == id).unwrap()
    }
}

#[test]
fn settings_are_this_phones_and_outlive_a_restart() {
    let (folder, hand) = here();
    let set = [
        ("settings.theme", choice("bright_sun")),
        ("settings.text_size", number("130")),
        ("settings.left_hand", EntryValue::YesNo { yes: true }),
        ("settings.language", choice("spanish")),
    ];
    let nobody = Id::default();
    hand.act(CommandKind::ChangeSettings, &nobody, &set)
        .unwrap();
    let too_large = [("settings.text_size", number("151"))];
    let outcome = hand.act(CommandKind::ChangeSettings, &nobody, &too_large);
    assert_eq!(refused(outcome), "fault.out-of-range");
    assert!(
        !hand
            .search(None, "")
            .offers
            .iter()
            .any(|offer| { offer.command == CommandKind::Undo && offer.enabled })
    );
    drop(hand);
    let hand = Hand::at(&folder.path().join("book"));
    let settings = hand.book.settings().unwrap();
    let look = (settings.theme, settings.text_size_pct, settings.left_hand);
    assert_eq!(look, (Theme::BrightSun, 130.0, true));
    assert_eq!(hand.search(None, "").title, "Cuaderno de campo");
}

#[test]
fn a_new_phone_speaks_its_own_language_until_somebody_chooses() {
    let (folder, hand) = here();
    hand.book.meet_phone("es-MX".to_owned()).unwrap();
    assert_eq!(hand.search(None, "").title, "Cuaderno de campo");
    let settings = hand.book.settings().unwrap();
    assert_eq!(settings.units, UnitSystem::Metric);
    let english = [("settings.language", choice("english"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &english)
        .unwrap();
    drop(hand);
    let hand = Hand::at(&folder.path().join("book"));
    hand.book.meet_phone("es-MX".to_owned()).unwrap();
    assert_eq!(hand.search(None, "").title, "Field book");
}

#[test]
fn settings_outlive_the_damage_of_the_book() {
    let (folder, hand) = here();
    hand.book.meet_phone("es-MX".to_owned()).unwrap();
    let sun = [("settings.theme", choice("bright_sun"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &sun)
        .unwrap();
    drop(hand);
    let book = folder.path().join("book");
    std::fs::write(book.join("field-book.db"), "no database").unwrap();
    let hand = Hand::at(&book);
    assert_eq!(hand.book.settings().unwrap().theme, Theme::BrightSun);
    let page = hand.search(None, "");
    assert_eq!(page.title, "Cuaderno de campo");
    assert!(page.notices[0].contains("Compartir los archivos dañados"));
    let mut offers = page.offers.iter();
    assert!(offers.any(|offer| offer.command == CommandKind::WriteDamaged));
    let to = folder.path().join("damaged.zip");
    hand.book.write_damaged(to.display().to_string()).unwrap();
    let bytes = std::fs::read(&to).unwrap();
    assert!(bytes.starts_with(b"PK"), "the files are handed on");
}

#[test]
fn settings_of_an_earlier_version_are_taken_over() {
    let (folder, hand) = here();
    drop(hand);
    let book = folder.path().join("book");
    let store = Store::open(&book, "phone-1", MORNING).unwrap();
    let kept = r#"{"language":"spanish","units":"metric","theme":"dark"}"#;
    store.set_setting("reader", kept).unwrap();
    drop(store);
    for _ in 0..2 {
        let hand = Hand::at(&book);
        hand.book.meet_phone("en-US".to_owned()).unwrap();
        let settings = hand.book.settings().unwrap();
        let chosen = (settings.units, settings.theme);
        assert_eq!(chosen, (UnitSystem::Metric, Theme::Dark));
        assert_eq!(hand.search(None, "").title, "Cuaderno de campo");
        drop(hand);
        assert!(book.join("settings.json").is_file());
    }
}

#[test]
fn a_code_is_renamed_retired_and_moved_and_its_meaning_stays() {
    let (_folder, hand) = here();
    let (_, tree, inspection) = hand.site_with_tree();
    let hanger = Id::from("hanger");
    let before = hand.codebook();
    let name = [("code.name", words("Widow-maker"))];
    hand.act(CommandKind::ChangeCode, &hanger, &name).unwrap();
    let found = |page: &CodebookPage, id: &str| {
        let codes = page.codes.iter().enumerate();
        let mut codes = codes.filter(|(_, code)| code.id.as_str() == id);
        codes.next().map(|(at, code)| (at, code.clone()))
    };
    let (at, code) = found(&hand.codebook(), "hanger").unwrap();
    assert_eq!(code.name, "Widow-maker");
    assert_eq!(at, found(&before, "hanger").unwrap().0);
    assert!(code.detail.contains("means: hanger"), "{}", code.detail);
    // A hanger over the route bars climbing whatever it is called (the method, section 3).
    let finding = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("1")),
    ];
    hand.made(CommandKind::AddFinding, &inspection, &finding);
    let page = hand.tree_page(&tree);
    assert_eq!(page.verdict, Verdict::Barred);
    assert_eq!(page.findings[0].words, "Widow-maker");

    hand.act(CommandKind::MoveCodeUp, &hanger, &[]).unwrap();
    assert_eq!(found(&hand.codebook(), "hanger").unwrap().0, at - 1);
    hand.act(CommandKind::MoveCodeDown, &hanger, &[]).unwrap();
    hand.act(CommandKind::MoveCodeDown, &hanger, &[]).unwrap();
    assert_eq!(found(&hand.codebook(), "hanger").unwrap().0, at + 1);

    hand.act(CommandKind::RetireCode, &hanger, &[]).unwrap();
    let page = hand.codebook();
    assert!(found(&page, "hanger").is_none());
    assert_eq!(page.retired[0].name, "Widow-maker");
    hand.undo();
    hand.act(CommandKind::RetireCode, &hanger, &[]).unwrap();
    hand.act(CommandKind::BringCodeBack, &hanger, &[]).unwrap();
    assert_eq!(
        found(&hand.codebook(), "hanger").unwrap().1.name,
        "Widow-maker"
    );
}

#[test]
fn undo_of_the_first_change_leaves_the_starter_code_as_it_ships() {
    let (_folder, hand) = here();
    let before = hand.codebook().codes;
    let decay = Id::from("decay");
    let rot = [
        ("code.name", words("Rot")),
        ("code.grade_1", words("A soft spot.")),
    ];
    hand.act(CommandKind::ChangeCode, &decay, &rot).unwrap();
    hand.undo();
    let names = |codes: &[bolewalk_core::pages::CodeOfBook]| -> Vec<String> {
        codes.iter().map(|code| code.name.clone()).collect()
    };
    assert_eq!(names(&hand.codebook().codes), names(&before));
    // Changed anew, nothing of what was undone comes back.
    let stops = [("code.stops_from", choice("2"))];
    hand.act(CommandKind::ChangeCode, &decay, &stops).unwrap();
    let codes = hand.codebook().codes;
    let code = codes.iter().find(|code| code.id == decay).unwrap();
    assert_ne!(code.name, "Rot");
    assert_ne!(code.grades[0].sentence, "A soft spot.");
    assert_eq!(code.grades.iter().filter(|grade| grade.stops).count(), 2);
}

#[test]
fn an_own_code_has_a_name_of_its_own_and_no_grade_without_a_sentence() {
    let (_folder, hand) = here();
    let nobody = Id::default();
    let own = |name: &str| {
        [
            ("code.name", words(name)),
            ("code.kind", choice("wound")),
            ("code.grade_2", words("Bark off on a hand's width.")),
            ("code.stops_from", choice("3")),
        ]
    };
    let code = hand.made(CommandKind::AddCode, &nobody, &own("Strimmer scar"));
    let twice = hand.act(CommandKind::AddCode, &nobody, &own("strimmer SCAR"));
    assert_eq!(refused(twice), "fault.name-twice");
    let page = hand.codebook();
    let last = page.codes.last().unwrap();
    assert_eq!((&last.id, last.name.as_str()), (&code, "Strimmer scar"));
    let missing = |grade: usize| last.grades[grade].sentence.contains("no sentence yet");
    assert!(missing(0) && !missing(1) && missing(2));
}

#[test]
fn a_house_value_is_set_by_name_within_its_range_and_set_back() {
    let (_folder, hand) = here();
    let wind = Id::from("us/stop.wind_force");
    let value = |typed: &str| vec![("house_value.value", number(typed))];
    let outcome = hand.act(CommandKind::ChangeRule, &wind, &value("4"));
    // The caution stands at force 4: the stop stays above it.
    assert_eq!(refused(outcome), "fault.needed");
    let by = |typed: &str| {
        let mut entries = value(typed);
        entries.push(("house_value.by", words("Ana")));
        entries
    };
    let outcome = hand.act(CommandKind::ChangeRule, &wind, &by("4"));
    assert_eq!(refused(outcome), "fault.rules-cross");
    let outcome = hand.act(CommandKind::ChangeRule, &wind, &by("7"));
    assert_eq!(refused(outcome), "fault.out-of-range");
    hand.act(CommandKind::ChangeRule, &wind, &by("6")).unwrap();
    let row = hand.rule("stop.wind_force");
    assert!(row.is_changed && row.is_house && row.value.contains('6'));
    assert!(row.changed.contains("by Ana"), "{}", row.changed);
    hand.act(CommandKind::ResetRule, &wind, &[]).unwrap();
    assert!(hand.rule("stop.wind_force").value.contains('5'));
    hand.undo();
    assert!(hand.rule("stop.wind_force").is_changed);

    // 29 CFR 1910.266: two tree lengths, nobody's to change.
    let fell = Id::from("us/zone.fell.everyone_lengths");
    let outcome = hand.act(CommandKind::ChangeRule, &fell, &by("1"));
    assert_eq!(refused(outcome), "fault.rule-fixed");
    let row = hand.rule("zone.fell.everyone_lengths");
    assert!(row.offers.is_empty() && row.source.contains("29 CFR 1910.266"));
    assert!(!row.is_house);
}
