//! The nouns that are records of their own, and how they lie in each other.

/// A noun with a table of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Noun {
    /// A client's property.
    Site,
    /// What could be hit.
    Target,
    /// A conductor.
    OverheadLine,
    /// A permission.
    Permission,
    /// A day on a site.
    Visit,
    /// The weather of one hour.
    WeatherHour,
    /// A tree.
    Tree,
    /// Work on a tree.
    Work,
    /// What was seen on a tree at a visit.
    Inspection,
    /// Distance to a conductor.
    WireDistance,
    /// One part of the walk-round.
    PartLook,
    /// A defect.
    Finding,
    /// A decay measurement.
    StemSection,
    /// A reading of the sound wall.
    ShellReading,
    /// A tie-in point.
    AnchorPoint,
    /// A climb plan.
    ClimbPlan,
    /// A photo.
    Photo,
    /// A risk rating entered.
    RiskEntry,
    /// Something that nearly went wrong.
    NearMiss,
    /// A person.
    Person,
    /// A skill confirmed.
    SignOff,
    /// A climb in a person's log.
    LoggedClimb,
    /// A piece of gear.
    Gear,
    /// A code of the codebook.
    DefectCode,
    /// A changed house value.
    HouseValue,
    /// A judgement frozen when signed.
    SignedJudgement,
}

/// How a noun is kept: its table, and the list of the parent that holds it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NounPlace {
    /// The noun.
    pub noun: Noun,
    /// Its table, also its name in changes.
    pub table: &'static str,
    /// The noun that holds it, with the name of the list there; nothing for nouns of the book.
    pub held_by: Option<(Noun, &'static str)>,
}

impl Noun {
    /// Every noun, parents before children.
    pub const PLACES: [NounPlace; 26] = [
        place(Noun::Person, "person", None),
        place(Noun::SignOff, "sign_off", Some((Noun::Person, "sign_offs"))),
        place(
            Noun::LoggedClimb,
            "logged_climb",
            Some((Noun::Person, "climbs")),
        ),
        place(Noun::Gear, "gear", None),
        place(Noun::DefectCode, "defect_code", None),
        place(Noun::HouseValue, "house_value", None),
        place(Noun::Site, "site", None),
        place(Noun::Target, "target", Some((Noun::Site, "targets"))),
        place(
            Noun::OverheadLine,
            "overhead_line",
            Some((Noun::Site, "lines")),
        ),
        place(
            Noun::Permission,
            "permission",
            Some((Noun::Site, "permissions")),
        ),
        place(Noun::Visit, "visit", Some((Noun::Site, "visits"))),
        place(
            Noun::WeatherHour,
            "weather_hour",
            Some((Noun::Visit, "weather")),
        ),
        place(Noun::Tree, "tree", Some((Noun::Site, "trees"))),
        place(Noun::Work, "work", Some((Noun::Tree, "work"))),
        place(
            Noun::Inspection,
            "inspection",
            Some((Noun::Tree, "inspections")),
        ),
        place(
            Noun::WireDistance,
            "wire_distance",
            Some((Noun::Inspection, "wires")),
        ),
        place(
            Noun::PartLook,
            "part_look",
            Some((Noun::Inspection, "walk_round")),
        ),
        place(
            Noun::Finding,
            "finding",
            Some((Noun::Inspection, "findings")),
        ),
        place(
            Noun::StemSection,
            "stem_section",
            Some((Noun::Inspection, "sections")),
        ),
        place(
            Noun::ShellReading,
            "shell_reading",
            Some((Noun::StemSection, "readings")),
        ),
        place(
            Noun::AnchorPoint,
            "anchor_point",
            Some((Noun::Inspection, "anchors")),
        ),
        place(
            Noun::ClimbPlan,
            "climb_plan",
            Some((Noun::Inspection, "plans")),
        ),
        place(Noun::Photo, "photo", Some((Noun::Inspection, "photos"))),
        place(
            Noun::RiskEntry,
            "risk_entry",
            Some((Noun::Inspection, "risks")),
        ),
        place(
            Noun::NearMiss,
            "near_miss",
            Some((Noun::Inspection, "near_misses")),
        ),
        place(
            Noun::SignedJudgement,
            "signed_judgement",
            Some((Noun::Inspection, "signed")),
        ),
    ];

    /// How this noun is kept.
    pub fn place(self) -> NounPlace {
        Noun::PLACES
            .into_iter()
            .find(|place| place.noun == self)
            .unwrap_or(NounPlace {
                noun: self,
                table: "",
                held_by: None,
            })
    }

    /// The noun whose table has this name.
    pub fn of_table(table: &str) -> Option<Noun> {
        Noun::PLACES
            .into_iter()
            .find(|place| place.table == table)
            .map(|place| place.noun)
    }
}

const fn place(
    noun: Noun,
    table: &'static str,
    held_by: Option<(Noun, &'static str)>,
) -> NounPlace {
    NounPlace {
        noun,
        table,
        held_by,
    }
}
