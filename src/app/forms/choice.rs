//! Fields that are chosen from a list.

use leptos::prelude::*;

use super::number::{FieldFrame, described_by};
use crate::app::state::{app, field_id};
use crate::app::words::{self, Worded};
use crate::catalog::Keyed;
use crate::plan::{Field, Pick, Plan};

/// A choice from a list. `pick` finds it in the plan, `choose` makes it.
#[component]
pub fn ChoiceField<T>(
    field: Field,
    pick: fn(&Plan) -> &Pick<T>,
    choose: fn(&mut Plan, T),
) -> impl IntoView
where
    T: Keyed + Worded + Send + Sync,
{
    let app = app();
    let chosen = Memo::new(move |_| {
        app.plan
            .with(|plan| plan.as_ref().map(|plan| pick(plan).key().to_owned()))
            .unwrap_or_default()
    });
    // A word that is not on the list stays visible until another is chosen.
    let stranger = move || {
        let key = chosen.get();
        T::from_key(&key).is_none().then(|| {
            view! { <option value=key.clone() selected>{words::unknown_choice(&key)}</option> }
        })
    };
    view! {
        <FieldFrame field>
            <select
                id=field_id(field)
                name=field_id(field)
                on:change:target=move |event| {
                    if let Some(item) = T::from_key(&event.target().value()) {
                        app.edit(|plan| choose(plan, item));
                    }
                }
                prop:value=move || chosen.get()
                aria-describedby=described_by(field)
                aria-invalid=move || app.problem_of(field).map(|_| "true")
            >
                {stranger}
                {T::ALL
                    .iter()
                    .map(|&item| {
                        view! {
                            <option value=item.key() selected=move || chosen.get() == item.key()>
                                {item.word()}
                            </option>
                        }
                    })
                    .collect_view()}
            </select>
        </FieldFrame>
    }
}

/// A list whose choice fills in other fields and is then forgotten.
#[component]
pub fn PresetField<T>(
    /// Element id.
    id: &'static str,
    /// Label above it.
    label: &'static str,
    /// Its first, empty line.
    first: &'static str,
    /// What a choice does.
    choose: fn(&mut Plan, T),
) -> impl IntoView
where
    T: Keyed + Worded + Send + Sync,
{
    let app = app();
    view! {
        <div class="field">
            <label for=id>{label}</label>
            <select
                id=id
                on:change:target=move |event| {
                    let list = event.target();
                    if let Some(item) = T::from_key(&list.value()) {
                        app.edit(|plan| choose(plan, item));
                    }
                    // The list fills in; it does not say what stands there now.
                    list.set_value("");
                }
            >
                <option value="" selected>{first}</option>
                {T::ALL
                    .iter()
                    .map(|&item| view! { <option value=item.key()>{item.word()}</option> })
                    .collect_view()}
            </select>
        </div>
    }
}
