//! How far an answer goes: triage, the next day, wires, zones, neighbouring trees, words.

use super::*;

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
