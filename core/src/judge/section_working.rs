//! The working of the sections: what each published formula says, from the walls read.

use crate::record::Quantity;

use super::section::solid_modulus_cm3;
use super::stem::SectionFacts;
use super::working::Working;

/// Lines for every section whose walls are known.
pub(crate) fn explain(facts: &[SectionFacts], lines: &mut Working) {
    for section in facts {
        let Some(found) = section.formulas else {
            continue;
        };
        let radius_cm = section.shell.radius_cm;
        // d/D back from Wagener's cube.
        let hole = libm::cbrt(found.wagener_pct / 100.0);
        let opening = found.opening_deg / 360.0;
        lines
            .line(
                "work.section-hole",
                "d/D = 1 - mean wall/R",
                hole,
                Quantity::Ratio,
            )
            .about(&section.id)
            .input("R", radius_cm, Quantity::LengthCm)
            .input("mean wall", radius_cm * (1.0 - hole), Quantity::LengthCm)
            .source("Equivalent round hole of the same mean wall");
        lines
            .line(
                "work.wagener",
                "100 (d/D)³",
                found.wagener_pct,
                Quantity::Percent,
            )
            .about(&section.id)
            .input("d/D", hole, Quantity::Ratio)
            .source("Wagener 1963");
        lines
            .line(
                "work.coder",
                "100 (d/D)⁴",
                found.coder_pct,
                Quantity::Percent,
            )
            .about(&section.id)
            .input("d/D", hole, Quantity::Ratio)
            .source("Coder 1989");
        lines
            .line(
                "work.smiley-fraedrich",
                "100 ((d/D)³ + r (1 - (d/D)³))",
                found.smiley_fraedrich_pct,
                Quantity::Percent,
            )
            .about(&section.id)
            .input("d/D", hole, Quantity::Ratio)
            .input("r", opening, Quantity::Ratio)
            .source("Smiley & Fraedrich 1992");
        lines
            .line(
                "work.shell-ratio",
                "t/R",
                found.least_shell_ratio,
                Quantity::Ratio,
            )
            .about(&section.id)
            .input("t", found.least_shell_ratio * radius_cm, Quantity::LengthCm)
            .input("R", radius_cm, Quantity::LengthCm)
            .source("Mattheck & Breloer 1994; not for open cavities");
        let solid = solid_modulus_cm3(2.0 * radius_cm);
        lines
            .line(
                "work.modulus-left",
                "W left in the weakest direction by unsymmetrical bending, of π D³/32",
                section.modulus_left_pct,
                Quantity::Percent,
            )
            .about(&section.id)
            .input("D", 2.0 * radius_cm, Quantity::LengthCm)
            .input("π D³/32", solid, Quantity::ModulusCm3)
            .source("Strength of materials: product of inertia over the rim");
    }
}
