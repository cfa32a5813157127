//! For a group that fills several containers alike: what is weighed in all, and the stock solutions
//! to prepare.

use serde::Serialize;

use super::outcome::{Dose, Material, StockOutcome};

/// What all containers of a plan take together.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Group {
    /// Net pots, and seedlings, in all.
    pub plants: u32,
    /// Everything to weigh or measure out, stock solutions taken apart into what they are made of.
    pub supplies: Vec<Dose>,
    /// Stock solutions to prepare; empty where none is used.
    pub stocks: Vec<GroupStock>,
}

/// A stock solution for all containers.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct GroupStock {
    /// A or B.
    pub material: Material,
    /// How much all containers take, L.
    pub volume_l: f64,
    /// How much each of them takes, mL.
    pub each_ml: f64,
    /// What is dissolved in that much.
    pub contents: Vec<Dose>,
}

/// The group of a plan.
pub(super) fn group(
    plants_each: u32,
    containers: u32,
    (each, all): (&[Dose], &[Dose]),
    stocks: &[StockOutcome],
) -> Group {
    let mut supplies: Vec<Dose> = Vec::new();
    let mut prepared = Vec::new();
    for (one, sum) in each.iter().zip(all) {
        let stock = stocks.iter().find(|stock| stock.material == sum.material);
        let (Some(stock), Some(all_ml)) = (stock, sum.volume_ml) else {
            supplies.push(sum.clone());
            continue;
        };
        let volume_l = all_ml / 1000.0;
        let contents: Vec<Dose> = stock
            .contents
            .iter()
            .filter(|content| content.g_per_l > 0.0)
            .map(|content| Dose {
                material: content.material.clone(),
                mass_g: Some(content.g_per_l * volume_l),
                volume_ml: None,
                brings_calcium: sum.brings_calcium,
            })
            .collect();
        supplies.extend(contents.iter().cloned());
        prepared.push(GroupStock {
            material: sum.material.clone(),
            volume_l,
            each_ml: one.volume_ml.unwrap_or_default(),
            contents,
        });
    }
    Group {
        plants: plants_each.saturating_mul(containers),
        supplies,
        stocks: prepared,
    }
}
