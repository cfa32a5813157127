//! The planting card: hidden on the screen, alone on paper.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live, several};

use super::state::app;
use super::words::{self, Worded};
use crate::advice::{Fact, Outcome, Weight};
use crate::plan::{Dosing, Plan, UnitSystem};

/// Letters beside and below each other up to which the card is set in each size of
/// `style/print.css`. Measured on A4 and US Letter for the ready plans and for the longest cards, in
/// two languages and both systems of units: the lists of no card fill more than 95 % of a page, which
/// leaves room for a long name.
const ROOM: [(usize, &str); 6] = [
    (2000, "0"),
    (2250, "1"),
    (2800, "2"),
    (3050, "3"),
    (3450, "4"),
    (4250, "5"),
];

/// The card of the open plan.
pub fn card() -> Node {
    let app = app();
    let name = move || {
        app.plan.with(|plan| {
            plan.as_ref()
                .map(|plan| words::or_unnamed(&plan.name))
                .unwrap_or_default()
        })
    };
    el("article")
        .class("card")
        .attr("aria-label", words::card())
        .child(
            el("header")
                .child(
                    el("p")
                        .child(words::name())
                        .child(" · ")
                        .child(words::card())
                        // What it is of, where the plan's own name does not say it.
                        .child(live(move || {
                            app.rested_with(|_| ());
                            app.plan
                                .with_untracked(|plan| plan.as_ref().map(subject))
                                .unwrap_or_default()
                        })),
                )
                .child(el("h2").child(live(name))),
        )
        .child(live(move || {
            if app.has_problems() {
                return el("p").child(words::card_waits());
            }
            app.rested_with(|outcome| match outcome.as_ref() {
                Some(outcome) => body(outcome, app.units.get()),
                None => Node::default(),
            })
        }))
}

fn list(lines: Vec<String>) -> Node {
    lines
        .into_iter()
        .map(|line| el("li").child(line))
        .collect::<Node>()
}

#[expect(
    clippy::too_many_lines,
    reason = "one view, top to bottom, as it is seen"
)]
fn body(outcome: &Outcome, units: UnitSystem) -> Node {
    let alarms = words::alarms(outcome, units);
    let prepare = words::card_prepare(outcome, units);
    let mix = words::card_mix(outcome, units);
    let levels = words::card_levels(outcome, units);
    let watch = words::watch_lines(!levels.is_empty(), units);
    let care = cautions(outcome, units);
    let size = size(levels.len(), &alarms, [&prepare, &mix], [&watch, &care]);
    let alarm = (!alarms.is_empty()).then(|| {
        el("section")
            .class("alarm")
            .child(el("h3").child(words::alarm_heading()))
            .child(el("ul").child(list(alarms)))
    });
    el("div")
        .class("card-body")
        .attr("data-type", size)
        .child(alarm)
        .child(
            el("div")
                .class("card-top")
                .child(
                    el("section")
                        .child(el("h3").child(words::card_fill()))
                        .child(
                            el("p")
                                .class("card-figure")
                                .child(words::card_mark(outcome, units)),
                        )
                        .child(el("p").child(words::card_mark_more(outcome, units)))
                        .child((!levels.is_empty()).then(|| {
                            several()
                                .child(el("h3").child(words::card_levels_heading()))
                                .child(el("ul").class("card-levels").child(list(levels)))
                        })),
                )
                .child(
                    el("section")
                        .child(el("h3").child(words::dissolve()))
                        .child(
                            el("p")
                                .class("card-dose")
                                .child(words::card_dose(outcome, units)),
                        )
                        .child(el("p").child(words::card_dose_more(outcome, units)))
                        .child(el("h3").child(words::card_dates_heading()))
                        .child(
                            el("table").child(
                                el("tbody").child(
                                    words::card_dates(outcome)
                                        .into_iter()
                                        .map(|(what, when)| {
                                            el("tr")
                                                .child(el("th").attr("scope", "row").child(what))
                                                .child(el("td").child(when))
                                        })
                                        .collect::<Node>(),
                                ),
                            ),
                        )
                        .child(
                            app()
                                .sowing_is_past()
                                .then(|| el("p").child(words::sowing_past())),
                        )
                        .child(el("p").child(words::card_expect(outcome, units))),
                ),
        )
        .child(
            el("div")
                .class("card-two")
                .child(
                    el("section")
                        .child(el("h3").child(words::card_prepare_heading()))
                        .child(el("ul").child(list(prepare))),
                )
                .child(
                    el("section")
                        .child(el("h3").child(words::card_mix_heading()))
                        .child(el("ol").child(list(mix))),
                ),
        )
        .child(
            el("section")
                .class("card-rule")
                .child(el("h3").child(words::card_rule()))
                .child(el("p").child(words::card_rule_text())),
        )
        .child(
            el("div")
                .class("card-two")
                .child(
                    el("section")
                        .child(el("h3").child(words::card_watch()))
                        .child(el("ul").child(list(watch))),
                )
                .child(
                    el("section")
                        .child(el("h3").child(words::card_cautions()))
                        .child(el("ul").child(list(care))),
                ),
        )
        .child(
            el("div")
                .class("card-foot")
                .child(
                    el("section")
                        .class("card-notes")
                        .child(el("h3").child(words::card_notes()))
                        .child(
                            el("div")
                                .class("ruled")
                                .child(el("span"))
                                .child(el("span"))
                                .child(el("span")),
                        ),
                )
                .child(app().address.get().map(|address| {
                    el("section")
                        .class("card-code")
                        .child(super::hand_on::code(&address))
                        .child(el("p").child(words::scan()))
                })),
        )
}

/// The size in which the lists are set, so that a long list of salts or cautions still fits on one
/// page. Of two lists beside each other the longer counts, twice.
fn size(
    levels: usize,
    alarms: &[String],
    above: [&[String]; 2],
    below: [&[String]; 2],
) -> &'static str {
    // What the end of a line leaves empty, on average.
    const REST: usize = 25;
    // Letters that have no room because of a level, which stands beside the dates.
    const LEVEL: usize = 50;
    let letters = |lines: &[String]| -> usize {
        let of = |line: &String| line.chars().count() + REST;
        lines.iter().map(of).sum()
    };
    let longer = |[one, other]: [&[String]; 2]| letters(one).max(letters(other));
    let all = levels * LEVEL + letters(alarms) + 2 * (longer(above) + longer(below));
    let size = ROOM.iter().find(|(most, _)| all <= *most);
    size.map_or("6", |(_, size)| size)
}

/// Crop, container, what is dissolved, and where the plants stand.
fn subject(plan: &Plan) -> String {
    let salts = plan.fertilizer.dosing.known() == Some(Dosing::Salts);
    let dissolved = if salts {
        plan.fertilizer.recipe.known().map(Worded::word)
    } else {
        plan.fertilizer.blend.known().map(Worded::word)
    };
    let words = [
        plan.crop.kind.known().map(Worded::word),
        plan.container.method.known().map(Worded::word),
        dissolved,
        plan.climate.shelter.known().map(Worded::word),
        plan.climate.kind.known().map(Worded::word),
    ];
    let known = words.into_iter().flatten();
    known.fold(String::new(), |line, word| line + " · " + &word)
}

/// Most cautions that a card of one page holds beside its instructions.
const MOST_CAUTIONS: usize = 8;

/// Stops and cautions that matter at the bench, the gravest first; what only concerns the planning
/// stays on the screen.
fn cautions(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    outcome
        .findings
        .iter()
        .filter(|finding| finding.weight < Weight::Sound && at_the_bench(&finding.fact))
        .take(MOST_CAUTIONS)
        .map(|finding| match finding.fact {
            // What brings it down belongs to the planning.
            Fact::Ph { ph, low, high } => words::ph_sentences(ph, low, high),
            _ => words::finding(finding, units),
        })
        .collect()
}

fn at_the_bench(fact: &Fact) -> bool {
    matches!(
        fact,
        Fact::RunsOut { .. }
            | Fact::NotReached { .. }
            | Fact::PotsHangAbove { .. }
            | Fact::ContactLost { .. }
            | Fact::RootsHang { .. }
            | Fact::Overflows
            | Fact::BoardsSink
            | Fact::RestAtPlanting { .. }
            | Fact::NeverRest
            | Fact::Heavy { .. }
            | Fact::FloorLoad { .. }
            | Fact::OpenWater
            | Fact::Salts
            | Fact::Acid
            | Fact::Electricity
            | Fact::StocksApart { .. }
            | Fact::Warm { .. }
            | Fact::Ph { .. }
            | Fact::FallsOut { .. }
    ) || matches!(fact, Fact::Water { item } if item.severe)
}
