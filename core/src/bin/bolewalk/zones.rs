//! `bolewalk zones`: drop zone and keep-out distance of every tree of a site file.

use std::path::Path;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::intake::read_site_file_at;
use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::judge::zone::{Zones, zones as zones_of};
use bolewalk_core::record::{Id, Inspection, Quantity, Site, Tree, ZoneAnswer};
use bolewalk_core::words::{Said, Words};

use super::answer::{tell, words};
use super::import::shipped_codes;

pub fn zones(file: &Path, tag: Option<&str>, imperial: bool) -> Result<ExitCode, BookError> {
    let file = read_site_file_at(file, &shipped_codes())?;
    let rule_set = file.site.rule_set.clone().unwrap_or(Id::from("us"));
    let rules = RuleSet::shipped(&rule_set)?.with_house_values(&file.house_values)?;
    let words = words(imperial);
    let trees: Vec<&Tree> = file
        .site
        .trees
        .iter()
        .filter(|tree| tag.is_none_or(|wanted| tree.tag == wanted))
        .collect();
    if let (Some(wanted), true) = (tag, trees.is_empty()) {
        return Err(BookError::NotFound {
            kind: "tree".to_owned(),
            id: wanted.to_owned(),
        });
    }
    if trees.is_empty() {
        tell(&words.say("desk.zone-no-trees", &[]))?;
    }
    for tree in trees {
        tell(&words.say("desk.zone-tree", &[("tag", Said::Text(&tree.tag))]))?;
        match newest(&file.site, tree) {
            Some(seen) => zones_told(&zones_of(tree, seen, &rules), &words)?,
            None => tell(&format!("  {}", words.say("desk.zone-unseen", &[])))?,
        }
        tell("")?;
    }
    tell(&words.say("desk.zone-caution", &[]))?;
    Ok(ExitCode::SUCCESS)
}

/// The inspection of the latest visit; among undated ones the last written.
fn newest<'a>(site: &Site, tree: &'a Tree) -> Option<&'a Inspection> {
    let day = |seen: &Inspection| {
        site.visits
            .iter()
            .find(|visit| visit.id == seen.visit)
            .map(|visit| visit.day)
    };
    tree.inspections.iter().max_by_key(|seen| day(seen))
}

fn zones_told(zones: &Zones, words: &Words) -> Result<(), BookError> {
    for line in &zones.lines {
        line_told(line, words)?;
    }
    for gap in &zones.gaps {
        tell(&format!("  ? {}", words.reason(gap)))?;
    }
    Ok(())
}

fn line_told(line: &ZoneAnswer, words: &Words) -> Result<(), BookError> {
    let distance = |key: &str, name: &str, metres: f64| {
        words.say(key, &[(name, Said::Number(metres, Quantity::LengthM))])
    };
    let planned = if line.planned {
        format!(" ({})", words.say("desk.zone-planned", &[]))
    } else {
        String::new()
    };
    tell(&format!("  {}{planned}", words.word_of(&line.way)))?;
    let everyone = distance("desk.zone-keep-out", "everyone", line.keep_out_m);
    if line.keep_out_downhill_m > line.keep_out_m {
        let downhill = distance("desk.zone-downhill", "downhill", line.keep_out_downhill_m);
        tell(&format!("    {everyone}, {downhill}"))?;
    } else {
        tell(&format!("    {everyone}"))?;
    }
    if line.keep_out_crew_m < line.keep_out_m {
        tell(&format!(
            "    {}",
            distance("desk.zone-crew", "crew", line.keep_out_crew_m)
        ))?;
    }
    tell(&format!(
        "    {}",
        distance("desk.zone-drop", "drop", line.drop_radius_m)
    ))?;
    let rule = words.reason(&line.rule);
    tell(&format!(
        "    {}",
        words.say("desk.zone-rule", &[("rule", Said::Text(&rule))])
    ))?;
    tell(&format!(
        "    {}",
        words.say("desk.zone-source", &[("source", Said::Text(&line.source))])
    ))?;
    for gap in &line.gaps {
        tell(&format!("    ? {}", words.reason(gap)))?;
    }
    Ok(())
}
