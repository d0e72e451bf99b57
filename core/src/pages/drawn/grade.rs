//! What a grade of a code looks like.

use crate::draw::{Drawing, grade_drawing};
use crate::pages::desk::PageDesk;
use crate::record::{Id, TreePart};

/// The drawing, described by the sentence of the grade; nothing for a code that the codebook lacks.
/// A code without a picture of its own meaning gets that of something else.
pub(super) fn grade_of(
    desk: &PageDesk,
    id: &Id,
    part: Option<TreePart>,
    grade: u32,
) -> Option<Drawing> {
    let code = desk.codes.iter().find(|code| code.id == *id)?;
    let only = match code.parts.as_slice() {
        [only] => Some(*only),
        _ => None,
    };
    let sentence = desk.words.grade_sentence(code, grade);
    let described = sentence.unwrap_or_else(|| desk.code_name(code));
    Some(grade_drawing(code.kind, part.or(only), grade, &described))
}
