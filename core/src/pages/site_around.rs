//! What lies around the trees of a site: targets, overhead lines, permissions.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::line::PageRecord;
use crate::record::{Quantity, Site};
use crate::words::Said;

/// The targets.
pub(super) fn target_records(desk: &PageDesk, site: &Site) -> Vec<PageRecord> {
    site.targets
        .iter()
        .map(|target| PageRecord {
            id: target.id.clone(),
            words: target.name.clone(),
            detail: [
                desk.words.word_of(&target.kind),
                match &target.occupancy {
                    Some(occupancy) => desk.words.word_of(occupancy),
                    None => desk.say("page.occupancy-missing"),
                },
            ]
            .join(" · "),
            go_to: None,
            offers: vec![
                desk.offer_on(CommandKind::ChangeTarget, &target.id, target),
                desk.offer(CommandKind::RemoveTarget, &target.id, None),
            ],
        })
        .collect()
}

/// The overhead lines.
pub(super) fn line_records(desk: &PageDesk, site: &Site) -> Vec<PageRecord> {
    site.lines
        .iter()
        .map(|line| PageRecord {
            id: line.id.clone(),
            words: line.name.clone(),
            detail: [
                desk.words.word_of(&line.kind),
                match line.voltage_kv {
                    Some(kv) => desk.words.number(kv, Quantity::VoltageKv),
                    None => desk.say("page.voltage-missing"),
                },
            ]
            .join(" · "),
            go_to: None,
            offers: vec![
                desk.offer_on(CommandKind::ChangeOverheadLine, &line.id, line),
                desk.offer(CommandKind::RemoveOverheadLine, &line.id, None),
            ],
        })
        .collect()
}

/// The permissions.
pub(super) fn permission_records(desk: &PageDesk, site: &Site) -> Vec<PageRecord> {
    site.permissions
        .iter()
        .map(|permission| {
            let answer = match (&permission.answer, permission.on) {
                (None, _) => desk.say("summary.permission-not-asked"),
                (Some(answer), None) => desk.words.word_of(answer),
                (Some(answer), Some(day)) => desk.words.say(
                    "summary.permission-on",
                    &[
                        ("answer", Said::Text(&desk.words.word_of(answer))),
                        ("day", Said::Day(day)),
                    ],
                ),
            };
            let tree = site.trees.iter().find(|tree| tree.id == permission.tree);
            PageRecord {
                id: permission.id.clone(),
                words: match tree {
                    Some(tree) => {
                        let kind = desk.words.label_of(&permission.kind);
                        format!("{kind} · {}", tree.tag)
                    }
                    None => desk.words.label_of(&permission.kind),
                },
                detail: match &permission.note {
                    Some(note) => format!("{answer} · {note}"),
                    None => answer,
                },
                go_to: None,
                offers: vec![
                    desk.offer_on(CommandKind::ChangePermission, &permission.id, permission),
                    desk.offer(CommandKind::RemovePermission, &permission.id, None),
                ],
            }
        })
        .collect()
}
