//! The season's days, the nutrients, and how the figures are made.

use leptos::prelude::*;

use crate::advice::{DayOutcome, Outcome};
use crate::app::state::app;
use crate::app::words::{self, Worked};
use crate::plan::{Dimension, UnitSystem, grams};

use super::working::Working;

/// The events of the season.
#[component]
pub fn Events() -> impl IntoView {
    let app = app();
    view! {
        <section class="part" id="season">
            <h3>{words::SEASON}</h3>
            <ol class="events">
                {move || app.outcome.with(|outcome| {
                    outcome
                        .as_ref()
                        .map(|outcome| outcome.season.events.clone())
                        .unwrap_or_default()
                        .into_iter()
                        .map(|event| view! {
                            <li>
                                <strong>{words::day_and_date(event.day, &event.date)}</strong>
                                <span>{words::event(event.kind)}</span>
                            </li>
                        })
                        .collect_view()
                })}
            </ol>
        </section>
    }
}

/// What can be unfolded.
#[component]
pub fn Details() -> impl IntoView {
    let app = app();
    let of =
        move |rows: fn(&Outcome, UnitSystem) -> Vec<Vec<String>>| {
            move || {
                app.outcome
                .with(|outcome| {
                    outcome
                        .as_ref()
                        .map(|outcome| rows(outcome, app.units.get()))
                        .unwrap_or_default()
                })
                .into_iter()
                .map(|row| view! {
                    <tr>
                        {row.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view()}
                    </tr>
                })
                .collect_view()
            }
        };
    view! {
        <details class="fold">
            <summary>{words::NUTRIENTS}</summary>
            <Table heads=&words::NUTRIENT_HEADS name=words::NUTRIENTS>{of(nutrient_rows)}</Table>
            <Working of=Worked::Nutrients/>
        </details>
        <details class="fold">
            <summary>{words::DOSES}</summary>
            <Table heads=&words::DOSE_HEADS name=words::DOSES>{of(words::dose_lines)}</Table>
            <Working of=Worked::Dose/>
        </details>
        <Show when=move || app.outcome.with(|outcome| {
            outcome.as_ref().is_some_and(|outcome| !outcome.fertilizer.targets.is_empty())
        })>
            <details class="fold">
                <summary>{words::TARGETS}</summary>
                <Table heads=&words::TARGET_HEADS name=words::TARGETS>{of(target_rows)}</Table>
                <Working of=Worked::Recipe/>
            </details>
        </Show>
        <Show when=move || app.outcome.with(|outcome| {
            outcome.as_ref().is_some_and(|outcome| !outcome.stocks.is_empty())
        })>
            <details class="fold">
                <summary>{words::STOCKS}</summary>
                <Table heads=&words::STOCK_HEADS name=words::STOCKS>{of(stock_rows)}</Table>
                <Table heads=&words::MIXTURE_HEADS name=words::MIXTURES>{of(mixture_rows)}</Table>
                <Working of=Worked::Stocks/>
            </details>
        </Show>
        <details class="fold">
            <summary>{words::ELEMENTS}</summary>
            <p>{move || app.outcome.with(|outcome| {
                outcome.as_ref().map(|outcome| words::readings(outcome, app.units.get()))
            })}</p>
            <Table heads=&words::ELEMENT_HEADS name=words::ELEMENTS>{of(element_rows)}</Table>
            <Working of=Worked::Solution/>
        </details>
        <details class="fold">
            <summary>{words::SPECIES}</summary>
            <Table heads=&words::SPECIES_HEADS name=words::SPECIES>{of(species_rows)}</Table>
            <Working of=Worked::Solution/>
        </details>
    }
}

/// A table in a frame that scrolls sideways.
#[component]
pub fn Table(
    heads: &'static [&'static str],
    name: &'static str,
    children: Children,
) -> impl IntoView {
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=name>
            <table>
                <thead>
                    <tr>
                        {heads
                            .iter()
                            .map(|head| view! { <th scope="col">{*head}</th> })
                            .collect_view()}
                    </tr>
                </thead>
                <tbody>{children()}</tbody>
            </table>
        </div>
    }
}

fn nutrient_rows(outcome: &Outcome, _: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .season
        .nutrients
        .iter()
        .map(|balance| {
            vec![
                words::nutrient(balance.nutrient).to_owned(),
                grams(balance.supply_g).to_string(),
                grams(balance.need_g).to_string(),
                if balance.need_g > balance.supply_g {
                    words::short_from(balance.runs_short_day)
                } else {
                    words::ENOUGH.to_owned()
                },
            ]
        })
        .collect()
}

fn element_rows(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    let start = &outcome.fertilizer.elements_mg_per_l;
    let days = &outcome.season.days;
    let end = days
        .last()
        .map(|day| day.elements_mg_per_l)
        .unwrap_or_default();
    let salt = |day: Option<&DayOutcome>| {
        day.map_or((0.0, 0.0), |day| {
            (day.sodium_mg_per_l, day.chloride_mg_per_l)
        })
    };
    let (first, last) = (salt(days.first()), salt(days.last()));
    [
        ("N", start.n, end.n),
        ("P", start.p, end.p),
        ("K", start.k, end.k),
        ("Ca", start.ca, end.ca),
        ("Mg", start.mg, end.mg),
        ("S", start.s, end.s),
        ("Fe", start.fe, end.fe),
        ("Mn", start.mn, end.mn),
        ("Zn", start.zn, end.zn),
        ("Cu", start.cu, end.cu),
        ("B", start.b, end.b),
        ("Mo", start.mo, end.mo),
        ("Na", first.0, last.0),
        ("Cl", first.1, last.1),
    ]
    .into_iter()
    .map(|(symbol, start, end)| {
        let shown = |value| words::show(Dimension::Concentration, value, units);
        vec![symbol.to_owned(), shown(start), shown(end)]
    })
    .collect()
}

fn target_rows(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    let shown = |value| words::show(Dimension::Concentration, value, units);
    outcome
        .fertilizer
        .targets
        .iter()
        .map(|target| {
            vec![
                words::target(target),
                shown(target.target_mg_per_l),
                shown(target.reached_mg_per_l),
                words::miss(target),
            ]
        })
        .collect()
}

fn species_rows(outcome: &Outcome, _: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .solution
        .species
        .iter()
        .map(|amount| {
            vec![
                amount.species.to_owned(),
                crate::plan::significant(amount.mmol_per_kg, 3),
            ]
        })
        .collect()
}

fn mixture_rows(outcome: &Outcome, _: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .stocks_together
        .iter()
        .flat_map(|together| &together.mixtures)
        .map(|mixture| {
            vec![
                words::per_cent(mixture.stock_a_pct),
                words::per_cent(100.0 - mixture.stock_a_pct),
                words::saturation_line(&mixture.saturation),
            ]
        })
        .collect()
}

fn stock_rows(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .stocks
        .iter()
        .map(|stock| {
            let contents = stock
                .contents
                .iter()
                .map(|content| {
                    format!(
                        "{} {}",
                        words::show(Dimension::StockStrength, content.g_per_l, units),
                        words::material(&content.material)
                    )
                })
                .collect::<Vec<_>>()
                .join(" + ");
            vec![
                words::capital(&words::material(&stock.material)),
                contents,
                words::serves(stock.serves_containers, stock.serves_heads),
                words::saturation_line(&stock.saturation),
            ]
        })
        .collect()
}
