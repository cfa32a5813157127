//! The season's days, the nutrients, and how the figures are made.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live, several};

use crate::advice::{DayOutcome, Outcome};
use crate::app::state::app;
use crate::app::words::{self, Worked};
use crate::plan::{Dimension, UnitSystem};

use super::more::{Table, fold_table};
use super::working::working;

/// The events of the season.
pub fn events() -> Node {
    let app = app();
    el("section")
        .class("part")
        .id("season")
        .child(el("h3").child(words::season()))
        .child(el("ol").class("events").child(live(move || {
            app.tabled_with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| outcome.season.events.clone())
                    .unwrap_or_default()
                    .into_iter()
                    .map(|event| {
                        el("li")
                            .child(el("strong").child(words::day_and_date(event.day, &event.date)))
                            .child(el("span").child(words::event(event.kind)))
                    })
                    .collect::<Node>()
            })
        })))
}

/// What can be unfolded.
pub fn details() -> Node {
    let app = app();
    let has = move |what: fn(&Outcome) -> bool| {
        move || app.tabled_with(|outcome| outcome.as_ref().is_some_and(what))
    };
    several()
        .child(fold_table(words::nutrients(), Table::Nutrients))
        .child(fold_table(words::doses(), Table::Doses))
        .child(given(has(|of| !of.fertilizer.targets.is_empty()), || {
            fold_table(words::targets(), Table::Targets)
        }))
        .child(given(has(|of| !of.stocks.is_empty()), || {
            fold_table(words::stocks(), Table::Stocks)
        }))
        .child(fold_table(words::elements(), Table::Elements))
        .child(fold_table(words::species(), Table::Species))
}

/// What stands in them.
pub fn contents(table: Table) -> Node {
    let app = app();
    let of = move |rows: fn(&Outcome, UnitSystem) -> Vec<Vec<String>>| {
        live(move || {
            app.tabled_with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| rows(outcome, app.units.get()))
                    .unwrap_or_default()
            })
            .into_iter()
            .map(|row| {
                el("tr").child(
                    row.into_iter()
                        .map(|cell| el("td").child(cell))
                        .collect::<Node>(),
                )
            })
            .collect::<Node>()
        })
    };
    let readings = move || {
        app.tabled_with(|outcome| {
            let outcome = outcome.as_ref()?;
            Some(words::readings(outcome, app.units.get()))
        })
    };
    match table {
        Table::Doses => [
            titled_table(&words::dose_heads(), words::doses(), of(words::dose_lines)),
            working(Worked::Dose),
        ]
        .into(),
        Table::Targets => [
            titled_table(&words::target_heads(), words::targets(), of(target_rows)),
            working(Worked::Recipe),
        ]
        .into(),
        Table::Stocks => [
            titled_table(&words::stock_heads(), words::stocks(), of(stock_rows))
                .class_if("stocks", true),
            titled_table(&words::mixture_heads(), words::mixtures(), of(mixture_rows)),
            working(Worked::Stocks),
        ]
        .into(),
        Table::Elements => [
            el("p").child(live(readings)),
            titled_table(&words::element_heads(), words::elements(), of(element_rows)),
            working(Worked::Solution),
        ]
        .into(),
        Table::Species => [
            titled_table(&words::species_heads(), words::species(), of(species_rows)),
            working(Worked::Solution),
        ]
        .into(),
        Table::Nutrients => [
            titled_table(
                &words::nutrient_heads(),
                words::nutrients(),
                of(nutrient_rows),
            ),
            working(Worked::Nutrients),
        ]
        .into(),
    }
}

/// A table in a frame that scrolls sideways.
pub fn titled_table(heads: &[&'static str], name: &'static str, children: Node) -> Node {
    el("div")
        .class("scroll")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", name)
        .child(
            el("table")
                .child(
                    el("thead").child(
                        el("tr").child(
                            heads
                                .iter()
                                .map(|head| el("th").attr("scope", "col").child(*head))
                                .collect::<Node>(),
                        ),
                    ),
                )
                .child(el("tbody").child(children)),
        )
}

fn nutrient_rows(outcome: &Outcome, _: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .season
        .nutrients
        .iter()
        .map(|balance| {
            vec![
                words::nutrient(balance.nutrient).to_owned(),
                words::on_scale(balance.supply_g),
                words::on_scale(balance.need_g),
                if balance.need_g > balance.supply_g {
                    words::short_from(balance.runs_short_day)
                } else {
                    words::enough().to_owned()
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
                words::rounded(amount.mmol_per_kg, 3),
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
            vec![
                words::capital(&words::material(&stock.material)),
                words::stock_parts(stock, units),
                words::serves(stock.serves_containers, stock.serves_heads),
                words::saturation_line(&stock.saturation),
            ]
        })
        .collect()
}
