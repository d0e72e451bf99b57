//! The plan of the property: trees, crowns, what lies around them, and the ground to be kept clear.

use std::sync::Arc;

use crate::draw::{
    DrawnFrame, LegendLine, PlanArea, PlanInput, PlanLine, PlanTarget, PlanTree, PlanZone,
    PointSymbol, Spot, StyleRole, TextWidth, plan_sheets,
};
use crate::handover::paper::{Block, Figure, Voice};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::handover::side_view::bar_unit;
use crate::measure::place::LocalPlane;
use crate::record::{GroundForm, LatLon, LifeState, OverheadLine, Site, Target, TargetKind};
use crate::words::Said;

/// Room for the plan on a page, in points.
const FRAME: DrawnFrame = DrawnFrame {
    width_pt: 470.0,
    height_pt: 470.0,
    text_pt: 7.5,
    round_scale: true,
};

/// From the radius that holds 68 % of fixes to the one that holds 95 %, for a circular normal
/// distribution: √(ln 0.05 / ln 0.32).
const TO_95_PERCENT: f64 = 1.621_5;

pub(in crate::handover) fn blocks(desk: &PaperDesk, width: TextWidth) -> Vec<Block> {
    let mut blocks = vec![
        Block::NewPage,
        Block::Heading {
            level: 1,
            words: desk.say("summary.plan"),
            key: "plan".into(),
        },
    ];
    let Some(plane) = plane_of(&desk.input.file.site) else {
        blocks.push(Block::text(desk.say("summary.plan-none")));
        return blocks;
    };
    blocks.push(Block::Paragraph {
        words: desk.say("summary.plan-lead").into(),
        voice: Voice::Lead,
    });
    let plan = plan_sheets(&input(desk, &plane), &FRAME, width);
    let scale = |scale: f64| Said::Number(scale, crate::record::Quantity::Count);
    let caption = |of: f64| {
        desk.words
            .say("summary.plan-caption", &[("scale", scale(of))])
    };
    blocks.push(Block::Drawn(Figure {
        caption: caption(plan.overview.scale).into(),
        drawing: Arc::new(plan.overview),
        height_pt: FRAME.height_pt as f32 + 1.0,
        legend_columns: 3,
        framed: true,
    }));
    for sheet in plan.sheets {
        let name = desk
            .words
            .say("summary.plan-sheet", &[("name", Said::Text(&sheet.name))]);
        blocks.push(Block::NewPage);
        blocks.push(Block::heading(2, name));
        blocks.push(Block::Drawn(Figure {
            caption: caption(sheet.drawing.scale).into(),
            drawing: Arc::new(sheet.drawing),
            height_pt: FRAME.height_pt as f32 + 1.0,
            legend_columns: 0,
            framed: true,
        }));
    }
    let no_place: Vec<String> = desk
        .trees
        .iter()
        .filter(|seen| seen.tree.position.is_none())
        .map(|seen| seen.tree.tag.clone())
        .collect();
    if !no_place.is_empty() {
        let trees = desk.listed(&no_place);
        let said = desk
            .words
            .say("summary.plan-no-place", &[("trees", Said::Text(&trees))]);
        blocks.push(Block::small(said));
    }
    blocks
}

/// The plane around the first place that the site knows.
fn plane_of(site: &Site) -> Option<LocalPlane> {
    let outline = site.outline.first().copied();
    let tree = || site.trees.iter().find_map(|tree| tree.position);
    let target = || site.targets.iter().find_map(|target| target.ground.first());
    let line = || site.lines.iter().find_map(|line| line.way.first());
    outline
        .or_else(|| tree().map(|position| position.point()))
        .or_else(|| target().copied())
        .or_else(|| line().copied())
        .map(LocalPlane::around)
}

fn input(desk: &PaperDesk, plane: &LocalPlane) -> PlanInput {
    let site = &desk.input.file.site;
    let outline: Vec<Spot> = spots(plane, &site.outline);
    let described = desk.words.say(
        "summary.plan-described",
        &[
            ("site", Said::Text(&site.name)),
            ("trees", Said::Count(desk.trees.len() as i64)),
        ],
    );
    let mut input = PlanInput {
        described,
        property: if outline.len() < 3 {
            Vec::new()
        } else {
            vec![outline]
        },
        trees: desk
            .trees
            .iter()
            .filter_map(|seen| tree(seen, plane))
            .collect(),
        zones: desk
            .trees
            .iter()
            .filter_map(|seen| zone(seen, plane))
            .collect(),
        targets: site.targets.iter().map(|at| target(at, plane)).collect(),
        overhead_lines: site.lines.iter().map(|at| line(desk, at, plane)).collect(),
        distances: Vec::new(),
        merge_zones: true,
        north: desk.say("plan.north"),
        bar_unit: bar_unit(desk),
        legend: Vec::new(),
    };
    input.legend = legend(desk, &input);
    input
}

fn spot(plane: &LocalPlane, at: LatLon) -> Spot {
    let place = plane.metres(at);
    Spot::new(place.east_m, place.north_m)
}

fn spots(plane: &LocalPlane, way: &[LatLon]) -> Vec<Spot> {
    way.iter().map(|at| spot(plane, *at)).collect()
}

fn tree(seen: &TreeSeen, plane: &LocalPlane) -> Option<PlanTree> {
    let position = seen.tree.position?;
    let centre = spot(plane, position.point());
    let crown = seen.newest(|look| look.crown.as_ref());
    Some(PlanTree {
        id: seen.tree.id.to_string(),
        tag: seen.tree.tag.clone(),
        at: centre,
        accuracy_m: position.accuracy_m.map(|radius_m| radius_m * TO_95_PERCENT),
        crown: crown.map(|crown| PlanArea::Circle {
            centre,
            radius_m: crown.radius_m,
        }),
        dead: seen.newest(|look| look.life) == Some(LifeState::Dead),
        symbol: PointSymbol::TreePlain,
    })
}

/// The keep-out of the planned way, where anything is cut.
fn zone(seen: &TreeSeen, plane: &LocalPlane) -> Option<PlanZone> {
    let zone = seen.zone_to_close()?;
    if zone.keep_out_outline.len() < 3 {
        return None;
    }
    Some(PlanZone {
        about: seen.tree.id.to_string(),
        role: StyleRole::KeepOutEveryone,
        area: PlanArea::Outline {
            rings: vec![spots(plane, &zone.keep_out_outline)],
        },
    })
}

fn target(target: &Target, plane: &LocalPlane) -> PlanTarget {
    let ground = spots(plane, &target.ground);
    let mut drawn = PlanTarget {
        id: target.id.to_string(),
        symbol: match target.kind {
            TargetKind::Dwelling => PointSymbol::TargetDwelling,
            TargetKind::Road => PointSymbol::TargetRoad,
            TargetKind::Path => PointSymbol::TargetPath,
            TargetKind::Garden | TargetKind::Play => PointSymbol::TargetGarden,
            TargetKind::Parking => PointSymbol::TargetParking,
            _ => PointSymbol::TargetOther,
        },
        at: None,
        outline: Vec::new(),
        course: Vec::new(),
        words: target.name.clone(),
    };
    match target.form {
        GroundForm::Spot => drawn.at = ground.first().copied(),
        GroundForm::Way => drawn.course = ground,
        GroundForm::Area => drawn.outline = ground,
    }
    drawn
}

/// A line with the widest strip that any tree's answer gives it.
fn line(desk: &PaperDesk, line: &OverheadLine, plane: &LocalPlane) -> PlanLine {
    let wires = desk
        .trees
        .iter()
        .filter_map(|seen| seen.judgement)
        .flat_map(|judgement| &judgement.wires);
    let approach_m = wires
        .filter(|wire| wire.line == line.id)
        .filter_map(|wire| wire.approach_m)
        .fold(None, |widest: Option<f64>, own| {
            Some(widest.map_or(own, |known| known.max(own)))
        });
    PlanLine {
        id: line.id.to_string(),
        course: spots(plane, &line.way),
        approach_m,
        words: line.name.clone(),
    }
}

/// A line for what the plan really shows.
fn legend(desk: &PaperDesk, input: &PlanInput) -> Vec<LegendLine> {
    let trees = &input.trees;
    let lines = &input.overhead_lines;
    let with_crown = |dead: bool| trees.iter().any(|t| t.crown.is_some() && t.dead == dead);
    let mut legend = Vec::new();
    let mut add = |shown: bool, role, symbol, key: &str| {
        if shown {
            legend.push(LegendLine {
                role,
                symbol,
                words: desk.say(key),
            });
        }
    };
    let tree = Some(PointSymbol::TreePlain);
    add(!trees.is_empty(), StyleRole::Tree, tree, "legend.tree");
    add(with_crown(false), StyleRole::Crown, None, "legend.crown");
    add(
        with_crown(true),
        StyleRole::DeadCrown,
        None,
        "legend.dead-crown",
    );
    let zones = !input.zones.is_empty();
    add(zones, StyleRole::KeepOutEveryone, None, "legend.keep-out");
    let edge = !input.property.is_empty();
    add(edge, StyleRole::PropertyEdge, None, "legend.property");
    let targets = !input.targets.is_empty();
    add(targets, StyleRole::Target, None, "legend.target");
    add(
        !lines.is_empty(),
        StyleRole::OverheadLine,
        None,
        "legend.line",
    );
    let strip = lines.iter().any(|line| line.approach_m.is_some());
    add(strip, StyleRole::ApproachStrip, None, "legend.approach");
    let ring = trees.iter().any(|tree| tree.accuracy_m.is_some());
    add(ring, StyleRole::AccuracyRing, None, "legend.accuracy");
    legend
}
