//! Both papers against veraPDF: PDF/UA-1 and PDF/A-2a without one failed check.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::papers::write_papers;

/// Runs the checker over the files; nothing, with a line that says why, where it cannot run.
pub(crate) fn checked(files: &[PathBuf]) -> Option<String> {
    for (program, argument, package) in [
        ("java", "-version", "default-jdk-headless"),
        ("mvn", "--version", "maven"),
    ] {
        if Command::new(program).arg(argument).output().is_err() {
            println!("SKIPPED: {program} is missing; apt-get install {package}");
            return None;
        }
    }
    let check = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/outside/verapdf/check");
    let output = Command::new(check)
        .arg(Path::new(env!("CARGO_TARGET_TMPDIR")).join("verapdf"))
        .args(files)
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(
        output.status.success(),
        "{said}{}",
        String::from_utf8_lossy(&output.stderr)
    );
    Some(said)
}

#[test]
fn both_papers_are_accessible_and_made_to_last() {
    let folder = tempfile::tempdir().unwrap();
    let mut files = write_papers(folder.path());
    // The checker itself is checked: a file that no longer says it is tagged nor shows its title
    // must fail in both flavours.
    let mut spoilt = std::fs::read(&files[0]).unwrap();
    for part in ["/Marked true", "/DisplayDocTitle true"] {
        let at = spoilt
            .windows(part.len())
            .position(|window| window == part.as_bytes())
            .unwrap();
        spoilt[at + 1] = b'X';
    }
    let poor = folder.path().join("untagged.pdf");
    std::fs::write(&poor, spoilt).unwrap();
    let papers = files.len();
    files.push(poor);

    let Some(said) = checked(&files) else { return };
    let of_ours: Vec<&str> = said
        .lines()
        .filter(|line| !line.ends_with("untagged.pdf"))
        .collect();
    let failed: Vec<&&str> = of_ours
        .iter()
        .filter(|line| !line.starts_with("compliant "))
        .collect();
    assert!(failed.is_empty(), "{failed:#?}");
    assert_eq!(of_ours.len(), 2 * papers, "{said}");
    for flavour in ["failed ua1 ", "failed 2a "] {
        let refused = said
            .lines()
            .any(|line| line.starts_with(flavour) && line.ends_with("untagged.pdf"));
        assert!(refused, "the checker lets an untagged file pass\n{said}");
    }
}
