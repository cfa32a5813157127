//! Atomic weights and chemical formulae.

mod element;

pub use element::Element;

use crate::science::units::{MolarMass, Ratio, molar_mass, ratio};
use element::{ELEMENTS, WEIGHTS};

/// Deepest nesting of parentheses that a formula may have.
const DEEPEST: usize = 8;

/// Largest number that may stand behind a symbol or before a part of a formula.
const LARGEST_NUMBER: u32 = 9_999;

/// Why a text is no chemical formula. Positions count bytes from the start of the text, so that
/// `&text[position..]` begins with what was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FormulaProblem {
    /// A symbol that is not in the table of elements.
    UnknownElement {
        /// Where the symbol begins.
        position: usize,
    },
    /// A character that has no meaning in a formula.
    UnexpectedCharacter {
        /// Where it stands.
        position: usize,
    },
    /// No element where one must stand: an empty text, a dot at an end, `()`, a lone number.
    MissingElement {
        /// Where an element was expected.
        position: usize,
    },
    /// A parenthesis that is never closed within its part of the formula.
    UnclosedParenthesis {
        /// Where it opens.
        position: usize,
    },
    /// A closing parenthesis without an opening one.
    UnopenedParenthesis {
        /// Where it stands.
        position: usize,
    },
    /// Parentheses nested deeper than `deepest`.
    NestedTooDeep {
        /// Where the parenthesis that is one too many opens.
        position: usize,
        /// The limit.
        deepest: usize,
    },
    /// A number that is zero.
    ZeroCount {
        /// Where the number begins.
        position: usize,
    },
    /// A number above `largest`, or more atoms than can be counted.
    CountTooLarge {
        /// Where the number or the group ends or begins.
        position: usize,
        /// The limit of one number.
        largest: u32,
    },
}

/// How many atoms of each element one formula unit holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Formula {
    counts: [u32; ELEMENTS],
}

impl Formula {
    /// Reads a chemical formula.
    ///
    /// `text`: symbols with counts, parentheses nested up to eight deep, parts joined by `.`, `·`
    /// or `*`, each part with an optional leading coefficient that multiplies the whole part;
    /// numbers from 1 to 9999; no spaces. The result has no unit. Any other text gives the first
    /// [`FormulaProblem`] with its place. A `const fn`, so that formulae of the catalog are
    /// checked while compiling.
    ///
    /// Source: IUPAC Nomenclature of Inorganic Chemistry 2005, IR-4 (writing of formulae).
    ///
    /// ```
    /// use slackwater::science::formula::{Element, Formula, FormulaProblem};
    /// let double_salt = Formula::parse("5Ca(NO3)2.NH4NO3.10H2O")?;
    /// assert_eq!(double_salt.atoms(Element::N), 12);
    /// assert_eq!(
    ///     Formula::parse("KNx3"),
    ///     Err(FormulaProblem::UnknownElement { position: 1 })
    /// );
    /// # Ok::<(), FormulaProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`FormulaProblem`], the first from the left.
    pub const fn parse(text: &str) -> Result<Self, FormulaProblem> {
        let bytes = text.as_bytes();
        let mut total = [0; ELEMENTS];
        // `open[0]` is the running part; each parenthesis opens one more level.
        let mut open = [[0; ELEMENTS]; DEEPEST + 1];
        let mut opened_at = [0; DEEPEST + 1];
        let mut depth = 0;
        let mut at = 0;
        let mut coefficient = match number(bytes, &mut at) {
            Ok(number) => number,
            Err(problem) => return Err(problem),
        };
        loop {
            let separator = separator_length(bytes, at);
            if at == bytes.len() || separator > 0 {
                if depth > 0 {
                    return Err(FormulaProblem::UnclosedParenthesis {
                        position: opened_at[depth],
                    });
                }
                if let Err(problem) = close(&mut total, &open[0], coefficient, at) {
                    return Err(problem);
                }
                if separator == 0 {
                    return Ok(Self { counts: total });
                }
                at += separator;
                open[0] = [0; ELEMENTS];
                coefficient = match number(bytes, &mut at) {
                    Ok(number) => number,
                    Err(problem) => return Err(problem),
                };
            } else if bytes[at] == b'(' {
                if depth == DEEPEST {
                    return Err(FormulaProblem::NestedTooDeep {
                        position: at,
                        deepest: DEEPEST,
                    });
                }
                depth += 1;
                open[depth] = [0; ELEMENTS];
                opened_at[depth] = at;
                at += 1;
            } else {
                let mut group = [0; ELEMENTS];
                let start = at;
                if bytes[at] == b')' {
                    if depth == 0 {
                        return Err(FormulaProblem::UnopenedParenthesis { position: at });
                    }
                    group = open[depth];
                    depth -= 1;
                    at += 1;
                } else {
                    match element(bytes, &mut at) {
                        Ok(element) => group[element] = 1,
                        Err(problem) => return Err(problem),
                    }
                }
                let times = match number(bytes, &mut at) {
                    Ok(number) => number,
                    Err(problem) => return Err(problem),
                };
                if let Err(problem) = close(&mut open[depth], &group, times, start) {
                    return Err(problem);
                }
            }
        }
    }

    /// Atoms of an element in one formula unit; zero where it does not occur.
    pub const fn atoms(&self, element: Element) -> u32 {
        self.counts[element as usize]
    }

    /// Molar mass (g/mol) of the formula unit: the sum of atoms times [`Element::atomic_weight`].
    ///
    /// ```
    /// use slackwater::science::{formula::Formula, units::molar_mass::gram_per_mole};
    /// let water = Formula::parse("H2O")?;
    /// assert!((water.molar_mass().get::<gram_per_mole>() - 18.015).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::formula::FormulaProblem>(())
    /// ```
    pub fn molar_mass(&self) -> MolarMass {
        MolarMass::new::<molar_mass::gram_per_mole>(self.grams_per_mole())
    }

    /// Mass of an element per mass of the substance (a ratio from 0 to 1).
    ///
    /// ```
    /// use slackwater::science::{formula::{Element, Formula}, units::ratio::percent};
    /// let saltpetre = Formula::parse("KNO3")?;
    /// assert!((saltpetre.mass_fraction(Element::K).get::<percent>() - 38.67).abs() < 0.01);
    /// # Ok::<(), slackwater::science::formula::FormulaProblem>(())
    /// ```
    pub fn mass_fraction(&self, element: Element) -> Ratio {
        Ratio::new::<ratio::ratio>(self.fraction_of_atoms(element, self.atoms(element)))
    }

    /// Molar mass in g/mol, usable while compiling.
    pub(crate) const fn grams_per_mole(&self) -> f64 {
        let mut sum = 0.0;
        let mut i = 0;
        while i < ELEMENTS {
            sum += self.counts[i] as f64 * WEIGHTS[i].1;
            i += 1;
        }
        sum
    }

    /// Mass fraction of so many atoms of an element in the formula unit.
    pub(crate) const fn fraction_of_atoms(&self, element: Element, atoms: u32) -> f64 {
        atoms as f64 * element.grams_per_mole() / self.grams_per_mole()
    }
}

/// Length in bytes of the dot that joins two parts at `at`, or zero.
const fn separator_length(bytes: &[u8], at: usize) -> usize {
    if at < bytes.len() && (bytes[at] == b'.' || bytes[at] == b'*') {
        1
    } else if at + 1 < bytes.len() && bytes[at] == 0xC2 && bytes[at + 1] == 0xB7 {
        2 // the middle dot in UTF-8
    } else {
        0
    }
}

/// Index of the element whose symbol begins at `at`, which moves behind it.
const fn element(bytes: &[u8], at: &mut usize) -> Result<usize, FormulaProblem> {
    let position = *at;
    let first = bytes[position];
    if first.is_ascii_digit() {
        return Err(FormulaProblem::MissingElement { position });
    }
    if !first.is_ascii_alphabetic() {
        return Err(FormulaProblem::UnexpectedCharacter { position });
    }
    let two = position + 1 < bytes.len() && bytes[position + 1].is_ascii_lowercase();
    let length = if two { 2 } else { 1 };
    let mut i = 0;
    while i < ELEMENTS {
        let symbol = WEIGHTS[i].0.as_bytes();
        if symbol.len() == length
            && symbol[0] == first
            && (!two || symbol[1] == bytes[position + 1])
        {
            *at = position + length;
            return Ok(i);
        }
        i += 1;
    }
    Err(FormulaProblem::UnknownElement { position })
}

/// The number that begins at `at`, which moves behind it; one where none is written.
const fn number(bytes: &[u8], at: &mut usize) -> Result<u32, FormulaProblem> {
    let position = *at;
    let mut value = 0;
    while *at < bytes.len() && bytes[*at].is_ascii_digit() {
        value = value * 10 + (bytes[*at] - b'0') as u32;
        if value > LARGEST_NUMBER {
            return Err(FormulaProblem::CountTooLarge {
                position,
                largest: LARGEST_NUMBER,
            });
        }
        *at += 1;
    }
    if *at == position {
        Ok(1)
    } else if value == 0 {
        Err(FormulaProblem::ZeroCount { position })
    } else {
        Ok(value)
    }
}

/// Adds a finished group, `times` over, to what surrounds it.
const fn close(
    into: &mut [u32; ELEMENTS],
    group: &[u32; ELEMENTS],
    times: u32,
    position: usize,
) -> Result<(), FormulaProblem> {
    let mut empty = true;
    let mut i = 0;
    while i < ELEMENTS {
        empty = empty && group[i] == 0;
        let sum = match group[i].checked_mul(times) {
            Some(product) => into[i].checked_add(product),
            None => None,
        };
        into[i] = match sum {
            Some(sum) => sum,
            None => {
                return Err(FormulaProblem::CountTooLarge {
                    position,
                    largest: LARGEST_NUMBER,
                });
            }
        };
        i += 1;
    }
    if empty {
        return Err(FormulaProblem::MissingElement { position });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{DEEPEST, Element, Formula, FormulaProblem, LARGEST_NUMBER};

    fn atoms(text: &str, element: Element) -> u32 {
        Formula::parse(text).map_or(0, |formula| formula.atoms(element))
    }

    #[test]
    fn reads_groups_coefficients_and_hydrates() {
        assert_eq!(atoms("Ca(NO3)2·4H2O", Element::O), 10);
        assert_eq!(atoms("Ca(NO3)2*4H2O", Element::H), 8);
        assert_eq!(atoms("5Ca(NO3)2.NH4NO3.10H2O", Element::Ca), 5);
        assert_eq!(atoms("5Ca(NO3)2.NH4NO3.10H2O", Element::O), 43);
        assert_eq!(atoms("Fe4(Fe(CN)6)3", Element::Fe), 7);
        assert_eq!(atoms("Fe4(Fe(CN)6)3", Element::N), 18);
        assert_eq!(atoms("HOH", Element::H), 2);
    }

    #[test]
    fn case_tells_cobalt_from_carbon_monoxide() {
        assert_eq!(atoms("CO", Element::Co), 0);
        assert_eq!(atoms("CO", Element::C), 1);
        assert_eq!(atoms("Co", Element::Co), 1);
    }

    #[test]
    fn every_problem_is_named_with_its_place() {
        use FormulaProblem::{
            CountTooLarge, MissingElement, NestedTooDeep, UnclosedParenthesis, UnexpectedCharacter,
            UnknownElement, UnopenedParenthesis, ZeroCount,
        };
        let largest = LARGEST_NUMBER;
        for (text, problem) in [
            ("", MissingElement { position: 0 }),
            ("12", MissingElement { position: 2 }),
            ("KNO3.", MissingElement { position: 5 }),
            (".KNO3", MissingElement { position: 0 }),
            ("K()", MissingElement { position: 2 }),
            ("(2K)", MissingElement { position: 1 }),
            ("Ca(NO3", UnclosedParenthesis { position: 2 }),
            ("Ca(NO3.H2O)", UnclosedParenthesis { position: 2 }),
            ("CaNO3)2", UnopenedParenthesis { position: 5 }),
            ("KXe", UnknownElement { position: 1 }),
            ("kno3", UnknownElement { position: 0 }),
            ("K NO3", UnexpectedCharacter { position: 1 }),
            ("K2O²", UnexpectedCharacter { position: 3 }),
            ("K0", ZeroCount { position: 1 }),
            (
                "K10000",
                CountTooLarge {
                    position: 1,
                    largest,
                },
            ),
            (
                "((K9999)9999)9999",
                CountTooLarge {
                    position: 12,
                    largest,
                },
            ),
            (
                "(((((((((K)))))))))",
                NestedTooDeep {
                    position: 8,
                    deepest: DEEPEST,
                },
            ),
        ] {
            assert_eq!(Formula::parse(text), Err(problem), "{text}");
        }
    }
}
