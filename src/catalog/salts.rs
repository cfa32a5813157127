//! Single salts and chelates that nutrient solutions are made of.

use super::keyed::keyed;
use crate::science::formula::Formula;
use crate::science::label::{Composition, NitrogenForms, Nutrient};

keyed! {
    /// A salt or chelate, as it is weighed.
    Salt {
        /// Calcium nitrate tetrahydrate.
        CalciumNitrate = "calcium_nitrate_tetrahydrate",
        /// Calcium ammonium nitrate double salt, the usual greenhouse grade of calcium nitrate.
        CalciumAmmoniumNitrate = "calcium_ammonium_nitrate",
        /// Potassium nitrate.
        PotassiumNitrate = "potassium_nitrate",
        /// Monopotassium phosphate.
        MonopotassiumPhosphate = "monopotassium_phosphate",
        /// Monoammonium phosphate.
        MonoammoniumPhosphate = "monoammonium_phosphate",
        /// Magnesium sulfate heptahydrate, Epsom salt.
        MagnesiumSulfate = "magnesium_sulfate_heptahydrate",
        /// Magnesium nitrate hexahydrate.
        MagnesiumNitrate = "magnesium_nitrate_hexahydrate",
        /// Potassium sulfate.
        PotassiumSulfate = "potassium_sulfate",
        /// Ammonium nitrate.
        AmmoniumNitrate = "ammonium_nitrate",
        /// Ammonium sulfate.
        AmmoniumSulfate = "ammonium_sulfate",
        /// Potassium chloride.
        PotassiumChloride = "potassium_chloride",
        /// Calcium chloride dihydrate.
        CalciumChloride = "calcium_chloride_dihydrate",
        /// Boric acid.
        BoricAcid = "boric_acid",
        /// Borax, sodium tetraborate decahydrate.
        Borax = "borax",
        /// Manganese sulfate monohydrate.
        ManganeseSulfate = "manganese_sulfate_monohydrate",
        /// Zinc sulfate heptahydrate.
        ZincSulfate = "zinc_sulfate_heptahydrate",
        /// Copper sulfate pentahydrate.
        CopperSulfate = "copper_sulfate_pentahydrate",
        /// Sodium molybdate dihydrate.
        SodiumMolybdate = "sodium_molybdate_dihydrate",
        /// Iron(II) sulfate heptahydrate.
        IronSulfate = "iron_sulfate_heptahydrate",
        /// Iron EDTA, sodium salt, trihydrate.
        IronEdta = "iron_edta",
        /// Iron DTPA, sodium hydrogen salt.
        IronDtpa = "iron_dtpa",
        /// Iron EDDHA: sold by its iron content, no single formula.
        IronEddha = "iron_eddha",
    }
}

/// Where molar masses and contents come from.
const STOICHIOMETRY: &str = "stoichiometry with IUPAC 2021 standard atomic weights";

/// What is known of one salt.
#[derive(Debug)]
struct Record {
    formula: Option<(&'static str, Formula)>,
    composition: Composition,
    usual_analysis: &'static str,
    source: &'static str,
}

/// A salt of known formula; a formula that cannot be read stops the build, not the program.
const fn pure(
    text: &'static str,
    nitrate: u32,
    ammonium: u32,
    usual_analysis: &'static str,
) -> Record {
    let Ok(formula) = Formula::parse(text) else {
        panic!("not a formula")
    };
    let forms = NitrogenForms {
        nitrate,
        ammonium,
        urea: 0,
    };
    let Ok(composition) = Composition::from_formula(&formula, forms) else {
        panic!("more nitrogen stated than the formula holds")
    };
    Record {
        formula: Some((text, formula)),
        composition,
        usual_analysis,
        source: STOICHIOMETRY,
    }
}

/// The record of a salt. Each record is a constant of its own, so that the formulae are read
/// while compiling.
const fn record(salt: Salt) -> &'static Record {
    macro_rules! records {
        ($($salt:ident: $record:expr,)+) => {
            match salt { $(Salt::$salt => const { &$record },)+ }
        };
    }
    // Formula, atoms of nitrate N, atoms of ammonium N, usual guaranteed analysis: N-P2O5-K2O
    // and others in percent, common practice.
    records! {
        CalciumNitrate: pure("Ca(NO3)2.4H2O", 2, 0, "11.9-0-0, Ca 17"),
        CalciumAmmoniumNitrate:
            pure("5Ca(NO3)2.NH4NO3.10H2O", 11, 1, "15.5-0-0 (14.4 nitrate, 1.1 ammonium), Ca 19"),
        PotassiumNitrate: pure("KNO3", 1, 0, "13.5-0-46"),
        MonopotassiumPhosphate: pure("KH2PO4", 0, 0, "0-52-34"),
        MonoammoniumPhosphate: pure("NH4H2PO4", 0, 1, "12-61-0"),
        MagnesiumSulfate: pure("MgSO4.7H2O", 0, 0, "Mg 9.8, S 13"),
        MagnesiumNitrate: pure("Mg(NO3)2.6H2O", 2, 0, "11-0-0, Mg 9.5"),
        PotassiumSulfate: pure("K2SO4", 0, 0, "0-0-50 to 0-0-52, S 17 to 18"),
        AmmoniumNitrate: pure("NH4NO3", 1, 1, "34-0-0"),
        AmmoniumSulfate: pure("(NH4)2SO4", 0, 2, "21-0-0, S 24"),
        PotassiumChloride: pure("KCl", 0, 0, "0-0-60 to 0-0-62"),
        CalciumChloride: pure("CaCl2.2H2O", 0, 0, "Ca 27"),
        BoricAcid: pure("H3BO3", 0, 0, "B 17.5"),
        Borax: pure("Na2B4O7.10H2O", 0, 0, "B 11.3"),
        ManganeseSulfate: pure("MnSO4.H2O", 0, 0, "Mn 31 to 32.5"),
        ZincSulfate: pure("ZnSO4.7H2O", 0, 0, "Zn 22.7"),
        CopperSulfate: pure("CuSO4.5H2O", 0, 0, "Cu 25"),
        SodiumMolybdate: pure("Na2MoO4.2H2O", 0, 0, "Mo 39.6"),
        IronSulfate: pure("FeSO4.7H2O", 0, 0, "Fe 20"),
        // The nitrogen of the chelates is part of the ligand and counts as none of the forms.
        IronEdta: pure("C10H12FeN2NaO8.3H2O", 0, 0, "Fe 13"),
        IronDtpa: pure("C14H19FeN3NaO10", 0, 0, "Fe 10 to 11.5 solid, 6 liquid"),
        IronEddha: Record {
            formula: None,
            composition: Composition::NONE.set(Nutrient::Fe, 0.06),
            usual_analysis: "Fe 6",
            source: "common practice, no source: the usual guaranteed analysis",
        },
    }
}

impl Salt {
    /// The formula as it is written, hydrate water included; none for a mixture.
    pub fn formula_text(self) -> Option<&'static str> {
        record(self).formula.map(|(text, _)| text)
    }

    /// Atoms of one formula unit; none for a mixture.
    pub fn formula(self) -> Option<Formula> {
        record(self).formula.map(|(_, formula)| formula)
    }

    /// Mass fractions of the nutrients (ratios from 0 to 1): of the pure salt where it has a
    /// formula, else by the usual guaranteed analysis.
    ///
    /// ```
    /// use slackwater::catalog::salts::Salt;
    /// use slackwater::science::{label::Nutrient, units::ratio::percent};
    /// let magnesium = Salt::MagnesiumSulfate.composition().fraction(Nutrient::Mg);
    /// assert!((magnesium.get::<percent>() - 9.86).abs() < 0.01);
    /// ```
    pub fn composition(self) -> Composition {
        record(self).composition
    }

    /// What bags of fertilizer grade usually guarantee: N-P₂O₅-K₂O and other nutrients in percent
    /// of the mass (common practice, no source). It shows how near to pure the grade is.
    pub fn usual_analysis(self) -> &'static str {
        record(self).usual_analysis
    }

    /// Where the contents come from.
    pub fn source(self) -> &'static str {
        record(self).source
    }
}

#[cfg(test)]
mod tests {
    use super::{Nutrient, Salt};
    use crate::catalog::Keyed;
    use crate::science::units::{
        MassConcentration, mass_concentration::gram_per_liter,
        molar_concentration::millimole_per_liter,
    };

    #[test]
    fn salts_of_major_nutrients_are_electrically_neutral() {
        // Sodium molybdate, borax and trace metals have ions that the sums leave out.
        for &salt in &Salt::ALL[..12] {
            let amount = MassConcentration::new::<gram_per_liter>(1.0);
            let solution =
                crate::science::label::Concentrations::NONE.add(&salt.composition(), amount);
            let difference = solution.map(|it| {
                let difference = it.cation_charge() - it.anion_charge();
                difference.get::<millimole_per_liter>().abs() < 1e-9
            });
            assert_eq!(difference, Ok(true), "{salt:?}");
        }
    }

    #[test]
    fn only_the_mixture_lacks_a_formula_and_every_salt_feeds_something() {
        for &salt in Salt::ALL {
            assert_eq!(salt.formula().is_none(), salt == Salt::IronEddha);
            let composition = salt.composition();
            let fed = Nutrient::ALL
                .into_iter()
                .filter(|&nutrient| !matches!(nutrient, Nutrient::Na | Nutrient::Cl))
                .any(|nutrient| composition.fraction(nutrient).value > 0.05);
            assert!(fed, "{salt:?}");
            assert!(!salt.usual_analysis().is_empty() && !salt.source().is_empty());
        }
    }
}
