//! What the records allow to be said: in words first, then in figures.

use super::kept::Shown;
use super::plots;
use crate::app::browser;
use crate::app::browser::dom::{Node, action, el};
use crate::app::parts::{items, paragraphs, part, scroll, table};
use crate::app::words;
use crate::plan::UnitSystem;
use crate::trial::{Conclusion, MeasureReport, Refusal, TrialOutcome, report_table};

/// The result under its heading; for screen readers, it says when it changes.
pub fn result(shown: &Shown, outcome: &TrialOutcome) -> Node {
    let body = if !shown.problems.is_empty() {
        el("p").child(words::result_waits())
    } else if outcome.reports.is_empty() {
        el("p").child(words::nothing_yet())
    } else {
        let judged = outcome.reports.iter().any(|it| it.analysis.is_some());
        let csv = judged.then(|| report_table(outcome, shown.units));
        let save = csv.map(|csv| {
            action("quiet", words::save_report(), move || {
                browser::save_file(words::report_file(), &csv);
            })
        });
        [reports(outcome, shown.units, true), save.into()].into()
    };
    part(words::said(), body)
}

/// All measures of which something was recorded; `screen`: with folds and frames that scroll.
pub fn reports(outcome: &TrialOutcome, units: UnitSystem, screen: bool) -> Node {
    let nothing = Conclusion::NotAllowed {
        reason: Refusal::NoRecords,
        naive: None,
    };
    outcome
        .reports
        .iter()
        .filter(|report| report.conclusion != nothing)
        .map(|report| measure(outcome, report, units, screen))
        .collect()
}

fn measure(
    outcome: &TrialOutcome,
    report: &MeasureReport,
    units: UnitSystem,
    screen: bool,
) -> Node {
    let of = report.measure;
    let name = words::measure(of);
    let refused = matches!(report.conclusion, Conclusion::NotAllowed { .. });
    let lines = paragraphs(words::conclusion(outcome, report, units));
    let framed = |name, table| if screen { scroll(name, table) } else { table };
    let figures = report.analysis.as_ref().map(|analysis| -> Node {
        let means = table(
            &words::mean_heads(),
            words::mean_lines(outcome, of, analysis, units),
        );
        let pairs = table(&words::pair_heads(), words::pair_lines(of, analysis, units));
        let variance = table(
            &words::variance_heads(),
            words::variance_lines(of, analysis, units),
        );
        let checks: Node = [
            framed(words::variance(), variance),
            el("ul")
                .class("plain")
                .child(items(words::check_lines(of, analysis, units))),
            plots::residuals(&analysis.residuals),
        ]
        .into();
        let checks = if screen {
            el("details")
                .class("fold")
                .child(el("summary").child(words::variance()))
                .child(checks)
        } else {
            el("section")
                .child(el("h4").child(words::variance()))
                .child(checks)
        };
        [
            framed(words::means_of(of), means),
            el("p").class("hint").child(words::mean_note(analysis)),
            el("p").class("hint").child(words::letters()),
            framed(words::pairs_of(of), pairs),
            el("p")
                .class("hint")
                .child(words::pair_note(analysis.method)),
            checks,
        ]
        .into()
    });
    el("section").class("measure").child([
        el("h4").child(name),
        el("div")
            .class(if refused {
                "verdict refused"
            } else {
                "verdict"
            })
            .attr("role", screen.then_some("status"))
            .child(lines),
        plots::dots(outcome, report, units),
        figures.into(),
    ])
}
