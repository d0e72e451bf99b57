//! Whatever a page offers can be taken: every choice of every input, both ends of every range.

use bolewalk_core::error::BookError;
use bolewalk_core::pages::{
    CommandKind, Entry, EntryValue, InputKind, Offer, OfferedInput, Page, PageAddress,
};
use bolewalk_core::record::{Id, LatLon};

use super::{Hand, choice, number, pages_of_the_book, words};

/// Everything that can be entered for an input, by what it says of itself.
fn candidates(input: &OfferedInput) -> Vec<EntryValue> {
    match &input.kind {
        InputKind::Number {
            min, max, whole, ..
        } => {
            let ends = if *whole {
                [min.ceil(), max.floor()]
            } else {
                // Drawn inward as the printed range is.
                [min + (max - min) * 1e-6, max - (max - min) * 1e-6]
            };
            ends.map(|end| number(&format!("{end:.9}"))).to_vec()
        }
        InputKind::Choice { choices } => choices.iter().map(|one| choice(&one.id)).collect(),
        InputKind::Choices { choices } => vec![EntryValue::Choices {
            ids: choices.iter().map(|one| one.id.clone()).collect(),
        }],
        InputKind::Words { .. } => vec![words("as typed")],
        InputKind::Search { first, .. } => first
            .iter()
            .map(|one| choice(&one.id))
            .chain([words("as typed")])
            .collect(),
        InputKind::YesNo => vec![
            EntryValue::YesNo { yes: true },
            EntryValue::YesNo { yes: false },
        ],
        InputKind::Bearing => vec![EntryValue::Bearing { degrees: 225.0 }, number("SW")],
        InputKind::Tilt { min, max } => [*min, *max]
            .map(|degrees| EntryValue::Tilt { degrees })
            .to_vec(),
        InputKind::Fix => vec![
            EntryValue::Fix {
                lat_deg: 42.33,
                lon_deg: -71.12,
                accuracy_m: None,
            },
            words("42.33, -71.12"),
        ],
        InputKind::PhotoFile => {
            let root = env!("CARGO_MANIFEST_DIR");
            vec![EntryValue::PhotoFile {
                path: format!("{root}/fixtures/photos/progressive.jpg"),
            }]
        }
        InputKind::Outline { least } => vec![EntryValue::Outline {
            points: (0..(*least).max(3))
                .map(|at| LatLon {
                    lat_deg: 42.33 + f64::from(at * at) * 0.001,
                    lon_deg: -71.12 + f64::from(at) * 0.001,
                })
                .collect(),
        }],
        InputKind::OnDay => vec![words("2026-05-01")],
    }
}

/// Refusals that a person can meet for entries which each fit by themselves.
const MAY_BE_REFUSED: [&str; 10] = [
    "fault.grade-without-sentence",
    "fault.name-twice",
    "fault.signs-off-self",
    "fault.climbs-with-self",
    "fault.tag-twice",
    "fault.thunder-both",
    "fault.top-below-base",
    "fault.comes-out-of-range",
    "fault.wall-beyond-middle",
    "fault.needed",
];

/// Takes an offer with every candidate of every input, one at a time, the needed ones filled.
fn take_all_ways(hand: &Hand, offer: &Offer, taken: &mut u32) {
    let needed: Vec<&OfferedInput> = offer.inputs.iter().filter(|one| one.needed).collect();
    for input in &offer.inputs {
        for value in candidates(input) {
            let others = needed
                .iter()
                .filter(|other| other.id != input.id)
                .filter_map(|other| {
                    Some(Entry {
                        input: other.id.clone(),
                        value: candidates(other).into_iter().next()?,
                    })
                });
            let mut entries: Vec<Entry> = offer.fixed.iter().cloned().chain(others).collect();
            entries.push(Entry {
                input: input.id.clone(),
                value: value.clone(),
            });
            *taken += 1;
            let token = format!("{} {taken}", offer.token);
            let outcome = hand
                .book
                .act(offer.command, offer.about.clone(), entries, token);
            match outcome {
                Ok(_) => {}
                Err(BookError::Refused { faults })
                    if faults
                        .iter()
                        .all(|f| MAY_BE_REFUSED.contains(&f.code.as_str())) => {}
                Err(error) => panic!("{} {} {value:?}: {error:?}", offer.id, input.id),
            }
        }
    }
}

fn offers_of(hand: &Hand, address: PageAddress) -> Vec<Offer> {
    match hand.book.page(address).unwrap() {
        Page::Book(page) => page.offers,
        Page::Settings(page) => page.offers,
        Page::Codebook(page) => {
            let codes = page.codes.into_iter().flat_map(|one| one.offers);
            page.offers.into_iter().chain(codes).collect()
        }
        Page::RuleSet(page) => {
            let rows = page.groups.into_iter().flat_map(|group| group.rows);
            rows.flat_map(|row| row.offers).collect()
        }
        Page::People(page) => page.offers,
        Page::Person(page) => {
            let skills = page.skills.into_iter().flat_map(|one| one.offers);
            let knots = page.knots.into_iter().flat_map(|one| one.offers);
            let climbs = page.climbs.into_iter().flat_map(|one| one.offers);
            let all = page.offers.into_iter().chain(skills);
            all.chain(knots).chain(climbs).collect()
        }
        Page::Gear(page) => page
            .offers
            .into_iter()
            .chain(page.pieces.into_iter().flat_map(|one| one.offers))
            .collect(),
        Page::Site(page) => page.offers,
        Page::Tree(page) => page
            .offers
            .into_iter()
            .chain(page.doors)
            .chain(page.walk_round.into_iter().flat_map(|one| one.offers))
            .chain(page.sections.into_iter().flat_map(|one| one.offers))
            .chain(page.plans.into_iter().flat_map(|one| one.offers))
            .collect(),
        Page::Finding(page) => page.offers,
        Page::Anchor(page) => page.offers,
        Page::StemSection(page) => page.offers,
        Page::Compare(_) => Vec::new(),
        Page::Aloft(page) => page
            .offers
            .into_iter()
            .chain(page.plans.into_iter().flat_map(|one| one.offers))
            .chain(page.work.into_iter().flat_map(|one| one.offers))
            .collect(),
        Page::Judgement(page) => page.offers,
        Page::HandOver(page) => page.offers,
    }
}

#[test]
fn every_choice_and_both_ends_of_every_range_are_taken() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let none = Id::default();
    hand.signed_in("Ana");
    let trainee = [
        ("person.name", words("Ben")),
        ("person.trainee", EntryValue::YesNo { yes: true }),
    ];
    let ben = hand.made(CommandKind::AddPerson, &none, &trainee);
    let climb = [
        ("climb_log.place", words("Hill, tree 7")),
        ("climb_log.height", number("3")),
        ("climb_log.system", choice("moving_rope")),
        ("climb_log.with_whom", words("Ana")),
    ];
    hand.made(CommandKind::LogClimb, &ben, &climb);
    let saver = [
        ("gear.name", words("Saver 2")),
        ("gear.kind", choice("friction_saver")),
    ];
    hand.made(CommandKind::AddGear, &none, &saver);
    let (site, tree, inspection) = hand.site_with_tree();
    hand.act(CommandKind::StartVisit, &site, &[]).unwrap();
    let finding = [
        ("finding.code", choice("decay")),
        ("finding.part", choice("stem")),
    ];
    let finding = hand.made(CommandKind::AddFinding, &inspection, &finding);
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &[]);
    let section = [("section.height", number("3"))];
    hand.made(CommandKind::AddSection, &inspection, &section);
    let plan = [
        ("climb.anchor", choice(anchor.as_str())),
        ("climb.system", choice("moving_rope")),
    ];
    hand.made(CommandKind::PlanClimb, &inspection, &plan);
    let mut taken = 0;
    let mut commands = Vec::new();
    let of_the_site = [
        PageAddress::site(&site),
        PageAddress::Finding { finding },
        PageAddress::Anchor { anchor },
        PageAddress::Aloft { tree: tree.clone() },
        PageAddress::Tree { tree },
    ];
    for address in pages_of_the_book(ben).into_iter().chain(of_the_site) {
        for offer in offers_of(&hand, address) {
            if offer.enabled && !offer.inputs.is_empty() && !commands.contains(&offer.command) {
                commands.push(offer.command);
                take_all_ways(&hand, &offer, &mut taken);
            }
        }
    }
    assert!(commands.len() > 25, "{commands:?}");
    assert!(taken > 300, "{taken}");
}
