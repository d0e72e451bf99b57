//! How much of a stem section is left, in words and drawn: as it is kept, or with a reading that is
//! only being taken.

use super::desk::PageDesk;
use super::drawn::section_at_hand;
use crate::draw::{Drawing, WeakestMark};
use crate::judge::section::{Shell, StrengthLeft};
use crate::judge::wood::GreenWood;
use crate::record::{Quantity, Site, StemSection};
use crate::words::Said;

/// A section as a screen shows it while a reading is taken.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionSeen {
    /// Where it is weakest and how much is left there; what is missing for it.
    pub words: String,
    /// The section from above; nothing while its size is not known.
    pub drawing: Option<Drawing>,
}

/// A section of this site, or the same with readings that are not kept yet.
pub fn section_seen(desk: &PageDesk, site: &Site, section: &StemSection) -> SectionSeen {
    SectionSeen {
        words: weakest_words(desk, site, section),
        drawing: section_at_hand(desk, site, section),
    }
}

pub(super) fn weakest_words(desk: &PageDesk, site: &Site, section: &StemSection) -> String {
    let Some(left) = strength_left(desk, site, section) else {
        return desk.say("page.weakest-open");
    };
    let side = desk.words.side(left.weakest_deg);
    desk.words.say(
        "page.weakest",
        &[
            ("side", Said::Text(&side)),
            (
                "bearing",
                Said::Number(left.weakest_deg.round(), Quantity::BearingDeg),
            ),
            ("left", whole_pct(left.left_pct)),
            ("low", whole_pct(left.low_pct)),
            ("high", whole_pct(left.high_pct)),
        ],
    )
}

/// The arrow of the weakest direction, with what is left there.
pub(super) fn weakest_mark(
    desk: &PageDesk,
    site: &Site,
    section: &StemSection,
) -> Option<WeakestMark> {
    let left = strength_left(desk, site, section)?;
    Some(WeakestMark {
        bearing_deg: left.weakest_deg,
        words: between(desk, &left),
    })
}

/// How much is left in the weakest direction, in short; nothing where that is not known.
pub(super) fn left_words(desk: &PageDesk, section: &StemSection) -> Option<String> {
    let (site, _) = desk.site?;
    Some(between(desk, &strength_left(desk, site, section)?))
}

fn between(desk: &PageDesk, left: &StrengthLeft) -> String {
    let between = [
        ("low", whole_pct(left.low_pct)),
        ("high", whole_pct(left.high_pct)),
    ];
    desk.words.say("page.modulus-left", &between)
}

/// What the readings so far leave; nothing while there is none, or no size.
fn strength_left(desk: &PageDesk, site: &Site, section: &StemSection) -> Option<StrengthLeft> {
    let looks = site
        .trees
        .iter()
        .flat_map(|tree| tree.inspections.iter().map(move |look| (tree, look)));
    let (tree, look) = looks
        .into_iter()
        .find(|(_, look)| look.sections.iter().any(|one| one.id == section.id))?;
    let wood = GreenWood::of(tree.species.as_deref(), &desk.rules);
    let shell = Shell::of(section, &wood, &desk.rules)?;
    shell.strength_left(&look.id, &section.id)
}

/// Rounded down: a tenth of a percent would be a precision that nobody has.
fn whole_pct(pct: f64) -> Said<'static> {
    Said::Number(pct.floor(), Quantity::Percent)
}
