//! The training record, the log of climbs, and the gear.

use bolewalk_core::pages::{
    CommandKind, EntryValue, GearPage, GearState, Page, PageAddress, PersonPage, TrainingState,
};
use bolewalk_core::record::{Id, Skill};

use super::{Hand, choice, here, number, refused, words};

impl Hand {
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
    assert_eq!(page.lead, "All in order");
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
fn a_sign_off_that_lapses_is_told_ahead() {
    let (_folder, hand) = here();
    let ben = hand.add_person("Ben");
    let about = Id(hand.person(&ben).skills[0].offers[0].about.clone());
    let sign = [
        ("sign_off.by", words("Ana")),
        ("sign_off.on", words("2025-06-01")),
        ("sign_off.until", words("2026-06-01")),
    ];
    hand.act(CommandKind::SignOffSkill, &about, &sign).unwrap();
    let lapses = hand.people_page().people[0].lapses.clone();
    assert_eq!(lapses.len(), 1);
    assert!(
        lapses[0].contains("lapses after June 1, 2026"),
        "{lapses:?}"
    );
    let ways = hand.book_page().ways;
    let people = ways.iter().find(|way| way.id == "book.people").unwrap();
    assert!(people.detail.contains("one sign-off lapses"), "{people:?}");
}
