//! The sound wall of a stem from a mallet, a drill or a core.

use crate::record::MalletSound;

/// Sound wall in centimetres from the length of sound wood along a drill or core path that enters
/// `angle_deg` off the radius: t = R − √(R² + s² − 2 R s cos a) (plane geometry). `radius_cm` is
/// inside bark. A path that runs past the centre gives the wall at its nearest point to the centre
/// at most.
pub fn off_radius_wall_cm(radius_cm: f64, path_cm: f64, angle_deg: f64) -> f64 {
    let cosine = libm::cos(angle_deg * core::f64::consts::PI / 180.0);
    // Beyond the foot of the centre on the path the wood belongs to the far wall.
    let path = path_cm.clamp(0.0, (radius_cm * cosine).max(0.0));
    let square = radius_cm * radius_cm + path * path - 2.0 * radius_cm * path * cosine;
    radius_cm - libm::sqrt(square.max(0.0))
}

/// Sound wall in centimetres from a reading that begins at the bark's surface.
pub fn wall_under_bark_cm(reading_cm: f64, bark_cm: f64) -> f64 {
    (reading_cm - bark_cm).max(0.0)
}

/// A wall over the radius, from its thinnest to its thickest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WallRange {
    /// Thinnest, 0 to 1.
    pub low: f64,
    /// Thickest, 0 to 1.
    pub high: f64,
}

/// What each sound of the mallet is read as, from the rule set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MalletRule {
    /// Sound.
    pub sound: WallRange,
    /// Dull.
    pub dull: WallRange,
    /// Hollow.
    pub hollow: WallRange,
}

/// The walls that a sound of the mallet stands for. A point that was not sounded may be anything
/// between the worst and the best.
pub fn mallet_range(sound: MalletSound, rule: MalletRule) -> WallRange {
    match sound {
        MalletSound::Sound => rule.sound,
        MalletSound::Dull => rule.dull,
        MalletSound::Hollow => rule.hollow,
        MalletSound::NotSounded => WallRange {
            low: rule.hollow.low,
            high: rule.sound.high,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_past_the_centre_does_not_thicken_the_wall() {
        // Plane geometry: the nearest point of the path to the centre lies at R cos a.
        let most = off_radius_wall_cm(30.0, 30.0 * libm::cos(0.349_065_850_398_865_9), 20.0);
        assert!((off_radius_wall_cm(30.0, 60.0, 20.0) - most).abs() < 1e-12);
        assert!(most < 30.0);
    }

    #[test]
    fn bark_is_taken_off_and_never_below_nothing() {
        assert_eq!(wall_under_bark_cm(12.0, 2.0), 10.0);
        assert_eq!(wall_under_bark_cm(1.0, 2.0), 0.0);
    }

    #[test]
    fn what_was_not_sounded_is_the_widest_range() {
        let range = |low, high| WallRange { low, high };
        let rule = MalletRule {
            sound: range(0.5, 1.0),
            dull: range(0.2, 0.5),
            hollow: range(0.05, 0.3),
        };
        assert_eq!(
            mallet_range(MalletSound::NotSounded, rule),
            range(0.05, 1.0)
        );
    }
}
