//! Salt tolerance, raw water and the proton balance.

use super::{CHARGE, FOUR_DECIMALS, keyed};
use crate::table::rows;
use slackwater::catalog::crops::CropKind;
use slackwater::catalog::salt_tolerance;
use slackwater::science::proton_balance::{Uptake, molality::mole_per_kilogram};
use slackwater::science::raw_water::{Analysis, Judgement, Restriction};
use slackwater::science::units::electrical_conductivity::siemens_per_meter;
use slackwater::science::units::mass_concentration::milligram_per_liter;
use slackwater::science::units::ratio::{percent, ratio};
use slackwater::science::units::{ElectricalConductivity, MassConcentration, Ratio};

/// The regression keeps three figures of each constant.
const REGRESSION: f64 = 0.005;
/// Two descriptions of the same measurements, one bent and one straight.
const BENT_AND_STRAIGHT: f64 = 0.1;

fn decisiemens(value: f64) -> ElectricalConductivity {
    ElectricalConductivity::new::<siemens_per_meter>(value / 10.0)
}

fn mg(value: f64) -> MassConcentration {
    MassConcentration::new::<milligram_per_liter>(value)
}

#[test]
fn yields_fall_as_published() {
    for row in rows(include_str!("../data/fertility_salt_tolerance.csv")) {
        let crop: CropKind = keyed(&row, "crop");
        let tolerance = salt_tolerance::of(crop).expect("a measured crop");
        let salt = row.number("paste_ds_per_m");
        let left = |salt: f64| {
            let left = tolerance.relative_yield(decisiemens(salt));
            left.expect("in range").get::<percent>()
        };
        // The printed conductivity stands for all that round to it.
        let (most, least) = (
            left(salt - row.number("half_unit")),
            left(salt + row.number("half_unit")),
        );
        let expected = row.number("yield_percent");
        assert!(
            (least - 1e-9..=most + 1e-9).contains(&expected),
            "{crop:?} at {salt} dS/m: {least} to {most} %, not {expected} %"
        );
    }
}

#[test]
fn the_sigmoid_is_that_of_its_regressions_and_lies_along_the_line() {
    // C50 = 0.988 (0.5/b + Ct) - 0.252 by hand: Steppuhn et al. 2005, abstract.
    for (crop, half, steepness, slope) in [
        (CropKind::LeafLettuce, 4.832, 0.1976, 0.13),
        (CropKind::Spinach, 8.224, 0.1155, 0.076),
    ] {
        let smooth = salt_tolerance::of(crop)
            .and_then(|it| it.sigmoid())
            .expect("a curve");
        let got = smooth.half_yield().get::<siemens_per_meter>() * 10.0;
        assert!((got - half).abs() < REGRESSION, "{crop:?}: {got}");
        let got = (smooth.steepness() * decisiemens(1.0)).get::<ratio>();
        assert!((got - steepness).abs() < REGRESSION, "{crop:?}: {got}");
        // Between 0.7 and 0.3 of the yield the curve falls as steeply as the line.
        let reaching = |share: f64| {
            let (mut low, mut high) = (0.0, 50.0);
            for _ in 0..60 {
                let middle = f64::midpoint(low, high);
                let left = smooth
                    .relative_yield(decisiemens(middle))
                    .expect("in range");
                if left.get::<ratio>() > share {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            low
        };
        let fall = 0.4 / (reaching(0.3) - reaching(0.7));
        assert!(
            (fall / slope - 1.0).abs() < BENT_AND_STRAIGHT,
            "{crop:?}: {fall} per dS/m"
        );
    }
}

/// A water whose only mark is the item of the row.
fn water_of(item: &str, value: f64) -> (Analysis, f64) {
    let mut water = Analysis::default();
    let mut conductivity = 0.1;
    match item {
        "Salinity" => conductivity = value,
        "SodiumAdsorption" => {
            // 2 me/L of calcium: the root is of one.
            water.calcium = mg(40.078);
            water.sodium = mg(22.990 * value);
        }
        "ChlorideToxicity" => water.chloride = mg(35.45 * value),
        "Boron" => water.boron = Some(mg(value)),
        "NitrateNitrogen" => water.nitrate = mg(value * 62.004 / 14.007),
        "Bicarbonate" => water.alkalinity = mg(value * 50.043),
        "Ph" => water.ph = Some(value),
        "Sodium" => water.sodium = mg(value),
        "Chloride" => water.chloride = mg(value),
        "Sulfate" => water.sulfate = mg(value),
        "Calcium" => water.calcium = mg(value),
        "Hardness" => water.magnesium = mg(value * 12.1525 / 50.043),
        "Alkalinity" => water.alkalinity = mg(value),
        other => panic!("no item '{other}'"),
    }
    (water, conductivity)
}

fn line_of(water: &Analysis, conductivity: f64, item: &str) -> Judgement {
    let lines = water.judge(decisiemens(conductivity)).expect("water");
    lines
        .into_iter()
        .find(|line| format!("{:?}", line.item) == item)
        .unwrap_or_else(|| panic!("no line for {item}"))
}

#[test]
fn waters_are_classed_by_the_published_limits() {
    for row in rows(include_str!("../data/fertility_water_limits.csv")) {
        let (item, value) = (row.text("item"), row.number("value"));
        let (water, conductivity) = water_of(item, value);
        let line = line_of(&water, conductivity, item);
        assert!(
            (line.value / value - 1.0).abs() < 1e-3,
            "{item}: {}",
            line.value
        );
        assert_eq!(
            format!("{:?}", line.restriction),
            row.text("restriction"),
            "{item} {value}"
        );
        assert!(!line.item.source().is_empty());
    }
}

#[test]
fn the_dilution_just_frees_the_item() {
    for row in rows(include_str!("../data/fertility_water_limits.csv")) {
        let (item, value) = (row.text("item"), row.number("value"));
        // Rain mends no pH, and nitrate feeds.
        if matches!(item, "Ph" | "NitrateNitrogen") || row.text("restriction") == "None" {
            continue;
        }
        let (water, conductivity) = water_of(item, value);
        let dilution = water.dilution(decisiemens(conductivity)).expect("water");
        let share = dilution.raw_water.get::<ratio>();
        assert!(share < 1.0 && dilution.decisive.is_some(), "{item} {value}");
        let mixed = Analysis {
            calcium: water.calcium * share * 0.999,
            magnesium: water.magnesium * share * 0.999,
            sodium: water.sodium * share * 0.999,
            chloride: water.chloride * share * 0.999,
            sulfate: water.sulfate * share * 0.999,
            alkalinity: water.alkalinity * share * 0.999,
            boron: water.boron.map(|it| it * share * 0.999),
            ..water
        };
        let line = line_of(&mixed, conductivity * share * 0.999, item);
        assert_eq!(line.restriction, Restriction::None, "{item} {value}");
    }
}

#[test]
fn the_sodium_adsorption_ratio_is_that_of_the_example() {
    // Ayers & Westcot 1985, section 3: Ca 2.32, Mg 1.44, Na 7.73 me/L; from memory.
    let water = Analysis {
        calcium: mg(2.32 * 20.039),
        magnesium: mg(1.44 * 12.1525),
        sodium: mg(7.73 * 22.990),
        ..Analysis::default()
    };
    let ions = water.equivalents().expect("water");
    let got = ions.sodium_adsorption_ratio().expect("hard water");
    assert!((got - 5.64).abs() < 0.005, "{got}");
}

#[test]
fn the_form_of_nitrogen_turns_the_drift() {
    for row in rows(include_str!("../data/fertility_proton_balance.csv")) {
        let part = |column: &str| Ratio::new::<percent>(row.number(column));
        let uptake = |ammonium: f64| Uptake {
            nitrate_n: part("n") * (1.0 - ammonium),
            ammonium_n: part("n") * ammonium,
            p: part("p"),
            s: part("s"),
            k: part("k"),
            ca: part("ca"),
            mg: part("mg"),
            ..Uptake::default()
        };
        let balance = |ammonium: f64| uptake(ammonium).balance().expect("an uptake");
        let tissue = row.text("tissue");
        for (got, column) in [
            (balance(0.0).anions, "anions"),
            (balance(0.0).cations, "cations"),
        ] {
            let got = got.get::<mole_per_kilogram>();
            assert!(
                (got - row.number(column)).abs() <= FOUR_DECIMALS,
                "{tissue} {column}: {got}"
            );
        }
        for (ammonium, column) in [(0.0, "nitrate_drift"), (1.0, "ammonium_drift")] {
            let drift = format!("{:?}", balance(ammonium).drift());
            assert_eq!(drift, row.text(column), "{tissue}");
        }
        let steady = balance(0.0).steady_ammonium_share().expect("a share");
        let steady = steady.get::<ratio>();
        assert!(
            (steady - row.number("steady_share")).abs() <= FOUR_DECIMALS,
            "{tissue}: {steady}"
        );
        let net = balance(steady).net_base().get::<mole_per_kilogram>();
        assert!(net.abs() < CHARGE, "{tissue}: {net}");
    }
}
