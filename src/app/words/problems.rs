//! What is wrong with an entry, and what is allowed.

use super::fields::label;
use super::figures::in_full;
use super::finding_parts::sentences;
use super::say::*;
use crate::plan::{Dimension, Field, Problem, ProblemKind, Rule, UnitSystem};

/// Heading of the summary.
pub fn problems_heading(count: usize) -> String {
    entries_to_mend(&count.to_string())
}

/// One line of the summary: where, and what.
pub fn problem_line(problem: &Problem, units: UnitSystem) -> String {
    match problem.field {
        Some(field) => format!("{}: {}", label(field), problem_text(problem, units)),
        None => problem_text(problem, units),
    }
}

/// A limit in the reader's units, with its unit.
fn amount(field: Option<Field>, value: f64, units: UnitSystem) -> String {
    let dimension = field
        .and_then(Field::limits)
        .map_or(Dimension::Factor, |limits| limits.dimension);
    in_full(dimension, value, units)
}

/// What a field takes, for a text that is no such thing.
fn allowed(field: Option<Field>, units: UnitSystem) -> Option<String> {
    let limits = field.and_then(Field::limits)?;
    let span = ProblemNumberFromTo {
        low: &amount(field, limits.low, units),
        high: &amount(field, limits.high, units),
    };
    Some(span.text())
}

/// The sentence beside the field.
pub fn problem_text(problem: &Problem, units: UnitSystem) -> String {
    let field = problem.field;
    let of = |value: f64| amount(field, value, units);
    match &problem.kind {
        ProblemKind::Missing => match field {
            Some(Field::Date) => problem_missing_date().to_owned(),
            Some(Field::Salts) => problem_missing_salts().to_owned(),
            field => allowed(field, units).unwrap_or_else(|| problem_missing_choice().to_owned()),
        },
        ProblemKind::NotANumber { got } => {
            sentences(&[Some(problem_not_a_number(got)), allowed(field, units)])
        }
        ProblemKind::UnknownUnit { got } => {
            sentences(&[Some(problem_unknown_unit(got)), allowed(field, units)])
        }
        // Both ways as they can be typed anywhere.
        ProblemKind::CommaOrThousands { got } => ProblemCommaOrThousands {
            got,
            fraction: &got.replace(',', "."),
            whole: &got.replace(',', ""),
        }
        .text(),
        ProblemKind::TooLarge { got } => problem_too_large(got),
        ProblemKind::OutOfRange { got, low, high } => ProblemOutOfRange {
            got: &of(*got),
            low: &of(*low),
            high: &of(*high),
        }
        .text(),
        ProblemKind::NotWhole { got } => problem_not_whole(&of(*got)),
        ProblemKind::NotAChoice { got, .. } => match field {
            Some(Field::Shape) => problem_boards_need_box().to_owned(),
            _ => problem_not_a_choice(got),
        },
        ProblemKind::NotAFormula { got } => problem_not_a_formula(got),
        ProblemKind::NotADate { got } => problem_not_a_date(got),
        ProblemKind::Conflict { got, rule, limit } => conflict(*rule, &of(*got), &of(*limit)),
        ProblemKind::MeasuredPairs { got, needed } => ProblemMeasuredPairs {
            got: &got.to_string(),
            needed: &needed.to_string(),
        }
        .text(),
        ProblemKind::NotAPlan { line, column } => ProblemNotAPlan {
            line: &line.to_string(),
            column: &column.to_string(),
        }
        .text(),
        ProblemKind::BeyondModels if field.is_some() => problem_beyond_any_solution().to_owned(),
        ProblemKind::BeyondModels => problem_text_beyond_models().to_owned(),
        ProblemKind::NewerVersion { got, supported } => ProblemNewerVersion {
            got: &got.to_string(),
            supported: &supported.to_string(),
        }
        .text(),
    }
}

fn conflict(rule: Rule, got: &str, limit: &str) -> String {
    match rule {
        Rule::NeckNarrowerThanBody => ConflictNeckNarrowerThanBody { got, limit }.text(),
        Rule::PotReachesBelowCover => ConflictPotReachesBelowCover { got, limit }.text(),
        Rule::PotNarrowsDownwards => conflict_pot_narrows_downwards(limit),
        Rule::PotPassesNeck => conflict_pot_passes_neck(limit),
        Rule::PotsFitCover => ConflictPotsFitCover { got, limit }.text(),
        Rule::FlangeHoldsPot => conflict_flange_holds_pot(limit),
        Rule::ImmersionWithinPot => ConflictImmersionWithinPot { got, limit }.text(),
        Rule::PotAboveFloor => conflict_pot_above_floor(limit),
        Rule::FillWithinContainer | Rule::MeasuredWithinRim => {
            ConflictWithinRim { got, limit }.text()
        }
        Rule::BoardsFitLength | Rule::BoardsFitWidth => ConflictBoardFits { got, limit }.text(),
        Rule::BoardsFitArea => ConflictBoardsFitArea { got, limit }.text(),
        Rule::PipeWithinTank => conflict_pipe_within_tank().to_owned(),
        Rule::PipesFitWidth => ConflictPipesFitWidth { got, limit }.text(),
        Rule::PipesReachWalls => conflict_pipes_reach_walls(limit),
        Rule::WallWithinPipe => ConflictWallWithinPipe { got, limit }.text(),
        Rule::OnePlantFits => ConflictOnePlantFits { got, limit }.text(),
        Rule::MinimumBelowMaximum => conflict_minimum_below_maximum(limit),
        Rule::SunshineWithinDaylight => conflict_sunshine_within_daylight(limit),
        Rule::RadiationBelowExtraterrestrial => conflict_radiation_below_extraterrestrial(limit),
        Rule::DissolvesInStore => ConflictDissolvesInStore { got, limit }.text(),
        Rule::TargetAboveRawWater => conflict_target_above_raw_water(limit),
        Rule::NitrogenFormsMakeTotal => ConflictNitrogenFormsMakeTotal { got, limit }.text(),
        Rule::LabelWithinWhole => ConflictLabelWithinWhole { got, limit }.text(),
        Rule::BlendConducts => conflict_blend_conducts().to_owned(),
        Rule::BlendHasNitrogen => conflict_blend_has_nitrogen().to_owned(),
    }
}

/// A field left empty.
pub fn assumed_text(field: Field, value: f64, units: UnitSystem) -> String {
    field_left_empty(&amount(Some(field), value, units))
}

/// A value that is allowed but seldom met.
pub fn unusual_text(field: Field, low: f64, high: f64, units: UnitSystem) -> String {
    UnusualValue {
        low: &amount(Some(field), low, units),
        high: &amount(Some(field), high, units),
    }
    .text()
}
