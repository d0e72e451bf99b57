//! The bending properties of an off-centre stem section with twelve readings of its wall.

use std::ffi::OsStr;
use std::hint::black_box;

use bolewalk_core::judge::section::{Ring, Run};
use serde_json::{Value, json};

use crate::bench::{Bench, Outcome};
use crate::peer::library;
use crate::row::Row;
use crate::times::timed;

/// Corners of the outline on both sides.
const CORNERS: u32 = 360;
/// One section takes too short a time for a clock.
const AT_ONCE: u32 = 200;
/// How far the weakest moduli may lie apart, as a share.
const AGREE_WITHIN: f64 = 0.002;

pub fn rows(_: &Bench) -> Outcome<Vec<Row>> {
    let ring = Ring::off_centre(30.0, 15.0, 10.0, 0.0, 12);
    let modulus = ring.properties(CORNERS).weakest_modulus_cm3;
    let ours = || {
        let (seconds, ()) = timed(|| {
            for _ in 0..AT_ONCE {
                black_box(black_box(&ring).properties(CORNERS));
            }
            Ok(())
        })?;
        Ok(seconds / f64::from(AT_ONCE))
    };
    let question = json!({"outer": pairs(&ring.outer), "wall": pairs(&ring.wall), "opening": null});
    let (question, corners) = (question.to_string(), CORNERS.to_string());
    let peer = library("section.py", &[OsStr::new(&question), OsStr::new(&corners)])?;
    let row = Row::beside(
        "section: bending properties, 12 readings",
        ours,
        peer,
        |made| {
            let theirs = made["weakest"].as_f64().unwrap_or_default();
            if (theirs / modulus - 1.0).abs() <= AGREE_WITHIN {
                return Ok(());
            }
            Err(format!("weakest modulus: ours {modulus} cm³, theirs {theirs} cm³").into())
        },
    )?;
    let note = "the same 360 corners, weakest modulus within 0.2 % of each other; the peer is a \
                finite-element library for any shape, ours a sum over a stem's sectors.";
    Ok(vec![row.noted(note)])
}

/// Bearings with their lengths; two of them where the length is the same all round.
fn pairs(run: &Run) -> Vec<Value> {
    match run {
        Run::Even(length_cm) => vec![json!([0.0, length_cm]), json!([180.0, length_cm])],
        Run::AtBearings(points) => points
            .iter()
            .map(|point| json!([point.bearing_deg, point.length_cm]))
            .collect(),
    }
}
