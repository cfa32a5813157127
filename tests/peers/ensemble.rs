//! Our side of the plain Monte Carlo in NumPy: `ensemble/monte_carlo.py` runs this by name.

use std::time::Instant;

use serde_json::json;
use slackwater::advice::chances::Chances;
use slackwater::catalog::Keyed;
use slackwater::plan::{Daylight, Example, Light, check};
use slackwater::science::growth::GrowthParameters;
use slackwater::science::units::angle::degree;
use slackwater::science::units::area::square_meter;
use slackwater::science::units::length::meter;
use slackwater::science::units::mass::gram;
use slackwater::science::units::radiant_exposure::megajoule_per_square_meter;
use slackwater::science::units::ratio::{part_per_million, ratio};
use slackwater::science::units::thermodynamic_temperature::degree_celsius;
use slackwater::season::ensemble::{SEED, Spreads};

/// Seasons that NumPy lives through beside us.
const SEASONS: usize = 1000;

#[test]
#[ignore = "prints for ensemble/monte_carlo.py"]
fn seasons_for_numpy() {
    for &example in Example::ALL {
        let plan = example.plan();
        let sound = check(&plan).expect("an example is sound");
        let begun = Instant::now();
        let mut chances = Chances::new(&plan, SEASONS).expect("an example is sound");
        while !chances.advance(SEASONS).expect("within the models") {}
        let outcome = chances.outcome();
        let seconds = begun.elapsed().as_secs_f64();
        let (climate, crop) = (&sound.climate, &sound.crop);
        let Light::Sun {
            daylight: Daylight::Radiation(solar),
            through,
        } = climate.light
        else {
            panic!("the examples stand under the sun and know its radiation")
        };
        let pot = sound.container.pot.top_diameter.get::<meter>();
        let pots = pot * pot * std::f64::consts::FRAC_PI_4 * f64::from(crop.plants);
        let edges = sound.container.boards.as_ref().map_or(0.0, |boards| {
            let tank = boards.tank_length * boards.tank_width;
            let boards = boards.length * boards.width * f64::from(boards.count);
            (tank - boards).get::<square_meter>().max(0.0)
        });
        let Spreads {
            temperature_k,
            radiation,
            humidity,
            growth,
            water,
            ..
        } = Spreads::default();
        let harvest: Vec<_> = chances
            .fates()
            .iter()
            .map(|fate| fate.harvest_day)
            .collect();
        let needed: Vec<_> = chances.fates().iter().map(|fate| fate.needed_l).collect();
        let per_kg: Vec<_> = chances
            .fates()
            .iter()
            .map(|fate| fate.water_per_kg_l)
            .collect();
        println!(
            "PEER {}",
            json!({
                "name": example.key(),
                "seed": SEED,
                "seconds": seconds,
                "spreads": [temperature_k, radiation, humidity, growth, water],
                "low": climate.temperature_min.get::<degree_celsius>(),
                "high": climate.temperature_max.get::<degree_celsius>(),
                "humidity": climate.humidity.get::<ratio>(),
                "solar": solar.get::<megajoule_per_square_meter>(),
                "through": through.get::<ratio>(),
                "latitude": climate.latitude.get::<degree>(),
                "elevation": climate.elevation.get::<meter>(),
                "carbon_dioxide": climate.carbon_dioxide.get::<part_per_million>(),
                "wind": climate.effect.wind,
                "resistance": climate.effect.aerodynamic_resistance,
                "day_of_year": crop.transplanting.ordinal(),
                "ground": crop.area_per_plant.get::<square_meter>(),
                "plants": crop.plants,
                "open_area": pots + edges,
                "dry_matter": crop.figures.dry_matter.get::<ratio>(),
                "root_share": GrowthParameters::published().root_fraction,
                "seedling_age": crop.seedling_age,
                "target": crop.target_head.get::<gram>(),
                "growth_factor": crop.growth_factor,
                "start": plan_start(&plan),
                "harvest": harvest,
                "needed": needed,
                "per_kg": per_kg,
                "lasts": outcome.lasts,
                "bands": {
                    "harvest": outcome.harvest_day,
                    "needed": outcome.needed_l,
                    "per_kg": outcome.water_per_kg_l,
                },
            })
        );
    }
}

fn plan_start(plan: &slackwater::plan::Plan) -> f64 {
    slackwater::solve(plan).expect("sound").fill.volume_l
}
