//! Commands on stem sections.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::defect;
use super::inner::Inner;
use super::records::unknown;
use crate::error::BookError;
use crate::pages::{SectionSeen, section_seen};
use crate::record::{Fault, Id, MalletSound, Noun, ShellReading, StemSection};

/// The inputs of the mallet clock, from north clockwise.
const POINTS: [&str; 8] = [
    "sound.north",
    "sound.northeast",
    "sound.east",
    "sound.southeast",
    "sound.south",
    "sound.southwest",
    "sound.west",
    "sound.northwest",
];

impl Inner {
    /// Records the mallet clock; points that nobody entered stay as they were.
    pub(super) fn act_sound_section(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: StemSection = self.record(Noun::StemSection, id)?;
        let mut mallet = before.mallet.clone();
        mallet.resize(POINTS.len(), MalletSound::NotSounded);
        for (input, at) in POINTS.iter().zip(&mut mallet) {
            if let Some(value) = entered.value(input) {
                *at = if value.is_null() {
                    MalletSound::NotSounded
                } else {
                    serde_json::from_value(value.clone()).map_err(defect)?
                };
            }
        }
        if mallet.iter().all(|at| *at == MalletSound::NotSounded) {
            mallet.clear();
        }
        let after = StemSection {
            mallet,
            ..before.clone()
        };
        self.change(Noun::StemSection, id, &before, &after)
    }

    /// A section with the reading that is being taken, once it is whole; before, as it stands.
    pub(super) fn wall_seen(
        &mut self,
        section: &Id,
        reading: Option<ShellReading>,
    ) -> Result<SectionSeen, BookError> {
        let site = self.site_of(Noun::StemSection, section)?;
        self.on_site(&site, None, |desk, judged| {
            let site = &judged.loaded.file.site;
            let looks = site.trees.iter().flat_map(|tree| &tree.inspections);
            let known = looks
                .flat_map(|look| &look.sections)
                .find(|one| one.id == *section)
                .ok_or_else(|| unknown(Noun::StemSection, section))?;
            let mut known = known.clone();
            known.readings.extend(reading);
            Ok(section_seen(desk, site, &known))
        })
    }

    /// The fault of a wall that would be thicker than the stem's half.
    pub(super) fn wall_fault(
        &self,
        section: &Id,
        entered: &Entered,
    ) -> Result<Option<Fault>, BookError> {
        let known: StemSection = self.record(Noun::StemSection, section)?;
        let radius_cm = match (known.girth_cm, known.diameter_cm) {
            (Some(girth_cm), _) => Some(girth_cm / std::f64::consts::TAU),
            (None, Some(diameter_cm)) => Some(diameter_cm / 2.0),
            (None, None) => None,
        };
        let read = radius_cm.zip(entered.number("reading.shell"));
        Ok(read
            .filter(|(radius_cm, shell_cm)| shell_cm > radius_cm)
            .map(|(radius_cm, shell_cm)| {
                let words = self.settings.words();
                let said = |cm| words.number(cm, crate::record::Quantity::LengthCm);
                Fault::new(
                    "fault.wall-beyond-middle",
                    "reading.shell",
                    said(shell_cm),
                    said(radius_cm),
                )
            }))
    }

    pub(super) fn act_read_wall(
        &mut self,
        section: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        if let Some(fault) = self.wall_fault(section, &entered)? {
            return Err(BookError::refused(fault));
        }
        self.make_entered::<ShellReading>(Noun::ShellReading, Some(section), entered)
    }
}
