//! Fields that are chosen from a list.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live};

use super::number::{described_by, field_frame};
use crate::app::state::{app, field_id};
use crate::app::words::{self, Called};
use crate::catalog::Keyed;
use crate::plan::{Field, Pick, Plan, UnitSystem};

/// The keys of a list with their names.
pub type Options = Vec<(&'static str, String)>;

/// The list of a kind of choice.
pub fn options<T: Keyed + Called>(units: UnitSystem) -> Options {
    T::ALL
        .iter()
        .map(|&item| (item.key(), item.called(units)))
        .collect()
}

/// The options of a list, named in the page's units.
fn named(options: fn(UnitSystem) -> Options, chosen: Memo<String>) -> Node {
    let app = app();
    let [metric, customary] = [UnitSystem::Metric, UnitSystem::UsCustomary].map(options);
    metric
        .into_iter()
        .zip(customary)
        .map(|((key, metric), (_, customary))| {
            let name: Node = if metric == customary {
                metric.into()
            } else {
                live(move || match app.units.get() {
                    UnitSystem::Metric => metric.clone(),
                    UnitSystem::UsCustomary => customary.clone(),
                })
            };
            el("option")
                .attr("value", key)
                .attr_live("selected", move || chosen.get() == key)
                .child(name)
        })
        .collect()
}

/// A choice from a list. `pick` finds it in the plan, `choose` makes it. Only this shell is made
/// for each kind of list; the box itself is made once.
pub fn choice_field<T>(field: Field, pick: fn(&Plan) -> &Pick<T>, choose: fn(&mut Plan, T)) -> Node
where
    T: Keyed + Called + Send + Sync,
{
    choice_box(
        field,
        options::<T>,
        Arc::new(move |plan| pick(plan).key().to_owned()),
        Arc::new(move |plan, key| {
            if let Some(item) = T::from_key(key) {
                choose(plan, item);
            }
        }),
    )
}

type PickKey = Arc<dyn Fn(&Plan) -> String + Send + Sync>;
type ChooseKey = Arc<dyn Fn(&mut Plan, &str) + Send + Sync>;

fn choice_box(
    field: Field,
    options: fn(UnitSystem) -> Options,
    pick: PickKey,
    choose: ChooseKey,
) -> Node {
    let app = app();
    let chosen = Memo::new(move |_| {
        app.plan
            .with(|plan| plan.as_ref().map(|plan| pick(plan)))
            .unwrap_or_default()
    });
    let keys: Vec<&'static str> = options(UnitSystem::Metric)
        .into_iter()
        .map(|(key, _)| key)
        .collect();
    // A word that is not on the list stays visible until another is chosen.
    let stranger = Memo::new(move |_| {
        let key = chosen.get();
        (!keys.contains(&key.as_str())).then_some(key)
    });
    let choose = StoredValue::new(choose);
    field_frame(field, move || {
        el("select")
            .id(field_id(field))
            .attr("name", field_id(field))
            .on_value("change", move |value| {
                let key = value;
                app.edit(|plan| choose.get_value()(plan, &key));
            })
            .value_live(move || chosen.get())
            .attr("aria-describedby", described_by(field))
            .attr_live("aria-invalid", move || {
                app.problem_of(field).map(|_| "true")
            })
            .child(live(move || {
                stranger.get().map(|key| {
                    el("option")
                        .attr("value", key.clone())
                        .attr("selected", true)
                        .child(words::unknown_choice(&key))
                })
            }))
            .child(named(options, chosen))
    })
}

/// A list whose choice fills in other fields; it shows the one that stands in them, as long as none of
/// them is changed.
pub fn preset_field<T>(
    id: &'static str,
    label: &'static str,
    first: &'static str,
    choose: fn(&mut Plan, T),
) -> Node
where
    T: Keyed + Called + Send + Sync,
{
    let app = app();
    let filled_in = move || {
        app.plan.with_untracked(|plan| {
            let plan = plan.as_ref()?;
            let same = |item: &&T| {
                let mut filled = plan.clone();
                choose(&mut filled, **item);
                filled == *plan
            };
            T::ALL.iter().find(same).map(|item| item.key().to_owned())
        })
    };
    let chosen = Memo::new(move |_| {
        // A frame after what is typed.
        app.written.track();
        app.tabled_with(|_| ());
        filled_in().unwrap_or_default()
    });
    el("div")
        .class("field")
        .child(el("label").attr("for", id).child(label))
        .child(
            el("select")
                .id(id)
                .value_live(move || chosen.get())
                .on_value("change", move |key| {
                    if let Some(item) = T::from_key(&key) {
                        app.edit(|plan| choose(plan, item));
                    }
                })
                .child(
                    el("option")
                        .attr("value", "")
                        .attr_live("selected", move || chosen.get().is_empty())
                        .child(first),
                )
                .child(named(options::<T>, chosen)),
        )
}
