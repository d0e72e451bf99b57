//! Files of trees that are damaged, odd or in another way of writing: nothing panics, no row is lost
//! without a word, and the same trees are read whatever separates and encodes them.

use bolewalk_core::intake::{ColumnMapping, Imported, InventoryOptions, read_inventory};
use proptest::prelude::*;

const SOUND: &[u8] = include_bytes!("../../fixtures/inventories/urban-trees-300.csv");
const POINTS: &str = r#"{"type":"FeatureCollection","features":[
{"type":"Feature","id":1,"geometry":{"type":"Point","coordinates":[-71.1,42.3]},"properties":{"tag":"A1","species":"Quercus rubra","height_m":21.5,"dbh_in":"24"}},
{"type":"Feature","id":2,"geometry":null,"properties":{"tag":"A2","species":null,"height_m":-1}},
{"type":"Feature","id":3,"geometry":{"type":"MultiPoint","coordinates":[[7.1,52.3,80]]},"properties":{"tag":"A3","height_m":"9,5"}}]}"#;

fn options(columns: &[&str]) -> InventoryOptions {
    InventoryOptions {
        site_name: "Hill".into(),
        columns: columns
            .iter()
            .map(|text| ColumnMapping::read(text).unwrap())
            .collect(),
        ..Default::default()
    }
}

fn read(bytes: &[u8], columns: &[&str]) -> Imported {
    read_inventory(bytes, &options(columns)).unwrap()
}

/// Whatever comes in, the rows add up.
fn adds_up(bytes: &[u8]) {
    if let Ok(read) = read_inventory(bytes, &options(&[])) {
        let trees = read.file.site.trees.len();
        let told = trees + read.faults.len() + read.blank_rows as usize;
        assert_eq!(told, read.rows as usize);
        let mut tags: Vec<&str> = read
            .file
            .site
            .trees
            .iter()
            .map(|t| t.tag.as_str())
            .collect();
        tags.sort_unstable();
        tags.dedup();
        assert_eq!(tags.len(), trees, "a tag is there twice");
        assert!(
            read.faults
                .iter()
                .chain(&read.left_out)
                .all(|f| !f.place.is_empty())
        );
    }
}

/// Bytes changed, cut or put in at some places.
fn damaged(sound: Vec<u8>) -> impl Strategy<Value = Vec<u8>> {
    let change = (any::<prop::sample::Index>(), any::<u8>(), 0..4_u8);
    prop::collection::vec(change, 1..12).prop_map(move |changes| {
        let mut bytes = sound.clone();
        for (at, byte, kind) in changes {
            let at = at
                .index(bytes.len().max(1))
                .min(bytes.len().saturating_sub(1));
            match kind {
                0 if !bytes.is_empty() => bytes[at] = byte,
                1 => bytes.insert(at, byte),
                2 => bytes.insert(at, b"\",;\n\r\t|{}[]:"[usize::from(byte) % 12]),
                _ => bytes.truncate(at),
            }
        }
        bytes
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn no_bytes_make_it_panic(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        adds_up(&bytes);
    }

    #[test]
    fn no_damaged_table_makes_it_panic(bytes in damaged(SOUND[..1500].to_vec())) {
        adds_up(&bytes);
    }

    #[test]
    fn no_damaged_map_makes_it_panic(bytes in damaged(POINTS.as_bytes().to_vec())) {
        adds_up(&bytes);
    }

    #[test]
    fn no_signs_of_a_table_make_it_panic(text in "[a-d0-9,;\t|\"\r\n. '-]{0,200}") {
        adds_up(text.as_bytes());
        adds_up(format!("tag,height_m,lat,lon\n{text}").as_bytes());
    }

    #[test]
    fn the_same_trees_are_read_however_they_are_written(
        trees in prop::collection::vec(written_tree(), 1..20),
        how in writing(),
    ) {
        let bytes = how.write(&trees);
        let read = read(&bytes, &[]);
        prop_assert_eq!(&read.faults, &[]);
        prop_assert_eq!(&read.left_out, &[]);
        let read = &read.file.site.trees;
        prop_assert_eq!(read.len(), trees.len());
        for (number, (read, tree)) in read.iter().zip(&trees).enumerate() {
            prop_assert_eq!(&read.tag, &format!("T{number}"));
            prop_assert_eq!(read.note.as_deref().unwrap_or(""), &tree.note);
            let seen = read.inspections.first();
            let height = seen.and_then(|seen| seen.height).map(|h| h.height_m);
            prop_assert_eq!(height, tree.height_dm.map(|dm| f64::from(dm) / 10.0));
            let at = read.position.unwrap();
            prop_assert_eq!(at.lat_deg, f64::from(tree.lat_e5) / 1e5);
            prop_assert_eq!(at.accuracy_m, None);
        }
    }
}

#[derive(Debug, Clone)]
struct WrittenTree {
    note: String,
    height_dm: Option<u32>,
    lat_e5: i32,
}

fn written_tree() -> impl Strategy<Value = WrittenTree> {
    // Signs that Windows-1252 has too, with every delimiter and quote among them.
    let note = "[a-zäöüßéñ€“”,;|\"' ]{0,30}[a-zäöüßéñ]";
    (
        note,
        prop::option::of(5..1160_u32),
        (-8_900_000..8_900_000_i32).prop_map(|lat| lat * 2 + 1),
    )
        .prop_map(|(note, height_dm, lat_e5)| WrittenTree {
            note: note.trim_start().to_owned(),
            height_dm,
            lat_e5: lat_e5 / 2,
        })
}

#[derive(Debug, Clone)]
struct Writing {
    delimiter: u8,
    comma: bool,
    encoding: u8,
    line_end: csv::Terminator,
    all_quoted: bool,
}

fn writing() -> impl Strategy<Value = Writing> {
    let ends = prop::sample::select(vec![
        csv::Terminator::CRLF,
        csv::Terminator::Any(b'\n'),
        csv::Terminator::Any(b'\r'),
    ]);
    (0..4_usize, any::<bool>(), 0..5_u8, ends, any::<bool>()).prop_map(
        |(delimiter, comma, encoding, line_end, all_quoted)| Writing {
            delimiter: b",;\t|"[delimiter],
            comma,
            encoding,
            line_end,
            all_quoted,
        },
    )
}

impl Writing {
    fn number(&self, value: f64, digits: usize) -> String {
        let text = format!("{value:.digits$}");
        if self.comma {
            text.replace('.', ",")
        } else {
            text
        }
    }

    fn write(&self, trees: &[WrittenTree]) -> Vec<u8> {
        let style = if self.all_quoted {
            csv::QuoteStyle::Always
        } else {
            csv::QuoteStyle::Necessary
        };
        let mut table = csv::WriterBuilder::new()
            .delimiter(self.delimiter)
            .terminator(self.line_end)
            .quote_style(style)
            .from_writer(Vec::new());
        table
            .write_record(["Tag", "Lat", "Lon", "Height (m)", "Notes"])
            .unwrap();
        for (number, tree) in trees.iter().enumerate() {
            let height = tree.height_dm.map(|dm| f64::from(dm) / 10.0);
            let height = height.map_or("NA".into(), |height| self.number(height, 1));
            let lat = self.number(f64::from(tree.lat_e5) / 1e5, 5);
            let lon = self.number(-71.12, 5);
            table
                .write_record([&format!("T{number}"), &lat, &lon, &height, &tree.note])
                .unwrap();
        }
        let text = String::from_utf8(table.into_inner().unwrap()).unwrap();
        match self.encoding {
            0 => text.into_bytes(),
            1 => [b"\xef\xbb\xbf".as_slice(), text.as_bytes()].concat(),
            2 => encoding_rs::WINDOWS_1252.encode(&text).0.into_owned(),
            3 => utf16(&text, u16::to_le_bytes),
            _ => utf16(&text, u16::to_be_bytes),
        }
    }
}

fn utf16(text: &str, bytes: impl Fn(u16) -> [u8; 2]) -> Vec<u8> {
    let units = std::iter::once(0xFEFF).chain(text.encode_utf16());
    units.flat_map(bytes).collect()
}

#[test]
fn units_come_from_the_mapping_the_header_or_the_cell() {
    let text = "id;HEIGHT;dbh_in;Crown spread (ft);lean\n7;40;24,5;30;5\n8;12 m;62 cm;;\n";
    let read = read(text.as_bytes(), &["height_m=height:ft"]);
    let seen = |n: usize| read.file.site.trees[n].inspections[0].clone();
    // 1 ft = 0.3048 m, 1 in = 2.54 cm exactly (NIST Special Publication 811, 2008).
    assert_eq!(seen(0).height.unwrap().height_m, 12.192);
    let girth = seen(0).girth.unwrap().girth_cm;
    assert!((girth - 24.5 * 2.54 * std::f64::consts::PI).abs() < 1e-6);
    assert_eq!(seen(0).crown.unwrap().radius_m, 4.572);
    assert_eq!(seen(0).lean.unwrap().lean_deg, 5.0);
    assert_eq!(seen(1).height.unwrap().height_m, 12.0);
    let girth = seen(1).girth.unwrap().girth_cm;
    assert!((girth - 62.0 * std::f64::consts::PI).abs() < 1e-6);
    assert!(seen(1).crown.is_none());
}

#[test]
fn rows_and_values_that_do_not_fit_are_told_with_line_and_reason() {
    let text = "tag,height_m,girth_cm,lat,lon,accuracy\n\
                1,12,90,42.33,-71.12,4\n\
                1,13,91,42.33,-71.12,-1\n\
                2,tall,-99,142.33,-33.9,\n\
                3,400,0,0,0,\n\
                \n\
                4,9,80,42.33\n\
                ,9,80,42.33,,\n\
                ,,,,,\n";
    let read = read(text.as_bytes(), &[]);
    let told = |faults: &[bolewalk_core::record::Fault]| -> Vec<(String, String)> {
        let told = faults.iter().map(|f| (f.code.clone(), f.place.clone()));
        told.collect()
    };
    let pair = |code: &str, place: &str| (code.to_owned(), place.to_owned());
    assert_eq!(
        told(&read.faults),
        [
            pair("fault.tag-twice", "line 3"),
            pair("fault.row-length", "line 7"),
        ]
    );
    assert_eq!(
        told(&read.left_out),
        [
            pair("fault.coordinates-swapped", "line 4"),
            pair("fault.not-a-number", "line 4, column height_m"),
            pair("fault.no-place", "line 5"),
            pair("fault.out-of-range", "line 5, column height_m"),
            pair("fault.out-of-range", "line 5, column girth_cm"),
            pair("fault.missing-field", "line 8"),
            pair("fault.half-a-position", "line 8, column lat"),
        ]
    );
    let tags: Vec<&str> = read
        .file
        .site
        .trees
        .iter()
        .map(|t| t.tag.as_str())
        .collect();
    assert_eq!(tags, ["1", "2", "3", "#5"]);
    assert_eq!((read.rows, read.blank_rows), (7, 1));
    assert_eq!(
        read.file.site.trees[0].position.unwrap().accuracy_m,
        Some(4.0)
    );
    assert!(read.file.site.trees[2].inspections.is_empty());
}

#[test]
fn points_and_properties_become_trees() {
    let read = read(POINTS.as_bytes(), &[]);
    let trees = &read.file.site.trees;
    assert_eq!(trees.len(), 3);
    let at = trees[0].position.unwrap();
    assert_eq!((at.lat_deg, at.lon_deg), (42.3, -71.1));
    let girth = trees[0].inspections[0].girth.unwrap().girth_cm;
    assert!((girth - 24.0 * 2.54 * std::f64::consts::PI).abs() < 1e-6);
    assert!(trees[1].position.is_none() && trees[1].inspections.is_empty());
    assert_eq!(trees[2].inspections[0].height.unwrap().height_m, 9.5);
    assert_eq!(trees[2].position.unwrap().lat_deg, 52.3);
}

#[test]
fn a_mapping_that_names_no_column_lists_those_there_are() {
    let wanted = options(&["height_m=Tall", "tag=Nr", "lean=Nr"]);
    let error = read_inventory(b"Nr,Height\n1,2\n", &wanted).unwrap_err();
    let bolewalk_core::error::BookError::Refused { faults } = error else {
        panic!("{error}")
    };
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].code, "fault.no-such-column");
    assert_eq!(faults[0].allowed, "Nr, Height");
}

#[test]
fn doubled_tags_are_told_apart_by_a_unique_key_only() {
    let text = "tag,objectid,common name\n9,a,Red Oak\n9,b,ash\n10,c,NA\n";
    let mut wanted = options(&[]);
    wanted.latin_names = [("red oak".to_owned(), "Quercus rubra".to_owned())].into();
    let known = read_inventory(text.as_bytes(), &wanted).unwrap();
    let trees = &known.file.site.trees;
    let tags: Vec<&str> = trees.iter().map(|tree| tree.tag.as_str()).collect();
    assert_eq!(tags, ["9 (a)", "9 (b)", "10"]);
    assert!(
        known
            .guesses
            .iter()
            .any(|r| r.code == "import.tags-told-apart")
    );
    let species: Vec<Option<&str>> = trees.iter().map(|t| t.species.as_deref()).collect();
    assert_eq!(species, [Some("Quercus rubra"), Some("ash"), None]);
    // The same key twice: it is no key, so it is not guessed; named by hand, the row is a fault.
    let text = text.replace(",b,", ",a,");
    let unknown = read(text.as_bytes(), &[]);
    assert_eq!(unknown.faults[0].code, "fault.tag-twice");
    let named = read(text.as_bytes(), &["key=objectid"]);
    assert_eq!(named.faults[0].code, "fault.id-twice");
    assert_eq!(named.faults[0].place, "line 3");
}
