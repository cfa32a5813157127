//! Checks, cautions and stops as sentences: what, why, and what to do.
//!
//! Long, because one match has a sentence for each fact; one without does not compile.

use super::doses::{capital, material};
use super::fields::label;
use super::figures::show;
use super::problems::unusual_text;
use super::results::nutrient;
use super::say::*;
use crate::advice::Saturation;
use crate::advice::{Fact, Finding, Mend, MendWay, Weight};
use crate::plan::{Dimension, UnitSystem, figure, grams, significant};
use crate::science::raw_water::Item;

/// How a finding is headed, for those who do not see its mark.
pub fn weight(weight: Weight) -> &'static str {
    match weight {
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
    let volume = |litres| show(Dimension::Volume, litres, units);
    let length = |cm| show(Dimension::Length, cm, units);
    let warmth = |celsius| show(Dimension::Temperature, celsius, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    match &finding.fact {
        Fact::Lasts { left_l } => format!(
            "One charge lasts to harvest; about {} is left in each container.",
            volume(*left_l)
        ),
        Fact::RunsOut { day, short_l } => format!(
            "The solution is used up on day {day}, before harvest: about {} short. Plant fewer heads, take a larger container, give shade, or harvest smaller heads. Do not top up later: air roots drown.",
            volume(*short_l)
        ),
        Fact::NotReached { head_g, days } => format!(
            "Heads reach only about {} in {days} days. More light or warmth, older seedlings, or a smaller head would get there.",
            show(Dimension::Mass, *head_g, units)
        ),
        Fact::PerPlant {
            volume_l,
            low_l,
            high_l,
        } => format!(
            "{} of solution for each plant; {} to {} before planting is usual.",
            volume(*volume_l),
            volume(*low_l),
            volume(*high_l)
        ),
        Fact::Immersion {
            immersion_cm,
            low_cm,
            high_cm,
        } => format!(
            "The lowest {} of each pot stands in the solution at planting; {} to {} is usual.",
            length(*immersion_cm),
            length(*low_cm),
            length(*high_cm)
        ),
        Fact::PotsHangAbove { by_cm } => format!(
            "The pots hang {} above the solution at planting, so the medium stays dry. Fill higher or use deeper pots.",
            length(*by_cm)
        ),
        Fact::Overflows => finding_overflows().to_owned(),
        Fact::Gap {
            gap_cm,
            low_cm,
            high_cm,
        } => format!(
            "Moist air gap of {} at harvest; {} to {} is usual.",
            length(*gap_cm),
            length(*low_cm),
            length(*high_cm)
        ),
        Fact::BoardsSink => finding_boards_sink().to_owned(),
        Fact::RestAtPlanting {
            floats_from_depth_cm,
        } => format!(
            "The boards lie on the pipes from the first day. They float from a fill of {} on.",
            length(*floats_from_depth_cm)
        ),
        Fact::Floats { clearance_cm } => format!(
            "The boards float at planting, {} clear of the pipes.",
            length(*clearance_cm)
        ),
        Fact::NeverRest => finding_never_rest().to_owned(),
        Fact::LittleLeft { depth_cm, low_cm } => format!(
            "Only {} of solution is left under the boards at harvest; keep at least {}. A thicker pipe holds more.",
            length(*depth_cm),
            length(*low_cm)
        ),
        Fact::NoPipeFits => finding_no_pipe_fits().to_owned(),
        Fact::Short {
            nutrient: which,
            supply_g,
            need_g,
            day,
        } => {
            let when = day.map_or_else(String::new, |day| format!(" from day {day} on"));
            format!(
                "Too little {} in the charge{when}: {} against {} that the crop takes. A stronger solution, another blend or another water must bring the rest.",
                nutrient(*which),
                grams(*supply_g),
                grams(*need_g)
            )
        }
        Fact::NutrientsLast => finding_nutrients_last().to_owned(),
        Fact::StrongAtEnd {
            ec_ms_per_cm,
            limit_ms_per_cm,
        } => format!(
            "The solution gets strong: about {} at the end. Above {} lettuce begins to suffer. Start weaker, or give more solution to each plant.",
            show(Dimension::Conductivity, *ec_ms_per_cm, units),
            show(Dimension::Conductivity, *limit_ms_per_cm, units)
        ),
        Fact::Urea { share_pct } => format!(
            "{} of the nitrogen is urea. It feeds slowly in still solution and a meter does not see it. Prefer a blend with nitrate.",
            show(Dimension::Percent, *share_pct, units)
        ),
        Fact::Heavy { mass_kg, limit_kg } => format!(
            "Full, the solution alone weighs {}. More than about {} is no load for one person: fill it where it will stand.",
            weight(*mass_kg),
            weight(*limit_kg)
        ),
        Fact::FloorLoad {
            load_kg_per_m2,
            limit_kg_per_m2,
        } => format!(
            "The solution loads what is under it with {}. Build on firm level ground. From about {}, on any bench, deck, balcony or roof, ask a competent person and follow local code first.",
            show(Dimension::FloorLoad, *load_kg_per_m2, units),
            show(Dimension::FloorLoad, *limit_kg_per_m2, units)
        ),
        Fact::OpenWater => finding_open_water().to_owned(),
        Fact::Salts => finding_salts().to_owned(),
        Fact::Electricity => finding_electricity().to_owned(),
        Fact::StocksApart {
            saturation,
            clear_when_thinned_times,
        } => {
            let thin = clear_when_thinned_times.map_or_else(String::new, |times| {
                format!(" They stay clear only once thinned {} times.", times.ceil())
            });
            format!(
                "Never pour stock A and stock B together undiluted: {} would fall out (saturation index up to {}).{thin} Stir one into the full tank first, then the other.",
                minerals(saturation),
                index(saturation.worst())
            )
        }
        Fact::Acid => finding_acid().to_owned(),
        Fact::StockClear {
            stock,
            saturation,
            dissolving_pct,
            strongest_pct,
            ..
        } => {
            let stock = capital(&material(stock));
            if good {
                return format!(
                    "{stock} stays clear at the coldest of the store; its salts take up {}% of what dissolves there.",
                    dissolving_pct.round()
                );
            }
            let why = if *dissolving_pct > 100.0 {
                format!(
                    "its salts are {}% of what dissolves at the coldest of the store",
                    dissolving_pct.round()
                )
            } else {
                format!("{} falls out", minerals(saturation))
            };
            let most = strongest_pct.map_or_else(
                || "Weaker does not help; use other salts.".to_owned(),
                |most| {
                    format!(
                        "Make it at most {}% of this strength, and pour more of it, or keep it warmer.",
                        most.floor()
                    )
                },
            );
            format!("{stock} does not stay clear: {why}. {most}")
        }
        Fact::FittingStrength {
            low_ms_per_cm,
            high_ms_per_cm,
        } => {
            let ec = |value: f64| show(Dimension::Conductivity, value, units);
            if good {
                format!(
                    "In this climate a charge of {} to {} ends neither starved nor salty.",
                    ec(*low_ms_per_cm),
                    ec(*high_ms_per_cm)
                )
            } else {
                format!(
                    "No single strength fits: below {} a nutrient runs short, above {} the end gets salty. Give each plant more solution.",
                    ec(*low_ms_per_cm),
                    ec(*high_ms_per_cm)
                )
            }
        }
        Fact::TargetMissed {
            nutrient,
            form,
            target_mg_per_l,
            reached_mg_per_l,
        } => format!(
            "The salts on the shelf miss {nutrient}{}: {} where the recipe asks {}.",
            form.map_or_else(String::new, |form| format!(" as {form}")),
            show(Dimension::Concentration, *reached_mg_per_l, units),
            show(Dimension::Concentration, *target_mg_per_l, units)
        ),
        Fact::LabelCharges {
            cations_mmol_per_g,
            anions_mmol_per_g,
        } => format!(
            "The label of the blend does not balance: nitrate, phosphate and sulfate make {} of charge in a gram, potassium, ammonium, calcium and magnesium only {}. Check nitrate and phosphate against the bag.",
            charge(*anions_mmol_per_g),
            charge(*cations_mmol_per_g)
        ),
        Fact::Ph { ph, low, high } => {
            let outside = if *ph < *low {
                " Pure water does not buffer: part tap water brings it up, and it rises as the crop feeds."
            } else if *ph > *high {
                " Rain water or a little acid brings it down; see the fertilizer step."
            } else {
                ""
            };
            format!(
                "pH {} after mixing; {} to {} suits leafy greens.{outside}",
                fine(*ph),
                fine(*low),
                fine(*high)
            )
        }
        Fact::PhDrift {
            from,
            to,
            ammonium_share_pct,
            steady_ammonium_share_pct,
        } => {
            let share = |pct: f64| show(Dimension::Percent, pct, units);
            let steady = steady_ammonium_share_pct.map_or_else(String::new, |steady| {
                format!(
                    " With {} of the nitrogen as ammonium instead of {} it would hold.",
                    share(steady),
                    share(*ammonium_share_pct)
                )
            });
            format!(
                "As the crop feeds, the pH drifts from {} to about {} (an outer bound: roots and air damp it).{steady} Measure it now and then.",
                fine(*from),
                fine(*to)
            )
        }
        Fact::NoAcidNeeded { ph } => format!("No acid is needed: the pH is {} already.", fine(*ph)),
        Fact::FallsOut { saturation } => format!(
            "{} can fall out in the tank (saturation index {}). Use rain water, a lower pH or a weaker solution.",
            capital(&minerals(saturation)),
            index(saturation.worst())
        ),
        Fact::WaterAnalysis {
            charge_error_pct,
            ec_ratio,
        } => {
            let charge = charge_error_pct.map_or_else(String::new, |error| {
                format!(
                    " Cations and anions differ by {}.",
                    show(Dimension::Percent, error.abs(), units)
                )
            });
            let reading = ec_ratio.map_or_else(String::new, |ratio| {
                format!(
                    " The EC measured is {} of that of its ions.",
                    show(Dimension::Percent, ratio * 100.0, units)
                )
            });
            if good {
                format!("The water analysis agrees with itself.{charge}{reading}")
            } else {
                format!(
                    "The water analysis does not agree with itself.{charge}{reading} Look for a missing or mistyped line."
                )
            }
        }
        Fact::Water { item } => format!(
            "{}: {} in your water; up to {} is without restriction. {}",
            water_item(item.item),
            water_amount(item.item, item.value),
            water_amount(item.item, item.limit),
            if item.severe {
                "Severe: do not use it unmixed."
            } else {
                "Slight to moderate."
            }
        ),
        Fact::DiluteWater { share_pct } => format!(
            "Mixed with rain, {} of your water and the rest rain meets every limit.",
            show(Dimension::Percent, *share_pct, units)
        ),
        Fact::SaltYield { yield_pct } => format!(
            "Sodium chloride in the solution at the end leaves about {} of the full yield.",
            show(Dimension::Percent, *yield_pct, units)
        ),
        Fact::GrowOn { next } => {
            let what = format!(
                "Crop {}: refill {} of raw water and {} of the first charge (EC then {}, sodium {})",
                next.crop,
                volume(next.refill_l),
                show(Dimension::Percent, next.add_back_pct, units),
                show(Dimension::Conductivity, next.ec_ms_per_cm, units),
                show(Dimension::Concentration, next.sodium_mg_per_l, units)
            );
            if good {
                format!("{what}.")
            } else {
                format!(
                    "{what}. Better drain and start anew: too salty. Spread what is spent on soil that can use it, never into a stream or storm drain."
                )
            }
        }
        Fact::Warm { mean_c, limit_c } => format!(
            "The season's mean of {} is warm for this crop; above {} bolting, bitter leaves and tip burn are common. Shade, or plant in a cooler season.",
            warmth(*mean_c),
            warmth(*limit_c)
        ),
        Fact::RootsReach {
            day,
            contact_lost_day,
        } => {
            let reach = day.map_or_else(
                || "The pots stand in the solution all season.".to_owned(),
                |day| format!("The roots come out of the pots into the solution by day {day}"),
            );
            match (day, contact_lost_day) {
                (Some(_), Some(lost)) => format!(
                    "{reach}, before the pots hang above it on day {lost}, and follow it down."
                ),
                (Some(_), None) => format!("{reach}, and the pots stand in it to the end."),
                (None, _) => reach,
            }
        }
        Fact::ContactLost {
            day,
            short_cm,
            mends,
        } => format!(
            "On day {day} the pots hang above the solution and the roots have not reached it: {} short. The medium dries and the plants with it. {}",
            length(*short_cm),
            mends_text(mends, units)
        ),
        Fact::RootsHang {
            day,
            short_cm,
            mends,
        } => format!(
            "On day {day} the solution falls away from the roots: they hang {} above it. {}",
            length(*short_cm),
            mends_text(mends, units)
        ),
        Fact::WarmSolution {
            solution_c,
            limit_c,
            oxygen_mg_per_l,
        } => format!(
            "The solution is warm, about {}, and holds at most {} of oxygen. Above about {} roots rot more easily. Shade the container, make it white or wrap it, and keep the moist air gap open.",
            warmth(*solution_c),
            show(Dimension::Concentration, *oxygen_mg_per_l, units),
            warmth(*limit_c)
        ),
        Fact::Mosquitoes {
            mean_c,
            culex_days,
            aedes_days,
            season_days,
        } => format!(
            "Mosquitoes can grow up in the open solution: at {} from egg to adult in about {} to {}, and it stands for {}. Close every gap, seal the cover, put fine screen over openings; small fish help in large tanks; or use a biological larvicide labelled for this use. Follow its label and local law.",
            warmth(*mean_c),
            show(Dimension::Days, culex_days.min(*aedes_days), units),
            show(Dimension::Days, culex_days.max(*aedes_days), units),
            show(Dimension::Days, f64::from(*season_days), units)
        ),
        Fact::AlgaeInClearWall => finding_algae_in_clear_wall().to_owned(),
        Fact::AlgaeAtEdges { .. } => finding_algae_at_edges().to_owned(),
        Fact::MiddayWilt {
            max_c,
            deficit_kpa,
            limit_kpa,
        } => format!(
            "Expect wilting at midday: at {} the air is very dry (it lacks {} kPa of vapour; above {} leaves lose more than roots bring). Leaves that stand up again by evening are no harm; wilting in the morning means the roots are in trouble. Give shade at midday.",
            warmth(*max_c),
            fine(*deficit_kpa),
            fine(*limit_kpa)
        ),
        Fact::TipBurn {
            light_mol,
            limit_mol,
            mean_c,
            humidity_pct,
        } => format!(
            "Tip burn is likely: {} of light a day (from about {} on), warm at {} and moist at {}. Give shade, move the air over the leaves, harvest smaller heads.",
            show(Dimension::DailyLight, *light_mol, units),
            show(Dimension::DailyLight, *limit_mol, units),
            warmth(*mean_c),
            show(Dimension::Percent, *humidity_pct, units)
        ),
        Fact::RainDilutes => finding_rain_dilutes().to_owned(),
        Fact::DrainInterval { crops, days } => {
            let crops = if *crops == 1 {
                "each crop".to_owned()
            } else {
                format!("{crops} crops")
            };
            format!(
                "Drain and scrub the container after {crops}, about every {days} days. Let it dry before the next charge."
            )
        }
        Fact::FoodContainer => finding_food_container().to_owned(),
        Fact::TankLiner => finding_tank_liner().to_owned(),
        Fact::CleanHarvest => finding_clean_harvest().to_owned(),
        Fact::SpentSolution { volume_l } => format!(
            "About {} of spent solution is left in all. Pour it on soil whose plants can use it, a little at a time. Never into a stream, pond or storm drain. Follow local rules.",
            volume(*volume_l)
        ),
        Fact::Dim {
            light_mol,
            limit_mol,
        } => format!(
            "Light is low: {} a day; below about {} plants stretch and grow slowly.",
            show(Dimension::DailyLight, *light_mol, units),
            show(Dimension::DailyLight, *limit_mol, units)
        ),
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

/// What would mend the roots.
fn mends_text(mends: &[Mend], units: UnitSystem) -> String {
    if mends.is_empty() {
        return "No single change of fill, pot or pipe mends it: take another container, or fewer and smaller plants.".to_owned();
    }
    let ways: Vec<String> = mends.iter().map(|mend| way(mend, units)).collect();
    format!("Any of these mends it: {}.", ways.join("; "))
}

fn way(mend: &Mend, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    match mend.way {
        MendWay::FillDepth { to_cm, .. } => format!("fill to {}", length(to_cm)),
        MendWay::PotHeight { to_cm, .. } => {
            format!("use pots {} deep over the same fill", length(to_cm))
        }
        MendWay::Pipe {
            to_mm, fill_anew, ..
        } => {
            let anew = if fill_anew {
                " and have the fill worked out"
            } else {
                ""
            };
            format!("lay pipes of {}{anew}", length(to_mm / 10.0))
        }
    }
}

/// Button that makes a mend.
pub fn mend(mend: &Mend, units: UnitSystem) -> String {
    capital(&way(mend, units))
}

/// Minerals whose saturation index is above zero.
fn minerals(saturation: &Saturation) -> String {
    let names: Vec<&str> = [
        (saturation.gypsum, "gypsum"),
        (saturation.brushite, "calcium phosphate"),
        (saturation.calcite, "lime"),
    ]
    .into_iter()
    .filter(|(index, _)| index.is_some_and(|index| index > 0.0))
    .map(|(_, name)| name)
    .collect();
    names.join(" and ")
}

/// A saturation index with its sign.
fn index(value: f64) -> String {
    let text = figure(Dimension::Fine, value, UnitSystem::Metric).to_string();
    if value > 0.0 {
        format!("+{text}")
    } else {
        text
    }
}

/// A pH to one place.
pub fn fine(ph: f64) -> String {
    significant(ph, if ph < 10.0 { 2 } else { 3 })
}

/// Name of an item of raw water.
fn water_item(item: Item) -> &'static str {
    match item {
        Item::Salinity => water_item_salinity(),
        Item::SodiumAdsorption => water_item_sodium_adsorption(),
        Item::ChlorideToxicity => water_item_chloride_toxicity(),
        Item::Boron => water_item_boron(),
        Item::NitrateNitrogen => water_item_nitrate_nitrogen(),
        Item::Bicarbonate => water_item_bicarbonate(),
        Item::Ph => water_item_ph(),
        Item::Sodium => water_item_sodium(),
        Item::Chloride => water_item_chloride(),
        Item::Sulfate => water_item_sulfate(),
        Item::Alkalinity => water_item_alkalinity(),
        Item::Calcium => water_item_calcium(),
        Item::Hardness => water_item_hardness(),
    }
}

fn water_amount(item: Item, value: f64) -> String {
    let unit = match item {
        Item::Salinity => water_amount_salinity(),
        Item::ChlorideToxicity | Item::Bicarbonate => water_amount_chloride_toxicity(),
        Item::SodiumAdsorption | Item::Ph => "",
        Item::Alkalinity | Item::Hardness => water_amount_alkalinity(),
        _ => "mg/L",
    };
    let text = significant(value, 2);
    if unit.is_empty() {
        text
    } else {
        format!("{text}\u{a0}{unit}")
    }
}

fn charge(mmol: f64) -> String {
    format!("{}\u{a0}mmol", significant(mmol, 3))
}
