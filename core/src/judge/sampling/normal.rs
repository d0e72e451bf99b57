//! The inverse of the standard normal distribution.

// The coefficients stand as printed in the paper.
#![allow(clippy::excessive_precision)]

/// Quantile of the standard normal distribution for 0 < `p` < 1 by algorithm AS 241, PPND16
/// (Wichura 1988, Applied Statistics 37(3):477–484), good to about 1 in 10¹⁶. Minus or plus
/// infinity at or beyond the ends.
pub fn normal_quantile(p: f64) -> f64 {
    if p <= 0.0 {
        return f64::NEG_INFINITY;
    }
    if p >= 1.0 {
        return f64::INFINITY;
    }
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return q * ratio(r, &CENTRE_UP, &CENTRE_DOWN);
    }
    let r = libm::sqrt(-libm::log(if q < 0.0 { p } else { 1.0 - p }));
    let size = if r <= 5.0 {
        ratio(r - 1.6, &TAIL_UP, &TAIL_DOWN)
    } else {
        ratio(r - 5.0, &FAR_UP, &FAR_DOWN)
    };
    if q < 0.0 { -size } else { size }
}

fn ratio(r: f64, up: &[f64; 8], down: &[f64; 8]) -> f64 {
    let sum = |terms: &[f64; 8]| terms.iter().rev().fold(0.0, |sum, term| sum * r + term);
    sum(up) / sum(down)
}

const CENTRE_UP: [f64; 8] = [
    3.387_132_872_796_366_608,
    1.331_416_678_917_843_774_5e2,
    1.971_590_950_306_551_442_7e3,
    1.373_169_376_550_946_112_5e4,
    4.592_195_393_154_987_145_7e4,
    6.726_577_092_700_870_085_3e4,
    3.343_057_558_358_812_810_5e4,
    2.509_080_928_730_122_672_7e3,
];
const CENTRE_DOWN: [f64; 8] = [
    1.0,
    4.231_333_070_160_091_125_2e1,
    6.871_870_074_920_579_083e2,
    5.394_196_021_424_751_107_7e3,
    2.121_379_430_158_659_586_7e4,
    3.930_789_580_009_271_061e4,
    2.872_908_573_572_194_267_4e4,
    5.226_495_278_852_854_561e3,
];
const TAIL_UP: [f64; 8] = [
    1.423_437_110_749_683_577_34,
    4.630_337_846_156_545_295_9,
    5.769_497_221_460_691_405_5,
    3.647_848_324_763_204_605_04,
    1.270_458_252_452_368_382_58,
    2.417_807_251_774_506_117_7e-1,
    2.272_384_498_926_918_458_33e-2,
    7.745_450_142_783_414_076_4e-4,
];
const TAIL_DOWN: [f64; 8] = [
    1.0,
    2.053_191_626_637_758_821_87,
    1.676_384_830_183_803_849_4,
    6.897_673_349_851_000_045_5e-1,
    1.481_039_764_274_800_745_9e-1,
    1.519_866_656_361_645_719_66e-2,
    5.475_938_084_995_344_946e-4,
    1.050_750_071_644_416_843_24e-9,
];
const FAR_UP: [f64; 8] = [
    6.657_904_643_501_103_777_2,
    5.463_784_911_164_114_369_9,
    1.784_826_539_917_291_335_8,
    2.965_605_718_285_048_912_3e-1,
    2.653_218_952_657_612_309_3e-2,
    1.242_660_947_388_078_438_6e-3,
    2.711_555_568_743_487_578_15e-5,
    2.010_334_399_292_288_132_65e-7,
];
const FAR_DOWN: [f64; 8] = [
    1.0,
    5.998_322_065_558_879_376_9e-1,
    1.369_298_809_227_358_053_1e-1,
    1.487_536_129_085_061_485_25e-2,
    7.868_691_311_456_132_591e-4,
    1.846_318_317_510_054_681_8e-5,
    1.421_511_758_316_445_888_7e-7,
    2.044_263_103_389_939_785_64e-15,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_meet_the_algorithms_own_check_values() {
        // Wichura 1988: PPND16(0.25), PPND16(0.001), PPND16(1e-20).
        assert!((normal_quantile(0.25) - -0.674_489_750_196_081_7).abs() < 1e-15);
        assert!((normal_quantile(0.001) - -3.090_232_306_167_814).abs() < 1e-14);
        assert!((normal_quantile(1e-20) - -9.262_340_089_798_408).abs() < 1e-13);
        assert_eq!(normal_quantile(0.5), 0.0);
    }
}
