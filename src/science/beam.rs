//! A beam of one cross-section under one load all along, on two or more supports, with an overhang
//! at either end: boards on their pipes, covers on their props, the side of a tank between braces.

mod span;
mod strip;

pub use strip::{strip_rigidity, strip_stress};

use super::structure::{
    StructureProblem, StructureQuantity, above_zero, metres, newtons, not_negative, within,
};
use crate::science::units::length::meter;
use crate::science::units::{BendingMoment, FlexuralRigidity, Force, ForcePerLength, Length};
use span::Span;

/// A beam by its length and the places of its supports.
#[derive(Clone, Debug, PartialEq)]
pub struct Beam {
    /// m.
    length: f64,
    /// Rising, m from the left end.
    supports: Vec<f64>,
}

/// What a load does to a beam. Deflections count downwards, moments are positive where the beam
/// sags and negative where it hogs.
#[derive(Clone, Debug, PartialEq)]
pub struct Bent {
    /// What each support bears.
    pub reactions: Vec<Force>,
    /// Moment over each support.
    pub support_moments: Vec<BendingMoment>,
    /// Moment in the middle of each span.
    pub middle_moments: Vec<BendingMoment>,
    /// Deflection in the middle of each span.
    pub middle_deflections: Vec<Length>,
    /// Deflection of the left and the right end.
    pub tip_deflections: [Length; 2],
    /// The greatest moment anywhere, without its sign.
    pub greatest_moment: BendingMoment,
    /// How far the lowest point lies below the supports; zero where none does.
    pub lowest: Length,
    /// Where the lowest point lies, from the left end.
    pub lowest_at: Length,
    /// How far the highest point stands above the supports; zero where none does.
    pub highest: Length,
}

impl Beam {
    /// A beam by its length and the places of its supports.
    ///
    /// `length`: m, above zero. `supports`: at least two, rising, each m from the left end and
    /// within the beam.
    ///
    /// # Errors
    /// [`StructureProblem::TooFewSupports`]; [`StructureProblem::OutOfRange`] for a length out of
    /// range and for a support outside the beam or not beyond the one before.
    ///
    /// ```
    /// use slackwater::science::beam::Beam;
    /// use slackwater::science::units::{Length, length::meter};
    ///
    /// let m = |value: f64| Length::new::<meter>(value);
    /// assert!(Beam::new(m(1.2), &[m(0.3), m(0.9)]).is_ok());
    /// assert!(Beam::new(m(1.2), &[m(0.6)]).is_err());
    /// ```
    pub fn new(length: Length, supports: &[Length]) -> Result<Self, StructureProblem> {
        let length = above_zero(StructureQuantity::Length, length.get::<meter>())?;
        if supports.len() < 2 {
            return Err(StructureProblem::TooFewSupports {
                got: supports.len(),
            });
        }
        let mut places: Vec<f64> = Vec::with_capacity(supports.len());
        for support in supports {
            // A support a billionth of the length past the one before is no second support.
            let low = places.last().map_or(0.0, |last| last + length * 1e-9);
            places.push(within(
                StructureQuantity::Support,
                support.get::<meter>(),
                low,
                length,
            )?);
        }
        Ok(Self {
            length,
            supports: places,
        })
    }

    /// What a load, the same all along, does to the beam.
    ///
    /// `load`: downwards, N/m, zero or more. `rigidity`: bending stiffness of the section, N m²,
    /// above zero. Deflections must stay small against the spans; shear is left out.
    ///
    /// # Errors
    /// [`StructureProblem::OutOfRange`] for the first argument out of range.
    ///
    /// Source: theorem of three moments (Clapeyron 1857) with the moments of both overhangs,
    /// −w a²/2; deflections from Young and Budynas, Roark's Formulas for Stress and Strain, table
    /// 8.1, by superposition (from memory).
    ///
    /// ```
    /// use slackwater::science::beam::Beam;
    /// use slackwater::science::units::{Force, Length, force::newton, length::meter};
    ///
    /// let m = |value: f64| Length::new::<meter>(value);
    /// let newton_metres = Force::new::<newton>(1.0) * m(1.0);
    /// let bent = Beam::new(m(1.0), &[m(0.0), m(1.0)])?
    ///     .bend(Force::new::<newton>(50.0) / m(1.0), newton_metres * m(30.0))?;
    /// // w L²/8 and 5 w L⁴/(384 E I)
    /// assert!((bent.greatest_moment.value - 6.25).abs() < 1e-12);
    /// assert!((bent.lowest.get::<meter>() - 5.0 * 50.0 / (384.0 * 30.0)).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::structure::StructureProblem>(())
    /// ```
    pub fn bend(
        &self,
        load: ForcePerLength,
        rigidity: FlexuralRigidity,
    ) -> Result<Bent, StructureProblem> {
        let load = not_negative(StructureQuantity::Load, load.value)?;
        let rigidity = above_zero(StructureQuantity::Rigidity, rigidity.value)?;
        let left = self.supports.first().copied().unwrap_or(0.0);
        let right = self.length - self.supports.last().copied().unwrap_or(self.length);
        let moments = self.moments(load, left, right);
        let spans: Vec<Span> = self
            .supports
            .windows(2)
            .zip(moments.windows(2))
            .map(|(places, moments)| Span {
                start: places[0],
                length: places[1] - places[0],
                load,
                rigidity,
                moments: (moments[0], moments[1]),
            })
            .collect();
        let tip = |slope_outwards: f64, overhang: f64| {
            slope_outwards * overhang
                + load * overhang * overhang * overhang * overhang / (8.0 * rigidity)
        };
        let tips = [
            tip(-spans.first().map_or(0.0, Span::slope_at_start), left),
            tip(spans.last().map_or(0.0, Span::slope_at_end), right),
        ];
        let mut reactions = vec![0.0; moments.len()];
        for (index, span) in spans.iter().enumerate() {
            let half = load * span.length / 2.0;
            let turn = (span.moments.1 - span.moments.0) / span.length;
            reactions[index] += half + turn;
            reactions[index + 1] += half - turn;
        }
        if let Some(first) = reactions.first_mut() {
            *first += load * left;
        }
        if let Some(last) = reactions.last_mut() {
            *last += load * right;
        }
        let mut lowest = (0.0, self.supports.first().copied().unwrap_or(0.0));
        let mut highest: f64 = 0.0;
        for (deflection, at) in [(tips[0], 0.0), (tips[1], self.length)]
            .into_iter()
            .chain(spans.iter().map(|span| span.extreme(1.0)))
        {
            if deflection > lowest.0 {
                lowest = (deflection, at);
            }
        }
        for up in [-tips[0], -tips[1]]
            .into_iter()
            .chain(spans.iter().map(|span| -span.extreme(-1.0).0))
        {
            highest = highest.max(up);
        }
        let greatest = spans
            .iter()
            .map(Span::greatest_moment)
            .chain(moments.iter().map(|moment| moment.abs()))
            .fold(0.0, f64::max);
        let moment = |value: f64| newtons(value) * metres(1.0);
        Ok(Bent {
            reactions: reactions.into_iter().map(newtons).collect(),
            support_moments: moments.iter().map(|&value| moment(value)).collect(),
            middle_moments: spans
                .iter()
                .map(|span| moment(span.moment(span.length / 2.0)))
                .collect(),
            middle_deflections: spans
                .iter()
                .map(|span| metres(span.deflection(span.length / 2.0)))
                .collect(),
            tip_deflections: tips.map(metres),
            greatest_moment: moment(greatest),
            lowest: metres(lowest.0),
            lowest_at: metres(lowest.1),
            highest: metres(highest),
        })
    }

    /// Moments over the supports, by elimination along the three-moment equations.
    fn moments(&self, load: f64, left: f64, right: f64) -> Vec<f64> {
        let count = self.supports.len();
        let mut moments = vec![0.0; count];
        moments[0] = -load * left * left / 2.0;
        moments[count - 1] = -load * right * right / 2.0;
        // Row of support i: L1 M(i-1) + 2 (L1 + L2) M(i) + L2 M(i+1) = -w (L1³ + L2³) / 4.
        let span = |index: usize| self.supports[index + 1] - self.supports[index];
        let mut pivots = vec![(0.0, 0.0); count];
        for index in 1..count - 1 {
            let (before, after) = (span(index - 1), span(index));
            let mut diagonal = 2.0 * (before + after);
            let mut wanted = -load * (before * before * before + after * after * after) / 4.0;
            if index == 1 {
                wanted -= before * moments[0];
            } else {
                let (above, above_wanted) = pivots[index - 1];
                let factor = before / above;
                diagonal -= factor * before;
                wanted -= factor * above_wanted;
            }
            if index == count - 2 {
                wanted -= after * moments[count - 1];
            }
            pivots[index] = (diagonal, wanted);
        }
        for index in (1..count - 1).rev() {
            let (diagonal, wanted) = pivots[index];
            let known = if index == count - 2 {
                0.0
            } else {
                span(index) * moments[index + 1]
            };
            moments[index] = (wanted - known) / diagonal;
        }
        moments
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bent(length: f64, supports: &[f64], load: f64, rigidity: f64) -> Bent {
        let supports: Vec<Length> = supports.iter().map(|&at| metres(at)).collect();
        Beam::new(metres(length), &supports)
            .and_then(|beam| {
                beam.bend(
                    newtons(load) / metres(1.0),
                    newtons(rigidity) * metres(1.0) * metres(1.0),
                )
            })
            .expect("in range")
    }

    #[test]
    fn supports_bear_the_whole_load_and_a_mirror_image_bends_alike() {
        let one = bent(2.0, &[0.1, 0.7, 1.8], 40.0, 25.0);
        let mirror = bent(2.0, &[0.2, 1.3, 1.9], 40.0, 25.0);
        let all: f64 = one.reactions.iter().map(|force| force.value).sum();
        assert!((all - 80.0).abs() < 1e-9);
        for index in 0..3 {
            let (a, b) = (one.reactions[index], mirror.reactions[2 - index]);
            assert!((a - b).value.abs() < 1e-9);
        }
        assert!((one.lowest - mirror.lowest).value.abs() < 1e-9);
        assert!(
            (one.tip_deflections[0] - mirror.tip_deflections[1])
                .value
                .abs()
                < 1e-12
        );
    }

    #[test]
    fn many_equal_spans_come_to_the_clamped_beam() {
        // Far from the ends a continuous beam bends as one clamped at both ends, w L²/12 and
        // w L⁴/384 (Roark, table 8.1, case 2d, from memory).
        let places: Vec<f64> = (0..=20).map(f64::from).collect();
        let bent = bent(20.0, &places, 12.0, 1.0);
        assert!((bent.support_moments[10].value + 1.0).abs() < 1e-4);
        assert!((bent.middle_deflections[10].value - 12.0 / 384.0).abs() < 1e-4);
    }

    #[test]
    fn names_what_is_out_of_range() {
        let beam = |length: f64, at: &[f64]| {
            Beam::new(
                metres(length),
                &at.iter().map(|&x| metres(x)).collect::<Vec<_>>(),
            )
        };
        assert!(matches!(
            beam(1.0, &[0.5]),
            Err(StructureProblem::TooFewSupports { got: 1 })
        ));
        for (length, at) in [
            (f64::NAN, [0.1, 0.2]),
            (1.0, [0.2, 0.2]),
            (1.0, [0.5, 1.1]),
            (1.0, [-0.1, 0.9]),
            (0.0, [0.0, 0.0]),
        ] {
            assert!(matches!(
                beam(length, &at),
                Err(StructureProblem::OutOfRange { .. })
            ));
        }
        let sound = beam(1.0, &[0.0, 1.0]).expect("sound");
        let load = newtons(f64::INFINITY) / metres(1.0);
        let rigidity = newtons(1.0) * metres(1.0) * metres(1.0);
        assert!(sound.bend(load, rigidity).is_err());
        assert!(
            sound
                .bend(newtons(1.0) / metres(1.0), rigidity * 0.0)
                .is_err()
        );
    }
}
