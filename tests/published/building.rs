//! Boards, covers and frames: beams against a handbook and against finite elements, side pressure and
//! flotation by hand, pipes and foams against their standards, and what builders commonly see.

use slackwater::advice::{Fact, LevelBy, StructureFact, Weight};
use slackwater::catalog::Keyed;
use slackwater::catalog::covers::CoverMaterial;
use slackwater::catalog::foams::Foam;
use slackwater::catalog::pipes::PipeChoice;
use slackwater::plan::{Entry, Example, Field, Pick, Plan};
use slackwater::science::beam::{Beam, Bent};
use slackwater::science::hydrostatics::side_pressure;
use slackwater::science::units::force::newton;
use slackwater::science::units::length::{meter, millimeter};
use slackwater::science::units::mass_density::kilogram_per_cubic_meter;
use slackwater::science::units::{Force, Length, MassDensity};

use crate::practice::{set, solved, within};
use crate::table;

/// The table prints four decimals.
const PRINTED: f64 = 6e-5;
/// Cubic elements meet a beam under an even load at their nodes; the lowest point may lie between two
/// of 480 nodes, mm.
const ELEMENTS_MM: f64 = 3e-3;

fn m(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn bent(length: f64, supports: &[f64], load: f64, rigidity: f64) -> Bent {
    let supports: Vec<Length> = supports.iter().map(|&at| m(at)).collect();
    Beam::new(m(length), &supports)
        .and_then(|beam| {
            beam.bend(
                Force::new::<newton>(load) / m(1.0),
                Force::new::<newton>(rigidity) * m(1.0) * m(1.0),
            )
        })
        .expect("in range")
}

fn near(what: &str, got: f64, wanted: f64, within: f64) {
    assert!(
        (got - wanted).abs() <= within,
        "{what}: {got}, not {wanted}"
    );
}

#[test]
fn beams_meet_finite_elements() {
    for row in table::rows(include_str!("data/building_beam.csv")) {
        let supports: Vec<f64> = row
            .text("supports_m")
            .split(' ')
            .map(|place| place.parse().expect("a number"))
            .collect();
        let bent = bent(
            row.number("length_m"),
            &supports,
            row.number("load_n_per_m"),
            row.number("rigidity_n_m2"),
        );
        let what = row.text("supports_m");
        let mm = |length: Length| length.get::<millimeter>();
        near(what, mm(bent.lowest), row.number("lowest_mm"), ELEMENTS_MM);
        let [left, right] = bent.tip_deflections;
        near(what, mm(left), row.number("left_tip_mm"), PRINTED);
        near(what, mm(right), row.number("right_tip_mm"), PRINTED);
        let middle = mm(bent.middle_deflections[0]);
        // The middle of a span may lie between two nodes.
        near(what, middle, row.number("middle_mm"), ELEMENTS_MM);
        let first = bent.reactions[0].get::<newton>();
        near(what, first, row.number("first_reaction_n"), PRINTED);
    }
}

/// Closed forms of Roark's Formulas for Stress and Strain, table 8.1, and of the AISC Manual, table
/// 3-23 (from memory): two supports L apart with equal overhangs a.
#[test]
fn beams_with_two_overhangs_meet_the_handbook() {
    // Both are exact; doubles leave some 1e-13 of it.
    const EXACT: f64 = 1e-10;
    for (w, l, a, ei) in [
        (50.0, 1.0, 0.2, 30.0),
        (32.0, 0.9, 0.16, 11.1),
        (12.0, 0.6, 0.31, 4.0),
        (80.0, 2.0, 0.0, 150.0),
    ] {
        let got = bent(l + 2.0 * a, &[a, a + l], w, ei);
        let middle = w * l * l * (5.0 * l * l - 24.0 * a * a) / (384.0 * ei);
        let tip = w * a * (3.0 * a * a * a + 6.0 * a * a * l - l * l * l) / (24.0 * ei);
        near("middle", got.middle_deflections[0].value, middle, EXACT);
        near("tip", got.tip_deflections[0].value, tip, EXACT);
        near(
            "support",
            got.support_moments[0].value,
            -w * a * a / 2.0,
            EXACT,
        );
        let sagging = w * (l * l / 8.0 - a * a / 2.0);
        near("moment", got.middle_moments[0].value, sagging, EXACT);
        near("reaction", got.reactions[1].value, w * (l / 2.0 + a), EXACT);
    }
    // One overhang a beyond a span L: R2 = w (L + a)²/(2 L), M = w (L + a)²(L − a)²/(8 L²).
    let (w, l, a) = (40.0, 1.1, 0.3);
    let got = bent(l + a, &[0.0, l], w, 10.0);
    let sum = (l + a) * (l + a);
    near("R2", got.reactions[1].value, w * sum / (2.0 * l), EXACT);
    let moment = w * sum * (l - a) * (l - a) / (8.0 * l * l);
    near("M", got.greatest_moment.value, moment, EXACT);
}

/// Hand-worked: 1000 kg/m³ and 9.80665 m/s². 0.20 m deep: 1961.33 Pa at the foot, 196.133 N and
/// 13.0755 N m on a metre of side. 0.60 m deep: 5883.99 Pa, 1765.197 N, 353.0394 N m.
#[test]
fn side_pressure_meets_what_is_worked_by_hand() {
    let water = MassDensity::new::<kilogram_per_cubic_meter>(1000.0);
    for (depth, foot, force, moment) in [
        (0.2, 1961.33, 196.133, 13.075_533),
        (0.6, 5883.99, 1765.197, 353.0394),
        (0.0, 0.0, 0.0, 0.0),
    ] {
        // As many digits as were worked out.
        const WORKED: f64 = 1e-6;
        let side = side_pressure(water, m(depth)).expect("in range");
        near("foot", side.at_foot.value, foot, WORKED);
        near("force", side.force.value, force, WORKED);
        near("moment", side.moment.value, moment, WORKED);
    }
}

#[test]
fn pipes_meet_their_standards() {
    // The catalog keeps hundredths of a millimetre.
    const KEPT_MM: f64 = 0.006;
    let rows = table::rows(include_str!("data/building_pipes.csv"));
    // Every size but the grower's own.
    assert_eq!(rows.len() + 1, PipeChoice::ALL.len());
    for row in rows {
        let size = row.text("size");
        let pipe = PipeChoice::from_key(size).and_then(PipeChoice::pipe);
        let got = pipe.expect(size).outside_diameter_mm;
        near(size, got, row.number("outside_diameter_mm"), KEPT_MM);
    }
}

#[test]
fn foams_meet_their_standard() {
    const EXACT: f64 = 1e-12;
    let rows = table::rows(include_str!("data/building_foams.csv"));
    assert_eq!(rows.len(), Foam::ALL.len());
    for row in rows {
        let key = row.text("foam");
        let got = Foam::from_key(key).expect(key).figures();
        near(key, got.density, row.number("density_kg_per_m3"), EXACT);
        let strength = row.number("flexural_strength_kpa");
        near(key, got.flexural_strength_kpa, strength, EXACT);
        let uptake = row.number("water_absorption_pct") / 100.0;
        near(key, got.water_uptake, uptake, EXACT);
        // EN 13164 level WL(T)0.7, EN 13163 WL(T)2 to WL(T)5 (the latter from memory).
        let long = if got.extruded {
            0.0..=0.007
        } else {
            0.02..=0.05
        };
        assert!(long.contains(&got.water_uptake_long), "{key}");
    }
}

/// Archimedes by hand: a metre of PVC pipe of 110 × 3.2 mm and 1395 kg/m³ weighs 1.4978 kg and, capped,
/// displaces 9.5033 L; in water of 1000 kg/m³ it lifts 8.006 kg, with the ends open 0.424 kg less than
/// nothing. Solution is a little lighter than that, so a hundredth is allowed.
#[test]
fn capped_pipes_lift_what_is_worked_by_hand() {
    let mut plan = Example::FloatingBoards.plan();
    for (ends, lift) in [("open", -0.424), ("capped", 8.006)] {
        plan.container.pipe_ends = Pick::from_key(ends);
        let outcome = solved(&plan);
        let pipe = &outcome.boards.as_ref().expect("boards").structure.pipe;
        near(ends, pipe.lift_kg_per_m, lift, 0.02);
        near(ends, pipe.mass_kg_per_m, 1.4978, 1e-4);
        near(
            ends,
            outcome.ballast_kg_per_m.expect("pipes"),
            1.25 * pipe.lift_kg_per_m.max(0.0),
            1e-9,
        );
    }
}

/// Common practice, no source: two 10 cm pipes 90 cm apart under 61 × 122 × 2.5 cm boards with 12 heads
/// of about 200 g float on a fill that clears the pipes and end with a 3 to 9 cm gap.
#[test]
fn boards_on_pipes_ninety_centimetres_apart_do_as_builders_say() {
    let mut plan = Example::FloatingBoards.plan();
    plan.container.pipe = Pick::Known(PipeChoice::Own);
    for (field, value) in [
        (Field::PipeOutsideDiameter, 10.0),
        (Field::PipeCount, 2.0),
        (Field::PipeSpacing, 90.0),
        (Field::BoardThickness, 2.5),
        (Field::TargetHead, 200.0),
    ] {
        set(&mut plan, field, value);
    }
    let outcome = solved(&plan);
    assert_eq!(outcome.fill.plants_per_board, Some(12));
    let boards = outcome.boards.expect("boards");
    assert!(boards.floats_at_planting);
    assert!(outcome.fill.depth_cm > 10.0);
    within("gap", boards.gap_at_harvest_cm, 3.0, 9.0);
    // Such boards visibly bend, by more than a finger and less than a hand.
    let sag = boards.structure.sag_mm.expect("two pipes");
    within("sag", sag, 10.0, 60.0);
    near(
        "clear gap",
        boards.structure.clear_gap_cm,
        boards.gap_at_harvest_cm - sag / 10.0,
        1e-9,
    );
}

fn judged(plan: &Plan, of: impl Fn(&StructureFact) -> bool) -> Weight {
    let outcome = solved(plan);
    let mut found = outcome.findings.iter().filter_map(|finding| {
        let Fact::Structure(fact) = &finding.fact else {
            return None;
        };
        of(fact).then_some(finding.weight)
    });
    found.next().expect("a verdict")
}

/// Common practice, no source: a frame of 7 m wants levelling, and with a water level; foam covers sag
/// under grown heads unless propped.
#[test]
fn long_frames_want_levelling_and_foam_covers_want_props() {
    let mut plan = Example::FloatingBoards.plan();
    let level = |fact: &StructureFact| matches!(fact, StructureFact::FloorLevel { .. });
    assert_eq!(judged(&plan, level), Weight::Sound);
    // A fall of one in a hundred, as of a yard that looks flat.
    set(&mut plan, Field::FloorDrop, 7.35);
    assert_eq!(judged(&plan, level), Weight::Caution);
    let build = solved(&plan).build.expect("a tank");
    assert_eq!(build.level_by, LevelBy::WaterLevel);

    let mut plan = Example::CoveredTank.plan();
    plan.build.cover = Pick::Known(CoverMaterial::ExtrudedFoam);
    plan.container.cover_thickness_cm = Entry::Number(2.5);
    let sag = |fact: &StructureFact| matches!(fact, StructureFact::CoverSag { .. });
    set(&mut plan, Field::PropRows, 0.0);
    assert_eq!(judged(&plan, sag), Weight::Caution);
    set(&mut plan, Field::PropRows, 2.0);
    assert_eq!(judged(&plan, sag), Weight::Sound);
}
