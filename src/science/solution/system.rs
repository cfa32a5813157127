//! The equations of one recipe: which species can exist, what each balance adds up, where to start.

use super::equilibria::{Acidity, Carbonate, Equilibria, Recipe};
use super::medium::Activity;
use super::newton::State;
use super::records::RECORDS;
use super::species::Species;
use super::totals::Component;
use crate::science::units::{molar_concentration::mole_per_liter, pressure::atmosphere};

/// Unknowns at most: the components, the hydrogen ion, the ionic strength.
pub(super) const MOST_UNKNOWNS: usize = Component::COUNT + 2;

/// ln of the activity of the hydrogen ion in the strongest base: pH 15, since cold water is neutral
/// at 7.5.
pub(super) const LEAST_HYDROGEN: f64 = -15.0 * core::f64::consts::LN_10;

/// What the balance of one component says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Rule {
    /// The component is absent.
    Absent,
    /// Its total, mol/kg.
    Total(f64),
    /// The alkalinity, eq/kg.
    Alkalinity(f64),
    /// ln of the activity of dissolved CO₂.
    Dissolved(f64),
}

/// A species that can exist, as the solver reads it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Term {
    pub species: usize,
    pub charge: f64,
    pub water: f64,
    pub alkalinity: f64,
    pub activity: Activity,
    /// ln of its activity over that of its unknowns.
    pub fixed: f64,
    /// Column and count of each unknown that it is made of; the first `count` are in use.
    pub unknowns: [(usize, f64); 3],
    pub count: usize,
    /// Rows of the totals that it counts in; the first `balanced` are in use.
    pub balances: [usize; 2],
    pub balanced: usize,
}

const BLANK: Term = Term {
    species: 0,
    charge: 0.0,
    water: 0.0,
    alkalinity: 0.0,
    activity: Activity::Davies,
    fixed: 0.0,
    unknowns: [(0, 0.0); 3],
    count: 0,
    balances: [0; 2],
    balanced: 0,
};

/// The equations of one recipe.
#[derive(Clone, Debug)]
pub(super) struct System<'a> {
    pub constants: &'a Equilibria,
    pub rules: [Rule; Component::COUNT],
    /// What the charges add up to, eq/kg, where the hydrogen ion is not given.
    pub residual: f64,
    /// ln of the activity of the hydrogen ion, where given.
    given: Option<f64>,
    /// The unknown of each component that is present.
    pub columns: [Option<usize>; Component::COUNT],
    /// The unknown that is the hydrogen ion, unless given.
    pub hydrogen_column: Option<usize>,
    /// The last unknown, the ionic strength.
    pub strength_column: usize,
    /// The balance that is of the alkalinity.
    pub alkalinity_row: Option<usize>,
    /// The species that can exist; the first `present` are in use.
    pub terms: [Term; Species::COUNT],
    pub present: usize,
}

impl<'a> System<'a> {
    /// The equations of a recipe whose figures were checked.
    pub fn new(constants: &'a Equilibria, recipe: &Recipe) -> Self {
        let mut rules = recipe.totals.molal.map(|total| {
            if total > 0.0 {
                Rule::Total(total)
            } else {
                Rule::Absent
            }
        });
        let carbonate = &mut rules[Component::Carbonate as usize];
        match recipe.carbonate {
            Carbonate::Closed => {}
            Carbonate::Alkalinity(it) => *carbonate = Rule::Alkalinity(it.get::<mole_per_liter>()),
            Carbonate::Air(it) => {
                let ln_fugacity = libm::log(it.get::<atmosphere>());
                *carbonate = Rule::Dissolved(ln_fugacity + constants.ln_henry);
            }
        }
        let (given, residual) = match recipe.acidity {
            Acidity::Ph(ph) => (Some(-ph * core::f64::consts::LN_10), 0.0),
            Acidity::Balance => (None, 0.0),
            Acidity::Residual(charge) => (None, charge.get::<mole_per_liter>()),
        };
        let mut system = Self {
            constants,
            rules,
            residual,
            given,
            columns: [None; Component::COUNT],
            hydrogen_column: None,
            strength_column: 0,
            alkalinity_row: None,
            terms: [BLANK; Species::COUNT],
            present: 0,
        };
        system.number();
        system
    }

    /// The same equations with the pH given.
    pub fn at_hydrogen(&self, hydrogen: f64) -> Self {
        let mut system = self.clone();
        system.given = Some(hydrogen);
        system.number();
        system
    }

    /// Numbers the unknowns and lists the species.
    fn number(&mut self) {
        let mut next = 0;
        let mut take = || {
            next += 1;
            next - 1
        };
        for (column, rule) in self.columns.iter_mut().zip(&self.rules) {
            *column = (*rule != Rule::Absent).then(&mut take);
            if matches!(rule, Rule::Alkalinity(_)) {
                self.alkalinity_row = *column;
            }
        }
        self.hydrogen_column = self.given.is_none().then(&mut take);
        self.strength_column = take();

        self.present = 0;
        'species: for (species, record) in RECORDS.iter().enumerate() {
            let mut term = Term {
                species,
                charge: record.charge,
                water: record.water,
                alkalinity: alkalinity_of(Species::ALL[species]),
                activity: record.activity,
                fixed: self.constants.ln_k[species],
                ..BLANK
            };
            for &part in record.parts.iter().flatten() {
                let Some(column) = self.columns[part as usize] else {
                    continue 'species;
                };
                term.unknowns[term.count] = (column, 1.0);
                term.count += 1;
                if matches!(self.rules[part as usize], Rule::Total(_)) {
                    term.balances[term.balanced] = column;
                    term.balanced += 1;
                }
            }
            match (self.given, self.hydrogen_column) {
                (Some(ln), _) => term.fixed += record.hydrogen * ln,
                (None, Some(column)) if record.hydrogen != 0.0 => {
                    term.unknowns[term.count] = (column, record.hydrogen);
                    term.count += 1;
                }
                _ => {}
            }
            self.terms[self.present] = term;
            self.present += 1;
        }
    }

    /// A start from the solution of a similar recipe; a component that it lacks starts alone.
    pub fn near(&self, near: &State) -> State {
        let mut state = *near;
        state.iterations = 0;
        state.hydrogen = self.given.unwrap_or(state.hydrogen);
        state.molal = [0.0; Species::COUNT];
        state.ln_gamma = [0.0; Species::COUNT];
        let alone = self.alone(state.hydrogen, state.strength);
        for (ln, alone) in state.parts.iter_mut().zip(alone) {
            if !ln.is_finite() || !alone.is_finite() {
                *ln = alone;
            }
        }
        state
    }

    /// A start from nothing but the totals; `hydrogen`, where known, is ln of the activity of the
    /// hydrogen ion.
    pub fn start(&self, hydrogen: Option<f64>) -> State {
        let mut strength = 1e-7;
        for (rule, record) in self.rules.iter().zip(&RECORDS[1..]) {
            // Phosphate and carbonate sit in ions of lower charge at the pH of solutions, and a
            // part of the divalent ions is paired.
            let charge = record.charge.clamp(-2.0, 2.0);
            strength += 0.4 * Self::amount(*rule) * charge * charge;
        }
        let hydrogen = self
            .given
            .or(hydrogen)
            .unwrap_or_else(|| self.unpaired_hydrogen(strength));
        State {
            hydrogen,
            parts: self.alone(hydrogen, strength),
            strength,
            water: 0.0,
            molal: [0.0; Species::COUNT],
            ln_gamma: [0.0; Species::COUNT],
            iterations: 0,
        }
    }

    /// The total that a rule implies, roughly, mol/kg.
    fn amount(rule: Rule) -> f64 {
        match rule {
            Rule::Absent => 0.0,
            Rule::Total(total) => total,
            Rule::Alkalinity(alkalinity) => alkalinity.abs().max(1e-6),
            Rule::Dissolved(ln_activity) => libm::exp(ln_activity),
        }
    }

    /// ln of molality over activities, for one species of one component, without its component:
    /// ln K − ln γ.
    fn conditional(&self, species: Species, strength: f64, root: f64) -> f64 {
        let record = &RECORDS[species as usize];
        let (ln_gamma, _) =
            record
                .activity
                .ln_coefficient(&self.constants.medium, record.charge, strength, root);
        self.constants.ln_k[species as usize] - ln_gamma
    }

    /// ln of the activity of each component's own species, as if there were no ion pairs.
    fn alone(&self, hydrogen: f64, strength: f64) -> [f64; Component::COUNT] {
        let root = strength.sqrt();
        let h = libm::exp(hydrogen);
        let mut parts = [f64::NEG_INFINITY; Component::COUNT];
        for (component, ln) in Component::ALL.into_iter().zip(&mut parts) {
            let rule = self.rules[component as usize];
            *ln = match rule {
                Rule::Absent => continue,
                Rule::Dissolved(ln_activity) => {
                    let gas = Species::CarbonDioxide as usize;
                    ln_activity - self.constants.ln_k[gas] - 2.0 * hydrogen
                }
                Rule::Total(_) | Rule::Alkalinity(_) => {
                    let own = Species::ALL[component as usize + 1];
                    let mut sum = libm::exp(self.conditional(own, strength, root));
                    for &(acid, protons) in acids(component) {
                        sum += libm::exp(self.conditional(acid, strength, root))
                            * (0..protons.unsigned_abs()).fold(1.0, |power, _| {
                                if protons > 0 { power * h } else { power / h }
                            });
                    }
                    libm::log(Self::amount(rule) / sum)
                }
            };
        }
        parts
    }

    /// ln of the activity of the hydrogen ion that balances the charges, as if there were no ion
    /// pairs, to a hundredth of a pH unit.
    fn unpaired_hydrogen(&self, strength: f64) -> f64 {
        let root = strength.sqrt();
        let constant = |species| libm::exp(self.conditional(species, strength, root));
        // Charges that do not depend on the pH.
        let mut strong = -self.residual;
        for component in Component::ALL {
            if acids(component).is_empty() {
                strong += RECORDS[component as usize + 1].charge
                    * Self::amount(self.rules[component as usize]);
            }
        }
        let free = constant(Species::Hydrogen);
        let hydroxide = constant(Species::Hydroxide);
        // Of each acid: its rule, the charge of its own species, the constants of one to three
        // hydrogen ions taken up and of one given off.
        let mut weak = [(Rule::Absent, 0.0, [0.0; 3], 0.0); 5];
        let mut kinds = 0;
        for component in Component::ALL {
            let rule = self.rules[component as usize];
            if rule == Rule::Absent || acids(component).is_empty() {
                continue;
            }
            let own = constant(Species::ALL[component as usize + 1]);
            let mut up = [0.0; 3];
            let mut down = 0.0;
            for &(acid, protons) in acids(component) {
                match protons {
                    1 => up[0] = constant(acid) / own,
                    2 => up[1] = constant(acid) / own,
                    3 => up[2] = constant(acid) / own,
                    _ => down = constant(acid) / own,
                }
            }
            let charge = RECORDS[component as usize + 1].charge;
            weak[kinds] = (rule, charge, up, down);
            kinds += 1;
        }
        let (mut low, mut high) = (LEAST_HYDROGEN, 0.0);
        for _ in 0..11 {
            let middle = 0.5 * (low + high);
            let h = libm::exp(middle);
            let mut charge = strong + free * h - hydroxide / h;
            for &(rule, own, [k1, k2, k3], down) in &weak[..kinds] {
                let (one, two, three, less) = (k1 * h, k2 * h * h, k3 * h * h * h, down / h);
                let sum = 1.0 + one + two + three + less;
                let mean = (one + 2.0 * two + 3.0 * three - less) / sum;
                let amount = Self::amount(rule);
                // In contact with air the carbonate grows as the pH rises; its bicarbonate tells
                // enough of it to start from.
                charge += match rule {
                    Rule::Dissolved(_) => -amount * one / two,
                    _ => amount * (own + mean),
                };
            }
            if charge > 0.0 {
                high = middle;
            } else {
                low = middle;
            }
        }
        0.5 * (low + high)
    }
}

/// The acids and bases of a component, with the hydrogen ions that its own species takes up.
fn acids(component: Component) -> &'static [(Species, i8)] {
    match component {
        Component::Ammonium => &[(Species::Ammonia, -1)],
        Component::Sulfate => &[(Species::Bisulfate, 1)],
        Component::Phosphate => &[
            (Species::HydrogenPhosphate, 1),
            (Species::DihydrogenPhosphate, 2),
            (Species::PhosphoricAcid, 3),
        ],
        Component::Carbonate => &[(Species::Bicarbonate, 1), (Species::CarbonDioxide, 2)],
        Component::Borate => &[(Species::DihydrogenBorate, -1)],
        _ => &[],
    }
}

/// What a mole of the species adds to the alkalinity, eq: the acid that turns it into dissolved
/// CO₂, H₂PO₄⁻, NH₄⁺, SO₄²⁻, H₃BO₃ and bare metal ions.
pub(super) fn alkalinity_of(species: Species) -> f64 {
    let record = &RECORDS[species as usize];
    let taken: f64 = record
        .parts
        .iter()
        .flatten()
        .map(|part| match part {
            Component::Carbonate | Component::Phosphate => 2.0,
            _ => 0.0,
        })
        .sum();
    taken - record.hydrogen
}
