//! Checks, cautions and stops as sentences: what, why, and what to do.
//!
//! Long, because one match has a sentence for each fact; one without does not compile.

use super::doses::{capital, material};
use super::fields::label;
use super::figures::{on_scale, show};
use super::finding_parts::{
    charge, fine, mends_text, minerals, ph_sentences, sentences, water_amount, water_item,
};
use super::problems::unusual_text;
use super::results::nutrient;
use super::say::*;
use crate::advice::{Fact, Finding, Weight};
use crate::catalog::Keyed;
use crate::plan::{Dimension, UnitSystem};
use crate::season::MajorNutrient;

/// How a finding is headed, for those who do not see its mark.
pub fn weight(finding: &Finding) -> &'static str {
    match finding.weight {
        Weight::Caution if finding.fact.always() => weight_safety(),
        Weight::Stop => weight_stop(),
        Weight::Caution => weight_caution(),
        Weight::Sound => weight_sound(),
        Weight::Reminder => weight_reminder(),
    }
}

/// A finding in words.
#[expect(
    clippy::too_many_lines,
    reason = "one sentence a fact; several functions would only scatter the wording"
)]
pub fn finding(finding: &Finding, units: UnitSystem) -> String {
    let good = finding.weight == Weight::Sound;
    let of = |dimension, value: &f64| show(dimension, *value, units);
    let volume = |litres| of(Dimension::Volume, litres);
    let length = |cm| of(Dimension::Length, cm);
    let warmth = |celsius| of(Dimension::Temperature, celsius);
    let share = |percent: &f64| of(Dimension::Percent, percent);
    let ec = |value| of(Dimension::Conductivity, value);
    let concentration = |value| of(Dimension::Concentration, value);
    let light = |moles| of(Dimension::DailyLight, moles);
    match &finding.fact {
        Fact::Lasts { left_l } => finding_lasts(&volume(left_l)),
        Fact::RunsOut { day, short_l } => FindingRunsOut {
            day: &day.to_string(),
            short: &volume(short_l),
        }
        .text(),
        Fact::NotReached { head_g, days } => FindingNotReached {
            head: &of(Dimension::Mass, head_g),
            days: &days.to_string(),
        }
        .text(),
        Fact::PerPlant {
            volume_l,
            low_l,
            high_l,
        } => {
            let usual = FindingPerPlant {
                volume: &volume(volume_l),
                low: &volume(low_l),
                high: &volume(high_l),
            };
            let more = (volume_l > high_l).then(|| finding_per_plant_more().to_owned());
            sentences(&[Some(usual.text()), more])
        }
        Fact::Immersion {
            immersion_cm,
            low_cm,
            high_cm,
        } => FindingImmersion {
            immersion: &length(immersion_cm),
            low: &length(low_cm),
            high: &length(high_cm),
        }
        .text(),
        Fact::PotsHangAbove { by_cm } => finding_pots_hang_above(&length(by_cm)),
        Fact::Overflows => finding_overflows().to_owned(),
        Fact::Gap {
            gap_cm,
            low_cm,
            high_cm,
        } => FindingGap {
            gap: &length(gap_cm),
            low: &length(low_cm),
            high: &length(high_cm),
        }
        .text(),
        Fact::BoardsSink => finding_boards_sink().to_owned(),
        Fact::RestAtPlanting {
            floats_from_depth_cm,
        } => finding_rest_at_planting(&length(floats_from_depth_cm)),
        Fact::Floats { clearance_cm } => finding_floats(&length(clearance_cm)),
        Fact::NeverRest => finding_never_rest().to_owned(),
        Fact::LittleLeft { depth_cm, low_cm } => FindingLittleLeft {
            depth: &length(depth_cm),
            low: &length(low_cm),
        }
        .text(),
        Fact::NoPipeFits => finding_no_pipe_fits().to_owned(),
        Fact::Short {
            nutrient: which,
            supply_g,
            need_g,
            day,
        } => {
            let (nutrient, supply, need) =
                (nutrient(*which), &on_scale(*supply_g), &on_scale(*need_g));
            let short = match day {
                None => FindingShort {
                    need,
                    nutrient,
                    supply,
                }
                .text(),
                Some(day) => FindingShortFromDay {
                    nutrient,
                    day: &day.to_string(),
                    supply,
                    need,
                }
                .text(),
            };
            let more = match which {
                MajorNutrient::Calcium => finding_short_calcium(),
                _ => finding_short_more(),
            };
            sentences(&[Some(short), Some(more.to_owned())])
        }
        Fact::NutrientsLast => finding_nutrients_last().to_owned(),
        Fact::StrongAtEnd {
            ec_ms_per_cm,
            limit_ms_per_cm,
            start_ms_per_cm,
        } => {
            let strong = FindingStrongAtEnd {
                ec: &ec(ec_ms_per_cm),
                limit: &ec(limit_ms_per_cm),
            };
            let weaker = match start_ms_per_cm {
                Some(start) => finding_strong_start(&ec(start)),
                None => finding_strong_weaker().to_owned(),
            };
            sentences(&[Some(strong.text()), Some(weaker)])
        }
        Fact::Urea { share_pct } => finding_urea(&share(share_pct)),
        Fact::Heavy { mass_kg, limit_kg } => FindingHeavy {
            mass: &of(Dimension::Weight, mass_kg),
            limit: &of(Dimension::Weight, limit_kg),
        }
        .text(),
        Fact::FloorLoad {
            load_kg_per_m2,
            limit_kg_per_m2,
        } => FindingFloorLoad {
            load: &of(Dimension::FloorLoad, load_kg_per_m2),
            limit: &of(Dimension::FloorLoad, limit_kg_per_m2),
        }
        .text(),
        Fact::OpenWater => finding_open_water(units.key()),
        Fact::Salts => finding_salts().to_owned(),
        Fact::Electricity => finding_electricity().to_owned(),
        Fact::StocksApart {
            saturation,
            clear_when_thinned_times,
        } => sentences(&[
            Some(finding_stocks_apart(&minerals(saturation))),
            clear_when_thinned_times.map(|times| finding_stocks_thinned(&times.ceil().to_string())),
            Some(finding_stocks_in_turn().to_owned()),
        ]),
        Fact::Acid => finding_acid().to_owned(),
        Fact::StockClear {
            stock,
            saturation,
            dissolving_pct,
            strongest_pct,
            ..
        } => {
            let (stock, share) = (&material(stock), &dissolving_pct.round().to_string());
            if good {
                return capital(&FindingStockClear { share, stock }.text());
            }
            let cloudy = if *dissolving_pct > 100.0 {
                FindingStockOverFull { share, stock }.text()
            } else {
                FindingStockFallsOut {
                    stock,
                    minerals: &minerals(saturation),
                }
                .text()
            };
            let most = strongest_pct.map_or_else(
                || finding_stock_other_salts().to_owned(),
                |most| finding_stock_weaker(&most.floor().to_string()),
            );
            sentences(&[Some(capital(&cloudy)), Some(most)])
        }
        Fact::FittingStrength {
            low_ms_per_cm,
            high_ms_per_cm,
        } => {
            let (low, high) = (&ec(low_ms_per_cm), &ec(high_ms_per_cm));
            if good {
                FindingFittingStrength { high, low }.text()
            } else {
                let fewer = if finding.mends.is_empty() {
                    "no"
                } else {
                    "yes"
                };
                FindingNoFittingStrength { fewer, high, low }.text()
            }
        }
        Fact::TargetMissed {
            nutrient,
            form,
            target_mg_per_l,
            reached_mg_per_l,
        } => FindingTargetMissed {
            nutrient,
            form: form.unwrap_or_default(),
            reached: &concentration(reached_mg_per_l),
            target: &concentration(target_mg_per_l),
        }
        .text(),
        Fact::LabelCharges {
            cations_mmol_per_g,
            anions_mmol_per_g,
        } => FindingLabelCharges {
            anions: &charge(*anions_mmol_per_g),
            cations: &charge(*cations_mmol_per_g),
        }
        .text(),
        Fact::Ph { ph, low, high } => {
            let lower = (ph > high).then(|| finding_ph_lower().to_owned());
            sentences(&[Some(ph_sentences(*ph, *low, *high)), lower])
        }
        Fact::PhDrift {
            from,
            to,
            ammonium_share_pct,
            steady_ammonium_share_pct,
        } => sentences(&[
            Some(
                FindingPhDrift {
                    from: &fine(*from),
                    to: &fine(*to),
                }
                .text(),
            ),
            steady_ammonium_share_pct.as_ref().map(|steady| {
                FindingPhSteady {
                    steady: &share(steady),
                    now: &share(ammonium_share_pct),
                }
                .text()
            }),
            Some(finding_ph_measure().to_owned()),
        ]),
        Fact::NoAcidNeeded { ph } => finding_no_acid_needed(&fine(*ph)),
        Fact::FallsOut { saturation } => capital(&finding_falls_out(&minerals(saturation))),
        Fact::WaterAnalysis {
            charge_error_pct,
            ec_ratio,
        } => {
            let agrees = if good {
                finding_analysis_agrees()
            } else {
                finding_analysis_disagrees()
            };
            sentences(&[
                Some(agrees.to_owned()),
                charge_error_pct.map(|error| finding_analysis_charge(&share(&error.abs()))),
                ec_ratio.map(|ratio| finding_analysis_ec(&share(&(ratio * 100.0)))),
                (!good).then(|| finding_analysis_look().to_owned()),
            ])
        }
        Fact::Water { item } => {
            let allowed = FindingWater {
                item: water_item(item.item),
                amount: &water_amount(item.item, item.value),
                limit: &water_amount(item.item, item.limit),
            };
            let grave = if item.severe {
                finding_water_severe()
            } else {
                finding_water_moderate()
            };
            sentences(&[Some(allowed.text()), Some(grave.to_owned())])
        }
        Fact::DiluteWater { share_pct } => finding_dilute_water(&share(share_pct)),
        Fact::SaltYield { yield_pct } => finding_salt_yield(&share(yield_pct)),
        Fact::GrowOn { next } => {
            let refill = FindingGrowOn {
                crop: &next.crop.to_string(),
                refill: &volume(&next.refill_l),
                add_back: &share(&next.add_back_pct),
                ec: &ec(&next.ec_ms_per_cm),
                sodium: &concentration(&next.sodium_mg_per_l),
            };
            let drain = (!good).then(|| finding_grow_on_drain().to_owned());
            sentences(&[Some(refill.text()), drain])
        }
        Fact::Warm { mean_c, limit_c } => FindingWarm {
            mean: &warmth(mean_c),
            limit: &warmth(limit_c),
        }
        .text(),
        Fact::RootsReach {
            day,
            contact_lost_day,
        } => match (day, contact_lost_day) {
            (Some(day), Some(lost)) => FindingRootsFollow {
                day: &day.to_string(),
                lost: &lost.to_string(),
            }
            .text(),
            (Some(day), None) => finding_roots_reach(&day.to_string()),
            (None, _) => finding_roots_stand().to_owned(),
        },
        Fact::ContactLost {
            day,
            short_cm,
            mends,
        } => {
            let lost = FindingContactLost {
                day: &day.to_string(),
                short: &length(short_cm),
            };
            sentences(&[Some(lost.text()), Some(mends_text(mends, units))])
        }
        Fact::RootsHang {
            day,
            short_cm,
            mends,
        } => {
            let hang = FindingRootsHang {
                day: &day.to_string(),
                short: &length(short_cm),
            };
            sentences(&[Some(hang.text()), Some(mends_text(mends, units))])
        }
        Fact::WarmSolution {
            solution_c,
            limit_c,
            oxygen_mg_per_l,
        } => FindingWarmSolution {
            solution: &warmth(solution_c),
            oxygen: &concentration(oxygen_mg_per_l),
            limit: &warmth(limit_c),
        }
        .text(),
        Fact::Mosquitoes {
            mean_c,
            culex_days,
            aedes_days,
            season_days,
        } => FindingMosquitoes {
            mean: &warmth(mean_c),
            least: &of(Dimension::Days, &culex_days.min(*aedes_days)),
            most: &of(Dimension::Days, &culex_days.max(*aedes_days)),
            season: &of(Dimension::Days, &f64::from(*season_days)),
        }
        .text(),
        Fact::Spoons {
            least_g,
            most_g,
            error_pct,
        } => FindingSpoons {
            error: &show(Dimension::Percent, *error_pct, units),
            least: &on_scale(*least_g),
            most: &on_scale(*most_g),
        }
        .text(),
        Fact::AlgaeInClearWall => finding_algae_in_clear_wall().to_owned(),
        Fact::AlgaeAtEdges { .. } => finding_algae_at_edges().to_owned(),
        Fact::MiddayWilt {
            max_c,
            deficit_kpa,
            limit_kpa,
        } => FindingMiddayWilt {
            max: &warmth(max_c),
            deficit: &fine(*deficit_kpa),
            limit: &fine(*limit_kpa),
        }
        .text(),
        Fact::TipBurn {
            light_mol,
            limit_mol,
            mean_c,
            humidity_pct,
        } => FindingTipBurn {
            light: &light(light_mol),
            limit: &light(limit_mol),
            mean: &warmth(mean_c),
            humidity: &share(humidity_pct),
        }
        .text(),
        Fact::RainDilutes => finding_rain_dilutes().to_owned(),
        Fact::DrainInterval { crops, days } => FindingDrainInterval {
            crops: &crops.to_string(),
            days: &days.to_string(),
        }
        .text(),
        Fact::FoodContainer => finding_food_container().to_owned(),
        Fact::TankLiner => finding_tank_liner().to_owned(),
        Fact::CleanHarvest => finding_clean_harvest().to_owned(),
        Fact::SpentSolution { volume_l } => finding_spent_solution(&volume(volume_l)),
        Fact::Dim {
            light_mol,
            limit_mol,
        } => FindingDim {
            light: &light(light_mol),
            limit: &light(limit_mol),
        }
        .text(),
        Fact::BrighterThanClearSky => finding_brighter_than_clear_sky().to_owned(),
        Fact::Structure(fact) => super::structure::fact(*fact, good, units),
        Fact::NotValidated => finding_not_validated().to_owned(),
        Fact::Unusual {
            field, low, high, ..
        } => {
            format!(
                "{}: {}",
                label(*field),
                unusual_text(*field, *low, *high, units)
            )
        }
    }
}
