//! The page of the field book: the sites, those near first, the ways to all that is managed, and
//! the health of the book.

use super::codebook::codes_count;
use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::gear::gear_words;
use super::headings::PageHeading;
use super::line::{LineState, PageLine, PageRecord, PageWay};
use super::offer::Offer;
use super::page::PageAddress;
use super::people::people_words;
use super::rule_set::rules_words;
use crate::judge::rules::RuleSet;
use crate::record::{Day, Id, LatLon, Moment};
use crate::words::{Said, Search, UnitSystem};

/// The field book.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct BookPage {
    /// Title.
    pub title: String,
    /// What a person has to be told first: damage repaired, an upgrade.
    pub notices: Vec<String>,
    /// What has to be settled by a person: people, gear, codes, house values.
    pub unsettled: Vec<PageRecord>,
    /// What to do while there is no site, or where the search finds none; empty else.
    pub lead: String,
    /// The day, and who holds the phone.
    pub lines: Vec<PageLine>,
    /// What was searched for.
    pub search: String,
    /// The sites that the search finds: near ones first where the phone knows its place.
    pub sites: Vec<SiteOfBook>,
    /// Ways to people, gear, codebook, rules, settings.
    pub ways: Vec<PageWay>,
    /// How the book is: the last backup, what was repaired.
    pub health: Vec<PageLine>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A line of the list of sites.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SiteOfBook {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client and the number of trees, in words.
    pub words: String,
    /// How far away it is, in words; empty where that is not known.
    pub away: String,
    /// Number of trees.
    pub trees: u32,
    /// Its page.
    pub go_to: PageAddress,
}

/// What the page of the field book is made from, besides the desk.
#[derive(Debug, Clone, PartialEq)]
pub struct BookFacts {
    /// The sites.
    pub sites: Vec<SiteFacts>,
    /// Where the phone is.
    pub near: Option<LatLon>,
    /// What is searched for.
    pub search: String,
    /// When the backups at hand were made, the latest first.
    pub backups: Vec<Moment>,
    /// Days on which damaged files were put aside, the latest first.
    pub damage: Vec<Day>,
}

/// One site of the book.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteFacts {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client.
    pub client: Option<String>,
    /// The address.
    pub address: Option<String>,
    /// Number of trees.
    pub trees: u32,
    /// How far away it is in metres, where that is known.
    pub away_m: Option<f64>,
}

/// The page of the field book.
pub fn book_page(desk: &PageDesk, facts: BookFacts, rules: &RuleSet) -> BookPage {
    let nobody = Id::default();
    let holder = desk.holder_name();
    let ways = ways(desk, rules);
    let health = health(desk, &facts);
    let search = Search::of(&facts.search);
    let empty = facts.sites.is_empty();
    let mut found: Vec<SiteFacts> = facts
        .sites
        .into_iter()
        .filter(|site| {
            let client = site.client.as_deref().unwrap_or_default();
            search.fits(&[
                &site.name,
                client,
                site.address.as_deref().unwrap_or_default(),
            ])
        })
        .collect();
    let far = |site: &SiteFacts| site.away_m.unwrap_or(f64::INFINITY);
    found.sort_by(|one, other| far(one).total_cmp(&far(other)));
    let lead = match (empty, found.is_empty()) {
        (true, _) => desk.say("page.book-lead"),
        (false, true) => nothing_found(desk, &facts.search),
        (false, false) => String::new(),
    };
    BookPage {
        title: desk.say("page.book"),
        notices: desk.notices.clone(),
        unsettled: desk.unsettled_records(),
        lead,
        lines: vec![
            PageLine::known(
                "book.today",
                desk.say("page.today"),
                desk.words.day(desk.today),
            ),
            desk.line("settings.person", "settings.person.why", holder),
        ],
        search: facts.search,
        sites: found.into_iter().map(|one| site(desk, one)).collect(),
        ways,
        health,
        offers: offers(desk, &nobody, !facts.damage.is_empty()),
        headings: Vec::new(),
    }
}

/// That a search found nothing, and what to do.
pub(super) fn nothing_found(desk: &PageDesk, search: &str) -> String {
    let search = [("search", Said::Text(search.trim()))];
    desk.words.say("page.nothing-found", &search)
}

fn offers(desk: &PageDesk, nobody: &Id, was_damaged: bool) -> Vec<Offer> {
    // A name is ready, so that the first page of use is two taps away.
    let ready = serde_json::json!({ "name": site_name_of(desk) });
    let mut offers = vec![
        desk.offer(CommandKind::AddSite, nobody, Some(&ready)),
        desk.offer(CommandKind::ImportSiteFile, nobody, None),
        desk.offer(CommandKind::ReadPack, nobody, None),
        desk.offer(CommandKind::MakeBackup, nobody, None),
    ];
    if was_damaged {
        offers.push(desk.offer(CommandKind::WriteDamaged, nobody, None));
    }
    offers.extend(holder_offer(desk, nobody));
    offers.extend(desk.undo_offers(nobody));
    offers
}

/// Says who holds the phone, while nobody is named.
fn holder_offer(desk: &PageDesk, nobody: &Id) -> Option<Offer> {
    let asks = |input: &str| input == "settings.person";
    let mut offer = desk.offer_asking(CommandKind::ChangeSettings, nobody, None, &asks);
    offer.words = desk.say("page.name-holder");
    let offer = desk.unless(offer, desk.crew.is_empty(), "page.add-people-first");
    desk.holder.is_empty().then_some(offer)
}

/// The name that a new site has until somebody names it.
fn site_name_of(desk: &PageDesk) -> String {
    let day = [("day", Said::Day(desk.today))];
    desk.words.say("page.site-of-day", &day)
}

fn site(desk: &PageDesk, site: SiteFacts) -> SiteOfBook {
    let count = [("count", Said::Count(site.trees.into()))];
    let count = desk.words.say("page.tree-count", &count);
    let words = match site.client {
        Some(client) => {
            let said = [
                ("client", Said::Text(client.as_str())),
                ("trees", Said::Text(&count)),
            ];
            desk.words.say("page.client-and-trees", &said)
        }
        None => count,
    };
    SiteOfBook {
        go_to: PageAddress::site(&site.id),
        id: site.id,
        name: site.name,
        words,
        away: site
            .away_m
            .map_or_else(String::new, |metres| away(desk, metres)),
        trees: site.trees,
    }
}

/// A distance to be driven or walked.
fn away(desk: &PageDesk, metres: f64) -> String {
    let (unit, key) = match desk.words.units() {
        UnitSystem::Metric => (1000.0, "page.away-km"),
        // NIST SP 811 (2008), appendix B: the mile is 1609.344 m.
        UnitSystem::Imperial => (1609.344, "page.away-mi"),
    };
    let far = metres / unit;
    if far < 0.1 {
        return desk.say("page.here");
    }
    let shown = if far < 10.0 {
        (far * 10.0).round() / 10.0
    } else {
        far.round()
    };
    desk.words.say(key, &[("far", Said::Plural(shown))])
}

fn ways(desk: &PageDesk, rules: &RuleSet) -> Vec<PageWay> {
    let way = |id: &str, words: &str, detail: String, go_to: PageAddress| PageWay {
        id: id.to_owned(),
        words: desk.say(words),
        detail,
        go_to,
    };
    let words = &desk.words;
    let settings = format!(
        "{} · {}",
        words.label_of(&words.language()),
        words.word_of(&words.units())
    );
    vec![
        way(
            "book.people",
            "page.people",
            people_words(desk),
            PageAddress::People,
        ),
        way(
            "book.gear",
            "page.gear",
            gear_words(desk, rules),
            PageAddress::Gear,
        ),
        way(
            "book.codebook",
            "page.codebook",
            codes_count(desk),
            PageAddress::Codebook,
        ),
        way(
            "book.rules",
            "page.rules",
            rules_words(desk, rules),
            PageAddress::RuleSet {
                rule_set: rules.id().clone(),
            },
        ),
        way(
            "book.settings",
            "page.settings",
            settings,
            PageAddress::Settings,
        ),
    ]
}

/// The backups, how one comes back, and damage that was put aside.
fn health(desk: &PageDesk, facts: &BookFacts) -> Vec<PageLine> {
    let label = desk.say("page.backup");
    let mut lines = vec![match facts.backups.first() {
        Some(at) => PageLine::known("book.backup", label, desk.words.moment(*at)),
        None => PageLine::missing(
            "book.backup",
            label,
            desk.say("page.never-backed-up"),
            desk.say("page.backup-why"),
        ),
    }];
    if !facts.backups.is_empty() {
        let kept = desk.say("page.backups");
        lines.push(PageLine {
            why: desk.say("page.backups-why"),
            ..PageLine::known("book.backups", kept, days_of(desk, &facts.backups))
        });
    }
    for day in &facts.damage {
        let said = [("day", Said::Day(*day))];
        lines.push(PageLine {
            state: LineState::Doubtful,
            ..PageLine::known(
                "book.damage",
                desk.say("page.damage"),
                desk.words.say("page.damage-kept", &said),
            )
        });
    }
    lines
}

/// The days of the backups, each once.
fn days_of(desk: &PageDesk, backups: &[Moment]) -> String {
    let days = backups.iter().filter_map(|at| at.local());
    let mut days: Vec<Day> = days.map(|at| at.day).collect();
    days.dedup();
    let said: Vec<String> = days.into_iter().map(|day| desk.words.day(day)).collect();
    said.join(" · ")
}
