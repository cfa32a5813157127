//! What a grower should know about a plan: checks passed, cautions and plain stops, each with the
//! figures behind it.
//!
//! Here stand the list in the order of the job, and what is told of roots, climate and safety.

mod level;
mod solution;

use super::facts::{Fact, Finding, Weight};
use super::outcome::{Outcome, SeasonOutcome};
use super::practice;
use super::roots::{Change, RootsFailureKind};
use super::structure::findings::Structure;
use crate::catalog::shelters::Shelter;
use crate::plan::{Method, Sound, Unusual};
use level::{on_boards, planting, water};
use solution::{chemistry, feeding, label};

/// Mass that one adult should not lift alone, kg: common practice, no source.
const LIFT_KG: f64 = 20.0;
/// Load of a floor or bench that wants a look at what it can bear, kg/m²: residential floors are
/// commonly designed for about 200 kg/m², balconies and benches often for less; from memory.
const FLOOR_KG_PER_M2: f64 = 150.0;
/// Daily light below which leafy greens stretch, mol/m²: Plants 2024, 13:652 names 12; a caution
/// only well below it.
const DIM_MOL: f64 = 8.0;

/// All findings of a plan, the gravest first.
pub(super) fn findings(structure: &Structure, outcome: &Outcome, overflows: bool) -> Vec<Finding> {
    let sound = structure.sound;
    let (fill, season) = (&outcome.fill, &outcome.season);
    let mut list = List(Vec::new());
    water(&mut list, fill, season);
    planting(&mut list, sound, fill, overflows);
    if let Some(boards) = &outcome.boards {
        on_boards(&mut list, structure, season, boards);
    }
    structure.findings(&mut list, outcome);
    feeding(&mut list, outcome);
    label(&mut list, sound);
    chemistry(&mut list, outcome);
    roots(&mut list, outcome);
    climate(&mut list, sound, season);
    practice::practice(&mut list, sound, outcome);
    safety(&mut list, sound, outcome);
    for &Unusual {
        field,
        got,
        low,
        high,
    } in &sound.unusual
    {
        list.add(
            Weight::Caution,
            Fact::Unusual {
                field,
                got,
                low,
                high,
            },
        );
    }
    // Stable: within a weight the order above, which is that of the job, stays.
    list.0.sort_by_key(|finding| finding.weight);
    list.0
}

pub(super) struct List(Vec<Finding>);

impl List {
    pub(super) fn add(&mut self, weight: Weight, fact: Fact) {
        self.add_with(weight, fact, Vec::new());
    }

    /// With what mends it.
    pub fn add_with(&mut self, weight: Weight, fact: Fact, mends: Vec<Change>) {
        self.0.push(Finding {
            weight,
            fact,
            mends,
        });
    }

    /// A figure within or outside what is usual, with what would bring it within.
    pub fn judge_with(&mut self, within: bool, fact: Fact, mends: impl FnOnce() -> Vec<Change>) {
        if within {
            self.add(Weight::Sound, fact);
        } else {
            self.add_with(Weight::Caution, fact, mends());
        }
    }

    /// A figure within or outside what is usual.
    fn judge(&mut self, within: bool, fact: Fact) {
        self.add(
            if within {
                Weight::Sound
            } else {
                Weight::Caution
            },
            fact,
        );
    }
}

fn roots(list: &mut List, outcome: &Outcome) {
    let roots = &outcome.roots;
    let Some(failure) = &roots.failure else {
        list.add(
            Weight::Sound,
            Fact::RootsReach {
                day: roots.reached_day,
                contact_lost_day: roots.contact_lost_day,
            },
        );
        return;
    };
    let (day, short_cm, mends) = (failure.day, failure.short_cm, failure.mends.clone());
    list.add(
        Weight::Stop,
        match failure.kind {
            RootsFailureKind::ContactLost => Fact::ContactLost {
                day,
                short_cm,
                mends,
            },
            RootsFailureKind::RootsHang => Fact::RootsHang {
                day,
                short_cm,
                mends,
            },
        },
    );
}

fn climate(list: &mut List, sound: &Sound, season: &SeasonOutcome) {
    let limit_c = sound.crop.figures.warm_limit_c;
    if season.mean_temperature_c > limit_c {
        list.add(
            Weight::Caution,
            Fact::Warm {
                mean_c: season.mean_temperature_c,
                limit_c,
            },
        );
    }
    if season.daily_light_mol_per_m2 < DIM_MOL {
        list.add(
            Weight::Caution,
            Fact::Dim {
                light_mol: season.daily_light_mol_per_m2,
                limit_mol: DIM_MOL,
            },
        );
    }
    if super::brighter_than_clear_sky(sound) {
        list.add(Weight::Caution, Fact::BrighterThanClearSky);
    }
    if !sound.crop.figures.validated {
        list.add(Weight::Caution, Fact::NotValidated);
    }
}

fn safety(list: &mut List, sound: &Sound, outcome: &Outcome) {
    let fill = &outcome.fill;
    let tank = matches!(
        sound.container.method,
        Method::CoveredTank | Method::FloatingBoards
    );
    if tank {
        if fill.load_kg_per_m2 > FLOOR_KG_PER_M2 || fill.mass_kg > 100.0 {
            list.add(
                Weight::Caution,
                Fact::FloorLoad {
                    load_kg_per_m2: fill.load_kg_per_m2,
                    limit_kg_per_m2: FLOOR_KG_PER_M2,
                },
            );
        }
        list.add(Weight::Caution, Fact::OpenWater);
    } else if fill.mass_kg > LIFT_KG {
        list.add(
            Weight::Caution,
            Fact::Heavy {
                mass_kg: fill.mass_kg,
                limit_kg: LIFT_KG,
            },
        );
    }
    if sound.fertilizer.acid.is_some() && !outcome.fertilizer.no_acid_needed {
        list.add(Weight::Caution, Fact::Acid);
    }
    list.add(Weight::Caution, Fact::Salts);
    if sound.climate.shelter == Shelter::Lamps {
        list.add(Weight::Caution, Fact::Electricity);
    }
}
