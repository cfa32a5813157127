//! Slackwater: a planner for leafy crops on still nutrient solution.
//!
//! Everything such a crop needs is added once, before planting; then the level only falls. This
//! library works out beforehand what cannot be corrected later.
//!
//! ```text
//!     Plan  ──solve──▶  Outcome  ──▶  page, card, file
//!     (what the grower      (what will happen,
//!      decides)              and what to do)
//! ```
//!
//! [`solve`] is the only door between the two halves. Floors, lowest first; a floor uses only the
//! floors below it:
//!
//! | floor | what lives there |
//! | --- | --- |
//! | [`science`] | laws of nature and published models, as plain functions of physical quantities |
//! | [`catalog`] | things in the world with their figures and the source of each figure |
//! | [`plan`] | what the grower decides, the limits of every field, the saved document |
//! | [`season`] | a plan lived through hour by hour |
//! | [`advice`] | fill mark, doses, boards, checks, cautions and dates: typed, without words |
//! | [`trial`] | variants of a plan compared: layout, records, what they allow to be said |
//! | `app` | the page: forms, drawings, results, card and every word that a user reads |
//!
//! The floors up to [`trial`] build without any browser crate (`--no-default-features`).
#![forbid(unsafe_code)]

pub mod advice;
#[cfg(feature = "page")]
pub mod app;
pub mod catalog;
pub mod plan;
pub mod science;
pub mod season;
pub mod trial;

pub use advice::{Outcome, solve};
