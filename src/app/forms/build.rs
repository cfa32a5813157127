//! How a tank is built: folded, because every field of it has a usual answer.

use leptos::prelude::*;

use super::container::numbers;
use super::{ChoiceField, wrong_within};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::timber::Timber;
use crate::plan::{Field, Pick, StandsOn};

/// The group, where the plan is of a tank that somebody builds; unfolded while one of its fields is
/// wrong.
#[component]
pub fn BuildForm() -> impl IntoView {
    let app = app();
    let used = Memo::new(move |_| app.used.with(|used| used.contains(&Field::StandsOn)));
    let unfold = wrong_within(|field| field.path().starts_with("build."));
    view! {
        <Show when=move || used.get()>
            <details class="fold" id="how-built" prop:open=move || unfold.get()>
                <summary>{words::GROUP_BUILD}</summary>
                <div class="fields">
                    <ChoiceField<StandsOn>
                        field=Field::StandsOn
                        pick=|plan| &plan.build.stands_on
                        choose=|plan, place| plan.build.stands_on = Pick::Known(place)
                    />
                    {numbers(&[Field::LegCount, Field::SupportRating, Field::FloorDrop])}
                    <ChoiceField<Timber>
                        field=Field::Timber
                        pick=|plan| &plan.build.timber
                        choose=|plan, timber| plan.build.timber = Pick::Known(timber)
                    />
                    {numbers(&[Field::BraceSpacing, Field::LinerLayers])}
                    <ChoiceField<CoverMaterial>
                        field=Field::CoverMaterial
                        pick=|plan| &plan.build.cover
                        choose=|plan, cover| plan.build.cover = Pick::Known(cover)
                    />
                    {numbers(&[
                        Field::PropRows,
                        Field::EdgeDistance,
                        Field::SheetLength,
                        Field::SheetWidth,
                        Field::SheetPrice,
                        Field::PipePrice,
                        Field::TimberPrice,
                        Field::LinerPrice,
                        Field::PotPrice,
                    ])}
                </div>
            </details>
        </Show>
    }
    .into_any()
}
