//! The season seen: the container in section with its day, and the curves over the same days.

mod curves;
mod frame;
mod picture;
mod plants;

use std::time::Duration;

use leptos::leptos_dom::helpers::IntervalHandle;
use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, live};

pub use frame::Mark;

use super::state::{Latest, app};
use super::{browser, words};
use crate::advice::Outcome;

/// The day that drawing, sentence, curves and table show.
#[derive(Clone, Copy)]
pub struct Days {
    /// The day.
    pub day: Memo<usize>,
    /// The last of the season.
    pub last: Memo<usize>,
    /// The first day that fails.
    pub failing: Memo<Option<usize>>,
    shown: RwSignal<Option<usize>>,
    playing: RwSignal<bool>,
    timer: StoredValue<Option<IntervalHandle>>,
}

/// The last day of a season, counted from planting.
fn last_day(latest: &Latest) -> usize {
    let days = latest
        .as_ref()
        .map_or(0, |outcome| outcome.season.days.len());
    days.saturating_sub(1)
}

impl Days {
    fn new() -> Self {
        let app = app();
        let of = move |what: fn(&Outcome) -> Option<usize>| {
            Memo::new(move |_| app.settled_with(|outcome| outcome.as_ref().and_then(what)))
        };
        let last = Memo::new(move |_| app.settled_with(last_day));
        let days = Self {
            day: Memo::new(move |_| app.day.get().unwrap_or(usize::MAX).min(last.get())),
            last,
            failing: of(|outcome| {
                let failure = outcome.roots.failure.as_ref()?;
                usize::try_from(failure.day).ok()
            }),
            shown: app.day,
            playing: RwSignal::new(false),
            timer: StoredValue::new(None),
        };
        on_cleanup(move || days.stop());
        days
    }

    /// Shows a day.
    pub fn go_to(self, day: usize) {
        self.stop();
        self.show(day);
    }

    /// Shows the day at a share of the season.
    pub fn go_to_share(self, share: f64) {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a share of a few hundred days at most"
        )]
        let day = (share.clamp(0.0, 1.0) * self.last.get_untracked() as f64).round() as usize;
        self.go_to(day);
    }

    fn show(self, day: usize) {
        self.shown.set(Some(day.min(self.last.get_untracked())));
    }

    fn stop(self) {
        if let Some(handle) = self.timer.try_update_value(Option::take).flatten() {
            handle.clear();
            self.playing.set(false);
        }
    }

    /// From the shown day to harvest, from planting where harvest is shown; or stops.
    fn play(self) {
        if self.playing.get_untracked() {
            return self.stop();
        }
        if self.day.get_untracked() >= self.last.get_untracked() {
            self.show(0);
        }
        let step = move || {
            let next = self.day.get_untracked() + 1;
            if next >= self.last.get_untracked() {
                self.stop();
            }
            self.show(next);
        };
        // Steps to look at where movement is not wanted.
        let pace = if browser::prefers_stillness() {
            700
        } else {
            140
        };
        let handle = set_interval_with_handle(step, Duration::from_millis(pace)).ok();
        self.playing.set(handle.is_some());
        self.timer.set_value(handle);
    }
}

/// Drawing, day, sentence, curves and table.
pub fn drawing() -> Node {
    let app = app();
    let days = Days::new();
    let of_outcome = move |what: fn(&Outcome, usize, crate::plan::UnitSystem) -> Node| {
        move || {
            app.settled_with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| what(outcome, days.day.get(), app.units.get()))
            })
        }
    };
    let wide = move || {
        app.settled_with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| frame::Frame::of(&outcome.section).is_wide())
        })
    };
    el("section")
        .class("part drawing")
        .id("drawing")
        .class_live("playing", move || days.playing.get())
        .child(el("h3").child(words::drawing()))
        .child(
            el("div")
                .class("seen")
                .class_live("wide", wide)
                .child(
                    el("div")
                        .class("picture")
                        .child(live(of_outcome(|outcome, day, units| {
                            picture::picture(&outcome.section, day, units)
                        }))),
                )
                .child(day_control(days))
                .child(curves::curve_chart(days)),
        )
        .child(curves::day_table(days))
}

/// Play, the slider with the day that fails, and the day in words.
fn day_control(days: Days) -> Node {
    let app = app();
    let sentences = Memo::new(move |_| {
        app.settled_with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| words::drawing_sentences(outcome, app.units.get()))
                .unwrap_or_default()
        })
    });
    // Room for the longest, so that nothing below moves with the day.
    let longest =
        move || sentences.with(|all| all.iter().max_by_key(|text| text.chars().count()).cloned());
    let turn = move |event: &leptos::ev::KeyboardEvent| {
        let day = days.day.get_untracked();
        let to = match event.key().as_str() {
            "PageUp" => day + 7,
            "PageDown" => day.saturating_sub(7),
            _ => return,
        };
        event.prevent_default();
        days.go_to(to);
    };
    let failing_at = move || {
        let day = days.failing.get()?;
        Some((day as f64 / days.last.get().max(1) as f64).to_string())
    };
    let flag = move |day: usize| {
        button("quiet flag")
            .id("failing-day")
            .on("click", move || days.go_to(day))
            .child(live(move || {
                words::failing_day(
                    day,
                    app.settled_with(|outcome| {
                        outcome
                            .as_ref()
                            .and_then(|outcome| outcome.roots.failure.as_ref())
                            .map(|failure| failure.kind)
                    }),
                )
            }))
    };
    el("div")
        .class("day-control")
        .child(
            button("quiet")
                .id("play")
                .on("click", move || days.play())
                .child(live(move || {
                    if days.playing.get() {
                        words::pause()
                    } else {
                        words::play()
                    }
                })),
        )
        .child(
            el("label")
                .class("days")
                .class_live("failing", move || failing_at().is_some())
                .style_live("--at", failing_at)
                .child(el("span").child(words::day_slider()))
                // One description: the value must not be written before the limit that allows it.
                .child(live(move || {
                    el("input")
                        .attr("type", "range")
                        .id("day")
                        .attr("min", "0")
                        .attr("step", "1")
                        .attr("max", days.last.get())
                        .value_live(move || days.day.get().to_string())
                        .attr_live("aria-valuetext", move || words::day(days.day.get()))
                        .on_value("input", move |value| {
                            if let Ok(day) = value.parse() {
                                days.go_to(day);
                            }
                        })
                        .on_key(turn)
                })),
        )
        .child(live(move || days.failing.get().map(flag)))
        .child(
            el("div")
                .class("sentence")
                .child(
                    el("p")
                        .id("section-sentence")
                        .attr_live("aria-live", move || {
                            if days.playing.get() { "off" } else { "polite" }
                        })
                        .child(live(move || {
                            sentences.with(|all| all.get(days.day.get()).cloned())
                        })),
                )
                .child(
                    el("p")
                        .class("room")
                        .attr("aria-hidden", "true")
                        .child(live(longest))
                        .child(" 0000"),
                ),
        )
}
