//! Published limits of raw water, and how much of it rain must replace.

use super::{Analysis, RawWaterProblem, conductivity_in_range};
use crate::science::label::Nutrient;
use crate::science::units::{
    ElectricalConductivity, MassConcentration, Ratio, electrical_conductivity::siemens_per_meter,
    mass_concentration::milligram_per_liter, molar_concentration::millimole_per_liter, ratio,
};

/// How far an item restricts the use of a water.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Restriction {
    /// No restriction.
    None,
    /// Slight to moderate: usable with care.
    SlightToModerate,
    /// Severe.
    Severe,
}

/// Which set of limits an item belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Guideline {
    /// Irrigation of fields: Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29 rev. 1,
    /// table 1. Its row on infiltration concerns soil only and would condemn rain water: left out.
    Fao29,
    /// Water to make nutrient solutions from: extension services and the trade press.
    SolutionCulture,
}

/// One line of a guideline; the unit of its figures stands beside it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Item {
    /// FAO 29: electrical conductivity, dS/m.
    Salinity,
    /// FAO 29: sodium by surface irrigation, as the sodium adsorption ratio.
    SodiumAdsorption,
    /// FAO 29: chloride by surface irrigation, me/L.
    ChlorideToxicity,
    /// FAO 29: boron, mg/L.
    Boron,
    /// FAO 29: nitrate nitrogen, mg/L. A nutrient: count it in the recipe.
    NitrateNitrogen,
    /// FAO 29: bicarbonate, me/L, here all alkalinity.
    Bicarbonate,
    /// FAO 29: pH, normal from 6.5 to 8.4.
    Ph,
    /// Solution culture: sodium, mg/L.
    Sodium,
    /// Solution culture: chloride, mg/L.
    Chloride,
    /// Solution culture: sulfate as SO₄, mg/L.
    Sulfate,
    /// Solution culture: alkalinity as `CaCO₃`, mg/L.
    Alkalinity,
    /// Solution culture: calcium, mg/L.
    Calcium,
    /// Solution culture: hardness as `CaCO₃`, mg/L.
    Hardness,
}

/// One item of a water against its limits, all in the unit of the item.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Judgement {
    /// The item.
    pub item: Item,
    /// What the water has.
    pub value: f64,
    /// No restriction below this; for the pH up to this.
    pub none_below: f64,
    /// Severe above this; `None` where the guideline draws no such line.
    pub severe_above: Option<f64>,
    /// The class.
    pub restriction: Restriction,
}

/// How far a water must be thinned with rain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dilution {
    /// Raw water per mixed water, by volume (a ratio from 0 to 1): one where nothing needs it.
    pub raw_water: Ratio,
    /// The item that asks for most rain; `None` where nothing does.
    pub decisive: Option<Item>,
}

impl Item {
    /// The guideline that the item belongs to.
    pub fn guideline(self) -> Guideline {
        match self {
            Self::Salinity
            | Self::SodiumAdsorption
            | Self::ChlorideToxicity
            | Self::Boron
            | Self::NitrateNitrogen
            | Self::Bicarbonate
            | Self::Ph => Guideline::Fao29,
            Self::Sodium
            | Self::Chloride
            | Self::Sulfate
            | Self::Alkalinity
            | Self::Calcium
            | Self::Hardness => Guideline::SolutionCulture,
        }
    }

    /// The publication of the limits.
    pub fn source(self) -> &'static str {
        match self {
            Self::Sodium => {
                "Mattson & Peters (2014), Inside Grower; Oklahoma State University Extension, \
                 HLA-6722, table 1"
            }
            Self::Chloride => {
                "below 70 mg/L Mattson & Peters (2014), Inside Grower; above 140 mg/L Oklahoma \
                 State University Extension, HLA-6722, table 1"
            }
            Self::Sulfate | Self::Calcium => {
                "Oklahoma State University Extension, HLA-6722, table 1"
            }
            Self::Alkalinity => {
                "extension services of the United States agree, from memory: to 75 mg/L none, \
                 above 150 mg/L acid or other water"
            }
            Self::Hardness => "Greenhouse Management, Irrigation water for greenhouses, chapter 18",
            _ => "Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29 rev. 1, table 1",
        }
    }

    /// No restriction below the first, severe above the second.
    const fn limits(self) -> (f64, Option<f64>) {
        match self {
            Self::Salinity | Self::Boron => (0.7, Some(3.0)),
            Self::SodiumAdsorption => (3.0, Some(9.0)),
            Self::ChlorideToxicity => (4.0, Some(10.0)),
            Self::NitrateNitrogen => (5.0, Some(30.0)),
            Self::Bicarbonate => (1.5, Some(8.5)),
            Self::Ph => (8.4, None),
            Self::Sodium => (50.0, None),
            Self::Chloride => (70.0, Some(140.0)),
            Self::Sulfate => (100.0, None),
            Self::Alkalinity => (75.0, Some(150.0)),
            Self::Calcium | Self::Hardness => (150.0, None),
        }
    }

    /// The class of a value.
    fn judge(self, value: f64) -> Judgement {
        let (none_below, severe_above) = self.limits();
        let restriction = if severe_above.is_some_and(|limit| value > limit) {
            Restriction::Severe
        } else if self.is_met_by(value, none_below) {
            Restriction::None
        } else {
            Restriction::SlightToModerate
        };
        Judgement {
            item: self,
            value,
            none_below,
            severe_above,
            restriction,
        }
    }

    /// Whether a value is one of no restriction.
    fn is_met_by(self, value: f64, none_below: f64) -> bool {
        /// The lower end of the normal range of pH.
        const NORMAL_PH: f64 = 6.5;
        match self {
            Self::Ph => (NORMAL_PH..=none_below).contains(&value),
            // The trade press prints these two as a limit that may be met.
            Self::Alkalinity | Self::Hardness => value <= none_below,
            _ => value < none_below,
        }
    }

    /// The share of raw water at which the mixture with pure water meets the limit of no
    /// restriction; one where it already does.
    fn share(self, value: f64) -> f64 {
        let (none_below, _) = self.limits();
        if self.is_met_by(value, none_below) {
            return 1.0;
        }
        let share = none_below / value;
        match self {
            // Not a matter of salts: rain does not mend a pH; nitrate feeds the crop.
            Self::Ph | Self::NitrateNitrogen => 1.0,
            // Sodium falls with the share, the root below it with its square root.
            Self::SodiumAdsorption => share * share,
            _ => share,
        }
    }
}

impl Analysis {
    /// The water against the limits of FAO 29 and of solution culture.
    ///
    /// `conductivity`: at 25 °C, measured or computed from the ions, 0 to 200 mS/cm. The result:
    /// one line for each item that can be judged; the sodium adsorption ratio needs calcium or
    /// magnesium, boron and pH a measurement. A figure out of range is a [`RawWaterProblem`].
    /// Source: see [`Item::source`].
    ///
    /// ```
    /// use slackwater::science::raw_water::{Analysis, RawWaterProblem, Restriction};
    /// use slackwater::science::units::ElectricalConductivity;
    /// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
    /// let rain = ElectricalConductivity::new::<siemens_per_meter>(0.003);
    /// let lines = Analysis::default().judge(rain)?;
    /// assert!(lines.iter().all(|line| line.restriction == Restriction::None));
    /// # Ok::<(), RawWaterProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`RawWaterProblem`] as said.
    pub fn judge(
        &self,
        conductivity: ElectricalConductivity,
    ) -> Result<Vec<Judgement>, RawWaterProblem> {
        conductivity_in_range(conductivity)?;
        let ions = self.equivalents()?;
        let brought = self.nutrients()?;
        let mg = |amount: MassConcentration| amount.get::<milligram_per_liter>();
        let values = [
            (
                Item::Salinity,
                Some(conductivity.get::<siemens_per_meter>() * 10.0),
            ),
            (Item::SodiumAdsorption, ions.sodium_adsorption_ratio()),
            (
                Item::ChlorideToxicity,
                Some(ions.chloride.get::<millimole_per_liter>()),
            ),
            (Item::Boron, self.boron.map(mg)),
            (
                Item::NitrateNitrogen,
                Some(mg(brought.of(Nutrient::NitrateN))),
            ),
            (
                Item::Bicarbonate,
                Some(ions.alkalinity.get::<millimole_per_liter>()),
            ),
            (Item::Ph, self.ph),
            (Item::Sodium, Some(mg(self.sodium))),
            (Item::Chloride, Some(mg(self.chloride))),
            (Item::Sulfate, Some(mg(self.sulfate))),
            (Item::Alkalinity, Some(mg(self.alkalinity))),
            (Item::Calcium, Some(mg(self.calcium))),
            (Item::Hardness, Some(mg(self.hardness()?))),
        ];
        Ok(values
            .into_iter()
            .filter_map(|(item, value)| value.map(|value| item.judge(value)))
            .collect())
    }

    /// How much rain must go with the water until no item restricts its use.
    ///
    /// `conductivity`: as for [`Self::judge`]. The result: the share of raw water at which the
    /// worst item just meets its limit; take a little less. Rain counts as pure water. In closed
    /// form: a concentration falls with the share, the sodium adsorption ratio with its square
    /// root; the conductivity is taken to fall with the share, though it falls a few percent
    /// slower. The pH, which rain does not mend, and nitrate, which feeds, ask for none. A figure
    /// out of range is a [`RawWaterProblem`]. Source: conservation of mass.
    ///
    /// ```
    /// use slackwater::science::raw_water::{Analysis, Item, RawWaterProblem};
    /// use slackwater::science::units::{ElectricalConductivity, MassConcentration, ratio::ratio};
    /// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
    /// use slackwater::science::units::mass_concentration::milligram_per_liter;
    /// let sodium = MassConcentration::new::<milligram_per_liter>(200.0);
    /// let water = Analysis { sodium, ..Analysis::default() };
    /// let dilution = water.dilution(ElectricalConductivity::new::<siemens_per_meter>(0.1))?;
    /// assert!((dilution.raw_water.get::<ratio>() - 0.25).abs() < 1e-12);
    /// assert_eq!(dilution.decisive, Some(Item::Sodium));
    /// # Ok::<(), RawWaterProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`RawWaterProblem`] as said.
    pub fn dilution(
        &self,
        conductivity: ElectricalConductivity,
    ) -> Result<Dilution, RawWaterProblem> {
        let (mut least, mut decisive) = (1.0, None);
        for line in self.judge(conductivity)? {
            let share = line.item.share(line.value);
            if share < least {
                (least, decisive) = (share, Some(line.item));
            }
        }
        Ok(Dilution {
            raw_water: Ratio::new::<ratio::ratio>(least),
            decisive,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::{Guideline, Item, Restriction};
    use crate::science::raw_water::tests::hard;
    use crate::science::units::{ElectricalConductivity, electrical_conductivity};

    fn decisiemens(value: f64) -> ElectricalConductivity {
        ElectricalConductivity::new::<electrical_conductivity::siemens_per_meter>(value / 10.0)
    }

    #[test]
    fn what_was_not_measured_is_not_judged() {
        let lines = hard().judge(decisiemens(0.4)).expect("water");
        assert!(
            !lines
                .iter()
                .any(|it| matches!(it.item, Item::Boron | Item::Ph))
        );
        assert_eq!(lines.len(), 11);
        let mut all = hard();
        all.ph = Some(7.0);
        all.boron = Some(hard().sodium);
        let lines = all.judge(decisiemens(0.4)).expect("water");
        assert_eq!(lines.len(), 13);
        let boron = lines.iter().find(|it| it.item == Item::Boron);
        assert!(boron.is_some_and(|it| it.restriction == Restriction::Severe));
        for guideline in [Guideline::Fao29, Guideline::SolutionCulture] {
            assert!(lines.iter().any(|it| it.item.guideline() == guideline));
        }
    }

    #[test]
    fn a_ph_out_of_range_restricts_on_both_sides_and_asks_for_no_rain() {
        for (ph, restriction) in [
            (6.4, Restriction::SlightToModerate),
            (6.5, Restriction::None),
            (8.4, Restriction::None),
            (8.5, Restriction::SlightToModerate),
        ] {
            assert_eq!(Item::Ph.judge(ph).restriction, restriction, "{ph}");
            assert!((Item::Ph.share(ph) - 1.0).abs() < 1e-15);
        }
    }

    #[test]
    fn rain_mends_the_worst_item_and_no_more() {
        let mut salty = hard();
        salty.sodium *= 20.0;
        salty.chloride *= 10.0;
        let dilution = salty.dilution(decisiemens(2.5)).expect("water");
        assert_eq!(dilution.decisive, Some(Item::SodiumAdsorption));
        for (share, mended) in [(0.999, true), (1.001, false)] {
            let factor = dilution.raw_water.value * share;
            let mut mixed = salty;
            for figure in [
                &mut mixed.calcium,
                &mut mixed.magnesium,
                &mut mixed.sodium,
                &mut mixed.alkalinity,
                &mut mixed.chloride,
                &mut mixed.sulfate,
            ] {
                *figure *= factor;
            }
            let lines = mixed.judge(decisiemens(2.5 * factor)).expect("water");
            let free = lines.iter().all(|it| it.restriction == Restriction::None);
            assert_eq!(free, mended, "{share}");
        }
    }
}
