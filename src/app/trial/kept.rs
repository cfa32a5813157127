//! The trials of the device, and what the view of one of them holds.

use std::cell::{Cell, RefCell};
use std::ops::Deref;

use leptos::prelude::*;

use crate::app::browser;
use crate::app::state::App;
use crate::app::words;
use crate::plan::trial::{Change, Design, Record, Treatment, Trial};
use crate::plan::{Entry, KeptTrial, Pick, Plan, UnitSystem};
use crate::trial::{
    Expectations, TrialField, TrialOutcome, TrialProblem, expectations, sheet, solve_expecting,
};

/// Variants that a new trial begins with.
const VARIANTS: usize = 3;
/// Columns of heads in the table of records; more can be pasted.
const COLUMNS: usize = 12;
/// Numbers that lots are drawn with.
const LOTS: f64 = 1e6;

/// A variant that differs in nothing yet; the first stays so, for comparison.
pub fn new_variant(place: usize) -> Treatment {
    Treatment {
        name: if place == 0 {
            words::as_planned().to_owned()
        } else {
            words::variant(place)
        },
        ..Treatment::default()
    }
}

/// A number to draw lots with.
pub fn lots() -> Entry {
    Entry::Number((browser::chance() * LOTS).floor())
}

/// The view of the trials: made once, for as long as the page stands, so that every answer to an event
/// holds no more than where it is.
#[derive(Clone, Copy)]
pub struct Bench(&'static State);

/// What it holds.
pub struct State {
    pub app: App,
    /// Number of the trial that was deleted last.
    pub deleted: RwSignal<Option<usize>>,
    /// Number of the trial whose records were asked to be cleared once.
    pub clearing: RwSignal<Option<usize>>,
    /// Place of the field that was chosen to differ, before any variant gives it a value.
    pub factor: RwSignal<Option<usize>>,
    /// Place of what is to be printed; `None` for the report.
    pub paper: RwSignal<Option<usize>>,
    /// What was pasted and not yet taken in.
    pub pasted: RwSignal<Option<String>>,
    /// What came of it, a line each.
    pub said: RwSignal<Option<String>>,
}

impl Deref for Bench {
    type Target = State;

    fn deref(&self) -> &State {
        self.0
    }
}

impl Bench {
    pub fn new(app: App) -> Self {
        Self(Box::leak(Box::new(State {
            app,
            deleted: RwSignal::new(None),
            clearing: RwSignal::new(None),
            factor: RwSignal::new(None),
            paper: RwSignal::new(None),
            pasted: RwSignal::new(None),
            said: RwSignal::new(None),
        })))
    }

    /// Whether a trial is shown.
    pub fn shows(self) -> bool {
        let id = self.app.trial.get();
        self.app
            .store
            .with(|store| store.trials.iter().any(|kept| Some(kept.id as usize) == id))
    }

    /// The trial that is shown.
    pub fn trial(self) -> Option<Trial> {
        let id = self.app.trial.get()?;
        self.app.store.with(|store| {
            let kept = store.trials.iter().find(|kept| kept.id as usize == id)?;
            Some(kept.trial.clone())
        })
    }

    /// Begins a trial of the open plan and shows it.
    pub fn begin(self) {
        let Some(plan) = self.app.plan.get_untracked() else {
            return;
        };
        let trial = Trial {
            name: words::trial_of(&plan.name),
            plan: Some(plan),
            treatments: (0..VARIANTS).map(new_variant).collect(),
            design: Pick::Known(Design::Blocks),
            replicates: Entry::Number(4.0),
            seed: lots(),
            ..Trial::default()
        };
        self.app.add_trials(vec![trial]);
        let last = self
            .app
            .store
            .with_untracked(|store| store.trials.last().map(|kept| kept.id as usize));
        self.open(last);
    }

    /// Shows a trial, or none. What was half done belongs to the one before.
    pub fn open(self, id: Option<usize>) {
        for half_done in [self.deleted, self.clearing, self.factor, self.paper] {
            half_done.set(None);
        }
        self.pasted.set(None);
        self.said.set(None);
        self.app.trial.set(id);
        browser::soon(look_at);
    }

    /// Changes the trial that is shown.
    pub fn edit(self, change: impl FnOnce(&mut Trial)) {
        let Some(id) = self.app.trial.get_untracked() else {
            return;
        };
        self.app.store.update(|store| {
            if let Some(kept) = store.trials.iter_mut().find(|kept| kept.id as usize == id) {
                change(&mut kept.trial);
            }
        });
    }

    /// Deletes the trial that is shown; it can be taken back.
    pub fn delete(self) {
        let id = self.app.trial.get_untracked();
        self.open(None);
        self.app.store.update(|store| {
            let place = store
                .trials
                .iter()
                .position(|kept| Some(kept.id as usize) == id);
            GONE.set(place.map(|place| store.trials.remove(place)));
        });
        self.deleted.set(id);
        browser::focus_soon("trial-undelete");
    }

    /// Takes that back.
    pub fn undelete(self) {
        if let Some(kept) = GONE.take() {
            let id = kept.id as usize;
            self.app.store.update(|store| {
                let before = store.trials.iter().filter(|it| it.id < kept.id).count();
                store.trials.insert(before, kept);
            });
            self.open(Some(id));
        }
    }
}

/// Brings what the trials show to the eye and under the keyboard.
pub fn look_at() {
    browser::focus("trials");
    browser::scroll_to("trials");
}

/// A trial with what follows from it.
pub struct Shown {
    /// The trial, with a line of records for each container where there is a layout.
    pub trial: Trial,
    /// What follows; without records where these have problems, `None` where the rest has.
    pub outcome: Option<TrialOutcome>,
    /// What is wrong.
    pub problems: Vec<TrialProblem>,
    /// Whether anything was recorded, which fixes the layout.
    pub recorded: bool,
    /// Columns of heads.
    pub columns: usize,
    pub units: UnitSystem,
}

impl Shown {
    pub fn of(mut trial: Trial, units: UnitSystem) -> Self {
        let records = std::mem::take(&mut trial.records);
        let recorded = records.iter().any(is_filled);
        // The layout stands whatever is wrong with a cell.
        let (outcome, problems) = match solve_expecting(&trial, || remembered(&trial)) {
            Err(problems) => (None, problems),
            Ok(outcome) => (Some(outcome), Vec::new()),
        };
        let mut shown = Self {
            trial,
            outcome,
            problems,
            recorded,
            columns: 0,
            units,
        };
        let Some(outcome) = &shown.outcome else {
            shown.trial.records = records;
            return shown;
        };
        let names: Vec<&str> = outcome
            .treatments
            .iter()
            .map(|it| it.name.as_str())
            .collect();
        let columns = (outcome.heads_per_unit as usize).min(COLUMNS);
        let lines = sheet(&records, &outcome.units, &names, columns);
        let widest = lines.iter().map(|line| line.heads_g.len()).max();
        shown.columns = widest.unwrap_or(columns);
        shown.trial.records = lines;
        if recorded {
            match solve_expecting(&shown.trial, || remembered(&shown.trial)) {
                Ok(outcome) => shown.outcome = Some(outcome),
                Err(problems) => shown.problems = problems,
            }
        }
        shown
    }

    /// What is wrong with a field, in words.
    pub fn problem(&self, field: TrialField) -> Option<String> {
        let problem = self.problems.iter().find(|it| it.field == field)?;
        Some(words::trial_problem(problem, self.units))
    }
}

/// Whether anything stands in a record besides its name.
pub fn is_filled(record: &Record) -> bool {
    !record.water_l.is_blank() || record.heads_g.iter().any(|head| !head.is_blank())
}

/// What the plans of a trial came to, and what they were.
struct Remembered {
    plan: Option<Plan>,
    changes: Vec<Vec<Change>>,
    expected: Expectations,
}

thread_local! {
    /// The trial that was deleted last.
    static GONE: Cell<Option<KeptTrial>> = const { Cell::new(None) };
    /// Living through plans takes nearly all of the time, and neither names nor records change what
    /// they come to.
    static LAST: RefCell<Option<Remembered>> = const { RefCell::new(None) };
}

fn remembered(trial: &Trial) -> Expectations {
    LAST.with_borrow_mut(|last| {
        let changes = || trial.treatments.iter().map(|it| &it.changes);
        match last {
            Some(last) if last.plan == trial.plan && changes().eq(&last.changes) => {
                last.expected.clone()
            }
            _ => {
                let expected = expectations(trial);
                *last = Some(Remembered {
                    plan: trial.plan.clone(),
                    changes: changes().cloned().collect(),
                    expected: expected.clone(),
                });
                expected
            }
        }
    })
}
