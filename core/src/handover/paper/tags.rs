//! The tree of tags that tells a reader by ear what each piece of a page is.

use std::num::NonZeroU16;

use krilla::tagging::{
    Identifier, ListNumbering, Node, TableHeaderScope, Tag, TagGroup, TagKind, TagTree,
};

use crate::error::BookError;

/// What a piece is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Role {
    Document,
    Heading { level: u8, words: String },
    Paragraph,
    Points { numbered: bool },
    Point,
    PointMark,
    PointBody,
    Table { summary: String },
    TableHead,
    TableBody,
    Row,
    ColumnName,
    RowName,
    Cell,
    Figure { described: String },
    Caption,
    Boxed,
    Contents,
    ContentsEntry,
    Reference,
    Link,
}

/// A node of the tree.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct NodeId(usize);
/// A piece of content; it may lie on several pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct LeafId(usize);
/// The area of a link on a page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct AreaId(usize);

#[derive(Debug, Clone, Copy)]
enum Child {
    Node(NodeId),
    Leaf(LeafId),
    Area(AreaId),
}

/// The tree, in reading order, and the places on the pages where its leaves were drawn.
#[derive(Debug)]
pub(super) struct Tags {
    nodes: Vec<(Role, Vec<Child>)>,
    drawn: Vec<Vec<Identifier>>,
    areas: Vec<Option<Identifier>>,
}

impl Tags {
    /// The root of every tree.
    pub const ROOT: NodeId = NodeId(0);

    pub fn new() -> Self {
        Tags {
            nodes: vec![(Role::Document, Vec::new())],
            drawn: Vec::new(),
            areas: Vec::new(),
        }
    }

    /// A new last child of `parent`.
    pub fn node(&mut self, parent: NodeId, role: Role) -> NodeId {
        let id = NodeId(self.nodes.len());
        self.nodes.push((role, Vec::new()));
        self.append(parent, Child::Node(id));
        id
    }

    /// A new piece of content as last child of `parent`.
    pub fn leaf(&mut self, parent: NodeId) -> LeafId {
        let id = LeafId(self.drawn.len());
        self.drawn.push(Vec::new());
        self.append(parent, Child::Leaf(id));
        id
    }

    /// A new link area as last child of `parent`.
    pub fn area(&mut self, parent: NodeId) -> AreaId {
        let id = AreaId(self.areas.len());
        self.areas.push(None);
        self.append(parent, Child::Area(id));
        id
    }

    fn append(&mut self, parent: NodeId, child: Child) {
        if let Some((_, children)) = self.nodes.get_mut(parent.0) {
            children.push(child);
        }
    }

    /// Notes that a part of `leaf` was drawn.
    pub fn drawn(&mut self, leaf: LeafId, identifier: Identifier) {
        if let Some(places) = self.drawn.get_mut(leaf.0) {
            places.push(identifier);
        }
    }

    /// Notes that the link area was laid on its page.
    pub fn laid(&mut self, area: AreaId, identifier: Identifier) {
        if let Some(place) = self.areas.get_mut(area.0) {
            *place = Some(identifier);
        }
    }

    /// The tree as the PDF wants it.
    pub fn into_tree(self, language: &str) -> Result<TagTree, BookError> {
        let mut tree = TagTree::new().with_lang(Some(language.to_owned()));
        for child in self.children_of(Self::ROOT) {
            for node in self.grow(child)? {
                tree.push(node);
            }
        }
        Ok(tree)
    }

    fn children_of(&self, node: NodeId) -> Vec<Child> {
        self.nodes
            .get(node.0)
            .map(|(_, children)| children.clone())
            .unwrap_or_default()
    }

    fn grow(&self, child: Child) -> Result<Vec<Node>, BookError> {
        Ok(match child {
            Child::Leaf(leaf) => self
                .drawn
                .get(leaf.0)
                .into_iter()
                .flatten()
                .map(|id| Node::Leaf(*id))
                .collect(),
            Child::Area(area) => self
                .areas
                .get(area.0)
                .copied()
                .flatten()
                .map(Node::Leaf)
                .into_iter()
                .collect(),
            Child::Node(node) => {
                let Some((role, children)) = self.nodes.get(node.0) else {
                    return Ok(Vec::new());
                };
                let mut group = TagGroup::new(tag_of(role)?);
                for child in children {
                    for grown in self.grow(*child)? {
                        group.push(grown);
                    }
                }
                vec![Node::Group(group)]
            }
        })
    }
}

/// The standard structure type for `role` (ISO 32000-1, 14.8.4).
fn tag_of(role: &Role) -> Result<TagKind, BookError> {
    Ok(match role {
        Role::Document => Tag::Part.into(),
        Role::Heading { level, words } => {
            let level = NonZeroU16::new(u16::from(*level)).ok_or_else(|| BookError::Defect {
                detail: "a heading has no level 0".into(),
            })?;
            Tag::Hn(level, Some(words.clone())).into()
        }
        Role::Paragraph => Tag::P.into(),
        Role::Points { numbered: true } => Tag::L(ListNumbering::Decimal).into(),
        Role::Points { numbered: false } => Tag::L(ListNumbering::Disc).into(),
        Role::Point => Tag::LI.into(),
        Role::PointMark => Tag::Lbl.into(),
        Role::PointBody => Tag::LBody.into(),
        Role::Table { summary } => Tag::Table.with_summary(Some(summary.clone())).into(),
        Role::TableHead => Tag::THead.into(),
        Role::TableBody => Tag::TBody.into(),
        Role::Row => Tag::TR.into(),
        Role::ColumnName => Tag::TH(TableHeaderScope::Column).into(),
        Role::RowName => Tag::TH(TableHeaderScope::Row).into(),
        Role::Cell => Tag::TD.into(),
        Role::Figure { described } => Tag::Figure(Some(described.clone())).into(),
        Role::Caption => Tag::Caption.into(),
        Role::Boxed => Tag::Div.into(),
        Role::Contents => Tag::TOC.into(),
        Role::ContentsEntry => Tag::TOCI.into(),
        Role::Reference => Tag::Reference.into(),
        Role::Link => Tag::Link.into(),
    })
}
