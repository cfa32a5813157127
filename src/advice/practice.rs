//! What growers of this plan should be told beside its figures: pests, light, heat, rain, cleanliness
//! and what is left. Each only where it applies.

use super::facts::{Fact, Weight};
use super::findings::List;
use super::outcome::Outcome;
use crate::catalog::crops::CropKind;
use crate::catalog::shelters::Shelter;
use crate::plan::{Method, Sound};
use crate::science::air::{actual_vapour_pressure_from_mean_humidity, saturation_vapour_pressure};
use crate::science::mosquitoes::{Mosquito, egg_to_adult};
use crate::science::units::ThermodynamicTemperature;
use crate::science::units::area::square_centimeter;
use crate::science::units::pressure::kilopascal;
use crate::science::units::ratio::percent;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::time::day;

/// Temperature of the solution above which roots rot more easily, °C: common practice, no source
/// (24 to 26 is usually named).
const WARM_SOLUTION_C: f64 = 25.0;
/// Vapour pressure deficit of the warmest hour above which leaves wilt at midday, kPa: common
/// practice, no source.
const WILTING_KPA: f64 = 2.0;
/// Daily light from which lettuce in still air gets tip burn, mol/m²: Cornell's handbook of lettuce
/// under controlled environment names 17; from memory.
const TIP_BURN_MOL: f64 = 17.0;
/// Mean temperature and humidity that go with tip burn: common practice, no source.
const TIP_BURN_C: f64 = 20.0;
const TIP_BURN_HUMIDITY_PCT: f64 = 70.0;
/// The warmest of the experiments on mosquitoes, °C; hotter water counts as this.
const MOSQUITO_WARMEST_C: f64 = 34.0;
/// Open surface beside the boards that is worth a word, cm²: less is the joint between two boards.
const OPEN_CM2: f64 = 1.0;
/// Spent solution that is worth a word, L in all.
const SPENT_L: f64 = 0.5;

/// Dose below which a spoon comes to hand, g: a dozen teaspoons.
const SPOONED_G: f64 = 60.0;
/// US teaspoon, mL: a sixth of a fluid ounce, exact by definition (NIST Handbook 44, appendix C).
const TEASPOON_ML: f64 = 231.0 * 2.54 * 2.54 * 2.54 / 128.0 / 6.0;
/// Bulk density of loose fertilizer salts and blends, g/mL: common practice, no source.
const BULK_G_PER_ML: [f64; 2] = [0.8, 1.2];

/// Adds what applies.
pub(super) fn practice(list: &mut List, sound: &Sound, outcome: &Outcome) {
    solution(list, sound, outcome);
    spoons(list, outcome);
    air(list, sound, outcome);
    container(list, sound);
    harvest(list, sound, outcome);
}

/// Warmth, mosquitoes and algae.
fn solution(list: &mut List, sound: &Sound, outcome: &Outcome) {
    let mean_c = outcome.season.mean_temperature_c;
    if mean_c > WARM_SOLUTION_C {
        list.add(
            Weight::Caution,
            Fact::WarmSolution {
                solution_c: mean_c,
                limit_c: WARM_SOLUTION_C,
                oxygen_mg_per_l: outcome.roots.oxygen_mg_per_l,
            },
        );
    }
    mosquitoes(list, sound, outcome);
    if sound.container.method == Method::Bottle {
        list.add(Weight::Reminder, Fact::AlgaeInClearWall);
    }
    if let Some(boards) = &sound.container.boards {
        let covered = boards.length * boards.width * f64::from(boards.count);
        let open_cm2 =
            (boards.tank_length * boards.tank_width - covered).get::<square_centimeter>();
        if open_cm2 > OPEN_CM2 {
            list.add(Weight::Reminder, Fact::AlgaeAtEdges { open_cm2 });
        }
    }
}

/// A level teaspoon is no measure of mass: how loosely the salt lies decides.
fn spoons(list: &mut List, outcome: &Outcome) {
    let masses = outcome
        .fertilizer
        .doses
        .iter()
        .filter_map(|dose| dose.mass_g);
    if masses.fold(f64::INFINITY, f64::min) < SPOONED_G {
        let [least, most] = BULK_G_PER_ML;
        list.add(
            Weight::Reminder,
            Fact::Spoons {
                least_g: least * TEASPOON_ML,
                most_g: most * TEASPOON_ML,
                error_pct: (most - least) / (most + least) * 100.0,
            },
        );
    }
}

/// A tank stands open beside its boards or under the edge of its cover; a pot closes the mouth of a
/// bottle, a lid the bucket. Indoors hardly a mosquito comes.
fn mosquitoes(list: &mut List, sound: &Sound, outcome: &Outcome) {
    let tank = matches!(
        sound.container.method,
        Method::CoveredTank | Method::FloatingBoards
    );
    let indoors = matches!(sound.climate.shelter, Shelter::Lamps | Shelter::Windowsill);
    let mean_c = outcome.season.mean_temperature_c;
    let water = ThermodynamicTemperature::new::<degree_celsius>(mean_c.min(MOSQUITO_WARMEST_C));
    let days = |mosquito| egg_to_adult(mosquito, water).map(|time| time.get::<day>());
    // Colder than any experiment: too slow to matter.
    let (Ok(culex_days), Ok(aedes_days)) = (
        days(Mosquito::CulexQuinquefasciatus),
        days(Mosquito::AedesAegypti),
    ) else {
        return;
    };
    let season_days = outcome.season.days_followed;
    if tank && !indoors && culex_days.min(aedes_days) < f64::from(season_days) {
        list.add(
            Weight::Caution,
            Fact::Mosquitoes {
                mean_c,
                culex_days,
                aedes_days,
                season_days,
            },
        );
    }
}

/// Wilting, tip burn and rain.
fn air(list: &mut List, sound: &Sound, outcome: &Outcome) {
    let climate = &sound.climate;
    if let Ok(vapour) = actual_vapour_pressure_from_mean_humidity(
        climate.temperature_max,
        climate.temperature_min,
        climate.humidity,
    ) {
        let deficit_kpa =
            (saturation_vapour_pressure(climate.temperature_max) - vapour).get::<kilopascal>();
        if deficit_kpa > WILTING_KPA {
            list.add(
                Weight::Caution,
                Fact::MiddayWilt {
                    max_c: climate.temperature_max.get::<degree_celsius>(),
                    deficit_kpa,
                    limit_kpa: WILTING_KPA,
                },
            );
        }
    }
    let burns = matches!(
        sound.crop.kind,
        CropKind::LeafLettuce
            | CropKind::ButterheadLettuce
            | CropKind::RomaineLettuce
            | CropKind::PakChoi
    );
    let (light_mol, mean_c) = (
        outcome.season.daily_light_mol_per_m2,
        outcome.season.mean_temperature_c,
    );
    let humidity_pct = climate.humidity.get::<percent>();
    if burns
        && light_mol > TIP_BURN_MOL
        && mean_c > TIP_BURN_C
        && humidity_pct > TIP_BURN_HUMIDITY_PCT
    {
        list.add(
            Weight::Caution,
            Fact::TipBurn {
                light_mol,
                limit_mol: TIP_BURN_MOL,
                mean_c,
                humidity_pct,
            },
        );
    }
    if climate.shelter == Shelter::RainCover {
        list.add(Weight::Reminder, Fact::RainDilutes);
    }
}

/// What touches the solution.
fn container(list: &mut List, sound: &Sound) {
    list.add(
        Weight::Reminder,
        match sound.container.method {
            Method::Bottle | Method::Bucket => Fact::FoodContainer,
            Method::CoveredTank | Method::FloatingBoards => Fact::TankLiner,
        },
    );
}

/// At and after the harvest.
fn harvest(list: &mut List, sound: &Sound, outcome: &Outcome) {
    let Some(harvest_day) = outcome.season.harvest_day else {
        return;
    };
    list.add(Weight::Reminder, Fact::CleanHarvest);
    // Crops on one charge until one asks for a fresh one.
    let (mut crops, mut drains) = (1, false);
    for next in &outcome.growing_on {
        drains |= next.drain;
        if !drains {
            crops += 1;
        }
    }
    let each = harvest_day + super::HARVEST_WINDOW_DAYS + sound.crop.turnaround_days;
    list.add(
        Weight::Reminder,
        Fact::DrainInterval {
            crops,
            days: each.saturating_mul(crops),
        },
    );
    let volume_l = outcome.season.left_l * f64::from(sound.container.count);
    if volume_l >= SPENT_L {
        list.add(Weight::Reminder, Fact::SpentSolution { volume_l });
    }
}
