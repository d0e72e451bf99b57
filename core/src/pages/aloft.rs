//! The page for the climb and for afterwards, used with one hand: what was found aloft, where the
//! line landed, near misses; then hangers, gear, work left undone, the next look.

use super::command_kind::CommandKind as C;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{PageLine, PageRecord};
use super::looks::Looks;
use super::offer::{InputKind, Offer};
use super::page::PageAddress;
use super::site::{first_reason, verdict_words};
use super::tree_records::{finding_detail, plan_records, work_detail};
use super::walk::chosen;
use crate::judge::codebook::Codebook;
use crate::record::{DefectKind, Finding, Gear, Id, Judgement, NearMiss, Site, Tree, Verdict};
use crate::words::Said;

/// A climb, and what it leaves behind.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct AloftPage {
    /// The tree.
    pub id: Id,
    /// Tag and species.
    pub title: String,
    /// The page of the tree.
    pub tree: PageAddress,
    /// What a person has to be told first.
    pub notices: Vec<String>,
    /// The verdict of the day.
    pub verdict: Verdict,
    /// The verdict in words.
    pub verdict_words: String,
    /// The first reason for the verdict.
    pub reason: String,
    /// What bars climbing now.
    pub stops: Vec<String>,
    /// The climb plans: changed, or the line landed elsewhere.
    pub plans: Vec<PageRecord>,
    /// What was found aloft.
    pub found: Vec<PageRecord>,
    /// Near misses, for the crew only.
    pub near_misses: Vec<PageRecord>,
    /// Hangers that are still up, each to be cleared.
    pub hangers: Vec<PageRecord>,
    /// The climber's gear, each piece to be put out of use after a shock load; what is out of use
    /// last.
    pub gear: Vec<PageRecord>,
    /// What opens the rest of the gear: how many pieces; empty where there is none.
    pub other_gear_words: String,
    /// The rest of the gear, to be folded away until it is asked for.
    pub other_gear: Vec<PageRecord>,
    /// Takes the last change of gear back: it belongs to the book, not to the site.
    pub undo_gear: Offer,
    /// The work, each done or left undone.
    pub work: Vec<PageRecord>,
    /// When to look again.
    pub next_look: PageLine,
    /// What can be done: found aloft, a stop, a near miss, the next look, undo.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// The page for the climb of a tree; `holder` is whoever holds the phone, empty where nobody is
/// named.
pub fn aloft_page(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    answer: &Judgement,
    holder: &Id,
) -> AloftPage {
    let looks = Looks::of(tree, site, desk.today, &desk.rules);
    let species = desk.species(tree.species.as_deref());
    let name = [
        ("tag", Said::Text(&tree.tag)),
        ("species", Said::Text(&species)),
    ];
    let next_look = looks.newest(|look| look.next_look);
    let climber = climber(&looks, holder);
    let (gear, other_gear) = gear(desk, &climber);
    AloftPage {
        id: tree.id.clone(),
        title: desk.words.say("summary.tree-name", &name),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        notices: desk.notices.clone(),
        verdict: answer.verdict,
        verdict_words: verdict_words(desk, answer),
        reason: first_reason(answer).map_or_else(String::new, |first| desk.words.reason(first)),
        stops: desk.words.reasons(&answer.stops),
        plans: plans(desk, &looks),
        found: found(desk, &looks),
        near_misses: near_misses(desk, &looks),
        hangers: hangers(desk, &looks, holder),
        gear,
        other_gear_words: other_gear_words(desk, other_gear.len()),
        other_gear,
        undo_gear: undo_gear(desk),
        work: work(desk, tree),
        next_look: desk.line(
            "inspection.next_look",
            "inspection.next_look.why",
            next_look.map(|day| desk.words.day(day)),
        ),
        offers: offers(desk, site, tree, &looks),
        headings: Vec::new(),
    }
}

/// The plans, each with where the line landed instead.
fn plans(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let mut records = plan_records(desk, looks);
    for record in &mut records {
        let mut land = desk.offer(C::LandElsewhere, &record.id, None);
        // The anchors of the look that the plan belongs to.
        let own = looks.looks.iter().find(|look| {
            let mut plans = look.plans.iter();
            plans.any(|plan| plan.id == record.id)
        });
        for input in &mut land.inputs {
            if let (InputKind::Choice { choices }, Some(look)) = (&mut input.kind, own) {
                *choices = desk.anchor_choices(look);
            }
        }
        record.offers.retain(|offer| offer.command == C::ChangePlan);
        record.offers.insert(0, land);
    }
    records
}

fn found(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let findings = looks.all(|look| &look.findings);
    let aloft = findings
        .into_iter()
        .filter(|finding| finding.aloft == Some(true));
    aloft
        .map(|finding| PageRecord {
            offers: vec![desk.offer(C::RemoveFinding, &finding.id, None)],
            ..finding_record(desk, finding)
        })
        .collect()
}

fn finding_record(desk: &PageDesk, finding: &Finding) -> PageRecord {
    PageRecord {
        id: finding.id.clone(),
        words: desk.code_words(&finding.code),
        detail: finding_detail(desk, finding),
        go_to: Some(PageAddress::Finding {
            finding: finding.id.clone(),
        }),
        offers: Vec::new(),
    }
}

fn near_misses(desk: &PageDesk, looks: &Looks) -> Vec<PageRecord> {
    let noted: Vec<&NearMiss> = looks.all(|look| &look.near_misses);
    noted
        .into_iter()
        .map(|one| {
            let by = (!one.by.is_empty()).then(|| desk.person(&one.by));
            let at = one.at.map(|at| desk.words.moment(at));
            PageRecord {
                id: one.id.clone(),
                words: one.what.clone(),
                detail: [at, by]
                    .into_iter()
                    .flatten()
                    .collect::<Vec<_>>()
                    .join(" · "),
                go_to: None,
                offers: vec![desk.offer(C::RemoveNearMiss, &one.id, None)],
            }
        })
        .collect()
}

/// Hangers still up; cleared at one tap by whoever holds the phone.
fn hangers(desk: &PageDesk, looks: &Looks, holder: &Id) -> Vec<PageRecord> {
    let book = Codebook::with(&desk.codes);
    let up = |finding: &&Finding| {
        book.kind(&finding.code) == DefectKind::Hanger && finding.cleared_by.is_empty()
    };
    let findings = looks.all(|look| &look.findings);
    findings
        .into_iter()
        .filter(up)
        .map(|finding| {
            let mut clear = desk.offer(C::ClearFinding, &finding.id, None);
            if !holder.is_empty() {
                clear.inputs.clear();
                clear.fixed = vec![chosen("finding.cleared_by", holder.as_str())];
            }
            PageRecord {
                offers: vec![clear],
                ..finding_record(desk, finding)
            }
        })
        .collect()
}

/// Who climbs: by the newest plan that names a climber, else whoever holds the phone.
fn climber(looks: &Looks, holder: &Id) -> Id {
    let mut plans = looks.all(|look| &look.plans).into_iter().rev();
    let named = plans.find(|plan| !plan.climber.is_empty());
    named.map_or_else(|| holder.clone(), |plan| plan.climber.clone())
}

/// The climber's gear, and the rest. Where nothing is anybody's own, what the crew shares is the
/// climber's.
fn gear(desk: &PageDesk, climber: &Id) -> (Vec<PageRecord>, Vec<PageRecord>) {
    let mut gear: Vec<&Gear> = desk.gear.iter().collect();
    // The gear in use first, then what is out of use.
    gear.sort_by_key(|piece| piece.out_of_use.is_some());
    let own = |piece: &&Gear| !climber.is_empty() && piece.used_by == *climber;
    let has_own = gear.iter().any(own);
    let (first, rest): (Vec<&Gear>, Vec<&Gear>) = gear.into_iter().partition(|piece| {
        if has_own {
            own(piece)
        } else {
            piece.used_by.is_empty()
        }
    });
    let records = |gear: Vec<&Gear>| {
        let records = gear.into_iter().map(|piece| gear_record(desk, piece));
        records.collect::<Vec<_>>()
    };
    // Nothing is folded away while nothing stands before it.
    match first.is_empty() {
        true => (records(rest), Vec::new()),
        false => (records(first), records(rest)),
    }
}

fn gear_record(desk: &PageDesk, piece: &Gear) -> PageRecord {
    PageRecord {
        id: piece.id.clone(),
        words: piece.name.clone(),
        detail: match &piece.out_of_use {
            Some(why) => desk
                .words
                .say("page.out-of-use", &[("why", Said::Text(why))]),
            None => desk.words.word_of(&piece.kind),
        },
        go_to: None,
        offers: match &piece.out_of_use {
            Some(_) => Vec::new(),
            None => {
                let mut shock = desk.offer(C::ShockGear, &piece.id, None);
                shock.inputs.clear();
                vec![shock]
            }
        },
    }
}

fn other_gear_words(desk: &PageDesk, pieces: usize) -> String {
    let count = [("count", Said::Count(pieces as i64))];
    match pieces {
        0 => String::new(),
        _ => desk.words.say("page.other-gear", &count),
    }
}

fn undo_gear(desk: &PageDesk) -> Offer {
    let mut of_book = desk.undo_offer(&Id::default(), desk.undo_in_book.as_deref());
    of_book.id = format!("{}.gear", C::Undo.id());
    if !of_book.enabled {
        of_book.words = desk.say("page.undo-gear");
    }
    of_book
}

fn work(desk: &PageDesk, tree: &Tree) -> Vec<PageRecord> {
    tree.work
        .iter()
        .map(|work| {
            let done = work
                .outcome
                .as_ref()
                .is_some_and(|outcome| outcome.done == crate::record::WorkDone::Done);
            let mut offers = vec![desk.offer(C::LeaveWork, &work.id, None)];
            if !done {
                offers.insert(0, desk.offer(C::FinishWork, &work.id, None));
            }
            PageRecord {
                id: work.id.clone(),
                words: desk.words.label_of(&work.operation),
                detail: work_detail(desk, work),
                go_to: None,
                offers,
            }
        })
        .collect()
}

fn offers(desk: &PageDesk, site: &Site, tree: &Tree, looks: &Looks) -> Vec<Offer> {
    let known = looks.newest(|look| look.next_look);
    let known = known.map(|day| serde_json::json!({"next_look": day.to_string()}));
    let mut offers = vec![
        desk.offer(C::FindAloft, &tree.id, None),
        desk.offer(C::StopOnSight, &tree.id, None),
        desk.offer(C::NoteNearMiss, &tree.id, None),
        desk.offer(C::SetNextLook, &tree.id, known.as_ref()),
    ];
    if looks.all(|look| &look.plans).is_empty() {
        let mut land = desk.offer(C::LandElsewhere, &tree.id, None);
        land.inputs.clear();
        offers.insert(1, desk.unless(land, true, "page.plan-climb-first"));
    }
    offers.extend(desk.undo_offers(&site.id));
    offers
}
