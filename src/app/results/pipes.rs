//! The comparison of pipe sizes.

use leptos::prelude::*;

use crate::advice::{PipeRow, PipeVerdict};
use crate::app::state::app;
use crate::app::words::{self, Worded, Worked};

use super::working::Working;
use crate::plan::{Dimension, UnitSystem};

/// The table, where boards float.
#[component]
pub fn PipeTable() -> impl IntoView {
    let app = app();
    let rows = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .and_then(|outcome| outcome.boards.as_ref())
                .map(|boards| boards.pipes.clone())
                .unwrap_or_default()
        })
    });
    let any_sound =
        move || rows.with(|rows| rows.iter().any(|row| row.verdict == PipeVerdict::Sound));
    view! {
        <Show when=move || rows.with(|rows| !rows.is_empty())>
            <section class="part" id="pipes">
                <h3>{words::PIPES}</h3>
                <p class="hint">{move || words::pipes_note(any_sound())}</p>
                <div class="scroll" tabindex="0" role="region" aria-label=words::PIPES>
                    <table>
                        <thead>
                            <tr>
                                {words::PIPE_HEADS
                                    .into_iter()
                                    .map(|head| view! { <th scope="col">{head}</th> })
                                    .collect_view()}
                            </tr>
                        </thead>
                        <tbody>
                            {move || rows
                                .get()
                                .into_iter()
                                .map(|row| line(&row, app.units.get()))
                                .collect_view()}
                        </tbody>
                    </table>
                </div>
                <Working of=Worked::Boards/>
            </section>
        </Show>
    }
}

fn line(row: &PipeRow, units: UnitSystem) -> impl IntoView + use<> {
    let length = |cm| words::show(Dimension::Length, cm, units);
    let known = row.verdict != PipeVerdict::TankTooLow;
    let or_dash = |text: String| if known { text } else { "–".to_owned() };
    let verdict = row.verdict;
    view! {
        <tr class:chosen=row.chosen>
            <th scope="row">
                {row.size.word()}
                {row.chosen.then(|| view! { " "<em class="tag">{words::CHOSEN}</em> })}
            </th>
            <td>{words::show(Dimension::SmallLength, row.outside_diameter_mm, units)}</td>
            <td>{or_dash(length(row.fill_depth_cm))}</td>
            <td>{or_dash(words::rest_day(row.rest_day))}</td>
            <td>{or_dash(length(row.gap_cm))}</td>
            <td class:good=verdict == PipeVerdict::Sound>{words::verdict(verdict)}</td>
        </tr>
    }
}
