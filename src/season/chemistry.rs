//! The chemistry of one tank: raw water, what was dissolved in it, and what that reads and holds.

use super::plants::Beyond;
use crate::plan::RawWater;
use crate::science::formula::Element;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::raw_water::Analysis;
use crate::science::solution::{
    Acidity, Carbonate, Component, Equilibria, Recipe, Speciation, Totals, mixed,
};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::milligram_per_liter;
use crate::science::units::molar_concentration::millimole_per_liter;
use crate::science::units::pressure::pascal;
use crate::science::units::ratio::ratio;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::{
    ElectricalConductivity, MassConcentration, MolarConcentration, Pressure, Ratio,
    ThermodynamicTemperature,
};

/// Carbon dioxide of outdoor air, Pa: 420 ppm at sea level.
const AIR_CARBON_DIOXIDE_PA: f64 = 42.0;

/// An unknown tap, mmol/L before it is scaled to its conductivity: calcium and magnesium
/// bicarbonate with some sodium chloride and sulfate, as most of the world's drinking water is.
/// Assumed.
const TAP: [(Component, f64); 5] = [
    (Component::Calcium, 1.0),
    (Component::Magnesium, 0.35),
    (Component::Sodium, 0.5),
    (Component::Chloride, 0.5),
    (Component::Sulfate, 0.3),
];
/// The alkalinity that balances [`TAP`], me/L.
const TAP_ALKALINITY: f64 = 2.1;
/// Assumed pH of an unknown tap.
const TAP_PH: f64 = 7.6;

fn mmol(value: f64) -> MolarConcentration {
    MolarConcentration::new::<millimole_per_liter>(value)
}

/// What is in the water besides the nutrients that are followed one by one. It neither falls out
/// nor is taken up, so it grows stronger in step with the water that leaves.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Background {
    /// Ions of the raw water, and ions that a label leaves open.
    totals: Totals,
    /// Charge that listed ions leave over (mmol of charge per litre).
    residual: f64,
}

/// The equilibria of a tank.
#[derive(Clone, Debug)]
pub struct Chemistry {
    /// At 25 °C, where conductivity is compared.
    standard: Equilibria,
    /// At the tank's own temperature.
    own: Equilibria,
    /// What the raw water brings beside nutrients.
    water: Background,
    /// Nutrients that the raw water brings.
    water_nutrients: Concentrations,
    /// The water that is filled in, at 25 °C.
    filled_in: Speciation,
    /// The raw water without rain, at 25 °C.
    raw: Speciation,
}

impl Chemistry {
    /// The chemistry of solutions made with this water, of which `rain` (0 to 1) is rain, and kept at
    /// this temperature (0 to 40 °C; a mean beyond is taken as the nearer end). The two waters are
    /// poured together closed to the air: totals and alkalinity add up in proportion.
    ///
    /// # Errors
    /// [`Beyond`] when the water cannot be solved.
    pub fn new(
        water: &RawWater,
        rain: Ratio,
        temperature: ThermodynamicTemperature,
    ) -> Result<Self, Beyond> {
        let celsius = temperature.get::<degree_celsius>().clamp(0.0, 40.0);
        let at = |celsius: f64| {
            Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(celsius))
                .map_err(|_| Beyond)
        };
        let standard = at(25.0)?;
        let raw = raw_water(&standard, water)?;
        Self::filled(at(celsius)?, standard, raw, rain)
    }

    /// The same raw water with another share of rain (0 to 1).
    ///
    /// # Errors
    /// [`Beyond`] when the mixture cannot be solved.
    pub fn with_rain(&self, rain: Ratio) -> Result<Self, Beyond> {
        Self::filled(
            self.own.clone(),
            self.standard.clone(),
            self.raw.clone(),
            rain,
        )
    }

    fn filled(
        own: Equilibria,
        standard: Equilibria,
        raw: Speciation,
        rain: Ratio,
    ) -> Result<Self, Beyond> {
        let filled_in = if rain.value > 0.0 {
            let pure = raw_water(&standard, &RawWater::Rain)?;
            let whole = Ratio::new::<ratio>(1.0);
            let both = mixed([(whole - rain, &raw), (rain, &pure)]);
            standard.solve(&both).map_err(|_| Beyond)?
        } else {
            raw.clone()
        };
        let all = filled_in.totals();
        // The tank stands open, so its carbonate comes to that of the air; nutrients are followed
        // one by one; the rest stays.
        let stays = [Component::Sodium, Component::Chloride];
        let totals = Totals::of(stays.map(|component| (component, all.get(component))));
        Ok(Self {
            own,
            water: Background {
                totals,
                residual: filled_in.residual_charge().get::<millimole_per_liter>(),
            },
            water_nutrients: nutrients_of(&all)?,
            standard,
            filled_in,
            raw,
        })
    }

    /// Nutrients that the water brings.
    pub fn water_nutrients(&self) -> &Concentrations {
        &self.water_nutrients
    }

    /// The water that is filled in, rain and all, at 25 °C.
    pub fn filled_in(&self) -> &Speciation {
        &self.filled_in
    }

    /// The raw water without rain, at 25 °C.
    pub fn raw_water(&self) -> &Speciation {
        &self.raw
    }

    /// What stays in the water beside the nutrients of these salts. Phosphorus counts as dihydrogen
    /// phosphate; cations without anions are taken to have come with sulfate, anions without
    /// cations with sodium, because labels leave these two out most.
    pub fn background(&self, salts: &Concentrations) -> Background {
        let mut totals = self.water.totals;
        Self::balance(salts, &mut totals);
        Background {
            totals,
            residual: self.water.residual,
        }
    }

    /// The background after several fillings with raw water and the salts added in all.
    pub fn background_after(&self, fillings: f64, salts: &Concentrations) -> Background {
        let mut totals = self.water.totals.scaled(fillings);
        Self::balance(salts, &mut totals);
        Background {
            totals,
            residual: self.water.residual * fillings,
        }
    }

    /// Adds the ions that salts leave open, as in [`Self::background`].
    pub fn balance(salts: &Concentrations, totals: &mut Totals) {
        let open = (salts.cation_charge() - salts.anion_charge()).get::<millimole_per_liter>();
        if open > 0.0 {
            totals.add(Component::Sulfate, mmol(open / 2.0));
        } else {
            totals.add(Component::Sodium, mmol(-open));
        }
    }

    /// The recipe of a solution: its nutrients, and its background concentrated `factor` times.
    pub fn recipe(
        &self,
        nutrients: &Concentrations,
        background: &Background,
        factor: f64,
    ) -> Recipe {
        Recipe {
            totals: background.totals.scaled(factor).with(&totals_of(nutrients)),
            carbonate: Carbonate::Air(Pressure::new::<pascal>(AIR_CARBON_DIOXIDE_PA)),
            acidity: Acidity::Residual(mmol(background.residual * factor)),
        }
    }

    /// The equilibria at 25 °C.
    pub fn standard(&self) -> &Equilibria {
        &self.standard
    }

    /// The equilibria at the tank's temperature.
    pub fn own(&self) -> &Equilibria {
        &self.own
    }

    /// Conductivity at 25 °C.
    ///
    /// # Errors
    /// [`Beyond`] when the solution cannot be solved.
    pub fn conductivity(&self, recipe: &Recipe) -> Result<ElectricalConductivity, Beyond> {
        self.standard
            .solve(recipe)
            .map(|solution| solution.conductivity())
            .map_err(|_| Beyond)
    }
}

impl Background {
    /// The same with more unlisted anions (mmol of charge per litre), as an organic acid brings.
    #[must_use]
    pub fn with_unlisted_anions(mut self, charge: f64) -> Self {
        self.residual += charge;
        self
    }

    /// Sodium and chloride of the water, mmol/L.
    pub fn salt(&self) -> (f64, f64) {
        let of = |component| self.totals.get(component).get::<millimole_per_liter>();
        (of(Component::Sodium), of(Component::Chloride))
    }
}

/// The components that nutrients become, and the element by whose mass they are counted. Urea is
/// no ion; the metals are chelated, or too little to count.
const IONS: [(Nutrient, Component, Element); 9] = [
    (Nutrient::NitrateN, Component::Nitrate, Element::N),
    (Nutrient::AmmoniumN, Component::Ammonium, Element::N),
    (Nutrient::P, Component::Phosphate, Element::P),
    (Nutrient::K, Component::Potassium, Element::K),
    (Nutrient::Ca, Component::Calcium, Element::Ca),
    (Nutrient::Mg, Component::Magnesium, Element::Mg),
    (Nutrient::S, Component::Sulfate, Element::S),
    (Nutrient::Na, Component::Sodium, Element::Na),
    (Nutrient::Cl, Component::Chloride, Element::Cl),
];

/// The ions of a fertilizer solution.
pub fn totals_of(nutrients: &Concentrations) -> Totals {
    Totals::of(IONS.map(|(nutrient, component, element)| {
        let mg_per_l = nutrients.of(nutrient).get::<milligram_per_liter>();
        (component, mmol(mg_per_l / element.grams_per_mole()))
    }))
}

/// The nutrients among the ions of raw water.
fn nutrients_of(totals: &Totals) -> Result<Concentrations, Beyond> {
    IONS.iter()
        .filter(|(_, component, _)| !matches!(component, Component::Sodium | Component::Chloride))
        .try_fold(
            Concentrations::NONE,
            |water, &(nutrient, component, element)| {
                let mmol_per_l = totals.get(component).get::<millimole_per_liter>();
                let amount = MassConcentration::new::<milligram_per_liter>(
                    mmol_per_l * element.grams_per_mole(),
                );
                water.with(nutrient, amount).map_err(|_| Beyond)
            },
        )
}

fn raw_water(standard: &Equilibria, water: &RawWater) -> Result<Speciation, Beyond> {
    let solve = |recipe: &Recipe| standard.solve(recipe).map_err(|_| Beyond);
    match water {
        RawWater::Rain => solve(&Recipe {
            totals: Totals::default(),
            carbonate: Carbonate::Air(Pressure::new::<pascal>(AIR_CARBON_DIOXIDE_PA)),
            acidity: Acidity::Balance,
        }),
        RawWater::Tap(conductivity) => tap(standard, *conductivity),
        RawWater::Analysis(analysis) => {
            let recipe = of_analysis(analysis);
            // A pH that alone accounts for more than the alkalinity leaves no carbonate: the
            // analysis of a water without any, or one that left the alkalinity out.
            solve(&recipe).or_else(|Beyond| {
                solve(&Recipe {
                    carbonate: Carbonate::Closed,
                    ..recipe
                })
            })
        }
    }
}

/// The usual tap scaled to a conductivity. Conductivity rises a little less than in step with the
/// salts, so a few proportional steps meet it.
fn tap(standard: &Equilibria, conductivity: ElectricalConductivity) -> Result<Speciation, Beyond> {
    let wanted = conductivity.get::<siemens_per_meter>();
    let at = |scale: f64| {
        standard
            .solve(&Recipe {
                totals: Totals::of(
                    TAP.map(|(component, amount)| (component, mmol(amount * scale))),
                ),
                carbonate: Carbonate::Alkalinity(mmol(TAP_ALKALINITY * scale)),
                acidity: Acidity::Ph(TAP_PH),
            })
            .map_err(|_| Beyond)
    };
    if wanted <= 0.0 {
        return raw_water(standard, &RawWater::Rain);
    }
    // About 0.32 mS/cm at a scale of one.
    let mut scale = wanted / 0.032;
    let mut water = at(scale)?;
    for _ in 0..12 {
        let got = water.conductivity().get::<siemens_per_meter>();
        scale *= wanted / got;
        water = at(scale)?;
    }
    Ok(water)
}

fn of_analysis(analysis: &Analysis) -> Recipe {
    let of = |amount: MassConcentration, grams_per_mole: f64| {
        mmol(amount.get::<milligram_per_liter>() / grams_per_mole)
    };
    let oxygen = Element::O.grams_per_mole();
    let sulfate = Element::S.grams_per_mole() + 4.0 * oxygen;
    let nitrate = Element::N.grams_per_mole() + 3.0 * oxygen;
    let half_calcium_carbonate = f64::midpoint(
        Element::Ca.grams_per_mole(),
        Element::C.grams_per_mole() + 3.0 * oxygen,
    );
    let totals = Totals::of([
        (
            Component::Calcium,
            of(analysis.calcium, Element::Ca.grams_per_mole()),
        ),
        (
            Component::Magnesium,
            of(analysis.magnesium, Element::Mg.grams_per_mole()),
        ),
        (
            Component::Sodium,
            of(analysis.sodium, Element::Na.grams_per_mole()),
        ),
        (
            Component::Potassium,
            of(analysis.potassium, Element::K.grams_per_mole()),
        ),
        (
            Component::Chloride,
            of(analysis.chloride, Element::Cl.grams_per_mole()),
        ),
        (Component::Sulfate, of(analysis.sulfate, sulfate)),
        (Component::Nitrate, of(analysis.nitrate, nitrate)),
    ]);
    Recipe {
        totals,
        carbonate: Carbonate::Alkalinity(of(analysis.alkalinity, half_calcium_carbonate)),
        acidity: Acidity::Ph(analysis.ph.unwrap_or(TAP_PH)),
    }
}
