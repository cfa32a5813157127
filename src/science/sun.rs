//! The sun's daily and hourly radiation, and what of it reaches and leaves the ground.
//!
//! All equations are those of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith,
//! 1998), cited below as FAO-56. Radiation is that on a horizontal surface. Solar time runs from 0
//! to 24 h with the sun highest at 12 h.

use core::f64::consts::PI;

use crate::science::air::{OutOfRange, Quantity, within};
use crate::science::units::{
    Angle, RadiantExposure, Ratio, Time, angle, radiant_exposure, ratio, time,
};

mod ground;

pub(crate) use ground::temperature_range;
pub use ground::{
    AirMass, clear_sky, net_longwave, net_shortwave, solar_from_sunshine,
    solar_from_temperature_range,
};

/// Solar constant, MJ m⁻² min⁻¹: FAO-56 Eq. 21.
const SOLAR_CONSTANT: f64 = 0.0820;

pub(crate) fn megajoule_per_square_metre(value: f64) -> RadiantExposure {
    RadiantExposure::new::<radiant_exposure::megajoule_per_square_meter>(value)
}

pub(crate) fn megajoules(exposure: RadiantExposure) -> f64 {
    exposure.get::<radiant_exposure::megajoule_per_square_meter>()
}

/// The path of the sun over one place on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sun {
    /// dr.
    inverse_relative_distance: f64,
    /// δ, rad.
    declination: f64,
    /// ωs, rad, 0 to π.
    sunset_hour_angle: f64,
    /// sin φ sin δ.
    sines: f64,
    /// cos φ cos δ.
    cosines: f64,
}

impl Sun {
    /// Works out the sun's path from place and date.
    ///
    /// - `latitude`: −90° to 90°, north positive.
    /// - `day_of_year`: 1 to 366, 1 January is 1.
    ///
    /// Where the sun does not set, the sunset hour angle is π; where it does not rise, 0.
    ///
    /// # Errors
    /// [`OutOfRange`] for a latitude or a day outside its range.
    ///
    /// Source: FAO-56 Eq. 23 (distance), 24 (declination), 25 (sunset hour angle).
    ///
    /// ```
    /// use slackwater::science::sun::Sun;
    /// use slackwater::science::units::{
    ///     Angle, angle::degree, radiant_exposure::megajoule_per_square_meter,
    /// };
    ///
    /// let sun = Sun::new(Angle::new::<degree>(-20.0), 246)?; // 3 September
    /// let ra = sun.extraterrestrial_daily().get::<megajoule_per_square_meter>();
    /// assert!((ra - 32.2).abs() < 0.1);
    /// # Ok::<(), slackwater::science::air::OutOfRange>(())
    /// ```
    pub fn new(latitude: Angle, day_of_year: u16) -> Result<Self, OutOfRange> {
        within(
            Quantity::Latitude,
            latitude.get::<angle::degree>(),
            -90.0,
            90.0,
        )?;
        let day = within(Quantity::DayOfYear, f64::from(day_of_year), 1.0, 366.0)?;
        let phi = latitude.get::<angle::radian>();
        let season = 2.0 * PI / 365.0 * day;
        let declination = 0.409 * libm::sin(season - 1.39);
        // The clamp is the geometry of polar day and polar night, not a repair of the input.
        let cosine = (-libm::tan(phi) * libm::tan(declination)).clamp(-1.0, 1.0);
        Ok(Self {
            inverse_relative_distance: 1.0 + 0.033 * libm::cos(season),
            declination,
            sunset_hour_angle: libm::acos(cosine),
            sines: libm::sin(phi) * libm::sin(declination),
            cosines: libm::cos(phi) * libm::cos(declination),
        })
    }

    /// Inverse relative distance between Earth and sun, dr (FAO-56 Eq. 23).
    pub fn inverse_relative_distance(&self) -> Ratio {
        Ratio::new::<ratio::ratio>(self.inverse_relative_distance)
    }

    /// Solar declination, δ (FAO-56 Eq. 24).
    pub fn declination(&self) -> Angle {
        Angle::new::<angle::radian>(self.declination)
    }

    /// Sunset hour angle, ωs, 0 to π (FAO-56 Eq. 25).
    pub fn sunset_hour_angle(&self) -> Angle {
        Angle::new::<angle::radian>(self.sunset_hour_angle)
    }

    /// Time between sunrise and sunset, N, 0 to 24 h (FAO-56 Eq. 34).
    pub fn daylight(&self) -> Time {
        Time::new::<time::hour>(24.0 / PI * self.sunset_hour_angle)
    }

    /// Extraterrestrial radiation of the day, Ra.
    ///
    /// Result: energy per area (MJ m⁻² d⁻¹ in the source), 0 in polar night.
    ///
    /// Source: FAO-56 Eq. 21.
    ///
    /// ```
    /// use slackwater::science::sun::Sun;
    /// use slackwater::science::units::{Angle, RadiantExposure, angle::degree};
    ///
    /// let polar_night = Sun::new(Angle::new::<degree>(80.0), 355)?;
    /// assert_eq!(polar_night.extraterrestrial_daily(), RadiantExposure::default());
    /// # Ok::<(), slackwater::science::air::OutOfRange>(())
    /// ```
    pub fn extraterrestrial_daily(&self) -> RadiantExposure {
        // Eq. 21 is Eq. 28 from sunrise to sunset.
        self.exposure(self.swept(-self.sunset_hour_angle, self.sunset_hour_angle))
    }

    /// Extraterrestrial radiation between two hours of solar time, Ra.
    ///
    /// - `start`, `end`: solar time, 0 to 24 h, `start` not after `end`.
    ///
    /// Result: energy per area (MJ m⁻² in the source) over the whole of the interval; the part of
    /// it before sunrise or after sunset counts nothing.
    ///
    /// # Errors
    /// [`OutOfRange`] for a time outside 0 to 24 h or an end before its start.
    ///
    /// Source: FAO-56 Eq. 28, hour angles by Eq. 29 to 31.
    ///
    /// ```
    /// use slackwater::science::sun::Sun;
    /// use slackwater::science::units::{Angle, Time, angle::degree, time::hour};
    ///
    /// let sun = Sun::new(Angle::new::<degree>(40.0), 100)?;
    /// let hours = Time::new::<hour>;
    /// let noon = sun.extraterrestrial_between(hours(12.0), hours(13.0))?;
    /// assert!(noon > sun.extraterrestrial_between(hours(8.0), hours(9.0))?);
    /// # Ok::<(), slackwater::science::air::OutOfRange>(())
    /// ```
    pub fn extraterrestrial_between(
        &self,
        start: Time,
        end: Time,
    ) -> Result<RadiantExposure, OutOfRange> {
        let start = within(Quantity::SolarTime, start.get::<time::hour>(), 0.0, 24.0)?;
        let end = within(Quantity::SolarTime, end.get::<time::hour>(), start, 24.0)?;
        let (from, to) = (self.hour_angle(start), self.hour_angle(end));
        Ok(self.exposure(self.swept(from, to)))
    }

    /// Hour angle of a solar time in hours, held between sunrise and sunset.
    pub(crate) fn hour_angle(&self, hours: f64) -> f64 {
        let sunset = self.sunset_hour_angle;
        (PI / 12.0 * (hours - 12.0)).clamp(-sunset, sunset)
    }

    /// Integral of the sine of the sun's elevation over the hour angle, between sunrise and sunset.
    pub(crate) fn swept(&self, from: f64, to: f64) -> f64 {
        let integral = (to - from) * self.sines + self.cosines * (libm::sin(to) - libm::sin(from));
        // The last moment before sunset is a difference of rounding errors, of either sign.
        integral.max(0.0)
    }

    fn exposure(&self, swept: f64) -> RadiantExposure {
        let scale = 12.0 * 60.0 / PI * SOLAR_CONSTANT * self.inverse_relative_distance;
        megajoule_per_square_metre(scale * swept)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sun(degrees: f64, day: u16) -> Sun {
        Sun::new(Angle::new::<angle::degree>(degrees), day).expect("a place and a day on Earth")
    }

    fn hours(value: f64) -> Time {
        Time::new::<time::hour>(value)
    }

    #[test]
    fn the_hours_add_up_to_the_day() {
        for degrees in [-90, -75, -60, -23, 0, 10, 45, 66, 80, 90] {
            for day in [1, 81, 172, 264, 355, 366] {
                let sun = sun(f64::from(degrees), day);
                let sum: f64 = (0..24)
                    .map(f64::from)
                    .filter_map(|hour| {
                        sun.extraterrestrial_between(hours(hour), hours(hour + 1.0))
                            .ok()
                    })
                    .map(megajoules)
                    .sum();
                let whole = megajoules(sun.extraterrestrial_daily());
                assert!(
                    (sum - whole).abs() < 1e-12 * whole.max(1.0),
                    "{degrees} {day}"
                );
            }
        }
    }

    #[test]
    fn the_sun_stays_up_or_down_near_the_poles() {
        assert_eq!(sun(80.0, 172).daylight(), hours(24.0));
        assert_eq!(sun(-80.0, 172).daylight(), hours(0.0));
        assert_eq!(
            sun(-80.0, 172).extraterrestrial_daily(),
            RadiantExposure::default()
        );
        assert!(megajoules(sun(80.0, 172).extraterrestrial_daily()) > 40.0);
    }

    #[test]
    fn places_and_days_off_the_globe_are_named() {
        let at = |degrees, day| {
            Sun::new(Angle::new::<angle::degree>(degrees), day).map_err(|error| error.quantity)
        };
        assert_eq!(at(90.1, 1), Err(Quantity::Latitude));
        assert_eq!(at(f64::NAN, 1), Err(Quantity::Latitude));
        assert_eq!(at(0.0, 0), Err(Quantity::DayOfYear));
        assert_eq!(at(0.0, 367), Err(Quantity::DayOfYear));
    }

    #[test]
    fn times_out_of_order_are_named() {
        let sun = sun(50.0, 100);
        let between = |start, end| sun.extraterrestrial_between(hours(start), hours(end));
        assert_eq!(
            between(10.0, 9.0).map_err(|e| e.quantity),
            Err(Quantity::SolarTime)
        );
        assert_eq!(
            between(-1.0, 9.0).map_err(|e| e.quantity),
            Err(Quantity::SolarTime)
        );
        assert_eq!(
            between(20.0, 24.1).map_err(|e| e.quantity),
            Err(Quantity::SolarTime)
        );
    }
}
