//! What must double, halve or stay when one figure of a plan does.

use serde_json::Value;
use slackwater::advice::{Dose, Fact, Material};
use slackwater::catalog::Keyed;
use slackwater::plan::{
    AcidChoice, Dosing, Entry, Field, Method, Pick, Plan, Shape, StrengthBy, WaterKind,
};
use slackwater::{Outcome, solve};

use crate::plans::{for_sound_plans, get, set, show_when_it_fails, sound_plan};

/// A few roundings of sums over hours and plants.
const ROUNDING: f64 = 1e-9;
/// Levels are found to a nanometre, cm; a level decides on volumes by the surface.
const LEVEL_CM: f64 = 1e-6;
/// The search for a strength ends a millionth of it away.
const STRENGTH: f64 = 1.1e-6;
/// A reading that is worked out twice: the equilibria end at a part in 10¹².
const READING: f64 = 1e-9;

fn near(a: f64, b: f64) -> bool {
    close(a, b, ROUNDING)
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs()) + f64::MIN_POSITIVE
}

/// The plan with a blend or stocks, whose strength a single figure sets.
fn by_strength(plan: &Plan, by: StrengthBy) -> Plan {
    let mut plan = plan.clone();
    if plan.fertilizer.dosing == Pick::Known(Dosing::Salts) {
        plan.fertilizer.dosing = Pick::Known(Dosing::DryBlend);
    }
    plan.fertilizer.strength_by = Pick::Known(by);
    plan
}

#[test]
fn the_number_of_containers_scales_totals_only() {
    for_sound_plans(20, |plan, outcome| {
        let mut several = plan.clone();
        set(&mut several, Field::Count, 7.0);
        let several = solve(&several).expect("as sound as one");
        let one = outcome.fill.volume_l;
        assert!(near(several.fill.total_volume_l, 7.0 * one));
        assert!(near(
            outcome.fill.total_volume_l,
            one * get(plan, Field::Count)
        ));
        let doses = &several.fertilizer;
        assert_eq!(doses.doses.len(), doses.doses_for_all.len());
        for (each, all) in doses.doses.iter().zip(&doses.doses_for_all) {
            assert_eq!(each.material, all.material);
            assert!(near(
                7.0 * each.mass_g.or(each.volume_ml).unwrap_or_default(),
                all.mass_g.or(all.volume_ml).unwrap_or_default()
            ));
        }
        assert_eq!(of_one_container(outcome), of_one_container(&several));
        let spent = |outcome: &Outcome| {
            let mut facts = outcome.findings.iter().map(|finding| &finding.fact);
            facts.find_map(|fact| match fact {
                Fact::SpentSolution { volume_l } => Some(*volume_l),
                _ => None,
            })
        };
        if let Some(spent) = spent(&several) {
            assert!(near(spent, 7.0 * outcome.season.left_l), "{spent}");
        }
    });
}

/// An outcome without what counts the containers.
fn of_one_container(outcome: &Outcome) -> Value {
    let mut json = serde_json::to_value(outcome).expect("outcomes serialise");
    for (part, count_or_total) in [
        ("fill", "containers"),
        ("fill", "total_volume_l"),
        ("fertilizer", "doses_for_all"),
    ] {
        let members = json[part].as_object_mut().expect("an object");
        members.remove(count_or_total).expect(count_or_total);
    }
    let members = json.as_object_mut().expect("an object");
    members.remove("running").expect("running");
    // Totals throughout; tests/laws/group.rs holds them to the number of containers.
    members.remove("group").expect("group");
    if let Some(build) = members["build"].as_object_mut() {
        // What to get counts for all tanks.
        build.remove("materials").expect("materials");
        build.remove("price").expect("price");
    }
    // A caution that the number of containers itself is unusual, and what is left in all of them.
    json["findings"]
        .as_array_mut()
        .expect("a list")
        .retain(|finding| {
            finding["field"] != "container.count" && finding["fact"] != "spent_solution"
        });
    json
}

#[test]
fn two_half_tanks_are_one_tank() {
    let mut compared = 0;
    for method in [Method::CoveredTank, Method::FloatingBoards] {
        for seed in 0..40 {
            let mut half = sound_plan(seed, method, Shape::Rectangular);
            if method == Method::FloatingBoards {
                // Boards of half a tank must also fit into it.
                let boards = (get(&half, Field::BoardCount) / 2.0).ceil();
                set(&mut half, Field::BoardCount, boards);
            }
            let mut whole = half.clone();
            for field in [Field::Length, Field::BoardCount] {
                set(&mut whole, field, 2.0 * get(&half, field));
            }
            set(&mut whole, Field::Count, 1.0);
            set(&mut half, Field::Count, 2.0);
            let (Ok(one), Ok(two)) = (solve(&whole), solve(&half)) else {
                continue;
            };
            // A row that fits only into the whole tank is no half.
            if one.fill.plants != 2 * two.fill.plants {
                continue;
            }
            compared += 1;
            show_when_it_fails(&half, || assert_halves(&one, &two));
        }
    }
    assert!(compared >= 30, "only {compared} comparisons");
}

fn assert_halves(one: &Outcome, two: &Outcome) {
    let near = |a: f64, b: f64| assert!(near(a, b), "{a} {b}");
    let level = |a: f64, b: f64| assert!((a - b).abs() <= LEVEL_CM, "{a} {b}");
    near(one.fill.volume_l, 2.0 * two.fill.volume_l);
    near(one.fill.mass_kg, 2.0 * two.fill.mass_kg);
    near(one.fill.total_volume_l, two.fill.total_volume_l);
    near(one.fill.per_plant_l, two.fill.per_plant_l);
    near(one.fill.load_kg_per_m2, two.fill.load_kg_per_m2);
    level(one.fill.depth_cm, two.fill.depth_cm);
    level(one.fill.planted_level_cm, two.fill.planted_level_cm);
    for (a, b) in one.fertilizer.doses.iter().zip(&two.fertilizer.doses) {
        near(
            a.mass_g.unwrap_or_default(),
            2.0 * b.mass_g.unwrap_or_default(),
        );
        near(
            a.volume_ml.unwrap_or_default(),
            2.0 * b.volume_ml.unwrap_or_default(),
        );
    }
    assert_eq!(
        one.fertilizer.elements_mg_per_l,
        two.fertilizer.elements_mg_per_l
    );
    let (a, b) = (&one.season, &two.season);
    assert_eq!(a.harvest_day, b.harvest_day);
    assert_eq!(a.days_followed, b.days_followed);
    assert_eq!(a.events, b.events);
    near(a.head_g, b.head_g);
    near(a.water_l, 2.0 * b.water_l);
    near(a.evaporated_l, 2.0 * b.evaporated_l);
    for (a, b) in a.days.iter().zip(&b.days) {
        level(a.level_cm, b.level_cm);
        level(a.gap_cm, b.gap_cm);
    }
    for (a, b) in a.nutrients.iter().zip(&b.nutrients) {
        near(a.supply_g, 2.0 * b.supply_g);
        near(a.need_g, 2.0 * b.need_g);
        assert_eq!(a.runs_short_day, b.runs_short_day);
    }
    assert_eq!(one.boards.is_some(), two.boards.is_some());
    if let (Some(a), Some(b)) = (&one.boards, &two.boards) {
        assert_eq!(a.rest_day, b.rest_day);
        level(
            a.draught_mm.unwrap_or_default(),
            b.draught_mm.unwrap_or_default(),
        );
        near(a.board_mass_kg, b.board_mass_kg);
        level(a.gap_at_harvest_cm, b.gap_at_harvest_cm);
    }
}

#[test]
fn twice_the_nitrogen_is_twice_the_dose() {
    for_sound_plans(21, |plan, _| {
        let mut single = by_strength(plan, StrengthBy::Nitrogen);
        // Nothing but the fertilizer brings nitrogen.
        single.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
        single.fertilizer.acid = Pick::Known(AcidChoice::None);
        set(&mut single, Field::TargetNitrogen, 70.0);
        let mut double = single.clone();
        set(&mut double, Field::TargetNitrogen, 140.0);
        // A blend without nitrogen has no dose.
        let (Ok(single), Ok(double)) = (solve(&single), solve(&double)) else {
            return;
        };
        let (single, double) = (&single.fertilizer, &double.fertilizer);
        assert!(near(single.elements_mg_per_l.n, 70.0));
        assert!(near(double.elements_mg_per_l.n, 140.0));
        assert!(!single.doses.is_empty());
        for (a, b) in single.doses.iter().zip(&double.doses) {
            assert!(a.mass_g.is_some() != a.volume_ml.is_some());
            assert!(near(2.0 * amount(a), amount(b)));
        }
        assert!(double.ec_ms_per_cm >= single.ec_ms_per_cm);
    });
}

fn amount(dose: &Dose) -> f64 {
    dose.mass_g.or(dose.volume_ml).unwrap_or_default()
}

#[test]
fn the_target_of_nitrogen_counts_water_and_acid() {
    let mut compared = 0;
    let mut of_water_or_acid = 0;
    for &method in Method::ALL {
        for seed in 0..30 {
            let plan = sound_plan(seed + 24, method, Shape::Rectangular);
            let mut plan = by_strength(&plan, StrengthBy::Nitrogen);
            plan.fertilizer.water_kind = Pick::Known(WaterKind::Analysis);
            plan.choose_acid(AcidChoice::Nitric);
            set(&mut plan, Field::TargetNitrogen, 180.0);
            let Ok(outcome) = solve(&plan) else { continue };
            compared += 1;
            let doses = &outcome.fertilizer;
            show_when_it_fails(&plan, || {
                assert!(
                    close(doses.elements_mg_per_l.n, 180.0, STRENGTH),
                    "{doses:?}"
                );
            });
            // Less fertilizer than rain water would want.
            plan.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
            let Ok(rain) = solve(&plan) else { continue };
            let (with, without) = (amount(&doses.doses[0]), amount(&rain.fertilizer.doses[0]));
            show_when_it_fails(&plan, || assert!(with <= without, "{with} {without}"));
            of_water_or_acid += u32::from(with < 0.99 * without);
        }
    }
    assert!(
        compared > 60 && of_water_or_acid > 30,
        "{compared} comparisons, {of_water_or_acid} with less fertilizer"
    );
}

#[test]
fn more_salt_never_lowers_the_conductivity() {
    let mut compared = 0;
    for &method in Method::ALL {
        for seed in 0..25 {
            let plan = sound_plan(seed, method, Shape::Rectangular);
            let by = |by| by_strength(&plan, by);
            compared += rising(
                by(StrengthBy::Conductivity),
                Field::TargetConductivity,
                [0.8, 1.5, 3.0, 5.0, 8.0],
            );
            compared += rising(
                by(StrengthBy::Nitrogen),
                Field::TargetNitrogen,
                [50.0, 150.0, 400.0, 700.0, 1000.0],
            );
            let mut salts = plan.clone();
            salts.fertilizer.dosing = Pick::Known(Dosing::Salts);
            compared += rising(
                salts,
                Field::RecipeStrength,
                [20.0, 50.0, 100.0, 150.0, 300.0],
            );
        }
    }
    assert!(compared > 1000, "only {compared} comparisons");
}

/// Raises the strength of a plan step by step; how many steps could be solved.
fn rising(mut plan: Plan, field: Field, steps: [f64; 5]) -> u32 {
    let mut solved = 0;
    let mut last = (0.0, 0.0);
    for step in steps {
        set(&mut plan, field, step);
        let Ok(outcome) = solve(&plan) else { continue };
        let doses = &outcome.fertilizer;
        // Acid falls as ammonium and phosphate rise; of several salts one may give way to others.
        let fertilizer: f64 = doses
            .doses
            .iter()
            .filter(|dose| !matches!(dose.material, Material::Acid(_)))
            .map(amount)
            .sum();
        let now = (fertilizer, doses.ec_ms_per_cm);
        show_when_it_fails(&plan, || {
            assert!(now.0 >= last.0 && now.1 >= last.1, "{now:?} after {last:?}");
            if field == Field::TargetConductivity {
                assert!(close(now.1, step, STRENGTH), "asked {step}, got {}", now.1);
            }
            let first = outcome.season.days[0].ec_ms_per_cm;
            for reading in [first, outcome.solution.ec_ms_per_cm] {
                assert!(close(reading, now.1, READING), "{reading}, not {}", now.1);
            }
        });
        last = now;
        solved += 1;
    }
    solved
}

#[test]
fn dissolved_mass_is_the_dose() {
    for_sound_plans(22, |plan, outcome| {
        // What the scale weighs of nitrogen, phosphorus and so on is what the season starts with.
        let elements = &outcome.fertilizer.elements_mg_per_l;
        let litres = outcome.fill.volume_l;
        let solution = [elements.n, elements.p, elements.k, elements.ca, elements.mg];
        assert_eq!(outcome.season.nutrients.len(), solution.len());
        for (balance, mg_per_l) in outcome.season.nutrients.iter().zip(solution) {
            assert!(near(balance.supply_g, mg_per_l * litres / 1000.0));
        }
        // What the label declares of the blend that was weighed, and what the water was found to
        // hold; of a tap only its conductivity is known.
        let blend = &outcome.fertilizer.doses[0];
        if let (Material::Blend(_), Some(grams)) = (&blend.material, blend.mass_g) {
            let number = |field: Field| match field.entry(plan) {
                Some(Entry::Number(number)) => *number,
                _ => 0.0,
            };
            let water = plan.fertilizer.water_kind.known();
            for (label, analysis, mg_per_l) in [
                (Field::LabelMagnesium, Field::WaterMagnesium, elements.mg),
                (Field::LabelCalcium, Field::WaterCalcium, elements.ca),
            ] {
                let declared = grams * number(label) / 100.0;
                let dissolved = mg_per_l * litres / 1000.0;
                match water {
                    Some(WaterKind::Rain) => assert!(near(declared, dissolved)),
                    Some(WaterKind::Analysis) => {
                        let raw_litres = litres - outcome.water.rain_l;
                        let brought = number(analysis) * raw_litres / 1000.0;
                        assert!(near(declared + brought, dissolved));
                    }
                    _ => assert!(declared <= dissolved * (1.0 + ROUNDING)),
                }
            }
            // Water and acid hold no urea.
            assert!(near(
                grams * number(Field::LabelUrea) / 100.0,
                outcome.fertilizer.nitrogen_forms_mg_per_l.urea * litres / 1000.0
            ));
        }
        let forms = &outcome.fertilizer.nitrogen_forms_mg_per_l;
        assert!(near(
            forms.nitrate + forms.ammonium + forms.urea,
            elements.n
        ));
    });
}
