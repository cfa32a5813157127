//! What was weighed and measured: pasted, from a file, or typed into a table.

use std::rc::Rc;

use leptos::prelude::*;

use super::kept::{Bench, Shown, is_filled};
use crate::app::browser;
use crate::app::browser::dom::{Node, action, el};
use crate::app::parts::{field, part, read, row, scroll};
use crate::app::words;
use crate::plan::trial::{Name, Record};
use crate::plan::{Dimension, Entry, LONGEST_FILE, UnitSystem};
use crate::trial::{TrialField, TrialOutcome, joined, read_table, write_table};

/// Paste, table, and what is wrong.
pub fn record(bench: Bench, shown: &Shown, outcome: &TrialOutcome) -> Node {
    part(
        words::record(),
        [
            el("p").class("hint").child(words::record_more()),
            paste(bench, shown),
            scroll(words::record_table(), table(bench, shown, outcome)),
            (shown.columns < outcome.heads_per_unit as usize)
                .then(|| el("p").class("hint").child(words::sample()))
                .into(),
            stray(bench, shown, outcome),
            el("div").attr("role", "status").child(wrong(shown)),
            tools(bench, shown, outcome),
        ],
    )
}

fn paste(bench: Bench, shown: &Shown) -> Node {
    let pasted = bench.pasted.get().unwrap_or_default();
    let area = el("textarea")
        .attr("rows", "4")
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .on_value("change", move |text| bench.pasted.set(Some(text)))
        .value_live(move || pasted.clone());
    let file = el("label")
        .class("file")
        .child(el("span").child(words::table_file()))
        .child(
            el("input")
                .id("trial-file")
                .attr("type", "file")
                .attr("accept", ".csv,.tsv,.txt,text/csv,text/plain")
                .on_event("change", move |event| {
                    if let Some(file) = browser::chosen_file(event) {
                        browser::read_file(file, LONGEST_FILE, move |text| {
                            bench.pasted.set(text);
                        });
                    }
                }),
        );
    let take = |text, with_layout: bool| {
        action(
            if with_layout { "quiet" } else { "main" },
            text,
            move || {
                take_in(bench, with_layout);
            },
        )
    };
    let said = bench.said.get().unwrap_or_default();
    let lines = said.lines().map(|line| el("p").child(line.to_owned()));
    [
        field(
            "trial-paste".to_owned(),
            words::paste(),
            words::paste_hint(shown.units),
            None,
            area,
        ),
        row([
            file,
            take(words::take_in(), false),
            take(words::take_in_layout(), true).attr("disabled", shown.recorded),
        ]),
        el("div")
            .attr("role", "status")
            .class("taken-in")
            .child(lines.collect::<Node>()),
    ]
    .into()
}

/// Reads what was pasted into the records, and where asked for into the layout.
fn take_in(bench: Bench, with_layout: bool) {
    let text = bench.pasted.get_untracked().unwrap_or_default();
    let table = read_table(&text, bench.app.units.get_untracked());
    if with_layout && table.units.is_empty() {
        bench.said.set(Some(words::no_layout().to_owned()));
        return;
    }
    let heads = table
        .records
        .iter()
        .map(|it| it.heads_g.len())
        .sum::<usize>();
    let all = table.records.iter().flat_map(|it| &it.heads_g);
    let missing = all.filter(|head| head.is_blank()).count();
    let (lines, problems) = (table.records.len(), table.problems.len());
    let units = bench.app.units.get_untracked();
    let mut said = words::taken_in(lines, heads - missing, missing, problems);
    for problem in table.problems.iter().take(20) {
        said.push('\n');
        said.push_str(&words::table_problem(problem, units));
    }
    bench.edit(|trial| {
        if with_layout {
            table.lay_out(trial);
        }
        trial.records = joined(&trial.records, table.records);
    });
    bench.pasted.set((lines == 0).then_some(text));
    bench.said.set(Some(said));
}

/// A line for each container: solution used, then its heads.
fn table(bench: Bench, shown: &Shown, outcome: &TrialOutcome) -> Node {
    let units = shown.units;
    let head = |text: String| el("th").attr("scope", "col").child(text);
    let mut heads = vec![
        head(words::container_heading().to_owned()),
        head(words::with_unit(words::used(), Dimension::Volume, units)),
    ];
    heads.extend((1..=shown.columns).map(|number| {
        head(words::with_unit(
            &words::head_number(number),
            Dimension::Mass,
            units,
        ))
    }));
    let records = Rc::new(shown.trial.records.clone());
    let lines = records.iter().zip(&outcome.units).enumerate();
    let lines = lines.map(|(place, (line, unit))| {
        let name = outcome.treatments.get(unit.treatment);
        let name = words::variant_of(unit.treatment, name.map_or("", |it| it.name.as_str()));
        let filled = is_filled(line);
        let mut cells = vec![
            el("th").attr("scope", "row").child([
                el("b").child(unit.unit.clone()),
                " ".into(),
                name.into(),
            ]),
            cell(
                bench,
                shown,
                &records,
                TrialField::RecordWater(place),
                &line.water_l,
                false,
            ),
        ];
        cells.extend(line.heads_g.iter().enumerate().map(|(head, entry)| {
            cell(
                bench,
                shown,
                &records,
                TrialField::RecordHead(place, head),
                entry,
                filled,
            )
        }));
        el("tr").child(cells)
    });
    el("table")
        .class("records")
        .child(el("thead").child(el("tr").child(heads)))
        .child(el("tbody").child(lines.collect::<Node>()))
}

/// A cell to type into, with what is wrong under it.
fn cell(
    bench: Bench,
    shown: &Shown,
    records: &Rc<Vec<Record>>,
    of: TrialField,
    entry: &Entry,
    filled: bool,
) -> Node {
    let units = shown.units;
    let (place, head, dimension) = match of {
        TrialField::RecordHead(place, head) => (place, head + 1, Dimension::Mass),
        TrialField::RecordWater(place) => (place, 0, Dimension::Volume),
        _ => return Node::default(),
    };
    let text = match entry {
        Entry::Number(value) => words::number(dimension.text(*value, units)),
        Entry::Text(text) => text.clone(),
    };
    let unit = records.get(place).map_or("", |it| it.unit.text());
    let what = if head == 0 {
        words::used().to_owned()
    } else {
        words::head_number(head)
    };
    let problem = shown.problem(of);
    let id = format!("record-{}-{head}", place + 1);
    let described = problem.is_some().then(|| format!("{id}-problem"));
    let missing = filled && head > 0 && entry.is_blank();
    let records = Rc::clone(records);
    let input = el("input")
        .id(id)
        .attr("type", "text")
        .attr("inputmode", "decimal")
        .attr("autocomplete", "off")
        .attr(
            "aria-label",
            format!("{}, {what}", words::container_number(unit)),
        )
        .attr("placeholder", missing.then_some(words::missing()))
        .attr("aria-invalid", problem.is_some().then_some("true"))
        .attr("aria-describedby", described.clone())
        .on_value("change", move |text| {
            let mut records = records.to_vec();
            write(&mut records, place, head, read(&text, dimension, units));
            keep(bench, records);
        })
        .value_live(move || text.clone());
    let problem = problem.map(|text| el("p").class("bad").id(described).child(text));
    el("td").child(input).child(problem)
}

/// Lines in which nothing stands are not kept: their containers may be gone from the next layout.
fn keep(bench: Bench, mut records: Vec<Record>) {
    records.retain(is_filled);
    bench.edit(|trial| trial.records = records);
}

fn write(records: &mut [Record], place: usize, head: usize, entry: Entry) {
    let Some(record) = records.get_mut(place) else {
        return;
    };
    match head.checked_sub(1) {
        None => record.water_l = entry,
        Some(head) => {
            if let Some(cell) = record.heads_g.get_mut(head) {
                *cell = entry;
            }
        }
    }
}

/// Records that no container of the layout has.
fn stray(bench: Bench, shown: &Shown, outcome: &TrialOutcome) -> Node {
    let records = &shown.trial.records;
    let Some(rest) = records
        .get(outcome.units.len()..)
        .filter(|it| !it.is_empty())
    else {
        return Node::default();
    };
    let line = |record: &Record| {
        let heads = record.heads_g.iter();
        let heads = heads.map(|head| shown_entry(head, Dimension::Mass, shown.units));
        let names = [record.unit.text(), record.treatment.text()];
        let names = names.into_iter().filter(|it| !it.is_empty());
        let all = names.map(str::to_owned).chain(heads).collect::<Vec<_>>();
        el("li").child(all.join(", "))
    };
    let known: Vec<Record> = records.iter().take(outcome.units.len()).cloned().collect();
    el("div").class("verdict").child([
        el("p").child(words::belongs_nowhere()),
        el("ul").child(rest.iter().take(60).map(line).collect::<Node>()),
        action("quiet", words::remove_stray(), move || {
            keep(bench, known.clone());
        }),
    ])
}

fn shown_entry(entry: &Entry, dimension: Dimension, units: UnitSystem) -> String {
    match entry {
        Entry::Number(value) => words::show(dimension, *value, units),
        Entry::Text(text) if text.trim().is_empty() => words::missing().to_owned(),
        Entry::Text(text) => text.clone(),
    }
}

/// What is wrong and stands at no cell.
fn wrong(shown: &Shown) -> Node {
    if shown.problems.is_empty() {
        return Node::default();
    }
    let at_cell = |field| {
        matches!(
            field,
            TrialField::RecordHead(..) | TrialField::RecordWater(_)
        )
    };
    let rest = shown
        .problems
        .iter()
        .filter(|it| !at_cell(it.field))
        .take(5);
    let lines = rest.map(|it| {
        el("p")
            .class("bad")
            .child(words::trial_problem(it, shown.units))
    });
    el("div").class("verdict").child([
        el("p").child(words::result_waits()),
        lines.collect::<Node>(),
    ])
}

fn tools(bench: Bench, shown: &Shown, outcome: &TrialOutcome) -> Node {
    let sure = bench.clearing.get().is_some();
    let units = shown.units;
    let mut trial = shown.trial.clone();
    for (record, unit) in trial.records.iter_mut().zip(&outcome.units) {
        if let Some(treatment) = outcome.treatments.get(unit.treatment) {
            record.treatment = Name(treatment.name.clone());
        }
    }
    row([
        action("quiet", words::save_records(), move || {
            browser::save_file(words::records_file(), &write_table(&trial, units));
        }),
        action(
            "quiet",
            if sure {
                words::clear_records_sure()
            } else {
                words::clear_records()
            },
            move || {
                bench.clearing.set((!sure).then_some(0));
                if sure {
                    bench.said.set(None);
                    bench.edit(|trial| trial.records.clear());
                }
            },
        )
        .attr("disabled", trial_is_empty(shown)),
    ])
}

fn trial_is_empty(shown: &Shown) -> bool {
    !shown.recorded && shown.trial.records.iter().all(|it| !is_filled(it))
}
