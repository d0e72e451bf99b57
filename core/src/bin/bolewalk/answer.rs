//! What the desk answers: errors in words with what to do, and their exit codes.

use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::record::Fault;

/// Exit code for bad input.
pub const BAD_INPUT: u8 = 1;
/// Exit code for a damaged field book.
pub const DAMAGED: u8 = 3;

/// Tells an error on standard error and gives its exit code.
pub fn explain(error: &BookError) -> ExitCode {
    if let BookError::Refused { faults } = error {
        tell_faults(faults);
        return ExitCode::from(BAD_INPUT);
    }
    eprintln!("{}", sentence(error));
    match error {
        BookError::Damaged { .. } => ExitCode::from(DAMAGED),
        _ => ExitCode::from(BAD_INPUT),
    }
}

fn sentence(error: &BookError) -> String {
    match error {
        BookError::Refused { faults } => format!("{} faults", faults.len()),
        BookError::NotFound { kind, id } => {
            format!("There is no {kind} '{id}'. Check the name and the folder.")
        }
        BookError::Newer {
            place,
            found,
            known,
        } => format!(
            "{place} was written by a newer version (format {found}; this one knows {known}). \
             It was left as it is. Update, then try again."
        ),
        BookError::Damaged {
            place,
            detail,
            kept,
        } => format!(
            "{place} is damaged: {detail}. The damaged files are kept{}; nothing was deleted.",
            if kept.is_empty() {
                String::new()
            } else {
                format!(" in {kept}")
            }
        ),
        BookError::DiskFull { place } => format!(
            "There is no room left to write {place}. Free some space and try again; nothing was \
             changed."
        ),
        BookError::Unwritable { place, cause } => format!(
            "{place} cannot be written ({cause}). Choose another folder or change its permissions; \
             nothing was changed."
        ),
        BookError::Unreadable { place, cause } => {
            format!("{place} cannot be read ({cause}). Check that it is the right file.")
        }
        BookError::Busy { place } => {
            format!("Another program is using {place}. Close it and try again.")
        }
        BookError::Stopped => "Stopped, as asked; nothing was left half-written.".to_owned(),
        BookError::Defect { detail } => {
            format!("A fault of this program: {detail}. Nothing was changed.")
        }
    }
}

/// Every fault on a line: place, what was found, what is allowed.
pub fn tell_faults(faults: &[Fault]) {
    for fault in faults {
        eprintln!("{}", fault_line(fault));
    }
    let (count, noun) = (
        faults.len(),
        if faults.len() == 1 { "fault" } else { "faults" },
    );
    eprintln!("{count} {noun}; nothing was changed.");
}

fn fault_line(fault: &Fault) -> String {
    let Fault {
        place,
        found,
        allowed,
        code,
    } = fault;
    let place = if place.is_empty() { "the file" } else { place };
    let what = match code.as_str() {
        "fault.not-json" => format!("this is not JSON here: {allowed}; the line reads '{found}'"),
        "fault.not-utf8" => "the text is not UTF-8 from here on; save it as UTF-8".to_owned(),
        "fault.unknown-field" => {
            format!("there is no field '{found}'; take it out, or see 'bolewalk schema'")
        }
        "fault.missing-field" => format!("the field '{allowed}' is missing"),
        "fault.wrong-type" => format!("found {found}, allowed is {allowed}"),
        "fault.too-small" => format!("found {found}, the smallest that can be meant is {allowed}"),
        "fault.too-large" => format!("found {found}, the largest that can be meant is {allowed}"),
        "fault.not-a-choice" => format!("found '{found}', allowed are: {allowed}"),
        "fault.not-a-day" => format!("found '{found}', a day is written like {allowed}"),
        "fault.too-few" => format!("found {found}, at least {allowed} are needed"),
        "fault.too-many" => format!("found {found}, at most {allowed} are allowed"),
        "fault.too-short" => format!("found '{found}', at least {allowed} characters are needed"),
        "fault.too-long" => format!("at most {allowed} characters are allowed"),
        "fault.ring-crosses-itself" => {
            "the outline crosses itself; give its corners in the order you would walk them"
                .to_owned()
        }
        "fault.coordinates-swapped" => {
            format!("{found} is far from the property; latitude and longitude seem exchanged")
        }
        "fault.tag-twice" => format!("the tag '{found}' is used twice on this site"),
        "fault.id-twice" => format!("the id '{found}' is used twice"),
        "fault.leads-nowhere" => format!("'{found}' is not in the file; there are: {allowed}"),
        "fault.photo-missing" => format!("the photo '{found}' is not there"),
        "fault.file-too-large" => format!("{found} bytes are more than the {allowed} allowed"),
        _ if allowed.is_empty() => format!("'{found}' does not fit ({code})"),
        _ => format!("found '{found}', allowed: {allowed} ({code})"),
    };
    format!("{place}: {what}")
}
