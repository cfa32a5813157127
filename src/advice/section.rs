//! The container in section: outlines in millimetres, ready to be drawn to scale.
//!
//! x runs from the middle of the container to the right, y from the floor upwards.

use super::roots::RootsDay;
use crate::plan::{Boards, Container, Sound};
use crate::science::units::Length;
use crate::science::units::length::millimeter;
use crate::season::{State, Tank};

/// A point, mm.
pub type Point = (f64, f64);

/// A container cut through the middle, across its shorter side.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Section {
    /// Inner wall on the right, floor to rim; the left is its mirror image.
    pub wall: Vec<Point>,
    /// Height of the rim.
    pub rim_mm: f64,
    /// Half the greatest width.
    pub half_width_mm: f64,
    /// Thickness of cover or boards.
    pub cover_mm: f64,
    /// Boards side by side: left and right edge. Empty under a fixed cover.
    pub boards: Vec<(f64, f64)>,
    /// Middles of the pots.
    pub pots: Vec<f64>,
    /// Height, top and bottom diameter and flange of a pot.
    pub pot_mm: PotShape,
    /// Middles of the pipes, and their outside diameter.
    pub pipes: Vec<f64>,
    /// Outside diameter of the pipes.
    pub pipe_mm: f64,
    /// Room that a head has at harvest.
    pub head_width_mm: f64,
    /// Depth of the fill mark.
    pub fill_mark_mm: f64,
    /// Day by day: where everything stands.
    pub days: Vec<Moment>,
}

/// The measures of a pot.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PotShape {
    /// Foot to flange.
    pub height: f64,
    /// At the flange.
    pub top: f64,
    /// At the foot.
    pub bottom: f64,
    /// Over the flange.
    pub flange: f64,
}

/// Where everything stands at the end of a day.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moment {
    /// Surface of the solution.
    pub level_mm: f64,
    /// Underside of cover or boards.
    pub underside_mm: f64,
    /// Share of the target mass that a head has reached, at most 1.
    pub head_share: f64,
    /// Foot of the pots.
    pub foot_mm: f64,
    /// The lowest tips of the roots; inside the pot until they have left it.
    pub tip_mm: f64,
    /// Where the roots in moist air begin; `None` where there are none.
    pub air_roots_top_mm: Option<f64>,
    /// The level that a refill must not pass; `None` while boards float.
    pub never_above_mm: Option<f64>,
    /// Whether the pots stand in the solution.
    pub contact: bool,
    /// Whether the tips are in the solution.
    pub reached: bool,
}

const MM_PER_CM: f64 = 10.0;

fn mm(length: Length) -> f64 {
    length.get::<millimeter>()
}

/// The section of a plan's container.
pub(super) fn section(
    sound: &Sound,
    tank: &Tank,
    fill_mark: Length,
    states: &[State],
    roots: &[RootsDay],
    head_shares: &[f64],
) -> Section {
    let container = &sound.container;
    let wall = wall(container);
    let half_width = wall.iter().map(|point| point.0).fold(0.0, f64::max);
    let rim = mm(tank.basin().depth_max());
    let pot = PotShape {
        height: mm(container.pot.height),
        top: mm(container.pot.top_diameter),
        bottom: mm(container.pot.bottom_diameter),
        flange: mm(container.pot.flange_diameter),
    };
    let (boards, pots, pipes, pipe_mm) = if let Some(boards) = &container.boards {
        let edges = board_edges(boards);
        let pots = edges
            .iter()
            .flat_map(|&(left, right)| spread(left, right, across_boards(boards, sound)))
            .collect();
        let outside = mm(boards.pipes.outside_diameter);
        (edges, pots, pipe_middles(boards), outside)
    } else {
        let top = wall.last().map_or(half_width, |point| point.0);
        let pots = spread(-top, top, in_view(sound, top, pot.flange));
        (Vec::new(), pots, Vec::new(), 0.0)
    };
    Section {
        rim_mm: rim,
        half_width_mm: half_width,
        cover_mm: mm(container.cover_thickness),
        boards,
        pots,
        pot_mm: pot,
        pipes,
        pipe_mm,
        head_width_mm: mm(sound.crop.spacing.0.min(sound.crop.spacing.1)),
        fill_mark_mm: mm(fill_mark),
        days: states
            .iter()
            .zip(roots)
            .zip(head_shares)
            .map(|((state, roots), &head_share)| Moment {
                level_mm: mm(state.level),
                underside_mm: mm(state.underside),
                head_share,
                foot_mm: mm(state.foot),
                tip_mm: roots.tip_cm * MM_PER_CM,
                air_roots_top_mm: roots.air_roots_top_cm.map(|cm| cm * MM_PER_CM),
                never_above_mm: roots.never_above_cm.map(|cm| cm * MM_PER_CM),
                contact: roots.contact,
                reached: roots.reached,
            })
            .collect(),
        wall,
    }
}

/// Straight walls need their corners only; a measured vessel is sampled.
fn wall(container: &Container) -> Vec<Point> {
    const SAMPLES: u32 = 24;
    let rim = container.vessel.depth_max();
    if let Some(rectangle) = &container.rectangle {
        return vec![
            (mm(rectangle.bottom.1) / 2.0, 0.0),
            (mm(rectangle.top.1) / 2.0, mm(rim)),
        ];
    }
    let sampled = (0..=SAMPLES).map(|i| rim * (f64::from(i) / f64::from(SAMPLES)));
    let mut depths: Vec<Length> = sampled.chain(container.vessel.bends()).collect();
    depths.sort_by(|a, b| a.value.total_cmp(&b.value));
    depths.dedup();
    depths
        .into_iter()
        .filter_map(|depth| {
            let half = container.vessel.width_at(depth).ok()?;
            Some((mm(half), mm(depth)))
        })
        .collect()
}

fn board_edges(boards: &Boards) -> Vec<(f64, f64)> {
    let side = mm(boards.across());
    let tank = mm(boards.tank_width);
    let count = (tank / side).floor().max(1.0);
    let slack = (tank - count * side) / (count + 1.0);
    let mut left = -tank / 2.0 + slack;
    let mut edges = Vec::new();
    while left + side <= tank / 2.0 + 1e-6 {
        edges.push((left, left + side));
        left += side + slack;
    }
    edges
}

/// Plants in one row of a board across the tank.
fn across_boards(boards: &Boards, sound: &Sound) -> usize {
    let lengthwise = boards.across() == boards.length;
    let (side, spacing) = if lengthwise {
        (boards.length, sound.crop.spacing.1)
    } else {
        (boards.width, sound.crop.spacing.0)
    };
    whole(mm(side) / mm(spacing))
}

/// Pots seen in the section of a fixed cover.
fn in_view(sound: &Sound, half_width: f64, flange: f64) -> usize {
    let row = if sound.container.rectangle.is_some() {
        whole(2.0 * half_width / mm(sound.crop.spacing.0))
    } else {
        whole(2.0 * half_width / flange)
    };
    row.clamp(1, sound.crop.plants as usize)
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a few hundred at most"
)]
fn whole(value: f64) -> usize {
    value.floor().max(1.0) as usize
}

/// Evenly, with half a space at either end.
fn spread(left: f64, right: f64, count: usize) -> Vec<f64> {
    let step = (right - left) / count as f64;
    (0..count).map(|i| left + step * (i as f64 + 0.5)).collect()
}

/// Middles of the pipes from the middle of the tank.
fn pipe_middles(boards: &Boards) -> Vec<f64> {
    let half = mm(boards.tank_width) / 2.0;
    boards
        .pipes
        .middles(boards.tank_width)
        .into_iter()
        .map(|middle| mm(middle) - half)
        .collect()
}
