//! How much of a salt dissolves in cold water: the limit of a stock solution.

use super::salts::Salt;
use crate::science::formula::Formula;
use crate::science::units::{
    MassConcentration, Ratio, ThermodynamicTemperature, mass_concentration, mass_density, ratio,
    thermodynamic_temperature::degree_celsius,
};
use crate::science::water;

/// Temperatures of the table, °C.
const TEMPERATURES: [f64; 5] = [0.0, 10.0, 20.0, 25.0, 30.0];

/// Where the solubilities come from.
pub const SOURCE: &str = "CRC Handbook of Chemistry and Physics, 98th ed. (2017), Aqueous \
                          solubility of inorganic compounds at various temperatures";

/// Why no solubility is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SolubilityProblem {
    /// The table has no row for this salt: the chelates, which dissolve well beyond any need.
    NotListed {
        /// The salt.
        salt: Salt,
    },
    /// The temperature is outside the table, or no number.
    TemperatureOutOfRange {
        /// What was asked.
        got: ThermodynamicTemperature,
        /// The lowest of the table.
        low: ThermodynamicTemperature,
        /// The highest of the table.
        high: ThermodynamicTemperature,
    },
}

/// One row of the table.
struct Record {
    /// The salt without its hydrate water, in as many formula units as [`Salt::formula`] holds.
    anhydrous: Formula,
    /// Mass % of the anhydrous salt in the saturated solution, at [`TEMPERATURES`].
    mass_percent: [f64; 5],
    /// Volume that a gram of anhydrous salt takes up in its saturated solution, cm³: nearly the
    /// same at all temperatures of the table.
    volume: f64,
}

/// A row; a formula that cannot be read stops the build, not the program.
const fn row(anhydrous: &str, mass_percent: [f64; 5], volume: f64) -> Record {
    let Ok(anhydrous) = Formula::parse(anhydrous) else {
        panic!("not a formula")
    };
    Record {
        anhydrous,
        mass_percent,
        volume,
    }
}

/// The row of a salt. Volumes: from the densities of Laliberté (2009), Journal of Chemical &
/// Engineering Data 54:1725-1760, the middle of 0 to 30 °C; those of monoammonium phosphate, boric acid and
/// borax from memory, good to 1 % of the density.
const fn record(salt: Salt) -> Option<&'static Record> {
    macro_rules! rows {
        ($($salt:ident: $row:expr,)+) => {
            match salt {
                $(Salt::$salt => Some(const { &$row }),)+
                Salt::IronEdta | Salt::IronDtpa | Salt::IronEddha => None,
            }
        };
    }
    rows! {
        CalciumNitrate: row("Ca(NO3)2", [50.1, 53.1, 56.7, 59.0, 60.9], 0.352),
        // No row of its own: its salts without water taken as so much calcium nitrate, of which
        // they are 91 %.
        CalciumAmmoniumNitrate: row("5Ca(NO3)2.NH4NO3", [50.1, 53.1, 56.7, 59.0, 60.9], 0.377),
        PotassiumNitrate: row("KNO3", [12.0, 17.6, 24.2, 27.7, 31.3], 0.398),
        MonopotassiumPhosphate: row("KH2PO4", [11.74, 14.91, 18.25, 19.97, 21.77], 0.330),
        MonoammoniumPhosphate: row("NH4H2PO4", [17.8, 22.0, 26.4, 28.8, 31.2], 0.46),
        MagnesiumSulfate: row("MgSO4", [18.2, 21.7, 25.1, 26.3, 28.2], 0.105),
        MagnesiumNitrate: row("Mg(NO3)2", [38.4, 39.5, 40.8, 41.6, 42.4], 0.321),
        PotassiumSulfate: row("K2SO4", [7.11, 8.46, 9.95, 10.7, 11.4], 0.220),
        AmmoniumNitrate: row("NH4NO3", [54.0, 60.1, 65.5, 68.0, 70.3], 0.632),
        AmmoniumSulfate: row("(NH4)2SO4", [41.3, 42.1, 42.9, 43.3, 43.8], 0.537),
        PotassiumChloride: row("KCl", [21.74, 23.61, 25.39, 26.22, 27.04], 0.408),
        CalciumChloride: row("CaCl2", [36.70, 39.19, 42.13, 44.83, 49.12], 0.303),
        BoricAcid: row("H3BO3", [2.61, 3.57, 4.77, 5.48, 6.27], 0.65),
        Borax: row("Na2B4O7", [1.23, 1.71, 2.50, 3.07, 3.82], 0.15),
        ManganeseSulfate: row("MnSO4", [34.6, 37.3, 38.6, 38.9, 38.9], 0.134),
        ZincSulfate: row("ZnSO4", [29.1, 32.0, 35.0, 36.6, 38.2], 0.081),
        CopperSulfate: row("CuSO4", [12.4, 14.4, 16.7, 18.0, 19.3], 0.026),
        SodiumMolybdate: row("Na2MoO4", [30.6, 38.8, 39.4, 39.4, 39.8], 0.207),
        IronSulfate: row("FeSO4", [13.5, 17.0, 20.8, 22.8, 24.8], 0.108),
    }
}

/// Mass of salt without hydrate water per mass of saturated solution (a ratio from 0 to 1).
///
/// `salt`: dissolved alone in pure water. `temperature`: of the solution, 0 to 30 °C. Between the
/// temperatures of the table (0, 10, 20, 25 and 30 °C) a straight line. Source: CRC Handbook, 98th
/// ed. (2017), the table named in [`SOURCE`], except the calcium ammonium nitrate double salt,
/// which is taken as calcium nitrate.
///
/// ```
/// use slackwater::catalog::{salts::Salt, solubility::saturated_mass_fraction};
/// use slackwater::science::units::{ThermodynamicTemperature, ratio::percent};
/// use slackwater::science::units::thermodynamic_temperature::degree_celsius;
/// let cold = ThermodynamicTemperature::new::<degree_celsius>(5.0);
/// let share = saturated_mass_fraction(Salt::PotassiumNitrate, cold)?;
/// assert!((share.get::<percent>() - 14.8).abs() < 1e-9);
/// # Ok::<(), slackwater::catalog::solubility::SolubilityProblem>(())
/// ```
///
/// # Errors
///
/// [`SolubilityProblem`]: a salt without a row, a temperature outside of 0 to 30 °C.
pub fn saturated_mass_fraction(
    salt: Salt,
    temperature: ThermodynamicTemperature,
) -> Result<Ratio, SolubilityProblem> {
    let (record, celsius) = look_up(salt, temperature)?;
    let share = interpolated(&record.mass_percent, celsius);
    Ok(Ratio::new::<ratio::percent>(share))
}

/// The most of a salt that dissolves: mass of the salt as it is weighed, hydrate water included,
/// per volume of saturated solution.
///
/// `salt`: dissolved alone in pure water. `temperature`: the coldest that the stock will meet, 0
/// to 30 °C. The result: from about 20 g/L (borax) to 1.5 kg/L (calcium nitrate).
///
/// The table gives masses; the volume is that of the water (Tanaka et al. 2001) and of the salt,
/// taken as one figure per salt, which meets the densities of Laliberté (2009) within 2 %. **It
/// holds for one salt alone.** Salts that share an ion dissolve less together: potassium nitrate
/// beside potassium sulfate, calcium nitrate beside magnesium nitrate. Leave a margin, or sum the
/// shares that each salt takes of its own limit and stay below one. Source: [`SOURCE`].
///
/// ```
/// use slackwater::catalog::{salts::Salt, solubility::saturation};
/// use slackwater::science::units::{ThermodynamicTemperature, mass_concentration::gram_per_liter};
/// use slackwater::science::units::thermodynamic_temperature::degree_celsius;
/// let cold = ThermodynamicTemperature::new::<degree_celsius>(10.0);
/// let most = saturation(Salt::MagnesiumSulfate, cold)?.get::<gram_per_liter>();
/// assert!((540.0..570.0).contains(&most)); // of the heptahydrate
/// # Ok::<(), slackwater::catalog::solubility::SolubilityProblem>(())
/// ```
///
/// # Errors
///
/// [`SolubilityProblem`]: a salt without a row, a temperature outside of 0 to 30 °C.
pub fn saturation(
    salt: Salt,
    temperature: ThermodynamicTemperature,
) -> Result<MassConcentration, SolubilityProblem> {
    let (record, celsius) = look_up(salt, temperature)?;
    let not_listed = SolubilityProblem::NotListed { salt };
    let hydrate = salt.formula().ok_or(not_listed)?;
    let water = water::density(temperature)
        .map_err(|_| out_of_range(temperature))?
        .get::<mass_density::gram_per_cubic_centimeter>();
    // Grams and cm³ per gram of saturated solution.
    let anhydrous = interpolated(&record.mass_percent, celsius) / 100.0;
    let volume = (1.0 - anhydrous) / water + anhydrous * record.volume;
    let weighed = anhydrous * hydrate.grams_per_mole() / record.anhydrous.grams_per_mole();
    Ok(MassConcentration::new::<mass_concentration::gram_per_liter>(1000.0 * weighed / volume))
}

/// The row of a salt, and a temperature of the table in °C.
fn look_up(
    salt: Salt,
    temperature: ThermodynamicTemperature,
) -> Result<(&'static Record, f64), SolubilityProblem> {
    let record = record(salt).ok_or(SolubilityProblem::NotListed { salt })?;
    // A billionth, so that 30 °C is not refused for the last bit of 303.15 K.
    let celsius = temperature.get::<degree_celsius>();
    if (TEMPERATURES[0] - 1e-9..=TEMPERATURES[4] + 1e-9).contains(&celsius) {
        Ok((record, celsius))
    } else {
        Err(out_of_range(temperature))
    }
}

fn out_of_range(got: ThermodynamicTemperature) -> SolubilityProblem {
    SolubilityProblem::TemperatureOutOfRange {
        got,
        low: ThermodynamicTemperature::new::<degree_celsius>(TEMPERATURES[0]),
        high: ThermodynamicTemperature::new::<degree_celsius>(TEMPERATURES[4]),
    }
}

/// A straight line between neighbouring temperatures of the table.
fn interpolated(values: &[f64; 5], celsius: f64) -> f64 {
    let mut at = 0;
    while at < 3 && celsius > TEMPERATURES[at + 1] {
        at += 1;
    }
    let span = TEMPERATURES[at + 1] - TEMPERATURES[at];
    let share = (celsius - TEMPERATURES[at]) / span;
    values[at] + share * (values[at + 1] - values[at])
}

#[cfg(test)]
mod tests {
    use super::{SolubilityProblem, saturated_mass_fraction, saturation};
    use crate::catalog::{Keyed, salts::Salt};
    use crate::science::formula::Element;
    use crate::science::units::{
        ThermodynamicTemperature, mass_concentration::gram_per_liter, ratio::percent,
        thermodynamic_temperature::degree_celsius,
    };

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(value)
    }

    #[test]
    fn only_hydrate_water_parts_the_two_formulae() {
        for &salt in Salt::ALL {
            let (Some(record), Some(hydrate)) = (super::record(salt), salt.formula()) else {
                continue;
            };
            let dry = record.anhydrous;
            for element in Element::ALL {
                let water = hydrate.atoms(element) - dry.atoms(element);
                match element {
                    Element::H | Element::O => assert!(water < 50),
                    _ => assert_eq!(water, 0, "{salt:?} {element:?}"),
                }
            }
            let hydrogen = hydrate.atoms(Element::H) - dry.atoms(Element::H);
            let oxygen = hydrate.atoms(Element::O) - dry.atoms(Element::O);
            assert_eq!(hydrogen, 2 * oxygen, "{salt:?}");
        }
    }

    #[test]
    fn every_salt_but_the_chelates_is_listed_and_none_dissolves_less_when_warmer() {
        for &salt in Salt::ALL {
            let chelate = matches!(salt, Salt::IronEdta | Salt::IronDtpa | Salt::IronEddha);
            let mut last = 0.0;
            for step in 0..=60 {
                let limit = saturation(salt, celsius(0.5 * f64::from(step)));
                if chelate {
                    assert_eq!(limit, Err(SolubilityProblem::NotListed { salt }));
                    continue;
                }
                let limit = limit.expect("listed").get::<gram_per_liter>();
                // Manganese sulfate levels off at 25 °C; the water still expands.
                assert!(limit > last - 0.5, "{salt:?} at step {step}: {limit}");
                last = limit;
            }
        }
    }

    #[test]
    fn the_table_is_met_at_its_temperatures_and_ends_there() {
        for (t, expected) in [(0.0, 12.0), (10.0, 17.6), (25.0, 27.7), (30.0, 31.3)] {
            let share = saturated_mass_fraction(Salt::PotassiumNitrate, celsius(t));
            let share = share.map(|it| it.get::<percent>());
            assert!(share.is_ok_and(|it| (it - expected).abs() < 1e-6));
        }
        for t in [-0.1, 30.1, f64::NAN, f64::INFINITY] {
            assert!(matches!(
                saturation(Salt::PotassiumNitrate, celsius(t)),
                Err(SolubilityProblem::TemperatureOutOfRange { .. })
            ));
        }
    }
}
