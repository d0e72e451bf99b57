//! What must hold of every drawing.

use proptest::prelude::*;

use super::super::sheets::text_extents;
use super::super::*;
use super::examples::*;
use super::svg::svg;

/// Texts never overlap, texts and symbols lie inside, every symbol has its form, every coordinate
/// is finite and rounded.
fn check(name: &str, drawing: &Drawing) {
    if let Ok(folder) = std::env::var("BOLEWALK_DRAWINGS") {
        std::fs::write(format!("{folder}/{name}.svg"), svg(drawing)).unwrap();
    }
    let m_per_pt = metres_per_point(drawing.scale);
    let extent = drawing.extent.grown(2e-4);
    let width = &estimated_width_pt;
    let symbols = drawing.marks.iter().filter_map(|mark| match mark {
        DrawnMark::Symbol { at, size_pt, .. } => Some(symbol_extent(*at, *size_pt, m_per_pt)),
        _ => None,
    });
    for taken in symbols.chain(text_extents(drawing, m_per_pt, width)) {
        assert!(
            extent.with(taken) == extent,
            "{name}: {taken:?} outside {extent:?}"
        );
    }
    let texts: Vec<(&DrawnText, DrawnExtent)> = drawing
        .marks
        .iter()
        .filter_map(|mark| match mark {
            DrawnMark::Written { text, .. } => Some((text, text_extent(text, m_per_pt, width))),
            _ => None,
        })
        .collect();
    for (turn, (text, taken)) in texts.iter().enumerate() {
        for (other, theirs) in &texts[..turn] {
            assert!(
                !theirs.grown(-2e-4).overlaps(*taken),
                "{name}: {} over {}",
                text.words,
                other.words
            );
        }
    }
    for mark in &drawing.marks {
        if let DrawnMark::Symbol { symbol, .. } = mark {
            assert!(drawing.symbols.iter().any(|shape| shape.symbol == *symbol));
        }
    }
    let json = serde_json::to_string(drawing).unwrap();
    assert!(!json.contains(":null,\"y_m"), "{name}: not finite");
    assert!(!json.contains("\"y_m\":null"), "{name}: not finite");
    for mark in &drawing.marks {
        let spots = match mark {
            DrawnMark::Polygon { rings, .. } => rings.concat(),
            DrawnMark::Polyline { spots, .. } => spots.clone(),
            DrawnMark::Circle { centre, .. } => vec![*centre],
            DrawnMark::Symbol { at, .. } => vec![*at],
            DrawnMark::Written { text, .. } => vec![text.at],
        };
        for spot in spots {
            assert_eq!(spot, Spot::new(spot.x_m, spot.y_m), "{name}: unrounded");
        }
    }
    assert_eq!(serde_json::from_str::<Drawing>(&json).unwrap(), *drawing);
}

#[test]
fn plans_of_all_sizes() {
    for (name, count, wide, high, zones) in [
        ("plan-24", 24, 70.0, 90.0, false),
        ("plan-24-zones", 24, 70.0, 90.0, true),
        ("plan-80", 80, 80.0, 90.0, false),
        ("plan-empty", 0, 40.0, 40.0, false),
    ] {
        let input = site(count, wide, high, zones);
        let paper = plan(&input, &PAPER, &estimated_width_pt);
        check(name, &paper.drawing);
        let phone = plan(&input, &PHONE, &estimated_width_pt);
        check(&format!("{name}-phone"), &phone.drawing);
        let again = plan(&input, &PAPER, &estimated_width_pt);
        assert_eq!(
            serde_json::to_string(&paper.drawing).unwrap(),
            serde_json::to_string(&again.drawing).unwrap()
        );
    }
}

#[test]
fn a_crowded_site_is_split_until_every_tag_has_room() {
    let input = site(500, 150.0, 140.0, false);
    let sheets = plan_sheets(&input, &PAPER, &estimated_width_pt);
    assert!(sheets.sheets.len() > 1);
    assert_eq!(sheets.unlabelled, Vec::<String>::new());
    check("overview", &sheets.overview);
    for sheet in &sheets.sheets {
        check(&format!("sheet-{}", sheet.name), &sheet.drawing);
    }
    for tree in &input.trees {
        let shown = sheets.sheets.iter().flat_map(|sheet| &sheet.drawing.marks);
        let mut tags = shown.filter(|mark| {
            matches!(mark, DrawnMark::Written { text, about, .. }
                if *about == tree.id && text.words == tree.tag)
        });
        assert!(tags.next().is_some(), "{} on no sheet", tree.tag);
    }
    for sheet in &sheets.sheets {
        assert!(sheets.overview.marks.iter().any(|mark| matches!(mark,
            DrawnMark::Written { text, .. } if text.words == sheet.name)));
    }
    // Two hundred trees nine metres apart still read well on one sheet.
    let many = plan_sheets(&site(200, 130.0, 120.0, false), &PAPER, &estimated_width_pt);
    check("many", &many.overview);
    assert!(many.unlabelled.is_empty());
    let few = plan_sheets(&site(24, 70.0, 90.0, false), &PAPER, &estimated_width_pt);
    assert!(few.sheets.is_empty() && few.unlabelled.is_empty());
}

#[test]
fn the_zones_of_one_tree() {
    let drawn = zones(&one_tree_zones(), &PAPER, &estimated_width_pt);
    check("zones", &drawn.drawing);
    assert!(drawn.unlabelled.is_empty(), "{:?}", drawn.unlabelled);
    let small = DrawnFrame {
        width_pt: 240.0,
        height_pt: 240.0,
        ..PAPER
    };
    check(
        "zones-small",
        &zones(&one_tree_zones(), &small, &estimated_width_pt).drawing,
    );
    check(
        "zones-phone",
        &zones(&one_tree_zones(), &PHONE, &estimated_width_pt).drawing,
    );
}

/// A drawing on which every word found its place.
fn whole(laid_out: LaidOut) -> Drawing {
    assert_eq!(laid_out.unlabelled, Vec::<String>::new());
    laid_out.drawing
}

#[test]
fn a_stem_section() {
    let small = DrawnFrame {
        width_pt: 240.0,
        height_pt: 220.0,
        ..PAPER
    };
    check(
        "section",
        &whole(section(&stem_section(), &small, &estimated_width_pt)),
    );
    check(
        "section-phone",
        &whole(section(&stem_section(), &PHONE, &estimated_width_pt)),
    );
}

#[test]
fn a_tree_from_the_side() {
    let half = DrawnFrame {
        width_pt: 300.0,
        height_pt: 320.0,
        ..PAPER
    };
    check(
        "profile",
        &profile(&side_view(), &half, &estimated_width_pt),
    );
    check(
        "profile-phone",
        &profile(&side_view(), &PHONE, &estimated_width_pt),
    );
    let mut bare = side_view();
    bare.marks.clear();
    bare.keep_clear.clear();
    bare.crown_radius_m = None;
    bare.lean_deg = -25.0;
    check("profile-bare", &profile(&bare, &half, &estimated_width_pt));
}

#[test]
fn every_symbol_side_by_side() {
    let mut input = site(0, 10.0, 10.0, false);
    input.targets.clear();
    input.overhead_lines.clear();
    input.property.clear();
    input.trees = trees(6, 20.0, 12.0);
    for (turn, tree) in input.trees.iter_mut().enumerate() {
        tree.at = Spot::new(4.0 * turn as f64, 0.0);
        tree.crown = None;
    }
    let large = DrawnFrame {
        text_pt: 20.0,
        ..PHONE
    };
    check(
        "symbols",
        &plan(&input, &large, &estimated_width_pt).drawing,
    );
}

#[test]
fn a_finger_finds_the_tree_then_the_crown() {
    let drawing = plan(&site(24, 70.0, 90.0, false), &PAPER, &estimated_width_pt).drawing;
    let tree = &trees(24, 70.0, 90.0)[2];
    assert_eq!(under_finger(&drawing, tree.at, 6.0), Some(tree.id.clone()));
    let nowhere = Spot::new(-4_000.0, 0.0);
    assert_eq!(under_finger(&drawing, nowhere, 6.0), None);
    // The crown of a tree is no mark of it, and what nobody wants to be found is not.
    let beside = Spot::new(tree.at.x_m + 0.5, tree.at.y_m);
    let of = |id: &str| id == tree.id;
    assert_eq!(
        point_under_finger(&drawing, beside, 28.0, of),
        Some(tree.id.clone())
    );
    assert_eq!(point_under_finger(&drawing, beside, 28.0, |_| false), None);
    assert_eq!(point_under_finger(&drawing, nowhere, 28.0, of), None);
    let zones = zones(&one_tree_zones(), &PAPER, &estimated_width_pt).drawing;
    assert_eq!(
        under_finger(&zones, Spot::new(-27.0, -3.0), 4.0),
        Some("tree-x".to_owned())
    );
}

#[test]
fn bad_numbers_spoil_nothing() {
    let mut input = site(12, 50.0, 60.0, true);
    input.trees[3].at.x_m = f64::NAN;
    input.trees[4].accuracy_m = Some(f64::INFINITY);
    input.property[0][1].y_m = f64::NEG_INFINITY;
    let frame = DrawnFrame {
        width_pt: f64::MIN_POSITIVE,
        ..PAPER
    };
    check("nan", &plan(&input, &PAPER, &estimated_width_pt).drawing);
    check("narrow", &plan(&input, &frame, &estimated_width_pt).drawing);
    let mut stem = stem_section();
    stem.readings[1].wall_m = f64::NAN;
    stem.readings[2].bearing_deg = f64::NAN;
    stem.bark_m = f64::NAN;
    check(
        "nan-section",
        &section(&stem, &PAPER, &estimated_width_pt).drawing,
    );
    let mut side = side_view();
    side.lean_deg = f64::NAN;
    side.marks[0].height_m = f64::NAN;
    side.keep_clear[0].offset_m = f64::NAN;
    check("nan-profile", &profile(&side, &PAPER, &estimated_width_pt));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]
    #[test]
    fn any_small_site_is_drawn_without_overlap(
        spots in prop::collection::vec((-60.0..60.0f64, -60.0..60.0f64, 0.5..9.0f64), 0..9),
        height_pt in 150.0..700.0f64,
        round_scale: bool,
    ) {
        let mut input = site(spots.len(), 50.0, 50.0, false);
        input.targets.truncate(spots.len() % 5);
        for (tree, (x, y, radius_m)) in input.trees.iter_mut().zip(&spots) {
            tree.at = Spot { x_m: *x, y_m: *y };
            tree.crown = Some(PlanArea::Circle { centre: tree.at, radius_m: *radius_m });
        }
        let frame = DrawnFrame { height_pt, round_scale, ..PAPER };
        check("any", &plan(&input, &frame, &estimated_width_pt).drawing);
    }

    #[test]
    fn any_section_and_side_view_is_drawn_without_overlap(
        walls in prop::collection::vec((0.0..360.0f64, 0.0..0.6f64), 0..9),
        heights in prop::collection::vec((0.0..30.0f64, -1.0..1.0f64), 0..9),
        radius_m in 0.03..1.5f64,
        height_m in 2.0..60.0f64,
        lean_deg in -40.0..40.0f64,
    ) {
        let mut stem = stem_section();
        stem.radius_m = radius_m;
        stem.readings = walls.iter().enumerate().map(|(turn, (bearing_deg, wall_m))| WallMark {
            about: format!("r{turn}"),
            bearing_deg: *bearing_deg,
            wall_m: *wall_m,
            words: format!("{:.0} cm", wall_m * 100.0),
        }).collect();
        check("any-section", &section(&stem, &PAPER, &estimated_width_pt).drawing);
        let mut side = side_view();
        (side.height_m, side.lean_deg) = (height_m, lean_deg);
        let model = side.marks[0].clone();
        side.marks.extend(heights.iter().map(|(height_m, at)| ProfileMark {
            height_m: *height_m,
            side: *at,
            ..model.clone()
        }));
        check("any-profile", &profile(&side, &PAPER, &estimated_width_pt));
    }
}
