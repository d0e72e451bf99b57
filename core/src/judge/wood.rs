//! Green wood: density, bending strength and bark of a species or a genus, each with its spread,
//! its source and how sure that source is.
//!
//! Tabulated strengths are those of clear, straight-grained small pieces. What is not tabulated for
//! a species is taken from its genus, then from the general function of specific gravity, with the
//! spread that this costs.

mod lookup;
mod species;

use crate::record::Id;

use super::rules::{Rule, RuleLabel, RuleSet};

pub use species::{DeadBrittle, HeightForDiameter, Species, WoodKind, WoodStrength};

/// Megapascals in one pound-force per square inch.
pub const MPA_PER_PSI: f64 = 0.006_894_757;
/// Density of water in kilograms per cubic metre.
const WATER_KG_M3: f64 = 1000.0;
/// Share of the wood's volume that bark adds where no kind is known; the middle of the table.
const USUAL_BARK_VOLUME_PCT: f64 = 15.0;

/// What a value of the wood rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum WoodBasis {
    /// A table's row for the species.
    Species,
    /// The mean of the genus' rows.
    Genus,
    /// The general function of specific gravity, or the mean of all broadleaves or conifers.
    General,
}

/// A value with its spread and source.
#[derive(Debug, Clone, PartialEq)]
pub struct WoodValue {
    /// The value in its unit.
    pub value: f64,
    /// Coefficient of variation.
    pub cv: f64,
    /// What it rests on.
    pub basis: WoodBasis,
    /// The published work.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
}

/// The green wood of a tree.
#[derive(Debug, Clone, PartialEq)]
pub struct GreenWood {
    /// Green density in kilograms per cubic metre, without bark.
    pub density_kg_m3: WoodValue,
    /// Bending strength (modulus of rupture) in megapascals.
    pub strength_mpa: WoodValue,
    /// Bark as a share of the wood's volume in percent.
    pub bark_volume_pct: f64,
    /// Broadleaf, conifer or palm; nothing where the species is unknown.
    pub kind: Option<WoodKind>,
    /// Limbs break without warning: a larger anchor is asked.
    pub brittle: bool,
    /// What its wood does once it is dead.
    pub dead_brittle: DeadBrittle,
}

impl GreenWood {
    /// The wood of a species by its Latin name, of a genus, or of a tree that nobody named.
    /// Case, authors, cultivars and hybrid signs do not matter.
    pub fn of(name: Option<&str>, rules: &RuleSet) -> GreenWood {
        let sought = lookup::Sought::of(name.unwrap_or_default());
        let relatives = sought.relatives();
        let gravity = sought.gravity();
        let density = sought.density(rules.number(Rule::WoodDensityCv));
        let strength = sought.strength().map_or_else(
            || general_strength(&gravity, rules),
            |row| tabulated_strength(&row, rules),
        );
        GreenWood {
            density_kg_m3: density,
            strength_mpa: strength,
            bark_volume_pct: sought.bark_volume_pct().unwrap_or(USUAL_BARK_VOLUME_PCT),
            kind: relatives.first().map(|species| species.kind),
            brittle: sought.brittle(),
            dead_brittle: sought.dead_brittle(),
        }
    }

    /// Thickness of the bark in centimetres on a stem of this diameter over bark, from the share of
    /// the volume: d/2 · (1 − 1/√(1 + p/100)).
    pub fn usual_bark_cm(&self, diameter_over_bark_cm: f64) -> f64 {
        let ratio = 1.0 / libm::sqrt(1.0 + self.bark_volume_pct / 100.0);
        diameter_over_bark_cm / 2.0 * (1.0 - ratio)
    }
}

/// Bending strength of green wood in megapascals from its specific gravity on green volume,
/// 17,600 G^1.25 psi (TM 5-852-4, table 2-2, courtesy of the Forest Products Laboratory).
pub fn strength_from_gravity_mpa(gravity: f64) -> f64 {
    17_600.0 * libm::pow(gravity, 1.25) * MPA_PER_PSI
}

/// Modulus of elasticity of green wood in megapascals, 2,360,000 G psi (as above).
pub fn elasticity_from_gravity_mpa(gravity: f64) -> f64 {
    2_360_000.0 * gravity * MPA_PER_PSI
}

/// Crushing strength of green wood along the grain in megapascals, 6,730 G psi (as above).
pub fn crushing_from_gravity_mpa(gravity: f64) -> f64 {
    6_730.0 * gravity * MPA_PER_PSI
}

/// A tabulated strength corrected for a measured green density, in simple proportion
/// (Spatz & Pfisterer 2013, Arboriculture & Urban Forestry 39(5):218–225).
pub fn strength_at_density_mpa(
    table_mpa: f64,
    table_density_kg_m3: f64,
    measured_density_kg_m3: f64,
) -> f64 {
    table_mpa * measured_density_kg_m3 / table_density_kg_m3
}

/// Green density in kilograms per cubic metre from specific gravity on green volume and the
/// moisture in percent of the dry mass.
pub fn green_density_kg_m3(gravity: f64, moisture_pct: f64) -> f64 {
    gravity * (1.0 + moisture_pct / 100.0) * WATER_KG_M3
}

/// Every species of the table, in the order of their Latin names.
pub fn all_species() -> &'static [Species] {
    species::species_table()
}

/// The row of a species by its Latin name, however it is written; nothing for a bare genus.
pub fn find_species(name: &str) -> Option<&'static Species> {
    lookup::Sought::of(name).species()
}

/// The fixed id of a species, its Latin name in lower case with hyphens: `quercus-rubra`.
pub fn species_id(species: &Species) -> Id {
    Id(species.latin_name.to_lowercase().replace(' ', "-"))
}

fn tabulated_strength(row: &lookup::StrengthRow, rules: &RuleSet) -> WoodValue {
    let table_cv = match row.label {
        RuleLabel::Confirmed | RuleLabel::SecondHand => rules.number(Rule::WoodConfirmedCv),
        _ => rules.number(Rule::WoodMemoryCv),
    };
    let cv = match row.basis {
        WoodBasis::Species => row
            .deviation_mpa
            .map_or(table_cv, |deviation| deviation / row.strength_mpa),
        // A genus hides which of its species it is.
        _ => rules.number(Rule::WoodGeneralCv),
    };
    WoodValue {
        value: row.strength_mpa,
        cv,
        basis: row.basis,
        source: row.source.clone(),
        label: row.label,
    }
}

fn general_strength(gravity: &WoodValue, rules: &RuleSet) -> WoodValue {
    WoodValue {
        value: strength_from_gravity_mpa(gravity.value),
        cv: rules.number(Rule::WoodGeneralCv),
        basis: WoodBasis::General,
        source: "TM 5-852-4 (AFM 88-19 ch. 4), table 2-2: general function of specific gravity"
            .to_owned(),
        label: gravity.label,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wood(name: &str) -> GreenWood {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        GreenWood::of(Some(name), &rules)
    }

    #[test]
    fn a_named_species_has_its_own_row_and_a_genus_the_wider_spread() {
        // Wood Handbook FPL-GTR-190 (2010): sugar maple, green, 65 MPa.
        let maple = wood("Acer saccharum");
        assert_eq!(maple.strength_mpa.value, 65.0);
        assert_eq!(maple.strength_mpa.basis, WoodBasis::Species);
        assert_eq!(maple.strength_mpa.cv, 0.16);
        let genus = wood("Acer");
        assert_eq!(genus.strength_mpa.basis, WoodBasis::Genus);
        assert_eq!(genus.strength_mpa.cv, 0.30);
        assert!(genus.strength_mpa.value <= maple.strength_mpa.value);
    }

    #[test]
    fn a_printed_deviation_goes_before_the_usual_spread() {
        // ASTM D2555: baldcypress 6640 ± 1062 psi.
        let cypress = wood("Taxodium distichum");
        assert!((cypress.strength_mpa.cv - 1062.0 / 6640.0).abs() < 0.001);
    }

    #[test]
    fn writing_does_not_matter() {
        let oak = wood("Quercus rubra");
        assert_eq!(wood("quercus RUBRA L."), oak);
        assert_eq!(wood("Quercus rubra 'Aurea'"), oak);
        assert_eq!(
            find_species("Platanus × acerifolia").map(|s| s.common_name.as_str()),
            Some("London plane")
        );
    }

    #[test]
    fn an_unknown_tree_has_the_general_function_and_thirty_percent() {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        let unknown = GreenWood::of(None, &rules);
        assert_eq!(unknown.strength_mpa.basis, WoodBasis::General);
        assert_eq!(unknown.strength_mpa.cv, 0.30);
        assert!((20.0..60.0).contains(&unknown.strength_mpa.value));
        assert!((600.0..1000.0).contains(&unknown.density_kg_m3.value));
        assert_eq!(GreenWood::of(Some("Planta incognita"), &rules), unknown);
    }

    #[test]
    fn bark_is_thicker_on_a_thicker_stem_and_thin_on_beech() {
        let (beech, oak) = (wood("Fagus grandifolia"), wood("Quercus rubra"));
        assert!(beech.usual_bark_cm(60.0) < oak.usual_bark_cm(60.0));
        // 20 % of the wood's volume: 30 (1 − 1/√1.2) cm.
        assert!((oak.usual_bark_cm(60.0) - 2.614).abs() < 0.001);
    }
}
