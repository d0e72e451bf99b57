//! `bolewalk schema`: the JSON Schema of the site file.

use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::intake::site_file_schema;

use super::answer::tell;

pub fn schema() -> Result<ExitCode, BookError> {
    let text =
        serde_json::to_string_pretty(&site_file_schema()).map_err(|cause| BookError::Defect {
            detail: cause.to_string(),
        })?;
    tell(&text)?;
    Ok(ExitCode::SUCCESS)
}
