//! The words of a trial: what is compared, how it is laid out, what is recorded.

use std::fmt::Write as _;

use super::choices::Worded;
use super::{label, show};
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::PipeChoice;
use crate::plan::trial::{Change, Treatment};
use crate::plan::{Dimension, Entry, Field, UnitSystem, significant};
use crate::trial::{Size, TrialField, TrialOutcome, Unit};

/// Heading of the part of the page.
pub const TRIALS: &str = "Which does better here? A fair trial";
/// Under it.
pub const TRIALS_MORE: &str = "Set out variants of the open plan side by side, such as three pipe sizes. Slackwater draws lots for their places, prints labels, keeps what you weigh and says what the figures allow to be said. A trial keeps the plan as it stood when it was begun.";
/// Button.
pub const NEW_TRIAL: &str = "Begin a trial of this plan";
/// Name of the list.
pub const YOUR_TRIALS: &str = "Your trials";
/// A trial without a name.
pub const UNNAMED_TRIAL: &str = "Trial without a name";
/// Label.
pub const TRIAL_NAME: &str = "Name of this trial";
/// Button.
pub const LEAVE_TRIAL: &str = "Leave this trial";
/// Button.
pub const SAVE_TRIAL: &str = "Save this trial to a file";
/// Name of that file.
pub const TRIAL_FILE: &str = "slackwater-trial.json";
/// Button.
pub const DELETE_TRIAL: &str = "Delete this trial";
/// After a trial was deleted.
pub const TRIAL_DELETED: &str = "The trial was deleted.";

/// The name of a trial of a plan.
pub fn trial_of(plan: &str) -> String {
    format!("Trial: {}", super::or_unnamed(plan))
}

/// The name of a trial, or what stands for it.
pub fn trial_or_unnamed(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { UNNAMED_TRIAL } else { name }.to_owned()
}

/// A trial in the list of what a file holds.
pub fn trial_in_file(name: &str) -> String {
    format!("{} (a trial)", trial_or_unnamed(name))
}

/// Heading.
pub const COMPARED: &str = "What is compared";
/// Label.
pub const DIFFERS: &str = "What differs";
/// Under it.
pub const DIFFERS_HINT: &str =
    "One thing alone: whatever else differs too, nobody can tell apart from it.";
/// First line of that list.
pub const OWN_FACTOR: &str = "Something else, in my own words";
/// Where the variants of a file differ in several things.
pub const SEVERAL: &str = "Several things";
/// Label of a value of a variant.
pub const VALUE: &str = "Value";
/// What stands in an empty value.
pub const AS_PLANNED: &str = "As planned";
/// Label of the grower's own words for what differs.
pub const NOTE: &str = "How it differs";
/// Label of the name of a variant.
pub const VARIANT_NAME: &str = "Name on the labels";
/// Button.
pub const ADD_VARIANT: &str = "Add a variant";
/// Button.
pub const REMOVE_VARIANT: &str = "Remove the last variant";

/// What a variant is called in drawings, beside its name.
pub fn letter(treatment: usize) -> char {
    ('A'..='Z').nth(treatment).unwrap_or('?')
}

/// Name of a variant that has none yet.
pub fn variant(treatment: usize) -> String {
    format!("Variant {}", letter(treatment))
}

/// Legend of a variant.
pub fn variant_of(treatment: usize, name: &str) -> String {
    if name == variant(treatment) {
        name.to_owned()
    } else {
        format!("{}: {name}", letter(treatment))
    }
}

/// The value that a variant gives to a field.
pub fn changed_value(field: Field, value: &Entry, units: UnitSystem) -> String {
    match (value, field.limits()) {
        (Entry::Number(number), Some(limits)) => show(limits.dimension, *number, units),
        (Entry::Number(number), None) => number.to_string(),
        (Entry::Text(key), _) => match field {
            Field::Pipe => PipeChoice::from_key(key).map(Worded::word),
            Field::Foam => Foam::from_key(key).map(Worded::word),
            Field::CoverMaterial => CoverMaterial::from_key(key).map(Worded::word),
            Field::CropKind => CropKind::from_key(key).map(Worded::word),
            _ => None,
        }
        .unwrap_or_else(|| key.clone()),
    }
}

/// A change in words.
pub fn change_line(change: &Change, units: UnitSystem) -> String {
    let field = Field::ALL.iter().find(|it| it.path() == change.field);
    match field {
        Some(&field) => format!(
            "{}: {}",
            label(field),
            changed_value(field, &change.value, units)
        ),
        None => change.field.clone(),
    }
}

/// A variant in the report: its letter, its name, and how it differs.
pub fn variant_line(place: usize, treatment: &Treatment, units: UnitSystem) -> String {
    let mut line = variant_of(place, treatment.name.trim());
    let note = treatment.note.trim();
    let changes = treatment.changes.iter().map(|it| change_line(it, units));
    for more in changes.chain((!note.is_empty()).then(|| note.to_owned())) {
        line.push_str(". ");
        line.push_str(&more);
    }
    line
}

/// Heading.
pub const LAID_OUT: &str = "How it is laid out";
/// Label.
pub const DESIGN: &str = "Places are given";
/// The two ways, in the order of their list.
pub const DESIGNS: [&str; 2] = [
    "By chance over the whole bench",
    "By chance within each block",
];
/// Under it.
pub const DESIGN_HINT: &str = "A block is a group of places alike, such as one end of a bench or one shelf; each holds every variant once. Use blocks where light or draught change along the bench.";
/// What counts as one.
pub const UNIT_IS: &str = "One independent unit is one container with its own solution";
/// The reason.
pub const UNIT_WHY: &str = "Heads of one container share its solution, its place and its luck. Weighing more of them tells you better about that container, and nothing more about the variant: they are parts of one unit, never replicates. The same holds for boards that float in one tank, and for shade, lamps or warmth that a whole bench or house shares: there the bench or the house is the unit, and one of each can never be judged.";
/// Where there is one unit of each.
pub const ONE_OF_EACH: &str = "With one container of each variant nothing can be said, however many heads you weigh: what the container did cannot be told from what the variant did. Take two at the very least.";
/// Button.
pub const DRAW_AGAIN: &str = "Draw lots again";
/// Where the layout is fixed.
pub const FIXED: &str =
    "Records belong to this layout, so it stays as it is. Remove all records to change it.";
/// Where the layout came in a file.
pub const GIVEN: &str = "The layout came with the file: it was drawn elsewhere.";
/// Heading of what is seldom changed.
pub const MORE_SETTINGS: &str = "What to look for, and how sure to be";

/// The label of a field of a trial.
pub fn trial_label(field: TrialField) -> &'static str {
    match field {
        TrialField::Replicates => "Containers of each variant, or blocks",
        TrialField::HeadsPerUnit => "Heads planted in one container",
        TrialField::Columns => "Containers side by side",
        TrialField::Seed => "Number that the lots were drawn with",
        TrialField::Difference => "Difference that matters to you, % of the mean",
        TrialField::Power => "Chance of seeing it, %",
        TrialField::Confidence => "Confidence of intervals and tests, %",
        TrialField::UnitSpread => "Spread from container to container, %",
        TrialField::HeadSpread => "Spread from head to head, %",
        _ => "",
    }
}

/// How to find what a field of a trial asks for, and what is allowed.
pub fn trial_hint(field: TrialField) -> &'static str {
    match field {
        TrialField::Replicates => "1 to 50. Replicates: each on its own.",
        TrialField::HeadsPerUnit => "1 to 200. Empty: as many as the plan has.",
        TrialField::Columns => "1 to 100. Empty: one row for each block.",
        TrialField::Seed => "A whole number. The same one gives the same places.",
        TrialField::Difference => "1 to 200. Empty: 20.",
        TrialField::Power => "50 to 99. Empty: 80.",
        TrialField::Confidence => "50 to 99.9. Empty: 95.",
        TrialField::UnitSpread => {
            "0.1 to 100, standard deviation of containers treated alike. Empty: 10, assumed. A past trial tells it."
        }
        TrialField::HeadSpread => {
            "0 to 100, standard deviation of heads in one container. Empty: 15, assumed."
        }
        _ => "",
    }
}

/// Name of the drawing.
pub const BENCH: &str = "The bench from above";

/// One container in words.
pub fn place(outcome: &TrialOutcome, unit: &Unit) -> String {
    let name = outcome
        .treatments
        .get(unit.treatment)
        .map_or("", |it| it.name.as_str());
    let letter = letter(unit.treatment);
    let (row, column) = (unit.row, unit.column);
    format!(
        "container {}: {letter}, {name}, row {row}, place {column}",
        unit.unit
    )
}

/// Number of a container.
pub fn container(unit: &str) -> String {
    format!("Container {unit}")
}

/// Name of a block; nothing where there are none.
pub fn block(outcome: &TrialOutcome, unit: &Unit) -> String {
    match outcome.blocks.get(unit.block) {
        Some(block) if outcome.blocks.len() > 1 => format!("Block {block}"),
        _ => String::new(),
    }
}

/// Where a container stands, on its label.
pub fn row_and_place(unit: &Unit) -> String {
    format!("Row {}, place {}", unit.row, unit.column)
}

/// Heading.
pub const EXPECTED: &str = "What each variant should bring";
/// Its columns.
pub const EXPECTED_HEADS: [&str; 7] = [
    "Variant",
    "Harvest, days",
    "Head",
    "Water per mass",
    "Solution to begin with",
    "Depth of fill",
    "Moist air at the end",
];
/// Under it.
pub const EXPECTED_MORE: &str = "From the models, for the air and light of the plan. Where they expect no difference, the trial may still find one: that is what it is for.";

/// What each variant is expected to bring.
pub fn expected_rows(outcome: &TrialOutcome, units: UnitSystem) -> Vec<Vec<String>> {
    let row = |(place, it): (usize, &crate::trial::TreatmentOutcome)| {
        let of = it.expected.as_ref()?;
        Some(vec![
            variant_of(place, &it.name),
            of.harvest_day
                .map_or_else(|| "not reached".to_owned(), |day| day.to_string()),
            show(Dimension::Mass, of.head_g, units),
            show(Dimension::WaterUse, of.water_per_kg_l, units),
            show(Dimension::Volume, of.volume_l, units),
            show(Dimension::Length, of.depth_cm, units),
            show(Dimension::Length, of.gap_at_end_cm, units),
        ])
    };
    let all = outcome.treatments.iter().enumerate();
    all.filter_map(row).collect()
}

/// Heading.
pub const HOW_MANY: &str = "How many containers it takes";

/// A percentage to two digits.
pub fn pct(value: f64) -> String {
    format!("{}\u{a0}%", significant(value, 2))
}

/// How many containers show the difference that matters, and what this trial can see.
pub fn needed_lines(outcome: &TrialOutcome) -> Vec<String> {
    let needed = &outcome.needed;
    let wanted = pct(needed.difference_pct);
    let chance = pct(needed.power_pct);
    let of = |size: &Size, from: &str| {
        let many = match size.replicates {
            Some(many) => format!("{many} containers of each variant are needed"),
            None => "more than 200 containers of each variant would be needed".to_owned(),
        };
        let mut line = format!(
            "{from} (from container to container {}, from head to head {}), {many} to see a difference of {wanted} with a chance of {chance}.",
            pct(size.unit_spread_pct),
            pct(size.head_spread_pct),
        );
        if let (Some(power), Some(smallest)) = (size.power_as_planned_pct, size.detectable_pct) {
            // Writing to a text cannot fail.
            let _ = write!(
                line,
                " This trial, as it is laid out, has a chance of {} to see it; what it sees with a chance of {chance} is {} or more.",
                pct(power),
                pct(smallest),
            );
        }
        line
    };
    let mut lines = vec![of(&needed.expected, "With the spread that is expected")];
    lines.extend(
        needed
            .recorded
            .iter()
            .map(|size| of(size, "With the spread of these records")),
    );
    lines.push("More heads in a container help little: it is containers that count.".to_owned());
    lines
}

/// Heading.
pub const RECORD: &str = "What you weigh and measure";
/// Under it.
pub const RECORD_MORE: &str = "The fresh mass of every head, container by container, and all the solution a container used from planting to harvest: what you filled in, plus what you added, less what is left. Leave a cell empty where a head is missing. It counts as missing, never as nothing.";
/// Label.
pub const PASTE: &str = "Paste a table, or lines of a CSV file";
/// Under it.
pub const PASTE_HINT: &str = "A line for each container: its number, then grams of each head. Or with headings: unit, water_l, head_1_g, head_2_g; a line for each head does too. NA, a dash or nothing means missing. A trial laid out elsewhere comes with columns named unit, treatment and block.";
/// Button.
pub const TAKE_IN: &str = "Take in this table";
/// Button.
pub const TAKE_IN_LAYOUT: &str = "Take it in with its layout";
/// Where the table tells none.
pub const NO_LAYOUT: &str = "This table tells no layout: each line needs a unit and its treatment. Columns named block, row and column may stand beside them.";
/// Label.
pub const TABLE_FILE: &str = "Open a CSV file";
/// Link.
pub const SAVE_RECORDS: &str = "Save the records as CSV";
/// Name of that file.
pub const RECORDS_FILE: &str = "slackwater-trial.csv";
/// Button.
pub const CLEAR_RECORDS: &str = "Remove all records";
/// The same button, once it was pressed.
pub const CLEAR_RECORDS_SURE: &str = "Remove them for good";
/// Name of the table.
pub const RECORD_TABLE: &str = "Records";
/// Column.
pub const CONTAINER: &str = "Container";
/// What stands in an empty cell of a container of which something was recorded.
pub const MISSING: &str = "missing";
/// Where there are more heads than columns.
pub const SAMPLE: &str = "The table has room for a dozen heads of each container. Draw lots which ones to weigh, or paste all of them.";
/// Records that belong to no container of the layout.
pub const BELONGS_NOWHERE: &str = "These lines belong to no container of this layout.";

/// Button.
pub const REMOVE_STRAY: &str = "Remove these lines";

/// Column of a head.
pub fn head_number(number: usize) -> String {
    format!("Head {number}")
}

/// Column of a measure with its unit.
pub fn with_unit(what: &str, dimension: Dimension, units: UnitSystem) -> String {
    format!("{what}, {}", dimension.symbol(units))
}

/// Column of the solution used.
pub const USED: &str = "Solution used";

/// After a table was read.
pub fn taken_in(lines: usize, heads: usize, missing: usize, problems: usize) -> String {
    let mut text = format!("Read {lines} lines: {heads} head masses, {missing} missing.");
    if problems > 0 {
        let _ = write!(
            text,
            " {problems} places could not be read; they stand as they came."
        );
    }
    text
}

/// Heading of the way to paper.
pub const TRIAL_PRINT: &str = "Print";
/// What can be printed.
pub const TRIAL_PAPERS: [&str; 3] = ["Labels", "Layout and record sheet", "Report"];
/// The button for each.
pub const TRIAL_PRINTS: [&str; 3] = [
    "Print the labels",
    "Print the layout and record sheet",
    "Print the report",
];
