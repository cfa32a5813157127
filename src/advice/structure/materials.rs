//! What to get for all tanks of a plan, with prices where they are known.

use super::mm;
use crate::advice::outcome::{
    BoardsOutcome, BuildItem, BuildOutcome, ItemKind, ItemUnit, LayoutOutcome, Outcome,
};
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::pots::WET_MEDIUM_DENSITY;
use crate::plan::{Build, Dimension, PipeEnds, Sound, UnitSystem};
use crate::science::units::length::meter;
use crate::science::units::mass::kilogram;
use crate::season::Tank;

/// Section of braces and posts, mm, and how far a brace reaches below the floor: common practice.
const BRACE_MM: (f64, f64, f64) = (47.0, 47.0, 300.0);
/// From prop to prop in a row, mm: common practice, no source.
const PROP_MM: f64 = 600.0;

/// The list of a plan, and the sum of what has a price.
#[expect(
    clippy::too_many_lines,
    reason = "one entry an item, in the order of the job"
)]
pub fn materials(
    sound: &Sound,
    tank: &Tank,
    build: &Build,
    made: &BuildOutcome,
    layout: &LayoutOutcome,
    boards: Option<&BoardsOutcome>,
) -> (Vec<BuildItem>, Option<f64>) {
    let tanks = f64::from(sound.container.count);
    let prices = &build.prices;
    let mut items = Vec::new();
    let mut add = |item, quantity: f64, unit, size_mm, unit_price: Option<f64>| {
        if quantity > 0.0 {
            let quantity = quantity * tanks;
            items.push(BuildItem {
                item,
                quantity,
                unit,
                size_mm,
                unit_price,
                price: unit_price.map(|price| price * quantity),
            });
        }
    };
    let none = (0.0, 0.0, 0.0);
    let (length, width, _) = build.inside;
    let fabric = build
        .cover
        .is_some_and(|cover| cover.material == CoverMaterial::Fabric);
    if fabric {
        let area = (length * width).value;
        add(
            ItemKind::CoverFabric,
            area,
            ItemUnit::SquareMetre,
            none,
            None,
        );
    } else {
        add(
            ItemKind::StockSheet,
            f64::from(layout.sheets),
            ItemUnit::Piece,
            (
                layout.sheet_mm.0,
                layout.sheet_mm.1,
                mm(sound.container.cover_thickness),
            ),
            prices.sheet,
        );
    }
    let plants = f64::from(sound.crop.plants);
    let pot = &sound.container.pot;
    add(
        ItemKind::NetPot,
        plants,
        ItemUnit::Piece,
        (mm(pot.top_diameter), mm(pot.height), 0.0),
        prices.pot,
    );
    let medium_l = tank.pot_mass().get::<kilogram>() / WET_MEDIUM_DENSITY * 1000.0 * plants;
    add(ItemKind::Medium, medium_l, ItemUnit::Litre, none, None);
    if let (Some(outcome), Some(plan)) = (boards, &sound.container.boards) {
        let pipe = &outcome.structure.pipe;
        let each_m = plan.tank_length.get::<meter>();
        add(
            ItemKind::Pipe,
            pipe.total_length_m,
            ItemUnit::Metre,
            (
                mm(plan.pipes.outside_diameter),
                mm(plan.pipes.wall),
                each_m * 1000.0,
            ),
            prices.pipe_per_m,
        );
        if plan.pipes.ends != PipeEnds::Open {
            let caps = 2.0 * f64::from(pipe.count);
            add(ItemKind::PipeCap, caps, ItemUnit::Piece, none, None);
        }
        add(
            ItemKind::Ballast,
            pipe.ballast_total_kg,
            ItemUnit::Kilogram,
            none,
            None,
        );
    }
    let timber = &made.timber;
    add(
        ItemKind::SideTimber,
        timber.total_m,
        ItemUnit::Metre,
        (timber.thickness_mm, timber.width_mm, 0.0),
        prices.timber_per_m,
    );
    add(
        ItemKind::CornerBrace,
        f64::from(timber.corner_braces),
        ItemUnit::Piece,
        (BRACE_MM.0, BRACE_MM.1, timber.height_mm),
        None,
    );
    add(
        ItemKind::MidBrace,
        f64::from(timber.mid_braces),
        ItemUnit::Piece,
        (BRACE_MM.0, BRACE_MM.1, timber.height_mm + BRACE_MM.2),
        None,
    );
    if let Some(cover) = &made.cover {
        let in_a_row = (mm(length) / PROP_MM).ceil() - 1.0;
        add(
            ItemKind::Prop,
            f64::from(cover.prop_rows) * in_a_row.max(1.0),
            ItemUnit::Piece,
            (cover.prop_height_mm, 0.0, 0.0),
            None,
        );
    }
    let liner = &made.liner;
    add(
        ItemKind::Liner,
        liner.area_m2,
        ItemUnit::SquareMetre,
        (liner.length_cm * 10.0, liner.width_cm * 10.0, 0.0),
        prices.liner_per_m2,
    );
    add(
        ItemKind::Cushion,
        liner.cushion_m2,
        ItemUnit::SquareMetre,
        none,
        None,
    );
    add(
        ItemKind::Staple,
        f64::from(liner.staples),
        ItemUnit::Piece,
        none,
        None,
    );
    let priced: Vec<f64> = items.iter().filter_map(|item| item.price).collect();
    let sum = (!priced.is_empty()).then(|| priced.iter().sum());
    (items, sum)
}

/// The list of materials of an outcome as CSV (RFC 4180): one heading line, then a line for each
/// item, with its key, quantity, unit, sizes and prices, in the units of a system; the headings of
/// the sizes name theirs. Nothing but the heading where nothing is built.
///
/// ```
/// use slackwater::{advice::materials_csv, plan::{Example, UnitSystem}, solve};
/// let outcome = solve(&Example::FloatingBoards.plan()).expect("a ready plan is sound");
/// assert!(materials_csv(&outcome, UnitSystem::Metric).contains("net_pot,144,piece"));
/// ```
pub fn materials_csv(outcome: &Outcome, units: UnitSystem) -> String {
    let length = Dimension::SmallLength.symbol(units);
    let sizes = [1, 2, 3].map(|number| format!("size_{number}_{length}"));
    let mut csv = format!(
        "item,quantity,unit,{},unit_price,price\r\n",
        sizes.join(",")
    );
    let items = outcome
        .build
        .as_ref()
        .map_or(&[][..], |build| &build.materials);
    for item in items {
        // Hundredths are more than any shop measures.
        let number = |value: f64| format!("{}", libm::round(value * 100.0) / 100.0);
        let size = |value: f64| {
            if value > 0.0 {
                number(Dimension::SmallLength.in_system(value, units))
            } else {
                String::new()
            }
        };
        let price = |price: Option<f64>| price.map(number).unwrap_or_default();
        let (one, unit) = sold_by(item.unit, units);
        let cells = [
            item.item.key().to_owned(),
            number(item.quantity / one),
            unit.to_owned(),
            size(item.size_mm.0),
            size(item.size_mm.1),
            size(item.size_mm.2),
            price(item.unit_price.map(|price| price * one)),
            price(item.price),
        ];
        csv.push_str(&cells.join(","));
        csv.push_str("\r\n");
    }
    csv
}

/// How much the unit is that an item is sold by in a system, in the unit of its quantity, and its key.
fn sold_by(unit: ItemUnit, units: UnitSystem) -> (f64, &'static str) {
    let (dimension, customary) = match (unit, units) {
        (ItemUnit::Piece, _) | (_, UnitSystem::Metric) => return (1.0, unit.key()),
        (ItemUnit::Metre, _) => (Dimension::Run, "foot"),
        (ItemUnit::SquareMetre, _) => (Dimension::Area, "square_foot"),
        (ItemUnit::Kilogram, _) => (Dimension::Weight, "pound"),
        (ItemUnit::Litre, _) => (Dimension::Volume, "gallon"),
    };
    (dimension.saved(1.0, units), customary)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Entry, Example};

    #[test]
    fn the_table_in_us_units_is_the_metric_one_converted() {
        let mut plan = Example::FloatingBoards.plan();
        plan.build.pipe_price_per_m = Entry::Number(5.0);
        plan.build.liner_price_per_m2 = Entry::Number(2.0);
        let outcome = crate::advice::solve(&plan).expect("a ready plan is sound");
        let [metric, us] = UnitSystem::ALL
            .iter()
            .map(|&units| {
                let csv = materials_csv(&outcome, units);
                csv.lines()
                    .map(|line| line.split(',').map(str::to_owned).collect::<Vec<_>>())
                    .collect::<Vec<_>>()
            })
            .collect::<Vec<_>>()
            .try_into()
            .expect("two systems");
        assert_eq!((&*metric[0][3], &*us[0][3]), ("size_1_mm", "size_1_in"));
        let mut seen = 0;
        for (a, b) in metric.iter().zip(&us).skip(1) {
            // NIST Handbook 44, appendix C; exact.
            let factor = match (&*a[2], &*b[2]) {
                ("piece", "piece") => 1.0,
                ("metre", "foot") => 0.3048,
                ("square_metre", "square_foot") => 0.092_903_04,
                ("kilogram", "pound") => 0.453_592_37,
                ("litre", "gallon") => 3.785_411_784,
                other => panic!("{other:?}"),
            };
            let number = |cell: &str| cell.parse::<f64>().unwrap_or_default();
            // Each is written to the hundredth.
            let near = |a: f64, b: f64, factor: f64| {
                assert!(
                    (a - b * factor).abs() <= 0.005 * (1.0 + factor) + 1e-9,
                    "{a} {b}"
                );
            };
            near(number(&a[1]), number(&b[1]), factor);
            near(number(&a[3]), number(&b[3]), 25.4);
            near(number(&a[6]), number(&b[6]), 1.0 / factor);
            assert_eq!(a[7], b[7], "what all costs is the same");
            seen += usize::from(factor < 1.0 && !a[6].is_empty());
        }
        assert_eq!(seen, 2, "pipe and liner have a price by the unit");
    }
}
