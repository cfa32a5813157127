//! Normal draws that are the same on every device: seeded, by the inverse of the normal distribution
//! through `libm`.

use super::random::Random;

/// Draws of the standard normal distribution from one stream of a seed.
///
/// ```
/// use slackwater::science::normal::Normals;
/// assert_eq!(Normals::stream(7, 1).draw().to_bits(), Normals::stream(7, 1).draw().to_bits());
/// ```
#[derive(Clone, Debug)]
pub struct Normals(Random);

impl Normals {
    /// The draws of one `stream` (any number) of a `seed` (any number): streams can be asked in
    /// any order, and none follows from another.
    pub const fn stream(seed: u64, stream: u64) -> Self {
        // Mixed once each, so that neighbouring seeds and streams do not meet.
        let seed = Random::new(seed).bits();
        Self(Random::new(
            seed ^ Random::new(stream).bits().rotate_left(32),
        ))
    }

    /// A share between 0 and 1, neither included: the middle of one of 2^52 equal parts.
    pub const fn share(&mut self) -> f64 {
        ((self.0.bits() >> 12) as f64 + 0.5) / (1_u64 << 52) as f64
    }

    /// A draw of the standard normal distribution (dimensionless, mean 0, deviation 1).
    pub fn draw(&mut self) -> f64 {
        normal_quantile(self.share())
    }

    /// A seed for another stream.
    pub const fn seed(&mut self) -> u64 {
        self.0.bits()
    }
}

/// Value below which a standard normal number falls with a given probability.
///
/// `probability` dimensionless, above 0 and below 1. Result: dimensionless, to about 16 digits;
/// minus or plus infinity at 0 and 1, NaN beyond.
///
/// Source: Wichura (1988), Algorithm AS 241, Applied Statistics 37:477–484, PPND16.
///
/// ```
/// use slackwater::science::normal::normal_quantile;
/// assert!((normal_quantile(0.975) - 1.959_963_984_540_054).abs() < 1e-14);
/// ```
pub fn normal_quantile(probability: f64) -> f64 {
    let from_middle = probability - 0.5;
    if from_middle.abs() <= 0.425 {
        let r = 0.180_625 - from_middle * from_middle;
        return from_middle * quotient(r, &CENTRE);
    }
    let tail = probability.min(1.0 - probability);
    if tail == 0.0 {
        return from_middle.signum() * f64::INFINITY;
    }
    // NaN below 0, as of every NaN.
    let r = (-libm::log(tail)).sqrt();
    let size = if r <= 5.0 {
        quotient(r - 1.6, &MIDDLE)
    } else {
        quotient(r - 5.0, &FAR)
    };
    size * from_middle.signum()
}

/// Numerator and denominator of a rational function, lowest power first.
type Rational = [[f64; 8]; 2];

fn quotient(x: f64, of: &Rational) -> f64 {
    let value = |powers: &[f64; 8]| powers.iter().rev().fold(0.0, |sum, c| sum * x + c);
    value(&of[0]) / value(&of[1])
}

/// Within 0.425 of one half.
#[expect(clippy::excessive_precision, reason = "as the source prints them")]
const CENTRE: Rational = [
    [
        3.387_132_872_796_366_608,
        1.331_416_678_917_843_774_5e2,
        1.971_590_950_306_551_442_7e3,
        1.373_169_376_550_946_112_5e4,
        4.592_195_393_154_987_145_7e4,
        6.726_577_092_700_870_085_3e4,
        3.343_057_558_358_812_810_5e4,
        2.509_080_928_730_122_672_7e3,
    ],
    [
        1.0,
        4.231_333_070_160_091_125_2e1,
        6.871_870_074_920_579_083e2,
        5.394_196_021_424_751_107_7e3,
        2.121_379_430_158_659_586_7e4,
        3.930_789_580_009_271_061e4,
        2.872_908_573_572_194_267_4e4,
        5.226_495_278_852_854_561e3,
    ],
];
/// Further out, down to about 1.4e-11.
#[expect(clippy::excessive_precision, reason = "as the source prints them")]
const MIDDLE: Rational = [
    [
        1.423_437_110_749_683_577_34,
        4.630_337_846_156_545_295_9,
        5.769_497_221_460_691_405_5,
        3.647_848_324_763_204_605_04,
        1.270_458_252_452_368_382_58,
        2.417_807_251_774_506_117_7e-1,
        2.272_384_498_926_918_458_33e-2,
        7.745_450_142_783_414_076_4e-4,
    ],
    [
        1.0,
        2.053_191_626_637_758_821_87,
        1.676_384_830_183_803_849_4,
        6.897_673_349_851_000_045_5e-1,
        1.481_039_764_274_800_745_9e-1,
        1.519_866_656_361_645_719_66e-2,
        5.475_938_084_995_344_946e-4,
        1.050_750_071_644_416_843_24e-9,
    ],
];
/// The far tails.
#[expect(clippy::excessive_precision, reason = "as the source prints them")]
const FAR: Rational = [
    [
        6.657_904_643_501_103_777_2,
        5.463_784_911_164_114_369_9,
        1.784_826_539_917_291_335_8,
        2.965_605_718_285_048_912_3e-1,
        2.653_218_952_657_612_309_3e-2,
        1.242_660_947_388_078_438_6e-3,
        2.711_555_568_743_487_578_15e-5,
        2.010_334_399_292_288_132_65e-7,
    ],
    [
        1.0,
        5.998_322_065_558_879_376_9e-1,
        1.369_298_809_227_358_053_1e-1,
        1.487_536_129_085_061_485_25e-2,
        7.868_691_311_456_132_591e-4,
        1.846_318_317_510_054_681_8e-5,
        1.421_511_758_316_445_888_7e-7,
        2.044_263_103_389_939_785_64e-15,
    ],
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_are_those_of_the_normal_distribution() {
        /// Tables print so many digits.
        const TABLE: f64 = 1e-13;
        // Standard values of the normal distribution (Abramowitz and Stegun 1964, Table 26.5, to
        // more digits), and the far tail of AS 241's own test: 1e-10 is -6.3613409024.
        for (share, value) in [
            (0.5, 0.0),
            (0.9, 1.281_551_565_544_600_4),
            (0.95, 1.644_853_626_951_472_2),
            (0.975, 1.959_963_984_540_054),
            (0.25, -0.674_489_750_196_081_7),
            (0.001, -3.090_232_306_167_813),
            (1e-10, -6.361_340_902_404_056),
            (1e-20, -9.262_340_089_798_408),
        ] {
            assert!((normal_quantile(share) - value).abs() < TABLE, "{share}");
        }
        assert!(normal_quantile(0.0).is_infinite() && normal_quantile(0.0) < 0.0);
        assert!(normal_quantile(1.0).is_infinite() && normal_quantile(1.0) > 0.0);
        assert!(normal_quantile(-0.1).is_nan() && normal_quantile(f64::NAN).is_nan());
    }

    #[test]
    fn draws_have_the_moments_of_the_normal_distribution() {
        /// Four standard errors of each moment at 100 000 draws.
        const MEAN: f64 = 0.013;
        const VARIANCE: f64 = 0.018;
        let (mut sum, mut squares) = (0.0, 0.0);
        let mut normals = Normals::stream(3, 4);
        for _ in 0..100_000 {
            let draw = normals.draw();
            sum += draw;
            squares += draw * draw;
        }
        assert!((sum / 1e5).abs() < MEAN, "{sum}");
        assert!((squares / 1e5 - 1.0).abs() < VARIANCE, "{squares}");
    }
}
