//! Figures and parts of a tank that is built.

use super::choices::{Called, Worded};
use super::figures::{on_length, rounded, show};
use super::say::*;
use crate::advice::{
    BoardsOutcome, BuildOutcome, Fact, LayoutOutcome, LevelBy, LinerOutcome, Outcome,
    StructureFact, TimberOutcome,
};
use crate::catalog::Keyed;
use crate::plan::{Dimension, StandsOn, UnitSystem};

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
        BuildSpan {
            high: &self.mm(high),
            low: &self.mm(low),
        }
        .text()
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
    let depths = [boards.draught_mm, boards.draught_at_end_mm].map(|depth| {
        depth.map_or_else(
            || build_check_under_water().to_owned(),
            |depth| shown.mm(depth),
        )
    });
    rows.push(row(build_check_draught(), depths.join(", "), none()));
    if let (Some(sag), Some(range)) = (made.sag_mm, made.sag_range_mm) {
        rows.push(row(
            build_check_board_sag(),
            format!("{} ({})", shown.mm(sag), shown.span(range)),
            build_check_up_to(&shown.mm(made.sag_limit_mm)),
        ));
    }
    rows.push(row(
        build_check_pipe_spacing(),
        shown.cm(made.pipe.spacing_mm / 10.0),
        build_check_least_sag(&shown.cm(made.best_pipe_spacing_mm / 10.0)),
    ));
    if let (Some(first), Some(last)) = (made.gap_along_cm.first(), made.gap_along_cm.last()) {
        rows.push(row(
            build_check_gap(),
            BuildSpan {
                high: &shown.cm(last.gap_cm),
                low: &shown.cm(first.gap_cm),
            }
            .text(),
            none(),
        ));
    }
    if let Some((least, low)) = clear {
        rows.push(row(
            build_check_clear_gap(),
            shown.cm(least),
            build_check_or_more(&shown.cm(low)),
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
        build_check_metacentric(),
        heights.join(", "),
        build_check_above_zero().to_owned(),
    ));
    if let (Some(dip), Some(freeboard)) = (made.edge_dip_mm, made.freeboard_mm) {
        rows.push(row(
            build_check_edge_dip(),
            shown.mm(dip),
            build_check_up_to(&shown.mm(freeboard)),
        ));
    }
    let room = shown.span(made.clearance_limits_mm);
    rows.push(row(
        build_check_room(),
        format!(
            "{}, {}",
            shown.mm(made.clearance_across_mm),
            shown.mm(made.clearance_along_mm)
        ),
        room,
    ));
    let ballast = made.pipe.ballast_kg_per_m;
    rows.push(row(
        &build_check_ballast(shown.0.key()),
        format!(
            "{}; {}",
            on_length(ballast, shown.0),
            shown.kg(made.pipe.ballast_total_kg)
        ),
        if ballast > 0.0 {
            BuildCheckLift {
                units: shown.0.key(),
                lift: &on_length(made.pipe.lift_kg_per_m, shown.0),
            }
            .text()
        } else {
            build_check_no_ballast().to_owned()
        },
    ));
    rows.push(row(
        build_check_uptake(),
        shown.kg(made.water_uptake_kg),
        none(),
    ));
}

fn frame_checks(build: &BuildOutcome, shown: &Shown, rows: &mut Vec<Vec<String>>) {
    if let Some(cover) = &build.cover {
        rows.push(row(
            build_check_cover_load(),
            shown.of(Dimension::FloorLoad, cover.load_kg_per_m2),
            String::new(),
        ));
        rows.push(row(
            build_check_cover_sag(),
            format!(
                "{} ({})",
                shown.mm(cover.sag_mm),
                shown.span(cover.sag_range_mm)
            ),
            build_check_up_to(&shown.mm(cover.sag_limit_mm)),
        ));
        rows.push(row(
            build_check_cover_gap(),
            shown.cm(cover.clear_gap_cm),
            String::new(),
        ));
    }
    let timber = &build.timber;
    let (force, moment) = push(build, shown.0);
    rows.push(row(
        &build_check_push(shown.0.key()),
        format!("{force}; {moment}"),
        String::new(),
    ));
    let stress = |mpa| shown.of(Dimension::Stress, mpa);
    rows.push(row(
        build_check_bending(),
        stress(timber.stress_mpa),
        build_check_up_to(&stress(timber.stress_limit_mpa)),
    ));
    rows.push(row(
        build_check_bulge(),
        shown.mm(timber.bulge_mm),
        build_check_up_to(&shown.mm(timber.bulge_limit_mm)),
    ));
    rows.push(row(
        build_check_weight(),
        format!(
            "{}; {}",
            shown.kg(build.total_mass_kg),
            shown.kg(build.solution_mass_kg)
        ),
        String::new(),
    ));
    let load = |value| shown.of(Dimension::FloorLoad, value);
    rows.push(row(
        build_check_load(),
        load(build.load_kg_per_m2),
        match (build.rating_kg_per_m2, build.stands_on) {
            (Some(rating), _) => build_check_up_to(&load(rating)),
            (None, StandsOn::Ground | StandsOn::Slab) => frame_checks_ground().to_owned(),
            (None, _) => build_check_rating_unknown().to_owned(),
        },
    ));
    if let Some(leg) = build.load_per_leg_kg {
        rows.push(row(build_check_leg(), shown.kg(leg), String::new()));
    }
}

/// The push on each metre of side and its moment, on each foot in US units.
pub(super) fn push(build: &BuildOutcome, units: UnitSystem) -> (String, String) {
    let metres = Dimension::Run.saved(1.0, units);
    let on_side = |dimension, on_metre: f64| show(dimension, on_metre * metres, units);
    (
        on_side(Dimension::Force, build.side_force_n_per_m),
        on_side(Dimension::Moment, build.side_moment_n_m),
    )
}

/// What is made, in the order of the job.
pub fn build_parts(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let shown = Shown(units);
    let (Some(build), Some(layout)) = (&outcome.build, &outcome.layout) else {
        return Vec::new();
    };
    let level = match build.level_by {
        LevelBy::SpiritLevel => build_parts_spirit_level(),
        LevelBy::WaterLevel => build_parts_water_level(),
    };
    let mut lines = vec![
        level.to_owned(),
        frame(&build.timber, &shown),
        build_parts_cushion(&shown.of(Dimension::Area, build.liner.cushion_m2)),
        liner(&build.liner, &shown),
    ];
    if let Some(boards) = &outcome.boards {
        let pipe = &boards.structure.pipe;
        lines.push(
            BuildPartsPipes {
                count: &pipe.count.to_string(),
                ends: &pipe.ends.word(),
                size: &pipe.size.word(),
                spacing: &shown.cm(pipe.spacing_mm / 10.0),
            }
            .text(),
        );
    }
    if let Some(cover) = build.cover.as_ref().filter(|cover| cover.prop_rows > 0) {
        let props = cover.props_at_mm.iter().map(|at| shown.cm(at / 10.0));
        lines.push(
            BuildPartsProps {
                height: &shown.cm(cover.prop_height_mm / 10.0),
                places: &props.collect::<Vec<_>>().join(", "),
            }
            .text(),
        );
    }
    lines.push(
        BuildPartsHoles {
            units: units.key(),
            density: &rounded(layout.plants_per_m2 * Dimension::Area.saved(1.0, units), 3),
            diameter: &shown.mm(layout.hole_diameter_mm),
            holes: &layout.hole_count.to_string(),
            sheets: &layout.sheets.to_string(),
            size: &shown.sheet(layout.sheet_mm),
        }
        .text(),
    );
    lines.push(
        BuildPartsDrain {
            hose: &shown.mm(25.0),
            minutes: &rounded(build.drain_minutes, 2),
        }
        .text(),
    );
    lines.push(build_parts_children(units.key()));
    lines
}

fn frame(timber: &TimberOutcome, shown: &Shown) -> String {
    let frame = BuildPartsFrame {
        height: &shown.cm(timber.height_mm / 10.0),
        long: &shown.cm(timber.long_mm / 10.0),
        short: &shown.cm(timber.short_mm / 10.0),
        timber: &timber.size.called(shown.0),
    }
    .text();
    let posts = if timber.mid_braces == 0 {
        build_parts_posts().to_owned()
    } else {
        BuildPartsPostsAndBraces {
            braces: &timber.mid_braces.to_string(),
            spacing: &shown.cm(timber.brace_spacing_mm / 10.0),
        }
        .text()
    };
    format!("{frame} {posts}")
}

fn liner(liner: &LinerOutcome, shown: &Shown) -> String {
    BuildPartsLiner {
        layers: &liner.layers.to_string(),
        length: &shown.cm(liner.length_cm),
        overlap: &shown.cm(liner.overlap_cm),
        staples: &liner.staples.to_string(),
        width: &shown.cm(liner.width_cm),
    }
    .text()
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
            let from = row.first().map(|hole| shown.cm(hole.y_mm / 10.0));
            HoleRow {
                from: &from.unwrap_or_default(),
                places: &at.join(", "),
            }
            .text()
        })
        .collect()
}
