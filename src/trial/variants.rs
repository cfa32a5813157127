//! Treatments as plans, and what each is expected to bring.

use serde::Serialize;
use serde_json::Value;

use crate::advice::solve;
use crate::plan::{Entry, Plan, Problem};

use super::problem::{TrialField, TrialProblem, TrialProblemKind};
use crate::plan::trial::{Change, Trial};

/// What the plan of a treatment comes to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Expected {
    /// Days from planting to the target mass; `None` where it is not reached.
    pub harvest_day: Option<u32>,
    /// Fresh mass of a head at the end, g.
    pub head_g: f64,
    /// Water for fresh mass of heads, L/kg.
    pub water_per_kg_l: f64,
    /// Solution in one container at planting, L.
    pub volume_l: f64,
    /// Depth of the fill mark above the floor, cm.
    pub depth_cm: f64,
    /// Conductivity at planting, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
    /// Moist air at the end, cm.
    pub gap_at_end_cm: f64,
    /// Heads over one container.
    pub plants: u32,
}

/// The plan of a treatment.
///
/// # Errors
/// The first change whose path names no single field of a plan, counted from zero.
pub(super) fn variant(plan: &Plan, changes: &[Change]) -> Result<Plan, usize> {
    if changes.is_empty() {
        return Ok(plan.clone());
    }
    // Through the document, because a path is a path of the document.
    let mut document: Value = serde_json::from_str(&plan.to_json()).unwrap_or_default();
    for (index, change) in changes.iter().enumerate() {
        let path = change
            .field
            .trim()
            .replace(['.', '['], "/")
            .replace(']', "");
        let place = document
            .pointer_mut(&format!("/{path}"))
            .filter(|place| place.is_number() || place.is_string())
            .ok_or(index)?;
        *place = match &change.value {
            Entry::Number(value) => Value::from(*value),
            Entry::Text(text) => Value::from(text.as_str()),
        };
    }
    Plan::from_json(&document.to_string()).map_err(|_| 0)
}

fn expected(plan: &Plan) -> Result<Expected, Vec<Problem>> {
    let outcome = solve(plan)?;
    Ok(Expected {
        harvest_day: outcome.season.harvest_day,
        head_g: outcome.season.head_g,
        water_per_kg_l: outcome.season.water_per_kg_l,
        volume_l: outcome.fill.volume_l,
        depth_cm: outcome.fill.depth_cm,
        ec_ms_per_cm: outcome.fertilizer.ec_ms_per_cm,
        gap_at_end_cm: outcome.season.gap_at_end_cm,
        plants: outcome.fill.plants,
    })
}

/// What the plans of all treatments come to, or all problems of these plans.
pub type Expectations = Result<Vec<Option<Expected>>, Vec<TrialProblem>>;

/// What each treatment is expected to bring; `None` without a plan.
///
/// # Errors
/// The problems of every plan that cannot be worked out, at the treatment that it belongs to.
pub fn expectations(trial: &Trial) -> Expectations {
    let Some(plan) = &trial.plan else {
        return Ok(vec![None; trial.treatments.len()]);
    };
    let mut found = Vec::new();
    let mut problems = Vec::new();
    for (index, treatment) in trial.treatments.iter().enumerate() {
        match variant(plan, &treatment.changes) {
            Err(change) => problems.push(TrialProblem {
                field: TrialField::TreatmentChange(index, change),
                kind: TrialProblemKind::UnknownField {
                    got: treatment
                        .changes
                        .get(change)
                        .map(|change| change.field.clone())
                        .unwrap_or_default(),
                },
            }),
            Ok(plan) => match expected(&plan) {
                Ok(outcome) => found.push(Some(outcome)),
                Err(own) => problems.push(TrialProblem {
                    field: if treatment.changes.is_empty() {
                        TrialField::Plan
                    } else {
                        TrialField::TreatmentChange(index, 0)
                    },
                    kind: TrialProblemKind::PlanProblems { problems: own },
                }),
            },
        }
    }
    if problems.is_empty() {
        Ok(found)
    } else {
        Err(problems)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Example, Field};

    fn change(field: &str, value: impl Into<Entry>) -> Change {
        Change {
            field: field.to_owned(),
            value: value.into(),
        }
    }

    #[test]
    fn a_change_reaches_its_field_alone() {
        let plan = Example::FloatingBoards.plan();
        let changes = [
            change("crop.target_head_g", 180.0),
            change("fertilizer.salts[1].salt", "x"),
        ];
        let changed = variant(&plan, &changes).expect("known fields");
        assert_eq!(
            Field::TargetHead.entry(&changed),
            Some(&Entry::Number(180.0))
        );
        assert_eq!(changed.fertilizer.salts[1].salt.key(), "x");
        assert_eq!(changed.climate, plan.climate);
    }

    #[test]
    fn a_path_that_is_no_field_is_refused() {
        let plan = Example::Bucket.plan();
        for path in [
            "",
            "crop",
            "crop.colour",
            "fertilizer.salts[99].salt",
            "container.measured",
            "version.x",
        ] {
            assert_eq!(variant(&plan, &[change(path, 1.0)]), Err(0), "{path}");
        }
    }
}
