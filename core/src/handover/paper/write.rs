//! Pages → the bytes of a tagged PDF that is PDF/UA-1 and PDF/A-2a at once.

use chrono::{Datelike, Timelike};
use krilla::annotation::{Annotation, LinkAnnotation, Target};
use krilla::configure::{Accessibility, Archival, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{Point, Rect};
use krilla::metadata::{DateTime, Metadata, TextDirection};
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, SpanTag};
use krilla::{Document, SerializeSettings};

use super::PaperFacts;
use super::flow::Page;
use super::paint::Painter;
use super::slab::{Item, Owner, Shape};
use super::tags::Tags;
use super::typesetter::Typesetter;
use crate::error::BookError;

/// Where a heading stands.
#[derive(Debug, Clone)]
pub(super) struct Standing {
    pub level: u8,
    pub words: String,
    pub key: String,
    /// From 0.
    pub page: usize,
    pub at: [f32; 2],
}

/// Writes `pages`. The same pages and facts give the same bytes.
pub(super) fn written(
    facts: &PaperFacts,
    pages: Vec<Page>,
    standings: &[Standing],
    mut tags: Tags,
    setter: &mut Typesetter,
    how_far: &mut dyn FnMut(usize, usize) -> bool,
) -> Result<Vec<u8>, BookError> {
    let all_lead_somewhere = pages
        .iter()
        .flat_map(|page| page.links.iter())
        .all(|link| standings.iter().any(|at| at.key == link.key));
    if !all_lead_somewhere {
        return Err(defect("a link leads nowhere"));
    }
    let mut document = Document::new_with(settings()?);
    let (width_pt, height_pt) = facts.sheet.size_pt();
    let count = pages.len();
    for (number, page) in pages.into_iter().enumerate() {
        if !how_far(number, count) {
            return Err(BookError::Stopped);
        }
        let size =
            PageSettings::from_wh(width_pt, height_pt).ok_or_else(|| defect("sheet size"))?;
        let mut sheet = document.start_page_with(size);
        let mut surface = sheet.surface();
        let mut painter = Painter {
            surface: &mut surface,
            setter,
            standings,
        };
        for run in runs_of_one_owner(&page.items) {
            let Some(first) = run.first() else { continue };
            let place = painter.surface.start_tagged(content_tag(first));
            for item in run {
                painter.draw(&item.shape);
            }
            painter.surface.end_tagged();
            if let Owner::Leaf(leaf) = first.owner {
                tags.drawn(leaf, place);
            }
        }
        surface.finish();
        for link in &page.links {
            let target = standings.iter().find(|at| at.key == link.key);
            let [x, y, width, height] = link.place;
            let (Some(target), Some(place)) = (target, Rect::from_xywh(x, y, width, height)) else {
                continue;
            };
            let target = Target::Destination(destination(target).into());
            let words = if link.words.is_empty() {
                link.key.clone()
            } else {
                link.words.clone()
            };
            let annotation = Annotation::new_link(LinkAnnotation::new(place, target), Some(words));
            tags.laid(link.area, sheet.add_tagged_annotation(annotation));
        }
        sheet.finish();
    }
    let bookmarks: Vec<Standing> = standings
        .iter()
        .filter(|at| at.level <= 2)
        .cloned()
        .collect();
    document.set_outline(outline_of(&bookmarks));
    document.set_metadata(metadata_of(facts));
    document.set_tag_tree(tags.into_tree(&facts.language)?);
    document
        .finish()
        .map_err(|cause| defect(&format!("the paper cannot be written: {cause:?}")))
}

fn defect(what: &str) -> BookError {
    BookError::Defect {
        detail: what.to_owned(),
    }
}

fn settings() -> Result<SerializeSettings, BookError> {
    let configuration = ConfigurationBuilder::new()
        .with_archival_validator(Archival::A2_A)
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|_| defect("PDF/A-2a and PDF/UA-1 exclude each other"))?;
    Ok(SerializeSettings {
        configuration,
        ..SerializeSettings::default()
    })
}

/// Neighbouring items of one owner, so that each piece of content is marked once a page.
fn runs_of_one_owner(items: &[Item]) -> impl Iterator<Item = &[Item]> {
    items.chunk_by(|one, next| one.owner == next.owner)
}

fn content_tag(item: &Item) -> ContentTag<'static> {
    match item.owner {
        Owner::Leaf(_) => match item.shape {
            Shape::Words { .. } | Shape::PageOf { .. } => ContentTag::Span(SpanTag::empty()),
            _ => ContentTag::Other,
        },
        Owner::Ornament => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout)),
        Owner::PageHead => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Header)),
        Owner::PageFoot => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Footer)),
    }
}

fn destination(standing: &Standing) -> XyzDestination {
    let [x, y] = standing.at;
    XyzDestination::new(standing.page, Point::from_xy(x, (y - 12.0).max(0.0)))
}

/// Bookmarks, nested as the headings are.
fn outline_of(standings: &[Standing]) -> Outline {
    let mut outline = Outline::new();
    let mut rest = standings;
    while let Some((first, after)) = rest.split_first() {
        let below = after
            .iter()
            .position(|at| at.level <= first.level)
            .unwrap_or(after.len());
        let (children, others) = after.split_at(below);
        outline.push_child(bookmark(first, children));
        rest = others;
    }
    outline
}

fn bookmark(standing: &Standing, mut below: &[Standing]) -> OutlineNode {
    let node = OutlineNode::new(standing.words.clone(), destination(standing));
    let mut node = node.with_open(standing.level < 2);
    while let Some((first, after)) = below.split_first() {
        let deeper = after
            .iter()
            .position(|at| at.level <= first.level)
            .unwrap_or(after.len());
        let (children, others) = after.split_at(deeper);
        node.push_child(bookmark(first, children));
        below = others;
    }
    node
}

fn metadata_of(facts: &PaperFacts) -> Metadata {
    let mut metadata = Metadata::new()
        .title(facts.title.clone())
        .language(facts.language.clone())
        .creator("Bolewalk".to_owned())
        .producer("Bolewalk".to_owned())
        .document_id(facts.id.clone())
        .text_direction(TextDirection::LeftToRight);
    if !facts.author.is_empty() {
        metadata = metadata.authors(vec![facts.author.clone()]);
    }
    if !facts.subject.is_empty() {
        metadata = metadata.description(facts.subject.clone());
    }
    let made = chrono::DateTime::from_timestamp_millis(facts.made.utc_ms).unwrap_or_default();
    // PDF/A wants a date on every file; all of it in UTC, so that no machine reads it otherwise.
    metadata.creation_date(
        DateTime::new(made.year().clamp(0, 9999) as u16)
            .month(made.month() as u8)
            .day(made.day() as u8)
            .hour(made.hour() as u8)
            .minute(made.minute() as u8)
            .second(made.second() as u8)
            .utc_offset_hour(0),
    )
}
