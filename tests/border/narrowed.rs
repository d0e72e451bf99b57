//! What is offered for a finding follows from what was entered: codes from the part, grades from the
//! code; each grade has its drawing.

use bolewalk_core::pages::{
    CommandKind, DrawingAddress, Entry, EntryValue, InputKind, Offer, OfferedChoice, OfferedInput,
};
use bolewalk_core::record::{Id, TreePart};

use super::{Hand, choice, here, words};

fn entered(input: &str, id: &str) -> Entry {
    Entry {
        input: input.to_owned(),
        value: choice(id),
    }
}

fn choices(inputs: &[OfferedInput], id: &str) -> Vec<OfferedChoice> {
    let input = inputs.iter().find(|input| input.id == id).unwrap();
    match &input.kind {
        InputKind::Choice { choices } => choices.clone(),
        other => panic!("{other:?}"),
    }
}

/// The codes at hand, and how many are aside.
fn codes(inputs: &[OfferedInput]) -> (Vec<String>, usize) {
    let all = choices(inputs, "finding.code");
    let aside = all.iter().filter(|code| code.aside).count();
    let at_hand = all.into_iter().filter(|code| !code.aside);
    (at_hand.map(|code| code.id).collect(), aside)
}

fn offer(hand: &Hand, tree: &Id, id: &str) -> Offer {
    let page = hand.tree_page(tree);
    let walk = page.walk_round.iter().flat_map(|part| &part.offers);
    let mut offers = page.offers.iter().chain(walk);
    offers.find(|offer| offer.id == id).unwrap().clone()
}

fn found(hand: &Hand, inspection: &Id, code: &str, part: &str) {
    let finding = [
        ("finding.code", choice(code)),
        ("finding.part", choice(part)),
    ];
    hand.made(CommandKind::AddFinding, inspection, &finding);
}

#[test]
fn the_part_comes_first_and_leaves_the_codes_that_occur_there() {
    let (_folder, hand) = here();
    let (_, tree, inspection) = hand.site_with_tree();
    let add = offer(&hand, &tree, "finding.add");
    let ids: Vec<&str> = add.inputs.iter().map(|input| input.id.as_str()).collect();
    assert_eq!(ids[..3], ["finding.part", "finding.code", "finding.grade"]);
    // Nothing was used yet and no part is named: every code waits.
    assert_eq!(codes(&add.inputs), (vec![], 31));

    let at = |entries: &[Entry]| hand.book.narrowed(add.clone(), entries.to_vec()).unwrap();
    let union = at(&[entered("finding.part", "union")]);
    let (at_union, aside) = codes(&union);
    let expected = [
        "decay",
        "bracket-unnamed",
        "inonotus",
        "bracket-other",
        "union-crack",
        "included-bark",
        "topping-regrowth",
        "other",
    ];
    assert_eq!(
        (at_union, aside),
        (expected.map(str::to_owned).to_vec(), 23)
    );
    // What is chosen is never put aside, and what was put aside comes back.
    let (kept, _) = codes(&at(&[
        entered("finding.part", "union"),
        entered("finding.code", "soil-movement"),
    ]));
    assert!(kept.contains(&"soil-movement".to_owned()));
    let base = hand.book.narrowed(
        Offer {
            inputs: union,
            ..add.clone()
        },
        vec![entered("finding.part", "base")],
    );
    assert_eq!(
        codes(&base.unwrap()),
        codes(&at(&[entered("finding.part", "base")]))
    );

    // What this crew meets most leads, whatever the part: with it there, without a part alone.
    found(&hand, &inspection, "included-bark", "union");
    found(&hand, &inspection, "other", "union");
    found(&hand, &inspection, "included-bark", "union");
    let add = offer(&hand, &tree, "finding.add");
    assert_eq!(codes(&add.inputs).0, ["included-bark", "other"]);
    let union = hand
        .book
        .narrowed(add.clone(), vec![entered("finding.part", "union")]);
    assert_eq!(
        codes(&union.unwrap()).0[..3],
        ["included-bark", "other", "decay"]
    );

    // A code of the crew's own that names no part occurs everywhere.
    let own = [
        ("code.name", words("Cable grown in")),
        ("code.kind", choice("other")),
        ("code.grade_1", words("The bark touches the cable.")),
        ("code.grade_2", words("The bark closes over the cable.")),
    ];
    let own = hand.made(CommandKind::AddCode, &Id::default(), &own);
    let add = offer(&hand, &tree, "finding.add");
    for part in ["roots", "stem", "around"] {
        let here = hand
            .book
            .narrowed(add.clone(), vec![entered("finding.part", part)]);
        assert!(codes(&here.unwrap()).0.contains(&own.0), "{part}");
    }
    // On its way through the walk-round the part is known: its codes stand ready.
    let (at_base, aside) = codes(&offer(&hand, &tree, "finding.add.base").inputs);
    assert!(at_base.contains(&"fire-hollow".to_owned()) && aside == 0);
    let (insects, _) = codes(&offer(&hand, &tree, "finding.add.insects").inputs);
    assert_eq!(insects, ["stinging-insects", "nest-or-roost"]);
}

#[test]
fn the_code_gives_its_grades_their_sentences_and_drawings() {
    let (_folder, hand) = here();
    let (_, tree, _) = hand.site_with_tree();
    let add = offer(&hand, &tree, "finding.add");
    assert!(
        choices(&add.inputs, "finding.grade")
            .iter()
            .all(|one| one.drawing.is_none())
    );
    let entries = vec![
        entered("finding.part", "limb"),
        entered("finding.code", "dead-limb"),
    ];
    let grades = choices(
        &hand.book.narrowed(add.clone(), entries).unwrap(),
        "finding.grade",
    );
    assert_eq!(grades[1].help, "Dead limbs up to the thickness of a wrist.");
    let mut drawn = Vec::new();
    for grade in grades {
        let drawing = hand.book.drawing(grade.drawing.unwrap(), 0, 100).unwrap();
        assert_eq!(drawing.described, grade.help);
        drawn.push(drawing.marks);
    }
    assert!(drawn[0] != drawn[1] && drawn[1] != drawn[2]);

    // The crew's own code has the picture of its kind; a grade without a sentence is not offered.
    let own = [
        ("code.name", words("Widow-maker")),
        ("code.kind", choice("hanger")),
        ("code.grade_3", words("Over the gate.")),
    ];
    let own = hand.made(CommandKind::AddCode, &Id::default(), &own);
    let add = offer(&hand, &tree, "finding.add");
    let entries = vec![entered("finding.code", own.as_str())];
    let grades = choices(&hand.book.narrowed(add, entries).unwrap(), "finding.grade");
    assert_eq!(grades.len(), 1);
    let of = |code: &Id| DrawingAddress::Grade {
        code: code.clone(),
        part: None,
        grade: 3,
    };
    let drawing = |code: &Id| hand.book.drawing(of(code), 0, 100);
    let (mine, theirs) = (drawing(&own).unwrap(), drawing(&"hanger".into()).unwrap());
    assert_eq!(mine.marks, theirs.marks);
    assert_eq!(mine.described, "Over the gate.");
    assert!(drawing(&"no-such-code".into()).is_err());

    let part = DrawingAddress::PartOfTree {
        part: TreePart::Union,
    };
    assert_eq!(hand.book.drawing(part, 0, 100).unwrap().described, "Union");
}

#[test]
fn what_does_not_depend_stays_and_odd_entries_do_no_harm() {
    let (_folder, hand) = here();
    let (_, tree, _) = hand.site_with_tree();
    let change = offer(&hand, &tree, "tree.change");
    let same = hand
        .book
        .narrowed(change.clone(), vec![entered("tree.way", "prune")]);
    assert_eq!(same.unwrap(), change.inputs);
    let add = offer(&hand, &tree, "finding.add");
    let odd = vec![
        entered("finding.part", "no such part"),
        Entry {
            input: "finding.code".to_owned(),
            value: EntryValue::YesNo { yes: true },
        },
        entered("no.such", "input"),
    ];
    assert_eq!(hand.book.narrowed(add.clone(), odd).unwrap(), add.inputs);
}
