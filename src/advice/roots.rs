//! Do the roots reach the solution before the pots lose it, and do they follow it down? And what
//! would mend it where they do not.

use serde::Serialize;

use super::boards::{Fall, day_of};
use super::fill::{self, Filled};
use crate::catalog::Keyed;
use crate::catalog::pipes::PipeChoice;
use crate::plan::{Entry, Field, Plan, Sound, check};
use crate::science::positive;
use crate::science::units::Volume;
use crate::science::units::length::{centimeter, millimeter};
use crate::science::units::mass_concentration::milligram_per_liter;
use crate::science::units::volume::liter;
use crate::season::{Beyond, Cover, PlantCourse, RootDay, Roots, Tank, roots as live};

/// The roots of the plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RootsOutcome {
    /// Growth of the tips in a day where nothing holds them back, mm.
    pub growth_mm_per_day: f64,
    /// Oxygen at the surface of the solution at the season's mean temperature, mg/L.
    pub oxygen_mg_per_l: f64,
    /// The first day on which the tips have left the pots and are in the solution.
    pub reached_day: Option<u32>,
    /// The first day on which the pots no longer stand in the solution.
    pub contact_lost_day: Option<u32>,
    /// The first day that fails, and what would mend it.
    pub failure: Option<RootsFailure>,
    /// Day by day from planting.
    pub days: Vec<RootsDay>,
}

/// The roots at the end of one day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RootsDay {
    /// Days after planting.
    pub day: u32,
    /// Tips above the floor, cm.
    pub tip_cm: f64,
    /// Foot of the pots above the floor, cm; zero where they stand on it.
    pub foot_cm: f64,
    /// Where the roots in moist air begin, above the floor, cm: at the foot of the pots; `None`
    /// while the pots stand in the solution or no root has left them.
    pub air_roots_top_cm: Option<f64>,
    /// Roots in moist air between pots and solution, cm.
    pub air_roots_cm: f64,
    /// Roots in the solution below the pots, cm.
    pub water_roots_cm: f64,
    /// The highest level above the floor, cm, that a refill may bring: the lowest that the solution
    /// has had so far. What has come to lie in moist air since then breathes air and drowns below
    /// it. `None` while boards float, because no moist air has opened yet.
    pub never_above_cm: Option<f64>,
    /// Depth below the surface down to which tips find enough oxygen, cm.
    pub oxygen_reach_cm: f64,
    /// Whether the pots stand in the solution, so that the medium draws it up.
    pub contact: bool,
    /// Whether the tips have left the pots and are in the solution.
    pub reached: bool,
}

/// A day on which neither pots nor roots touch the solution.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RootsFailure {
    /// Days after planting.
    pub day: u32,
    /// How.
    pub kind: RootsFailureKind,
    /// How far the tips hang above the solution, cm.
    pub short_cm: f64,
    /// Single changes, each of which makes the failure disappear.
    pub mends: Vec<Mend>,
}

/// How the roots fail.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum RootsFailureKind {
    /// The pots lose the solution before the roots have reached it.
    ContactLost,
    /// The level falls away from roots that had reached it.
    RootsHang,
}

/// A change of the plan that was tried and helps; the smallest of its kind.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mend {
    /// What is changed, with its figures.
    #[serde(flatten)]
    pub way: MendWay,
    /// The same, entry by entry.
    pub changes: Vec<Change>,
}

/// A way to mend the roots.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "mend", rename_all = "snake_case")]
#[expect(missing_docs, reason = "the names of the figures say what they are")]
pub enum MendWay {
    /// Fill higher: an own fill depth.
    FillDepth { from_cm: f64, to_cm: f64 },
    /// Deeper pots over the same fill mark.
    PotHeight {
        from_cm: f64,
        to_cm: f64,
        fill_depth_cm: f64,
    },
    /// Another pipe; where `fill_anew` the own fill depth is given up as well.
    Pipe {
        from_mm: f64,
        to_mm: f64,
        size: PipeChoice,
        fill_anew: bool,
    },
}

/// One entry of the plan and what to write into it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Change {
    /// Which; written as its path in the plan.
    pub field: Field,
    /// The new entry, as in the saved plan: a figure, the key of a choice, or empty.
    pub value: Entry,
    /// The unit of a figure.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<&'static str>,
}

impl From<MendWay> for Mend {
    fn from(way: MendWay) -> Self {
        let depth = |cm| Change {
            field: Field::FillDepth,
            value: Entry::Number(cm),
            unit: Some("cm"),
        };
        let changes = match way {
            MendWay::FillDepth { to_cm, .. } => vec![depth(to_cm)],
            MendWay::PotHeight {
                to_cm,
                fill_depth_cm,
                ..
            } => vec![
                Change {
                    field: Field::PotHeight,
                    value: Entry::Number(to_cm),
                    unit: Some("cm"),
                },
                depth(fill_depth_cm),
            ],
            MendWay::Pipe {
                size, fill_anew, ..
            } => {
                let pipe = Change {
                    field: Field::Pipe,
                    value: Entry::from(size.key()),
                    unit: None,
                };
                let anew = fill_anew.then(|| Change {
                    field: Field::FillDepth,
                    value: Entry::blank(),
                    unit: None,
                });
                [Some(pipe), anew].into_iter().flatten().collect()
            }
        };
        Self { way, changes }
    }
}

impl Mend {
    /// Makes the change in a plan.
    pub fn apply(&self, plan: &mut Plan) {
        for change in &self.changes {
            change.apply(plan);
        }
    }
}

/// The roots of a plan, and mends where they fail.
///
/// # Errors
/// [`Beyond`] when a model refuses its inputs.
pub(super) fn outcome(
    plan: &Plan,
    sound: &Sound,
    filled: &Filled,
    fall: &Fall,
    course: &PlantCourse,
) -> Result<RootsOutcome, Beyond> {
    let lived = follow(sound, filled, fall, course)?;
    let failure = lived.first_hanging().and_then(|day| {
        let at = lived.days.get(day)?;
        let had_reached = lived.first_reached().is_some_and(|reached| reached < day);
        Some(RootsFailure {
            day: day_of(day * 24),
            kind: if had_reached {
                RootsFailureKind::RootsHang
            } else {
                RootsFailureKind::ContactLost
            },
            short_cm: positive((at.tip - at.level).get::<centimeter>()),
            mends: mends(plan, sound, filled, course),
        })
    });
    let lost = lived.days.iter().position(|day| !day.contact());
    Ok(RootsOutcome {
        growth_mm_per_day: lived.growth_per_day.get::<millimeter>(),
        oxygen_mg_per_l: lived.surface_oxygen.get::<milligram_per_liter>(),
        reached_day: lived.first_reached().map(|day| day_of(day * 24)),
        contact_lost_day: lost.map(|day| day_of(day * 24)),
        failure,
        days: of_days(&lived, fall),
    })
}

fn of_days(lived: &Roots, fall: &Fall) -> Vec<RootsDay> {
    let mut lowest = f64::INFINITY;
    lived
        .days
        .iter()
        .zip(&fall.days)
        .enumerate()
        .map(|(day, (roots, state))| {
            lowest = lowest.min(state.level.get::<centimeter>());
            let open = state.gap().get::<centimeter>() > 0.0;
            of_day(day_of(day * 24), roots, open.then_some(positive(lowest)))
        })
        .collect()
}

fn of_day(day: u32, roots: &RootDay, never_above_cm: Option<f64>) -> RootsDay {
    let in_air = roots.in_air().get::<centimeter>();
    let foot = roots.foot.get::<centimeter>();
    RootsDay {
        day,
        never_above_cm,
        air_roots_top_cm: (in_air > 0.0).then_some(foot),
        tip_cm: positive(roots.tip.get::<centimeter>()),
        foot_cm: positive(roots.foot.get::<centimeter>()),
        air_roots_cm: positive(roots.in_air().get::<centimeter>()),
        water_roots_cm: positive(roots.in_solution().get::<centimeter>()),
        oxygen_reach_cm: positive(roots.oxygen_reach.get::<centimeter>()),
        contact: roots.contact(),
        reached: roots.reached(),
    }
}

fn follow(
    sound: &Sound,
    filled: &Filled,
    fall: &Fall,
    course: &PlantCourse,
) -> Result<Roots, Beyond> {
    let start = filled.volume.get::<liter>();
    let volumes: Vec<Volume> = (0..fall.days.len())
        .map(|day| {
            let hour = (day * 24).min(fall.dry_hour.unwrap_or(usize::MAX));
            let drawn = course.hours.get(hour).or(course.hours.last());
            let drawn = drawn.map_or(0.0, |hour| hour.drawn.get::<liter>());
            Volume::new::<liter>((start - drawn).max(0.0))
        })
        .collect();
    live(sound, &fall.days, &volumes, course)
}

/// Steps in which a length is tried, cm: what a tape shows.
const STEP_CM: f64 = 0.1;
/// Strides in which a span is walked before it is searched closely.
const STRIDES: u32 = 16;

/// Every single change that helps.
fn mends(plan: &Plan, sound: &Sound, filled: &Filled, course: &PlantCourse) -> Vec<Mend> {
    let helps = |way: MendWay| {
        let mend = Mend::from(way);
        helps(plan, &mend, course).then_some(mend)
    };
    let container = &sound.container;
    let depth = filled.depth.get::<centimeter>();
    let rim = container.vessel.depth_max().get::<centimeter>();
    let pot = container.pot.height.get::<centimeter>();
    let deepest_pot = Field::PotHeight.limits().map_or(pot, |limits| limits.high);
    let higher = smallest(depth, rim, |to_cm| {
        helps(MendWay::FillDepth {
            from_cm: depth,
            to_cm,
        })
    });
    let deeper = smallest(
        pot,
        deepest_pot.min(rim + container.cover_thickness.get::<centimeter>()),
        |to_cm| {
            helps(MendWay::PotHeight {
                from_cm: pot,
                to_cm,
                fill_depth_cm: tidy(depth),
            })
        },
    );
    let pipe = container.boards.as_ref().and_then(|boards| {
        let from_mm = boards.pipes.outside_diameter.get::<millimeter>();
        let mut sizes: Vec<(PipeChoice, f64)> = PipeChoice::ALL
            .iter()
            .filter(|size| **size != boards.pipes.choice)
            .filter_map(|&size| Some((size, size.pipe()?.outside_diameter_mm)))
            .collect();
        sizes.sort_by(|a, b| (a.1 - from_mm).abs().total_cmp(&(b.1 - from_mm).abs()));
        let own_fill = container.fill_depth.is_some();
        // Rather another pipe alone than with another fill.
        [false, true]
            .into_iter()
            .filter(|&fill_anew| own_fill || !fill_anew)
            .find_map(|fill_anew| {
                sizes.iter().find_map(|&(size, to_mm)| {
                    helps(MendWay::Pipe {
                        from_mm,
                        to_mm,
                        size,
                        fill_anew,
                    })
                })
            })
    });
    [higher, deeper, pipe].into_iter().flatten().collect()
}

/// To a tenth of a millimetre, so that the figure in the form stays short.
fn tidy(cm: f64) -> f64 {
    (cm * 100.0).round() / 100.0
}

/// The least value above `from` that helps, in steps of a tape, up to `most`. A coarse walk finds
/// the first stride that helps, halving finds the step within it.
fn smallest(from: f64, most: f64, helps: impl Fn(f64) -> Option<Mend>) -> Option<Mend> {
    let first = (from / STEP_CM).floor();
    let steps = ((most - first * STEP_CM) / STEP_CM).floor();
    if steps.is_nan() || steps < 1.0 {
        return None;
    }
    // Divided rather than multiplied: 11 / 10 is the nearest double of 1.1, 11 × 0.1 is not.
    let at = |step: f64| helps((first + step) / (1.0 / STEP_CM).round());
    let stride = (steps / f64::from(STRIDES)).ceil();
    let (mut fails, mut found) = (0.0, None);
    while fails < steps {
        let next = (fails + stride).min(steps);
        if let Some(mend) = at(next) {
            found = Some((next, mend));
            break;
        }
        fails = next;
    }
    let (mut good, mut mend) = found?;
    while good - fails > 1.0 {
        let middle = (f64::midpoint(fails, good)).floor();
        match at(middle) {
            Some(better) => (good, mend) = (middle, better),
            None => fails = middle,
        }
    }
    Some(mend)
}

/// Whether a change makes the failure disappear, and leaves a container that holds its solution and
/// boards that float at planting. The plants' course does not depend on any of these changes.
fn helps(plan: &Plan, mend: &Mend, course: &PlantCourse) -> bool {
    let mut changed = plan.clone();
    mend.apply(&mut changed);
    let Ok(sound) = check(&changed) else {
        return false;
    };
    let Ok(tank) = Tank::new(&sound, None) else {
        return false;
    };
    let Ok(filled) = fill::fill(&sound, &tank, sound.container.fill_depth) else {
        return false;
    };
    let state = &filled.state;
    let stands = match tank.cover() {
        Cover::Fixed => !state.overflows,
        Cover::Floating { .. } => !state.overflows && !filled.sinks && state.afloat,
    };
    stands && {
        let fall = Fall::follow(&tank, &filled, course);
        follow(&sound, &filled, &fall, course).is_ok_and(|roots| roots.first_hanging().is_none())
    }
}
