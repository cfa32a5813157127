//! Letters for a table of means: two that share a letter cannot be told apart.

use super::pairs::Pair;

/// The letters of each treatment, counted from zero for 'a'; the largest mean begins with 'a'.
///
/// `means`: in any unit. `pairs`: comparisons of them; pairs of treatments without a mean are left
/// out. Two treatments share a letter exactly when they do not differ.
///
/// Source: Piepho (2004), An algorithm for a letter-based representation of all-pairwise
/// comparisons, Journal of Computational and Graphical Statistics 13:456–466 (insert and absorb).
///
/// ```
/// use slackwater::science::statistics::{Pair, letters};
/// let pair = Pair { first: 0, second: 1, difference: -3.0, half_width: 1.0, p: 0.01 };
/// assert_eq!(letters(&[1.0, 4.0], &[pair]), [vec![1], vec![0]]);
/// ```
pub fn letters(means: &[f64], pairs: &[Pair]) -> Vec<Vec<usize>> {
    let count = means.len();
    let mut order: Vec<usize> = (0..count).collect();
    order.sort_by(|&a, &b| means[b].total_cmp(&means[a]));
    let mut columns = vec![vec![true; count]];
    for it in pairs.iter().filter(|it| it.differ()) {
        let (a, b) = (it.first, it.second);
        if a >= count || b >= count || a == b {
            continue;
        }
        let mut next = Vec::new();
        for column in columns {
            if column[a] && column[b] {
                for out in [a, b] {
                    let mut part = column.clone();
                    part[out] = false;
                    next.push(part);
                }
            } else {
                next.push(column);
            }
        }
        columns = absorbed(&next);
    }
    // In the order of the means, so that letters run down the table.
    columns.sort_by_key(|column| {
        order
            .iter()
            .map(|&treatment| !column[treatment])
            .collect::<Vec<bool>>()
    });
    (0..count)
        .map(|treatment| {
            (0..columns.len())
                .filter(|&column| columns[column][treatment])
                .collect()
        })
        .collect()
}

/// Columns without those that say nothing beyond another.
fn absorbed(columns: &[Vec<bool>]) -> Vec<Vec<bool>> {
    let within = |small: &[bool], large: &[bool]| small.iter().zip(large).all(|(s, l)| !s || *l);
    columns
        .iter()
        .enumerate()
        .filter(|(index, column)| {
            !columns.iter().enumerate().any(|(other, large)| {
                // Of two that are equal the first stays.
                other != *index
                    && within(column, large)
                    && (!within(large, column) || other < *index)
            })
        })
        .map(|(_, column)| column.clone())
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(means: &[f64], apart: &[(usize, usize)]) -> Vec<Vec<usize>> {
        let pairs: Vec<Pair> = apart
            .iter()
            .map(|&(first, second)| Pair {
                first,
                second,
                difference: 2.0,
                half_width: 1.0,
                p: 0.01,
            })
            .collect();
        let found = letters(means, &pairs);
        for a in 0..means.len() {
            for b in a + 1..means.len() {
                let shared = found[a].iter().any(|letter| found[b].contains(letter));
                let differ = apart.contains(&(a, b)) || apart.contains(&(b, a));
                assert_eq!(shared, !differ, "{a} {b}: {found:?}");
            }
        }
        found
    }

    #[test]
    fn a_letter_is_shared_exactly_by_those_that_do_not_differ() {
        assert_eq!(check(&[3.0, 2.0, 1.0], &[]), [[0], [0], [0]]);
        assert_eq!(
            check(&[3.0, 2.0, 1.0], &[(0, 2)]),
            [vec![0], vec![0, 1], vec![1]]
        );
        assert_eq!(
            check(&[1.0, 3.0, 2.0], &[(0, 1), (0, 2), (1, 2)]),
            [vec![2], vec![0], vec![1]]
        );
        // The example of the source's kind: overlapping and not nested.
        check(
            &[8.0, 7.0, 6.0, 5.0, 4.0, 3.0, 2.0, 1.0],
            &[
                (0, 6),
                (0, 7),
                (0, 4),
                (1, 5),
                (2, 7),
                (3, 6),
                (2, 5),
                (4, 7),
            ],
        );
    }
}
