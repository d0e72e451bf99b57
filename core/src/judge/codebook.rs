//! The starter codebook, and how the crew's own codes lie over it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::record::{DefectCode, DefectKind, Id};

const STARTER: &str = include_str!("../../data/codebook.toml");

#[derive(Deserialize)]
struct StarterFile {
    code: Vec<DefectCode>,
}

static STARTER_CODES: LazyLock<Vec<DefectCode>> = LazyLock::new(|| {
    let mut codes = toml::from_str::<StarterFile>(STARTER)
        .map(|file| file.code)
        .unwrap_or_default();
    for (order, code) in (1u32..).zip(codes.iter_mut()) {
        code.order.get_or_insert(order);
    }
    codes
});

/// The starter codes, in the order of their tiles. Their ids are the kinds' names and never change.
pub fn starter_codes() -> &'static [DefectCode] {
    &STARTER_CODES
}

/// The codes in use: starter codes with the crew's own laid over them by id.
#[derive(Debug, Clone)]
pub struct Codebook {
    codes: BTreeMap<Id, DefectCode>,
}

impl Codebook {
    /// Starter codes, each replaced by the crew's code of the same id, and the crew's own besides.
    /// A crew's code that leaves a sentence, its parts or its order out keeps the starter's.
    pub fn with(own: &[DefectCode]) -> Self {
        let mut codes: BTreeMap<Id, DefectCode> = starter_codes()
            .iter()
            .map(|code| (code.id.clone(), code.clone()))
            .collect();
        for code in own {
            let mut code = code.clone();
            if let Some(starter) = codes.get(&code.id) {
                for (own, theirs) in [
                    (&mut code.grade_1, &starter.grade_1),
                    (&mut code.grade_2, &starter.grade_2),
                    (&mut code.grade_3, &starter.grade_3),
                ] {
                    if own.is_none() {
                        own.clone_from(theirs);
                    }
                }
                code.order = code.order.or(starter.order);
                if code.parts.is_empty() {
                    code.parts.clone_from(&starter.parts);
                }
            }
            codes.insert(code.id.clone(), code);
        }
        Codebook { codes }
    }

    /// The code of this id.
    pub fn code(&self, id: &Id) -> Option<&DefectCode> {
        self.codes.get(id)
    }

    /// What a code means; an unknown code means something else, and is a gap elsewhere.
    pub fn kind(&self, id: &Id) -> DefectKind {
        self.code(id).map_or(DefectKind::Other, |code| code.kind)
    }

    /// The sentence of one grade of a code, where there is one.
    pub fn sentence(&self, id: &Id, grade: u32) -> Option<&str> {
        let code = self.code(id)?;
        match grade {
            1 => code.grade_1.as_deref(),
            2 => code.grade_2.as_deref(),
            3 => code.grade_3.as_deref(),
            _ => None,
        }
    }
}

/// Whether a code bars climbing as soon as it is seen at its gravest, whatever else is known of the
/// tree and without a plan.
pub fn bars_on_sight(code: &DefectCode) -> bool {
    let kind_bars = matches!(
        code.kind,
        DefectKind::SoilMovement
            | DefectKind::RootsCut
            | DefectKind::FireHollow
            | DefectKind::Kretzschmaria
            | DefectKind::Meripilus
            | DefectKind::Phaeolus
            | DefectKind::Heterobasidion
            | DefectKind::StemCrack
            | DefectKind::UnionCrack
            | DefectKind::LightningStrip
            | DefectKind::UnderTension
            | DefectKind::Hanger
            | DefectKind::StingingInsects
            | DefectKind::NestOrRoost
            | DefectKind::TouchingWire
    );
    kind_bars || code.stops_from_grade.is_some()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn every_starter_code_has_three_sentences_and_an_id_made_of_its_kind() {
        assert_eq!(starter_codes().len(), 31);
        let mut kinds = BTreeSet::new();
        for code in starter_codes() {
            let kind = serde_json::to_value(code.kind).unwrap();
            assert_eq!(code.id.0, kind.as_str().unwrap().replace('_', "-"));
            assert!(kinds.insert(code.kind));
            assert!(!code.parts.is_empty());
            for sentence in [&code.grade_1, &code.grade_2, &code.grade_3] {
                assert!(sentence.as_deref().is_some_and(|s| s.ends_with('.')));
            }
        }
    }

    #[test]
    fn a_crews_code_lies_over_the_starter_and_keeps_its_sentences() {
        let own = DefectCode {
            name: Some("Widow-maker".to_owned()),
            grade_1: None,
            grade_2: None,
            grade_3: None,
            parts: Vec::new(),
            ..starter_codes()[20].clone()
        };
        let book = Codebook::with(std::slice::from_ref(&own));
        let merged = book.code(&own.id).unwrap();
        assert_eq!(merged.name.as_deref(), Some("Widow-maker"));
        assert_eq!(merged.grade_2, starter_codes()[20].grade_2);
        assert_eq!(book.kind(&"no-such-code".into()), DefectKind::Other);
    }
}
