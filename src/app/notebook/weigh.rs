//! A notebook weighed between the reader's touches, in slices short enough that no key press waits for
//! one; a newer state of it wins.

use std::cell::{Cell, RefCell};
use std::sync::Arc;

use leptos::prelude::*;

use super::kept::{Desk, Known};
use super::lines::sound_lines;
use crate::advice::notebook::{SEASONS, Tracker};
use crate::app::browser;
use crate::plan::notebook::Notebook;

thread_local! {
    /// Counts the states of the notebook: what belongs to an earlier one stops by itself.
    static ROUND: Cell<u32> = const { Cell::new(0) };
    /// What was weighed last, or is being weighed.
    static WEIGHED: RefCell<Option<Notebook>> = const { RefCell::new(None) };
}

/// What is not weighed changes nothing.
fn bare(notebook: &Notebook) -> Notebook {
    let mut notebook = sound_lines(notebook);
    for reading in &mut notebook.readings {
        reading.note.clear();
    }
    notebook
}

/// The plan alone, planted on that day.
fn unread(notebook: &Notebook) -> Notebook {
    Notebook {
        readings: Vec::new(),
        harvest: Vec::new(),
        closed: false,
        ..notebook.clone()
    }
}

impl Desk {
    /// Begins to weigh the notebook that is shown, where it is another than before.
    pub fn weigh(self, notebook: Option<&Notebook>) {
        let now = notebook.map(bare);
        let before = WEIGHED.replace(now.clone());
        if before == now {
            return;
        }
        let round = ROUND.get().wrapping_add(1);
        ROUND.set(round);
        let Some(now) = now else {
            return;
        };
        let same_plan = before.is_some_and(|before| unread(&before) == unread(&now));
        self.learn(|known| {
            known.working = true;
            known.beyond = false;
            if !same_plan {
                known.before = None;
            }
        });
        self.lived.set(Some(0));
        set_timeout(move || self.start(round, now, !same_plan), browser::STILL);
    }

    fn goes_on(round: u32) -> bool {
        ROUND.get() == round
    }

    /// `alone`: the plan without its readings, first.
    fn start(self, round: u32, notebook: Notebook, alone: bool) {
        if !Self::goes_on(round) {
            return;
        }
        let alone = alone || untrack(|| self.known()).before.is_none();
        let tracker = if alone {
            Tracker::new(&unread(&notebook), SEASONS)
        } else {
            Tracker::new(&notebook, SEASONS)
        };
        match tracker {
            Ok(tracker) => {
                let tracker = Box::new(tracker);
                browser::next(move || self.live_on(round, notebook, alone, tracker));
            }
            // What is wrong stands beside its entry; the figures of before stay.
            Err(_) => self.learn(|known| known.working = false),
        }
    }

    /// Lives through seasons for one slice.
    fn live_on(self, round: u32, notebook: Notebook, alone: bool, mut tracker: Box<Tracker>) {
        if !Self::goes_on(round) {
            return;
        }
        let done = match browser::for_a_slice(|| {
            let lived = tracker.advance(1);
            lived.map(|all| all.then_some(())).transpose()
        }) {
            Some(Err(_)) => {
                return self.learn(|known| {
                    *known = Known {
                        beyond: true,
                        ..Known::default()
                    };
                });
            }
            end => end.is_some(),
        };
        if done {
            // Summing up has a slice of its own.
            browser::next(move || self.sum_up(round, notebook, alone, &tracker));
        } else {
            let lived = Some(tracker.lived() / 100 * 100);
            if self.lived.get_untracked() != lived {
                self.lived.set(lived);
            }
            browser::next(move || self.live_on(round, notebook, alone, tracker));
        }
    }

    fn sum_up(self, round: u32, notebook: Notebook, alone: bool, tracker: &Tracker) {
        if !Self::goes_on(round) {
            return;
        }
        let outcome = Arc::new(tracker.outcome());
        let only = unread(&notebook) == notebook;
        let more = alone && !only;
        self.learn(|known| {
            if alone {
                known.before = Some(Arc::clone(&outcome));
            }
            if !more {
                known.after = Some(outcome);
                known.working = false;
            }
        });
        if more {
            browser::next(move || self.start(round, notebook, false));
        }
    }
}
