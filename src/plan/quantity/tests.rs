//! Typed text and units.

use super::*;
use crate::science::units::{Length, Mass, ThermodynamicTemperature, Volume};
use crate::science::units::{length, mass, thermodynamic_temperature, volume};

const METRIC: UnitSystem = UnitSystem::Metric;
const US: UnitSystem = UnitSystem::UsCustomary;

#[test]
fn comma_and_point_mean_the_same() {
    for text in [
        "12.5", "12,5", " 12,50 ", "+12.5", "12 1/2", "25/2", "1,25e1",
    ] {
        assert_eq!(Dimension::Length.read(text, METRIC), Ok(12.5), "{text}");
    }
    assert_eq!(Dimension::Length.read("1,234.5", METRIC), Ok(1234.5));
    assert_eq!(Dimension::Length.read("1.234,5", METRIC), Ok(1234.5));
    assert_eq!(Dimension::Length.read("0,125", METRIC), Ok(0.125));
    assert_eq!(Dimension::Latitude.read("−33.9", METRIC), Ok(-33.9));
}

#[test]
fn what_cannot_be_told_is_refused() {
    assert_eq!(
        Dimension::Length.read("1,234", METRIC),
        Err(NotRead::CommaOrThousands)
    );
    assert_eq!(Dimension::Length.read("", METRIC), Err(NotRead::Empty));
    assert_eq!(
        Dimension::Length.read("deep", METRIC),
        Err(NotRead::NotANumber)
    );
    assert_eq!(
        Dimension::Length.read("NaN", METRIC),
        Err(NotRead::NotANumber)
    );
    assert_eq!(
        Dimension::Length.read("1e309", METRIC),
        Err(NotRead::TooLarge)
    );
    assert_eq!(
        Dimension::Length.read("12 L", METRIC),
        Err(NotRead::UnknownUnit)
    );
    assert_eq!(
        Dimension::Length.read("2 ft 6", METRIC),
        Err(NotRead::NotANumber)
    );
    assert_eq!(
        Dimension::Temperature.read("20 C 3 F", METRIC),
        Err(NotRead::NotANumber)
    );
    assert_eq!(
        Dimension::Length.read("1/0", METRIC),
        Err(NotRead::NotANumber)
    );
    assert_eq!(
        Dimension::Length.read("1.2.3", METRIC),
        Err(NotRead::NotANumber)
    );
}

#[test]
fn a_typed_unit_wins_over_the_system() {
    assert_eq!(Dimension::Length.read("10 cm", US), Ok(10.0));
    assert_eq!(Dimension::Length.read("2 ft 6 in", METRIC), Ok(2.5 * 30.48));
    assert_eq!(Dimension::Length.read("7 1/2\"", METRIC), Ok(7.5 * 2.54));
    assert_eq!(Dimension::Conductivity.read("1500 µS/cm", METRIC), Ok(1.5));
    assert_eq!(Dimension::DailyRadiation.read("5 kWh/m2", METRIC), Ok(18.0));
    assert_eq!(Dimension::Latitude.read("34 S", METRIC), Ok(-34.0));
}

#[test]
fn factors_agree_with_the_units_library() {
    let near = |ours: Result<f64, NotRead>, theirs: f64| {
        let ours = ours.expect("a quantity");
        // The library holds the gallon and the pound to seven digits; ours are exact.
        assert!(
            (ours - theirs).abs() <= 1e-6 * theirs.abs(),
            "{ours} {theirs}"
        );
    };
    near(
        Dimension::Length.read("7 ft", METRIC),
        Length::new::<length::foot>(7.0).get::<length::centimeter>(),
    );
    near(
        Dimension::Volume.read("5", US),
        Volume::new::<volume::gallon>(5.0).get::<volume::liter>(),
    );
    near(
        Dimension::Mass.read("3 lb", METRIC),
        Mass::new::<mass::pound>(3.0).get::<mass::gram>(),
    );
    let fahrenheit =
        ThermodynamicTemperature::new::<thermodynamic_temperature::degree_fahrenheit>(77.0);
    let celsius = fahrenheit.get::<thermodynamic_temperature::degree_celsius>();
    let ours = Dimension::Temperature
        .read("77 F", METRIC)
        .expect("a temperature");
    // The library passes through kelvin, which costs it a few digits.
    assert!((ours - celsius).abs() < 1e-10, "{ours} {celsius}");
}

#[test]
fn shown_text_reads_back_to_what_is_shown() {
    for system in [METRIC, US] {
        for saved in [0.3, 2.54, 30.48, 61.0, 122.0, 1234.56] {
            let text = Dimension::Length.text(saved, system);
            let back = Dimension::Length.read(&text, system).expect("our own text");
            // Half a unit of the fourth digit.
            assert!(
                (back - saved).abs() <= 5e-4 * saved,
                "{text} {back} {saved}"
            );
        }
    }
    assert_eq!(Dimension::Length.text(30.48, US), "12");
    assert_eq!(Dimension::Length.text(28.8925, US), "11.375");
    assert_eq!(Dimension::Length.text(29.0, US), "11.42");
    assert_eq!(Dimension::Length.text(12.3456, METRIC), "12.3456");
    assert_eq!(Dimension::Temperature.text(25.0, US), "77");
}

#[test]
fn a_difference_of_temperatures_has_no_offset() {
    // By definition 1 K is 1.8 °F.
    assert_eq!(
        temperature_difference(2.5, UnitSystem::UsCustomary),
        (4.5, "°F")
    );
    assert_eq!(temperature_difference(2.5, UnitSystem::Metric), (2.5, "°C"));
}

#[test]
fn every_symbol_is_read_as_it_is_shown_in_either_language() {
    let pound_a_foot_squared = 0.453_592_37 / (0.3048 * 0.3048);
    for (dimension, text, saved) in [
        (Dimension::Length, "8 pulg", 8.0 * 2.54),
        (Dimension::Length, "3 pies 6 pulg", 3.5 * 30.48),
        (Dimension::Elevation, "100 pies", 30.48),
        (Dimension::Run, "1 pie", 0.3048),
        (Dimension::Volume, "8 oz líq", 3.785_411_784 / 16.0),
        (Dimension::Area, "100 ft²", 100.0 * 0.3048 * 0.3048),
        (Dimension::Area, "100 pies²", 100.0 * 0.3048 * 0.3048),
        (Dimension::Area, "1 pie²", 0.3048 * 0.3048),
        (Dimension::Area, "100 pies2", 100.0 * 0.3048 * 0.3048),
        (
            Dimension::FloorLoad,
            "40 lb/ft²",
            40.0 * pound_a_foot_squared,
        ),
        (
            Dimension::FloorLoad,
            "40 lb/pie²",
            40.0 * pound_a_foot_squared,
        ),
        (
            Dimension::FloorLoad,
            "40 lb/pie2",
            40.0 * pound_a_foot_squared,
        ),
        (Dimension::SmallLength, "1/2 pulg", 12.7),
        (Dimension::Days, "1 día", 1.0),
        (Dimension::Days, "10 días", 10.0),
        (Dimension::Days, "1 day", 1.0),
        (Dimension::PriceOfLength, "3 /pie", 3.0 / 0.3048),
        (Dimension::PriceOfLength, "3/ft", 3.0 / 0.3048),
        (Dimension::PriceOfLength, "3/m", 3.0),
        (Dimension::PriceOfArea, "2 /pie²", 2.0 / (0.3048 * 0.3048)),
        (Dimension::PriceOfArea, "2/ft2", 2.0 / (0.3048 * 0.3048)),
        (Dimension::Price, "2/lb", 2.0 / 0.453_592_37),
        (
            Dimension::Density,
            "2 lb/pie³",
            2.0 * 0.453_592_37 / 0.028_316_846_592,
        ),
        (Dimension::Moment, "1 lbf·pie", 1.355_817_948_331_400_4),
    ] {
        for system in [METRIC, US] {
            let read = dimension.read(text, system).expect(text);
            assert!(
                (read - saved).abs() <= 1e-14 * saved,
                "{text}: {read} for {saved}"
            );
        }
    }
}

#[test]
fn prices_are_asked_for_the_unit_of_the_system() {
    for (dimension, metric, customary, factor) in [
        (Dimension::Price, "/kg", "/lb", 0.453_592_37),
        (Dimension::PriceOfLength, "/m", "/ft", 0.3048),
        (Dimension::PriceOfArea, "/m²", "/ft²", 0.092_903_04),
    ] {
        assert_eq!(dimension.symbol(METRIC), metric);
        assert_eq!(dimension.symbol(US), customary);
        assert_eq!(dimension.read("3", METRIC), Ok(3.0));
        let saved = dimension.read("3", US).expect("a number");
        assert!((saved - 3.0 / factor).abs() <= 1e-14 * saved, "{saved}");
        assert_eq!(dimension.text(saved, US), "3");
    }
}

#[test]
fn forces_and_stresses_are_exact() {
    // NIST SP 811, appendix B.8: 1 lbf = 4.4482216152605 N; 1 psi = 6.894757 kPa.
    let near = |got: f64, wanted: f64| assert!((got - wanted).abs() <= 1e-14 * wanted, "{got}");
    near(Dimension::Force.saved(1.0, US), 4.448_221_615_260_5);
    near(
        Dimension::Moment.saved(1.0, US),
        4.448_221_615_260_5 * 0.3048,
    );
    near(Dimension::Stress.saved(1.0, US), 0.006_894_757_293_168_361);
}
