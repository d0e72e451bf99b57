//! The demo's photographs: computed, each with a complete record of place, time and direction.

mod aloft;
mod bark;
mod base;
mod branching;
mod canvas;
mod conifer;
mod foliage;
mod foot;
mod hanger;
mod house;
mod lens;
mod limb;
mod noise;
mod setting;
mod soil;
mod standing;
mod stem;
mod upward;
mod whole;

use std::path::{Path, PathBuf};

use bolewalk_core::error::BookError;
use bolewalk_core::photo::{CameraDirection, ExifEntry, North, write_exif_jpeg};
use bolewalk_core::record::{Moment, Position};
use image::RgbImage;
use rayon::prelude::*;

use canvas::Canvas;
use noise::Dice;

/// Width of a picture in pixels; it is three quarters as high.
const WIDE_PX: u32 = 960;
/// Quality of the pictures.
const QUALITY: u8 = 84;

/// What a picture shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PictureSubject {
    /// A whole broadleaf tree on a lawn.
    BroadleafWhole,
    /// A whole conifer.
    ConiferWhole,
    /// A tree dead for years.
    DeadTree,
    /// A crown that dies back from its top.
    DiebackCrown,
    /// A whole tree that leans.
    LeaningTree,
    /// A small garden tree that is worked on from the ground.
    SmallGardenTree,
    /// A tree beside a house.
    TreeBesideHouse,
    /// A crown with overhead wires through its edge.
    OverheadWire,
    /// A tree over a path with a bench.
    TreeOverPath,
    /// Bark from close by.
    StemBark,
    /// An opening into a hollow stem.
    StemCavity,
    /// A large pruning wound, half closed.
    PruningWound,
    /// A crack along the stem.
    StemCrack,
    /// Shelves of a bracket fungus at the base.
    BracketAtBase,
    /// A sound base with its root flare.
    RootFlare,
    /// Lifted and cracked soil beside a leaning base.
    HeavedSoil,
    /// A trench with roots cut off.
    CutRoots,
    /// Two stems with bark between them.
    CodominantUnion,
    /// A broken limb that hangs in the crown.
    Hanger,
    /// A union to tie in over, with a throw line.
    AnchorUnion,
    /// The view up the stem into the crown.
    CrownLookingUp,
}

impl PictureSubject {
    /// Every subject.
    pub const ALL: [PictureSubject; 21] = [
        PictureSubject::BroadleafWhole,
        PictureSubject::ConiferWhole,
        PictureSubject::DeadTree,
        PictureSubject::DiebackCrown,
        PictureSubject::LeaningTree,
        PictureSubject::SmallGardenTree,
        PictureSubject::TreeBesideHouse,
        PictureSubject::OverheadWire,
        PictureSubject::TreeOverPath,
        PictureSubject::StemBark,
        PictureSubject::StemCavity,
        PictureSubject::PruningWound,
        PictureSubject::StemCrack,
        PictureSubject::BracketAtBase,
        PictureSubject::RootFlare,
        PictureSubject::HeavedSoil,
        PictureSubject::CutRoots,
        PictureSubject::CodominantUnion,
        PictureSubject::Hanger,
        PictureSubject::AnchorUnion,
        PictureSubject::CrownLookingUp,
    ];

    /// Its word in file names, such as `stem-cavity`.
    pub fn file_word(self) -> String {
        let name = format!("{self:?}");
        let mut word = String::with_capacity(name.len() + 2);
        for letter in name.chars() {
            if letter.is_ascii_uppercase() && !word.is_empty() {
                word.push('-');
            }
            word.push(letter.to_ascii_lowercase());
        }
        word
    }

    /// What it shows, in words for the picture's record.
    pub fn description(self) -> &'static str {
        match self {
            PictureSubject::BroadleafWhole => "whole tree",
            PictureSubject::ConiferWhole => "whole conifer",
            PictureSubject::DeadTree => "dead tree",
            PictureSubject::DiebackCrown => "crown dying back",
            PictureSubject::LeaningTree => "leaning tree",
            PictureSubject::SmallGardenTree => "small garden tree",
            PictureSubject::TreeBesideHouse => "tree beside a house",
            PictureSubject::OverheadWire => "wires beside the crown",
            PictureSubject::TreeOverPath => "tree over a path",
            PictureSubject::StemBark => "bark of the stem",
            PictureSubject::StemCavity => "cavity in the stem",
            PictureSubject::PruningWound => "pruning wound",
            PictureSubject::StemCrack => "crack in the stem",
            PictureSubject::BracketAtBase => "bracket fungus at the base",
            PictureSubject::RootFlare => "root flare",
            PictureSubject::HeavedSoil => "heaved soil",
            PictureSubject::CutRoots => "roots cut in a trench",
            PictureSubject::CodominantUnion => "codominant stems with included bark",
            PictureSubject::Hanger => "hanger",
            PictureSubject::AnchorUnion => "union chosen as anchor",
            PictureSubject::CrownLookingUp => "crown from below",
        }
    }
}

/// A picture to be made.
#[derive(Debug, Clone, PartialEq)]
pub struct PictureOrder {
    /// File name, ending in `.jpg`.
    pub file_name: String,
    /// What it shows.
    pub subject: PictureSubject,
    /// Chooses among the endless pictures of a subject.
    pub seed: u64,
    /// When it was taken.
    pub taken: Moment,
    /// Where the camera stood.
    pub position: Position,
    /// True bearing the camera looked toward, in degrees.
    pub direction_deg: f64,
}

/// Draws a subject, 960 × 720 pixels; the same seed gives the same picture.
pub fn draw_picture(subject: PictureSubject, seed: u64) -> RgbImage {
    draw_at(subject, seed, WIDE_PX)
}

fn draw_at(subject: PictureSubject, seed: u64, wide_px: u32) -> RgbImage {
    let mut canvas = Canvas::new(wide_px);
    let mut dice = Dice::new(seed ^ ((subject as u64) << 40));
    let draw: fn(&mut Canvas, &mut Dice) = match subject {
        PictureSubject::BroadleafWhole => whole::broadleaf,
        PictureSubject::ConiferWhole => conifer::conifer,
        PictureSubject::DeadTree => whole::dead,
        PictureSubject::DiebackCrown => whole::dieback,
        PictureSubject::LeaningTree => whole::leaning,
        PictureSubject::SmallGardenTree => whole::small,
        PictureSubject::TreeBesideHouse => whole::beside_house,
        PictureSubject::OverheadWire => whole::beside_wires,
        PictureSubject::TreeOverPath => whole::beside_path,
        PictureSubject::StemBark => stem::bark,
        PictureSubject::StemCavity => stem::cavity,
        PictureSubject::PruningWound => stem::wound,
        PictureSubject::StemCrack => stem::crack,
        PictureSubject::BracketAtBase => base::bracket,
        PictureSubject::RootFlare => base::flare,
        PictureSubject::HeavedSoil => soil::heave,
        PictureSubject::CutRoots => soil::cut_roots,
        PictureSubject::CodominantUnion => aloft::codominant,
        PictureSubject::Hanger => hanger::hanger,
        PictureSubject::AnchorUnion => aloft::anchor,
        PictureSubject::CrownLookingUp => upward::looking_up,
    };
    draw(&mut canvas, &mut dice);
    canvas.develop(dice.between(0.94, 1.06), seed)
}

/// Makes all pictures of a list in `folder` (which must exist), on every core; gives their paths
/// in the order of the list.
///
/// # Errors
/// The first error of writing; pictures already written stay.
pub fn write_pictures(list: &[PictureOrder], folder: &Path) -> Result<Vec<PathBuf>, BookError> {
    list.par_iter()
        .with_max_len(1)
        .map(|order| {
            let path = folder.join(&order.file_name);
            std::fs::write(&path, photograph(order)?)
                .map_err(|cause| BookError::writing(&path, &cause))?;
            Ok(path)
        })
        .collect()
}

fn photograph(order: &PictureOrder) -> Result<Vec<u8>, BookError> {
    let picture = draw_picture(order.subject, order.seed);
    let entry = ExifEntry {
        taken: order.taken,
        position: Some(order.position),
        altitude_m: None,
        direction: Some(CameraDirection {
            bearing_deg: order.direction_deg,
            north: North::True,
        }),
        model: "demo picture".to_owned(),
        description: order.subject.description().to_owned(),
    };
    write_exif_jpeg(&picture, QUALITY, &entry)
}

#[cfg(test)]
mod tests {
    use super::*;
    use bolewalk_core::photo::{read_facts, sharpness};

    #[test]
    fn every_subject_fills_its_picture_with_detail() {
        PictureSubject::ALL.par_iter().for_each(|&subject| {
            let picture = draw_at(subject, 3, 320);
            assert_eq!(picture.dimensions(), (320, 240));
            assert!(sharpness(&picture) > 100.0, "{subject:?}");
            let bytes = picture.as_raw();
            let mean = bytes.iter().map(|&b| f64::from(b)).sum::<f64>() / bytes.len() as f64;
            assert!((60.0..190.0).contains(&mean), "{subject:?}: {mean}");
        });
    }

    #[test]
    fn a_seed_repeats_its_picture_and_another_differs() {
        let one = draw_at(PictureSubject::StemCavity, 1, 160);
        assert_eq!(one, draw_at(PictureSubject::StemCavity, 1, 160));
        assert_ne!(one, draw_at(PictureSubject::StemCavity, 2, 160));
    }

    #[test]
    fn a_picture_tells_where_and_when() {
        let order = PictureOrder {
            file_name: "bark.jpg".to_owned(),
            subject: PictureSubject::StemBark,
            seed: 5,
            taken: Moment {
                utc_ms: 1_777_903_872_000,
                offset_min: -240,
            },
            position: Position {
                lat_deg: 42.3314,
                lon_deg: -71.1211,
                accuracy_m: Some(4.0),
                method: None,
            },
            direction_deg: 135.0,
        };
        let folder = tempfile::tempdir().unwrap();
        let paths = write_pictures(std::slice::from_ref(&order), folder.path()).unwrap();
        let facts = read_facts(&std::fs::read(&paths[0]).unwrap());
        assert_eq!(facts.gaps, []);
        assert_eq!(facts.taken, Some(order.taken));
        assert_eq!(facts.direction.unwrap().bearing_deg, 135.0);
    }
}
