//! The plants: dry mass and water drawn, hour by hour, whatever the container.

use time::Duration;

use super::LONGEST_DAYS;
use super::day::Weather;
use crate::plan::{Crop, Sound};
use crate::science::canopy::{CanopyConditions, intercepted_fraction, transpiration};
use crate::science::growth::{self, GrowthModel, GrowthParameters};
use crate::science::units::areal_mass_density::kilogram_per_square_meter;
use crate::science::units::length::meter;
use crate::science::units::mass::kilogram;
use crate::science::units::mass_flux::kilogram_per_square_meter_second;
use crate::science::units::ratio::ratio;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::time::second;
use crate::science::units::{
    Area, ArealMassDensity, Mass, ThermodynamicTemperature, Time, Volume, area, volume,
};

/// Dry mass of a seedling at 14 days: van Henten (1994) set out plants of 0.04 and 0.15 g. The
/// ages of 14 and 21 days, and so the growth of 0.2 a day between and around them, are assumed.
const SEEDLING_DRY_MASS_G: f64 = 0.04;
const SEEDLING_AGE_DAYS: f64 = 14.0;
const SEEDLING_GROWTH_PER_DAY: f64 = 0.2;
/// Structural share of a seedling's dry mass: van Henten (1994).
const STRUCTURAL_SHARE: f64 = 0.75;
/// Leaf area index that takes part in transpiration at the most: Graamans et al. (2017) recommend
/// 3 for a closed stand; the leaves below it see little light and still air.
const TRANSPIRING_LEAF_AREA_INDEX: f64 = 3.0;
/// Leaf area index from which a double cannot tell the intercepted share from one: a stand that
/// misses a heavy target for months is followed all the same.
const ALL_INTERCEPTED: f64 = 50.0;
/// Leaf area index from which the energy balance is asked; below it a bare bed.
const LEAST_LEAF_AREA_INDEX: f64 = 1e-4;

/// A plan that lies beyond what the models can follow although each field is within its limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Beyond;

/// The state at the end of an hour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hour {
    /// Fresh mass of a head.
    pub head: Mass,
    /// Dry mass of a whole plant, roots included.
    pub dry: Mass,
    /// Water drawn from one container since planting, by plants and openings.
    pub drawn: Volume,
}

/// The season of the plants of one container.
#[derive(Clone, Debug, PartialEq)]
pub struct PlantCourse {
    /// Hour after hour from planting; the first entry is the planting itself.
    pub hours: Vec<Hour>,
    /// Days from planting to the day on which the head has reached its target.
    pub harvest_day: Option<u32>,
    /// Leaf area per ground area at the end.
    pub leaf_area_index: f64,
    /// What of the drawn water evaporated from openings.
    pub evaporated: Volume,
    /// Daily mean of the air temperature over the season.
    pub mean_temperature: ThermodynamicTemperature,
    /// Photons of photosynthetically active light in a day, mol/m², mean of the season.
    pub light_integral: f64,
}

/// Lives through the season of one container's plants.
///
/// Growth: van Henten (1994) with its published parameters and the plan's growth factor.
/// Transpiration: Graamans et al. (2017). `open_area` is the surface per container through which
/// solution or wet medium meets the air; leaves shade it as they close.
///
/// # Errors
/// [`Beyond`] when a model refuses its inputs.
pub fn plants(sound: &Sound, open_area: Area) -> Result<PlantCourse, Beyond> {
    let crop = &sound.crop;
    let model = GrowthModel::new(GrowthParameters {
        growth_factor: crop.growth_factor,
        ..GrowthParameters::published()
    })
    .map_err(|_| Beyond)?;
    let parameters = *model.parameters();
    let weather = Weather::new(&sound.climate, &model)?;
    let aerodynamic_resistance = weather.aerodynamic_resistance();

    // kg, m², and kg of water = L.
    let ground_per_plant = crop.area_per_plant.get::<area::square_meter>();
    let plants = f64::from(crop.plants);
    let ground = ground_per_plant * plants;
    let open_area = open_area.get::<area::square_meter>();
    let shoot_share = 1.0 - parameters.root_fraction;
    let fresh_per_dry = 1.0 / crop.figures.dry_matter.get::<ratio>();
    let target = crop.target_head.get::<kilogram>();
    let an_hour = Time::new::<second>(3600.0);

    let mut stand = growth::Crop::of_total(
        ArealMassDensity::new::<kilogram_per_square_meter>(
            seedling_dry_mass(crop.seedling_age) / ground_per_plant,
        ),
        STRUCTURAL_SHARE,
    )
    .map_err(|_| Beyond)?;
    let state = |stand: &growth::Crop, drawn: f64| {
        let dry = stand.total().get::<kilogram_per_square_meter>() * ground_per_plant;
        Hour {
            head: Mass::new::<kilogram>(dry * shoot_share * fresh_per_dry),
            dry: Mass::new::<kilogram>(dry),
            drawn: Volume::new::<volume::liter>(drawn),
        }
    };
    let mut hours = Vec::with_capacity(60 * 24);
    hours.push(state(&stand, 0.0));
    let (mut drawn, mut evaporated, mut warmth, mut light) = (0.0, 0.0, 0.0, 0.0);
    let mut harvest_day = None;
    let mut days = 0;
    while days < LONGEST_DAYS && harvest_day.is_none() {
        let date = crop
            .transplanting
            .checked_add(Duration::days(i64::from(days)))
            .ok_or(Beyond)?;
        let day = weather.day(date)?;
        let open_water = day.open_water.get::<meter>() * 1000.0 / 24.0;
        for hour in &day.hours {
            let leaves = growth::leaf_area_index(&parameters, &stand);
            let cover = intercepted_fraction(parameters.extinction, leaves.min(ALL_INTERCEPTED))
                .map_err(|_| Beyond)?;
            if leaves > LEAST_LEAF_AREA_INDEX {
                let exchange = transpiration(&CanopyConditions {
                    net_radiation: hour.net_radiation * cover,
                    deficit: hour.deficit,
                    slope: hour.slope,
                    leaf_area_index: leaves.min(TRANSPIRING_LEAF_AREA_INDEX),
                    stomatal_resistance: hour.stomatal_resistance,
                    aerodynamic_resistance,
                })
                .map_err(|_| Beyond)?;
                drawn += exchange.water.get::<kilogram_per_square_meter_second>() * 3600.0 * ground;
            }
            let from_openings = open_water * open_area * (1.0 - cover);
            evaporated += from_openings;
            drawn += from_openings;
            stand = hour.growth.step(stand, an_hour);
            hours.push(state(&stand, drawn));
        }
        days += 1;
        warmth += day.mean_temperature.get::<degree_celsius>();
        light += day.light_integral;
        if hours
            .last()
            .is_some_and(|hour| hour.head.get::<kilogram>() >= target)
        {
            harvest_day = Some(days);
        }
    }
    let days = f64::from(days.max(1));
    Ok(PlantCourse {
        hours,
        harvest_day,
        leaf_area_index: growth::leaf_area_index(&parameters, &stand),
        evaporated: Volume::new::<volume::liter>(evaporated),
        mean_temperature: ThermodynamicTemperature::new::<degree_celsius>(warmth / days),
        light_integral: light / days,
    })
}

/// Fresh mass of a seedling's head on the day of planting, by the crop's seedling age.
///
/// Dry mass as [`plants`] begins with; shoot share of van Henten (1994); dry matter of the crop.
pub fn seedling(crop: &Crop) -> Mass {
    let shoot_share = 1.0 - GrowthParameters::published().root_fraction;
    let dry_matter = crop.figures.dry_matter.get::<ratio>();
    Mass::new::<kilogram>(seedling_dry_mass(crop.seedling_age) * shoot_share / dry_matter)
}

/// Dry mass of a seedling, kg, by its age.
fn seedling_dry_mass(age_days: u32) -> f64 {
    let days = f64::from(age_days) - SEEDLING_AGE_DAYS;
    SEEDLING_DRY_MASS_G / 1000.0 * libm::exp(SEEDLING_GROWTH_PER_DAY * days)
}

impl PlantCourse {
    /// Whole days that the course lasts.
    pub fn days(&self) -> usize {
        self.hours.len().saturating_sub(1) / 24
    }

    /// The state at the end of a day (0 is planting).
    pub fn at_day(&self, day: usize) -> Option<&Hour> {
        self.hours.get(day * 24)
    }
}
