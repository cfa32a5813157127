//! Roots through the season: from the medium into the solution, and after its falling level.
//!
//! Assumed: the seedling's roots fill a plug of 3 cm that sits at the top of the pot; from there
//! the tips grow straight down with the season's mean temperature, through medium, moist air and
//! solution alike, but not deeper below the surface than enough oxygen reaches, nor through the
//! floor. They never shrink; pots under boards take them down with them.

use super::plants::{Beyond, PlantCourse};
use super::solution::State;
use crate::plan::Sound;
use crate::science::air::atmospheric_pressure;
use crate::science::growth::GrowthParameters;
use crate::science::roots::{
    Elongation, StillSolution, oxygen_diffusion, oxygen_reach, oxygen_uptake,
};
use crate::science::units::length::{centimeter, meter};
use crate::science::units::mass_concentration::milligram_per_liter;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::velocity::meter_per_second;
use crate::science::units::volume::cubic_meter;
use crate::science::units::{Length, MassConcentration, ThermodynamicTemperature, Volume};
use crate::science::water::oxygen_saturation;

/// Depth of the plug that a seedling's roots fill at transplanting, cm: common practice, no source.
const PLUG_CM: f64 = 3.0;
/// Tips do not grow where less oxygen than this is left, mg/L: assumed; roots of most crops slow
/// down somewhere between 1 and 4 (from memory).
const LEAST_OXYGEN_MG_PER_L: f64 = 2.0;
const SECONDS_A_DAY: f64 = 86_400.0;

/// Roots at the end of one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RootDay {
    /// Tips above the floor.
    pub tip: Length,
    /// Foot of the pots above the floor.
    pub foot: Length,
    /// Surface of the solution above the floor.
    pub level: Length,
    /// Depth below the surface down to which tips find enough oxygen.
    pub oxygen_reach: Length,
    /// Whether there is any solution left.
    pub wet: bool,
}

impl RootDay {
    /// Whether the pots stand in the solution, so that their medium draws it up.
    pub fn contact(&self) -> bool {
        self.wet && self.level >= self.foot
    }

    /// Whether the tips have left the pots and are in the solution.
    pub fn reached(&self) -> bool {
        self.wet && self.tip <= self.level && self.tip <= self.foot
    }

    /// Whether neither pot nor tips touch the solution although there is some.
    pub fn hanging(&self) -> bool {
        self.wet && !self.contact() && !self.reached()
    }

    /// Length of the roots in the moist air between the pots and the solution.
    pub fn in_air(&self) -> Length {
        (self.foot - self.level.max(self.tip)).max(Length::default())
    }

    /// Length of the roots below pots and surface.
    pub fn in_solution(&self) -> Length {
        (self.level.min(self.foot) - self.tip).max(Length::default())
    }
}

/// The roots of a season.
#[derive(Clone, Debug, PartialEq)]
pub struct Roots {
    /// At the end of each day; the first entry is the planting.
    pub days: Vec<RootDay>,
    /// Growth of the tips in a day, where nothing holds them back.
    pub growth_per_day: Length,
    /// Oxygen at the surface of the solution.
    pub surface_oxygen: MassConcentration,
}

impl Roots {
    /// The first day on which neither pot nor tips touch the solution.
    pub fn first_hanging(&self) -> Option<usize> {
        self.days.iter().position(RootDay::hanging)
    }

    /// The first day on which the tips have left the pots and are in the solution.
    pub fn first_reached(&self) -> Option<usize> {
        self.days.iter().position(RootDay::reached)
    }
}

/// Lives through the season of the roots.
///
/// `states` and `volumes`: where everything stands and what is left in one container at the end of
/// each day from planting on, of the same length; `course`: the plants. Growth and oxygen as in
/// [`crate::science::roots`].
///
/// # Errors
/// [`Beyond`] when a model refuses its inputs.
pub fn roots(
    sound: &Sound,
    states: &[State],
    volumes: &[Volume],
    course: &PlantCourse,
) -> Result<Roots, Beyond> {
    // As the chemistry of the tank: a mean beyond 0 to 40 °C counts as the nearer end.
    let celsius = course
        .mean_temperature
        .get::<degree_celsius>()
        .clamp(0.0, 40.0);
    let solution = ThermodynamicTemperature::new::<degree_celsius>(celsius);
    let pressure = atmospheric_pressure(sound.climate.elevation).map_err(|_| Beyond)?;
    let surface_oxygen = oxygen_saturation(solution, pressure).map_err(|_| Beyond)?;
    let diffusion = oxygen_diffusion(solution).map_err(|_| Beyond)?;
    let a_day = Elongation::lettuce()
        .rate(solution)
        .map_err(|_| Beyond)?
        .get::<meter_per_second>()
        * SECONDS_A_DAY;
    let needed = MassConcentration::new::<milligram_per_liter>(LEAST_OXYGEN_MG_PER_L);
    let root_share = GrowthParameters::published().root_fraction;
    let plants = f64::from(sound.crop.plants);
    let plug = Length::new::<centimeter>(PLUG_CM);
    // Below the foot of the pot; negative inside it. Metres from here on.
    let mut depth = -(sound.container.pot.height - plug).get::<meter>().max(0.0);
    let days = states
        .iter()
        .zip(volumes)
        .enumerate()
        .map(|(day, (state, &volume))| {
            let hour = course.at_day(day).or(course.hours.last()).ok_or(Beyond)?;
            let wet = volume.get::<cubic_meter>() > 0.0 && state.level.get::<meter>() > 0.0;
            let oxygen_reach = if wet {
                let still = StillSolution {
                    surface_oxygen,
                    diffusion,
                    uptake: oxygen_uptake(hour.dry * (root_share * plants)).map_err(|_| Beyond)?,
                    volume,
                    depth: state.level,
                };
                oxygen_reach(&still, needed).map_err(|_| Beyond)?
            } else {
                Length::default()
            };
            let foot = state.foot.get::<meter>();
            if day > 0 {
                let deepest = (state.level - oxygen_reach).get::<meter>().max(0.0);
                let room = (foot - deepest) - depth;
                depth += a_day.min(room.max(0.0));
            }
            Ok(RootDay {
                tip: Length::new::<meter>((foot - depth).max(0.0)),
                foot: state.foot,
                level: state.level,
                oxygen_reach,
                wet,
            })
        })
        .collect::<Result<Vec<_>, Beyond>>()?;
    Ok(Roots {
        days,
        growth_per_day: Length::new::<meter>(a_day),
        surface_oxygen,
    })
}
