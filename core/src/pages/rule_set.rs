//! The page of a rule set: every row in the reader's units with its source; what the crew may
//! change, within which range, and what it has changed.

use serde_json::json;

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::PageRecord;
use super::offer::{InputKind, Offer};
use crate::judge::rules::{RuleLabel, RuleRow, RuleSet};
use crate::record::{HouseValue, Id, NumberField, Quantity};
use crate::words::Said;

/// A rule set.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct RuleSetPage {
    /// The rule set.
    pub id: Id,
    /// The region.
    pub title: String,
    /// What may be changed and what not, and that local codes come first.
    pub lead: String,
    /// What has to be settled by a person.
    pub unsettled: Vec<PageRecord>,
    /// The rows, grouped by what they are about.
    pub groups: Vec<RulesTogether>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// Rows of a rule set that are about one thing.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct RulesTogether {
    /// First part of the ids of its rows, such as `zone`.
    pub id: String,
    /// What they are about.
    pub words: String,
    /// The rows.
    pub rows: Vec<RuleOfSet>,
}

/// A row of a rule set.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct RuleOfSet {
    /// The row, such as `zone.fell.everyone_lengths`.
    pub id: String,
    /// What it means.
    pub words: String,
    /// Its value, in the reader's units.
    pub value: String,
    /// The published work, or that it is a house value, and how sure that is.
    pub source: String,
    /// Whether it is a house value: chosen by the method or by the crew.
    pub is_house: bool,
    /// Whether the crew has changed it.
    pub is_changed: bool,
    /// Who changed it, when and why, and the value that ships; empty where nobody did.
    pub changed: String,
    /// The range within which it may be changed; that it stays, where it may not.
    pub range: String,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// The page of a rule set: `rules` as they hold, `shipped` as they ship.
pub fn rule_set_page(
    desk: &PageDesk,
    rules: &RuleSet,
    shipped: &RuleSet,
    changed: &[HouseValue],
) -> RuleSetPage {
    let mut groups: Vec<RulesTogether> = Vec::new();
    for (row, as_shipped) in rules.rows().iter().zip(shipped.rows()) {
        let id = row.id.split('.').next().unwrap_or_default();
        let value = changed
            .iter()
            .rfind(|value| value.rule_set == *rules.id() && value.row == row.id);
        let shown = rule_of(desk, rules.id(), row, as_shipped, value);
        match groups.iter_mut().find(|group| group.id == id) {
            Some(group) => group.rows.push(shown),
            None => groups.push(RulesTogether {
                id: id.to_owned(),
                words: desk.say(&format!("rule-group.{id}")),
                rows: vec![shown],
            }),
        }
    }
    RuleSetPage {
        id: rules.id().clone(),
        title: desk.say(&format!("rule-set.{}", rules.id())),
        lead: desk.say("page.rules-lead"),
        unsettled: desk.unsettled_records(),
        groups,
        offers: desk.undo_offers(&Id::default()),
        headings: Vec::new(),
    }
}

/// The region, and how many values the crew has changed.
pub(super) fn rules_words(desk: &PageDesk, rules: &RuleSet) -> String {
    let changed = rules.rows().iter().filter(|row| row.changed_by.is_some());
    let count = [("count", Said::Count(changed.count() as i64))];
    let region = desk.say(&format!("rule-set.{}", rules.id()));
    format!(
        "{region} · {}",
        desk.words.say("page.rules-changed", &count)
    )
}

fn rule_of(
    desk: &PageDesk,
    set: &Id,
    row: &RuleRow,
    shipped: &RuleRow,
    changed: Option<&HouseValue>,
) -> RuleOfSet {
    let field = field_of(row);
    RuleOfSet {
        id: row.id.clone(),
        words: desk.say(&format!("rule-row.{}", row.id)),
        value: desk.words.number_in_full(row.value, row.quantity),
        source: source(desk, row),
        is_house: row.label == RuleLabel::House,
        is_changed: changed.is_some(),
        changed: changed.map_or_else(String::new, |value| change_words(desk, value, shipped)),
        range: match &field {
            Some(field) => {
                let range = desk.words.range_of(field);
                let said = [("range", Said::Text(&range))];
                desk.words.say("page.rule-range", &said)
            }
            None => desk.say("page.rule-stays"),
        },
        offers: offers(desk, set, row, field.as_ref(), changed.is_some()),
    }
}

fn source(desk: &PageDesk, row: &RuleRow) -> String {
    let label = desk.words.label_of(&row.label);
    if row.label == RuleLabel::House {
        label
    } else {
        format!("{label}: {}", row.source)
    }
}

fn change_words(desk: &PageDesk, value: &HouseValue, shipped: &RuleRow) -> String {
    let words = &desk.words;
    let by = match value.on {
        Some(day) => words.say(
            "page.signed-off",
            &[("by", Said::Text(&value.by)), ("day", Said::Day(day))],
        ),
        None => value.by.clone(),
    };
    let ships = words.number_in_full(shipped.value, shipped.quantity);
    let ships = words.say("page.rule-ships", &[("value", Said::Text(&ships))]);
    let parts = [Some(by), value.why.clone(), Some(ships)];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The rule of the row's own value; nothing for a row that stays.
pub fn field_of(row: &RuleRow) -> Option<NumberField> {
    let (min, max) = (row.min?, row.max?);
    let whole = is_whole(row.quantity);
    Some(NumberField {
        id: "house_value.value",
        quantity: row.quantity,
        min,
        max,
        step: if whole { 1.0 } else { (max - min) / 100.0 },
    })
}

/// Whether only whole numbers can be meant.
pub fn is_whole(quantity: Quantity) -> bool {
    matches!(
        quantity,
        Quantity::Count | Quantity::Beaufort | Quantity::DurationDays
    )
}

fn offers(
    desk: &PageDesk,
    set: &Id,
    row: &RuleRow,
    field: Option<&NumberField>,
    is_changed: bool,
) -> Vec<Offer> {
    let Some(field) = field else {
        return Vec::new();
    };
    let about = Id(format!("{set}/{}", row.id));
    let mut now = json!({ "value": desk.words.number_in_full(row.value, row.quantity) });
    if let (Some(by), Some(now)) = (desk.holder_name(), now.as_object_mut()) {
        now.insert("by".to_owned(), json!(by));
    }
    let mut change = desk.offer(CommandKind::ChangeRule, &about, Some(&now));
    for input in &mut change.inputs {
        if let InputKind::Number { .. } = input.kind {
            input.kind = desk.number_kind(field, is_whole(row.quantity));
        }
    }
    let mut offers = vec![change];
    if is_changed {
        offers.push(desk.offer(CommandKind::ResetRule, &about, None));
    }
    offers
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::rules::Rule;
    use crate::words::{Language, UnitSystem, Words};

    #[test]
    fn every_row_and_group_is_worded_in_every_language() {
        for language in Language::ALL {
            let words = Words::new(language, UnitSystem::Metric);
            for rule in Rule::ALL {
                let group = rule.id().split('.').next().unwrap();
                for key in [
                    format!("rule-row.{}", rule.id()),
                    format!("rule-group.{group}"),
                ] {
                    assert!(words.has(&key), "{key}");
                }
            }
        }
    }

    #[test]
    fn a_row_that_may_be_changed_has_a_range_and_a_step() {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        let wind = field_of(rules.row(Rule::StopWindForce)).unwrap();
        assert_eq!((wind.min, wind.max, wind.step), (3.0, 6.0, 1.0));
        assert!(field_of(rules.row(Rule::ZoneFellEveryoneLengths)).is_none());
    }
}
