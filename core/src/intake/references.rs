//! References by id that lead nowhere, ids and tags used twice.

use std::collections::BTreeSet;

use crate::record::{Fault, Id, Inspection, SiteFile, Tree};

/// Faults in tags, ids and references. `codes` are the ids of the starter codebook.
pub(super) fn reference_faults(file: &SiteFile, codes: &BTreeSet<Id>) -> Vec<Fault> {
    let known = Known::of(file, codes);
    let mut faults = twice(file);
    let site = &file.site;
    if let Some(aider) = site.rescue.as_ref().and_then(|r| r.first_aider.as_ref()) {
        known.person(aider, "/site/rescue/first_aider", &mut faults);
    }
    for (index, visit) in site.visits.iter().enumerate() {
        for (place, id) in visit.crew.iter().enumerate() {
            known.person(
                id,
                &format!("/site/visits/{index}/crew/{place}"),
                &mut faults,
            );
        }
    }
    for (index, gear) in file.gear.iter().enumerate() {
        known.person(
            &gear.used_by,
            &format!("/gear/{index}/used_by"),
            &mut faults,
        );
    }
    for (index, permission) in site.permissions.iter().enumerate() {
        let place = format!("/site/permissions/{index}/tree");
        leads(&permission.tree, &known.trees, &place, &mut faults);
    }
    for (index, tree) in site.trees.iter().enumerate() {
        for (seen, inspection) in tree.inspections.iter().enumerate() {
            let place = format!("/site/trees/{index}/inspections/{seen}");
            known.inspection(inspection, &place, &mut faults);
        }
    }
    faults
}

struct Known {
    people: BTreeSet<Id>,
    visits: BTreeSet<Id>,
    targets: BTreeSet<Id>,
    lines: BTreeSet<Id>,
    trees: BTreeSet<Id>,
    codes: BTreeSet<Id>,
}

impl Known {
    fn of(file: &SiteFile, codes: &BTreeSet<Id>) -> Self {
        let site = &file.site;
        let mut codes = codes.clone();
        codes.extend(file.codebook.iter().map(|code| code.id.clone()));
        Known {
            people: file.crew.iter().map(|person| person.id.clone()).collect(),
            visits: site.visits.iter().map(|visit| visit.id.clone()).collect(),
            targets: site
                .targets
                .iter()
                .map(|target| target.id.clone())
                .collect(),
            lines: site.lines.iter().map(|line| line.id.clone()).collect(),
            trees: site.trees.iter().map(|tree| tree.id.clone()).collect(),
            codes,
        }
    }

    fn person(&self, id: &Id, place: &str, faults: &mut Vec<Fault>) {
        leads(id, &self.people, place, faults);
    }

    fn inspection(&self, seen: &Inspection, place: &str, faults: &mut Vec<Fault>) {
        leads(&seen.visit, &self.visits, &format!("{place}/visit"), faults);
        self.person(&seen.by, &format!("{place}/by"), faults);
        if let Some(dug) = &seen.ground_dug {
            let place = format!("{place}/ground_dug/cleared_by");
            self.person(&dug.cleared_by, &place, faults);
        }
        for (index, wire) in seen.wires.iter().enumerate() {
            leads(
                &wire.line,
                &self.lines,
                &format!("{place}/wires/{index}/line"),
                faults,
            );
        }
        for (index, risk) in seen.risks.iter().enumerate() {
            let place = format!("{place}/risks/{index}/target");
            leads(&risk.target, &self.targets, &place, faults);
        }
        for (index, near_miss) in seen.near_misses.iter().enumerate() {
            let place = format!("{place}/near_misses/{index}/by");
            self.person(&near_miss.by, &place, faults);
        }
        self.within(seen, place, faults);
    }

    /// References among the records of one inspection.
    fn within(&self, seen: &Inspection, place: &str, faults: &mut Vec<Fault>) {
        let anchors: BTreeSet<Id> = seen.anchors.iter().map(|a| a.id.clone()).collect();
        let findings: BTreeSet<Id> = seen.findings.iter().map(|f| f.id.clone()).collect();
        for (index, finding) in seen.findings.iter().enumerate() {
            let place = format!("{place}/findings/{index}");
            leads(&finding.code, &self.codes, &format!("{place}/code"), faults);
            leads(
                &finding.anchor,
                &anchors,
                &format!("{place}/anchor"),
                faults,
            );
            self.person(&finding.cleared_by, &format!("{place}/cleared_by"), faults);
        }
        for (index, anchor) in seen.anchors.iter().enumerate() {
            if let Some(test) = &anchor.load_test {
                let place = format!("{place}/anchors/{index}/load_test/by");
                self.person(&test.by, &place, faults);
            }
        }
        for (index, plan) in seen.plans.iter().enumerate() {
            let place = format!("{place}/plans/{index}");
            leads(&plan.anchor, &anchors, &format!("{place}/anchor"), faults);
            self.person(&plan.climber, &format!("{place}/climber"), faults);
            self.person(&plan.second, &format!("{place}/second"), faults);
        }
        for (index, photo) in seen.photos.iter().enumerate() {
            let place = format!("{place}/photos/{index}/finding");
            leads(&photo.finding, &findings, &place, faults);
        }
    }
}

fn leads(id: &Id, to: &BTreeSet<Id>, place: &str, faults: &mut Vec<Fault>) {
    if !id.is_empty() && !to.contains(id) {
        let allowed: Vec<&str> = to.iter().take(12).map(Id::as_str).collect();
        faults.push(Fault::new(
            "fault.leads-nowhere",
            place,
            id,
            allowed.join(", "),
        ));
    }
}

fn twice(file: &SiteFile) -> Vec<Fault> {
    let site = &file.site;
    let mut faults = Vec::new();
    let tags = site.trees.iter().map(|tree| tree.tag.trim());
    used_twice(tags, "/site/trees", "tag", "fault.tag-twice", &mut faults);
    let lists: [(&str, Vec<&Id>); 6] = [
        ("/crew", file.crew.iter().map(|r| &r.id).collect()),
        ("/gear", file.gear.iter().map(|r| &r.id).collect()),
        ("/site/visits", site.visits.iter().map(|r| &r.id).collect()),
        (
            "/site/targets",
            site.targets.iter().map(|r| &r.id).collect(),
        ),
        ("/site/lines", site.lines.iter().map(|r| &r.id).collect()),
        ("/site/trees", site.trees.iter().map(|r| &r.id).collect()),
    ];
    for (place, ids) in lists {
        let ids = ids.into_iter().map(Id::as_str);
        used_twice(ids, place, "id", "fault.id-twice", &mut faults);
    }
    for (index, tree) in site.trees.iter().enumerate() {
        twice_in_tree(tree, &format!("/site/trees/{index}"), &mut faults);
    }
    faults
}

fn twice_in_tree(tree: &Tree, place: &str, faults: &mut Vec<Fault>) {
    for (index, seen) in tree.inspections.iter().enumerate() {
        let place = format!("{place}/inspections/{index}");
        let findings = seen.findings.iter().map(|r| r.id.as_str());
        used_twice(
            findings,
            &format!("{place}/findings"),
            "id",
            "fault.id-twice",
            faults,
        );
        let anchors = seen.anchors.iter().map(|r| r.id.as_str());
        used_twice(
            anchors,
            &format!("{place}/anchors"),
            "id",
            "fault.id-twice",
            faults,
        );
    }
}

fn used_twice<'a>(
    values: impl Iterator<Item = &'a str>,
    place: &str,
    field: &str,
    code: &str,
    faults: &mut Vec<Fault>,
) {
    let mut met = BTreeSet::new();
    for (index, value) in values.enumerate() {
        if !value.is_empty() && !met.insert(value) {
            faults.push(Fault::new(
                code,
                format!("{place}/{index}/{field}"),
                value,
                "",
            ));
        }
    }
}
