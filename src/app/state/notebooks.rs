//! The kept notebooks: added, put in place of others, and all of them.

use leptos::prelude::*;

use super::App;
use crate::plan::KeptNotebook;
use crate::plan::notebook::Notebook;

impl App {
    /// Keeps notebooks, less those that are kept already.
    pub fn add_notebooks(self, notebooks: Vec<Notebook>) {
        if notebooks.is_empty() {
            return;
        }
        self.store.update(|store| {
            for notebook in notebooks {
                if store.notebooks.iter().all(|kept| kept.notebook != notebook) {
                    let last = store.notebooks.iter().map(|kept| kept.id).max();
                    let id = last.unwrap_or(0).saturating_add(1);
                    store.notebooks.push(KeptNotebook { id, notebook });
                }
            }
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
