//! The pages of the book itself: sites, people, gear, settings.

use std::cell::Cell;

use super::fill::defect;
use super::inner::Inner;
use super::records::unknown;
use super::show::codes_in_order;
use crate::error::BookError;
use crate::judge::rules::RuleSet;
use crate::measure::place::haversine_m;
use crate::pages::{
    BookFacts, Page, PageDesk, PhotoPaths, SettingsFacts, SiteFacts, book_page, codebook_page,
    gear_page, people_page, person_page, rule_set_page, settings_page,
};
use crate::record::{Id, LatLon, Moment, Noun};
use crate::store::{Book, SiteLine};

impl Inner {
    /// The field book: sites near a place first, those that a search finds.
    pub(super) fn page_of_book(
        &mut self,
        near: Option<LatLon>,
        search: &str,
    ) -> Result<Page, BookError> {
        let now = self.clock.now();
        let backups = self.store.backups();
        let damage = self.store.damage_kept();
        // A place that no receiver means is none.
        let near = near.filter(|here| {
            crate::record::LAT_DEG.allows(here.lat_deg)
                && crate::record::LON_DEG.allows(here.lon_deg)
        });
        self.on_book(|desk, book, rules| {
            let facts = BookFacts {
                sites: book.sites.iter().map(|line| facts_of(line, near)).collect(),
                near,
                search: search.to_owned(),
                backups: backups
                    .into_iter()
                    .map(|(utc_ms, _)| Moment { utc_ms, ..now })
                    .collect(),
                damage: damage
                    .into_iter()
                    .filter_map(|(utc_ms, _)| Some(Moment { utc_ms, ..now }.local()?.day))
                    .collect(),
            };
            Ok(Page::Book(book_page(desk, facts, rules)))
        })
    }

    pub(super) fn page_of_settings(&mut self) -> Result<Page, BookError> {
        let settings = self.settings.clone();
        self.on_book(|desk, _, _| {
            let facts = SettingsFacts {
                theme: settings.theme,
                text_size_pct: settings.text_size_pct,
                left_hand: settings.left_hand,
                settings: serde_json::to_value(&settings).map_err(defect)?,
            };
            Ok(Page::Settings(settings_page(desk, facts)))
        })
    }

    pub(super) fn page_of_codebook(&mut self) -> Result<Page, BookError> {
        self.on_book(|desk, _, _| Ok(Page::Codebook(codebook_page(desk))))
    }

    pub(super) fn page_of_rules(&mut self, id: &Id) -> Result<Page, BookError> {
        let shipped = RuleSet::shipped(id)?;
        self.on_book(|desk, book, _| {
            let rules = shipped.with_house_values(&book.house_values);
            let rules = rules.unwrap_or_else(|_| shipped.clone());
            let page = rule_set_page(desk, &rules, &shipped, &book.house_values);
            Ok(Page::RuleSet(page))
        })
    }

    pub(super) fn page_of_people(&mut self) -> Result<Page, BookError> {
        self.on_book(|desk, _, _| Ok(Page::People(people_page(desk))))
    }

    pub(super) fn page_of_person(&mut self, person: &Id) -> Result<Page, BookError> {
        self.on_book(|desk, book, rules| {
            let found = book.crew.iter().find(|one| one.id == *person);
            let found = found.ok_or_else(|| unknown(Noun::Person, person))?;
            Ok(Page::Person(person_page(desk, found, rules)))
        })
    }

    pub(super) fn page_of_gear(&mut self) -> Result<Page, BookError> {
        self.on_book(|desk, _, rules| Ok(Page::Gear(gear_page(desk, rules))))
    }

    /// A page of the book itself, with the rules that hold where no site says otherwise.
    pub(super) fn on_book<T>(
        &mut self,
        make: impl FnOnce(&PageDesk, &Book, &RuleSet) -> Result<T, BookError>,
    ) -> Result<T, BookError> {
        let token = self.new_token();
        let book = self.store.read().load_book()?;
        let rules = RuleSet::shipped(&Id::default())?;
        // House values of a newer version may not fit: the shipped ones stand in.
        let rules = rules.with_house_values(&book.house_values).unwrap_or(rules);
        let photos = |_: &str| PhotoPaths {
            view: String::new(),
            small: String::new(),
        };
        let desk = PageDesk {
            words: self.settings.words(),
            token,
            offered: Cell::new(0),
            today: self.clock.today(),
            hour: self.clock.hour(),
            now_ms: self.clock.now().utc_ms,
            rules: rules.clone(),
            holder: self.settings.person.clone(),
            crew: &book.crew,
            gear: &book.gear,
            codes: codes_in_order(&book.codebook),
            places: book.sites.iter().map(|site| site.name.clone()).collect(),
            site: None,
            inspection: None,
            notices: self.notices_of_book(&book),
            unsettled: self.unsettled_of_book(&book),
            undo: self.step_words(None, true)?,
            undo_in_book: self.step_words(None, true)?,
            redo: self.step_words(None, false)?,
            species_used: Vec::new(),
            codes_used: self.codes_used()?,
            photos: &photos,
        };
        make(&desk, &book, &rules)
    }
}

fn facts_of(line: &SiteLine, near: Option<LatLon>) -> SiteFacts {
    let far = |point: &LatLon| near.map(|here| haversine_m(here, *point));
    let nearest = line.points.iter().filter_map(far);
    SiteFacts {
        id: line.id.clone(),
        name: line.name.clone(),
        client: line.client.clone(),
        address: line.address.clone(),
        trees: line.trees,
        away_m: nearest.min_by(f64::total_cmp),
    }
}
