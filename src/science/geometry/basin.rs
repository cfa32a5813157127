//! A vessel with what stands in it: the volume that is left for the solution.

use super::invert::invert;
use super::problem::{depth_within, volume_within};
use super::{GeometryProblem, HorizontalPipes, Vessel, area_of, length_of, metres, volume_of};
use crate::science::units::{Area, Length, Volume};

/// The number of evenly spaced depths at which the pipes are held against the vessel. Both areas
/// change slowly with depth, so a tighter grid would find no other verdict.
const FIT_CHECKS: u32 = 256;

/// A vessel less the pipes on its floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Basin {
    vessel: Vessel,
    pipes: Option<HorizontalPipes>,
    depth_max: f64,
    capacity: f64,
    /// Depth (m) above which the pipes only take away a constant volume, at most the rim.
    pipe_top: f64,
    /// Free volume (m³) below that depth.
    volume_at_pipe_top: f64,
    /// Volume (m³) that the pipes displace there.
    displaced: f64,
}

impl Basin {
    /// A vessel and the pipes that lie on its floor, if any.
    ///
    /// # Errors
    /// [`GeometryProblem::PipesDoNotFit`] when the pipes leave no free surface at one of 256 evenly
    /// spaced depths up to their top or the rim. Whether a pipe is longer than the floor is not
    /// judged here.
    ///
    /// Source: closed form, the difference of the two volumes.
    ///
    /// ```
    /// use slackwater::science::geometry::{Basin, GeometryProblem, HorizontalPipes, Vessel};
    /// use slackwater::science::units::{Length, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// let pipes = |count| HorizontalPipes::new(cm(6.0), None, cm(120.0), count);
    /// assert!(Basin::new(tray.clone(), Some(pipes(9)?)).is_ok());
    /// let eleven = Basin::new(tray, Some(pipes(11)?));
    /// assert!(matches!(eleven, Err(GeometryProblem::PipesDoNotFit { .. })));
    /// # Ok::<(), GeometryProblem>(())
    /// ```
    pub fn new(vessel: Vessel, pipes: Option<HorizontalPipes>) -> Result<Self, GeometryProblem> {
        let depth_max = metres(vessel.depth_max());
        let pipe_top = pipes.map_or(0.0, |pipes| pipes.top().min(depth_max));
        if let Some(pipes) = pipes {
            for step in 1..=FIT_CHECKS {
                let depth = pipe_top * (f64::from(step) / f64::from(FIT_CHECKS));
                let taken = pipes.displaced_at(depth).1;
                let offered = vessel.content_at(depth).1;
                if taken > 0.0 && taken >= offered {
                    return Err(GeometryProblem::PipesDoNotFit {
                        depth: length_of(depth),
                        pipes: area_of(taken),
                        vessel: area_of(offered),
                    });
                }
            }
        }
        let displaced = pipes.map_or(0.0, |pipes| pipes.displaced_at(pipe_top).0);
        Ok(Self {
            depth_max,
            capacity: vessel.content_at(depth_max).0 - displaced,
            pipe_top,
            volume_at_pipe_top: vessel.content_at(pipe_top).0 - displaced,
            displaced,
            vessel,
            pipes,
        })
    }

    /// The vessel without the pipes.
    pub fn vessel(&self) -> &Vessel {
        &self.vessel
    }

    /// The pipes on the floor.
    pub fn pipes(&self) -> Option<&HorizontalPipes> {
        self.pipes.as_ref()
    }

    /// The inside height of the vessel.
    pub fn depth_max(&self) -> Length {
        length_of(self.depth_max)
    }

    /// The volume of solution when full to the rim.
    pub fn capacity(&self) -> Volume {
        volume_of(self.capacity)
    }

    /// The volume of solution at a depth, without what the pipes displace. HOT.
    ///
    /// `depth`: from 0 to [`depth_max`](Self::depth_max).
    ///
    /// # Errors
    /// [`GeometryProblem::DepthOutside`] below the floor, above the rim, or for a depth that is not
    /// a number.
    ///
    /// Source: closed form, the difference of [`Vessel::volume_at`] and
    /// [`HorizontalPipes::displaced_volume_below`].
    ///
    /// ```
    /// use slackwater::science::geometry::{Basin, HorizontalPipes, Vessel};
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// let basin = Basin::new(tray, Some(HorizontalPipes::new(cm(10.0), None, cm(100.0), 4)?))?;
    /// // 36 L less 4 half circles: 4 · 100 · π · 25 / 2 cm³ = 15.708 L
    /// assert!((basin.volume_at(cm(5.0))?.get::<liter>() - 20.292).abs() < 1e-3);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn volume_at(&self, depth: Length) -> Result<Volume, GeometryProblem> {
        Ok(volume_of(
            self.content_at(depth_within(depth, self.depth_max)?).0,
        ))
    }

    /// The free surface of the solution at a depth, without the chords of the pipes. HOT.
    ///
    /// `depth`: from 0 to [`depth_max`](Self::depth_max).
    ///
    /// # Errors
    /// [`GeometryProblem::DepthOutside`] below the floor, above the rim, or for a depth that is not
    /// a number.
    ///
    /// Source: closed form, the difference of [`Vessel::area_at`] and
    /// [`HorizontalPipes::displaced_area_at`].
    ///
    /// ```
    /// use slackwater::science::geometry::{Basin, HorizontalPipes, Vessel};
    /// use slackwater::science::units::{Length, area::square_centimeter, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// let basin = Basin::new(tray, Some(HorizontalPipes::new(cm(10.0), None, cm(100.0), 4)?))?;
    /// assert!((basin.area_at(cm(5.0))?.get::<square_centimeter>() - 3200.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn area_at(&self, depth: Length) -> Result<Area, GeometryProblem> {
        Ok(area_of(
            self.content_at(depth_within(depth, self.depth_max)?).1,
        ))
    }

    /// The depth that a volume of solution reaches, exact to 1e-12 of itself (with the same
    /// exception as [`Vessel::depth_at`]).
    ///
    /// `volume`: from 0 to [`capacity`](Self::capacity).
    ///
    /// # Errors
    /// [`GeometryProblem::VolumeOutside`] for a negative volume, more than the capacity, or not a
    /// number.
    ///
    /// Source: as [`Vessel::depth_at`].
    ///
    /// ```
    /// use slackwater::science::geometry::{Basin, HorizontalPipes, Vessel};
    /// use slackwater::science::units::{Length, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// let basin = Basin::new(tray, Some(HorizontalPipes::new(cm(10.0), None, cm(100.0), 4)?))?;
    /// let depth = basin.depth_at(basin.volume_at(cm(7.0))?)?;
    /// assert!((depth.get::<centimeter>() - 7.0).abs() < 1e-11);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn depth_at(&self, volume: Volume) -> Result<Length, GeometryProblem> {
        let volume = volume_within(volume, self.capacity)?;
        // Pipes lift the level, so the level without them is a start from below.
        let guess = self.vessel.depth_of(volume, -1.0);
        Ok(length_of(self.depth_of(volume, guess)))
    }

    /// The same as [`depth_at`](Self::depth_at), faster when `guess` is near: the level an hour
    /// ago. HOT.
    ///
    /// `volume`: from 0 to [`capacity`](Self::capacity). `guess`: any depth; a useless one costs
    /// time, never accuracy.
    ///
    /// # Errors
    /// [`GeometryProblem::VolumeOutside`] for a negative volume, more than the capacity, or not a
    /// number.
    ///
    /// Source: as [`Vessel::depth_at`].
    ///
    /// ```
    /// use slackwater::science::geometry::{Basin, Vessel};
    /// use slackwater::science::units::{Length, Volume, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let basin = Basin::new(Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?, None)?;
    /// let depth = basin.depth_near(Volume::new::<liter>(36.0), cm(5.01))?;
    /// assert!((depth.get::<centimeter>() - 5.0).abs() < 1e-11);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn depth_near(&self, volume: Volume, guess: Length) -> Result<Length, GeometryProblem> {
        let volume = volume_within(volume, self.capacity)?;
        Ok(length_of(self.depth_of(volume, metres(guess))))
    }

    /// Free volume (m³) and free surface (m²) at a checked depth (m).
    fn content_at(&self, depth: f64) -> (f64, f64) {
        let (volume, area) = self.vessel.content_at(depth);
        match &self.pipes {
            Some(pipes) if depth < self.pipe_top => {
                let (displaced, taken) = pipes.displaced_at(depth);
                (volume - displaced, area - taken)
            }
            Some(pipes) => (volume - self.displaced, area - pipes.displaced_at(depth).1),
            None => (volume, area),
        }
    }

    /// The depth (m) of a checked volume (m³), beginning at `guess` (m).
    fn depth_of(&self, volume: f64, guess: f64) -> f64 {
        if volume <= 0.0 {
            return 0.0;
        }
        if volume >= self.volume_at_pipe_top {
            return self.vessel.depth_of(volume + self.displaced, guess);
        }
        invert(
            |depth| self.content_at(depth),
            volume,
            0.0,
            self.pipe_top,
            guess,
        )
    }
}
