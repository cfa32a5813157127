//! Pipes that lie on the floor of a vessel and carry the boards.

use std::f64::consts::{FRAC_PI_2, PI};

use super::problem::positive;
use super::{Dimension, GeometryProblem, area_of, length_of, metres, volume_of};
use crate::science::units::{Area, Length, Volume};

/// Below this depth, as a part of the radius, the segment area is a difference of two nearly equal
/// numbers; its series takes over.
const SHALLOW: f64 = 0.1;

/// Equal round pipes lying flat on the floor, side by side.
///
/// Only displacement is counted: whether a capped pipe must be held down is another question.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HorizontalPipes {
    /// Outside radius, m.
    outer: f64,
    /// Inside radius, m, of open pipes; zero for capped ones.
    inner: f64,
    /// Length of all pipes together, m.
    length: f64,
    /// Displacement of all pipes under water, m³.
    displacement: f64,
}

impl HorizontalPipes {
    /// Pipes by their size and number.
    ///
    /// `outside_diameter`, `length_each`: finite and above zero. `wall`: the thickness of the wall
    /// of pipes whose open ends let the solution in, above zero and below the radius (only the wall
    /// displaces); `None` for pipes that are capped or solid. `count`: at least one.
    ///
    /// # Errors
    /// The first dimension that is out of range, a wall as thick as the radius, no pipes, or
    /// volumes beyond the range of numbers.
    ///
    /// Source: closed form.
    ///
    /// ```
    /// use slackwater::science::geometry::HorizontalPipes;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let open = HorizontalPipes::new(cm(10.0), Some(cm(0.5)), cm(100.0), 2)?;
    /// // 2 · 100 · π · (5² − 4.5²) = 950 π cm³
    /// assert!((open.displacement().get::<liter>() - 2.98451).abs() < 1e-5);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn new(
        outside_diameter: Length,
        wall: Option<Length>,
        length_each: Length,
        count: u32,
    ) -> Result<Self, GeometryProblem> {
        let outer = positive(Dimension::Diameter, outside_diameter)? / 2.0;
        let inner = match wall {
            None => 0.0,
            Some(got) => {
                let thickness = positive(Dimension::Wall, got)?;
                if thickness >= outer {
                    return Err(GeometryProblem::TooLarge {
                        dimension: Dimension::Wall,
                        got,
                        most: length_of(outer),
                    });
                }
                outer - thickness
            }
        };
        let each = positive(Dimension::Length, length_each)?;
        if count == 0 {
            return Err(GeometryProblem::NoPipes);
        }
        let length = each * f64::from(count);
        let displacement = length * PI * (outer - inner) * (outer + inner);
        if !(displacement.is_finite() && displacement > 0.0) {
            return Err(GeometryProblem::Unrepresentable);
        }
        Ok(Self {
            outer,
            inner,
            length,
            displacement,
        })
    }

    /// How high the pipes stand above the floor: their outside diameter.
    pub fn height(&self) -> Length {
        length_of(2.0 * self.outer)
    }

    /// The inside diameter of open pipes; zero for capped ones.
    pub fn bore(&self) -> Length {
        length_of(2.0 * self.inner)
    }

    /// The volume that all pipes displace once they are covered.
    pub fn displacement(&self) -> Volume {
        volume_of(self.displacement)
    }

    /// The volume that the pipes displace below a depth. HOT.
    ///
    /// `depth`: of the solution above the floor; nothing is displaced at zero and below, everything
    /// at the height of the pipes and above. A depth that is not a number gives a volume that is
    /// not a number.
    ///
    /// Source: closed form, the area of a circular segment of height t in a circle of radius R,
    /// R² arccos((R − t)/R) − (R − t) √(2 R t − t²), times the length.
    ///
    /// ```
    /// use slackwater::science::geometry::HorizontalPipes;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let capped = HorizontalPipes::new(cm(10.0), None, cm(100.0), 1)?;
    /// // half covered: half of 100 · π · 5² cm³
    /// assert!((capped.displaced_volume_below(cm(5.0)).get::<liter>() - 3.92699).abs() < 1e-5);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn displaced_volume_below(&self, depth: Length) -> Volume {
        volume_of(self.displaced_at(metres(depth)).0)
    }

    /// The area that the pipes take out of the free surface at a depth: the slope of
    /// [`displaced_volume_below`](Self::displaced_volume_below), zero when the surface is not
    /// between their lowest and their highest line. HOT.
    ///
    /// `depth`: as there.
    ///
    /// Source: closed form, the chord 2 √(2 R t − t²) times the length.
    ///
    /// ```
    /// use slackwater::science::geometry::HorizontalPipes;
    /// use slackwater::science::units::{Length, area::square_centimeter, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let capped = HorizontalPipes::new(cm(10.0), None, cm(100.0), 1)?;
    /// let area = capped.displaced_area_at(cm(1.0)).get::<square_centimeter>();
    /// assert!((area - 600.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn displaced_area_at(&self, depth: Length) -> Area {
        area_of(self.displaced_at(metres(depth)).1)
    }

    /// The height of the pipes, m.
    pub(super) fn top(&self) -> f64 {
        2.0 * self.outer
    }

    /// Displaced volume (m³) and area (m²) at a depth (m).
    pub(super) fn displaced_at(&self, depth: f64) -> (f64, f64) {
        if depth <= 0.0 {
            return (0.0, 0.0);
        }
        if depth >= self.top() {
            return (self.displacement, 0.0);
        }
        let (outer, outer_chord) = segment(self.outer, depth);
        if self.inner == 0.0 {
            return (self.length * outer, self.length * outer_chord);
        }
        let (inner, inner_chord) = segment(self.inner, depth - (self.outer - self.inner));
        (
            self.length * (outer - inner),
            self.length * (outer_chord - inner_chord),
        )
    }
}

/// Area and chord of the circular segment of height `t` in a circle of radius `radius`.
fn segment(radius: f64, t: f64) -> (f64, f64) {
    if t <= 0.0 {
        return (0.0, 0.0);
    }
    let circle = PI * radius * radius;
    if t >= 2.0 * radius {
        return (circle, 0.0);
    }
    if t > radius {
        // The mirrored segment is the part that is missing, so both halves are equally exact.
        let (missing, chord) = lower_segment(radius, 2.0 * radius - t);
        return (circle - missing, chord);
    }
    lower_segment(radius, t)
}

/// The same, up to the middle.
fn lower_segment(radius: f64, t: f64) -> (f64, f64) {
    let half_chord = (t * (2.0 * radius - t)).sqrt();
    let area = if t < SHALLOW * radius {
        // R² (x − sin x) / 2 with x the central angle, as a series: x³/12 (1 − x²/20 (1 − x²/42 …)).
        let x = 4.0 * libm::asin((t / (2.0 * radius)).sqrt());
        let square = x * x;
        let series = 1.0
            - square / 20.0
                * (1.0
                    - square / 42.0
                        * (1.0
                            - square / 72.0
                                * (1.0
                                    - square / 110.0
                                        * (1.0 - square / 156.0 * (1.0 - square / 210.0)))));
        radius * radius * x * square / 12.0 * series
    } else if t < radius {
        radius * radius * libm::acos((radius - t) / radius) - (radius - t) * half_chord
    } else {
        radius * radius * FRAC_PI_2
    };
    (area, 2.0 * half_chord)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::length::meter;

    /// Closed forms leave only the rounding of a handful of operations.
    const ROUNDING: f64 = 1e-15;

    fn m(value: f64) -> Length {
        Length::new::<meter>(value)
    }

    fn pipes(wall: Option<f64>) -> HorizontalPipes {
        HorizontalPipes::new(m(0.2), wall.map(m), m(0.5), 4).expect("usable pipes")
    }

    #[test]
    fn is_exact_at_the_floor_the_middle_and_the_top() {
        let capped = pipes(None);
        let whole = 2.0 * PI * 0.1 * 0.1;
        assert_eq!(capped.displaced_at(0.0), (0.0, 0.0));
        let (half, widest) = capped.displaced_at(0.1);
        assert!((half - whole / 2.0).abs() <= ROUNDING * whole);
        assert!((widest - 0.4).abs() <= ROUNDING);
        let (full, none) = capped.displaced_at(0.2);
        assert!((full - whole).abs() <= ROUNDING * whole);
        assert!(none.abs() < f64::EPSILON);
        assert!(pipes(Some(0.01)).displaced_at(0.2).0 < full);
    }

    #[test]
    fn displacement_never_falls_with_depth() {
        for shape in [pipes(None), pipes(Some(0.004)), pipes(Some(0.09))] {
            let mut last = 0.0;
            for step in 1..=20_000 {
                let (now, area) = shape.displaced_at(0.2 * f64::from(step) / 20_000.0);
                assert!(now > last && area >= 0.0, "step {step}");
                last = now;
            }
            assert!((last - shape.displacement).abs() <= ROUNDING);
        }
    }

    #[test]
    fn series_and_closed_form_meet() {
        let below = lower_segment(1.0, SHALLOW * (1.0 - 1e-12)).0;
        let above = lower_segment(1.0, SHALLOW * (1.0 + 1e-12)).0;
        let chord = lower_segment(1.0, SHALLOW).1;
        assert!((above - below - chord * 2e-12 * SHALLOW).abs() < 1e-14);
    }

    #[test]
    fn a_thin_film_is_exact_too() {
        // For t much smaller than R the segment is a parabola: area 2/3 · chord · t.
        let (area, chord) = lower_segment(1.0, 1e-9);
        assert!((area / (2.0 / 3.0 * chord * 1e-9) - 1.0).abs() < 1e-9);
    }

    #[test]
    fn refuses_pipes_that_cannot_be() {
        let wall = HorizontalPipes::new(m(0.1), Some(m(0.05)), m(1.0), 1);
        assert!(matches!(
            wall,
            Err(GeometryProblem::TooLarge {
                dimension: Dimension::Wall,
                ..
            })
        ));
        assert_eq!(
            HorizontalPipes::new(m(0.1), None, m(1.0), 0),
            Err(GeometryProblem::NoPipes)
        );
        assert_eq!(
            HorizontalPipes::new(m(f64::NAN), None, m(1.0), 1),
            Err(GeometryProblem::NotFinite {
                dimension: Dimension::Diameter
            })
        );
        assert_eq!(
            HorizontalPipes::new(m(1e200), None, m(1.0), 1),
            Err(GeometryProblem::Unrepresentable)
        );
    }
}
