//! What a grower should know about a plan: checks passed, cautions and plain stops, each with the
//! figures behind it.
//!
//! Long, because one list in the order of the job: each fact stands beside the next that it must
//! agree with.

use super::boards::{LEAST_LEFT_CM, SOUND_GAP_CM};
use super::facts::{Fact, Finding, Weight};
use super::growing_on::STRONG_MS_PER_CM;
use super::outcome::{BoardsOutcome, Fill, Outcome, SeasonOutcome};
use super::practice;
use super::roots::{Change, RootsFailureKind};
use super::structure::findings::Structure;
use super::{fill, mend};
use crate::catalog::shelters::Shelter;
use crate::plan::{Field, Method, Sound, Unusual};
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::Length;
use crate::science::units::MassConcentration;
use crate::science::units::length::centimeter;
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::molar_concentration::millimole_per_liter;
use crate::season::{Tank, seedling};

/// Solution per plant before planting, L: common practice, no source.
const PER_PLANT_L: (f64, f64) = (4.0, 8.0);
/// Depth of the pot's foot in the solution at planting, cm: common practice, no source.
const IMMERSION_CM: (f64, f64) = (2.0, 3.0);
/// Anions over cations of a label from which something is amiss: a label is rounded to a per cent or
/// two; common practice, no source.
const ANIONS_OVER_CATIONS: f64 = 1.2;
/// pH that leafy greens take well: Oklahoma State University Extension HLA-6722 gives 6.0 to 7.0
/// for lettuce (from memory), Cornell 5.6 to 6.0 (from memory).
const PH: (f64, f64) = (5.3, 7.0);
/// Drift of the pH over a season that is worth a word: common practice, no source.
const PH_DRIFT: f64 = 0.7;
/// Miss of a recipe's target, per cent of it, that is worth a word: common practice, no source.
const TARGET_MISS_PCT: f64 = 10.0;
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

fn on_boards(
    list: &mut List,
    structure: &Structure,
    season: &SeasonOutcome,
    boards: &BoardsOutcome,
) {
    use super::boards::PipeVerdict;
    if boards.draught_mm.is_none() {
        let planted = seedling(&structure.sound.crop);
        let mends = structure.thicker(|sound, _| {
            Tank::new(sound, None)
                .is_ok_and(|tank| tank.draught(tank.floating_mass(planted)).is_some())
        });
        list.add_with(Weight::Stop, Fact::BoardsSink, mends);
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
        let mends = mend::first(
            Field::FillDepth,
            structure
                .sound
                .container
                .fill_depth
                .map_or(boards.floats_from_depth_cm, |depth| {
                    depth.get::<centimeter>()
                }),
            0.1,
            3000,
            |depth| {
                let depth = Length::new::<centimeter>(depth);
                depth <= structure.tank.basin().depth_max()
                    && fill::fill(structure.sound, structure.tank, Some(depth))
                        .is_ok_and(|filled| filled.state.afloat)
            },
        );
        list.add_with(
            Weight::Stop,
            Fact::RestAtPlanting {
                floats_from_depth_cm: boards.floats_from_depth_cm,
            },
            mends.into_iter().collect(),
        );
    }
    if boards.rest_day.is_none() {
        let mends = structure.other_pipe(boards, |_| true);
        list.add_with(Weight::Stop, Fact::NeverRest, mends.into_iter().collect());
    } else if season.left_l > 0.0 {
        let (low_cm, high_cm) = SOUND_GAP_CM;
        list.judge_with(
            (low_cm..=high_cm).contains(&boards.gap_at_harvest_cm),
            Fact::Gap {
                gap_cm: boards.gap_at_harvest_cm,
                low_cm,
                high_cm,
            },
            || structure.other_pipe(boards, |_| true).into_iter().collect(),
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

fn feeding(list: &mut List, outcome: &Outcome) {
    let (doses, season) = (&outcome.fertilizer, &outcome.season);
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
    if let Some(fitting) = doses.fitting {
        let fits = fitting.low_ms_per_cm <= fitting.high_ms_per_cm;
        list.judge(
            fits,
            Fact::FittingStrength {
                low_ms_per_cm: fitting.low_ms_per_cm,
                high_ms_per_cm: fitting.high_ms_per_cm,
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
    for target in &doses.targets {
        if target
            .miss_pct
            .is_some_and(|miss| miss.abs() > TARGET_MISS_PCT)
        {
            list.add(
                Weight::Caution,
                Fact::TargetMissed {
                    nutrient: target.nutrient,
                    form: target.form,
                    target_mg_per_l: target.target_mg_per_l,
                    reached_mg_per_l: target.reached_mg_per_l,
                },
            );
        }
    }
}

/// Whether the ions of a blend's label can balance. Cations without anions are explained by sulfate
/// or chloride that labels leave out; many more anions than cations only by sodium salts or acids,
/// which few blends hold. Urea phosphate is such an acid, so a label with urea is not judged.
fn label(list: &mut List, sound: &Sound) {
    let blend = &sound.fertilizer.blend;
    let one = MassConcentration::new::<gram_per_liter>(1.0);
    let Ok(solution) = Concentrations::NONE.add(blend, one) else {
        return;
    };
    let (cations, anions) = (solution.cation_charge(), solution.anion_charge());
    let urea = blend.fraction(Nutrient::UreaN).value > 0.0;
    if !urea && anions > cations * ANIONS_OVER_CATIONS {
        list.add(
            Weight::Caution,
            Fact::LabelCharges {
                cations_mmol_per_g: cations.get::<millimole_per_liter>(),
                anions_mmol_per_g: anions.get::<millimole_per_liter>(),
            },
        );
    }
}

/// pH, what falls out, stocks, and the raw water.
fn chemistry(list: &mut List, outcome: &Outcome) {
    let ph = outcome.solution.ph;
    let (low, high) = PH;
    list.judge((low..=high).contains(&ph), Fact::Ph { ph, low, high });
    if outcome.season.left_l > 0.0 {
        let drift = outcome.season.ph_at_end - ph;
        if drift.abs() > PH_DRIFT
            && let Some(protons) = outcome.protons
        {
            list.add(
                Weight::Caution,
                Fact::PhDrift {
                    from: ph,
                    to: outcome.season.ph_at_end,
                    ammonium_share_pct: protons.ammonium_share_pct,
                    steady_ammonium_share_pct: protons.steady_ammonium_share_pct,
                },
            );
        }
    }
    if outcome.fertilizer.no_acid_needed {
        list.add(Weight::Sound, Fact::NoAcidNeeded { ph });
    }
    if outcome.solution.saturation.worst() > 0.0 {
        list.add(
            Weight::Caution,
            Fact::FallsOut {
                saturation: outcome.solution.saturation,
            },
        );
    }
    for stock in &outcome.stocks {
        list.judge(
            stock.clear,
            Fact::StockClear {
                stock: stock.material.clone(),
                contents: stock.contents.clone(),
                saturation: stock.saturation,
                dissolving_pct: stock.dissolving_pct,
                strongest_pct: stock.strongest_pct,
            },
        );
    }
    if let Some(together) = &outcome.stocks_together
        && let Some(worst) = together.worst()
    {
        list.add(
            Weight::Caution,
            Fact::StocksApart {
                saturation: worst,
                clear_when_thinned_times: together.clear_when_thinned_times,
            },
        );
    }
    if outcome.water.charge_error_pct.is_some() || outcome.water.ec_ratio.is_some() {
        list.judge(
            outcome.water.analysis_is_sound,
            Fact::WaterAnalysis {
                charge_error_pct: outcome.water.charge_error_pct,
                ec_ratio: outcome.water.ec_ratio,
            },
        );
    }
    for item in &outcome.water.restricted {
        list.add(
            if item.severe {
                Weight::Stop
            } else {
                Weight::Caution
            },
            Fact::Water { item: *item },
        );
    }
    if let Some(share_pct) = outcome.water.raw_water_share_pct {
        list.add(Weight::Caution, Fact::DiluteWater { share_pct });
    }
    if let Some(yield_pct) = outcome.season.yield_under_salt_pct
        && yield_pct < 99.0
    {
        list.add(Weight::Caution, Fact::SaltYield { yield_pct });
    }
    for next in &outcome.growing_on {
        list.judge(!next.drain, Fact::GrowOn { next: *next });
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
