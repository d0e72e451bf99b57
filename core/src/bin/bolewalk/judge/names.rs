//! What things are called: trees, species, targets, lines, anchors.

use bolewalk_core::judge::wood::find_species;
use bolewalk_core::record::{Day, Id, Inspection, SiteFile, Tree};
use bolewalk_core::words::Words;

/// The common name of a tree's species, else as it was written down.
pub fn species(tree: &Tree, words: &Words) -> String {
    match &tree.species {
        None => words.say("summary.species-unknown", &[]),
        Some(written) => find_species(written)
            .map_or_else(|| written.clone(), |species| words.species_name(species)),
    }
}

/// A tree by its id.
pub fn tree<'a>(file: &'a SiteFile, id: &Id) -> Option<&'a Tree> {
    file.site.trees.iter().find(|tree| tree.id == *id)
}

/// The looks at a tree up to a day, the newest first.
pub fn looks<'a>(file: &SiteFile, tree: &'a Tree, as_of: Day) -> Vec<&'a Inspection> {
    let day_of = |look: &Inspection| {
        let mut visits = file.site.visits.iter();
        visits
            .find(|visit| visit.id == look.visit)
            .map(|visit| visit.day)
    };
    let mut looks: Vec<_> = tree
        .inspections
        .iter()
        .map(|look| (day_of(look), look.at.map_or(i64::MIN, |at| at.utc_ms), look))
        .filter(|(day, _, _)| day.is_none_or(|day| day <= as_of))
        .collect();
    looks.sort_by_key(|(day, at, _)| std::cmp::Reverse((*day, *at)));
    looks.into_iter().map(|(_, _, look)| look).collect()
}

/// The newest answer to a question that a later look may leave open.
pub fn newest<'a, T>(
    looks: &[&'a Inspection],
    ask: impl Fn(&'a Inspection) -> Option<T>,
) -> Option<T> {
    looks.iter().copied().find_map(ask)
}

/// What a record of a tree is called: an anchor by its name, a section by its height, a line or a
/// person by name; nothing for what has no name of its own.
pub fn record(file: &SiteFile, look: Option<&Inspection>, id: &Id, words: &Words) -> String {
    use bolewalk_core::record::Quantity::LengthM;
    if id.is_empty() {
        return String::new();
    }
    let site = &file.site;
    let line = site.lines.iter().find(|line| line.id == *id);
    if let Some(line) = line {
        return line.name.clone();
    }
    let Some(look) = look else {
        return String::new();
    };
    if let Some(anchor) = look.anchors.iter().find(|anchor| anchor.id == *id) {
        return anchor.name.clone().unwrap_or_default();
    }
    if let Some(section) = look.sections.iter().find(|section| section.id == *id) {
        return words.number(section.height_m, LengthM);
    }
    if let Some(finding) = look.findings.iter().find(|finding| finding.id == *id) {
        let part = words.word_of(&finding.part);
        return match finding.height_m {
            Some(height) => format!("{part}, {}", words.number(height, LengthM)),
            None => part,
        };
    }
    String::new()
}
