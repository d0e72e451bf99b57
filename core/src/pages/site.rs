//! The page of a site: its trees with their verdicts, and what holds for all of them.

use serde_json::json;

use super::apart::worst_pairs;
use super::book::nothing_found;
use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::drawn::plane_of;
use super::gaps::{PageGap, site_gaps};
use super::headings::PageHeading;
use super::line::{PageLine, PageRecord};
use super::offer::Offer;
use super::page::PageAddress;
use super::site_around::{line_records, permission_records, target_records};
use super::site_trees::tree_lines;
use super::site_work::{ActionOfSite, actions};
use super::weather::weather_lines;
use crate::record::{ClimbNeed, Id, Judgement, RescuePlan, Site, SiteJudgement, Verdict, Visit};
use crate::words::Said;

/// A site.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SitePage {
    /// The site.
    pub id: Id,
    /// Its name.
    pub title: String,
    /// What a person has to be told first.
    pub notices: Vec<String>,
    /// What has to be settled by a person.
    pub unsettled: Vec<PageRecord>,
    /// What bars climbing on the whole site today.
    pub stops: Vec<String>,
    /// What is still to check for the site as a whole.
    pub gaps: Vec<PageGap>,
    /// Today's visit: who is there, the weather of the hour, notes; that none was begun.
    pub visit: Vec<PageLine>,
    /// What to close, move, guard or empty for the planned work, and whom to ask.
    pub to_close: Vec<ActionOfSite>,
    /// Why there is no plan yet, and what to do first; empty where there is one.
    pub no_plan: String,
    /// The site's own facts.
    pub lines: Vec<PageLine>,
    /// What to do while there is no tree, or where the search finds none; empty else.
    pub lead: String,
    /// What was searched for.
    pub search: String,
    /// The trees that the search finds, in walking order.
    pub trees: Vec<TreeOfSite>,
    /// Which trees may not be worked on at the same time: the worst pairs, and how many more there
    /// are.
    pub conflicts: Vec<String>,
    /// What could be hit.
    pub targets: Vec<PageRecord>,
    /// The overhead lines.
    pub overhead_lines: Vec<PageRecord>,
    /// The permissions.
    pub permissions: Vec<PageRecord>,
    /// The page of the site's rule set.
    pub rules: PageAddress,
    /// The page of what is handed over.
    pub hand_over: PageAddress,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A line of the list of trees.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct TreeOfSite {
    /// The tree.
    pub id: Id,
    /// Its tag.
    pub tag: String,
    /// Its species.
    pub species: String,
    /// The verdict.
    pub verdict: Verdict,
    /// Whether anybody has to climb.
    pub climb: ClimbNeed,
    /// The verdict in words; that nobody needs to climb, where that is so.
    pub words: String,
    /// The first reason.
    pub reason: String,
    /// Its page.
    pub go_to: PageAddress,
}

/// The page of a site.
pub fn site_page(desk: &PageDesk, site: &Site, judged: &SiteJudgement, search: &str) -> SitePage {
    let trees = tree_lines(desk, search);
    let lead = match (site.trees.is_empty(), trees.is_empty()) {
        (true, _) => desk.say("page.site-lead"),
        (false, true) => nothing_found(desk, search),
        (false, false) => String::new(),
    };
    SitePage {
        id: site.id.clone(),
        title: site.name.clone(),
        notices: desk.notices.clone(),
        unsettled: desk.unsettled_records(),
        stops: desk.words.reasons(&judged.stops),
        gaps: site_gaps(desk, site, &judged.gaps),
        visit: visit_lines(desk, visit_today(desk, site)),
        to_close: actions(desk, site),
        no_plan: match plane_of(site) {
            Some(_) => String::new(),
            None => desk.say("page.no-plan"),
        },
        lines: lines(desk, site),
        lead,
        search: search.to_owned(),
        trees,
        conflicts: worst_pairs(desk, judged),
        targets: target_records(desk, site),
        overhead_lines: line_records(desk, site),
        permissions: permission_records(desk, site),
        rules: PageAddress::RuleSet {
            rule_set: site.rule_set.clone().unwrap_or_else(|| Id::from("us")),
        },
        hand_over: PageAddress::HandOver {
            site: site.id.clone(),
        },
        offers: offers(desk, site),
        headings: Vec::new(),
    }
}

fn visit_today<'s>(desk: &PageDesk, site: &'s Site) -> Option<&'s Visit> {
    site.visits.iter().find(|visit| visit.day == desk.today)
}

fn lines(desk: &PageDesk, site: &Site) -> Vec<PageLine> {
    let outline = (site.outline.len() >= 3).then(|| {
        let corners = site.outline.len() as i64;
        desk.words
            .say("page.corners", &[("count", Said::Count(corners))])
    });
    let mut lines = vec![
        desk.line("site.client", "site.client.why", site.client.clone()),
        desk.line("site.address", "site.address.why", site.address.clone()),
        desk.line("site.outline", "site.outline.why", outline),
        desk.line(
            "rescue.meeting_point",
            "rescue.meeting_point.why",
            site.rescue
                .as_ref()
                .and_then(|plan| rescue_words(desk, plan)),
        ),
    ];
    lines.extend(desk.note("site.note", site.note.as_ref()));
    lines
}

/// The day, who is there, the weather and notes; where no visit was begun, that.
fn visit_lines(desk: &PageDesk, visit: Option<&Visit>) -> Vec<PageLine> {
    let label = desk.say("page.visit");
    let Some(visit) = visit else {
        let (none, why) = (desk.say("page.visit-none"), desk.say("page.visit-why"));
        return vec![PageLine::missing("visit.day", label, none, why)];
    };
    let names: Vec<String> = visit.crew.iter().map(|id| desk.person(id)).collect();
    let crew = (!names.is_empty()).then(|| names.join(", "));
    let mut lines = vec![
        PageLine::known("visit.day", label, desk.words.day(visit.day)),
        desk.line("visit.crew", "visit.crew.why", crew),
    ];
    lines.extend(weather_lines(desk, Some(visit)));
    lines.extend(desk.note("visit.note", visit.note.as_ref()));
    lines
}

/// The rescue plan on one line, as far as it is written.
fn rescue_words(desk: &PageDesk, plan: &RescuePlan) -> Option<String> {
    let parts: Vec<String> = [
        plan.meeting_point.clone(),
        plan.grid_reference.clone(),
        plan.signal.map(|signal| desk.words.word_of(&signal)),
        plan.first_aider.as_ref().map(|id| desk.person(id)),
        plan.casualty_unit.clone(),
    ]
    .into_iter()
    .flatten()
    .collect();
    (!parts.is_empty()).then(|| parts.join(" · "))
}

/// The verdict; where nobody needs to climb and nothing bars it, that.
pub(super) fn verdict_words(desk: &PageDesk, answer: &Judgement) -> String {
    if answer.climb == ClimbNeed::NotNeeded && answer.verdict != Verdict::Barred {
        desk.words.label_of(&answer.climb)
    } else {
        desk.words.label_of(&answer.verdict)
    }
}

/// The reason that counts first for the verdict.
pub(super) fn first_reason(answer: &Judgement) -> Option<&crate::record::Reason> {
    let reasons = match answer.verdict {
        Verdict::Barred => &answer.stops,
        Verdict::Incomplete => &answer.gaps,
        Verdict::Refer => &answer.refer_caps,
        Verdict::Limited | Verdict::NoStop => &answer.limit_caps,
    };
    reasons.first().or(answer.limits.first())
}

/// The tag that comes next: one more than the largest number among the tags.
fn next_tag(site: &Site) -> String {
    let numbers = site
        .trees
        .iter()
        .filter_map(|tree| tree.tag.parse::<u32>().ok());
    let last = numbers.max().unwrap_or(0);
    last.saturating_add(1).to_string()
}

/// The site's own facts, as JSON, without the trees that lie in it.
fn own_facts(site: &Site) -> serde_json::Value {
    json!({
        "name": site.name,
        "client": site.client,
        "address": site.address,
        "rule_set": site.rule_set,
        "outline": (!site.outline.is_empty()).then_some(&site.outline),
        "note": site.note,
        "rescue": site.rescue,
    })
}

fn offers(desk: &PageDesk, site: &Site) -> Vec<Offer> {
    let own = own_facts(site);
    let visit = visit_today(desk, site);
    let id = &site.id;
    let visit_id = visit.map_or_else(Id::default, |visit| visit.id.clone());
    let at_hour = visit.and_then(|visit| visit.weather.iter().find(|at| at.hour == desk.hour));
    let weather = match at_hour {
        Some(known) => desk.offer_on(CommandKind::NoteWeather, &visit_id, known),
        None => desk.offer(CommandKind::NoteWeather, &visit_id, None),
    };
    let start = match visit {
        Some(visit) => desk.offer_on(CommandKind::StartVisit, id, visit),
        None => desk.offer(CommandKind::StartVisit, id, None),
    };
    let mut offers = vec![
        desk.offer(
            CommandKind::AddTree,
            id,
            Some(&json!({"tag": next_tag(site)})),
        ),
        start,
        desk.unless(weather, visit.is_none(), "page.start-visit-first"),
        desk.offer(CommandKind::WriteRescuePlan, id, Some(&own)),
        desk.offer(CommandKind::AddPermission, id, None),
        desk.offer(CommandKind::AddTarget, id, None),
        desk.offer(CommandKind::ImportGround, id, None),
        desk.offer(CommandKind::AddOverheadLine, id, None),
        desk.offer(CommandKind::ChangeSite, id, Some(&own)),
        desk.offer(CommandKind::RemoveSite, id, None),
    ];
    offers.extend(desk.undo_offers(id));
    offers
}
