//! Words for what the judgement answers: codes with their arguments.

use fluent_bundle::FluentArgs;

use super::catalogue::{Said, Words};
use super::terms::capitalised;
use crate::record::{Arg, ArgValue, Reason};

/// Beginnings of the codes whose entries are whole sentences; others are parts of one.
const STAND_ALONE: [&str; 8] = [
    "stop.", "gap.", "cap.", "limit.", "cause.", "remark.", "next.", "wire.",
];

/// A person lacks a skill.
const NO_SIGN_OFF: &str = "stop.no-sign-off";

impl Words {
    /// The sentence of a reason. A number argument `x` is also there as `x-up` and `x-down`,
    /// rounded to that side: distances that people keep use the first, margins the second.
    pub fn reason(&self, reason: &Reason) -> String {
        let said = self.say_args(&reason.code, &reason.args);
        // Where an entry begins with the name of something, the name begins the sentence.
        if STAND_ALONE.iter().any(|kind| reason.code.starts_with(kind)) {
            capitalised(&said)
        } else {
            said
        }
    }

    /// The sentences of several reasons, in their order. The skills that one person lacks are named
    /// in one sentence, where the first of them stands.
    pub fn reasons(&self, reasons: &[Reason]) -> Vec<String> {
        let lacks = |reason: &Reason| reason.code == NO_SIGN_OFF;
        let mut said = Vec::new();
        for (place, reason) in reasons.iter().enumerate() {
            let same = |one: &&Reason| lacks(one) && one.about == reason.about;
            let earlier = reasons.iter().take(place);
            if lacks(reason) && earlier.clone().any(|one| same(&one)) {
                continue;
            }
            let all: Vec<&Reason> = reasons.iter().filter(same).collect();
            match lacks(reason) && all.len() > 1 {
                true => said.push(self.lacking(reason, &all)),
                false => said.push(self.reason(reason)),
            }
        }
        said
    }

    /// The sentence that one person lacks several skills.
    fn lacking(&self, first: &Reason, all: &[&Reason]) -> String {
        let arg = |reason: &Reason, name: &str| {
            let arg = reason.args.iter().find(|arg| arg.name == name);
            arg.map_or_else(String::new, |arg| self.arg_value(&arg.value))
        };
        let skills: Vec<String> = all.iter().map(|one| arg(one, "skill")).collect();
        let (person, skills) = (arg(first, "person"), skills.join("; "));
        let said = [
            ("person", Said::Text(person.as_str())),
            ("skills", Said::Text(skills.as_str())),
        ];
        capitalised(&self.say("stop.no-sign-offs", &said))
    }

    /// An entry of the catalogue with the arguments of a reason.
    pub fn say_args(&self, key: &str, args: &[Arg]) -> String {
        let mut filled = FluentArgs::with_capacity(args.len() * 3);
        for arg in args {
            self.fill(&mut filled, &arg.name, said(&arg.value));
        }
        self.say_filled(key, &filled)
    }

    /// One argument by itself, for lists of inputs: `21.5 m`, `oak`, `September 3, 2026`.
    pub fn arg_value(&self, value: &ArgValue) -> String {
        match value {
            ArgValue::Words { text } => text.clone(),
            ArgValue::Term { key } => self.say(key, &[]),
            ArgValue::Number { value, quantity } => self.number(*value, *quantity),
            ArgValue::Whole { count } => self.number(*count as f64, crate::record::Quantity::Count),
            ArgValue::OnDay { day } => self.day(*day),
        }
    }
}

fn said(value: &ArgValue) -> Said<'_> {
    match value {
        ArgValue::Words { text } => Said::Text(text),
        ArgValue::Term { key } => Said::Term(key),
        ArgValue::Number { value, quantity } => Said::Number(*value, *quantity),
        ArgValue::Whole { count } => Said::Count(*count),
        ArgValue::OnDay { day } => Said::Day(*day),
    }
}

#[cfg(test)]
mod tests {
    use super::super::catalogue::Language;
    use super::super::units::UnitSystem;
    use super::*;
    use crate::record::Quantity;

    #[test]
    fn all_that_one_person_lacks_is_said_once() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let lacks = |person: &str, skill: &str| {
            let reason = Reason::new(NO_SIGN_OFF).about(&person.into());
            reason.text("person", person).term("skill", skill)
        };
        let other = Reason::new("limit.trainee-within-reach").text("person", "Jude");
        let said = words.reasons(&[
            lacks("Jude", "skill.aerial-rescue"),
            other.clone(),
            lacks("Maren", "skill.rigging"),
            lacks("Jude", "skill.stationary-rope"),
        ]);
        let jude = "Jude is not signed off: aerial rescue; stationary rope. ";
        assert!(said[0].starts_with(jude), "{said:?}");
        assert_eq!(said[1], words.reason(&other));
        assert_eq!(said[2], words.reason(&lacks("Maren", "skill.rigging")));
        assert_eq!(said.len(), 3);
    }

    #[test]
    fn a_reason_is_worded_in_the_readers_units() {
        let reason = Reason::new("measure.from-to")
            .number("low", 3.05, Quantity::LengthM)
            .number("high", 21.5, Quantity::LengthM);
        let metric = Words::new(Language::English, UnitSystem::Metric);
        let imperial = Words::new(Language::English, UnitSystem::Imperial);
        assert_eq!(metric.reason(&reason), "3.1 m to 21.5 m");
        assert_eq!(imperial.reason(&reason), "10 ft to 71 ft");
    }

    #[test]
    fn a_sentence_begins_large_though_a_name_begins_it() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let cap = Reason::new("cap.bracket-not-named").term("name", "defect-kind.decay");
        assert!(words.reason(&cap).starts_with("Decay or cavity."));
    }

    #[test]
    fn an_argument_stands_by_itself() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let day = ArgValue::OnDay {
            day: "2026-05-14".parse().unwrap(),
        };
        assert_eq!(words.arg_value(&day), "May 14, 2026");
        let term = ArgValue::Term {
            key: "verdict.barred".to_owned(),
        };
        assert_eq!(words.arg_value(&term), "do not climb");
        assert_eq!(words.arg_value(&ArgValue::Whole { count: 5400 }), "5,400");
    }
}
