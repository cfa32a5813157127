//! Materials of a tank, and the order of work.

use super::building::drawn_length;
use super::results::show;
use crate::advice::{BuildItem, BuildOutcome, ItemKind, ItemUnit, RunningOutcome, WorkStep};
use crate::plan::{Dimension, UnitSystem, significant};

/// The list of materials.
pub fn build_materials(build: &BuildOutcome, units: UnitSystem) -> Vec<Vec<String>> {
    let money = |amount: f64| format!("{}{amount:.2}", build.currency);
    let mut rows: Vec<Vec<String>> = build
        .materials
        .iter()
        .map(|item| {
            vec![
                item_name(item.item).to_owned(),
                quantity(item, units),
                size(item, units),
                item.price.map(money).unwrap_or_default(),
            ]
        })
        .collect();
    if let Some(price) = build.price {
        rows.push(vec![
            "All that has a price".to_owned(),
            String::new(),
            String::new(),
            money(price),
        ]);
    }
    rows
}

fn quantity(item: &BuildItem, units: UnitSystem) -> String {
    let of = |dimension| show(dimension, item.quantity, units);
    match item.unit {
        ItemUnit::Piece => significant(item.quantity, 6),
        ItemUnit::Metre => of(Dimension::Run),
        ItemUnit::SquareMetre => of(Dimension::Area),
        ItemUnit::Kilogram => of(Dimension::Weight),
        ItemUnit::Litre => of(Dimension::Volume),
    }
}

fn size(item: &BuildItem, units: UnitSystem) -> String {
    let (first, second, third) = item.size_mm;
    [first, second, third]
        .into_iter()
        .filter(|mm| *mm > 0.0)
        .map(|mm| {
            if mm < 100.0 {
                show(Dimension::SmallLength, mm, units)
            } else {
                drawn_length(mm, units)
            }
        })
        .collect::<Vec<_>>()
        .join(" × ")
}

const fn item_name(item: ItemKind) -> &'static str {
    match item {
        ItemKind::StockSheet => "Sheets for boards or cover",
        ItemKind::CoverFabric => "Fabric for the cover",
        ItemKind::NetPot => "Net pots",
        ItemKind::Pipe => "Pipe",
        ItemKind::Ballast => "Clean stone or sand as ballast",
        ItemKind::PipeCap => "Caps for the pipes",
        ItemKind::SideTimber => "Timber for the sides",
        ItemKind::CornerBrace => "Corner posts",
        ItemKind::MidBrace => "Braces",
        ItemKind::Prop => "Props",
        ItemKind::Liner => "Liner",
        ItemKind::Cushion => "Cushion under the liner",
        ItemKind::Staple => "Staples or tacks",
        ItemKind::Medium => "Growing medium",
    }
}

/// How the tanks are run.
pub fn build_running(running: &RunningOutcome, units: UnitSystem) -> Vec<String> {
    let volume = |litres| show(Dimension::Volume, litres, units);
    let mut lines = vec![format!(
        "The first fill takes {}.",
        volume(running.initial_fill_l)
    )];
    if let Some(litres) = running.refloat_l {
        lines.push(format!(
            "At harvest {} more brings the boards afloat again, so that they can be pulled in.",
            volume(litres)
        ));
    }
    let heads = significant(running.heads_per_week, 3);
    lines.push(if running.tanks > 1 {
        format!(
            "{} tanks in turn, planted {} days apart, each every {} days: about {heads} heads a week.",
            running.tanks,
            significant(running.days_between_tanks, 2),
            running.cycle_days
        )
    } else {
        format!(
            "Planted every {} days: about {heads} heads a week in the long run.",
            running.cycle_days
        )
    });
    lines
}

/// A step of the day of harvest.
pub const fn work_step(step: WorkStep) -> &'static str {
    match step {
        WorkStep::PullBoards => "Float the boards and pull them in to one end.",
        WorkStep::CutHeads => "Cut the heads.",
        WorkStep::ClearPots => "Take out pots and roots; none may stay in the tank.",
        WorkStep::WashBoards => "Wash boards or cover, and let them dry.",
        WorkStep::Drain => "Siphon off what is not used again, and wipe the liner.",
        WorkStep::FillUp => "Fill up to the mark.",
        WorkStep::AddFertilizer => "Stir in what the next crop needs.",
        WorkStep::Measure => "Measure EC and pH.",
        WorkStep::Inspect => "Look for leaks, air under the liner, and larvae.",
        WorkStep::Plant => "Set in pots with seedlings.",
        WorkStep::FloatBoards => "Float the boards back, or lay the cover on.",
        WorkStep::CloseEdges => "Close every gap at the edges against light and mosquitoes.",
    }
}
