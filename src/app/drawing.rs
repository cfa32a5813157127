//! The container in section, to scale: the drawing's units are millimetres of the real thing.

use std::fmt::Write as _;

use leptos::prelude::*;

use super::state::app;
use super::words;
use crate::advice::{DayOutcome, Moment, Section};
use crate::plan::UnitSystem;

/// The drawing, its day slider and the same in words.
#[component]
pub fn Drawing() -> impl IntoView {
    let app = app();
    let last_day = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .map_or(0, |outcome| outcome.season.days.len().saturating_sub(1))
        })
    });
    let day = Memo::new(move |_| app.day.get().unwrap_or(usize::MAX).min(last_day.get()));
    let picture = move || {
        app.outcome.with(|outcome| {
            let section = &outcome.as_ref()?.section;
            Some(draw(section, day.get()))
        })
    };
    let sentence = move || {
        app.outcome.with(|outcome| {
            let days = &outcome.as_ref()?.season.days;
            days.get(day.get())
                .map(|day| sentence(day, app.units.get()))
        })
    };
    view! {
        <section class="part drawing" id="drawing">
            <h3>{words::DRAWING}</h3>
            {picture}
            <label class="days">
                <span>{words::DAY_SLIDER}</span>
                <input
                    type="range"
                    id="day"
                    min="0"
                    step="1"
                    max=move || last_day.get().to_string()
                    prop:value=move || day.get().to_string()
                    on:input:target=move |event| app.day.set(event.target().value().parse().ok())
                />
            </label>
            <p class="sentence" id="section-sentence">{sentence}</p>
        </section>
    }
}

fn sentence(day: &DayOutcome, units: UnitSystem) -> String {
    words::drawing_sentence(day.day, day.level_cm, day.gap_cm, day.head_g, units)
}

/// The frame of the picture: how wide and high it is, and how large its letters are, in the
/// drawing's own millimetres.
struct Frame {
    left: f64,
    width: f64,
    bottom: f64,
    height: f64,
    letter: f64,
}

impl Frame {
    fn of(section: &Section) -> Self {
        // Letters of about 14 px in a picture of about 440 by 380 px.
        let wide = section.half_width_mm * 2.0;
        let high = section.rim_mm + section.cover_mm + section.head_width_mm * 0.6;
        let letter = (wide / 23.0).max(high / 27.0);
        let margin = letter * 1.2;
        Self {
            left: -section.half_width_mm - margin,
            width: wide + margin + letter * 7.0,
            bottom: -margin,
            height: high + margin * 2.0,
            letter,
        }
    }

    fn view_box(&self) -> String {
        // The picture is turned over so that y runs upwards.
        format!(
            "{} {} {} {}",
            self.left,
            -(self.bottom + self.height),
            self.width,
            self.height
        )
    }
}

/// The outline of the inner wall: down the left side, up the right.
fn wall_path(section: &Section) -> String {
    let mut path = String::new();
    for (index, (x, y)) in section.wall.iter().rev().enumerate() {
        let _ = write!(path, "{}{} {y}", if index == 0 { 'M' } else { 'L' }, -x);
    }
    for (x, y) in &section.wall {
        let _ = write!(path, "L{x} {y}");
    }
    path
}

/// A net pot that hangs with its flange at `top`.
fn pot_path(section: &Section, middle: f64, top: f64) -> String {
    let pot = &section.pot_mm;
    format!(
        "M{} {top}H{}M{} {top}L{} {foot}H{}L{} {top}",
        middle - pot.flange / 2.0,
        middle + pot.flange / 2.0,
        middle - pot.top / 2.0,
        middle - pot.bottom / 2.0,
        middle + pot.bottom / 2.0,
        middle + pot.top / 2.0,
        foot = top - pot.height,
    )
}

/// Leaves over a pot: a rosette one wide, its foot at the origin.
const LEAVES: &str = "M0 0C-.12 .2-.3 .3-.5 .27C-.44 .08-.22 .01 0 0C-.2 .13-.36 .36-.33 .47C-.14 .48-.02 .25 0 0C-.09 .2-.11 .44 0 .56C.11 .44 .09 .2 0 0C.02 .25 .14 .48 .33 .47C.36 .36 .2 .13 0 0C.22 .01 .44 .08 .5 .27C.3 .3 .12 .2 0 0Z";

fn draw(section: &Section, day: usize) -> AnyView {
    let frame = Frame::of(section);
    let now = section.days.get(day).copied().unwrap_or_default();
    let half = section.half_width_mm;
    let wall = wall_path(section);
    view! {
        <svg
            class="section"
            id="section"
            viewBox=frame.view_box()
            role="img"
            aria-label=words::DRAWING
            aria-describedby="section-sentence"
            data-day=day
            data-level-mm=now.level_mm
            data-underside-mm=now.underside_mm
            data-rim-mm=section.rim_mm
        >
            <g transform="scale(1 -1)">
                <clipPath id="inside"><path d=format!("{wall}Z")/></clipPath>
                <g clip-path="url(#inside)">
                    <rect class="solution" x=-half y=0 width=half * 2.0 height=now.level_mm/>
                    {section.days.first().map(|first| level_line(section, first))}
                    {section.days.last().map(|last| level_line(section, last))}
                </g>
                {pipes(section)}
                {cover(section, now)}
                {plants(section, now)}
                <path class="wall" d=wall/>
                {marks(section, frame.letter)}
            </g>
        </svg>
    }
    .into_any()
}

fn level_line(section: &Section, moment: &Moment) -> impl IntoView + use<> {
    let half = section.half_width_mm;
    view! { <path class="level" d=format!("M{} {}H{half}", -half, moment.level_mm)/> }
}

fn pipes(section: &Section) -> impl IntoView + use<> {
    let radius = section.pipe_mm / 2.0;
    section
        .pipes
        .iter()
        .map(|middle| view! { <circle class="pipe" cx=*middle cy=radius r=radius/> })
        .collect_view()
}

/// The cover on the rim, or the boards where they float or rest.
fn cover(section: &Section, now: Moment) -> impl IntoView + use<> {
    let edge = section
        .wall
        .last()
        .map_or(section.half_width_mm, |point| point.0);
    let pieces = if section.boards.is_empty() {
        vec![(-edge, edge)]
    } else {
        section.boards.clone()
    };
    let height = section.cover_mm;
    pieces
        .into_iter()
        .map(|(left, right)| {
            view! {
                <rect class="cover" x=left y=now.underside_mm width=right - left height=height/>
            }
        })
        .collect_view()
}

/// Pots hung from the top of cover or board, with what has grown.
fn plants(section: &Section, now: Moment) -> impl IntoView + use<> {
    let top = now.underside_mm + section.cover_mm;
    // A head's width goes with the square root of its mass as long as it spreads; a seedling stays
    // visible.
    let width = section.head_width_mm * now.head_share.sqrt().max(0.12);
    section
        .pots
        .iter()
        .map(|middle| {
            let place = format!("translate({middle} {top}) scale({width})");
            view! {
                <path class="pot" d=pot_path(section, *middle, top)/>
                <path class="leaf" d=LEAVES transform=place/>
            }
        })
        .collect_view()
}

/// The fill mark on the wall, and the level at the end where the two words keep apart.
fn marks(section: &Section, letter: f64) -> impl IntoView + use<> {
    let half = section.half_width_mm;
    let mark = section.fill_mark_mm;
    let end = section.days.last().map_or(mark, |last| last.level_mm);
    let word = move |height: f64, text: &'static str| {
        let place = format!(
            "translate({} {}) scale(1 -1)",
            half + letter,
            height - letter * 0.35
        );
        view! { <text class="word" transform=place font-size=letter>{text}</text> }
    };
    let tick = format!("M{} {mark}h{}", half - letter * 0.4, letter * 1.2);
    view! {
        <path class="mark" d=tick/>
        {word(mark, words::MARK_FILL)}
        {(mark - end > letter * 1.2).then(|| word(end, words::MARK_HARVEST))}
    }
}
