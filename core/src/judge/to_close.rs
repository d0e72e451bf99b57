//! What to close, move, guard, empty or ask for while trees are worked on, thing by thing.

use crate::record::{Id, Judgement, WayOfWorking, ZoneAction, ZoneAnswer};

/// Something inside the ground to be kept clear, and for which trees what has to be done about it.
#[derive(Debug, Clone, PartialEq)]
pub struct ToClose {
    /// The target, the line, or the site where its edge is crossed.
    pub record: Id,
    /// What has to be done, a row a tree.
    pub asked: Vec<AskedByTree>,
}

/// What the work on one tree asks for.
#[derive(Debug, Clone, PartialEq)]
pub struct AskedByTree {
    /// The tree.
    pub tree: Id,
    /// What has to be done.
    pub action: ZoneAction,
    /// Whether pieces may land there, or it only lies in the keep-out.
    pub in_drop_zone: bool,
    /// How far from the stem nobody stands, in metres; downhill where that is farther.
    pub keep_out_m: f64,
}

/// The zone of the way of working that is planned for a tree, where something is to be done to it.
#[must_use]
pub fn zone_of_planned_work(answer: &Judgement) -> Option<&ZoneAnswer> {
    answer.zones.iter().find(|zone| zone.planned && works(zone))
}

fn works(zone: &ZoneAnswer) -> bool {
    !matches!(zone.way, WayOfWorking::InspectOnly | WayOfWorking::NoWork)
}

/// What lies inside these zones, each thing once, in the order in which the trees meet it.
pub fn to_close<'a>(zones: impl Iterator<Item = (&'a Id, &'a ZoneAnswer)>) -> Vec<ToClose> {
    let mut things: Vec<ToClose> = Vec::new();
    for (tree, zone) in zones.filter(|(_, zone)| works(zone)) {
        for inside in &zone.inside {
            let asked = AskedByTree {
                tree: tree.clone(),
                action: inside.action,
                in_drop_zone: inside.in_drop_zone,
                keep_out_m: zone.keep_out_m.max(zone.keep_out_downhill_m),
            };
            match things.iter_mut().find(|one| one.record == inside.record) {
                Some(thing) => thing.asked.push(asked),
                None => things.push(ToClose {
                    record: inside.record.clone(),
                    asked: vec![asked],
                }),
            }
        }
    }
    things
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{Reason, ZoneAffected};

    fn zone(way: WayOfWorking, keep_out_m: f64, inside: &[(&str, ZoneAction)]) -> ZoneAnswer {
        ZoneAnswer {
            way,
            planned: true,
            drop_radius_m: 10.0,
            keep_out_m,
            keep_out_crew_m: keep_out_m,
            keep_out_downhill_m: keep_out_m,
            rule: Reason::new("zone.fell"),
            source: String::new(),
            drop_outline: Vec::new(),
            keep_out_outline: Vec::new(),
            inside: inside
                .iter()
                .map(|(record, action)| ZoneAffected {
                    record: Id::from(*record),
                    action: *action,
                    in_drop_zone: false,
                    reason: Reason::new("zone.guard"),
                })
                .collect(),
            gaps: Vec::new(),
        }
    }

    #[test]
    fn each_thing_stands_once_with_all_trees_that_ask_for_it() {
        let (one, two, three) = (Id::from("one"), Id::from("two"), Id::from("three"));
        let fell = zone(
            WayOfWorking::FellWhole,
            40.0,
            &[
                ("drive", ZoneAction::CloseOff),
                ("car", ZoneAction::MoveAway),
            ],
        );
        let prune = zone(WayOfWorking::Prune, 8.0, &[("drive", ZoneAction::CloseOff)]);
        let looked_at = zone(
            WayOfWorking::InspectOnly,
            8.0,
            &[("drive", ZoneAction::CloseOff)],
        );
        let zones = [(&one, &fell), (&two, &prune), (&three, &looked_at)];
        let things = to_close(zones.into_iter());
        assert_eq!(things.len(), 2);
        assert_eq!(things[0].record, Id::from("drive"));
        let trees: Vec<&Id> = things[0].asked.iter().map(|asked| &asked.tree).collect();
        assert_eq!(trees, [&one, &two], "looking at a tree closes nothing");
        assert_eq!(things[1].asked[0].keep_out_m, 40.0);
    }
}
