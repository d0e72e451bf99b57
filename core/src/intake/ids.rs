//! Ids for what a site file left without, and ids that stay unique in a field book of many sites.

use uuid::Uuid;

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

/// Exchanges every short key for a UUID that follows from the site and the key, so that two sites
/// which both call a tree `1` can lie in one field book, and importing the same file again meets
/// the same records. People, gear and house values are the book's: their ids do not depend on the
/// site. Codes of the codebook keep their ids.
pub fn make_unique(file: &mut SiteFile) {
    fill_ids(file);
    let book = Uuid::new_v5(&Uuid::NAMESPACE_OID, b"bolewalk field book");
    let site = match Uuid::parse_str(file.site.id.as_str()) {
        Ok(id) => id,
        Err(_) => {
            let name = format!("{}/{}", file.site.id, file.site.name);
            Uuid::new_v5(&book, name.as_bytes())
        }
    };
    let of_book = |id: &mut Id, noun: &str| exchange(id, &book, noun);
    let of_site = |id: &mut Id, noun: &str| exchange(id, &site, noun);
    file.site.id = Id(site.to_string());
    for person in &mut file.crew {
        of_book(&mut person.id, "person");
        for sign_off in &mut person.sign_offs {
            of_book(&mut sign_off.id, "sign_off");
        }
        for climb in &mut person.climbs {
            of_book(&mut climb.id, "logged_climb");
        }
    }
    for gear in &mut file.gear {
        of_book(&mut gear.id, "gear");
        of_book(&mut gear.used_by, "person");
    }
    for value in &mut file.house_values {
        of_book(&mut value.id, "house_value");
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

fn exchange(id: &mut Id, within: &Uuid, noun: &str) {
    if !id.is_empty() && Uuid::parse_str(id.as_str()).is_err() {
        let name = format!("{noun}/{id}");
        *id = Id(Uuid::new_v5(within, name.as_bytes()).to_string());
    }
}
