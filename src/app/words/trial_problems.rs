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
        (ProblemKind::OutOfRange { got, low, high }, Some(of)) => format!(
            "{} is outside what is allowed: {} to {}.",
            show(of, *got, units),
            show(of, *low, units),
            show(of, *high, units)
        ),
        (ProblemKind::NotANumber { got }, Some(_)) => {
            format!("'{got}' is not a number. Leave the cell empty where it is missing.")
        }
        (ProblemKind::NotANumber { got }, None) => format!("'{got}' is not a number."),
        (ProblemKind::Missing, _) => "Fill this in.".to_owned(),
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
        TrialProblemKind::NotATrial { line, .. } => {
            format!("This is not a trial: it cannot be read from line {line} on.")
        }
        TrialProblemKind::Count { got, low, high } => {
            format!("{got} are too few or too many: {low} to {high} are allowed.")
        }
        TrialProblemKind::Repeated { got } => {
            format!("'{got}' stands twice. Each needs a name of its own.")
        }
        TrialProblemKind::UnknownUnit { got } => {
            format!("No container of this layout is called '{got}'.")
        }
        TrialProblemKind::UnknownTreatment { got } => format!("No variant is called '{got}'."),
        TrialProblemKind::OtherTreatment { got, laid_out } => {
            format!("The record says '{got}', but the layout gave this container '{laid_out}'.")
        }
        TrialProblemKind::WaterTwice { got, before } => format!(
            "The solution used stands twice: {} here, {} before.",
            show(Dimension::Volume, *got, units),
            show(Dimension::Volume, *before, units)
        ),
        TrialProblemKind::NoPlan => trial_problem_no_plan().to_owned(),
        TrialProblemKind::UnknownField { got } => format!("A plan has no field '{got}'."),
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
        TableProblemKind::UnknownColumn { got } => {
            format!("the column '{got}' is not known and was left out.")
        }
        TableProblemKind::NoFigures => table_problem_no_figures().to_owned(),
        TableProblemKind::TooManyCells { got, columns } => {
            format!("{got} cells, but the table has {columns} columns.")
        }
        TableProblemKind::TooManyLines { most } => format!("only {most} lines are read."),
        TableProblemKind::OpenQuote => table_problem_open_quote().to_owned(),
        TableProblemKind::Value(kind) => value(TrialField::RecordHead(0, 0), kind, units),
    };
    match (problem.line, problem.column) {
        (0, _) => super::capital(&what),
        (line, 0) => format!("Line {line}: {what}"),
        (line, column) => format!("Line {line}, column {column}: {what}"),
    }
}
