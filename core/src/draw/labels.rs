//! Labels that do not collide: each beside its point where there is room, else further away on a
//! leader, else left out and named.

use super::drawing::{DrawnExtent, DrawnMark, Spot, StyleRole};
use super::frame::TextWidth;
use super::label_table::{Candidate, Table};

/// A label that wants a place.
#[derive(Debug, Clone)]
pub(crate) struct LabelWish {
    pub about: String,
    pub words: String,
    /// Where it may stand, the best first: a tree has one place, a line several along its course.
    pub places: Vec<Spot>,
    /// How far in points from the place the text begins.
    pub clear_pt: f64,
    pub size_pt: f64,
    pub role: StyleRole,
    /// Whether it may stand further away, on a leader.
    pub may_lead: bool,
    /// The bearing it must keep to, within 80°, as around a stem section; any without one.
    pub outward_deg: Option<f64>,
    /// Whether it waits until the others have their places.
    pub last: bool,
}

/// What labels must fit into and keep off.
#[derive(Debug, Clone, Default)]
pub(crate) struct LabelGround {
    /// Nothing stands outside.
    pub bounds: Option<DrawnExtent>,
    /// Rectangles that stay free, such as those of symbols.
    pub taken: Vec<DrawnExtent>,
    /// Discs that stay free.
    pub discs: Vec<(Spot, f64)>,
    /// Lines better not crossed.
    pub lines: Vec<(Spot, Spot)>,
}

/// The labels placed.
#[derive(Debug, Default)]
pub(crate) struct PlacedLabels {
    /// Leaders, then texts.
    pub marks: Vec<DrawnMark>,
    /// How many labels stand on a leader.
    pub led: usize,
    /// The ids of the labels that found no place, in the order of the wishes.
    pub left_out: Vec<String>,
}

/// Places `wishes`, the most crowded first, each at its cheapest free place.
pub(crate) fn place_labels(
    wishes: &[LabelWish],
    ground: &LabelGround,
    m_per_pt: f64,
    width: TextWidth,
) -> PlacedLabels {
    let mut table = Table {
        ground,
        m_per_pt,
        width,
        boxes: Vec::new(),
        leaders: Vec::new(),
    };
    let mut found: Vec<(usize, Candidate)> = Vec::new();
    let mut left_out: Vec<usize> = Vec::new();
    for (turn, wish) in in_order(wishes, m_per_pt) {
        match table.best(wish) {
            Some(best) => {
                table.boxes.push(best.taken.grown(0.75 * m_per_pt));
                table.leaders.extend(best.leader);
                found.push((turn, best));
            }
            None => left_out.push(turn),
        }
    }
    found.sort_by_key(|(turn, _)| *turn);
    left_out.sort_unstable();
    PlacedLabels {
        led: table.leaders.len(),
        marks: marks_of(wishes, &found),
        left_out: left_out
            .into_iter()
            .filter_map(|turn| wishes.get(turn).map(|wish| wish.about.clone()))
            .collect(),
    }
}

/// The wishes with their turns, those with the most neighbours first; labels without a leader go
/// before, having fewer places to go to.
fn in_order(wishes: &[LabelWish], m_per_pt: f64) -> Vec<(usize, &LabelWish)> {
    let mut order: Vec<(usize, usize, &LabelWish)> = wishes
        .iter()
        .enumerate()
        .filter(|(_, wish)| !wish.words.is_empty() && !wish.places.is_empty())
        .map(|(turn, wish)| {
            let near_m = 5.0 * wish.size_pt * m_per_pt;
            let neighbours = wishes
                .iter()
                .filter(|other| match (wish.places.first(), other.places.first()) {
                    (Some(own), Some(theirs)) => own.distance_m(*theirs) < near_m,
                    _ => false,
                })
                .count();
            (neighbours, turn, wish)
        })
        .collect();
    order.sort_by_key(|(neighbours, turn, wish)| {
        let crowded_first = std::cmp::Reverse(*neighbours);
        (wish.last, wish.may_lead, crowded_first, *turn)
    });
    order
        .into_iter()
        .map(|(_, turn, wish)| (turn, wish))
        .collect()
}

fn marks_of(wishes: &[LabelWish], found: &[(usize, Candidate)]) -> Vec<DrawnMark> {
    let about = |turn: &usize| {
        wishes
            .get(*turn)
            .map_or((String::new(), StyleRole::Label), |wish| {
                (wish.about.clone(), wish.role)
            })
    };
    let leaders = found.iter().filter_map(|(turn, label)| {
        label.leader.map(|(from, to)| DrawnMark::Polyline {
            spots: vec![from, to],
            role: StyleRole::Leader,
            about: about(turn).0,
        })
    });
    let texts = found.iter().map(|(turn, label)| {
        let (about, role) = about(turn);
        DrawnMark::Written {
            text: label.text.clone(),
            role,
            about,
        }
    });
    leaders.chain(texts).collect()
}

#[cfg(test)]
mod tests {
    use super::super::drawing::TextHold;
    use super::super::frame::{estimated_width_pt, text_extent};
    use super::*;
    use proptest::prelude::*;

    const BOUNDS: DrawnExtent = DrawnExtent {
        left_m: 0.0,
        bottom_m: 0.0,
        right_m: 100.0,
        top_m: 80.0,
    };

    fn wishes(points: &[(f64, f64)]) -> (Vec<LabelWish>, LabelGround) {
        let wishes: Vec<LabelWish> = points
            .iter()
            .enumerate()
            .map(|(turn, (x, y))| LabelWish {
                about: format!("t{turn}"),
                words: format!("T{}", turn * 37 % 400),
                places: vec![Spot::new(*x, *y)],
                clear_pt: 6.0,
                size_pt: 8.0,
                role: StyleRole::Label,
                may_lead: true,
                outward_deg: None,
                last: false,
            })
            .collect();
        let taken = wishes
            .iter()
            .flat_map(|wish| &wish.places)
            .map(|at| super::super::frame::symbol_extent(*at, 8.0, 0.1))
            .collect();
        let ground = LabelGround {
            bounds: Some(BOUNDS),
            taken,
            ..LabelGround::default()
        };
        (wishes, ground)
    }

    fn texts(placed: &PlacedLabels) -> Vec<DrawnExtent> {
        placed
            .marks
            .iter()
            .filter_map(|mark| match mark {
                DrawnMark::Written { text, .. } => {
                    Some(text_extent(text, 0.1, &estimated_width_pt))
                }
                _ => None,
            })
            .collect()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2_000))]
        #[test]
        fn labels_never_overlap(
            points in prop::collection::vec((0.0..100.0f64, 0.0..80.0f64), 0..14),
            squeeze in 0.02..1.0f64,
        ) {
            let points: Vec<_> = points.iter().map(|(x, y)| (x * squeeze, y * squeeze)).collect();
            let (wishes, ground) = wishes(&points);
            let placed = place_labels(&wishes, &ground, 0.1, &estimated_width_pt);
            let texts = texts(&placed);
            prop_assert_eq!(texts.len() + placed.left_out.len(), points.len());
            for (turn, text) in texts.iter().enumerate() {
                prop_assert!(BOUNDS.grown(1e-9).with(*text) == BOUNDS);
                prop_assert!(!texts[..turn].iter().any(|other| other.overlaps(*text)));
                prop_assert!(!ground.taken.iter().any(|symbol| symbol.overlaps(*text)));
            }
            let again = place_labels(&wishes, &ground, 0.1, &estimated_width_pt);
            prop_assert_eq!(placed.marks, again.marks);
        }
    }

    #[test]
    fn a_lone_label_stands_at_the_right_without_a_leader() {
        let (wishes, ground) = wishes(&[(50.0, 40.0)]);
        let placed = place_labels(&wishes, &ground, 0.1, &estimated_width_pt);
        assert_eq!(placed.marks.len(), 1);
        let DrawnMark::Written { text, .. } = &placed.marks[0] else {
            panic!("no text");
        };
        assert_eq!(
            (text.hold, text.at),
            (TextHold::Start, Spot::new(50.6, 40.0))
        );
    }

    #[test]
    fn a_label_with_no_room_is_named() {
        let (mut wishes, ground) = wishes(&[(50.0, 40.0)]);
        wishes[0].words = "m".repeat(400);
        let placed = place_labels(&wishes, &ground, 0.1, &estimated_width_pt);
        assert_eq!(placed.left_out, ["t0"]);
        assert!(placed.marks.is_empty());
    }

    #[test]
    fn twelve_points_in_a_heap_get_leaders() {
        let heap: Vec<_> = (0..12)
            .map(|turn| {
                (
                    50.0 + f64::from(turn % 4) * 0.7,
                    40.0 + f64::from(turn / 4) * 0.7,
                )
            })
            .collect();
        let (wishes, ground) = wishes(&heap);
        let placed = place_labels(&wishes, &ground, 0.1, &estimated_width_pt);
        assert!(placed.left_out.is_empty(), "{:?}", placed.left_out);
        let leaders = placed.marks.len() - texts(&placed).len();
        assert!(leaders > 4, "{leaders}");
    }
}
