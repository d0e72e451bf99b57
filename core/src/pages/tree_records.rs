//! The records in the lists of a tree's page, each with what can be done to it.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::line::{PagePhoto, PageRecord};
use super::looks::Looks;
use super::page::PageAddress;
use super::section_left::left_words;
use crate::record::{
    AnchorPoint, ClimbPlan, Finding, Judgement, MalletSound, Photo, Quantity, ShellReading, Site,
    StemSection, Tree, Work,
};
use crate::words::{Rounding, Said};

/// The findings, by the numbers of the drawings.
pub(super) fn finding_records(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let findings = looks.all(|look| &look.findings);
    findings
        .into_iter()
        .map(|finding| PageRecord {
            id: finding.id.clone(),
            words: desk.code_words(&finding.code),
            detail: finding_detail(desk, finding),
            go_to: Some(PageAddress::Finding {
                finding: finding.id.clone(),
            }),
            offers: vec![desk.offer(CommandKind::RemoveFinding, &finding.id, None)],
        })
        .collect()
}

/// Grade and place of a finding.
pub(super) fn finding_detail(desk: &PageDesk, finding: &Finding) -> String {
    let grade = match finding.grade {
        Some(grade) => desk.say(&format!("grade.{grade}")),
        None => desk.say("page.no-grade"),
    };
    let part = desk.words.word_of(&finding.part);
    let height = finding
        .height_m
        .map(|height_m| desk.words.number(height_m, Quantity::LengthM));
    let side = finding.side_deg.map(|side_deg| desk.words.side(side_deg));
    let parts = [Some(grade), Some(part), height, side];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The distances to wires that were measured on site.
pub(super) fn wire_records(desk: &PageDesk, site: &Site, looks: &Looks) -> Vec<PageRecord> {
    let wires = looks.all(|look| &look.wires);
    wires
        .into_iter()
        .map(|wire| {
            let line = site.lines.iter().find(|line| line.id == wire.line);
            let touching = wire.touching == Some(true);
            let touching = touching.then(|| desk.say("page.wire-touching"));
            let distance = wire.distance_m.map(|distance_m| {
                let from = [("distance", Said::Number(distance_m, Quantity::LengthM))];
                desk.words.say("page.wire-from-crown", &from)
            });
            let parts = [touching, distance];
            PageRecord {
                id: wire.id.clone(),
                words: line.map_or_else(|| wire.line.to_string(), |line| line.name.clone()),
                detail: parts.into_iter().flatten().collect::<Vec<_>>().join(" · "),
                go_to: None,
                offers: vec![desk.offer(CommandKind::RemoveWire, &wire.id, None)],
            }
        })
        .collect()
}

/// The stem sections.
pub(super) fn section_records(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let sections = looks.all(|look| &look.sections);
    let mut records = Vec::new();
    for section in sections {
        records.push(section_record(desk, section));
        for reading in &section.readings {
            records.push(reading_record(desk, reading));
        }
    }
    records
}

/// A reading of the sound wall.
pub(super) fn reading_record(desk: &PageDesk, reading: &ShellReading) -> PageRecord {
    let side = desk.words.side(reading.bearing_deg);
    let wall = desk
        .words
        .measure_with_se(reading.shell_cm, reading.se_cm, Quantity::LengthCm);
    let at = [("side", Said::Text(&side)), ("wall", Said::Text(&wall))];
    PageRecord {
        id: reading.id.clone(),
        words: desk.words.say("page.wall-at", &at),
        detail: reading
            .method
            .map_or_else(String::new, |method| desk.words.word_of(&method)),
        go_to: None,
        offers: vec![desk.offer(CommandKind::RemoveReading, &reading.id, None)],
    }
}

fn section_record(desk: &PageDesk, section: &StemSection) -> PageRecord {
    let height = desk.words.number(section.height_m, Quantity::LengthM);
    let left = left_words(desk, section);
    let sounded = section
        .mallet
        .iter()
        .filter(|at| **at != MalletSound::NotSounded);
    let clock = match sounded.count() {
        0 => None,
        points => Some(
            desk.words
                .say("page.sounded", &[("count", Said::Count(points as i64))]),
        ),
    };
    let detail: Vec<String> = [clock, left].into_iter().flatten().collect();
    let id = &section.id;
    PageRecord {
        id: id.clone(),
        words: desk
            .words
            .say("page.section-at", &[("height", Said::Text(&height))]),
        detail: detail.join(" · "),
        go_to: Some(PageAddress::StemSection {
            section: id.clone(),
        }),
        offers: vec![
            desk.offer(CommandKind::SoundSection, id, None),
            desk.offer(CommandKind::ReadWall, id, None),
            desk.offer_on(CommandKind::ChangeSection, id, section),
            desk.offer(CommandKind::RemoveSection, id, None),
        ],
    }
}

/// The anchors.
pub(super) fn anchor_records(
    desk: &PageDesk,
    looks: &Looks,
    answer: &Judgement,
) -> Vec<PageRecord> {
    let anchors = looks.all(|look| &look.anchors);
    anchors
        .into_iter()
        .map(|anchor| PageRecord {
            id: anchor.id.clone(),
            words: desk.anchor_name(anchor),
            detail: anchor_detail(desk, anchor, answer),
            go_to: Some(PageAddress::Anchor {
                anchor: anchor.id.clone(),
            }),
            offers: vec![desk.offer(CommandKind::RemoveAnchor, &anchor.id, None)],
        })
        .collect()
}

fn anchor_detail(desk: &PageDesk, anchor: &AnchorPoint, answer: &Judgement) -> String {
    let height = anchor
        .height_m
        .map(|height_m| desk.words.number(height_m, Quantity::LengthM));
    let diameter = anchor
        .diameter_cm
        .map(|diameter_cm| desk.words.number(diameter_cm, Quantity::LengthCm));
    let judged = (answer.anchor == anchor.id).then(|| desk.say("page.anchor-judged"));
    let parts = [height, diameter, judged];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The climb plans.
pub(super) fn plan_records(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let anchors = looks.all(|look| &look.anchors);
    let plans = looks.all(|look| &look.plans);
    plans
        .into_iter()
        .map(|plan| {
            let anchor = anchors.iter().find(|anchor| anchor.id == plan.anchor);
            plan_record(desk, plan, anchor.copied())
        })
        .collect()
}

fn plan_record(desk: &PageDesk, plan: &ClimbPlan, anchor: Option<&AnchorPoint>) -> PageRecord {
    let name = anchor.map_or_else(|| desk.say("sheet.anchor-none"), |a| desk.anchor_name(a));
    let named = |id: &crate::record::Id| (!id.is_empty()).then(|| desk.person(id));
    let limbs = (!plan.limbs.is_empty()).then(|| {
        desk.words.say(
            "page.limbs",
            &[("count", Said::Count(plan.limbs.len() as i64))],
        )
    });
    let parts = [
        Some(desk.words.word_of(&plan.system)),
        named(&plan.climber),
        named(&plan.second),
        limbs,
    ];
    let id = &plan.id;
    PageRecord {
        id: id.clone(),
        words: desk
            .words
            .say("page.plan-on", &[("anchor", Said::Text(&name))]),
        detail: parts.into_iter().flatten().collect::<Vec<_>>().join(" · "),
        go_to: None,
        offers: vec![
            desk.offer_on(CommandKind::ChangePlan, id, plan),
            desk.offer(CommandKind::AddLimb, id, None),
            desk.unless(
                desk.offer(CommandKind::ForgetLimbs, id, None),
                plan.limbs.is_empty(),
                "page.no-limbs",
            ),
            desk.offer(CommandKind::RemovePlan, id, None),
        ],
    }
}

/// Photos.
pub(super) fn photo_records(desk: &PageDesk, photos: &[&Photo]) -> Vec<PagePhoto> {
    photos
        .iter()
        .map(|photo| {
            let paths = (desk.photos)(&photo.file);
            PagePhoto {
                id: photo.id.clone(),
                words: match (&photo.caption, photo.taken) {
                    (Some(caption), _) => caption.clone(),
                    (None, Some(at)) => desk.words.moment(at),
                    (None, None) => desk.say("noun.photo"),
                },
                view_path: paths.view,
                small_path: paths.small,
                finding: photo.finding.clone(),
                offers: vec![
                    desk.offer_on(CommandKind::ChangePhoto, &photo.id, *photo),
                    desk.offer(CommandKind::RemovePhoto, &photo.id, None),
                ],
            }
        })
        .collect()
}

/// The work wanted, and what became of it.
pub(super) fn work_records(desk: &PageDesk, tree: &Tree) -> Vec<PageRecord> {
    tree.work
        .iter()
        .map(|work| PageRecord {
            id: work.id.clone(),
            words: desk.words.label_of(&work.operation),
            detail: work_detail(desk, work),
            go_to: None,
            offers: vec![
                desk.offer_on(CommandKind::ChangeWork, &work.id, work),
                desk.offer(CommandKind::RemoveWork, &work.id, None),
            ],
        })
        .collect()
}

/// How soon, the longest piece, notes, and what became of it.
pub(super) fn work_detail(desk: &PageDesk, work: &Work) -> String {
    let priority = work.priority.map(|priority| desk.words.word_of(&priority));
    let piece = work.piece_length_m.map(|piece_m| {
        let piece = [("piece", Said::Number(piece_m, Quantity::LengthM))];
        desk.words.say("page.longest-piece", &piece)
    });
    let outcome = work
        .outcome
        .as_ref()
        .map(|outcome| desk.words.outcome(outcome));
    let parts = [outcome, priority, piece, work.note.clone()];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The risk ratings entered, with their rating.
pub(super) fn risk_records(
    desk: &PageDesk,
    site: &Site,
    looks: &Looks,
    answer: &Judgement,
) -> Vec<PageRecord> {
    let risks = looks.all(|look| &look.risks);
    risks
        .into_iter()
        .map(|risk| {
            let target = site.targets.iter().find(|target| target.id == risk.target);
            let rated = answer.risks.iter().find(|rated| rated.entry == risk.id);
            let months = desk.words.number_toward(
                risk.time_frame_months,
                Quantity::DurationMonths,
                Rounding::Nearest,
            );
            let by = desk.words.say(
                "summary.risk-assessor-value",
                &[
                    ("assessor", Said::Text(&risk.assessor)),
                    ("level", Said::Term(&format!("risk-level.{}", risk.level))),
                    ("months", Said::Text(&months)),
                ],
            );
            PageRecord {
                id: risk.id.clone(),
                words: target.map_or_else(|| risk.target.to_string(), |at| at.name.clone()),
                detail: match rated {
                    Some(rated) => format!("{} · {by}", desk.words.word_of(&rated.rating)),
                    None => by,
                },
                go_to: None,
                offers: vec![desk.offer(CommandKind::RemoveRisk, &risk.id, None)],
            }
        })
        .collect()
}
