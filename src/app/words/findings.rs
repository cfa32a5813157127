//! Checks, cautions and stops as sentences: what, why, and what to do.

use super::fields::label;
use super::problems::unusual_text;
use super::results::{nutrient, show};
use crate::advice::{Fact, Finding, Weight};
use crate::plan::{Dimension, UnitSystem, grams};

/// How a finding is headed, for those who do not see its mark.
pub const fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Stop => "Stop",
        Weight::Caution => "Take care",
        Weight::Sound => "Good",
    }
}

/// A finding in words.
#[expect(
    clippy::too_many_lines,
    reason = "one sentence a fact; several functions would only scatter the wording"
)]
pub fn finding(finding: &Finding, units: UnitSystem) -> String {
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
        Fact::PerPlant { volume_l, low_l, high_l } => format!(
            "{} of solution for each plant; {} to {} before planting is usual.",
            volume(*volume_l),
            volume(*low_l),
            volume(*high_l)
        ),
        Fact::Immersion { immersion_cm, low_cm, high_cm } => format!(
            "The lowest {} of each pot stands in the solution at planting; {} to {} is usual.",
            length(*immersion_cm),
            length(*low_cm),
            length(*high_cm)
        ),
        Fact::PotsHangAbove { by_cm } => format!(
            "The pots hang {} above the solution at planting, so the medium stays dry. Fill higher or use deeper pots.",
            length(*by_cm)
        ),
        Fact::Overflows => {
            "The container overflows once pots or boards are in. Fill less.".to_owned()
        }
        Fact::Gap { gap_cm, low_cm, high_cm } => format!(
            "Moist air gap of {} at harvest; {} to {} is usual.",
            length(*gap_cm),
            length(*low_cm),
            length(*high_cm)
        ),
        Fact::BoardsSink => {
            "The boards sink under pots and plants. Use thicker boards or fewer plants.".to_owned()
        }
        Fact::RestAtPlanting { floats_from_depth_cm } => format!(
            "The boards lie on the pipes from the first day. They float from a fill of {} on.",
            length(*floats_from_depth_cm)
        ),
        Fact::Floats { clearance_cm } => format!(
            "The boards float at planting, {} clear of the pipes.",
            length(*clearance_cm)
        ),
        Fact::NeverRest => {
            "The boards still float at harvest, so no air gap opens and roots may lack air. Fill less, or use thicker pipes.".to_owned()
        }
        Fact::LittleLeft { depth_cm, low_cm } => format!(
            "Only {} of solution is left under the boards at harvest; keep at least {}. A thicker pipe holds more.",
            length(*depth_cm),
            length(*low_cm)
        ),
        Fact::NoPipeFits => {
            "No standard pipe gives a sound air gap here. See the table of pipes.".to_owned()
        }
        Fact::Short { nutrient: which, supply_g, need_g, day } => {
            let when = day.map_or_else(String::new, |day| format!(" from day {day} on"));
            format!(
                "Too little {} in the charge{when}: {} against {} that the crop takes. A stronger solution, another blend, or your water (not counted here) must bring the rest.",
                nutrient(*which),
                grams(*supply_g),
                grams(*need_g)
            )
        }
        Fact::NutrientsLast => {
            "Nitrogen, phosphorus, potassium, calcium and magnesium last to harvest.".to_owned()
        }
        Fact::StrongAtEnd { ec_ms_per_cm, limit_ms_per_cm } => format!(
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
        Fact::FloorLoad { load_kg_per_m2, limit_kg_per_m2 } => format!(
            "The solution loads what is under it with {}. Build on firm level ground. From about {}, on any bench, deck, balcony or roof, ask a competent person and follow local code first.",
            show(Dimension::FloorLoad, *load_kg_per_m2, units),
            show(Dimension::FloorLoad, *limit_kg_per_m2, units)
        ),
        Fact::OpenWater => {
            "Small children can drown in a few centimetres of water. Keep the tank covered and fenced off, and never leave children alone with it.".to_owned()
        }
        Fact::Salts => {
            "Keep fertilizer and solution out of reach of children and animals, closed and named. Follow the product's label. Wash hands after mixing.".to_owned()
        }
        Fact::Electricity => {
            "Lamps and cords near water: use gear made for wet places on a protected (residual-current) outlet, well above the tank, with a drip loop, and let a licensed person wire it.".to_owned()
        }
        Fact::StocksApart => {
            "Never pour stock A and stock B together undiluted: calcium and sulfate or phosphate fall out. Stir one into the full tank first, then the other.".to_owned()
        }
        Fact::Warm { mean_c, limit_c } => format!(
            "The season's mean of {} is warm for this crop; above {} bolting, bitter leaves and tip burn are common. Shade, or plant in a cooler season.",
            warmth(*mean_c),
            warmth(*limit_c)
        ),
        Fact::Dim { light_mol, limit_mol } => format!(
            "Light is low: {} a day; below about {} plants stretch and grow slowly.",
            show(Dimension::DailyLight, *light_mol, units),
            show(Dimension::DailyLight, *limit_mol, units)
        ),
        Fact::BrighterThanClearSky => {
            "The solar radiation is more than a clear sky gives at this latitude and date. Check it.".to_owned()
        }
        Fact::NotValidated => {
            "The growth model was made and tested for lettuce. For this crop dates and litres are a rough guide only.".to_owned()
        }
        Fact::Unusual { field, low, high, .. } => {
            format!("{}: {}", label(*field), unusual_text(*field, *low, *high, units))
        }
    }
}
