//! The working of an anchor, line by line, at central values.

use super::AnchorModel;
use crate::judge::inputs::Values;
use crate::judge::rules::Rule;
use crate::judge::statics::{GRAVITY_MS2, bending_stress_mpa, pull_moment_knm};
use crate::judge::wood::WoodValue;
use crate::judge::working::{Working, source_of};
use crate::record::Quantity;

impl AnchorModel<'_> {
    /// The working at central values, line by line.
    pub(crate) fn explain(&self, x: &Values, wood: &WoodValue, lines: &mut Working) {
        use Quantity::{AngleDeg, ForceKn, LengthCm, LengthM, MassKg, MomentKnM, Ratio, StressMpa};
        let id = &self.anchor.id;
        let margins = self.margins(x);
        let house = "Bolewalk house value";
        lines
            .line(
                "work.anchor-wood",
                "d = D (1 - b)",
                self.wood_cm(x),
                LengthCm,
            )
            .about(id)
            .input("D", x.of(self.diameter), LengthCm)
            .input("b", self.bark_share, Ratio)
            .source("Bark as a share of the wood's volume by species; diameter as read");
        lines
            .line(
                "work.anchor-force",
                "F = m g s k / 1000",
                self.work_force_kn(x),
                ForceKn,
            )
            .about(id)
            .input("m", x.of(self.mass), MassKg)
            .input("g", GRAVITY_MS2, Ratio)
            .input("s", self.system_factor, Ratio)
            .input("k", x.of(self.dynamic), Ratio)
            .source("Plane statics of the rope system; dynamic factor of work: house value");
        lines
            .line(
                "work.anchor-lever",
                "l = max(u, D/2 + e) / 100",
                self.lever_m(x),
                LengthM,
            )
            .about(id)
            .input("u", self.from_union_cm, LengthCm)
            .input("D", x.of(self.diameter), LengthCm)
            .input("e", self.rules.number(Rule::LoadLeverExtraCm), LengthCm)
            .source(house);
        let pull = pull_moment_knm(
            self.work_force_kn(x),
            self.lever_m(x),
            x.of(self.angle),
            self.stray_deg(),
        );
        lines
            .line(
                "work.anchor-pull",
                "M = F l sin(min(90°, a + y))",
                pull,
                MomentKnM,
            )
            .about(id)
            .input("F", self.work_force_kn(x), ForceKn)
            .input("l", self.lever_m(x), LengthM)
            .input("a", x.of(self.angle), AngleDeg)
            .input("y", self.stray_deg(), AngleDeg)
            .source("Plane statics; stray of the pull: house value");
        let own = self.own_moment_knm(x);
        let length_m = self.length.map_or(0.0, |length| x.of(length));
        lines
            .line(
                "work.anchor-own-weight",
                "M = 0 up to a0, else ρ v π/4 (d/100)² L (1 + r) g/1000 · c L sin(min(90°, a))",
                own,
                MomentKnM,
            )
            .about(id)
            .input(
                "a0",
                self.rules.number(Rule::LoadLimbWeightFromDeg),
                AngleDeg,
            )
            .input("a", x.of(self.angle), AngleDeg)
            .input("ρ", x.of(self.density), Quantity::DensityKgM3)
            .input("v", self.rules.number(Rule::LoadLimbVolumeFactor), Ratio)
            .input("d", self.wood_cm(x), LengthCm)
            .input("L", length_m, LengthM)
            .input("r", self.rules.number(Rule::LoadLimbBranchesShare), Ratio)
            .input("c", self.rules.number(Rule::LoadLimbCentreShare), Ratio)
            .source(house);
        let stress = bending_stress_mpa(pull + own, self.wood_cm(x));
        lines
            .line(
                "work.anchor-stress",
                "σ = 32 M / (π (d/100)³) / 1000",
                stress,
                StressMpa,
            )
            .about(id)
            .input("M", pull + own, MomentKnM)
            .input("d", self.wood_cm(x), LengthCm)
            .source("Strength of materials, round sound section");
        lines
            .line("work.anchor-strength", "R = MOR k u", self.strength_mpa(x), StressMpa)
            .about(id)
            .input("MOR", x.of(self.strength), StressMpa)
            .input("k", x.of(self.grain), Ratio)
            .input("u", self.union_left(x), Ratio)
            .spread(wood.cv * self.strength_mpa(x))
            .source(&format!(
                "{}; knots and grain: house value; union: Smiley 2003, Journal of Arboriculture 29(2)",
                source_of(wood)
            ));
        for (what, value, force) in [
            ("work.anchor-margin", margins.work, self.work_force_kn(x)),
            ("work.rescue-margin", margins.rescue, self.rescue_force_kn()),
            ("work.slip-margin", margins.slip, self.slip_force_kn(x)),
        ] {
            lines
                .line(
                    what,
                    "n = R / σ(F), σ as for the working load",
                    value,
                    Ratio,
                )
                .about(id)
                .input("R", self.strength_mpa(x), StressMpa)
                .input("F", force, ForceKn)
                .source("Strength over stress at central values");
        }
    }
}
