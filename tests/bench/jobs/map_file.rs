//! The same trees out as a GeoPackage.

use std::path::Path;

use bolewalk_core::handover::{write_geojson, write_geopackage};
use bolewalk_core::intake::{InventoryOptions, read_inventory_at};
use bolewalk_core::judge::judge_site;
use bolewalk_core::words::{Language, UnitSystem, Words};

use super::features_of;
use crate::bench::{Bench, Outcome, rules};
use crate::peer::ogr2ogr;
use crate::row::Row;
use crate::times::timed;

pub fn rows(bench: &Bench) -> Outcome<Vec<Row>> {
    let (table, which) = bench.trees()?;
    let options = InventoryOptions {
        site_name: "Street trees".into(),
        day: Some("2016-01-15".parse()?),
        ..Default::default()
    };
    let file = read_inventory_at(&table, &options)?.file;
    let judgement = judge_site(&file, &rules()?, "2016-01-15".parse()?, None);
    let words = Words::new(Language::English, UnitSystem::Metric);
    let package = bench.path("trees.gpkg");
    let map = bench.path("trees.geojson");
    write_geojson(&file, &judgement, words, &map)?;
    write_geopackage(&file, &judgement, words, &package)?;
    let features = features_of(&package)?;
    let ours = || {
        std::fs::remove_file(&package)?;
        let write = || Ok(write_geopackage(&file, &judgement, words, &package)?);
        Ok(timed(write)?.0)
    };
    let copy = bench.path("trees-of-the-peer.gpkg");
    let arguments = vec!["-nln".into(), "map".into(), map];
    let peer = ogr2ogr(arguments, copy, |copy: &Path| Ok(features_of(copy)?.into()))?;
    let row = Row::beside(
        "map file: the same trees to GeoPackage",
        ours,
        peer,
        |made| match made.as_i64() == Some(features) {
            true => Ok(()),
            false => Err(format!("ours has {features} features, the peer's {made}").into()),
        },
    )?;
    let note = format!(
        "{which}; {features} features, counted in both. The peer's command reads them as GeoJSON first, \
         its start included; ours has the records at hand, as the app has."
    );
    Ok(vec![row.noted(note)])
}
