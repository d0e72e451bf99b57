//! How the lost points are shared out among their causes, so that they add up exactly and the order
//! of the causes does not matter.

use crate::record::{Reason, ScoreShare};

/// A cause with its factor, 0 to 1.
#[derive(Debug, Clone)]
pub(crate) struct Lost {
    pub cause: Reason,
    pub factor: f64,
}

/// Whole points by largest remainder: a cause's share of `lost` is ln(factor) over the sum of the
/// logarithms. A factor of 0 is a stop and takes no share; one of 1 took nothing.
pub(crate) fn shares(causes: Vec<Lost>, lost: u32) -> Vec<ScoreShare> {
    let weight = |factor: f64| {
        if factor > 0.0 && factor < 1.0 {
            -libm::log(factor)
        } else {
            0.0
        }
    };
    // Summed in the order of the weights, so that the order of the causes does not matter.
    let mut weights: Vec<f64> = causes.iter().map(|cause| weight(cause.factor)).collect();
    weights.sort_by(f64::total_cmp);
    let total: f64 = weights.iter().sum();
    let mut shares: Vec<(ScoreShare, f64)> = causes
        .into_iter()
        .filter(|cause| weight(cause.factor) > 0.0)
        .map(|Lost { cause, factor }| {
            let exact = f64::from(lost) * weight(factor) / total;
            let points = libm::floor(exact);
            let share = ScoreShare {
                cause,
                factor,
                points: points as u32,
            };
            (share, exact - points)
        })
        .collect();
    // Of two alike the smaller code and record first: nothing hangs on the order they came in.
    let name = |share: &ScoreShare| (share.cause.code.clone(), share.cause.about.clone());
    shares.sort_by(|a, b| {
        b.1.total_cmp(&a.1)
            .then_with(|| name(&a.0).cmp(&name(&b.0)))
    });
    let given: u32 = shares.iter().map(|(share, _)| share.points).sum();
    let count = shares.len();
    let left = lost.saturating_sub(given) as usize;
    for (share, _) in shares.iter_mut().take(left.min(count)) {
        share.points += 1;
    }
    let mut shares: Vec<ScoreShare> = shares.into_iter().map(|(share, _)| share).collect();
    shares.sort_by(|a, b| b.points.cmp(&a.points).then_with(|| name(a).cmp(&name(b))));
    shares
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lost(code: &str, factor: f64) -> Lost {
        Lost {
            cause: Reason::new(code),
            factor,
        }
    }

    #[test]
    fn shares_add_up_and_do_not_hang_on_the_order() {
        // By hand: ln 0.8 = −0.22314, ln 0.85 = −0.16252, together −0.38566; 32 points lost of
        // 0.68: 18.515 and 13.485, hence 19 and 13 by largest remainder.
        let one = shares(vec![lost("a", 0.8), lost("b", 0.85)], 32);
        let other = shares(vec![lost("b", 0.85), lost("a", 0.8)], 32);
        assert_eq!(one, other);
        let points: Vec<u32> = one.iter().map(|share| share.points).collect();
        assert_eq!(points, [19, 13]);
    }

    #[test]
    fn what_took_nothing_and_what_is_a_stop_take_no_share() {
        let list = shares(vec![lost("a", 1.0), lost("b", 0.0), lost("c", 0.5)], 50);
        assert_eq!(list.len(), 1);
        assert_eq!(list[0].points, 50);
    }
}
