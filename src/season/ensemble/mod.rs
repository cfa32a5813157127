//! Many seasons of one plan at once: weather from day to day, and what the models do not know.
//!
//! Every member has streams of its own, drawn in a fixed order, so that the same plan gives the
//! same seasons on every device, in however many pieces they are lived through, and two plans
//! meet the same chance (common random numbers).

mod weather;

pub use weather::Deviation;

use super::LONGEST_DAYS;
use super::day::{SunDay, Weather};
use super::plants::{Beyond, Follow, Hour, Stand, date_of};
use crate::plan::Sound;
use crate::science::normal::Normals;
use crate::science::units::Area;

/// The seed of all ensembles.
pub const SEED: u64 = 8;

/// Days whose weather comes from one stream.
pub const BLOCK_DAYS: u32 = 7;
/// Streams of weather: enough for the longest season.
pub const BLOCKS: usize = 22;

/// How far apart seasons lie. Deviations are standard deviations; those of factors are of their
/// natural logarithm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spreads {
    /// Highest and lowest temperature of a day, K: assumed; stations of the growing season have
    /// 2 to 5 K.
    pub temperature_k: f64,
    /// The same in a room under lamps, K: assumed.
    pub room_temperature_k: f64,
    /// Radiation of a day, as a share of its mean: assumed; WGEN's stations have 0.2 to 0.4.
    pub radiation: f64,
    /// Mean relative humidity of a day, as a ratio: assumed.
    pub humidity: f64,
    /// Growth factor: assumed, so that 80 % of crops lie within 21 % of the model, as wide as
    /// 95 % of the plants around the mean in van Henten (1994).
    pub growth: f64,
    /// Water factor: assumed; Graamans and others (2017) found an error of 9 % in a controlled
    /// room (361 of 3991 g m⁻² d⁻¹), and air around a bed is known less.
    pub water: f64,
    /// Content of nutrients in the dry mass: assumed; published analyses of lettuce differ so.
    pub uptake: f64,
}

impl Default for Spreads {
    fn default() -> Self {
        Self {
            temperature_k: 2.5,
            room_temperature_k: 0.5,
            radiation: 0.25,
            humidity: 0.06,
            growth: 0.15,
            water: 0.15,
            uptake: 0.15,
        }
    }
}

/// What chance has drawn for one season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Draw {
    /// Standard normal numbers of growth, water and uptake.
    pub normals: [f64; 3],
    /// The streams of the weather up to `turn`, one for every [`BLOCK_DAYS`] days, so that a spell
    /// can be another without all the weather being so.
    pub weather: [u64; BLOCKS],
    /// The stream of the weather from `turn` on.
    pub after: u64,
    /// Days after planting from which the weather is another's; [`LONGEST_DAYS`] for never.
    pub turn: u32,
}

impl Draw {
    /// What chance draws for a member of the ensemble of a seed.
    pub fn of(seed: u64, member: u64) -> Self {
        let mut chance = Normals::stream(seed, member);
        Self {
            normals: [chance.draw(), chance.draw(), chance.draw()],
            weather: std::array::from_fn(|_| chance.seed()),
            after: chance.seed(),
            turn: LONGEST_DAYS,
        }
    }

    /// Factors on growth, water and uptake: log-normal with median 1.
    pub fn factors(&self, spreads: &Spreads) -> [f64; 3] {
        let of = |i: usize, spread: f64| libm::exp(spread * self.normals[i]);
        [
            of(0, spreads.growth),
            of(1, spreads.water),
            of(2, spreads.uptake),
        ]
    }
}

/// One season lived through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Member {
    /// What chance had drawn.
    pub draw: Draw,
    /// Days from planting to the target mass; `None` when it is not reached.
    pub harvest_day: Option<u32>,
    /// Where its days begin, and how many there are.
    first: usize,
    count: usize,
}

/// The plan's plants, ready to live through any season that chance may draw.
#[derive(Clone, Debug)]
pub struct Seasons {
    sound: Sound,
    open_area: Area,
    spreads: Spreads,
    /// The sun of each day met so far.
    suns: Vec<Option<SunDay>>,
}

impl Seasons {
    /// The seasons of a plan. `open_area` is the surface per container through which solution or
    /// wet medium meets the air.
    pub fn new(sound: &Sound, open_area: Area, spreads: Spreads) -> Self {
        Self {
            sound: sound.clone(),
            open_area,
            spreads,
            suns: Vec::with_capacity(usize::try_from(LONGEST_DAYS).unwrap_or_default()),
        }
    }

    /// The spreads that the seasons are drawn with.
    pub fn spreads(&self) -> &Spreads {
        &self.spreads
    }

    /// Lives through one season to its harvest, for at least and at most so many days. The state
    /// at planting and at the end of each day is added to `days`; result: days to harvest.
    ///
    /// # Errors
    /// [`Beyond`] when a model refuses its inputs.
    pub fn live(
        &mut self,
        draw: &Draw,
        (least_days, most_days): (u32, u32),
        days: &mut Vec<Hour>,
    ) -> Result<Option<u32>, Beyond> {
        let Self {
            sound,
            open_area,
            spreads,
            suns,
        } = self;
        let [growth, water, _] = draw.factors(spreads);
        let stand = Stand::new(sound, *open_area, (growth, water))?;
        let mut chance = Normals::stream(draw.weather[0], 0);
        let mut deviation = Deviation::default();
        let summary = stand.live(
            &mut |day| {
                let index = usize::try_from(day).map_err(|_| Beyond)?;
                while suns.len() <= index {
                    let date = date_of(sound, u32::try_from(suns.len()).map_err(|_| Beyond)?)?;
                    suns.push(SunDay::new(&sound.climate, date)?);
                }
                if day == draw.turn {
                    chance = Normals::stream(draw.after, 0);
                } else if day < draw.turn && day.is_multiple_of(BLOCK_DAYS) {
                    let block = usize::try_from(day / BLOCK_DAYS).map_err(|_| Beyond)?;
                    chance = Normals::stream(*draw.weather.get(block).ok_or(Beyond)?, 0);
                }
                deviation = deviation.next(&mut chance);
                let (climate, sun) = deviation.apply(spreads, &sound.climate, suns[index].as_ref());
                Weather::new(&climate, &stand.model)?.day(sun.as_ref())
            },
            &Follow {
                every: 24,
                least_days,
                most_days: most_days.min(LONGEST_DAYS),
            },
            days,
        )?;
        Ok(summary.harvest_day)
    }
}

/// Many seasons of one plan, lived through in as many pieces as the caller likes.
#[derive(Clone, Debug)]
pub struct Ensemble {
    seasons: Seasons,
    /// What the members still to be lived through have drawn.
    draws: Vec<Draw>,
    least_days: u32,
    members: Vec<Member>,
    days: Vec<Hour>,
}

impl Ensemble {
    /// The first `size` members of the ensemble of [`SEED`].
    pub fn new(seasons: Seasons, size: usize) -> Self {
        let draws = (0..size as u64)
            .map(|member| Draw::of(SEED, member))
            .collect();
        Self::of_draws(seasons, draws, 0)
    }

    /// Members with draws of the caller's, each followed for at least so many days.
    pub fn of_draws(seasons: Seasons, draws: Vec<Draw>, least_days: u32) -> Self {
        Self {
            seasons,
            members: Vec::with_capacity(draws.len()),
            days: Vec::with_capacity(draws.len() * 48),
            draws,
            least_days,
        }
    }

    /// Lives through up to `count` more seasons; result: whether all are done.
    ///
    /// # Errors
    /// [`Beyond`] when a model refuses its inputs.
    pub fn advance(&mut self, count: usize) -> Result<bool, Beyond> {
        let from = self.members.len();
        let to = from.saturating_add(count).min(self.draws.len());
        for index in from..to {
            let draw = self.draws[index];
            let first = self.days.len();
            let harvest_day =
                self.seasons
                    .live(&draw, (self.least_days, LONGEST_DAYS), &mut self.days)?;
            self.members.push(Member {
                draw,
                harvest_day,
                first,
                count: self.days.len() - first,
            });
        }
        Ok(self.members.len() == self.draws.len())
    }

    /// Seasons asked for.
    pub fn size(&self) -> usize {
        self.draws.len()
    }

    /// The seasons lived through so far, in their fixed order.
    pub fn members(&self) -> &[Member] {
        &self.members
    }

    /// The states of a member: at planting and at the end of each day.
    pub fn days(&self, member: &Member) -> &[Hour] {
        self.days
            .get(member.first..member.first + member.count)
            .unwrap_or_default()
    }

    /// The plan's plants.
    pub fn seasons(&self) -> &Seasons {
        &self.seasons
    }
}
