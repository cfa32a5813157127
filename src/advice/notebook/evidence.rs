//! What was read, ready to be compared with what a season would have shown.

use crate::advice::chances::judge::Judge;
use crate::plan::notebook::SoundNotebook;
use crate::science::importance::log_likelihood;
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::length::centimeter;
use crate::science::units::mass::gram;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Volume};
use crate::season::Hour;
use crate::season::ensemble::{Draw, Member, Spreads};

/// Standard deviations by which readings miss: assumed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Errors {
    /// A level read with a tape, containers and unlevel floors included, cm.
    pub level_cm: f64,
    /// Conductivity, mS/cm, and as a share of the reading.
    pub ec_ms_per_cm: f64,
    /// As above.
    pub ec_share: f64,
    /// The mean head of the heads weighed, as a share of it.
    pub head_share: f64,
}

impl Default for Errors {
    fn default() -> Self {
        Self {
            level_cm: 0.5,
            ec_ms_per_cm: 0.05,
            ec_share: 0.05,
            head_share: 0.08,
        }
    }
}

/// The readings of one day, or the heads of one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Seen {
    pub day: usize,
    /// Surface above the floor, cm.
    pub level_cm: Option<f64>,
    /// mS/cm.
    pub ec: Option<f64>,
    /// Mean fresh mass of a head, g.
    pub head_g: Option<f64>,
    /// What the crop could draw on before the readings of that day.
    pub start: Volume,
}

/// All that was read.
#[derive(Clone, Debug)]
pub(super) struct Evidence {
    pub seen: Vec<Seen>,
    /// The last day on which anything was read.
    pub day: u32,
    errors: Errors,
    spreads: Spreads,
}

impl Evidence {
    /// The readings of a notebook. Containers read on one day count as one reading, their mean;
    /// what is added counts from the next day on.
    pub fn new(notebook: &SoundNotebook, judge: &Judge, errors: Errors) -> Self {
        let rim = judge.tank.basin().depth_max();
        let mark = judge.mark();
        let mut evidence = Self {
            seen: Vec::new(),
            day: 0,
            errors,
            spreads: Spreads::default(),
        };
        let mut start = judge.filled.volume;
        for group in notebook.readings.chunk_by(|a, b| a.day == b.day) {
            let level = |surface: Length| surface.get::<centimeter>();
            let levels = group.iter().filter_map(|reading| {
                let from_rim = reading.below_rim.map(|below| level(rim - below));
                from_rim.or(reading.below_mark.map(|below| level(mark - below)))
            });
            let ecs = group
                .iter()
                .filter_map(|reading| reading.conductivity)
                .map(|ec| ec.get::<siemens_per_meter>() * 10.0);
            evidence.push(Seen {
                day: index(group[0].day),
                level_cm: mean(levels),
                // What was added since is of a strength that nobody wrote down.
                ec: mean(ecs).filter(|_| start <= judge.filled.volume),
                head_g: None,
                start,
            });
            let added = group
                .iter()
                .map(|reading| reading.added)
                .fold(Volume::default(), Volume::max);
            start += added;
        }
        for group in notebook.harvest.chunk_by(|a, b| a.day == b.day) {
            let heads: u32 = group.iter().map(|cut| cut.heads).sum();
            let mass: f64 = group.iter().map(|cut| cut.mass.get::<gram>()).sum();
            evidence.push(Seen {
                day: index(group[0].day),
                level_cm: None,
                ec: None,
                head_g: Some(mass / f64::from(heads.max(1))),
                start,
            });
        }
        evidence
    }

    fn push(&mut self, seen: Seen) {
        self.day = self.day.max(u32::try_from(seen.day).unwrap_or_default());
        self.seen.push(seen);
    }

    /// Litres that a season has drawn by the last reading.
    pub fn drawn(&self, days: &[Hour]) -> f64 {
        days.get(index(self.day))
            .or(days.last())
            .map_or(0.0, |day| day.drawn.get::<liter>())
    }

    /// Log likelihood of everything that was read, had a member been the season.
    pub fn log_likelihood(&self, judge: &Judge, days: &[Hour], member: &Member) -> f64 {
        let draw: &Draw = &member.draw;
        self.log_likelihood_of(judge, days, draw.factors(&self.spreads)[2])
    }

    /// The same of bare days.
    pub fn log_likelihood_of(&self, judge: &Judge, days: &[Hour], uptake: f64) -> f64 {
        let mut sum = 0.0;
        for seen in &self.seen {
            let index = seen.day.min(days.len().saturating_sub(1));
            let Some(day) = days.get(index) else {
                continue;
            };
            if let Some(level) = seen.level_cm {
                let shown = judge.state(day, seen.start).level.get::<centimeter>();
                sum += log_likelihood(level, shown, self.errors.level_cm);
            }
            if let Some(ec) = seen.ec
                && let Some(shown) = judge.conductivity(days, index, uptake)
            {
                let error = libm::hypot(self.errors.ec_ms_per_cm, self.errors.ec_share * ec);
                sum += log_likelihood(ec, shown, error);
            }
            if let Some(head) = seen.head_g {
                let error = (self.errors.head_share * head).max(1.0);
                sum += log_likelihood(head, day.head.get::<gram>(), error);
            }
        }
        sum
    }
}

fn index(day: u32) -> usize {
    usize::try_from(day).unwrap_or_default()
}

fn mean(values: impl Iterator<Item = f64>) -> Option<f64> {
    let (sum, count) = values.fold((0.0, 0.0), |(sum, count), value| (sum + value, count + 1.0));
    (count > 0.0).then(|| sum / count)
}
