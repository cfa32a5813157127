//! What wood, foam, pipe and plastic do: boards at rest and afloat, covers, sides, layout, materials
//! and the running of tanks. Each figure is a plain function of the plan, so that a change of one
//! field can be tried.

pub(super) mod boards;
pub(super) mod cover;
mod fact;
pub(super) mod findings;
pub(super) mod frame;
pub(super) mod layout;
pub(super) mod materials;
mod mends;
pub(super) mod running;

pub use fact::StructureFact;

use crate::science::units::Length;
use crate::science::units::length::millimeter;

use crate::advice::outcome::{BoardsOutcome, BuildOutcome, Fill, LayoutOutcome};
use crate::plan::Sound;
use crate::science::units::Mass;
use crate::season::{Beyond, Tank};

/// Fresh mass of wet roots that hang in the air once boards rest or a gap opens, as a share of the
/// head: assumed, no source.
const WET_ROOTS: f64 = 0.25;
/// Density of water in and around things, kg/m³.
const WATER: f64 = 1000.0;

fn mm(length: Length) -> f64 {
    length.get::<millimeter>()
}

/// Layout and build sheet of a plan; neither for containers that nobody builds.
///
/// # Errors
/// [`Beyond`] when the measures lie outside what physics takes.
pub(super) fn built(
    sound: &Sound,
    tank: &Tank,
    (fill, boards): (&Fill, Option<&BoardsOutcome>),
    end: (Mass, f64),
    currency: &str,
) -> Result<(Option<LayoutOutcome>, Option<BuildOutcome>), Beyond> {
    let Some(build) = &sound.build else {
        return Ok((None, None));
    };
    let layout = layout::layout(sound, build);
    let mut made = frame::frame(sound, tank, build, fill, end)?;
    (made.materials, made.price) = materials::materials(sound, tank, build, &made, &layout, boards);
    currency.clone_into(&mut made.currency);
    Ok((Some(layout), Some(made)))
}
