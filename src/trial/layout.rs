//! Which unit gets which treatment: by chance, from a seed.

use serde::Serialize;

use crate::science::random::Random;

use crate::plan::trial::Design;

/// One independent unit where it stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Unit {
    /// Its name on the label.
    pub unit: String,
    /// Its treatment, counted from zero.
    pub treatment: usize,
    /// Its block, counted from zero; zero where there are none.
    pub block: usize,
    /// Row, counted from 1.
    pub row: u32,
    /// Column, counted from 1.
    pub column: u32,
}

/// Gives units to treatments by chance. Units are numbered from 1 along the rows.
///
/// Every layout of a completely randomised design is equally likely; in blocks, every order within
/// each block, whatever the others.
pub(super) fn draw(
    design: Design,
    treatments: usize,
    replicates: usize,
    columns: u32,
    seed: u64,
) -> Vec<Unit> {
    let mut random = Random::new(seed);
    let mut order = Vec::with_capacity(treatments * replicates);
    for _ in 0..replicates {
        let mut block: Vec<usize> = (0..treatments).collect();
        if design == Design::Blocks {
            random.shuffle(&mut block);
        }
        order.extend(block);
    }
    if design == Design::Randomised {
        random.shuffle(&mut order);
    }
    let columns = columns.max(1);
    (0_u32..)
        .zip(order)
        .map(|(place, treatment)| Unit {
            unit: (place + 1).to_string(),
            treatment,
            block: match design {
                Design::Randomised => 0,
                Design::Blocks => place as usize / treatments.max(1),
            },
            row: place / columns + 1,
            column: place % columns + 1,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_block_holds_every_treatment_once() {
        for seed in 0..50 {
            let units = draw(Design::Blocks, 3, 4, 3, seed);
            assert_eq!(units.len(), 12);
            for block in 0..4 {
                let mut own: Vec<usize> = units
                    .iter()
                    .filter(|unit| unit.block == block)
                    .map(|unit| unit.treatment)
                    .collect();
                own.sort_unstable();
                assert_eq!(own, [0, 1, 2]);
            }
        }
    }

    #[test]
    fn units_stand_in_rows() {
        let units = draw(Design::Randomised, 2, 3, 4, 1);
        let places: Vec<(u32, u32)> = units.iter().map(|unit| (unit.row, unit.column)).collect();
        assert_eq!(places, [(1, 1), (1, 2), (1, 3), (1, 4), (2, 1), (2, 2)]);
    }
}
