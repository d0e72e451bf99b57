//! The judgement of one tree: stops, gaps, caps, score, in this order, for the best of its plans.

use crate::record::{Id, Judgement, Reason, Tree, Verdict, ZoneAnswer};

use super::METHOD_VERSION;
use super::case::SiteContext;
use super::clearance::Wires;
use super::judge_plan::{PlanAnswer, judge_plan};
use super::plan_case::PlanCase;
use super::risk::risk_answer;
use super::rules::Rule;
use super::tree_case::{TreeCase, need};
use super::working::Working;
use super::zone::{Zones, zones};
use super::{gaps, inside, remarks, stops};

/// Judges one tree on the day of its site's context.
pub fn judge_tree(site: &SiteContext, tree: &Tree) -> Judgement {
    let Some(seen) = site.seen(tree) else {
        return unseen(site, tree);
    };
    let case = TreeCase::new(site, tree, &seen);
    // A tree that was only triaged and has no work gets no zones: nothing is to come down.
    let zoned = if case.seen.full || !tree.work.is_empty() {
        zones(tree, case.look(), site.rules)
    } else {
        Zones {
            lines: Vec::new(),
            gaps: Vec::new(),
        }
    };
    let mut lines: Vec<ZoneAnswer> = zoned.lines;
    inside::fill(&case, &mut lines);
    let mut answer = if case.seen.full && case.is_climbed() {
        best_plan(&case)
    } else {
        without_climb(&case)
    };
    answer.stops.extend(stops::of_tree(&case));
    answer.gaps.extend(gaps::of_tree(&case));
    for reason in gaps::permissions_of_tree(&case) {
        if reason.code.starts_with("stop.") {
            answer.stops.push(reason);
        } else {
            answer.gaps.push(reason);
        }
    }
    if case.is_worked_on() {
        answer.stops.extend(stops::site_stops(site));
        // Where the planned way has no line, what is missing for it is a gap of the tree.
        answer.gaps.extend(
            zoned
                .gaps
                .into_iter()
                .filter(|gap| gap.code == "gap.zone-of-planned-way"),
        );
        if let Some(planned) = lines.iter().find(|line| line.planned) {
            answer
                .stops
                .extend(inside::cannot_be_cleared(site, planned));
        }
    }
    if case.seen.full && case.is_climbed() {
        answer.gaps.extend(gaps::weather(site));
        answer.limit_caps.extend(stops::cautions(site));
    } else if case.seen.full {
        answer.gaps.push(Reason::new("gap.no-climb-judged"));
    }
    answer.remarks.extend(remarks::of_tree(&case));
    assemble(&case, answer, lines)
}

/// Every way up is judged whole; the best is the one with the better verdict, then the higher 10 %
/// end.
fn best_plan(case: &TreeCase) -> PlanAnswer {
    let plans = PlanCase::all(case);
    let mut best: Option<PlanAnswer> = None;
    for plan in &plans {
        let answer = judge_plan(plan);
        if best.as_ref().is_none_or(|best| answer.is_better_than(best)) {
            best = Some(answer);
        }
    }
    best.unwrap_or_default()
}

/// A tree that nobody climbs, or that was not looked at closely enough: wires and stops only.
fn without_climb(case: &TreeCase) -> PlanAnswer {
    let wires = Wires::of(case, None);
    let mut answer = PlanAnswer {
        stops: wires.stops,
        limit_caps: wires.limits,
        wires: wires.answers,
        remarks: wires.remarks,
        ..PlanAnswer::default()
    };
    // A hanger or a dead route has no route to hang over: it bars whoever would climb.
    for defect in case.defects() {
        let code = match defect.kind {
            crate::record::DefectKind::Hanger => "stop.hanger-over-route",
            crate::record::DefectKind::UnionCrack if defect.grade >= 2 => "stop.union-crack",
            _ => continue,
        };
        answer
            .stops
            .push(Reason::new(code).about(&defect.finding.id));
    }
    if case.seen.full {
        answer.gaps.extend(wires.gaps);
    }
    answer
}

fn assemble(case: &TreeCase, answer: PlanAnswer, zones: Vec<ZoneAnswer>) -> Judgement {
    let mut whole = blank(case.site, case.tree);
    let look = case.look();
    whole.inspection = look.id.clone();
    whole.climb = case.need();
    whole.stops = once(answer.stops);
    whole.gaps = once(answer.gaps);
    whole.refer_caps = once(answer.refer_caps);
    whole.limit_caps = once(answer.limit_caps);
    whole.verdict = verdict(&whole, answer.by_score);
    // A score beside a stop or a gap would be read as the answer.
    let judged = !matches!(whole.verdict, Verdict::Barred | Verdict::Incomplete);
    whole.score = answer.score.filter(|_| judged);
    let mut limits = answer.limits;
    if let Some(score) = &whole.score {
        let from = case.site.rules.number(Rule::ScoreLimitNamedFrom);
        limits.extend(
            score
                .shares
                .iter()
                .filter(|share| f64::from(share.points) >= from && !has_cap(&share.cause))
                .map(|share| share.cause.clone()),
        );
    }
    whole.limits = once(limits);
    whole.remarks = once(answer.remarks);
    if whole.verdict == Verdict::Barred || case.is_dead() {
        // Nobody loads an anchor on a dead or barred tree.
        whole
            .remarks
            .retain(|remark| remark.code != "remark.load-test-first");
    }
    whole.plan = answer.plan;
    whole.anchor = answer.anchor;
    whole.margins = answer.margins;
    whole.climbers = answer.climbers;
    whole.rope = answer.rope;
    let mut working = Working::default();
    super::zone_working::explain(case, &zones, &mut working);
    super::stops::explain(case, &mut working);
    whole.working = working.into_lines();
    whole.working.extend(answer.working.into_lines());
    whole.zones = zones;
    whole.wires = answer.wires;
    whole.risks = look.risks.iter().map(risk_answer).collect();
    // Where no reading moves the score there is nothing to narrow.
    let is_wide = whole.score.as_ref().is_some_and(|s| s.low < s.high);
    whole.next_measurement = answer.next.filter(|_| judged && is_wide);
    whole.next_look = look.next_look;
    whole
}

/// Causes that a cap already names, with the same advice.
fn has_cap(cause: &Reason) -> bool {
    matches!(
        cause.code.as_str(),
        "cause.part-seen" | "cause.anchor-union-not-seen"
    )
}

/// Stops before gaps before caps before the score.
fn verdict(whole: &Judgement, by_score: Option<Verdict>) -> Verdict {
    if !whole.stops.is_empty() {
        return Verdict::Barred;
    }
    let Some(by_score) = by_score.filter(|_| whole.gaps.is_empty()) else {
        return Verdict::Incomplete;
    };
    let cap = if !whole.refer_caps.is_empty() {
        Verdict::Refer
    } else if !whole.limit_caps.is_empty() {
        Verdict::Limited
    } else {
        Verdict::NoStop
    };
    by_score.min(cap)
}

/// The same reason about the same record is told once.
fn once(reasons: Vec<Reason>) -> Vec<Reason> {
    let mut kept: Vec<Reason> = Vec::new();
    for reason in reasons {
        if !kept.contains(&reason) {
            kept.push(reason);
        }
    }
    kept
}

/// A tree nobody has looked at up to the day.
fn unseen(site: &SiteContext, tree: &Tree) -> Judgement {
    let mut whole = blank(site, tree);
    whole.gaps = vec![Reason::new("gap.not-looked-at")];
    whole
}

fn blank(site: &SiteContext, tree: &Tree) -> Judgement {
    Judgement {
        tree: tree.id.clone(),
        tag: tree.tag.clone(),
        inspection: Id::default(),
        rule_set: site.rules.id().clone(),
        method_version: METHOD_VERSION,
        as_of: site.as_of,
        climb: need(tree),
        verdict: Verdict::Incomplete,
        stops: Vec::new(),
        gaps: Vec::new(),
        refer_caps: Vec::new(),
        limit_caps: Vec::new(),
        limits: Vec::new(),
        remarks: Vec::new(),
        score: None,
        plan: Id::default(),
        anchor: Id::default(),
        margins: Vec::new(),
        climbers: Vec::new(),
        rope: None,
        zones: Vec::new(),
        wires: Vec::new(),
        risks: Vec::new(),
        next_measurement: None,
        next_look: None,
        working: Vec::new(),
    }
}

impl PlanAnswer {
    fn verdict(&self) -> Verdict {
        if !self.stops.is_empty() {
            Verdict::Barred
        } else if !self.gaps.is_empty() {
            Verdict::Incomplete
        } else if !self.refer_caps.is_empty() {
            Verdict::Refer.min(self.by_score.unwrap_or(Verdict::Incomplete))
        } else if !self.limit_caps.is_empty() {
            Verdict::Limited.min(self.by_score.unwrap_or(Verdict::Incomplete))
        } else {
            self.by_score.unwrap_or(Verdict::Incomplete)
        }
    }

    fn is_better_than(&self, other: &PlanAnswer) -> bool {
        let points =
            |answer: &PlanAnswer| answer.score.as_ref().map_or((0, 0), |s| (s.low, s.points));
        (self.verdict(), points(self)) > (other.verdict(), points(other))
    }
}
