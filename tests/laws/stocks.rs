//! Laws of stock solutions.

use std::cell::Cell;

use slackwater::advice::Material;
use slackwater::plan::{Dosing, Example, Field, Pick, ProblemKind, Rule};
use slackwater::{Outcome, solve};

use crate::chemistry::{ROUNDING, SEARCHES, close, count};
use crate::plans::{for_sound_plans, get, set};

#[test]
fn stocks_of_twice_the_strength_are_used_by_half() {
    const STRENGTHS: [Field; 3] = [
        Field::StockACalciumNitrate,
        Field::StockBBlend,
        Field::StockBMagnesiumSulfate,
    ];
    let compared = Cell::new(0);
    for_sound_plans(102, |plan, _| {
        let mut single = plan.clone();
        single.fertilizer.dosing = Pick::Known(Dosing::Stocks);
        let mut double = single.clone();
        for field in STRENGTHS {
            set(&mut double, field, 2.0 * get(&single, field));
        }
        let (Ok(single), Ok(double)) = (solve(&single), solve(&double)) else {
            return;
        };
        count(&compared);
        let volumes = |outcome: &Outcome| -> Vec<f64> {
            let doses = outcome.fertilizer.doses.iter();
            doses
                .filter(|it| matches!(it.material, Material::StockA | Material::StockB))
                .filter_map(|it| it.volume_ml)
                .collect()
        };
        let (one, two) = (volumes(&single), volumes(&double));
        assert_eq!((one.len(), two.len()), (2, 2));
        for (one, two) in one.iter().zip(&two) {
            assert!(close(*one, 2.0 * two, SEARCHES), "{one} {two}");
        }
        for (one, two) in single.stocks.iter().zip(&double.stocks) {
            assert!(close(
                2.0 * one.serves_containers,
                two.serves_containers,
                SEARCHES
            ));
            assert!(close(2.0 * one.serves_heads, two.serves_heads, SEARCHES));
            for (one, two) in one.contents.iter().zip(&two.contents) {
                assert!(close(2.0 * one.g_per_l, two.g_per_l, ROUNDING));
            }
            // What stays clear at twice the strength stays clear at this.
            assert!(one.clear || !two.clear);
        }
        // The same solution in the end.
        let (one, two) = (&single.fertilizer, &double.fertilizer);
        assert!(close(
            one.elements_mg_per_l.k,
            two.elements_mg_per_l.k,
            SEARCHES
        ));
        assert!((single.solution.ph - double.solution.ph).abs() < 1e-4);
    });
    assert!(compared.get() > 60, "only {} comparisons", compared.get());
}

#[test]
fn a_stock_is_clear_at_the_strength_said_and_not_above() {
    let (clouded, over) = (Cell::new(0), Cell::new(0));
    for_sound_plans(104, |plan, _| {
        let mut plan = plan.clone();
        plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
        set(&mut plan, Field::StoreTemperature, 2.0);
        set(&mut plan, Field::StockBBlend, 300.0);
        let Ok(outcome) = solve(&plan) else { return };
        let stock = &outcome.stocks[1];
        assert_eq!(stock.clear, stock.strongest_pct == Some(100.0), "{stock:?}");
        let Some(strongest) = stock.strongest_pct else {
            return;
        };
        if stock.clear {
            return;
        }
        count(&clouded);
        if stock.dissolving_pct > 100.0 {
            count(&over);
        }
        // The search ends within a per cent.
        for (share, clear) in [(0.98, true), (1.02, false)] {
            let mut other = plan.clone();
            for field in [Field::StockBBlend, Field::StockBMagnesiumSulfate] {
                set(
                    &mut other,
                    field,
                    get(&plan, field) * share * strongest / 100.0,
                );
            }
            if let Ok(other) = solve(&other) {
                assert_eq!(other.stocks[1].clear, clear, "{share} of {stock:?}");
            }
        }
    });
    assert!(
        clouded.get() > 20 && over.get() > 10,
        "{} not clear, {} for want of water",
        clouded.get(),
        over.get()
    );
}

#[test]
fn stocks_that_meet_are_clear_once_thinned_as_said() {
    let met = Cell::new(0);
    for_sound_plans(105, |plan, _| {
        let mut plan = plan.clone();
        plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
        let Ok(outcome) = solve(&plan) else { return };
        let together = outcome.stocks_together.expect("two stocks");
        count(&met);
        // More calcium against less sulfate and the other way: the middle is worse than one end.
        let worst = |index: usize| together.mixtures[index].saturation.worst();
        let last = together.mixtures.len() - 1;
        assert!(together.saturation.worst() >= worst(0).min(worst(last)));
        let clear = together.saturation.worst() <= 0.0;
        match together.clear_when_thinned_times {
            Some(times) => assert_eq!(clear, times <= 1.0, "{times}"),
            None => assert!(!clear),
        }
    });
    assert!(met.get() > 60, "only {}", met.get());
}

#[test]
fn a_batch_of_stock_serves_as_many_as_it_holds_doses() {
    for_sound_plans(103, |plan, outcome| {
        for (stock, dose) in outcome.stocks.iter().zip(&outcome.fertilizer.doses) {
            assert_eq!(stock.material, dose.material);
            let poured = stock.serves_containers * dose.volume_ml.unwrap_or_default() / 1000.0;
            assert!(close(poured, get(plan, Field::StockVolume), ROUNDING));
            let heads = stock.serves_containers * f64::from(outcome.fill.plants);
            assert!(close(stock.serves_heads, heads, ROUNDING));
        }
    });
}

#[test]
fn a_salt_that_cannot_dissolve_in_the_cold_is_refused_with_its_limit() {
    // Magnesium sulfate at 0 °C: 18.2 % of the saturated solution without its water (CRC Handbook),
    // 2.048 times as much as heptahydrate, in a solution of 1.20 kg/L (from memory).
    const DENSITY_FROM_MEMORY: f64 = 0.02;
    let by_hand = 0.182 * 2.048 * 1200.0;
    let mut plan = Example::CoveredTank.plan();
    set(&mut plan, Field::StoreTemperature, 0.0);
    set(&mut plan, Field::StockBMagnesiumSulfate, 490.0);
    let problems = solve(&plan).expect_err("more than dissolves");
    let [problem] = problems.as_slice() else {
        panic!("{problems:?}")
    };
    assert_eq!(problem.field, Some(Field::StockBMagnesiumSulfate));
    let ProblemKind::Conflict { rule, limit, .. } = problem.kind else {
        panic!("{problem:?}")
    };
    assert_eq!(rule, Rule::DissolvesInStore);
    assert!(
        (limit / by_hand - 1.0).abs() < DENSITY_FROM_MEMORY,
        "{limit}"
    );
    set(&mut plan, Field::StockBMagnesiumSulfate, limit - 0.1);
    assert!(solve(&plan).is_ok());
    // A warmer store dissolves more.
    set(&mut plan, Field::StockBMagnesiumSulfate, 490.0);
    set(&mut plan, Field::StoreTemperature, 15.0);
    assert!(solve(&plan).is_ok());
}
