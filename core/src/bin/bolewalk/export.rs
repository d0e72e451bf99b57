//! `bolewalk export`: map files and tables, and the site as a file for other programs.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::handover::{write_csv, write_geojson, write_geopackage};
use bolewalk_core::intake::write_site_file;
use bolewalk_core::record::{Day, Photo, SiteFile, SiteJudgement};
use bolewalk_core::store::PHOTOS;
use bolewalk_core::words::Words;

use super::answer::{tell, words};
use super::place::Place;
use super::progress::Progress;
use super::summary::written_words;

/// The site as a file.
pub const SITE_FILE: &str = "property.json";

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// A site file (JSON) or the folder of a field book.
    place: PathBuf,
    /// The folder for the files; made if it is not there.
    #[arg(long)]
    out: PathBuf,
    /// The property, by its name, where a field book holds several.
    #[arg(long)]
    site: Option<String>,
    /// The day it is judged for, such as 2026-05-14; the day of the latest visit if left out.
    #[arg(long)]
    date: Option<Day>,
    /// The hour of the day, 0 to 23, whose weather counts; the worst of the day if left out.
    #[arg(long, value_parser = clap::value_parser!(u32).range(0..24))]
    hour: Option<u32>,
    /// Also the whole property as a site file with its photos beside it.
    #[arg(long)]
    site_file: bool,
    /// Feet, inches and pounds instead of metres, centimetres and kilograms.
    #[arg(long)]
    imperial: bool,
}

pub fn export(asked: &Asked) -> Result<ExitCode, BookError> {
    let place = Place::open(&asked.place, asked.site.as_deref())?;
    let judgement = place.judged(asked.date, asked.hour)?;
    let words = words(asked.imperial);
    std::fs::create_dir_all(&asked.out).map_err(|cause| BookError::writing(&asked.out, &cause))?;
    let progress = Progress::begin();
    let mut written = write_map_files(&place.file, &judgement, words, &asked.out, &progress)?;
    if asked.site_file {
        written.push(write_with_photos(&place, &asked.out, &words, &progress)?);
    }
    drop(progress);
    tell(&written_words(&written, &words))?;
    Ok(ExitCode::SUCCESS)
}

/// Writes GeoPackage, GeoJSON and table of trees into a folder; gives their paths.
pub fn write_map_files(
    file: &SiteFile,
    judgement: &SiteJudgement,
    words: Words,
    out: &Path,
    progress: &Progress,
) -> Result<Vec<PathBuf>, BookError> {
    progress.part(&words.say("desk.map-files", &[]));
    let paths = ["trees.gpkg", "trees.geojson", "trees.csv"].map(|name| out.join(name));
    let [geopackage, geojson, csv] = &paths;
    progress.go_on(0, 3)?;
    write_geopackage(file, judgement, words, geopackage)?;
    progress.go_on(1, 3)?;
    write_geojson(file, judgement, words, geojson)?;
    progress.go_on(2, 3)?;
    write_csv(file, judgement, words, csv)?;
    Ok(paths.to_vec())
}

/// The site as a file that names its photos in the folder `photos` beside it.
pub fn write_site_file_beside(file: &SiteFile, folder: &Path) -> Result<PathBuf, BookError> {
    let mut file = file.clone();
    for photo in photos_of(&mut file) {
        let name = Path::new(&photo.file).file_name().unwrap_or_default();
        photo.file = format!("{PHOTOS}/{}", name.to_string_lossy());
    }
    let path = folder.join(SITE_FILE);
    write_site_file(&file, &path)?;
    Ok(path)
}

fn write_with_photos(
    place: &Place,
    out: &Path,
    words: &Words,
    progress: &Progress,
) -> Result<PathBuf, BookError> {
    let folder = out.join(PHOTOS);
    std::fs::create_dir_all(&folder).map_err(|cause| BookError::writing(&folder, &cause))?;
    progress.part(&words.say("desk.demo-photos", &[]));
    let mut file = place.file.clone();
    let photos: Vec<Photo> = photos_of(&mut file).map(|photo| photo.clone()).collect();
    for (done, photo) in photos.iter().enumerate() {
        progress.go_on(done as u32, photos.len() as u32)?;
        let from = place.photo(photo);
        let to = folder.join(Path::new(&photo.file).file_name().unwrap_or_default());
        // Its own folder as the target: the photo is there already.
        if from.canonicalize().ok() == to.canonicalize().ok() && to.exists() {
            continue;
        }
        let bytes = std::fs::read(&from).map_err(|cause| BookError::reading(&from, &cause))?;
        bolewalk_core::handover::write_aside(&to, &bytes)?;
    }
    write_site_file_beside(&place.file, out)
}

fn photos_of(file: &mut SiteFile) -> impl Iterator<Item = &mut Photo> {
    let trees = file.site.trees.iter_mut();
    trees
        .flat_map(|tree| &mut tree.inspections)
        .flat_map(|seen| &mut seen.photos)
}
