//! The container in section, to scale: the drawing's units are millimetres of the real thing.

use std::fmt::Write as _;

use crate::app::browser::dom::{Node, el, several};

use super::frame::{Frame, Mark, labels, wall_at};
use super::plants;
use crate::advice::{Moment, Section};
use crate::app::words;
use crate::plan::UnitSystem;

/// The picture of one day with its labels.
pub fn picture(section: &Section, day: usize, units: UnitSystem) -> Node {
    let frame = Frame::of(section);
    let now = section.days.get(day).copied().unwrap_or_default();
    let labels = labels(section, now, &frame);
    let (bar_mm, bar) = words::scale_bar(section.half_width_mm, units);
    let word = |class, place: f64, text: String| {
        // Moved by a transform: a label that follows the level is no shift of the layout.
        el("span")
            .class(class)
            .style("transform", format!("translateY({place:.2}cqh)"))
            .child(text)
    };
    several()
        .child(
            el("div")
                .class("stage")
                .style("--wide", format!("{:.1}", frame.width))
                .style("--high", format!("{:.1}", frame.height))
                .child(svg(section, &frame, now, day, &labels, bar_mm))
                .child(
                    el("div").class("labels").attr("aria-hidden", "true").child(
                        labels
                            .iter()
                            .map(|&(mark, _, at)| {
                                word("word", frame.down(at), words::mark(mark).to_owned())
                            })
                            .collect::<Node>(),
                    ),
                ),
        )
        .child(
            el("p")
                .class("scale")
                .attr("aria-hidden", "true")
                .child(bar),
        )
}

#[expect(
    clippy::too_many_lines,
    reason = "one view, top to bottom, as it is seen"
)]
fn svg(
    section: &Section,
    frame: &Frame,
    now: Moment,
    day: usize,
    labels: &[(Mark, f64, f64)],
    bar_mm: f64,
) -> Node {
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
                el("use")
                    .class(class)
                    .attr("href", what)
                    .attr("transform", place)
            })
            .collect::<Node>()
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
    el("svg")
        .class("section")
        .id("section")
        .attr("viewBox", frame.view_box())
        .attr("role", "img")
        .attr("aria-label", words::drawing())
        .attr("aria-describedby", "section-sentence")
        .attr("data-day", day)
        .attr("data-level-mm", now.level_mm)
        .attr("data-underside-mm", now.underside_mm)
        .attr("data-tip-mm", now.tip_mm)
        .attr("data-foot-mm", now.foot_mm)
        .attr("data-rim-mm", section.rim_mm)
        .child(
            el("defs")
                .child(
                    el("clipPath")
                        .id("inside")
                        .child(el("path").attr("d", inside_path(section, top))),
                )
                .child(
                    el("g")
                        .id("roots")
                        .child(el("path").class("root in-air").attr("d", air_roots))
                        .child(el("path").class("root").attr("d", water_roots)),
                )
                .child(
                    el("g")
                        .id("plant")
                        .child(
                            el("path")
                                .class(medium)
                                .attr("d", plants::medium_path(section)),
                        )
                        .child(el("path").class("pot").attr("d", plants::pot_path(section)))
                        .child(plants::head(section, now.head_share, wilts)),
                ),
        )
        .child(
            el("g")
                .attr("transform", "scale(1 -1)")
                .child(el("path").class("ground").attr("d", ground))
                .child(
                    el("g")
                        .attr("clip-path", "url(#inside)")
                        .child(el("path").class("air").attr("d", format!("{wall}Z")))
                        .child(
                            el("rect")
                                .class("solution")
                                .attr("x", -half)
                                .attr("y", 0)
                                .attr("width", half * 2.0)
                                .attr("height", now.level_mm),
                        )
                        .child(
                            el("path")
                                .class("surface")
                                .attr("d", format!("M{} {}H{half}", -half, now.level_mm)),
                        )
                        .child(set("#roots", "rooted")),
                )
                .child(pipes(section))
                .child(el("path").class("wall").attr("d", wall))
                .child(cover(section, now))
                .child(set("#plant", "plant"))
                .child(
                    el("path")
                        .class("mark")
                        .attr("d", fill_tick(section, frame)),
                )
                .child(
                    el("path")
                        .class("leader")
                        .attr("d", leaders(section, frame, labels)),
                )
                .child(el("path").class("bar").attr("d", bar)),
        )
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

fn pipes(section: &Section) -> Node {
    let radius = section.pipe_mm / 2.0;
    section
        .pipes
        .iter()
        .map(|middle| {
            el("circle")
                .class("pipe")
                .attr("cx", *middle)
                .attr("cy", radius)
                .attr("r", radius)
        })
        .collect::<Node>()
}

/// The cover on the rim, or the boards where they float or rest.
fn cover(section: &Section, now: Moment) -> Node {
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
            el("rect")
                .class("cover")
                .attr("x", left)
                .attr("y", now.underside_mm)
                .attr("width", right - left)
                .attr("height", height)
        })
        .collect::<Node>()
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
