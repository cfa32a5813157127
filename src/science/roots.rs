//! Roots in still solution: how fast their tips grow, and how deep oxygen reaches.
//!
//! Two published parts, and what is assumed between them: tips grow with the warmth of the day;
//! oxygen enters from the surface by molecular diffusion alone and is breathed by the roots evenly
//! throughout the solution; tips do not grow where too little is left. Real solution is stirred a
//! little as its surface cools at night, so roots may reach deeper than this.

use crate::science::units::diffusion_coefficient::square_meter_per_second;
use crate::science::units::length::{meter, millimeter};
use crate::science::units::mass::gram;
use crate::science::units::mass_concentration::gram_per_cubic_meter;
use crate::science::units::mass_rate::gram_per_second;
use crate::science::units::thermodynamic_temperature::{degree_celsius, kelvin};
use crate::science::units::velocity::millimeter_per_second;
use crate::science::units::volume::cubic_meter;
use crate::science::units::{
    DiffusionCoefficient, Length, Mass, MassConcentration, MassRate, ThermodynamicTemperature,
    Velocity, Volume,
};

/// Why an answer is refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RootProblem {
    /// The temperature is outside the range of the function, or not a number.
    TemperatureOutOfRange {
        /// What was asked.
        got: ThermodynamicTemperature,
        /// The lowest.
        low: ThermodynamicTemperature,
        /// The highest.
        high: ThermodynamicTemperature,
    },
    /// A quantity that must be finite and above zero (or not below, for what may be nothing).
    NotPositive,
}

/// How root tips grow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Elongation {
    /// Growth of the tips for each degree above the base and each day.
    pub per_degree_day: Length,
    /// No growth at or below this.
    pub base: ThermodynamicTemperature,
    /// The most that tips grow in a day, however warm.
    pub most_per_day: Length,
}

impl Elongation {
    /// Lettuce, taken for every leafy crop: 1.0 mm per °C·d above 5 °C, at most 25 mm a day.
    ///
    /// Kage, Kochler & Stützel (2000) give 1.07 mm per °C·d for cauliflower; Pedersen, Zhang &
    /// Thorup-Kristensen (2010), introduction, gather 0.7 (carrot) to 2.5 (cabbage). The figure of
    /// lettuce and its base (4 to 7 °C) are from memory; 10 to 25 mm a day is what planning in
    /// solution culture counts with, common practice, no source.
    pub fn lettuce() -> Self {
        Self {
            per_degree_day: Length::new::<millimeter>(1.0),
            base: ThermodynamicTemperature::new::<degree_celsius>(5.0),
            most_per_day: Length::new::<millimeter>(25.0),
        }
    }

    /// The growth of the tips at a mean temperature of the day.
    ///
    /// `mean`: −10 to 50 °C. The result is zero at or below the base, never more than
    /// [`Self::most_per_day`].
    ///
    /// # Errors
    /// [`RootProblem::TemperatureOutOfRange`] outside of that.
    ///
    /// Source: degree-days as in Kage, Kochler & Stützel (2000), Plant and Soil 223:133–147.
    ///
    /// ```
    /// use slackwater::science::roots::Elongation;
    /// use slackwater::science::units::{
    ///     ThermodynamicTemperature, thermodynamic_temperature::degree_celsius,
    ///     velocity::millimeter_per_second,
    /// };
    /// let mild = ThermodynamicTemperature::new::<degree_celsius>(20.0);
    /// let rate = Elongation::lettuce().rate(mild)?;
    /// assert!((rate.get::<millimeter_per_second>() * 86400.0 - 15.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::roots::RootProblem>(())
    /// ```
    pub fn rate(&self, mean: ThermodynamicTemperature) -> Result<Velocity, RootProblem> {
        within(mean, -10.0, 50.0)?;
        // °C and mm/d.
        let above = mean.get::<degree_celsius>() - self.base.get::<degree_celsius>();
        let a_day = (self.per_degree_day.get::<millimeter>() * above.max(0.0))
            .min(self.most_per_day.get::<millimeter>());
        Ok(Velocity::new::<millimeter_per_second>(a_day / 86_400.0))
    }
}

/// The molecular diffusion of oxygen in water.
///
/// `temperature`: 0 to 95 °C. The result is about 1.2 × 10⁻⁹ to 6 × 10⁻⁹ m²/s.
///
/// # Errors
/// [`RootProblem::TemperatureOutOfRange`] outside of that.
///
/// Source: Han & Bartels (1996), J. Phys. Chem. 100:5597–5602, the interpolation of the abstract.
///
/// ```
/// use slackwater::science::roots::oxygen_diffusion;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, diffusion_coefficient::square_meter_per_second,
///     thermodynamic_temperature::degree_celsius,
/// };
/// let room = ThermodynamicTemperature::new::<degree_celsius>(25.0);
/// let diffusion = oxygen_diffusion(room)?.get::<square_meter_per_second>();
/// assert!((1.9e-9..2.4e-9).contains(&diffusion));
/// # Ok::<(), slackwater::science::roots::RootProblem>(())
/// ```
pub fn oxygen_diffusion(
    temperature: ThermodynamicTemperature,
) -> Result<DiffusionCoefficient, RootProblem> {
    within(temperature, 0.0, 95.0)?;
    // K and cm²/s, as the source prints them.
    let inverse = 1.0 / temperature.get::<kelvin>();
    let bend = 506.4 * inverse;
    let square_cm = libm::pow(10.0, -4.410 + 773.8 * inverse - bend * bend);
    Ok(DiffusionCoefficient::new::<square_meter_per_second>(
        square_cm * 1e-4,
    ))
}

/// Oxygen that roots of leafy crops breathe, nmol for each gram of dry roots and second: herbaceous
/// plants take 10 to 60 near 20 °C, from memory; 20 is assumed, whatever the temperature.
const UPTAKE_NMOL_PER_G_S: f64 = 20.0;
const OXYGEN_G_PER_MOL: f64 = 31.998;

/// The oxygen that roots breathe.
///
/// `roots`: dry mass, zero or more. The result is proportional to it: 0.64 µg/s for a gram.
///
/// # Errors
/// [`RootProblem::NotPositive`] for a mass below zero or not finite.
///
/// Source: assumed, see the constants above; from memory.
///
/// ```
/// use slackwater::science::roots::oxygen_uptake;
/// use slackwater::science::units::{Mass, mass::gram, mass_rate::gram_per_second};
/// let uptake = oxygen_uptake(Mass::new::<gram>(1.0))?.get::<gram_per_second>();
/// assert!((uptake - 0.64e-6).abs() < 0.01e-6);
/// # Ok::<(), slackwater::science::roots::RootProblem>(())
/// ```
pub fn oxygen_uptake(roots: Mass) -> Result<MassRate, RootProblem> {
    let grams = roots.get::<gram>();
    if !grams.is_finite() || grams < 0.0 {
        return Err(RootProblem::NotPositive);
    }
    Ok(MassRate::new::<gram_per_second>(
        grams * UPTAKE_NMOL_PER_G_S * 1e-9 * OXYGEN_G_PER_MOL,
    ))
}

/// A body of still solution with roots in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StillSolution {
    /// Oxygen at the surface, in equilibrium with the air.
    pub surface_oxygen: MassConcentration,
    /// Molecular diffusion of oxygen.
    pub diffusion: DiffusionCoefficient,
    /// What all roots in it breathe.
    pub uptake: MassRate,
    /// Volume of the solution.
    pub volume: Volume,
    /// Depth of the solution.
    pub depth: Length,
}

/// The depth below the surface at which a given concentration of oxygen is left.
///
/// `still`: every figure finite and above zero; the uptake may be zero. `needed`: zero or more. The
/// result lies between zero (the surface holds less than is needed) and the whole depth.
///
/// # Errors
/// [`RootProblem::NotPositive`] for any other figure.
///
/// Source: steady diffusion into a layer that consumes at an even rate, its floor tight, as for
/// tissue slices (Warburg 1923) and for the oxidised layer of flooded soil (Bouldin 1968):
/// D c″ = q, c = c₀ at the surface, c′ = 0 at the floor or where c has become 0.
///
/// ```
/// use slackwater::science::roots::{StillSolution, oxygen_reach};
/// use slackwater::science::units::{
///     DiffusionCoefficient, Length, MassConcentration, MassRate, Volume,
///     diffusion_coefficient::square_meter_per_second, length::centimeter,
///     mass_concentration::milligram_per_liter, mass_rate::gram_per_second, volume::liter,
/// };
/// let still = StillSolution {
///     surface_oxygen: MassConcentration::new::<milligram_per_liter>(8.0),
///     diffusion: DiffusionCoefficient::new::<square_meter_per_second>(2e-9),
///     uptake: MassRate::new::<gram_per_second>(8e-7),
///     volume: Volume::new::<liter>(10.0),
///     depth: Length::new::<centimeter>(20.0),
/// };
/// // The layer is √(2·2e-9·8/8e-5) = 2 cm thick; half way down a quarter of the oxygen is left.
/// let reach = oxygen_reach(&still, MassConcentration::new::<milligram_per_liter>(2.0))?;
/// assert!((reach.get::<centimeter>() - 1.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::roots::RootProblem>(())
/// ```
pub fn oxygen_reach(
    still: &StillSolution,
    needed: MassConcentration,
) -> Result<Length, RootProblem> {
    // g/m³, m²/s, g/s, m³ and m.
    let surface = still.surface_oxygen.get::<gram_per_cubic_meter>();
    let diffusion = still.diffusion.get::<square_meter_per_second>();
    let uptake = still.uptake.get::<gram_per_second>();
    let volume = still.volume.get::<cubic_meter>();
    let depth = still.depth.get::<meter>();
    let needed = needed.get::<gram_per_cubic_meter>();
    let above_zero = |value: f64| value.is_finite() && value > 0.0;
    if ![surface, diffusion, volume, depth]
        .into_iter()
        .all(above_zero)
        || ![uptake, needed]
            .into_iter()
            .all(|it| it.is_finite() && it >= 0.0)
    {
        return Err(RootProblem::NotPositive);
    }
    if needed >= surface {
        return Ok(Length::default());
    }
    let consumed = uptake / volume;
    if consumed <= 0.0 {
        return Ok(still.depth);
    }
    // To the floor, or to where nothing is left.
    let layer = (2.0 * diffusion * surface / consumed).sqrt().min(depth);
    let under = layer * layer - 2.0 * diffusion * (surface - needed) / consumed;
    if under < 0.0 {
        return Ok(still.depth);
    }
    Ok(Length::new::<meter>(layer - under.sqrt()))
}

fn within(got: ThermodynamicTemperature, low_c: f64, high_c: f64) -> Result<(), RootProblem> {
    let low = ThermodynamicTemperature::new::<degree_celsius>(low_c);
    let high = ThermodynamicTemperature::new::<degree_celsius>(high_c);
    if (low..=high).contains(&got) {
        Ok(())
    } else {
        Err(RootProblem::TemperatureOutOfRange { got, low, high })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(value)
    }

    fn still(uptake: f64, depth: f64) -> StillSolution {
        StillSolution {
            surface_oxygen: MassConcentration::new::<gram_per_cubic_meter>(9.0),
            diffusion: DiffusionCoefficient::new::<square_meter_per_second>(2e-9),
            uptake: MassRate::new::<gram_per_second>(uptake),
            volume: Volume::new::<cubic_meter>(0.01),
            depth: Length::new::<meter>(depth),
        }
    }

    fn reach(uptake: f64, depth: f64, needed: f64) -> f64 {
        oxygen_reach(
            &still(uptake, depth),
            MassConcentration::new::<gram_per_cubic_meter>(needed),
        )
        .expect("sound figures")
        .get::<meter>()
    }

    /// Roundings of a few operations.
    const ROUNDING: f64 = 1e-12;

    #[test]
    fn cold_stops_tips_and_warmth_has_its_limit() {
        let rate = |t| {
            Elongation::lettuce()
                .rate(celsius(t))
                .expect("within range")
        };
        assert!(rate(5.0) <= Velocity::default() && rate(-5.0) <= Velocity::default());
        assert_eq!(rate(30.0), rate(45.0));
        assert!(rate(20.0) > rate(10.0));
        for t in [-10.1, 50.1, f64::NAN] {
            assert!(Elongation::lettuce().rate(celsius(t)).is_err());
        }
    }

    #[test]
    fn diffusion_is_answered_within_the_experiments() {
        for t in [0.0, 95.0] {
            assert!(oxygen_diffusion(celsius(t)).is_ok());
        }
        for t in [-0.1, 95.1, f64::NAN] {
            assert!(oxygen_diffusion(celsius(t)).is_err());
        }
    }

    #[test]
    fn without_roots_oxygen_reaches_the_floor_and_with_many_hardly_anywhere() {
        assert!((reach(0.0, 0.2, 2.0) - 0.2).abs() < ROUNDING);
        // So few roots that more than enough is left at the floor.
        assert!((reach(1e-10, 0.2, 2.0) - 0.2).abs() < ROUNDING);
        assert!(reach(1e-5, 0.2, 2.0) < 0.01);
        assert!(reach(1e-7, 0.2, 9.0) < ROUNDING && reach(1e-7, 0.2, 10.0) < ROUNDING);
        assert!(reach(2e-7, 0.2, 2.0) < reach(1e-7, 0.2, 2.0));
        assert!(reach(1e-7, 0.2, 3.0) < reach(1e-7, 0.2, 2.0));
    }

    #[test]
    fn the_profile_obeys_its_equation() {
        // Depths at which 5, 6 and 7 g/m³ are left: the second difference is q / D.
        let (uptake, depth) = (2e-7, 0.03);
        let [a, b, c] = [7.0, 6.0, 5.0].map(|needed| reach(uptake, depth, needed));
        let slopes = (-1.0 / (b - a), -1.0 / (c - b));
        let bend = (slopes.1 - slopes.0) / ((c - a) / 2.0);
        let expected = uptake / 0.01 / 2e-9;
        assert!((bend / expected - 1.0).abs() < 1e-6, "{bend} {expected}");
    }

    #[test]
    fn what_is_no_figure_is_refused() {
        let oxygen = MassConcentration::new::<gram_per_cubic_meter>(2.0);
        for uptake in [-1e-9, f64::NAN, f64::INFINITY] {
            assert!(oxygen_reach(&still(uptake, 0.2), oxygen).is_err());
        }
        for depth in [0.0, -1.0, f64::NAN] {
            assert!(oxygen_reach(&still(1e-7, depth), oxygen).is_err());
        }
        assert!(oxygen_uptake(Mass::new::<gram>(-1.0)).is_err());
    }
}
