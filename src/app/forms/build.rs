//! How a tank is built: folded, because every field of it has a usual answer.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given};

use super::container::numbers;
use super::{choice_field, wrong_within};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::timber::Timber;
use crate::plan::{Field, Pick, StandsOn};

/// The group, where the plan is of a tank that somebody builds; unfolded while one of its fields is
/// wrong.
pub fn build_form() -> Node {
    let app = app();
    let used = Memo::new(move |_| app.used.with(|used| used.contains(&Field::StandsOn)));
    let unfold = wrong_within(|field| field.path().starts_with("build."));
    given(
        move || used.get(),
        move || {
            el("details")
                .class("fold")
                .id("how-built")
                .open_live(move || unfold.get())
                .child(el("summary").child(words::group_build()))
                .child(
                    el("div")
                        .class("fields")
                        .child(choice_field::<StandsOn>(
                            Field::StandsOn,
                            |plan| &plan.build.stands_on,
                            |plan, place| plan.build.stands_on = Pick::Known(place),
                        ))
                        .child(numbers(&[
                            Field::LegCount,
                            Field::SupportRating,
                            Field::FloorDrop,
                        ]))
                        .child(choice_field::<Timber>(
                            Field::Timber,
                            |plan| &plan.build.timber,
                            |plan, timber| plan.build.timber = Pick::Known(timber),
                        ))
                        .child(numbers(&[Field::BraceSpacing, Field::LinerLayers]))
                        .child(choice_field::<CoverMaterial>(
                            Field::CoverMaterial,
                            |plan| &plan.build.cover,
                            |plan, cover| plan.build.cover = Pick::Known(cover),
                        ))
                        .child(numbers(&[
                            Field::PropRows,
                            Field::EdgeDistance,
                            Field::SheetLength,
                            Field::SheetWidth,
                            Field::SheetPrice,
                            Field::PipePrice,
                            Field::TimberPrice,
                            Field::LinerPrice,
                            Field::PotPrice,
                        ])),
                )
        },
    )
}
