//! How much of each thing goes into a litre of solution.

use super::outcome::{Material, TargetReached};
use super::recipe::fit;
use crate::catalog::acids::Acid as AcidFigures;
use crate::catalog::salts::Salt;
use crate::plan::{AcidChoice, AcidDose, CalciumNitrate, Fertilizer, Mixture, Stocks, Strength};
use crate::science::label::{Composition, Concentrations};
use crate::science::solution::{Acid, Acidity, Recipe, Speciation};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::molar_concentration::{millimole_per_liter, mole_per_liter};
use crate::science::units::ratio::ratio;
use crate::science::units::{MassConcentration, MolarConcentration, Ratio};
use crate::season::{Background, Beyond, Chemistry};

/// The finished solution.
#[derive(Clone, Debug)]
pub(super) struct Mixed {
    /// Grams of blend or of each salt, or litres of each stock, per litre of solution.
    pub shares: Vec<f64>,
    /// What blend, stocks or salts bring.
    pub fertilizer: Concentrations,
    /// All nutrients: fertilizer, acid and raw water.
    pub nutrients: Concentrations,
    /// What stays in the water.
    pub background: Background,
    /// Moles of acid per litre of solution.
    pub acid_mol_per_l: f64,
    /// What the acid brings: nutrients, and anions that are not solved for (mmol of charge per
    /// litre).
    pub acid: (Concentrations, f64),
    /// Whether the solution was already below the wanted pH.
    pub already_acid: bool,
    /// The solution at 25 °C.
    pub standard: Speciation,
    /// The solution at its own temperature.
    pub own: Speciation,
    /// Each target of a recipe, and what is reached.
    pub targets: Vec<TargetReached>,
}

/// Mixes the solution of a plan.
///
/// # Errors
/// [`Beyond`] when the target asks for more than any solution holds, or less than the raw water.
pub(super) fn mix(fertilizer: &Fertilizer, chemistry: &Chemistry) -> Result<Mixed, Beyond> {
    let parts = parts(fertilizer)?;
    let mixer = Mixer {
        chemistry,
        acid: fertilizer.acid.as_ref(),
    };
    match fertilizer.strength {
        Strength::Recipe(recipe, share) => {
            let wanted = recipe.targets().scaled(share).map_err(|_| Beyond)?;
            let open = recipe.left_open();
            let Mixture::Salts(shelf) = &fertilizer.mixture else {
                return Err(Beyond);
            };
            let (shares, targets) = fit(shelf, &wanted, open, chemistry.water_nutrients())?;
            let fertilizer = combine(&parts, &shares)?;
            mixer.finish(shares, fertilizer, targets)
        }
        Strength::Nitrogen(target) => {
            mixer.to_nitrogen(&parts, target.get::<milligram_per_liter>())
        }
        Strength::Conductivity(target) => {
            mixer.to_conductivity(&parts, target.get::<siemens_per_meter>())
        }
    }
}

/// The water with nothing in it but the acid that it takes.
///
/// # Errors
/// [`Beyond`] when the solution cannot be solved.
pub(super) fn water_alone(fertilizer: &Fertilizer, chemistry: &Chemistry) -> Result<Mixed, Beyond> {
    let mixer = Mixer {
        chemistry,
        acid: fertilizer.acid.as_ref(),
    };
    mixer.finish(Vec::new(), Concentrations::NONE, Vec::new())
}

/// The same amounts, without acid, in another water.
///
/// # Errors
/// [`Beyond`] when the solution cannot be solved.
pub(super) fn in_other_water(mixed: &Mixed, chemistry: &Chemistry) -> Result<Mixed, Beyond> {
    let mixer = Mixer {
        chemistry,
        acid: None,
    };
    mixer.finish(
        mixed.shares.clone(),
        mixed.fertilizer,
        mixed.targets.clone(),
    )
}

/// What one unit of each part brings to a litre: a gram of blend or salt, or a litre of stock A and
/// of stock B.
fn parts(fertilizer: &Fertilizer) -> Result<Vec<Concentrations>, Beyond> {
    let gram = MassConcentration::new::<gram_per_liter>(1.0);
    let add =
        |to: Concentrations, what: &Composition, amount| to.add(what, amount).map_err(|_| Beyond);
    match &fertilizer.mixture {
        Mixture::DryBlend => Ok(vec![add(Concentrations::NONE, &fertilizer.blend, gram)?]),
        Mixture::Salts(shelf) => shelf
            .iter()
            .map(|salt| add(Concentrations::NONE, &salt.composition, gram))
            .collect(),
        Mixture::Stocks(stocks) => Ok(vec![stock_a(stocks)?, stock_b(stocks, &fertilizer.blend)?]),
    }
}

/// What stock A holds.
pub(super) fn stock_a(stocks: &Stocks) -> Result<Concentrations, Beyond> {
    Concentrations::NONE
        .add(
            &stocks.calcium_nitrate.salt().composition(),
            stocks.calcium_nitrate_strength,
        )
        .map_err(|_| Beyond)
}

/// What stock B holds.
pub(super) fn stock_b(stocks: &Stocks, blend: &Composition) -> Result<Concentrations, Beyond> {
    Concentrations::NONE
        .add(blend, stocks.blend_strength)
        .and_then(|held| {
            held.add(
                &Salt::MagnesiumSulfate.composition(),
                stocks.magnesium_sulfate_strength,
            )
        })
        .map_err(|_| Beyond)
}

/// The calcium nitrate of a plan, as something to measure out.
pub(super) fn material_of(choice: CalciumNitrate) -> Material {
    match choice {
        CalciumNitrate::DoubleSalt => Material::CalciumNitrateDoubleSalt,
        CalciumNitrate::Tetrahydrate => Material::CalciumNitrateTetrahydrate,
    }
}

fn combine(parts: &[Concentrations], shares: &[f64]) -> Result<Concentrations, Beyond> {
    parts
        .iter()
        .zip(shares)
        .try_fold(Concentrations::NONE, |sum, (part, &share)| {
            part.scaled(Ratio::new::<ratio>(share))
                .and_then(|scaled| sum.plus(&scaled))
                .map_err(|_| Beyond)
        })
}

struct Mixer<'a> {
    chemistry: &'a Chemistry,
    acid: Option<&'a AcidDose>,
}

impl Mixer<'_> {
    /// The solution with the same share of every part.
    fn at(&self, parts: &[Concentrations], share: f64) -> Result<Mixed, Beyond> {
        let shares = vec![share; parts.len()];
        let fertilizer = combine(parts, &shares)?;
        self.finish(shares, fertilizer, Vec::new())
    }

    /// Finds the share that gives a concentration of nitrogen (mg/L), raw water and acid included.
    /// Without nitric acid the first step is exact; with it, how much is needed hardly depends on
    /// the share.
    fn to_nitrogen(&self, parts: &[Concentrations], wanted: f64) -> Result<Mixed, Beyond> {
        /// As close as the search for the acid comes.
        const CLOSE: f64 = 1e-6;
        let nitrogen = |held: &Concentrations| held.nitrogen().get::<milligram_per_liter>();
        let one = nitrogen(&combine(parts, &vec![1.0; parts.len()])?);
        let mut share = (wanted - nitrogen(self.chemistry.water_nutrients())) / one;
        for _ in 0..40 {
            if !share.is_finite() || share < 0.0 {
                return Err(Beyond);
            }
            let mixed = self.at(parts, share)?;
            let lacking = wanted - nitrogen(&mixed.nutrients);
            if lacking.abs() <= CLOSE * wanted {
                return Ok(mixed);
            }
            share += lacking / one;
        }
        Err(Beyond)
    }

    /// Finds the share that gives a conductivity (S/m at 25 °C), acid included. Conductivity rises
    /// with every salt, a little less than in step; the secant method closes in on it.
    fn to_conductivity(&self, parts: &[Concentrations], wanted: f64) -> Result<Mixed, Beyond> {
        /// A hundred times finer than any meter.
        const CLOSE: f64 = 1e-6;
        let reading = |mixed: &Mixed| mixed.standard.conductivity().get::<siemens_per_meter>();
        let nothing = self.at(parts, 0.0)?;
        let start = reading(&nothing);
        if start >= wanted {
            return Err(Beyond);
        }
        // 10 mmol of cation charge per litre make about 1 mS/cm (0.1 S/m).
        let charge = combine(parts, &vec![1.0; parts.len()])?
            .cation_charge()
            .get::<millimole_per_liter>();
        let (mut low, mut high) = ((0.0, start), None);
        let mut share = (wanted - start) * 100.0 / charge;
        for _ in 0..40 {
            if !share.is_finite() || share < 0.0 {
                return Err(Beyond);
            }
            let mixed = self.at(parts, share)?;
            let got = reading(&mixed);
            if (got - wanted).abs() <= CLOSE * wanted {
                return Ok(mixed);
            }
            if got < wanted {
                low = (share, got);
            } else {
                high = Some((share, got));
            }
            share = match high {
                None => share * (wanted - start) / (got - start) * 1.02,
                Some(high) => low.0 + (wanted - low.1) / (high.1 - low.1) * (high.0 - low.0),
            };
        }
        Err(Beyond)
    }

    /// Adds raw water and acid, and solves the whole.
    fn finish(
        &self,
        shares: Vec<f64>,
        fertilizer: Concentrations,
        targets: Vec<TargetReached>,
    ) -> Result<Mixed, Beyond> {
        let chemistry = self.chemistry;
        let background = chemistry.background(&fertilizer);
        let nutrients = fertilizer
            .plus(chemistry.water_nutrients())
            .map_err(|_| Beyond)?;
        let recipe = chemistry.recipe(&nutrients, &background, 1.0);
        let standard = chemistry.standard().solve(&recipe).map_err(|_| Beyond)?;
        let mut mixed = Mixed {
            own: chemistry.own().solve(&recipe).map_err(|_| Beyond)?,
            shares,
            fertilizer,
            nutrients,
            background,
            acid_mol_per_l: 0.0,
            acid: (Concentrations::NONE, 0.0),
            already_acid: false,
            standard,
            targets,
        };
        if let Some(acid) = self.acid {
            self.acidify(&mut mixed, &recipe, acid)?;
        }
        Ok(mixed)
    }

    /// Acid to the wanted pH at 25 °C, where a meter reads it.
    fn acidify(&self, mixed: &mut Mixed, recipe: &Recipe, dose: &AcidDose) -> Result<(), Beyond> {
        if mixed.standard.ph() <= dose.target_ph {
            mixed.already_acid = true;
            return Ok(());
        }
        let standard = self.chemistry.standard();
        let (figures, listed) = match dose.acid {
            AcidChoice::None => return Ok(()),
            AcidChoice::Nitric => (AcidFigures::Nitric, Some(Acid::Nitric)),
            AcidChoice::Phosphoric => (AcidFigures::Phosphoric, Some(Acid::Phosphoric)),
            AcidChoice::Sulfuric => (AcidFigures::Sulfuric, Some(Acid::Sulfuric)),
            AcidChoice::Citric => (AcidFigures::Citric, None),
        };
        let moles = if let Some(acid) = listed {
            standard
                .acid_for(recipe, acid, dose.target_ph)
                .map_err(|_| Beyond)?
                .amount
                .get::<mole_per_liter>()
        } else {
            // Citrate is not among the ions that are solved; its charge stands for it.
            let charge = unlisted_anions(standard, recipe, dose.target_ph)?;
            let protons = figures.protons_given(dose.target_ph).map_err(|_| Beyond)?;
            mixed.background = mixed.background.with_unlisted_anions(charge);
            mixed.acid.1 = charge;
            charge / 1000.0 / protons
        };
        let grams = moles
            * figures
                .formula()
                .molar_mass()
                .get::<crate::science::units::molar_mass::gram_per_mole>();
        mixed.acid.0 = Concentrations::NONE
            .add(
                &figures.composition(),
                MassConcentration::new::<gram_per_liter>(grams),
            )
            .map_err(|_| Beyond)?;
        mixed.nutrients = mixed.nutrients.plus(&mixed.acid.0).map_err(|_| Beyond)?;
        mixed.acid_mol_per_l = moles;
        let recipe = self
            .chemistry
            .recipe(&mixed.nutrients, &mixed.background, 1.0);
        mixed.standard = standard.solve(&recipe).map_err(|_| Beyond)?;
        mixed.own = self.chemistry.own().solve(&recipe).map_err(|_| Beyond)?;
        Ok(())
    }
}

/// Charge of anions (mmol/L) that are not solved for and that bring a recipe to a pH.
fn unlisted_anions(
    standard: &crate::science::solution::Equilibria,
    recipe: &Recipe,
    target: f64,
) -> Result<f64, Beyond> {
    let at = Recipe {
        acidity: Acidity::Ph(target),
        ..*recipe
    };
    let before = match recipe.acidity {
        Acidity::Residual(charge) => charge,
        _ => MolarConcentration::default(),
    };
    let after = standard.solve(&at).map_err(|_| Beyond)?.residual_charge();
    Ok((after - before).get::<millimole_per_liter>().max(0.0))
}
