//! The salts on the grower's shelf: from the list, or by a formula of one's own.

use leptos::prelude::*;

use super::NumberField;
use crate::app::browser;
use crate::app::state::{app, field_id, own_id};
use crate::app::words::{self, Worded};
use crate::catalog::Keyed;
use crate::catalog::salts::Salt;
use crate::plan::{Field, Pick, SaltLine};

/// A file may hold more lines than a form is made for.
const MOST: usize = 24;

/// The shelf.
#[component]
pub fn SaltShelf() -> impl IntoView {
    let app = app();
    let lines = Memo::new(move |_| {
        app.plan
            .with(|plan| plan.as_ref().map_or(0, |plan| plan.fertilizer.salts.len()))
    });
    let add = move |_| {
        app.edit(|plan| {
            if plan.fertilizer.salts.len() < MOST {
                plan.fertilizer.salts.push(SaltLine::default());
            }
        });
        let index = u8::try_from(lines.get_untracked().saturating_sub(1)).unwrap_or(u8::MAX);
        browser::focus_soon(field_id(Field::SaltChoice(index)));
    };
    view! {
        <div class="measured" id=field_id(Field::Salts) tabindex="-1">
            <p class="hint">{words::hint(Field::Salts)}</p>
            <For
                each=move || (0..lines.get().min(MOST)).filter_map(|index| u8::try_from(index).ok())
                key=|index| *index
                let(index)
            >
                <SaltRow index/>
            </For>
            <p class="problem">
                {move || app
                    .problem_of(Field::Salts)
                    .map(|problem| view! {
                        <span class="bad">{words::problem_text(&problem, app.units.get())}</span>
                    })}
            </p>
            <div class="row">
                <button type="button" class="quiet" on:click=add>{words::ADD_LINE}</button>
                <button
                    type="button"
                    class="quiet"
                    disabled=move || lines.get() == 0
                    on:click=move |_| app.edit(|plan| {
                        plan.fertilizer.salts.pop();
                    })
                >
                    {words::REMOVE_LINE}
                </button>
            </div>
        </div>
    }
}

#[component]
fn SaltRow(index: u8) -> impl IntoView {
    let app = app();
    let field = Field::SaltChoice(index);
    let id = field_id(field);
    let key = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.salts.get(usize::from(index)))
                .map(|line| line.salt.key().to_owned())
                .unwrap_or_default()
        })
    });
    let write = move |text: &str| {
        app.edit(|plan| {
            if let Some(line) = plan.fertilizer.salts.get_mut(usize::from(index)) {
                line.salt = Pick::from_key(text);
            }
        });
    };
    // A kept salt brings its purity and price with it.
    let choose = move |text: &str| match app.kept_salt(text) {
        None => write(text),
        Some(kept) => app.edit(|plan| {
            if let Some(line) = plan.fertilizer.salts.get_mut(usize::from(index)) {
                *line = kept;
            }
        }),
    };
    let listed = move || Salt::from_key(&key.get()).is_some();
    let kept = move || app.kept_salt(&key.get()).is_some();
    let line = move || {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.salts.get(usize::from(index)).cloned())
        })
    };
    view! {
        <div class="salt">
            <div class="field">
                <label for=id.clone()>{words::label(field)}</label>
                <select
                    id=id.clone()
                    on:change:target=move |event| choose(&event.target().value())
                    aria-describedby=format!("{id}-problem")
                    aria-invalid=move || app.problem_of(field).filter(|_| listed()).map(|_| "true")
                >
                    <option value="" selected=move || !listed() && !kept()>{words::CHOOSE_SALT}</option>
                    {Salt::ALL
                        .iter()
                        .map(|&salt| view! {
                            <option value=salt.key() selected=move || key.get() == salt.key()>
                                {salt.word()}
                            </option>
                        })
                        .collect_view()}
                    {move || {
                        app.kept_salts()
                            .into_iter()
                            .map(|formula| {
                                let chosen = key.get() == formula;
                                view! {
                                    <option value=formula.clone() selected=chosen>{formula.clone()}</option>
                                }
                            })
                            .collect_view()
                    }}
                </select>
                <p class="problem" id=format!("{id}-problem")>
                    {move || app
                        .problem_of(field)
                        .map(|problem| view! {
                            <span class="bad">{words::problem_text(&problem, app.units.get())}</span>
                        })}
                </p>
            </div>
            <Show when=move || !listed()>
                <div class="field">
                    <label for=own_id(field)>{words::OWN_FORMULA}</label>
                    <input
                        id=own_id(field)
                        type="text"
                        aria-describedby=format!("{}-problem", field_id(field))
                        aria-invalid=move || app.problem_of(field).map(|_| "true")
                        autocomplete="off"
                        spellcheck="false"
                        prop:value=move || key.get()
                        on:input:target=move |event| write(event.target().value().trim())
                    />
                </div>
            </Show>
            <NumberField field=Field::SaltPurity(index)/>
            <NumberField field=Field::SaltPrice(index)/>
            <Show when=move || !listed() && !key.get().is_empty() && app.problem_of(field).is_none()>
                <button
                    type="button"
                    class="quiet"
                    on:click=move |_| if let Some(line) = line() {
                        app.keep_salt(line, !kept());
                    }
                >
                    {move || if kept() { words::FORGET_SALT } else { words::KEEP_SALT }}
                </button>
            </Show>
        </div>
    }
}
