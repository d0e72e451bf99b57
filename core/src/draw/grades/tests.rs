use super::super::drawing::{DrawnMark, Spot};
use super::*;
use crate::judge::codebook::starter_codes;

const EVERYWHERE: [Option<TreePart>; 8] = [
    None,
    Some(TreePart::Roots),
    Some(TreePart::Base),
    Some(TreePart::Stem),
    Some(TreePart::Union),
    Some(TreePart::Limb),
    Some(TreePart::Crown),
    Some(TreePart::Around),
];

/// Every starter code on every part it can be on, and on none.
fn all() -> Vec<(String, [Drawing; 3])> {
    let mut drawn = Vec::new();
    for code in starter_codes() {
        for part in EVERYWHERE {
            if part.is_none_or(|part| code.parts.contains(&part)) {
                let of = |grade| grade_drawing(code.kind, part, grade, "sentence");
                let name = format!("{}-{part:?}", code.id).to_lowercase();
                drawn.push((name, [of(1), of(2), of(3)]));
            }
        }
    }
    drawn
}

/// Cells on a side of the raster by which drawings are compared: two points of the reader each.
const CELLS: usize = 36;

/// The cells that a reader in black and white sees dark: what is wrong, and its outlines.
fn dark(drawing: &Drawing) -> Vec<bool> {
    let side_m = drawing.extent.right_m - drawing.extent.left_m;
    let place = |cell: usize| (cell as f64 + 0.5) / CELLS as f64 * side_m;
    let mut cells = vec![false; CELLS * CELLS];
    for (number, cell) in cells.iter_mut().enumerate() {
        let x = drawing.extent.left_m + place(number % CELLS);
        let y = drawing.extent.bottom_m + place(number / CELLS);
        for mark in &drawing.marks {
            match mark {
                DrawnMark::Polygon { rings, role, .. } if inside(&rings[0], x, y) => {
                    *cell = *role == INK;
                }
                DrawnMark::Circle {
                    centre,
                    radius_m,
                    role,
                    ..
                } if (x - centre.x_m).hypot(y - centre.y_m) < *radius_m => *cell = *role == INK,
                DrawnMark::Polyline { spots, role, .. }
                    if [INK, StyleRole::Outline].contains(role)
                        && spots
                            .windows(2)
                            .any(|pair| near(pair, x, y) < side_m / CELLS as f64 * 0.6) =>
                {
                    *cell = true;
                }
                _ => {}
            }
        }
    }
    cells
}

fn inside(ring: &[Spot], x: f64, y: f64) -> bool {
    let mut inside = false;
    for (number, one) in ring.iter().enumerate() {
        let other = &ring[(number + ring.len() - 1) % ring.len()];
        let crosses = (one.y_m > y) != (other.y_m > y);
        let at = (other.x_m - one.x_m) * (y - one.y_m) / (other.y_m - one.y_m) + one.x_m;
        if crosses && x < at {
            inside = !inside;
        }
    }
    inside
}

fn near(pair: &[Spot], x: f64, y: f64) -> f64 {
    let (dx, dy) = (pair[1].x_m - pair[0].x_m, pair[1].y_m - pair[0].y_m);
    let long = dx * dx + dy * dy;
    let share = ((x - pair[0].x_m) * dx + (y - pair[0].y_m) * dy) / long.max(1e-12);
    let share = share.clamp(0.0, 1.0);
    (x - pair[0].x_m - share * dx).hypot(y - pair[0].y_m - share * dy)
}

#[test]
fn every_starter_code_has_three_drawings_that_black_and_white_tells_apart() {
    // A fiftieth of the square has to differ (house).
    let least = CELLS * CELLS / 50;
    let drawn = all();
    assert!(drawn.len() > 100);
    let mut faults = Vec::new();
    for (name, grades) in &drawn {
        let cells = grades.each_ref().map(dark);
        for (one, other) in [(0, 1), (1, 2), (0, 2)] {
            let both = cells[one].iter().zip(&cells[other]);
            let differ = both.filter(|(one, other)| one != other).count();
            if differ < least {
                faults.push(format!(
                    "{name}: grades {} and {} differ in {differ} cells",
                    one + 1,
                    other + 1
                ));
            }
        }
        let inked = cells.map(|cells| cells.iter().filter(|cell| **cell).count());
        if !(0 < inked[0] && inked[0] < inked[1] && inked[1] < inked[2]) {
            faults.push(format!("{name}: a graver grade has no more ink: {inked:?}"));
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn drawings_are_square_described_and_the_same_again() {
    for part in EVERYWHERE {
        for grade in [0, 1, 2, 3, 9] {
            let of = || grade_drawing(DefectKind::Decay, part, grade, "A deep cavity.");
            assert_eq!(of(), of());
            assert_eq!(of().described, "A deep cavity.");
            let extent = of().extent;
            assert_eq!(
                extent.right_m - extent.left_m,
                extent.top_m - extent.bottom_m
            );
        }
    }
}

#[test]
fn each_part_is_drawn_by_its_own() {
    let parts: Vec<Vec<bool>> = EVERYWHERE
        .iter()
        .flatten()
        .map(|part| dark(&part_drawing(*part, "part")))
        .collect();
    for (number, one) in parts.iter().enumerate() {
        for other in &parts[..number] {
            assert_ne!(one, other);
        }
    }
}

#[test]
fn the_three_forms_of_a_union_are_told_apart() {
    let of = |form| union_drawing(form, "union").map(|drawing| dark(&drawing));
    let seen: Vec<Vec<bool>> = [
        UnionForm::BarkRidge,
        UnionForm::IncludedBark,
        UnionForm::Opening,
    ]
    .into_iter()
    .filter_map(of)
    .collect();
    let differ =
        |one: &[bool], other: &[bool]| one.iter().zip(other).filter(|(a, b)| a != b).count();
    assert_eq!(seen.len(), 3);
    for (number, one) in seen.iter().enumerate() {
        for other in &seen[..number] {
            assert!(differ(one, other) > CELLS * CELLS / 50);
        }
    }
    assert_eq!(of(UnionForm::NotSeen), None);
}

/// Writes every drawing as an SVG beside its kin, for the eye, where a folder is named.
#[test]
fn drawings_can_be_looked_at() {
    let Ok(folder) = std::env::var("BOLEWALK_DRAWINGS") else {
        return;
    };
    for (name, grades) in all() {
        for (grade, drawing) in (1..).zip(grades) {
            let file = format!("{folder}/grade-{name}-{grade}.svg");
            std::fs::write(file, crate::draw::looks::svg::svg(&drawing)).unwrap();
        }
    }
    for part in EVERYWHERE.iter().flatten() {
        let file = format!("{folder}/part-{part:?}.svg").to_lowercase();
        let drawing = part_drawing(*part, "part");
        std::fs::write(file, crate::draw::looks::svg::svg(&drawing)).unwrap();
    }
    for form in [
        UnionForm::BarkRidge,
        UnionForm::IncludedBark,
        UnionForm::Opening,
    ] {
        let file = format!("{folder}/union-{form:?}.svg").to_lowercase();
        let drawing = union_drawing(form, "union").unwrap();
        std::fs::write(file, crate::draw::looks::svg::svg(&drawing)).unwrap();
    }
}
