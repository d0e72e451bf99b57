//! The marks a drawing is made of: what paper, Android and iOS draw alike.

use serde::{Deserialize, Serialize};

/// A place in a drawing, in metres: `x_m` to the right (east on a plan), `y_m` up (north on a plan,
/// height above ground in a side view).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Spot {
    /// Metres to the right of the drawing's origin.
    pub x_m: f64,
    /// Metres above the drawing's origin.
    pub y_m: f64,
}

/// The rectangle that a drawing fills, in metres.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct DrawnExtent {
    /// Left edge.
    pub left_m: f64,
    /// Lower edge.
    pub bottom_m: f64,
    /// Right edge, never left of the left edge.
    pub right_m: f64,
    /// Upper edge, never below the lower edge.
    pub top_m: f64,
}

/// What a mark stands for; the palette of a screen or a paper gives it colour, width and dashes.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum StyleRole {
    /// The edge of the client's property.
    PropertyEdge,
    /// The spread of a living crown.
    Crown,
    /// The spread of a dead crown.
    DeadCrown,
    /// Where something may land.
    DropZone,
    /// Where nobody but the cutter stands.
    KeepOutEveryone,
    /// Where the crew does not stand.
    KeepOutCrew,
    /// What could be hit.
    Target,
    /// A conductor near the trees.
    OverheadLine,
    /// The strip on both sides of a conductor that nobody and nothing enters.
    ApproachStrip,
    /// How well a position is known.
    AccuracyRing,
    /// A tree's own mark.
    Tree,
    /// A word or number beside what it names.
    Label,
    /// The thin line from a label to what it names.
    Leader,
    /// The scale bar with its numbers.
    ScaleBar,
    /// The arrow to true north with its letter.
    North,
    /// The edge of a sheet on the overview of sheets.
    SheetEdge,
    /// A plain outline, such as that of a person drawn for scale.
    Outline,
    /// The bark ring of a section.
    Bark,
    /// Sound wood.
    SoundWood,
    /// Decayed wood, or a hollow.
    Decay,
    /// An opening in the wall of a stem.
    Opening,
    /// A reading of the wall: a tick at its bearing.
    Reading,
    /// The direction in which a section is weakest.
    WeakestDirection,
    /// A finding: its numbered mark.
    Finding,
    /// A stem.
    Stem,
    /// The ground line.
    Ground,
    /// The tie-in point.
    TieIn,
    /// A measure with its arrows.
    Dimension,
    /// The height of a decay section on a side view.
    SectionHeight,
    /// The line that people, tools and ropes stay away from.
    KeepClear,
    /// A number on a filled symbol, in the colour of the ground.
    OnSymbol,
    /// Bare paper in the colour of the ground, hiding what lies beneath it.
    Paper,
    /// Where the person is who holds the phone.
    Me,
    /// What is being entered and not kept yet.
    Entered,
    /// What is wrong, on the drawing of a grade: solid ink.
    Defect,
}

/// A point symbol; each is told from the others by its form alone.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum PointSymbol {
    /// A tree of which no verdict is shown, as on the client's plan.
    TreePlain,
    /// A tree judged: no stop found today.
    TreeNoStop,
    /// A tree judged: only within these limits.
    TreeLimited,
    /// A tree judged: do not climb yet, another way or a second opinion.
    TreeRefer,
    /// A tree judged: do not climb.
    TreeBarred,
    /// A tree not judged: still to check.
    TreeIncomplete,
    /// The middle of a stem.
    Stem,
    /// A house or another building where people stay.
    TargetDwelling,
    /// A road.
    TargetRoad,
    /// A path or footway.
    TargetPath,
    /// A garden, a play area or another place where people linger.
    TargetGarden,
    /// A place where vehicles stand.
    TargetParking,
    /// Any other target.
    TargetOther,
    /// A support of an overhead line.
    Pole,
    /// A tie-in point.
    TieIn,
    /// A finding; its number is written on it.
    Finding,
    /// A small cross that marks a point exactly.
    Cross,
    /// An arrow, pointing up unless turned.
    Arrow,
    /// The person who holds the phone.
    Me,
    /// A corner being entered.
    Corner,
}

/// Which part of a text sits at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum TextHold {
    /// The text begins there.
    Start,
    /// The middle of the text is there.
    Middle,
    /// The text ends there.
    End,
}

/// A text already worded, with its place and size.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct DrawnText {
    /// The words.
    pub words: String,
    /// Where: half the height of a capital letter stands above this place, half below, so the
    /// baseline lies 0.35 × `size_pt` under it.
    pub at: Spot,
    /// Size of the letters in points of the reader's paper or screen.
    pub size_pt: f64,
    /// Which part of the text sits at its place.
    pub hold: TextHold,
    /// Whether a thin rim in the colour of the ground keeps it readable over lines.
    pub halo: bool,
}

/// One mark. Later marks lie over earlier ones. `about` is the id of what the mark shows, empty
/// when it shows nothing that can be tapped.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Enum)]
#[serde(tag = "mark", rename_all = "snake_case")]
pub enum DrawnMark {
    /// An area: the first ring is its edge, the others are holes (even-odd rule). Rings are not
    /// closed by repeating their first spot.
    Polygon {
        /// Edge and holes.
        rings: Vec<Vec<Spot>>,
        /// What it stands for.
        role: StyleRole,
        /// Id of what it shows.
        about: String,
    },
    /// A line through two or more spots.
    Polyline {
        /// The spots in order.
        spots: Vec<Spot>,
        /// What it stands for.
        role: StyleRole,
        /// Id of what it shows.
        about: String,
    },
    /// A circle, drawn as a circle.
    Circle {
        /// The middle.
        centre: Spot,
        /// Radius in metres.
        radius_m: f64,
        /// What it stands for.
        role: StyleRole,
        /// Id of what it shows.
        about: String,
    },
    /// A point symbol of fixed size on paper or screen.
    Symbol {
        /// Where its middle is.
        at: Spot,
        /// Which one.
        symbol: PointSymbol,
        /// Width and height in points of the reader's paper or screen.
        size_pt: f64,
        /// Turned clockwise, in degrees; 0 is upright.
        turn_deg: f64,
        /// What it stands for.
        role: StyleRole,
        /// Id of what it shows.
        about: String,
    },
    /// A text.
    Written {
        /// The words, their place and size.
        text: DrawnText,
        /// What it stands for.
        role: StyleRole,
        /// Id of what it names.
        about: String,
    },
}

/// The form of a point symbol in a square of side 1 around its middle, so that every reader draws
/// the same: fill `filled` (even-odd rule), then stroke `lines` with a pen of 0.1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct SymbolShape {
    /// Which symbol.
    pub symbol: PointSymbol,
    /// Rings to fill; not closed by repeating the first spot.
    pub filled: Vec<Vec<Spot>>,
    /// Lines to stroke; a closed one repeats its first spot.
    pub lines: Vec<Vec<Spot>>,
}

/// One line of the legend, set beside or under the drawing by the paper or the screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct LegendLine {
    /// The style it explains.
    pub role: StyleRole,
    /// The symbol it explains; without one, a piece of line or area in the role's style.
    pub symbol: Option<PointSymbol>,
    /// What it means, already worded.
    pub words: String,
}

/// A drawing: plain marks in metres, laid out for a scale. True to size when one metre is drawn as
/// `72 / 0.0254 / scale` points; a reader that zooms without asking again keeps texts and symbols
/// at their size in points.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Drawing {
    /// What the drawing shows, in words for people who do not see it.
    pub described: String,
    /// The rectangle to show. Texts and symbols lie wholly inside it; areas, lines and circles may
    /// reach beyond where a part of a site is shown: a reader clips to it.
    pub extent: DrawnExtent,
    /// The scale it was laid out for: one to this many.
    pub scale: f64,
    /// The marks, from the lowest to the topmost.
    pub marks: Vec<DrawnMark>,
    /// The legend, in the order to be read.
    pub legend: Vec<LegendLine>,
    /// The form of every symbol that occurs in marks and legend.
    pub symbols: Vec<SymbolShape>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drawing_survives_json() {
        let mark = DrawnMark::Symbol {
            at: Spot::new(1.0, 2.0),
            symbol: PointSymbol::TreeRefer,
            size_pt: 9.0,
            turn_deg: 0.0,
            role: StyleRole::Tree,
            about: "t1".into(),
        };
        let json = serde_json::to_string(&mark).unwrap();
        assert!(json.contains("\"mark\":\"symbol\"") && json.contains("tree_refer"));
        assert_eq!(serde_json::from_str::<DrawnMark>(&json).unwrap(), mark);
    }
}
