//! The rule set of a region: every distance, factor and threshold as data, each with its source.
//!
//! A rule set is read once from its file and refused if a row is missing, unknown, out of its own
//! range or without a source. Values that a crew has changed ([`HouseValue`]) are laid over it and
//! checked against the row's range; published minima have no range and stay.

mod file;
mod ordered;
mod row;
mod rule;

use std::sync::OnceLock;

use crate::error::BookError;
use crate::record::{Fault, HouseValue, Id};

pub use row::{AltitudeBand, ApproachBand, RuleLabel, RuleRow};
pub use rule::Rule;

/// A region's rule set, complete: each [`Rule`] has its row.
#[derive(Debug, Clone, PartialEq)]
pub struct RuleSet {
    id: Id,
    name: String,
    /// In the order of [`Rule::ALL`].
    rows: Vec<RuleRow>,
    approach_bands: Vec<ApproachBand>,
    altitude_bands: Vec<AltitudeBand>,
}

static US: OnceLock<Result<RuleSet, BookError>> = OnceLock::new();

impl RuleSet {
    /// The ids of the rule sets that ship.
    pub const SHIPPED: &'static [&'static str] = &["us"];

    /// The rule set with this id as it ships; an empty id means the United States, the only one so
    /// far.
    ///
    /// # Errors
    /// `NotFound` for an id that does not ship; `Refused` when the file has faults.
    pub fn shipped(id: &Id) -> Result<RuleSet, BookError> {
        match id.as_str() {
            "" | "us" => US
                .get_or_init(|| RuleSet::from_toml(include_str!("../../data/rulesets/us.toml")))
                .clone(),
            other => Err(BookError::NotFound {
                kind: "rule set".to_owned(),
                id: other.to_owned(),
            }),
        }
    }

    /// Reads a rule set from its file.
    ///
    /// # Errors
    /// `Refused` with every fault: a row missing, unknown, doubled, without a source, with a value
    /// that is not a number or outside its own range.
    pub fn from_toml(text: &str) -> Result<RuleSet, BookError> {
        file::read(text)
    }

    /// This rule set with the crew's own values in place of the shipped ones; values of other rule
    /// sets are passed over. Of several for one row the last counts.
    ///
    /// # Errors
    /// `Refused` with every fault: a row that is unknown or may not be changed, a value outside the
    /// row's range. Nothing is changed then.
    pub fn with_house_values(&self, changed: &[HouseValue]) -> Result<RuleSet, BookError> {
        let mut rules = self.clone();
        let mut faults = Vec::new();
        for value in changed.iter().filter(|value| value.rule_set == self.id) {
            if let Err(fault) = rules.change(value) {
                faults.push(fault);
            }
        }
        if faults.is_empty() {
            Ok(rules)
        } else {
            Err(BookError::Refused { faults })
        }
    }

    fn change(&mut self, changed: &HouseValue) -> Result<(), Fault> {
        let place = format!("/house_values/{}", changed.row);
        let row = Rule::of_id(&changed.row)
            .and_then(|rule| self.rows.get_mut(rule as usize))
            .ok_or_else(|| {
                Fault::new(
                    "fault.unknown-rule",
                    &place,
                    &changed.row,
                    "a row of the rule set",
                )
            })?;
        let (Some(min), Some(max)) = (row.min, row.max) else {
            let allowed = format!("{} {}", row.value, row.quantity.unit_symbol());
            return Err(Fault::new(
                "fault.rule-fixed",
                &place,
                changed.value,
                allowed.trim_end(),
            ));
        };
        if !(changed.value.is_finite() && changed.value >= min && changed.value <= max) {
            let allowed = format!("{min} to {max} {}", row.quantity.unit_symbol());
            return Err(Fault::new(
                "fault.out-of-range",
                &place,
                changed.value,
                allowed.trim_end(),
            ));
        }
        row.value = changed.value;
        row.changed_by = Some(changed.by.clone());
        row.label = RuleLabel::House;
        Ok(())
    }

    /// The id of the rule set.
    pub fn id(&self) -> &Id {
        &self.id
    }

    /// The region's name in English.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The value of a row in its quantity's base unit.
    pub fn number(&self, rule: Rule) -> f64 {
        self.row(rule).value
    }

    /// A row with its value, unit, source and label.
    pub fn row(&self, rule: Rule) -> &RuleRow {
        // `file::read` lets no rule set through without every row, in this order.
        self.rows.get(rule as usize).unwrap_or(&row::MISSING)
    }

    /// Every row, in the order of the file.
    pub fn rows(&self) -> &[RuleRow] {
        &self.rows
    }

    /// Least approach distances of qualified people, by voltage.
    pub fn approach_bands(&self) -> &[ApproachBand] {
        &self.approach_bands
    }

    /// Factors on those distances by the altitude of the site.
    pub fn altitude_bands(&self) -> &[AltitudeBand] {
        &self.altitude_bands
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn us() -> RuleSet {
        RuleSet::shipped(&Id::from("us")).unwrap()
    }

    fn changed(row: &str, value: f64) -> HouseValue {
        HouseValue {
            id: Id::default(),
            rule_set: Id::from("us"),
            row: row.to_owned(),
            value,
            by: "Ana".to_owned(),
            on: None,
            why: None,
        }
    }

    #[test]
    fn the_shipped_rule_set_is_complete_and_every_row_names_its_source() {
        let rules = us();
        assert_eq!(rules.rows().len(), Rule::ALL.len());
        for (rule, row) in Rule::ALL.iter().zip(rules.rows()) {
            assert_eq!(rule.id(), row.id);
            assert!(
                !row.source.is_empty() && row.value.is_finite(),
                "{}",
                row.id
            );
        }
        // 29 CFR 1910.266: two tree lengths.
        assert_eq!(rules.number(Rule::ZoneFellEveryoneLengths), 2.0);
    }

    #[test]
    fn a_published_minimum_is_not_to_be_changed_and_a_house_value_only_within_its_range() {
        let rules = us();
        let fixed = rules.with_house_values(&[changed("zone.fell.everyone_lengths", 1.0)]);
        assert!(
            matches!(fixed, Err(BookError::Refused { faults }) if faults[0].code == "fault.rule-fixed")
        );
        let mixed = rules.with_house_values(&[
            changed("margin.full_at", 99.0),
            changed("margin.full_at", f64::NAN),
            changed("no.such.row", 1.0),
        ]);
        assert!(matches!(mixed, Err(BookError::Refused { faults }) if faults.len() == 3));
        let taken = rules
            .with_house_values(&[changed("stop.wind_force", 4.0)])
            .unwrap();
        assert_eq!(taken.number(Rule::StopWindForce), 4.0);
        assert_eq!(
            taken.row(Rule::StopWindForce).changed_by.as_deref(),
            Some("Ana")
        );
        assert_eq!(rules.number(Rule::StopWindForce), 5.0);
    }

    #[test]
    fn an_unknown_rule_set_is_named() {
        assert!(matches!(
            RuleSet::shipped(&Id::from("xx")),
            Err(BookError::NotFound { id, .. }) if id == "xx"
        ));
    }
}
