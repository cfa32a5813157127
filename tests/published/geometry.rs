//! Vessels, pots, pipes, water and floating boards against closed forms worked by hand, numerical
//! integration, SciPy's interpolation and published tables.

use slackwater::science::flotation::{self, Flotation, FlotationProblem};
use slackwater::science::geometry::{Basin, Frustum, HorizontalPipes, Vessel, immersed_frustum};
use slackwater::science::units::{
    Area, Length, Mass, MassDensity, Pressure, ThermodynamicTemperature, Volume,
    area::square_meter, length::meter, mass::kilogram, mass_concentration::milligram_per_liter,
    mass_density::kilogram_per_cubic_meter, pressure::kilopascal,
    thermodynamic_temperature::degree_celsius, volume::cubic_meter,
};
use slackwater::science::water;

use crate::table::{Row, rows};

/// The tables print twelve digits; sums of a few terms lose two or three of them.
const PRINTED: f64 = 1e-9;
/// Printed zeros stand for exact ones, less what a rounding of the table's depth does to an area.
const ZERO: f64 = 1e-15;
/// Agreement of the equation of Tanaka et al. (2001) with IAPWS-95, kg/m³: a hundred-thousandth,
/// far below what salts add.
const DENSITY: f64 = 0.01;
/// What the reduced pressure form of some rows leaves out, mg/L; the rest of the tolerance is half a
/// unit of the last printed digit.
const OXYGEN: f64 = 0.0015;
/// The last printed digit of the flotation table is the ninth.
const FLOTATION: f64 = 1e-8;

fn m(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn close(got: f64, expected: f64, what: &str, row: &Row) {
    let allowed = (PRINTED * expected.abs()).max(ZERO);
    assert!(
        (got - expected).abs() <= allowed,
        "{what}: {got} is not {expected} for {} {} at {}",
        row.text("shape"),
        row.text("dimensions_m"),
        row.text("depth_m"),
    );
}

/// The shapes that the tables speak of.
enum Shape {
    Vessel(Vessel),
    Pot(Frustum),
    Pipes(HorizontalPipes),
    Basin(Basin),
}

/// A pipe count of a table.
fn count(value: f64) -> u32 {
    format!("{value}").parse().expect("a whole number of pipes")
}

fn shape(row: &Row) -> Shape {
    if row.text("shape") == "measured" {
        let points: Vec<(Volume, Length)> = row
            .text("dimensions_m")
            .split(' ')
            .map(|point| {
                let (volume, depth) = point.split_once(':').expect("volume:depth");
                (
                    Volume::new::<cubic_meter>(volume.parse().expect("volume")),
                    m(depth.parse().expect("depth")),
                )
            })
            .collect();
        return Shape::Vessel(Vessel::measured(&points).expect("usable points"));
    }
    let sizes: Vec<f64> = row
        .text("dimensions_m")
        .split(' ')
        .map(|size| size.parse().expect("a length"))
        .collect();
    let capped = |diameter, length, number| {
        HorizontalPipes::new(m(diameter), None, m(length), count(number)).expect("usable pipes")
    };
    let vessel = match (row.text("shape"), sizes.as_slice()) {
        ("cylinder", &[d, h]) => Vessel::cylinder(m(d), m(h)),
        ("tapered_round", &[b, t, h]) => Vessel::tapered_round(m(b), m(t), m(h)),
        ("rectangular", &[l, w, h]) => Vessel::rectangular(m(l), m(w), m(h)),
        ("tapered_rectangular", &[bl, bw, tl, tw, h]) => {
            Vessel::tapered_rectangular(m(bl), m(bw), m(tl), m(tw), m(h))
        }
        ("bottle", &[b, bh, sh, n, nh]) => Vessel::bottle(m(b), m(bh), m(sh), m(n), m(nh)),
        ("frustum", &[b, t, h]) => {
            return Shape::Pot(Frustum::new(m(b), m(t), m(h)).expect("a usable pot"));
        }
        ("pipes_capped", &[d, l, n]) => return Shape::Pipes(capped(d, l, n)),
        ("pipes_open", &[d, wall, l, n]) => {
            let pipes = HorizontalPipes::new(m(d), Some(m(wall)), m(l), count(n));
            return Shape::Pipes(pipes.expect("usable pipes"));
        }
        ("box_with_capped_pipes", &[l, w, h, d, pl, n]) => {
            let vessel = Vessel::rectangular(m(l), m(w), m(h)).expect("a usable box");
            let basin = Basin::new(vessel, Some(capped(d, pl, n)));
            return Shape::Basin(basin.expect("pipes that fit"));
        }
        (name, _) => panic!("the table has an unknown shape '{name}'"),
    };
    Shape::Vessel(vessel.expect("usable dimensions"))
}

fn check(row: &Row) {
    let depth = m(row.number("depth_m"));
    let (volume, area): (Volume, Area) = match &shape(row) {
        Shape::Vessel(vessel) => (
            vessel.volume_at(depth).expect("within"),
            vessel.area_at(depth).expect("within"),
        ),
        Shape::Basin(basin) => (
            basin.volume_at(depth).expect("within"),
            basin.area_at(depth).expect("within"),
        ),
        Shape::Pot(pot) => (pot.immersed_volume(depth), pot.area_at(depth)),
        Shape::Pipes(pipes) => (
            pipes.displaced_volume_below(depth),
            pipes.displaced_area_at(depth),
        ),
    };
    let (expected_volume, expected_area) = (row.number("volume_m3"), row.number("area_m2"));
    close(volume.get::<cubic_meter>(), expected_volume, "volume", row);
    close(area.get::<square_meter>(), expected_area, "area", row);
    let found = match &shape(row) {
        Shape::Vessel(vessel) => vessel.depth_near(volume, m(0.1)),
        Shape::Basin(basin) => basin.depth_near(volume, m(0.1)),
        Shape::Pot(_) | Shape::Pipes(_) => return,
    };
    // Where the free surface is nearly zero, a volume does not tell its depth.
    if expected_area > ZERO {
        let found = found.expect("within").get::<meter>();
        close(found, depth.get::<meter>(), "depth", row);
    }
}

/// Source: closed forms; each row carries its sum.
#[test]
fn shapes_agree_with_sums_worked_by_hand() {
    for row in rows(include_str!("data/geometry_closed_forms.csv")) {
        check(&row);
    }
}

/// Source: scipy.integrate.quad on the outlines (generators/geometry.py).
#[test]
fn shapes_agree_with_numerical_integration() {
    for row in rows(include_str!("data/geometry_integrated.csv")) {
        check(&row);
    }
}

/// Source: scipy.interpolate.PchipInterpolator (generators/geometry.py), same end slopes.
#[test]
fn measured_vessels_agree_with_scipy() {
    for row in rows(include_str!("data/geometry_interpolated.csv")) {
        check(&row);
    }
}

/// Source: closed form, 15.25 π cm³: 3 π (4 + 5 + 6.25) / 3, worked by hand.
#[test]
fn a_single_pot_agrees_with_its_sum() {
    let volume = immersed_frustum(m(0.04), m(0.06), m(0.06), m(0.03)).expect("usable pot");
    let expected = 15.25e-6 * std::f64::consts::PI;
    assert!((volume.get::<cubic_meter>() / expected - 1.0).abs() < PRINTED);
    assert!(immersed_frustum(m(0.04), m(0.06), m(0.06), m(f64::NAN)).is_err());
    assert!(immersed_frustum(m(0.04), m(-0.06), m(0.06), m(0.01)).is_err());
}

/// Source: IAPWS-95 (Wagner & Pruß 2002) at 101.325 kPa, by the package iapws.
#[test]
fn density_of_water_agrees_with_iapws() {
    for row in rows(include_str!("data/geometry_water_density.csv")) {
        let t = ThermodynamicTemperature::new::<degree_celsius>(row.number("temperature_c"));
        let got = water::density(t).expect("within range");
        let got = got.get::<kilogram_per_cubic_meter>();
        let expected = row.number("density_kg_per_m3");
        assert!((got - expected).abs() <= DENSITY, "{t:?}: {got} {expected}");
    }
}

/// Source: EN 25814 table and APHA (1985), Standard Methods, 4500-O.
#[test]
fn oxygen_saturation_agrees_with_the_tables() {
    for row in rows(include_str!("data/geometry_oxygen.csv")) {
        let t = ThermodynamicTemperature::new::<degree_celsius>(row.number("temperature_c"));
        let p = Pressure::new::<kilopascal>(row.number("air_pressure_kpa"));
        let got = water::oxygen_saturation(t, p).expect("within range");
        let got = got.get::<milligram_per_liter>();
        let printed = row.text("oxygen_mg_per_l");
        let half_a_unit = match printed
            .split_once('.')
            .map_or(0, |(_, digits)| digits.len())
        {
            1 => 0.05,
            2 => 0.005,
            _ => 0.0005,
        };
        let expected = row.number("oxygen_mg_per_l");
        assert!(
            (got - expected).abs() <= half_a_unit + OXYGEN,
            "{t:?} {p:?}: {got} {expected}"
        );
    }
}

/// Source: Archimedes' principle; each row carries its sum.
#[test]
fn boards_float_as_worked_by_hand() {
    for row in rows(include_str!("data/geometry_flotation.csv")) {
        let thickness = m(row.number("thickness_m"));
        let area = Area::new::<square_meter>(row.number("area_m2"));
        let mass = Mass::new::<kilogram>(row.number("mass_kg"));
        let density = MassDensity::new::<kilogram_per_cubic_meter>(row.number("density_kg_per_m3"));
        let agree = |got: f64, column: &str| {
            let expected = row.number(column);
            assert!(
                (got - expected).abs() <= FLOTATION * expected.abs().max(1e-3),
                "{column}: {got} {expected}"
            );
        };
        let draught = flotation::draught(mass, area, density).expect("in range");
        agree(draught.get::<meter>(), "draught_m");
        match flotation::floats(thickness, area, mass, density).expect("in range") {
            Flotation::Floats { draught, freeboard } => {
                agree(draught.get::<meter>(), "draught_m");
                agree(freeboard.get::<meter>(), "freeboard_m");
                let load = flotation::maximum_load(thickness, area, mass, density);
                agree(load.expect("floats").get::<kilogram>(), "spare_kg");
            }
            Flotation::Sinks { excess } => {
                agree(-excess.get::<kilogram>(), "spare_kg");
                let load = flotation::maximum_load(thickness, area, mass, density);
                assert_eq!(load, Err(FlotationProblem::SinksUnloaded { excess }));
            }
        }
    }
}
