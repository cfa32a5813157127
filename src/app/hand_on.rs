//! Handing a plan on: its link, the link as a QR code, files; and plans that come from outside,
//! which are shown first and kept only when asked for.

use std::fmt::Write as _;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, action, el, live, several};
use qrcodegen::{QrCode, QrCodeEcc, QrSegment};

use super::browser;
use super::state::{App, Brought, Latest, app};
use super::words;
use crate::plan::{
    FileError, LONGEST_FILE, Plan, notebooks_from_file, plans_from_file, plans_to_file,
    trials_from_file,
};
use crate::solve;

/// The quiet zone that scanners need, in modules (ISO/IEC 18004).
const QUIET: i32 = 4;
/// A module on paper, in tenths of a millimetre: scanned from arm's length.
const MODULE: i32 = 5;
/// The largest code that the card has room for, in modules.
const LARGEST: i32 = 81;

/// The link's field, its code, and what to do with them.
pub fn hand_on() -> Node {
    let app = app();
    let said = RwSignal::new("");
    let name = move || {
        app.plan
            .with_untracked(|plan| plan.as_ref().map(|plan| plan.name.clone()))
    };
    let copy = move || {
        let address = app.address_now().unwrap_or_default();
        browser::copy(&address, move |copied| {
            said.set(if copied {
                words::copied()
            } else {
                words::not_copied()
            });
            if !copied {
                browser::focus("link");
            }
        });
    };
    let share = move || {
        browser::share(
            &name().unwrap_or_default(),
            &app.address_now().unwrap_or_default(),
        );
    };
    let linked = move || {
        several()
            .child(
                el("label")
                    .class("link")
                    .child(el("span").child(words::link()))
                    .child(
                        el("input")
                            .id("link")
                            .attr("type", "text")
                            .attr("readonly", true)
                            .value_live(move || app.address.get().unwrap_or_default())
                            .on_event("focus", browser::mark_all),
                    ),
            )
            .child(
                el("div")
                    .class("row")
                    .child(action("main", words::copy(), copy))
                    .child(browser::can_share().then(|| action("quiet", words::share(), share)))
                    .child(
                        el("span")
                            .attr("role", "status")
                            .child(live(move || said.get())),
                    ),
            )
            .child(live(move || {
                app.address.get().map(|address| code(&address))
            }))
    };
    let has_link = Memo::new(move |_| app.address.with(Option::is_some));
    el("section")
        .class("hand-on")
        .attr("aria-labelledby", "hand-on-heading")
        .child(el("h3").id("hand-on-heading").child(words::hand_on()))
        .child(el("p").child(words::hand_on_more()))
        .child(live(move || {
            if has_link.get() {
                linked()
            } else if app.rested_with(Latest::is_some) {
                el("p").child(words::no_link())
            } else {
                Node::default()
            }
        }))
}

/// An address as a QR code of error level M; the link's letters take 5.5 bits each in a segment of
/// their own.
pub fn code(address: &str) -> Node {
    let at = address.find('#').map_or(address.len(), |at| at + 1);
    let (page, link) = address.split_at(at);
    let segments = [
        QrSegment::make_bytes(page.as_bytes()),
        QrSegment::make_alphanumeric(link),
    ];
    let Some(code) = QrCode::encode_segments(&segments, QrCodeEcc::Medium)
        .ok()
        .filter(|code| code.size() <= LARGEST)
    else {
        return el("p").child(words::no_code());
    };
    let size = code.size();
    let mut dark = String::new();
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let from = x;
            while x < size && code.get_module(x, y) {
                x += 1;
            }
            if x > from {
                // Writing to a text cannot fail.
                let _ = write!(dark, "M{from} {y}h{}v1H{from}z", x - from);
            }
            x += 1;
        }
    }
    let wide = size + 2 * QUIET;
    let paper = f64::from(wide * MODULE) / 10.0;
    el("svg")
        .class("code")
        .attr("role", "img")
        .attr("aria-label", words::code())
        .attr("viewBox", format!("-{QUIET} -{QUIET} {wide} {wide}"))
        .attr("width", format!("{paper}mm"))
        .attr("height", format!("{paper}mm"))
        .attr("shape-rendering", "crispEdges")
        .child(
            el("path")
                .class("code-paper")
                .attr("d", format!("M-{QUIET} -{QUIET}h{wide}v{wide}h-{wide}z")),
        )
        .child(el("path").class("code-ink").attr("d", dark))
}

/// Saving to a file and opening one.
pub fn files() -> Node {
    let app = app();
    el("div")
        .class("row files")
        .child(live(move || {
            app.plan_is_open().then(|| {
                action("quiet", words::save_plan(), move || {
                    let plan: Vec<Plan> = app.plan.get_untracked().into_iter().collect();
                    browser::save_file(words::plan_file(), &plans_to_file(&plan, &[], &[]));
                })
            })
        }))
        .child(live(move || {
            (!app.shelf().is_empty())
                .then(|| action("quiet", words::save_all(), move || save_all(app)))
        }))
        .child(
            el("label")
                .class("file")
                .child(el("span").child(words::open_file()))
                .child(
                    el("input")
                        .attr("type", "file")
                        .attr("accept", ".json,application/json")
                        .on_event("change", move |event| {
                            if let Some(file) = browser::chosen_file(event) {
                                take_file(app, file);
                            }
                        }),
                ),
        )
}

fn save_all(app: App) {
    browser::save_file(
        words::plans_file(),
        &plans_to_file(&app.all_plans(), &app.all_trials(), &app.all_notebooks()),
    );
}

/// Reads a file that was chosen or dropped, and offers what is in it.
pub fn take_file(app: App, file: browser::File) {
    browser::read_file(file, LONGEST_FILE, move |text| {
        let found = text.ok_or(FileError::TooLong).and_then(|text| {
            let trials = trials_from_file(&text).unwrap_or_default();
            let notebooks = notebooks_from_file(&text).unwrap_or_default();
            let no_more = trials.is_empty() && notebooks.is_empty();
            match plans_from_file(&text) {
                Ok(plans) if plans.is_empty() && no_more => Err(FileError::NotPlans { line: 0 }),
                Err(error) if no_more => Err(error),
                plans => Ok((plans.unwrap_or_default(), trials, notebooks)),
            }
        });
        app.brought.set(Some(Brought::File(found)));
        browser::focus_soon("brought");
    });
}

/// What came from outside, before anything is kept.
pub fn offer() -> Node {
    let app = app();
    live(move || {
        let brought = app.brought.get()?;
        let heading = match brought {
            Brought::Link(_) => words::from_link(),
            Brought::File(_) => words::from_file(),
        };
        let (lines, keep) = match brought {
            Brought::Link(link) => match Plan::from_link(&link) {
                Err(error) => (vec![words::link_error(error)], None),
                Ok(plan) => {
                    let lines = words::preview(&plan, &solve(&plan), app.units.get());
                    let keep = action("main", words::keep_new(), move || {
                        app.put_away();
                        app.add(plan.clone());
                    });
                    (lines, Some(keep))
                }
            },
            Brought::File(Err(error)) => (vec![words::file_error(error)], None),
            Brought::File(Ok((plans, trials, notebooks))) => {
                let lines = words::in_file(&plans, &trials, &notebooks);
                let all = (plans.clone(), trials.clone(), notebooks.clone());
                let add = action("main", words::add_them(), move || {
                    app.put_away();
                    app.add_all(plans.clone());
                    app.add_trials(trials.clone());
                    app.add_notebooks(notebooks.clone());
                });
                let replace = (!app.shelf().is_empty()).then(|| {
                    several()
                        .child(action("quiet", words::replace_all(), move || {
                            save_all(app);
                            app.put_away();
                            app.replace_all(all.0.clone());
                            app.replace_trials(all.1.clone());
                            app.replace_notebooks(all.2.clone());
                        }))
                        .child(el("p").child(words::replace_more()))
                });
                (lines, Some(several().child(add).child(replace)))
            }
        };
        let refuse = if keep.is_some() {
            words::do_not_keep()
        } else {
            words::dismiss()
        };
        Some(
            el("section")
                .class("offer")
                .attr("aria-labelledby", "brought")
                .child(el("h2").id("brought").attr("tabindex", "-1").child(heading))
                .child(
                    el("ul").child(
                        lines
                            .into_iter()
                            .map(|line| el("li").child(line))
                            .collect::<Node>(),
                    ),
                )
                .child(el("div").class("row").child(keep).child(action(
                    "quiet",
                    refuse,
                    move || app.put_away(),
                ))),
        )
    })
}
