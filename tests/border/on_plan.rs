//! A finger on the plan: the place that was tapped, its accuracy, the tree that was meant, and what
//! is laid over the plan.

use bolewalk_core::draw::{Drawing, DrawnMark, PointSymbol, Spot, StyleRole};
use bolewalk_core::error::BookError;
use bolewalk_core::pages::{
    CommandKind, DrawingAddress, Entry, EntryValue, PageAddress, PlaceOnPlan, PlanOverlay,
    SensedFix,
};
use bolewalk_core::record::{Id, LatLon};

use super::{Hand, choice, here, words};

const AT: (f64, f64) = (42.3314, -71.1211);

fn corner(north: f64, east: f64) -> LatLon {
    LatLon {
        lat_deg: AT.0 + north,
        lon_deg: AT.1 + east,
    }
}

fn outline(points: &[LatLon]) -> EntryValue {
    EntryValue::Outline {
        points: points.to_vec(),
    }
}

fn metric(hand: &Hand) {
    let units = [("settings.units", choice("metric"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &units)
        .unwrap();
}

/// A site about 110 by 82 m with a tree whose position was taken.
fn site_with_plan(hand: &Hand) -> (Id, Id) {
    metric(hand);
    let edge = [
        corner(0.0, 0.0),
        corner(0.0, 0.001),
        corner(0.001, 0.001),
        corner(0.001, 0.0),
    ];
    let (site, tree, _) = hand.site_with_tree();
    hand.act(
        CommandKind::ChangeSite,
        &site,
        &[("site.outline", outline(&edge))],
    )
    .unwrap();
    let at = EntryValue::Fix {
        lat_deg: AT.0 + 0.0005,
        lon_deg: AT.1 + 0.0005,
        accuracy_m: Some(3.0),
    };
    hand.act(CommandKind::ChangeTree, &tree, &[("tree.position", at)])
        .unwrap();
    (site, tree)
}

fn plan(hand: &Hand, about: &Id, zoom: u32) -> Drawing {
    let address = DrawingAddress::SitePlan {
        site: about.clone(),
    };
    hand.book.drawing(address, zoom, 100).unwrap()
}

fn tree_spot(drawing: &Drawing, tree: &Id) -> Spot {
    let found = drawing.marks.iter().find_map(|mark| match mark {
        DrawnMark::Symbol { at, about, .. } if about == tree.as_str() => Some(*at),
        _ => None,
    });
    found.unwrap()
}

fn tap(hand: &Hand, about: &Id, zoom: u32, at: Spot) -> Result<PlaceOnPlan, BookError> {
    hand.book.place_on_plan(about.0.clone(), zoom, at, 100)
}

fn laid_over(
    hand: &Hand,
    command: CommandKind,
    about: &Id,
    of: &[(&str, EntryValue)],
) -> PlanOverlay {
    let entries = of.iter().map(|(input, value)| Entry {
        input: (*input).to_owned(),
        value: value.clone(),
    });
    let entries = entries.collect();
    hand.book
        .entered_on_plan(command, about.0.clone(), entries)
        .unwrap()
}

fn symbols(overlay: &PlanOverlay) -> Vec<(PointSymbol, Spot)> {
    let of = |mark: &DrawnMark| match mark {
        DrawnMark::Symbol { symbol, at, .. } => Some((*symbol, *at)),
        _ => None,
    };
    overlay.marks.iter().filter_map(of).collect()
}

#[test]
fn a_tap_gives_the_place_and_what_is_entered_lies_where_it_was_tapped() {
    let (_folder, hand) = here();
    let (site, tree) = site_with_plan(&hand);
    for zoom in 0..3 {
        let drawing = plan(&hand, &site, zoom);
        let at = tree_spot(&drawing, &tree);
        let place = tap(&hand, &site, zoom, at).unwrap();
        assert!((place.lat_deg - AT.0 - 0.0005).abs() < 1e-7);
        assert!((place.lon_deg - AT.1 - 0.0005).abs() < 1e-7);
        let entered = EntryValue::OnPlan {
            lat_deg: place.lat_deg,
            lon_deg: place.lon_deg,
            accuracy_m: place.accuracy_m,
        };
        let of = [("tree.position", entered)];
        let over = laid_over(&hand, CommandKind::AddTree, &site, &of);
        let back = symbols(&over)[0].1;
        assert!(back.distance_m(at) < 0.002, "{back:?} {at:?}");
        assert!(over.words.contains("house value"), "{}", over.words);
    }
}

#[test]
fn a_tapped_place_is_known_no_better_than_finger_and_plan() {
    let (_folder, hand) = here();
    let (site, tree) = site_with_plan(&hand);
    let at = tree_spot(&plan(&hand, &site, 0), &tree);
    let whole = tap(&hand, &site, 0, at).unwrap().accuracy_m;
    let near = tap(&hand, &site, 2, at).unwrap().accuracy_m;
    // 4 mm are 25 points of 160 to the inch; the 111 m from south to north fill some 300 points.
    assert!((9.0..13.0).contains(&whole), "{whole}");
    // The plan itself is known to 5 m, however near one looks.
    assert!((5.0..whole).contains(&near), "{near}");
    let coarse = EntryValue::Fix {
        lat_deg: AT.0 + 0.0005,
        lon_deg: AT.1 + 0.0005,
        accuracy_m: Some(30.0),
    };
    hand.act(CommandKind::ChangeTree, &tree, &[("tree.position", coarse)])
        .unwrap();
    assert!(tap(&hand, &site, 2, at).unwrap().accuracy_m > 30.0);
    let place = tap(&hand, &site, 0, at).unwrap();
    let entered = EntryValue::OnPlan {
        lat_deg: place.lat_deg,
        lon_deg: place.lon_deg,
        accuracy_m: place.accuracy_m,
    };
    let of = [("tree.tag", words("8")), ("tree.position", entered)];
    let made = hand.made(CommandKind::AddTree, &site, &of);
    let line = hand.tree_page(&made).lines.into_iter();
    let line = line.clone().find(|line| line.id == "tree.position");
    let said = line.unwrap().words;
    assert!(said.contains(&format!("± {}", place.accuracy_m)), "{said}");
}

#[test]
fn what_is_off_the_plan_is_refused_in_words() {
    let (_folder, hand) = here();
    let (site, _) = site_with_plan(&hand);
    let extent = plan(&hand, &site, 0).extent;
    let off = |x_m: f64, y_m: f64| Spot { x_m, y_m };
    for at in [
        off(f64::NAN, 0.0),
        off(0.0, f64::INFINITY),
        off(extent.right_m + 1.0, 0.0),
        off(0.0, -1e9),
    ] {
        let refused = tap(&hand, &site, 0, at).unwrap_err();
        let said = hand.book.words_of(refused).unwrap();
        assert!(said.contains("off the plan"), "{said}");
        let tree = hand.book.tree_on_plan(site.0.clone(), 0, at, 100).unwrap();
        assert_eq!(tree, None);
    }
    let unknown = Id("nobody".to_owned());
    let at = Spot { x_m: 0.0, y_m: 0.0 };
    let outcome = tap(&hand, &unknown, 0, at);
    assert!(matches!(outcome, Err(BookError::NotFound { .. })));
    let empty = [("site.name", words("Nowhere yet"))];
    let empty = hand.made(CommandKind::AddSite, &Id::default(), &empty);
    let said = tap(&hand, &empty, 0, at).unwrap_err();
    assert!(
        hand.book
            .words_of(said)
            .unwrap()
            .contains("nothing to draw")
    );
}

#[test]
fn a_tree_is_found_by_its_mark_and_its_plan_from_whatever_lies_on_the_site() {
    let (_folder, hand) = here();
    let (site, tree) = site_with_plan(&hand);
    let drawing = plan(&hand, &site, 0);
    let at = tree_spot(&drawing, &tree);
    let found = |at: Spot| hand.book.tree_on_plan(site.0.clone(), 0, at, 100).unwrap();
    assert_eq!(found(at), Some(PageAddress::Tree { tree: tree.clone() }));
    let m_per_pt = drawing.extent.width_m() / 360.0;
    let beside = |points: f64| Spot {
        x_m: at.x_m - points * m_per_pt,
        y_m: at.y_m,
    };
    assert!(found(beside(20.0)).is_some(), "a finger is wide");
    assert_eq!(found(beside(60.0)), None);
    let line = [
        ("line.name", words("Mill line")),
        ("line.kind", choice("service")),
        (
            "line.way",
            outline(&[corner(0.0, 0.0), corner(0.001, 0.001)]),
        ),
    ];
    let line = hand.act(CommandKind::AddOverheadLine, &site, &line);
    for about in [&tree, &line.unwrap().record] {
        let theirs = plan(&hand, about, 0);
        assert_eq!(theirs, plan(&hand, &site, 0));
    }
}

#[test]
fn corners_are_closed_where_an_area_is_asked_for() {
    let (_folder, hand) = here();
    let (site, _) = site_with_plan(&hand);
    let three = outline(&[corner(0.0, 0.0), corner(0.0, 0.0004), corner(0.0004, 0.0)]);
    let drawn = |command, of: &[(&str, EntryValue)]| -> &'static str {
        let over = laid_over(&hand, command, &site, of);
        assert_eq!(symbols(&over).len(), 3);
        assert!(
            over.symbols
                .iter()
                .any(|one| one.symbol == PointSymbol::Corner)
        );
        assert_eq!(over.legend[0].role, StyleRole::Entered);
        match over.marks[0] {
            DrawnMark::Polygon { .. } => "closed",
            DrawnMark::Polyline { .. } => "open",
            _ => "spots",
        }
    };
    let ground = ("target.ground", three.clone());
    let site_edge = [("site.outline", three.clone())];
    assert_eq!(drawn(CommandKind::ChangeSite, &site_edge), "closed");
    let way = [("line.way", three)];
    assert_eq!(drawn(CommandKind::AddOverheadLine, &way), "open");
    assert_eq!(
        drawn(CommandKind::AddTarget, std::slice::from_ref(&ground)),
        "closed"
    );
    let as_way = [ground, ("target.form", choice("way"))];
    assert_eq!(drawn(CommandKind::AddTarget, &as_way), "open");
    let bad = outline(&[corner(f64::NAN, 0.0), corner(0.0, 1e6)]);
    let over = laid_over(
        &hand,
        CommandKind::AddTarget,
        &site,
        &[("target.ground", bad)],
    );
    assert!(over.marks.is_empty() && over.legend.is_empty());
}

#[test]
fn the_phone_stands_on_the_plan_where_its_fix_can_be_used() {
    let (_folder, hand) = here();
    let (site, tree) = site_with_plan(&hand);
    let me = |lat_deg: f64, lon_deg: f64, accuracy_m: f64| {
        let fix = SensedFix {
            lat_deg,
            lon_deg,
            accuracy_m: Some(accuracy_m),
            at_ms: 0,
        };
        hand.book.me_on_plan(site.0.clone(), 0, fix, 100).unwrap()
    };
    let there = me(AT.0 + 0.0005, AT.1 + 0.0005, 4.0);
    let at = tree_spot(&plan(&hand, &site, 0), &tree);
    assert_eq!(symbols(&there)[0].0, PointSymbol::Me);
    assert!(symbols(&there)[0].1.distance_m(at) < 0.01);
    // The ring holds 95 % as those of the trees do: √(ln 0.05 / ln 0.32) = 1.62 times the 68 %.
    let rings: Vec<f64> = there
        .marks
        .iter()
        .filter_map(|mark| match mark {
            DrawnMark::Circle { radius_m, .. } => Some(*radius_m),
            _ => None,
        })
        .collect();
    assert!((rings[0] - 6.486).abs() < 0.001, "{rings:?}");
    for nowhere in [
        me(0.0, 0.0, 4.0),
        me(f64::NAN, 1.0, 4.0),
        me(AT.0 + 0.5, AT.1, 4.0),
        me(AT.0, AT.1, 3_000.0),
    ] {
        assert_eq!(nowhere, PlanOverlay::default());
    }
}

#[test]
fn a_corner_at_zero_or_off_the_globe_is_refused_with_a_way_on() {
    let (_folder, hand) = here();
    let (site, _) = site_with_plan(&hand);
    let told = [
        (0.0, 0.0, "0, 0"),
        (f64::NAN, 1.0, "no position on Earth"),
        (42.0, 200.0, "no position on Earth"),
    ];
    for (lat_deg, lon_deg, told) in told {
        let odd = LatLon { lat_deg, lon_deg };
        let edge = outline(&[corner(0.0, 0.0), corner(0.0, 0.001), odd]);
        let target = [
            ("target.name", words("Lane")),
            ("target.kind", choice("road")),
            ("target.ground", edge.clone()),
        ];
        let refused = [
            hand.act(CommandKind::ChangeSite, &site, &[("site.outline", edge)]),
            hand.act(CommandKind::AddTarget, &site, &target),
        ];
        for refused in refused {
            let said = hand.book.words_of(refused.unwrap_err()).unwrap();
            assert!(said.contains(told), "{said}");
            assert!(said.contains("wait") || said.contains("Wait"), "{said}");
        }
        let forged = EntryValue::OnPlan {
            lat_deg,
            lon_deg,
            accuracy_m: 5.0,
        };
        let target = [
            ("target.name", words("Lane")),
            ("target.kind", choice("road")),
            ("target.here", forged),
        ];
        assert!(hand.act(CommandKind::AddTarget, &site, &target).is_err());
    }
    let unsure = EntryValue::OnPlan {
        lat_deg: AT.0,
        lon_deg: AT.1,
        accuracy_m: f64::NAN,
    };
    let of = [("tree.position", unsure)];
    assert!(hand.act(CommandKind::AddTree, &site, &of).is_err());
    assert!(hand.site_page(&site).targets.is_empty());
}
