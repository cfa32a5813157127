//! Fields that are chosen from a list.

use std::sync::Arc;

use leptos::prelude::*;

use super::number::{FieldFrame, described_by};
use crate::app::state::{app, field_id};
use crate::app::words::{self, Worded};
use crate::catalog::Keyed;
use crate::plan::{Field, Pick, Plan};

/// The keys of a list with their names.
pub type Options = Vec<(&'static str, String)>;

/// The list of a kind of choice.
pub fn options<T: Keyed + Worded>() -> Options {
    T::ALL
        .iter()
        .map(|&item| (item.key(), item.word()))
        .collect()
}

/// A choice from a list. `pick` finds it in the plan, `choose` makes it. Only this shell is made
/// for each kind of list; the box itself is made once.
#[component]
pub fn ChoiceField<T>(
    field: Field,
    pick: fn(&Plan) -> &Pick<T>,
    choose: fn(&mut Plan, T),
) -> impl IntoView
where
    T: Keyed + Worded + Send + Sync,
{
    ChoiceBox(ChoiceBoxProps {
        field,
        options: options::<T>(),
        pick: Arc::new(move |plan| pick(plan).key().to_owned()),
        choose: Arc::new(move |plan, key| {
            if let Some(item) = T::from_key(key) {
                choose(plan, item);
            }
        }),
    })
}

type PickKey = Arc<dyn Fn(&Plan) -> String + Send + Sync>;
type ChooseKey = Arc<dyn Fn(&mut Plan, &str) + Send + Sync>;

#[component]
fn ChoiceBox(field: Field, options: Options, pick: PickKey, choose: ChooseKey) -> impl IntoView {
    let app = app();
    let chosen = Memo::new(move |_| {
        app.plan
            .with(|plan| plan.as_ref().map(|plan| pick(plan)))
            .unwrap_or_default()
    });
    let keys: Vec<&'static str> = options.iter().map(|(key, _)| *key).collect();
    // A word that is not on the list stays visible until another is chosen.
    let stranger = Memo::new(move |_| {
        let key = chosen.get();
        (!keys.contains(&key.as_str())).then_some(key)
    });
    let options = StoredValue::new(options);
    let choose = StoredValue::new(choose);
    view! {
        <FieldFrame field>
            <select
                id=field_id(field)
                name=field_id(field)
                on:change:target=move |event| {
                    let key = event.target().value();
                    app.edit(|plan| choose.get_value()(plan, &key));
                }
                prop:value=move || chosen.get()
                aria-describedby=described_by(field)
                aria-invalid=move || app.problem_of(field).map(|_| "true")
            >
                {move || stranger.get().map(|key| view! {
                    <option value=key.clone() selected>{words::unknown_choice(&key)}</option>
                })}
                {options
                    .get_value()
                    .into_iter()
                    .map(|(key, word)| view! {
                        <option value=key selected=move || chosen.get() == key>{word}</option>
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
                {options::<T>()
                    .into_iter()
                    .map(|(key, word)| view! { <option value=key>{word}</option> })
                    .collect_view()}
            </select>
        </div>
    }
}
