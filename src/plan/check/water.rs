//! The raw water, as far as it is known.

use super::reader::Reader;
use crate::plan::{Field, WaterKind};
use crate::science::raw_water::Analysis;
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::milligram_per_liter;
use crate::science::units::ratio::percent;
use crate::science::units::{ElectricalConductivity, MassConcentration, Ratio};

/// The raw water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RawWater {
    /// Rain or other nearly pure water.
    Rain,
    /// Known by its conductivity at 25 °C only.
    Tap(ElectricalConductivity),
    /// A full analysis.
    Analysis(Analysis),
}

/// 1 mS/cm = 0.1 S/m.
pub(super) fn millisiemens(value: f64) -> ElectricalConductivity {
    ElectricalConductivity::new::<siemens_per_meter>(value / 10.0)
}

/// The raw water, and the share of rain that is mixed into it.
pub(super) fn read(reader: &mut Reader) -> Option<(RawWater, Ratio)> {
    let kind = reader.choice(Field::WaterKind, &reader.plan.fertilizer.water_kind)?;
    // Rain in rain is not asked for.
    let rain = if kind == WaterKind::Rain {
        Some(0.0)
    } else {
        reader.number_or_zero(Field::RainShare)
    };
    let water = raw(reader, kind);
    Some((water?, Ratio::new::<percent>(rain?)))
}

fn raw(reader: &mut Reader, kind: WaterKind) -> Option<RawWater> {
    match kind {
        WaterKind::Rain => Some(RawWater::Rain),
        WaterKind::Tap => reader
            .number(Field::RawWaterConductivity)
            .map(|value| RawWater::Tap(millisiemens(value))),
        WaterKind::Analysis => {
            let conductivity = reader.number(Field::RawWaterConductivity);
            // What a report leaves out was not found.
            let ions = [
                Field::WaterCalcium,
                Field::WaterMagnesium,
                Field::WaterSodium,
                Field::WaterPotassium,
                Field::WaterChloride,
                Field::WaterSulfate,
                Field::WaterAlkalinity,
                Field::WaterNitrate,
            ]
            .map(|field| {
                reader
                    .number_or_zero(field)
                    .map(MassConcentration::new::<milligram_per_liter>)
            });
            let ph = reader.number(Field::WaterPh);
            let [
                calcium,
                magnesium,
                sodium,
                potassium,
                chloride,
                sulfate,
                alkalinity,
                nitrate,
            ] = ions;
            Some(RawWater::Analysis(Analysis {
                calcium: calcium?,
                magnesium: magnesium?,
                sodium: sodium?,
                potassium: potassium?,
                chloride: chloride?,
                sulfate: sulfate?,
                alkalinity: alkalinity?,
                nitrate: nitrate?,
                boron: None,
                ph: Some(ph?),
                conductivity: Some(millisiemens(conductivity?)),
            }))
        }
    }
}
