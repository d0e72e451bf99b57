//! The laws of the log, over random logs.

use proptest::prelude::*;
use serde_json::json;

use super::*;
use crate::record::Moment;
use crate::store::Store;

const NOW: Moment = Moment {
    utc_ms: 1_780_000_000_000,
    offset_min: 0,
};

fn value() -> impl Strategy<Value = Value> {
    prop_oneof![
        Just(Value::Null),
        Just(json!("1")),
        Just(json!("2")),
        Just(json!(2)),
        Just(json!(2.0)),
        Just(json!(true)),
        Just(json!(false)),
        Just(json!({"height_m": 12.5})),
        Just(json!(["ground"])),
        Just(json!("s")),
        Just(json!("t1")),
    ]
}

/// A change of few records and fields, so that they meet; some nouns and fields are unknown.
fn change() -> impl Strategy<Value = Change> {
    let noun = prop::sample::select(vec!["site", "tree", "inspection", "gear", "balloon"]);
    let record = prop::sample::select(vec!["s", "t1", "t2"]);
    let field = prop::sample::select(vec![
        "tag",
        "name",
        "way",
        "walk_order",
        "height",
        "bark_cm",
        "lean_is_new",
        "order",
        "colour",
        PARENT,
        ORDER,
        GONE,
    ]);
    let site = prop::sample::select(vec![None, Some("s"), Some("s2")]);
    let who = (0_u64..6, prop::sample::select(vec!["d1", "d2"]));
    (noun, record, field, site, who, value()).prop_map(
        |(noun, record, field, site, (time, device), value)| Change {
            id: String::new(),
            hlc: format!("{time:016x}"),
            device: device.to_owned(),
            person: "ana".to_owned(),
            edit: "e".to_owned(),
            site: site.map(str::to_owned),
            noun: noun.to_owned(),
            record: record.to_owned(),
            field: field.to_owned(),
            value,
            replaces: Vec::new(),
        },
    )
}

/// A log: each change may replace earlier ones, mostly of its own field, now and then of another.
fn some_log() -> impl Strategy<Value = Vec<Change>> {
    let linked = (change(), any::<[prop::sample::Index; 2]>(), 0_u8..8);
    prop::collection::vec(linked, 1..14).prop_map(|parts| {
        let mut log: Vec<Change> = Vec::new();
        for (mut change, links, mode) in parts {
            change.id = format!("c{:02}", log.len());
            if !log.is_empty() && mode > 0 {
                let earlier = &log[links[0].index(log.len())];
                if mode < 7 {
                    change.noun.clone_from(&earlier.noun);
                    change.record.clone_from(&earlier.record);
                    change.field.clone_from(&earlier.field);
                }
                if mode > 3 {
                    change.replaces.push(earlier.id.clone());
                }
                if mode == 5 {
                    change
                        .replaces
                        .push(log[links[1].index(log.len())].id.clone());
                }
            }
            log.push(change);
        }
        log
    })
}

fn rows(store: &Store) -> String {
    let mut text = String::new();
    each_row(&store.conn, &mut |line| text.push_str(line)).unwrap();
    text
}

/// The rows after absorbing the parts one after the other; nothing is kept.
fn absorbed(store: &mut Store, parts: &[&[Change]]) -> String {
    for part in parts {
        store.absorb(part, NOW).unwrap();
    }
    rows(store)
}

fn memory() -> Store {
    Store::in_memory("here").unwrap()
}

fn shuffled(log: &[Change], keys: &[u32]) -> Vec<Change> {
    let mut order: Vec<usize> = (0..log.len()).collect();
    order.sort_by_key(|place| (keys[place % keys.len()], *place));
    order.into_iter().map(|place| log[place].clone()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn rebuilt_tables_equal_those_kept_up_edit_by_edit(log in some_log(), keys in any::<[u32; 5]>()) {
        let mut store = memory();
        let log = shuffled(&log, &keys);
        for change in &log {
            store.absorb(std::slice::from_ref(change), NOW).unwrap();
        }
        let kept_up = rows(&store);
        store.rebuild_projection().unwrap();
        prop_assert_eq!(kept_up, rows(&store));
    }

    #[test]
    fn merging_knows_no_order_no_grouping_and_no_twice(
        log in some_log(),
        keys in any::<[u32; 5]>(),
        cuts in any::<[prop::sample::Index; 2]>(),
    ) {
        let mut cuts = cuts.map(|cut| cut.index(log.len() + 1));
        cuts.sort_unstable();
        let (one, rest) = log.split_at(cuts[0]);
        let (two, three) = rest.split_at(cuts[1] - cuts[0]);
        let together = absorbed(&mut memory(), &[one, two, three]);
        prop_assert_eq!(&together, &absorbed(&mut memory(), &[three, two, one]));
        prop_assert_eq!(&together, &absorbed(&mut memory(), &[two, two, three, one, two, one]));
        let mixed = shuffled(&log, &keys);
        prop_assert_eq!(&together, &absorbed(&mut memory(), &[&mixed]));
    }
}
