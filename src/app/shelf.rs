//! The head of the page: its name, the open plan's name, the kept plans, the units.

use leptos::prelude::*;

use super::browser;
use super::state::app;
use super::words;
use crate::catalog::Keyed;
use crate::plan::{FileError, Store, UnitSystem};

/// The head.
#[component]
pub fn Header() -> impl IntoView {
    let app = app();
    let menu = NodeRef::<leptos::html::Details>::new();
    let close = Callback::new(move |()| {
        if let Some(menu) = menu.get_untracked() {
            menu.set_open(false);
        }
    });
    view! {
        <header class="head">
            <div class="brand">
                <h1>{words::NAME}</h1>
                <p>{words::MOTTO}</p>
            </div>
            <div class="tools">
                <label class="units">
                    <span>{words::UNITS}</span>
                    <select
                        id="units"
                        on:change:target=move |event| {
                            if let Some(units) = UnitSystem::from_key(&event.target().value()) {
                                app.choose_units(units);
                            }
                        }
                    >
                        {UnitSystem::ALL
                            .iter()
                            .map(|&units| view! {
                                <option value=units.key() selected=move || app.units.get() == units>
                                    {words::unit_system(units)}
                                </option>
                            })
                            .collect_view()}
                    </select>
                </label>
                <Show when=move || app.plan_is_open()>
                    <details
                        class="menu"
                        node_ref=menu
                        on:keydown=move |event| {
                            if event.key() == "Escape" {
                                close.run(());
                                browser::focus("plans");
                            }
                        }
                    >
                        <summary id="plans">{words::PLANS}</summary>
                        <div class="sheet">
                            <PlanList chosen=close/>
                            <div class="row">
                                <button type="button" class="quiet" on:click=move |_| app.open_plan(None)>
                                    {words::NEW_PLAN}
                                </button>
                                <button
                                    type="button"
                                    class="quiet"
                                    on:click=move |_| {
                                        let name = app
                                            .plan
                                            .with_untracked(|plan| {
                                                plan.as_ref().map(|plan| words::copy_of(&plan.name))
                                            });
                                        close.run(());
                                        app.duplicate(name.unwrap_or_default());
                                    }
                                >
                                    {words::DUPLICATE}
                                </button>
                            </div>
                            <super::hand_on::Files/>
                        </div>
                    </details>
                </Show>
            </div>
            <Show when=move || app.plan_is_open()>
                <label class="plan-name">
                    <span>{words::PLAN_NAME}</span>
                    <input
                        id="plan-name"
                        type="text"
                        autocomplete="off"
                        maxlength="80"
                        prop:value=move || {
                            app.plan.with(|plan| {
                                plan.as_ref().map(|plan| plan.name.clone()).unwrap_or_default()
                            })
                        }
                        on:input:target=move |event| {
                            let name = event.target().value();
                            app.edit(|plan| plan.name = name);
                        }
                    />
                </label>
            </Show>
        </header>
    }
}

/// The kept plans: open or delete one.
#[component]
pub fn PlanList(
    /// Run when a plan is chosen: nothing may cover what is shown then.
    #[prop(optional)]
    chosen: Option<Callback<()>>,
) -> impl IntoView {
    let app = app();
    let done = move || {
        if let Some(chosen) = chosen {
            chosen.run(());
        }
    };
    view! {
        <ul class="plans">
            <For each=move || app.shelf() key=|(id, name)| (*id, name.clone()) let((id, name))>
                <li>
                    <button
                        type="button"
                        class="plan"
                        aria-current=move || (app.open_id() == Some(id)).then_some("true")
                        on:click=move |_| {
                            done();
                            app.open_plan(Some(id));
                        }
                    >
                        {words::or_unnamed(&name)}
                    </button>
                    <button
                        type="button"
                        class="quiet delete"
                        aria-label=words::delete_this(&name)
                        on:click=move |_| {
                            done();
                            app.delete(id);
                        }
                    >
                        {words::DELETE}
                    </button>
                </li>
            </For>
        </ul>
    }
}

/// Quiet notices: a deletion to take back, storage that does not work, a newer release.
#[component]
pub fn Notices() -> impl IntoView {
    let app = app();
    let newer = RwSignal::new(false);
    browser::when_update_ready(move || newer.set(true));
    view! {
        <div class="notices" role="status">
            {move || app.deleted.get().map(|deleted| view! {
                <p class="notice">
                    <span>{words::deleted(deleted.name())}</span>
                    <button type="button" class="quiet" id="undo" on:click=move |_| app.undelete()>
                        {words::UNDO}
                    </button>
                    <button type="button" class="quiet" on:click=move |_| app.deleted.set(None)>
                        {words::DISMISS}
                    </button>
                </p>
            })}
            // Loading anew would lose plans that the browser does not keep.
            {move || (newer.get() && app.keeps.get()).then(|| view! {
                <p class="notice">
                    <span>{words::UPDATE_READY}</span>
                    <button type="button" class="quiet" id="update" on:click=move |_| browser::take_update()>
                        {words::TAKE_UPDATE}
                    </button>
                    <button type="button" class="quiet" on:click=move |_| newer.set(false)>
                        {words::DISMISS}
                    </button>
                </p>
            })}
            {move || (!app.keeps.get()).then(|| view! {
                <p class="notice care"><span>{words::NOT_KEPT}</span></p>
            })}
            {move || app.elsewhere.get().then(|| view! {
                <p class="notice care">
                    <span>{words::ELSEWHERE}</span>
                    <button type="button" class="quiet" on:click=move |_| app.take_theirs()>
                        {words::TAKE_THEIRS}
                    </button>
                    <button type="button" class="quiet" on:click=move |_| app.keep_mine()>
                        {words::KEEP_MINE}
                    </button>
                </p>
            })}
            {move || app.set_aside.get().map(set_aside)}
        </div>
    }
}

/// A text that could not be read: to be saved; only then can it be removed. Closing the notice
/// leaves the text where it is, to be offered again the next time.
fn set_aside(text: String) -> AnyView {
    let app = app();
    let saved = RwSignal::new(false);
    let newer = Store::read(&text) == Err(FileError::NewerVersion);
    let address = browser::file_address("application/json", &text);
    view! {
        <p class="notice care">
            <span>{if newer { words::SET_ASIDE_NEWER } else { words::SET_ASIDE }}</span>
            <a download=words::SET_ASIDE_FILE href=address on:click=move |_| saved.set(true)>
                {words::SAVE_SET_ASIDE}
            </a>
            <Show when=move || saved.get()>
                <button
                    type="button"
                    class="quiet"
                    on:click={
                        let text = text.clone();
                        move |_| {
                            browser::forget_set_aside(&text);
                            app.set_aside.set(browser::next_set_aside());
                        }
                    }
                >
                    {words::FORGET_SET_ASIDE}
                </button>
            </Show>
            <button type="button" class="quiet" on:click=move |_| app.set_aside.set(None)>
                {words::DISMISS}
            </button>
        </p>
    }
    .into_any()
}
