//! The walk-round: every part looked at by itself, one tap a part; there is no tap for all of them.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::entry::{Entry, EntryValue};
use super::looks::Looks;
use super::offer::{InputKind, Offer};
use crate::record::{
    DefectCode, DefectKind, Id, InspectionLevel, Look, PartLook, Tree, TreePart, WalkPart,
};
use crate::words::{Said, Worded};

/// A look that began longer ago than this is looked at anew (house).
pub const LOOK_LASTS_MS: i64 = 60 * 60 * 1000;

/// The parts that the same tree is asked again that day; the weather is asked beside them.
pub const ASKED_AGAIN: [WalkPart; 5] = [
    WalkPart::Wires,
    WalkPart::Hangers,
    WalkPart::Insects,
    WalkPart::Roots,
    WalkPart::Base,
];

/// One part of the walk-round.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PartOfWalk {
    /// The part.
    pub part: WalkPart,
    /// Its name.
    pub words: String,
    /// How it was seen; nothing while nobody looked.
    pub look: Option<Look>,
    /// How it was seen, in words, and what hid it.
    pub look_words: String,
    /// Whether it was looked at in the inspection of the day.
    pub today: bool,
    /// Seen, part seen, not seen, a tap each; and a finding on this part.
    pub offers: Vec<Offer>,
}

/// The walk-round, in its order.
pub(super) fn walk_round(desk: &PageDesk, looks: &Looks) -> Vec<PartOfWalk> {
    let begun = looks.today.map(|look| &look.id);
    let parts = WalkPart::ALL.into_iter();
    parts
        .map(|part| {
            let at = looks.part(part);
            let of_today = looks.today.is_some_and(|look| {
                let mut parts = look.walk_round.iter();
                parts.any(|known| known.part == part)
            });
            let nowhere = Id::default();
            let about = begun.unwrap_or(&nowhere);
            let mut offers = look_offers(desk, CommandKind::LookAtPart, about, part, at);
            offers.push(finding_offer(desk, about, part));
            let waits = |offer| desk.unless(offer, begun.is_none(), "page.start-inspection-first");
            PartOfWalk {
                part,
                words: desk.words.label_of(&part),
                look: at.map(|at| at.look),
                look_words: look_words(desk, at),
                today: of_today,
                offers: offers.into_iter().map(waits).collect(),
            }
        })
        .collect()
}

/// What is asked when the same tree is climbed again, where an earlier full check still stands: how
/// each part was seen since. Empty while the full check itself goes on.
pub(super) fn asked_again(desk: &PageDesk, tree: &Tree, looks: &Looks) -> Vec<PartOfWalk> {
    let before = |at_ms: i64| desk.now_ms - at_ms > LOOK_LASTS_MS;
    let stands = looks.looks.iter().any(|look| {
        look.level == InspectionLevel::FullCheck && look.at.is_some_and(|at| before(at.utc_ms))
    });
    if !stands {
        return Vec::new();
    }
    let fresh = looks.today.filter(|look| {
        let is_fresh = look.at.is_some_and(|at| !before(at.utc_ms));
        is_fresh && look.level == InspectionLevel::SameDay
    });
    let nowhere = Id::default();
    let begun = looks.today.map(|look| &look.id);
    ASKED_AGAIN
        .into_iter()
        .map(|part| {
            let finding = finding_offer(desk, begun.unwrap_or(&nowhere), part);
            let finding = desk.unless(finding, begun.is_none(), "page.look-again-first");
            let at = fresh.and_then(|look| look.walk_round.iter().find(|at| at.part == part));
            PartOfWalk {
                part,
                words: desk.words.label_of(&part),
                look: at.map(|at| at.look),
                look_words: look_words(desk, at),
                today: at.is_some(),
                offers: [
                    look_offers(desk, CommandKind::LookAgain, &tree.id, part, at),
                    vec![finding],
                ]
                .concat(),
            }
        })
        .collect()
}

fn look_words(desk: &PageDesk, at: Option<&PartLook>) -> String {
    let Some(at) = at else {
        return desk.say("page.not-looked-at");
    };
    let look = desk.words.word_of(&at.look);
    match &at.hidden_by {
        None => look,
        Some(hidden) => desk.words.say(
            "page.look-hidden",
            &[("look", Said::Text(&look)), ("hidden", Said::Text(hidden))],
        ),
    }
}

/// Seen at one tap; part seen and not seen ask what hid the part.
fn look_offers(
    desk: &PageDesk,
    command: CommandKind,
    about: &Id,
    part: WalkPart,
    at: Option<&PartLook>,
) -> Vec<Offer> {
    let part_id = id_of(&part);
    [Look::Seen, Look::PartSeen, Look::NotSeen]
        .into_iter()
        .map(|look| {
            let now = at.and_then(|at| serde_json::to_value(at).ok());
            let asks = |input: &str| input == "walk.hidden_by" && look != Look::Seen;
            let mut offer = desk.offer_asking(command, about, now.as_ref(), &asks);
            let look_id = id_of(&look);
            offer.id = format!("{}.{part_id}.{look_id}", command.id());
            offer.words = desk.words.label_of(&look);
            offer.fixed = vec![chosen("walk.part", &part_id), chosen("walk.look", &look_id)];
            offer.chosen = at.is_some_and(|at| at.look == look);
            offer
        })
        .collect()
}

/// Seen, part seen, not seen, for the part of this catalogue entry, such as `walk-part.base`.
pub(super) fn part_offers(desk: &PageDesk, about: &Id, looks: &Looks, part: &str) -> Vec<Offer> {
    WalkPart::ALL
        .into_iter()
        .filter(|one| one.key() == part)
        .flat_map(|one| {
            let at = looks.part(one);
            look_offers(desk, CommandKind::LookAtPart, about, one, at)
        })
        .collect()
}

/// A finding on a part, with the codes that belong there.
fn finding_offer(desk: &PageDesk, about: &Id, part: WalkPart) -> Offer {
    let mut offer = desk.offer(CommandKind::AddFinding, about, None);
    offer.id = format!("{}.{}", CommandKind::AddFinding.id(), id_of(&part));
    offer.words = desk.say("page.finding-here");
    let fits: Vec<&DefectCode> = desk
        .codes
        .iter()
        .filter(|code| belongs(code, part))
        .collect();
    for input in &mut offer.inputs {
        if let InputKind::Choice { choices } = &mut input.kind {
            match input.id.as_str() {
                "finding.code" => choices.retain(|one| fits.iter().any(|code| code.id.0 == one.id)),
                "finding.part" => {
                    let parts: Vec<String> = tree_parts(part).iter().map(id_of).collect();
                    choices.retain(|one| parts.contains(&one.id));
                }
                _ => {}
            }
        }
    }
    if let [only] = tree_parts(part) {
        offer.fixed.push(chosen("finding.part", &id_of(only)));
        offer.inputs.retain(|input| input.id != "finding.part");
    }
    if let Some(side) = side_of(part) {
        let typed = side.to_owned();
        let value = EntryValue::Number { typed };
        let input = "finding.side".to_owned();
        offer.fixed.push(Entry { input, value });
        offer.inputs.retain(|input| input.id != "finding.side");
    }
    offer.inputs = desk.narrowed(&offer, &[]);
    offer
}

/// Whether a code is looked for at a part of the walk-round. A crew's code that names no part is
/// looked for everywhere.
fn belongs(code: &DefectCode, part: WalkPart) -> bool {
    match part {
        WalkPart::Wires => code.kind == DefectKind::TouchingWire,
        WalkPart::Hangers => code.kind == DefectKind::Hanger,
        WalkPart::Insects => {
            matches!(
                code.kind,
                DefectKind::StingingInsects | DefectKind::NestOrRoost
            )
        }
        _ => {
            let here = tree_parts(part);
            code.parts.is_empty() || code.parts.iter().any(|of| here.contains(of))
        }
    }
}

fn tree_parts(part: WalkPart) -> &'static [TreePart] {
    match part {
        WalkPart::Wires | WalkPart::Insects => &[TreePart::Around],
        WalkPart::Hangers => &[TreePart::Crown],
        WalkPart::Roots => &[TreePart::Roots],
        WalkPart::Base => &[TreePart::Base],
        WalkPart::StemNorth | WalkPart::StemEast | WalkPart::StemSouth | WalkPart::StemWest => {
            &[TreePart::Stem]
        }
        WalkPart::Unions => &[TreePart::Union],
        WalkPart::Crown => &[TreePart::Limb, TreePart::Crown],
    }
}

fn side_of(part: WalkPart) -> Option<&'static str> {
    Some(match part {
        WalkPart::StemNorth => "0",
        WalkPart::StemEast => "90",
        WalkPart::StemSouth => "180",
        WalkPart::StemWest => "270",
        _ => return None,
    })
}

/// The id of a choice as records write it.
pub(super) fn id_of(choice: &impl Worded) -> String {
    let key = choice.key();
    let id = key.split_once('.').map_or(key.as_str(), |(_, id)| id);
    id.replace('-', "_")
}

pub(super) fn chosen(input: &str, id: &str) -> Entry {
    Entry {
        input: input.to_owned(),
        value: EntryValue::Choice { id: id.to_owned() },
    }
}
