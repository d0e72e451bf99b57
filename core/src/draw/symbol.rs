//! The form of each point symbol, once for paper and screens.
//!
//! The five verdicts stand on five forms that stay apart without colour and in a small size: a
//! leaf, a leaf in a frame, a slotted triangle, a slotted block and a ring with a gap.

use super::drawing::{DrawnMark, LegendLine, PointSymbol, Spot, SymbolShape};

/// The form of `symbol` in a square of side 1 around its middle.
pub fn shape_of(symbol: PointSymbol) -> SymbolShape {
    let (filled, lines) = match symbol {
        PointSymbol::TreePlain => (vec![ring(0.34)], vec![]),
        PointSymbol::TreeNoStop => (vec![leaf(0.45)], vec![]),
        PointSymbol::TreeLimited => (vec![leaf(0.24)], vec![closed(square(0.42))]),
        PointSymbol::TreeRefer => (
            vec![
                at(&[(-0.45, -0.42), (0.45, -0.42), (0.0, 0.45)]),
                bar_mark(),
            ],
            vec![],
        ),
        PointSymbol::TreeBarred => (vec![octagon(0.45), slot()], vec![]),
        PointSymbol::TreeIncomplete => (vec![], vec![arc(0.4, 40.0, 320.0), dot_line()]),
        PointSymbol::Stem => (vec![ring(0.2)], vec![closed(ring(0.42))]),
        PointSymbol::TargetDwelling => (vec![house()], vec![]),
        PointSymbol::TargetRoad => (vec![], road()),
        PointSymbol::TargetPath => (vec![], path()),
        PointSymbol::TargetGarden => (vec![], garden()),
        PointSymbol::TargetParking => (vec![], parking()),
        PointSymbol::TargetOther => (vec![], vec![closed(diamond(0.42)), dot_line()]),
        PointSymbol::Pole => (
            vec![],
            vec![closed(ring(0.3)), at(&[(-0.45, 0.0), (0.45, 0.0)])],
        ),
        PointSymbol::TieIn => (vec![], tie_in()),
        PointSymbol::Finding => (vec![ring(0.48)], vec![]),
        PointSymbol::Cross => (
            vec![],
            vec![
                at(&[(-0.4, 0.0), (0.4, 0.0)]),
                at(&[(0.0, -0.4), (0.0, 0.4)]),
            ],
        ),
        PointSymbol::Arrow => (
            vec![at(&[(0.0, 0.48), (0.3, -0.02), (-0.3, -0.02)])],
            vec![at(&[(0.0, 0.0), (0.0, -0.45)])],
        ),
        PointSymbol::Me => (me(), vec![]),
        PointSymbol::Corner => (
            vec![],
            vec![
                closed(square(0.3)),
                at(&[(-0.45, 0.0), (0.45, 0.0)]),
                at(&[(0.0, -0.45), (0.0, 0.45)]),
            ],
        ),
    };
    SymbolShape {
        symbol,
        filled,
        lines,
    }
}

/// The forms of all symbols that occur in `marks` and `legend`, each once, in a fixed order.
pub fn shapes_used(marks: &[DrawnMark], legend: &[LegendLine]) -> Vec<SymbolShape> {
    let drawn = marks.iter().filter_map(|mark| match mark {
        DrawnMark::Symbol { symbol, .. } => Some(*symbol),
        _ => None,
    });
    let explained = legend.iter().filter_map(|line| line.symbol);
    let used: std::collections::BTreeSet<PointSymbol> = drawn.chain(explained).collect();
    used.into_iter().map(shape_of).collect()
}

fn at(places: &[(f64, f64)]) -> Vec<Spot> {
    places.iter().map(|&(x, y)| Spot::new(x, y)).collect()
}

fn closed(mut ring: Vec<Spot>) -> Vec<Spot> {
    ring.extend(ring.first().copied());
    ring
}

fn ring(radius: f64) -> Vec<Spot> {
    polygon(24, radius, 0.0)
}

fn octagon(radius: f64) -> Vec<Spot> {
    polygon(8, radius, 22.5)
}

fn polygon(corners: u32, radius: f64, first_deg: f64) -> Vec<Spot> {
    let middle = Spot::new(0.0, 0.0);
    (0..corners)
        .map(|corner| {
            middle.towards(
                first_deg + 360.0 * f64::from(corner) / f64::from(corners),
                radius,
            )
        })
        .collect()
}

fn arc(radius: f64, from_deg: f64, to_deg: f64) -> Vec<Spot> {
    let middle = Spot::new(0.0, 0.0);
    (0..=20)
        .map(|step| {
            middle.towards(
                from_deg + (to_deg - from_deg) * f64::from(step) / 20.0,
                radius,
            )
        })
        .collect()
}

fn square(half: f64) -> Vec<Spot> {
    at(&[(-half, -half), (half, -half), (half, half), (-half, half)])
}

fn diamond(half: f64) -> Vec<Spot> {
    at(&[(0.0, -half), (half, 0.0), (0.0, half), (-half, 0.0)])
}

/// A leaf: pointed above, round below.
fn leaf(half: f64) -> Vec<Spot> {
    let around = [
        (0.0, 1.0),
        (0.38, 0.62),
        (0.68, 0.2),
        (0.78, -0.22),
        (0.66, -0.62),
        (0.36, -0.88),
        (0.0, -1.0),
        (-0.36, -0.88),
        (-0.66, -0.62),
        (-0.78, -0.22),
        (-0.68, 0.2),
        (-0.38, 0.62),
    ];
    around
        .iter()
        .map(|(x, y)| Spot::new(x * half, y * half))
        .collect()
}

/// The upright slot left open in the triangle of a tree that is referred.
fn bar_mark() -> Vec<Spot> {
    at(&[(-0.06, -0.3), (0.06, -0.3), (0.06, 0.14), (-0.06, 0.14)])
}

/// The level slot left open in the block of a barred tree.
fn slot() -> Vec<Spot> {
    at(&[(-0.3, -0.09), (0.3, -0.09), (0.3, 0.09), (-0.3, 0.09)])
}

/// A dot, as a line shorter than the pen is wide.
fn dot_line() -> Vec<Spot> {
    at(&[(-0.03, 0.0), (0.03, 0.0)])
}

fn house() -> Vec<Spot> {
    at(&[
        (-0.36, -0.42),
        (0.36, -0.42),
        (0.36, 0.04),
        (0.46, 0.04),
        (0.0, 0.45),
        (-0.46, 0.04),
        (-0.36, 0.04),
    ])
}

fn road() -> Vec<Vec<Spot>> {
    vec![
        at(&[(-0.4, -0.42), (-0.2, 0.42)]),
        at(&[(0.4, -0.42), (0.2, 0.42)]),
        at(&[(0.0, -0.4), (0.0, -0.18)]),
        at(&[(0.0, 0.02), (0.0, 0.2)]),
    ]
}

fn path() -> Vec<Vec<Spot>> {
    vec![at(&[
        (-0.2, -0.42),
        (0.14, -0.2),
        (-0.16, 0.06),
        (0.18, 0.42),
    ])]
}

fn garden() -> Vec<Vec<Spot>> {
    vec![
        at(&[(-0.42, -0.3), (0.42, -0.3)]),
        at(&[(-0.26, -0.3), (-0.26, 0.24)]),
        at(&[(0.0, -0.3), (0.0, 0.4)]),
        at(&[(0.26, -0.3), (0.26, 0.24)]),
        at(&[(-0.42, 0.04), (0.42, 0.04)]),
    ]
}

fn parking() -> Vec<Vec<Spot>> {
    vec![
        closed(square(0.42)),
        at(&[
            (-0.12, -0.26),
            (-0.12, 0.26),
            (0.08, 0.26),
            (0.17, 0.14),
            (0.08, 0.0),
            (-0.12, 0.0),
        ]),
    ]
}

/// A person: a head over shoulders.
fn me() -> Vec<Vec<Spot>> {
    let head = polygon(16, 0.17, 0.0);
    let raised = head.into_iter().map(|s| Spot::new(s.x_m, s.y_m + 0.31));
    let body = [
        (-0.3, -0.48),
        (0.3, -0.48),
        (0.3, -0.1),
        (0.14, 0.08),
        (-0.14, 0.08),
        (-0.3, -0.1),
    ];
    vec![raised.collect(), at(&body)]
}

fn tie_in() -> Vec<Vec<Spot>> {
    vec![
        closed(
            ring(0.26)
                .into_iter()
                .map(|s| Spot::new(s.x_m, s.y_m + 0.16))
                .collect(),
        ),
        at(&[(0.0, -0.1), (0.0, -0.46)]),
        at(&[(-0.2, -0.3), (0.0, -0.46), (0.2, -0.3)]),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [PointSymbol; 20] = [
        PointSymbol::TreePlain,
        PointSymbol::TreeNoStop,
        PointSymbol::TreeLimited,
        PointSymbol::TreeRefer,
        PointSymbol::TreeBarred,
        PointSymbol::TreeIncomplete,
        PointSymbol::Stem,
        PointSymbol::TargetDwelling,
        PointSymbol::TargetRoad,
        PointSymbol::TargetPath,
        PointSymbol::TargetGarden,
        PointSymbol::TargetParking,
        PointSymbol::TargetOther,
        PointSymbol::Pole,
        PointSymbol::TieIn,
        PointSymbol::Finding,
        PointSymbol::Cross,
        PointSymbol::Arrow,
        PointSymbol::Me,
        PointSymbol::Corner,
    ];

    #[test]
    fn every_symbol_stays_in_its_square_and_differs_from_the_others() {
        for (index, &symbol) in ALL.iter().enumerate() {
            let shape = shape_of(symbol);
            let spots: Vec<_> = shape.filled.iter().chain(&shape.lines).flatten().collect();
            assert!(!spots.is_empty(), "{symbol:?} has no form");
            for spot in spots {
                assert!(spot.x_m.abs() <= 0.5 && spot.y_m.abs() <= 0.5, "{symbol:?}");
            }
            for &other in &ALL[..index] {
                let other = shape_of(other);
                assert!(
                    other.filled != shape.filled || other.lines != shape.lines,
                    "{symbol:?} looks like {:?}",
                    other.symbol
                );
            }
        }
    }
}
