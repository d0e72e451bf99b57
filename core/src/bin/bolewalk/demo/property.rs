//! The demo property: Hobnail Farm, invented from the gate to the last tree.

use bolewalk_core::error::BookError;
use bolewalk_core::intake::read_site_file;
use bolewalk_core::record::{Photo, SiteFile};

use super::pictures::{PictureOrder, PictureSubject};
use crate::import::shipped_codes;

/// The property as a person would write it.
const PROPERTY: &str = include_str!("property.json");

/// The property, read as any other site file is.
pub fn property() -> Result<SiteFile, BookError> {
    read_site_file(PROPERTY.as_bytes(), &shipped_codes())
}

/// What is to be drawn for the photos that the property names.
pub fn orders(file: &SiteFile) -> Result<Vec<PictureOrder>, BookError> {
    let trees = file.site.trees.iter();
    let photos = trees
        .flat_map(|tree| &tree.inspections)
        .flat_map(|seen| &seen.photos);
    photos
        .map(|photo| {
            order(photo).ok_or_else(|| BookError::Defect {
                detail: format!("no picture can be drawn for {}", photo.file),
            })
        })
        .collect()
}

/// A photo's file is called `<tag>-<subject>.jpg`, or `<tag>-<subject>-<more>.jpg` for another
/// picture of the subject; what ends in a year is the same picture at another time.
fn order(photo: &Photo) -> Option<PictureOrder> {
    let name = photo.file.strip_suffix(".jpg")?;
    let (_, rest) = name.split_once('-')?;
    let subject = PictureSubject::ALL
        .into_iter()
        .filter(|subject| rest.starts_with(&subject.file_word()))
        .max_by_key(|subject| subject.file_word().len())?;
    Some(PictureOrder {
        file_name: photo.file.clone(),
        subject,
        seed: seed(name),
        taken: photo.taken?,
        position: photo.position?,
        direction_deg: photo.direction_deg?,
    })
}

fn seed(name: &str) -> u64 {
    let name = name.trim_end_matches(|sign: char| sign.is_ascii_digit() || sign == '-');
    // FNV-1a, 64 bit: any spread of names over numbers will do.
    name.bytes().fold(0xcbf2_9ce4_8422_2325, |hash: u64, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn the_property_has_no_fault_and_is_as_large_as_promised() {
        let file = property().unwrap();
        let site = &file.site;
        let species: BTreeSet<_> = site
            .trees
            .iter()
            .filter_map(|t| t.species.clone())
            .collect();
        assert!(site.trees.len() >= 24 && species.len() >= 8);
        assert!(site.outline.len() > 3 && site.targets.len() >= 5);
        let unknown = site.lines.iter().filter(|l| l.voltage_kv.is_none()).count();
        assert_eq!((site.lines.len(), unknown), (2, 1));
        assert_eq!(site.visits.len(), 2);
        assert_eq!(file.crew.len(), 4);
        assert_eq!(file.crew.iter().filter(|person| person.trainee).count(), 1);
        assert!(!file.gear.is_empty() && site.rescue.is_some());
        assert!(site.permissions.len() >= 6);
        assert!(orders(&file).unwrap().len() >= 40);
    }

    // Training order as the record has it; each sign-off after the one it stands on.
    #[test]
    fn sign_offs_follow_the_training_order() {
        for person in property().unwrap().crew {
            let mut signs = person.sign_offs.clone();
            signs.sort_by_key(|sign| sign.skill);
            assert!(signs.is_sorted_by_key(|sign| sign.on), "{}", person.name);
        }
    }

    // Height over diameter of open-grown trees: 20 to 90 for broadleaves and conifers alike
    // (common practice, no source); the published species fits are asked by the judgement.
    #[test]
    fn every_tree_is_of_a_shape_that_trees_have() {
        for tree in property().unwrap().site.trees {
            for look in &tree.inspections {
                let (Some(height), Some(girth)) = (&look.height, &look.girth) else {
                    continue;
                };
                let slender = height.height_m * 100.0 / (girth.girth_cm / std::f64::consts::PI);
                assert!((18.0..90.0).contains(&slender), "{}: {slender}", tree.tag);
                for anchor in &look.anchors {
                    assert!(
                        anchor.height_m.unwrap() < height.height_m * 0.85,
                        "{}",
                        tree.tag
                    );
                    assert!((12.0..=25.0).contains(&anchor.diameter_cm.unwrap()));
                    assert!(anchor.parent_diameter_cm >= anchor.diameter_cm);
                }
                if let Some(crown) = &look.crown {
                    assert!(crown.radius_m < height.height_m * 0.6, "{}", tree.tag);
                }
            }
        }
    }
}
