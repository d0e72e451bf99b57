//! The working of one height of the stem, line by line, at central values.

use super::{Diameter, StemModel};
use crate::judge::inputs::Values;
use crate::judge::rules::Rule;
use crate::judge::section::solid_modulus_cm3;
use crate::judge::statics::GRAVITY_MS2;
use crate::judge::stem_load::stress_mpa;
use crate::judge::wood::WoodValue;
use crate::judge::working::{Working, source_of};
use crate::record::Quantity;

impl StemModel<'_> {
    /// The working at central values.
    pub(crate) fn explain(&self, x: &Values, wood: &WoodValue, lines: &mut Working) {
        use Quantity::{
            AngleDeg, DensityKgM3, ForceKn, LengthCm, LengthM, MassKg, ModulusCm3, MomentKnM,
            Percent, Ratio, StressMpa,
        };
        let id = &self.id;
        let house = "Bolewalk house value";
        let above = self.above(x);
        match self.diameter {
            Diameter::ByTaper { girth, .. } => lines
                .line(
                    "work.stem-diameter",
                    "D = G/π ((H - z)/(H - 1.3))^q",
                    self.over_bark_cm(x),
                    LengthCm,
                )
                .about(id)
                .input("G", x.of(girth), LengthCm)
                .input("H", x.of(self.height), LengthM)
                .input("z", self.height_m, LengthM)
                .input("q", self.rules.number(Rule::StemTaperExponent), Ratio)
                .spread(self.rules.number(Rule::StemTaperCv) * self.over_bark_cm(x))
                .source(house),
            Diameter::Measured(_) => lines
                .line(
                    "work.stem-diameter",
                    "D as measured",
                    self.over_bark_cm(x),
                    LengthCm,
                )
                .about(id)
                .source("Measured at the section"),
        }
        lines
            .line(
                "work.stem-wood",
                "d = D (1 - b)",
                above.diameter_cm,
                LengthCm,
            )
            .about(id)
            .input("D", self.over_bark_cm(x), LengthCm)
            .input("b", self.bark_share, Ratio)
            .source("Bark as read, else its share of the wood's volume by species");
        lines
            .line(
                "work.stem-length-above",
                "L = (H - z)/cos θ",
                above.length_m(),
                LengthM,
            )
            .about(id)
            .input("H", above.tip_m, LengthM)
            .input("z", self.height_m, LengthM)
            .input("θ", above.lean_deg, AngleDeg)
            .source("Plane trigonometry");
        lines
            .line(
                "work.stem-mass",
                "m = ρ f π/4 (d/100)² L (1 + r)",
                above.mass_kg(),
                MassKg,
            )
            .about(id)
            .input("ρ", above.density_kg_m3, DensityKgM3)
            .input("f", above.form_factor, Ratio)
            .input("d", above.diameter_cm, LengthCm)
            .input("L", above.length_m(), LengthM)
            .input("r", above.branch_share, Ratio)
            .source(house);
        lines
            .line(
                "work.stem-own-moment",
                "M = m g/1000 · c L sin θ",
                above.own_moment_knm(),
                MomentKnM,
            )
            .about(id)
            .input("m", above.mass_kg(), MassKg)
            .input("g", GRAVITY_MS2, Ratio)
            .input("c", above.centre_share, Ratio)
            .input("L", above.length_m(), LengthM)
            .input("θ", above.lean_deg, AngleDeg)
            .source("Plane statics; centre of mass: house value");
        lines
            .line(
                "work.stem-climber-moment",
                "M = F (A - z)/cos θ · sin(min(90°, θ + y))",
                self.climber_moment_knm(x),
                MomentKnM,
            )
            .about(id)
            .input("F", self.force_kn(x), ForceKn)
            .input("A", self.anchor_m.unwrap_or(above.tip_m), LengthM)
            .input("z", self.height_m, LengthM)
            .input("θ", above.lean_deg, AngleDeg)
            .input("y", self.rules.number(Rule::LoadPullStrayDeg), AngleDeg)
            .source("Plane statics; stray of the pull: house value");
        let found = self.margin(x);
        if self.shell.is_some() {
            lines
                .line(
                    "work.modulus-left-steady",
                    "W = min over directions and lines of ∫(y - y0)² dA/(h - y0), of the solid stem",
                    found.steady_left_pct,
                    Percent,
                )
                .about(id)
                .input("W elastic", found.modulus_left_pct, Percent)
                .source("Strength of materials; the lower bound is Bolewalk's own, so that losing wood never helps");
        }
        let kept = solid_modulus_cm3(above.diameter_cm) * found.steady_left_pct / 100.0;
        lines
            .line("work.stem-modulus", "W = π d³/32 · p/100", kept, ModulusCm3)
            .about(id)
            .input("d", above.diameter_cm, LengthCm)
            .input("p", found.steady_left_pct, Percent)
            .source("Strength of materials");
        let moment = above.own_moment_knm() + self.climber_moment_knm(x);
        lines
            .line(
                "work.stem-stress",
                "σ = 1000 M/W",
                stress_mpa(moment, kept),
                StressMpa,
            )
            .about(id)
            .input("M", moment, MomentKnM)
            .input("W", kept, ModulusCm3)
            .source("Strength of materials");
        let [.., strength, grain] = self.shared;
        lines
            .line("work.stem-margin", "n = MOR k/σ", found.margin, Ratio)
            .about(id)
            .input("MOR", x.of(strength), StressMpa)
            .input("k", x.of(grain), Ratio)
            .input("σ", stress_mpa(moment, kept), StressMpa)
            .source(&format!(
                "{}; knots and grain: house value",
                source_of(wood)
            ));
    }
}
