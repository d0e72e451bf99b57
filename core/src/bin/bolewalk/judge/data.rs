//! The judgement as data for other programs. Fields are added, never renamed or taken away, while
//! `format` stays.

use bolewalk_core::error::BookError;
use bolewalk_core::judge::METHOD_VERSION;
use bolewalk_core::record::{Id, SiteFile, SiteJudgement};
use serde::Serialize;

/// The format of what is printed.
const FORMAT: u32 = 1;

/// What is printed.
#[derive(Serialize)]
struct JudgementData<'a> {
    format: u32,
    site_name: &'a str,
    rule_set: Id,
    method_version: u32,
    /// Absent where the worst hour of the day counted.
    #[serde(skip_serializing_if = "Option::is_none")]
    hour: Option<u32>,
    judgement: &'a SiteJudgement,
}

/// The judgement as JSON, readable by a person too.
pub fn json(
    file: &SiteFile,
    judgement: &SiteJudgement,
    hour: Option<u32>,
) -> Result<String, BookError> {
    let data = JudgementData {
        format: FORMAT,
        site_name: &file.site.name,
        rule_set: file.site.rule_set.clone().unwrap_or(Id::from("us")),
        method_version: METHOD_VERSION,
        hour,
        judgement,
    };
    serde_json::to_string_pretty(&data).map_err(|cause| BookError::Defect {
        detail: cause.to_string(),
    })
}
