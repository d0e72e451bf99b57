//! Rows become trees.

use super::field::TreeField;
use super::number::{DecimalMark, decimal_mark};
use super::plan::Plan;
use super::rows::{Row, Rows};
use super::tags::{Known, Tags};
use super::values::Reader;
use super::{Imported, InventoryOptions};
use crate::error::BookError;
use crate::intake::fill_ids;
use crate::record::{
    ArgValue, Day, Id, Inspection, InspectionLevel, Reason, SITE_FILE_FORMAT, Site, SiteFile, Tree,
    Visit,
};

/// Makes trees of rows.
pub(super) fn trees(
    mut rows: Rows,
    encoding: &str,
    options: &InventoryOptions,
) -> Result<Imported, BookError> {
    let plan = Plan::of(&rows, &options.columns)?;
    let mut faults = std::mem::take(&mut rows.broken);
    let mut reader = Reader {
        rows: &rows,
        plan: &plan,
        mark: mark_of(&rows, &plan),
        left_out: Vec::new(),
    };
    let mut guesses = told_of_file(&rows, encoding, reader.mark);
    guesses.extend(plan.guesses.iter().cloned());
    let mut tags = Tags::of(&reader);
    let visits: Vec<Visit> = options.day.map(visit_on).into_iter().collect();
    let visit = visits
        .first()
        .map_or(Id::default(), |visit| visit.id.clone());
    let mut trees = Vec::with_capacity(rows.rows.len());
    for (number, row) in (1..).zip(&rows.rows) {
        match tags.of_row(&mut reader, row, number) {
            Ok(known) => trees.push(tree(&mut reader, row, known, &visit, options)),
            Err(fault) => faults.push(fault),
        }
    }
    guesses.extend(told_of_trees(&plan, tags.told_apart, options));
    let count = rows.rows.len() + rows.blank as usize;
    let broken = faults.len() + trees.len() - rows.rows.len();
    let left_out = reader.left_out;
    let mut file = SiteFile {
        format: SITE_FILE_FORMAT,
        site: site(&options.site_name, visits, trees),
        crew: Vec::new(),
        gear: Vec::new(),
        codebook: Vec::new(),
        house_values: Vec::new(),
    };
    fill_ids(&mut file);
    faults.sort_by_key(|fault| place_order(&fault.place));
    Ok(Imported {
        file,
        guesses,
        faults,
        left_out,
        blank_rows: rows.blank,
        rows: u32::try_from(count + broken).unwrap_or(u32::MAX),
    })
}

/// The number in a place, for the order of the file.
fn place_order(place: &str) -> u64 {
    let digits = place.chars().skip_while(|letter| !letter.is_ascii_digit());
    let digits: String = digits.take_while(char::is_ascii_digit).collect();
    digits.parse().unwrap_or(0)
}

fn mark_of(rows: &Rows, plan: &Plan) -> DecimalMark {
    let usual = match rows.delimiter {
        Some(';' | '\t' | '|') => DecimalMark::Comma,
        _ => DecimalMark::Point,
    };
    let columns: Vec<usize> = TreeField::ALL
        .into_iter()
        .filter(|field| field.number().is_some())
        .filter_map(|field| Some(plan.source(field)?.column))
        .collect();
    let cells = rows.rows.iter().flat_map(|row| {
        let columns = columns.iter();
        columns.filter_map(|column| row.cell(*column).filter(|cell| cell.number.is_none()))
    });
    decimal_mark(cells.map(|cell| cell.text.as_str()), usual)
}

fn told_of_file(rows: &Rows, encoding: &str, mark: DecimalMark) -> Vec<Reason> {
    let mut told = Vec::new();
    if let Some(delimiter) = rows.delimiter {
        let name = match delimiter {
            ',' => "import.delimiter-comma",
            ';' => "import.delimiter-semicolon",
            '\t' => "import.delimiter-tab",
            _ => "import.delimiter-bar",
        };
        let reason = Reason::new("import.delimited").term("delimiter", name);
        told.push(reason.text("encoding", encoding));
    }
    if mark == DecimalMark::Comma && rows.delimiter.is_some() {
        told.push(Reason::new("import.decimal-comma"));
    }
    told
}

fn told_of_trees(plan: &Plan, told_apart: u32, options: &InventoryOptions) -> Vec<Reason> {
    let mut told = Vec::new();
    if told_apart > 0 {
        let reason = Reason::new("import.tags-told-apart");
        let count = i64::from(told_apart);
        told.push(reason.with("count", ArgValue::Whole { count }));
    }
    if !plan.has(TreeField::Tag) {
        let by_key = plan.has(TreeField::Key);
        told.push(Reason::new(if by_key {
            "import.tags-from-key"
        } else {
            "import.tags-from-row"
        }));
    }
    if plan.has(TreeField::CrownDiameter) {
        told.push(Reason::new("import.crown-halved"));
    }
    if plan.has(TreeField::Diameter) {
        told.push(Reason::new("import.diameter-to-girth"));
    }
    if options.day.is_none() {
        told.push(Reason::new("import.no-day"));
    }
    told
}

fn visit_on(day: Day) -> Visit {
    Visit {
        id: Id(day.to_string()),
        day,
        crew: Vec::new(),
        note: None,
        weather: Vec::new(),
    }
}

fn tree(
    reader: &mut Reader,
    row: &Row,
    known: Known,
    visit: &Id,
    options: &InventoryOptions,
) -> Tree {
    let common = reader.known_text(row, TreeField::CommonName);
    let species = reader
        .known_text(row, TreeField::Species)
        .or_else(|| common.clone());
    let latin = |name: String| {
        let found = options.latin_names.get(&name.to_lowercase());
        found.cloned().unwrap_or(name)
    };
    let position = reader.position(row);
    Tree {
        id: known.id,
        tag: known.tag,
        species: species.map(latin),
        position,
        way: None,
        other_access: None,
        walk_order: None,
        note: reader.text(row, TreeField::Note),
        work: Vec::new(),
        inspections: inspection(reader, row, visit).into_iter().collect(),
    }
}

/// What was measured; a tree of which nothing was measured was not looked at.
fn inspection(reader: &mut Reader, row: &Row, visit: &Id) -> Option<Inspection> {
    let seen = reader.measures(row);
    let nothing = seen.height.is_none()
        && seen.girth.is_none()
        && seen.crown.is_none()
        && seen.lean.is_none();
    (!nothing).then(|| Inspection {
        id: Id::default(),
        visit: visit.clone(),
        at: None,
        // Whoever measured it answered none of the questions of a full check.
        level: InspectionLevel::Triage,
        by: Id::default(),
        life: None,
        dead_since: None,
        beetle_killed: None,
        dieback_pct: None,
        wires_near: None,
        base_sound: None,
        height: seen.height,
        girth: seen.girth,
        bark_cm: None,
        lean: seen.lean,
        lean_is_new: None,
        crown: seen.crown,
        slope: None,
        ground_dug: None,
        base_mallet: None,
        other_stems: Vec::new(),
        note: None,
        next_look: None,
        wires: Vec::new(),
        walk_round: Vec::new(),
        findings: Vec::new(),
        sections: Vec::new(),
        anchors: Vec::new(),
        plans: Vec::new(),
        photos: Vec::new(),
        risks: Vec::new(),
        near_misses: Vec::new(),
    })
}

fn site(name: &str, visits: Vec<Visit>, trees: Vec<Tree>) -> Site {
    Site {
        id: Id::default(),
        name: name.to_owned(),
        client: None,
        address: None,
        rule_set: None,
        outline: Vec::new(),
        rescue: None,
        note: None,
        targets: Vec::new(),
        lines: Vec::new(),
        permissions: Vec::new(),
        visits,
        trees,
    }
}
