//! What is managed at the desk of the phone: settings, codes, rules, people, gear, search, undo.

use bolewalk_core::error::BookError;
use bolewalk_core::pages::{
    BookPage, CodebookPage, CommandKind, EntryValue, GearPage, GearState, Page, PageAddress,
    PersonPage, RuleOfSet, TrainingState,
};
use bolewalk_core::record::{Id, LatLon, Skill, Theme, Verdict};

use super::{Hand, choice, number, words};

fn here() -> (tempfile::TempDir, Hand) {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    (folder, hand)
}

fn refused(outcome: Result<bolewalk_core::field_book::Done, BookError>) -> String {
    match outcome {
        Err(BookError::Refused { faults }) => faults[0].code.clone(),
        other => panic!("{other:?}"),
    }
}

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

    fn person(&self, person: &Id) -> PersonPage {
        let person = person.clone();
        match self.book.page(PageAddress::Person { person }).unwrap() {
            Page::Person(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn gear(&self) -> GearPage {
        match self.book.page(PageAddress::Gear).unwrap() {
            Page::Gear(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn search(&self, near: Option<LatLon>, search: &str) -> BookPage {
        let search = search.to_owned();
        match self.book.page(PageAddress::Book { near, search }).unwrap() {
            Page::Book(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn add_person(&self, name: &str) -> Id {
        let name = [("person.name", words(name))];
        self.made(CommandKind::AddPerson, &Id::default(), &name)
    }

    fn undo(&self) {
        self.act(CommandKind::Undo, &Id::default(), &[]).unwrap();
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
    let value = |typed: &str| vec![("rule.value", number(typed))];
    let outcome = hand.act(CommandKind::ChangeRule, &wind, &value("4"));
    // The caution stands at force 4: the stop stays above it.
    assert_eq!(refused(outcome), "fault.needed");
    let by = |typed: &str| {
        let mut entries = value(typed);
        entries.push(("rule.by", words("Ana")));
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

#[test]
fn skills_are_confirmed_in_order_by_a_named_other() {
    let (_folder, hand) = here();
    let ben = hand.add_person("Ben");
    let state = |page: &PersonPage, skill: Skill| {
        let found = page.skills.iter().find(|one| one.skill == skill);
        found.unwrap().state
    };
    let page = hand.person(&ben);
    assert_eq!(state(&page, Skill::Inspection), TrainingState::Next);
    assert_eq!(state(&page, Skill::Knot), TrainingState::Later);
    let about = Id(page.skills[0].offers[0].about.clone());
    let by = |name: &str| [("sign_off.by", words(name))];
    let sign =
        |about: &Id, by: &[(&str, EntryValue)]| hand.act(CommandKind::SignOffSkill, about, by);
    assert_eq!(refused(sign(&about, &[])), "fault.needed");
    assert_eq!(refused(sign(&about, &by("bén"))), "fault.signs-off-self");
    sign(&about, &by("Ana")).unwrap();
    let page = hand.person(&ben);
    assert_eq!(state(&page, Skill::Inspection), TrainingState::Confirmed);
    assert_eq!(state(&page, Skill::GearCheck), TrainingState::Next);
    assert!(page.training.starts_with("1 of 14"), "{}", page.training);

    let gripping = page.knots.iter().find(|one| one.words.contains("slides"));
    let about = Id(gripping.unwrap().offers[0].about.clone());
    let timed = [
        ("sign_off.by", words("Ana")),
        ("sign_off.seconds", number("95")),
    ];
    // Ninety-five seconds are noted; an aim is no condition.
    sign(&about, &timed).unwrap();
    let page = hand.person(&ben);
    let gripping = page.knots.iter().find(|one| one.words.contains("slides"));
    let gripping = gripping.unwrap();
    assert_eq!(gripping.state, TrainingState::Confirmed);
    assert!(gripping.detail.contains("95 s"), "{}", gripping.detail);
    let knots = page
        .skills
        .iter()
        .find(|one| one.skill == Skill::Knot)
        .unwrap();
    assert!(!knots.detail.contains("slides") && knots.detail.contains("stopper"));
}

#[test]
fn a_trainees_climbs_are_logged_with_somebody_and_shown_newest_first() {
    let (_folder, hand) = here();
    let ben = hand.add_person("Ben");
    let trainee = [
        ("person.trainee", EntryValue::YesNo { yes: true }),
        ("person.height_limit", number("6")),
    ];
    hand.act(CommandKind::ChangePerson, &ben, &trainee).unwrap();
    let climb = |day: &str, height: &str, with: &str| {
        [
            ("climb_log.on", words(day)),
            ("climb_log.place", words("Hill, tree 7")),
            ("climb_log.height", number(height)),
            ("climb_log.system", choice("moving_rope")),
            ("climb_log.with_whom", words(with)),
        ]
    };
    let alone = hand.act(
        CommandKind::LogClimb,
        &ben,
        &climb("2026-05-01", "3", "BEN"),
    );
    assert_eq!(refused(alone), "fault.climbs-with-self");
    hand.made(
        CommandKind::LogClimb,
        &ben,
        &climb("2026-05-01", "3", "Ana"),
    );
    let high = hand.made(
        CommandKind::LogClimb,
        &ben,
        &climb("2026-05-09", "8", "Ana"),
    );
    let page = hand.person(&ben);
    assert_eq!(page.climbs[0].id, high);
    assert!(page.climbs[0].detail.contains("above the height limit"));
    assert!(!page.climbs[1].detail.contains("above"));
    hand.act(CommandKind::RemoveClimb, &high, &[]).unwrap();
    assert_eq!(hand.person(&ben).climbs.len(), 1);
    hand.undo();
    assert_eq!(hand.person(&ben).climbs.len(), 2);
}

#[test]
fn what_must_not_be_used_comes_first_until_it_is_checked_or_brought_back() {
    let (_folder, hand) = here();
    let nobody = Id::default();
    let add = |name: &str, checked: &str| {
        let gear = [
            ("gear.name", words(name)),
            ("gear.kind", choice("harness")),
            ("gear.last_check", words(checked)),
        ];
        hand.made(CommandKind::AddGear, &nobody, &gear)
    };
    let fine = add("Fine", "2026-05-01");
    let due = add("Due", "2025-10-01");
    let worn = add("Worn", "2026-05-01");
    let shock = [("gear.shock_loaded", EntryValue::YesNo { yes: true })];
    let why = [("gear.out_of_use", words("stitching frayed"))];
    hand.act(CommandKind::PutGearOut, &worn, &why).unwrap();
    let order = |page: &GearPage| -> Vec<(Id, GearState)> {
        let pieces = page.pieces.iter();
        pieces
            .map(|piece| (piece.id.clone(), piece.state))
            .collect()
    };
    let page = hand.gear();
    let expected = vec![
        (due.clone(), GearState::NotToBeUsed),
        (worn.clone(), GearState::OutOfUse),
        (fine.clone(), GearState::InOrder),
    ];
    assert_eq!(order(&page), expected);
    assert!(page.pieces[1].reason.contains("stitching frayed"));
    hand.act(CommandKind::CheckGear, &due, &[]).unwrap();
    hand.act(CommandKind::BringGearBack, &worn, &[]).unwrap();
    let page = hand.gear();
    assert!(
        page.pieces
            .iter()
            .all(|one| one.state == GearState::InOrder)
    );
    assert_eq!(page.lead, "all in order");
    // A shock load bars a piece until it is checked.
    hand.act(CommandKind::ChangeGear, &fine, &shock).unwrap();
    assert_eq!(
        order(&hand.gear())[0],
        (fine.clone(), GearState::NotToBeUsed)
    );
    hand.act(CommandKind::CheckGear, &fine, &[]).unwrap();
    assert!(
        hand.gear()
            .pieces
            .iter()
            .all(|one| one.state == GearState::InOrder)
    );
}

#[test]
fn a_first_start_is_two_taps_from_a_page_of_use() {
    let (_folder, hand) = here();
    let page = hand.search(None, "");
    assert!(page.lead.starts_with("No properties yet."), "{}", page.lead);
    let offer = &page.offers[0];
    assert_eq!(offer.command, CommandKind::AddSite);
    let ready = offer.inputs.iter().find(|input| input.needed).unwrap();
    let name = EntryValue::Words {
        text: "Property of May 14, 2026".to_owned(),
    };
    assert_eq!(ready.current, Some(name));
    // Nothing is typed: the name that is ready is taken.
    let done = hand.act(CommandKind::AddSite, &Id::default(), &[]).unwrap();
    let Some(address) = done.go_to else {
        panic!("no page to go to");
    };
    let Page::Site(page) = hand.book.page(address).unwrap() else {
        panic!("another page");
    };
    assert_eq!(page.title, "Property of May 14, 2026");
    assert!(page.lead.starts_with("No trees yet."), "{}", page.lead);
}

#[test]
fn sites_near_come_first_and_search_forgives_accents() {
    let (_folder, hand) = here();
    let nobody = Id::default();
    let add = |name: &str, client: &str, lat_deg: Option<f64>| {
        let mut entries = vec![("site.name", words(name)), ("site.client", words(client))];
        if let Some(lat_deg) = lat_deg {
            let corner = |at: f64| LatLon {
                lat_deg: lat_deg + at * 0.001,
                lon_deg: -71.12 + at * at * 0.001,
            };
            let points = vec![corner(0.0), corner(1.0), corner(2.0)];
            entries.push(("site.outline", EntryValue::Outline { points }));
        }
        hand.made(CommandKind::AddSite, &nobody, &entries)
    };
    add("Nowhere", "Ruiz", None);
    add("Far", "Müller", Some(42.5));
    add("Near", "Peñón", Some(42.331));
    let here = LatLon {
        lat_deg: 42.33,
        lon_deg: -71.12,
    };
    let names = |page: &BookPage| -> Vec<String> {
        page.sites.iter().map(|site| site.name.clone()).collect()
    };
    let page = hand.search(Some(here), "");
    assert_eq!(names(&page), ["Near", "Far", "Nowhere"]);
    // 0.17° of latitude: 18.9 km (WGS 84: 111.1 km in a degree at 42°), 11.7 miles.
    assert_eq!(page.sites[1].away, "12 mi away");
    assert_eq!(page.sites[2].away, "");
    assert_eq!(names(&hand.search(None, "MULLER")), ["Far"]);
    assert_eq!(names(&hand.search(Some(here), "penon")), ["Near"]);
    let none = hand.search(None, "birch");
    assert!(
        none.sites.is_empty() && none.lead.contains("birch"),
        "{}",
        none.lead
    );
    let nowhere = LatLon {
        lat_deg: f64::NAN,
        lon_deg: 0.0,
    };
    assert_eq!(hand.search(Some(nowhere), "").sites.len(), 3);
}

#[test]
fn trees_are_found_by_tag_and_by_species() {
    let (_folder, hand) = here();
    let (site, _, _) = hand.site_with_tree();
    let oak = [
        ("tree.tag", words("A-41")),
        ("tree.species", words("Quercus rubra")),
    ];
    hand.made(CommandKind::AddTree, &site, &oak);
    let tags = |search: &str| -> Vec<String> {
        let address = PageAddress::Site {
            site: site.clone(),
            search: search.to_owned(),
        };
        let Page::Site(page) = hand.book.page(address).unwrap() else {
            panic!("another page");
        };
        page.trees.into_iter().map(|tree| tree.tag).collect()
    };
    assert_eq!(tags(""), ["7", "A-41"]);
    assert_eq!(tags("a 41"), ["A-41"]);
    assert_eq!(tags("Red OAK"), ["A-41"]);
    assert!(tags("birch").is_empty());
}
