//! What each grade of a code looks like: a part of a tree from the side, with the defect in solid
//! ink as far as the grade's sentence says it goes.
//!
//! Not to scale of any tree: made to be told apart at the size of a thumb, in one colour.

mod fungi;
mod on_ground;
mod on_wood;
mod sketch;
mod things;
mod union;
mod whole_tree;
mod wood;

use self::sketch::Sketch;
use self::wood::Wood;
use super::drawing::{Drawing, StyleRole};
use crate::record::{DefectKind, TreePart, UnionForm};

/// What stands around the defect.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Setting {
    /// The base with its flare, the ground and the roots.
    Base,
    /// A length of stem.
    Stem,
    /// A fork.
    Union,
    /// A limb at its stem.
    Limb,
    /// A tree from root to tip.
    WholeTree,
}

/// A grade, 1 to 3, of a defect on a part of the tree; without a part, where its kind is met most.
/// `described` is the sentence of the grade. A grade beyond 3 is drawn as 3.
pub fn grade_drawing(
    kind: DefectKind,
    part: Option<TreePart>,
    grade: u32,
    described: &str,
) -> Drawing {
    let setting = setting_of(kind, part);
    let grade = grade.clamp(1, 3);
    let mut sketch = Sketch::new(if setting == Setting::WholeTree {
        20.0
    } else {
        2.0
    });
    let wood = setting.draw(&mut sketch, kind, grade);
    draw_defect(&mut sketch, &wood, setting, kind, grade);
    sketch.finish(described)
}

/// A part of the tree: a tree from the side with that part in solid ink.
pub fn part_drawing(part: TreePart, described: &str) -> Drawing {
    let mut sketch = Sketch::new(20.0);
    whole_tree::part(&mut sketch, part);
    sketch.finish(described)
}

/// A fork as it looks from the ground; nothing for one that cannot be seen.
pub fn union_drawing(form: UnionForm, described: &str) -> Option<Drawing> {
    let mut sketch = Sketch::new(2.0);
    match form {
        UnionForm::BarkRidge => {
            wood::union(&mut sketch);
            union::bark_ridge(&mut sketch);
        }
        UnionForm::IncludedBark => {
            wood::union(&mut sketch);
            union::included_bark(&mut sketch, 2);
        }
        UnionForm::Opening => union::crack(&mut sketch, 3),
        UnionForm::NotSeen => return None,
    }
    Some(sketch.finish(described))
}

/// What a grade takes of three sizes.
fn by<T: Copy>(grade: u32, [slight, marked, grave]: [T; 3]) -> T {
    match grade {
        1 => slight,
        2 => marked,
        _ => grave,
    }
}

fn setting_of(kind: DefectKind, part: Option<TreePart>) -> Setting {
    use DefectKind as K;
    match kind {
        K::SoilMovement | K::RootsCut | K::GirdlingRoots | K::FireHollow => Setting::Base,
        K::Meripilus | K::Phaeolus | K::Armillaria => Setting::Base,
        K::UnionCrack | K::IncludedBark => Setting::Union,
        K::LimbCrack | K::Hanger => Setting::Limb,
        K::UnderTension | K::Dieback | K::TouchingWire => Setting::WholeTree,
        _ => match (part, kind) {
            (Some(TreePart::Roots | TreePart::Base), _) => Setting::Base,
            (Some(TreePart::Stem), _) => Setting::Stem,
            (Some(TreePart::Union), _) => Setting::Union,
            (Some(TreePart::Limb), _) => Setting::Limb,
            (Some(TreePart::Crown), K::DeadLimb) => Setting::WholeTree,
            (Some(TreePart::Crown), _) => Setting::Limb,
            (Some(TreePart::Around), _) => Setting::Stem,
            (None, K::Kretzschmaria | K::Heterobasidion | K::Ganoderma) => Setting::Base,
            (None, K::DeadLimb | K::Inonotus) => Setting::Limb,
            (None, _) => Setting::Stem,
        },
    }
}

impl Setting {
    /// Draws what stands around the defect, and says on which wood it is.
    fn draw(self, sketch: &mut Sketch, kind: DefectKind, grade: u32) -> Wood {
        match (self, kind) {
            (Setting::Base, DefectKind::SoilMovement) => Wood::BASE,
            (Setting::Base, _) => wood::base(sketch),
            (Setting::Stem, DefectKind::ToppingRegrowth) => Wood::STEM,
            (Setting::Stem, _) => wood::stem(sketch),
            (Setting::Union, DefectKind::UnionCrack) if grade == 3 => Wood::UNION,
            (Setting::Union, _) => wood::union(sketch),
            (Setting::Limb, _) => wood::limb(sketch),
            (Setting::WholeTree, _) => Wood::STEM,
        }
    }
}

fn draw_defect(sketch: &mut Sketch, wood: &Wood, setting: Setting, kind: DefectKind, grade: u32) {
    use DefectKind as K;
    match kind {
        K::SoilMovement => on_ground::soil(sketch, grade),
        K::RootsCut => on_ground::cut_roots(sketch, grade),
        K::GirdlingRoots => on_ground::girdling_roots(sketch, grade),
        K::Decay => on_wood::cavity(sketch, wood, grade),
        K::FireHollow => on_wood::burnt_base(sketch, grade),
        K::BracketUnnamed | K::Inonotus | K::Ganoderma | K::BracketOther => {
            fungi::brackets(sketch, wood, grade);
        }
        K::Kretzschmaria | K::Heterobasidion => fungi::crust(sketch, wood, grade),
        K::Meripilus | K::Phaeolus => fungi::rosettes(sketch, grade),
        K::Armillaria => fungi::clusters(sketch, grade),
        K::StemCrack | K::LimbCrack => on_wood::crack(sketch, wood, grade),
        K::UnionCrack => union::crack(sketch, grade),
        K::IncludedBark => union::included_bark(sketch, grade),
        K::LightningStrip => on_wood::lightning(sketch, wood, grade),
        K::UnderTension => whole_tree::under_tension(sketch, grade),
        K::Hanger => things::hanger(sketch, grade),
        K::DeadLimb if setting == Setting::WholeTree => whole_tree::dead_limbs(sketch, grade),
        K::DeadLimb => things::dead_limb(sketch, wood, grade),
        K::Dieback => whole_tree::dieback(sketch, grade),
        K::ToppingRegrowth => things::regrowth(sketch, setting == Setting::Stem, wood, grade),
        K::Wound => on_wood::wound(sketch, wood, grade),
        K::Canker => on_wood::canker(sketch, wood, grade),
        K::Climbers => things::climbers(sketch, wood, grade),
        K::StingingInsects => things::insects(sketch, wood, grade),
        K::NestOrRoost => things::nest(sketch, wood, grade),
        K::TouchingWire => whole_tree::touching_wire(sketch, grade),
        K::Other => on_wood::something(sketch, wood, grade),
    }
}

/// The ink of what is wrong.
const INK: StyleRole = StyleRole::Defect;

#[cfg(test)]
mod tests;
