//! The label of the blend.

use super::reader::Reader;
use crate::plan::{Field, ProblemKind, Rule};
use crate::science::label::{Composition, Grade, Label, LabelLine, LabelProblem, Nutrient};
use crate::science::units::Ratio;
use crate::science::units::ratio::percent;

/// The label of the blend and its grade; a line left empty counts as nothing declared.
pub(super) fn label(reader: &mut Reader) -> Option<(Composition, Grade)> {
    // Many labels print only the forms; then there is no total to check them against.
    let total_is_printed = !reader.plan.fertilizer.label.nitrogen_pct.is_blank();
    let mut fraction = |field: Field| reader.number_or_zero(field).map(Ratio::new::<percent>);
    let total_n = fraction(Field::LabelNitrogen);
    let lines = [
        Field::LabelNitrate,
        Field::LabelAmmonium,
        Field::LabelUrea,
        Field::LabelPhosphate,
        Field::LabelPotash,
        Field::LabelCalcium,
        Field::LabelMagnesium,
        Field::LabelSulfur,
        Field::LabelIron,
        Field::LabelManganese,
        Field::LabelZinc,
        Field::LabelCopper,
        Field::LabelBoron,
        Field::LabelMolybdenum,
    ]
    .map(fraction);
    if lines.iter().any(Option::is_none) {
        return None;
    }
    let [
        nitrate_n,
        ammonium_n,
        urea_n,
        p2o5,
        k2o,
        ca,
        mg,
        s,
        fe,
        mn,
        zn,
        cu,
        b,
        mo,
    ] = lines.map(Option::unwrap_or_default);
    let label = Label {
        total_n: Some(total_n?).filter(|_| total_is_printed),
        nitrate_n,
        ammonium_n,
        urea_n,
        p2o5,
        k2o,
        ca,
        mg,
        s,
        fe,
        mn,
        zn,
        cu,
        b,
        mo,
    };
    match Composition::from_label(&label) {
        Ok(composition) => Some((composition, label.grade())),
        Err(problems) => {
            for problem in problems {
                let (field, kind) = worded(problem);
                reader.problem(field, kind);
            }
            None
        }
    }
}

fn worded(problem: LabelProblem) -> (Field, ProblemKind) {
    let percent_of = |ratio: Ratio| ratio.get::<percent>();
    match problem {
        LabelProblem::NotAFraction { line, got } => (
            field_of(line),
            ProblemKind::OutOfRange {
                got: percent_of(got),
                low: 0.0,
                high: 100.0,
            },
        ),
        LabelProblem::NitrogenForms { forms, total, .. } => (
            Field::LabelNitrogen,
            ProblemKind::Conflict {
                got: percent_of(total),
                rule: Rule::NitrogenFormsMakeTotal,
                limit: percent_of(forms),
            },
        ),
        LabelProblem::OverFull { least, limit } => (
            Field::Blend,
            ProblemKind::Conflict {
                got: percent_of(least),
                rule: Rule::LabelWithinWhole,
                limit: percent_of(limit),
            },
        ),
    }
}

fn field_of(line: LabelLine) -> Field {
    match line {
        LabelLine::TotalNitrogen => Field::LabelNitrogen,
        LabelLine::Nutrient(nutrient) => match nutrient {
            Nutrient::AmmoniumN => Field::LabelAmmonium,
            Nutrient::UreaN => Field::LabelUrea,
            Nutrient::P => Field::LabelPhosphate,
            Nutrient::K => Field::LabelPotash,
            Nutrient::Ca => Field::LabelCalcium,
            Nutrient::Mg => Field::LabelMagnesium,
            Nutrient::S => Field::LabelSulfur,
            Nutrient::Fe => Field::LabelIron,
            Nutrient::Mn => Field::LabelManganese,
            Nutrient::Zn => Field::LabelZinc,
            Nutrient::Cu => Field::LabelCopper,
            Nutrient::B => Field::LabelBoron,
            Nutrient::Mo => Field::LabelMolybdenum,
            _ => Field::LabelNitrate,
        },
    }
}
