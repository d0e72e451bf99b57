//! Ids for what a site file left without, and ids that stay unique in a field book of many sites.

use std::collections::BTreeMap;

use uuid::Uuid;

use super::namespace::{self, HeldSite};
use crate::record::{Id, Inspection, SiteFile};

/// Gives every record without an id one that follows from its place, so that the same file always
/// gets the same ids.
pub fn fill_ids(file: &mut SiteFile) {
    let site = &mut file.site;
    fill(&mut site.id, || "site".to_owned());
    for (index, value) in file.house_values.iter_mut().enumerate() {
        fill(&mut value.id, || format!("house-value/{index}"));
    }
    for person in &mut file.crew {
        let owner = person.id.clone();
        for (index, sign_off) in person.sign_offs.iter_mut().enumerate() {
            fill(&mut sign_off.id, || format!("{owner}/sign-off/{index}"));
        }
        for (index, climb) in person.climbs.iter_mut().enumerate() {
            fill(&mut climb.id, || format!("{owner}/climb/{index}"));
        }
    }
    for (index, target) in site.targets.iter_mut().enumerate() {
        fill(&mut target.id, || format!("target/{index}"));
    }
    for (index, line) in site.lines.iter_mut().enumerate() {
        fill(&mut line.id, || format!("line/{index}"));
    }
    for (index, permission) in site.permissions.iter_mut().enumerate() {
        fill(&mut permission.id, || format!("permission/{index}"));
    }
    for visit in &mut site.visits {
        fill(&mut visit.id, || visit.day.to_string());
        let owner = visit.id.clone();
        for hour in &mut visit.weather {
            fill(&mut hour.id, || format!("{owner}/hour/{}", hour.hour));
        }
    }
    for tree in &mut site.trees {
        fill(&mut tree.id, || format!("tree/{}", tree.tag));
        let owner = tree.id.clone();
        for (index, work) in tree.work.iter_mut().enumerate() {
            fill(&mut work.id, || format!("{owner}/work/{index}"));
        }
        for (index, seen) in tree.inspections.iter_mut().enumerate() {
            fill(&mut seen.id, || format!("{owner}/inspection/{index}"));
            fill_inspection(seen);
        }
    }
}

fn fill_inspection(seen: &mut Inspection) {
    let owner = seen.id.clone();
    macro_rules! fill_list {
        ($list:ident) => {
            for (index, record) in seen.$list.iter_mut().enumerate() {
                fill(&mut record.id, || {
                    format!("{owner}/{}/{index}", stringify!($list))
                });
            }
        };
    }
    fill_list!(wires);
    fill_list!(walk_round);
    fill_list!(findings);
    fill_list!(sections);
    fill_list!(anchors);
    fill_list!(plans);
    fill_list!(photos);
    fill_list!(risks);
    fill_list!(near_misses);
    for section in &mut seen.sections {
        let owner = section.id.clone();
        for (index, reading) in section.readings.iter_mut().enumerate() {
            fill(&mut reading.id, || format!("{owner}/reading/{index}"));
        }
    }
}

fn fill(id: &mut Id, make: impl FnOnce() -> String) {
    if id.is_empty() {
        *id = Id(make());
    }
}

/// Exchanges every short key for a UUID that follows from the property and the key, so that two
/// properties which both call a tree `1` can lie in one field book and in the packs of two phones,
/// and importing the same file again, on this phone or on another, meets the same records. `held`
/// are the properties of the field book; the namespace says which of them the file is about.
///
/// People and gear are the book's: their ids follow from key and name, so that the `p1` of two
/// crews are two people, each with their own sign-offs, and one person in two files is one. House
/// values follow from the row they change. Codes of the codebook keep their ids.
pub fn make_unique(file: &mut SiteFile, held: &[HeldSite]) {
    fill_ids(file);
    let book = namespace::of_the_book();
    let site = namespace::of_site(&file.site, held);
    file.site.id = Id(site.to_string());
    let people = exchange_crew(file, &book);
    let of_book = |id: &mut Id, noun: &str| match people.get(id) {
        Some(person) => *id = person.clone(),
        None => exchange(id, &book, noun),
    };
    let of_site = |id: &mut Id, noun: &str| exchange(id, &site, noun);
    for gear in &mut file.gear {
        exchange_named(&mut gear.id, &book, "gear", &gear.name);
        of_book(&mut gear.used_by, "person");
    }
    for value in &mut file.house_values {
        let row = format!("house_value/{}", value.rule_set);
        exchange_named(&mut value.id, &book, &row, &value.row);
    }
    if let Some(aider) = file
        .site
        .rescue
        .as_mut()
        .and_then(|r| r.first_aider.as_mut())
    {
        of_book(aider, "person");
    }
    for target in &mut file.site.targets {
        of_site(&mut target.id, "target");
    }
    for line in &mut file.site.lines {
        of_site(&mut line.id, "line");
    }
    for permission in &mut file.site.permissions {
        of_site(&mut permission.id, "permission");
        of_site(&mut permission.tree, "tree");
    }
    for visit in &mut file.site.visits {
        of_site(&mut visit.id, "visit");
        visit.crew.iter_mut().for_each(|id| of_book(id, "person"));
        for hour in &mut visit.weather {
            of_site(&mut hour.id, "hour");
        }
    }
    for tree in &mut file.site.trees {
        of_site(&mut tree.id, "tree");
        for work in &mut tree.work {
            of_site(&mut work.id, "work");
        }
        for seen in &mut tree.inspections {
            exchange_inspection(seen, &of_book, &of_site);
        }
    }
}

fn exchange_inspection(
    seen: &mut Inspection,
    of_book: &impl Fn(&mut Id, &str),
    of_site: &impl Fn(&mut Id, &str),
) {
    let owner = seen.id.clone();
    of_site(&mut seen.id, "inspection");
    of_site(&mut seen.visit, "visit");
    of_book(&mut seen.by, "person");
    if let Some(dug) = &mut seen.ground_dug {
        of_book(&mut dug.cleared_by, "person");
    }
    // Keys of findings and anchors are unique within one inspection only.
    let own = |id: &mut Id, noun: &str| of_site(id, &format!("{noun} of {owner}"));
    for wire in &mut seen.wires {
        own(&mut wire.id, "wire");
        of_site(&mut wire.line, "line");
    }
    for look in &mut seen.walk_round {
        own(&mut look.id, "look");
    }
    for finding in &mut seen.findings {
        own(&mut finding.id, "finding");
        own(&mut finding.anchor, "anchor");
        of_book(&mut finding.cleared_by, "person");
    }
    for section in &mut seen.sections {
        own(&mut section.id, "section");
        for reading in &mut section.readings {
            own(&mut reading.id, "reading");
        }
    }
    for anchor in &mut seen.anchors {
        own(&mut anchor.id, "anchor");
        if let Some(test) = &mut anchor.load_test {
            of_book(&mut test.by, "person");
        }
    }
    for plan in &mut seen.plans {
        own(&mut plan.id, "plan");
        own(&mut plan.anchor, "anchor");
        of_book(&mut plan.climber, "person");
        of_book(&mut plan.second, "person");
    }
    for photo in &mut seen.photos {
        own(&mut photo.id, "photo");
        own(&mut photo.finding, "finding");
    }
    for near_miss in &mut seen.near_misses {
        own(&mut near_miss.id, "near_miss");
        of_book(&mut near_miss.by, "person");
    }
    for risk in &mut seen.risks {
        own(&mut risk.id, "risk");
        of_site(&mut risk.target, "target");
    }
}

/// Exchanges the keys of the crew and of what lies in a person; gives what became of each person's.
fn exchange_crew(file: &mut SiteFile, book: &Uuid) -> BTreeMap<Id, Id> {
    let mut people = BTreeMap::new();
    for person in &mut file.crew {
        let key = person.id.clone();
        exchange_named(&mut person.id, book, "person", &person.name);
        let own = Uuid::parse_str(person.id.as_str()).unwrap_or(*book);
        for sign_off in &mut person.sign_offs {
            exchange(&mut sign_off.id, &own, "sign_off");
        }
        for climb in &mut person.climbs {
            exchange(&mut climb.id, &own, "logged_climb");
        }
        people.insert(key, person.id.clone());
    }
    people
}

/// Exchanges a key that is unique only together with a name.
fn exchange_named(id: &mut Id, within: &Uuid, noun: &str, name: &str) {
    exchange(id, within, &format!("{noun}/{}", name.trim()));
}

fn exchange(id: &mut Id, within: &Uuid, noun: &str) {
    if !id.is_empty() && Uuid::parse_str(id.as_str()).is_err() {
        let name = format!("{noun}/{id}");
        *id = Id(Uuid::new_v5(within, name.as_bytes()).to_string());
    }
}
