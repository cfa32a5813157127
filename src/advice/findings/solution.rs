//! What the solution holds: nutrients over the season, the label, pH, what falls out, stocks and raw
//! water.

use super::List;
use crate::advice::facts::{Fact, Weight};
use crate::advice::growing_on::STRONG_MS_PER_CM;
use crate::advice::outcome::Outcome;
use crate::plan::Sound;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::MassConcentration;
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::molar_concentration::millimole_per_liter;

/// Anions over cations of a label from which something is amiss: a label is rounded to a per cent or
/// two; common practice, no source.
const ANIONS_OVER_CATIONS: f64 = 1.2;
/// pH that leafy greens take well: Oklahoma State University Extension HLA-6722 gives 6.0 to 7.0
/// for lettuce (from memory), Cornell 5.6 to 6.0 (from memory).
const PH: (f64, f64) = (5.3, 7.0);
/// Drift of the pH over a season that is worth a word: common practice, no source.
const PH_DRIFT: f64 = 0.7;
/// Miss of a recipe's target, per cent of it, that is worth a word: common practice, no source.
const TARGET_MISS_PCT: f64 = 10.0;
/// Urea of all nitrogen from which its slowness matters: common practice, no source.
const UREA_SHARE: f64 = 0.10;

pub(super) fn feeding(list: &mut List, outcome: &Outcome) {
    let (doses, season) = (&outcome.fertilizer, &outcome.season);
    let mut all_last = true;
    for balance in &season.nutrients {
        if balance.need_g > balance.supply_g {
            all_last = false;
            list.add(
                Weight::Caution,
                Fact::Short {
                    nutrient: balance.nutrient,
                    supply_g: balance.supply_g,
                    need_g: balance.need_g,
                    day: balance.runs_short_day,
                },
            );
        }
    }
    if all_last {
        list.add(Weight::Sound, Fact::NutrientsLast);
    }
    if season.left_l > 0.0 && season.ec_at_end_ms_per_cm > STRONG_MS_PER_CM {
        list.add(
            Weight::Caution,
            Fact::StrongAtEnd {
                ec_ms_per_cm: season.ec_at_end_ms_per_cm,
                limit_ms_per_cm: STRONG_MS_PER_CM,
                start_ms_per_cm: doses.fitting.and_then(|fitting| {
                    let start = (fitting.high_ms_per_cm * 10.0).floor() / 10.0;
                    (start > 0.0 && start >= fitting.low_ms_per_cm).then_some(start)
                }),
            },
        );
    }
    if let Some(fitting) = doses.fitting {
        let fits = fitting.low_ms_per_cm <= fitting.high_ms_per_cm;
        list.judge(
            fits,
            Fact::FittingStrength {
                low_ms_per_cm: fitting.low_ms_per_cm,
                high_ms_per_cm: fitting.high_ms_per_cm,
            },
        );
    }
    let nitrogen = doses.elements_mg_per_l.n;
    let urea = doses.nitrogen_forms_mg_per_l.urea;
    if nitrogen > 0.0 && urea / nitrogen > UREA_SHARE {
        list.add(
            Weight::Caution,
            Fact::Urea {
                share_pct: 100.0 * urea / nitrogen,
            },
        );
    }
    for target in &doses.targets {
        if target
            .miss_pct
            .is_some_and(|miss| miss.abs() > TARGET_MISS_PCT)
        {
            list.add(
                Weight::Caution,
                Fact::TargetMissed {
                    nutrient: target.nutrient,
                    form: target.form,
                    target_mg_per_l: target.target_mg_per_l,
                    reached_mg_per_l: target.reached_mg_per_l,
                },
            );
        }
    }
}

/// Whether the ions of a blend's label can balance. Cations without anions are explained by sulfate
/// or chloride that labels leave out; many more anions than cations only by sodium salts or acids,
/// which few blends hold. Urea phosphate is such an acid, so a label with urea is not judged.
pub(super) fn label(list: &mut List, sound: &Sound) {
    let blend = &sound.fertilizer.blend;
    let one = MassConcentration::new::<gram_per_liter>(1.0);
    let Ok(solution) = Concentrations::NONE.add(blend, one) else {
        return;
    };
    let (cations, anions) = (solution.cation_charge(), solution.anion_charge());
    let urea = blend.fraction(Nutrient::UreaN).value > 0.0;
    if !urea && anions > cations * ANIONS_OVER_CATIONS {
        list.add(
            Weight::Caution,
            Fact::LabelCharges {
                cations_mmol_per_g: cations.get::<millimole_per_liter>(),
                anions_mmol_per_g: anions.get::<millimole_per_liter>(),
            },
        );
    }
}

/// pH, what falls out, stocks, and the raw water.
pub(super) fn chemistry(list: &mut List, outcome: &Outcome) {
    let ph = outcome.solution.ph;
    let (low, high) = PH;
    list.judge((low..=high).contains(&ph), Fact::Ph { ph, low, high });
    if outcome.season.left_l > 0.0 {
        let drift = outcome.season.ph_at_end - ph;
        if drift.abs() > PH_DRIFT
            && let Some(protons) = outcome.protons
        {
            list.add(
                Weight::Caution,
                Fact::PhDrift {
                    from: ph,
                    to: outcome.season.ph_at_end,
                    ammonium_share_pct: protons.ammonium_share_pct,
                    steady_ammonium_share_pct: protons.steady_ammonium_share_pct,
                },
            );
        }
    }
    if outcome.fertilizer.no_acid_needed {
        list.add(Weight::Sound, Fact::NoAcidNeeded { ph });
    }
    if outcome.solution.saturation.worst() > 0.0 {
        list.add(
            Weight::Caution,
            Fact::FallsOut {
                saturation: outcome.solution.saturation,
            },
        );
    }
    for stock in &outcome.stocks {
        list.judge(
            stock.clear,
            Fact::StockClear {
                stock: stock.material.clone(),
                contents: stock.contents.clone(),
                saturation: stock.saturation,
                dissolving_pct: stock.dissolving_pct,
                strongest_pct: stock.strongest_pct,
            },
        );
    }
    if let Some(together) = &outcome.stocks_together
        && let Some(worst) = together.worst()
    {
        list.add(
            Weight::Caution,
            Fact::StocksApart {
                saturation: worst,
                clear_when_thinned_times: together.clear_when_thinned_times,
            },
        );
    }
    if outcome.water.charge_error_pct.is_some() || outcome.water.ec_ratio.is_some() {
        list.judge(
            outcome.water.analysis_is_sound,
            Fact::WaterAnalysis {
                charge_error_pct: outcome.water.charge_error_pct,
                ec_ratio: outcome.water.ec_ratio,
            },
        );
    }
    for item in &outcome.water.restricted {
        list.add(
            if item.severe {
                Weight::Stop
            } else {
                Weight::Caution
            },
            Fact::Water { item: *item },
        );
    }
    if let Some(share_pct) = outcome.water.raw_water_share_pct {
        list.add(Weight::Caution, Fact::DiluteWater { share_pct });
    }
    if let Some(yield_pct) = outcome.season.yield_under_salt_pct
        && yield_pct < 99.0
    {
        list.add(Weight::Caution, Fact::SaltYield { yield_pct });
    }
    for next in &outcome.growing_on {
        list.judge(!next.drain, Fact::GrowOn { next: *next });
    }
}
