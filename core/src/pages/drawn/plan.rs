//! The plan of a site for the crew: each tree by its verdict.

use super::{bar_unit, width};
use crate::draw::{
    Drawing, DrawnFrame, LegendLine, PlanArea, PlanInput, PlanLine, PlanTarget, PlanTree, PlanZone,
    PointSymbol, Spot, StyleRole, plan,
};
use crate::measure::place::LocalPlane;
use crate::pages::desk::PageDesk;
use crate::pages::looks::Looks;
use crate::record::{
    GroundForm, Judgement, LatLon, LifeState, OverheadLine, Quantity, Site, SiteJudgement, Target,
    TargetKind, Tree, Verdict, WayOfWorking,
};
use crate::words::{Said, Worded};

/// From the radius that holds 68 % of fixes to the one that holds 95 %, for a circular normal
/// distribution: √(ln 0.05 / ln 0.32).
pub(super) const TO_95_PERCENT: f64 = 1.621_5;

/// What the plan of a site is drawn from.
pub(super) struct SitePlan {
    /// The plane that its metres lie in.
    pub(super) plane: LocalPlane,
    pub(super) input: PlanInput,
}

impl SitePlan {
    /// Nothing where no position was taken.
    pub(super) fn of(desk: &PageDesk) -> Option<SitePlan> {
        let (site, judged) = desk.site?;
        let plane = plane_of(site)?;
        let input = plan_input(desk, site, judged, &plane);
        Some(SitePlan { plane, input })
    }
}

/// The plan of the site; nothing where no position was taken.
pub(super) fn site_drawing(desk: &PageDesk, frame: &DrawnFrame) -> Option<Drawing> {
    let SitePlan { input, .. } = SitePlan::of(desk)?;
    Some(plan(&input, frame, &width).drawing)
}

/// The plane around the first place that the site knows.
pub(in crate::pages) fn plane_of(site: &Site) -> Option<LocalPlane> {
    let tree = || site.trees.iter().find_map(|tree| tree.position);
    let target = || site.targets.iter().find_map(|target| target.ground.first());
    let line = || site.lines.iter().find_map(|line| line.way.first());
    site.outline
        .first()
        .copied()
        .or_else(|| tree().map(|position| position.point()))
        .or_else(|| target().copied())
        .or_else(|| line().copied())
        .map(LocalPlane::around)
}

fn plan_input(
    desk: &PageDesk,
    site: &Site,
    judged: &SiteJudgement,
    plane: &LocalPlane,
) -> PlanInput {
    let answers = desk.trees();
    let described = [
        ("site", Said::Text(site.name.as_str())),
        ("trees", Said::Count(site.trees.len() as i64)),
    ];
    let mut input = PlanInput {
        described: desk.words.say("summary.plan-described", &described),
        property: property(site, plane),
        trees: answers
            .iter()
            .filter_map(|(tree, answer)| plan_tree(desk, site, tree, answer, plane))
            .collect(),
        zones: answers
            .iter()
            .filter_map(|(tree, answer)| keep_out(tree, answer, plane))
            .collect(),
        targets: site.targets.iter().map(|at| target(at, plane)).collect(),
        overhead_lines: site
            .lines
            .iter()
            .map(|at| overhead_line(judged, at, plane))
            .collect(),
        distances: Vec::new(),
        merge_zones: false,
        north: desk.say("plan.north"),
        bar_unit: bar_unit(desk, Quantity::LengthM),
        legend: Vec::new(),
    };
    input.legend = legend(desk, &input, &answers);
    input
}

pub(super) fn property(site: &Site, plane: &LocalPlane) -> Vec<Vec<Spot>> {
    if site.outline.len() < 3 {
        return Vec::new();
    }
    vec![spots(plane, &site.outline)]
}

pub(super) fn spot(plane: &LocalPlane, at: LatLon) -> Spot {
    let place = plane.metres(at);
    Spot::new(place.east_m, place.north_m)
}

pub(super) fn spots(plane: &LocalPlane, way: &[LatLon]) -> Vec<Spot> {
    way.iter().map(|at| spot(plane, *at)).collect()
}

/// A tree with its crown and its verdict's mark; nothing without a position.
pub(super) fn plan_tree(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    answer: &Judgement,
    plane: &LocalPlane,
) -> Option<PlanTree> {
    let position = tree.position?;
    let centre = spot(plane, position.point());
    let looks = Looks::of(tree, site, desk.today, &desk.rules);
    Some(PlanTree {
        id: tree.id.to_string(),
        tag: tree.tag.clone(),
        at: centre,
        accuracy_m: position.accuracy_m.map(|radius_m| radius_m * TO_95_PERCENT),
        crown: looks
            .newest(|look| look.crown)
            .map(|crown| PlanArea::Circle {
                centre,
                radius_m: crown.radius_m,
            }),
        dead: looks.newest(|look| look.life) == Some(LifeState::Dead),
        symbol: symbol_of(answer.verdict),
    })
}

fn symbol_of(verdict: Verdict) -> PointSymbol {
    match verdict {
        Verdict::Barred => PointSymbol::TreeBarred,
        Verdict::Incomplete => PointSymbol::TreeIncomplete,
        Verdict::Refer => PointSymbol::TreeRefer,
        Verdict::Limited => PointSymbol::TreeLimited,
        Verdict::NoStop => PointSymbol::TreeNoStop,
    }
}

/// The keep-out of the planned way, where anything is still cut.
fn keep_out(tree: &Tree, answer: &Judgement, plane: &LocalPlane) -> Option<PlanZone> {
    let zone = answer.zones.iter().find(|zone| zone.planned)?;
    let idle = [WayOfWorking::InspectOnly, WayOfWorking::NoWork];
    if tree.work_is_done() || idle.contains(&zone.way) || zone.keep_out_outline.len() < 3 {
        return None;
    }
    Some(PlanZone {
        about: answer.tree.to_string(),
        role: StyleRole::KeepOutEveryone,
        area: PlanArea::Outline {
            rings: vec![spots(plane, &zone.keep_out_outline)],
        },
    })
}

pub(super) fn target(target: &Target, plane: &LocalPlane) -> PlanTarget {
    let ground = spots(plane, &target.ground);
    let (mut at, mut outline, mut course) = (None, Vec::new(), Vec::new());
    match target.form {
        GroundForm::Spot => at = ground.first().copied(),
        GroundForm::Way => course = ground,
        GroundForm::Area => outline = ground,
    }
    PlanTarget {
        id: target.id.to_string(),
        symbol: match target.kind {
            TargetKind::Dwelling => PointSymbol::TargetDwelling,
            TargetKind::Road => PointSymbol::TargetRoad,
            TargetKind::Path => PointSymbol::TargetPath,
            TargetKind::Garden | TargetKind::Play => PointSymbol::TargetGarden,
            TargetKind::Parking => PointSymbol::TargetParking,
            TargetKind::Outbuilding
            | TargetKind::Fence
            | TargetKind::Services
            | TargetKind::Animals
            | TargetKind::Other => PointSymbol::TargetOther,
        },
        at,
        outline,
        course,
        words: target.name.clone(),
    }
}

/// A line with the widest strip that any tree's answer gives it.
pub(super) fn overhead_line(
    judged: &SiteJudgement,
    line: &OverheadLine,
    plane: &LocalPlane,
) -> PlanLine {
    let wires = judged.trees.iter().flat_map(|answer| &answer.wires);
    PlanLine {
        id: line.id.to_string(),
        course: spots(plane, &line.way),
        approach_m: wires
            .filter(|wire| wire.line == line.id)
            .filter_map(|wire| wire.approach_m)
            .reduce(f64::max),
        words: line.name.clone(),
    }
}

/// A line for each verdict that occurs, and for what else the plan shows.
fn legend(desk: &PageDesk, input: &PlanInput, answers: &[(&Tree, &Judgement)]) -> Vec<LegendLine> {
    let mut legend = Vec::new();
    for verdict in [
        Verdict::Barred,
        Verdict::Incomplete,
        Verdict::Refer,
        Verdict::Limited,
        Verdict::NoStop,
    ] {
        if answers.iter().any(|(_, answer)| answer.verdict == verdict) {
            legend.push(LegendLine {
                role: StyleRole::Tree,
                symbol: Some(symbol_of(verdict)),
                words: desk.say(&verdict.key()),
            });
        }
    }
    let crowns = input.trees.iter().any(|tree| tree.crown.is_some());
    let strips = input
        .overhead_lines
        .iter()
        .any(|line| line.approach_m.is_some());
    let rings = input.trees.iter().any(|tree| tree.accuracy_m.is_some());
    for (shown, role, key) in [
        (crowns, StyleRole::Crown, "legend.crown"),
        (
            !input.zones.is_empty(),
            StyleRole::KeepOutEveryone,
            "legend.keep-out",
        ),
        (
            !input.property.is_empty(),
            StyleRole::PropertyEdge,
            "legend.property",
        ),
        (
            !input.targets.is_empty(),
            StyleRole::Target,
            "legend.target",
        ),
        (
            !input.overhead_lines.is_empty(),
            StyleRole::OverheadLine,
            "legend.line",
        ),
        (strips, StyleRole::ApproachStrip, "legend.approach"),
        (rings, StyleRole::AccuracyRing, "legend.accuracy"),
    ] {
        if shown {
            legend.push(LegendLine {
                role,
                symbol: None,
                words: desk.say(key),
            });
        }
    }
    legend
}
