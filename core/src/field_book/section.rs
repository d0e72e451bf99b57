//! Commands on stem sections.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::defect;
use super::inner::Inner;
use crate::error::BookError;
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

    pub(super) fn act_read_wall(
        &mut self,
        section: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let known: StemSection = self.record(Noun::StemSection, section)?;
        let radius_cm = match (known.girth_cm, known.diameter_cm) {
            (Some(girth_cm), _) => Some(girth_cm / std::f64::consts::TAU),
            (None, Some(diameter_cm)) => Some(diameter_cm / 2.0),
            (None, None) => None,
        };
        if let (Some(radius_cm), Some(shell_cm)) = (radius_cm, entered.number("reading.shell"))
            && shell_cm > radius_cm
        {
            let words = self.settings.words();
            let said = |cm| words.number(cm, crate::record::Quantity::LengthCm);
            let fault = Fault::new(
                "fault.wall-beyond-middle",
                "reading.shell",
                said(shell_cm),
                said(radius_cm),
            );
            return Err(BookError::refused(fault));
        }
        self.make_entered::<ShellReading>(Noun::ShellReading, Some(section), entered)
    }
}
