//! Laws of rain mixed into the raw water.

use std::cell::Cell;

use slackwater::advice::FirstWater;
use slackwater::plan::{AcidChoice, Dosing, Example, Field, Pick, StrengthBy, WaterKind};
use slackwater::{Outcome, solve};

use crate::chemistry::{PH, ROUNDING, SEARCHES, close, count};
use crate::plans::{for_sound_plans, set};

/// What two waters bring to a mixture adds up in proportion (conservation of mass).
#[test]
fn rain_thins_the_raw_water_in_proportion_and_rain_alone_is_rain() {
    let compared = Cell::new(0);
    for_sound_plans(121, |plan, _| {
        let mut plan = plan.clone();
        plan.fertilizer.acid = Pick::Known(AcidChoice::None);
        plan.fertilizer.dosing = Pick::Known(Dosing::DryBlend);
        plan.fertilizer.strength_by = Pick::Known(StrengthBy::Nitrogen);
        set(&mut plan, Field::TargetNitrogen, 150.0);
        let with = |share: f64| {
            let mut plan = plan.clone();
            set(&mut plan, Field::RainShare, share);
            solve(&plan)
        };
        let mut rain = plan.clone();
        rain.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
        if plan.fertilizer.water_kind == rain.fertilizer.water_kind {
            return;
        }
        let all = [with(0.0), with(25.0), with(50.0), with(100.0), solve(&rain)];
        let [Ok(none), Ok(quarter), Ok(half), Ok(whole), Ok(rain)] = all else {
            return;
        };
        count(&compared);
        // What the raw water brings of calcium and magnesium falls to what is left of it.
        let left = |of: fn(&Outcome) -> f64| {
            let bare = of(&rain);
            [&none, &quarter, &half, &whole].map(|outcome| of(outcome) - bare)
        };
        for element in [
            |outcome: &Outcome| outcome.fertilizer.elements_mg_per_l.ca,
            |outcome: &Outcome| outcome.fertilizer.elements_mg_per_l.mg,
        ] {
            let [none, quarter, half, whole] = left(element);
            // The blend is weighed to the nitrogen that the water leaves open, so it follows in
            // proportion too.
            let near = |got: f64, wanted: f64| (got - wanted).abs() <= 1e-6 * none.abs().max(1.0);
            assert!(near(quarter, 0.75 * none), "{none} {quarter}");
            assert!(near(half, 0.5 * none), "{none} {half}");
            assert!(near(whole, 0.0), "{whole}");
        }
        assert!((whole.solution.ph - rain.solution.ph).abs() <= PH);
        assert!(close(
            whole.solution.ec_ms_per_cm,
            rain.solution.ec_ms_per_cm,
            SEARCHES
        ));
        // Alkalinity falls, and with it the pH.
        let phs = [&none, &quarter, &half, &whole].map(|outcome| outcome.solution.ph);
        let alkaline = phs[0] > phs[3];
        let falls = phs.is_sorted_by(|a, b| *b <= a + PH);
        assert!(!alkaline || falls, "{phs:?}");
        let litres = half.water.rain_l;
        assert!(
            close(litres, half.fill.volume_l / 2.0, ROUNDING),
            "{litres}"
        );
    });
    assert!(compared.get() > 20, "only {} plans", compared.get());
}

#[test]
fn what_is_poured_first_leaves_room_for_the_rest() {
    for (share, first) in [
        (0.0, FirstWater::Raw),
        (0.5, FirstWater::RainAndRaw),
        (49.5, FirstWater::RainAndRaw),
        (50.0, FirstWater::Rain),
        // Thin as rain, but the rest still comes from the tap.
        (97.0, FirstWater::Rain),
        (100.0, FirstWater::Pure),
    ] {
        let mut plan = Example::Bucket.plan();
        set(&mut plan, Field::RainShare, share);
        let outcome = solve(&plan).unwrap_or_else(|problems| panic!("{problems:?}"));
        assert_eq!(outcome.water.first, first, "{share} %");
    }
    let mut rain = Example::Bucket.plan();
    rain.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
    let outcome = solve(&rain).unwrap_or_else(|problems| panic!("{problems:?}"));
    assert_eq!(outcome.water.first, FirstWater::Pure);
}
