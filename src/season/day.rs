//! One day's air and light, hour by hour, prepared for growth and transpiration.

use time::Date;

use super::plants::Beyond;
use crate::plan::{Climate, Daylight, Light};
use crate::science::air::{
    actual_vapour_pressure_from_mean_humidity, atmospheric_pressure,
    mean_saturation_vapour_pressure, psychrometric_constant, saturation_slope,
    vapour_concentration,
};
use crate::science::canopy::{saturation, stomatal_resistance};
use crate::science::diurnal::{TemperatureCourse, hourly_solar_shares};
use crate::science::evapotranspiration::{PenmanMonteith, penman_monteith_daily};
use crate::science::growth::{GrowthModel, PreparedGrowth, Surroundings};
use crate::science::positive;
use crate::science::sun::{Sun, clear_sky, net_longwave, net_shortwave, solar_from_sunshine};
use crate::science::units::heat_flux_density::watt_per_square_meter;
use crate::science::units::length::meter;
use crate::science::units::mass_concentration::gram_per_cubic_meter;
use crate::science::units::molar_flux::mole_per_square_meter_second;
use crate::science::units::radiant_exposure::joule_per_square_meter;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::time::hour;
use crate::science::units::velocity::meter_per_second;
use crate::science::units::{
    HeatFluxDensity, InverseVelocity, Length, MassConcentration, MolarFlux, RadiantExposure, Ratio,
    ThermodynamicTemperature, Time, Velocity, mass_density,
};

/// Photosynthetically active share of sunlight's energy: van Henten (1994) uses one half.
const PAR_SHARE_OF_SUN: f64 = 0.5;
/// Photons per energy of PAR in sunlight, µmol/J: Thimijan and Heins (1983), from memory.
const PHOTONS_PER_JOULE_SUN: f64 = 4.57;
/// Energy per photon of white and red-blue lamps, J/µmol: Graamans et al. (2017), table 1
/// (600 µmol m⁻² s⁻¹ are 120 W/m²).
const JOULE_PER_PHOTON_LAMP: f64 = 0.2;
/// Share of short-wave radiation that a crop absorbs: 1 less the albedo of FAO-56 Eq. 38.
const ABSORBED_OF_SUN: f64 = 0.77;
/// Share of PAR that lettuce absorbs under lamps: Graamans et al. (2017), reflection 5 %.
const ABSORBED_OF_LAMPS: f64 = 0.95;
/// FAO-56 Table 12: water less than 2 m deep evaporates this much of the reference.
const OPEN_WATER: f64 = 1.05;

/// One hour, as far as it does not depend on the crop.
#[derive(Clone, Copy, Debug)]
pub(super) struct HourOfDay {
    pub growth: PreparedGrowth,
    /// Net radiation of a full canopy.
    pub net_radiation: HeatFluxDensity,
    pub deficit: MassConcentration,
    pub slope: Ratio,
    pub stomatal_resistance: InverseVelocity,
}

/// One day.
#[derive(Clone, Copy, Debug)]
pub(super) struct Day {
    pub hours: [HourOfDay; 24],
    /// Depth that open water under the shelter loses.
    pub open_water: Length,
    /// Photosynthetically active photons of the day, mol/m².
    pub light_integral: f64,
    /// Daily mean of the air temperature.
    pub mean_temperature: ThermodynamicTemperature,
}

/// The sun of one date, as far as it does not depend on the day's weather.
#[derive(Clone, Copy, Debug)]
pub(super) struct SunDay {
    /// Above the air, under a clear sky, and as the plan says.
    pub above: RadiantExposure,
    pub clear: RadiantExposure,
    pub outside: RadiantExposure,
    shares: [f64; 24],
    /// Day length as the course of temperature takes it.
    length: Time,
}

impl SunDay {
    /// The sun of a date under a climate; `None` under lamps.
    pub fn new(climate: &Climate, date: Date) -> Result<Option<Self>, Beyond> {
        let Light::Sun { daylight, .. } = climate.light else {
            return Ok(None);
        };
        let sun = Sun::new(climate.latitude, date.ordinal()).map_err(|_| Beyond)?;
        let above = sun.extraterrestrial_daily();
        let outside = match daylight {
            Daylight::Radiation(solar) => solar,
            Daylight::Sunshine(hours) => {
                // The planting day allows this much sunshine; a later, shorter day may not.
                let possible = sun.daylight();
                solar_from_sunshine(above, hours.min(possible), possible).map_err(|_| Beyond)?
            }
        };
        Ok(Some(Self {
            above,
            outside,
            clear: clear_sky(above, climate.elevation).map_err(|_| Beyond)?,
            shares: hourly_solar_shares(&sun),
            // The course of temperature was not published for days of less than 3.4 h or nights
            // of less than 12 minutes; beyond, the nearest day that it covers stands in.
            length: Time::new::<hour>(sun.daylight().get::<hour>().clamp(3.5, 23.75)),
        }))
    }
}

/// What is the same on every day of a season.
pub(super) struct Weather<'a> {
    climate: &'a Climate,
    model: &'a GrowthModel,
    vapour_pressure: crate::science::units::Pressure,
}

impl<'a> Weather<'a> {
    pub fn new(climate: &'a Climate, model: &'a GrowthModel) -> Result<Self, Beyond> {
        let vapour_pressure = actual_vapour_pressure_from_mean_humidity(
            climate.temperature_max,
            climate.temperature_min,
            climate.humidity,
        )
        .map_err(|_| Beyond)?;
        Ok(Self {
            climate,
            model,
            vapour_pressure,
        })
    }

    /// A day under its sun; `None` where lamps are the only light.
    pub fn day(&self, sun: Option<&SunDay>) -> Result<Day, Beyond> {
        match (self.climate.light, sun) {
            (Light::Sun { through, .. }, Some(sun)) => self.day_of_sun(sun, through),
            (Light::Lamps { flux, hours }, _) => self.day_of_lamps(flux, hours),
            (Light::Sun { .. }, None) => Err(Beyond),
        }
    }

    fn day_of_sun(&self, sun: &SunDay, through: Ratio) -> Result<Day, Beyond> {
        let outside = sun.outside;
        let inside = outside * through;
        let shares = &sun.shares;
        let course = TemperatureCourse::new(
            self.climate.temperature_max,
            self.climate.temperature_min,
            sun.length,
        )
        .map_err(|_| Beyond)?
        .hourly();
        let joules = inside.get::<joule_per_square_meter>();
        let hours = self.hours(|i| {
            let watts = joules * shares[i] / 3600.0;
            let par = PAR_SHARE_OF_SUN * watts;
            (
                course[i],
                ABSORBED_OF_SUN * watts,
                par,
                par * PHOTONS_PER_JOULE_SUN,
            )
        })?;
        let loss = net_longwave(
            self.climate.temperature_max,
            self.climate.temperature_min,
            self.vapour_pressure,
            outside,
            sun.clear,
        )
        .map_err(|_| Beyond)?;
        Ok(Day {
            hours,
            open_water: self.open_water(net_shortwave(inside) - loss * through)?,
            light_integral: joules * PAR_SHARE_OF_SUN * PHOTONS_PER_JOULE_SUN * 1e-6,
            mean_temperature: mean(&course),
        })
    }

    /// Lamps are lit from midnight on, so that a part of an hour is at the end of the lit time.
    fn day_of_lamps(&self, flux: MolarFlux, lit: Time) -> Result<Day, Beyond> {
        let photons = flux.get::<mole_per_square_meter_second>() * 1e6;
        let lit = lit.get::<hour>();
        let share = |i: usize| (lit - i as f64).clamp(0.0, 1.0);
        let mut course = [self.climate.temperature_min; 24];
        for (i, temperature) in course.iter_mut().enumerate() {
            // The room is warm while the lamps are on.
            if share(i) > 0.0 {
                *temperature = self.climate.temperature_max;
            }
        }
        let hours = self.hours(|i| {
            let photons = photons * share(i);
            let par = photons * JOULE_PER_PHOTON_LAMP;
            (course[i], ABSORBED_OF_LAMPS * par, par, photons)
        })?;
        let joules = photons * JOULE_PER_PHOTON_LAMP * lit * 3600.0;
        Ok(Day {
            hours,
            open_water: self.open_water(RadiantExposure::new::<joule_per_square_meter>(
                ABSORBED_OF_LAMPS * joules,
            ))?,
            light_integral: photons * lit * 3600.0 * 1e-6,
            mean_temperature: mean(&course),
        })
    }

    /// The 24 hours from temperature, absorbed radiation, PAR (W/m²) and photons (µmol/m²/s).
    fn hours(
        &self,
        of_hour: impl Fn(usize) -> (ThermodynamicTemperature, f64, f64, f64),
    ) -> Result<[HourOfDay; 24], Beyond> {
        let prepare = |i: usize| -> Result<HourOfDay, Beyond> {
            let (temperature, absorbed, par, photons) = of_hour(i);
            let growth = self
                .model
                .prepare(&Surroundings {
                    temperature,
                    photosynthetic_radiation: HeatFluxDensity::new::<watt_per_square_meter>(par),
                    carbon_dioxide: self.climate.carbon_dioxide,
                })
                .map_err(|_| Beyond)?;
            let air = saturation(temperature).map_err(|_| Beyond)?;
            let moisture = vapour_concentration(self.vapour_pressure, temperature);
            // Before dawn the air can cool below its dew point. The mist and dew that then form
            // are not followed: the air counts as just saturated.
            let deficit = positive(
                air.concentration.get::<gram_per_cubic_meter>()
                    - moisture.get::<mass_density::gram_per_cubic_meter>(),
            );
            Ok(HourOfDay {
                growth,
                net_radiation: HeatFluxDensity::new::<watt_per_square_meter>(absorbed),
                deficit: MassConcentration::new::<gram_per_cubic_meter>(deficit),
                slope: air.slope,
                stomatal_resistance: stomatal_resistance(MolarFlux::new::<
                    mole_per_square_meter_second,
                >(photons * 1e-6))
                .map_err(|_| Beyond)?,
            })
        };
        let mut hours = [prepare(0)?; 24];
        for (i, slot) in hours.iter_mut().enumerate().skip(1) {
            *slot = prepare(i)?;
        }
        Ok(hours)
    }

    /// FAO-56 reference evapotranspiration with the shelter's radiation and wind, times the
    /// coefficient of shallow open water.
    fn open_water(&self, net_radiation: RadiantExposure) -> Result<Length, Beyond> {
        let climate = self.climate;
        let mean = ThermodynamicTemperature::new::<degree_celsius>(f64::midpoint(
            climate.temperature_max.get::<degree_celsius>(),
            climate.temperature_min.get::<degree_celsius>(),
        ));
        let pressure = atmospheric_pressure(climate.elevation).map_err(|_| Beyond)?;
        let depth = penman_monteith_daily(&PenmanMonteith {
            net_radiation,
            soil_heat_flux: RadiantExposure::default(),
            mean_temperature: mean,
            wind: Velocity::new::<meter_per_second>(climate.effect.wind),
            saturation_vapour_pressure: mean_saturation_vapour_pressure(
                climate.temperature_max,
                climate.temperature_min,
            ),
            actual_vapour_pressure: self.vapour_pressure,
            slope: saturation_slope(mean),
            psychrometric_constant: psychrometric_constant(pressure),
        });
        Ok(Length::new::<meter>(
            OPEN_WATER * depth.get::<meter>().max(0.0),
        ))
    }
}

fn mean(course: &[ThermodynamicTemperature; 24]) -> ThermodynamicTemperature {
    let sum: f64 = course
        .iter()
        .map(ThermodynamicTemperature::get::<degree_celsius>)
        .sum();
    ThermodynamicTemperature::new::<degree_celsius>(sum / 24.0)
}
