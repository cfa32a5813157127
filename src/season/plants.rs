//! The plants: dry mass and water drawn, hour by hour, whatever the container.

use time::{Date, Duration};

use super::LONGEST_DAYS;
use super::day::{Day, SunDay, Weather};
use crate::plan::{Crop, Sound};
use crate::science::canopy::{CanopyConditions, transpiration};
use crate::science::growth::{self, GrowthModel, GrowthParameters};
use crate::science::units::areal_mass_density::kilogram_per_square_meter;
use crate::science::units::inverse_velocity::second_per_meter;
use crate::science::units::length::meter;
use crate::science::units::mass::kilogram;
use crate::science::units::mass_flux::kilogram_per_square_meter_second;
use crate::science::units::ratio::ratio;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::time::second;
use crate::science::units::{
    Area, ArealMassDensity, InverseVelocity, Mass, ThermodynamicTemperature, Time, Volume, area,
    volume,
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
/// solution or wet medium meets the air; leaves shade it as they close. The plan's water factor
/// multiplies all that is drawn.
///
/// # Errors
/// [`Beyond`] when a model refuses its inputs.
pub fn plants(sound: &Sound, open_area: Area) -> Result<PlantCourse, Beyond> {
    let stand = Stand::new(sound, open_area, (1.0, 1.0))?;
    let climate = &sound.climate;
    let weather = Weather::new(climate, &stand.model)?;
    let mut hours = Vec::with_capacity(60 * 24);
    let summary = stand.live(
        &mut |day| {
            let sun = SunDay::new(climate, date_of(sound, day)?)?;
            weather.day(sun.as_ref())
        },
        &Follow {
            every: 1,
            least_days: 0,
            most_days: LONGEST_DAYS,
        },
        &mut hours,
    )?;
    Ok(PlantCourse {
        hours,
        harvest_day: summary.harvest_day,
        leaf_area_index: summary.leaf_area_index,
        evaporated: Volume::new::<volume::liter>(summary.evaporated),
        mean_temperature: ThermodynamicTemperature::new::<degree_celsius>(summary.warmth),
        light_integral: summary.light,
    })
}

/// The date of a day after transplanting.
pub(super) fn date_of(sound: &Sound, day: u32) -> Result<Date, Beyond> {
    sound
        .crop
        .transplanting
        .checked_add(Duration::days(i64::from(day)))
        .ok_or(Beyond)
}

/// How far and how finely a season is followed.
pub(super) struct Follow {
    /// Hours between two states that are kept.
    pub every: usize,
    /// Days to follow even when the crop is ready before.
    pub least_days: u32,
    /// Days after which to stop although it is not.
    pub most_days: u32,
}

/// What a season comes to.
pub(super) struct Summary {
    pub harvest_day: Option<u32>,
    leaf_area_index: f64,
    /// Litres.
    evaporated: f64,
    /// Mean temperature, °C.
    warmth: f64,
    /// Mean light, mol/m² a day.
    light: f64,
}

/// The plants of one container, ready to be lived through.
pub(super) struct Stand<'a> {
    sound: &'a Sound,
    pub model: GrowthModel,
    /// m².
    open_area: f64,
    /// Multiplies all water drawn.
    water_factor: f64,
}

impl<'a> Stand<'a> {
    /// The plants of a plan, with factors beside the plan's own on gross photosynthesis and on
    /// water drawn.
    pub fn new(
        sound: &'a Sound,
        open_area: Area,
        (growth, water): (f64, f64),
    ) -> Result<Self, Beyond> {
        let model = GrowthModel::new(GrowthParameters {
            growth_factor: sound.crop.growth_factor * growth,
            ..GrowthParameters::published()
        })
        .map_err(|_| Beyond)?;
        Ok(Self {
            sound,
            model,
            open_area: open_area.get::<area::square_meter>(),
            water_factor: sound.crop.water_factor * water,
        })
    }

    /// Lives through days until the crop is ready; the kept states go to `hours`, planting first.
    pub fn live(
        &self,
        day_of: &mut dyn FnMut(u32) -> Result<Day, Beyond>,
        follow: &Follow,
        hours: &mut Vec<Hour>,
    ) -> Result<Summary, Beyond> {
        let crop = &self.sound.crop;
        let parameters = self.model.parameters();
        let aerodynamic_resistance = InverseVelocity::new::<second_per_meter>(
            self.sound.climate.effect.aerodynamic_resistance,
        );

        // kg, m², and kg of water = L.
        let ground_per_plant = crop.area_per_plant.get::<area::square_meter>();
        let ground = ground_per_plant * f64::from(crop.plants);
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
                drawn: Volume::new::<volume::liter>(drawn * self.water_factor),
            }
        };
        hours.push(state(&stand, 0.0));
        let (mut drawn, mut evaporated, mut warmth, mut light) = (0.0, 0.0, 0.0, 0.0);
        let mut harvest_day = None;
        let (mut days, mut count) = (0, 0);
        while days < follow.most_days && (harvest_day.is_none() || days < follow.least_days) {
            let day = day_of(days)?;
            let open_water = day.open_water.get::<meter>() * 1000.0 / 24.0;
            for hour in &day.hours {
                let leaves = growth::leaf_area_index(parameters, &stand);
                let cover = self.model.cover(&stand);
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
                    drawn +=
                        exchange.water.get::<kilogram_per_square_meter_second>() * 3600.0 * ground;
                }
                let from_openings = open_water * self.open_area * (1.0 - cover);
                evaporated += from_openings;
                drawn += from_openings;
                stand = self.model.step(&hour.growth, stand, cover, an_hour);
                count += 1;
                if count % follow.every == 0 {
                    hours.push(state(&stand, drawn));
                }
            }
            days += 1;
            warmth += day.mean_temperature.get::<degree_celsius>();
            light += day.light_integral;
            if harvest_day.is_none() && state(&stand, drawn).head.get::<kilogram>() >= target {
                harvest_day = Some(days);
            }
        }
        let whole_days = f64::from(days.max(1));
        Ok(Summary {
            harvest_day,
            leaf_area_index: growth::leaf_area_index(parameters, &stand),
            evaporated: evaporated * self.water_factor,
            warmth: warmth / whole_days,
            light: light / whole_days,
        })
    }
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
