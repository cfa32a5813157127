//! Properties that the growth model must have for any crop and climate.

use super::*;
use crate::science::units::{
    Time, mass_flux::kilogram_per_square_meter_second, ratio::part_per_million,
    thermodynamic_temperature::degree_celsius, time::second,
};

const HOUR: f64 = 3600.0;

fn crop(nonstructural: f64, structural: f64) -> Crop {
    Crop {
        nonstructural: ArealMassDensity::new::<gram_per_square_meter>(nonstructural),
        structural: ArealMassDensity::new::<gram_per_square_meter>(structural),
    }
}

fn surroundings(celsius: f64, watts: f64, ppm: f64) -> Surroundings {
    Surroundings {
        temperature: ThermodynamicTemperature::new::<degree_celsius>(celsius),
        photosynthetic_radiation: HeatFluxDensity::new::<heat_flux_density::watt_per_square_meter>(
            watts,
        ),
        carbon_dioxide: Ratio::new::<part_per_million>(ppm),
    }
}

fn model() -> GrowthModel {
    GrowthModel::new(GrowthParameters::published()).unwrap()
}

fn prepared(celsius: f64, watts: f64, ppm: f64) -> PreparedGrowth {
    model().prepare(&surroundings(celsius, watts, ppm)).unwrap()
}

fn rates_of(celsius: f64, watts: f64, ppm: f64, of: &Crop) -> Rates {
    model()
        .rates(&surroundings(celsius, watts, ppm), of)
        .unwrap()
}

fn gross(celsius: f64, watts: f64, ppm: f64, of: &Crop) -> f64 {
    let rates = rates_of(celsius, watts, ppm, of);
    rates
        .gross_photosynthesis
        .get::<kilogram_per_square_meter_second>()
}

fn live(prepared: &PreparedGrowth, mut crop: Crop, seconds: f64, steps: u32) -> Crop {
    let model = model();
    for _ in 0..steps {
        let cover = model.cover(&crop);
        crop = model.step(prepared, crop, cover, Time::new::<second>(seconds));
    }
    crop
}

#[test]
fn more_light_never_lowers_photosynthesis() {
    let stand = crop(5.0, 40.0);
    for celsius in [3.0, 8.0, 20.0, 33.0, 45.0] {
        for ppm in [0.0, 30.0, 400.0, 1500.0] {
            for pair in [0.0, 1.0, 20.0, 100.0, 300.0, 1000.0].windows(2) {
                let less = gross(celsius, pair[0], ppm, &stand);
                let more = gross(celsius, pair[1], ppm, &stand);
                assert!(more >= less, "{celsius} {ppm} {pair:?}: {less} {more}");
            }
        }
    }
}

#[test]
fn more_carbon_dioxide_and_more_leaves_raise_photosynthesis() {
    for pair in [100.0, 400.0, 800.0, 2000.0].windows(2) {
        let stand = crop(5.0, 40.0);
        assert!(gross(20.0, 100.0, pair[1], &stand) > gross(20.0, 100.0, pair[0], &stand));
    }
    for pair in [0.0, 1.0, 10.0, 60.0].windows(2) {
        let (small, large) = (crop(5.0, pair[0]), crop(5.0, pair[1]));
        assert!(gross(20.0, 100.0, 400.0, &large) > gross(20.0, 100.0, 400.0, &small));
    }
}

#[test]
fn the_canopy_closes_from_nothing_to_nearly_all() {
    let model = model();
    assert!(model.cover(&crop(1.0, 0.0)).abs() < f64::EPSILON);
    // Leaf area index 3 at the published extinction of 0.9: 1 − e^−2.7 = 0.9328.
    let published = GrowthParameters::published();
    let of_three = 3.0 / leaf_area_index(&published, &crop(0.0, 1.0));
    assert!((model.cover(&crop(1.0, of_three)) - 0.9328).abs() < 5e-5);
    let closed = model.cover(&crop(1.0, 160.0));
    assert!(closed > 0.999 && closed < 1.0);
    // However long a stand misses a heavy target, no more light is taken than there is.
    assert!((model.cover(&crop(1.0, 1e6)) - 1.0).abs() < f64::EPSILON);
}

#[test]
fn respiration_has_a_temperature_factor_of_its_own() {
    /// Two exponentials and their products.
    const ROUNDING: f64 = 1e-14;
    let published = GrowthParameters::published();
    // Van Henten (1994): 2 for both the compensation point and respiration. Moved by less than a
    // double of the result tells, they are no longer told from one exponential.
    let apart = GrowthParameters {
        respiration_temperature_factor: published.respiration_temperature_factor * (1.0 + 1e-15),
        ..published
    };
    for celsius in [-10.0, 0.0, 14.0, 25.0, 41.0] {
        let here = surroundings(celsius, 100.0, 400.0);
        let of = |parameters: GrowthParameters| {
            let model = GrowthModel::new(parameters).unwrap();
            model.rates(&here, &crop(8.0, 90.0)).unwrap()
        };
        let ratio = of(apart).maintenance_respiration / of(published).maintenance_respiration;
        assert!((ratio.value - 1.0).abs() < ROUNDING, "{celsius}: {ratio:?}");
    }
}

#[test]
fn no_photosynthesis_beyond_the_polynomial_or_below_compensation() {
    let stand = crop(5.0, 40.0);
    // van Henten (1994), Eq. 10: the polynomial has its zeros at 5.0 and 40.0 °C.
    for celsius in [-10.0, 4.9, 40.1, 55.0] {
        assert!(gross(celsius, 200.0, 400.0, &stand).abs() < f64::MIN_POSITIVE);
    }
    for celsius in [5.1, 22.5, 39.9] {
        assert!(gross(celsius, 200.0, 400.0, &stand) > 0.0);
    }
    for ppm in [0.0, 20.0, 40.0] {
        assert!(gross(20.0, 200.0, ppm, &stand).abs() < f64::MIN_POSITIVE);
    }
    // Eq. 7: 40 ppm at 20 °C.
    assert!(gross(20.0, 200.0, 40.1, &stand) > 0.0);
}

#[test]
fn carbon_is_accounted_for() {
    /// Sums of a few doubles.
    const ROUNDING: f64 = 1e-12;
    for (celsius, watts) in [(20.0, 100.0), (10.0, 0.0), (30.0, 300.0)] {
        let rates = rates_of(celsius, watts, 400.0, &crop(8.0, 90.0));
        let fixed = rates.gross_photosynthesis * 0.68;
        let used = rates.nonstructural
            + rates.structural
            + rates.growth_respiration
            + rates.maintenance_respiration;
        let scale = (fixed + rates.maintenance_respiration).value;
        assert!((fixed - used).value.abs() < ROUNDING * scale);
    }
}

#[test]
fn the_growth_factor_scales_photosynthesis_and_nothing_else() {
    let stand = crop(8.0, 90.0);
    let noon = surroundings(20.0, 100.0, 400.0);
    let published = GrowthParameters::published();
    assert!((published.growth_factor - 1.0).abs() < f64::EPSILON);
    let double = GrowthParameters {
        growth_factor: 2.0,
        ..published
    };
    let plain = rates(&published, &stand, &noon).unwrap();
    let scaled = rates(&double, &stand, &noon).unwrap();
    let ratio = scaled.gross_photosynthesis / plain.gross_photosynthesis;
    assert!((ratio.value - 2.0).abs() < 1e-12);
    assert_eq!(scaled.structural, plain.structural);
    assert_eq!(
        scaled.maintenance_respiration,
        plain.maintenance_respiration
    );
}

#[test]
fn a_starving_crop_stands_still_and_recovers() {
    let night = prepared(30.0, 0.0, 400.0);
    let starved = live(&night, crop(0.05, 60.0), HOUR, 48);
    assert!(starved.nonstructural.value.abs() < f64::MIN_POSITIVE);
    assert!(starved.structural.get::<gram_per_square_meter>() >= 60.0);
    assert_eq!(live(&night, starved, HOUR, 48), starved);
    let fed = live(&prepared(20.0, 150.0, 400.0), starved, HOUR, 10);
    assert!(fed.nonstructural > starved.nonstructural);
    assert!(fed.structural > starved.structural);
}

#[test]
fn no_step_makes_a_weight_negative_or_lost() {
    for celsius in [-40.0, 5.0, 20.0, 40.0, 60.0] {
        for watts in [0.0, 5.0, 1000.0] {
            for start in [
                crop(0.0, 0.0),
                crop(1.0, 0.0),
                crop(0.0, 1.0),
                crop(1e-9, 500.0),
            ] {
                let end = live(&prepared(celsius, watts, 400.0), start, HOUR, 240);
                assert_eq!(end.check(), Ok(()), "{celsius} {watts} {start:?}");
                assert!(end.structural >= start.structural);
            }
        }
    }
}

#[test]
fn no_crop_grows_out_of_nothing() {
    let noon = prepared(20.0, 100.0, 400.0);
    assert_eq!(live(&noon, crop(0.0, 0.0), HOUR, 24), crop(0.0, 0.0));
}

#[test]
fn the_step_is_of_second_order() {
    // General numerical practice: halving the step of a second-order method quarters its error.
    let day = prepared(22.0, 120.0, 600.0);
    let total = |seconds: f64, steps: u32| live(&day, crop(0.3, 0.9), seconds, steps).total().value;
    let fine = total(HOUR / 32.0, 32 * 240);
    let coarse = total(2.0 * HOUR, 120) - fine;
    let halved = total(HOUR, 240) - fine;
    let order = libm::log2(coarse / halved);
    assert!((order - 2.0).abs() < 0.1, "{order}");
}

#[test]
fn refuses_what_is_out_of_range() {
    let model = model();
    let refused = |celsius, watts, ppm| {
        model
            .prepare(&surroundings(celsius, watts, ppm))
            .unwrap_err()
            .quantity
    };
    for wrong in [f64::NAN, f64::INFINITY, -41.0, 61.0] {
        assert_eq!(refused(wrong, 100.0, 400.0), Quantity::Temperature);
    }
    for wrong in [f64::NAN, -1.0, 1001.0] {
        assert_eq!(
            refused(20.0, wrong, 400.0),
            Quantity::PhotosyntheticRadiation
        );
        assert_eq!(refused(20.0, 100.0, wrong * 10.0), Quantity::CarbonDioxide);
    }

    let broken = GrowthParameters {
        boundary_layer_conductance: 0.0,
        ..GrowthParameters::published()
    };
    assert_eq!(
        GrowthModel::new(broken).unwrap_err().quantity,
        Quantity::Parameter("boundary_layer_conductance")
    );

    assert_eq!(
        crop(-0.1, 1.0).check().unwrap_err().quantity,
        Quantity::Nonstructural
    );
    assert_eq!(
        crop(0.1, f64::NAN).check().unwrap_err().quantity,
        Quantity::Structural
    );
    let total = ArealMassDensity::new::<gram_per_square_meter>(1.0);
    assert_eq!(
        Crop::of_total(total, 1.5).unwrap_err().quantity,
        Quantity::StructuralShare
    );
}
