//! How deep to fill.

use crate::plan::Sound;
use crate::science::units::length::centimeter;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Volume};
use crate::season::{Beyond, Cover, State, Tank, seedling};

/// Water between pipes and boards at planting, cm, when the fill is worked out: common practice,
/// no source.
const CLEARANCE_CM: f64 = 1.0;

/// As [`CLEARANCE_CM`].
pub(super) fn clearance() -> Length {
    Length::new::<centimeter>(CLEARANCE_CM)
}

/// A container filled and planted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filled {
    /// Solution in the container.
    pub volume: Volume,
    /// Depth of the fill mark: before pots and boards go in.
    pub depth: Length,
    /// Where everything stands after planting.
    pub state: State,
    /// Draught of free boards at planting.
    pub draught: Length,
    /// Whether the boards sink under their load.
    pub sinks: bool,
}

/// Fills a container: to the grower's own mark when there is one, else so that the pots stand as
/// deep as asked, or the boards float a centimetre clear of their pipes.
///
/// # Errors
/// [`Beyond`] when the container cannot be filled so.
pub fn fill(sound: &Sound, tank: &Tank, own: Option<Length>) -> Result<Filled, Beyond> {
    let floating = tank.floating_mass(seedling(&sound.crop));
    let free = tank.draught(floating);
    let draught = free.unwrap_or_default();
    let rim = tank.basin().depth_max();
    let sinks = matches!(tank.cover(), Cover::Floating { .. }) && free.is_none();
    let volume = if let Some(depth) = own {
        tank.basin().volume_at(depth).map_err(|_| Beyond)?
    } else {
        let level = match tank.cover() {
            Cover::Fixed => {
                let below_cover = sound.container.pot.height - sound.container.cover_thickness;
                rim - below_cover + sound.container.pot_immersion.unwrap_or_default()
            }
            Cover::Floating { rest, .. } => rest + draught + clearance(),
        };
        tank.volume_at(level, draught)?
    };
    let state = tank.state(volume, draught, rim);
    // Litres that do not fit beside the pots are no fill.
    let most = tank.volume_at(rim, draught)?;
    let volume = volume.min(most);
    if volume.get::<liter>() <= 0.0 {
        return Err(Beyond);
    }
    Ok(Filled {
        volume,
        depth: tank.basin().depth_at(volume).map_err(|_| Beyond)?,
        state,
        draught,
        sinks,
    })
}
