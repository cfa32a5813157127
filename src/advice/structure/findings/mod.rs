//! Verdicts on boards, covers and frames, each with the changes of one field that mend it.
//!
//! A mend is found by trying: the same function that gives the figure is asked again with one field
//! changed, in steps that a tape can read, until the verdict is sound.
//!
//! Here stand the verdicts on boards, their pipes and their holes.

mod tank;

use super::boards::{self, SAG_LIMIT_MM, STRESS_LIMIT_PCT};
use super::fact::StructureFact;
use super::layout::{LEAST_FOAM_MM, foam, sheets_needed};
use super::mends::{rearranged, rearranged_apart};
use super::mm;
use crate::advice::Change;
use crate::advice::facts::{Fact, Weight};
use crate::advice::findings::List;
use crate::advice::mend::{self, first};
use crate::advice::outcome::{BoardsOutcome, LayoutOutcome, Outcome};
use crate::catalog::covers::CoverMaterial;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::PipeMaterial;
use crate::plan::{Boards, Build, Field, PipeEnds, Sound};
use crate::science::units::length::centimeter;
use crate::science::units::{Length, Mass};
use crate::season::Tank;
use tank::{clearances, frame};

/// What rounding may leave of a figure that just meets its limit.
const EXACT: f64 = 1e-6;
/// Least moist air anywhere under a resting board, cm: common practice, no source.
const LEAST_CLEAR_CM: f64 = 2.0;

/// What verdicts are given on.
pub struct Structure<'a> {
    /// The plan.
    pub sound: &'a Sound,
    /// Its tank.
    pub tank: &'a Tank,
    /// A head at the end.
    pub head: Mass,
}

pub(super) fn cm(value: f64) -> Length {
    Length::new::<centimeter>(value)
}

impl Structure<'_> {
    /// All verdicts.
    pub fn findings(&self, list: &mut List, outcome: &Outcome) {
        if let (Some(boards), Some(made)) = (&self.sound.container.boards, &outcome.boards) {
            self.at_rest(list, boards, made);
            self.afloat(list, made);
            pipes(list, boards, made);
            clearances(list, boards, made, outcome.layout.as_ref());
        }
        if let (Some(build), Some(made), Some(layout)) =
            (&self.sound.build, &outcome.build, &outcome.layout)
        {
            self.holes(list, build, layout);
            self.cover(list, build, made);
            frame(list, build, made, self.tank);
        }
    }

    fn at_rest(&self, list: &mut List, plan: &Boards, made: &BoardsOutcome) {
        let burden = boards::burden(self.sound, self.tank, self.head);
        let supports = |boards: &Boards| boards::resting(boards, burden).supports.len();
        let structure = &made.structure;
        let (Some(sag_mm), Some(stress_pct)) = (structure.sag_mm, structure.stress_pct) else {
            list.add_with(
                Weight::Stop,
                Fact::Structure(StructureFact::TooFewPipes {
                    pipes: u32::try_from(supports(plan)).unwrap_or(u32::MAX),
                }),
                rearranged(plan, |boards| supports(boards) >= 2),
            );
            return;
        };
        let holds = |boards: &Boards, most_mm: f64| {
            let rest = boards::resting(boards, burden);
            rest.sag.is_some_and(|sag| mm(sag) <= most_mm)
                && rest
                    .stress
                    .is_some_and(|stress| stress.value * 100.0 <= STRESS_LIMIT_PCT)
        };
        list.judge_with(
            sag_mm <= SAG_LIMIT_MM && stress_pct <= STRESS_LIMIT_PCT,
            Fact::Structure(StructureFact::BoardSag {
                sag_mm,
                limit_mm: SAG_LIMIT_MM,
                stress_pct,
            }),
            || {
                let mut mends = rearranged(plan, |boards| holds(boards, SAG_LIMIT_MM));
                mends.extend(self.thicker(|_, boards| holds(boards, SAG_LIMIT_MM)));
                mends
            },
        );
        if made.rest_day.is_none() {
            return;
        }
        let drop_cm = structure.floor_drop_cm;
        let floor_cm = drop_cm / 2.0;
        let least = structure.clear_gap_cm - floor_cm;
        list.judge_with(
            least >= LEAST_CLEAR_CM,
            Fact::Structure(StructureFact::ClearGap {
                clear_gap_cm: least,
                sag_mm,
                floor_cm,
                low_cm: LEAST_CLEAR_CM,
            }),
            || {
                let gap = made.gap_at_harvest_cm;
                let most_mm = 10.0 * (gap - floor_cm - LEAST_CLEAR_CM);
                let mut mends: Vec<Change> = first(Field::FloorDrop, drop_cm, -0.1, 500, |drop| {
                    structure.clear_gap_cm - drop / 2.0 >= LEAST_CLEAR_CM
                })
                .into_iter()
                .collect();
                mends.extend(rearranged_apart(plan, |boards| {
                    boards::resting(boards, burden)
                        .sag
                        .is_some_and(|sag| mm(sag) <= most_mm)
                }));
                let sunk = sag_mm / 10.0 + floor_cm;
                mends.extend(self.other_pipe(made, |gap| gap - sunk >= LEAST_CLEAR_CM));
                mends
            },
        );
    }

    fn afloat(&self, list: &mut List, made: &BoardsOutcome) {
        let structure = &made.structure;
        let heights = [
            structure.metacentric_height_cm,
            structure.metacentric_height_at_end_cm,
        ];
        let least = heights.into_iter().flatten().fold(f64::INFINITY, f64::min);
        if least <= 0.0 {
            list.add_with(
                Weight::Stop,
                Fact::Structure(StructureFact::TurnsOver {
                    metacentric_height_cm: least,
                }),
                self.wider().into_iter().collect(),
            );
        } else if let (Some(dip_mm), Some(freeboard_mm)) =
            (structure.edge_dip_mm, structure.freeboard_mm)
        {
            list.judge_with(
                dip_mm <= freeboard_mm,
                Fact::Structure(StructureFact::EdgeDip {
                    dip_mm,
                    freeboard_mm,
                }),
                || {
                    self.thicker(|sound, plan| {
                        Tank::new(sound, None).is_ok_and(|tank| {
                            boards::dips(sound, &tank, plan, self.head)
                                .is_some_and(|(dip, freeboard)| dip <= freeboard)
                        })
                    })
                },
            );
        }
        list.judge_with(
            structure.extruded,
            Fact::Structure(StructureFact::WaterUptake {
                uptake_kg: structure.water_uptake_kg,
                board_kg: made.board_mass_kg,
            }),
            || vec![mend::choice(Field::Foam, Foam::ExtrudedIv)],
        );
    }

    fn holes(&self, list: &mut List, build: &Build, layout: &LayoutOutcome) {
        let least = |edge: f64, between: Option<f64>| between.map_or(edge, |it| it.min(edge));
        let foam_mm = least(layout.edge_left_mm, layout.between_holes_mm);
        if foam_mm < LEAST_FOAM_MM - EXACT {
            let wide = |sound: &Sound| {
                let (edge, between) = foam(sound, build);
                least(edge, between) >= LEAST_FOAM_MM - EXACT
            };
            let crop = &self.sound.crop;
            let board = foam_board(self.sound, build);
            let mut mends = Vec::new();
            let edge = crop.edge.map_or(0.0, |edge| edge.get::<centimeter>());
            mends.extend(first(Field::EdgeDistance, edge, 0.1, 300, |edge| {
                let mut sound = self.sound.clone();
                sound.crop.edge = Some(cm(edge));
                cm(edge * 2.0) <= board.0.min(board.1) && wide(&sound)
            }));
            for (field, now, across) in [
                (Field::SpacingAcross, crop.spacing.0, true),
                (Field::SpacingAlong, crop.spacing.1, false),
            ] {
                mends.extend(first(field, now.get::<centimeter>(), 0.1, 300, |value| {
                    let mut sound = self.sound.clone();
                    if across {
                        sound.crop.spacing.0 = cm(value);
                    } else {
                        sound.crop.spacing.1 = cm(value);
                    }
                    cm(value) <= board.0.min(board.1) && wide(&sound)
                }));
            }
            list.add_with(
                Weight::Caution,
                Fact::Structure(StructureFact::HolesWeaken {
                    foam_mm,
                    low_mm: LEAST_FOAM_MM,
                }),
                mends,
            );
        }
        let fabric = build
            .cover
            .is_some_and(|cover| cover.material == CoverMaterial::Fabric);
        if layout.sheets == 0 && !fabric {
            let tried =
                |sheet: (Length, Length)| sheets_needed(self.sound, &Build { sheet, ..*build }) > 0;
            let (length, width) = build.sheet;
            let mut mends = Vec::new();
            mends.extend(first(
                Field::SheetLength,
                length.get::<centimeter>(),
                1.0,
                2000,
                |value| tried((cm(value), width)),
            ));
            mends.extend(first(
                Field::SheetWidth,
                width.get::<centimeter>(),
                1.0,
                1000,
                |value| tried((length, cm(value))),
            ));
            list.add_with(
                Weight::Caution,
                Fact::Structure(StructureFact::SheetTooSmall),
                mends,
            );
        }
    }
}

/// Length and width of what the holes are in.
fn foam_board(sound: &Sound, build: &Build) -> (Length, Length) {
    sound
        .container
        .boards
        .map_or((build.inside.0, build.inside.1), |boards| {
            (boards.length, boards.width)
        })
}

fn pipes(list: &mut List, plan: &Boards, made: &BoardsOutcome) {
    let pipe = &made.structure.pipe;
    list.judge_with(
        pipe.lift_kg_per_m <= 0.0,
        Fact::Structure(StructureFact::PipesLift {
            lift_kg_per_m: pipe.lift_kg_per_m,
            ballast_kg_per_m: pipe.ballast_kg_per_m,
        }),
        || {
            let sinks = |wanted: PipeEnds| {
                pipe.lift_by_ends_kg_per_m
                    .iter()
                    .any(|&(ends, lift)| ends == wanted && lift <= 0.0)
            };
            if plan.pipes.ends == PipeEnds::Capped && sinks(PipeEnds::Open) {
                vec![mend::choice(Field::PipeEnds, PipeEnds::Open)]
            } else if plan.pipes.ends == PipeEnds::Capped {
                Vec::new()
            } else {
                vec![mend::choice(Field::PipeMaterial, PipeMaterial::Pvc)]
            }
        },
    );
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped"
)]
pub(super) fn whole(value: f64) -> u32 {
    value.clamp(0.0, 1e9) as u32
}
