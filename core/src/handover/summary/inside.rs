//! What was measured inside the stem: the section from above, its readings, what they leave open.

use std::sync::Arc;

use crate::draw::{
    DrawnFrame, SectionInput, TextWidth, WallMark, WallOpening, section as section_from_above,
};
use crate::handover::paper::{Block, Figure, Rich};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::handover::side_view::bar_unit;
use crate::judge::rules::RuleSet;
use crate::judge::wood::GreenWood;
use crate::measure::shell::off_radius_wall_cm;
use crate::record::{Opening, Quantity, ShellReading, StemSection};
use crate::words::Said;

/// The frame beside the readings, in points.
const FRAME: DrawnFrame = DrawnFrame {
    width_pt: 236.0,
    height_pt: 196.0,
    text_pt: 7.5,
    round_scale: false,
};

/// A block for each section with a wall that was read; one that was only sounded is words alone.
pub(in crate::handover) fn blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    width: TextWidth,
) -> Vec<Block> {
    let looks = seen.looks.iter();
    let sections = looks.flat_map(|look| &look.sections);
    sections
        .filter(|section| !section.readings.is_empty())
        .map(|section| Block::Together(one(desk, seen, section, width)))
        .collect()
}

fn one(desk: &PaperDesk, seen: &TreeSeen, section: &StemSection, width: TextWidth) -> Vec<Block> {
    let said = [
        ("tag", Said::Text(&seen.tree.tag)),
        ("height", Said::Number(section.height_m, Quantity::LengthM)),
    ];
    let left = vec![
        Block::heading(3, desk.words.say("summary.inside", &said)),
        Block::Facts {
            facts: facts(desk, seen, section),
            in_two: false,
        },
        Block::small(format!(
            "{} {}",
            desk.say("caution.decay-bending"),
            desk.say("caution.decay-shape")
        )),
    ];
    match drawn(desk, seen, section, width) {
        Some(figure) => vec![Block::Beside {
            left,
            right: vec![Block::Drawn(figure)],
            left_share: 0.5,
        }],
        None => left,
    }
}

fn facts(desk: &PaperDesk, seen: &TreeSeen, section: &StemSection) -> Vec<(String, Rich)> {
    let words = desk.words;
    let mut facts = Vec::new();
    let mut fact = |key: &str, value: String| facts.push((desk.say(key), Rich::from(value)));
    if let Some(girth_cm) = girth_cm(section) {
        fact("summary.girth", words.girth(girth_cm));
    }
    let thinnest = section
        .readings
        .iter()
        .min_by(|a, b| a.shell_cm.total_cmp(&b.shell_cm));
    if let Some(thinnest) = thinnest {
        let side = words.side(thinnest.bearing_deg);
        let said = [
            ("wall", Said::Number(thinnest.shell_cm, Quantity::LengthCm)),
            ("side", Said::Text(&side)),
        ];
        fact(
            "summary.inside-thinnest",
            words.say("summary.inside-wall", &said),
        );
    }
    if let Some(opening) = &section.opening {
        let side = words.side(opening.bearing_deg);
        let said = [
            ("wall", Said::Number(opening.width_cm, Quantity::LengthCm)),
            ("side", Said::Text(&side)),
        ];
        fact(
            "summary.inside-opening",
            words.say("summary.inside-wall", &said),
        );
    }
    let margins = seen.judgement.map(|judgement| &judgement.margins);
    let left = margins
        .into_iter()
        .flatten()
        .find(|margin| margin.about == section.id)
        .and_then(|margin| margin.modulus_left_pct);
    if let Some(left) = left {
        let left = ("left", Said::Number(left, Quantity::Percent));
        fact(
            "summary.inside-left",
            words.say("summary.inside-at-least", &[left]),
        );
    }
    let mut methods: Vec<String> = Vec::new();
    for method in section.readings.iter().filter_map(|reading| reading.method) {
        let said = words.word_of(&method);
        if !methods.contains(&said) {
            methods.push(said);
        }
    }
    if !methods.is_empty() {
        fact("summary.inside-method", desk.alone(&desk.listed(&methods)));
    }
    facts
}

fn girth_cm(section: &StemSection) -> Option<f64> {
    let around = section.diameter_cm.map(|d| d * std::f64::consts::PI);
    section.girth_cm.or(around)
}

fn drawn(
    desk: &PaperDesk,
    seen: &TreeSeen,
    section: &StemSection,
    width: TextWidth,
) -> Option<Figure> {
    let radius_cm = girth_cm(section)? / std::f64::consts::TAU;
    if radius_cm <= 0.0 {
        return None;
    }
    let bark_cm = section.bark_cm.or_else(|| {
        let rules = RuleSet::shipped(&seen.judgement?.rule_set).ok()?;
        let wood = GreenWood::of(seen.tree.species.as_deref(), &rules);
        Some(wood.usual_bark_cm(2.0 * radius_cm))
    });
    let bark_cm = bark_cm.unwrap_or(0.0);
    let height = desk.words.number(section.height_m, Quantity::LengthM);
    let described = [
        ("tag", Said::Text(&seen.tree.tag)),
        ("height", Said::Text(&height)),
    ];
    let input = SectionInput {
        described: desk.words.say("summary.inside-described", &described),
        about: section.id.to_string(),
        radius_m: radius_cm / 100.0,
        bark_m: bark_cm / 100.0,
        readings: section
            .readings
            .iter()
            .map(|reading| wall(desk, reading, radius_cm - bark_cm))
            .collect(),
        decay: Vec::new(),
        openings: section
            .opening
            .iter()
            .map(|opening| gap(opening, radius_cm))
            .collect(),
        weakest: None,
        legend: Vec::new(),
        north: desk.say("plan.north"),
        bar_unit: bar_unit(desk),
    };
    Some(Figure {
        drawing: Arc::new(section_from_above(&input, &FRAME, width).drawing),
        height_pt: FRAME.height_pt as f32 + 1.0,
        caption: Rich::from(desk.say("summary.inside-caption")),
        legend_columns: 0,
        framed: false,
    })
}

/// A reading along a slanted path is longer than the wall is thick.
fn wall(desk: &PaperDesk, reading: &ShellReading, wood_radius_cm: f64) -> WallMark {
    let slant_deg = reading.drill_angle_deg.unwrap_or(0.0);
    let wall_cm = off_radius_wall_cm(wood_radius_cm, reading.shell_cm, slant_deg);
    WallMark {
        about: reading.id.to_string(),
        bearing_deg: reading.bearing_deg,
        wall_m: wall_cm / 100.0,
        words: desk.words.number(wall_cm, Quantity::LengthCm),
    }
}

fn gap(opening: &Opening, radius_cm: f64) -> WallOpening {
    let half_deg = (opening.width_cm / radius_cm / 2.0).to_degrees();
    WallOpening {
        from_bearing_deg: opening.bearing_deg - half_deg,
        to_bearing_deg: opening.bearing_deg + half_deg,
        words: String::new(),
    }
}
