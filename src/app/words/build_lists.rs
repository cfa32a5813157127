//! Materials of a tank, and the order of work.

use super::building::drawn_length;
use super::figures::{places, rounded, show};
use super::say::*;
use crate::advice::{BuildItem, BuildOutcome, ItemKind, ItemUnit, RunningOutcome, WorkStep};
use crate::plan::{Dimension, UnitSystem};

/// The list of materials.
pub fn build_materials(build: &BuildOutcome, units: UnitSystem) -> Vec<Vec<String>> {
    let money = |amount: f64| format!("{}{}", build.currency, places(amount, 2));
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
            build_materials_total().to_owned(),
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
        ItemUnit::Piece => rounded(item.quantity, 6),
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

fn item_name(item: ItemKind) -> &'static str {
    match item {
        ItemKind::StockSheet => item_name_stock_sheet(),
        ItemKind::CoverFabric => item_name_cover_fabric(),
        ItemKind::NetPot => item_name_net_pot(),
        ItemKind::Pipe => item_name_pipe(),
        ItemKind::Ballast => item_name_ballast(),
        ItemKind::PipeCap => item_name_pipe_cap(),
        ItemKind::SideTimber => item_name_side_timber(),
        ItemKind::CornerBrace => item_name_corner_brace(),
        ItemKind::MidBrace => item_name_mid_brace(),
        ItemKind::Prop => item_name_prop(),
        ItemKind::Liner => item_name_liner(),
        ItemKind::Cushion => item_name_cushion(),
        ItemKind::Staple => item_name_staple(),
        ItemKind::Medium => item_name_medium(),
    }
}

/// How the tanks are run.
pub fn build_running(running: &RunningOutcome, units: UnitSystem) -> Vec<String> {
    let volume = |litres| show(Dimension::Volume, litres, units);
    let mut lines = vec![running_first_fill(&volume(running.initial_fill_l))];
    lines.extend(
        running
            .refloat_l
            .map(|litres| running_refloat(&volume(litres))),
    );
    let cycle = &running.cycle_days.to_string();
    let heads = &rounded(running.heads_per_week, 3);
    lines.push(if running.tanks > 1 {
        RunningTanks {
            apart: &rounded(running.days_between_tanks, 2),
            cycle,
            heads,
            tanks: &running.tanks.to_string(),
        }
        .text()
    } else {
        RunningTank { cycle, heads }.text()
    });
    lines
}

/// A step of the day of harvest.
pub fn work_step(step: WorkStep) -> &'static str {
    match step {
        WorkStep::PullBoards => work_step_pull_boards(),
        WorkStep::CutHeads => work_step_cut_heads(),
        WorkStep::ClearPots => work_step_clear_pots(),
        WorkStep::WashBoards => work_step_wash_boards(),
        WorkStep::Drain => work_step_drain(),
        WorkStep::FillUp => work_step_fill_up(),
        WorkStep::AddFertilizer => work_step_add_fertilizer(),
        WorkStep::Measure => work_step_measure(),
        WorkStep::Inspect => work_step_inspect(),
        WorkStep::Plant => work_step_plant(),
        WorkStep::FloatBoards => work_step_float_boards(),
        WorkStep::CloseEdges => work_step_close_edges(),
    }
}
