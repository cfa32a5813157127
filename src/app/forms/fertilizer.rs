//! Step 3: raw water, blend and strength.

use leptos::prelude::*;

use super::container::numbers;
use super::{ChoiceField, Group, NumberField};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::blends::BlendChoice;
use crate::plan::{CalciumNitrate, Dosing, Field, Pick, Plan, StrengthBy};

/// The form.
#[component]
pub fn FertilizerForm() -> impl IntoView {
    let app = app();
    let stocks = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.dosing.known())
                == Some(Dosing::Stocks)
        })
    });
    // A label that is wrong, or copied by the grower, is not folded away.
    let unfold = Memo::new(move |_| {
        let own = app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.fertilizer.blend.known()) == Some(BlendChoice::Own)
        });
        own || app.problems.with(|problems| {
            problems.iter().any(|problem| {
                problem
                    .field
                    .is_some_and(|field| field.path().starts_with("fertilizer.label"))
            })
        })
    });
    view! {
        <Group name=words::GROUP_WATER>
            <NumberField field=Field::RawWaterConductivity/>
        </Group>
        <Group name=words::GROUP_BLEND>
            <ChoiceField<Dosing>
                field=Field::Dosing
                pick=|plan| &plan.fertilizer.dosing
                choose=|plan, dosing| plan.fertilizer.dosing = Pick::Known(dosing)
            />
            <ChoiceField<BlendChoice>
                field=Field::Blend
                pick=|plan| &plan.fertilizer.blend
                choose=Plan::choose_blend
            />
            <details class="fold" prop:open=move || unfold.get()>
                <summary>{words::GROUP_LABEL}</summary>
                <div class="fields tight">
                    {numbers(&[
                        Field::LabelNitrogen,
                        Field::LabelNitrate,
                        Field::LabelAmmonium,
                        Field::LabelUrea,
                        Field::LabelPhosphate,
                        Field::LabelPotash,
                        Field::LabelCalcium,
                        Field::LabelMagnesium,
                        Field::LabelSulfur,
                        Field::LabelIron,
                        Field::LabelManganese,
                        Field::LabelZinc,
                        Field::LabelCopper,
                        Field::LabelBoron,
                        Field::LabelMolybdenum,
                    ])}
                </div>
            </details>
        </Group>
        <Show when=move || stocks.get()>
            <Group name=words::GROUP_STOCKS>
                <ChoiceField<CalciumNitrate>
                    field=Field::CalciumNitrate
                    pick=|plan| &plan.fertilizer.calcium_nitrate
                    choose=|plan, salt| plan.fertilizer.calcium_nitrate = Pick::Known(salt)
                />
                {numbers(&[
                    Field::StockACalciumNitrate,
                    Field::StockBBlend,
                    Field::StockBMagnesiumSulfate,
                ])}
            </Group>
        </Show>
        <Group name=words::GROUP_STRENGTH>
            <ChoiceField<StrengthBy>
                field=Field::StrengthBy
                pick=|plan| &plan.fertilizer.strength_by
                choose=|plan, by| plan.fertilizer.strength_by = Pick::Known(by)
            />
            {numbers(&[Field::TargetConductivity, Field::TargetNitrogen])}
        </Group>
    }
}
