//! Floating boards as bodies: how they sag on their pipes, trim, jam, and what holds the pipes down.

use super::{WATER, WET_ROOTS, mm};
use crate::advice::outcome::{BoardStructure, GapAt, PipeStructure};
use crate::plan::{Boards, PipeEnds, Sound};
use crate::science::beam::{Beam, Bent, strip_rigidity, strip_stress};
use crate::science::hydrostatics::{ballast_per_metre, edge_dip, metacentric_height};
use crate::science::structure::STANDARD_GRAVITY;
use crate::science::units::force::newton;
use crate::science::units::length::{centimeter, meter, millimeter};
use crate::science::units::linear_mass_density::kilogram_per_meter;
use crate::science::units::mass::kilogram;
use crate::science::units::mass_density::kilogram_per_cubic_meter;
use crate::science::units::pressure::{kilopascal, megapascal};
use crate::science::units::ratio::ratio;
use crate::science::units::{Force, Length, LinearMassDensity, Mass, MassDensity, Pressure, Ratio};
use crate::season::{Beyond, Tank, seedling};

/// Most sag of a resting board, mm: half of the least moist air gap; common practice, no source.
pub const SAG_LIMIT_MM: f64 = 15.0;
/// Most that a floor may be out of level, cm: common practice, no source.
pub const FLOOR_DROP_LIMIT_CM: f64 = 1.0;
/// Room so that boards neither jam nor let light and mosquitoes in, mm, both sides together: common
/// practice, no source.
pub const CLEARANCE_MM: (f64, f64) = (5.0, 30.0);
/// Share of its strength that foam bears for weeks, per cent: common practice with foam under
/// lasting load is a third.
pub const STRESS_LIMIT_PCT: f64 = 33.0;
/// Margin over what a pipe lifts: assumed.
const BALLAST_MARGIN: f64 = 1.25;
/// Density of stone and concrete, kg/m³; from memory.
const STONE: f64 = 2300.0;
/// Centre of mass of a grown head above its board, m, and of a seedling: assumed.
const HEAD_ABOVE_M: (f64, f64) = (0.08, 0.02);
/// Overhang over length at which a beam on two supports sags least, where middle and ends lie
/// equally low: from the equations of `science::beam`, 0.2232 (Airy's and Bessel's points are for
/// other aims).
const BEST_OVERHANG: f64 = 0.2232;

/// What one board carries besides itself at the end: wet pots, heads, wet roots.
pub fn burden(sound: &Sound, tank: &Tank, head: Mass) -> Mass {
    let plants = sound.crop.plants_per_board.unwrap_or_default();
    (tank.pot_mass() + head * (1.0 + WET_ROOTS)) * f64::from(plants)
}

/// One board with what its foam takes up in weeks.
fn own_mass(boards: &Boards) -> Mass {
    let figures = &boards.foam_figures;
    boards.length
        * boards.width
        * boards.thickness
        * MassDensity::new::<kilogram_per_cubic_meter>(
            figures.density + WATER * figures.water_uptake_long,
        )
}

/// Boards side by side across the tank.
pub fn across(boards: &Boards) -> u32 {
    count(boards.tank_width, boards.across())
}

/// How many of a length fit into another; half a sheet fits twice into a sheet.
pub fn count(room: Length, each: Length) -> u32 {
    let fits = (room / each).get::<ratio>() + 1e-9;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "lengths of at most 100 m over at least 1 cm"
    )]
    let whole = fits.clamp(0.0, 1e6) as u32;
    whole
}

/// A board at rest on its pipes.
pub struct Resting {
    /// Pipes that carry it, from its edge.
    pub supports: Vec<Length>,
    /// How it bends at first; `None` on fewer than two pipes.
    pub bent: Option<Bent>,
    /// Sag in the long run with the usual modulus.
    pub sag: Option<Length>,
    /// Greatest stress over the strength of the foam.
    pub stress: Option<Ratio>,
}

/// The board that sags most, or has the fewest pipes, of those side by side.
pub fn resting(boards: &Boards, burden: Mass) -> Resting {
    let side = boards.across();
    let number = across(boards).max(1);
    let slack = (boards.tank_width - side * f64::from(number)) / (f64::from(number) + 1.0);
    let pipes = boards.pipes.middles(boards.tank_width);
    let mut worst: Option<Resting> = None;
    for index in 0..number {
        let left = slack + (side + slack) * f64::from(index);
        let supports: Vec<Length> = pipes
            .iter()
            .map(|&middle| middle - left)
            .filter(|&at| at >= Length::default() && at <= side)
            .collect();
        let one = bend(boards, burden, supports);
        let worse = worst
            .as_ref()
            .is_none_or(|worst| match (one.sag, worst.sag) {
                (None, Some(_)) => true,
                (Some(one), Some(worst)) => one > worst,
                (None, None) => one.supports.len() < worst.supports.len(),
                (Some(_), None) => false,
            });
        if worse {
            worst = Some(one);
        }
    }
    worst.unwrap_or_else(|| bend(boards, burden, Vec::new()))
}

fn bend(boards: &Boards, burden: Mass, supports: Vec<Length>) -> Resting {
    let figures = &boards.foam_figures;
    let width = boards.along();
    let weight = (own_mass(boards) + burden).get::<kilogram>() * STANDARD_GRAVITY;
    let modulus = Pressure::new::<megapascal>(figures.modulus_mpa.1);
    let bent = Beam::new(boards.across(), &supports)
        .and_then(|beam| {
            beam.bend(
                Force::new::<newton>(weight) / boards.across(),
                strip_rigidity(modulus, width, boards.thickness)?,
            )
        })
        .ok();
    Resting {
        sag: bent.as_ref().map(|bent| bent.lowest * figures.creep_factor),
        stress: bent.as_ref().and_then(|bent| {
            let strength = Pressure::new::<kilopascal>(figures.flexural_strength_kpa);
            strip_stress(bent.greatest_moment, width, boards.thickness)
                .ok()
                .map(|stress| stress / strength)
        }),
        bent,
        supports,
    }
}

/// Everything about the boards of a plan as bodies.
///
/// # Errors
/// [`Beyond`] when the pipes lie outside what physics takes.
pub fn structure(
    sound: &Sound,
    tank: &Tank,
    boards: &Boards,
    (head, gap_cm): (Mass, f64),
) -> Result<BoardStructure, Beyond> {
    let load = burden(sound, tank, head);
    let rest = resting(boards, load);
    let figures = &boards.foam_figures;
    let sag_mm = rest.sag.map(mm);
    let (soft, usual, stiff) = figures.modulus_mpa;
    let drop_cm = sound
        .build
        .as_ref()
        .map_or(0.0, |build| build.floor_drop.get::<centimeter>());
    let creep = figures.creep_factor;
    let trim = Trim::of(sound, tank, boards, seedling(&sound.crop), HEAD_ABOVE_M.1);
    let trim_at_end = Trim::of(sound, tank, boards, head, HEAD_ABOVE_M.0);
    let side = boards.across();
    let (clearance_across, clearance_along) = clearances(boards);
    let (clearance_across_mm, clearance_along_mm) = (mm(clearance_across), mm(clearance_along));
    let draught_at_end = tank.draught(tank.floating_mass(head));
    Ok(BoardStructure {
        boards_across: across(boards),
        across_mm: mm(side),
        resting_load_kg: (own_mass(boards) + load).get::<kilogram>(),
        water_uptake_kg: WATER * uptake(boards),
        extruded: figures.extruded,
        supports_mm: rest.supports.iter().map(|&at| mm(at)).collect(),
        sag_mm,
        sag_range_mm: sag_mm.map(|sag| (sag * usual / stiff, sag * usual / soft)),
        sag_middles_mm: rest.bent.as_ref().map_or_else(Vec::new, |bent| {
            bent.middle_deflections
                .iter()
                .map(|&middle| mm(middle) * creep)
                .collect()
        }),
        sag_tips_mm: rest.bent.as_ref().map(|bent| {
            let [left, right] = bent.tip_deflections;
            (mm(left) * creep, mm(right) * creep)
        }),
        stress_pct: rest.stress.map(|stress| stress.get::<ratio>() * 100.0),
        sag_limit_mm: SAG_LIMIT_MM,
        best_pipe_spacing_mm: mm(side) * (1.0 - 2.0 * BEST_OVERHANG),
        clear_gap_cm: gap_cm - sag_mm.unwrap_or_default() / 10.0,
        gap_along_cm: (0..=4)
            .map(|quarter| {
                let share = f64::from(quarter) / 4.0;
                GapAt {
                    at_cm: boards.tank_length.get::<centimeter>() * share,
                    // The surface stays level; pipes and boards follow the floor.
                    gap_cm: (gap_cm + drop_cm * (0.5 - share)).max(0.0),
                }
            })
            .collect(),
        floor_drop_cm: drop_cm,
        floor_drop_limit_cm: FLOOR_DROP_LIMIT_CM,
        metacentric_height_cm: trim.map(|trim| trim.height.get::<centimeter>()),
        metacentric_height_at_end_cm: trim_at_end.map(|trim| trim.height.get::<centimeter>()),
        edge_dip_mm: trim_at_end.and_then(|trim| trim.dip).map(mm),
        freeboard_mm: draught_at_end.map(|draught| mm(boards.thickness - draught)),
        clearance_across_mm,
        clearance_along_mm,
        clearance_limits_mm: CLEARANCE_MM,
        strip_mm: clearance_across_mm.max(clearance_along_mm),
        pipe: pipes(tank, boards)?,
    })
}

/// Water that one board's foam takes up in weeks, m³.
fn uptake(boards: &Boards) -> f64 {
    (boards.length * boards.width * boards.thickness).value * boards.foam_figures.water_uptake_long
}

/// How far an edge dips with heads on one half only, and what of the board stands above the
/// solution.
pub fn dips(sound: &Sound, tank: &Tank, boards: &Boards, head: Mass) -> Option<(Length, Length)> {
    let trim = Trim::of(sound, tank, boards, head, HEAD_ABOVE_M.0)?;
    let draught = tank.draught(tank.floating_mass(head))?;
    Some((trim.dip?, boards.thickness - draught))
}

/// Whether a floating board rights itself, at planting and at the end.
pub fn keeps_upright(sound: &Sound, tank: &Tank, boards: &Boards, head: Mass) -> bool {
    [
        (seedling(&sound.crop), HEAD_ABOVE_M.1),
        (head, HEAD_ABOVE_M.0),
    ]
    .into_iter()
    .filter_map(|(head, above)| Trim::of(sound, tank, boards, head, above))
    .all(|trim| trim.height > Length::default())
}

/// Room across and along the tank that the boards leave.
pub fn clearances(boards: &Boards) -> (Length, Length) {
    let columns = across(boards);
    let rows = count(boards.tank_length, boards.along()).min(boards.count.div_ceil(columns.max(1)));
    (
        (boards.tank_width - boards.across() * f64::from(columns)).max(Length::default()),
        (boards.tank_length - boards.along() * f64::from(rows)).max(Length::default()),
    )
}

/// How upright a floating board keeps.
#[derive(Clone, Copy)]
struct Trim {
    height: Length,
    dip: Option<Length>,
}

impl Trim {
    /// `above`: of the heads' centre of mass over the top of the board, m. What the immersed pots
    /// bear is left out, which errs to the safe side.
    fn of(sound: &Sound, tank: &Tank, boards: &Boards, head: Mass, above: f64) -> Option<Self> {
        // A board that pots alone carry still has its underside at the surface.
        let least = Length::new::<millimeter>(0.1);
        let draught = tank.draught(tank.floating_mass(head))?.max(least);
        let narrow = boards.length.min(boards.width);
        let plants = f64::from(sound.crop.plants_per_board.unwrap_or_default());
        let thickness = boards.thickness;
        let pots = tank.pot_mass() * plants;
        let heads = head * plants;
        let board = own_mass(boards);
        let pot_middle = thickness - sound.container.pot.height / 2.0;
        let moment = board * (thickness / 2.0)
            + pots * pot_middle
            + heads * (thickness + Length::new::<meter>(above));
        let centre = moment / (board + pots + heads);
        let height = metacentric_height(draught, narrow, centre).ok()?;
        // Heads on one half only: their middle lies a quarter of the width off.
        let half = heads / 2.0;
        let offset = narrow / 4.0 * (half / (board + pots + half)).get::<ratio>();
        Some(Self {
            height,
            dip: edge_dip(offset, narrow, height).ok(),
        })
    }
}

/// What the pipes weigh and lift, kg/m.
fn pipes(tank: &Tank, boards: &Boards) -> Result<PipeStructure, Beyond> {
    let pipes = &boards.pipes;
    let water = tank.density().get::<kilogram_per_cubic_meter>();
    let (outside, inside) = (
        pipes.outside_diameter.get::<meter>(),
        (pipes.outside_diameter - pipes.wall * 2.0).get::<meter>(),
    );
    let circle = |diameter: f64| std::f64::consts::FRAC_PI_4 * diameter * diameter;
    let mass = pipes.material.density() * (circle(outside) - circle(inside));
    let held = |ends: PipeEnds| match ends {
        PipeEnds::Capped => mass,
        PipeEnds::Open | PipeEnds::Flooded => mass + water * circle(inside),
    };
    let lift = |ends: PipeEnds| water * circle(outside) - held(ends);
    let ballast = ballast_per_metre(
        tank.density(),
        pipes.outside_diameter,
        LinearMassDensity::new::<kilogram_per_meter>(held(pipes.ends)),
        Ratio::new::<ratio>(BALLAST_MARGIN),
    )
    .map_err(|_| Beyond)?
    .get::<kilogram_per_meter>();
    let middles = pipes.middles(boards.tank_width);
    let total_length_m = boards.tank_length.get::<meter>() * f64::from(pipes.count);
    Ok(PipeStructure {
        size: pipes.choice,
        ends: pipes.ends,
        count: pipes.count,
        spacing_mm: match middles[..] {
            [first, second, ..] => mm(second - first),
            _ => 0.0,
        },
        total_length_m,
        mass_kg_per_m: mass,
        lift_kg_per_m: lift(pipes.ends),
        lift_by_ends_kg_per_m: [PipeEnds::Open, PipeEnds::Capped, PipeEnds::Flooded]
            .into_iter()
            .map(|ends| (ends, lift(ends)))
            .collect(),
        ballast_kg_per_m: ballast,
        ballast_outside_kg_per_m: ballast * STONE / (STONE - water),
        ballast_total_kg: ballast * total_length_m,
        ballast_margin: BALLAST_MARGIN,
    })
}
