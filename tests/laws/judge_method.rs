//! The method of the judgement, paragraph by paragraph, on one tree that is changed by hand.

use bolewalk_core::judge::{SiteContext, judge_site, judge_tree};
use bolewalk_core::record::{
    ClimbNeed, Day, Judgement, Reason, SiteFile, SiteJudgement, Verdict, ZoneAction,
};
use bolewalk_core::words::{Language, UnitSystem, Words};
use serde_json::{Value, json};

use super::judge_trees::{complete, day, judge, look, points, rules};

const DRAWS: u32 = 1000;

fn has(reasons: &[Reason], code: &str) -> bool {
    reasons.iter().any(|reason| reason.code == code)
}

fn with(change: impl FnOnce(&mut Value)) -> Judgement {
    let mut file = complete();
    change(&mut file);
    judge(&file, DRAWS)
}

fn site(file: &Value, on: &str) -> SiteJudgement {
    let file: SiteFile = serde_json::from_value(file.clone()).unwrap();
    let on: Day = on.parse().unwrap();
    judge_site(&file, &rules(), on, None)
}

fn find(code: &str, part: &str, grade: u32) -> Value {
    json!([{"id": "f", "code": code, "part": part, "grade": grade}])
}

fn stops_with(change: impl FnOnce(&mut Value), code: &str) {
    let judged = with(change);
    assert!(has(&judged.stops, code), "{code}: {:?}", judged.stops);
    assert_eq!(judged.verdict, Verdict::Barred);
    assert_eq!(judged.score, None);
}

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

// Method, section 3, people; issue's room list: skills in training order.
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

// Method, section 4.
#[test]
fn caps() {
    let refer = with(|file| look(file)["findings"] = find("bracket-unnamed", "stem", 1));
    assert!(has(&refer.refer_caps, "cap.bracket-not-named"));
    assert_eq!(refer.verdict, Verdict::Refer);
    let grave = with(|file| look(file)["findings"] = find("wound", "stem", 3));
    assert!(has(&grave.refer_caps, "cap.grade-3-on-route"));
    let dull = with(|file| look(file)["base_mallet"]["east"] = "dull".into());
    assert!(has(&dull.refer_caps, "cap.base-needs-section"));
    let part = with(|file| look(file)["walk_round"][0]["look"] = "part_seen".into());
    assert_eq!(part.verdict, Verdict::Limited);
    assert!(has(&part.limit_caps, "cap.part-seen"));
    let bark = with(|file| {
        look(file)["findings"] = json!([{"id": "f", "code": "included-bark", "part": "union",
            "grade": 1, "height_m": 6.0, "side_deg": 90.0, "aspect_ratio": 0.75}]);
    });
    assert!(has(&bark.limit_caps, "cap.included-bark"));
}

// Reference sheet, section 3.1: t/R = 0.30 gives Wagener 34.3 %, Coder 24.0 %.
#[test]
fn a_thin_shell_refers_and_a_thinner_one_bars() {
    let ring = |wall_cm: f64| {
        with(|file| {
            let readings: Vec<Value> = (0..4)
                .map(|quarter| {
                    json!({"bearing_deg": 90.0 * f64::from(quarter),
                    "shell_cm": wall_cm, "se_cm": 0.5, "method": "drill"})
                })
                .collect();
            look(file)["sections"] = json!([{"id": "s", "height_m": 1.0, "diameter_cm": 64.0,
                "bark_cm": 2.0, "readings": readings}]);
        })
    };
    let thin = ring(8.7);
    assert!(has(&thin.refer_caps, "cap.shell-thin") && has(&thin.refer_caps, "cap.strength-loss"));
    assert_eq!(thin.verdict, Verdict::Refer);
    let line = |judged: &Judgement, what: &str| {
        let mut lines = judged.working.iter();
        lines
            .find(|line| line.what == what)
            .map(|line| line.value)
            .unwrap()
    };
    let sheet = ring(9.0);
    assert!((line(&sheet, "work.wagener") - 34.30).abs() < 0.01);
    assert!((line(&sheet, "work.coder") - 24.01).abs() < 0.01);
    assert!((line(&sheet, "work.modulus-left") - 75.99).abs() < 0.05);
    // t/R = 0.20: Wagener 51.2 %.
    let thinner = ring(6.0);
    assert!(has(&thinner.stops, "stop.strength-loss"));
}

// Method, section 6: redone by hand from the printed inputs.
#[test]
fn the_working_can_be_redone_with_a_calculator() {
    let judged = with(|file| look(file)["anchors"][0]["diameter_cm"] = 13.0.into());
    let line = |what: &str| {
        let mut lines = judged.working.iter();
        lines
            .find(|line| line.what == what)
            .map(|line| line.value)
            .unwrap()
    };
    // Red oak: bark 20 % of the wood's volume; 13 cm over bark is 13/√1.2 = 11.867 cm of wood.
    assert!((line("work.anchor-wood") - 11.867).abs() < 0.001);
    // 85 kg · 9.80665 · 1 · 2.0 = 1.66713 kN.
    assert!((line("work.anchor-force") - 1.667_13).abs() < 1e-4);
    // Half of 13 cm and 5 cm: 11.5 cm; sin(20° + 45°) = 0.906308.
    let moment = 1.667_13 * 0.115 * 0.906_308;
    assert!((line("work.anchor-pull") - moment).abs() < 1e-4);
    // σ = 32 M/(π d³); R = 57.2 · 0.75 = 42.9 MPa.
    let stress = 32.0 * moment / (std::f64::consts::PI * 0.118_67_f64.powi(3)) / 1000.0;
    assert!((line("work.anchor-stress") - stress).abs() < 0.001);
    assert!((line("work.anchor-margin") - 42.9 / stress).abs() < 0.02);
    assert!(
        (line("work.stem-length") - line("work.height-95") / 2f64.to_radians().cos()).abs() < 1e-9
    );
}

// Method, section 5: 0.95/0.80/0.50; within reach √, elsewhere ∜; others √; once.
#[test]
fn factors_of_findings() {
    let limb = |id: &str, code: &str, grade: u32, side: f64| {
        json!({"id": id, "code": code, "part": "limb", "grade": grade, "height_m": 12.0,
            "side_deg": side})
    };
    let score = |findings: Value| {
        let judged = with(|file| look(file)["findings"] = findings);
        points(&judged)
    };
    // 85 · 0.8 = 68; √0.8 = 0.8944: 76.03; ∜0.8 = 0.9457: 80.39.
    assert_eq!(score(json!([limb("f", "wound", 2, 90.0)])), 68);
    assert_eq!(score(json!([limb("f", "wound", 2, 170.0)])), 76);
    assert_eq!(score(json!([limb("f", "wound", 2, 270.0)])), 80);
    // The worst in full, the other by its root: 85 · 0.8 · √0.8 = 60.82.
    let two = json!([limb("f", "wound", 2, 90.0), limb("g", "canker", 2, 90.0)]);
    assert_eq!(score(two), 60);
    let twice = json!([limb("f", "wound", 2, 91.0), limb("g", "wound", 2, 92.0)]);
    assert_eq!(score(twice), 68);
}

// Method, sections 6 and 7: a load test that held.
#[test]
fn a_load_test_that_held_counts_for_its_day() {
    let tested = |on: &str| {
        with(|file| {
            look(file)["anchors"][0]["load_test"] =
                json!({"outcome": "held", "mass_kg": 180.0, "on": on});
        })
    };
    let today = tested("2026-05-14");
    assert_eq!(points(&today), 90);
    assert!(has(&today.remarks, "remark.load-test-held"));
    let before = tested("2026-05-13");
    assert_eq!(points(&before), 85);
    assert!(has(&before.remarks, "remark.load-test-first"));
    let not_on_dead = with(|file| {
        look(file)["life"] = "dead".into();
        look(file)["dead_since"] = "2026-03-01".into();
    });
    assert!(!has(&not_on_dead.remarks, "remark.load-test-first"));
}

// Method, section 2.
#[test]
fn triage_never_scores_and_asks_for_a_full_check() {
    let triage = |way: &str| {
        with(|file| {
            file["site"]["trees"][0]["way"] = way.into();
            file["site"]["trees"][0]["inspections"] = json!([{"id": "t", "visit": "v",
                "level": "triage", "life": "alive", "wires_near": false, "base_sound": true}]);
        })
    };
    let climbed = triage("prune");
    assert_eq!(
        (climbed.verdict, climbed.climb),
        (Verdict::Incomplete, ClimbNeed::Needed)
    );
    assert!(has(&climbed.gaps, "gap.full-check"));
    let felled = triage("fell_whole");
    assert_eq!(felled.climb, ClimbNeed::NotNeeded);
    assert!(has(&felled.gaps, "gap.no-climb-judged"));
    let stop = with(|file| {
        file["site"]["trees"][0]["inspections"] = json!([{"id": "t", "visit": "v",
            "level": "stop_on_sight", "findings": find("soil-movement", "roots", 1)}]);
    });
    assert_eq!(stop.verdict, Verdict::Barred);
}

// Method, sections 2 and 7: an answer ends with the day.
#[test]
fn the_next_day_asks_what_changes_overnight_anew() {
    let mut file = complete();
    let judged = site(&file, "2026-05-15");
    let tree = &judged.trees[0];
    assert_eq!(tree.verdict, Verdict::Incomplete);
    assert_eq!(tree.score, None);
    let again = tree.gaps.iter().filter(|gap| gap.code == "gap.look-again");
    assert_eq!(again.count(), 5);
    assert!(has(&tree.gaps, "gap.weather"));
    file["site"]["visits"]
        .as_array_mut()
        .unwrap()
        .push(json!({"id": "w", "day": "2026-05-15",
        "weather": [{"hour": 8, "wind_force": 1, "no_thunder": true, "ice": false,
            "wet_bark": false, "light": "day"}]}));
    let walk: Vec<Value> = ["wires", "hangers", "insects", "roots", "base"]
        .iter()
        .map(|part| json!({"part": part, "look": "seen"}))
        .collect();
    file["site"]["trees"][0]["inspections"]
        .as_array_mut()
        .unwrap()
        .push(json!({"id": "again", "visit": "w", "level": "same_day", "walk_round": walk}));
    let judged = site(&file, "2026-05-15");
    assert_eq!(judged.trees[0].verdict, Verdict::Limited);
    assert!(has(&judged.trees[0].limit_caps, "cap.full-check-older"));
    // A month later the full check is over.
    let judged = site(&file, "2026-06-20");
    assert!(has(&judged.trees[0].gaps, "gap.full-check-over"));
    // The first day's answer is as it was.
    assert_eq!(site(&file, "2026-05-14").trees[0].verdict, Verdict::NoStop);
}

#[test]
fn a_look_the_same_day_lies_over_the_full_check() {
    let judged = with(|file| {
        let looks = file["site"]["trees"][0]["inspections"]
            .as_array_mut()
            .unwrap();
        looks.push(json!({"id": "later", "visit": "v", "level": "same_day",
            "findings": find("hanger", "crown", 1)}));
    });
    assert!(has(&judged.stops, "stop.hanger-over-route"));
}

// 29 CFR 1910.333(c)(3)(i)(A): 3.05 m up to 50 kV.
#[test]
fn wires_bar_limit_or_are_asked() {
    let line = |line: Value, wire: Value| {
        with(|file| {
            let mut whole = json!({"id": "l", "name": "Street line", "kind": "distribution",
                "way": [{"lat_deg": 42.3300, "lon_deg": -71.1208},
                    {"lat_deg": 42.3330, "lon_deg": -71.1208}]});
            for (key, value) in line.as_object().unwrap() {
                whole[key] = value.clone();
            }
            file["site"]["lines"] = json!([whole]);
            look(file)["wires"] = wire;
        })
    };
    let taped = |metres: f64| json!([{"id": "w", "line": "l", "distance_m": metres}]);
    let kv = json!({"voltage_kv": 12.47});
    assert!(has(
        &line(kv.clone(), taped(3.0)).stops,
        "stop.wire-inside-approach"
    ));
    let near = line(kv.clone(), taped(5.0));
    assert!(has(&near.limit_caps, "cap.wire-near") && near.verdict == Verdict::Limited);
    assert_eq!(line(kv.clone(), taped(7.0)).verdict, Verdict::NoStop);
    assert!(has(
        &line(json!({}), taped(9.0)).stops,
        "stop.wire-voltage-unknown"
    ));
    assert_eq!(line(json!({}), taped(11.0)).verdict, Verdict::NoStop);
    let dead = json!({"dead_on": "2026-05-14"});
    assert!(has(
        &line(dead, taped(1.0)).remarks,
        "remark.wire-dead-today"
    ));
    let touching = json!([{"id": "w", "line": "l", "touching": true}]);
    assert!(has(&line(kv.clone(), touching).stops, "stop.wire-touching"));
    // 0.0003° of longitude is 24.726 m here; less 6 m of crown and twice 1.6215 · 4 m: 5.754 m.
    let mapped = line(kv, json!([]));
    let distance = mapped.wires[0].distance_m.unwrap();
    assert!((distance - 5.754).abs() < 0.01, "{distance}");
    assert!(!mapped.wires[0].measured);
}

// Method, section 8.
#[test]
fn what_lies_inside_is_closed_moved_emptied_or_bars() {
    let ground = |lon: f64| {
        json!([{"lat_deg": 42.33138, "lon_deg": lon}, {"lat_deg": 42.33142, "lon_deg": lon},
            {"lat_deg": 42.33142, "lon_deg": lon + 0.0001}])
    };
    let target = |kind: &str, more: Value| {
        with(|file| {
            let mut target = json!({"id": "t", "name": "It", "kind": kind, "form": "area",
                "occupancy": "frequent", "ground": ground(-71.1210)});
            for (key, value) in more.as_object().unwrap() {
                target[key] = value.clone();
            }
            file["site"]["targets"] = json!([target]);
        })
    };
    let action = |judged: &Judgement| judged.zones[0].inside[0].action;
    assert_eq!(action(&target("road", json!({}))), ZoneAction::CloseOff);
    assert_eq!(
        action(&target("dwelling", json!({}))),
        ZoneAction::EmptyRooms
    );
    assert_eq!(action(&target("parking", json!({}))), ZoneAction::MoveAway);
    assert_eq!(action(&target("fence", json!({}))), ZoneAction::Protect);
    let held = target("road", json!({"can_be_closed": false}));
    assert_eq!(action(&held), ZoneAction::Guard);
    assert!(has(&held.stops, "stop.zone-not-clear"));
    let away = with(|file| {
        file["site"]["targets"] = json!([{"id": "t", "name": "It", "kind": "road",
            "form": "area", "ground": ground(-71.1170)}]);
    });
    assert_eq!(away.zones[0].inside, Vec::new());
}

#[test]
fn two_trees_too_near_are_not_worked_on_together() {
    let mut file = complete();
    let mut other = file["site"]["trees"][0].clone();
    other["id"] = "ash".into();
    other["tag"] = "2".into();
    // 0.0002° of longitude is 16.5 m here: 14.1 m of keep-out and 6 m of crown reach further.
    other["position"]["lon_deg"] = (-71.1209).into();
    file["site"]["trees"].as_array_mut().unwrap().push(other);
    assert_eq!(site(&file, "2026-05-14").conflicts.len(), 1);
    file["site"]["trees"][1]["position"]["lon_deg"] = (-71.1200).into();
    assert_eq!(site(&file, "2026-05-14").conflicts, Vec::new());
}

#[test]
fn the_site_tells_what_is_missing_for_all() {
    let mut file = complete();
    file["site"]["rescue"]
        .as_object_mut()
        .unwrap()
        .remove("signal");
    let judged = site(&file, "2026-05-14");
    assert!(has(&judged.gaps, "gap.rescue-signal"));
    assert!(has(&judged.gaps, "gap.permission"));
}

#[test]
fn without_a_plan_the_best_anchor_counts_with_the_worst_rope_system() {
    let judged = with(|file| {
        let look = look(file);
        look.as_object_mut().unwrap().remove("plans");
        let mut dead = look["anchors"][0].clone();
        dead["id"] = "b".into();
        dead["state"] = "dead".into();
        let anchors = look["anchors"].as_array_mut().unwrap();
        anchors.insert(0, dead);
    });
    assert_eq!(judged.anchor.as_str(), "a");
    assert_eq!(judged.verdict, Verdict::NoStop);
    assert!(has(&judged.remarks, "remark.no-plan-worst-system"));
}

/// Every reason of a judgement.
fn reasons(judged: &Judgement) -> Vec<Reason> {
    let lists = [
        &judged.stops,
        &judged.gaps,
        &judged.refer_caps,
        &judged.limit_caps,
        &judged.limits,
        &judged.remarks,
    ];
    let mut all: Vec<Reason> = lists.into_iter().flatten().cloned().collect();
    all.extend(judged.climbers.iter().flat_map(|c| c.reasons.clone()));
    all.extend(judged.wires.iter().map(|w| w.reason.clone()));
    all.extend(judged.zones.iter().map(|z| z.rule.clone()));
    all.extend(
        judged
            .zones
            .iter()
            .flat_map(|z| z.inside.iter().map(|i| i.reason.clone())),
    );
    all.extend(judged.zones.iter().flat_map(|z| z.gaps.clone()));
    all.extend(judged.next_measurement.iter().map(|next| next.what.clone()));
    all.extend(
        judged
            .score
            .iter()
            .flat_map(|s| s.shares.iter().map(|s| s.cause.clone())),
    );
    all
}

#[test]
fn every_reason_is_worded_with_all_its_arguments() {
    let words = Words::new(Language::English, UnitSystem::Metric);
    let messy = with(|file| {
        file["site"]["lines"] = json!([{"id": "l", "name": "Street line", "kind": "unknown",
            "way": [{"lat_deg": 42.3300, "lon_deg": -71.1209},
                {"lat_deg": 42.3330, "lon_deg": -71.1209}]}]);
        file["site"]["targets"] = json!([{"id": "t", "name": "Drive", "kind": "parking",
            "form": "spot", "neighbours": true, "can_be_closed": false,
            "ground": [{"lat_deg": 42.3314, "lon_deg": -71.1211}]}]);
        file["crew"][0]["trainee"] = true.into();
        file["crew"][0]["sign_offs"] = json!([]);
        let look = look(file);
        look["findings"] = json!([
            {"id": "a", "code": "soil-movement", "part": "roots", "grade": 2},
            {"id": "b", "code": "bracket-unnamed", "part": "base"},
            {"id": "c", "code": "no-such", "part": "limb", "grade": 3},
            {"id": "d", "code": "included-bark", "part": "union", "grade": 1},
        ]);
        look["height"]["method"] = "by_eye".into();
        look["walk_round"][3] = json!({"part": "roots", "look": "not_seen", "hidden_by": "ivy"});
        look["walk_round"][10]["look"] = "part_seen".into();
        look["sections"] = json!([{"id": "s", "height_m": 1.0, "diameter_cm": 64.0,
            "mallet": ["sound", "dull", "hollow", "dull", "sound", "sound", "dull", "sound"]}]);
        look["anchors"][0]["diameter_read"] = "by_eye".into();
    });
    let clean = with(|file| look(file)["anchors"][0]["diameter_read"] = "by_eye".into());
    let mut told = 0;
    for reason in reasons(&messy).iter().chain(&reasons(&clean)) {
        let said = words.reason(reason);
        assert!(!said.contains(['⟦', '{', '$']), "{}: {said}", reason.code);
        told += 1;
    }
    for line in messy.working.iter().chain(&clean.working) {
        assert!(words.has(&line.what), "{}", line.what);
        assert!(
            !line.source.is_empty() && line.value.is_finite(),
            "{}",
            line.what
        );
    }
    assert!(told > 40, "{told}");
}

#[test]
fn the_day_is_the_files_day() {
    let file: SiteFile = serde_json::from_value(complete()).unwrap();
    let rules = rules();
    let context = SiteContext::new(&file, &rules, day(), Some(3));
    // No weather was entered for three in the morning.
    let judged = judge_tree(&context, &file.site.trees[0]);
    assert!(has(&judged.gaps, "gap.weather"));
}
