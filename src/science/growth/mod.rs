//! Growth of a lettuce crop: the two-state dynamic model of van Henten (1994).
//!
//! A crop is two dry weights per ground area: a store of non-structural material (sugars, starch)
//! filled by photosynthesis, and structural material (walls, cytoplasm) built from the store. The
//! driving climate is canopy temperature, photosynthetically active radiation and carbon dioxide.
//!
//! Three levels keep a season cheap: [`GrowthModel`] holds what depends on the parameters only
//! (made once per season), [`PreparedGrowth`] what depends on the climate (once per hour), and
//! a [`step`](GrowthModel::step) evaluates one exponential per stage.
//!
//! Source: van Henten (1994), Validation of a dynamic lettuce growth model for greenhouse climate
//! control, Agricultural Systems 45:55–72.

mod model;
mod parameters;
#[cfg(test)]
mod tests;

pub use model::{GrowthModel, PreparedGrowth};
pub use parameters::GrowthParameters;

use crate::science::units::{
    ArealGrowthRate, ArealMassDensity, HeatFluxDensity, Ratio, ThermodynamicTemperature, Velocity,
};
use crate::science::units::{areal_mass_density::gram_per_square_meter, heat_flux_density};
use crate::science::units::{ratio, thermodynamic_temperature};
use uom::si::{ISQ, Quantity as Dimensioned, SI};
use uom::typenum::{N2, P2, Z0};

/// Mass per energy, kg J⁻¹ (dimension s² m⁻²): carbon dioxide fixed per radiant energy.
pub type MassPerEnergy = Dimensioned<ISQ<N2, Z0, P2, Z0, Z0, Z0, Z0>, SI<f64>, f64>;

/// What was out of range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// The field of that name in [`GrowthParameters`], in the unit of that field.
    Parameter(&'static str),
    /// Non-structural dry weight, g m⁻².
    Nonstructural,
    /// Structural dry weight, g m⁻².
    Structural,
    /// Share of the structural dry weight, dimensionless.
    StructuralShare,
    /// Canopy temperature, °C.
    Temperature,
    /// Photosynthetically active radiation, W m⁻².
    PhotosyntheticRadiation,
    /// Carbon dioxide, parts per million.
    CarbonDioxide,
}

/// A quantity outside the range in which the model may be asked. NaN is outside every range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfRange {
    /// What was out of range, and so the unit of the three numbers.
    pub quantity: Quantity,
    /// The value met.
    pub got: f64,
    /// The lowest value allowed.
    pub low: f64,
    /// The highest value allowed.
    pub high: f64,
}

/// Accepts `low..=high`; NaN fails both comparisons.
fn within(quantity: Quantity, got: f64, low: f64, high: f64) -> Result<(), OutOfRange> {
    if got >= low && got <= high {
        return Ok(());
    }
    Err(OutOfRange {
        quantity,
        got,
        low,
        high,
    })
}

/// The state of the crop: dry weights (shoot and root together) per ground area. Divide by the
/// planting density for weights per plant (Eq. 11).
///
/// Source: van Henten (1994), states of Eqs 1 and 2.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crop {
    /// Non-structural dry weight per ground area. Valid range: 0 to 10 kg m⁻².
    pub nonstructural: ArealMassDensity,
    /// Structural dry weight per ground area. Valid range: 0 to 10 kg m⁻².
    pub structural: ArealMassDensity,
}

impl Crop {
    /// A crop of a given total dry weight.
    ///
    /// `total` dry weight per ground area, 0 to 10 kg m⁻²; `structural_share` of it that is
    /// structural, dimensionless, 0 to 1 (the paper starts its crops at 0.75).
    ///
    /// # Errors
    /// [`OutOfRange`] outside those ranges.
    ///
    /// Source: van Henten (1994), initial conditions of both experiments.
    ///
    /// ```
    /// use slackwater::science::growth::Crop;
    /// use slackwater::science::units::{ArealMassDensity, areal_mass_density::gram_per_square_meter};
    /// let crop = Crop::of_total(ArealMassDensity::new::<gram_per_square_meter>(0.72), 0.75)?;
    /// assert!((crop.structural.get::<gram_per_square_meter>() - 0.54).abs() < 1e-12);
    /// # Ok::<(), slackwater::science::growth::OutOfRange>(())
    /// ```
    pub fn of_total(total: ArealMassDensity, structural_share: f64) -> Result<Self, OutOfRange> {
        within(Quantity::StructuralShare, structural_share, 0.0, 1.0)?;
        let structural = total * structural_share;
        let crop = Self {
            nonstructural: total - structural,
            structural,
        };
        crop.check()?;
        Ok(crop)
    }

    /// Both dry weights together, per ground area.
    pub fn total(&self) -> ArealMassDensity {
        self.nonstructural + self.structural
    }

    /// Whether both dry weights are in range. A crop that passes still passes after any number of
    /// [`step`](GrowthModel::step)s, so a season checks its first crop only.
    ///
    /// # Errors
    /// [`OutOfRange`] for a dry weight that is negative, NaN or above 10 kg m⁻², ten times the
    /// densest stand of lettuce.
    pub fn check(&self) -> Result<(), OutOfRange> {
        const HIGHEST: f64 = 10_000.0;
        let nonstructural = self.nonstructural.get::<gram_per_square_meter>();
        let structural = self.structural.get::<gram_per_square_meter>();
        within(Quantity::Nonstructural, nonstructural, 0.0, HIGHEST)?;
        within(Quantity::Structural, structural, 0.0, HIGHEST)
    }
}

/// The climate around the canopy.
///
/// Source: van Henten (1994), inputs of Eqs 3–10.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Canopy temperature (the paper takes it equal to that of the air). Valid range: −40 to
    /// 60 °C. Outside about 5.0 to 40.0 °C the carboxylation conductance of Eq. 10 has no positive
    /// value and photosynthesis is zero; growth and maintenance follow their temperature factors.
    pub temperature: ThermodynamicTemperature,
    /// Photosynthetically active radiation (400–700 nm, energy, not photons) on top of the
    /// canopy. Valid range: 0 to 1000 W m⁻².
    pub photosynthetic_radiation: HeatFluxDensity,
    /// Carbon dioxide in the air by volume. Valid range: 0 to 10 000 ppm. At or below the
    /// compensation point photosynthesis is zero.
    pub carbon_dioxide: Ratio,
}

impl Surroundings {
    /// Temperature in °C, radiation in W m⁻² and carbon dioxide in ppm, each checked.
    fn in_paper_units(&self) -> Result<(f64, f64, f64), OutOfRange> {
        let temperature = self
            .temperature
            .get::<thermodynamic_temperature::degree_celsius>();
        let radiation = self
            .photosynthetic_radiation
            .get::<heat_flux_density::watt_per_square_meter>();
        let carbon_dioxide = self.carbon_dioxide.get::<ratio::part_per_million>();
        within(Quantity::Temperature, temperature, -40.0, 60.0)?;
        within(Quantity::PhotosyntheticRadiation, radiation, 0.0, 1000.0)?;
        within(Quantity::CarbonDioxide, carbon_dioxide, 0.0, 10_000.0)?;
        Ok((temperature, radiation, carbon_dioxide))
    }
}

/// Rates of change of a crop and every intermediate of the equations, for showing the working.
///
/// Rates are per ground area. These are the paper's rates as they stand: in the dark the
/// non-structural rate is negative even for an empty store, and it is
/// [`step`](GrowthModel::step) that ends at an empty store.
///
/// Source: van Henten (1994), equation numbers with each field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rates {
    /// Change of the non-structural dry weight (Eq. 1).
    pub nonstructural: ArealGrowthRate,
    /// Change of the structural dry weight (Eq. 2).
    pub structural: ArealGrowthRate,
    /// Gross photosynthesis of the canopy, mass of carbon dioxide (Eq. 5), times our growth
    /// factor.
    pub gross_photosynthesis: ArealGrowthRate,
    /// Gross photosynthesis of a canopy that takes all light, mass of carbon dioxide (Eq. 6),
    /// times our growth factor.
    pub maximal_photosynthesis: ArealGrowthRate,
    /// Maintenance respiration, mass of carbohydrate (Eq. 4).
    pub maintenance_respiration: ArealGrowthRate,
    /// Growth respiration, mass of carbohydrate (last term of Eq. 1).
    pub growth_respiration: ArealGrowthRate,
    /// Leaf area per ground area (in the exponent of Eq. 5), dimensionless.
    pub leaf_area_index: f64,
    /// Carbon dioxide compensation point Γ (Eq. 7).
    pub compensation_point: Ratio,
    /// Light use efficiency ε (Eq. 8); zero at or below the compensation point.
    pub light_use_efficiency: MassPerEnergy,
    /// Carboxylation conductance (Eq. 10), zero where the polynomial is not positive.
    pub carboxylation_conductance: Velocity,
    /// Canopy conductance for carbon dioxide (Eq. 9).
    pub canopy_conductance: Velocity,
}

/// The rates of change of a crop, with all intermediates, straight from parameters.
///
/// For one look; a season makes a [`GrowthModel`] once instead. `parameters` in the ranges their
/// fields state; `crop` in the range of [`Crop`]; `surroundings` in the range of [`Surroundings`].
/// Result: rates per ground area and second.
///
/// # Errors
/// [`OutOfRange`] for the first argument outside its range.
///
/// Source: van Henten (1994), Eqs 1–10.
///
/// ```
/// use slackwater::science::growth::{Crop, GrowthParameters, Surroundings, rates};
/// use slackwater::science::units::*;
/// let crop = Crop::of_total(ArealMassDensity::new::<areal_mass_density::gram_per_square_meter>(40.0), 0.75)?;
/// let surroundings = Surroundings {
///     temperature: ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(20.0),
///     photosynthetic_radiation: HeatFluxDensity::new::<heat_flux_density::watt_per_square_meter>(100.0),
///     carbon_dioxide: Ratio::new::<ratio::part_per_million>(400.0),
/// };
/// let rates = rates(&GrowthParameters::published(), &crop, &surroundings)?;
/// let per_second = rates.structural.get::<mass_flux::kilogram_per_square_meter_second>();
/// assert!((per_second - 3.75e-8).abs() < 1e-12);
/// # Ok::<(), slackwater::science::growth::OutOfRange>(())
/// ```
pub fn rates(
    parameters: &GrowthParameters,
    crop: &Crop,
    surroundings: &Surroundings,
) -> Result<Rates, OutOfRange> {
    crop.check()?;
    GrowthModel::new(*parameters)?.rates(surroundings, crop)
}

/// Leaf area per ground area of a crop, dimensionless.
///
/// `parameters` and `crop` in the ranges their fields state; values outside them are not checked
/// and give the plain product.
///
/// Source: van Henten (1994), the exponent of Eq. 5 and Eq. 12: `c_lar (1 − cτ) s`.
///
/// ```
/// use slackwater::science::growth::{Crop, GrowthParameters, leaf_area_index};
/// use slackwater::science::units::{ArealMassDensity, areal_mass_density::gram_per_square_meter};
/// let crop = Crop::of_total(ArealMassDensity::new::<gram_per_square_meter>(40.0), 0.75)?;
/// assert!((leaf_area_index(&GrowthParameters::published(), &crop) - 1.9125).abs() < 1e-12);
/// # Ok::<(), slackwater::science::growth::OutOfRange>(())
/// ```
pub fn leaf_area_index(parameters: &GrowthParameters, crop: &Crop) -> f64 {
    parameters.leaf_area_ratio
        * (1.0 - parameters.root_fraction)
        * crop.structural.get::<gram_per_square_meter>()
}
