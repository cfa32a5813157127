//! The notebooks of the device, and what the view of one of them holds.

use std::cell::{Cell, RefCell};
use std::ops::Deref;
use std::sync::Arc;

use leptos::prelude::*;

use super::lines::{cut_is_begun, cut_of, is_begun, reading_of};
use crate::advice::notebook::NotebookOutcome;
use crate::app::browser;
use crate::app::state::App;
use crate::app::words;
use crate::plan::notebook::{
    Notebook, NotebookProblem, NotebookRefusal, Place, Reading, check_notebook,
};
use crate::plan::{Entry, KeptNotebook, Plan, Problem, UnitSystem, check};

/// Changes that can be taken back.
const MOST_BACK: usize = 30;

/// What is known of the crop so far.
#[derive(Clone, Default)]
pub struct Known {
    /// Whether seasons are lived through for the present state.
    pub working: bool,
    /// Whether the models do not reach so far.
    pub beyond: bool,
    /// By the plan alone.
    pub before: Option<Arc<NotebookOutcome>>,
    /// After the readings; of an earlier state of them while seasons are lived through.
    pub after: Option<Arc<NotebookOutcome>>,
}

thread_local! {
    // Not in signals: each type in one brings its own copy of their bookkeeping.
    static KNOWN: RefCell<Known> = RefCell::default();
    /// Earlier states of the notebook that is shown.
    static PAST: RefCell<Vec<Notebook>> = const { RefCell::new(Vec::new()) };
    /// The notebook that was deleted last.
    static GONE: Cell<Option<KeptNotebook>> = const { Cell::new(None) };
}

/// The view of the notebooks: made once, for as long as the page stands, so that every answer to an
/// event holds no more than where it is.
#[derive(Clone, Copy)]
pub struct Desk(&'static State);

/// What it holds.
pub struct State {
    pub app: App,
    /// Counts the changes of what is known.
    turn: RwSignal<Option<usize>>,
    /// Seasons lived through so far.
    pub lived: RwSignal<Option<usize>>,
    /// Place of the reading whose boxes are open.
    pub editing: RwSignal<Option<usize>>,
    /// What came of a file, a line each.
    pub said: RwSignal<Option<String>>,
    /// How many changes can be taken back.
    pub back: RwSignal<Option<usize>>,
    /// Number of the notebook that was deleted last.
    pub deleted: RwSignal<Option<usize>>,
}

impl Deref for Desk {
    type Target = State;

    fn deref(&self) -> &State {
        self.0
    }
}

impl Desk {
    pub fn new(app: App) -> Self {
        Self(Box::leak(Box::new(State {
            app,
            turn: RwSignal::new(None),
            lived: RwSignal::new(None),
            editing: RwSignal::new(None),
            said: RwSignal::new(None),
            back: RwSignal::new(None),
            deleted: RwSignal::new(None),
        })))
    }

    /// Whether a notebook is shown.
    pub fn shows(self) -> bool {
        let id = self.app.notebook.get();
        self.app.store.with(|store| {
            store
                .notebooks
                .iter()
                .any(|kept| Some(kept.id as usize) == id)
        })
    }

    /// The notebook that is shown.
    pub fn notebook(self) -> Option<Notebook> {
        let id = self.app.notebook.get()?;
        self.app.store.with(|store| {
            let kept = store.notebooks.iter().find(|kept| kept.id as usize == id)?;
            Some(kept.notebook.clone())
        })
    }

    /// Begins a notebook of the open plan, as it stands, and shows it.
    pub fn begin(self) {
        let Some(plan) = self.app.plan.get_untracked() else {
            return;
        };
        let mut notebook = Notebook::begin(&plan);
        self.app.outcome.with_untracked(|outcome| {
            if let Some(outcome) = outcome.as_ref() {
                notebook.planted = Entry::from(outcome.calendar.transplanting.as_str());
            }
        });
        self.app.add_notebooks(vec![notebook.clone()]);
        // The same plan may be under way already, without a reading yet.
        let id = self.app.store.with_untracked(|store| {
            let kept = store.notebooks.iter();
            let mut same = kept.filter(|kept| kept.notebook == notebook);
            same.next_back().map(|kept| kept.id as usize)
        });
        self.open(id);
    }

    /// Shows a notebook, or none. What was half done belongs to the one before.
    pub fn open(self, id: Option<usize>) {
        for half_done in [self.back, self.editing, self.deleted, self.app.trial] {
            half_done.set(None);
        }
        self.said.set(None);
        self.app.notebook.set(id);
        browser::soon(look_at);
    }

    /// What is known of the notebook that is shown.
    pub fn known(self) -> Known {
        self.turn.get();
        KNOWN.with_borrow(Known::clone)
    }

    /// Changes what is known.
    pub fn learn(self, change: impl FnOnce(&mut Known)) {
        KNOWN.with_borrow_mut(change);
        let turn = self.turn.get_untracked().unwrap_or(0);
        self.turn.set(Some(turn.wrapping_add(1)));
    }

    /// Forgets what belongs to the notebook that was shown before.
    pub fn begin_anew(self) {
        PAST.take();
        self.learn(|known| *known = Known::default());
    }

    fn write(self, notebook: Notebook) {
        let Some(id) = self.app.notebook.get_untracked() else {
            return;
        };
        self.app.store.update(|store| {
            let kept = store.notebooks.iter_mut();
            if let Some(kept) = kept.into_iter().find(|kept| kept.id as usize == id) {
                kept.notebook = notebook;
            }
        });
    }

    /// Changes the notebook that is shown; it can be taken back.
    pub fn edit(self, change: impl FnOnce(&mut Notebook)) {
        let Some(before) = untrack(|| self.notebook()) else {
            return;
        };
        let mut after = before.clone();
        change(&mut after);
        if after == before {
            return;
        }
        let back = PAST.with_borrow_mut(|past| {
            if past.len() == MOST_BACK {
                past.remove(0);
            }
            past.push(before);
            past.len()
        });
        self.back.set(Some(back));
        self.write(after);
    }

    /// Takes the last change back.
    pub fn take_back(self) {
        let (last, left) = PAST.with_borrow_mut(|past| (past.pop(), past.len()));
        self.back.set((left > 0).then_some(left));
        if let Some(notebook) = last {
            self.editing.set(None);
            self.write(notebook);
        }
    }

    /// Deletes the notebook that is shown; it can be taken back.
    pub fn delete(self) {
        let id = self.app.notebook.get_untracked();
        self.open(None);
        self.app.store.update(|store| {
            let kept = store.notebooks.iter();
            let place = kept
                .into_iter()
                .position(|kept| Some(kept.id as usize) == id);
            let gone = place.map(|place| store.notebooks.remove(place));
            GONE.set(gone);
        });
        self.deleted.set(id);
        browser::focus_soon("notebook-undelete");
    }

    /// Takes that back.
    pub fn undelete(self) {
        if let Some(kept) = GONE.take() {
            let id = kept.id as usize;
            self.app.store.update(|store| {
                let before = store.notebooks.iter().filter(|it| it.id < kept.id).count();
                store.notebooks.insert(before, kept);
            });
            self.open(Some(id));
        }
    }

    /// Adds a reading and opens its boxes: of today, where the crop stands today.
    pub fn add_reading(self) {
        let Some(notebook) = untrack(|| self.notebook()) else {
            return;
        };
        let today = Reading {
            date: Entry::from(browser::today().as_str()),
            ..Reading::default()
        };
        let alone = Notebook {
            readings: vec![today.clone()],
            harvest: Vec::new(),
            ..notebook.clone()
        };
        let mut reading = match check_notebook(&alone) {
            Ok(_) => today,
            Err(_) => Reading::default(),
        };
        if let Some(last) = notebook.readings.last() {
            reading.level_from = last.level_from.clone();
        }
        let place = notebook.readings.len();
        let box_to_fill = if reading.date.is_blank() {
            "date"
        } else {
            "level_cm"
        };
        self.editing.set(Some(place));
        self.edit(|notebook| notebook.readings.push(reading));
        browser::focus_soon(format!("reading-{}-{box_to_fill}", place + 1));
    }
}

/// Moves the focus to the heading, and the heading into view.
pub fn look_at() {
    browser::focus("notebooks");
    browser::scroll_to("notebooks");
}

/// A notebook with what is wrong with it.
pub struct Shown {
    pub notebook: Notebook,
    /// What is wrong with the plan that it keeps.
    pub plan_problems: Vec<Problem>,
    /// What is wrong with its entries.
    pub problems: Vec<NotebookProblem>,
    /// Whether there are several containers to tell apart.
    pub several: bool,
    pub units: UnitSystem,
}

impl Shown {
    pub fn of(notebook: Notebook, units: UnitSystem) -> Self {
        let (plan_problems, mut problems) = match check_notebook(&notebook) {
            Ok(_) => (Vec::new(), Vec::new()),
            Err(NotebookRefusal::Plan(problems)) => (problems, Vec::new()),
            Err(NotebookRefusal::Notebook(problems)) => (Vec::new(), problems),
        };
        // A line that is begun waits for its figures, and is not weighed.
        problems.retain(|problem| match problem.place {
            Place::Reading(place, _) => !notebook.readings.get(place).is_some_and(is_begun),
            Place::Cut(place, _) => !notebook.harvest.get(place).is_some_and(cut_is_begun),
            _ => true,
        });
        let several = check(&notebook.plan).is_ok_and(|sound| sound.container.count > 1);
        Self {
            notebook,
            plan_problems,
            problems,
            several,
            units,
        }
    }

    /// Whether something is wrong that no reading can be weighed without.
    pub fn waits(&self) -> bool {
        let line = |place| reading_of(place).or(cut_of(place));
        self.problems.iter().any(|it| line(it.place).is_none())
    }

    /// How many lines are wrong, and so not weighed.
    pub fn wrong_lines(&self) -> usize {
        let line = |of: fn(Place) -> Option<usize>| {
            let lines = self.problems.iter().filter_map(move |it| of(it.place));
            lines.collect::<std::collections::BTreeSet<usize>>().len()
        };
        line(reading_of) + line(cut_of)
    }

    /// What is wrong at a place, in words.
    pub fn problem(&self, place: Place) -> Option<String> {
        let problem = self.problems.iter().find(|it| it.place == place)?;
        Some(words::notebook_problem(place, &problem.kind, self.units))
    }
}

/// The plan that a notebook keeps, corrected for the next crop.
pub fn next_plan(notebook: &Notebook, outcome: &NotebookOutcome) -> Plan {
    let mut plan = notebook.plan.clone();
    plan.name = words::next_of(&plan.name);
    for change in changes(outcome) {
        change.apply(&mut plan);
    }
    plan
}

/// What a crop taught, as changes of a plan.
pub fn changes(outcome: &NotebookOutcome) -> Vec<crate::advice::Change> {
    let edits = outcome.next_plan.iter();
    edits
        .map(|edit| crate::advice::Change {
            field: edit.field,
            value: edit.entry.clone(),
            unit: None,
        })
        .collect()
}
