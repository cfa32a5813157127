//! Where the plants stand: what the shelter does to light and to the air around the leaves.

use super::keyed::keyed;

keyed! {
    /// The shelter over the plants.
    Shelter {
        /// Outdoors under a clear roof, sides open.
        RainCover = "rain_cover",
        /// Outdoors under a roof that light does not pass, one side or more open.
        Porch = "porch",
        /// A tunnel or house of plastic film.
        PlasticShelter = "plastic_shelter",
        /// A glazed greenhouse.
        Greenhouse = "greenhouse",
        /// Indoors at a window.
        Windowsill = "windowsill",
        /// Indoors under lamps only.
        Lamps = "lamps",
    }
}

/// What a shelter does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShelterEffect {
    /// Usual share of the daylight that reaches the plants.
    pub light_through: f64,
    /// Aerodynamic resistance of the canopy, s/m.
    pub aerodynamic_resistance: f64,
    /// Wind at the plants, m/s, for evaporation from open water.
    pub wind: f64,
}

impl Shelter {
    /// The figures of the shelter.
    ///
    /// Light: common practice, no source (film and glass with their frame pass 60 to 75 %, a clear
    /// roof more, a window a quarter to a third of the light of an open sky). Under an opaque roof
    /// 2 m above the plants and 1 m behind its edge a long opening shows 28 % of an even sky
    /// (view factor of a slit, (1 − cos 63°)/2); some direct sun is added. Resistance: 100 s/m
    /// with and 200 s/m without moving air, Graamans et al. (2017). Wind: 0.5 m/s is the least
    /// that FAO Irrigation and Drainage Paper 56 advises to use; outdoors under a roof about 1 m/s
    /// (assumed).
    pub const fn effect(self) -> ShelterEffect {
        let (light_through, aerodynamic_resistance, wind) = match self {
            Self::RainCover => (0.85, 100.0, 1.0),
            Self::Porch => (0.35, 100.0, 0.5),
            Self::PlasticShelter => (0.70, 200.0, 0.5),
            Self::Greenhouse => (0.65, 200.0, 0.5),
            Self::Windowsill => (0.30, 200.0, 0.5),
            Self::Lamps => (1.0, 200.0, 0.5),
        };
        ShelterEffect {
            light_through,
            aerodynamic_resistance,
            wind,
        }
    }
}
