//! The course of a day, hour by hour, from its daily figures.
//!
//! Solar time runs from 0 to 24 h with the sun highest at 12 h.

use core::f64::consts::PI;

use crate::science::air::{OutOfRange, Quantity, celsius, within};
use crate::science::sun::{Sun, temperature_range};
use crate::science::units::{
    Ratio, ThermodynamicTemperature, Time, ratio, thermodynamic_temperature, time,
};

/// The three parameters of the model of Parton and Logan (1981).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lags {
    /// a: sets how long after noon the maximum falls (it falls a + c after noon).
    pub maximum: Time,
    /// b: how far the temperature falls off in the night.
    pub night_decay: Ratio,
    /// c: how long after sunrise the minimum falls; negative before sunrise.
    pub minimum: Time,
}

impl Lags {
    /// Air at 1.5 m above the ground: a = 1.86 h, b = 2.20, c = −0.17 h.
    ///
    /// Source: Parton and Logan (1981), Agricultural Meteorology 23, 205-216, Table 1.
    pub fn air() -> Self {
        Self {
            maximum: Time::new::<time::hour>(1.86),
            night_decay: Ratio::new::<ratio::ratio>(2.20),
            minimum: Time::new::<time::hour>(-0.17),
        }
    }
}

/// Air temperature through a day: a sine from the minimum near sunrise until sunset, then an
/// exponential fall that arrives at the same minimum a day later. The curve is continuous, also
/// through midnight when the day is repeated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureCourse {
    /// °C.
    minimum: f64,
    /// K.
    range: f64,
    /// Solar time of the minimum, h; below 0 on the longest days.
    start: f64,
    /// Hours from the minimum to sunset.
    to_sunset: f64,
    /// rad h⁻¹.
    pace: f64,
    /// The level towards which the night falls, °C, and how far above it the sunset is, K.
    night_level: f64,
    night_drop: f64,
    /// h⁻¹.
    night_rate: f64,
}

impl TemperatureCourse {
    /// Course of the air temperature at 1.5 m; as [`TemperatureCourse::with_lags`] with
    /// [`Lags::air`].
    ///
    /// - `maximum`, `minimum`: daily extremes, in this order.
    /// - `daylight`: time between sunrise and sunset, 3.38 to 23.8 h: shorter, and the sun sets
    ///   before the maximum; longer, and no night is left to cool down in.
    ///
    /// # Errors
    /// [`OutOfRange`] if the maximum is below the minimum or the daylight outside its range.
    ///
    /// Source: Parton and Logan (1981), Agricultural Meteorology 23, 205-216; the night displaced
    /// so that it reaches the minimum, after Kimball and Bellamy (1986), Energy in Agriculture 5,
    /// 185-197.
    ///
    /// ```
    /// use slackwater::science::diurnal::TemperatureCourse;
    /// use slackwater::science::units::{
    ///     ThermodynamicTemperature, Time, thermodynamic_temperature::degree_celsius, time::hour,
    /// };
    ///
    /// let t = ThermodynamicTemperature::new::<degree_celsius>;
    /// let day = TemperatureCourse::new(t(28.0), t(14.0), Time::new::<hour>(14.0))?;
    /// let hourly = day.hourly();
    /// assert!(hourly[13] > t(27.9)); // 13 to 14 h
    /// assert!(hourly[4] < t(14.5));
    /// # Ok::<(), slackwater::science::air::OutOfRange>(())
    /// ```
    pub fn new(
        maximum: ThermodynamicTemperature,
        minimum: ThermodynamicTemperature,
        daylight: Time,
    ) -> Result<Self, OutOfRange> {
        Self::with_lags(maximum, minimum, daylight, Lags::air())
    }

    /// Course of a temperature with its own lags.
    ///
    /// - `maximum`, `minimum`: daily extremes, in this order.
    /// - `daylight`: from 2 (a + c), so that the maximum falls before sunset, to 24 h + c − 0.05 h,
    ///   so that a night of at least three minutes remains, and not above 24 h.
    /// - `lags`: of the medium whose temperature it is; the decay above 0 (not checked).
    ///
    /// # Errors
    /// [`OutOfRange`] if the maximum is below the minimum or the daylight outside its range.
    ///
    /// Source: as [`TemperatureCourse::new`]. Day: T = Tn + (Tx − Tn) sin(π m / (Y + 2a)); night:
    /// T = Tn − d + (Ts − Tn + d) exp(−b n / (Z + c)) with d = (Ts − Tn) / (exp(b) − 1), for m
    /// hours after the minimum Tn, n hours after the sunset at Ts, daylight Y and night Z = 24 − Y.
    ///
    /// ```
    /// use slackwater::science::diurnal::{Lags, TemperatureCourse};
    /// use slackwater::science::units::{
    ///     Ratio, ThermodynamicTemperature, Time, ratio::ratio,
    ///     thermodynamic_temperature::degree_celsius, time::hour,
    /// };
    ///
    /// let (t, hours) = (ThermodynamicTemperature::new::<degree_celsius>, Time::new::<hour>);
    /// let soil_surface = Lags {
    ///     maximum: hours(0.50),
    ///     night_decay: Ratio::new::<ratio>(1.81),
    ///     minimum: hours(0.49),
    /// };
    /// let day = TemperatureCourse::with_lags(t(40.0), t(12.0), hours(13.0), soil_surface)?;
    /// assert!((day.at(hours(12.99)).get::<degree_celsius>() - 40.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::air::OutOfRange>(())
    /// ```
    pub fn with_lags(
        maximum: ThermodynamicTemperature,
        minimum: ThermodynamicTemperature,
        daylight: Time,
        lags: Lags,
    ) -> Result<Self, OutOfRange> {
        /// Shortest night that is still told from none, h.
        const SHORTEST_NIGHT: f64 = 0.05;
        let range = temperature_range(maximum, minimum)?;
        let minimum = celsius(minimum);
        let a = lags.maximum.get::<time::hour>();
        let b = lags.night_decay.get::<ratio::ratio>();
        let c = lags.minimum.get::<time::hour>();
        let shortest = (2.0 * (a + c)).max(0.0);
        let longest = (24.0 + c - SHORTEST_NIGHT).min(24.0);
        let day = within(
            Quantity::Daylight,
            daylight.get::<time::hour>(),
            shortest,
            longest,
        )?;

        let to_sunset = day - c;
        let pace = PI / (day + 2.0 * a);
        let above_minimum = range * libm::sin(pace * to_sunset);
        let displacement = above_minimum / libm::expm1(b);
        Ok(Self {
            minimum,
            range,
            start: 12.0 - day / 2.0 + c,
            to_sunset,
            pace,
            night_level: minimum - displacement,
            night_drop: above_minimum + displacement,
            night_rate: b / (24.0 - day + c),
        })
    }

    /// Temperature at a solar time; times outside 0 to 24 h belong to the same day repeated.
    pub fn at(&self, solar_time: Time) -> ThermodynamicTemperature {
        let since_minimum = (solar_time.get::<time::hour>() - self.start).rem_euclid(24.0);
        let since_sunset = since_minimum - self.to_sunset;
        let t = if since_sunset <= 0.0 {
            self.minimum + self.range * libm::sin(self.pace * since_minimum)
        } else {
            self.night_level + self.night_drop * libm::exp(-self.night_rate * since_sunset)
        };
        ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(t)
    }

    /// Temperature of each hour, taken at its middle: entry `i` stands for the time from `i` to
    /// `i + 1`.
    pub fn hourly(&self) -> [ThermodynamicTemperature; 24] {
        let mut middle = -0.5;
        [(); 24].map(|()| {
            middle += 1.0;
            self.at(Time::new::<time::hour>(middle))
        })
    }
}

/// Air temperature at one solar time of a day; see [`TemperatureCourse::new`], which is the
/// cheaper way to many times of the same day.
///
/// - `solar_time`: any; outside 0 to 24 h it belongs to the same day repeated.
/// - `maximum`, `minimum`: daily extremes, in this order.
/// - `daylight`: 3.38 to 23.8 h.
///
/// Result: temperature at 1.5 m above the ground.
///
/// # Errors
/// [`OutOfRange`] if the maximum is below the minimum or the daylight outside its range.
///
/// Source: as [`TemperatureCourse::new`].
///
/// ```
/// use slackwater::science::diurnal::temperature_at;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, Time, thermodynamic_temperature::degree_celsius, time::hour,
/// };
///
/// let (t, hours) = (ThermodynamicTemperature::new::<degree_celsius>, Time::new::<hour>);
/// let warmest = temperature_at(hours(13.69), t(25.0), t(15.0), hours(12.0))?;
/// assert!((warmest.get::<degree_celsius>() - 25.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn temperature_at(
    solar_time: Time,
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    daylight: Time,
) -> Result<ThermodynamicTemperature, OutOfRange> {
    TemperatureCourse::new(maximum, minimum, daylight).map(|course| course.at(solar_time))
}

/// Each hour's share of the day's extraterrestrial radiation, by which a daily total of solar
/// radiation is spread over the day.
///
/// - `sun`: the day.
///
/// Result: dimensionless; entry `i` is the hour of solar time from `i` to `i + 1`. The shares add
/// up to 1, or are all 0 if the sun does not rise.
///
/// Source: FAO-56 (Allen et al. 1998) Eq. 28.
///
/// ```
/// use slackwater::science::{diurnal::hourly_solar_shares, sun::Sun};
/// use slackwater::science::units::{Angle, angle::degree};
///
/// let shares = hourly_solar_shares(&Sun::new(Angle::new::<degree>(52.0), 120)?);
/// assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-12);
/// assert!(shares[11] > shares[8] && shares[2] == 0.0);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn hourly_solar_shares(sun: &Sun) -> [f64; 24] {
    let mut start = sun.hour_angle(0.0);
    let mut end_of_hour = 0.0;
    let swept = [(); 24].map(|()| {
        end_of_hour += 1.0;
        let end = sun.hour_angle(end_of_hour);
        let swept = sun.swept(start, end);
        start = end;
        swept
    });
    let whole: f64 = swept.iter().sum();
    if whole > 0.0 {
        swept.map(|hour| hour / whole)
    } else {
        [0.0; 24]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::{Angle, angle};

    fn t(celsius: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(celsius)
    }

    fn hours(value: f64) -> Time {
        Time::new::<time::hour>(value)
    }

    fn course(daylight: f64) -> TemperatureCourse {
        TemperatureCourse::new(t(30.0), t(12.0), hours(daylight)).expect("an ordinary day")
    }

    #[test]
    fn the_curve_has_no_jump_anywhere_in_a_repeated_day() {
        const STEP: f64 = 1e-4;
        for daylight in [3.4, 6.0, 9.0, 12.0, 16.0, 20.0] {
            let course = course(daylight);
            let mut before = course.at(hours(-STEP));
            for step in 0..=240_000 {
                let now = course.at(hours(f64::from(step) * STEP));
                let change = (celsius(now) - celsius(before)).abs();
                // Steepest of all is the morning of the shortest day: 18 π / 7.12 = 7.95 K h⁻¹.
                assert!(change < 8.0 * STEP, "{daylight} h, step {step}: {change}");
                before = now;
            }
        }
    }

    #[test]
    fn the_curve_never_leaves_the_range_between_the_extremes() {
        for daylight in [3.4, 8.0, 12.0, 16.0, 23.7] {
            let course = course(daylight);
            let (mut low, mut high) = (f64::MAX, f64::MIN);
            for minute in 0..1440 {
                let now = celsius(course.at(hours(f64::from(minute) / 60.0)));
                (low, high) = (low.min(now), high.max(now));
            }
            assert!(low > 12.0 - 1e-9, "{daylight}: {low}");
            assert!(high < 30.0 + 1e-9, "{daylight}: {high}");
        }
    }

    #[test]
    fn minimum_and_maximum_fall_at_their_times() {
        for daylight in [3.4, 8.0, 12.0, 16.0, 23.7] {
            let course = course(daylight);
            let coldest = celsius(course.at(hours(12.0 - daylight / 2.0 - 0.17)));
            let warmest = celsius(course.at(hours(12.0 + 1.86 - 0.17)));
            assert!((coldest - 12.0).abs() < 1e-9, "{daylight}: {coldest}");
            assert!((warmest - 30.0).abs() < 1e-9, "{daylight}: {warmest}");
        }
    }

    #[test]
    fn a_day_repeats() {
        let course = course(15.0);
        for hour in 0..24 {
            let at = f64::from(hour) + 0.25;
            let next = celsius(course.at(hours(at + 24.0)));
            assert!((next - celsius(course.at(hours(at)))).abs() < 1e-9);
        }
    }

    #[test]
    fn hourly_values_stand_at_the_middle_of_their_hour() {
        let course = course(13.0);
        let hourly = course.hourly();
        assert_eq!(hourly[0], course.at(hours(0.5)));
        assert_eq!(hourly[23], course.at(hours(23.5)));
    }

    #[test]
    fn days_without_a_night_or_an_afternoon_are_named() {
        let error = |daylight| {
            TemperatureCourse::new(t(30.0), t(12.0), hours(daylight)).map_err(|e| e.quantity)
        };
        assert_eq!(error(24.0), Err(Quantity::Daylight));
        assert_eq!(error(3.3), Err(Quantity::Daylight));
        assert_eq!(error(f64::NAN), Err(Quantity::Daylight));
        let upside_down = TemperatureCourse::new(t(12.0), t(30.0), hours(12.0));
        assert_eq!(
            upside_down.map_err(|e| e.quantity),
            Err(Quantity::TemperatureRange)
        );
    }

    #[test]
    fn shares_are_symmetric_about_noon_and_add_up() {
        for degrees in [-90, -66, -30, 0, 40, 66, 67, 85] {
            for day in [1, 80, 172, 265, 355] {
                let place = Angle::new::<angle::degree>(f64::from(degrees));
                let sun = Sun::new(place, day).expect("a place and a day on Earth");
                let shares = hourly_solar_shares(&sun);
                let sum: f64 = shares.iter().sum();
                let whole = f64::from(u8::from(sun.daylight() > Time::default()));
                assert!((sum - whole).abs() < 1e-12, "{degrees} {day}: {sum}");
                assert!(shares.iter().all(|share| *share >= 0.0));
                for hour in 0..12 {
                    assert!((shares[hour] - shares[23 - hour]).abs() < 1e-12);
                }
            }
        }
    }

    #[test]
    fn the_last_moment_of_sun_takes_nothing_back() {
        let at = |degrees| {
            Sun::new(Angle::new::<angle::degree>(degrees), 355).expect("a place and a day on Earth")
        };
        // Where a winter's day lasts ten hours and a hair: the sun sets just after 17 h.
        let (mut longer, mut shorter) = (0.0, 60.0);
        for _ in 0..60 {
            let middle = f64::midpoint(longer, shorter);
            if at(middle).daylight() > hours(10.0) {
                longer = middle;
            } else {
                shorter = middle;
            }
        }
        for step in 0..1000 {
            let shares = hourly_solar_shares(&at(longer - f64::from(step) * 1e-12));
            assert!(
                shares.iter().all(|share| *share >= 0.0),
                "{step}: {shares:?}"
            );
        }
    }
}
