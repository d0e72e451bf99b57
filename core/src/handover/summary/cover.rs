//! The cover: facts, what comes first, contents, and what a client must know of such a paper.

use std::collections::BTreeSet;

use crate::handover::paper::{Block, Callout, CalloutKind, Rich, Voice};
use crate::handover::paper_input::PaperDesk;
use crate::record::Priority;
use crate::words::{DayStyle, Said};

/// More urgent trees than these are left to the schedule.
const MOST_URGENT: usize = 8;

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
    let site = &desk.input.file.site;
    vec![
        Block::small(desk.say("summary.title")),
        Block::Paragraph {
            words: site.name.as_str().into(),
            voice: Voice::Title,
        },
        Block::Paragraph {
            words: lead(desk).into(),
            voice: Voice::Lead,
        },
        Block::Space(6.0),
        Block::Facts {
            facts: facts(desk),
            in_two: true,
        },
        Block::Together(first_things(desk)),
        Block::Together(vec![
            Block::heading(2, desk.say("summary.contents")),
            Block::Contents,
        ]),
        Block::Space(8.0),
        not_a_guarantee(desk),
    ]
}

fn lead(desk: &PaperDesk) -> String {
    let trees = desk.trees.len();
    let looked = desk.trees.iter().filter(|t| !t.looks.is_empty()).count();
    let all = if looked == trees { "yes" } else { "no" };
    desk.words.say(
        "summary.lead",
        &[
            ("trees", Said::Count(trees as i64)),
            ("looked", Said::Count(looked as i64)),
            ("all", Said::Text(all)),
        ],
    )
}

fn facts(desk: &PaperDesk) -> Vec<(String, Rich)> {
    let site = &desk.input.file.site;
    let fact = |key: &str, value: String| (desk.say(key), Rich::from(value));
    let count = |count: usize| {
        let quantity = crate::record::Quantity::Count;
        desk.words.number(count as f64, quantity)
    };
    let mut facts = Vec::new();
    if let Some(client) = &site.client {
        facts.push(fact("summary.client", client.clone()));
    }
    if let Some(address) = &site.address {
        facts.push(fact("summary.address", address.clone()));
    }
    let (days, people) = days_and_people(desk);
    facts.push(fact("summary.looked-at-on", days));
    facts.push(fact("summary.looked-at-by", people));
    facts.push(fact("summary.tree-count", count(desk.trees.len())));
    facts.push(fact("summary.target-count", count(site.targets.len())));
    facts.push(fact("summary.line-count", count(site.lines.len())));
    let made = desk
        .input
        .made
        .local()
        .map_or(String::new(), |local| desk.words.day(local.day));
    facts.push(fact("summary.made-on", made));
    facts
}

/// The days of the looks that count, and who looked.
fn days_and_people(desk: &PaperDesk) -> (String, String) {
    let looks = || desk.trees.iter().flat_map(|tree| &tree.looks);
    let days: BTreeSet<_> = looks()
        .filter_map(|look| desk.visit(&look.visit))
        .map(|visit| visit.day)
        .collect();
    let days: Vec<String> = days
        .into_iter()
        .map(|day| desk.words.day_as(day, DayStyle::Long))
        .collect();
    let people: BTreeSet<String> = looks()
        .filter(|look| !look.by.is_empty())
        .map(|look| desk.person(&look.by))
        .collect();
    let people: Vec<String> = people.into_iter().collect();
    let or_nothing = |words: Vec<String>| {
        if words.is_empty() {
            desk.say("paper.nothing-noted")
        } else {
            desk.listed(&words)
        }
    };
    (or_nothing(days), or_nothing(people))
}

fn first_things(desk: &PaperDesk) -> Vec<Block> {
    let mut urgent: Vec<_> = desk
        .trees
        .iter()
        .filter_map(|tree| {
            let priority = desk.most_urgent(tree)?;
            (priority <= Priority::Soon).then_some((priority, tree))
        })
        .collect();
    urgent.sort_by_key(|(priority, _)| *priority);
    let mut blocks = vec![Block::heading(2, desk.say("summary.first"))];
    if urgent.is_empty() {
        blocks.push(Block::text(desk.say("summary.first-nothing")));
        return blocks;
    }
    let mut points: Vec<Rich> = urgent
        .iter()
        .take(MOST_URGENT)
        .map(|(_, tree)| {
            let work = desk.listed(&desk.work_short(tree));
            Rich::new()
                .bold(desk.tree_name(tree))
                .plain(": ")
                .plain(work)
        })
        .collect();
    if urgent.len() > MOST_URGENT {
        let more = (urgent.len() - MOST_URGENT) as i64;
        points.push(
            desk.words
                .say("paper.and-more", &[("count", Said::Count(more))])
                .into(),
        );
    }
    blocks.push(Block::points(points));
    blocks
}

fn not_a_guarantee(desk: &PaperDesk) -> Block {
    let until = ("time-frame", Said::Term("summary.until-next-looks"));
    let holds = desk.words.say("caution.client-holds", &[until]);
    let seen = desk.say("summary.only-what-was-seen");
    let guarantee = desk.say("caution.client-guarantee");
    Block::Callout(Callout {
        kind: CalloutKind::Caution,
        word: desk.say("paper.caution"),
        lines: vec![
            format!("{guarantee} {seen}").into(),
            holds.into(),
            desk.say("caution.client-risk").into(),
            desk.say("summary.last-word").into(),
        ],
    })
}
