//! The table of trees: at most a page wide, readable without colour.

use std::io::IsTerminal;

use bolewalk_core::record::{
    Arg, ArgValue, ClimbNeed, Judgement, Quantity, SiteFile, SiteJudgement, Tree, Verdict,
    WayOfWorking, ZoneAnswer,
};
use bolewalk_core::words::{DayStyle, Said, Words};
use comfy_table::presets::UTF8_HORIZONTAL_ONLY;
use comfy_table::{
    Attribute, Cell, CellAlignment, Color, ColumnConstraint, ContentArrangement, Table, Width,
};

use super::names;
use crate::lines::WIDEST;

/// Every column: the catalogue's head, its width in characters, whether its figures stand flush
/// right. With two blanks between them they fill the page.
const COLUMNS: [(&str, u16, bool); 10] = [
    ("desk.head-tag", TAG, false),
    ("desk.head-species", 13, false),
    ("desk.head-size", 6, true),
    ("desk.head-way", 9, false),
    ("desk.head-verdict", 17, false),
    ("desk.head-score", 5, false),
    ("desk.head-drop", 6, true),
    ("desk.head-keep-out", 6, true),
    ("desk.head-rule", 9, false),
    ("desk.head-next-look", 7, false),
];
/// Width of the tags, and how much wider they may be.
const TAG: u16 = 4;
const MOST_WIDER: u16 = 4;
/// Blanks between two columns, beside the one that stands for a vertical rule.
const BETWEEN: u16 = 1;

/// The table of a site's trees in walking order.
pub fn table(file: &SiteFile, judgement: &SiteJudgement, words: &Words) -> String {
    let mut table = Table::new();
    table.load_style(UTF8_HORIZONTAL_ONLY);
    table.set_content_arrangement(ContentArrangement::Dynamic);
    table.set_width(WIDEST as u16);
    if !std::io::stdout().is_terminal() || std::env::var_os("NO_COLOR").is_some() {
        table.force_no_tty();
    } else {
        table.enforce_styling();
    }
    table.set_header(COLUMNS.map(|(key, _, _)| words.say(key, &[])));
    for judged in &judgement.trees {
        if let Some(tree) = names::tree(file, &judged.tree) {
            table.add_row(row(file, tree, judged, words));
        }
    }
    let tags = judgement
        .trees
        .iter()
        .map(|judged| judged.tag.chars().count());
    let wider = (tags.max().unwrap_or(0) as u16).clamp(TAG, TAG + MOST_WIDER) - TAG;
    for (place, (_, width, figures)) in COLUMNS.into_iter().enumerate() {
        // Long tags take their room from the species.
        let width = match place {
            0 => width + wider,
            1 => width - wider,
            _ => width,
        };
        let between = if place + 1 == COLUMNS.len() {
            0
        } else {
            BETWEEN
        };
        if let Some(column) = table.column_mut(place) {
            column.set_padding((0, between));
            column.set_constraint(ColumnConstraint::Absolute(Width::Fixed(width + between)));
            if figures {
                column.set_cell_alignment(CellAlignment::Right);
            }
        }
    }
    table.to_string()
}

fn row(file: &SiteFile, tree: &Tree, judged: &Judgement, words: &Words) -> Vec<Cell> {
    let zone = shown_zone(tree, judged);
    let distance = |metres: Option<f64>| {
        Cell::new(metres.map_or(String::new(), |metres| words.distance_up(metres)))
    };
    let way = match &tree.way {
        Some(way) => words.word_of(way),
        None => words.say("desk.way-open", &[]),
    };
    vec![
        Cell::new(&tree.tag),
        Cell::new(names::species(tree, words)),
        Cell::new(size(file, tree, judged, words)),
        Cell::new(way),
        verdict(judged, words),
        Cell::new(score(judged, words)),
        distance(zone.map(|zone| zone.drop_radius_m)),
        distance(zone.map(|zone| zone.keep_out_m.max(zone.keep_out_downhill_m))),
        Cell::new(zone.map_or(String::new(), |zone| rule(zone, words))),
        Cell::new(
            judged
                .next_look
                .map_or(String::new(), |day| words.day_as(day, DayStyle::Short)),
        ),
    ]
}

/// The zone of the planned way; of felling where the way has no zone of its own; none where nothing
/// comes down.
pub fn shown_zone<'a>(tree: &Tree, judged: &'a Judgement) -> Option<&'a ZoneAnswer> {
    if matches!(
        tree.way,
        Some(WayOfWorking::NoWork | WayOfWorking::InspectOnly)
    ) {
        return None;
    }
    let planned = judged.zones.iter().find(|zone| zone.planned);
    planned.or(judged.zones.first())
}

fn size(file: &SiteFile, tree: &Tree, judged: &Judgement, words: &Words) -> String {
    let looks = names::looks(file, tree, judged.as_of);
    let height = names::newest(&looks, |look| look.height.as_ref());
    let lean = names::newest(&looks, |look| look.lean.as_ref());
    let height = height.map_or(String::new(), |height| {
        words.number(height.height_m, Quantity::LengthM)
    });
    let Some(lean) = lean else {
        return height;
    };
    let angle = words.number(lean.lean_deg, Quantity::AngleDeg);
    match lean.toward_deg.filter(|_| lean.lean_deg > 0.0) {
        Some(toward) => format!("{height}\n{angle} {}", words.side_short(toward)),
        None => format!("{height}\n{angle}"),
    }
}

/// The verdict by its word; colour only repeats it. A stop shows even where nobody would climb.
fn verdict(judged: &Judgement, words: &Words) -> Cell {
    if judged.climb == ClimbNeed::NotNeeded && judged.verdict != Verdict::Barred {
        return Cell::new(words.say("climb-need.not-needed", &[])).fg(Color::DarkGrey);
    }
    let said = words.word_of(&judged.verdict);
    let cell = match judged.climb {
        ClimbNeed::NotNeeded => {
            Cell::new(format!("{said};\n{}", words.say("desk.not-needed", &[])))
        }
        _ => Cell::new(said),
    };
    match judged.verdict {
        Verdict::Barred => cell.fg(Color::Red).add_attribute(Attribute::Bold),
        Verdict::Refer => cell.fg(Color::Magenta),
        Verdict::Limited => cell.fg(Color::Yellow),
        Verdict::Incomplete => cell.fg(Color::Blue),
        Verdict::NoStop => cell.fg(Color::Green),
    }
}

fn score(judged: &Judgement, words: &Words) -> String {
    if judged.climb == ClimbNeed::NotNeeded {
        return String::new();
    }
    judged.score.as_ref().map_or(String::new(), |score| {
        if (score.low, score.high) == (score.points, score.points) {
            return score.points.to_string();
        }
        words.say(
            "desk.score",
            &[
                ("points", Said::Count(i64::from(score.points))),
                ("low", Said::Count(i64::from(score.low))),
                ("high", Said::Count(i64::from(score.high))),
            ],
        )
    })
}

/// The rule that fixed the keep-out distance, in a few words.
fn rule(zone: &ZoneAnswer, words: &Words) -> String {
    let mut args = zone.rule.args.clone();
    let crown = args.iter().find_map(|arg| match (&*arg.name, &arg.value) {
        ("crown", ArgValue::Number { value, .. }) => Some(*value),
        _ => None,
    });
    for (name, from) in [
        ("beyond-drop", Some(zone.drop_radius_m)),
        ("beyond-crown", crown),
    ] {
        args.push(Arg {
            name: name.to_owned(),
            value: ArgValue::Number {
                value: from.map_or(0.0, |from| zone.keep_out_m - from),
                quantity: Quantity::LengthM,
            },
        });
    }
    let short = words.say_args(&format!("desk.short-{}", zone.rule.code), &args);
    if zone.planned {
        short
    } else {
        let way = words.word_of(&zone.way);
        words.say(
            "desk.rule-of-other-way",
            &[("way", Said::Text(&way)), ("rule", Said::Text(&short))],
        )
    }
}
