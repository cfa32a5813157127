//! What a figure is made of, folded beside it.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live, several};

use super::more::{More, fold, shown};
use crate::app::state::app;
use crate::app::words::{self, Worked};

/// The working of a figure.
pub fn working(of: Worked) -> Node {
    fold("working", words::working_of(of), move || {
        shown(More::Working(of))
    })
    .attr("data-of", words::working_of(of))
}

/// What stands in it.
pub fn parts(of: Worked) -> Node {
    let app = app();
    let parts = move || {
        app.outcome
            .with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| words::working(of, outcome, app.units.get()))
            })
            .into_iter()
            .flat_map(|texts| words::working_parts().into_iter().zip(texts))
            .map(|(name, text)| {
                several()
                    .child(el("dt").child(name))
                    .child(el("dd").child(text))
            })
            .collect::<Node>()
    };
    el("dl").child(live(parts))
}
