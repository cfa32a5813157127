//! Blends and salts of the grower's own, kept on this device for all plans.

use super::browser;
use super::state::{App, app};
use super::words;
use crate::catalog::blends::BlendChoice;
use crate::plan::{KeptBlend, Pick, SaltLine};
use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, given, live, several};

impl App {
    /// Names of the kept blends.
    fn blends(self) -> Vec<String> {
        self.store.with(|store| {
            let blends = store.materials.blends.iter();
            blends.map(|blend| blend.name.clone()).collect()
        })
    }

    /// Keeps the label of the open plan under a name; one of the same name is replaced.
    fn keep_blend(self, name: String) {
        let Some(plan) = self.plan.get_untracked() else {
            return;
        };
        let kept = KeptBlend {
            name,
            label: plan.fertilizer.label,
            price_per_kg: plan.fertilizer.blend_price_per_kg,
        };
        self.store.update(|store| {
            let blends = &mut store.materials.blends;
            match blends.iter_mut().find(|blend| blend.name == kept.name) {
                Some(blend) => *blend = kept,
                None => blends.push(kept),
            }
        });
    }

    /// Writes a kept blend into the open plan.
    fn take_blend(self, place: usize) {
        let kept = self
            .store
            .with_untracked(|store| store.materials.blends.get(place).cloned());
        if let Some(kept) = kept {
            self.edit(|plan| {
                plan.fertilizer.blend = Pick::Known(BlendChoice::Own);
                plan.fertilizer.label = kept.label;
                plan.fertilizer.blend_price_per_kg = kept.price_per_kg;
            });
        }
    }

    /// Formulae of the kept salts.
    pub fn kept_salts(self) -> Vec<String> {
        self.store.with(|store| {
            let salts = store.materials.salts.iter();
            salts.map(|line| line.salt.key().to_owned()).collect()
        })
    }

    /// The kept salt of a formula.
    pub fn kept_salt(self, formula: &str) -> Option<SaltLine> {
        self.store.with(|store| {
            let mut salts = store.materials.salts.iter();
            salts.find(|line| line.salt.key() == formula).cloned()
        })
    }

    /// Keeps a salt, or forgets it.
    pub fn keep_salt(self, line: SaltLine, keep: bool) {
        self.store.update(|store| {
            let salts = &mut store.materials.salts;
            salts.retain(|other| other.salt != line.salt);
            if keep {
                salts.push(line);
            }
        });
    }
}

/// The kept blends: take one, forget one.
pub fn kept_blends() -> Node {
    let app = app();
    let row = move |(place, name): (usize, String)| {
        el("li")
            .child(
                button("quiet")
                    .on("click", move || app.take_blend(place))
                    .child(words::take_blend(&name)),
            )
            .child(
                button("quiet")
                    .attr("aria-label", words::forget_blend(&name))
                    .on("click", move || {
                        app.store.update(|store| {
                            if place < store.materials.blends.len() {
                                store.materials.blends.remove(place);
                            }
                        });
                        browser::focus_soon("fertilizer-blend");
                    })
                    .child(words::forget()),
            )
    };
    given(
        move || app.store.with(|store| !store.materials.blends.is_empty()),
        move || {
            el("div")
                .class("field wide")
                .child(el("p").class("label").child(words::kept_blends()))
                .child(el("ul").class("kept").child(live(move || {
                    app.blends()
                        .into_iter()
                        .enumerate()
                        .map(row)
                        .collect::<Node>()
                })))
        },
    )
}

/// Keeps the label that stands in the plan.
pub fn keep_blend() -> Node {
    let app = app();
    let name = RwSignal::new(String::new());
    // The grade, unless the grower names it.
    let named = move || {
        let typed = name.get();
        if typed.trim().is_empty() {
            app.plan.with(|plan| {
                plan.as_ref()
                    .map(|plan| words::grade(&plan.fertilizer.label))
                    .unwrap_or_default()
            })
        } else {
            typed.trim().to_owned()
        }
    };
    let kept = move || app.blends().contains(&named());
    several()
        .child(
            el("div")
                .class("field wide")
                .child(
                    el("label")
                        .attr("for", "blend-name")
                        .child(words::blend_name()),
                )
                .child(
                    el("input")
                        .id("blend-name")
                        .attr("type", "text")
                        .attr("autocomplete", "off")
                        .attr("maxlength", "40")
                        .attr_live("placeholder", named)
                        .value_live(move || name.get())
                        .on_value("input", move |value| name.set(value)),
                ),
        )
        .child(
            el("div").class("field wide").child(
                button("quiet")
                    .attr_live("disabled", move || app.has_problems())
                    .on("click", move || app.keep_blend(named()))
                    .child(live(move || {
                        if kept() {
                            words::keep_again()
                        } else {
                            words::keep_blend()
                        }
                    })),
            ),
        )
}
