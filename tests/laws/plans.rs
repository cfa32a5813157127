//! Random plans. A sound one starts from an example and lets every used field wander, one by one,
//! as long as the check agrees; a wild one takes anything within the limits of each field alone.

use slackwater::catalog::Keyed;
use slackwater::catalog::blends::BlendChoice;
use slackwater::catalog::climates::ClimateChoice;
use slackwater::catalog::pots::PotChoice;
use slackwater::plan::{
    AcidChoice, Dimension, Entry, Example, Field, Limits, MeasuredPair, Method, Pick, Plan,
    Problem, SaltLine, Shape, WaterKind, check, used_fields,
};
use slackwater::{Outcome, solve};

use crate::seeded::Seeded;

/// Sound plans for each pair of method and shape.
pub const EACH: u64 = 12;

/// The shapes that a method can have.
pub fn shapes(method: Method) -> &'static [Shape] {
    match method {
        Method::FloatingBoards => &[Shape::Rectangular],
        _ => Shape::ALL,
    }
}

fn example(method: Method) -> Plan {
    match method {
        Method::Bottle => Example::Bottle,
        Method::Bucket => Example::Bucket,
        Method::CoveredTank => Example::CoveredTank,
        Method::FloatingBoards => Example::FloatingBoards,
    }
    .plan()
}

/// Writes a number into a field.
pub fn set(plan: &mut Plan, field: Field, value: f64) {
    *field.entry_mut(plan).expect("a numeric field") = Entry::Number(value);
}

/// The number in a field.
pub fn get(plan: &Plan, field: Field) -> f64 {
    match field.entry(plan) {
        Some(Entry::Number(value)) => *value,
        other => panic!("{field:?} holds {other:?}"),
    }
}

/// Runs a law on sound plans of every method and shape. `law` gets the plan and its outcome.
///
/// # Panics
/// When a law panics, after printing the plan; when the generator finds too few plans.
pub fn for_sound_plans(seed: u64, law: impl Fn(&Plan, &Outcome)) {
    let mut held = 0;
    let mut asked = 0;
    for &method in Method::ALL {
        for &shape in shapes(method) {
            for index in 0..EACH {
                asked += 1;
                let plan = sound_plan(seed ^ (index << 32), method, shape);
                // Sound fields may still add up to what no model was made for.
                let Ok(outcome) = solve(&plan) else { continue };
                held += 1;
                show_when_it_fails(&plan, || law(&plan, &outcome));
            }
        }
    }
    assert!(held * 10 >= asked * 9, "only {held} of {asked} plans");
}

/// Prints the plan beside the message of a law that fails on it.
pub fn show_when_it_fails(plan: &Plan, law: impl FnOnce()) {
    let result = std::panic::catch_unwind(std::panic::AssertUnwindSafe(law));
    if let Err(failure) = result {
        eprintln!("the plan that broke the law:\n{}", plan.to_json());
        std::panic::resume_unwind(failure);
    }
}

/// A sound plan of a method and shape.
pub fn sound_plan(seed: u64, method: Method, shape: Shape) -> Plan {
    let mut random = Seeded::new(seed.wrapping_mul(31) ^ (method as u64) << 8 ^ shape as u64);
    let mut plan = example(method);
    plan.container.shape = Pick::Known(shape);
    // The narrowest of the shapes takes one pot; more may come below.
    set(&mut plan, Field::PlantsPerContainer, 1.0);
    if shape == Shape::Measured {
        pour(&mut plan, &mut random);
    }
    for _ in 0..5 {
        step(&mut plan, |plan| choose(plan, &mut random));
    }
    for _ in 0..2 {
        for field in numeric_fields(&plan) {
            if !of_the_build(field) {
                step(&mut plan, |plan| vary(plan, field, false, &mut random));
            }
        }
    }
    // A stream of its own: what a tank is built of leaves the crops of these plans as they are.
    let mut random = Seeded::new(seed.wrapping_mul(37) ^ 5);
    for _ in 0..3 {
        step(&mut plan, |plan| build_of(plan, &mut random));
    }
    for field in numeric_fields(&plan) {
        if of_the_build(field) {
            step(&mut plan, |plan| vary(plan, field, false, &mut random));
        }
    }
    if seed.is_multiple_of(5) {
        set(&mut plan, Field::WaterFactor, 0.85);
    }
    // Half of them plant once; some leave the days of rest to the plan.
    if seed.is_multiple_of(2) {
        plan.crop.people = Entry::blank();
    }
    if seed.is_multiple_of(3) {
        plan.crop.turnaround_days = Entry::blank();
    }
    assert_eq!(check(&plan).map(|_| ()), Ok(()), "{}", plan.to_json());
    stronger_than_its_water(&mut plan);
    plan
}

/// An analysis may hold more than was asked for; then more is asked for.
fn stronger_than_its_water(plan: &mut Plan) {
    if plan.fertilizer.water_kind == Pick::Known(WaterKind::Rain) {
        return;
    }
    let problems = solve(plan).err().unwrap_or_default();
    match problems[..] {
        [
            Problem {
                field: Some(Field::TargetConductivity),
                ..
            },
        ] => {
            set(plan, Field::TargetConductivity, 4.0);
        }
        [
            Problem {
                field: Some(Field::TargetNitrogen),
                ..
            },
        ] => {
            set(plan, Field::TargetNitrogen, 400.0);
        }
        _ => {}
    }
}

/// A plan whose every field alone is within its limits, whatever they make together.
pub fn wild_plan(seed: u64) -> Plan {
    let mut random = Seeded::new(seed);
    let method = random.pick(Method::ALL);
    let mut plan = example(method);
    plan.container.shape = Pick::Known(random.pick(shapes(method)));
    if plan.container.shape == Pick::Known(Shape::Measured) {
        pour(&mut plan, &mut random);
    }
    for _ in 0..random.whole(0, 10) {
        choose(&mut plan, &mut random);
    }
    // Some plans wander far in a few fields, others a little in all.
    let likelihood = random.pick(&[0.1, 0.3, 1.0]);
    for field in numeric_fields(&plan) {
        if !of_the_build(field) && random.chance(likelihood) {
            vary(&mut plan, field, true, &mut random);
        }
    }
    let mut random = Seeded::new(seed.wrapping_mul(37) ^ 6);
    for _ in 0..random.whole(0, 4) {
        build_of(&mut plan, &mut random);
    }
    for field in numeric_fields(&plan) {
        if of_the_build(field) && random.chance(likelihood) {
            vary(&mut plan, field, true, &mut random);
        }
    }
    vary(&mut plan, Field::WaterFactor, true, &mut random);
    plan
}

/// Whether a field says how a tank is built.
fn of_the_build(field: Field) -> bool {
    field == Field::PipeSpacing || field.path().starts_with("build.")
}

/// Another choice for the build in one place.
fn build_of(plan: &mut Plan, random: &mut Seeded) {
    match random.index(4) {
        0 => plan.build.stands_on = Pick::Known(random.pick(Keyed::ALL)),
        1 => plan.build.timber = Pick::Known(random.pick(Keyed::ALL)),
        2 => plan.build.cover = Pick::Known(random.pick(Keyed::ALL)),
        _ => plan.container.pipe_material = Pick::Known(random.pick(Keyed::ALL)),
    }
}

/// The used fields that hold numbers.
pub fn numeric_fields(plan: &Plan) -> Vec<Field> {
    used_fields(plan)
        .into_iter()
        .filter(|field| field.limits().is_some())
        // These two are drawn apart.
        .filter(|field| !matches!(field, Field::Date | Field::WaterFactor))
        .collect()
}

/// Takes a step back when it left the plan unsound.
fn step(plan: &mut Plan, change: impl FnOnce(&mut Plan)) {
    let before = plan.clone();
    change(plan);
    if check(plan).is_err() {
        *plan = before;
    }
}

/// A new number for a field: mostly usual, sometimes anything, sometimes a bound itself.
fn vary(plan: &mut Plan, field: Field, wild: bool, random: &mut Seeded) {
    let limits = field.limits().expect("a numeric field");
    let may_stay_empty = matches!(
        field,
        Field::FillDepth | Field::PipeSpacing | Field::EdgeDistance | Field::SupportRating
    );
    if may_stay_empty && random.chance(0.6) {
        *field.entry_mut(plan).expect("an entry") = Entry::blank();
        return;
    }
    let Limits {
        low,
        high,
        usual_low,
        usual_high,
        dimension,
    } = limits;
    let anywhere = if wild { 0.5 } else { 0.15 };
    let value = if random.chance(0.05) {
        random.pick(&[low, high, usual_low, usual_high])
    } else if random.chance(anywhere) {
        // Small figures are as likely as large ones: an even chance for each power of ten.
        if low > 0.0 {
            low * libm::pow(high / low, random.share())
        } else {
            random.between(low, high)
        }
    } else if let (false, Some(Entry::Number(now))) = (wild, field.entry(plan)) {
        // A step from where the plan stands is sound more often than a leap.
        let now = *now;
        random.between(
            now - 0.4 * (now - usual_low),
            now + 0.4 * (usual_high - now),
        )
    } else {
        random.between(usual_low, usual_high)
    };
    let whole = matches!(dimension, Dimension::Count | Dimension::Days);
    set(
        plan,
        field,
        if whole { value.round() } else { value }.clamp(low, high),
    );
}

/// Another choice in one place.
fn choose(plan: &mut Plan, random: &mut Seeded) {
    fn any<T: Keyed>(random: &mut Seeded) -> Pick<T> {
        Pick::Known(random.pick(T::ALL))
    }
    match random.index(22) {
        0 => plan.container.foam = any(random),
        1 => plan.container.pipe = any(random),
        2 => plan.container.pipe_ends = any(random),
        3 => plan.crop.kind = any(random),
        4 => plan.crop.pattern = any(random),
        5 => plan.crop.date_meaning = any(random),
        6 => plan.fertilizer.dosing = any(random),
        7 => plan.choose_blend(random.pick(BlendChoice::ALL)),
        8 => plan.fertilizer.strength_by = any(random),
        9 => plan.fertilizer.calcium_nitrate = any(random),
        10 => plan.choose_climate(random.pick(ClimateChoice::ALL)),
        11 => plan.climate.daylight_by = any(random),
        12 => plan.choose_shelter(random.pick(Keyed::ALL)),
        13 => plan.choose_pot(random.pick(PotChoice::ALL)),
        14 => {
            let (year, month) = (random.whole(1900, 2200), random.whole(1, 12));
            let date = format!("{year}-{month:02}-{:02}", random.whole(1, 28));
            plan.crop.date = Entry::Text(date);
        }
        15 | 16 => plan.fertilizer.water_kind = any(random),
        17 => plan.choose_acid(random.pick(AcidChoice::ALL)),
        18 => plan.fertilizer.recipe = any(random),
        19 => shelve(plan, random),
        20 => {
            let crops = f64::from(random.whole(1, 5));
            plan.fertilizer.crops_in_a_row = Entry::Number(crops);
        }
        _ => plan.crop.plants_per_container = Entry::Number(f64::from(random.whole(1, 6))),
    }
}

/// Another shelf of salts: fewer of them, some of the grower's own, some impure or priced.
fn shelve(plan: &mut Plan, random: &mut Seeded) {
    const OWN: &[&str] = &["Mg(NO3)2.6H2O", "KCl", "CaCl2", "NH4Cl", "SiO2", "K2SO4"];
    let salts = &mut plan.fertilizer.salts;
    salts.retain(|_| random.chance(0.9));
    let own = Pick::from_key(random.pick(OWN));
    if salts.iter().all(|line| line.salt != own) {
        salts.push(SaltLine {
            salt: own,
            ..SaltLine::default()
        });
    }
    for line in salts {
        if random.chance(0.3) {
            line.purity_pct = Entry::Number(random.between(80.0, 100.0));
        }
        if random.chance(0.3) {
            line.price_per_kg = Entry::Number(random.between(0.0, 30.0));
        }
    }
}

/// Readings of an imagined vessel that widens or narrows upwards.
fn pour(plan: &mut Plan, random: &mut Seeded) {
    let height = get(plan, Field::Height);
    let readings = random.whole(3, 7);
    let mut area = random.between(0.3, 8.0);
    let (mut volume, mut depth) = (0.0, 0.0);
    plan.container.measured = (0..readings)
        .map(|_| {
            let rise = height / f64::from(readings) * random.between(0.5, 1.0);
            depth += rise;
            volume += area * rise;
            area *= random.between(0.7, 1.5);
            MeasuredPair {
                volume_l: Entry::Number(volume),
                depth_cm: Entry::Number(depth),
            }
        })
        .collect();
}
