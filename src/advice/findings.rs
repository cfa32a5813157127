//! What a grower should know about a plan: checks passed, cautions and plain stops, each with the
//! figures behind it.

use serde::{Serialize, Serializer};

use super::boards::{LEAST_LEFT_CM, SOUND_GAP_CM};
use super::outcome::{BoardsOutcome, Doses, Fill, SeasonOutcome};
use crate::catalog::shelters::Shelter;
use crate::plan::{Field, Method, Sound, Unusual};
use crate::season::MajorNutrient;

/// How grave a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Weight {
    /// The plan fails here.
    Stop,
    /// It may work, look again.
    Caution,
    /// A check that passed.
    Sound,
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finding {
    /// How grave.
    pub weight: Weight,
    /// What, with its figures.
    #[serde(flatten)]
    pub fact: Fact,
}

/// What was found. Figures are in the unit that their name ends with.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "fact", rename_all = "snake_case")]
#[expect(missing_docs, reason = "the names of the figures say what they are")]
pub enum Fact {
    /// The charge lasts to harvest.
    Lasts { left_l: f64 },
    /// The charge is used up before harvest.
    RunsOut { day: u32, short_l: f64 },
    /// The target mass is not reached within the days that are followed.
    NotReached { head_g: f64, days: u32 },
    /// Solution per plant against common practice.
    PerPlant {
        volume_l: f64,
        low_l: f64,
        high_l: f64,
    },
    /// The pots stand deeper or less deep in the solution than is usual at planting.
    Immersion {
        immersion_cm: f64,
        low_cm: f64,
        high_cm: f64,
    },
    /// The pots hang above the solution at planting.
    PotsHangAbove { by_cm: f64 },
    /// The container cannot hold what was planned.
    Overflows,
    /// The moist air gap at harvest against common practice.
    Gap {
        gap_cm: f64,
        low_cm: f64,
        high_cm: f64,
    },
    /// The boards sink.
    BoardsSink,
    /// The boards lie on the pipes from the first day.
    RestAtPlanting { floats_from_depth_cm: f64 },
    /// The boards float when planted.
    Floats { clearance_cm: f64 },
    /// The boards still float at the end, so no air gap opens.
    NeverRest,
    /// Little solution is left under the boards.
    LittleLeft { depth_cm: f64, low_cm: f64 },
    /// No pipe size leaves a sound gap.
    NoPipeFits,
    /// A nutrient runs short before harvest.
    Short {
        nutrient: MajorNutrient,
        supply_g: f64,
        need_g: f64,
        day: Option<u32>,
    },
    /// All five major nutrients last.
    NutrientsLast,
    /// The solution is strong at the end.
    StrongAtEnd {
        ec_ms_per_cm: f64,
        limit_ms_per_cm: f64,
    },
    /// Much of the nitrogen is urea.
    Urea { share_pct: f64 },
    /// The container is too heavy to lift.
    Heavy { mass_kg: f64, limit_kg: f64 },
    /// The load on the floor.
    FloorLoad {
        load_kg_per_m2: f64,
        limit_kg_per_m2: f64,
    },
    /// Open water that children can reach.
    OpenWater,
    /// Fertilizer and stock solutions.
    Salts,
    /// Lamps and electricity near water.
    Electricity,
    /// Stocks never meet undiluted.
    StocksApart,
    /// The season is warmer than the crop likes.
    Warm { mean_c: f64, limit_c: f64 },
    /// Little light.
    Dim { light_mol: f64, limit_mol: f64 },
    /// More radiation than a clear sky gives.
    BrighterThanClearSky,
    /// The growth model was not validated for this crop.
    NotValidated,
    /// A value that is allowed but seldom met.
    Unusual {
        #[serde(serialize_with = "path")]
        field: Field,
        got: f64,
        low: f64,
        high: f64,
    },
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the signature that serde asks for"
)]
fn path<S: Serializer>(field: &Field, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(&field.path())
}

/// Solution per plant before planting, L: common practice, no source.
const PER_PLANT_L: (f64, f64) = (4.0, 8.0);
/// Depth of the pot's foot in the solution at planting, cm: common practice, no source.
const IMMERSION_CM: (f64, f64) = (2.0, 3.0);
/// Conductivity above which lettuce grows less, mS/cm: about twice the 1.3 dS/m of a soil extract
/// (Maas 1990) at which yield begins to fall.
const STRONG_MS_PER_CM: f64 = 2.6;
/// Mass that one adult should not lift alone, kg: common practice, no source.
const LIFT_KG: f64 = 20.0;
/// Load of a floor or bench that wants a look at what it can bear, kg/m²: residential floors are
/// commonly designed for about 200 kg/m², balconies and benches often for less; from memory.
const FLOOR_KG_PER_M2: f64 = 150.0;
/// Urea of all nitrogen from which its slowness matters: common practice, no source.
const UREA_SHARE: f64 = 0.10;
/// Daily light below which leafy greens stretch, mol/m²: Plants 2024, 13:652 names 12; a caution
/// only well below it.
const DIM_MOL: f64 = 8.0;

/// All findings of a plan, the gravest first.
pub(super) fn findings(
    sound: &Sound,
    fill: &Fill,
    overflows: bool,
    doses: &Doses,
    season: &SeasonOutcome,
    boards: Option<&BoardsOutcome>,
) -> Vec<Finding> {
    let mut list = List(Vec::new());
    water(&mut list, fill, season);
    planting(&mut list, sound, fill, overflows);
    if let Some(boards) = boards {
        on_boards(&mut list, season, boards);
    }
    feeding(&mut list, doses, season);
    climate(&mut list, sound, season);
    safety(&mut list, sound, fill, doses);
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

struct List(Vec<Finding>);

impl List {
    fn add(&mut self, weight: Weight, fact: Fact) {
        self.0.push(Finding { weight, fact });
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

fn water(list: &mut List, fill: &Fill, season: &SeasonOutcome) {
    let used_up = season.harvest_day.is_none() && season.left_l <= 0.0;
    if used_up {
        list.add(
            Weight::Stop,
            Fact::RunsOut {
                day: season.days_followed,
                short_l: (season.needed_l - fill.volume_l).max(0.0),
            },
        );
    } else if season.harvest_day.is_none() {
        list.add(
            Weight::Stop,
            Fact::NotReached {
                head_g: season.head_g,
                days: season.days_followed,
            },
        );
    } else {
        list.add(
            Weight::Sound,
            Fact::Lasts {
                left_l: season.left_l,
            },
        );
    }
    let (low_l, high_l) = PER_PLANT_L;
    list.judge(
        (low_l..=high_l).contains(&fill.per_plant_l),
        Fact::PerPlant {
            volume_l: fill.per_plant_l,
            low_l,
            high_l,
        },
    );
}

fn planting(list: &mut List, sound: &Sound, fill: &Fill, overflows: bool) {
    if overflows {
        list.add(Weight::Stop, Fact::Overflows);
    }
    let immersion_cm = fill.pot_immersion_cm;
    if immersion_cm < 0.0 {
        list.add(
            Weight::Stop,
            Fact::PotsHangAbove {
                by_cm: -immersion_cm,
            },
        );
    } else if sound.container.fill_depth.is_some()
        || sound.container.method == Method::FloatingBoards
    {
        // A worked-out fill gives the immersion that was asked for; its own field is judged there.
        let (low_cm, high_cm) = IMMERSION_CM;
        // Boards set the immersion by their thickness; a little more or less does no harm.
        let slack = if sound.container.method == Method::FloatingBoards {
            0.7
        } else {
            0.05
        };
        list.judge(
            (low_cm - slack..=high_cm + slack).contains(&immersion_cm),
            Fact::Immersion {
                immersion_cm,
                low_cm,
                high_cm,
            },
        );
    }
}

fn on_boards(list: &mut List, season: &SeasonOutcome, boards: &BoardsOutcome) {
    use super::boards::PipeVerdict;
    if boards.draught_mm.is_none() {
        list.add(Weight::Stop, Fact::BoardsSink);
        return;
    }
    if boards.floats_at_planting {
        list.add(
            Weight::Sound,
            Fact::Floats {
                clearance_cm: boards.clearance_at_planting_cm,
            },
        );
    } else {
        list.add(
            Weight::Stop,
            Fact::RestAtPlanting {
                floats_from_depth_cm: boards.floats_from_depth_cm,
            },
        );
    }
    if boards.rest_day.is_none() {
        list.add(Weight::Stop, Fact::NeverRest);
    } else if season.left_l > 0.0 {
        let (low_cm, high_cm) = SOUND_GAP_CM;
        list.judge(
            (low_cm..=high_cm).contains(&boards.gap_at_harvest_cm),
            Fact::Gap {
                gap_cm: boards.gap_at_harvest_cm,
                low_cm,
                high_cm,
            },
        );
        if boards.depth_at_harvest_cm < LEAST_LEFT_CM {
            list.add(
                Weight::Caution,
                Fact::LittleLeft {
                    depth_cm: boards.depth_at_harvest_cm,
                    low_cm: LEAST_LEFT_CM,
                },
            );
        }
    }
    if !boards
        .pipes
        .iter()
        .any(|row| row.verdict == PipeVerdict::Sound)
    {
        list.add(Weight::Caution, Fact::NoPipeFits);
    }
}

fn feeding(list: &mut List, doses: &Doses, season: &SeasonOutcome) {
    let mut all_last = true;
    for balance in &season.nutrients {
        if balance.need_g > balance.supply_g {
            all_last = false;
            list.add(
                Weight::Caution,
                Fact::Short {
                    nutrient: balance.nutrient,
                    supply_g: balance.supply_g,
                    need_g: balance.need_g,
                    day: balance.runs_short_day,
                },
            );
        }
    }
    if all_last {
        list.add(Weight::Sound, Fact::NutrientsLast);
    }
    if season.left_l > 0.0 && season.ec_at_end_ms_per_cm > STRONG_MS_PER_CM {
        list.add(
            Weight::Caution,
            Fact::StrongAtEnd {
                ec_ms_per_cm: season.ec_at_end_ms_per_cm,
                limit_ms_per_cm: STRONG_MS_PER_CM,
            },
        );
    }
    let nitrogen = doses.elements_mg_per_l.n;
    let urea = doses.nitrogen_forms_mg_per_l.urea;
    if nitrogen > 0.0 && urea / nitrogen > UREA_SHARE {
        list.add(
            Weight::Caution,
            Fact::Urea {
                share_pct: 100.0 * urea / nitrogen,
            },
        );
    }
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

fn safety(list: &mut List, sound: &Sound, fill: &Fill, doses: &Doses) {
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
    if !doses.stocks.is_empty() {
        list.add(Weight::Caution, Fact::StocksApart);
    }
    list.add(Weight::Caution, Fact::Salts);
    if sound.climate.shelter == Shelter::Lamps {
        list.add(Weight::Caution, Fact::Electricity);
    }
}
