//! What stands on the build sheet: figures, parts, materials and the order of work.

use super::choices::Worded;
use super::fields::label;
use super::findings::finding;
use super::results::show;
use crate::advice::{
    BoardsOutcome, BuildItem, BuildOutcome, Change, Fact, ItemKind, ItemUnit, LayoutOutcome,
    LevelBy, LoadStop, Outcome, RunningOutcome, StructureFact, Weight, WorkStep,
};
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::timber::Timber;
use crate::plan::{Dimension, Entry, Field, PipeEnds, StandsOn, UnitSystem, significant};

/// Folded group of fields.
pub const GROUP_BUILD: &str = "How it is built";
/// Heading.
pub const BUILDING: &str = "Building the tank";
/// Under it.
pub const BUILDING_MORE: &str =
    "Read the checks above first. Lengths are for one tank, materials for all of them.";
/// Heading of the drawings.
pub const BUILD_DRAWINGS: &str = "Drawings";
/// Heading of the figures.
pub const BUILD_CHECKS: &str = "What holds, floats and sags";
/// Columns of the figures.
pub const BUILD_CHECK_HEADS: [&str; 3] = ["What", "In this plan", "Wanted"];
/// Heading of what is made.
pub const BUILD_PARTS: &str = "Frame, liner and holes";
/// Heading of the materials.
pub const BUILD_MATERIALS: &str = "What to get";
/// Columns of the materials.
pub const BUILD_MATERIAL_HEADS: [&str; 4] = ["What", "How much", "Size", "Price"];
/// Link that saves the materials.
pub const SAVE_MATERIALS: &str = "Save the list as a table (CSV)";
/// Name of that file.
pub const MATERIALS_FILE: &str = "slackwater-materials.csv";
/// Heading of the running.
pub const BUILD_RUNNING: &str = "Running it";
/// Heading of the work.
pub const BUILD_WORK: &str = "On the day of harvest, in this order";
/// Heading of what must not be missed.
pub const ALARM: &str = "Stop and read";
/// Label of the choice of what is printed.
pub const WHAT_TO_PRINT: &str = "What to print";
/// What can be printed: card, build sheet, template.
pub const PAPERS: [&str; 3] = ["Planting card", "Build sheet", "Drilling template"];
/// Buttons that print the build sheet and the template.
pub const PRINT_OTHER: [&str; 2] = ["Print the build sheet", "Print the template"];
/// A template of more pages than anybody joins.
pub const TEMPLATE_TOO_LARGE: &str = "This board is too large for a template of paper. Mark its holes by the measures on the build sheet.";

/// How many pages the template takes, and how to print it.
pub fn template_note(pages: usize) -> String {
    if pages == 0 {
        return TEMPLATE_TOO_LARGE.to_owned();
    }
    format!(
        "{pages} {}, at true scale. Print at 100% (\u{201c}actual size\u{201d}, not \u{201c}fit to page\u{201d}) and measure the bar.",
        if pages == 1 { "page" } else { "pages" }
    )
}

/// At the head of a page of the template.
pub fn template_page(row: usize, column: usize, alarm: Option<&str>) -> String {
    let page = format!("Row {row}, column {column}");
    alarm.map_or_else(|| page.clone(), |alarm| format!("{page}. {alarm}"))
}

/// Beside the check bar.
pub const TEMPLATE_BAR: &str = "100 mm. If it is not, print again at 100%.";

/// How pages meet.
pub const TEMPLATE_JOIN: &str = "Cut along the frame. Join where the same letters meet and the slanted strokes run through. Thick line: edge.";

/// What must not be missed on screen or paper: places that do not bear the tank, sides that a
/// competent person must see, boards that turn over.
pub fn alarms(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    outcome
        .findings
        .iter()
        .filter(|found| {
            found.weight != Weight::Sound
                && matches!(
                    found.fact,
                    Fact::Structure(
                        StructureFact::DoNotBuildThere { .. }
                            | StructureFact::AskCompetentPerson { .. }
                            | StructureFact::Sides { .. }
                            | StructureFact::TurnsOver { .. }
                    )
                )
        })
        .map(|found| finding(found, units))
        .collect()
}

/// The gravest of it in a few words, for the foot of a phone and the head of each page of paper.
pub fn alarm(outcome: &Outcome) -> Option<&'static str> {
    let build = outcome.build.as_ref()?;
    match build.stop {
        Some(LoadStop::AboveRating) => Some("Do not build it there: too heavy for the place."),
        Some(LoadStop::RatingUnknown) => {
            Some("Do not build it there: nobody knows what the place bears.")
        }
        Some(LoadStop::BalconyOrRoof) => {
            Some("Do not build it there: no tanks on balconies, decks or roofs.")
        }
        None => build
            .timber
            .ask_competent_person
            .then_some("Have a competent person look at the sides before you fill."),
    }
}

/// The button of a mend: the field and what it becomes.
pub fn change(change: &Change, units: UnitSystem) -> String {
    let to = match &change.value {
        Entry::Number(value) => change.field.limits().map_or_else(
            || significant(*value, 6),
            |limits| {
                let symbol = limits.dimension.symbol(units);
                let text = limits.dimension.text(*value, units);
                if symbol.is_empty() {
                    text
                } else {
                    format!("{text}\u{a0}{symbol}")
                }
            },
        ),
        Entry::Text(key) => chosen(change.field, key),
    };
    format!("{}: {to}", label(change.field))
}

/// The name of a choice by its key.
fn chosen(field: Field, key: &str) -> String {
    fn word<T: Keyed + Worded>(key: &str) -> Option<String> {
        T::from_key(key).map(Worded::word)
    }
    match field {
        Field::Pipe => word::<PipeChoice>(key),
        Field::Foam => word::<Foam>(key),
        Field::PipeEnds => word::<PipeEnds>(key),
        Field::PipeMaterial => word::<PipeMaterial>(key),
        Field::StandsOn => word::<StandsOn>(key),
        Field::Timber => word::<Timber>(key),
        Field::CoverMaterial => word::<CoverMaterial>(key),
        _ => None,
    }
    .unwrap_or_else(|| key.to_owned())
}

/// Figures in the reader's units.
struct Shown(UnitSystem);

impl Shown {
    fn of(&self, dimension: Dimension, value: f64) -> String {
        show(dimension, value, self.0)
    }

    fn cm(&self, value: f64) -> String {
        self.of(Dimension::Length, value)
    }

    fn mm(&self, value: f64) -> String {
        self.of(Dimension::SmallLength, value)
    }

    fn kg(&self, value: f64) -> String {
        self.of(Dimension::Weight, value)
    }

    fn span(&self, (low, high): (f64, f64)) -> String {
        format!("{} to {}", self.mm(low), self.mm(high))
    }

    /// Length by width, from millimetres.
    fn sheet(&self, (length, width): (f64, f64)) -> String {
        format!("{} × {}", self.cm(length / 10.0), self.cm(width / 10.0))
    }
}

fn row(what: &str, figure: String, wanted: String) -> Vec<String> {
    vec![what.to_owned(), figure, wanted]
}

/// Figures of boards, cover, sides and load: what, how much, how much is wanted.
pub fn build_checks(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    let shown = Shown(units);
    let mut rows = Vec::new();
    if let Some(boards) = &outcome.boards {
        let clear = outcome.findings.iter().find_map(|found| match found.fact {
            Fact::Structure(StructureFact::ClearGap {
                clear_gap_cm,
                low_cm,
                ..
            }) => Some((clear_gap_cm, low_cm)),
            _ => None,
        });
        board_checks(boards, clear, &shown, &mut rows);
    }
    if let Some(build) = &outcome.build {
        frame_checks(build, &shown, &mut rows);
    }
    rows
}

fn board_checks(
    boards: &BoardsOutcome,
    clear: Option<(f64, f64)>,
    shown: &Shown,
    rows: &mut Vec<Vec<String>>,
) {
    let made = &boards.structure;
    let none = String::new;
    let up_to = |text: String| format!("up to {text}");
    let depths = [boards.draught_mm, boards.draught_at_end_mm]
        .map(|depth| depth.map_or_else(|| "under water".to_owned(), |depth| shown.mm(depth)));
    rows.push(row(
        "Boards lie in the solution, at planting and at the end",
        depths.join(", "),
        none(),
    ));
    if let (Some(sag), Some(range)) = (made.sag_mm, made.sag_range_mm) {
        rows.push(row(
            "Sag between pipes at rest, in the long run",
            format!("{} ({})", shown.mm(sag), shown.span(range)),
            up_to(shown.mm(made.sag_limit_mm)),
        ));
    }
    rows.push(row(
        "Pipe to pipe, middle to middle",
        shown.cm(made.pipe.spacing_mm / 10.0),
        format!(
            "least sag at {}",
            shown.cm(made.best_pipe_spacing_mm / 10.0)
        ),
    ));
    if let (Some(first), Some(last)) = (made.gap_along_cm.first(), made.gap_along_cm.last()) {
        rows.push(row(
            "Moist air at harvest, from the higher end of the floor to the lower",
            format!("{} to {}", shown.cm(first.gap_cm), shown.cm(last.gap_cm)),
            none(),
        ));
    }
    if let Some((least, low)) = clear {
        rows.push(row(
            "At its least, under a sagging board",
            shown.cm(least),
            format!("{} or more", shown.cm(low)),
        ));
    }
    let heights = [
        made.metacentric_height_cm,
        made.metacentric_height_at_end_cm,
    ]
    .map(|height| {
        // Metres: boards are far wider than they lie deep.
        height.map_or_else(
            || "–".to_owned(),
            |height| shown.of(Dimension::Run, height / 100.0),
        )
    });
    rows.push(row(
        "Metacentric height, at planting and with grown heads",
        heights.join(", "),
        "above zero".to_owned(),
    ));
    if let (Some(dip), Some(freeboard)) = (made.edge_dip_mm, made.freeboard_mm) {
        rows.push(row(
            "Edge dips when one half is harvested",
            shown.mm(dip),
            up_to(shown.mm(freeboard)),
        ));
    }
    let room = shown.span(made.clearance_limits_mm);
    rows.push(row(
        "Room beside the boards, across and along",
        format!(
            "{}, {}",
            shown.mm(made.clearance_across_mm),
            shown.mm(made.clearance_along_mm)
        ),
        room,
    ));
    let ballast = made.pipe.ballast_kg_per_m;
    rows.push(row(
        "Ballast in a metre of pipe; in all",
        format!(
            "{}; {}",
            shown.kg(ballast),
            shown.kg(made.pipe.ballast_total_kg)
        ),
        if ballast > 0.0 {
            format!("lift {} a metre", shown.kg(made.pipe.lift_kg_per_m))
        } else {
            "none needed".to_owned()
        },
    ));
    rows.push(row(
        "Water that one board takes up",
        shown.kg(made.water_uptake_kg),
        none(),
    ));
}

fn frame_checks(build: &BuildOutcome, shown: &Shown, rows: &mut Vec<Vec<String>>) {
    let up_to = |text: String| format!("up to {text}");
    if let Some(cover) = &build.cover {
        rows.push(row(
            "Load on the cover",
            shown.of(Dimension::FloorLoad, cover.load_kg_per_m2),
            String::new(),
        ));
        rows.push(row(
            "Sag of the cover, in the long run",
            format!(
                "{} ({})",
                shown.mm(cover.sag_mm),
                shown.span(cover.sag_range_mm)
            ),
            up_to(shown.mm(cover.sag_limit_mm)),
        ));
        rows.push(row(
            "Moist air at harvest under its lowest point",
            shown.cm(cover.clear_gap_cm),
            String::new(),
        ));
    }
    let timber = &build.timber;
    rows.push(row(
        "Push on a metre of side; moment about its foot",
        format!(
            "{}\u{a0}N; {}\u{a0}N\u{a0}m",
            significant(build.side_force_n_per_m, 3),
            significant(build.side_moment_n_m, 3)
        ),
        String::new(),
    ));
    rows.push(row(
        "Sides bend between braces",
        format!("{} MPa", significant(timber.stress_mpa, 2)),
        up_to(format!("{} MPa", significant(timber.stress_limit_mpa, 2))),
    ));
    rows.push(row(
        "Sides bulge, in the long run",
        shown.mm(timber.bulge_mm),
        up_to(shown.mm(timber.bulge_limit_mm)),
    ));
    rows.push(row(
        "Full weight; of it solution",
        format!(
            "{}; {}",
            shown.kg(build.total_mass_kg),
            shown.kg(build.solution_mass_kg)
        ),
        String::new(),
    ));
    let load = |value| shown.of(Dimension::FloorLoad, value);
    rows.push(row(
        "Load on what is below",
        load(build.load_kg_per_m2),
        match (build.rating_kg_per_m2, build.stands_on) {
            (Some(rating), _) => up_to(load(rating)),
            (None, StandsOn::Ground | StandsOn::Slab) => "firm ground".to_owned(),
            (None, _) => "nobody knows: do not build".to_owned(),
        },
    ));
    if let Some(leg) = build.load_per_leg_kg {
        rows.push(row("Load on each leg", shown.kg(leg), String::new()));
    }
}

/// What is made, in the order of the job.
pub fn build_parts(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let shown = Shown(units);
    let (Some(build), Some(layout)) = (&outcome.build, &outcome.layout) else {
        return Vec::new();
    };
    let (timber, liner) = (&build.timber, &build.liner);
    let mut lines = vec![
        format!(
            "Level the place first, with {}. Recheck once the frame stands.",
            match build.level_by {
                LevelBy::SpiritLevel => "a spirit level on a straight edge",
                LevelBy::WaterLevel => "a water level: a clear hose filled with water",
            }
        ),
        format!(
            "Frame of {} timber: two sides of {}, two of {} between them, {} high. A post in each corner{}.",
            timber.size.word(),
            shown.cm(timber.long_mm / 10.0),
            shown.cm(timber.short_mm / 10.0),
            shown.cm(timber.height_mm / 10.0),
            if timber.mid_braces == 0 {
                String::new()
            } else {
                format!(
                    ", {} braces along the sides, none further apart than {}",
                    timber.mid_braces,
                    shown.cm(timber.brace_spacing_mm / 10.0)
                )
            }
        ),
        format!(
            "Cushion floor and sides ({}): no stone, nail or splinter may touch the liner.",
            shown.of(Dimension::Area, liner.cushion_m2)
        ),
        format!(
            "Liner: {} of {} × {}, {} over the rim and down outside. Lay it loose, fold the corners uncut, run in a hand's depth of water and press out all air under it. Only then fasten it, with about {} staples, on the outside of the rim only.",
            if liner.layers == 1 {
                "one sheet".to_owned()
            } else {
                format!("{} sheets", liner.layers)
            },
            shown.cm(liner.length_cm),
            shown.cm(liner.width_cm),
            shown.cm(liner.overlap_cm),
            liner.staples
        ),
    ];
    if let Some(boards) = &outcome.boards {
        let pipe = &boards.structure.pipe;
        lines.push(format!(
            "Lay {} pipes of {} along the tank, {} from middle to middle. {}.",
            pipe.count,
            pipe.size.word(),
            shown.cm(pipe.spacing_mm / 10.0),
            pipe.ends.word()
        ));
    }
    if let Some(cover) = build.cover.as_ref().filter(|cover| cover.prop_rows > 0) {
        let places: Vec<String> = cover
            .props_at_mm
            .iter()
            .map(|at| shown.cm(at / 10.0))
            .collect();
        lines.push(format!(
            "Props {} tall under the cover, in rows at {} from one side, on pads that spare the liner.",
            shown.cm(cover.prop_height_mm / 10.0),
            places.join(", ")
        ));
    }
    lines.push(format!(
        "Holes of {} across: {} in all, {} plants on a square metre. {} {} of {}.",
        shown.mm(layout.hole_diameter_mm),
        layout.hole_count,
        significant(layout.plants_per_m2, 3),
        layout.sheets,
        if layout.sheets == 1 {
            "sheet"
        } else {
            "sheets"
        },
        shown.sheet(layout.sheet_mm)
    ));
    lines.push(format!(
        "To drain: a hose of {} as a siphon, its end well below the floor, takes about {} min. Lead it where spent solution does no harm.",
        shown.mm(25.0),
        significant(build.drain_minutes, 2)
    ));
    lines.push("Small children drown in a few centimetres of open water: keep the tank covered or fenced, also when it holds nothing but rain.".to_owned());
    lines
}

/// Where the middles of the holes lie, row by row.
pub fn hole_rows(layout: &LayoutOutcome, units: UnitSystem) -> Vec<String> {
    /// More than that nobody reads.
    const MOST: usize = 60;
    let shown = Shown(units);
    let rows = layout.holes.chunk_by(|a, b| (a.y_mm - b.y_mm).abs() < 0.01);
    rows.take(MOST)
        .map(|row| {
            let at: Vec<String> = row
                .iter()
                .take(MOST)
                .map(|hole| shown.cm(hole.x_mm / 10.0))
                .collect();
            format!(
                "{} from the edge: {}",
                row.first()
                    .map_or_else(String::new, |hole| shown.cm(hole.y_mm / 10.0)),
                at.join(", ")
            )
        })
        .collect()
}

/// Over that list.
pub const HOLE_ROWS: &str = "Middles of the holes from a corner, row by row";

/// Under the drawing of the tank.
pub fn tank_caption(outcome: &Outcome, units: UnitSystem) -> String {
    let Some(layout) = &outcome.layout else {
        return String::new();
    };
    let shown = Shown(units);
    let strips = layout.boards.iter().filter(|board| board.strip).count();
    let size = shown.sheet((layout.board_length_mm, layout.board_width_mm));
    if outcome.boards.is_none() {
        return format!("The tank from above, its cover of {size} and its props.");
    }
    format!(
        "The tank from above: {} boards of {size} on their pipes{}.",
        layout.boards.len() - strips,
        if strips == 0 {
            ""
        } else {
            ", and a strip without holes at the end"
        }
    )
}

/// Under the drawing of a board.
pub fn board_caption(layout: &LayoutOutcome, floats: bool, units: UnitSystem) -> String {
    format!(
        "{}: {} holes of {}.",
        if floats { "One board" } else { "The cover" },
        layout.holes.len(),
        Shown(units).mm(layout.hole_diameter_mm)
    )
}

/// Under the drawing of sheets that are cut alike.
pub fn sheet_caption(count: usize, pieces: usize, offcuts: usize) -> String {
    format!(
        "{}: {pieces} {} from each; {}.",
        if count == 1 {
            "One sheet".to_owned()
        } else {
            format!("{count} sheets alike")
        },
        if pieces == 1 { "piece" } else { "pieces" },
        match offcuts {
            0 => "nothing is left".to_owned(),
            1 => "1 offcut, dashed".to_owned(),
            offcuts => format!("{offcuts} offcuts, dashed"),
        }
    )
}

/// A length in a drawing.
pub fn drawn_length(mm: f64, units: UnitSystem) -> String {
    show(Dimension::Length, mm / 10.0, units)
}

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
