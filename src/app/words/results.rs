//! What stands beside the figures.
//!
//! Long, because all that is said beside figures is read, and one day translated, together.

use crate::advice::{EventKind, Outcome, PipeVerdict, Saturation, TargetReached};
use crate::plan::{Dimension, UnitSystem, figure, significant};
use crate::season::MajorNutrient;

use super::doses::doses_line;
use super::findings::fine;

/// A figure in the reader's units, as text.
pub fn show(dimension: Dimension, saved: f64, units: UnitSystem) -> String {
    figure(dimension, saved, units).to_string()
}

/// Heading.
pub const RESULT: &str = "What comes of it";
/// Headline.
pub const FILL: &str = "Fill to";
/// Headline.
pub const DISSOLVE: &str = "Dissolve";
/// Headline.
pub const HARVEST: &str = "Harvest";
/// Headline.
pub const AT_HARVEST: &str = "Left at harvest";
/// Headline where there is no harvest.
pub const AT_END: &str = "Left at the end";
/// Button.
pub const PRINT: &str = "Print the card";
/// Button of the bar at the foot of a phone.
pub const GLANCE: &str = "Result";
/// Heading of the list of days.
pub const SEASON: &str = "The season";
/// Heading of the list of findings.
pub const FINDINGS: &str = "Checks";
/// Heading of the checks that passed.
pub fn passed(count: usize) -> String {
    match count {
        1 => "1 check passed".to_owned(),
        count => format!("{count} checks passed"),
    }
}
/// What good practice is folded under.
pub const GOOD_PRACTICE: &str = "Good practice for this plan";
/// Heading of the pipe table.
pub const PIPES: &str = "Pipes compared";
/// Heading of the nutrient table.
pub const NUTRIENTS: &str = "Does one charge feed the crop?";
/// Heading of the table of elements.
pub const ELEMENTS: &str = "What is in the solution";

/// Under the fill figure.
pub fn below_rim(cm: f64, units: UnitSystem) -> String {
    format!("{} below the rim", show(Dimension::Length, cm, units))
}

/// Under the fill figure.
pub fn fill_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    let volume = |litres| show(Dimension::Volume, litres, units);
    let each = if fill.plants > 1 {
        format!(
            ", {} for each of {} plants",
            volume(fill.per_plant_l),
            fill.plants
        )
    } else {
        String::new()
    };
    let all = if fill.containers > 1 {
        format!(
            " {} containers take {}.",
            fill.containers,
            volume(fill.total_volume_l)
        )
    } else {
        String::new()
    };
    format!(
        "{} deep, before the {} go in. {}{each}, weighing {}.{all}",
        show(Dimension::Length, fill.depth_cm, units),
        if outcome.boards.is_some() {
            "boards"
        } else {
            "pots"
        },
        volume(fill.volume_l),
        show(Dimension::Weight, fill.mass_kg, units),
    )
}

/// The harvest headline.
pub fn harvest_head(outcome: &Outcome) -> String {
    match (outcome.season.harvest_day, &outcome.calendar.harvest) {
        (Some(_), Some(written)) => date(written),
        _ => "Not reached".to_owned(),
    }
}

/// Under the harvest headline.
pub fn harvest_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    let head = show(Dimension::Mass, season.head_g, units);
    match season.harvest_day {
        Some(day) => format!("{day} days after planting, heads of about {head}."),
        None => format!(
            "Followed for {} days; heads reach about {head}.",
            season.days_followed
        ),
    }
}

/// Under the figure of what is left.
pub fn left_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    format!(
        "The crop draws {} a plant, {} of fresh heads. Moist air gap {}.",
        show(Dimension::Volume, season.water_per_plant_l, units),
        show(Dimension::WaterUse, season.water_per_kg_l, units),
        show(Dimension::Length, season.gap_at_end_cm, units)
    )
}

/// The one polite sentence for those who cannot see the figures change.
pub fn result_sentence(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "Fill {}, {}. Dissolve {}. Harvest: {}. Left: {}.",
        show(Dimension::Volume, outcome.fill.volume_l, units),
        below_rim(outcome.fill.below_rim_cm, units),
        doses_line(outcome, units),
        harvest_head(outcome),
        show(Dimension::Volume, outcome.season.left_l, units)
    )
}

/// What happens on a day.
pub const fn event(kind: EventKind) -> &'static str {
    match kind {
        EventKind::Planted => "Seedlings go onto the solution",
        EventKind::PotFootLeaves => "The level leaves the foot of the pots; water roots carry on",
        EventKind::BoardsRest => "The boards come to rest on the pipes; the air gap opens",
        EventKind::TargetReached => "Heads reach the mass to harvest at",
        EventKind::UsedUp => "The solution is used up",
    }
}

/// A day and its date.
pub fn day_and_date(day: u32, written: &str) -> String {
    format!("Day {day} · {}", date(written))
}

/// A date, from year-month-day, as people write it.
pub fn date(written: &str) -> String {
    const MONTHS: [&str; 12] = [
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
    ];
    let mut parts = written.split('-');
    let (Some(year), Some(month), Some(day)) = (parts.next(), parts.next(), parts.next()) else {
        return written.to_owned();
    };
    let name = month
        .parse::<usize>()
        .ok()
        .and_then(|month| MONTHS.get(month.checked_sub(1)?));
    match name {
        Some(name) => format!("{}\u{a0}{name} {year}", day.trim_start_matches('0')),
        None => written.to_owned(),
    }
}

/// Heads of the pipe table.
pub const PIPE_HEADS: [&str; 6] = ["Pipe", "Outside", "Fill", "Rests", "Air gap", "Verdict"];
/// Beside the chosen pipe.
pub const CHOSEN: &str = "yours";

/// A day, or that there is none.
pub fn rest_day(day: Option<u32>) -> String {
    day.map_or_else(|| "never".to_owned(), |day| format!("day {day}"))
}

/// Whether a pipe does.
pub const fn verdict(verdict: PipeVerdict) -> &'static str {
    match verdict {
        PipeVerdict::Sound => "sound",
        PipeVerdict::BoardsSink => "boards sink",
        PipeVerdict::TankTooLow => "tank too low for it",
        PipeVerdict::RestsAtPlanting => "boards do not float at planting",
        PipeVerdict::NeverRests => "boards never rest: no air gap",
        PipeVerdict::RunsOut => "solution ends before harvest",
        PipeVerdict::GapTooSmall => "air gap too small",
        PipeVerdict::GapTooLarge => "air gap too large for the water roots",
        PipeVerdict::TooLittleLeft => "too little solution left under the roots",
    }
}

/// Under the pipe table.
pub fn pipes_note(any_sound: bool) -> &'static str {
    if any_sound {
        "Each size is filled so that its boards float 1 cm (3/8 in) clear. The air gap comes from the water that the crop draws, so it hardly changes with the pipe; a thicker pipe leaves more solution. 3 to 9 cm (1 1/8 to 3 1/2 in) of moist air at harvest is usual."
    } else {
        "No size gives a sound air gap with this crop and climate. The gap comes from the water that the crop draws: fewer or more plants, a longer or shorter crop, or another tank changes it; the pipe alone does not."
    }
}

/// Heads of the nutrient table.
pub const NUTRIENT_HEADS: [&str; 4] = ["Nutrient", "In the charge", "Crop takes", ""];
/// A nutrient lasts.
pub const ENOUGH: &str = "enough";
/// A nutrient does not.
pub fn short_from(day: Option<u32>) -> String {
    day.map_or_else(|| "short".to_owned(), |day| format!("short from day {day}"))
}

/// Name of a nutrient.
pub const fn nutrient(nutrient: MajorNutrient) -> &'static str {
    match nutrient {
        MajorNutrient::Nitrogen => "nitrogen",
        MajorNutrient::Phosphorus => "phosphorus",
        MajorNutrient::Potassium => "potassium",
        MajorNutrient::Calcium => "calcium",
        MajorNutrient::Magnesium => "magnesium",
    }
}

/// Heads of the table of elements.
pub const ELEMENT_HEADS: [&str; 3] = ["Element", "At planting", "At the end"];
/// Heading of the table of species.
pub const SPECIES: &str = "Ions and what they pair to";
/// Heads of the table of species.
pub const SPECIES_HEADS: [&str; 2] = ["Species", "mmol per kg of water"];
/// Heading of the table of doses.
pub const DOSES: &str = "Every dose, for one container";
/// Heads of the table of doses.
pub const DOSE_HEADS: [&str; 2] = ["What", "How much"];
/// Heading of the table of a recipe's targets.
pub const TARGETS: &str = "Recipe: asked and reached";
/// Heads of the table of targets.
pub const TARGET_HEADS: [&str; 4] = ["Element", "Asked", "Reached", "Miss"];

/// A target by its element and form.
pub fn target(target: &TargetReached) -> String {
    match target.form {
        Some(form) => format!("{} as {form}", target.nutrient),
        None => target.nutrient.to_owned(),
    }
}

/// By how much a target is missed.
pub fn miss(target: &TargetReached) -> String {
    target.miss_pct.map_or_else(
        || "–".to_owned(),
        |pct| show(Dimension::Percent, pct, UnitSystem::Metric),
    )
}
/// Heading of the table of stocks.
pub const STOCKS: &str = "Stock solutions";
/// Heads of the table of stocks.
pub const STOCK_HEADS: [&str; 4] = [
    "Stock",
    "In a litre",
    "One batch serves",
    "Saturation index",
];

/// Heading of the table of both stocks poured together.
pub const MIXTURES: &str = "Both stocks undiluted together";
/// Heads of that table.
pub const MIXTURE_HEADS: [&str; 3] = ["Stock A", "Stock B", "Saturation index undiluted"];

/// A whole share.
pub fn per_cent(share: f64) -> String {
    format!("{}%", share.round())
}

/// What one batch of a stock serves.
pub fn serves(containers: f64, heads: f64) -> String {
    format!(
        "{} containers, {} heads",
        significant(containers, 2),
        significant(heads, 2)
    )
}

/// Saturation indices in one line.
pub fn saturation_line(saturation: &Saturation) -> String {
    let one = |name: &str, index: Option<f64>| {
        index.map(|index| {
            format!(
                "{name} {}",
                show(Dimension::Fine, index, UnitSystem::Metric)
            )
        })
    };
    let lines: Vec<String> = [
        one("gypsum", saturation.gypsum),
        one("calcium phosphate", saturation.brushite),
        one("lime", saturation.calcite),
    ]
    .into_iter()
    .flatten()
    .collect();
    if lines.is_empty() {
        "–".to_owned()
    } else {
        lines.join(", ")
    }
}

/// The solution's readings in one line.
pub fn readings(outcome: &Outcome, units: UnitSystem) -> String {
    let solution = &outcome.solution;
    format!(
        "EC {} at 25 °C ({} at its own {}), pH {}; saturation: {}.",
        show(Dimension::Conductivity, solution.ec_ms_per_cm, units),
        show(
            Dimension::Conductivity,
            solution.ec_at_temperature_ms_per_cm,
            units
        ),
        show(Dimension::Temperature, solution.temperature_c, units),
        fine(solution.ph),
        saturation_line(&solution.saturation)
    )
}

/// The bar at the foot of a phone.
pub fn glance(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "{} · {} · {}",
        show(Dimension::Volume, outcome.fill.volume_l, units),
        doses_line(outcome, units),
        harvest_head(outcome)
    )
}
