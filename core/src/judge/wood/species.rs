//! The tables of species and of wood, read once, and how a written name finds its rows.

use std::sync::OnceLock;

use serde::Deserialize;
use serde::de::DeserializeOwned;

use super::RuleLabel;

/// Broadleaf, conifer or palm.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum WoodKind {
    /// Broadleaf.
    Broadleaf,
    /// Conifer.
    Conifer,
    /// Palm: no wood in the sense of the tables.
    Palm,
}

/// What the wood of a kind does once it is dead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum DeadBrittle {
    /// No more brittle than others.
    No,
    /// Brittle soon after death, whatever killed it.
    Yes,
    /// Brittle soon after beetles or dieback killed it.
    Beetle,
}

/// How high a species usually is for its diameter: ln H = a + b ln D ± s, in metres and
/// centimetres, diameter at breast height.
#[derive(Debug, Clone, PartialEq)]
pub struct HeightForDiameter {
    /// Intercept.
    pub a: f64,
    /// Slope.
    pub b: f64,
    /// Residual standard deviation in logarithms.
    pub s: f64,
    /// Trees measured.
    pub trees: u32,
    /// The published work.
    pub source: String,
}

impl HeightForDiameter {
    /// Usual height in metres for a diameter at breast height in centimetres, `spreads` standard
    /// deviations off.
    pub fn height_m(&self, diameter_cm: f64, spreads: f64) -> f64 {
        libm::exp(self.a + self.b * libm::log(diameter_cm) + spreads * self.s)
    }
}

/// A species of the table.
#[derive(Debug, Clone, PartialEq)]
pub struct Species {
    /// Latin name without author.
    pub latin_name: String,
    /// Common name in US English.
    pub common_name: String,
    /// Genus.
    pub genus: String,
    /// Broadleaf, conifer or palm.
    pub kind: WoodKind,
    /// Specific gravity on green volume; nothing where no table has it.
    pub gravity: Option<f64>,
    /// Moisture of green wood in percent of the dry mass.
    pub moisture_pct: Option<f64>,
    /// Bark as a share of the wood's volume in percent.
    pub bark_volume_pct: Option<f64>,
    /// Source of the three values above.
    pub green_source: String,
    /// How sure that source is.
    pub green_label: Option<RuleLabel>,
    /// Limbs break without warning.
    pub brittle: bool,
    /// What its wood does once it is dead.
    pub dead_brittle: DeadBrittle,
    /// Usual height for its diameter.
    pub height: Option<HeightForDiameter>,
}

/// A row of the table of wood: bending strength of clear green pieces.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WoodStrength {
    /// Latin name.
    pub latin_name: String,
    /// Bending strength (modulus of rupture) in megapascals.
    pub bending_strength_mpa: f64,
    /// Its standard deviation in megapascals, where printed.
    pub standard_deviation_mpa: Option<f64>,
    /// Specific gravity on green volume of the pieces tested.
    pub sg_green: Option<f64>,
    /// The published work.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SpeciesLine {
    latin_name: String,
    common_name: String,
    genus: String,
    kind: WoodKind,
    sg_green: Option<f64>,
    moisture_pct: Option<f64>,
    bark_volume_pct: Option<f64>,
    green_source: String,
    green_label: Option<RuleLabel>,
    brittle: String,
    dead_brittle: DeadBrittle,
    #[allow(dead_code)] // kept beside the flags for whoever reads the table
    brittle_source: String,
    #[allow(dead_code)] // as above
    brittle_label: RuleLabel,
    height_a: Option<f64>,
    height_b: Option<f64>,
    height_s: Option<f64>,
    height_n: Option<u32>,
    height_source: String,
}

impl From<SpeciesLine> for Species {
    fn from(line: SpeciesLine) -> Self {
        let fit = (line.height_a, line.height_b, line.height_s, line.height_n);
        let height = match fit {
            (Some(a), Some(b), Some(s), Some(trees)) => Some(HeightForDiameter {
                a,
                b,
                s,
                trees,
                source: line.height_source,
            }),
            _ => None,
        };
        Species {
            latin_name: line.latin_name,
            common_name: line.common_name,
            genus: line.genus,
            kind: line.kind,
            gravity: line.sg_green,
            moisture_pct: line.moisture_pct,
            bark_volume_pct: line.bark_volume_pct,
            green_source: line.green_source,
            green_label: line.green_label,
            brittle: line.brittle == "yes",
            dead_brittle: line.dead_brittle,
            height,
        }
    }
}

const SPECIES_CSV: &str = include_str!("../../../data/species.csv");
const WOOD_CSV: &str = include_str!("../../../data/wood.csv");

static SPECIES: OnceLock<Vec<Species>> = OnceLock::new();
static STRENGTHS: OnceLock<Vec<WoodStrength>> = OnceLock::new();

/// The table of species; a test holds that every line of the file is read.
pub(super) fn species_table() -> &'static [Species] {
    SPECIES.get_or_init(|| {
        lines::<SpeciesLine>(SPECIES_CSV)
            .map(Species::from)
            .collect()
    })
}

/// The table of wood; the same test holds for it.
pub(super) fn strength_table() -> &'static [WoodStrength] {
    STRENGTHS.get_or_init(|| lines(WOOD_CSV).collect())
}

fn lines<T: DeserializeOwned + 'static>(text: &'static str) -> impl Iterator<Item = T> {
    csv::Reader::from_reader(text.as_bytes())
        .into_deserialize()
        .filter_map(Result::ok)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_line_of_both_tables_is_read_and_makes_sense() {
        assert_eq!(species_table().len() + 1, SPECIES_CSV.lines().count());
        assert_eq!(strength_table().len() + 1, WOOD_CSV.lines().count());
        assert!(species_table().len() >= 90);
        for row in species_table() {
            assert!(row.latin_name.starts_with(&row.genus), "{}", row.latin_name);
            assert!(!row.common_name.is_empty());
            if let Some(gravity) = row.gravity {
                assert!((0.25..1.0).contains(&gravity), "{}", row.latin_name);
                assert!(!row.green_source.is_empty() && row.green_label.is_some());
            }
        }
        for row in strength_table() {
            assert!((25.0..100.0).contains(&row.bending_strength_mpa));
            assert!(!row.source.is_empty());
            assert!(
                species_table()
                    .iter()
                    .any(|s| s.latin_name == row.latin_name)
            );
        }
    }

    #[test]
    fn names_stand_once_and_in_order() {
        let names: Vec<_> = species_table().iter().map(|s| &s.latin_name).collect();
        assert!(names.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
