//! Transpiration of a canopy: Graamans and others (2017), Agricultural Systems 153:138–147.

use super::{SAME_EXPRESSION, assert_near, celsius, grams_per_second, watts};
use crate::table::rows;
use slackwater::science::canopy::{
    CanopyConditions, CanopyExchange, net_radiation, saturation, stomatal_resistance, transpiration,
};
use slackwater::science::units::{
    InverseVelocity, MassConcentration, MolarFlux, Ratio, heat_flux_density::watt_per_square_meter,
    inverse_velocity::second_per_meter, mass_concentration::gram_per_cubic_meter,
    molar_flux::mole_per_square_meter_second, ratio, temperature_interval,
};

/// The printed resistances depart from the printed equation by up to 0.9 %.
const ROUNDED_RESISTANCE: f64 = 0.01;
/// Read off a printed figure.
const READ_OFF_FIGURE: f64 = 0.05;

fn resistance(value: f64) -> InverseVelocity {
    InverseVelocity::new::<second_per_meter>(value)
}

fn photons(micromoles: f64) -> MolarFlux {
    MolarFlux::new::<mole_per_square_meter_second>(micromoles * 1e-6)
}

#[test]
fn stomatal_resistance_is_as_printed() {
    for row in rows(include_str!("../data/canopy_stomata.csv")) {
        let flux = row.number("photon_flux_umol_per_m2_s");
        let got = stomatal_resistance(photons(flux)).unwrap();
        assert_near(
            &format!("stomata at {flux}"),
            got.get::<second_per_meter>(),
            row.number("resistance_s_per_m"),
            ROUNDED_RESISTANCE,
        );
    }
}

#[test]
fn energy_balances_of_four_scenarios_are_as_printed() {
    for row in rows(include_str!("../data/canopy_sets.csv")) {
        let set = row.text("set");
        let net = net_radiation(watts(row.number("par_w_per_m2")), 0.05, 0.95).unwrap();
        let got = transpiration(&CanopyConditions {
            net_radiation: net,
            deficit: MassConcentration::new::<gram_per_cubic_meter>(row.number("deficit_g_per_m3")),
            slope: saturation(celsius(row.number("air_c"))).unwrap().slope,
            leaf_area_index: 3.0,
            stomatal_resistance: stomatal_resistance(photons(
                row.number("photon_flux_umol_per_m2_s"),
            ))
            .unwrap(),
            aerodynamic_resistance: resistance(100.0),
        })
        .unwrap();
        for (column, flux) in [
            ("net_w_per_m2", net),
            ("latent_w_per_m2", got.latent),
            ("sensible_w_per_m2", got.sensible),
        ] {
            let difference = flux.get::<watt_per_square_meter>() - row.number(column);
            assert!(
                difference.abs() <= row.number("tolerance_w_per_m2"),
                "set {set}, {column}: off by {difference}"
            );
        }
    }
}

/// Experiment 1 of Graamans and others (2017): closed canopy, forced air, full cover.
fn first_experiment(air: f64, humidity: f64, par: f64, photon_flux: f64) -> CanopyExchange {
    let saturation = saturation(celsius(air)).unwrap();
    transpiration(&CanopyConditions {
        net_radiation: net_radiation(watts(par), 0.05, 1.0).unwrap(),
        deficit: saturation
            .deficit(Ratio::new::<ratio::ratio>(humidity))
            .unwrap(),
        slope: saturation.slope,
        leaf_area_index: 3.0,
        stomatal_resistance: stomatal_resistance(photons(photon_flux)).unwrap(),
        aerodynamic_resistance: resistance(100.0),
    })
    .unwrap()
}

#[test]
fn transpiration_of_the_first_experiment_is_as_published() {
    // Graamans and others (2017), section on experiment 1: model means, g m⁻² s⁻¹.
    const MEAN: f64 = 0.030;
    const MEAN_TOLERANCE: f64 = 0.001; // the last digit printed
    const DARK: f64 = 0.011;
    const DARK_TOLERANCE: f64 = 0.0005; // half of the last digit printed

    let dark = grams_per_second(first_experiment(19.0, 0.83, 0.0, 0.0).water);
    assert!((dark - DARK).abs() <= DARK_TOLERANCE, "dark: {dark}");

    let table = rows(include_str!("../data/canopy_experiment.csv"));
    let mut sum = 0.0;
    for row in &table {
        let flux = row.number("photon_flux_umol_per_m2_s");
        let exchange = first_experiment(21.0, 0.73, row.number("par_w_per_m2"), flux);
        let lit = grams_per_second(exchange.water);
        assert_near(
            &format!("transpiration at {flux}"),
            lit,
            row.number("transpiration_g_per_m2_s"),
            READ_OFF_FIGURE,
        );
        sum += (16.0 * lit + 8.0 * dark) / 24.0;
    }
    let mean = sum / table.len() as f64;
    assert!((mean - MEAN).abs() <= MEAN_TOLERANCE, "24 h mean: {mean}");
}

#[test]
fn the_closed_form_solves_the_printed_equations() {
    for row in rows(include_str!("../data/canopy_balance.csv")) {
        let saturation = saturation(celsius(row.number("air_c"))).unwrap();
        let got = transpiration(&CanopyConditions {
            net_radiation: watts(row.number("net_radiation_w_per_m2")),
            deficit: saturation
                .deficit(Ratio::new::<ratio::ratio>(row.number("relative_humidity")))
                .unwrap(),
            slope: saturation.slope,
            leaf_area_index: row.number("leaf_area_index"),
            stomatal_resistance: resistance(row.number("stomatal_s_per_m")),
            aerodynamic_resistance: resistance(row.number("aerodynamic_s_per_m")),
        })
        .unwrap();
        let concentration = saturation.concentration.get::<gram_per_cubic_meter>();
        let excess = got.surface_excess.get::<temperature_interval::kelvin>();
        for (column, value) in [
            ("concentration_g_per_m3", concentration),
            ("slope", saturation.slope.get::<ratio::ratio>()),
            ("latent_w_per_m2", got.latent.get::<watt_per_square_meter>()),
            (
                "sensible_w_per_m2",
                got.sensible.get::<watt_per_square_meter>(),
            ),
            ("water_g_per_m2_s", grams_per_second(got.water)),
            ("surface_excess_k", excess),
        ] {
            // Differences of near-equal numbers lose digits: an absolute part of the same size.
            let allowed = SAME_EXPRESSION * (1.0 + row.number(column).abs());
            let difference = value - row.number(column);
            assert!(difference.abs() <= allowed, "{column}: off by {difference}");
        }
    }
}
