//! Tables.

use std::rc::Rc;

use super::block::{Cell, Column, Table};
use super::compose::{Composer, words_at};
use super::look::{BARK, HAIR};
use super::rich::Rich;
use super::slab::{LinkArea, Owner, Shape, Slab};
use super::tags::{LeafId, NodeId, Role, Tags};
use super::typesetter::{SetLine, Setting};

/// Room between columns.
const GUTTER_PT: f32 = 9.0;
/// What stands in a cell without words: a table is read cell by cell, so none may be missing.
pub(super) const NOTHING: &str = "–";

/// A cell set in lines.
struct SetCell {
    lines: Vec<SetLine>,
    leaf: LeafId,
    link: Option<LinkArea>,
    page_of: Option<String>,
    x_pt: f32,
    width_pt: f32,
    at_end: bool,
    how: Setting,
}

impl Composer<'_> {
    pub(super) fn table(&mut self, table: &Table, width_pt: f32, parent: NodeId) -> Vec<Slab> {
        let places = column_places(&table.columns, width_pt);
        let node = self.tags.node(
            parent,
            Role::Table {
                summary: table.summary.clone(),
            },
        );
        let head = self.table_head(table, &places, width_pt, node);
        let body = self.tags.node(node, Role::TableBody);
        let repeated = Rc::new(head.clone());
        let mut slabs = vec![Slab {
            before_pt: self.look.gap_pt,
            keeps_next: true,
            ..head
        }];
        for row in &table.rows {
            for mut slab in self.table_row(table, row, &places, width_pt, body) {
                slab.head = Some(repeated.clone());
                slabs.push(slab);
            }
        }
        slabs
    }

    fn table_head(
        &mut self,
        table: &Table,
        places: &[[f32; 2]],
        width_pt: f32,
        node: NodeId,
    ) -> Slab {
        let head = self.tags.node(node, Role::TableHead);
        let row = self.tags.node(head, Role::Row);
        let mut how = self.small(true);
        how.leading = 1.25;
        let cells: Vec<SetCell> = table
            .columns
            .iter()
            .zip(places)
            .map(|(column, [x_pt, width_pt])| {
                let cell = self.tags.node(row, Role::ColumnName);
                SetCell {
                    lines: self
                        .setter
                        .set(&column.title.as_str().into(), how, Some(*width_pt)),
                    leaf: self.tags.leaf(cell),
                    link: None,
                    page_of: None,
                    x_pt: *x_pt,
                    width_pt: *width_pt,
                    at_end: column.at_end,
                    how,
                }
            })
            .collect();
        let tallest = cells.iter().map(|c| c.lines.len()).max().unwrap_or(0);
        let height_pt = tallest as f32 * how.size_pt * how.leading;
        let mut slab = Slab {
            height_pt: height_pt + 2.0 * self.look.row_pad_pt,
            ..Slab::default()
        };
        for cell in &cells {
            // Heads stand on the rule, so that short ones line up with the rows.
            let own_pt: f32 = cell.lines.iter().map(|line| line.height_pt).sum();
            draw_cell(
                &mut slab,
                cell,
                self.look.row_pad_pt + height_pt - own_pt,
                0,
                tallest,
            );
        }
        let y_pt = slab.height_pt;
        slab.draw(Owner::Ornament, Shape::rule(0.0, y_pt, width_pt, BARK, 1.0));
        slab
    }

    fn table_row(
        &mut self,
        table: &Table,
        row: &[Cell],
        places: &[[f32; 2]],
        width_pt: f32,
        body: NodeId,
    ) -> Vec<Slab> {
        let node = self.tags.node(body, Role::Row);
        let empty = Cell::default();
        let cells: Vec<SetCell> = table
            .columns
            .iter()
            .zip(places)
            .enumerate()
            .map(|(number, (column, place))| {
                let cell = row.get(number).unwrap_or(&empty);
                let named = table.rows_named && number == 0;
                self.set_cell(cell, column, *place, named, node)
            })
            .collect();
        let count = cells
            .iter()
            .map(|c| c.lines.len())
            .max()
            .unwrap_or(0)
            .max(1);
        let line_pt = self.look.small_pt * self.look.leading;
        // A row that would fill half a page is cut between its lines.
        let at_most = ((self.page_pt / 2.0 / line_pt) as usize).max(1);
        let mut slabs = Vec::new();
        let mut from = 0;
        while from < count {
            let until = count.min(from + at_most);
            let (first, last) = (from == 0, until == count);
            let above_pt = if first { self.look.row_pad_pt } else { 0.0 };
            let below_pt = if last { self.look.row_pad_pt } else { 0.0 };
            let mut slab = Slab {
                height_pt: (until - from) as f32 * line_pt + above_pt + below_pt,
                ..Slab::default()
            };
            for cell in &cells {
                draw_cell(&mut slab, cell, above_pt, from, until);
            }
            if last {
                let y_pt = slab.height_pt;
                slab.draw(Owner::Ornament, Shape::rule(0.0, y_pt, width_pt, HAIR, 0.6));
            }
            slabs.push(slab);
            from = until;
        }
        slabs
    }

    fn set_cell(
        &mut self,
        cell: &Cell,
        column: &Column,
        [x_pt, width_pt]: [f32; 2],
        named: bool,
        row: NodeId,
    ) -> SetCell {
        let role = if named { Role::RowName } else { Role::Cell };
        let node = self.tags.node(row, role);
        let how = self.setting(self.look.small_pt, named, BARK);
        let nothing = Rich::from(NOTHING);
        let empty = cell.words.is_empty() && !cell.shows_page;
        let words = if empty { &nothing } else { &cell.words };
        let lines = self.setter.set(words, how, Some(width_pt));
        let page_of = cell.shows_page.then(|| cell.leads_to.clone());
        let (leaf, link) = if cell.leads_to.is_empty() {
            (self.tags.leaf(node), None)
        } else {
            let (leaf, link) = link_under(self.tags, node, cell);
            (leaf, Some(link))
        };
        SetCell {
            lines,
            leaf,
            link,
            page_of,
            x_pt,
            width_pt,
            at_end: column.at_end,
            how,
        }
    }
}

/// A link node under `parent` with its area and the piece of content that it covers.
pub(super) fn link_under(tags: &mut Tags, parent: NodeId, cell: &Cell) -> (LeafId, LinkArea) {
    let node = tags.node(parent, Role::Link);
    let area = tags.area(node);
    let leaf = tags.leaf(node);
    let link = LinkArea {
        area,
        place: [0.0; 4],
        key: cell.leads_to.clone(),
        words: cell.words.text.clone(),
    };
    (leaf, link)
}

/// Left edge and width of each column.
fn column_places(columns: &[Column], width_pt: f32) -> Vec<[f32; 2]> {
    let shares: f32 = columns.iter().map(|column| column.share).sum();
    let room_pt = width_pt - GUTTER_PT * (columns.len().saturating_sub(1)) as f32;
    let mut x_pt = 0.0;
    columns
        .iter()
        .map(|column| {
            let own_pt = room_pt * column.share / shares.max(0.001);
            let place = [x_pt, own_pt];
            x_pt += own_pt + GUTTER_PT;
            place
        })
        .collect()
}

/// Draws the lines `from..until` of a cell.
fn draw_cell(slab: &mut Slab, cell: &SetCell, top_pt: f32, from: usize, until: usize) {
    let owner = Owner::Leaf(cell.leaf);
    let mut y_pt = top_pt;
    for line in cell.lines.iter().take(until).skip(from) {
        let lead_pt = if cell.at_end {
            cell.width_pt - line.width_pt
        } else {
            0.0
        };
        slab.draw(owner, words_at(line.clone(), cell.x_pt + lead_pt, y_pt));
        y_pt += line.height_pt;
    }
    if from > 0 {
        return;
    }
    if let Some(key) = &cell.page_of {
        slab.draw(
            owner,
            Shape::PageOf {
                key: key.clone(),
                right_pt: cell.x_pt + cell.width_pt,
                y_pt: top_pt,
                how: cell.how,
            },
        );
    }
    if let Some(link) = &cell.link {
        let mut link = link.clone();
        let height_pt = (y_pt - top_pt).max(slab.height_pt - 2.0 * top_pt);
        link.place = [cell.x_pt, top_pt, cell.width_pt, height_pt.max(8.0)];
        slab.links.push(link);
    }
}
