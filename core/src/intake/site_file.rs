//! The site file: read with every fault at once, written whole or not at all.

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::Value;

use super::ids::fill_ids;
use super::references::reference_faults;
use super::schema::site_file_schema;
use super::schema_faults::schema_faults;
use super::shape_faults::shape_faults;
use crate::error::BookError;
use crate::record::{Fault, Id, SITE_FILE_FORMAT, SiteFile};

/// The largest site file that is read, in bytes: about 50,000 trees.
const LARGEST: u64 = 256 * 1024 * 1024;

/// Reads a site file from a path; `starter_codes` are the ids of the codebook that ships.
/// Photos named in it are looked for beside the file.
///
/// # Errors
/// [`BookError::NotFound`] or [`BookError::Unreadable`] for the file itself, [`BookError::Newer`]
/// for a later format, [`BookError::Refused`] with every fault found.
pub fn read_site_file_at(path: &Path, starter_codes: &BTreeSet<Id>) -> Result<SiteFile, BookError> {
    let size = std::fs::metadata(path)
        .map_err(|cause| BookError::reading(path, &cause))?
        .len();
    if size > LARGEST {
        let place = path.display().to_string();
        let fault = Fault::new("fault.file-too-large", place, size, LARGEST.to_string());
        return Err(BookError::refused(fault));
    }
    let bytes = std::fs::read(path).map_err(|cause| BookError::reading(path, &cause))?;
    let file = read_site_file(&bytes, starter_codes)?;
    let folder = path.parent().unwrap_or(Path::new("."));
    let faults = missing_photos(&file, folder);
    if faults.is_empty() {
        Ok(file)
    } else {
        Err(BookError::Refused { faults })
    }
}

/// Reads a site file from its bytes and fills in the ids it left out.
///
/// # Errors
/// [`BookError::Newer`] for a later format, [`BookError::Refused`] with every fault found; only a
/// fault of syntax ends the reading at once, with its line and column.
pub fn read_site_file(bytes: &[u8], starter_codes: &BTreeSet<Id>) -> Result<SiteFile, BookError> {
    let value = parse(bytes)?;
    if let Some(found) = value.get("format").and_then(Value::as_u64)
        && found > u64::from(SITE_FILE_FORMAT)
    {
        return Err(BookError::Newer {
            place: "site file".to_owned(),
            found: u32::try_from(found).unwrap_or(u32::MAX),
            known: SITE_FILE_FORMAT,
        });
    }
    let faults = schema_faults(&site_file_schema(), &value)
        .map_err(|detail| BookError::Defect { detail })?;
    if !faults.is_empty() {
        // Records cannot be built from a file whose fields do not fit; tags can still be compared.
        return Err(BookError::Refused { faults });
    }
    let mut file: SiteFile = serde_json::from_value(value)
        .map_err(|cause| BookError::refused(Fault::new("fault.does-not-fit", "", cause, "")))?;
    let mut faults = shape_faults(&file.site);
    // Ids filled in follow from tags, so a doubled tag is told before it doubles an id.
    fill_ids_of_visits(&mut file);
    faults.extend(reference_faults(&file, starter_codes));
    if !faults.is_empty() {
        return Err(BookError::Refused { faults });
    }
    fill_ids(&mut file);
    Ok(file)
}

/// A visit without an id is known by its day, so that inspections can name it.
fn fill_ids_of_visits(file: &mut SiteFile) {
    for visit in &mut file.site.visits {
        if visit.id.is_empty() {
            visit.id = Id(visit.day.to_string());
        }
    }
}

fn parse(bytes: &[u8]) -> Result<Value, BookError> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    let text = std::str::from_utf8(bytes).map_err(|cause| {
        let place = format!("byte {}", cause.valid_up_to());
        BookError::refused(Fault::new("fault.not-utf8", place, "", ""))
    })?;
    serde_json::from_str(text).map_err(|cause| {
        let place = format!("line {}, column {}", cause.line(), cause.column());
        let found = text
            .lines()
            .nth(cause.line().saturating_sub(1))
            .map_or("", str::trim);
        BookError::refused(Fault::new(
            "fault.not-json",
            place,
            found,
            cause.to_string(),
        ))
    })
}

fn missing_photos(file: &SiteFile, folder: &Path) -> Vec<Fault> {
    let mut faults = Vec::new();
    for (t, tree) in file.site.trees.iter().enumerate() {
        for (i, seen) in tree.inspections.iter().enumerate() {
            for (p, photo) in seen.photos.iter().enumerate() {
                if !folder.join(&photo.file).is_file() {
                    let place = format!("/site/trees/{t}/inspections/{i}/photos/{p}/file");
                    faults.push(Fault::new("fault.photo-missing", place, &photo.file, ""));
                }
            }
        }
    }
    faults
}

/// Writes a site file, set out for reading by people, aside and then renamed into place.
///
/// # Errors
/// [`BookError::DiskFull`] or [`BookError::Unwritable`]; nothing half-written stays behind.
pub fn write_site_file(file: &SiteFile, path: &Path) -> Result<(), BookError> {
    use std::io::Write;
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty())
        .unwrap_or(Path::new("."));
    let text = serde_json::to_string_pretty(file).map_err(|cause| BookError::Defect {
        detail: cause.to_string(),
    })?;
    let failed = |cause: std::io::Error| BookError::writing(path, &cause);
    let mut aside = tempfile::NamedTempFile::new_in(folder).map_err(failed)?;
    aside.write_all(text.as_bytes()).map_err(failed)?;
    aside.write_all(b"\n").map_err(failed)?;
    aside.as_file().sync_all().map_err(failed)?;
    readable_by_others(aside.as_file()).map_err(failed)?;
    aside.persist(path).map_err(|error| failed(error.error))?;
    Ok(())
}

/// A temporary file is its owner's alone; a site file is not.
#[cfg(unix)]
fn readable_by_others(file: &std::fs::File) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(std::fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn readable_by_others(_: &std::fs::File) -> std::io::Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faults(text: &str) -> Vec<(String, String, String)> {
        match read_site_file(text.as_bytes(), &BTreeSet::new()) {
            Err(BookError::Refused { faults }) => faults
                .into_iter()
                .map(|f| (f.code, f.place, f.allowed))
                .collect(),
            other => panic!("expected faults, got {other:?}"),
        }
    }

    #[test]
    fn every_fault_is_told_at_once_with_its_place() {
        let text = r#"{"format":1,"site":{"name":"Hill","colour":"red","trees":[
            {"tag":"1","position":{"lat_deg":"42","lon_deg":-71.0},"way":"chop",
             "inspections":[{"level":"full_check","height":{"height_m":400}}]},
            {"tag":"2","inspections":[{"level":"full_check","dead_since":"last year"}]}]}}"#;
        let found = faults(text);
        let places: Vec<&str> = found.iter().map(|f| f.1.as_str()).collect();
        assert_eq!(
            places,
            [
                "/site/colour",
                "/site/trees/0/inspections/0/height/height_m",
                "/site/trees/0/position/lat_deg",
                "/site/trees/0/way",
                "/site/trees/1/inspections/0/dead_since",
            ]
        );
        assert_eq!(found[1].0, "fault.too-large");
        assert_eq!(found[1].2, "116.0");
        assert_eq!(found[2].0, "fault.wrong-type");
        assert!(found[3].2.contains("fell_whole"), "{found:?}");
        assert_eq!(found[4].0, "fault.not-a-day");
    }

    #[test]
    fn nan_is_refused_with_line_and_column() {
        let found = faults("{\"format\":1,\n\"site\":{\"name\":NaN}}");
        assert_eq!(found[0].0, "fault.not-json");
        assert!(found[0].1.starts_with("line 2, column"), "{found:?}");
    }

    #[test]
    fn tags_used_twice_and_references_to_nowhere_are_faults() {
        let text = r#"{"format":1,"site":{"name":"Hill","trees":[{"tag":"1"},{"tag":"1",
            "inspections":[{"level":"triage","visit":"never","by":"nobody"}]}]}}"#;
        let found = faults(text);
        let codes: Vec<&str> = found.iter().map(|f| f.0.as_str()).collect();
        assert_eq!(
            codes,
            [
                "fault.tag-twice",
                "fault.leads-nowhere",
                "fault.leads-nowhere"
            ]
        );
    }

    #[test]
    fn a_later_format_is_left_alone() {
        let error = read_site_file(br#"{"format":7}"#, &BTreeSet::new()).unwrap_err();
        assert!(matches!(error, BookError::Newer { found: 7, .. }));
    }

    #[test]
    fn missing_ids_follow_from_the_place() {
        let text = r#"{"format":1,"site":{"name":"Hill","trees":[{"tag":"7","inspections":[{"level":"triage"}]}]}}"#;
        let file = read_site_file(text.as_bytes(), &BTreeSet::new()).unwrap();
        assert_eq!(
            file.site.trees[0].inspections[0].id.as_str(),
            "tree/7/inspection/0"
        );
    }
}
