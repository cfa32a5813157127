//! Fields that are typed into.

use leptos::prelude::*;

use crate::app::state::{app, field_id};
use crate::app::{browser, words};
use crate::plan::{Dimension, Entry, Field, UnitSystem, read_text};

/// A number with its unit, its label and what is wrong with it.
#[component]
pub fn NumberField(field: Field) -> impl IntoView {
    view! {
        <FieldFrame field>
            <QuantityBox field/>
        </FieldFrame>
    }
}

/// The box that a number is typed into. What is typed stays as typed while the box has the focus;
/// a number is then shown in the page's units, anything else word for word.
#[component]
fn QuantityBox(field: Field) -> impl IntoView {
    let app = app();
    let dimension = field
        .limits()
        .map_or(Dimension::Factor, |limits| limits.dimension);
    let typed = RwSignal::new(None::<String>);
    let text = move || {
        typed.get().unwrap_or_else(|| match app.entry(field) {
            Entry::Number(value) => dimension.text(value, app.units.get()),
            Entry::Text(text) => text,
        })
    };
    let type_in = move |text: String| {
        let entry = match read_text(field, &text, app.units.get_untracked()) {
            Ok(value) => Entry::from(value),
            Err(_) => Entry::Text(text.clone()),
        };
        typed.set(Some(text));
        app.set_entry(field, entry);
    };
    // Minus signs and letters are missing on a phone's number pad.
    let signed = matches!(
        field,
        Field::Latitude | Field::Elevation | Field::TemperatureMin
    );
    // From the value that is entered, or that stands in.
    let step = move |up: bool| {
        let from = match app.entry(field) {
            Entry::Number(value) => Some(value),
            Entry::Text(_) => app.assumed(field),
        };
        if let Some(next) = from.and_then(|from| field.nudged(from, up, app.units.get_untracked()))
        {
            typed.set(None);
            app.set_entry(field, Entry::from(next));
        }
    };
    let stepper = move |up: bool| {
        field.has_steps().then(|| {
            view! {
                <button
                    type="button"
                    class="step-by"
                    tabindex="-1"
                    aria-label=words::step_by(field, up)
                    on:click=move |_| step(up)
                >
                    {if up { "+" } else { "−" }}
                </button>
            }
        })
    };
    view! {
        <span class="box">
            <input
                id=field_id(field)
                name=field_id(field)
                type="text"
                inputmode=if signed { "text" } else { "decimal" }
                autocomplete="off"
                spellcheck="false"
                prop:value=text
                on:input:target=move |event| {
                    browser::keep_caret(&event, &event.target());
                    type_in(event.target().value());
                }
                on:blur=move |_| typed.set(None)
                on:keydown=move |event| {
                    let up = match event.key().as_str() {
                        "ArrowUp" => true,
                        "ArrowDown" => false,
                        _ => return,
                    };
                    if field.has_steps() {
                        event.prevent_default();
                        step(up);
                    }
                }
                aria-describedby=described_by(field)
                aria-invalid=move || app.problem_of(field).map(|_| "true")
            />
            <span class="steps-by">{stepper(false)}{stepper(true)}</span>
            <span class="unit" aria-hidden="true">{move || dimension.symbol(app.units.get())}</span>
        </span>
    }
}

/// A date: typed, or picked from the browser's own calendar.
#[component]
pub fn DateField(field: Field) -> impl IntoView {
    let app = app();
    let text = move || match app.entry(field) {
        Entry::Text(text) => text,
        Entry::Number(value) => value.to_string(),
    };
    let write = move |text: String| app.set_entry(field, Entry::Text(text));
    // The browser complains of anything but a whole date.
    let picked = move || {
        if app.problem_of(field).is_some() {
            String::new()
        } else {
            text().trim().to_owned()
        }
    };
    view! {
        <FieldFrame field>
            <span class="box">
                <input
                    id=field_id(field)
                    name=field_id(field)
                    type="text"
                    autocomplete="off"
                    spellcheck="false"
                    prop:value=text
                    on:input:target=move |event| write(event.target().value())
                    aria-describedby=described_by(field)
                    aria-invalid=move || app.problem_of(field).map(|_| "true")
                />
                <input
                    class="picker"
                    type="date"
                    aria-label=words::PICK_DATE
                    prop:value=picked
                    on:change:target=move |event| {
                        let picked = event.target().value();
                        // An emptied picker says nothing; the typed text stays.
                        if !picked.is_empty() {
                            write(picked);
                        }
                    }
                />
            </span>
        </FieldFrame>
    }
}

/// Ids of what explains a field.
pub fn described_by(field: Field) -> String {
    let id = field_id(field);
    format!("{id}-hint {id}-problem")
}

/// Label, hint, the control, and what is wrong with it. Absent while the plan's choices do not use
/// the field.
#[component]
pub fn FieldFrame(field: Field, children: ChildrenFn) -> impl IntoView {
    let app = app();
    let used = Memo::new(move |_| app.used.with(|used| used.contains(&field)));
    let problem = Memo::new(move |_| app.problem_of(field));
    let unusual = Memo::new(move |_| app.unusual(field));
    let assumed = Memo::new(move |_| app.assumed(field));
    let id = field_id(field);
    let unit_in_words = move || {
        let symbol = field
            .limits()
            .map_or("", |limits| limits.dimension.symbol(app.units.get()));
        if symbol.is_empty() {
            String::new()
        } else {
            format!(" ({symbol})")
        }
    };
    view! {
        <Show when=move || used.get()>
            <div class="field" class:wrong=move || problem.with(Option::is_some)>
                <label for=id.clone()>
                    {words::label(field)}<span class="label-unit">{unit_in_words}</span>
                </label>
                <p class="hint" id=format!("{id}-hint")>{words::hint(field)}</p>
                {children()}
                <p class="problem" id=format!("{id}-problem")>
                    {move || message(problem.get(), unusual.get(), assumed.get(), field, app.units.get())}
                </p>
            </div>
        </Show>
    }
}

fn message(
    problem: Option<crate::plan::Problem>,
    unusual: Option<(f64, f64)>,
    assumed: Option<f64>,
    field: Field,
    units: UnitSystem,
) -> Option<AnyView> {
    if let Some(problem) = problem {
        return Some(
            view! { <span class="bad">{words::problem_text(&problem, units)}</span> }.into_any(),
        );
    }
    if let Some(value) = assumed {
        return Some(
            view! { <span class="hint">{words::assumed_text(field, value, units)}</span> }
                .into_any(),
        );
    }
    let (low, high) = unusual?;
    Some(
        view! { <span class="care">{words::unusual_text(field, low, high, units)}</span> }
            .into_any(),
    )
}

/// A link or a file may hold more lines than a form is made for.
const MOST: usize = 60;

/// The lines of a vessel measured with a jug.
#[component]
pub fn MeasuredPairs() -> impl IntoView {
    let app = app();
    let lines = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .map_or(0, |plan| plan.container.measured.len())
        })
    });
    let used = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.container.shape.known())
                == Some(crate::plan::Shape::Measured)
        })
    });
    let add = move |_| {
        app.edit(|plan| {
            if plan.container.measured.len() < MOST {
                plan.container
                    .measured
                    .push(crate::plan::MeasuredPair::default());
            }
        });
        let index = u8::try_from(lines.get_untracked().saturating_sub(1)).unwrap_or(u8::MAX);
        browser::focus_soon(field_id(Field::MeasuredVolume(index)));
    };
    view! {
        <Show when=move || used.get()>
            <div class="measured" id=field_id(Field::Measured) tabindex="-1">
                <p class="hint">{words::hint(Field::Measured)}</p>
                <For
                    each=move || (0..lines.get().min(MOST)).filter_map(|index| u8::try_from(index).ok())
                    key=|index| *index
                    let(index)
                >
                    <div class="pair">
                        <PairField field=Field::MeasuredVolume(index)/>
                        <PairField field=Field::MeasuredDepth(index)/>
                    </div>
                </For>
                <p class="problem">
                    {move || app
                        .problem_of(Field::Measured)
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
                            plan.container.measured.pop();
                        })
                    >
                        {words::REMOVE_LINE}
                    </button>
                </div>
            </div>
        </Show>
    }
}

/// One figure of a measured line; shown even while the line is empty and so not in use.
#[component]
fn PairField(field: Field) -> impl IntoView {
    let app = app();
    let id = field_id(field);
    view! {
        <div class="field">
            <label for=id.clone()>{words::label(field)}</label>
            <QuantityBox field/>
            <p class="problem" id=format!("{id}-problem")>
                {move || message(app.problem_of(field), None, None, field, app.units.get())}
            </p>
        </div>
    }
}
