//! How much yield a crop loses to salt around its roots.
//!
//! Both curves take the conductivity of a **saturated soil paste's extract**, salted with sodium
//! chloride (and calcium chloride): the measure in which tolerance is published. Do not put the
//! conductivity of a balanced nutrient solution into them: it is not salt in excess of what the
//! crop needs, and a lettuce thrives in solutions whose conductivity alone these curves would
//! punish. Take the part of the conductivity that sodium and chloride make up, turn it into the
//! paste's measure with [`paste_extract`], and say so beside the figure.

use crate::science::units::{
    ElectricalConductivity, Ratio, electrical_conductivity::siemens_per_meter, ratio,
};

/// Relative yield lost per conductivity (Ω m, which is m S⁻¹).
pub type LossPerConductivity = uom::si::f64::ElectricalResistivity;

/// Highest conductivity that is accepted, dS/m: above sea water (about 50).
const MOST: f64 = 200.0;

/// Share of the solution's conductivity that its salt would show in a saturated paste.
const PASTE_SHARE: f64 = 0.5;

/// Why there is no answer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SalinityProblem {
    /// A conductivity that is negative, no number, or above that of any irrigation water.
    ConductivityOutOfRange {
        /// What was asked.
        got: ElectricalConductivity,
        /// The highest accepted; the lowest is zero.
        high: ElectricalConductivity,
    },
    /// A threshold or a slope that is negative or no number; the slope may not be zero.
    ToleranceOutOfRange {
        /// The threshold.
        threshold: ElectricalConductivity,
        /// The slope.
        slope: LossPerConductivity,
    },
}

/// Salt tolerance of a crop: full yield up to a threshold, then a straight line down to nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaltTolerance {
    threshold: ElectricalConductivity,
    slope: LossPerConductivity,
}

/// The same tolerance as a smooth curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SigmoidTolerance {
    half_yield: ElectricalConductivity,
    steepness: LossPerConductivity,
}

impl SaltTolerance {
    /// A tolerance from its two published figures.
    ///
    /// `threshold`: the highest conductivity of the paste's extract without loss, 0 to 200 dS/m.
    /// `slope`: relative yield lost per conductivity above it, above zero and finite, such as 0.13
    /// per 1 dS/m. Outside those ranges a [`SalinityProblem`]. Source: Maas & Hoffman (1977),
    /// Journal of the Irrigation and Drainage Division 103:115–134.
    ///
    /// # Errors
    ///
    /// [`SalinityProblem::ToleranceOutOfRange`] as said.
    pub fn new(
        threshold: ElectricalConductivity,
        slope: LossPerConductivity,
    ) -> Result<Self, SalinityProblem> {
        let possible = (0.0..=MOST).contains(&decisiemens(threshold));
        if possible && slope.value > 0.0 && slope.value.is_finite() {
            Ok(Self { threshold, slope })
        } else {
            Err(SalinityProblem::ToleranceOutOfRange { threshold, slope })
        }
    }

    /// The highest conductivity of the paste's extract without loss.
    pub fn threshold(&self) -> ElectricalConductivity {
        self.threshold
    }

    /// Relative yield lost per conductivity above the threshold.
    pub fn slope(&self) -> LossPerConductivity {
        self.slope
    }

    /// Yield relative to that without salt: 1 − slope · (EC − threshold).
    ///
    /// `paste_extract`: conductivity of the saturated paste's extract at 25 °C, 0 to 200 dS/m; not
    /// that of the nutrient solution, see the module. The result: a ratio from 0 to 1; one below
    /// the threshold and zero where the line has run out, as in the source. Outside the range a
    /// [`SalinityProblem`]. Source: Maas & Hoffman (1977), in the form of FAO Irrigation and
    /// Drainage Paper 61 (2002), annex 1, equation 1.
    ///
    /// ```
    /// use slackwater::science::salinity::SaltTolerance;
    /// use slackwater::science::units::{ElectricalConductivity, Ratio, ratio::ratio};
    /// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
    /// let ds_per_m = |it: f64| ElectricalConductivity::new::<siemens_per_meter>(it / 10.0);
    /// let slope = Ratio::new::<ratio>(0.13) / ds_per_m(1.0);
    /// let lettuce = SaltTolerance::new(ds_per_m(1.3), slope)?;
    /// let left = lettuce.relative_yield(ds_per_m(2.3))?;
    /// assert!((left.get::<ratio>() - 0.87).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::salinity::SalinityProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`SalinityProblem::ConductivityOutOfRange`] as said.
    pub fn relative_yield(
        &self,
        paste_extract: ElectricalConductivity,
    ) -> Result<Ratio, SalinityProblem> {
        within(paste_extract)?;
        let lost = self.slope * (paste_extract - self.threshold);
        Ok(Ratio::new::<ratio::ratio>(
            (1.0 - lost.value).clamp(0.0, 1.0),
        ))
    }

    /// The smooth curve with the same threshold and slope: C₅₀ = 0.988 · (0.5/b + Ct) − 0.252 and
    /// s = 1.52 · b, in dS/m and per dS/m.
    ///
    /// `None` where C₅₀ would not be positive: a loss so steep that the regression, made over
    /// crops with b from 0.03 to 0.33, does not hold. Source: Steppuhn, van Genuchten & Grieve
    /// (2005), Crop Science 45:221–232, the two regressions of the abstract.
    pub fn sigmoid(&self) -> Option<SigmoidTolerance> {
        // dS/m and per dS/m, as the source prints them.
        let b = self.slope.value / 10.0;
        let half = 0.988 * (0.5 / b + decisiemens(self.threshold)) - 0.252;
        (half > 0.0).then(|| SigmoidTolerance {
            half_yield: conductivity(half),
            steepness: self.slope * 1.52,
        })
    }
}

impl SigmoidTolerance {
    /// The conductivity of the paste's extract at which half of the yield is left.
    pub fn half_yield(&self) -> ElectricalConductivity {
        self.half_yield
    }

    /// The steepness constant s of the curve, not its slope: the slope at half yield is
    /// exp(s · C₅₀) / (4 · C₅₀).
    pub fn steepness(&self) -> LossPerConductivity {
        self.steepness
    }

    /// Yield relative to that without salt: 1 / (1 + (C / C₅₀)^exp(s · C₅₀)).
    ///
    /// `paste_extract`: conductivity of the saturated paste's extract at 25 °C, 0 to 200 dS/m; not
    /// that of the nutrient solution, see the module. The result: a ratio from 0 to 1. Outside
    /// the range a [`SalinityProblem`]. Source: Steppuhn, van Genuchten & Grieve (2005), Crop
    /// Science 45:209–220, the modified discount function.
    ///
    /// ```
    /// use slackwater::catalog::{crops::CropKind, salt_tolerance};
    /// use slackwater::science::units::ratio::ratio;
    /// let lettuce = salt_tolerance::of(CropKind::LeafLettuce).and_then(|it| it.sigmoid());
    /// let half = lettuce.map(|it| it.relative_yield(it.half_yield()));
    /// assert!(matches!(half, Some(Ok(it)) if (it.get::<ratio>() - 0.5).abs() < 1e-12));
    /// ```
    ///
    /// # Errors
    ///
    /// [`SalinityProblem::ConductivityOutOfRange`] as said.
    pub fn relative_yield(
        &self,
        paste_extract: ElectricalConductivity,
    ) -> Result<Ratio, SalinityProblem> {
        within(paste_extract)?;
        let exponent = libm::exp((self.steepness * self.half_yield).value);
        let share = (paste_extract / self.half_yield).value;
        Ok(Ratio::new::<ratio::ratio>(
            1.0 / (1.0 + libm::pow(share, exponent)),
        ))
    }
}

/// The conductivity of the saturated paste's extract that stands for salt in water culture.
///
/// `salt_part`: the part of the solution's conductivity at 25 °C that sodium chloride makes up, 0
/// to 200 dS/m. The result: half of it, because soil water at field capacity is about twice as
/// strong as the paste's extract, and roots in solution meet what roots in soil meet at field
/// capacity. A rule, not a law: soils differ from 1.5 to 3. Outside the range a
/// [`SalinityProblem`]. Source: Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29
/// rev. 1, section 2.
///
/// ```
/// use slackwater::science::salinity::paste_extract;
/// use slackwater::science::units::ElectricalConductivity;
/// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
/// let salt = ElectricalConductivity::new::<siemens_per_meter>(0.26);
/// let paste = paste_extract(salt)?;
/// assert!((paste.get::<siemens_per_meter>() - 0.13).abs() < 1e-12);
/// # Ok::<(), slackwater::science::salinity::SalinityProblem>(())
/// ```
///
/// # Errors
///
/// [`SalinityProblem::ConductivityOutOfRange`] as said.
pub fn paste_extract(
    salt_part: ElectricalConductivity,
) -> Result<ElectricalConductivity, SalinityProblem> {
    within(salt_part)?;
    Ok(salt_part * PASTE_SHARE)
}

fn within(got: ElectricalConductivity) -> Result<(), SalinityProblem> {
    if (0.0..=MOST).contains(&decisiemens(got)) {
        Ok(())
    } else {
        Err(SalinityProblem::ConductivityOutOfRange {
            got,
            high: conductivity(MOST),
        })
    }
}

/// dS/m, which is mS/cm: a tenth of a siemens per metre.
fn decisiemens(conductivity: ElectricalConductivity) -> f64 {
    conductivity.get::<siemens_per_meter>() * 10.0
}

fn conductivity(decisiemens_per_metre: f64) -> ElectricalConductivity {
    ElectricalConductivity::new::<siemens_per_meter>(decisiemens_per_metre / 10.0)
}

#[cfg(test)]
mod tests {
    use super::{SaltTolerance, conductivity, paste_extract};
    use crate::science::units::{Ratio, ratio::ratio};

    fn tolerance(threshold: f64, slope: f64) -> Option<SaltTolerance> {
        let slope = Ratio::new::<ratio>(slope) / conductivity(1.0);
        SaltTolerance::new(conductivity(threshold), slope).ok()
    }

    #[test]
    fn nothing_is_lost_without_salt_and_all_in_brine() {
        let crop = tolerance(1.3, 0.13).expect("a tolerance");
        let smooth = crop.sigmoid().expect("a curve");
        for (salt, straight, curved) in [(0.0, 1.0, 1.0), (200.0, 0.0, 0.0)] {
            let left = crop.relative_yield(conductivity(salt)).expect("in range");
            assert!((left.value - straight).abs() < 1e-15);
            let left = smooth.relative_yield(conductivity(salt)).expect("in range");
            assert!((left.value - curved).abs() < 1e-3);
        }
    }

    #[test]
    fn both_curves_only_fall() {
        let crop = tolerance(2.0, 0.076).expect("a tolerance");
        let smooth = crop.sigmoid().expect("a curve");
        let (mut straight, mut curved) = (1.0, 1.0);
        for step in 0..=400 {
            let salt = conductivity(0.05 * f64::from(step));
            let left = crop.relative_yield(salt).expect("in range").value;
            assert!(left <= straight);
            straight = left;
            let left = smooth.relative_yield(salt).expect("in range").value;
            assert!(left <= curved);
            curved = left;
        }
    }

    #[test]
    fn what_cannot_be_is_refused() {
        for bad in [-0.1, 201.0, f64::NAN, f64::INFINITY] {
            assert_eq!(tolerance(bad, 0.1), None);
            assert!(paste_extract(conductivity(bad)).is_err());
            let crop = tolerance(1.0, 0.1).expect("a tolerance");
            assert!(crop.relative_yield(conductivity(bad)).is_err());
        }
        for bad in [0.0, -0.1, f64::NAN, f64::INFINITY] {
            assert_eq!(tolerance(1.0, bad), None);
        }
        // 0.988 · 0.5 / 3 is less than 0.252.
        assert_eq!(tolerance(0.0, 3.0).and_then(|it| it.sigmoid()), None);
    }
}
