//! The lines of a tree's page: measures with their errors, and why what is missing matters.

use super::apart::apart_line;
use super::desk::PageDesk;
use super::line::PageLine;
use super::looks::Looks;
use super::measured::{girth_words, height_words, lean_words, toward};
use crate::record::{Judgement, LifeState, MalletSound, Quantity, Tree};
use crate::words::Said;

/// What is known of a tree, and what is missing.
pub(super) fn tree_lines(
    desk: &PageDesk,
    tree: &Tree,
    looks: &Looks,
    answer: &Judgement,
) -> Vec<PageLine> {
    let words = &desk.words;
    let species = tree.species.as_ref().map(|name| desk.species(Some(name)));
    let way = tree.way.map(|way| words.word_of(&way));
    let access = tree.other_access.as_ref().map(|ways| {
        let ways: Vec<String> = ways.iter().map(|way| words.word_of(way)).collect();
        ways.join(", ")
    });
    let height = looks.newest(|look| look.height);
    let height = height.map(|height| height_words(words, &height));
    let girth = looks.newest(|look| look.girth);
    let girth = girth.map(|girth| girth_words(words, &girth));
    let lean = looks.newest(|look| look.lean);
    let lean = lean.map(|lean| lean_words(words, &lean));
    let mut lines = vec![
        desk.line("tree.species", "tree.species.why", species),
        desk.line("tree.position", "tree.position.why", position(desk, tree)),
        desk.line("tree.way", "tree.way.why", way),
        desk.line("tree.other_access", "tree.other_access.why", access),
        desk.line("tree.life", "tree.life.why", life(desk, looks)),
        desk.line("tree.height", "height.height_m.why", height),
        desk.line("tree.girth", "girth.girth_cm.why", girth),
        desk.line("tree.lean", "lean.lean_deg.why", lean),
    ];
    lines.extend(around(desk, looks));
    if let Some(zone) = answer.zones.iter().find(|zone| zone.planned) {
        let within = match tree.work_is_done() {
            true => desk.say("page.work-done-nothing-closed"),
            false => words.distance_up(zone.keep_out_m.max(zone.keep_out_downhill_m)),
        };
        let label = desk.say("page.keep-out");
        lines.push(PageLine::known("tree.keep_out", label, within));
    }
    lines.extend(apart_line(desk, tree));
    lines
}

/// The crown, the ground and the base.
fn around(desk: &PageDesk, looks: &Looks) -> Vec<PageLine> {
    let words = &desk.words;
    let crown = looks.newest(|look| look.crown);
    let radius = crown
        .map(|crown| words.measure_with_se(crown.radius_m, crown.radius_se_m, Quantity::LengthM));
    let base = crown
        .and_then(|crown| crown.base_m)
        .map(|base_m| words.number(base_m, Quantity::LengthM));
    let slope = looks.newest(|look| look.slope).map(|slope| {
        let share = words.number(slope.slope_pct, Quantity::Percent);
        toward(words, share, slope.downhill_deg)
    });
    let dug = looks.newest(|look| look.ground_dug.as_ref()).map(|dug| {
        let key = if dug.dug {
            "page.dug-yes"
        } else {
            "page.dug-no"
        };
        desk.say(key)
    });
    let yes_no = |yes: bool| desk.say(if yes { "page.yes" } else { "page.no" });
    let wires = looks.newest(|look| look.wires_near).map(yes_no);
    let sound = looks.newest(|look| look.base_sound).map(yes_no);
    let mut lines = vec![
        desk.line("tree.crown_radius", "crown.radius_m.why", radius),
        desk.line("tree.crown_base", "crown.base_m.why", base),
        desk.line("tree.slope", "slope.slope_pct.why", slope),
        desk.line("tree.wires_near", "tree.wires_near.why", wires),
        desk.line("tree.ground_dug", "tree.ground_dug.why", dug),
    ];
    // The mallet answers what the first look only asks.
    let hammered = mallet(desk, looks);
    if hammered.is_none() {
        lines.push(desk.line("tree.base_sound", "tree.base_sound.why", sound));
    }
    lines.push(PageLine {
        label: desk.say("page.base-mallet"),
        ..desk.line("tree.base_north", "tree.base_north.why", hammered)
    });
    lines
}

fn position(desk: &PageDesk, tree: &Tree) -> Option<String> {
    let position = tree.position?;
    let at = format!("{:.5}, {:.5}", position.lat_deg, position.lon_deg);
    Some(match position.accuracy_m {
        Some(accuracy_m) => desk.words.say(
            "measure.with-se",
            &[
                ("value", Said::Text(&at)),
                ("se", Said::Number(accuracy_m, Quantity::LengthM)),
            ],
        ),
        None => at,
    })
}

fn life(desk: &PageDesk, looks: &Looks) -> Option<String> {
    let life = looks.newest(|look| look.life)?;
    let word = desk.words.word_of(&life);
    let dieback = looks.newest(|look| look.dieback_pct);
    let since = looks.newest(|look| look.dead_since);
    Some(match (life, dieback, since) {
        (LifeState::Dead, _, Some(day)) => desk
            .words
            .say("page.dead-since", &[("day", Said::Day(day))]),
        (LifeState::Alive | LifeState::Dying, Some(share), _) => {
            let died = desk.words.say(
                "summary.dieback",
                &[("share", Said::Number(share, Quantity::Percent))],
            );
            format!("{word} · {died}")
        }
        _ => word,
    })
}

/// What the mallet said on the four sides of the base.
fn mallet(desk: &PageDesk, looks: &Looks) -> Option<String> {
    let base = looks.newest(|look| look.base_mallet.as_ref())?;
    let sides = [
        (0.0, base.north),
        (90.0, base.east),
        (180.0, base.south),
        (270.0, base.west),
    ];
    let said: Vec<String> = sides
        .into_iter()
        .map(|(bearing, sound)| {
            let side = desk.words.side_short(bearing);
            let sound = sound.unwrap_or(MalletSound::NotSounded);
            format!("{side} {}", desk.words.word_of(&sound))
        })
        .collect();
    Some(said.join(", "))
}
