//! The first start, sites near first, search.

use bolewalk_core::pages::{BookPage, CommandKind, EntryValue, Page, PageAddress};
use bolewalk_core::record::{Id, LatLon};

use super::{Hand, here, words};

impl Hand {
    pub(super) fn search(&self, near: Option<LatLon>, search: &str) -> BookPage {
        let search = search.to_owned();
        match self.book.page(PageAddress::Book { near, search }).unwrap() {
            Page::Book(page) => page,
            other => panic!("{other:?}"),
        }
    }
}

#[test]
fn a_first_start_is_two_taps_from_a_page_of_use() {
    let (_folder, hand) = here();
    let page = hand.search(None, "");
    assert!(page.lead.starts_with("No properties yet."), "{}", page.lead);
    let offer = &page.offers[0];
    assert_eq!(offer.command, CommandKind::AddSite);
    let ready = offer.inputs.iter().find(|input| input.needed).unwrap();
    let name = EntryValue::Words {
        text: "Property of May 14, 2026".to_owned(),
    };
    assert_eq!(ready.current, Some(name));
    // Nothing is typed: the name that is ready is taken.
    let done = hand.act(CommandKind::AddSite, &Id::default(), &[]).unwrap();
    let Some(address) = done.go_to else {
        panic!("no page to go to");
    };
    let Page::Site(page) = hand.book.page(address).unwrap() else {
        panic!("another page");
    };
    assert_eq!(page.title, "Property of May 14, 2026");
    assert!(page.lead.starts_with("No trees yet."), "{}", page.lead);
}

#[test]
fn sites_near_come_first_and_search_forgives_accents() {
    let (_folder, hand) = here();
    let nobody = Id::default();
    let add = |name: &str, client: &str, lat_deg: Option<f64>| {
        let mut entries = vec![("site.name", words(name)), ("site.client", words(client))];
        if let Some(lat_deg) = lat_deg {
            let corner = |at: f64| LatLon {
                lat_deg: lat_deg + at * 0.001,
                lon_deg: -71.12 + at * at * 0.001,
            };
            let points = vec![corner(0.0), corner(1.0), corner(2.0)];
            entries.push(("site.outline", EntryValue::Outline { points }));
        }
        hand.made(CommandKind::AddSite, &nobody, &entries)
    };
    add("Nowhere", "Ruiz", None);
    add("Far", "Müller", Some(42.5));
    add("Near", "Peñón", Some(42.331));
    let here = LatLon {
        lat_deg: 42.33,
        lon_deg: -71.12,
    };
    let names = |page: &BookPage| -> Vec<String> {
        page.sites.iter().map(|site| site.name.clone()).collect()
    };
    let page = hand.search(Some(here), "");
    assert_eq!(names(&page), ["Near", "Far", "Nowhere"]);
    // 0.17° of latitude: 18.9 km (WGS 84: 111.1 km in a degree at 42°), 11.7 miles.
    assert_eq!(page.sites[1].away, "12 mi away");
    assert_eq!(page.sites[2].away, "");
    assert_eq!(names(&hand.search(None, "MULLER")), ["Far"]);
    assert_eq!(names(&hand.search(Some(here), "penon")), ["Near"]);
    let none = hand.search(None, "birch");
    assert!(
        none.sites.is_empty() && none.lead.contains("birch"),
        "{}",
        none.lead
    );
    let nowhere = LatLon {
        lat_deg: f64::NAN,
        lon_deg: 0.0,
    };
    assert_eq!(hand.search(Some(nowhere), "").sites.len(), 3);
}

#[test]
fn trees_are_found_by_tag_and_by_species() {
    let (_folder, hand) = here();
    let (site, _, _) = hand.site_with_tree();
    let oak = [
        ("tree.tag", words("A-41")),
        ("tree.species", words("Quercus rubra")),
    ];
    hand.made(CommandKind::AddTree, &site, &oak);
    let tags = |search: &str| -> Vec<String> {
        let page = hand.search_trees(&site, search);
        page.trees.into_iter().map(|tree| tree.tag).collect()
    };
    assert_eq!(tags(""), ["7", "A-41"]);
    assert_eq!(tags("a 41"), ["A-41"]);
    assert_eq!(tags("Red OAK"), ["A-41"]);
    assert!(tags("birch").is_empty());
}
