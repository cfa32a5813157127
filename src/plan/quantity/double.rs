//! The text of a number as the nearest double, as the standard library reads it, but without the
//! library's table of ten thousand incompressible bytes, which the page would have to carry.

/// Digits beyond these decide at most on which side of a tie a number lies.
const DIGITS: usize = 800;
/// Beyond this power of ten every double is infinite, below its negative every one is zero.
const FARTHEST: i32 = 400;
/// A small divisor that is a power of five: 5^13.
const FIVES: u64 = 1_220_703_125;

/// Reads `12`, `-0.5`, `.5`, `5.`, `1e-3`: the nearest double, ties to even, infinite where it is
/// too large. `None` where the text is anything else, also `inf` and `NaN`.
///
/// ```
/// # use slackwater::plan::double;
/// assert_eq!(double("0.1"), Some(0.1));
/// assert_eq!(double("1e309"), Some(f64::INFINITY));
/// assert_eq!(double("ten"), None);
/// ```
pub fn double(text: &str) -> Option<f64> {
    let (negative, body) = match text.strip_prefix('-') {
        Some(body) => (true, body),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let (mantissa, exponent) = match body.find(['e', 'E']) {
        Some(place) => (&body[..place], power(&body[place + 1..])?),
        None => (body, 0),
    };
    let (whole, fraction) = mantissa.split_once('.').unwrap_or((mantissa, ""));
    if whole.is_empty() && fraction.is_empty() {
        return None;
    }
    let mut digits: Vec<u8> = Vec::new();
    for letter in whole.bytes().chain(fraction.bytes()) {
        let digit = letter.wrapping_sub(b'0');
        if digit > 9 {
            return None;
        }
        // Zeros in front say nothing.
        if digit > 0 || !digits.is_empty() {
            digits.push(digit);
        }
    }
    let mut exponent = exponent.saturating_sub(i32::try_from(fraction.len()).ok()?);
    if digits.len() > DIGITS {
        let dropped = digits.split_off(DIGITS);
        exponent = exponent.saturating_add(i32::try_from(dropped.len()).ok()?);
        // A last digit that is not 0 stands for all that were dropped.
        if dropped.iter().any(|digit| *digit > 0) {
            digits.push(1);
            exponent -= 1;
        }
    }
    let value = nearest(&digits, exponent);
    Some(if negative { -value } else { value })
}

/// The digits after an `e`; as good as infinite where there are too many.
fn power(text: &str) -> Option<i32> {
    let (negative, body) = match text.strip_prefix('-') {
        Some(body) => (true, body),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    if body.is_empty() || !body.bytes().all(|letter| letter.is_ascii_digit()) {
        return None;
    }
    let size = body.parse().unwrap_or(i32::MAX / 2);
    Some(if negative { -size } else { size })
}

/// `digits` times ten to the power of `exponent`.
fn nearest(digits: &[u8], exponent: i32) -> f64 {
    let length = i32::try_from(digits.len()).unwrap_or(i32::MAX / 2);
    let reach = exponent.saturating_add(length);
    if digits.is_empty() || reach < -FARTHEST {
        return 0.0;
    }
    if reach > FARTHEST {
        return f64::INFINITY;
    }
    // Whole numbers and powers of ten that a double holds exactly need one rounding only.
    if length <= 15 && exponent.abs() <= 22 {
        let whole = digits
            .iter()
            .fold(0.0, |sum, digit| sum * 10.0 + f64::from(*digit));
        let tens = (0..exponent.abs()).fold(1.0, |product, _| product * 10.0);
        return if exponent < 0 {
            whole / tens
        } else {
            whole * tens
        };
    }
    let mut number = Natural::default();
    for digit in digits {
        number.times_plus(10, (*digit).into());
    }
    let mut inexact = false;
    let mut twos = exponent;
    if exponent < 0 {
        // Enough bits that 64 are left after the division; a power of ten is one of five and one
        // of two.
        let limbs = (-exponent * 7 / 3 + 96) / 32;
        number.limbs.splice(0..0, (0..limbs).map(|_| 0));
        twos -= limbs * 32;
        let mut fives = -exponent;
        while fives > 0 {
            let step = fives.min(13);
            let divisor = if step == 13 {
                FIVES
            } else {
                (0..step).fold(1, |product, _| product * 5)
            };
            inexact |= number.divide(divisor);
            fives -= step;
        }
    } else {
        for _ in 0..exponent {
            number.times_plus(5, 0);
        }
    }
    number.rounded(twos, inexact)
}

/// A natural number of any size, its lowest 32 bits first.
#[derive(Default)]
struct Natural {
    limbs: Vec<u32>,
}

/// The lower half of a limb's product.
#[expect(clippy::cast_possible_truncation, reason = "the lower half is wanted")]
fn low(wide: u64) -> u32 {
    wide as u32
}

impl Natural {
    fn times_plus(&mut self, factor: u64, more: u64) {
        let mut carry = more;
        for limb in &mut self.limbs {
            let wide = u64::from(*limb) * factor + carry;
            *limb = low(wide);
            carry = wide >> 32;
        }
        if carry > 0 {
            self.limbs.push(low(carry));
        }
    }

    /// Divides and drops the remainder; whether there was one.
    fn divide(&mut self, divisor: u64) -> bool {
        let mut rest = 0;
        for limb in self.limbs.iter_mut().rev() {
            let wide = (rest << 32) | u64::from(*limb);
            *limb = low(wide / divisor);
            rest = wide % divisor;
        }
        while self.limbs.last() == Some(&0) {
            self.limbs.pop();
        }
        rest > 0
    }

    /// The double nearest to this number times two to the power of `twos`; `inexact` says that
    /// the number is a little larger than it looks.
    #[expect(
        clippy::cast_sign_loss,
        reason = "exponents are checked to be in range first"
    )]
    fn rounded(&self, twos: i32, mut inexact: bool) -> f64 {
        // The 64 highest bits, the highest of them set.
        let mut top = 0;
        let mut free = 64;
        for limb in self.limbs.iter().rev() {
            let limb = u64::from(*limb);
            let bits = if free == 64 {
                32 - low(limb).leading_zeros()
            } else {
                32
            };
            if free >= bits {
                free -= bits;
                top |= limb << free;
            } else {
                let cut = bits - free;
                top |= limb >> cut;
                inexact |= limb & ((1 << cut) - 1) > 0;
                free = 0;
            }
        }
        let count = i32::try_from(self.limbs.len()).unwrap_or(i32::MAX / 64);
        let highest = self.limbs.last().map_or(0, |limb| limb.leading_zeros());
        // The value is `top` times two to this power.
        let power = twos + count * 32 - i32::try_from(highest).unwrap_or(0) - 64;
        // Of the 64 bits a double keeps 53, fewer where it is tiny.
        let drop = (11).max(-1074 - power);
        if drop > 64 {
            return 0.0;
        }
        let kept = if drop == 64 { 0 } else { top >> drop };
        let half = 1 << (drop - 1);
        let rest = top & (half | (half - 1));
        let up = rest > half || (rest == half && (inexact || kept & 1 == 1));
        let kept = kept + u64::from(up);
        // The biased exponent of the lowest kept bit; 0 for the tiny ones. Rounding up may carry
        // into it, which is just right.
        let lowest = power + drop + 1074;
        if lowest > 2046 {
            return f64::INFINITY;
        }
        let bits = ((lowest as u64) << 52) + kept;
        f64::from_bits(bits)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::random::Random;

    /// The standard library is the reference.
    fn same(text: &str) {
        let expected: f64 = text.parse().expect("a number");
        assert_eq!(
            double(text).map(f64::to_bits),
            Some(expected.to_bits()),
            "{text}"
        );
    }

    #[test]
    fn known_hard_numbers() {
        for text in [
            "0",
            "-0",
            "0.0",
            "1",
            "00012.50",
            ".5",
            "5.",
            "1e22",
            "1e23",
            "9007199254740993",
            "9007199254740993.00000000000000000000001",
            "1.7976931348623157e308",
            "1.7976931348623159e308",
            "1e309",
            "-1e309",
            "1e999999999999",
            "1e-999999999999",
            "4.9e-324",
            "2.4703282292062327e-324",
            "2.4703282292062328e-324",
            "2.5e-324",
            "2.2250738585072011e-308",
            "2.2250738585072014e-308",
            "123456789012345678901234567890",
            "0.1e-5",
            "+7",
            "1E+2",
            "8.5e-320",
            "6.631236846766476e-316",
            "1e-400",
            "1e-323",
            "0.000000000000000000000000000000000000000000000000000000000000000001234567890123456789",
        ] {
            same(text);
        }
    }

    #[test]
    fn a_tie_is_decided_by_its_last_digit() {
        // 2^53 + 1 lies between two doubles.
        for tail in ["", "0", "1"] {
            same(&format!("9007199254740993.{}{tail}", "0".repeat(900)));
        }
    }

    #[test]
    fn any_double_in_any_form() {
        let mut random = Random::new(7);
        for _ in 0..20_000 {
            let value = f64::from_bits(random.bits());
            if value.is_finite() {
                same(&format!("{value:e}"));
                same(&format!("{value:.3e}"));
                same(&format!("{value:.20e}"));
            }
            let near = f64::from_bits((1023_u64 << 52) + random.bits() % (60 << 52));
            same(&format!("{near}"));
            same(&format!("{near:.25}"));
        }
    }

    #[test]
    fn no_number() {
        for text in [
            "", "-", ".", "e5", "1e", "1e+", "1.2.3", "1 2", "inf", "NaN", "0x1", "1_0", "--1",
            "1e5.5", "٣",
        ] {
            assert_eq!(double(text), None, "{text}");
        }
    }
}
