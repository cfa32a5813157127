//! What is wrong with an entry, and what is allowed.

use super::fields::label;
use super::say::*;
use crate::plan::{Dimension, Field, Problem, ProblemKind, Rule, UnitSystem};

/// Heading of the summary.
pub fn problems_heading(count: usize) -> String {
    match count {
        1 => "One entry needs mending".to_owned(),
        count => format!("{count} entries need mending"),
    }
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
    let Some(limits) = field.and_then(Field::limits) else {
        return Dimension::Factor.text(value, units);
    };
    let symbol = limits.dimension.symbol(units);
    let text = limits.dimension.text(value, units).replace('-', "−");
    match symbol {
        "" => text,
        "%" | "°" => format!("{text}{symbol}"),
        symbol => format!("{text}\u{a0}{symbol}"),
    }
}

/// What a field takes, for a text that is no such thing.
fn allowed(field: Option<Field>, units: UnitSystem) -> String {
    field
        .and_then(Field::limits)
        .map_or_else(String::new, |limits| {
            format!(
                "Enter a number from {} to {}.",
                amount(field, limits.low, units),
                amount(field, limits.high, units)
            )
        })
}

/// The sentence beside the field.
pub fn problem_text(problem: &Problem, units: UnitSystem) -> String {
    let field = problem.field;
    let of = |value: f64| amount(field, value, units);
    match &problem.kind {
        ProblemKind::Missing => match field {
            Some(Field::Date) => "Enter a date, such as 2027-03-01.".to_owned(),
            Some(Field::Salts) => "Put at least one salt on the shelf.".to_owned(),
            Some(field) if field.limits().is_some() => allowed(Some(field), units),
            _ => "Choose one.".to_owned(),
        },
        ProblemKind::NotANumber { got } => {
            format!("'{got}' is not a number. {}", allowed(field, units))
        }
        ProblemKind::UnknownUnit { got } => format!(
            "The unit in '{got}' does not fit here. {}",
            allowed(field, units)
        ),
        ProblemKind::CommaOrThousands { got } => format!(
            "'{got}' can be read two ways. Write {} or {}.",
            got.replace(',', "."),
            got.replace(',', "")
        ),
        ProblemKind::TooLarge { got } => format!("'{got}' is too large to work with."),
        ProblemKind::OutOfRange { got, low, high } => format!(
            "{} is outside what is allowed: {} to {}.",
            of(*got),
            of(*low),
            of(*high)
        ),
        ProblemKind::NotWhole { got } => format!("{} is not a whole number.", of(*got)),
        ProblemKind::NotAChoice { got, .. } => match field {
            Some(Field::Shape) => {
                "Floating boards need a box with straight walls, or they jam as the level falls."
                    .to_owned()
            }
            _ => format!("'{got}' is not on the list. Choose one."),
        },
        ProblemKind::NotAFormula { got } => format!(
            "'{got}' is neither a salt of the list nor a chemical formula such as KNO3 or MgSO4.7H2O."
        ),
        ProblemKind::NotADate { got } => {
            format!("'{got}' is no date of the calendar. Write year-month-day, such as 2027-03-01.")
        }
        ProblemKind::Conflict { got, rule, limit } => conflict(*rule, &of(*got), &of(*limit)),
        ProblemKind::MeasuredPairs { got, needed } => {
            format!("{got} lines are filled in; {needed} or more are needed.")
        }
        ProblemKind::NotAPlan { line, column } => {
            format!("This is not a plan: it cannot be read from line {line}, column {column} on.")
        }
        ProblemKind::BeyondModels if field.is_some() => {
            "This asks for more than any solution holds.".to_owned()
        }
        ProblemKind::BeyondModels => problem_text_beyond_models().to_owned(),
        ProblemKind::NewerVersion { got, supported } => format!(
            "This plan was saved by a later version ({got}; this page reads up to {supported}). Reload the page to get the later version."
        ),
    }
}

fn conflict(rule: Rule, got: &str, limit: &str) -> String {
    match rule {
        Rule::NeckNarrowerThanBody => {
            format!("A neck of {got} is wider than the body. At most {limit}.")
        }
        Rule::PotReachesBelowCover => {
            format!("The net pot is {limit} high and would not reach through {got}.")
        }
        Rule::PotNarrowsDownwards => {
            format!("A net pot is no wider at its foot than at its top: at most {limit}.")
        }
        Rule::PotPassesNeck => format!("The pot does not pass the neck of {limit}."),
        Rule::PotsFitCover => {
            format!("{got} leaves no room for the flanges side by side. The limit is {limit}.")
        }
        Rule::FlangeHoldsPot => {
            format!("The flange must be wider than the pot's {limit}, or the pot falls through.")
        }
        Rule::ImmersionWithinPot => {
            format!("The pot reaches only {limit} below the cover, so it cannot stand {got} deep.")
        }
        Rule::PotAboveFloor => format!("The pot would stand on the floor. Lower than {limit}."),
        Rule::FillWithinContainer | Rule::MeasuredWithinRim => {
            format!("{got} is above the rim. At most {limit}.")
        }
        Rule::BoardsFitLength | Rule::BoardsFitWidth => {
            format!("A board of {got} does not fit into the tank: at most {limit}.")
        }
        Rule::BoardsFitArea => format!("{got} boards do not fit into the tank: at most {limit}."),
        Rule::PipeWithinTank => conflict_pipe_within_tank().to_owned(),
        Rule::PipesFitWidth => format!("{got} pipes do not fit side by side: at most {limit}."),
        Rule::PipesReachWalls => {
            format!("Pipes this far apart reach beyond the sides: at most {limit}.")
        }
        Rule::WallWithinPipe => format!("A wall of {got} fills the whole pipe. Less than {limit}."),
        Rule::OnePlantFits => {
            format!("A spacing of {got} leaves room for no plant at all: at most {limit}.")
        }
        Rule::MinimumBelowMaximum => {
            format!("The night cannot be warmer than the day's {limit}.")
        }
        Rule::SunshineWithinDaylight => {
            format!("The day is only {limit} long at this latitude and date.")
        }
        Rule::RadiationBelowExtraterrestrial => format!(
            "More than reaches the top of the air at this latitude and date: at most {limit}."
        ),
        Rule::DissolvesInStore => format!(
            "{got} does not dissolve at the coldest of the store: at most {limit}. Make the stock weaker, or keep it warmer."
        ),
        Rule::TargetAboveRawWater => {
            format!("Your water alone has {limit}. The target must be above that.")
        }
        Rule::NitrogenFormsMakeTotal => format!(
            "Total nitrogen is {got}, but nitrate, ammonium and urea add up to {limit}. One of them is not what the bag says."
        ),
        Rule::LabelWithinWhole => format!(
            "What this label names makes at least {got}% of the bag, and a bag holds {limit}%. Check each line of it."
        ),
        Rule::BlendConducts => conflict_blend_conducts().to_owned(),
        Rule::BlendHasNitrogen => conflict_blend_has_nitrogen().to_owned(),
    }
}

/// A field left empty.
pub fn assumed_text(field: Field, value: f64, units: UnitSystem) -> String {
    format!(
        "Left empty: {} is taken, as is usual.",
        amount(Some(field), value, units)
    )
}

/// A value that is allowed but seldom met.
pub fn unusual_text(field: Field, low: f64, high: f64, units: UnitSystem) -> String {
    format!(
        "Unusual. Most are between {} and {}. Look again.",
        amount(Some(field), low, units),
        amount(Some(field), high, units)
    )
}
