//! A crowded site on several sheets: an overview, and sheets at a scale where every tag has room.

use super::drawing::{Drawing, DrawnExtent, DrawnMark, Spot, StyleRole};
use super::easel::Easel;
use super::frame::{DrawnFrame, TextWidth, frame_extent, metres_per_point, text_extent};
use super::labels::{LabelGround, LabelWish, place_labels};
use super::plan::{LaidOut, plan_around, plan_at};
use super::plan_fit::{cut_frame, scale_around, tree_pt, whole_extent};
use super::plan_input::PlanInput;

/// Scales of sheets, the one that needs the fewest sheets first.
const SHEET_SCALES: [f64; 3] = [500.0, 200.0, 100.0];
/// More sheets than this help nobody; the next smaller scale is kept, with what it leaves out.
const MOST_SHEETS: usize = 400;

/// The plan of a site for paper: one sheet, or an overview and sheets.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanSheets {
    /// The whole site; where there are sheets it shows their edges and names instead of tags.
    pub overview: Drawing,
    /// The sheets, row by row from the north-west; none when the overview says it all.
    pub sheets: Vec<NamedSheet>,
    /// The ids of trees, targets and lines whose words found no place on any sheet.
    pub unlabelled: Vec<String>,
}

/// One sheet of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct NamedSheet {
    /// Its name: a letter for the column, a number for the row, such as B3.
    pub name: String,
    /// The part of the site it shows.
    pub drawing: Drawing,
}

struct Tile {
    name: String,
    /// The trees of the rectangle belong to this sheet and to no other.
    own: DrawnExtent,
}

/// The sheets at one scale, and what they leave out.
struct Attempt {
    scale: f64,
    tiles: Vec<Tile>,
    sheets: Vec<LaidOut>,
    missing: Vec<String>,
}

/// The plan of a site: one sheet when it reads well at the scale of the whole, else an overview with sheets at 1:500, 1:200 or 1:100, whichever is the first to hold every tag.
pub fn plan_sheets(input: &PlanInput, frame: &DrawnFrame, width: TextWidth) -> PlanSheets {
    let (input, frame) = (input.finite(), frame.held());
    let whole = whole_extent(&input);
    let scale = scale_around(whole, &frame);
    let one = plan_around(&input, &frame, whole, width);
    if reads_well(&one, &input) {
        return single(one);
    }
    let mut best: Option<Attempt> = None;
    for finer in SHEET_SCALES.into_iter().filter(|finer| *finer < scale) {
        let tiles = tiles_of(&input, &frame, finer, whole);
        if tiles.len() > MOST_SHEETS {
            break;
        }
        let sheets: Vec<LaidOut> = tiles
            .iter()
            .map(|tile| plan_at(&input, &frame, finer, tile.own.middle(), width))
            .collect();
        let missing = unlabelled_everywhere(&input, &sheets);
        let done = missing.is_empty() && sheets.iter().all(|sheet| reads_well(sheet, &input));
        best = Some(Attempt {
            scale: finer,
            tiles,
            sheets,
            missing,
        });
        if done {
            break;
        }
    }
    let Some(best) = best else {
        return single(one);
    };
    PlanSheets {
        overview: overview(&input, &frame, scale, &best, width),
        sheets: best
            .tiles
            .into_iter()
            .zip(best.sheets)
            .map(|(tile, sheet)| NamedSheet {
                name: tile.name,
                drawing: sheet.drawing,
            })
            .collect(),
        unlabelled: best.missing,
    }
}

/// Whether every word found its place, and not more than a quarter as many as there are trees on
/// leaders, or a dozen: a plan that is all leaders cannot be read on the ground.
fn reads_well(sheet: &LaidOut, input: &PlanInput) -> bool {
    sheet.unlabelled.is_empty() && sheet.led as usize <= (input.trees.len() / 4).max(12)
}

fn single(one: LaidOut) -> PlanSheets {
    PlanSheets {
        overview: one.drawing,
        sheets: Vec::new(),
        unlabelled: one.unlabelled,
    }
}

/// Ids written on no sheet, in the order of trees, targets and lines.
fn unlabelled_everywhere(input: &PlanInput, sheets: &[LaidOut]) -> Vec<String> {
    let written: std::collections::BTreeSet<&str> = sheets
        .iter()
        .flat_map(|sheet| &sheet.drawing.marks)
        .filter_map(|mark| match mark {
            DrawnMark::Written { about, .. } => Some(about.as_str()),
            _ => None,
        })
        .collect();
    let trees = input.trees.iter().map(|tree| (&tree.id, &tree.tag));
    let targets = input
        .targets
        .iter()
        .map(|target| (&target.id, &target.words));
    let lines = input
        .overhead_lines
        .iter()
        .map(|line| (&line.id, &line.words));
    let refused = |id: &String| sheets.iter().any(|sheet| sheet.unlabelled.contains(id));
    trees
        .chain(targets)
        .chain(lines)
        .filter(|(id, words)| !words.is_empty() && !written.contains(id.as_str()) && refused(id))
        .map(|(id, _)| id.clone())
        .collect()
}

/// The rectangles that cover the site at `scale` and hold a tree. Neighbouring sheets overlap by a
/// symbol and a tag, so that a tree at the edge of one is drawn whole.
fn tiles_of(input: &PlanInput, frame: &DrawnFrame, scale: f64, whole: DrawnExtent) -> Vec<Tile> {
    let m_per_pt = metres_per_point(scale);
    let rim_pt = 2.0 * tree_pt(frame) + 2.0 * frame.text_pt;
    let step_x_m = ((frame.width_pt - rim_pt) * m_per_pt).max(1.0);
    let step_y_m = ((frame.height_pt - Easel::foot_pt(frame) - rim_pt) * m_per_pt).max(1.0);
    let columns = (whole.width_m() / step_x_m).ceil().max(1.0);
    let rows = (whole.height_m() / step_y_m).ceil().max(1.0);
    // The grid is centred on the site, so that its rim is shared out evenly.
    let left_m = whole.middle().x_m - columns / 2.0 * step_x_m;
    let top_m = whole.middle().y_m + rows / 2.0 * step_y_m;
    let cell = |spot: Spot| {
        let column = ((spot.x_m - left_m) / step_x_m)
            .floor()
            .clamp(0.0, columns - 1.0);
        let row = ((top_m - spot.y_m) / step_y_m)
            .floor()
            .clamp(0.0, rows - 1.0);
        (row as u32, column as u32)
    };
    let used: std::collections::BTreeSet<(u32, u32)> =
        input.trees.iter().map(|tree| cell(tree.at)).collect();
    used.into_iter()
        .map(|(row, column)| {
            let west_m = left_m + f64::from(column) * step_x_m;
            let north_m = top_m - f64::from(row) * step_y_m;
            Tile {
                name: format!("{}{}", column_name(column), row + 1),
                own: DrawnExtent {
                    left_m: west_m,
                    bottom_m: north_m - step_y_m,
                    right_m: west_m + step_x_m,
                    top_m: north_m,
                },
            }
        })
        .collect()
}

/// A, B … Z, AA, AB … as columns of a table are named.
fn column_name(column: u32) -> String {
    let letter = char::from(b'A' + (column % 26) as u8);
    match column / 26 {
        0 => letter.to_string(),
        more => format!("{}{letter}", column_name(more - 1)),
    }
}

/// The whole site without tags, with the edges of the sheets and their names.
fn overview(
    input: &PlanInput,
    frame: &DrawnFrame,
    scale: f64,
    sheets: &Attempt,
    width: TextWidth,
) -> Drawing {
    let mut bare = input.clone();
    for tree in &mut bare.trees {
        tree.tag = String::new();
    }
    let (finer, tiles) = (sheets.scale, &sheets.tiles);
    let edges = tiles.iter().map(|tile| {
        let foot_pt = Easel::foot_pt(frame);
        let sheet = frame_extent(frame, finer, tile.own.middle(), foot_pt);
        DrawnExtent {
            bottom_m: sheet.bottom_m + foot_pt * metres_per_point(finer),
            ..sheet
        }
    });
    let edges: Vec<DrawnExtent> = edges.collect();
    let whole = edges
        .iter()
        .fold(whole_extent(input), |all, edge| all.with(*edge));
    let rim_pt = 2.0 * frame.text_pt;
    let room_pt = (
        frame.width_pt - 2.0 * rim_pt,
        frame.height_pt - Easel::foot_pt(frame) - 2.0 * rim_pt,
    );
    let scale = scale.max(frame.scale_for((whole.width_m(), whole.height_m()), room_pt));
    let frame = &cut_frame(frame, scale, whole);
    let mut drawing = plan_at(&bare, frame, scale, whole.middle(), width).drawing;
    let m_per_pt = metres_per_point(scale);
    let mut wishes = Vec::new();
    for (tile, edge) in tiles.iter().zip(&edges) {
        let corner = Spot::new;
        let spots = vec![
            corner(edge.left_m, edge.bottom_m),
            corner(edge.right_m, edge.bottom_m),
            corner(edge.right_m, edge.top_m),
            corner(edge.left_m, edge.top_m),
            corner(edge.left_m, edge.bottom_m),
        ];
        drawing.marks.push(DrawnMark::Polyline {
            spots,
            role: StyleRole::SheetEdge,
            about: tile.name.clone(),
        });
        let inset_m = 1.6 * frame.text_pt * m_per_pt;
        wishes.push(LabelWish {
            about: tile.name.clone(),
            words: tile.name.clone(),
            places: vec![
                corner(edge.left_m + inset_m, edge.top_m - inset_m),
                edge.middle(),
                corner(edge.right_m - inset_m, edge.bottom_m + inset_m),
            ],
            clear_pt: 0.0,
            size_pt: 1.3 * frame.text_pt,
            role: StyleRole::SheetEdge,
            may_lead: false,
            outward_deg: None,
            last: false,
        });
    }
    let ground = LabelGround {
        bounds: Some(drawing.extent),
        // Over symbols a name can be read, over words it cannot.
        taken: text_extents(&drawing, m_per_pt, width),
        ..LabelGround::default()
    };
    drawing
        .marks
        .extend(place_labels(&wishes, &ground, m_per_pt, width).marks);
    drawing
}

/// The rectangles of all texts of a drawing.
pub(crate) fn text_extents(drawing: &Drawing, m_per_pt: f64, width: TextWidth) -> Vec<DrawnExtent> {
    drawing
        .marks
        .iter()
        .filter_map(|mark| match mark {
            DrawnMark::Written { text, .. } => Some(text_extent(text, m_per_pt, width)),
            _ => None,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_named_as_in_a_table() {
        let names = [0, 25, 26, 51, 52, 701, 702].map(column_name);
        assert_eq!(names, ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
    }
}
