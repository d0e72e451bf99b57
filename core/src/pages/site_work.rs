//! What the planned work asks for on a site: what to close, move, guard, empty, and whom to ask.

use super::desk::PageDesk;
use super::line::PageLine;
use crate::judge::to_close::{AskedByTree, ToClose, to_close, zone_of_planned_work};
use crate::record::{Id, Site, ZoneAction};
use crate::words::Said;

/// What has to be done while trees are worked on, in the order in which a crew goes about it.
const ORDER: [ZoneAction; 7] = [
    ZoneAction::CloseOff,
    ZoneAction::MoveAway,
    ZoneAction::Guard,
    ZoneAction::EmptyRooms,
    ZoneAction::Protect,
    ZoneAction::AskNeighbour,
    ZoneAction::CallLineOwner,
];

/// One thing to do, and what it is to be done to.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ActionOfSite {
    /// What has to be done.
    pub action: ZoneAction,
    /// Its name.
    pub words: String,
    /// What it is to be done to: for which trees, how far from them, and where pieces may land.
    pub things: Vec<PageLine>,
}

/// What the planned ways of working ask for, what is to be closed first.
pub(super) fn actions(desk: &PageDesk, site: &Site) -> Vec<ActionOfSite> {
    let trees = desk.trees();
    // Where the work is done nothing is closed any more.
    let zones = trees
        .iter()
        .filter(|(tree, _)| !tree.work_is_done())
        .filter_map(|(tree, answer)| Some((&tree.id, zone_of_planned_work(answer)?)));
    let things = to_close(zones);
    ORDER
        .into_iter()
        .filter_map(|action| {
            let lines: Vec<PageLine> = things
                .iter()
                .filter_map(|thing| line(desk, site, thing, action))
                .collect();
            (!lines.is_empty()).then(|| ActionOfSite {
                action,
                words: desk.words.label_of(&action),
                things: lines,
            })
        })
        .collect()
}

/// A thing to which this is to be done; nothing where no tree asks for it.
fn line(desk: &PageDesk, site: &Site, thing: &ToClose, action: ZoneAction) -> Option<PageLine> {
    let of_action = thing.asked.iter().filter(|asked| asked.action == action);
    let asked: Vec<&AskedByTree> = of_action.collect();
    let keep_out_m = asked.iter().map(|asked| asked.keep_out_m);
    let farthest_m = keep_out_m.reduce(f64::max)?;
    let tags = tags(site, &asked);
    let words = desk.words.say(
        "page.to-close-while",
        &[
            ("count", Said::Count(asked.len() as i64)),
            ("trees", Said::Text(&tags)),
            ("distance", Said::Text(&desk.words.distance_up(farthest_m))),
        ],
    );
    let landing: Vec<&AskedByTree> = asked.into_iter().filter(|one| one.in_drop_zone).collect();
    let id = format!("to_close.{}", thing.record);
    let mut line = PageLine::known(&id, name(desk, site, &thing.record), words);
    if !landing.is_empty() {
        let trees = self::tags(site, &landing);
        let trees = [("trees", Said::Text(trees.as_str()))];
        line.why = desk.words.say("summary.close-lands", &trees);
    }
    Some(line)
}

fn tags(site: &Site, asked: &[&AskedByTree]) -> String {
    let trees = asked
        .iter()
        .filter_map(|asked| site.trees.iter().find(|tree| tree.id == asked.tree));
    let tags: Vec<&str> = trees.map(|tree| tree.tag.as_str()).collect();
    tags.join(", ")
}

/// The name of a target or a line; the edge of the property for the site itself.
fn name(desk: &PageDesk, site: &Site, record: &Id) -> String {
    let target = site.targets.iter().find(|target| target.id == *record);
    let line = || site.lines.iter().find(|line| line.id == *record);
    target
        .map(|target| target.name.clone())
        .or_else(|| line().map(|line| line.name.clone()))
        .unwrap_or_else(|| desk.say("summary.close-edge"))
}
