//! The equations of the growth model, prepared in levels so that an hour costs few exponentials.

use super::{Crop, GrowthParameters, OutOfRange, Rates, Surroundings};
use crate::science::positive;
use crate::science::units::{
    ArealGrowthRate, ArealMassDensity, HeatFluxDensity, Ratio, Time, Velocity,
    areal_mass_density::gram_per_square_meter, heat_flux_density::watt_per_square_meter,
    mass_flux::kilogram_per_square_meter_second, ratio::part_per_million, time::second,
    velocity::meter_per_second,
};

/// The growth model with one set of checked parameters, and what depends on those alone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrowthModel {
    parameters: GrowthParameters,
    /// Natural logarithm of each temperature factor per °C: an exponential of a product
    /// costs less than a power.
    growth_exponent: f64,
    respiration_exponent: f64,
    compensation_exponent: f64,
    /// Respiration's temperature factor over that of the compensation point, where both rise alike
    /// and one exponential does for two.
    respiration_per_compensation: Option<f64>,
    /// Maintenance per structural mass at 25 °C (bracket of Eq. 4), s⁻¹.
    maintenance: f64,
    /// 1 / cβ, dimensionless.
    store_spent_per_growth: f64,
    /// Resistance of boundary layer and stomata in series (first terms of Eq. 9), s m⁻¹.
    outer_resistance: f64,
    /// Light extinction per structural mass (exponent of Eq. 5), m² g⁻¹.
    closure_exponent: f64,
}

impl GrowthModel {
    /// Makes a model of parameters.
    ///
    /// `parameters` in the range that each field of [`GrowthParameters`] states.
    ///
    /// # Errors
    /// [`OutOfRange`] for the first parameter outside its range.
    ///
    /// Source: van Henten (1994), Eqs 3–9, the factors that do not depend on climate.
    ///
    /// ```
    /// use slackwater::science::growth::{GrowthModel, GrowthParameters};
    /// let typo = GrowthParameters { growth_yield: 8.0, ..GrowthParameters::published() };
    /// assert!(GrowthModel::new(typo).is_err());
    /// ```
    pub fn new(parameters: GrowthParameters) -> Result<Self, OutOfRange> {
        parameters.check()?;
        let p = &parameters;
        let shoot_fraction = 1.0 - p.root_fraction;
        let respiration_exponent = libm::log(p.respiration_temperature_factor) / 10.0;
        let compensation_exponent = libm::log(p.compensation_temperature_factor) / 10.0;
        let alike = respiration_exponent
            .total_cmp(&compensation_exponent)
            .is_eq();
        Ok(Self {
            growth_exponent: libm::log(p.growth_temperature_factor) / 10.0,
            respiration_exponent,
            compensation_exponent,
            // Their reference temperatures are 25 and 20 °C.
            respiration_per_compensation: alike.then(|| libm::exp(-5.0 * respiration_exponent)),
            maintenance: p.shoot_maintenance * shoot_fraction
                + p.root_maintenance * p.root_fraction,
            store_spent_per_growth: 1.0 / p.growth_yield,
            outer_resistance: 1.0 / p.boundary_layer_conductance + 1.0 / p.stomatal_conductance,
            closure_exponent: p.extinction * p.leaf_area_ratio * shoot_fraction,
            parameters,
        })
    }

    /// The parameters that the model was made of.
    pub fn parameters(&self) -> &GrowthParameters {
        &self.parameters
    }

    /// Readies the model for surroundings: everything that depends on temperature, radiation and
    /// carbon dioxide only. HOT: once per hour of a season.
    ///
    /// `surroundings` in the ranges of [`Surroundings`].
    ///
    /// # Errors
    /// [`OutOfRange`] for the first of the three outside its range.
    ///
    /// Source: van Henten (1994), Eqs 3, 4 and 6–10. Two consequences of the equations are ours to
    /// settle: where the polynomial of Eq. 10 is not positive (outside about 5–40 °C), and at or
    /// below the compensation point, photosynthesis is zero, never negative.
    ///
    /// ```
    /// use slackwater::science::growth::{Crop, GrowthModel, GrowthParameters, Surroundings};
    /// use slackwater::science::units::*;
    /// let model = GrowthModel::new(GrowthParameters::published())?;
    /// let noon = model.prepare(&Surroundings {
    ///     temperature: ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(20.0),
    ///     photosynthetic_radiation: HeatFluxDensity::new::<heat_flux_density::watt_per_square_meter>(100.0),
    ///     carbon_dioxide: Ratio::new::<ratio::part_per_million>(400.0),
    /// })?;
    /// let young = Crop::of_total(ArealMassDensity::new::<areal_mass_density::gram_per_square_meter>(1.0), 0.75)?;
    /// let an_hour_later = model.step(&noon, young, model.cover(&young), Time::new::<time::hour>(1.0));
    /// assert!(an_hour_later.total() > young.total());
    /// # Ok::<(), slackwater::science::growth::OutOfRange>(())
    /// ```
    #[inline]
    pub fn prepare(&self, surroundings: &Surroundings) -> Result<PreparedGrowth, OutOfRange> {
        Ok(self.assimilation(surroundings)?.prepared)
    }

    #[inline]
    fn assimilation(&self, surroundings: &Surroundings) -> Result<Assimilation, OutOfRange> {
        let (temperature, radiation, carbon_dioxide) = surroundings.in_paper_units()?;
        let p = &self.parameters;
        let warmth = libm::exp(self.compensation_exponent * (temperature - 20.0));
        // Eq. 7, ppm.
        let compensation_point = p.compensation_point * warmth;
        let above_compensation = positive(carbon_dioxide - compensation_point);
        // Eq. 8, g J⁻¹. Without any carbon dioxide the quotient has no value but the limit is 0.
        let light_use_efficiency = if above_compensation > 0.0 {
            p.light_use_efficiency * above_compensation
                / (carbon_dioxide + 2.0 * compensation_point)
        } else {
            0.0
        };
        // Eq. 10, m s⁻¹.
        let carboxylation_conductance = positive(
            p.carboxylation_quadratic * temperature * temperature
                + p.carboxylation_linear * temperature
                + p.carboxylation_constant,
        );
        // Eq. 9, m s⁻¹, written so that a zero carboxylation conductance needs no division by it.
        let canopy_conductance =
            carboxylation_conductance / (self.outer_resistance * carboxylation_conductance + 1.0);
        // Eq. 6, g m⁻² s⁻¹: light-limited and diffusion-limited rates in series.
        let by_light = light_use_efficiency * radiation;
        let by_diffusion = canopy_conductance * p.carbon_dioxide_density * above_compensation;
        let maximal_photosynthesis = if by_light + by_diffusion > 0.0 {
            p.growth_factor * by_light * by_diffusion / (by_light + by_diffusion)
        } else {
            0.0
        };
        let respiration = match self.respiration_per_compensation {
            Some(share) => share * warmth,
            None => libm::exp(self.respiration_exponent * (temperature - 25.0)),
        };
        Ok(Assimilation {
            compensation_point,
            light_use_efficiency,
            carboxylation_conductance,
            canopy_conductance,
            prepared: PreparedGrowth {
                maximal_photosynthesis,
                // Eq. 3 without the saturation, s⁻¹.
                growth: p.maximum_growth_rate
                    * libm::exp(self.growth_exponent * (temperature - 20.0)),
                // Eq. 4 without the mass, s⁻¹.
                maintenance: self.maintenance * respiration,
            },
        })
    }

    /// Share of the light that the canopy of a crop intercepts: the bracket of Eq. 5.
    ///
    /// `crop` in the range of [`Crop`] (see [`Crop::check`]), not checked here. Result:
    /// dimensionless, 0 to 1.
    ///
    /// Source: van Henten (1994), Eq. 5 (exponential extinction in a uniform canopy).
    ///
    /// ```
    /// use slackwater::science::growth::{Crop, GrowthModel, GrowthParameters};
    /// use slackwater::science::units::{ArealMassDensity, areal_mass_density::gram_per_square_meter};
    /// let model = GrowthModel::new(GrowthParameters::published())?;
    /// let closed = Crop::of_total(ArealMassDensity::new::<gram_per_square_meter>(300.0), 0.75)?;
    /// assert!(model.cover(&closed) > 0.99);
    /// # Ok::<(), slackwater::science::growth::OutOfRange>(())
    /// ```
    #[inline]
    pub fn cover(&self, crop: &Crop) -> f64 {
        self.cover_of(crop.structural.get::<gram_per_square_meter>())
    }

    #[inline]
    fn cover_of(&self, structural: f64) -> f64 {
        1.0 - libm::exp(-self.closure_exponent * structural)
    }

    /// Eqs 1–5 for a state in g m⁻² under which so much of the light is intercepted.
    #[inline]
    fn terms(
        &self,
        prepared: &PreparedGrowth,
        nonstructural: f64,
        structural: f64,
        cover: f64,
    ) -> Terms {
        let p = &self.parameters;
        // Eq. 5.
        let photosynthesis = prepared.maximal_photosynthesis * cover;
        // Eq. 3 times the structural mass. Without any crop the quotient is 0/0; nothing grows.
        let saturation = p.growth_saturation * structural + nonstructural;
        let growth = if saturation > 0.0 {
            prepared.growth * nonstructural * structural / saturation
        } else {
            0.0
        };
        let maintenance = prepared.maintenance * structural;
        Terms {
            photosynthesis,
            growth,
            maintenance,
            // Eq. 1: the growth itself and its respiration (1 − cβ)/cβ add up to 1/cβ.
            nonstructural: p.carbohydrate_per_carbon_dioxide * photosynthesis
                - self.store_spent_per_growth * growth
                - maintenance,
        }
    }

    /// The rates of change of a crop in some surroundings, with all intermediates.
    ///
    /// `surroundings` in the ranges of [`Surroundings`]; `crop` in the range of [`Crop`] (see
    /// [`Crop::check`]), not checked here. Result: rates per ground area and second.
    ///
    /// # Errors
    /// [`OutOfRange`] for the first of the surroundings outside its range.
    ///
    /// Source: van Henten (1994), Eqs 1–10. Example: [`rates`](super::rates).
    pub fn rates(&self, surroundings: &Surroundings, crop: &Crop) -> Result<Rates, OutOfRange> {
        let here = self.assimilation(surroundings)?;
        let structural = crop.structural.get::<gram_per_square_meter>();
        let terms = self.terms(
            &here.prepared,
            crop.nonstructural.get::<gram_per_square_meter>(),
            structural,
            self.cover_of(structural),
        );
        // The paper's g m⁻² s⁻¹.
        let rate =
            |grams: f64| ArealGrowthRate::new::<kilogram_per_square_meter_second>(grams / 1000.0);
        Ok(Rates {
            nonstructural: rate(terms.nonstructural),
            structural: rate(terms.growth),
            gross_photosynthesis: rate(terms.photosynthesis),
            maximal_photosynthesis: rate(here.prepared.maximal_photosynthesis),
            maintenance_respiration: rate(terms.maintenance),
            growth_respiration: rate((self.store_spent_per_growth - 1.0) * terms.growth),
            leaf_area_index: super::leaf_area_index(&self.parameters, crop),
            compensation_point: Ratio::new::<part_per_million>(here.compensation_point),
            // The paper's g J⁻¹: a rate per radiation.
            light_use_efficiency: rate(here.light_use_efficiency)
                / HeatFluxDensity::new::<watt_per_square_meter>(1.0),
            carboxylation_conductance: Velocity::new::<meter_per_second>(
                here.carboxylation_conductance,
            ),
            canopy_conductance: Velocity::new::<meter_per_second>(here.canopy_conductance),
        })
    }

    /// The crop after some time in surroundings that the model was readied for. HOT: once per hour
    /// of a season.
    ///
    /// `crop` in the range of [`Crop`], `cover` its own ([`cover`](Self::cover)) and `duration` from
    /// 0 to 1 hour, none checked here: a crop that passed [`Crop::check`] and a duration in range
    /// give a crop without NaN or negative weight. Longer durations lose accuracy.
    ///
    /// Method: Heun, second order. With steps of one hour the total dry weight at the end of a
    /// season stays within 0.01 % of an integration to a relative error of 1e-10.
    ///
    /// Starvation, which the paper leaves open: the store cannot fall below nothing. When
    /// maintenance asks for more than the store and the step's photosynthesis hold, only what is
    /// there is respired, the rest goes unpaid and is forgotten, and the structural weight
    /// neither grows nor shrinks. A starved crop therefore stands still until light returns.
    ///
    /// Source: van Henten (1994), Eqs 1 and 2; Heun's method from general numerical practice.
    /// Example: [`GrowthModel::prepare`].
    #[inline]
    pub fn step(&self, prepared: &PreparedGrowth, crop: Crop, cover: f64, duration: Time) -> Crop {
        let nonstructural = crop.nonstructural.get::<gram_per_square_meter>();
        let structural = crop.structural.get::<gram_per_square_meter>();
        let seconds = duration.get::<second>();

        let at_start = self.terms(prepared, nonstructural, structural, cover);
        let grown = structural + seconds * at_start.growth;
        // At night the exponential would only be multiplied by zero.
        let cover = if prepared.maximal_photosynthesis > 0.0 {
            self.cover_of(grown)
        } else {
            cover
        };
        let stored = positive(nonstructural + seconds * at_start.nonstructural);
        let at_end = self.terms(prepared, stored, grown, cover);
        let half = 0.5 * seconds;
        Crop {
            nonstructural: ArealMassDensity::new::<gram_per_square_meter>(positive(
                nonstructural + half * (at_start.nonstructural + at_end.nonstructural),
            )),
            structural: ArealMassDensity::new::<gram_per_square_meter>(
                structural + half * (at_start.growth + at_end.growth),
            ),
        }
    }
}

/// The growth model readied for one set of surroundings: all that a [`step`](GrowthModel::step)
/// needs to know of them, small enough that a list of hours is kept and copied at no cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PreparedGrowth {
    /// Eq. 6 times the growth factor, g m⁻² s⁻¹.
    maximal_photosynthesis: f64,
    /// Relative growth rate of a saturated store, s⁻¹.
    growth: f64,
    /// Maintenance per structural mass, s⁻¹.
    maintenance: f64,
}

/// What surroundings make of the model, with the intermediates of Eqs 7–10.
struct Assimilation {
    /// Γ, ppm.
    compensation_point: f64,
    /// ε, g J⁻¹.
    light_use_efficiency: f64,
    /// Eq. 10, m s⁻¹.
    carboxylation_conductance: f64,
    /// Eq. 9, m s⁻¹.
    canopy_conductance: f64,
    prepared: PreparedGrowth,
}

/// The changing terms of Eqs 1 and 2, all in g m⁻² s⁻¹.
struct Terms {
    photosynthesis: f64,
    growth: f64,
    maintenance: f64,
    nonstructural: f64,
}
