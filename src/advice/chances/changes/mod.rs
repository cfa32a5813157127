//! The smallest change of each kind that makes a crop sure, judged on the same seasons.
//!
//! Here stands the search, in pieces; the steps of each kind stand apart.

mod steps;

use super::Chances;
use super::change::{
    Aim, Change, ChangeKind, ChangesOutcome, Edit, LeftOut, Reason, WANTED, edited,
};
use super::judge::{Judge, grown};
use crate::catalog::Keyed;
use crate::plan::Plan;
use crate::science::units::{Mass, Volume};
use crate::season::ensemble::{Draw, Seasons};
use crate::season::{Hour, LONGEST_DAYS};

/// What making ready another plan costs, in seasons lived through.
const PLAN_COST: usize = 10;

/// What one season of the plan as it is needs.
#[derive(Clone, Copy, Debug)]
struct Need {
    draw: Draw,
    /// To the target mass; `None` when that is not reached.
    water: Option<Volume>,
    /// Dry mass gained by each plant to the end, times the uptake of the season.
    taken: Mass,
}

/// Another plan being lived through.
#[derive(Clone, Debug)]
struct Trial {
    edits: Vec<Edit>,
    relative: f64,
    judge: Judge,
    seasons: Seasons,
    next: usize,
    failures: usize,
}

/// A step of a kind.
enum Step {
    Try(Vec<Edit>, f64),
    Pass,
    End(Reason),
}

/// The search for changes, in pieces.
#[derive(Clone, Debug)]
pub struct Changes {
    plan: Plan,
    judge: Judge,
    /// The thirstiest seasons first: they refute a change soonest.
    needs: Vec<Need>,
    /// Seasons that may fail.
    allowed: usize,
    days_to_harvest: f64,
    kind: usize,
    step: u32,
    /// Of the strength: the highest step that is not enough, the lowest that is.
    strength: (u32, Option<u32>),
    trial: Option<Trial>,
    days: Vec<Hour>,
    outcome: ChangesOutcome,
}

impl Changes {
    pub(super) fn new(plan: &Plan, chances: &Chances) -> Self {
        let ensemble = &chances.ensemble;
        let spreads = ensemble.seasons().spreads();
        let start = chances.judge.filled.volume;
        let mut needs: Vec<Need> = ensemble
            .members()
            .iter()
            .map(|member| {
                let days = ensemble.days(member);
                let ready = days.len().saturating_sub(1);
                let end = days[..ready].partition_point(|day| day.drawn < start);
                Need {
                    draw: member.draw,
                    water: member.harvest_day.and(days.last()).map(|day| day.drawn),
                    taken: grown(days, end) * member.draw.factors(spreads)[2],
                }
            })
            .collect();
        needs.sort_by(|a, b| {
            let litres = |need: &Need| need.water.map_or(f64::INFINITY, |water| water.value);
            litres(b).total_cmp(&litres(a))
        });
        let outcome = chances.outcome();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a share of a count; the nudge keeps 5 % of 100 at 5"
        )]
        let allowed = ((1.0 - WANTED) * needs.len() as f64 + 1e-9) as usize;
        let mut changes = Self {
            plan: plan.clone(),
            judge: chances.judge.clone(),
            allowed,
            days_to_harvest: outcome.harvest_day.map_or(40.0, |band| band.middle),
            kind: 0,
            step: 0,
            strength: (0, None),
            trial: None,
            days: Vec::new(),
            outcome: ChangesOutcome {
                wanted: WANTED,
                offered: Vec::new(),
                left_out: Vec::new(),
            },
            needs,
        };
        changes.skip_sure();
        changes
    }

    /// Looks on for about as long as it takes to live through `seasons` seasons; result: whether
    /// all kinds were looked at.
    pub fn advance(&mut self, seasons: usize) -> bool {
        let mut left = seasons.max(1);
        while let Some(&kind) = ChangeKind::ALL.get(self.kind) {
            if left == 0 {
                return false;
            }
            if self.trial.is_some() {
                self.live();
                left -= 1;
                continue;
            }
            match kind {
                ChangeKind::FillDepth => self.fill(),
                ChangeKind::Strength => self.strengthen(),
                _ => self.propose(kind),
            }
            left = left.saturating_sub(PLAN_COST);
        }
        true
    }

    /// What was found so far.
    pub fn outcome(&self) -> &ChangesOutcome {
        &self.outcome
    }

    /// Goes on to the next kind.
    fn close(&mut self, found: Result<Change, Reason>) {
        if let Some(&kind) = ChangeKind::ALL.get(self.kind) {
            match found {
                Ok(change) => {
                    self.outcome.offered.push(change);
                    self.outcome
                        .offered
                        .sort_by(|a, b| a.relative.total_cmp(&b.relative));
                }
                Err(reason) => self.outcome.left_out.push(LeftOut { kind, reason }),
            }
        }
        self.kind += 1;
        self.step = 0;
        self.trial = None;
        self.skip_sure();
    }

    fn skip_sure(&mut self) {
        if let Some(kind) = ChangeKind::ALL.get(self.kind) {
            let failures = match kind.aim() {
                Aim::Lasts => self.dry(self.judge.filled.volume),
                Aim::Feeds => self.hungry(&self.judge),
            };
            if failures <= self.allowed {
                self.close(Err(Reason::Sure));
            }
        }
    }

    /// Seasons that outlast a volume of solution.
    fn dry(&self, volume: Volume) -> usize {
        let lasts = |need: &&Need| need.water.is_some_and(|water| water < volume);
        self.needs.len() - self.needs.iter().filter(lasts).count()
    }

    /// Seasons that want more nutrients than a mixture brings.
    fn hungry(&self, judge: &Judge) -> usize {
        self.needs
            .iter()
            .filter(|need| !judge.feeds_on(need.taken))
            .count()
    }

    fn change(&self, edits: Vec<Edit>, relative: f64, failures: usize) -> Result<Change, Reason> {
        let kind = ChangeKind::ALL
            .get(self.kind)
            .copied()
            .ok_or(Reason::NotEnough)?;
        Ok(Change {
            kind,
            aim: kind.aim(),
            edits,
            relative,
            chance: 1.0 - failures as f64 / self.needs.len() as f64,
        })
    }

    /// One more season of the plan on trial.
    fn live(&mut self) {
        let Some(trial) = &mut self.trial else {
            return;
        };
        let Some(need) = self.needs.get(trial.next) else {
            let (edits, relative, failures) = (trial.edits.clone(), trial.relative, trial.failures);
            let change = self.change(edits, relative, failures);
            self.close(change);
            return;
        };
        self.days.clear();
        let harvest = trial
            .seasons
            .live(&need.draw, (0, LONGEST_DAYS), &mut self.days);
        let ready = matches!(harvest, Ok(Some(_)));
        trial.next += 1;
        if !trial.judge.lasts(self.days.last().filter(|_| ready)) {
            trial.failures += 1;
        }
        if trial.failures > self.allowed {
            self.trial = None;
        }
    }

    fn propose(&mut self, kind: ChangeKind) {
        self.step += 1;
        let step = match kind {
            ChangeKind::Containers => self.containers(),
            ChangeKind::Plants => self.plants(),
            ChangeKind::Shade => self.shade(),
            _ => self.date(),
        };
        match step {
            Step::Pass => {}
            Step::End(reason) => self.close(Err(reason)),
            Step::Try(edits, relative) => {
                // A plan that this makes unsound is no offer.
                if let Ok(judge) = Judge::new(&edited(&self.plan, &edits)) {
                    self.trial = Some(Trial {
                        edits,
                        relative,
                        seasons: judge.seasons(),
                        judge,
                        next: 0,
                        failures: 0,
                    });
                }
            }
        }
    }
}
