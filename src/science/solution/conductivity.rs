//! Electrical conductivity from the species of a solution.
//!
//! Each ion starts from its limiting conductivity and is slowed by the others in two ways: the
//! water that opposite ions drag along (electrophoresis), and the pull of the ion's own atmosphere
//! that lags behind it (relaxation); Debye, Hückel & Onsager, with the finite ion size that carries
//! the limiting law to real concentrations: Robinson & Stokes 1959, equations 7.30 to 7.37. For a
//! mixture the partner ions enter by their mean charge and mobility, weighted by equivalents.
//!
//! Three published ways were tried against measured single salts (KCl, NaCl, KNO₃, NH₄Cl, CaCl₂,
//! MgCl₂, Na₂SO₄, KHCO₃ of 0.001 to 0.1 eq/L). Root mean square misses: this one 0.8 %, the
//! diffusion coefficients of PHREEQC 3 as bundled with its vitens.dat 1.2 % (low by 0.9 % and 2.7 %
//! for the standards of 0.01 and 0.1 mol/kg KCl), McCleskey et al. 2012 without sulfate pairs 4 %.

use super::medium::Medium;
use super::records::RECORDS;
use super::species::Species;

/// How the mobility of an ion changes with temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Trend {
    /// As the limiting conductivity a₂ t² + a₁ t + a₀, t in °C; McCleskey et al. 2012, table 2.
    Fitted(f64, f64, f64),
    /// As the fluidity of water (Walden's rule): large ions.
    Fluidity,
}

/// An ion that carries current.
struct Carrier {
    species: Species,
    /// Limiting equivalent conductivity at 25 °C, S cm²/eq.
    limit: f64,
    trend: Trend,
}

/// S cm²/mol for a tracer diffusion coefficient of 10⁻⁹ m²/s and a charge of one: F²/(RT) at 25 °C.
const NERNST: f64 = 37.554;

/// Every ion whose mobility is known. Ion pairs without a measured or estimated mobility do not
/// conduct, as in Parkhurst & Appelo 2013.
///
/// Free ions, H₂PO₄⁻ apart: CRC Handbook of Chemistry and Physics, "Ionic conductivity and
/// diffusion at infinite dilution" (Vanýsek). H₂PO₄⁻: the tracer diffusion coefficient of Li &
/// Gregory 1974, 0.846; the handbook's 36 S cm²/mol makes potassium dihydrogen phosphate conduct
/// 7 % more than is measured. Pairs: Parkhurst & Appelo 2013, phreeqc.dat.
#[rustfmt::skip]
const CARRIERS: [Carrier; 20] = [
    Carrier { species: Species::Hydrogen, limit: 349.65, trend: Trend::Fitted(-0.014_14, 5.355, 224.2) },
    Carrier { species: Species::Calcium, limit: 59.47, trend: Trend::Fitted(0.009_645, 1.984, 62.28) },
    Carrier { species: Species::Magnesium, limit: 53.0, trend: Trend::Fitted(0.010_68, 1.695, 57.16) },
    Carrier { species: Species::Sodium, limit: 50.08, trend: Trend::Fitted(0.003_763, 0.8770, 26.23) },
    Carrier { species: Species::Potassium, limit: 73.48, trend: Trend::Fitted(0.003_046, 1.261, 40.70) },
    Carrier { species: Species::Ammonium, limit: 73.5, trend: Trend::Fitted(0.003_341, 1.285, 39.04) },
    Carrier { species: Species::Nitrate, limit: 71.42, trend: Trend::Fitted(0.001_925, 1.214, 39.90) },
    Carrier { species: Species::Chloride, limit: 76.31, trend: Trend::Fitted(0.003_817, 1.337, 40.99) },
    Carrier { species: Species::Sulfate, limit: 80.0, trend: Trend::Fitted(0.010_37, 2.838, 82.37) },
    Carrier { species: Species::PhosphateIon, limit: 92.8, trend: Trend::Fluidity },
    Carrier { species: Species::CarbonateIon, limit: 69.3, trend: Trend::Fitted(0.003_26, 2.998, 64.03) },
    Carrier { species: Species::Hydroxide, limit: 198.0, trend: Trend::Fitted(0.003_396, 2.925, 121.3) },
    Carrier { species: Species::Bicarbonate, limit: 44.5, trend: Trend::Fitted(0.000_614, 0.9048, 21.14) },
    Carrier { species: Species::Bisulfate, limit: 52.0, trend: Trend::Fluidity },
    Carrier { species: Species::HydrogenPhosphate, limit: 57.0, trend: Trend::Fluidity },
    Carrier { species: Species::DihydrogenPhosphate, limit: 0.846 * NERNST, trend: Trend::Fluidity },
    Carrier { species: Species::CalciumBicarbonate, limit: 0.506 * NERNST, trend: Trend::Fluidity },
    Carrier { species: Species::MagnesiumBicarbonate, limit: 0.478 * NERNST, trend: Trend::Fluidity },
    Carrier { species: Species::SodiumSulfate, limit: 0.618 * NERNST, trend: Trend::Fluidity },
    Carrier { species: Species::PotassiumSulfate, limit: 0.746 * NERNST, trend: Trend::Fluidity },
];

/// Distance of closest approach, Å, of ions with one charge and with more. The first is the one
/// figure fitted here, to the potassium chloride standard of 0.1 mol/kg at 25 °C (Pratt et al.
/// 2001); Kielland 1937 has 3 for K⁺, Cl⁻ and NO₃⁻. The second is Kielland's for SO₄²⁻ and HPO₄²⁻.
/// One size for each charge comes closer to measured salts than each ion's own.
const SIZE: (f64, f64) = (2.8, 4.0);

/// The smallest share of its limiting conductivity that electrophoresis leaves an ion. The
/// equation was derived for dilute solutions; in a stock solution it would turn slow ion pairs
/// around, and they carry under 2 % of the current.
const LEAST_SHARE: f64 = 0.1;

/// Conductivity in mS/cm from molalities by species (mol/kg) and the ionic strength (mol/kg).
pub(super) fn ms_per_cm(medium: &Medium, molal: &[f64; Species::COUNT], strength: f64) -> f64 {
    /// Viscosity of water at 25 °C, mPa s, IAPWS SR6-08.
    const VISCOSITY_25: f64 = 0.889_996_8;
    let t = medium.kelvin - 273.15;
    let fluidity = VISCOSITY_25 / medium.viscosity;
    let limits = CARRIERS.each_ref().map(|carrier| {
        carrier.limit
            * match carrier.trend {
                Trend::Fitted(a2, a1, a0) => {
                    (a0 + t * (a1 + t * a2)) / (a0 + 25.0 * (a1 + 25.0 * a2))
                }
                Trend::Fluidity => fluidity,
            }
    });

    // Sums over cations, then anions: equivalents, equivalents × charge, equivalents × mobility.
    let mut sums = [[0.0; 3]; 2];
    for (carrier, limit) in CARRIERS.iter().zip(limits) {
        let charge = RECORDS[carrier.species as usize].charge;
        let equivalents = molal[carrier.species as usize] * charge.abs();
        let side = &mut sums[usize::from(charge < 0.0)];
        side[0] += equivalents;
        side[1] += equivalents * charge.abs();
        side[2] += equivalents * limit;
    }
    let mean = |side: usize, which: usize| sums[side][which] / sums[side][0];
    let charges = [mean(0, 1), mean(1, 1)];
    let mobilities = [mean(0, 2), mean(1, 2)];
    let q = charges[0] * charges[1] * (mobilities[0] + mobilities[1])
        / ((charges[0] + charges[1]) * (charges[0] * mobilities[1] + charges[1] * mobilities[0]));

    let et = medium.permittivity * medium.kelvin;
    // Robinson & Stokes 1959, with concentrations in mol/L and the viscosity in mPa s.
    let root = (strength * medium.density).sqrt();
    let relaxation = 2.801e6 * q / ((1.0 + q.sqrt()) * et * et.sqrt()) * root;
    let electrophoresis = 4125.0 / (medium.viscosity * et.sqrt()) * root;
    let spread = |size: f64| 1.0 + medium.b * size * strength.sqrt();
    let spreads = [spread(SIZE.0), spread(SIZE.1)];

    let mut total = 0.0;
    for (carrier, limit) in CARRIERS.iter().zip(limits) {
        let charge = RECORDS[carrier.species as usize].charge;
        let size = charge.abs();
        let spread = spreads[usize::from(size > 1.0)];
        let partner = charges[usize::from(charge > 0.0)];
        let dragged = (limit - electrophoresis * size / spread).max(LEAST_SHARE * limit);
        let held = 1.0 - relaxation * size * partner / (spread * spread);
        total += molal[carrier.species as usize] * size * dragged * held;
    }
    total * medium.density
}
