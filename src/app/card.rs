//! The planting card: hidden on the screen, alone on paper.

use leptos::prelude::*;

use super::state::app;
use super::words;
use crate::advice::{Fact, Outcome, Weight};
use crate::plan::UnitSystem;

/// Doses and cautions from which the card is set small, and smallest.
const DENSE: usize = 6;
const DENSEST: usize = 13;
/// Cautions that take as much room as an alarm.
const ALARM: usize = 4;

/// The card of the open plan.
#[component]
pub fn Card() -> impl IntoView {
    let app = app();
    let name = move || {
        app.plan.with(|plan| {
            plan.as_ref()
                .map(|plan| words::or_unnamed(&plan.name))
                .unwrap_or_default()
        })
    };
    // A long list of salts or cautions still has to fit on one page.
    let lines = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome.as_ref().map_or(0, |outcome| {
                let units = app.units.get();
                let alarms = words::alarms(outcome, units).len();
                outcome.fertilizer.doses.len() + cautions(outcome, units).len() + ALARM * alarms
            })
        })
    });
    let dense = move || lines.get() > DENSE;
    let densest = move || lines.get() > DENSEST;
    view! {
        <article class="card" class:dense=dense class:densest=densest aria-label=words::CARD>
            <header>
                <p>{words::NAME}" · "{words::CARD}</p>
                <h2>{name}</h2>
            </header>
            {move || {
                if app.has_problems() {
                    return view! { <p>{words::CARD_WAITS}</p> }.into_any();
                }
                app.outcome.with(|outcome| match outcome.as_ref() {
                    Some(outcome) => body(outcome, app.units.get()),
                    None => ().into_any(),
                })
            }}
        </article>
    }
}

fn list(lines: Vec<String>) -> impl IntoView {
    lines
        .into_iter()
        .map(|line| view! { <li>{line}</li> })
        .collect_view()
}

fn body(outcome: &Outcome, units: UnitSystem) -> AnyView {
    let alarms = words::alarms(outcome, units);
    let alarm = (!alarms.is_empty()).then(|| {
        view! { <section class="alarm"><h3>{words::ALARM}</h3><ul>{list(alarms)}</ul></section> }
    });
    view! {
        {alarm}
        <div class="card-top">
            <section>
                <h3>{words::CARD_FILL}</h3>
                <p class="card-figure">{words::card_mark(outcome, units)}</p>
                <p>{words::card_mark_more(outcome, units)}</p>
            </section>
            <section>
                <h3>{words::CARD_DATES}</h3>
                <table>
                    <tbody>
                        {words::card_dates(outcome)
                            .into_iter()
                            .map(|(what, when)| view! {
                                <tr><th scope="row">{what}</th><td>{when}</td></tr>
                            })
                            .collect_view()}
                    </tbody>
                </table>
                <p>{words::card_expect(outcome, units)}</p>
            </section>
        </div>
        <div class="card-two">
            <section>
                <h3>{words::CARD_PREPARE}</h3>
                <ul>{list(words::card_prepare(outcome, units))}</ul>
            </section>
            <section>
                <h3>{words::CARD_MIX}</h3>
                <ol>{list(words::card_mix(outcome, units))}</ol>
            </section>
        </div>
        <section class="card-rule">
            <h3>{words::CARD_RULE}</h3>
            <p>{words::CARD_RULE_TEXT}</p>
        </section>
        <div class="card-two">
            <section>
                <h3>{words::CARD_WATCH}</h3>
                <ul>{list(words::WATCH_LINES.iter().map(|line| (*line).to_owned()).collect())}</ul>
            </section>
            <section>
                <h3>{words::CARD_CAUTIONS}</h3>
                <ul>{list(cautions(outcome, units))}</ul>
            </section>
        </div>
        <div class="card-foot">
            <section class="card-notes">
                <h3>{words::CARD_NOTES}</h3>
                <div class="ruled"><span></span><span></span><span></span></div>
            </section>
            {app().address.get().map(|address| view! {
                <section class="card-code">
                    {super::hand_on::code(&address)}
                    <p>{words::SCAN}</p>
                </section>
            })}
        </div>
    }
    .into_any()
}

/// Most cautions that a card of one page holds beside its instructions.
const MOST_CAUTIONS: usize = 8;

/// Stops and cautions that matter at the bench, the gravest first; what only concerns the planning
/// stays on the screen.
fn cautions(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    outcome
        .findings
        .iter()
        .filter(|finding| finding.weight < Weight::Sound && at_the_bench(&finding.fact))
        .take(MOST_CAUTIONS)
        .map(|finding| words::finding(finding, units))
        .collect()
}

fn at_the_bench(fact: &Fact) -> bool {
    matches!(
        fact,
        Fact::RunsOut { .. }
            | Fact::NotReached { .. }
            | Fact::PotsHangAbove { .. }
            | Fact::ContactLost { .. }
            | Fact::RootsHang { .. }
            | Fact::Overflows
            | Fact::BoardsSink
            | Fact::RestAtPlanting { .. }
            | Fact::NeverRest
            | Fact::Heavy { .. }
            | Fact::FloorLoad { .. }
            | Fact::OpenWater
            | Fact::Salts
            | Fact::Acid
            | Fact::Electricity
            | Fact::StocksApart { .. }
            | Fact::Warm { .. }
            | Fact::FallsOut { .. }
    ) || matches!(fact, Fact::Water { item } if item.severe)
}
