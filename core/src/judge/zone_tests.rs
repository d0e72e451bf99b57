use super::*;
use crate::measure::place::line_between;
use crate::record::{Crown, Id, Lean, Operation, Work};
use proptest::prelude::*;

fn us() -> RuleSet {
    RuleSet::shipped(&Id::from("us")).unwrap()
}

fn seen(height_m: f64, lean_deg: f64, crown_m: f64) -> Inspection {
    let text = r#"{"level":"full_check"}"#;
    let mut seen: Inspection = serde_json::from_str(text).unwrap();
    seen.height = Some(Height {
        height_m,
        se_m: Some(0.0),
        method: Some(HeightMethod::Sine),
    });
    seen.lean = Some(Lean {
        lean_deg,
        toward_deg: None,
        se_deg: None,
        method: None,
    });
    seen.crown = Some(Crown {
        radius_m: crown_m,
        radius_se_m: None,
        base_m: None,
    });
    seen
}

fn tree(way: WayOfWorking, piece_m: Option<f64>, cut_m: Option<f64>) -> Tree {
    let mut tree: Tree = serde_json::from_str(r#"{"tag":"1"}"#).unwrap();
    tree.way = Some(way);
    tree.work = vec![Work {
        id: Id::default(),
        operation: Operation::Removal,
        priority: None,
        piece_length_m: piece_m,
        piece_mass_kg: None,
        cut_height_m: cut_m,
        chainsaw_aloft: None,
        note: None,
        outcome: None,
    }];
    tree
}

fn of(zones: &Zones, way: WayOfWorking) -> &ZoneAnswer {
    zones.lines.iter().find(|line| line.way == way).unwrap()
}

// Plane trigonometry, L = H/cos θ; 29 CFR 1910.266 (2 tree lengths); ANSI Z133-2017 as summarised
// (1.5 for rope handlers). H 20 m at 20° and H 25 m at 15°.
#[test]
fn felling_keeps_two_stem_lengths_off() {
    for (height, lean, crew, everyone) in
        [(20.0, 20.0, 31.925, 42.567), (25.0, 15.0, 38.823, 51.764)]
    {
        let zones = zones(
            &tree(WayOfWorking::FellWhole, None, None),
            &seen(height, lean, 4.0),
            &us(),
        );
        let line = of(&zones, WayOfWorking::FellWhole);
        assert!((line.keep_out_m - everyone).abs() < 0.001, "{line:?}");
        assert!((line.keep_out_crew_m - crew).abs() < 0.001, "{line:?}");
        assert!(line.planned);
    }
}

// Plane mechanics: h 12 m, r0 1 m, piece 5 m, v 1.5 m/s reaches 8.347 m; twice the piece around
// a crown of 4 m is 14 m, which is the larger (trade article on Z133, 'twice the length').
#[test]
fn a_free_drop_takes_the_largest_of_its_rules() {
    let zones = zones(
        &tree(WayOfWorking::SectionFreeDrop, Some(5.0), Some(12.0)),
        &seen(20.0, 0.0, 4.0),
        &us(),
    );
    let line = of(&zones, WayOfWorking::SectionFreeDrop);
    assert!((line.keep_out_m - 14.0).abs() < 1e-9);
    assert_eq!(line.rule.code, "zone.pieces");
    assert!((line.drop_radius_m - 9.0).abs() < 1e-9);
}

// ANSI Z133-2017 as summarised: 10 ft beyond the drip line; OSHA activity sheet: 20 ft beyond the
// drop zone. Crown 5 m, piece 2 m: 7 + 6.1 m is the larger.
#[test]
fn pruning_keeps_twenty_feet_beyond_the_drop_zone() {
    let zones = zones(
        &tree(WayOfWorking::Prune, Some(2.0), None),
        &seen(18.0, 0.0, 5.0),
        &us(),
    );
    let line = of(&zones, WayOfWorking::Prune);
    assert!((line.keep_out_m - 13.1).abs() < 1e-9);
    assert_eq!(
        zones.lines[0].way,
        WayOfWorking::Prune,
        "the planned way stands first"
    );
}

#[test]
fn a_missing_observation_is_a_gap_and_never_a_number() {
    let mut bare = seen(20.0, 0.0, 4.0);
    bare.height = None;
    let zones = zones(&tree(WayOfWorking::FellWhole, None, None), &bare, &us());
    assert_eq!(zones.lines, []);
    let codes: Vec<&str> = zones.gaps.iter().map(|gap| gap.code.as_str()).collect();
    assert!(
        codes.contains(&"gap.zone-needs-height-and-lean"),
        "{codes:?}"
    );
    assert!(codes.contains(&"gap.zone-of-planned-way"), "{codes:?}");
}

// Circular Gaussian: r95 = 1.6215 r68; 2 L of H 20 m at 10° is 40.617 m; with a fix of 5 m (68 %)
// the drawn radius is 48.724 m (reference sheet §1.5).
#[test]
fn the_outline_stands_outside_the_grown_circle() {
    let mut tree = tree(WayOfWorking::FellWhole, None, None);
    let at = Position {
        lat_deg: 42.3314,
        lon_deg: -71.1211,
        accuracy_m: Some(5.0),
        method: None,
    };
    tree.position = Some(at);
    let zones = zones(&tree, &seen(20.0, 10.0, 4.0), &us());
    let ring = &of(&zones, WayOfWorking::FellWhole).keep_out_outline;
    assert_eq!(ring.len(), 64);
    for corner in ring {
        let distance = line_between(at.point(), *corner).distance_m;
        let wanted = 48.724 / (core::f64::consts::PI / 64.0).cos();
        assert!((distance - wanted).abs() < 0.01, "{distance}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]
    #[test]
    fn more_height_lean_crown_or_slope_never_shrinks_a_zone(
        height in 2.0_f64..60.0, lean in 0.0_f64..60.0, crown in 0.5_f64..15.0,
        piece in 0.2_f64..8.0, slope in 0.0_f64..150.0,
        more in 0.0_f64..10.0, which in 0_usize..4,
    ) {
        let rules = us();
        let tree = tree(WayOfWorking::FellWhole, Some(piece), Some(height * 0.6));
        let mut before = seen(height, lean, crown);
        before.slope = Some(Slope { slope_pct: slope, downhill_deg: None });
        let mut after = before.clone();
        match which {
            0 => after.height = Some(Height { height_m: height + more, se_m: Some(0.0), method: None }),
            1 => after.lean = before.lean.map(|l| Lean { lean_deg: lean + more, ..l }),
            2 => after.crown = before.crown.map(|c| Crown { radius_m: crown + more, ..c }),
            _ => after.slope = Some(Slope { slope_pct: slope + more, downhill_deg: None }),
        }
        let (small, large) = (zones(&tree, &before, &rules), zones(&tree, &after, &rules));
        for line in &small.lines {
            let other = of(&large, line.way);
            prop_assert!(other.drop_radius_m >= line.drop_radius_m - 1e-9);
            prop_assert!(other.keep_out_m >= line.keep_out_m - 1e-9);
            prop_assert!(other.keep_out_downhill_m >= line.keep_out_downhill_m - 1e-9);
        }
    }
}
