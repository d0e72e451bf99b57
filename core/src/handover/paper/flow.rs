//! Slabs → pages.

use super::slab::{Item, LinkArea, Marked, Slab};

/// The part of a page that slabs fill.
#[derive(Debug, Clone, Copy)]
pub(super) struct Frame {
    pub left_pt: f32,
    pub top_pt: f32,
    pub height_pt: f32,
}

/// A page with everything in its place.
#[derive(Debug, Clone, Default)]
pub(super) struct Page {
    pub items: Vec<Item>,
    pub links: Vec<LinkArea>,
    pub headings: Vec<Marked>,
}

/// Lays `slabs` on pages. Slabs that hold together go to the next page together, unless they would
/// not fit on one.
pub(super) fn laid_on_pages(slabs: Vec<Slab>, frame: Frame) -> Vec<Page> {
    let mut flow = Flow {
        frame,
        pages: vec![Page::default()],
        filled_pt: 0.0,
    };
    for group in groups(slabs) {
        let height_pt = height_of(&group);
        let starts_page = group.first().is_some_and(|slab| slab.new_page);
        let space_pt = group.first().map_or(0.0, |slab| slab.before_pt);
        let fits_here = flow.fits(space_pt + height_pt);
        if starts_page || (!fits_here && height_pt <= frame.height_pt) {
            flow.turn();
        }
        for slab in group {
            flow.place(slab);
        }
    }
    flow.pages
}

/// Runs of slabs that hold together.
fn groups(slabs: Vec<Slab>) -> Vec<Vec<Slab>> {
    let mut groups: Vec<Vec<Slab>> = Vec::new();
    let mut holds = false;
    for slab in slabs {
        let begins = !holds || slab.new_page;
        holds = slab.keeps_next;
        match groups.last_mut() {
            Some(group) if !begins => group.push(slab),
            _ => groups.push(vec![slab]),
        }
    }
    groups
}

fn height_of(group: &[Slab]) -> f32 {
    let spaces: f32 = group
        .iter()
        .map(|slab| slab.before_pt + slab.height_pt)
        .sum();
    spaces - group.first().map_or(0.0, |slab| slab.before_pt)
}

struct Flow {
    frame: Frame,
    pages: Vec<Page>,
    filled_pt: f32,
}

impl Flow {
    fn fits(&self, height_pt: f32) -> bool {
        self.filled_pt + height_pt <= self.frame.height_pt + 0.01
    }

    /// Begins a page, unless the one at hand is still empty.
    fn turn(&mut self) {
        if self.filled_pt > 0.0 {
            self.pages.push(Page::default());
            self.filled_pt = 0.0;
        }
    }

    fn place(&mut self, slab: Slab) {
        if !self.fits(slab.before_pt + slab.height_pt) {
            self.turn();
        }
        if self.filled_pt > 0.0 {
            self.filled_pt += slab.before_pt;
        } else if let Some(head) = &slab.head {
            let head = head.as_ornament();
            self.put(head);
        }
        let mut rest = slab;
        // What is taller than a page is cut between its lines, so that nothing falls off the sheet.
        while rest.height_pt > self.frame.height_pt - self.filled_pt + 0.01 {
            let (fits, beyond) = rest.cut_at(self.frame.height_pt - self.filled_pt);
            self.put(fits);
            self.filled_pt = self.frame.height_pt;
            self.turn();
            rest = beyond;
        }
        self.put(rest);
    }

    fn put(&mut self, slab: Slab) {
        let (left_pt, top_pt) = (self.frame.left_pt, self.frame.top_pt + self.filled_pt);
        self.filled_pt += slab.height_pt;
        let mut placed = Slab::default();
        placed.take(slab, left_pt, top_pt);
        if let Some(page) = self.pages.last_mut() {
            page.items.append(&mut placed.items);
            page.links.append(&mut placed.links);
            page.headings.append(&mut placed.headings);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::look::BARK;
    use super::super::slab::{Owner, Shape};
    use super::*;
    use std::rc::Rc;

    const FRAME: Frame = Frame {
        left_pt: 10.0,
        top_pt: 20.0,
        height_pt: 100.0,
    };

    fn slab(height_pt: f32, keeps_next: bool) -> Slab {
        let mut slab = Slab {
            height_pt,
            before_pt: 5.0,
            keeps_next,
            ..Slab::default()
        };
        slab.draw(Owner::Ornament, Shape::rule(0.0, 0.0, 1.0, BARK, 1.0));
        slab
    }

    fn counts(slabs: Vec<Slab>) -> Vec<usize> {
        let pages = laid_on_pages(slabs, FRAME);
        pages.iter().map(|page| page.items.len()).collect()
    }

    #[test]
    fn a_heading_goes_to_the_next_page_with_its_text() {
        assert_eq!(
            counts(vec![slab(60.0, false), slab(20.0, true), slab(30.0, false)]),
            [1, 2]
        );
    }

    #[test]
    fn the_space_above_a_group_counts_too() {
        // 45 + 5 + 20 + 5 + 26 points are one too many for a page of 100.
        assert_eq!(
            counts(vec![slab(45.0, false), slab(20.0, true), slab(26.0, false)]),
            [1, 2]
        );
    }

    #[test]
    fn a_group_larger_than_a_page_is_cut() {
        assert_eq!(
            counts(vec![slab(60.0, true), slab(60.0, true), slab(60.0, false)]),
            [1, 1, 1]
        );
    }

    #[test]
    fn a_slab_taller_than_a_page_is_cut_between_its_lines() {
        let mut tall = Slab {
            height_pt: 250.0,
            ..Slab::default()
        };
        for line in 0..25 {
            let y_pt = 10.0 * line as f32;
            let area = Shape::area([0.0, y_pt, 5.0, 9.0], Some(BARK), None);
            tall.draw(Owner::Ornament, area);
        }
        let pages = laid_on_pages(vec![slab(30.0, false), tall], FRAME);
        let counts: Vec<usize> = pages.iter().map(|page| page.items.len()).collect();
        assert_eq!(counts, [1, 10, 10, 5]);
        for item in pages.iter().flat_map(|page| &page.items) {
            let [top_pt, bottom_pt] = item.shape.reach();
            assert!(top_pt >= 20.0 && bottom_pt <= 120.0, "{top_pt} {bottom_pt}");
        }
    }

    #[test]
    fn a_head_is_repeated_only_where_a_page_begins() {
        let head = Rc::new(slab(10.0, false));
        let row = || Slab {
            head: Some(head.clone()),
            ..slab(40.0, false)
        };
        // The first page begins with other matter, so the rows there have their head already.
        assert_eq!(
            counts(vec![slab(5.0, false), row(), row(), row(), row()]),
            [3, 3]
        );
    }
}
