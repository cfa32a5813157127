//! The solution in its container: from litres to level, with what floats and what hangs in it.

use crate::plan::{Boards, PipeEnds, Sound};
use crate::science::geometry::{Basin, Frustum, HorizontalPipes};
use crate::science::units::area::square_meter;
use crate::science::units::length::meter;
use crate::science::units::mass::kilogram;
use crate::science::units::mass_density::kilogram_per_cubic_meter;
use crate::science::units::thermodynamic_temperature::kelvin;
use crate::science::units::volume::cubic_meter;
use crate::science::units::{Area, Length, Mass, MassDensity, ThermodynamicTemperature, Volume};
use crate::science::water;

use super::plants::Beyond;
use crate::catalog::pots::WET_MEDIUM_DENSITY;

/// What the pots hang from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cover {
    /// A cover that rests on the rim of the container.
    Fixed,
    /// Boards that follow the level until they come to rest on pipes.
    Floating {
        /// Area of all boards.
        area: Area,
        /// Volume of all boards.
        volume: Volume,
        /// Dry mass of all boards.
        mass: Mass,
        /// Height of the pipes' top above the floor.
        rest: Length,
    },
}

/// A container made ready: vessel, pipes, pots and cover.
#[derive(Clone, Debug, PartialEq)]
pub struct Tank {
    basin: Basin,
    pot: Frustum,
    pots: f64,
    /// From the underside of the cover down to the foot of a pot, m.
    pot_below_cover: f64,
    /// Mass of a pot with its wet medium, kg.
    pot_mass: f64,
    cover: Cover,
    density: MassDensity,
}

/// Where everything stands at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// Surface of the solution above the floor.
    pub level: Length,
    /// Underside of the cover or boards above the floor.
    pub underside: Length,
    /// Foot of the pots above the floor.
    pub foot: Length,
    /// Whether boards float free of their pipes.
    pub afloat: bool,
    /// How deep the boards' underside lies in the solution.
    pub draught: Length,
    /// Whether the container cannot hold what is in it.
    pub overflows: bool,
}

impl State {
    /// The moist air between the solution and the underside of the cover; zero while boards float.
    pub fn gap(&self) -> Length {
        Length::new::<meter>((self.underside - self.level).get::<meter>().max(0.0))
    }

    /// How deep the pots stand in the solution; negative once they hang above it.
    pub fn immersion(&self) -> Length {
        self.level - self.foot
    }
}

impl Tank {
    /// The container of a plan, with its own pipes or with pipes of another outside diameter and
    /// wall.
    ///
    /// # Errors
    /// [`Beyond`] when the geometry refuses its measures.
    pub fn new(sound: &Sound, pipe: Option<(Length, Length)>) -> Result<Self, Beyond> {
        let container = &sound.container;
        let (pipes, cover) = match &container.boards {
            Some(boards) => {
                let (outside, wall) =
                    pipe.unwrap_or((boards.pipes.outside_diameter, boards.pipes.wall));
                let displacing = match boards.pipes.ends {
                    PipeEnds::Open => Some(wall),
                    PipeEnds::Capped | PipeEnds::Flooded => None,
                };
                let pipes = HorizontalPipes::new(
                    outside,
                    displacing,
                    boards.tank_length,
                    boards.pipes.count,
                )
                .map_err(|_| Beyond)?;
                (Some(pipes), floating(boards, outside))
            }
            None => (None, Cover::Fixed),
        };
        let pot = Frustum::new(
            container.pot.bottom_diameter,
            container.pot.top_diameter,
            container.pot.height,
        )
        .map_err(|_| Beyond)?;
        let mean = f64::midpoint(
            sound.climate.temperature_min.value,
            sound.climate.temperature_max.value,
        );
        // The solution follows the air's mean; between 0 and 40 °C density changes by 0.8 %.
        let density = water::density(ThermodynamicTemperature::new::<kelvin>(
            mean.clamp(273.15, 313.15),
        ))
        .map_err(|_| Beyond)?;
        Ok(Self {
            basin: Basin::new(container.vessel.clone(), pipes).map_err(|_| Beyond)?,
            pot,
            pots: f64::from(sound.crop.plants),
            pot_below_cover: (container.pot.height - container.cover_thickness).get::<meter>(),
            pot_mass: pot.volume().get::<cubic_meter>() * WET_MEDIUM_DENSITY,
            cover,
            density,
        })
    }

    /// Mass of one pot with its wet medium.
    pub fn pot_mass(&self) -> Mass {
        Mass::new::<kilogram>(self.pot_mass)
    }

    /// Vessel and pipes.
    pub fn basin(&self) -> &Basin {
        &self.basin
    }

    /// What the pots hang from.
    pub fn cover(&self) -> Cover {
        self.cover
    }

    /// Density of the solution, taken as that of water at the mean temperature of the air.
    pub fn density(&self) -> MassDensity {
        self.density
    }

    /// Mass that floats: boards, pots with wet medium, heads. Zero for a fixed cover.
    pub fn floating_mass(&self, head: Mass) -> Mass {
        match self.cover {
            Cover::Fixed => Mass::default(),
            Cover::Floating { mass, .. } => {
                mass + (Mass::new::<kilogram>(self.pot_mass) + head) * self.pots
            }
        }
    }

    /// How deep free boards lie in the solution under a floating mass: Archimedes, with the
    /// immersed part of the pots bearing its share. `None` for a fixed cover and for boards that
    /// sink.
    pub fn draught(&self, floating: Mass) -> Option<Length> {
        let Cover::Floating { area, volume, .. } = self.cover else {
            return None;
        };
        let displaced = floating.get::<kilogram>() / self.density.get::<kilogram_per_cubic_meter>();
        let area = area.get::<square_meter>();
        let thickness = volume.get::<cubic_meter>() / area;
        let borne =
            |draught: f64| area * draught + self.pots_displace(self.pot_below_cover + draught);
        if displaced > borne(thickness) {
            return None;
        }
        let (mut low, mut high) = (0.0, thickness);
        if borne(low) >= displaced {
            return Some(Length::default());
        }
        // `borne` rises strictly; halving the thickness 60 times is far below a micrometre.
        for _ in 0..60 {
            let middle = f64::midpoint(low, high);
            if borne(middle) < displaced {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(Length::new::<meter>(f64::midpoint(low, high)))
    }

    /// Volume of solution that brings the surface to `level` when everything is in place.
    ///
    /// # Errors
    /// [`Beyond`] when the level lies outside the container.
    pub fn volume_at(&self, level: Length, draught: Length) -> Result<Volume, Beyond> {
        let whole = self.basin.volume_at(level).map_err(|_| Beyond)?;
        let displaced = self.displaced(level.get::<meter>(), draught.get::<meter>());
        Ok(Volume::new::<cubic_meter>(
            (whole.get::<cubic_meter>() - displaced).max(0.0),
        ))
    }

    /// Where everything stands with a volume of solution in the container and a draught of free
    /// boards. `guess` is a level nearby, such as that of the hour before.
    pub fn state(&self, volume: Volume, draught: Length, guess: Length) -> State {
        let wanted = volume.get::<cubic_meter>().max(0.0);
        let draught_m = draught.get::<meter>();
        let rim = self.basin.depth_max().get::<meter>();
        let content = |level: f64| {
            let whole = self
                .basin
                .volume_at(Length::new::<meter>(level))
                .map_or(0.0, |volume| volume.get::<cubic_meter>());
            whole - self.displaced(level, draught_m) - wanted
        };
        let overflows = content(rim) < 0.0;
        let level = if overflows {
            rim
        } else {
            self.root(
                content,
                draught_m,
                guess.get::<meter>().clamp(0.0, rim),
                rim,
            )
        };
        let underside = self.underside(level, draught_m);
        let afloat = match self.cover {
            Cover::Fixed => false,
            Cover::Floating { rest, .. } => level - draught_m > rest.get::<meter>(),
        };
        let m = Length::new::<meter>;
        State {
            level: m(level),
            underside: m(underside),
            foot: m(underside - self.pot_below_cover),
            afloat,
            draught: m((level - underside).max(0.0)),
            overflows,
        }
    }

    /// Newton's method kept within a shrinking bracket; `content` never falls with the level.
    fn root(&self, content: impl Fn(f64) -> f64, draught: f64, guess: f64, rim: f64) -> f64 {
        /// Far below what a tape can read.
        const NANOMETRE: f64 = 1e-9;
        let (mut low, mut high, mut level) = (0.0, rim, guess);
        for _ in 0..80 {
            let excess = content(level);
            if excess > 0.0 {
                high = level;
            } else {
                low = level;
            }
            let area = self
                .basin
                .area_at(Length::new::<meter>(level))
                .map_or(0.0, |area| area.get::<square_meter>())
                - self.covered(level, draught);
            let step = if area > 0.0 {
                excess / area
            } else {
                f64::INFINITY
            };
            let newton = level - step;
            if step.abs() < NANOMETRE {
                return newton.clamp(low, high);
            }
            level = if newton > low && newton < high {
                newton
            } else {
                f64::midpoint(low, high)
            };
            if high - low < NANOMETRE {
                return level;
            }
        }
        level
    }

    fn underside(&self, level: f64, draught: f64) -> f64 {
        match self.cover {
            Cover::Fixed => self.basin.depth_max().get::<meter>(),
            Cover::Floating { rest, .. } => (level - draught).max(rest.get::<meter>()),
        }
    }

    fn pots_displace(&self, immersion: f64) -> f64 {
        self.pots
            * self
                .pot
                .immersed_volume(Length::new::<meter>(immersion))
                .get::<cubic_meter>()
    }

    /// Volume of boards and pots below the surface, m³.
    fn displaced(&self, level: f64, draught: f64) -> f64 {
        let underside = self.underside(level, draught);
        let pots = self.pots_displace(level - (underside - self.pot_below_cover));
        match self.cover {
            Cover::Fixed => pots,
            Cover::Floating { area, .. } => {
                pots + area.get::<square_meter>() * (level - underside).max(0.0)
            }
        }
    }

    /// Surface that pots, and boards at rest in the solution, take away as the level moves, m².
    fn covered(&self, level: f64, draught: f64) -> f64 {
        let underside = self.underside(level, draught);
        let pots = self.pots
            * self
                .pot
                .area_at(Length::new::<meter>(
                    level - (underside - self.pot_below_cover),
                ))
                .get::<square_meter>();
        match self.cover {
            Cover::Fixed => pots,
            Cover::Floating { area, rest, .. } => {
                if level - draught > rest.get::<meter>() {
                    // Free boards and their pots move with the surface.
                    0.0
                } else if level > underside {
                    pots + area.get::<square_meter>()
                } else {
                    pots
                }
            }
        }
    }
}

fn floating(boards: &Boards, rest: Length) -> Cover {
    let area = boards.length * boards.width * f64::from(boards.count);
    let volume = area * boards.thickness;
    let dry = MassDensity::new::<kilogram_per_cubic_meter>(boards.foam_figures.density);
    let soaked =
        MassDensity::new::<kilogram_per_cubic_meter>(1000.0 * boards.foam_figures.water_uptake);
    Cover::Floating {
        area,
        volume,
        mass: volume * (dry + soaked),
        rest,
    }
}
