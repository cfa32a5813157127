//! How a trial is laid out.

use super::design::said;
use super::kept::{Bench, Shown, lots};
use crate::app::browser::dom::{Node, action, el};
use crate::app::parts::{choice, field, read, row, text_box};
use crate::app::words;
use crate::catalog::Keyed;
use crate::plan::trial::Design;
use crate::plan::{Dimension, Entry, Pick, UnitSystem};
use crate::trial::TrialField;

/// The form of the layout, and what counts as one unit.
pub fn places(bench: Bench, shown: &Shown) -> Node {
    let trial = &shown.trial;
    let locked = shown.recorded;
    let given = !trial.units.is_empty();
    let number =
        |of: TrialField, disabled: bool| number(bench, shown, of).attr("disabled", disabled);
    let boxed = |of: TrialField, disabled: bool| {
        field(
            id_of(of),
            words::trial_label(of),
            words::trial_hint(of),
            shown.problem(of),
            number(of, disabled),
        )
    };
    let designs = Design::ALL.iter().zip(words::designs());
    let list = choice(
        designs
            .map(|(design, word)| (design.key().to_owned(), word.to_owned()))
            .collect(),
        trial.design.key().to_owned(),
        move |key| bench.edit(|trial| trial.design = Pick::from_key(&key)),
    )
    .attr("disabled", locked);
    let design = field(
        "trial-design".to_owned(),
        words::design(),
        words::design_hint(),
        shown.problem(TrialField::Design),
        list,
    );
    let again = action("quiet", words::draw_again(), move || {
        bench.edit(|trial| trial.seed = lots());
    })
    .attr("disabled", locked || given);
    let one = shown.outcome.as_ref().is_some_and(|outcome| {
        let of = |t| {
            outcome
                .units
                .iter()
                .filter(|unit| unit.treatment == t)
                .count()
        };
        (0..outcome.treatments.len()).any(|t| of(t) < 2)
    });
    let fields = |all: &[TrialField], locked| -> Node {
        let all: Node = all.iter().map(|&of| boxed(of, locked)).collect();
        el("div").class("fields").child(all)
    };
    [
        el("p").class("unit-is").child([
            el("strong").child(words::unit_is()),
            ". ".into(),
            words::unit_why().into(),
        ]),
        given
            .then(|| el("p").class("hint").child(words::given()))
            .into(),
        design,
        fields(
            &[
                TrialField::Replicates,
                TrialField::HeadsPerUnit,
                TrialField::Columns,
                TrialField::Seed,
            ],
            locked || given,
        ),
        el("div")
            .attr("role", "status")
            .child(one.then(|| el("p").class("verdict").child(words::one_of_each()))),
        row(again),
        el("details")
            .class("fold")
            .child(el("summary").child(words::more_settings()))
            .child(fields(
                &[
                    TrialField::Difference,
                    TrialField::Power,
                    TrialField::Confidence,
                    TrialField::UnitSpread,
                    TrialField::HeadSpread,
                ],
                false,
            )),
        others(shown),
    ]
    .into()
}

/// What is wrong and has no field of its own on the page.
fn others(shown: &Shown) -> Node {
    if shown.outcome.is_some() {
        return Node::default();
    }
    let own = |field: TrialField| {
        TrialField::NUMBERS.contains(&field)
            || matches!(
                field,
                TrialField::TreatmentName(_)
                    | TrialField::TreatmentChange(_, 0)
                    | TrialField::Design
            )
    };
    let rest = shown.problems.iter().filter(|it| !own(it.field)).take(5);
    let lines: Node = rest
        .map(|it| said(Some(words::trial_problem(it, shown.units))))
        .collect();
    [el("p").class("verdict").child(words::trial_waits()), lines].into()
}

fn id_of(field: TrialField) -> String {
    format!("trial-{}", field.path())
}

fn number(bench: Bench, shown: &Shown, of: TrialField) -> Node {
    let mut trial = shown.trial.clone();
    let text = match of.entry_mut(&mut trial) {
        Some(Entry::Number(value)) => value.to_string(),
        Some(Entry::Text(text)) => std::mem::take(text),
        None => String::new(),
    };
    text_box(text, move |text| {
        bench.edit(|trial| {
            if let Some(entry) = of.entry_mut(trial) {
                *entry = read(&text, Dimension::Factor, UnitSystem::Metric);
            }
        });
    })
    .attr("inputmode", "decimal")
}
