//! The container in section, to scale: the drawing's units are millimetres of the real thing.

use std::fmt::Write as _;

use leptos::prelude::*;

use super::frame::{Frame, Mark, labels, wall_at};
use super::plants;
use crate::advice::{Moment, Section};
use crate::app::words;
use crate::plan::UnitSystem;

/// The picture of one day with its labels.
pub fn picture(section: &Section, day: usize, units: UnitSystem) -> AnyView {
    let frame = Frame::of(section);
    let now = section.days.get(day).copied().unwrap_or_default();
    let labels = labels(section, now, &frame);
    let (bar_mm, bar) = words::scale_bar(section.half_width_mm, units);
    let word = |class, place: f64, text: String| {
        // Moved by a transform: a label that follows the level is no shift of the layout.
        view! {
            <span class=class style:transform=format!("translateY({place:.2}cqh)")>{text}</span>
        }
    };
    view! {
        <div
            class="stage"
            style=("--wide", format!("{:.1}", frame.width))
            style=("--high", format!("{:.1}", frame.height))
        >
            {svg(section, &frame, now, day, &labels, bar_mm)}
            <div class="labels" aria-hidden="true">
                {labels
                    .iter()
                    .map(|&(mark, _, at)| word("word", frame.down(at), words::mark(mark).to_owned()))
                    .collect_view()}
            </div>
        </div>
        <p class="scale" aria-hidden="true">{bar}</p>
    }
    .into_any()
}

fn svg(
    section: &Section,
    frame: &Frame,
    now: Moment,
    day: usize,
    labels: &[(Mark, f64, f64)],
    bar_mm: f64,
) -> AnyView {
    let half = section.half_width_mm;
    let wall = wall_path(section);
    let top = now.underside_mm + section.cover_mm;
    let (air_roots, water_roots) = plants::roots(section, now);
    let set = |what: &'static str, class: &'static str| {
        section
            .pots
            .iter()
            .enumerate()
            .map(|(index, middle)| {
                // Neighbours are mirrored, so that a row does not look stamped.
                let side = if index % 2 == 0 { 1 } else { -1 };
                let place = format!("translate({middle} {top}) scale({side} 1)");
                view! { <use class=class href=what transform=place/> }
            })
            .collect_view()
    };
    // Where there is solution and neither pot nor root touches it.
    let wilts = !now.contact && !now.reached;
    let medium = if now.contact { "medium wet" } else { "medium" };
    let edge = frame.left() + frame.width * 0.01;
    let ground = format!("M{} 0H{}", frame.left(), frame.right());
    let bar = format!(
        "M{edge} {y}v{h}v-{h}h{bar_mm}v{h}",
        y = frame.bar(),
        h = frame.width * 0.012
    );
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
            data-tip-mm=now.tip_mm
            data-foot-mm=now.foot_mm
            data-rim-mm=section.rim_mm
        >
            <defs>
                <clipPath id="inside"><path d=inside_path(section, top)/></clipPath>
                <g id="roots">
                    <path class="root in-air" d=air_roots/>
                    <path class="root" d=water_roots/>
                </g>
                <g id="plant">
                    <path class=medium d=plants::medium_path(section)/>
                    <path class="pot" d=plants::pot_path(section)/>
                    {plants::head(section, now.head_share, wilts)}
                </g>
            </defs>
            <g transform="scale(1 -1)">
                <path class="ground" d=ground/>
                <g clip-path="url(#inside)">
                    <path class="air" d=format!("{wall}Z")/>
                    <rect class="solution" x=-half y=0 width=half * 2.0 height=now.level_mm/>
                    <path class="surface" d=format!("M{} {}H{half}", -half, now.level_mm)/>
                    {set("#roots", "rooted")}
                </g>
                {pipes(section)}
                <path class="wall" d=wall/>
                {cover(section, now)}
                {set("#plant", "plant")}
                <path class="mark" d=fill_tick(section, frame)/>
                <path class="leader" d=leaders(section, frame, labels)/>
                <path class="bar" d=bar/>
            </g>
        </svg>
    }
    .into_any()
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

/// Between the walls, and above the rim what stands over it.
fn inside_path(section: &Section, top: f64) -> String {
    let edge = section.wall.last().map_or(0.0, |point| point.0);
    format!("{}V{top}H{}Z", wall_path(section), -edge)
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

/// The fill mark on the wall.
fn fill_tick(section: &Section, frame: &Frame) -> String {
    let mark = section.fill_mark_mm;
    let wall = wall_at(section, mark);
    let long = frame.width * 0.03;
    format!("M{} {mark}h{long}", wall - long)
}

/// From what is labelled to its words.
fn leaders(section: &Section, frame: &Frame, labels: &[(Mark, f64, f64)]) -> String {
    let right = frame.right();
    let knee = right - frame.width * 0.035;
    let mut path = String::new();
    for &(_, from, to) in labels {
        let wall = wall_at(section, from);
        let _ = write!(path, "M{wall} {from}H{}L{right} {to}", knee.max(wall));
    }
    path
}
