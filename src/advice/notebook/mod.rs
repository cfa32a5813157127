//! A crop under way, forecast anew from what was read: seasons that explain the readings count for
//! more, and what they share corrects the next plan.

mod evidence;
mod outcome;
mod picture;
mod top_up;

pub use evidence::Errors;
pub use outcome::{Closing, Learnt, LevelRead, NotebookOutcome};
pub use picture::{Picture, picture};
pub use top_up::{AIR_ROOT_DAYS, TopUp};

use super::chances::judge::Judge;
use super::chances::{Fate, summary};
use crate::plan::notebook::{Notebook, NotebookRefusal, SoundNotebook, check_notebook};
use crate::science::importance::{effective_size, next_power, systematic, weights};
use crate::science::normal::Normals;
use crate::season::ensemble::{BLOCK_DAYS, BLOCKS, Draw, Ensemble, SEED, Seasons};
use crate::season::{Beyond, Hour, LONGEST_DAYS};
use evidence::Evidence;

/// Seasons that the page weighs a notebook with.
pub const SEASONS: usize = 400;
/// Share of the seasons that the weighed ones must be worth; below, they are drawn again.
const COLLAPSED: f64 = 0.4;
/// The same at each step of drawing again.
const STEP: f64 = 0.5;
/// Moves of each season at each step, a third of its factors and the others of its weather.
const MOVES: usize = 6;
/// Length of a move along the difference of two seasons: ter Braak (2006), Statistics and Computing
/// 16:239–249, 2.38 / √(2 d) for d = 3.
const MOVE: f64 = 0.97;
/// Jitter of a move, in standard deviations of what is not known beforehand: as there, small
/// beside it.
const JITTER: f64 = 0.02;

/// What is done next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Phase {
    /// The seasons that the plan alone allows.
    First,
    /// Drawn again: this move of this season.
    Moving { pass: usize, index: usize },
    /// The drawn seasons lived through to their end.
    Last,
    /// What became of the season with this index.
    Judging { index: usize },
    /// All is weighed.
    Done,
}

/// A notebook being weighed, in pieces.
///
/// Source: importance weights and effective sample size, Kong, Liu and Wong (1994); where they
/// collapse, the evidence is taken in bit by bit (Del Moral, Doucet and Jasra 2006) with systematic
/// resampling (Kitagawa 1996) and each season then moved by a jitter that the Metropolis rule
/// accepts or not (Gilks and Berzuini 2001, Journal of the Royal Statistical Society B
/// 63:127–146), so that the result stays that of Bayes' rule.
#[derive(Clone, Debug)]
pub struct Tracker {
    notebook: SoundNotebook,
    judge: Judge,
    seasons: Seasons,
    evidence: Evidence,
    ensemble: Ensemble,
    fates: Vec<Fate>,
    /// Log likelihood of each member.
    logs: Vec<f64>,
    /// Litres that each has drawn by the last reading.
    drawn: Vec<f64>,
    draws: Vec<Draw>,
    phase: Phase,
    /// Share of the evidence taken in so far.
    power: f64,
    chance: Normals,
    /// Of the first seasons, before any were drawn again.
    effective_size: f64,
    days: Vec<Hour>,
    /// Seasons lived through, for progress.
    lived: usize,
}

impl Tracker {
    /// Makes ready to weigh a notebook with `size` seasons (at least two).
    ///
    /// # Errors
    /// All problems of the notebook, or of its plan.
    ///
    /// ```
    /// use slackwater::advice::notebook::Tracker;
    /// use slackwater::plan::{Entry, Example, notebook::{Notebook, Reading}};
    /// let mut notebook = Notebook::begin(&Example::Bucket.plan());
    /// notebook.readings.push(Reading {
    ///     date: Entry::Number(20.0),
    ///     level_cm: Entry::Number(9.0),
    ///     ..Reading::default()
    /// });
    /// let mut tracker = Tracker::new(&notebook, 50)?;
    /// while !tracker.advance(10)? {}
    /// assert_eq!(tracker.outcome().day, 20);
    /// # Ok::<(), slackwater::plan::notebook::NotebookRefusal>(())
    /// ```
    pub fn new(notebook: &Notebook, size: usize) -> Result<Self, NotebookRefusal> {
        let sound = check_notebook(notebook)?;
        let mut judge = Judge::new(&sound.plan).map_err(NotebookRefusal::Plan)?;
        judge.added = sound
            .readings
            .iter()
            .map(|reading| reading.added)
            .fold(judge.added, |sum, added| sum + added);
        let seasons = judge.seasons();
        let evidence = Evidence::new(&sound, &judge, Errors::default());
        let draws: Vec<Draw> = (0..size.max(2) as u64)
            .map(|member| Draw {
                turn: evidence.day,
                ..Draw::of(SEED, member)
            })
            .collect();
        Ok(Self {
            ensemble: Ensemble::of_draws(seasons.clone(), draws.clone(), evidence.day + 1),
            fates: Vec::with_capacity(draws.len()),
            logs: Vec::with_capacity(draws.len()),
            drawn: Vec::with_capacity(draws.len()),
            phase: Phase::First,
            power: 0.0,
            chance: Normals::stream(SEED, u64::MAX),
            effective_size: 0.0,
            days: Vec::new(),
            lived: 0,
            notebook: sound,
            judge,
            seasons,
            evidence,
            draws,
        })
    }

    /// Lives through about `count` more seasons; result: whether the notebook is weighed.
    ///
    /// # Errors
    /// That the plan lies beyond the models.
    pub fn advance(&mut self, count: usize) -> Result<bool, NotebookRefusal> {
        for _ in 0..count.max(1) {
            if self.phase == Phase::Done {
                return Ok(true);
            }
            self.step()
                .map_err(|Beyond| NotebookRefusal::Plan(super::beyond(None)))?;
        }
        Ok(self.phase == Phase::Done)
    }

    /// Seasons lived through so far. How many there will be is not known before the last.
    pub fn lived(&self) -> usize {
        self.lived
    }

    fn step(&mut self) -> Result<(), Beyond> {
        // To judge a season takes next to nothing beside living through it.
        self.lived += usize::from(!matches!(self.phase, Phase::Judging { .. }));
        match self.phase {
            Phase::First => {
                let done = self.ensemble.advance(1)?;
                if let Some(member) = self.ensemble.members().last() {
                    let days = self.ensemble.days(member);
                    self.logs
                        .push(self.evidence.log_likelihood(&self.judge, days, member));
                    self.drawn.push(self.evidence.drawn(days));
                }
                if done {
                    self.effective_size = effective_size(&weights(&self.logs, 1.0));
                    if self.effective_size < COLLAPSED * self.logs.len() as f64 {
                        self.resample();
                    } else {
                        self.phase = Phase::Judging { index: 0 };
                    }
                }
            }
            Phase::Moving { pass, index } => self.move_one(pass, index)?,
            Phase::Last => {
                if self.ensemble.advance(1)? {
                    self.phase = Phase::Judging { index: 0 };
                }
            }
            Phase::Judging { index } => self.judge_one(index)?,
            Phase::Done => {}
        }
        Ok(())
    }

    /// Takes in the next bit of evidence.
    fn resample(&mut self) {
        let power = next_power(&self.logs, self.power, STEP);
        let weights = weights(&self.logs, power - self.power);
        let picks = systematic(&weights, self.chance.share());
        self.draws = picks.iter().map(|&i| self.draws[i]).collect();
        self.logs = picks.iter().map(|&i| self.logs[i]).collect();
        self.drawn = picks.iter().map(|&i| self.drawn[i]).collect();
        self.power = power;
        self.phase = Phase::Moving { pass: 0, index: 0 };
    }

    /// Moves one season, if the Metropolis rule lets it.
    fn move_one(&mut self, pass: usize, index: usize) -> Result<(), Beyond> {
        let size = self.draws.len();
        let old = self.draws[index];
        let mut new = old;
        let until = self.evidence.day;
        let of_factors = pass.is_multiple_of(3);
        if of_factors {
            let (a, b) = (self.place(size), self.place(size));
            for (i, normal) in new.normals.iter_mut().enumerate() {
                *normal += MOVE * (self.draws[a].normals[i] - self.draws[b].normals[i])
                    + JITTER * self.chance.draw();
            }
        } else {
            // Another spell somewhere before the last reading.
            let spells = usize::try_from(until.div_ceil(BLOCK_DAYS)).map_err(|_| Beyond)?;
            let spell = self.place(spells.clamp(1, BLOCKS));
            new.weather[spell] = self.chance.seed();
        }
        self.days.clear();
        self.seasons.live(&new, (until, until), &mut self.days)?;
        let mut drawn = self.evidence.drawn(&self.days);
        if !of_factors && drawn > 0.0 && self.drawn[index] > 0.0 {
            // The water factor moves along so that as much is drawn as before: all water is in
            // step with it, so this shifts its logarithm by what the weather alone decides, and
            // the Metropolis rule holds as it stands (a shift keeps volumes). Otherwise hardly
            // any other weather would meet sharp readings.
            let share = self.drawn[index] / drawn;
            new.normals[1] += libm::log(share) / self.seasons.spreads().water;
            for day in &mut self.days {
                day.drawn *= share;
            }
            drawn = self.drawn[index];
        }
        let log = self.evidence.log_likelihood_of(
            &self.judge,
            &self.days,
            new.factors(self.seasons.spreads())[2],
        );
        let prior = |draw: &Draw| -> f64 { -0.5 * draw.normals.iter().map(|z| z * z).sum::<f64>() };
        let ratio = self.power * (log - self.logs[index]) + prior(&new) - prior(&old);
        if libm::log(self.chance.share()) < ratio {
            self.draws[index] = new;
            self.logs[index] = log;
            self.drawn[index] = drawn;
        }
        self.phase = if index + 1 < size {
            Phase::Moving {
                pass,
                index: index + 1,
            }
        } else if pass + 1 < MOVES {
            Phase::Moving {
                pass: pass + 1,
                index: 0,
            }
        } else if self.power < 1.0 {
            self.resample();
            self.phase
        } else {
            // Weather to come is not told by weather past.
            for draw in &mut self.draws {
                draw.after = self.chance.seed();
            }
            self.ensemble = Ensemble::of_draws(
                self.seasons.clone(),
                self.draws.clone(),
                self.evidence.day + 1,
            );
            Phase::Last
        };
        Ok(())
    }

    /// A place by chance in a list that is not empty.
    fn place(&mut self, length: usize) -> usize {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a share of a small count"
        )]
        let place = (self.chance.share() * length as f64) as usize;
        place.min(length.saturating_sub(1))
    }

    fn judge_one(&mut self, index: usize) -> Result<(), Beyond> {
        if index == 0 {
            self.fates.clear();
        }
        let spreads = *self.seasons.spreads();
        if let Some(member) = self.ensemble.members().get(index) {
            self.fates.push(self.judge.fate(
                self.ensemble.days(member),
                member.harvest_day,
                &member.draw,
                &spreads,
            )?);
        }
        self.phase = if index + 1 < self.ensemble.members().len() {
            Phase::Judging { index: index + 1 }
        } else {
            Phase::Done
        };
        Ok(())
    }

    /// Whether the first seasons explained the readings too badly and were drawn again.
    fn resampled(&self) -> bool {
        self.power > 0.0
    }

    /// Weights of the seasons, summing to one.
    fn weights(&self) -> Vec<f64> {
        if self.resampled() {
            vec![1.0 / self.draws.len() as f64; self.draws.len()]
        } else {
            weights(&self.logs, 1.0)
        }
    }

    /// What is known once the notebook is weighed; before, what the first seasons say.
    pub fn outcome(&self) -> NotebookOutcome {
        let mut weights = self.weights();
        weights.truncate(self.fates.len());
        outcome::outcome(
            self,
            &weights,
            summary(&self.judge, &self.ensemble, &self.fates, Some(&weights)),
        )
    }
}

/// As long as seasons are followed at the most.
const _: () = assert!(LONGEST_DAYS == 150, "limits of a reading's day");
