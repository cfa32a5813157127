//! Numbers as the digits that were typed and a power of ten, so that nothing is lost.

/// `±digits × 10^exponent`, without trailing zeros in the digits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Decimal {
    pub negative: bool,
    pub digits: u64,
    pub exponent: i32,
}

impl Decimal {
    /// Reads the text of a JSON number; `None` where it has more digits than a double needs.
    pub fn read(text: &str) -> Option<Self> {
        let (negative, body) = match text.strip_prefix('-') {
            Some(body) => (true, body),
            None => (false, text),
        };
        let (mantissa, exponent) = body.split_once(['e', 'E']).unwrap_or((body, "0"));
        let (whole, fraction) = mantissa.split_once('.').unwrap_or((mantissa, ""));
        let mut digits: u64 = format!("{whole}{}", fraction.trim_end_matches('0'))
            .parse()
            .ok()?;
        let places = i32::try_from(fraction.trim_end_matches('0').len()).ok()?;
        let mut exponent = exponent.parse::<i32>().ok()?.checked_sub(places)?;
        while digits != 0 && digits.is_multiple_of(10) {
            digits /= 10;
            exponent = exponent.checked_add(1)?;
        }
        if digits == 0 {
            exponent = 0;
        }
        Some(Self {
            negative,
            digits,
            exponent,
        })
    }

    /// The text of a JSON number with this value.
    pub fn text(self) -> String {
        let sign = if self.negative { "-" } else { "" };
        let plain = u32::try_from(self.exponent)
            .ok()
            .and_then(|exponent| 10_u64.checked_pow(exponent))
            .and_then(|power| self.digits.checked_mul(power));
        match plain {
            // A bare -0 would lose its sign.
            Some(whole) if self.negative => format!("-{whole}.0"),
            Some(whole) => whole.to_string(),
            None => format!("{sign}{}e{}", self.digits, self.exponent),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_survive() {
        for value in [
            0.0,
            -0.0,
            0.1,
            122.0,
            -12.25,
            1200.0,
            1e22,
            1e300,
            5e-324,
            f64::MAX,
            f64::MIN_POSITIVE,
            0.1 + 0.2,
            9_007_199_254_740_993.0,
        ] {
            let json = serde_json::to_string(&value).expect("finite");
            let text = Decimal::read(&json).expect("short").text();
            let back: f64 = text.parse().expect("a number");
            assert_eq!(back.to_bits(), value.to_bits(), "{json} {text}");
        }
    }
}
