//! A paper with one of everything, made twice.

use std::sync::Arc;

use super::*;
use crate::draw::{
    Drawing, DrawnExtent, DrawnMark, DrawnText, LegendLine, PointSymbol, Spot, StyleRole, TextHold,
    shapes_used,
};

fn photo() -> Vec<u8> {
    let picture =
        image::RgbImage::from_fn(320, 240, |x, y| image::Rgb([(x / 2) as u8, y as u8, 90]));
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 75)
        .encode_image(&picture)
        .unwrap();
    bytes
}

fn drawing() -> Drawing {
    let marks = vec![
        DrawnMark::Polygon {
            rings: vec![vec![
                Spot::new(0.0, 0.0),
                Spot::new(60.0, 0.0),
                Spot::new(60.0, 40.0),
                Spot::new(0.0, 40.0),
            ]],
            role: StyleRole::PropertyEdge,
            about: String::new(),
        },
        DrawnMark::Circle {
            centre: Spot::new(20.0, 20.0),
            radius_m: 12.0,
            role: StyleRole::KeepOutEveryone,
            about: String::new(),
        },
        DrawnMark::Circle {
            centre: Spot::new(20.0, 20.0),
            radius_m: 5.0,
            role: StyleRole::Crown,
            about: String::new(),
        },
        DrawnMark::Symbol {
            at: Spot::new(20.0, 20.0),
            symbol: PointSymbol::TreePlain,
            size_pt: 8.0,
            turn_deg: 0.0,
            role: StyleRole::Tree,
            about: "t1".into(),
        },
        DrawnMark::Written {
            text: DrawnText {
                words: "T-01".into(),
                at: Spot::new(21.5, 21.0),
                size_pt: 8.0,
                hold: TextHold::Start,
                halo: true,
            },
            role: StyleRole::Label,
            about: "t1".into(),
        },
    ];
    let legend = vec![
        LegendLine {
            role: StyleRole::Crown,
            symbol: None,
            words: "Crown".into(),
        },
        LegendLine {
            role: StyleRole::Tree,
            symbol: Some(PointSymbol::TreePlain),
            words: "Tree".into(),
        },
    ];
    Drawing {
        described: "Plan with one tree".into(),
        extent: DrawnExtent {
            left_m: -2.0,
            bottom_m: -2.0,
            right_m: 62.0,
            top_m: 42.0,
        },
        scale: 500.0,
        symbols: shapes_used(&marks, &legend),
        marks,
        legend,
    }
}

fn blocks() -> Vec<Block> {
    let keyed = |level, words: &str, key: &str| Block::Heading {
        level,
        words: words.into(),
        key: key.into(),
    };
    let rows = (1..60)
        .map(|n| {
            vec![
                Cell::leading_to(format!("T-{n:02}"), "trees"),
                Cell::of("Quercus rubra – red oak 木"),
                Cell::of(format!("{n}.4 m")),
                Cell::default(),
                Cell::page_of("trees"),
            ]
        })
        .collect();
    vec![
        Block::Paragraph {
            words: "Larch Hollow".into(),
            voice: Voice::Title,
        },
        keyed(1, "What this paper says", "first"),
        Block::Paragraph {
            words: "Twelve trees were looked at from the ground.".into(),
            voice: Voice::Lead,
        },
        Block::Contents,
        Block::text(
            Rich::new()
                .plain("Plain, then ")
                .bold("loud")
                .plain(" words ≤ 7 ½ → ✓."),
        ),
        Block::points([
            "One point",
            "Another point that is long enough to be broken over more than one line of the page, as points often are in a report",
        ]),
        Block::Points {
            points: vec!["Stand back".into(), "Call".into()],
            numbered: true,
        },
        Block::Facts {
            facts: vec![
                ("Client".into(), "M. Example".into()),
                ("Date".into(), "5 May 2026".into()),
                ("Weather".into(), Rich::new()),
            ],
            in_two: true,
        },
        Block::Callout(Callout {
            kind: CalloutKind::Stop,
            word: "Stop".into(),
            lines: vec!["Nobody touches the fence.".into()],
        }),
        Block::Callout(Callout {
            kind: CalloutKind::Caution,
            word: "Caution".into(),
            lines: vec![
                "No tree is without risk.".into(),
                "Storms change trees.".into(),
            ],
        }),
        Block::Verdict {
            symbol: PointSymbol::TreeBarred,
            words: "Do not climb".into(),
        },
        Block::NewPage,
        keyed(1, "Plan", "plan"),
        Block::Drawn(Figure {
            drawing: Arc::new(drawing()),
            height_pt: 400.0,
            caption: "The property, north up.".into(),
            legend_columns: 2,
            framed: true,
        }),
        Block::Photos(vec![
            Photo::from_jpeg(photo(), "A cavity", "Cavity at 1.2 m".into()).unwrap(),
            Photo::from_jpeg(photo(), "A crack", "Crack".into()).unwrap(),
        ]),
        keyed(1, "Trees", "trees"),
        keyed(2, "Schedule", "schedule"),
        Block::Table(Table {
            summary: "All trees".into(),
            columns: vec![
                Column::of("Tag", 1.0),
                Column::of("Species", 3.0),
                Column::at_end("Height", 1.2),
                Column::of("Work", 2.0),
                Column::at_end("Page", 0.8),
            ],
            rows,
            rows_named: true,
        }),
        Block::Beside {
            left: vec![Block::heading(3, "Left"), Block::text("Words on the left.")],
            right: vec![Block::text("Words on the right.")],
            left_share: 0.6,
        },
    ]
}

fn paper(sheet: Sheet) -> Vec<u8> {
    let paper = Paper {
        facts: PaperFacts {
            title: "Larch Hollow".into(),
            subject: "One of everything".into(),
            author: "A. Person".into(),
            language: "en-US".into(),
            made: Moment {
                utc_ms: 1_767_225_600_000,
                offset_min: 0,
            },
            id: "everything".into(),
            sheet,
            look: Look::summary(),
        },
        head: ["Larch Hollow".into(), "Site summary".into()],
        foot: "Not a guarantee".into(),
        page_words: &|n, m| format!("page {n} of {m}"),
        blocks: blocks(),
    };
    paper.print(&|_, _| true).unwrap()
}

#[test]
fn the_same_paper_gives_the_same_bytes_on_both_sheets() {
    for sheet in [Sheet::A4, Sheet::UsLetter] {
        let bytes = paper(sheet);
        assert!(bytes.starts_with(b"%PDF-1.7"));
        assert!(bytes == paper(sheet));
        // For a look by eye and by outside tools.
        if let Some(folder) = std::env::var_os("BOLEWALK_PAPERS") {
            let name = format!("everything-{sheet:?}.pdf");
            std::fs::write(std::path::Path::new(&folder).join(name), &bytes).unwrap();
        }
    }
}

#[test]
fn words_without_end_lose_nothing() {
    let endless = "All of this was typed into one field. ".repeat(400);
    let mut blocks = vec![Block::heading(1, "T")];
    blocks.push(Block::Facts {
        facts: vec![("Note".into(), endless.as_str().into())],
        in_two: true,
    });
    blocks.push(Block::Beside {
        left: vec![Block::text(endless.as_str())],
        right: vec![Block::points([endless.as_str()])],
        left_share: 0.4,
    });
    blocks.push(Block::Photos(vec![
        Photo::from_jpeg(photo(), "A photo", endless.as_str().into()).unwrap(),
    ]));
    blocks.push(Block::Table(Table {
        columns: vec![Column::of("a", 1.0), Column::of("b", 3.0)],
        rows: vec![vec![Cell::of("x"), Cell::of(endless.as_str())]],
        ..Table::default()
    }));
    blocks.push(Block::Callout(Callout {
        kind: CalloutKind::Stop,
        word: "Stop".into(),
        lines: vec![endless.as_str().into()],
    }));
    let paper = Paper {
        facts: facts_for(Look::summary()),
        head: Default::default(),
        foot: String::new(),
        page_words: &|n, _| n.to_string(),
        blocks,
    };
    let bytes = paper.print(&|_, _| true).unwrap();
    if let Some(folder) = std::env::var_os("BOLEWALK_PAPERS") {
        std::fs::write(std::path::Path::new(&folder).join("endless.pdf"), &bytes).unwrap();
    }
    let mut setter = Typesetter::new().unwrap();
    let pages = paper
        .lay_out(&mut setter, &mut Tags::new(), &|_, _| true)
        .unwrap();
    let (frame, _) = frame_of(&paper.facts);
    for item in pages.iter().flat_map(|page| &page.items) {
        let [top_pt, bottom_pt] = item.shape.reach();
        assert!(top_pt > frame.top_pt - 1.0, "{top_pt}");
        assert!(
            bottom_pt < frame.top_pt + frame.height_pt + 3.0,
            "{bottom_pt}"
        );
    }
}

fn facts_for(look: Look) -> PaperFacts {
    PaperFacts {
        title: "T".into(),
        subject: String::new(),
        author: String::new(),
        language: "en".into(),
        made: Moment {
            utc_ms: 0,
            offset_min: 0,
        },
        id: "t".into(),
        sheet: Sheet::A4,
        look,
    }
}

#[test]
fn a_paper_stops_when_told_and_a_link_that_leads_nowhere_is_refused() {
    let mut paper = Paper {
        facts: facts_for(Look::climb_sheet()),
        head: Default::default(),
        foot: String::new(),
        page_words: &|n, _| n.to_string(),
        blocks: vec![Block::heading(1, "T")],
    };
    assert_eq!(paper.print(&|_, _| false), Err(BookError::Stopped));
    assert!(paper.print(&|_, _| true).is_ok());
    paper.blocks.push(Block::Table(Table {
        columns: vec![Column::of("a", 1.0)],
        rows: vec![vec![Cell::page_of("nowhere")]],
        ..Table::default()
    }));
    assert!(matches!(
        paper.print(&|_, _| true),
        Err(BookError::Defect { .. })
    ));
}
