//! A fixed cover: its span, props, sag under grown heads, and light.

use super::{WET_ROOTS, mm};
use crate::advice::outcome::CoverOutcome;
use crate::catalog::covers::Bearing;
use crate::plan::{Build, FixedCover, Sound};
use crate::science::beam::{Beam, strip_rigidity};
use crate::science::hydrostatics::sheet_sag;
use crate::science::structure::STANDARD_GRAVITY;
use crate::science::units::areal_mass_density::kilogram_per_square_meter;
use crate::science::units::force::newton;
use crate::science::units::length::meter;
use crate::science::units::mass::kilogram;
use crate::science::units::pressure::{megapascal, pascal};
use crate::science::units::{ArealMassDensity, Force, Length, Mass, Pressure};
use crate::season::Tank;

/// Most sag of a cover, mm: pots sink by it, and it takes from the gap; common practice, no source.
pub const SAG_LIMIT_MM: f64 = 10.0;

/// What lies on a square metre of cover at the end, itself included.
pub fn load(
    sound: &Sound,
    tank: &Tank,
    build: &Build,
    cover: &FixedCover,
    head: Mass,
) -> ArealMassDensity {
    let (length, width, _) = build.inside;
    let plants = f64::from(sound.crop.plants);
    let carried = (tank.pot_mass() + head * (1.0 + WET_ROOTS)) * plants;
    let own = cover.material.figures().density * cover.thickness.get::<meter>();
    carried / (length * width) + ArealMassDensity::new::<kilogram_per_square_meter>(own)
}

/// Sag in the long run for the stiffest, the usual and the softest of the material.
pub fn sag(build: &Build, cover: &FixedCover, load: ArealMassDensity) -> Option<[Length; 3]> {
    let figures = cover.material.figures();
    let pressure =
        Pressure::new::<pascal>(load.get::<kilogram_per_square_meter>() * STANDARD_GRAVITY);
    let width = build.inside.1;
    let spans = f64::from(cover.prop_rows + 1);
    let creep = figures.creep_factor;
    match figures.bearing {
        Bearing::Bends {
            modulus_mpa: (low, usual, high),
        } => {
            // A strip one metre wide across the tank.
            let strip = Length::new::<meter>(1.0);
            let supports: Vec<Length> = (0..=cover.prop_rows)
                .map(|index| width * (f64::from(index) / spans))
                .chain([width])
                .collect();
            let beam = Beam::new(width, &supports).ok()?;
            let one = |modulus: f64| {
                let stiffness =
                    strip_rigidity(Pressure::new::<megapascal>(modulus), strip, cover.thickness)
                        .ok()?;
                Some(beam.bend(pressure * strip, stiffness).ok()?.lowest * creep)
            };
            Some([one(high)?, one(usual)?, one(low)?])
        }
        Bearing::Hangs {
            tension_n_per_m: (low, usual, high),
        } => {
            let one = |tension: f64| {
                let pull = Force::new::<newton>(tension) / Length::new::<meter>(1.0);
                Some(sheet_sag(pressure, width / spans, pull).ok()? * creep)
            };
            Some([one(high)?, one(usual)?, one(low)?])
        }
    }
}

/// The cover of a plan; `None` for one without thickness, which bears nothing.
pub fn cover(
    sound: &Sound,
    tank: &Tank,
    build: &Build,
    (head, gap_cm): (Mass, f64),
) -> Option<CoverOutcome> {
    let cover = build.cover.as_ref()?;
    let load = load(sound, tank, build, cover, head);
    let [stiff, usual, soft] = sag(build, cover, load)?;
    let spans = f64::from(cover.prop_rows + 1);
    let width = build.inside.1;
    Some(CoverOutcome {
        material: cover.material,
        thickness_mm: mm(cover.thickness),
        prop_rows: cover.prop_rows,
        props_at_mm: (1..=cover.prop_rows)
            .map(|row| mm(width) * f64::from(row) / spans)
            .collect(),
        prop_height_mm: mm(build.inside.2),
        span_mm: mm(width) / spans,
        load_kg_per_m2: load.get::<kilogram_per_square_meter>(),
        sag_mm: mm(usual),
        sag_range_mm: (mm(stiff), mm(soft)),
        sag_limit_mm: SAG_LIMIT_MM,
        clear_gap_cm: gap_cm - mm(usual) / 10.0,
        light_tight: cover.material.figures().light_tight,
    })
}

/// Mass of the cover itself, kg.
pub fn mass_kg(build: &Build) -> f64 {
    build.cover.as_ref().map_or(0.0, |cover| {
        let (length, width, _) = build.inside;
        let density = cover.material.figures().density;
        let volume = (length * width * cover.thickness).value;
        Mass::new::<kilogram>(volume * density).get::<kilogram>()
    })
}
