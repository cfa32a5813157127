//! One measure analysed: units are the replicates, heads of one unit are subsamples.

mod rows;

use crate::science::statistics::{
    Anova, Layout, Observation, Spread, StatisticsProblem, analyse, brown_forsythe, detectable,
    games_howell, mean, nested, shapiro_wilk, tukey_kramer, welch,
};

use super::check::Sound;
use super::report::{
    Analysis, Conclusion, LeftOut, Measure, MeasureReport, Method, Naive, PairRow, Refusal,
    SpreadRow, UnitValue, WelchRow,
};
use crate::plan::trial::Design;
use rows::{mean_rows, pair_rows, residuals, table_rows};

impl From<StatisticsProblem> for Refusal {
    fn from(problem: StatisticsProblem) -> Self {
        match problem {
            StatisticsProblem::NotConnected => Self::NotConnected,
            StatisticsProblem::NoDegreesOfFreedom => Self::NothingLeftForError,
            StatisticsProblem::NoSpread => Self::NoSpread,
            _ => Self::BeyondMethod,
        }
    }
}

impl From<Design> for Layout {
    fn from(design: Design) -> Self {
        match design {
            Design::Randomised => Self::Randomised,
            Design::Blocks => Self::Blocks,
        }
    }
}

/// Analyses one measure of a sound trial.
pub(super) fn report(sound: &Sound, measure: Measure) -> MeasureReport {
    let units = values(sound, measure);
    let count = sound.names.len();
    let of = |t: usize| units.iter().filter(move |unit| unit.treatment == t).count();
    let left_out: Vec<LeftOut> = (0..count)
        .map(|treatment| LeftOut {
            treatment,
            units: of(treatment),
        })
        .filter(|it| it.units < 2)
        .collect();
    let kept: Vec<usize> = (0..count).filter(|&t| of(t) >= 2).collect();
    let judged = judge(sound, measure, &units, &left_out, &kept);
    let (conclusion, analysis) = match judged {
        Ok((conclusion, analysis)) => (conclusion, Some(analysis)),
        Err(reason) => {
            let naive = (measure == Measure::HeadMass)
                .then(|| naive(sound, &units))
                .flatten();
            (Conclusion::NotAllowed { reason, naive }, None)
        }
    };
    MeasureReport {
        measure,
        units,
        left_out,
        conclusion,
        analysis,
    }
}

/// The value of each unit that has one.
fn values(sound: &Sound, measure: Measure) -> Vec<UnitValue> {
    sound
        .units
        .iter()
        .zip(&sound.recorded)
        .filter_map(|(unit, recorded)| {
            let heads_g = recorded.weighed();
            let head = mean(&heads_g)?;
            let planted = sound.heads_per_unit as usize;
            let value = match measure {
                Measure::HeadMass => head,
                // Heads that were not weighed drew water too: they count with the others' mean.
                Measure::WaterPerKg => recorded.water? * 1000.0 / (head * planted as f64),
            };
            Some(UnitValue {
                unit: unit.unit.clone(),
                treatment: unit.treatment,
                block: unit.block,
                value,
                missing: planted.saturating_sub(heads_g.len()),
                heads_g,
            })
        })
        .collect()
}

fn judge(
    sound: &Sound,
    measure: Measure,
    units: &[UnitValue],
    left_out: &[LeftOut],
    kept: &[usize],
) -> Result<(Conclusion, Analysis), Refusal> {
    if measure == Measure::HeadMass && sound.without_unit.iter().any(|own| !own.is_empty()) {
        return Err(Refusal::HeadsWithoutUnit);
    }
    if units.is_empty() {
        return Err(Refusal::NoRecords);
    }
    if kept.len() < 2 {
        let single = left_out.iter().filter(|it| it.units == 1).count();
        return Err(if single > 0 && single + kept.len() > 1 {
            Refusal::OneUnitEach
        } else {
            Refusal::OneTreatment
        });
    }
    Ok(analysed(sound, measure, units, kept)?)
}

/// Treatments are numbered anew among those kept, and back again in the rows.
fn analysed(
    sound: &Sound,
    measure: Measure,
    units: &[UnitValue],
    kept: &[usize],
) -> Result<(Conclusion, Analysis), StatisticsProblem> {
    let place = |unit: &UnitValue| kept.iter().position(|&t| t == unit.treatment);
    let own: Vec<(usize, &UnitValue)> = units
        .iter()
        .filter_map(|unit| Some((place(unit)?, unit)))
        .collect();
    let observations: Vec<Observation> = own
        .iter()
        .map(|&(treatment, unit)| Observation {
            treatment,
            block: unit.block,
            value: unit.value,
        })
        .collect();
    let groups: Vec<Vec<f64>> = (0..kept.len())
        .map(|t| {
            let of = own.iter().filter(|(treatment, _)| *treatment == t);
            of.map(|(_, unit)| unit.value).collect()
        })
        .collect();
    let table = analyse(&observations, kept.len(), sound.blocks.len())?;
    let heads: Vec<Vec<f64>> = own.iter().map(|(_, unit)| unit.heads_g.clone()).collect();
    let subsamples = match measure {
        Measure::HeadMass => nested(&heads, table.error_mean_square, table.error_freedom)?,
        Measure::WaterPerKg => None,
    };

    // In blocks a treatment's own spread shows in what the analysis leaves of it.
    let spread_of = if sound.design == Design::Blocks {
        (0..kept.len())
            .map(|t| {
                let of = observations.iter().zip(&table.residuals);
                let of = of.filter(|(it, _)| it.treatment == t);
                of.map(|(_, residual)| *residual).collect()
            })
            .collect()
    } else {
        groups.clone()
    };
    let equal_spread = brown_forsythe(&spread_of).ok().map(Into::into);
    let unequal = equal_spread.is_some_and(|check: super::report::CheckRow| !check.holds);
    let level = 1.0 - sound.alpha;
    let welch = (sound.design == Design::Randomised)
        .then(|| welch(&groups).ok())
        .flatten();
    let howell = (unequal && welch.is_some())
        .then(|| games_howell(&groups, level).ok())
        .flatten();
    let (method, pairs, p) = match (howell, welch) {
        (Some(pairs), Some(welch)) => (Method::OwnSpreads, pairs, welch.p),
        _ => (
            Method::OneSpread,
            tukey_kramer(&table, level)?,
            table.treatments.p,
        ),
    };

    let grand = mean(&observations.iter().map(|it| it.value).collect::<Vec<f64>>());
    let grand = grand.unwrap_or_default();
    let rows = pair_rows(&pairs, &table, &groups, method, kept);
    let smallest = smallest_seen(sound, &table, &groups)?;
    let means = mean_rows(sound, &table, &groups, &own, &pairs, method, kept)?;
    let conclusion = conclude(sound, p, &rows, smallest);
    Ok((
        conclusion,
        Analysis {
            method,
            confidence_pct: 100.0 * level,
            means,
            table: table_rows(&table, subsamples.as_ref()),
            explained_pct: 100.0 * table.explained(),
            adjusted: table.adjusted,
            welch: welch.map(|it| WelchRow {
                f: it.f,
                between_freedom: it.between_freedom,
                within_freedom: it.within_freedom,
                p: it.p,
            }),
            pairs: rows,
            normality: shapiro_wilk(&table.residuals).ok().map(Into::into),
            equal_spread,
            residuals: residuals(&own, &table)?,
            spread: subsamples.map(|it| SpreadRow {
                units: it.components.between_units,
                heads: it.components.within_units,
                units_pct: 100.0 * it.components.between_units / grand,
                heads_pct: 100.0 * it.components.within_units / grand,
                heads_per_unit: it.per_unit,
            }),
            variation_pct: 100.0 * table.error_mean_square.sqrt() / grand,
            detectable: smallest,
        },
    ))
}

/// The smallest difference that a trial like this one shows.
fn smallest_seen(
    sound: &Sound,
    table: &Anova,
    groups: &[Vec<f64>],
) -> Result<f64, StatisticsProblem> {
    // With unequal numbers their harmonic mean counts (Cohen 1988, section 8.3.2).
    let inverse: f64 = groups.iter().map(|own| 1.0 / own.len() as f64).sum();
    let harmonic = groups.len() as f64 / inverse;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "from 2 to the number of units"
    )]
    let replicates = (harmonic.floor() as u32).max(2);
    let spread = Spread {
        units: table.error_mean_square.sqrt(),
        heads: 0.0,
        heads_per_unit: 1,
    };
    let treatments = u32::try_from(groups.len()).unwrap_or(u32::MAX);
    detectable(
        sound.design.into(),
        treatments,
        replicates,
        &spread,
        sound.alpha,
        sound.power,
    )
}

fn conclude(sound: &Sound, p: f64, rows: &[PairRow], detectable: f64) -> Conclusion {
    let pairs: Vec<PairRow> = rows.iter().copied().filter(|it| it.differ).collect();
    if !pairs.is_empty() {
        Conclusion::Differs { p, pairs }
    } else if p < sound.alpha {
        Conclusion::DiffersSomewhere { p }
    } else {
        let half_width = rows
            .iter()
            .map(|it| it.high - it.difference)
            .fold(0.0, f64::max);
        Conclusion::CannotBeTold {
            p,
            detectable,
            half_width,
        }
    }
}

/// What a test would claim that takes every head for a replicate.
fn naive(sound: &Sound, units: &[UnitValue]) -> Option<Naive> {
    let mut groups = sound.without_unit.clone();
    for unit in units {
        groups[unit.treatment].extend(&unit.heads_g);
    }
    let known = sound.without_unit.iter().all(Vec::is_empty);
    groups.retain(|own| !own.is_empty());
    let heads: Vec<Observation> = groups
        .iter()
        .enumerate()
        .flat_map(|(treatment, own)| {
            own.iter().map(move |&value| Observation {
                treatment,
                block: 0,
                value,
            })
        })
        .collect();
    // With one head of a treatment there is nothing to be misled by.
    let table = analyse(&heads, groups.len(), 1).ok()?;
    Some(Naive {
        heads: heads.len(),
        units: known.then_some(units.len()),
        f: table.treatments.f,
        between_freedom: table.treatments.freedom,
        within_freedom: table.error_freedom,
        p: table.treatments.p,
    })
}
