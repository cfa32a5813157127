//! Handing a plan on: its link, the link as a QR code, files; and plans that come from outside,
//! which are shown first and kept only when asked for.

use std::fmt::Write as _;

use leptos::prelude::*;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment};

use super::browser;
use super::state::{App, Brought, app};
use super::words;
use crate::plan::{
    FileError, LONGEST_FILE, Plan, plans_from_file, plans_to_file, trials_from_file,
};
use crate::solve;

/// The quiet zone that scanners need, in modules (ISO/IEC 18004).
const QUIET: i32 = 4;
/// A module on paper, in tenths of a millimetre: scanned from arm's length.
const MODULE: i32 = 5;
/// The largest code that the card has room for, in modules.
const LARGEST: i32 = 81;

/// A button that does something.
fn button(class: &'static str, text: &'static str, act: impl Fn() + 'static) -> AnyView {
    view! { <button type="button" class=class on:click=move |_| act()>{text}</button> }.into_any()
}

/// The link's field, its code, and what to do with them.
#[component]
pub fn HandOn() -> impl IntoView {
    let app = app();
    let said = RwSignal::new("");
    let name = move || {
        app.plan
            .with_untracked(|plan| plan.as_ref().map(|plan| plan.name.clone()))
    };
    let copy = move || {
        let address = app.address.get_untracked().unwrap_or_default();
        browser::copy(&address, move |copied| {
            said.set(if copied {
                words::COPIED
            } else {
                words::NOT_COPIED
            });
            if !copied {
                browser::focus("link");
            }
        });
    };
    let share = move || {
        browser::share(
            &name().unwrap_or_default(),
            &app.address.get_untracked().unwrap_or_default(),
        );
    };
    let linked = move || {
        view! {
            <label class="link">
                <span>{words::LINK}</span>
                <input
                    id="link"
                    type="text"
                    readonly
                    prop:value=move || app.address.get().unwrap_or_default()
                    on:focus:target=|event| event.target().select()
                />
            </label>
            <div class="row">
                {button("main", words::COPY, copy)}
                {browser::can_share().then(|| button("quiet", words::SHARE, share))}
                <span role="status">{said}</span>
            </div>
            {move || app.address.get().map(|address| code(&address))}
        }
        .into_any()
    };
    let has_link = Memo::new(move |_| app.address.with(Option::is_some));
    view! {
        <section class="hand-on" aria-labelledby="hand-on-heading">
            <h3 id="hand-on-heading">{words::HAND_ON}</h3>
            <p>{words::HAND_ON_MORE}</p>
            {move || if has_link.get() {
                linked()
            } else {
                view! { <p>{words::NO_LINK}</p> }.into_any()
            }}
        </section>
    }
}

/// An address as a QR code of error level M; the link's letters take 5.5 bits each in a segment of
/// their own.
pub fn code(address: &str) -> AnyView {
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
        return view! { <p>{words::NO_CODE}</p> }.into_any();
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
    view! {
        <svg
            class="code"
            role="img"
            aria-label=words::CODE
            viewBox=format!("-{QUIET} -{QUIET} {wide} {wide}")
            width=format!("{paper}mm")
            height=format!("{paper}mm")
            shape-rendering="crispEdges"
        >
            <path class="code-paper" d=format!("M-{QUIET} -{QUIET}h{wide}v{wide}h-{wide}z")/>
            <path class="code-ink" d=dark/>
        </svg>
    }
    .into_any()
}

/// Saving to a file and opening one.
#[component]
pub fn Files() -> impl IntoView {
    let app = app();
    view! {
        <div class="row files">
            {move || app.plan_is_open().then(|| button("quiet", words::SAVE_PLAN, move || {
                let plan: Vec<Plan> = app.plan.get_untracked().into_iter().collect();
                browser::save_file(words::PLAN_FILE, &plans_to_file(&plan, &[]));
            }))}
            {move || (!app.shelf().is_empty()).then(|| button("quiet", words::SAVE_ALL, move || save_all(app)))}
            <label class="file">
                <span>{words::OPEN_FILE}</span>
                <input
                    type="file"
                    accept=".json,application/json"
                    on:change=move |event| {
                        if let Some(file) = browser::chosen_file(&event) {
                            take_file(app, file);
                        }
                    }
                />
            </label>
        </div>
    }
}

fn save_all(app: App) {
    browser::save_file(
        words::PLANS_FILE,
        &plans_to_file(&app.all_plans(), &app.all_trials()),
    );
}

/// Reads a file that was chosen or dropped, and offers what is in it.
pub fn take_file(app: App, file: browser::File) {
    browser::read_file(file, LONGEST_FILE, move |text| {
        let found = text.ok_or(FileError::TooLong).and_then(|text| {
            let trials = trials_from_file(&text).unwrap_or_default();
            match plans_from_file(&text) {
                Ok(plans) if plans.is_empty() && trials.is_empty() => {
                    Err(FileError::NotPlans { line: 0 })
                }
                Err(error) if trials.is_empty() => Err(error),
                plans => Ok((plans.unwrap_or_default(), trials)),
            }
        });
        app.brought.set(Some(Brought::File(found)));
        browser::focus_soon("brought");
    });
}

/// What came from outside, before anything is kept.
#[component]
pub fn Offer() -> impl IntoView {
    let app = app();
    move || {
        let brought = app.brought.get()?;
        let heading = match brought {
            Brought::Link(_) => words::FROM_LINK,
            Brought::File(_) => words::FROM_FILE,
        };
        let (lines, keep) = match brought {
            Brought::Link(Err(error)) => (vec![words::link_error(error)], None),
            Brought::File(Err(error)) => (vec![words::file_error(error)], None),
            Brought::Link(Ok(plan)) => {
                let lines = words::preview(&plan, &solve(&plan), app.units.get());
                let keep = button("main", words::KEEP_NEW, move || {
                    app.put_away();
                    app.add((*plan).clone());
                });
                (lines, Some(keep))
            }
            Brought::File(Ok((plans, trials))) => {
                let lines = words::in_file(&plans, &trials);
                let all = (plans.clone(), trials.clone());
                let add = button("main", words::ADD_THEM, move || {
                    app.put_away();
                    app.add_all(plans.clone());
                    app.add_trials(trials.clone());
                });
                let replace = (!app.shelf().is_empty()).then(|| {
                    view! {
                        {button("quiet", words::REPLACE_ALL, move || {
                            save_all(app);
                            app.put_away();
                            app.replace_all(all.0.clone());
                            app.replace_trials(all.1.clone());
                        })}
                        <p>{words::REPLACE_MORE}</p>
                    }
                });
                (lines, Some(view! { {add}{replace} }.into_any()))
            }
        };
        let refuse = if keep.is_some() {
            words::DO_NOT_KEEP
        } else {
            words::DISMISS
        };
        Some(view! {
            <section class="offer" aria-labelledby="brought">
                <h2 id="brought" tabindex="-1">{heading}</h2>
                <ul>{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
                <div class="row">
                    {keep}
                    {button("quiet", refuse, move || app.put_away())}
                </div>
            </section>
        }
        .into_any())
    }
}
