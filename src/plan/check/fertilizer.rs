//! Step 3: raw water, blend or stocks, and the strength.

use super::reader::Reader;
use crate::plan::{CalciumNitrate, Dosing, Field, ProblemKind, Rule, StrengthBy};
use crate::science::label::{
    Composition, Concentrations, Label, LabelLine, LabelProblem, Nutrient,
};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::ratio::percent;
use crate::science::units::{ElectricalConductivity, MassConcentration, Ratio};

/// What is dissolved, and how strong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fertilizer {
    /// What is measured out.
    pub mixture: Mixture,
    /// Nutrients of the blend, by mass.
    pub blend: Composition,
    /// What fixes the strength.
    pub strength: Strength,
    /// Conductivity of the raw water at 25 °C.
    pub raw_water: ElectricalConductivity,
}

/// What is measured out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mixture {
    /// The blend alone, weighed.
    DryBlend,
    /// Equal volumes of two stock solutions.
    Stocks {
        /// Which calcium nitrate stock A holds.
        calcium_nitrate: CalciumNitrate,
        /// Calcium nitrate in stock A.
        calcium_nitrate_strength: MassConcentration,
        /// Blend in stock B.
        blend_strength: MassConcentration,
        /// Magnesium sulfate heptahydrate in stock B.
        magnesium_sulfate_strength: MassConcentration,
    },
}

/// What fixes the strength of the solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Strength {
    /// Conductivity of the finished solution at 25 °C.
    Conductivity(ElectricalConductivity),
    /// Nitrogen of the finished solution, in all its forms.
    Nitrogen(MassConcentration),
}

/// 1 mS/cm = 0.1 S/m.
fn millisiemens(value: f64) -> ElectricalConductivity {
    ElectricalConductivity::new::<siemens_per_meter>(value / 10.0)
}

pub(super) fn read(reader: &mut Reader) -> Option<Fertilizer> {
    let plan = &reader.plan.fertilizer;
    let dosing = reader.choice(Field::Dosing, &plan.dosing);
    let named = reader.choice(Field::Blend, &plan.blend);
    let blend = label(reader);
    let raw_water = reader.number(Field::RawWaterConductivity);
    let by = reader.choice(Field::StrengthBy, &plan.strength_by);
    let strength = match by {
        None => None,
        Some(StrengthBy::Conductivity) => {
            let target = reader.number(Field::TargetConductivity);
            if let (Some(target), Some(raw)) = (target, raw_water)
                && target <= raw
            {
                reader.conflict(
                    Field::TargetConductivity,
                    target,
                    Rule::TargetAboveRawWater,
                    raw,
                );
            }
            target.map(|target| Strength::Conductivity(millisiemens(target)))
        }
        Some(StrengthBy::Nitrogen) => reader.number(Field::TargetNitrogen).map(|target| {
            Strength::Nitrogen(MassConcentration::new::<milligram_per_liter>(target))
        }),
    };
    let mixture = match dosing {
        None => None,
        Some(Dosing::DryBlend) => Some(Mixture::DryBlend),
        Some(Dosing::Stocks) => stocks(reader),
    };
    named?;
    let blend = blend?;
    // Calcium nitrate alone would carry both targets, so only a lone blend must.
    if mixture == Some(Mixture::DryBlend) {
        if by == Some(StrengthBy::Conductivity)
            && Concentrations::NONE
                .add(&blend, MassConcentration::new::<gram_per_liter>(1.0))
                .is_ok_and(|solution| solution.cation_charge().value <= 0.0)
        {
            reader.conflict(Field::Blend, 0.0, Rule::BlendConducts, 0.0);
        }
        if by == Some(StrengthBy::Nitrogen) && blend.nitrogen().value <= 0.0 {
            reader.conflict(Field::LabelNitrogen, 0.0, Rule::BlendHasNitrogen, 0.0);
        }
    }
    Some(Fertilizer {
        mixture: mixture?,
        blend,
        strength: strength?,
        raw_water: millisiemens(raw_water?),
    })
}

fn stocks(reader: &mut Reader) -> Option<Mixture> {
    let calcium_nitrate = reader.choice(
        Field::CalciumNitrate,
        &reader.plan.fertilizer.calcium_nitrate,
    );
    let strength = |value: Option<f64>| value.map(MassConcentration::new::<gram_per_liter>);
    let a = strength(reader.number(Field::StockACalciumNitrate));
    let b = strength(reader.number(Field::StockBBlend));
    let magnesium = strength(reader.number(Field::StockBMagnesiumSulfate));
    Some(Mixture::Stocks {
        calcium_nitrate: calcium_nitrate?,
        calcium_nitrate_strength: a?,
        blend_strength: b?,
        magnesium_sulfate_strength: magnesium?,
    })
}

/// The label of the blend; a line left empty counts as nothing declared.
fn label(reader: &mut Reader) -> Option<Composition> {
    // Many labels print only the forms; then there is no total to check them against.
    let total_is_printed = !reader.plan.fertilizer.label.nitrogen_pct.is_blank();
    let mut fraction = |field: Field| reader.number_or_zero(field).map(Ratio::new::<percent>);
    let total_n = fraction(Field::LabelNitrogen);
    let lines = [
        Field::LabelNitrate,
        Field::LabelAmmonium,
        Field::LabelUrea,
        Field::LabelPhosphate,
        Field::LabelPotash,
        Field::LabelCalcium,
        Field::LabelMagnesium,
        Field::LabelSulfur,
        Field::LabelIron,
        Field::LabelManganese,
        Field::LabelZinc,
        Field::LabelCopper,
        Field::LabelBoron,
        Field::LabelMolybdenum,
    ]
    .map(fraction);
    if lines.iter().any(Option::is_none) {
        return None;
    }
    let [
        nitrate_n,
        ammonium_n,
        urea_n,
        p2o5,
        k2o,
        ca,
        mg,
        s,
        fe,
        mn,
        zn,
        cu,
        b,
        mo,
    ] = lines.map(Option::unwrap_or_default);
    let label = Label {
        total_n: Some(total_n?).filter(|_| total_is_printed),
        nitrate_n,
        ammonium_n,
        urea_n,
        p2o5,
        k2o,
        ca,
        mg,
        s,
        fe,
        mn,
        zn,
        cu,
        b,
        mo,
    };
    match Composition::from_label(&label) {
        Ok(composition) => Some(composition),
        Err(problems) => {
            for problem in problems {
                let (field, kind) = worded(problem);
                reader.problem(field, kind);
            }
            None
        }
    }
}

fn worded(problem: LabelProblem) -> (Field, ProblemKind) {
    let percent_of = |ratio: Ratio| ratio.get::<percent>();
    match problem {
        LabelProblem::NotAFraction { line, got } => (
            field_of(line),
            ProblemKind::OutOfRange {
                got: percent_of(got),
                low: 0.0,
                high: 100.0,
            },
        ),
        LabelProblem::NitrogenForms { forms, total, .. } => (
            Field::LabelNitrogen,
            ProblemKind::Conflict {
                got: percent_of(total),
                rule: Rule::NitrogenFormsMakeTotal,
                limit: percent_of(forms),
            },
        ),
        LabelProblem::OverFull { least, limit } => (
            Field::Blend,
            ProblemKind::Conflict {
                got: percent_of(least),
                rule: Rule::LabelWithinWhole,
                limit: percent_of(limit),
            },
        ),
    }
}

fn field_of(line: LabelLine) -> Field {
    match line {
        LabelLine::TotalNitrogen => Field::LabelNitrogen,
        LabelLine::Nutrient(nutrient) => match nutrient {
            Nutrient::AmmoniumN => Field::LabelAmmonium,
            Nutrient::UreaN => Field::LabelUrea,
            Nutrient::P => Field::LabelPhosphate,
            Nutrient::K => Field::LabelPotash,
            Nutrient::Ca => Field::LabelCalcium,
            Nutrient::Mg => Field::LabelMagnesium,
            Nutrient::S => Field::LabelSulfur,
            Nutrient::Fe => Field::LabelIron,
            Nutrient::Mn => Field::LabelManganese,
            Nutrient::Zn => Field::LabelZinc,
            Nutrient::Cu => Field::LabelCopper,
            Nutrient::B => Field::LabelBoron,
            Nutrient::Mo => Field::LabelMolybdenum,
            _ => Field::LabelNitrate,
        },
    }
}
