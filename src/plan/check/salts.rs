//! The salts on the grower's shelf: from the list, or by a formula of one's own.

use super::reader::Reader;
use crate::catalog::salts::Salt;
use crate::plan::{Field, Pick, ProblemKind};
use crate::science::formula::{Element, Formula};
use crate::science::label::{Composition, NitrogenForms};
use crate::science::least_squares;
use crate::science::units::Ratio;
use crate::science::units::ratio::percent;

/// A salt on the grower's shelf.
#[derive(Clone, Debug, PartialEq)]
pub struct ShelfSalt {
    /// Key of the catalog, or the grower's own formula.
    pub name: String,
    /// The salt of the catalog, if it is one.
    pub salt: Option<Salt>,
    /// Nutrients of the product, purity taken in.
    pub composition: Composition,
    /// Price of a kilogram.
    pub price: f64,
}

/// The salts on the shelf. Lines left wholly empty are skipped.
pub(super) fn salts(reader: &mut Reader) -> Option<Vec<ShelfSalt>> {
    reader.used.insert(Field::Salts);
    let lines = &reader.plan.fertilizer.salts;
    let mut shelf = Vec::new();
    let mut whole = true;
    for (index, line) in lines.iter().enumerate() {
        let Ok(index) = u8::try_from(index) else {
            break;
        };
        if line.salt.key().is_empty() {
            continue;
        }
        reader.used.insert(Field::SaltChoice(index));
        let pure = match &line.salt {
            Pick::Known(salt) => Some(salt.composition()),
            Pick::Other(text) => own_salt(text),
        };
        if pure.is_none() {
            reader.problem(
                Field::SaltChoice(index),
                ProblemKind::NotAFormula {
                    got: line.salt.key().to_owned(),
                },
            );
        }
        let purity = if reader.left_out(Field::SaltPurity(index)) {
            Some(100.0)
        } else {
            reader.number(Field::SaltPurity(index))
        };
        let price = reader.number_or_zero(Field::SaltPrice(index));
        let composition = pure
            .zip(purity)
            .and_then(|(pure, purity)| pure.scaled(Ratio::new::<percent>(purity)).ok());
        match (composition, price) {
            (Some(composition), Some(price)) => shelf.push(ShelfSalt {
                name: line.salt.key().to_owned(),
                salt: line.salt.known(),
                composition,
                price,
            }),
            _ => whole = false,
        }
    }
    if shelf.len() > least_squares::MOST {
        reader.problem(
            Field::Salts,
            ProblemKind::OutOfRange {
                got: shelf.len() as f64,
                low: 1.0,
                high: least_squares::MOST as f64,
            },
        );
        return None;
    }
    if shelf.is_empty() && whole {
        reader.problem(Field::Salts, ProblemKind::Missing);
        return None;
    }
    whole.then_some(shelf)
}

/// A salt by the grower's own formula. Nitrogen counts as nitrate where the formula writes NO3, as
/// ammonium where it writes NH4; any other nitrogen feeds nothing.
fn own_salt(text: &str) -> Option<Composition> {
    let nitrogen = |text: &str| {
        Formula::parse(text)
            .ok()
            .map(|formula| formula.atoms(Element::N))
    };
    let formula = Formula::parse(text).ok()?;
    let all = nitrogen(text)?;
    let forms = NitrogenForms {
        nitrate: all - nitrogen(&text.replace("NO3", "O3"))?,
        ammonium: all - nitrogen(&text.replace("NH4", "H4"))?,
        urea: 0,
    };
    Composition::from_formula(&formula, forms).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::label::Nutrient;

    #[test]
    fn an_own_formula_tells_its_forms_of_nitrogen() {
        let salt = own_salt("5Ca(NO3)2.NH4NO3.10H2O").expect("a formula");
        let catalog = Salt::CalciumAmmoniumNitrate.composition();
        for nutrient in Nutrient::ALL {
            let (ours, theirs) = (salt.fraction(nutrient), catalog.fraction(nutrient));
            // The catalog's own figure follows from the same formula.
            assert!((ours - theirs).value.abs() < 1e-12, "{nutrient:?}");
        }
        assert!(own_salt("epsom").is_none());
    }
}
