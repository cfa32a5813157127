//! What a group of containers takes together, and the weeks of its record.

use std::cell::Cell;

use slackwater::advice::{Dose, Material};
use slackwater::catalog::Keyed;
use slackwater::plan::{CalciumNitrate, Dosing, Example, Field, Pick, WaterKind};
use slackwater::science::label::Grade;
use slackwater::science::units::Ratio;
use slackwater::science::units::ratio::percent;
use slackwater::solve;
use time::Duration;

use crate::chemistry::{ROUNDING, close, count};
use crate::dates::day;
use crate::plans::{for_sound_plans, get, set};

/// Grams of a material among doses.
fn grams(doses: &[Dose], wanted: &Material) -> f64 {
    doses
        .iter()
        .filter(|dose| dose.material == *wanted)
        .filter_map(|dose| dose.mass_g)
        .sum()
}

#[test]
fn a_group_takes_as_many_times_as_much() {
    let (compared, of_stocks) = (Cell::new(0), Cell::new(0));
    for_sound_plans(140, |plan, _| {
        let mut single = plan.clone();
        set(&mut single, Field::Count, 1.0);
        let many = f64::from(2 + compared.get() % 29);
        let mut group = single.clone();
        set(&mut group, Field::Count, many);
        let (Ok(single), Ok(group)) = (solve(&single), solve(&group)) else {
            return;
        };
        count(&compared);
        assert!(close(
            f64::from(group.group.plants),
            many * f64::from(single.fill.plants),
            ROUNDING
        ));
        // One container alone weighs what its own stocks hold.
        assert_eq!(single.group.supplies.len(), group.group.supplies.len());
        for (one, all) in single.group.supplies.iter().zip(&group.group.supplies) {
            assert_eq!(one.material, all.material);
            let amount = |dose: &Dose| dose.mass_g.or(dose.volume_ml).expect("an amount");
            assert!(close(many * amount(one), amount(all), ROUNDING));
        }
        assert_eq!(group.group.stocks.len(), group.stocks.len());
        for (stock, strength) in group.group.stocks.iter().zip(&group.stocks) {
            count(&of_stocks);
            assert!(close(
                stock.each_ml * many / 1000.0,
                stock.volume_l,
                ROUNDING
            ));
            for content in &strength.contents {
                let weighed = grams(&stock.contents, &content.material);
                assert!(close(weighed, content.g_per_l * stock.volume_l, ROUNDING));
                assert!(grams(&group.group.supplies, &content.material) >= weighed);
            }
        }
    });
    assert!(
        compared.get() > 60 && of_stocks.get() > 4,
        "{compared:?} {of_stocks:?}"
    );
}

#[test]
fn the_nitrogen_that_is_weighed_is_the_nitrogen_in_the_containers() {
    for (key, material, nitrogen) in [
        // The grade that is printed on the bag: 15.5-0-0.
        (
            CalciumNitrate::DoubleSalt,
            Material::CalciumNitrateDoubleSalt,
            0.155,
        ),
        // Ca(NO3)2·4H2O by the standard atomic weights: 2 · 14.007 / 236.15.
        (
            CalciumNitrate::Tetrahydrate,
            Material::CalciumNitrateTetrahydrate,
            0.118_63,
        ),
    ] {
        let mut plan = Example::Bucket.plan();
        plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
        plan.fertilizer.calcium_nitrate = Pick::Known(key);
        plan.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
        set(&mut plan, Field::Count, 12.0);
        let outcome = solve(&plan).expect("sound");
        let of_total = |field| Ratio::new::<percent>(get(&plan, field));
        let blend = Material::Blend(Grade(
            [
                Field::LabelNitrogen,
                Field::LabelPhosphate,
                Field::LabelPotash,
            ]
            .map(of_total),
        ));
        let weighed = grams(&outcome.group.supplies, &material) * nitrogen
            + grams(&outcome.group.supplies, &blend) * get(&plan, Field::LabelNitrogen) / 100.0;
        let dissolved =
            outcome.fertilizer.elements_mg_per_l.n * outcome.fill.total_volume_l / 1000.0;
        // A grade is given to half a per cent of nitrogen, of 15.5.
        assert!(
            (weighed / dissolved - 1.0).abs() < 0.01,
            "{}: {weighed} g weighed, {dissolved} g dissolved",
            key.key()
        );
    }
}

#[test]
fn a_record_has_every_week_and_the_last_day() {
    let weeks_seen = Cell::new(0);
    for_sound_plans(141, |_, outcome| {
        let (weeks, days) = (&outcome.weeks, &outcome.season.days);
        let first = day(&outcome.calendar.transplanting);
        assert_eq!(weeks[0].day, 0);
        assert_eq!(
            weeks.last().map(|week| week.day),
            Some(outcome.season.days_followed)
        );
        for pair in weeks.windows(2) {
            let apart = pair[1].day - pair[0].day;
            assert!(apart == 7 || (apart < 7 && pair[1].day == outcome.season.days_followed));
        }
        for week in weeks {
            count(&weeks_seen);
            assert_eq!(day(&week.date) - first, Duration::days(i64::from(week.day)));
            let then = days
                .iter()
                .find(|then| then.day == week.day)
                .expect("a day");
            assert!(close(week.ec_ms_per_cm, then.ec_ms_per_cm, ROUNDING));
            // Rim, surface and floor on one tape.
            let rim = outcome.fill.depth_cm + outcome.fill.below_rim_cm;
            assert!((week.below_rim_cm + then.level_cm - rim).abs() < 1e-9);
        }
        // The level only falls.
        for pair in weeks.windows(2) {
            assert!(pair[1].below_rim_cm >= pair[0].below_rim_cm - 1e-9);
        }
    });
    assert!(weeks_seen.get() > 300, "{weeks_seen:?}");
}
