//! What bars a climb: facts, the dead and brittle, the day, people and gear.

use super::*;

// Method, section 3: what bars whatever the rest says.
#[test]
fn facts_that_bar() {
    for (code, part, stop) in [
        ("soil-movement", "roots", "stop.soil-movement"),
        ("roots-cut", "roots", "stop.roots-cut"),
        ("kretzschmaria", "base", "stop.kretzschmaria"),
        ("meripilus", "roots", "stop.meripilus"),
        ("phaeolus", "roots", "stop.phaeolus"),
        ("heterobasidion", "base", "stop.heterobasidion"),
        ("fire-hollow", "base", "stop.fire-hollow"),
        ("lightning-strip", "stem", "stop.lightning-strip"),
        ("under-tension", "limb", "stop.under-tension"),
        ("hanger", "crown", "stop.hanger-over-route"),
        ("stinging-insects", "around", "stop.stinging-insects"),
        ("nest-or-roost", "around", "stop.nest-or-roost"),
        ("touching-wire", "around", "stop.wire-touching-unnamed"),
    ] {
        stops_with(|file| look(file)["findings"] = find(code, part, 1), stop);
    }
    stops_with(
        |file| look(file)["findings"] = find("union-crack", "union", 2),
        "stop.union-crack",
    );
    stops_with(
        |file| look(file)["findings"] = find("stem-crack", "stem", 3),
        "stop.stem-crack",
    );
    stops_with(
        |file| look(file)["lean_is_new"] = true.into(),
        "stop.lean-new",
    );
    stops_with(
        |file| look(file)["ground_dug"] = json!({"dug": true, "distance_m": 3.0}),
        "stop.ground-dug",
    );
    stops_with(
        |file| look(file)["anchors"][0]["state"] = "dead_stub".into(),
        "stop.anchor-dead-stub",
    );
    stops_with(
        |file| look(file)["anchors"][0]["diameter_cm"] = 10.5.into(),
        "stop.anchor-thin",
    );
    stops_with(
        |file| look(file)["anchors"][0]["load_test"] = json!({"outcome": "moved"}),
        "stop.load-test-failed",
    );
}

#[test]
fn what_is_cleared_by_name_or_long_ago_does_not_bar() {
    let cleared = with(|file| {
        let mut finding = find("roots-cut", "roots", 1);
        finding[0]["cleared_by"] = "ben".into();
        look(file)["findings"] = finding;
    });
    assert!(!has(&cleared.stops, "stop.roots-cut"));
    let old = with(|file| {
        look(file)["ground_dug"] = json!({"dug": true, "when": "2015-05-01", "distance_m": 2.0});
    });
    assert_eq!(old.stops, Vec::new());
    // 18 × 0.70 m of diameter is 12.6 m (extension and pruning handbooks, from memory).
    let far = with(|file| {
        look(file)["ground_dug"] = json!({"dug": true, "distance_m": 12.7});
    });
    assert_eq!(far.stops, Vec::new());
}

#[test]
fn dead_and_brittle() {
    let dead = with(|file| {
        look(file)["life"] = "dead".into();
        look(file)["dead_since"] = "2026-03-01".into();
    });
    assert_eq!(dead.verdict, Verdict::Refer);
    assert!(has(&dead.refer_caps, "cap.dead-tree"));
    stops_with(
        |file| look(file)["life"] = "dead".into(),
        "stop.dead-date-unknown",
    );
    stops_with(
        |file| {
            look(file)["life"] = "dead".into();
            look(file)["dead_since"] = "2026-03-01".into();
            file["site"]["trees"][0]["species"] = "Betula papyrifera".into();
        },
        "stop.dead-brittle-kind",
    );
    stops_with(
        |file| {
            look(file)["dieback_pct"] = 60.0.into();
            file["site"]["trees"][0]["species"] = "Fraxinus americana".into();
        },
        "stop.ash-dieback",
    );
}

#[test]
fn a_hanger_away_from_the_route_bars_only_over_people() {
    let away = json!([{"id": "f", "code": "hanger", "part": "limb", "grade": 3,
        "height_m": 10.0, "side_deg": 270.0}]);
    let free = with(|file| look(file)["findings"] = away.clone());
    assert!(!has(&free.stops, "stop.hanger-over-people"));
    stops_with(
        |file| {
            look(file)["findings"] = away;
            file["site"]["targets"] = json!([{"id": "p", "name": "Path", "kind": "path",
                "occupancy": "frequent", "form": "way",
                "ground": [{"lat_deg": 42.33140, "lon_deg": -71.1220},
                    {"lat_deg": 42.33140, "lon_deg": -71.1200}]}]);
        },
        "stop.hanger-over-people",
    );
}

// Method, section 3, the day; the sheet's Beaufort table, 30-30 rule.
#[test]
fn the_day_bars_and_limits() {
    let hour = |change: Value| {
        with(|file| {
            let hour = &mut file["site"]["visits"][0]["weather"][0];
            for (key, value) in change.as_object().unwrap() {
                hour[key] = value.clone();
            }
        })
    };
    assert!(has(&hour(json!({"wind_force": 5})).stops, "stop.wind"));
    let breeze = hour(json!({"wind_force": 4}));
    assert_eq!(breeze.verdict, Verdict::Limited);
    assert!(has(&breeze.limit_caps, "cap.wind"));
    // 8.5 m/s is 19.01 mph: force 5, whatever the signs on land were read as.
    assert!(has(&hour(json!({"wind_ms": 8.5})).stops, "stop.wind"));
    let thunder = json!({"no_thunder": false, "thunder_min_ago": 29.0});
    assert!(has(&hour(thunder).stops, "stop.thunder"));
    let over = hour(json!({"no_thunder": false, "thunder_min_ago": 30.0}));
    assert_eq!(over.verdict, Verdict::NoStop);
    assert!(has(&hour(json!({"ice": true})).stops, "stop.ice"));
    assert!(has(&hour(json!({"light": "dark"})).stops, "stop.dark"));
    assert!(has(&hour(json!({"light": "dusk"})).limit_caps, "cap.dusk"));
    assert!(has(
        &hour(json!({"wet_bark": true})).limit_caps,
        "cap.wet-bark"
    ));
    assert!(has(
        &hour(json!({"wet_bark": null})).gaps,
        "gap.weather-bark"
    ));
}

// Method, section 3, people; skills in training order.
#[test]
fn people_and_gear() {
    stops_with(
        |file| file["site"]["rescue"] = Value::Null,
        "stop.no-rescue-plan",
    );
    stops_with(
        |file| file["crew"][1]["sign_offs"] = json!([]),
        "stop.no-second",
    );
    stops_with(
        |file| look(file)["plans"][0]["second"] = "ana".into(),
        "stop.no-second",
    );
    stops_with(
        |file| file["crew"][1]["trainee"] = true.into(),
        "stop.no-second",
    );
    stops_with(
        |file| {
            let signs = file["crew"][0]["sign_offs"].as_array_mut().unwrap();
            signs.retain(|sign| sign["skill"] != "friction_hitch");
        },
        "stop.no-sign-off",
    );
    stops_with(
        |file| file["crew"][0]["sign_offs"][0]["until"] = "2026-05-13".into(),
        "stop.no-sign-off",
    );
    stops_with(
        |file| file["crew"][0]["height_limit_m"] = 10.0.into(),
        "stop.above-height-limit",
    );
    stops_with(
        |file| look(file)["plans"][0]["spurs"] = true.into(),
        "stop.spurs-on-pruning",
    );
    stops_with(
        |file| {
            let plan = &mut look(file)["plans"][0];
            plan["open_system"] = true.into();
            plan["stopper"] = false.into();
        },
        "stop.no-stopper",
    );
    // Twice 14 m and 3 m on the ground: 31 m.
    stops_with(
        |file| {
            for piece in file["gear"].as_array_mut().unwrap() {
                piece["length_m"] = 30.0.into();
            }
        },
        "stop.line-short",
    );
    stops_with(
        |file| {
            for piece in file["gear"].as_array_mut().unwrap() {
                piece["last_check"] = "2025-10-01".into();
            }
        },
        "stop.gear-check-due",
    );
    // One set of gear for two people: nobody could bring the climber down.
    stops_with(
        |file| {
            let gear = file["gear"].as_array_mut().unwrap();
            gear.retain(|piece| piece["id"] != "harness-2");
        },
        "stop.no-second",
    );
    let low = with(|file| {
        look(file)["anchors"][0]["height_m"] = 3.0.into();
        file["crew"][1]["sign_offs"] = json!([]);
    });
    assert!(!has(&low.stops, "stop.no-second"));
}

#[test]
fn the_second_set_belongs_to_the_second() {
    let owned = with(|file| {
        for piece in file["gear"].as_array_mut().unwrap() {
            let mine = piece["id"].as_str().unwrap().ends_with("-1");
            piece["used_by"] = if mine { "ana" } else { "ben" }.into();
        }
    });
    assert_eq!(owned.verdict, Verdict::NoStop);
}
