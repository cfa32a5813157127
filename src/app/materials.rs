//! Blends and salts of the grower's own, kept on this device for all plans.

use super::browser;
use super::state::{App, app};
use super::words;
use crate::catalog::blends::BlendChoice;
use crate::plan::{KeptBlend, Pick, SaltLine};
use leptos::prelude::*;

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
#[component]
pub fn KeptBlends() -> impl IntoView {
    let app = app();
    let row = move |(place, name): (usize, String)| {
        view! {
            <li>
                <button type="button" class="quiet" on:click=move |_| app.take_blend(place)>
                    {words::take_blend(&name)}
                </button>
                <button
                    type="button"
                    class="quiet"
                    aria-label=words::forget_blend(&name)
                    on:click=move |_| {
                        app.store.update(|store| {
                            if place < store.materials.blends.len() {
                                store.materials.blends.remove(place);
                            }
                        });
                        browser::focus_soon("fertilizer-blend");
                    }
                >
                    {words::FORGET}
                </button>
            </li>
        }
    };
    view! {
        <Show when=move || app.store.with(|store| !store.materials.blends.is_empty())>
            <div class="field wide">
                <p class="label">{words::KEPT_BLENDS}</p>
                <ul class="kept">
                    {move || app.blends().into_iter().enumerate().map(row).collect_view()}
                </ul>
            </div>
        </Show>
    }
}

/// Keeps the label that stands in the plan.
#[component]
pub fn KeepBlend() -> impl IntoView {
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
    view! {
        <div class="field">
            <label for="blend-name">{words::BLEND_NAME}</label>
            <input
                id="blend-name"
                type="text"
                autocomplete="off"
                maxlength="40"
                placeholder=named
                prop:value=move || name.get()
                on:input:target=move |event| name.set(event.target().value())
            />
        </div>
        <div class="field">
            <button
                type="button"
                class="quiet"
                disabled=move || app.has_problems()
                on:click=move |_| app.keep_blend(named())
            >
                {move || if kept() { words::KEEP_AGAIN } else { words::KEEP_BLEND }}
            </button>
        </div>
    }
}
