//! What a photo's own record says of its making, and what it fails to say.

use exif::{Exif, Reader, Tag};

use super::container::{PictureKind, kind_of};
use super::decode::Turn;
use super::gps::{self, CameraDirection};
use super::{tags, taken};
use crate::record::{Moment, Position};

/// What a photo says of itself. Absent is absent: nothing is filled in.
#[derive(Debug, Clone, PartialEq)]
pub struct PhotoFacts {
    /// Where it was taken from; accuracy as the camera gave it, else unknown.
    pub position: Option<Position>,
    /// Height of the camera above sea level in metres, below it negative.
    pub altitude_m: Option<f64>,
    /// When it was taken, with the offset of local time.
    pub taken: Option<Moment>,
    /// Local time as written, `2026-05-04T10:11:12`, also where the offset is unknown.
    pub taken_local: Option<String>,
    /// Where the camera looked.
    pub direction: Option<CameraDirection>,
    /// How the stored pixels have to be turned.
    pub turn: Turn,
    /// What the record lacks or has wrong, in fixed order.
    pub gaps: Vec<PhotoGap>,
}

/// Something a photo's record lacks or has wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoGap {
    /// Which.
    pub kind: PhotoGapKind,
    /// What was found there, empty when nothing was.
    pub found: String,
}

impl PhotoGap {
    pub(super) fn new(kind: PhotoGapKind, found: impl Into<String>) -> Self {
        PhotoGap {
            kind,
            found: found.into(),
        }
    }
}

/// The kinds of [`PhotoGap`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PhotoGapKind {
    /// The picture carries no record at all.
    NoRecord,
    /// The record is damaged; what could be read of it is used.
    RecordDamaged,
    /// No position in it.
    NoPosition,
    /// A position that is no place: a denominator of 0, minutes beyond 60, 95° north.
    PositionBroken,
    /// Degrees without north or south, east or west: half the globe each.
    PositionWithoutHemisphere,
    /// The camera itself marked the fix as void, or left all zeros.
    PositionVoid,
    /// No time in it.
    NoTime,
    /// A time that is no moment, such as the 30th of February.
    TimeBroken,
    /// A local time with nothing that tells its offset from UTC.
    TimeWithoutOffset,
    /// A direction without saying whether from true or magnetic north.
    DirectionWithoutNorth,
    /// A direction that is no bearing.
    DirectionBroken,
    /// An orientation outside 1 to 8; the picture is shown as stored.
    OrientationBroken,
}

impl PhotoGapKind {
    /// The catalogue entry that words it.
    pub fn code(self) -> &'static str {
        match self {
            PhotoGapKind::NoRecord => "photo.gap.no-record",
            PhotoGapKind::RecordDamaged => "photo.gap.record-damaged",
            PhotoGapKind::NoPosition => "photo.gap.no-position",
            PhotoGapKind::PositionBroken => "photo.gap.position-broken",
            PhotoGapKind::PositionWithoutHemisphere => "photo.gap.position-without-hemisphere",
            PhotoGapKind::PositionVoid => "photo.gap.position-void",
            PhotoGapKind::NoTime => "photo.gap.no-time",
            PhotoGapKind::TimeBroken => "photo.gap.time-broken",
            PhotoGapKind::TimeWithoutOffset => "photo.gap.time-without-offset",
            PhotoGapKind::DirectionWithoutNorth => "photo.gap.direction-without-north",
            PhotoGapKind::DirectionBroken => "photo.gap.direction-broken",
            PhotoGapKind::OrientationBroken => "photo.gap.orientation-broken",
        }
    }
}

/// Reads what a JPEG's or PNG's record says (Exif 2.32). Never fails: what is wrong is a gap.
pub fn read_facts(bytes: &[u8]) -> PhotoFacts {
    let mut facts = PhotoFacts {
        position: None,
        altitude_m: None,
        taken: None,
        taken_local: None,
        direction: None,
        turn: Turn::UPRIGHT,
        gaps: Vec::new(),
    };
    if let Some(record) = open_record(bytes, &mut facts.gaps) {
        gps::read_into(&record, &mut facts);
        taken::read_into(&record, &mut facts);
        read_turn(&record, &mut facts);
    }
    facts
}

/// The record, or nothing with the reason among the gaps.
fn open_record(bytes: &[u8], gaps: &mut Vec<PhotoGap>) -> Option<Exif> {
    // The reader knows more containers than are taken in here.
    let _: PictureKind = kind_of(bytes)?;
    let mut reader = Reader::new();
    reader.continue_on_error(true);
    let outcome = reader
        .read_from_container(&mut std::io::Cursor::new(bytes))
        .or_else(|cause| {
            cause.distill_partial_result(|damages| {
                let found = damages.first().map(ToString::to_string);
                gaps.push(PhotoGap::new(
                    PhotoGapKind::RecordDamaged,
                    found.unwrap_or_default(),
                ));
            })
        });
    match outcome {
        Ok(record) => Some(record),
        Err(exif::Error::NotFound(_)) => {
            gaps.push(PhotoGap::new(PhotoGapKind::NoRecord, ""));
            None
        }
        Err(cause) => {
            gaps.push(PhotoGap::new(
                PhotoGapKind::RecordDamaged,
                cause.to_string(),
            ));
            None
        }
    }
}

fn read_turn(record: &Exif, facts: &mut PhotoFacts) {
    let Some(code) = tags::whole(record, Tag::Orientation) else {
        return;
    };
    match Turn::from_exif(code) {
        Some(turn) => facts.turn = turn,
        None => facts.gaps.push(PhotoGap::new(
            PhotoGapKind::OrientationBroken,
            code.to_string(),
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::pixels::{encode_jpeg, speckled};

    #[test]
    fn a_picture_without_a_record_says_so() {
        let facts = read_facts(&encode_jpeg(&speckled(8, 8), 80).unwrap());
        assert_eq!(facts.gaps, [PhotoGap::new(PhotoGapKind::NoRecord, "")]);
        assert_eq!(facts.position, None);
        assert_eq!(facts.turn, Turn::UPRIGHT);
    }

    #[test]
    fn an_orientation_outside_its_range_is_a_gap_and_leaves_the_rest() {
        for code in [0, 9, 65_535] {
            let facts = crate::photo::testing::facts_of(vec![exif::Field {
                tag: Tag::Orientation,
                ifd_num: exif::In::PRIMARY,
                value: exif::Value::Short(vec![code]),
            }]);
            assert_eq!(facts.turn, Turn::UPRIGHT);
            assert!(facts.gaps.contains(&PhotoGap::new(
                PhotoGapKind::OrientationBroken,
                code.to_string()
            )));
        }
    }

    #[test]
    fn a_record_cut_short_never_panics_and_is_reported() {
        let entry = crate::photo::exif_write::tests::entry();
        let jpeg = crate::photo::write_exif_jpeg(&speckled(8, 8), 80, &entry).unwrap();
        let end = usize::from(u16::from_be_bytes([jpeg[4], jpeg[5]])) + 4;
        for cut in 12..end {
            // The segment's length is mended so that only the record inside is cut.
            let mut torn = jpeg[..cut].to_vec();
            let length = u16::try_from(cut - 4).unwrap();
            torn[4..6].copy_from_slice(&length.to_be_bytes());
            torn.extend_from_slice(&jpeg[end..]);
            let facts = read_facts(&torn);
            assert!(
                facts
                    .gaps
                    .iter()
                    .any(|g| g.kind == PhotoGapKind::RecordDamaged),
                "cut at {cut}: {facts:?}"
            );
        }
    }
}
