//! The head of the page: its name, the open plan's name, the kept plans, the units.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, given, live};

use super::browser;
use super::state::app;
use super::words;
use crate::catalog::Keyed;
use crate::plan::{FileError, Store, UnitSystem};

/// The head.
#[expect(
    clippy::too_many_lines,
    reason = "one view, top to bottom, as it is seen"
)]
pub fn header() -> Node {
    let app = app();
    let close = Callback::new(|()| browser::close_fold("plan-menu"));
    el("header")
        .class("head")
        .child(
            el("div")
                .class("brand")
                .child(el("h1").child(words::name()))
                .child(el("p").child(words::motto())),
        )
        .child(
            el("div")
                .class("tools")
                .child(
                    el("label")
                        .class("units")
                        .child(el("span").child(words::units()))
                        .child(
                            el("select")
                                .id("units")
                                .on_value("change", move |value| {
                                    if let Some(units) = UnitSystem::from_key(&value) {
                                        app.choose_units(units);
                                    }
                                })
                                .child(
                                    UnitSystem::ALL
                                        .iter()
                                        .map(|&units| {
                                            el("option")
                                                .attr("value", units.key())
                                                .attr_live("selected", move || {
                                                    app.units.get() == units
                                                })
                                                .child(words::unit_system(units))
                                        })
                                        .collect::<Node>(),
                                ),
                        ),
                )
                .child(languages())
                .child(given(
                    move || app.plan_is_open(),
                    move || {
                        el("details")
                            .class("menu")
                            .id("plan-menu")
                            .on_key(move |event| {
                                if event.key() == "Escape" {
                                    close.run(());
                                    browser::focus("plans");
                                }
                            })
                            .child(el("summary").id("plans").child(words::plans()))
                            .child(
                                el("div")
                                    .class("sheet")
                                    .child(plan_list(Some(close)))
                                    .child(
                                        el("div")
                                            .class("row")
                                            .child(
                                                button("quiet")
                                                    .on("click", move || app.open_plan(None))
                                                    .child(words::new_plan()),
                                            )
                                            .child(
                                                button("quiet")
                                                    .on("click", move || {
                                                        let name =
                                                            app.plan.with_untracked(|plan| {
                                                                plan.as_ref().map(|plan| {
                                                                    words::copy_of(&plan.name)
                                                                })
                                                            });
                                                        close.run(());
                                                        app.duplicate(name.unwrap_or_default());
                                                    })
                                                    .child(words::duplicate()),
                                            ),
                                    )
                                    .child(super::hand_on::files()),
                            )
                    },
                )),
        )
        .child(given(
            move || app.plan_is_open(),
            move || {
                el("label")
                    .class("plan-name")
                    .child(el("span").child(words::plan_name()))
                    .child(
                        el("input")
                            .id("plan-name")
                            .attr("type", "text")
                            .attr("autocomplete", "off")
                            .attr("maxlength", "80")
                            .value_live(move || {
                                app.plan.with(|plan| {
                                    plan.as_ref()
                                        .map(|plan| plan.name.clone())
                                        .unwrap_or_default()
                                })
                            })
                            .on_value("input", move |value| {
                                let name = value;
                                app.edit(|plan| plan.name = name);
                            }),
                    )
            },
        ))
}

/// The choice of the language, each by its own name.
fn languages() -> Node {
    let app = app();
    let spoken = app.language.get_untracked();
    let options = browser::languages().into_iter().map(|(key, name)| {
        el("option")
            .attr("value", key.clone())
            .attr("lang", key.clone())
            .attr("selected", key == spoken)
            .child(name)
    });
    el("label")
        .class("units")
        .child(el("span").child(words::language_label()))
        .child(
            el("select")
                .id("language")
                .on_value("change", move |key| app.choose_language(&key))
                .child(options.collect::<Node>()),
        )
}

/// The kept plans: open or delete one.
pub fn plan_list(chosen: Option<Callback<()>>) -> Node {
    let app = app();
    let done = move || {
        if let Some(chosen) = chosen {
            chosen.run(());
        }
    };
    el("ul").class("plans").child(live(move || {
        (app.shelf())
            .into_iter()
            .map(|(id, name)| {
                el("li")
                    .child(
                        button("plan")
                            .attr_live("aria-current", move || {
                                (app.open_id() == Some(id)).then_some("true")
                            })
                            .on("click", move || {
                                done();
                                app.open_plan(Some(id));
                            })
                            .child(words::or_unnamed(&name)),
                    )
                    .child(
                        button("quiet delete")
                            .attr("aria-label", words::delete_this(&name))
                            .on("click", move || {
                                done();
                                app.delete(id);
                            })
                            .child(words::delete()),
                    )
            })
            .collect::<Node>()
    }))
}

/// Quiet notices: a deletion to take back, storage that does not work, a newer release.
pub fn notices() -> Node {
    let app = app();
    let newer = RwSignal::new(false);
    browser::when_update_ready(move || newer.set(true));
    el("div")
        .class("notices")
        .attr("role", "status")
        .child(live(move || {
            app.deleted.get().map(|deleted| {
                el("p")
                    .class("notice")
                    .child(el("span").child(words::deleted(deleted.name())))
                    .child(
                        button("quiet")
                            .id("undo")
                            .on("click", move || app.undelete())
                            .child(words::undo()),
                    )
                    .child(
                        button("quiet")
                            .on("click", move || app.deleted.set(None))
                            .child(words::dismiss()),
                    )
            })
        }))
        // Loading anew would lose plans that the browser does not keep.
        .child(live(move || {
            (newer.get() && app.keeps.get()).then(|| {
                el("p")
                    .class("notice")
                    .child(el("span").child(words::update_ready()))
                    .child(
                        button("quiet")
                            .id("update")
                            .on("click", browser::take_update)
                            .child(words::take_update()),
                    )
                    .child(
                        button("quiet")
                            .on("click", move || newer.set(false))
                            .child(words::dismiss()),
                    )
            })
        }))
        .child(live(move || {
            (!app.keeps.get()).then(|| {
                el("p")
                    .class("notice care")
                    .child(el("span").child(words::not_kept()))
            })
        }))
        .child(live(move || {
            app.elsewhere.get().then(|| {
                el("p")
                    .class("notice care")
                    .child(el("span").child(words::elsewhere()))
                    .child(
                        button("quiet")
                            .on("click", move || app.take_theirs())
                            .child(words::take_theirs()),
                    )
                    .child(
                        button("quiet")
                            .on("click", move || app.keep_mine())
                            .child(words::keep_mine()),
                    )
            })
        }))
        .child(live(move || app.set_aside.get().map(set_aside)))
}

/// A text that could not be read: to be saved; only then can it be removed. Closing the notice
/// leaves the text where it is, to be offered again the next time.
fn set_aside(text: String) -> Node {
    let app = app();
    let saved = RwSignal::new(false);
    let newer = Store::read(&text) == Err(FileError::NewerVersion);
    let address = browser::file_address("application/json", &text);
    el("p")
        .class("notice care")
        .child(el("span").child(if newer {
            words::set_aside_newer()
        } else {
            words::set_aside()
        }))
        .child(
            el("a")
                .attr("download", words::set_aside_file())
                .attr("href", address)
                .on("click", move || saved.set(true))
                .child(words::save_set_aside()),
        )
        .child(given(
            move || saved.get(),
            move || {
                button("quiet")
                    .on("click", {
                        let text = text.clone();
                        move || {
                            browser::forget_set_aside(&text);
                            app.set_aside.set(browser::next_set_aside());
                        }
                    })
                    .child(words::forget_set_aside())
            },
        ))
        .child(
            button("quiet")
                .on("click", move || app.set_aside.set(None))
                .child(words::dismiss()),
        )
}
