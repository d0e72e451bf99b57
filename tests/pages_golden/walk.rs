//! Every page that can be reached from the field book's, by following each address that a page
//! carries.

use std::path::Path;

use bolewalk_core::field_book::FieldBook;
use bolewalk_core::pages::PageAddress;
use serde_json::Value;

/// The pages with their names, in the order in which they are met.
pub fn walked(book: &FieldBook, folder: &Path) -> Vec<(String, Value)> {
    let mut to_see = vec![PageAddress::book()];
    let mut pages = Vec::new();
    let mut next = 0;
    while let Some(address) = to_see.get(next).cloned() {
        next += 1;
        let page = book.page(address.clone());
        let page = page.unwrap_or_else(|error| panic!("{address:?}: {error:?}"));
        let mut page = serde_json::to_value(page).unwrap();
        addresses_in(&page, &mut to_see);
        settle(&mut page, &folder.display().to_string());
        pages.push((name_of(&address, &to_see[..next - 1]), page));
    }
    pages
}

/// Adds the addresses in a page that are not known yet.
fn addresses_in(value: &Value, found: &mut Vec<PageAddress>) {
    match value {
        Value::Object(fields) => {
            let address = serde_json::from_value::<PageAddress>(value.clone());
            if fields.contains_key("page")
                && let Ok(address) = address
                && !found.contains(&address)
            {
                found.push(address);
            }
            fields.values().for_each(|field| addresses_in(field, found));
        }
        Value::Array(items) => items.iter().for_each(|item| addresses_in(item, found)),
        _ => {}
    }
}

/// `judgement-3` for the third judgement that is met, `book` for the only book.
fn name_of(address: &PageAddress, earlier: &[PageAddress]) -> String {
    let kind = kind_of(address);
    let alike = earlier
        .iter()
        .filter(|other| kind_of(other) == kind)
        .count();
    let is_about_one = serde_json::to_value(address).unwrap();
    let is_about_one = is_about_one
        .as_object()
        .unwrap()
        .iter()
        .any(|(field, value)| field != "page" && value.as_str().is_some_and(|id| !id.is_empty()));
    match is_about_one || alike > 0 {
        true => format!("{kind}-{}", alike + 1),
        false => kind,
    }
}

fn kind_of(address: &PageAddress) -> String {
    let address = serde_json::to_value(address).unwrap();
    address["page"].as_str().unwrap().replace('_', "-")
}

/// Leaves out what is empty, puts something lasting in the place of the folder, which is another at
/// every run, and shortens ids.
fn settle(value: &mut Value, folder: &str) {
    match value {
        Value::Object(fields) => {
            fields.retain(|_, field| !is_empty(field));
            fields.values_mut().for_each(|field| settle(field, folder));
        }
        Value::Array(items) => items.iter_mut().for_each(|item| settle(item, folder)),
        Value::String(text) => *text = short_ids(&text.replace(folder, "…")),
        _ => {}
    }
}

fn is_empty(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::Bool(yes) => !yes,
        Value::String(text) => text.is_empty(),
        Value::Array(items) => items.is_empty(),
        _ => false,
    }
}

/// The first eight digits of every UUID.
fn short_ids(text: &str) -> String {
    let mut short = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let id = rest
            .get(..36)
            .filter(|id| uuid::Uuid::parse_str(id).is_ok());
        let (keep, skip) = match id {
            Some(_) => (8, 36),
            None => (first.len_utf8(), first.len_utf8()),
        };
        short.push_str(&rest[..keep]);
        rest = &rest[skip..];
    }
    short
}

#[test]
fn ids_are_shortened_and_nothing_else() {
    let long = "us/2eebd7b4-40c7-5247-b105-570299a8c87d · tree 04";
    assert_eq!(short_ids(long), "us/2eebd7b4 · tree 04");
    assert_eq!(short_ids("…/small.jpg"), "…/small.jpg");
}
