//! Verdicts on the tank and its cover: sag, light, the room around boards, floor and sides.

use super::{EXACT, Structure, cm, whole};
use crate::advice::Change;
use crate::advice::facts::{Fact, Weight};
use crate::advice::findings::List;
use crate::advice::mend::{self, first};
use crate::advice::outcome::{BoardsOutcome, BuildOutcome, LayoutOutcome};
use crate::advice::structure::boards::{self, CLEARANCE_MM, FLOOR_DROP_LIMIT_CM};
use crate::advice::structure::cover;
use crate::advice::structure::fact::StructureFact;
use crate::advice::structure::frame::{self, COMPETENT_FROM_CM};
use crate::advice::structure::mm;
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::timber::Timber;
use crate::plan::{Boards, Build, Field, StandsOn};
use crate::science::units::Length;
use crate::science::units::length::{centimeter, millimeter};
use crate::season::Tank;

impl Structure<'_> {
    pub(super) fn cover(&self, list: &mut List, build: &Build, made: &BuildOutcome) {
        let (Some(plan), Some(cover)) = (&build.cover, &made.cover) else {
            return;
        };
        let holds = |tried: &crate::plan::FixedCover| {
            let load = cover::load(self.sound, self.tank, build, tried, self.head);
            cover::sag(build, tried, load)
                .is_some_and(|[_, usual, _]| mm(usual) <= cover::SAG_LIMIT_MM)
        };
        list.judge_with(
            cover.sag_mm <= cover.sag_limit_mm,
            Fact::Structure(StructureFact::CoverSag {
                sag_mm: cover.sag_mm,
                limit_mm: cover.sag_limit_mm,
                prop_rows: cover.prop_rows,
                prop_height_mm: cover.prop_height_mm,
            }),
            || {
                let mut mends = Vec::new();
                let rows = f64::from(plan.prop_rows);
                mends.extend(first(Field::PropRows, rows, 1.0, 40, |rows| {
                    holds(&crate::plan::FixedCover {
                        prop_rows: whole(rows),
                        ..*plan
                    })
                }));
                let thickness = plan.thickness.get::<centimeter>();
                let container = &self.sound.container;
                let most = container.pot.height - container.pot_immersion.unwrap_or_default();
                mends.extend(first(Field::CoverThickness, thickness, 0.1, 200, |value| {
                    cm(value) < most
                        && holds(&crate::plan::FixedCover {
                            thickness: cm(value),
                            ..*plan
                        })
                }));
                mends
            },
        );
        if !cover.light_tight {
            list.add_with(
                Weight::Caution,
                Fact::Structure(StructureFact::CoverLight),
                vec![mend::choice(
                    Field::CoverMaterial,
                    CoverMaterial::ExtrudedFoam,
                )],
            );
        }
    }
}

pub(super) fn clearances(
    list: &mut List,
    plan: &Boards,
    made: &BoardsOutcome,
    layout: Option<&LayoutOutcome>,
) {
    let structure = &made.structure;
    let (low_mm, high_mm) = CLEARANCE_MM;
    let clearance_mm = structure
        .clearance_across_mm
        .min(structure.clearance_along_mm);
    let loose = |boards: &Boards| {
        let (across, along) = boards::clearances(boards);
        mm(across.min(along)) >= low_mm - EXACT
    };
    list.judge_with(
        clearance_mm >= low_mm - EXACT,
        Fact::Structure(StructureFact::Jam {
            clearance_mm,
            low_mm,
        }),
        || {
            let mut mends = Vec::new();
            let (width, length) = (
                plan.tank_width.get::<centimeter>(),
                plan.tank_length.get::<centimeter>(),
            );
            mends.extend(first(Field::Width, width, 0.1, 20, |value| {
                loose(&Boards {
                    tank_width: cm(value),
                    ..*plan
                })
            }));
            mends.extend(first(Field::Length, length, 0.1, 20, |value| {
                loose(&Boards {
                    tank_length: cm(value),
                    ..*plan
                })
            }));
            mends
        },
    );
    let strip = layout.is_some_and(|layout| layout.boards.iter().any(|place| place.strip));
    let open = |boards: &Boards| {
        let (across, along) = boards::clearances(boards);
        // A strip cut to measure closes the end; both sides share what is left across.
        let along = if strip { Length::default() } else { along };
        mm(across.max(along))
    };
    let strip_mm = open(plan);
    list.judge_with(
        strip_mm <= high_mm + EXACT,
        Fact::Structure(StructureFact::OpenStrips {
            strip_mm,
            limit_mm: high_mm,
        }),
        || {
            let mut mends = Vec::new();
            let count = f64::from(plan.count);
            let room = boards::across(plan) * boards::count(plan.tank_length, plan.along());
            mends.extend(first(Field::BoardCount, count, 1.0, 2000, |count| {
                count <= f64::from(room)
                    && open(&Boards {
                        count: whole(count),
                        ..*plan
                    }) <= high_mm + EXACT
            }));
            mends
        },
    );
    let without = layout.map_or(0, |layout| layout.boards_without_place);
    if without > 0 {
        list.add_with(
            Weight::Stop,
            Fact::Structure(StructureFact::BoardsWithoutPlace { boards: without }),
            vec![mend::number(
                Field::BoardCount,
                f64::from(plan.count - without),
            )],
        );
    }
}

pub(super) fn frame(list: &mut List, build: &Build, made: &BuildOutcome, tank: &Tank) {
    let drop_cm = build.floor_drop.get::<centimeter>();
    list.judge_with(
        drop_cm <= FLOOR_DROP_LIMIT_CM + EXACT,
        Fact::Structure(StructureFact::FloorLevel {
            drop_cm,
            limit_cm: FLOOR_DROP_LIMIT_CM,
            length_cm: build.inside.0.get::<centimeter>(),
            by: made.level_by,
        }),
        || vec![mend::number(Field::FloorDrop, FLOOR_DROP_LIMIT_CM)],
    );
    let depth = cm(made.depth_cm);
    let holds =
        |build: &Build| frame::side(build, tank.density(), depth).is_ok_and(|side| side.holds());
    let timber = &made.timber;
    list.judge_with(
        holds(build),
        Fact::Structure(StructureFact::Sides {
            bulge_mm: timber.bulge_mm,
            limit_mm: timber.bulge_limit_mm,
            stress_mpa: timber.stress_mpa,
            stress_limit_mpa: timber.stress_limit_mpa,
        }),
        || {
            let spacing = build.brace_spacing.get::<centimeter>();
            let mut mends: Vec<Change> = first(Field::BraceSpacing, spacing, -1.0, 1000, |value| {
                holds(&Build {
                    brace_spacing: cm(value),
                    ..*build
                })
            })
            .into_iter()
            .collect();
            let series = build.timber.figures().series;
            let volume = |timber: &Timber| {
                let figures = timber.figures();
                Length::new::<millimeter>(figures.thickness_mm) * figures.width_mm
            };
            mends.extend(
                Timber::ALL
                    .iter()
                    .filter(|timber| timber.figures().series == series)
                    .filter(|&&timber| holds(&Build { timber, ..*build }))
                    .min_by(|a, b| volume(a).value.total_cmp(&volume(b).value))
                    .map(|&timber| mend::choice(Field::Timber, timber)),
            );
            mends
        },
    );
    if made.depth_cm > COMPETENT_FROM_CM {
        list.add(
            Weight::Caution,
            Fact::Structure(StructureFact::AskCompetentPerson {
                depth_cm: made.depth_cm,
                limit_cm: COMPETENT_FROM_CM,
            }),
        );
    }
    if let Some(stop) = made.stop {
        list.add_with(
            Weight::Stop,
            Fact::Structure(StructureFact::DoNotBuildThere {
                stop,
                load_kg_per_m2: made.load_kg_per_m2,
                total_kg: made.total_mass_kg,
                rating_kg_per_m2: made.rating_kg_per_m2,
            }),
            vec![mend::choice(Field::StandsOn, StandsOn::Ground)],
        );
    }
}
