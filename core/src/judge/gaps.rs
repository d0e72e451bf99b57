//! What was not looked at or measured. A gap never has a default; what has one says so elsewhere.

mod site;

use crate::record::{
    ArgValue, ClimbNeed, Inspection, InspectionLevel, LifeState, Look, MalletSound, Permission,
    PermissionAnswer, PermissionKind, Quantity, Reason, WalkPart,
};

pub(crate) use site::{of_site, weather};

use super::case::LOOKED_AT_ANEW;
use super::plan_case::PlanCase;
use super::stem::seen_diameter_cm;
use super::tree_case::TreeCase;

/// Leans up to this are read as upright by eye: nobody has to say whether they are new.
const UPRIGHT_DEG: f64 = 3.0;

/// Gaps of the tree, whatever the plan.
pub(crate) fn of_tree(case: &TreeCase) -> Vec<Reason> {
    let mut gaps = Vec::new();
    let mut ask = |missing: bool, code: &str| {
        if missing {
            gaps.push(Reason::new(code));
        }
    };
    let look = case.look();
    ask(case.seen.day.is_none(), "gap.no-date");
    ask(look.life.is_none(), "gap.life");
    ask(case.tree.way.is_none(), "gap.way-of-working");
    if !case.seen.full {
        triage(case, &mut gaps);
        return gaps;
    }
    measures(case, &mut ask);
    ground_and_life(case, &mut ask);
    out_of_date(case, &mut gaps);
    walk_round(case, &mut gaps);
    base(case, &mut gaps);
    findings(case, &mut gaps);
    pieces(case, &mut gaps);
    gaps
}

/// Triage never judges a climb: what it leaves open is asked, and then a full check.
fn triage(case: &TreeCase, gaps: &mut Vec<Reason>) {
    let look = case.look();
    if look.level == InspectionLevel::Triage {
        for (missing, code) in [
            (case.tree.species.is_none(), "gap.species"),
            (look.wires_near.is_none(), "gap.wires-asked"),
            (look.base_sound.is_none(), "gap.base-asked"),
        ] {
            if missing {
                gaps.push(Reason::new(code));
            }
        }
    }
    gaps.push(match (case.need(), case.seen.over) {
        (ClimbNeed::NotNeeded, _) => Reason::new("gap.no-climb-judged"),
        (_, Some(day)) => Reason::new("gap.full-check-over").with("day", ArgValue::OnDay { day }),
        _ => Reason::new("gap.full-check"),
    });
}

fn measures(case: &TreeCase, ask: &mut impl FnMut(bool, &str)) {
    let look = case.look();
    ask(look.height.is_none(), "gap.height");
    ask(look.girth.is_none(), "gap.girth");
    ask(look.lean.is_none(), "gap.lean");
    ask(case.tree.species.is_none(), "gap.species");
    ask(case.tree.position.is_none(), "gap.position");
    ask(look.crown.is_none(), "gap.crown-radius");
    let crown = look.crown;
    ask(
        crown.is_some_and(|crown| crown.base_m.is_none()),
        "gap.crown-base",
    );
    let stems = look.other_stems.iter();
    let unmeasured = |stem: &crate::record::OtherStem| {
        stem.height.is_none() || stem.lean.is_none() || stem.girth.is_none()
    };
    ask(stems.into_iter().any(unmeasured), "gap.other-stem");
}

fn ground_and_life(case: &TreeCase, ask: &mut impl FnMut(bool, &str)) {
    let look = case.look();
    let leans = look.lean.is_some_and(|lean| lean.lean_deg > UPRIGHT_DEG);
    ask(leans && look.lean_is_new.is_none(), "gap.lean-new");
    ask(look.ground_dug.is_none(), "gap.ground-dug");
    let lines = &case.site.file.site.lines;
    ask(
        lines.is_empty() && look.wires_near.is_none(),
        "gap.wires-asked",
    );
    ask(
        lines.is_empty() && look.wires_near == Some(true),
        "gap.line-not-recorded",
    );
    let dead = look.life == Some(LifeState::Dead);
    let ash = case.genus() == "fraxinus";
    ask(ash && dead && look.beetle_killed.is_none(), "gap.beetle");
    ask(ash && !dead && look.dieback_pct.is_none(), "gap.dieback");
}

/// An answer ends with its day: what changes overnight has to be looked at anew.
fn out_of_date(case: &TreeCase, gaps: &mut Vec<Reason>) {
    let Some(day) = case.seen.full_day else {
        return;
    };
    if day == case.site.as_of {
        return;
    }
    for part in LOOKED_AT_ANEW {
        if !case.seen.anew.contains(&part) {
            let gap = Reason::new("gap.look-again").term("part", part_term(part));
            gaps.push(gap.with("day", ArgValue::OnDay { day }));
        }
    }
}

fn walk_round(case: &TreeCase, gaps: &mut Vec<Reason>) {
    for part in WalkPart::ALL {
        if case.seen.look_at(part) == Look::NotSeen {
            let hidden = hidden_by(case.look(), part);
            let gap = Reason::new(match hidden {
                Some(_) => "gap.part-hidden",
                None => "gap.part-not-seen",
            });
            let gap = gap.term("part", part_term(part));
            gaps.push(match hidden {
                Some(hidden) => gap.text("hidden", hidden),
                None => gap,
            });
        }
    }
}

fn hidden_by(look: &Inspection, part: WalkPart) -> Option<&str> {
    let mut parts = look.walk_round.iter().filter(|look| look.part == part);
    parts.find_map(|look| look.hidden_by.as_deref())
}

/// The mallet on four sides; a base that is only part seen is capped instead.
fn base(case: &TreeCase, gaps: &mut Vec<Reason>) {
    if case.seen.look_at(WalkPart::Base) != Look::Seen {
        return;
    }
    let heard =
        |sound: &Option<MalletSound>| sound.is_some_and(|sound| sound != MalletSound::NotSounded);
    if !case.base_sounds().iter().all(heard) {
        gaps.push(Reason::new("gap.base-mallet"));
    }
}

fn findings(case: &TreeCase, gaps: &mut Vec<Reason>) {
    for defect in case.defects() {
        let finding = defect.finding;
        let about = |code: &str| Reason::new(code).about(&finding.id);
        let Some(code) = case.site.book.code(&finding.code) else {
            gaps.push(about("gap.code-unknown").text("code", finding.code.as_str()));
            continue;
        };
        let name = |gap: Reason| match &code.name {
            Some(name) => gap.text("name", name),
            None => gap.term("name", super::findings::kind_term(defect.kind)),
        };
        match finding.grade {
            None => gaps.push(name(about("gap.finding-grade"))),
            Some(grade) if case.site.book.sentence(&finding.code, grade).is_none() => {
                gaps.push(name(about("gap.code-without-sentence")));
            }
            Some(_) => {}
        }
    }
}

fn pieces(case: &TreeCase, gaps: &mut Vec<Reason>) {
    let known = case
        .tree
        .work
        .iter()
        .any(|work| work.piece_length_m.is_some());
    if case.drops_pieces() && !known {
        gaps.push(Reason::new("gap.piece-length"));
    }
}

/// Gaps of one way up.
pub(crate) fn of_plan(plan: &PlanCase) -> Vec<Reason> {
    let mut gaps = Vec::new();
    let site = plan.case.site;
    if let Some(made) = plan.plan {
        let mut ask = |missing: bool, code: &str| {
            if missing {
                gaps.push(Reason::new(code).about(&made.id));
            }
        };
        ask(plan.climber.is_none(), "gap.climber");
        ask(made.second.is_empty(), "gap.second");
        ask(
            !made.second.is_empty() && plan.second.is_none(),
            "gap.second-unknown",
        );
        ask(made.ascent_side_deg.is_none(), "gap.ascent-side");
        ask(
            plan.stopper_needed() && made.stopper.is_none(),
            "gap.stopper",
        );
    }
    if site.file.crew.is_empty() {
        gaps.push(Reason::new("gap.crew"));
    }
    if site.file.gear.is_empty() {
        gaps.push(Reason::new("gap.gear"));
    }
    anchor(plan, &mut gaps);
    sections(plan.case, &mut gaps);
    gaps
}

fn anchor(plan: &PlanCase, gaps: &mut Vec<Reason>) {
    let Some(anchor) = plan.anchor else {
        gaps.push(Reason::new("gap.anchor"));
        return;
    };
    let name = anchor.name.as_deref().unwrap_or(anchor.id.as_str());
    for (missing, code) in [
        (anchor.height_m.is_none(), "gap.anchor-height"),
        (anchor.diameter_cm.is_none(), "gap.anchor-diameter"),
        (anchor.limb_angle_deg.is_none(), "gap.anchor-angle"),
        (anchor.from_union_cm.is_none(), "gap.anchor-from-union"),
        (anchor.union.is_none(), "gap.anchor-union"),
        (anchor.state.is_none(), "gap.anchor-state"),
    ] {
        if missing {
            gaps.push(Reason::new(code).about(&anchor.id).text("anchor", name));
        }
    }
}

/// A section that says nothing of its walls is a gap of its own.
fn sections(case: &TreeCase, gaps: &mut Vec<Reason>) {
    for section in &case.look().sections {
        let silent = section.readings.is_empty()
            && section.mallet.iter().all(|m| *m == MalletSound::NotSounded);
        if silent || seen_diameter_cm(case, section).is_none() {
            gaps.push(Reason::new("gap.section-walls").about(&section.id).number(
                "height",
                section.height_m,
                Quantity::LengthM,
            ));
        }
    }
}

/// Permissions about one tree that nobody answered, or that were refused.
pub(crate) fn permissions_of_tree(case: &TreeCase) -> Vec<Reason> {
    let permissions = case.site.file.site.permissions.iter();
    permissions
        .filter(|p| !p.tree.is_empty() && p.tree == case.tree.id)
        .filter_map(|permission| {
            let code = match permission.answer {
                Some(PermissionAnswer::Refused) => "stop.permission-refused",
                _ => permission_gap(permission)?,
            };
            let reason = Reason::new(code).about(&permission.id);
            Some(reason.term("permission", permission_term(permission.kind)))
        })
        .collect()
}

/// The catalogue's word for a part of the walk-round.
pub(crate) fn part_term(part: WalkPart) -> &'static str {
    match part {
        WalkPart::Wires => "walk-part.wires",
        WalkPart::Hangers => "walk-part.hangers",
        WalkPart::Insects => "walk-part.insects",
        WalkPart::Roots => "walk-part.roots",
        WalkPart::Base => "walk-part.base",
        WalkPart::StemNorth => "walk-part.stem-north",
        WalkPart::StemEast => "walk-part.stem-east",
        WalkPart::StemSouth => "walk-part.stem-south",
        WalkPart::StemWest => "walk-part.stem-west",
        WalkPart::Unions => "walk-part.unions",
        WalkPart::Crown => "walk-part.crown",
    }
}

/// What is missing for a permission; nothing where it was answered and dated.
pub(crate) fn permission_gap(permission: &Permission) -> Option<&'static str> {
    match permission.answer {
        None => Some("gap.permission"),
        Some(PermissionAnswer::Waiting) => Some("gap.permission-waiting"),
        Some(_) if permission.on.is_none() => Some("gap.permission-undated"),
        Some(_) => None,
    }
}

/// The catalogue's word for a permission.
pub(crate) fn permission_term(kind: PermissionKind) -> &'static str {
    match kind {
        PermissionKind::Owner => "permission-kind.owner",
        PermissionKind::ProtectedTree => "permission-kind.protected-tree",
        PermissionKind::Neighbour => "permission-kind.neighbour",
        PermissionKind::Nests => "permission-kind.nests",
        PermissionKind::Bats => "permission-kind.bats",
        PermissionKind::Quarantine => "permission-kind.quarantine",
        PermissionKind::RoadClosure => "permission-kind.road-closure",
    }
}
