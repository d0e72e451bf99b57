//! A plain SVG writer, for the eye only.

use super::super::*;

pub fn svg(drawing: &Drawing) -> String {
    let m_per_pt = metres_per_point(drawing.scale);
    let extent = drawing.extent;
    let (wide, high) = (extent.width_m() / m_per_pt, extent.height_m() / m_per_pt);
    let x = |spot: &Spot| (spot.x_m - extent.left_m) / m_per_pt;
    let y = |spot: &Spot| (extent.top_m - spot.y_m) / m_per_pt;
    let path = |spots: &[Spot], closed: bool| {
        let places: Vec<String> = spots
            .iter()
            .map(|spot| format!("{:.2} {:.2}", x(spot), y(spot)))
            .collect();
        format!("M{}{}", places.join("L"), if closed { "Z" } else { "" })
    };
    let mut out = format!(
        "<svg xmlns='http://www.w3.org/2000/svg' width='{wide:.1}pt' height='{high:.1}pt' \
         viewBox='0 0 {wide:.1} {high:.1}' font-family='DejaVu Sans'>\
         <rect width='100%' height='100%' fill='#fffdf7'/>"
    );
    for mark in &drawing.marks {
        out.push_str(&match mark {
            DrawnMark::Polygon { rings, role, .. } => {
                let rings: String = rings.iter().map(|ring| path(ring, true)).collect();
                format!("<path d='{rings}' fill-rule='evenodd' {}/>", style(*role, true))
            }
            DrawnMark::Polyline { spots, role, .. } => {
                format!("<path d='{}' {}/>", path(spots, false), style(*role, false))
            }
            DrawnMark::Circle {
                centre,
                radius_m,
                role,
                ..
            } => format!(
                "<circle cx='{:.2}' cy='{:.2}' r='{:.2}' {}/>",
                x(centre),
                y(centre),
                radius_m / m_per_pt,
                style(*role, true)
            ),
            DrawnMark::Symbol {
                at,
                symbol,
                size_pt,
                turn_deg,
                role,
                ..
            } => {
                let shape = drawing.symbols.iter().find(|shape| shape.symbol == *symbol);
                let shape = shape.unwrap();
                let unit = |rings: &[Vec<Spot>]| -> String {
                    rings
                        .iter()
                        .map(|ring| {
                            let places: Vec<String> = ring
                                .iter()
                                .map(|spot| format!("{} {}", spot.x_m, -spot.y_m))
                                .collect();
                            format!("M{}", places.join("L"))
                        })
                        .collect()
                };
                let colour = colour(*role);
                format!(
                    "<g transform='translate({:.2} {:.2}) rotate({turn_deg}) scale({size_pt})'>\
                     <path d='{}' fill='{colour}' fill-rule='evenodd'/>\
                     <path d='{}' fill='none' stroke='{colour}' stroke-width='0.1'/></g>",
                    x(at),
                    y(at),
                    unit(&shape.filled),
                    unit(&shape.lines)
                )
            }
            DrawnMark::Written { text, role, .. } => {
                let hold = match text.hold {
                    TextHold::Start => "start",
                    TextHold::Middle => "middle",
                    TextHold::End => "end",
                };
                let halo = if text.halo {
                    "stroke='#fffdf7' stroke-width='2' paint-order='stroke'"
                } else {
                    ""
                };
                format!(
                    "<text x='{:.2}' y='{:.2}' font-size='{}' text-anchor='{hold}' fill='{}' {halo}>{}</text>",
                    x(&text.at),
                    y(&text.at) + 0.35 * text.size_pt,
                    text.size_pt,
                    colour(*role),
                    text.words
                )
            }
        });
        out.push('\n');
    }
    out.push_str("</svg>\n");
    out
}

fn colour(role: StyleRole) -> &'static str {
    match role {
        StyleRole::PropertyEdge | StyleRole::SheetEdge => "#444b52",
        StyleRole::Crown => "#5d7a4a",
        StyleRole::DeadCrown => "#8a7a66",
        StyleRole::DropZone => "#d8541e",
        StyleRole::KeepOutEveryone => "#b3341b",
        StyleRole::KeepOutCrew => "#c98a1b",
        StyleRole::OverheadLine | StyleRole::KeepClear => "#7a1f7a",
        StyleRole::ApproachStrip => "#a050a0",
        StyleRole::AccuracyRing | StyleRole::Leader => "#8b949c",
        StyleRole::Target => "#23527a",
        StyleRole::SoundWood => "#d9b98a",
        StyleRole::Bark | StyleRole::Stem => "#6b4a32",
        StyleRole::Decay => "#7d6a55",
        StyleRole::Opening | StyleRole::Paper | StyleRole::OnSymbol => "#fffdf7",
        StyleRole::WeakestDirection | StyleRole::Finding => "#d8541e",
        _ => "#1f2429",
    }
}

fn style(role: StyleRole, area: bool) -> String {
    let colour = colour(role);
    let solid = matches!(
        role,
        StyleRole::Paper
            | StyleRole::ScaleBar
            | StyleRole::Stem
            | StyleRole::Bark
            | StyleRole::SoundWood
            | StyleRole::Decay
            | StyleRole::Opening
            | StyleRole::Outline
            | StyleRole::Defect
    );
    let fill = match (area, role) {
        (false, _) | (_, StyleRole::AccuracyRing) => "none",
        _ => colour,
    };
    let opacity = if solid { "1" } else { "0.14" };
    let dash = match role {
        StyleRole::PropertyEdge => "6 2 1 2",
        StyleRole::AccuracyRing => "1.5 1.5",
        StyleRole::KeepOutEveryone | StyleRole::KeepClear => "5 3",
        StyleRole::KeepOutCrew => "3 2",
        _ => "none",
    };
    let pen = match role {
        StyleRole::Leader | StyleRole::AccuracyRing => 0.5,
        StyleRole::Paper => 0.0,
        _ => 1.0,
    };
    format!(
        "fill='{fill}' fill-opacity='{opacity}' stroke='{colour}' stroke-width='{pen}' \
         stroke-dasharray='{dash}'"
    )
}
