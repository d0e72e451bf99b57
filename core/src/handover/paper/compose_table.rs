//! Tables, facts and the list of chapters.

use std::rc::Rc;

use super::block::{Cell, Column, Table};
use super::compose::{Composer, slab_of, words_at};
use super::look::{BARK, HAIR, LICHEN};
use super::rich::Rich;
use super::slab::{LineStyle, LinkArea, Owner, Shape, Slab};
use super::tags::{LeafId, NodeId, Role, Tags};
use super::typesetter::SetLine;

/// Room between columns.
const GUTTER_PT: f32 = 9.0;
/// Room above and below the words of a row.
const PAD_PT: f32 = 3.2;
/// What stands in a cell without words: a table is read cell by cell, so none may be missing.
const NOTHING: &str = "–";

/// A cell set in lines.
struct SetCell {
    lines: Vec<SetLine>,
    leaf: LeafId,
    link: Option<LinkArea>,
    page_of: Option<String>,
    x_pt: f32,
    width_pt: f32,
    at_end: bool,
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
                }
            })
            .collect();
        let tallest = cells.iter().map(|c| c.lines.len()).max().unwrap_or(0);
        let height_pt = tallest as f32 * how.size_pt * how.leading;
        let mut slab = Slab {
            height_pt: height_pt + 2.0 * PAD_PT,
            ..Slab::default()
        };
        for cell in &cells {
            // Heads stand on the rule, so that short ones line up with the rows.
            let own_pt: f32 = cell.lines.iter().map(|line| line.height_pt).sum();
            draw_cell(&mut slab, cell, PAD_PT + height_pt - own_pt, 0, tallest);
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
            let above_pt = if first { PAD_PT } else { 0.0 };
            let below_pt = if last { PAD_PT } else { 0.0 };
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
        }
    }

    pub(super) fn facts(
        &mut self,
        facts: &[(String, Rich)],
        in_two: bool,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        if facts.is_empty() {
            return Vec::new();
        }
        let table = self.tags.node(
            parent,
            Role::Table {
                summary: String::new(),
            },
        );
        let abreast = if in_two { 2 } else { 1 };
        let gutter_pt = 20.0;
        let each_pt = (width_pt - gutter_pt * (abreast as f32 - 1.0)) / abreast as f32;
        let name_pt = (each_pt * 0.40).min(self.look.small_pt * 17.0);
        let mut slabs = Vec::new();
        for line in facts.chunks(abreast) {
            let mut slab = Slab {
                before_pt: if slabs.is_empty() {
                    self.look.gap_pt
                } else {
                    0.0
                },
                ..Slab::default()
            };
            for (number, (name, value)) in line.iter().enumerate() {
                let x_pt = number as f32 * (each_pt + gutter_pt);
                let fact = self.fact(name, value, name_pt, each_pt, table);
                slab.height_pt = slab.height_pt.max(fact.height_pt);
                slab.take(fact, x_pt, 0.0);
            }
            let y_pt = slab.height_pt;
            for number in 0..line.len() {
                let x_pt = number as f32 * (each_pt + gutter_pt);
                slab.draw(Owner::Ornament, Shape::rule(x_pt, y_pt, each_pt, HAIR, 0.6));
            }
            slabs.push(slab);
        }
        slabs
    }

    fn fact(
        &mut self,
        name: &str,
        value: &Rich,
        name_pt: f32,
        width_pt: f32,
        table: NodeId,
    ) -> Slab {
        let row = self.tags.node(table, Role::Row);
        let mut how = self.small(false);
        // The same line height for both, so that name and value stand on one line.
        how.leading = self.look.body_pt * self.look.leading / how.size_pt;
        let names = self.lines(&name.into(), how, name_pt - 6.0, row, Role::RowName);
        let how = self.body();
        let nothing = Rich::from(NOTHING);
        let value = if value.is_empty() { &nothing } else { value };
        let values = self.lines(value, how, width_pt - name_pt, row, Role::Cell);
        let mut slab = Slab::default();
        for (lines, x_pt) in [(names, 0.0), (values, name_pt)] {
            let mut y_pt = PAD_PT * 0.8;
            for line in lines {
                let height_pt = line.height_pt;
                slab.take(line, x_pt, y_pt);
                y_pt += height_pt;
            }
            slab.height_pt = slab.height_pt.max(y_pt + PAD_PT * 0.8);
        }
        slab
    }

    pub(super) fn contents(&mut self, width_pt: f32, parent: NodeId) -> Vec<Slab> {
        let contents = self.tags.node(parent, Role::Contents);
        let chapters = self.chapters.clone();
        let mut slabs = Vec::new();
        for (level, words, key) in chapters {
            if level != 1 || key.is_empty() {
                continue;
            }
            let entry = self.tags.node(contents, Role::ContentsEntry);
            let reference = self.tags.node(entry, Role::Reference);
            let cell = Cell::leading_to(words.as_str(), &key);
            let (leaf, mut link) = link_under(self.tags, reference, &cell);
            let how = self.body();
            let lines = self
                .setter
                .set(&words.as_str().into(), how, Some(width_pt - 40.0));
            let Some(line) = lines.into_iter().next() else {
                continue;
            };
            let words_pt = line.width_pt;
            let mut slab = slab_of(line, Owner::Leaf(leaf));
            let dots_pt = width_pt - 26.0 - words_pt - 8.0;
            if dots_pt > 12.0 {
                slab.draw(
                    Owner::Ornament,
                    dotted(words_pt + 8.0, slab.height_pt * 0.72, dots_pt),
                );
            }
            slab.draw(
                Owner::Leaf(leaf),
                Shape::PageOf {
                    key,
                    right_pt: width_pt,
                    y_pt: 0.0,
                    how,
                },
            );
            slab.before_pt = if slabs.is_empty() {
                self.look.gap_pt
            } else {
                2.0
            };
            link.place = [0.0, 0.0, width_pt, slab.height_pt];
            slab.links.push(link);
            slabs.push(slab);
        }
        slabs
    }
}

/// A link node under `parent` with its area and the piece of content that it covers.
fn link_under(tags: &mut Tags, parent: NodeId, cell: &Cell) -> (LeafId, LinkArea) {
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
        let how = super::typesetter::Setting {
            size_pt: (slab.height_pt - 2.0 * PAD_PT).min(8.5),
            bold: false,
            ink: BARK,
            leading: 1.42,
        };
        slab.draw(
            owner,
            Shape::PageOf {
                key: key.clone(),
                right_pt: cell.x_pt + cell.width_pt,
                y_pt: top_pt,
                how,
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

fn dotted(x_pt: f32, y_pt: f32, width_pt: f32) -> Shape {
    Shape::Path {
        rings: vec![vec![[x_pt, y_pt], [x_pt + width_pt, y_pt]]],
        closed: false,
        fill: None,
        line: Some(LineStyle {
            ink: LICHEN,
            width_pt: 0.6,
            dash_pt: [0.8, 3.0],
        }),
    }
}
