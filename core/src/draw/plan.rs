//! The plan of a site: property, crowns, zones, targets, lines and trees with their tags.

use super::drawing::{Drawing, DrawnExtent, PointSymbol, Spot, StyleRole};
use super::easel::Easel;
use super::frame::{DrawnFrame, TextWidth, frame_extent, symbol_extent};
use super::labels::{LabelGround, LabelWish, place_labels};
use super::lines::{pieces, spots_along};
use super::merged::merged_rings;
use super::plan_fit::{cut_frame, scale_around, target_spot, tree_pt, whole_extent};
use super::plan_input::{PlanArea, PlanInput, PlanTree};

/// A drawing and what could not be written on it.
#[derive(Debug, Clone, PartialEq)]
pub struct LaidOut {
    /// The drawing.
    pub drawing: Drawing,
    /// The ids whose words found no place, so that a larger frame or scale is needed for them.
    pub unlabelled: Vec<String>,
    /// How many words stand away from what they name, on a leader.
    pub led: u32,
}

/// The whole site in `frame`, at the largest scale that shows it all.
pub fn plan(input: &PlanInput, frame: &DrawnFrame, width: TextWidth) -> LaidOut {
    let (input, frame) = (input.finite(), frame.held());
    plan_around(&input, &frame, whole_extent(&input), width)
}

/// What lies in and around `whole`, at the largest scale that shows it all.
pub(crate) fn plan_around(
    input: &PlanInput,
    frame: &DrawnFrame,
    whole: DrawnExtent,
    width: TextWidth,
) -> LaidOut {
    let scale = scale_around(whole, frame);
    let frame = cut_frame(frame, scale, whole);
    plan_at(input, &frame, scale, whole.middle(), width)
}

/// A part of the site: `middle` in the middle of the frame, at a scale of one to `scale`.
pub fn plan_part(
    input: &PlanInput,
    frame: &DrawnFrame,
    scale: f64,
    middle: Spot,
    width: TextWidth,
) -> LaidOut {
    let (input, frame) = (input.finite(), frame.held());
    plan_at(
        &input,
        &frame,
        scale.clamp(1.0, 10_000_000.0),
        middle,
        width,
    )
}

pub(crate) fn plan_at(
    input: &PlanInput,
    frame: &DrawnFrame,
    scale: f64,
    middle: Spot,
    width: TextWidth,
) -> LaidOut {
    let mut sheet = Sheet {
        easel: Easel {
            frame: *frame,
            scale,
            extent: frame_extent(frame, scale, middle, Easel::foot_pt(frame)),
            width,
            marks: Vec::new(),
        },
        wishes: Vec::new(),
        ground: LabelGround::default(),
    };
    sheet.areas(input);
    sheet.lines(input);
    sheet.distances(input);
    sheet.easel.foot(&input.bar_unit, &input.north);
    sheet.targets(input);
    sheet.trees(input);
    sheet.finish(input)
}

struct Sheet<'a> {
    easel: Easel<'a>,
    wishes: Vec<LabelWish>,
    ground: LabelGround,
}

impl Sheet<'_> {
    /// Whether something of the rectangle around `spots` is to be seen.
    fn shows(&self, spots: &[Spot]) -> bool {
        let around = DrawnExtent::around(spots.iter().copied());
        around.is_some_and(|extent| self.easel.body().overlaps(extent.grown(0.01)))
    }

    fn area(&mut self, area: &PlanArea, role: StyleRole, about: &str) {
        if !self.shows(&area.reach()) {
            return;
        }
        match area {
            PlanArea::Circle { centre, radius_m } => {
                let centre = Spot::new(centre.x_m, centre.y_m);
                self.easel.circle(centre, *radius_m, role, about);
            }
            PlanArea::Outline { rings } => self.easel.area(rounded(rings), role, about),
        }
    }

    /// Zones below, the wide ones first, then crowns, then the property's edge.
    fn areas(&mut self, input: &PlanInput) {
        let roles = [
            StyleRole::KeepOutEveryone,
            StyleRole::KeepOutCrew,
            StyleRole::DropZone,
        ];
        for role in roles {
            let zones: Vec<_> = input
                .zones
                .iter()
                .filter(|zone| zone.role == role)
                .collect();
            if input.merge_zones && zones.len() > 1 {
                for rings in merged_rings(zones.iter().map(|zone| &zone.area)) {
                    self.area(&PlanArea::Outline { rings }, role, "");
                }
            } else {
                for zone in zones {
                    self.area(&zone.area, role, &zone.about);
                }
            }
        }
        for tree in &input.trees {
            if let Some(crown) = &tree.crown {
                let role = if tree.dead {
                    StyleRole::DeadCrown
                } else {
                    StyleRole::Crown
                };
                self.area(crown, role, &tree.id);
            }
        }
        for ring in &input.property {
            let mut edge = ring.clone();
            edge.extend(ring.first().copied());
            self.course(&edge, StyleRole::PropertyEdge, "");
        }
    }

    /// A line, and the wish that words keep off it.
    fn course(&mut self, course: &[Spot], role: StyleRole, about: &str) {
        if self.shows(course) {
            self.easel.line(rounded_line(course), role, about);
            self.ground.lines.extend(pieces(course, false));
        }
    }

    fn lines(&mut self, input: &PlanInput) {
        for line in &input.overhead_lines {
            if let Some(away_m) = line.approach_m.filter(|away_m| *away_m > 0.0) {
                for strip in super::merged::strip_rings(&line.course, away_m) {
                    self.area(
                        &PlanArea::Outline { rings: strip },
                        StyleRole::ApproachStrip,
                        &line.id,
                    );
                }
            }
            self.course(&line.course, StyleRole::OverheadLine, &line.id);
            for pole in &line.course {
                self.stamp(*pole, PointSymbol::Pole, StyleRole::OverheadLine, &line.id);
            }
            self.wish_along(&line.course, &line.words, StyleRole::OverheadLine, &line.id);
        }
    }

    fn wish_along(&mut self, course: &[Spot], words: &str, role: StyleRole, about: &str) {
        let places = spots_along(course, self.easel.body());
        self.wishes.push(LabelWish {
            about: about.to_owned(),
            words: words.to_owned(),
            places,
            clear_pt: 0.5 * self.easel.frame.text_pt,
            size_pt: self.easel.frame.text_pt,
            role,
            may_lead: false,
            outward_deg: None,
            last: false,
        });
    }

    /// A symbol, where it fits wholly; says whether it did.
    fn stamp(&mut self, at: Spot, symbol: PointSymbol, role: StyleRole, about: &str) -> bool {
        let size_pt = match role {
            StyleRole::OverheadLine => 0.7 * self.easel.frame.text_pt,
            _ => tree_pt(&self.easel.frame),
        };
        let taken = symbol_extent(at, size_pt, self.easel.m_per_pt());
        let body = self.easel.body();
        if body.with(taken) != body {
            return false;
        }
        let at = Spot::new(at.x_m, at.y_m);
        self.easel.symbol(at, symbol, size_pt, 0.0, role, about);
        self.ground.taken.push(taken);
        true
    }

    fn targets(&mut self, input: &PlanInput) {
        for target in &input.targets {
            let outline = PlanArea::Outline {
                rings: vec![target.outline.clone()],
            };
            self.area(&outline, StyleRole::Target, &target.id);
            self.course(&target.course, StyleRole::Target, &target.id);
            let along = spots_along(&target.course, self.easel.body());
            let Some(at) = target_spot(target).or(along.first().copied()) else {
                continue;
            };
            if self.stamp(at, target.symbol, StyleRole::Target, &target.id) {
                self.wish_beside(at, &target.words, StyleRole::Target, &target.id);
            }
        }
    }

    fn wish_beside(&mut self, at: Spot, words: &str, role: StyleRole, about: &str) {
        self.wishes.push(LabelWish {
            about: about.to_owned(),
            words: words.to_owned(),
            places: vec![at],
            clear_pt: 0.72 * tree_pt(&self.easel.frame),
            size_pt: self.easel.frame.text_pt,
            role,
            may_lead: true,
            outward_deg: None,
            last: false,
        });
    }

    fn trees(&mut self, input: &PlanInput) {
        let rings = |tree: &PlanTree| tree.accuracy_m.filter(|radius_m| *radius_m > 0.0);
        for tree in &input.trees {
            if let Some(radius_m) = rings(tree) {
                let ring = PlanArea::Circle {
                    centre: tree.at,
                    radius_m,
                };
                self.area(&ring, StyleRole::AccuracyRing, &tree.id);
            }
        }
        for tree in &input.trees {
            if self.stamp(tree.at, tree.symbol, StyleRole::Tree, &tree.id) {
                self.wish_beside(tree.at, &tree.tag, StyleRole::Label, &tree.id);
            }
        }
    }

    fn distances(&mut self, input: &PlanInput) {
        for distance in &input.distances {
            let end = distance
                .from
                .towards(distance.bearing_deg, distance.distance_m);
            let course = [distance.from, end];
            self.course(&course, StyleRole::Dimension, &distance.about);
            let places = spots_along(&course, self.easel.body());
            self.wishes.push(LabelWish {
                about: distance.about.clone(),
                words: distance.words.clone(),
                // The outer part of the line, where lines from one stem stand apart.
                places: [4, 6, 2, 0, 1]
                    .iter()
                    .filter_map(|at| places.get(*at).copied())
                    .collect(),
                clear_pt: 0.5 * self.easel.frame.text_pt,
                size_pt: self.easel.frame.text_pt,
                role: StyleRole::Dimension,
                may_lead: true,
                outward_deg: None,
                last: false,
            });
        }
    }

    fn finish(mut self, input: &PlanInput) -> LaidOut {
        self.ground.bounds = Some(self.easel.body());
        let placed = place_labels(
            &self.wishes,
            &self.ground,
            self.easel.m_per_pt(),
            self.easel.width,
        );
        self.easel.marks.extend(placed.marks);
        LaidOut {
            drawing: self.easel.finish(&input.described, input.legend.clone()),
            unlabelled: placed.left_out,
            led: placed.led as u32,
        }
    }
}

fn rounded_line(spots: &[Spot]) -> Vec<Spot> {
    spots
        .iter()
        .map(|spot| Spot::new(spot.x_m, spot.y_m))
        .collect()
}

fn rounded(rings: &[Vec<Spot>]) -> Vec<Vec<Spot>> {
    rings.iter().map(|ring| rounded_line(ring)).collect()
}
