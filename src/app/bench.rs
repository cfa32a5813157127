//! An open plan: its forms, what comes of them, the card. All of it is a part of the program that is
//! fetched while the first page is read, and before a plan is shown that was left open.

use std::sync::Arc;

use wasm_split_helpers::wasm_split;

use super::browser::dom::{Node, el, several};
use super::browser::part::Missing;
use super::state::{App, Engine, Latest};
use super::{building, card, forms, hand_on, results};
use crate::plan::used_fields;
use crate::solve;

/// What the part shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// The open plan.
    Plan,
    /// What came by link or file.
    Offer,
}

/// What works plans out.
static ENGINE: Engine = Engine {
    solve: |plan| solve(plan).map(|outcome| Latest::of(Arc::new(outcome))),
    link: |plan| plan.to_link().ok(),
    used: used_fields,
};

/// The view of a piece.
///
/// # Errors
///
/// When the part cannot be fetched.
#[wasm_split(plan, fallible, preload(fetch_plan))]
pub fn plan_part(app: App, piece: Piece) -> Result<Node, Missing> {
    app.start(&ENGINE);
    if piece == Piece::Offer {
        return Ok(hand_on::offer());
    }
    Ok(several()
        .child(
            el("div")
                .class("bench")
                .child(forms::forms())
                .child(results::results()),
        )
        .child(card::card())
        .child(building::sheet())
        .child(results::glance()))
}
