//! How a written name finds its rows: the species, else its genus, else all that are alike.

use super::species::{DeadBrittle, Species, WoodKind, species_table, strength_table};
use super::{RuleLabel, WoodBasis, WoodValue, green_density_kg_m3};

/// A strength found for a name.
pub(super) struct StrengthRow {
    pub strength_mpa: f64,
    pub deviation_mpa: Option<f64>,
    pub basis: WoodBasis,
    pub source: String,
    pub label: RuleLabel,
}

/// A name as somebody wrote it, cut down to genus and species.
pub(super) struct Sought {
    genus: String,
    species: Option<String>,
}

impl Sought {
    pub(super) fn of(name: &str) -> Sought {
        let lower = name.to_lowercase().replace(['×', '\u{2a2f}'], " x ");
        let mut words = lower.split_whitespace();
        let genus = words.next().unwrap_or_default().to_owned();
        let next = words.next();
        let epithet = match next {
            Some("x") => words.next().map(|word| format!("x {word}")),
            Some("sp." | "spp." | "sp" | "spp") | None => None,
            Some(word) => Some(word.to_owned()),
        };
        let plain =
            epithet.filter(|word| word.chars().all(|c| c.is_alphabetic() || " -".contains(c)));
        Sought {
            species: plain.map(|word| format!("{genus} {word}")),
            genus,
        }
    }

    fn is(&self, latin_name: &str) -> bool {
        let known = latin_name.to_lowercase();
        match &self.species {
            Some(s) => *s == known || s.replace(" x ", " ") == known.replace(" x ", " "),
            // A row of a whole genus.
            None => self.genus == known,
        }
    }

    pub(super) fn species(&self) -> Option<&'static Species> {
        species_table().iter().find(|row| self.is(&row.latin_name))
    }

    /// The species itself first, then the others of its genus.
    pub(super) fn relatives(&self) -> Vec<&'static Species> {
        let own = self.species();
        let others = species_table()
            .iter()
            .filter(|row| row.genus.to_lowercase() == self.genus)
            .filter(|row| own.is_none_or(|own| own.latin_name != row.latin_name));
        own.into_iter().chain(others).collect()
    }

    /// Species of the same kind, or all where the genus is unknown too; palms have no such wood.
    fn alike(&self) -> Vec<&'static Species> {
        let kind = self.relatives().first().map(|species| species.kind);
        species_table()
            .iter()
            .filter(|row| row.kind != WoodKind::Palm && kind.is_none_or(|kind| row.kind == kind))
            .collect()
    }

    /// Specific gravity: the species', else the mean of the genus, else of all alike.
    pub(super) fn gravity(&self) -> WoodValue {
        self.first_or_mean("specific gravity", 0.10, |species| species.gravity)
    }

    /// Green density, found the same way.
    pub(super) fn density(&self, cv: f64) -> WoodValue {
        self.first_or_mean("green density", cv, |species| {
            Some(green_density_kg_m3(species.gravity?, species.moisture_pct?))
        })
    }

    pub(super) fn bark_volume_pct(&self) -> Option<f64> {
        let relatives = self.relatives();
        let own = self.species().and_then(|species| species.bark_volume_pct);
        own.or_else(|| mean(relatives.iter().filter_map(|s| s.bark_volume_pct)))
    }

    /// A genus of which any species is brittle counts as brittle: the lower verdict holds.
    pub(super) fn brittle(&self) -> bool {
        match self.species() {
            Some(species) => species.brittle,
            None => self.relatives().iter().any(|species| species.brittle),
        }
    }

    pub(super) fn dead_brittle(&self) -> DeadBrittle {
        self.relatives()
            .first()
            .map_or(DeadBrittle::No, |species| species.dead_brittle)
    }

    /// The species' row, else the mean of its genus.
    pub(super) fn strength(&self) -> Option<StrengthRow> {
        let rows = strength_table();
        if let Some(row) = rows.iter().find(|row| self.is(&row.latin_name)) {
            return Some(StrengthRow {
                strength_mpa: row.bending_strength_mpa,
                deviation_mpa: row.standard_deviation_mpa,
                basis: WoodBasis::Species,
                source: row.source.clone(),
                label: row.label,
            });
        }
        let of_genus = || {
            rows.iter().filter(|row| {
                row.latin_name.to_lowercase().split(' ').next() == Some(self.genus.as_str())
            })
        };
        let strength_mpa = mean(of_genus().map(|row| row.bending_strength_mpa))?;
        Some(StrengthRow {
            strength_mpa,
            deviation_mpa: None,
            basis: WoodBasis::Genus,
            source: format!("Mean of {} rows of the genus", of_genus().count()),
            label: of_genus().map(|row| row.label).max()?,
        })
    }

    fn first_or_mean(
        &self,
        what: &str,
        cv: f64,
        value: impl Fn(&Species) -> Option<f64>,
    ) -> WoodValue {
        if let Some((species, value)) = self.species().and_then(|s| Some((s, value(s)?))) {
            return WoodValue {
                value,
                cv,
                basis: WoodBasis::Species,
                source: species.green_source.clone(),
                label: species.green_label.unwrap_or(RuleLabel::Memory),
            };
        }
        let relatives = self.relatives();
        let (basis, name, pool) = if relatives.iter().any(|species| value(species).is_some()) {
            (WoodBasis::Genus, "the genus", relatives)
        } else {
            (WoodBasis::General, "the table", self.alike())
        };
        let values: Vec<f64> = pool.iter().filter_map(|species| value(species)).collect();
        let middle = mean(values.iter().copied()).unwrap_or(f64::NAN);
        WoodValue {
            value: middle,
            cv: libm::sqrt(cv * cv + spread(&values, middle)),
            basis,
            source: format!("Mean {what} of {} species of {name}", values.len()),
            label: pool
                .iter()
                .filter_map(|species| species.green_label)
                .max()
                .unwrap_or(RuleLabel::Memory),
        }
    }
}

fn mean(values: impl Iterator<Item = f64>) -> Option<f64> {
    let (sum, count) = values.fold((0.0, 0.0), |(sum, count), v| (sum + v, count + 1.0));
    (count > 0.0).then(|| sum / count)
}

/// Squared coefficient of variation among the values.
fn spread(values: &[f64], middle: f64) -> f64 {
    mean(
        values
            .iter()
            .map(|v| (v / middle - 1.0) * (v / middle - 1.0)),
    )
    .unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_genus_with_one_brittle_species_counts_as_brittle() {
        assert!(Sought::of("Acer").brittle());
        assert!(!Sought::of("Acer saccharum").brittle());
        assert_eq!(Sought::of("Betula sp.").dead_brittle(), DeadBrittle::Yes);
        assert_eq!(Sought::of("Fraxinus").dead_brittle(), DeadBrittle::Beetle);
    }
}
