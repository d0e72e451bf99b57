//! One tree on the day it is judged for: what was seen, read once, for every part of the judgement.

use std::borrow::Cow;

use crate::record::{
    ClimbNeed, DefectKind, Finding, Inspection, LifeState, MalletSound, OtherAccess, Tree,
    WayOfWorking,
};

use super::case::{Seen, SiteContext};
use super::wood::GreenWood;

/// A tree with what was seen on it.
pub(crate) struct TreeCase<'a> {
    pub site: &'a SiteContext<'a>,
    pub tree: &'a Tree,
    pub seen: &'a Seen,
    pub wood: Cow<'a, GreenWood>,
}

/// A finding as it is judged: its meaning, and its grade, 3 where nobody graded it.
#[derive(Clone, Copy)]
pub(crate) struct Defect<'a> {
    pub finding: &'a Finding,
    pub kind: DefectKind,
    pub grade: u32,
}

impl<'a> TreeCase<'a> {
    pub(crate) fn new(site: &'a SiteContext<'a>, tree: &'a Tree, seen: &'a Seen) -> Self {
        TreeCase {
            site,
            tree,
            seen,
            wood: site.wood(tree),
        }
    }

    pub(crate) fn look(&self) -> &'a Inspection {
        &self.seen.look
    }

    /// Every finding, in the order it was recorded. A hanger that a named person took down is gone.
    pub(crate) fn defects(&self) -> impl Iterator<Item = Defect<'a>> + '_ {
        let all = self.seen.look.findings.iter().map(|finding| Defect {
            finding,
            kind: self.site.book.kind(&finding.code),
            grade: self.grade_of(finding),
        });
        all.filter(|defect| {
            defect.kind != DefectKind::Hanger || defect.finding.cleared_by.is_empty()
        })
    }

    /// A grade that is missing, unknown, or has no sentence in the codebook reads as 3 meanwhile.
    fn grade_of(&self, finding: &Finding) -> u32 {
        finding
            .grade
            .filter(|grade| self.site.book.sentence(&finding.code, *grade).is_some())
            .unwrap_or(3)
    }

    pub(crate) fn has(&self, kind: DefectKind) -> bool {
        self.defects().any(|defect| defect.kind == kind)
    }

    /// The genus in lower case, empty where the species is unknown.
    pub(crate) fn genus(&self) -> String {
        let species = self.tree.species.as_deref().unwrap_or_default();
        let genus = species.split_whitespace().next().unwrap_or_default();
        genus.to_lowercase()
    }

    pub(crate) fn is_dead(&self) -> bool {
        self.look().life == Some(LifeState::Dead)
    }

    /// Diameter at breast height over bark in centimetres, as far as a girth was taken.
    pub(crate) fn breast_diameter_cm(&self) -> Option<f64> {
        let girth = self.look().girth?;
        Some(girth.girth_cm / std::f64::consts::PI)
    }

    /// What the mallet said on the four sides of the base.
    pub(crate) fn base_sounds(&self) -> [Option<MalletSound>; 4] {
        self.look()
            .base_mallet
            .as_ref()
            .map_or([None; 4], |b| [b.north, b.east, b.south, b.west])
    }

    /// Whether anything hollow was heard, at the base or on a mallet clock.
    pub(crate) fn sounds(&self, sought: MalletSound) -> bool {
        let clocks = self.look().sections.iter().flat_map(|s| s.mallet.iter());
        self.base_sounds()
            .into_iter()
            .flatten()
            .any(|s| s == sought)
            || clocks.into_iter().any(|s| *s == sought)
    }

    /// Whether anybody has to climb, as far as it was decided.
    pub(crate) fn need(&self) -> ClimbNeed {
        need(self.tree)
    }

    /// Whether the tree is judged for a climb: one is needed or undecided, or one is planned.
    pub(crate) fn is_climbed(&self) -> bool {
        self.need() != ClimbNeed::NotNeeded || !self.look().plans.is_empty()
    }

    /// Whether somebody works on the tree at all.
    pub(crate) fn is_worked_on(&self) -> bool {
        !matches!(
            self.tree.way,
            Some(WayOfWorking::NoWork | WayOfWorking::InspectOnly)
        )
    }

    /// Whether parts of the tree are cut and come down in pieces.
    pub(crate) fn drops_pieces(&self) -> bool {
        matches!(
            self.tree.way,
            Some(
                WayOfWorking::Prune
                    | WayOfWorking::SectionFreeDrop
                    | WayOfWorking::SectionRigged
                    | WayOfWorking::FellShortened
            )
        )
    }

    /// Whether the tree is taken down.
    pub(crate) fn is_removed(&self) -> bool {
        matches!(
            self.tree.way,
            Some(
                WayOfWorking::SectionFreeDrop
                    | WayOfWorking::SectionRigged
                    | WayOfWorking::FellShortened
                    | WayOfWorking::FellWhole
            )
        )
    }
}

/// Whether anybody has to climb a tree: not where nothing is cut, where it is felled from the
/// ground, or where the ground, a platform, a crane or a neighbouring tree serves.
pub(crate) fn need(tree: &Tree) -> ClimbNeed {
    let other = tree.other_access.iter().flatten();
    if other.into_iter().any(|way| *way != OtherAccess::NoOther) {
        return ClimbNeed::NotNeeded;
    }
    match tree.way {
        None => ClimbNeed::Undecided,
        Some(
            WayOfWorking::InspectOnly
            | WayOfWorking::NoWork
            | WayOfWorking::FellWhole
            | WayOfWorking::PlatformOrCrane,
        ) => ClimbNeed::NotNeeded,
        Some(_) => ClimbNeed::Needed,
    }
}
