//! The kept trials and notebooks: added, put in place of others, and all of them.

use leptos::prelude::*;

use super::App;
use super::plans::add_new;
use crate::plan::notebook::Notebook;
use crate::plan::trial::Trial;
use crate::plan::{KeptNotebook, KeptTrial};

impl App {
    /// Keeps trials, less those that are kept already.
    pub fn add_trials(self, trials: Vec<Trial>) {
        if trials.is_empty() {
            return;
        }
        self.store.update(|store| {
            add_new(
                &mut store.trials,
                trials,
                |kept| (kept.id, &kept.trial),
                |id, trial| KeptTrial { id, trial },
            );
        });
    }

    /// Puts trials in the place of all kept ones.
    pub fn replace_trials(self, trials: Vec<Trial>) {
        self.trial.set(None);
        self.store.update(|store| store.trials.clear());
        self.add_trials(trials);
    }

    /// All kept trials.
    pub fn all_trials(self) -> Vec<Trial> {
        self.store
            .with_untracked(|store| store.trials.iter().map(|kept| kept.trial.clone()).collect())
    }

    /// Keeps notebooks, less those that are kept already.
    pub fn add_notebooks(self, notebooks: Vec<Notebook>) {
        if notebooks.is_empty() {
            return;
        }
        self.store.update(|store| {
            add_new(
                &mut store.notebooks,
                notebooks,
                |kept| (kept.id, &kept.notebook),
                |id, notebook| KeptNotebook { id, notebook },
            );
        });
    }

    /// Puts notebooks in the place of all kept ones.
    pub fn replace_notebooks(self, notebooks: Vec<Notebook>) {
        self.notebook.set(None);
        self.store.update(|store| store.notebooks.clear());
        self.add_notebooks(notebooks);
    }

    /// All kept notebooks.
    pub fn all_notebooks(self) -> Vec<Notebook> {
        self.store.with_untracked(|store| {
            let kept = store.notebooks.iter();
            kept.map(|kept| kept.notebook.clone()).collect()
        })
    }
}
