//! Step 3: raw water, what is dissolved, how strong, and the pH.

use leptos::prelude::*;

use super::container::numbers;
use super::salts::SaltShelf;
use super::{ChoiceField, Group, NumberField, wrong_within};
use crate::app::materials::{KeepBlend, KeptBlends};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::blends::BlendChoice;
use crate::catalog::recipes::RecipeChoice;
use crate::plan::{AcidChoice, CalciumNitrate, Dosing, Field, Pick, Plan, StrengthBy, WaterKind};

/// The form.
#[component]
pub fn FertilizerForm() -> impl IntoView {
    let app = app();
    let dosing = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.dosing.known())
        })
    });
    let unless_salts = move || dosing.get() != Some(Dosing::Salts);
    view! {
        <Water/>
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
            <Show when=unless_salts>
                <KeptBlends/>
                <LabelLines/>
            </Show>
        </Group>
        <Show when=move || dosing.get() == Some(Dosing::Stocks)>
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
                    Field::StockVolume,
                    Field::StoreTemperature,
                ])}
            </Group>
        </Show>
        <Show when=unless_salts>
            <Group name=words::GROUP_STRENGTH>
                <ChoiceField<StrengthBy>
                    field=Field::StrengthBy
                    pick=|plan| &plan.fertilizer.strength_by
                    choose=|plan, by| plan.fertilizer.strength_by = Pick::Known(by)
                />
                {numbers(&[Field::TargetConductivity, Field::TargetNitrogen])}
            </Group>
        </Show>
        <Show when=move || !unless_salts()>
            <Group name=words::GROUP_RECIPE>
                <ChoiceField<RecipeChoice>
                    field=Field::Recipe
                    pick=|plan| &plan.fertilizer.recipe
                    choose=|plan, recipe| plan.fertilizer.recipe = Pick::Known(recipe)
                />
                <NumberField field=Field::RecipeStrength/>
                <SaltShelf/>
            </Group>
        </Show>
        <Group name=words::GROUP_ACID>
            <ChoiceField<AcidChoice>
                field=Field::Acid
                pick=|plan| &plan.fertilizer.acid
                choose=Plan::choose_acid
            />
            {numbers(&[Field::AcidStrength, Field::AcidDensity, Field::TargetPh])}
        </Group>
        <More/>
    }
}

/// The raw water.
#[component]
fn Water() -> impl IntoView {
    view! {
        <Group name=words::GROUP_WATER>
            <ChoiceField<WaterKind>
                field=Field::WaterKind
                pick=|plan| &plan.fertilizer.water_kind
                choose=|plan, kind| plan.fertilizer.water_kind = Pick::Known(kind)
            />
            {numbers(&[
                Field::RawWaterConductivity,
                Field::WaterPh,
                Field::WaterAlkalinity,
                Field::WaterCalcium,
                Field::WaterMagnesium,
                Field::WaterSodium,
                Field::WaterPotassium,
                Field::WaterChloride,
                Field::WaterSulfate,
                Field::WaterNitrate,
            ])}
        </Group>
    }
}

/// More crops on one charge, and prices, folded away unless one of them is wrong.
#[component]
fn More() -> impl IntoView {
    const FIELDS: [Field; 5] = [
        Field::CropsInARow,
        Field::PriceBlend,
        Field::PriceCalciumNitrate,
        Field::PriceMagnesiumSulfate,
        Field::PriceAcid,
    ];
    let app = app();
    let unfold = wrong_within(|field| FIELDS.contains(&field));
    view! {
        <details class="fold" prop:open=move || unfold.get()>
            <summary>{words::GROUP_MORE}</summary>
            <div class="fields">
                {numbers(&FIELDS)}
                <div class="field">
                    <label for="currency">{words::CURRENCY}</label>
                    <input
                        id="currency"
                        type="text"
                        autocomplete="off"
                        maxlength="8"
                        prop:value=move || {
                            app.plan.with(|plan| {
                                plan.as_ref()
                                    .map(|plan| plan.fertilizer.currency.clone())
                                    .unwrap_or_default()
                            })
                        }
                        on:input:target=move |event| {
                            let sign = event.target().value();
                            app.edit(|plan| plan.fertilizer.currency = sign);
                        }
                    />
                </div>
            </div>
        </details>
    }
}

/// The label of the blend, folded away unless it is wrong or copied by the grower.
#[component]
fn LabelLines() -> impl IntoView {
    let app = app();
    let wrong = wrong_within(|field| field.path().starts_with("fertilizer.label"));
    let unfold = Memo::new(move |_| {
        let own = app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.fertilizer.blend.known()) == Some(BlendChoice::Own)
        });
        own || wrong.get()
    });
    view! {
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
                <KeepBlend/>
            </div>
        </details>
    }
}
