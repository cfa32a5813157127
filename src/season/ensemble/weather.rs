//! Weather that differs from the plan's average day, and persists from one day to the next.

use super::super::day::SunDay;
use super::Spreads;
use crate::plan::{Climate, Daylight, Light};
use crate::science::normal::Normals;
use crate::science::units::ratio::ratio;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::{Ratio, ThermodynamicTemperature};

/// Yesterday's part in today's deviations of highest temperature, lowest temperature and
/// radiation: Richardson and Wright (1984), WGEN, USDA ARS-8, matrix A.
const FROM_YESTERDAY: [[f64; 3]; 3] = [
    [0.567, 0.086, -0.002],
    [0.253, 0.504, -0.050],
    [-0.006, -0.039, 0.244],
];
/// The part of today's chance, as lower triangle: the same, matrix B.
const FROM_CHANCE: [[f64; 3]; 3] = [
    [0.781, 0.0, 0.0],
    [0.328, 0.637, 0.0],
    [0.238, -0.341, 0.873],
];
/// Correlation of the mean humidity with that of the day before: assumed. WGEN has no humidity.
const HUMIDITY_PERSISTS: f64 = 0.5;
/// Share of the radiation above the air that arrives under a closed cover of cloud: FAO-56 Eq. 35
/// without sunshine.
const OVERCAST: f64 = 0.25;
/// No deviation counts for more than so many standard deviations, so that every day stays one
/// that the models cover.
const MOST: f64 = 3.0;

/// Deviations of one day, in standard deviations.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Deviation {
    /// Highest temperature, lowest temperature, radiation.
    pub wgen: [f64; 3],
    /// Mean relative humidity.
    pub humidity: f64,
}

impl Deviation {
    /// The deviations of the day after.
    #[must_use]
    pub fn next(&self, chance: &mut Normals) -> Self {
        let draws = [chance.draw(), chance.draw(), chance.draw()];
        let row = |matrix: &[[f64; 3]; 3], i: usize, of: &[f64; 3]| {
            matrix[i][0] * of[0] + matrix[i][1] * of[1] + matrix[i][2] * of[2]
        };
        let fresh = (1.0 - HUMIDITY_PERSISTS * HUMIDITY_PERSISTS).sqrt();
        Self {
            wgen: std::array::from_fn(|i| {
                row(&FROM_YESTERDAY, i, &self.wgen) + row(&FROM_CHANCE, i, &draws)
            }),
            humidity: HUMIDITY_PERSISTS * self.humidity + fresh * chance.draw(),
        }
    }

    /// The climate and sun of a day that deviates so. The lowest temperature never passes the
    /// highest, humidity stays between 5 and 100 %, and radiation between a closed cover of cloud
    /// and a clear sky (or the plan's own figure where that lies beyond).
    pub(in crate::season) fn apply(
        &self,
        spreads: &Spreads,
        climate: &Climate,
        sun: Option<&SunDay>,
    ) -> (Climate, Option<SunDay>) {
        let away = |value: f64| value.clamp(-MOST, MOST);
        let indoors = matches!(climate.light, Light::Lamps { .. });
        let kelvin = if indoors {
            spreads.room_temperature_k
        } else {
            spreads.temperature_k
        };
        let warmer = |temperature: ThermodynamicTemperature, by: f64| {
            temperature.get::<degree_celsius>() + kelvin * away(by)
        };
        let high = warmer(climate.temperature_max, self.wgen[0]);
        let low = warmer(climate.temperature_min, self.wgen[1]);
        let (low, high) = if low > high {
            (f64::midpoint(low, high), f64::midpoint(low, high))
        } else {
            (low, high)
        };
        let humidity = climate.humidity.get::<ratio>() + spreads.humidity * away(self.humidity);
        let mut day = *climate;
        day.temperature_max = ThermodynamicTemperature::new::<degree_celsius>(high);
        day.temperature_min = ThermodynamicTemperature::new::<degree_celsius>(low);
        day.humidity = Ratio::new::<ratio>(humidity.clamp(0.05, 1.0));
        let sun = sun.map(|sun| {
            let mut sun = *sun;
            let mean = sun.outside;
            let bright = mean * (1.0 + spreads.radiation * away(self.wgen[2]));
            sun.outside = bright
                .max((sun.above * OVERCAST).min(mean))
                .min(sun.clear.max(mean));
            sun
        });
        if let (Light::Sun { through, .. }, Some(sun)) = (day.light, &sun) {
            day.light = Light::Sun {
                daylight: Daylight::Radiation(sun.outside),
                through,
            };
        }
        (day, sun)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn deviations_keep_the_variance_and_persistence_of_the_source() {
        // Richardson and Wright scaled their matrices so that the deviations have variance 1;
        // their printed lag-1 correlations are 0.621, 0.674 and 0.251 (from memory). Three digits
        // of the printed matrices leave a few per cent.
        /// Printed digits and 200 000 correlated draws.
        const NEAR: f64 = 0.03;
        let mut chance = Normals::stream(1, 1);
        let mut today = Deviation::default();
        let (mut squares, mut products) = ([0.0; 4], [0.0; 4]);
        let days = 200_000;
        for _ in 0..days {
            let next = today.next(&mut chance);
            let all = |day: &Deviation| [day.wgen[0], day.wgen[1], day.wgen[2], day.humidity];
            for ((square, product), (now, then)) in squares
                .iter_mut()
                .zip(&mut products)
                .zip(all(&next).into_iter().zip(all(&today)))
            {
                *square += now * now;
                *product += now * then;
            }
            today = next;
        }
        for ((square, product), lag) in squares.iter().zip(products).zip([0.621, 0.674, 0.251, 0.5])
        {
            let variance = square / f64::from(days);
            assert!((variance - 1.0).abs() < NEAR, "{squares:?}");
            assert!((product / square - lag).abs() < NEAR, "{products:?}");
        }
    }
}
