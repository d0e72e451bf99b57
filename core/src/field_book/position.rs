//! Positions: many fixes averaged live, one fix, or one typed.

use serde_json::{Value, json};

use super::inner::Inner;
use crate::error::BookError;
use crate::judge::rules::{Rule, RuleSet};
use crate::measure::position::{
    AveragedPosition, Fix, FixFault, LeftOut, MOST_ACCURACY_M, average,
};
use crate::pages::{Entry, EntryValue, SensedFix};
use crate::record::{ACCURACY_M, Fault, Id, LAT_DEG, LON_DEG, LatLon, Noun, Quantity};
use crate::words::{Said, Words, read_place};

/// Fixes further apart in time than this are another go, whose error is its own: by then other
/// satellites stand over the tree (house).
const OTHER_GO_MS: i64 = 30 * 60 * 1000;

/// The average of many fixes, as it stands now.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct AveragedFix {
    /// Where; nothing while no fix can be used.
    pub at: Option<LatLon>,
    /// Radius that holds the true place with 68 % probability, in metres: never better than the
    /// best fix of one go. Nothing while no fix can be used.
    pub accuracy_m: Option<f64>,
    /// Fixes used.
    pub used: u32,
    /// The position with its radius, in words; what to do while there is none.
    pub words: String,
    /// What was left out and why, a sentence a reason.
    pub left_out: Vec<String>,
}

impl Inner {
    /// Averages fixes as they come, for a page that shows the ring.
    pub(super) fn average(&self, about: &Id, fixes: &[SensedFix], since_ms: i64) -> AveragedFix {
        let words = self.settings.words();
        match average(&as_measured(fixes), since_ms, self.outlier_mads(about)) {
            Ok(mean) => AveragedFix {
                at: Some(mean.point),
                accuracy_m: Some(mean.accuracy_m),
                used: mean.used,
                words: in_words(&words, &mean),
                left_out: left_out(&words, &mean.left_out),
            },
            Err(faults) => AveragedFix {
                at: None,
                accuracy_m: None,
                used: 0,
                words: words.say("position.waiting", &[]),
                left_out: left_out(&words, &faults),
            },
        }
    }

    /// Entries with the fixes of each averaged.
    ///
    /// # Errors
    /// `Refused` at the input none of whose fixes can be used, with the first reason.
    pub(super) fn averaged(&self, about: &Id, entries: &[Entry]) -> Result<Vec<Entry>, BookError> {
        let mut faults = Vec::new();
        let mut done = Vec::new();
        for entry in entries {
            let EntryValue::Fixes { fixes, since_ms } = &entry.value else {
                done.push(entry.clone());
                continue;
            };
            let mads = self.outlier_mads(about);
            match average(&as_measured(fixes), *since_ms, mads) {
                Ok(mean) => done.push(Entry {
                    input: entry.input.clone(),
                    value: as_entered(&mean),
                }),
                Err(reasons) => faults.push(no_fix(&entry.input, &reasons)),
            }
        }
        if faults.is_empty() {
            Ok(done)
        } else {
            Err(BookError::Refused { faults })
        }
    }

    /// The rule set's bound for outliers, of the site that a record lies in.
    fn outlier_mads(&self, about: &Id) -> f64 {
        let rules = self.rules_around(about);
        rules.map_or(f64::INFINITY, |rules| {
            rules.number(Rule::MeasurePositionOutlierMads)
        })
    }

    /// The rule set of the site that a record is or lies in, with the crew's own values; the shipped
    /// one where there is no site yet.
    pub(super) fn rules_around(&self, about: &Id) -> Result<RuleSet, BookError> {
        match self.site_around(about) {
            Some(site) => {
                let book = self.store.read().load_book()?;
                let chosen = self.store.read().rule_set_of(&site)?;
                RuleSet::shipped(&chosen.unwrap_or_default())?.with_house_values(&book.house_values)
            }
            None => RuleSet::shipped(&Id::default()),
        }
    }

    /// The site that a record is or lies in.
    pub(super) fn site_around(&self, about: &Id) -> Option<Id> {
        let reader = self.store.read();
        [
            Noun::Site,
            Noun::Tree,
            Noun::Target,
            Noun::OverheadLine,
            Noun::Inspection,
        ]
        .into_iter()
        .find_map(|noun| {
            let found = reader.whereabouts(noun, about).ok().flatten()?;
            found.site
        })
    }
}

/// One fix as it is; the mean of several as the only one of many.
fn as_entered(mean: &AveragedPosition) -> EntryValue {
    let (lat_deg, lon_deg) = (mean.point.lat_deg, mean.point.lon_deg);
    let accuracy_m = Some(mean.accuracy_m);
    if mean.used == 1 {
        return EntryValue::Fix {
            lat_deg,
            lon_deg,
            accuracy_m,
        };
    }
    EntryValue::Fixes {
        fixes: vec![SensedFix {
            lat_deg,
            lon_deg,
            accuracy_m,
            at_ms: 0,
        }],
        since_ms: 0,
    }
}

fn as_measured(fixes: &[SensedFix]) -> Vec<Fix> {
    let mut session = 0;
    let mut last: Option<i64> = None;
    fixes
        .iter()
        .map(|fix| {
            if last.is_some_and(|last| fix.at_ms.saturating_sub(last) > OTHER_GO_MS) {
                session += 1;
            }
            last = Some(fix.at_ms);
            Fix {
                point: LatLon {
                    lat_deg: fix.lat_deg,
                    lon_deg: fix.lon_deg,
                },
                accuracy_m: fix.accuracy_m.unwrap_or(0.0),
                at_ms: fix.at_ms,
                session,
            }
        })
        .collect()
}

fn in_words(words: &Words, mean: &AveragedPosition) -> String {
    let at = format!("{:.5}, {:.5}", mean.point.lat_deg, mean.point.lon_deg);
    words.say(
        "position.average",
        &[
            ("at", Said::Text(&at)),
            (
                "accuracy",
                Said::Text(&words.number(mean.accuracy_m, Quantity::LengthM)),
            ),
            ("count", Said::Count(mean.used.into())),
        ],
    )
}

fn left_out(words: &Words, faults: &[LeftOut]) -> Vec<String> {
    let said = |one: &LeftOut| {
        let count = [("count", Said::Count(one.count.into()))];
        words.say(&format!("fix.{}", code(one.fault)), &count)
    };
    faults.iter().map(said).collect()
}

fn code(fault: FixFault) -> &'static str {
    match fault {
        FixFault::NoNumber => "no-number",
        FixFault::NoPlace => "no-place",
        FixFault::NoAccuracy => "no-accuracy",
        FixFault::TooCoarse => "too-coarse",
        FixFault::OffTheGlobe => "off-the-globe",
        FixFault::Old => "old",
        FixFault::Outlier => "outlier",
    }
}

/// Why there is no position among the fixes taken.
fn no_fix(input: &str, reasons: &[LeftOut]) -> Fault {
    let code = match reasons.first().map(|first| first.fault) {
        None | Some(FixFault::NoAccuracy | FixFault::Old | FixFault::Outlier) => "fault.no-fix-yet",
        Some(FixFault::NoPlace) => "fault.fix-at-zero",
        Some(FixFault::TooCoarse) => "fault.fix-too-coarse",
        Some(FixFault::NoNumber | FixFault::OffTheGlobe) => "fault.no-position",
    };
    Fault::new(code, input, "", "")
}

/// One fix as the value of a position.
pub(super) fn one_fix(
    input: &str,
    at: LatLon,
    accuracy_m: Option<f64>,
    words: &Words,
) -> Result<Value, Fault> {
    on_earth(input, at)?;
    if let Some(coarse) = accuracy_m.filter(|accuracy_m| *accuracy_m > MOST_ACCURACY_M) {
        let said = |m: f64| words.number(m, Quantity::LengthM);
        let most = said(MOST_ACCURACY_M);
        return Err(Fault::new(
            "fault.fix-too-coarse",
            input,
            said(coarse),
            most,
        ));
    }
    // An accuracy that no receiver means is an unknown one.
    let accuracy_m = accuracy_m.filter(|accuracy_m| ACCURACY_M.allows(*accuracy_m));
    Ok(position(at, accuracy_m, "phone_fix"))
}

/// The mean of many fixes, as [`Inner::averaged`] left it.
pub(super) fn mean_fix(input: &str, mean: &SensedFix) -> Result<Value, Fault> {
    let at = LatLon {
        lat_deg: mean.lat_deg,
        lon_deg: mean.lon_deg,
    };
    on_earth(input, at)?;
    Ok(position(at, mean.accuracy_m, "averaged_fixes"))
}

/// A place tapped on the plan, with the accuracy that the plan gave it.
pub(super) fn tapped_place(
    input: &str,
    at: LatLon,
    accuracy_m: f64,
    words: &Words,
) -> Result<Value, Fault> {
    // A tap without its accuracy would pass for a better one.
    if !ACCURACY_M.allows(accuracy_m) {
        return Err(Fault::new("fault.no-position", input, "", ""));
    }
    let mut place = one_fix(input, at, Some(accuracy_m), words)?;
    if let Some(fields) = place.as_object_mut() {
        fields.insert("method".to_owned(), json!("map"));
    }
    Ok(place)
}

/// A position that somebody typed, read off a map or a plan; nobody knows how far off it is.
pub(super) fn typed_place(input: &str, typed: &str) -> Result<Value, Fault> {
    let at = read_place(typed).ok_or_else(|| {
        Fault::new(
            "fault.not-a-place",
            input,
            typed.trim(),
            "42.33140, -71.12110",
        )
    })?;
    on_earth(input, at)?;
    Ok(position(at, None, "map"))
}

/// Refuses what is no place on Earth, and the place 0, 0 that a receiver gives where it has none.
pub(super) fn on_earth(input: &str, at: LatLon) -> Result<(), Fault> {
    if !LAT_DEG.allows(at.lat_deg) || !LON_DEG.allows(at.lon_deg) {
        return Err(Fault::new("fault.no-position", input, "", ""));
    }
    if at.lat_deg == 0.0 && at.lon_deg == 0.0 {
        return Err(Fault::new("fault.fix-at-zero", input, "", ""));
    }
    Ok(())
}

fn position(at: LatLon, accuracy_m: Option<f64>, method: &str) -> Value {
    let mut position = json!({"lat_deg": at.lat_deg, "lon_deg": at.lon_deg, "method": method});
    if let (Some(accuracy_m), Some(fields)) = (accuracy_m, position.as_object_mut()) {
        fields.insert("accuracy_m".to_owned(), json!(accuracy_m));
    }
    position
}
