//! What is printed of a notebook: readings, forecast, top-up and close on one page.

use super::kept::{Desk, Shown};
use super::lines::finished;
use super::{closing, forecast};
use crate::app::browser::dom::{Node, el};
use crate::app::parts::{items, part, table};
use crate::app::words;

/// Readings from which the page is set small.
const DENSE: usize = 12;

/// The report, hidden on the screen.
pub fn paper(desk: Desk, shown: &Shown) -> Node {
    let units = shown.units;
    let notebook = finished(&shown.notebook);
    let known = desk.known();
    let rows = notebook.readings.iter();
    let rows = rows.map(|reading| words::reading_cells(reading, units).to_vec());
    let cuts = notebook.harvest.iter();
    let cuts: Vec<String> = cuts.map(|cut| words::cut_line(cut, units)).collect();
    let sound = shown.problems.is_empty() && !known.working;
    let forecast = known.before.zip(known.after).filter(|_| sound);
    let closed = notebook.closed;
    let (told, two) = match &forecast {
        None => (words::forecast_waits().to_owned(), Node::default()),
        Some((before, after)) => {
            let next = if closed {
                part(words::close(), closing::measured(after, shown))
            } else {
                part(words::top_up(), forecast::top_up(after, shown))
            };
            let course = forecast::course(before, after, shown);
            let bands = el("div").class("part");
            let two = el("div")
                .class("paper-two")
                .child(part(words::forecast(), course))
                .child(el("div").child([bands.child(forecast::bands(before, after, shown)), next]));
            (forecast::told(after, shown), two)
        }
    };
    let readings = part(
        words::readings_heading(),
        table(&words::reading_heads(), rows.collect()),
    );
    let cuts = (!cuts.is_empty()).then(|| {
        let list = el("ul").class("plain").child(items(cuts));
        part(words::cuts(), list)
    });
    el("article")
        .class("trial-paper notebook-paper")
        .class_if("dense", notebook.readings.len() > DENSE)
        .attr("aria-label", words::notebook())
        .child(
            el("header")
                .child(el("p").child(format!("{} · {}", words::name(), words::notebook())))
                .child(el("h2").child(words::notebook_name(&shown.notebook))),
        )
        .child(el("p").class("pace").child(told))
        .child(two)
        .child(readings)
        .child(cuts)
}
