//! The page of a stem section: the mallet clock and the readings of the wall around the ring, with
//! the weakest direction as they come in.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::drawn::{DrawingAddress, section_of};
use super::headings::PageHeading;
use super::line::{PageLine, PageRecord};
use super::offer::Offer;
use super::page::PageAddress;
use super::section_left::weakest_words;
use super::tree_records::reading_record;
use super::walk::chosen;
use crate::record::{Id, MalletSound, Quantity, Site, StemSection};
use crate::words::Said;

/// The points of the mallet clock, from north clockwise.
const CLOCK: [(&str, f64); 8] = [
    ("sound.north", 0.0),
    ("sound.northeast", 45.0),
    ("sound.east", 90.0),
    ("sound.southeast", 135.0),
    ("sound.south", 180.0),
    ("sound.southwest", 225.0),
    ("sound.west", 270.0),
    ("sound.northwest", 315.0),
];

/// A stem section.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct StemSectionPage {
    /// The section.
    pub id: Id,
    /// Its height and its tree.
    pub title: String,
    /// The page of its tree.
    pub tree: PageAddress,
    /// Its drawing: asked for anew after each reading.
    pub drawing: DrawingAddress,
    /// Where it is weakest and how much is left there; what is missing for it.
    pub weakest: String,
    /// Its size, and what is missing.
    pub lines: Vec<PageLine>,
    /// The mallet clock, from north clockwise.
    pub clock: Vec<ClockPoint>,
    /// The readings of the sound wall.
    pub readings: Vec<PageRecord>,
    /// What is always said of a section.
    pub cautions: Vec<String>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A point of the mallet clock.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ClockPoint {
    /// Its bearing in degrees.
    pub bearing_deg: f64,
    /// Its side.
    pub words: String,
    /// What the mallet said there; nothing while nobody sounded it.
    pub sound: Option<MalletSound>,
    /// What it said, in words.
    pub sound_words: String,
    /// Sound, dull, hollow, a tap each.
    pub offers: Vec<Offer>,
}

/// The page of a stem section; nothing for one that is not on the site.
pub fn stem_section_page(desk: &PageDesk, site: &Site, id: &Id) -> Option<StemSectionPage> {
    let section = section_of(site, id)?;
    let tree = site.trees.iter().find(|tree| {
        let mut sections = tree.inspections.iter().flat_map(|look| &look.sections);
        sections.any(|one| one.id == *id)
    })?;
    let height = desk.words.number(section.height_m, Quantity::LengthM);
    let name = [
        ("height", Said::Text(&height)),
        ("tag", Said::Text(&tree.tag)),
    ];
    let readings = section.readings.iter();
    Some(StemSectionPage {
        id: id.clone(),
        title: desk.words.say("page.section-on", &name),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        drawing: DrawingAddress::SectionThrough {
            section: id.clone(),
        },
        weakest: weakest_words(desk, site, section),
        lines: lines(desk, section),
        clock: clock(desk, section),
        readings: readings
            .map(|reading| reading_record(desk, reading))
            .collect(),
        cautions: vec![desk.say("caution.decay-bending")],
        offers: offers(desk, site, section),
        headings: Vec::new(),
    })
}

fn lines(desk: &PageDesk, section: &StemSection) -> Vec<PageLine> {
    let cm = |value: Option<f64>| value.map(|cm| desk.words.number(cm, Quantity::LengthCm));
    let opening = section.opening.as_ref().map(|at| {
        let width = desk.words.number(at.width_cm, Quantity::LengthCm);
        super::measured::toward(&desk.words, width, Some(at.bearing_deg))
    });
    let mut lines = vec![desk.line("section.girth", "girth.girth_cm.why", cm(section.girth_cm))];
    if section.girth_cm.is_none() {
        let diameter = cm(section.diameter_cm);
        lines.push(desk.line("section.diameter", "section.diameter_cm.why", diameter));
    }
    lines.push(desk.line("section.bark", "bark.bark_cm.why", cm(section.bark_cm)));
    if let Some(opening) = opening {
        lines.push(desk.line("section.opening_side", "", Some(opening)));
    }
    lines.extend(desk.note("section.note", section.note.as_ref()));
    lines
}

fn clock(desk: &PageDesk, section: &StemSection) -> Vec<ClockPoint> {
    let heard = section.mallet.iter().map(|sound| Some(*sound));
    let heard = heard.chain(std::iter::repeat(None));
    CLOCK
        .into_iter()
        .zip(heard)
        .map(|((input, bearing_deg), sound)| {
            let sound = sound.filter(|sound| *sound != MalletSound::NotSounded);
            ClockPoint {
                bearing_deg,
                words: desk.words.side(bearing_deg),
                sound,
                sound_words: sound.map_or_else(String::new, |sound| desk.words.word_of(&sound)),
                offers: sounds(desk, &section.id, input, sound),
            }
        })
        .collect()
}

/// Sound, dull, hollow at one point.
fn sounds(desk: &PageDesk, section: &Id, input: &str, heard: Option<MalletSound>) -> Vec<Offer> {
    let ids = [
        (MalletSound::Sound, "sound"),
        (MalletSound::Dull, "dull"),
        (MalletSound::Hollow, "hollow"),
    ];
    ids.into_iter()
        .map(|(sound, id)| {
            let none = |_: &str| false;
            let mut offer = desk.offer_asking(CommandKind::SoundSection, section, None, &none);
            let point = input.trim_start_matches("sound.");
            offer.id = format!("{}.{point}.{id}", CommandKind::SoundSection.id());
            offer.words = desk.words.label_of(&sound);
            offer.fixed = vec![chosen(input, id)];
            offer.chosen = heard == Some(sound);
            offer
        })
        .collect()
}

fn offers(desk: &PageDesk, site: &Site, section: &StemSection) -> Vec<Offer> {
    let id = &section.id;
    let mut offers = vec![
        desk.offer(CommandKind::ReadWall, id, None),
        desk.offer_on(CommandKind::ChangeSection, id, section),
        desk.offer(CommandKind::RemoveSection, id, None),
    ];
    offers.extend(desk.undo_offers(&site.id));
    offers
}
