//! The working of one tree, line by line, so that a person can redo it with a calculator. The
//! working is metric, as its formulas are; the reader's units stand beside the result.

use bolewalk_core::error::BookError;
use bolewalk_core::record::{
    Arg, ArgValue, Inspection, Judgement, Quantity, SiteFile, SiteJudgement, Tree, WorkingLine,
};
use bolewalk_core::words::{Said, UnitSystem, Words};

use super::names;
use super::reasons::answer;
use crate::lines::Lines;

/// Figures that a number of the working is printed with.
const FIGURES: i32 = 4;

pub fn explained(
    file: &SiteFile,
    judgement: &SiteJudgement,
    tag: &str,
    words: &Words,
) -> Result<String, BookError> {
    let not_found = || BookError::NotFound {
        kind: "tree".to_owned(),
        id: tag.to_owned(),
    };
    let judged = judgement.trees.iter().find(|judged| judged.tag == tag);
    let judged = judged.ok_or_else(not_found)?;
    let tree = names::tree(file, &judged.tree).ok_or_else(not_found)?;
    let mut lines = Lines::default();
    head(tree, judged, words, &mut lines);
    all_reasons(judged, words, &mut lines);
    shares(judged, words, &mut lines);
    margins(file, tree, judged, words, &mut lines);
    people(judged, words, &mut lines);
    zones(judged, words, &mut lines);
    working(file, tree, judged, words, &mut lines);
    lines.gap();
    lines.hung("! ", &words.say("caution.sheet-aid", &[]));
    lines.hung("! ", &words.say("caution.decay-bending", &[]));
    lines.hung("! ", &words.say("caution.sheet-decide", &[]));
    Ok(lines.into_text())
}

fn head(tree: &Tree, judged: &Judgement, words: &Words, lines: &mut Lines) {
    let species = names::species(tree, words);
    let said = [
        ("tag", Said::Text(&tree.tag)),
        ("species", Said::Text(&species)),
        ("answer", Said::Text(&answer(judged, words))),
    ];
    lines.hung("", &words.say("desk.why-tree", &said));
    let version = [
        ("day", Said::Day(judged.as_of)),
        ("rules", Said::Text(judged.rule_set.as_str())),
        ("version", Said::Count(i64::from(judged.method_version))),
    ];
    lines.hung("", &words.say("desk.explain-basis", &version));
}

fn all_reasons(judged: &Judgement, words: &Words, lines: &mut Lines) {
    for (heading, reasons) in [
        ("desk.explain-stops", &judged.stops),
        ("desk.explain-gaps", &judged.gaps),
        ("desk.explain-refer", &judged.refer_caps),
        ("desk.explain-limited", &judged.limit_caps),
        ("desk.explain-limits", &judged.limits),
        ("desk.explain-remarks", &judged.remarks),
    ] {
        if reasons.is_empty() {
            continue;
        }
        lines.heading(&words.say(heading, &[]));
        for said in words.reasons(reasons) {
            lines.hung("  - ", &said);
        }
    }
    for wire in &judged.wires {
        lines.hung("  - ", &words.reason(&wire.reason));
        lines.hung("    ", &source(&wire.source, words));
    }
}

fn shares(judged: &Judgement, words: &Words, lines: &mut Lines) {
    let Some(score) = &judged.score else { return };
    let points = |points: u32| words.number(f64::from(points), Quantity::Points);
    let said = [
        ("points", Said::Text(&points(score.points))),
        ("low", Said::Count(i64::from(score.low))),
        ("high", Said::Count(i64::from(score.high))),
    ];
    lines.heading(&words.say("desk.explain-score", &said));
    for share in &score.shares {
        let lead = format!("  - {:<10} ", points(share.points));
        let factor = figures(share.factor);
        let cause = words.reason(&share.cause);
        let said = [
            ("factor", Said::Text(&factor)),
            ("cause", Said::Text(&cause)),
        ];
        lines.hung(&lead, &words.say("desk.explain-share", &said));
    }
    if let Some(next) = &judged.next_measurement {
        let what = words.reason(&next.what);
        let said = [
            ("what", Said::Text(&what)),
            (
                "cost",
                Said::Number(next.cost_s / 60.0, Quantity::DurationMin),
            ),
            ("gain", Said::Number(next.gain_pct, Quantity::Percent)),
        ];
        lines.hung("  > ", &words.say("desk.explain-next", &said));
    }
}

fn margins(file: &SiteFile, tree: &Tree, judged: &Judgement, words: &Words, lines: &mut Lines) {
    if judged.margins.is_empty() {
        return;
    }
    lines.heading(&words.say("desk.explain-margins", &[]));
    let look = look_of(tree, judged);
    for margin in &judged.margins {
        let part = words.say(&margin.part, &[]);
        let about = names::record(file, look, &margin.about, words);
        let part = if about.is_empty() || about == part {
            part
        } else {
            format!("{part} ({about})")
        };
        let said = [
            ("part", Said::Text(&part)),
            ("central", Said::Text(&words.margin_down(margin.central))),
            ("low", Said::Text(&words.margin_down(margin.low))),
            ("high", Said::Text(&words.margin_down(margin.high))),
        ];
        let mut line = words.say("desk.explain-margin", &said);
        if let Some(left) = margin.modulus_left_pct {
            line.push_str("; ");
            line.push_str(&words.say(
                "desk.explain-modulus",
                &[("left", Said::Number(left, Quantity::Percent))],
            ));
        }
        lines.hung("  - ", &line);
    }
}

fn people(judged: &Judgement, words: &Words, lines: &mut Lines) {
    if judged.climbers.is_empty() {
        return;
    }
    lines.heading(&words.say("desk.explain-people", &[]));
    for person in &judged.climbers {
        let answer = match (person.may, person.may_rescue) {
            (true, true) => "desk.person-climbs-and-rescues",
            (true, false) => "desk.person-climbs",
            (false, true) => "desk.person-rescues",
            (false, false) => "desk.person-stays",
        };
        let name = [("name", Said::Text(&person.name))];
        lines.hung("  - ", &words.say(answer, &name));
        for said in words.reasons(&person.reasons) {
            lines.hung("    ", &said);
        }
    }
}

fn zones(judged: &Judgement, words: &Words, lines: &mut Lines) {
    if judged.zones.is_empty() {
        return;
    }
    lines.heading(&words.say("desk.explain-zones", &[]));
    for zone in &judged.zones {
        let mut way = words.word_of(&zone.way);
        if zone.planned {
            way = format!("{way} ({})", words.say("desk.zone-planned", &[]));
        }
        let rule = words.reason(&zone.rule);
        let said = [
            ("way", Said::Text(&way)),
            ("drop", Said::Number(zone.drop_radius_m, Quantity::LengthM)),
            ("keep", Said::Number(zone.keep_out_m, Quantity::LengthM)),
            (
                "downhill",
                Said::Number(zone.keep_out_downhill_m, Quantity::LengthM),
            ),
            ("rule", Said::Text(&rule)),
        ];
        let entry = if zone.keep_out_downhill_m > zone.keep_out_m {
            "desk.explain-zone-downhill"
        } else {
            "desk.explain-zone"
        };
        lines.hung("  - ", &words.say(entry, &said));
        lines.hung("    ", &source(&zone.source, words));
    }
}

fn working(file: &SiteFile, tree: &Tree, judged: &Judgement, words: &Words, lines: &mut Lines) {
    if judged.working.is_empty() {
        return;
    }
    lines.heading(&words.say("desk.explain-working", &[]));
    let look = look_of(tree, judged);
    for line in &judged.working {
        working_line(file, look, line, words, lines);
    }
}

fn working_line(
    file: &SiteFile,
    look: Option<&Inspection>,
    line: &WorkingLine,
    words: &Words,
    lines: &mut Lines,
) {
    let mut what = words.say(&line.what, &[]);
    let about = names::record(file, look, &line.about, words);
    if !about.is_empty() {
        what = format!("{what} ({about})");
    }
    let mut value = with_unit(line.value, line.quantity);
    if let Some(se) = line.se {
        value = format!("{value} ± {}", with_unit(se, line.quantity));
    }
    if words.units() == UnitSystem::Imperial {
        let own = words.number(line.value, line.quantity);
        if own != words_metric(line) {
            value = format!("{value} ({own})");
        }
    }
    lines.hung("  - ", &format!("{what} = {value}"));
    lines.hung("    ", &line.formula);
    if !line.inputs.is_empty() {
        let inputs: Vec<String> = line.inputs.iter().map(|arg| input(arg, words)).collect();
        lines.hung("    ", &inputs.join(", "));
    }
    lines.hung("    ", &source(&line.source, words));
}

fn words_metric(line: &WorkingLine) -> String {
    crate::answer::words(false).number(line.value, line.quantity)
}

fn input(arg: &Arg, words: &Words) -> String {
    let value = match &arg.value {
        ArgValue::Number { value, quantity } => with_unit(*value, *quantity),
        other => words.arg_value(other),
    };
    format!("{} = {value}", arg.name)
}

fn source(source: &str, words: &Words) -> String {
    words.say("desk.zone-source", &[("source", Said::Text(source))])
}

/// A number of the working in its base unit.
fn with_unit(value: f64, quantity: Quantity) -> String {
    let unit = quantity.unit_symbol();
    match unit {
        "" => figures(value),
        "%" | "°" => format!("{}{unit}", figures(value)),
        _ => format!("{} {unit}", figures(value)),
    }
}

/// A number in four figures, whole numbers in full, no spare zeros.
fn figures(value: f64) -> String {
    if value == 0.0 || !value.is_finite() {
        return value.to_string();
    }
    let before = value.abs().log10().floor() as i32 + 1;
    let decimals = (FIGURES - before).max(0) as usize;
    let text = format!("{value:.decimals$}");
    if text.contains('.') {
        let text = text.trim_end_matches('0');
        text.trim_end_matches('.').to_owned()
    } else {
        text
    }
}

/// The look that the judgement rests on.
fn look_of<'a>(tree: &'a Tree, judged: &Judgement) -> Option<&'a Inspection> {
    let mut looks = tree.inspections.iter();
    looks.find(|look| look.id == judged.inspection)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_keep_what_a_calculator_needs() {
        assert_eq!(figures(42.567), "42.57");
        assert_eq!(figures(0.012_345), "0.01235");
        assert_eq!(figures(8123.4), "8123");
        assert_eq!(figures(123_456.0), "123456");
        assert_eq!(figures(2.0), "2");
        assert_eq!(figures(0.0), "0");
        assert_eq!(with_unit(9.806_65, Quantity::Ratio), "9.807");
        assert_eq!(with_unit(35.0, Quantity::Percent), "35%");
    }
}
