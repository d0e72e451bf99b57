//! The stem at every section and at the base: its own weight where it leans, the climber at the
//! anchor, and what decay has left of it. Bending only.

mod working;

use std::f64::consts::PI;

use crate::record::{Id, StemSection};

use super::anchor::SharedInputs;
use super::inputs::{Inputs, Lot, Values};
use super::plan_case::PlanCase;
use super::rules::{Rule, RuleSet};
use super::section::{Shell, ShellFormulas, solid_modulus_cm3, wall_stream, walls_stream};
use super::spread::{girth_cv, height_cv, lean_se_deg};
use super::statics::{rope_system_factor, weight_kn};
use super::stem_load::{StemAbove, diameter_by_taper_cm, stress_mpa};
use super::tree_case::TreeCase;

/// Diameter over bark at a section: measured there, else worked out by taper from the girth.
pub(crate) fn seen_diameter_cm(case: &TreeCase, section: &StemSection) -> Option<f64> {
    let measured = section.girth_cm.map(|girth| girth / PI);
    measured.or(section.diameter_cm).or_else(|| {
        let height = case.look().height?;
        let exponent = case.site.rules.number(Rule::StemTaperExponent);
        let breast = case.breast_diameter_cm()?;
        let cm = diameter_by_taper_cm(breast, height.height_m, section.height_m, exponent);
        (cm > 0.0).then_some(cm)
    })
}

/// What the walls of a section say by the published formulas and by its modulus.
#[derive(Debug, Clone)]
pub(crate) struct SectionFacts {
    pub id: Id,
    pub height_m: f64,
    pub formulas: Option<ShellFormulas>,
    /// Section modulus left in the weakest direction, percent of the solid stem.
    pub modulus_left_pct: f64,
    /// The same by the measure that verdicts take: it never rises when wood is lost.
    pub steady_left_pct: f64,
    pub shell: Shell,
}

impl SectionFacts {
    /// Every section whose walls are known.
    pub(crate) fn all(case: &TreeCase) -> Vec<SectionFacts> {
        let sections = case.look().sections.iter();
        sections
            .filter_map(|section| SectionFacts::of(case, section))
            .collect()
    }

    fn of(case: &TreeCase, section: &StemSection) -> Option<SectionFacts> {
        let mut section = section.clone();
        if section.girth_cm.is_none() && section.diameter_cm.is_none() {
            section.diameter_cm = seen_diameter_cm(case, &section);
        }
        let shell = Shell::of(&section, &case.wood, case.site.rules)?;
        let ring = shell.central_ring()?;
        let points = rim_points(case.site.rules);
        let left = ring.properties(points);
        Some(SectionFacts {
            id: section.id.clone(),
            height_m: section.height_m,
            formulas: shell.formulas(points),
            modulus_left_pct: left.modulus_left_pct,
            steady_left_pct: left.steady_left_pct,
            shell,
        })
    }

    /// The largest loss by any published formula or by modulus, in percent.
    pub(crate) fn worst_loss_pct(&self) -> f64 {
        let by_modulus = 100.0 - self.steady_left_pct.min(self.modulus_left_pct);
        self.formulas.map_or(by_modulus, |found| {
            by_modulus
                .max(found.wagener_pct)
                .max(found.coder_pct)
                .max(found.smiley_fraedrich_pct)
        })
    }
}

/// Rim points of a section in a sample; the method allows 36 to 72.
const SAMPLED_RIM_POINTS: u32 = 36;

fn rim_points(rules: &RuleSet) -> u32 {
    rules.number(Rule::StemRimPoints).clamp(36.0, 72.0) as u32
}

/// One height of the stem that is judged: a section, or the base.
pub(crate) struct StemModel<'a> {
    /// The section's record, empty for the base.
    pub id: Id,
    pub height_m: f64,
    rules: &'a RuleSet,
    anchor_m: Option<f64>,
    system_factor: f64,
    /// Diameter over bark: an input of its own, or from the girth by taper.
    diameter: Diameter,
    bark_share: f64,
    bark: usize,
    height: usize,
    lean: usize,
    form: usize,
    branches: usize,
    centre: usize,
    shared: [usize; 5],
    shell: Option<ShellInputs>,
}

enum Diameter {
    Measured(usize),
    ByTaper { girth: usize, taper: usize },
}

struct ShellInputs {
    shell: Shell,
    points: Vec<usize>,
    between: usize,
}

/// Margin of a height of the stem and what is left of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct StemMargin {
    pub margin: f64,
    pub steady_left_pct: f64,
    pub modulus_left_pct: f64,
}

impl<'a> StemModel<'a> {
    /// Every section whose walls are known, and the base; nothing where a measure is missing.
    pub(crate) fn all(
        plan: &PlanCase<'a>,
        facts: &[SectionFacts],
        shared: &SharedInputs,
        inputs: &mut Inputs,
    ) -> Option<Vec<StemModel<'a>>> {
        let look = plan.case.look();
        (look.height.is_some() && look.lean.is_some() && look.girth.is_some()).then_some(())?;
        let mut models = vec![StemModel::at(plan, None, shared, inputs)?];
        for section in facts {
            models.push(StemModel::at(plan, Some(section), shared, inputs)?);
        }
        Some(models)
    }

    fn at(
        plan: &PlanCase<'a>,
        section: Option<&SectionFacts>,
        shared: &SharedInputs,
        inputs: &mut Inputs,
    ) -> Option<Self> {
        let case = plan.case;
        let (rules, look) = (case.site.rules, case.look());
        let (height, lean, girth) = (look.height?, look.lean?, look.girth?);
        let id = section
            .map(|section| section.id.clone())
            .unwrap_or_default();
        let key = stream_key(section);
        let name = |what: &str| format!("section.{key}.{what}");
        let own = section.and_then(|facts| measured_cm(case, facts));
        let diameter = match own {
            Some(cm) => Diameter::Measured(inputs.add(
                &name("diameter"),
                Lot::Lognormal {
                    median: cm,
                    cv: rules.number(Rule::MeasureGirthTapeCv),
                },
            )),
            None => Diameter::ByTaper {
                girth: inputs.add(
                    "girth",
                    Lot::Lognormal {
                        median: girth.girth_cm,
                        cv: girth_cv(&girth, rules),
                    },
                ),
                taper: inputs.add(
                    &name("taper"),
                    Lot::Lognormal {
                        median: 1.0,
                        cv: rules.number(Rule::StemTaperCv),
                    },
                ),
            },
        };
        // Bark as a share of the diameter: as read at the section or on the tree, else usual.
        let breast_cm = case.breast_diameter_cm()?;
        let bark_share = match section {
            Some(facts) => facts.shell.bark_cm / (facts.shell.radius_cm + facts.shell.bark_cm),
            None => {
                let usual = case.wood.usual_bark_cm(breast_cm);
                2.0 * look.bark_cm.unwrap_or(usual) / breast_cm
            }
        };
        let uniform = |low, high| Lot::Uniform {
            low: rules.number(low),
            high: rules.number(high),
        };
        Some(StemModel {
            height_m: section.map_or(0.0, |section| section.height_m),
            rules,
            anchor_m: plan.anchor.and_then(|anchor| anchor.height_m),
            system_factor: rope_system_factor(plan.system()),
            diameter,
            bark_share,
            bark: inputs.add(
                "wood.bark",
                Lot::Lognormal {
                    median: 1.0,
                    cv: rules.number(Rule::MeasureBarkCv),
                },
            ),
            height: inputs.add(
                "height",
                Lot::Lognormal {
                    median: height.height_m,
                    cv: height_cv(&height, rules),
                },
            ),
            lean: inputs.add(
                "lean",
                Lot::Folded {
                    mean: lean.lean_deg,
                    se: lean_se_deg(&lean, rules),
                },
            ),
            form: inputs.add(
                "stem.form",
                uniform(Rule::StemFormFactorLow, Rule::StemFormFactorHigh),
            ),
            branches: inputs.add(
                "stem.branches",
                uniform(Rule::StemBranchShareLow, Rule::StemBranchShareHigh),
            ),
            centre: inputs.add(
                "stem.centre",
                Lot::Normal {
                    mean: rules.number(Rule::StemCentreShare),
                    se: rules.number(Rule::StemCentreSe),
                },
            ),
            shared: [
                shared.mass,
                shared.dynamic,
                shared.density,
                shared.strength,
                shared.grain,
            ],
            shell: section.map(|facts| ShellInputs::of(&facts.shell, &key, inputs)),
            id,
        })
    }

    fn over_bark_cm(&self, x: &Values) -> f64 {
        match self.diameter {
            Diameter::Measured(input) => x.of(input),
            Diameter::ByTaper { girth, taper } => {
                let exponent = self.rules.number(Rule::StemTaperExponent);
                let breast = x.of(girth) / PI;
                diameter_by_taper_cm(breast, x.of(self.height), self.height_m, exponent)
                    * x.of(taper)
            }
        }
    }

    fn wood_cm(&self, x: &Values) -> f64 {
        let share = (self.bark_share * x.of(self.bark)).min(0.9);
        self.over_bark_cm(x) * (1.0 - share)
    }

    fn above(&self, x: &Values) -> StemAbove {
        StemAbove {
            tip_m: x.of(self.height),
            section_m: self.height_m,
            diameter_cm: self.wood_cm(x),
            lean_deg: x.of(self.lean),
            density_kg_m3: x.of(self.density()),
            form_factor: x.of(self.form),
            branch_share: x.of(self.branches),
            centre_share: x.of(self.centre).max(0.0),
        }
    }

    fn density(&self) -> usize {
        self.shared[2]
    }

    fn force_kn(&self, x: &Values) -> f64 {
        let [mass, dynamic, ..] = self.shared;
        weight_kn(x.of(mass)) * self.system_factor * x.of(dynamic)
    }

    fn strength_mpa(&self, x: &Values) -> f64 {
        let [.., strength, grain] = self.shared;
        x.of(strength) * x.of(grain)
    }

    fn climber_moment_knm(&self, x: &Values) -> f64 {
        let stray = self.rules.number(Rule::LoadPullStrayDeg);
        // Without an anchor's height the tip bears the climber, the longest lever there is.
        let anchor_m = self.anchor_m.unwrap_or(x.of(self.height));
        self.above(x)
            .climber_moment_knm(self.force_kn(x), anchor_m, stray)
    }

    /// The margin at central values, with the full number of rim points.
    pub(crate) fn margin(&self, x: &Values) -> StemMargin {
        self.margin_at(x, rim_points(self.rules))
    }

    /// The margin for one sample; half the rim points are enough.
    pub(crate) fn sampled_margin(&self, x: &Values) -> StemMargin {
        self.margin_at(x, SAMPLED_RIM_POINTS)
    }

    fn margin_at(&self, x: &Values, points: u32) -> StemMargin {
        let wood_cm = self.wood_cm(x);
        let (steady, modulus) = self.left_pct(x, wood_cm, points);
        let moment = self.above(x).own_moment_knm() + self.climber_moment_knm(x);
        let kept_cm3 = solid_modulus_cm3(wood_cm) * steady / 100.0;
        let stress = stress_mpa(moment, kept_cm3);
        StemMargin {
            margin: if stress > 0.0 {
                self.strength_mpa(x) / stress
            } else {
                f64::INFINITY
            },
            steady_left_pct: steady,
            modulus_left_pct: modulus,
        }
    }

    fn left_pct(&self, x: &Values, wood_cm: f64, points: u32) -> (f64, f64) {
        let Some(walls) = &self.shell else {
            return (100.0, 100.0);
        };
        let mut shell = walls.shell.clone();
        shell.radius_cm = wood_cm / 2.0;
        let point = |place: usize| {
            walls
                .points
                .get(place)
                .map_or(super::sampling::Draw::CENTRAL, |input| x.draw(*input))
        };
        shell
            .ring(point, x.draw(walls.between))
            .map_or((100.0, 100.0), |ring| {
                let left = ring.properties(points);
                (left.steady_left_pct, left.modulus_left_pct)
            })
    }

    /// Whether the height bears the route.
    pub(crate) fn is_under_route(&self) -> bool {
        self.anchor_m.is_none_or(|anchor| self.height_m <= anchor)
    }
}

impl ShellInputs {
    fn of(shell: &Shell, key: &str, inputs: &mut Inputs) -> Self {
        let points = (0..shell.points.len())
            .map(|place| inputs.add(&wall_stream(key, place), Lot::Bare))
            .collect();
        ShellInputs {
            shell: shell.clone(),
            points,
            between: inputs.add(&walls_stream(key), Lot::Bare),
        }
    }
}

/// What a section's streams are named by: its id, else its height; `base` for the base.
pub(crate) fn stream_key(section: Option<&SectionFacts>) -> String {
    match section {
        None => "base".to_owned(),
        Some(facts) if facts.id.is_empty() => format!("at-{:.2}", facts.height_m),
        Some(facts) => facts.id.0.clone(),
    }
}

/// The diameter that was measured at a section itself.
fn measured_cm(case: &TreeCase, facts: &SectionFacts) -> Option<f64> {
    let mut sections = case.look().sections.iter();
    let section = sections.find(|section| {
        section.id == facts.id && (section.height_m - facts.height_m).abs() < 1e-9
    })?;
    section
        .girth_cm
        .map(|girth| girth / PI)
        .or(section.diameter_cm)
}
