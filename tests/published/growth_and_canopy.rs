//! Lettuce growth against van Henten (1994) and canopy transpiration against Graamans and others
//! (2017): printed results, and independent integrations of the printed equations.

mod canopy;
mod growth;

use slackwater::science::units::{
    HeatFluxDensity, MassFlux, ThermodynamicTemperature, heat_flux_density::watt_per_square_meter,
    mass_flux::kilogram_per_square_meter_second, thermodynamic_temperature::degree_celsius,
};

/// Both sides evaluate the same closed expressions in doubles.
const SAME_EXPRESSION: f64 = 1e-9;

fn assert_near(what: &str, got: f64, expected: f64, relative: f64) {
    let allowed = relative * expected.abs() + 1e-15;
    assert!(
        (got - expected).abs() <= allowed,
        "{what}: got {got}, expected {expected} within {relative}"
    );
}

fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}

fn watts(value: f64) -> HeatFluxDensity {
    HeatFluxDensity::new::<watt_per_square_meter>(value)
}

/// The papers' g m⁻² s⁻¹.
fn grams_per_second(rate: MassFlux) -> f64 {
    rate.get::<kilogram_per_square_meter_second>() * 1000.0
}
