//! Figures and parts of a tank that is built.

use super::choices::Worded;
use super::figures::show;
use super::say::*;
use crate::advice::{
    BoardsOutcome, BuildOutcome, Fact, LayoutOutcome, LevelBy, Outcome, StructureFact,
};
use crate::plan::{Dimension, StandsOn, UnitSystem, significant};

/// Figures in the reader's units.
pub(super) struct Shown(pub(super) UnitSystem);

impl Shown {
    pub(super) fn of(&self, dimension: Dimension, value: f64) -> String {
        show(dimension, value, self.0)
    }

    pub(super) fn cm(&self, value: f64) -> String {
        self.of(Dimension::Length, value)
    }

    pub(super) fn mm(&self, value: f64) -> String {
        self.of(Dimension::SmallLength, value)
    }

    pub(super) fn kg(&self, value: f64) -> String {
        self.of(Dimension::Weight, value)
    }

    pub(super) fn span(&self, (low, high): (f64, f64)) -> String {
        format!("{} to {}", self.mm(low), self.mm(high))
    }

    /// Length by width, from millimetres.
    pub(super) fn sheet(&self, (length, width): (f64, f64)) -> String {
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
            (None, StandsOn::Ground | StandsOn::Slab) => frame_checks_ground().to_owned(),
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
                LevelBy::SpiritLevel => build_parts_spirit_level(),
                LevelBy::WaterLevel => build_parts_water_level(),
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
