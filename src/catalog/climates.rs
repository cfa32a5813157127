//! Ready climates by kind of place. Invented averages of such places, to be replaced by the
//! grower's own figures: common practice, no source.

use super::keyed::keyed;
use super::shelters::Shelter;

keyed! {
    /// A kind of place and season.
    ClimateChoice {
        /// Cool, cloudy tropical or subtropical upland.
        UplandCoolHumid = "upland_cool_humid",
        /// Temperate late summer to autumn, dry air.
        TemperateLateSummer = "temperate_late_summer",
        /// Temperate spring.
        TemperateSpring = "temperate_spring",
        /// Cool summer near a cold sea.
        MaritimeSummer = "maritime_summer",
        /// Mild, humid, shaded: a porch near a warm sea.
        MildHumidCoast = "mild_humid_coast",
        /// Hot, humid tropical lowland.
        TropicalLowland = "tropical_lowland",
        /// High tropical plateau in the dry season.
        TropicalHighland = "tropical_highland",
        /// Hot, dry inland summer.
        DrySummer = "dry_summer",
        /// Sunny desert winter.
        DesertWinter = "desert_winter",
        /// Subtropical winter.
        SubtropicalWinter = "subtropical_winter",
        /// A heated room under lamps.
        RoomUnderLamps = "room_under_lamps",
        /// The grower's own figures.
        Own = "own",
    }
}

/// The daily figures of a climate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Climate {
    /// Degrees, north positive.
    pub latitude_deg: f64,
    /// Metres above the sea.
    pub elevation_m: f64,
    /// Lowest temperature of the day, °C.
    pub temperature_min_c: f64,
    /// Highest temperature of the day, °C.
    pub temperature_max_c: f64,
    /// Mean relative humidity, per cent.
    pub humidity_pct: f64,
    /// Solar radiation outside, MJ/m² a day.
    pub solar_mj_per_m2: f64,
    /// The shelter that usually goes with it.
    pub shelter: Shelter,
    /// Day and month (month, day) that the figures suit.
    pub season: (u8, u8),
}

impl ClimateChoice {
    /// The figures of the climate; `None` for the grower's own.
    pub const fn climate(self) -> Option<Climate> {
        use Shelter::{Greenhouse, Lamps, PlasticShelter, RainCover};
        let (place, air, solar_mj_per_m2, shelter, season) = match self {
            Self::UplandCoolHumid => (
                (19.0, 1200.0),
                (11.0, 20.0, 85.0),
                15.0,
                PlasticShelter,
                (2, 1),
            ),
            Self::TemperateLateSummer => (
                (36.0, 150.0),
                (13.5, 26.0, 65.0),
                16.0,
                PlasticShelter,
                (8, 25),
            ),
            Self::TemperateSpring => (
                (44.0, 200.0),
                (8.0, 19.0, 68.0),
                17.0,
                PlasticShelter,
                (4, 10),
            ),
            Self::MaritimeSummer => ((53.0, 50.0), (11.0, 19.0, 80.0), 17.0, Greenhouse, (6, 15)),
            Self::MildHumidCoast => ((20.0, 30.0), (18.0, 26.0, 80.0), 13.0, RainCover, (2, 1)),
            Self::TropicalLowland => ((10.0, 20.0), (23.0, 31.0, 80.0), 17.0, RainCover, (7, 1)),
            Self::TropicalHighland => (
                (5.0, 2200.0),
                (10.0, 24.0, 60.0),
                20.0,
                PlasticShelter,
                (1, 15),
            ),
            Self::DrySummer => ((38.0, 100.0), (17.0, 32.0, 45.0), 25.0, RainCover, (7, 1)),
            Self::DesertWinter => (
                (32.0, 300.0),
                (7.0, 21.0, 45.0),
                14.0,
                PlasticShelter,
                (1, 10),
            ),
            Self::SubtropicalWinter => (
                (28.0, 50.0),
                (10.0, 20.0, 72.0),
                11.5,
                PlasticShelter,
                (1, 10),
            ),
            Self::RoomUnderLamps => ((45.0, 100.0), (18.0, 23.0, 60.0), 10.0, Lamps, (1, 10)),
            Self::Own => return None,
        };
        Some(Climate {
            latitude_deg: place.0,
            elevation_m: place.1,
            temperature_min_c: air.0,
            temperature_max_c: air.1,
            humidity_pct: air.2,
            solar_mj_per_m2,
            shelter,
            season,
        })
    }
}
