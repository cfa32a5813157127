//! How tanks are run one after another.

use crate::advice::outcome::{BoardsOutcome, Fill, RunningOutcome, SeasonOutcome, WorkStep};
use crate::plan::Sound;

/// Days from one harvest to the next planting: common practice, no source.
const TURNAROUND_DAYS: u32 = 1;

/// The running of a plan's tanks; `None` where nothing is harvested.
pub fn running(
    sound: &Sound,
    fill: &Fill,
    season: &SeasonOutcome,
    boards: Option<&BoardsOutcome>,
) -> Option<RunningOutcome> {
    use WorkStep::{
        AddFertilizer, ClearPots, CloseEdges, CutHeads, Drain, FillUp, FloatBoards, Inspect,
        Measure, Plant, PullBoards, WashBoards,
    };
    let cycle_days = season.harvest_day? + TURNAROUND_DAYS;
    let tanks = sound.container.count;
    let heads = f64::from(fill.plants) * f64::from(tanks);
    let work = if boards.is_some() {
        vec![
            PullBoards,
            CutHeads,
            ClearPots,
            WashBoards,
            Inspect,
            FillUp,
            AddFertilizer,
            Measure,
            Plant,
            FloatBoards,
            CloseEdges,
        ]
    } else {
        vec![
            CutHeads,
            ClearPots,
            WashBoards,
            Drain,
            Inspect,
            FillUp,
            AddFertilizer,
            Measure,
            Plant,
            FloatBoards,
        ]
    };
    Some(RunningOutcome {
        initial_fill_l: fill.volume_l,
        refloat_l: boards.map(|boards| boards.refloat_l),
        tanks,
        cycle_days,
        days_between_tanks: f64::from(cycle_days) / f64::from(tanks),
        heads_per_week: heads * 7.0 / f64::from(cycle_days),
        work,
    })
}
