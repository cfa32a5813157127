//! What is wrong with an entry of a trial or a cell of its records, and what is allowed.

use super::say::*;
use super::{problem_line, problem_text, show};
use crate::plan::{Dimension, Problem, ProblemKind, UnitSystem};
use crate::trial::{TableProblem, TableProblemKind, TrialField, TrialProblem, TrialProblemKind};

fn dimension(field: TrialField) -> Option<Dimension> {
    match field {
        TrialField::RecordHead(..) => Some(Dimension::Mass),
        TrialField::RecordWater(_) => Some(Dimension::Volume),
        _ => None,
    }
}

fn value(field: TrialField, kind: &ProblemKind, units: UnitSystem) -> String {
    let measure = dimension(field);
    match (kind, measure) {
        (ProblemKind::OutOfRange { got, low, high }, Some(of)) => TrialProblemRange {
            got: &show(of, *got, units),
            low: &show(of, *low, units),
            high: &show(of, *high, units),
        }
        .text(),
        (ProblemKind::NotANumber { got }, Some(_)) => trial_problem_cell_not_a_number(got),
        (ProblemKind::NotANumber { got }, None) => trial_problem_not_a_number(got),
        (ProblemKind::Missing, _) => trial_problem_missing().to_owned(),
        _ => problem_text(
            &Problem {
                field: None,
                kind: kind.clone(),
            },
            units,
        ),
    }
}

/// The sentence beside a field of a trial.
pub fn trial_problem(problem: &TrialProblem, units: UnitSystem) -> String {
    match &problem.kind {
        TrialProblemKind::NotATrial { line, .. } => trial_problem_not_a_trial(&line.to_string()),
        TrialProblemKind::Count { got, low, high } => TrialProblemCount {
            got: &got.to_string(),
            low: &low.to_string(),
            high: &high.to_string(),
        }
        .text(),
        TrialProblemKind::Repeated { got } => trial_problem_repeated(got),
        TrialProblemKind::UnknownUnit { got } => trial_problem_unknown_unit(got),
        TrialProblemKind::UnknownTreatment { got } => trial_problem_unknown_treatment(got),
        TrialProblemKind::OtherTreatment { got, laid_out } => {
            TrialProblemOtherTreatment { got, laid_out }.text()
        }
        TrialProblemKind::WaterTwice { got, before } => TrialProblemWaterTwice {
            got: &show(Dimension::Volume, *got, units),
            before: &show(Dimension::Volume, *before, units),
        }
        .text(),
        TrialProblemKind::NoPlan => trial_problem_no_plan().to_owned(),
        TrialProblemKind::UnknownField { got } => trial_problem_unknown_field(got),
        TrialProblemKind::PlanProblems { problems } => problems
            .iter()
            .take(3)
            .map(|problem| problem_line(problem, units))
            .collect::<Vec<_>>()
            .join(" "),
        TrialProblemKind::Value(kind) => value(problem.field, kind, units),
    }
}

/// A line of a table that could not be read.
pub fn table_problem(problem: &TableProblem, units: UnitSystem) -> String {
    let what = match &problem.kind {
        TableProblemKind::NoRecords => table_problem_no_records().to_owned(),
        TableProblemKind::UnknownColumn { got } => table_problem_unknown_column(got),
        TableProblemKind::NoFigures => table_problem_no_figures().to_owned(),
        TableProblemKind::TooManyCells { got, columns } => TableProblemTooManyCells {
            cells: &got.to_string(),
            columns: &columns.to_string(),
        }
        .text(),
        TableProblemKind::TooManyLines { most } => table_problem_too_many_lines(&most.to_string()),
        TableProblemKind::OpenQuote => table_problem_open_quote().to_owned(),
        TableProblemKind::Value(kind) => value(TrialField::RecordHead(0, 0), kind, units),
    };
    match (problem.line, problem.column) {
        (0, _) => super::capital(&what),
        (line, 0) => TableProblemInLine {
            line: &line.to_string(),
            what: &what,
        }
        .text(),
        (line, column) => TableProblemInCell {
            line: &line.to_string(),
            column: &column.to_string(),
            what: &what,
        }
        .text(),
    }
}
