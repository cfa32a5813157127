//! What works plans out, and what it came to last.

use std::collections::BTreeSet;
use std::sync::Arc;

use leptos::prelude::*;

use super::App;
use crate::advice::Outcome;
use crate::plan::{Field, Plan, Problem};

/// An outcome, or none. It is never copied, and one is another as soon as it was worked out anew:
/// copying and comparing each of its figures would take more program than any view of it.
#[derive(Clone)]
pub struct Latest(pub(super) Option<Arc<Outcome>>);

impl Latest {
    /// One that was just worked out.
    pub fn of(outcome: Arc<Outcome>) -> Self {
        Self(Some(outcome))
    }

    /// The outcome.
    pub fn as_ref(&self) -> Option<&Outcome> {
        self.0.as_deref()
    }

    /// Whether there is one.
    pub fn is_some(&self) -> bool {
        self.0.is_some()
    }
}

impl PartialEq for Latest {
    fn eq(&self, other: &Self) -> bool {
        match (&self.0, &other.0) {
            (Some(one), Some(other)) => Arc::ptr_eq(one, other),
            (one, other) => one.is_none() && other.is_none(),
        }
    }
}

/// What works plans out. It comes with the part of the program that shows them.
pub struct Engine {
    /// What will happen.
    pub solve: fn(&Plan) -> Result<Latest, Vec<Problem>>,
    /// The plan as a link, without the page's address; none for a plan that is too long.
    pub link: fn(&Plan) -> Option<String>,
    /// The fields that count under the plan's choices.
    pub used: fn(&Plan) -> BTreeSet<Field>,
}

impl App {
    /// Works plans out from now on.
    pub fn start(self, engine: &'static Engine) {
        if self.engine.with_untracked(Option::is_none) {
            self.engine.set(Some(engine));
        }
    }
}
