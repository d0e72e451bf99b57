//! Examples of every kind of drawing, from invented places.

use super::super::*;

pub const PAPER: DrawnFrame = DrawnFrame {
    width_pt: 510.0,
    height_pt: 640.0,
    text_pt: 7.5,
    round_scale: true,
};
pub const PHONE: DrawnFrame = DrawnFrame {
    width_pt: 360.0,
    height_pt: 520.0,
    text_pt: 12.0,
    round_scale: false,
};

pub fn metres() -> BarUnit {
    BarUnit {
        sign: "m".into(),
        unit_m: 1.0,
    }
}

pub fn feet() -> BarUnit {
    BarUnit {
        sign: "ft".into(),
        unit_m: 0.3048,
    }
}

/// The same numbers at every run, without a generator's library.
pub struct Dice(pub u64);

impl Dice {
    pub fn roll(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as f64 / (1u64 << 31) as f64
    }
}

const VERDICTS: [PointSymbol; 6] = [
    PointSymbol::TreeNoStop,
    PointSymbol::TreeLimited,
    PointSymbol::TreeRefer,
    PointSymbol::TreeBarred,
    PointSymbol::TreeIncomplete,
    PointSymbol::TreePlain,
];

pub fn trees(count: usize, wide_m: f64, high_m: f64) -> Vec<PlanTree> {
    let mut dice = Dice(7);
    (0..count)
        .map(|turn| {
            let at = Spot::new(dice.roll() * wide_m, dice.roll() * high_m);
            let radius_m = 2.0 + 4.0 * dice.roll();
            PlanTree {
                id: format!("tree-{turn}"),
                tag: format!("{}", 101 + turn),
                at,
                accuracy_m: (turn % 4 == 0).then_some(3.0 + 4.0 * dice.roll()),
                crown: (turn % 7 != 3).then_some(PlanArea::Circle {
                    centre: at,
                    radius_m,
                }),
                dead: turn % 9 == 5,
                symbol: VERDICTS[turn % 6],
            }
        })
        .collect()
}

fn rectangle(left: f64, bottom: f64, wide: f64, high: f64) -> Vec<Spot> {
    [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)]
        .iter()
        .map(|(x, y)| Spot::new(left + x, bottom + y))
        .collect()
}

pub fn targets(wide: f64, high: f64) -> Vec<PlanTarget> {
    let target = |id: &str, symbol, words: &str| PlanTarget {
        id: id.into(),
        symbol,
        at: None,
        outline: vec![],
        course: vec![],
        words: words.into(),
    };
    vec![
        PlanTarget {
            outline: rectangle(0.4 * wide, 0.45 * high, 14.0, 9.0),
            ..target("house", PointSymbol::TargetDwelling, "House")
        },
        PlanTarget {
            course: vec![Spot::new(-60.0, -6.0), Spot::new(wide + 60.0, -9.0)],
            ..target("road", PointSymbol::TargetRoad, "Mill Lane")
        },
        PlanTarget {
            at: Some(Spot::new(0.2 * wide, 0.7 * high)),
            ..target("swing", PointSymbol::TargetGarden, "Play lawn")
        },
        PlanTarget {
            at: Some(Spot::new(0.8 * wide, 0.3 * high)),
            ..target("cars", PointSymbol::TargetParking, "Parking")
        },
        PlanTarget {
            course: vec![
                Spot::new(0.1 * wide, 0.0),
                Spot::new(0.45 * wide, 0.44 * high),
            ],
            ..target("path", PointSymbol::TargetPath, "Garden path")
        },
    ]
}

pub fn site(count: usize, wide: f64, high: f64, with_zones: bool) -> PlanInput {
    let trees = trees(count, wide, high);
    let zones = trees
        .iter()
        .filter(|_| with_zones)
        .step_by(4)
        .flat_map(|tree| {
            let zone = |role, radius_m| PlanZone {
                about: tree.id.clone(),
                role,
                area: PlanArea::Circle {
                    centre: tree.at,
                    radius_m,
                },
            };
            [
                zone(StyleRole::DropZone, 9.0),
                zone(StyleRole::KeepOutEveryone, 18.0),
            ]
        })
        .collect();
    PlanInput {
        described: "Plan of an invented site".into(),
        property: vec![vec![
            Spot::new(-5.0, -3.0),
            Spot::new(wide + 6.0, -4.0),
            Spot::new(wide + 3.0, high + 5.0),
            Spot::new(0.3 * wide, high + 8.0),
            Spot::new(-4.0, high + 2.0),
        ]],
        trees,
        zones,
        targets: targets(wide, high),
        overhead_lines: vec![PlanLine {
            id: "wire".into(),
            course: vec![
                Spot::new(-50.0, 0.9 * high),
                Spot::new(0.5 * wide, 0.8 * high),
                Spot::new(wide + 50.0, 0.85 * high),
            ],
            approach_m: Some(3.05),
            words: "7.2 kV".into(),
        }],
        distances: vec![],
        merge_zones: true,
        north: "N".into(),
        bar_unit: metres(),
        legend: vec![LegendLine {
            role: StyleRole::Tree,
            symbol: Some(PointSymbol::TreeRefer),
            words: "do not climb yet".into(),
        }],
    }
}

pub fn one_tree_zones() -> ZonesInput {
    let at = Spot::new(0.0, 0.0);
    let all = site(6, 40.0, 30.0, false);
    let circle = |radius_m| PlanArea::Circle {
        centre: at,
        radius_m,
    };
    let zone = |role, radius_m, words: &str| PacedZone {
        role,
        area: circle(radius_m),
        distance_m: radius_m,
        words: words.into(),
    };
    ZonesInput {
        described: "Zones of one tree".into(),
        tree: PlanTree {
            id: "tree-x".into(),
            tag: "114".into(),
            at,
            accuracy_m: Some(4.0),
            crown: Some(circle(5.0)),
            dead: false,
            symbol: PointSymbol::TreeLimited,
        },
        zones: vec![
            zone(StyleRole::DropZone, 8.5, "drop zone 28 ft · 11 paces"),
            zone(StyleRole::KeepOutCrew, 14.6, "crew 48 ft · 19 paces"),
            zone(
                StyleRole::KeepOutEveryone,
                29.2,
                "everyone 96 ft · 38 paces",
            ),
        ],
        neighbours: all.trees,
        targets: all.targets,
        overhead_lines: all.overhead_lines,
        property: vec![],
        north: "N".into(),
        bar_unit: feet(),
        legend: vec![],
    }
}

pub fn stem_section() -> SectionInput {
    let reading = |bearing_deg: f64, wall_cm: f64| WallMark {
        about: format!("r{bearing_deg}"),
        bearing_deg,
        wall_m: wall_cm / 100.0,
        words: format!("{wall_cm} cm"),
    };
    SectionInput {
        described: "Section at 0.6 m".into(),
        about: "section-1".into(),
        radius_m: 0.36,
        bark_m: 0.02,
        readings: vec![
            reading(0.0, 9.0),
            reading(10.0, 8.0),
            reading(90.0, 12.0),
            reading(180.0, 6.0),
            reading(225.0, 5.0),
            reading(300.0, 14.0),
        ],
        decay: vec![],
        openings: vec![WallOpening {
            from_bearing_deg: 195.0,
            to_bearing_deg: 240.0,
            words: "opening 27 cm".into(),
        }],
        weakest: Some(WeakestMark {
            bearing_deg: 38.0,
            words: "weakest towards NE".into(),
        }),
        legend: Vec::new(),
        north: "N".into(),
        bar_unit: BarUnit {
            sign: "cm".into(),
            unit_m: 0.01,
        },
    }
}

pub fn side_view() -> ProfileInput {
    let mark = |kind, height_m: f64, side, number: &str, words: &str| ProfileMark {
        about: format!("{number}{height_m}"),
        kind,
        height_m,
        side,
        reach_m: None,
        number: number.into(),
        words: words.into(),
    };
    let finding = ProfileMarkKind::Finding;
    ProfileInput {
        described: "Side view".into(),
        about: "tree-x".into(),
        height_m: 18.5,
        height_words: "18.5 m".into(),
        lean_deg: 6.0,
        diameter_m: Some(0.62),
        crown_radius_m: Some(5.2),
        crown_base_m: Some(5.5),
        dead: false,
        marks: vec![
            mark(finding, 0.4, -1.0, "1", "bracket at the base"),
            mark(finding, 0.6, 0.3, "2", "cavity"),
            mark(finding, 0.7, 1.0, "3", "dull sound"),
            ProfileMark {
                reach_m: Some(3.6),
                ..mark(
                    finding,
                    12.0,
                    -1.0,
                    "4",
                    "hanger over the path side of the crown",
                )
            },
            mark(finding, 9.0, 0.0, "5", "included bark"),
            mark(ProfileMarkKind::TieIn, 11.5, 0.0, "", "tie-in 11.5 m"),
            mark(
                ProfileMarkKind::SectionHeight,
                0.6,
                0.0,
                "",
                "section 0.6 m",
            ),
        ],
        keep_clear: vec![KeepClearMark {
            about: "wire".into(),
            offset_m: 10.5,
            height_m: Some(9.0),
            approach_m: 3.05,
            words: "stay 3.1 m away".into(),
        }],
        bar_unit: metres(),
    }
}
