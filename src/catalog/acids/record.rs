//! The figures of the acids.

use super::Acid;
use crate::science::formula::Formula;
use crate::science::label::{Composition, NitrogenForms};

/// What is known of one acid.
pub(super) struct Record {
    pub(super) formula: Formula,
    pub(super) composition: Composition,
    /// Usual mass % on sale.
    pub(super) usual: f64,
    /// Mass % and density, g/cm³ at 20 °C.
    pub(super) densities: &'static [(f64, f64)],
    /// −log₁₀ of the dissociation constants at 25 °C and infinite dilution, in order; a strong
    /// step as −3.
    pub(super) pka: &'static [f64],
    pub(super) source: &'static str,
}

/// A pure acid; a formula that cannot be read stops the build, not the program.
const fn pure(text: &str, nitrate: u32) -> (Formula, Composition) {
    let Ok(formula) = Formula::parse(text) else {
        panic!("not a formula")
    };
    let forms = NitrogenForms {
        nitrate,
        ammonium: 0,
        urea: 0,
    };
    let Ok(composition) = Composition::from_formula(&formula, forms) else {
        panic!("more nitrogen stated than the formula holds")
    };
    (formula, composition)
}

/// A step that is complete in any nutrient solution.
const STRONG: f64 = -3.0;

/// Pure water at 20 °C, g/cm³.
pub(super) const WATER: (f64, f64) = (0.0, 0.9982);

/// The record of an acid. Usual strengths: common practice, no source.
pub(super) const fn record(acid: Acid) -> Record {
    match acid {
        Acid::Nitric => {
            let (formula, composition) = pure("HNO3", 1);
            Record {
                formula,
                composition,
                usual: 60.0,
                densities: &[
                    WATER,
                    (10.0, 1.0543),
                    (20.0, 1.1150),
                    (30.0, 1.1801),
                    (40.0, 1.2466),
                    (50.0, 1.3100),
                    (60.0, 1.3667),
                    (65.0, 1.3913),
                    (70.0, 1.4134),
                ],
                pka: &[STRONG],
                source: "density: CRC Handbook, 102nd ed. (2021), Concentrative properties of \
                         aqueous solutions, to 40 %; above, Perry's Chemical Engineers' Handbook, \
                         6th ed., from memory",
            }
        }
        Acid::Phosphoric => {
            let (formula, composition) = pure("H3PO4", 0);
            Record {
                formula,
                composition,
                usual: 75.0,
                densities: &[
                    WATER,
                    (10.0, 1.0531),
                    (20.0, 1.1135),
                    (30.0, 1.1804),
                    (40.0, 1.2536),
                    (50.0, 1.335),
                    (60.0, 1.426),
                    (70.0, 1.526),
                    (75.0, 1.579),
                    (80.0, 1.633),
                    (85.0, 1.689),
                ],
                pka: &[2.16, 7.21, 12.32],
                source: "density: CRC Handbook, 102nd ed. (2021), Concentrative properties of \
                         aqueous solutions, to 40 %; above, Perry's Chemical Engineers' Handbook, \
                         6th ed., 50 to 70 and 80 % from memory. Dissociation: CRC Handbook",
            }
        }
        Acid::Sulfuric => {
            let (formula, composition) = pure("H2SO4", 0);
            Record {
                formula,
                composition,
                usual: 35.0,
                densities: &[
                    WATER,
                    (10.0, 1.0661),
                    (20.0, 1.1398),
                    (30.0, 1.2191),
                    (40.0, 1.3028),
                    (50.0, 1.3952),
                    (60.0, 1.4987),
                    (70.0, 1.6105),
                    (80.0, 1.7272),
                    (84.0, 1.7693),
                    (88.0, 1.8022),
                    (92.0, 1.8240),
                    (96.0, 1.8355),
                    (98.0, 1.8361),
                ],
                pka: &[STRONG, 1.99],
                source: "density: CRC Handbook, 102nd ed. (2021), Concentrative properties of \
                         aqueous solutions. Dissociation: CRC Handbook",
            }
        }
        Acid::Citric => {
            let (formula, composition) = pure("C6H8O7", 0);
            Record {
                formula,
                composition,
                // A powder, without crystal water.
                usual: 100.0,
                densities: &[
                    WATER,
                    (10.0, 1.0402),
                    (20.0, 1.0858),
                    (30.0, 1.1346),
                    (40.0, 1.187),
                    (50.0, 1.244),
                ],
                pka: &[3.13, 4.76, 6.40],
                source: "density: CRC Handbook, 102nd ed. (2021), Concentrative properties of \
                         aqueous solutions, to 30 %; above, continued with the volume that the \
                         acid takes up. Dissociation: CRC Handbook",
            }
        }
    }
}
