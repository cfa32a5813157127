//! Step 4: the climate around the plants.

use time::Date;

use super::reader::Reader;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::shelters::{Shelter, ShelterEffect};
use crate::plan::{DaylightBy, Field, Rule};
use crate::science::sun::Sun;
use crate::science::units::angle::degree;
use crate::science::units::length::meter;
use crate::science::units::molar_flux::mole_per_square_meter_second;
use crate::science::units::radiant_exposure::joule_per_square_meter;
use crate::science::units::ratio::{part_per_million, percent};
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::time::hour;
use crate::science::units::{
    Angle, Length, MolarFlux, RadiantExposure, Ratio, ThermodynamicTemperature, Time,
};

/// The air and light of an average day of the season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Climate {
    /// The ready climate that the figures started from.
    pub kind: ClimateChoice,
    /// North positive.
    pub latitude: Angle,
    /// Above the sea.
    pub elevation: Length,
    /// Lowest of the day, where the plants stand.
    pub temperature_min: ThermodynamicTemperature,
    /// Highest of the day, where the plants stand.
    pub temperature_max: ThermodynamicTemperature,
    /// Mean relative humidity.
    pub humidity: Ratio,
    /// Carbon dioxide of the air, by volume.
    pub carbon_dioxide: Ratio,
    /// The shelter.
    pub shelter: Shelter,
    /// What the shelter does.
    pub effect: ShelterEffect,
    /// The light.
    pub light: Light,
}

/// Where the light comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Light {
    /// The sun, through a shelter.
    Sun {
        /// How the day's light outside is known.
        daylight: Daylight,
        /// Share that passes the shelter.
        through: Ratio,
    },
    /// Lamps alone.
    Lamps {
        /// Photosynthetic photon flux density while lit.
        flux: MolarFlux,
        /// Lit hours of a day.
        hours: Time,
    },
}

/// How the light of a day outside is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Daylight {
    /// Solar radiation of the day.
    Radiation(RadiantExposure),
    /// Hours of bright sunshine.
    Sunshine(Time),
}

pub(super) fn read(reader: &mut Reader, start: Option<Date>) -> Option<Climate> {
    let plan = &reader.plan.climate;
    let kind = reader.choice(Field::ClimateKind, &plan.kind);
    let shelter = reader.choice(Field::Shelter, &plan.shelter);
    let elevation = reader.number(Field::Elevation);
    let low = reader.number(Field::TemperatureMin);
    let high = reader.number(Field::TemperatureMax);
    if let (Some(low), Some(high)) = (low, high)
        && low > high
    {
        reader.conflict(Field::TemperatureMin, low, Rule::MinimumBelowMaximum, high);
    }
    let humidity = reader.number(Field::Humidity);
    let carbon_dioxide = reader.number(Field::CarbonDioxide);
    let (latitude, light) = match shelter {
        None => (None, None),
        // Lamps do not ask where on Earth they hang.
        Some(Shelter::Lamps) => (Some(0.0), lamps(reader)),
        Some(_) => {
            let latitude = reader.number(Field::Latitude);
            let sun = latitude.zip(start).and_then(|(latitude, start)| {
                Sun::new(Angle::new::<degree>(latitude), start.ordinal()).ok()
            });
            (latitude, daylight(reader, sun.as_ref()))
        }
    };
    let shelter = shelter?;
    Some(Climate {
        kind: kind?,
        latitude: Angle::new::<degree>(latitude?),
        elevation: Length::new::<meter>(elevation?),
        temperature_min: ThermodynamicTemperature::new::<degree_celsius>(low?),
        temperature_max: ThermodynamicTemperature::new::<degree_celsius>(high?),
        humidity: Ratio::new::<percent>(humidity?),
        carbon_dioxide: Ratio::new::<part_per_million>(carbon_dioxide?),
        shelter,
        effect: shelter.effect(),
        light: light?,
    })
}

fn lamps(reader: &mut Reader) -> Option<Light> {
    let flux = reader.number(Field::LampFlux);
    let hours = reader.number(Field::LampHours);
    Some(Light::Lamps {
        flux: MolarFlux::new::<mole_per_square_meter_second>(flux? * 1e-6),
        hours: Time::new::<hour>(hours?),
    })
}

fn daylight(reader: &mut Reader, sun: Option<&Sun>) -> Option<Light> {
    let plan = &reader.plan.climate;
    let by = reader.choice(Field::DaylightBy, &plan.daylight_by);
    let through = reader.number(Field::LightThrough);
    let daylight = match by? {
        DaylightBy::Radiation => {
            let solar = reader.number(Field::SolarRadiation)?;
            let above_the_air = sun?
                .extraterrestrial_daily()
                .get::<joule_per_square_meter>()
                / 1e6;
            if solar > above_the_air {
                reader.conflict(
                    Field::SolarRadiation,
                    solar,
                    Rule::RadiationBelowExtraterrestrial,
                    above_the_air,
                );
                return None;
            }
            Daylight::Radiation(RadiantExposure::new::<joule_per_square_meter>(solar * 1e6))
        }
        DaylightBy::Sunshine => {
            let hours = reader.number(Field::Sunshine)?;
            let possible = sun?.daylight().get::<hour>();
            if hours > possible {
                reader.conflict(
                    Field::Sunshine,
                    hours,
                    Rule::SunshineWithinDaylight,
                    possible,
                );
                return None;
            }
            Daylight::Sunshine(Time::new::<hour>(hours))
        }
    };
    Some(Light::Sun {
        daylight,
        through: Ratio::new::<percent>(through?),
    })
}
