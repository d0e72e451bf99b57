//! Which address shows which page.

use std::cell::Cell;
use std::path::Path;

use super::inner::Inner;
use super::judged::JudgedSite;
use super::records::unknown;
use crate::draw::Drawing;
use crate::error::BookError;
use crate::judge::codebook::{Codebook, starter_codes};
use crate::judge::rules_for;
use crate::pages::{
    DrawingAddress, DrawnSize, Page, PageAddress, PageDesk, PhotoPaths, aloft_page, anchor_of,
    anchor_page, compare_page, drawing_of, finding_page, hand_over_page, judgement_page, site_page,
    stem_section_page, tree_page,
};
use crate::photo::photo_files;
use crate::record::{DefectCode, Fault, Id, Noun};

impl Inner {
    /// The page at an address.
    pub(super) fn page(&mut self, address: &PageAddress) -> Result<Page, BookError> {
        match address {
            PageAddress::Book { near, search } => self.page_of_book(*near, search),
            PageAddress::Settings => self.page_of_settings(),
            PageAddress::Codebook => self.page_of_codebook(),
            PageAddress::RuleSet { rule_set } => self.page_of_rules(rule_set),
            PageAddress::People => self.page_of_people(),
            PageAddress::Person { person } => self.page_of_person(person),
            PageAddress::Gear => self.page_of_gear(),
            PageAddress::Site { site, search } => self.on_site(site, None, |desk, judged| {
                let site = &judged.loaded.file.site;
                Ok(Page::Site(site_page(desk, site, &judged.judged, search)))
            }),
            PageAddress::HandOver { site } => self.on_site(site, None, |desk, judged| {
                let site = &judged.loaded.file.site;
                Ok(Page::HandOver(hand_over_page(desk, site, &judged.judged)))
            }),
            PageAddress::Tree { tree } => {
                let site = self.site_of(Noun::Tree, tree)?;
                self.on_site(&site, Some(tree), |desk, judged| {
                    let found = desk.tree(tree);
                    let (found, answer) = found.ok_or_else(|| unknown(Noun::Tree, tree))?;
                    let site = &judged.loaded.file.site;
                    Ok(Page::Tree(tree_page(desk, site, found, answer)))
                })
            }
            PageAddress::Aloft { tree } => {
                let site = self.site_of(Noun::Tree, tree)?;
                let holder = self.settings.person.clone();
                self.on_site(&site, Some(tree), |desk, judged| {
                    let found = desk.tree(tree);
                    let (found, answer) = found.ok_or_else(|| unknown(Noun::Tree, tree))?;
                    let site = &judged.loaded.file.site;
                    Ok(Page::Aloft(aloft_page(desk, site, found, answer, &holder)))
                })
            }
            PageAddress::Compare { tree } => {
                let site = self.site_of(Noun::Tree, tree)?;
                let judged = self.judged(&site)?;
                let mut trees = judged.loaded.file.site.trees.iter();
                let known = trees.find(|one| one.id == *tree);
                let known = known.ok_or_else(|| unknown(Noun::Tree, tree))?;
                let earlier = self.earlier(&judged, known)?;
                self.on_site(&site, Some(tree), |desk, judged| {
                    let found = desk.tree(tree);
                    let (found, answer) = found.ok_or_else(|| unknown(Noun::Tree, tree))?;
                    let site = &judged.loaded.file.site;
                    let page = compare_page(desk, site, found, answer, earlier.as_ref());
                    Ok(Page::Compare(page))
                })
            }
            PageAddress::Judgement { tree } => {
                let site = self.site_of(Noun::Tree, tree)?;
                let signed = self.signed_last(&site, tree)?;
                self.on_site(&site, Some(tree), |desk, judged| {
                    let found = desk.tree(tree);
                    let (found, answer) = found.ok_or_else(|| unknown(Noun::Tree, tree))?;
                    let site = &judged.loaded.file.site;
                    let page = judgement_page(desk, site, found, answer, signed.as_ref());
                    Ok(Page::Judgement(page))
                })
            }
            PageAddress::Finding { finding } => {
                let site = self.site_of(Noun::Finding, finding)?;
                let tree = self.tree_holding(Noun::Finding, finding)?;
                self.on_site(&site, Some(&tree), |desk, judged| {
                    finding_page(desk, &judged.loaded.file.site, finding)
                        .map(Page::Finding)
                        .ok_or_else(|| unknown(Noun::Finding, finding))
                })
            }
            PageAddress::StemSection { section } => {
                let site = self.site_of(Noun::StemSection, section)?;
                let tree = self.tree_holding(Noun::StemSection, section)?;
                self.on_site(&site, Some(&tree), |desk, judged| {
                    stem_section_page(desk, &judged.loaded.file.site, section)
                        .map(Page::StemSection)
                        .ok_or_else(|| unknown(Noun::StemSection, section))
                })
            }
            PageAddress::Anchor { anchor } => {
                let site = self.site_of(Noun::AnchorPoint, anchor)?;
                let tree = self.tree_holding(Noun::AnchorPoint, anchor)?;
                self.on_site(&site, Some(&tree), |desk, judged| {
                    anchor_of(&judged.loaded.file.site, anchor)
                        .and_then(|_| anchor_page(desk, &judged.loaded.file.site, anchor))
                        .map(Page::Anchor)
                        .ok_or_else(|| unknown(Noun::AnchorPoint, anchor))
                })
            }
        }
    }

    /// A drawing of a page.
    pub(super) fn drawing(
        &mut self,
        which: &DrawingAddress,
        size: DrawnSize,
    ) -> Result<Drawing, BookError> {
        let site = match which {
            DrawingAddress::SitePlan { site } => self.site_with_plan(site)?,
            DrawingAddress::TreeSide { tree } | DrawingAddress::TreeZones { tree } => {
                self.site_of(Noun::Tree, tree)?
            }
            DrawingAddress::SectionThrough { section } => {
                self.site_of(Noun::StemSection, section)?
            }
            DrawingAddress::Grade { .. }
            | DrawingAddress::PartOfTree { .. }
            | DrawingAddress::UnionOfForm { .. } => {
                return self.on_book(|desk, _, _| {
                    drawing_of(desk, which, size).ok_or_else(nothing_to_draw)
                });
            }
        };
        self.on_site(&site, None, |desk, _| {
            drawing_of(desk, which, size).ok_or_else(nothing_to_draw)
        })
    }

    fn tree_holding(&self, noun: Noun, id: &Id) -> Result<Id, BookError> {
        let inspection = self.holder(noun, id)?;
        self.holder(Noun::Inspection, &inspection)
    }

    /// A page of a site, or of a tree on it.
    pub(super) fn on_site<T>(
        &mut self,
        site: &Id,
        tree: Option<&Id>,
        make: impl FnOnce(&PageDesk, &JudgedSite) -> Result<T, BookError>,
    ) -> Result<T, BookError> {
        let token = self.new_token();
        let judged = self.judged(site)?;
        let file = &judged.loaded.file;
        let folder = self.photo_folder()?;
        let photos = |file: &str| paths(&folder, file);
        let today = self.clock.today();
        let found = tree.and_then(|id| file.site.trees.iter().find(|one| one.id == *id));
        let visits = file.site.visits.iter().filter(|visit| visit.day == today);
        let visits: Vec<&Id> = visits.map(|visit| &visit.id).collect();
        let inspection = found.and_then(|tree| {
            let of_today = tree.inspections.iter().rev();
            of_today
                .clone()
                .find(|look| visits.contains(&&look.visit))
                .or(of_today.clone().next())
        });
        let desk = PageDesk {
            words: self.settings.words(),
            token,
            offered: Cell::new(0),
            today,
            hour: self.clock.hour(),
            now_ms: self.clock.now().utc_ms,
            rules: rules_for(file)?,
            holder: self.settings.person.clone(),
            crew: &file.crew,
            gear: &file.gear,
            codes: codes_in_order(&file.codebook),
            places: Vec::new(),
            site: Some((&file.site, &judged.judged)),
            inspection,
            notices: self.notices_of_site(&judged.loaded),
            unsettled: self.unsettled(&judged.loaded),
            undo: self.step_words(Some(site), true)?,
            undo_in_book: self.step_words(None, true)?,
            redo: self.step_words(Some(site), false)?,
            species_used: self.species_used()?,
            codes_used: self.codes_used()?,
            photos: &photos,
        };
        make(&desk, &judged)
    }
}

/// Nobody took what it is drawn from.
pub(super) fn nothing_to_draw() -> BookError {
    BookError::refused(Fault::new("fault.nothing-to-draw", "", "", ""))
}

fn paths(folder: &Path, file: &str) -> PhotoPaths {
    let files = photo_files(folder, file);
    PhotoPaths {
        view: files.view.display().to_string(),
        small: files.small.display().to_string(),
    }
}

/// The codes in use, in the order of their tiles.
pub(super) fn codes_in_order(own: &[DefectCode]) -> Vec<DefectCode> {
    let codebook = Codebook::with(own);
    let ids = starter_codes().iter().chain(own).map(|code| &code.id);
    let mut codes: Vec<DefectCode> = Vec::new();
    for id in ids {
        if let Some(code) = codebook.code(id)
            && !codes.iter().any(|known| known.id == *id)
        {
            codes.push(code.clone());
        }
    }
    codes.sort_by_key(|code| code.order.unwrap_or(u32::MAX));
    codes
}
