//! The frame of a tank: sides under the push of the solution, liner, load of what is below.

use super::{cover, mm};
use crate::advice::outcome::{BuildOutcome, Fill, LevelBy, LinerOutcome, LoadStop, TimberOutcome};
use crate::catalog::timber;
use crate::plan::{Build, Sound, StandsOn};
use crate::science::beam::{Beam, strip_rigidity, strip_stress};
use crate::science::hydrostatics::{band_force, side_pressure};
use crate::science::structure::STANDARD_GRAVITY;
use crate::science::units::areal_mass_density::kilogram_per_square_meter;
use crate::science::units::length::{centimeter, meter, millimeter};
use crate::science::units::mass::kilogram;
use crate::science::units::pressure::{megapascal, pascal};
use crate::science::units::{Length, Mass, MassDensity, Pressure};
use crate::season::{Beyond, Tank};

/// Most bulge of a side, mm: common practice, no source.
pub const BULGE_LIMIT_MM: f64 = 5.0;
/// Depth from which a competent person should look at the sides, cm: assumed, no source.
pub const COMPETENT_FROM_CM: f64 = 45.0;
/// What goes over the rim and down outside, cm: common practice, no source.
const OVERLAP_CM: f64 = 20.0;
/// From staple to staple, cm: common practice, no source.
const STAPLE_CM: f64 = 10.0;
/// Length from which a straight edge with a spirit level no longer does, cm: common practice.
const WATER_LEVEL_FROM_CM: f64 = 250.0;
/// Inside diameter of a draining hose, m, its end below the floor, m, and the part of free outflow
/// that friction leaves: assumed.
const HOSE: (f64, f64, f64) = (0.025, 0.5, 0.5);

/// The sides between braces under a depth of solution.
#[derive(Clone, Copy)]
pub struct Side {
    /// Longest free length.
    pub span: Length,
    /// Moment in the lowest board, N m.
    pub bending_n_m: f64,
    /// Its stress.
    pub stress: Pressure,
    /// How far it bulges in the long run.
    pub bulge: Length,
}

impl Side {
    /// Whether it holds.
    pub fn holds(&self) -> bool {
        mm(self.bulge) <= BULGE_LIMIT_MM
            && self.stress.get::<megapascal>() <= timber::ALLOWED_STRESS_MPA
    }
}

/// Bays between braces along a side.
fn bays(side: Length, spacing: Length) -> f64 {
    // A side that is a whole number of spacings needs no further brace.
    (side.value / spacing.value - 1e-9).ceil().max(1.0)
}

/// The lowest board of the sides as a beam from brace to brace; joints are taken as hinges, which
/// errs to the safe side.
pub fn side(build: &Build, density: MassDensity, depth: Length) -> Result<Side, Beyond> {
    let figures = build.timber.figures();
    let (thickness, width) = (
        Length::new::<millimeter>(figures.thickness_mm),
        Length::new::<millimeter>(figures.width_mm),
    );
    let free = |side: Length| side / bays(side, build.brace_spacing);
    let span = free(build.inside.0).max(free(build.inside.1));
    let modulus = Pressure::new::<megapascal>(timber::MODULUS_MPA);
    let push = band_force(density, depth, Length::default(), width).map_err(|_| Beyond)?;
    let bent = Beam::new(span, &[Length::default(), span])
        .and_then(|beam| beam.bend(push, strip_rigidity(modulus, width, thickness)?))
        .map_err(|_| Beyond)?;
    Ok(Side {
        span,
        bending_n_m: bent.greatest_moment.value,
        stress: strip_stress(bent.greatest_moment, width, thickness).map_err(|_| Beyond)?,
        bulge: bent.lowest * timber::CREEP_FACTOR,
    })
}

/// Why the tank must not stand where it is planned, if so.
pub fn stop(build: &Build, load_kg_per_m2: f64) -> Option<LoadStop> {
    let rating = build
        .rating
        .map(|rating| rating.get::<kilogram_per_square_meter>());
    match (build.stands_on, rating) {
        (StandsOn::BalconyOrRoof, _) => Some(LoadStop::BalconyOrRoof),
        (StandsOn::Bench | StandsOn::UpperFloor, None) => Some(LoadStop::RatingUnknown),
        (StandsOn::Ground, _) | (StandsOn::Slab, None) => None,
        (_, Some(rating)) => (load_kg_per_m2 > rating).then_some(LoadStop::AboveRating),
    }
}

/// The build sheet of a plan, without its materials.
///
/// # Errors
/// [`Beyond`] when the measures lie outside what physics takes.
pub fn frame(
    sound: &Sound,
    tank: &Tank,
    build: &Build,
    fill: &Fill,
    (head, gap_cm): (Mass, f64),
) -> Result<BuildOutcome, Beyond> {
    let depth = Length::new::<centimeter>(fill.planted_level_cm);
    let pressure = side_pressure(tank.density(), depth).map_err(|_| Beyond)?;
    let timber = timber_outcome(build, tank.density(), depth)?;
    let (length, width, _) = build.inside;
    let floor_m2 = (length * width).value;
    let timber_kg = timber.total_m * timber.thickness_mm * timber.width_mm / 1e6 * timber::DENSITY;
    let heads_kg = ((tank.pot_mass() + head) * f64::from(sound.crop.plants)).get::<kilogram>();
    // Boards, pots and heads on them; nothing under a fixed cover.
    let boards_kg = tank.floating_mass(Mass::default()).get::<kilogram>()
        - if sound.container.boards.is_some() {
            (tank.pot_mass() * f64::from(sound.crop.plants)).get::<kilogram>()
        } else {
            0.0
        };
    let total_mass_kg = fill.mass_kg + timber_kg + heads_kg + boards_kg + cover::mass_kg(build);
    let load_kg_per_m2 = total_mass_kg / floor_m2;
    Ok(BuildOutcome {
        liner: liner(build),
        cover: cover::cover(sound, tank, build, (head, gap_cm)),
        depth_cm: fill.planted_level_cm,
        foot_pressure_pa: pressure.at_foot.get::<pascal>(),
        side_force_n_per_m: pressure.force.value,
        side_moment_n_m: pressure.moment.value,
        level_by: if length.get::<centimeter>() >= WATER_LEVEL_FROM_CM {
            LevelBy::WaterLevel
        } else {
            LevelBy::SpiritLevel
        },
        total_mass_kg,
        solution_mass_kg: fill.mass_kg,
        load_kg_per_m2,
        stands_on: build.stands_on,
        rating_kg_per_m2: build
            .rating
            .map(|rating| rating.get::<kilogram_per_square_meter>()),
        load_per_leg_kg: build.legs.map(|legs| total_mass_kg / f64::from(legs)),
        stop: stop(build, load_kg_per_m2),
        drain_minutes: drain_minutes(fill.volume_l, depth),
        timber,
        materials: Vec::new(),
        price: None,
        currency: String::new(),
    })
}

fn timber_outcome(
    build: &Build,
    density: MassDensity,
    depth: Length,
) -> Result<TimberOutcome, Beyond> {
    let figures = build.timber.figures();
    let side = side(build, density, depth)?;
    let (length, width, height) = build.inside;
    let courses = whole((mm(height) / figures.width_mm - 1e-9).ceil().max(1.0));
    let long_mm = mm(length) + 2.0 * figures.thickness_mm;
    let short_mm = mm(width);
    let inner = |side: Length| whole(bays(side, build.brace_spacing) - 1.0);
    Ok(TimberOutcome {
        size: build.timber,
        nominal: figures.nominal,
        thickness_mm: figures.thickness_mm,
        width_mm: figures.width_mm,
        courses,
        height_mm: f64::from(courses) * figures.width_mm,
        long_mm,
        short_mm,
        total_m: f64::from(courses) * 2.0 * (long_mm + short_mm) / 1000.0,
        brace_spacing_mm: mm(build.brace_spacing),
        mid_braces: 2 * (inner(length) + inner(width)),
        corner_braces: 4,
        span_mm: mm(side.span),
        bending_n_m: side.bending_n_m,
        stress_mpa: side.stress.get::<megapascal>(),
        stress_limit_mpa: timber::ALLOWED_STRESS_MPA,
        bulge_mm: mm(side.bulge),
        bulge_limit_mm: BULGE_LIMIT_MM,
        ask_competent_person: depth.get::<centimeter>() > COMPETENT_FROM_CM || !side.holds(),
    })
}

fn liner(build: &Build) -> LinerOutcome {
    let cm = |length: Length| length.get::<centimeter>();
    let (length, width, height) = (cm(build.inside.0), cm(build.inside.1), cm(build.inside.2));
    let around = 2.0 * (height + OVERLAP_CM);
    let (sheet_length, sheet_width) = (length + around, width + around);
    let rim = 2.0 * (length + width);
    LinerOutcome {
        length_cm: sheet_length,
        width_cm: sheet_width,
        overlap_cm: OVERLAP_CM,
        layers: build.liner_layers,
        area_m2: f64::from(build.liner_layers) * sheet_length * sheet_width / 1e4,
        cushion_m2: (length * width + rim * height) / 1e4,
        staples: whole((rim / STAPLE_CM).ceil()),
    }
}

/// Torricelli's outflow from the middle of the depth, slowed by the hose.
fn drain_minutes(volume_l: f64, depth: Length) -> f64 {
    let (diameter, below, left) = HOSE;
    let head = below + depth.get::<meter>() / 2.0;
    let speed = (2.0 * STANDARD_GRAVITY * head).sqrt();
    let litres_per_minute =
        left * std::f64::consts::FRAC_PI_4 * diameter * diameter * speed * 60_000.0;
    volume_l / litres_per_minute
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped"
)]
fn whole(value: f64) -> u32 {
    value.clamp(0.0, 1e9) as u32
}
