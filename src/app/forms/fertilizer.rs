//! Step 3: raw water, what is dissolved, how strong, and the pH.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, several};

use super::container::numbers;
use super::salts::salt_shelf;
use super::{choice_field, group, number_field, wrong_within};
use crate::app::materials::{keep_blend, kept_blends};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::blends::BlendChoice;
use crate::catalog::recipes::RecipeChoice;
use crate::plan::{
    AcidChoice, CalciumNitrate, Dosing, Entry, Field, Pick, Plan, StrengthBy, WaterKind,
};
use crate::solve;

/// The form.
pub fn fertilizer_form() -> Node {
    let app = app();
    let dosing = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.dosing.known())
        })
    });
    let unless_salts = move || dosing.get() != Some(Dosing::Salts);
    several()
        .child(water())
        .child(group(
            words::group_blend(),
            several()
                .child(choice_field::<Dosing>(
                    Field::Dosing,
                    |plan| &plan.fertilizer.dosing,
                    |plan, dosing| plan.fertilizer.dosing = Pick::Known(dosing),
                ))
                .child(choice_field::<BlendChoice>(
                    Field::Blend,
                    |plan| &plan.fertilizer.blend,
                    Plan::choose_blend,
                ))
                .child(given(unless_salts, move || {
                    several().child(kept_blends()).child(label_lines())
                })),
        ))
        .child(given(
            move || dosing.get() == Some(Dosing::Stocks),
            move || {
                group(
                    words::group_stocks_heading(),
                    several()
                        .child(choice_field::<CalciumNitrate>(
                            Field::CalciumNitrate,
                            |plan| &plan.fertilizer.calcium_nitrate,
                            |plan, salt| plan.fertilizer.calcium_nitrate = Pick::Known(salt),
                        ))
                        .child(numbers(&[
                            Field::StockACalciumNitrate,
                            Field::StockBBlend,
                            Field::StockBMagnesiumSulfate,
                            Field::StockVolume,
                            Field::StoreTemperature,
                        ])),
                )
            },
        ))
        .child(given(unless_salts, move || {
            group(
                words::group_strength(),
                several()
                    .child(choice_field::<StrengthBy>(
                        Field::StrengthBy,
                        |plan| &plan.fertilizer.strength_by,
                        choose_strength,
                    ))
                    .child(numbers(&[Field::TargetConductivity, Field::TargetNitrogen])),
            )
        }))
        .child(given(
            move || !unless_salts(),
            move || {
                group(
                    words::group_recipe(),
                    several()
                        .child(choice_field::<RecipeChoice>(
                            Field::Recipe,
                            |plan| &plan.fertilizer.recipe,
                            |plan, recipe| plan.fertilizer.recipe = Pick::Known(recipe),
                        ))
                        .child(number_field(Field::RecipeStrength))
                        .child(salt_shelf()),
                )
            },
        ))
        .child(group(
            words::group_acid(),
            several()
                .child(choice_field::<AcidChoice>(
                    Field::Acid,
                    |plan| &plan.fertilizer.acid,
                    Plan::choose_acid,
                ))
                .child(numbers(&[
                    Field::AcidStrength,
                    Field::AcidDensity,
                    Field::TargetPh,
                ])),
        ))
        .child(more())
}

/// Tells the strength another way, and means the same one.
fn choose_strength(plan: &mut Plan, by: StrengthBy) {
    // To the nearest 5 mg/L and 0.05 mS/cm, as a person would say it.
    let rounded = |value: f64, steps: f64| Entry::Number((value * steps).round() / steps);
    if let Ok(outcome) = solve(plan)
        && plan.fertilizer.strength_by.known() != Some(by)
    {
        let now = &outcome.fertilizer;
        match by {
            StrengthBy::Nitrogen => {
                plan.fertilizer.target_n_mg_per_l = rounded(now.elements_mg_per_l.n, 0.2);
            }
            StrengthBy::Conductivity => {
                plan.fertilizer.target_ec_ms_per_cm = rounded(now.ec_ms_per_cm, 20.0);
            }
        }
    }
    plan.fertilizer.strength_by = Pick::Known(by);
}

/// The raw water.
fn water() -> Node {
    group(
        words::group_water(),
        several()
            .child(choice_field::<WaterKind>(
                Field::WaterKind,
                |plan| &plan.fertilizer.water_kind,
                |plan, kind| plan.fertilizer.water_kind = Pick::Known(kind),
            ))
            .child(numbers(&[
                Field::RawWaterConductivity,
                Field::RainShare,
                Field::WaterPh,
                Field::WaterAlkalinity,
                Field::WaterCalcium,
                Field::WaterMagnesium,
                Field::WaterSodium,
                Field::WaterPotassium,
                Field::WaterChloride,
                Field::WaterSulfate,
                Field::WaterNitrate,
            ])),
    )
}

/// More crops on one charge, and prices, folded away unless one of them is wrong.
fn more() -> Node {
    const FIELDS: [Field; 5] = [
        Field::CropsInARow,
        Field::PriceBlend,
        Field::PriceCalciumNitrate,
        Field::PriceMagnesiumSulfate,
        Field::PriceAcid,
    ];
    let app = app();
    let unfold = wrong_within(|field| FIELDS.contains(&field));
    el("details")
        .class("fold")
        .open_live(move || unfold.get())
        .child(el("summary").child(words::group_more()))
        .child(
            el("div").class("fields").child(numbers(&FIELDS)).child(
                el("div")
                    .class("field")
                    .child(el("label").attr("for", "currency").child(words::currency()))
                    .child(
                        el("input")
                            .id("currency")
                            .attr("type", "text")
                            .attr("autocomplete", "off")
                            .attr("maxlength", "8")
                            .value_live(move || {
                                app.plan.with(|plan| {
                                    plan.as_ref()
                                        .map(|plan| plan.fertilizer.currency.clone())
                                        .unwrap_or_default()
                                })
                            })
                            .on_value("input", move |value| {
                                let sign = value;
                                app.edit(|plan| plan.fertilizer.currency = sign);
                            }),
                    ),
            ),
        )
}

/// The label of the blend, folded away unless it is wrong or copied by the grower.
fn label_lines() -> Node {
    let app = app();
    let wrong = wrong_within(|field| field.path().starts_with("fertilizer.label"));
    let unfold = Memo::new(move |_| {
        let own = app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.fertilizer.blend.known()) == Some(BlendChoice::Own)
        });
        own || wrong.get()
    });
    el("details")
        .class("fold")
        .open_live(move || unfold.get())
        .child(el("summary").child(words::group_label()))
        .child(
            el("div")
                .class("fields tight")
                .child(numbers(&[
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
                ]))
                .child(keep_blend()),
        )
}
