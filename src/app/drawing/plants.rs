//! Pots, heads and roots, drawn once around the top of a pot and then set wherever a plant stands.

use std::fmt::Write as _;

use crate::app::browser::dom::{Node, el};

use crate::advice::{Moment, Section};

/// A net pot whose flange lies at the origin: its outline, and the slots in its wall.
pub fn pot_path(section: &Section) -> String {
    let pot = &section.pot_mm;
    let (top, foot, height) = (pot.top / 2.0, pot.bottom / 2.0, pot.height);
    let mut path = format!(
        "M{} 0H{}M{} 0L{} {}H{}L{top} 0",
        -pot.flange / 2.0,
        pot.flange / 2.0,
        -top,
        -foot,
        -height,
        foot
    );
    for share in [-0.5, 0.0, 0.5] {
        let _ = write!(
            path,
            "M{} {}L{} {}",
            share * (top + foot) * 0.55,
            -height * 0.38,
            share * (top + foot * 3.0) / 2.0 * 0.55,
            -height * 0.86
        );
    }
    path
}

/// The medium in a pot.
pub fn medium_path(section: &Section) -> String {
    let pot = &section.pot_mm;
    let (top, foot) = (pot.top / 2.0, pot.bottom / 2.0);
    format!("M{} 0L{} {}H{foot}L{top} 0Z", -top, -foot, -pot.height)
}

/// Leaves of a head, the oldest first; each opens from the middle, lengthens and bends outwards.
const LEAVES: u32 = 11;

/// A leaf and its midrib, from the origin.
fn leaf(angle: f64, length: f64) -> String {
    let (sin, cos) = libm::sincos(angle);
    let (x, y) = (sin * length, cos * length);
    // The midrib leaves the heart steeply and bends over to its tip.
    let (bend_x, bend_y) = (x * 0.45, y * 0.55 + length * 0.26 * sin.abs());
    let tip = (x, y + length * 0.06);
    // Half the breadth, square to the midrib.
    let (across_x, across_y) = (cos * length * 0.26, -sin * length * 0.26);
    let side = |sign: f64, far: f64, along: (f64, f64)| {
        format!(
            "{:.1} {:.1}",
            along.0 + sign * across_x * far,
            along.1 + sign * across_y * far
        )
    };
    let near = (bend_x * 0.8, bend_y * 0.8);
    format!(
        "M0 0C{} {} {:.1} {:.1}C{} {} 0 0ZM0 0Q{bend_x:.1} {bend_y:.1} {:.1} {:.1}",
        side(1.0, 0.75, near),
        side(1.0, 1.25, tip),
        tip.0,
        tip.1,
        side(-1.0, 1.25, tip),
        side(-1.0, 0.75, near),
        tip.0 * 0.8,
        tip.1 * 0.84
    )
}

/// The head of a plant that has reached a share of its full mass, and whether it wilts.
pub fn head(section: &Section, share: f64, wilts: bool) -> Node {
    // A head's width goes with the square root of its mass; a seedling stays visible.
    let size = share.sqrt().max(0.18);
    let full = section.head_width_mm * 0.53;
    (0..LEAVES)
        .filter_map(|index| {
            let age = size * 1.25 - f64::from(index) * 0.1;
            if age < 0.06 {
                return None;
            }
            let age = age.min(1.0);
            let side = if index % 2 == 0 { 1.0 } else { -1.0 };
            // Old leaves lie low, young ones stand; a wilted plant hangs all of them.
            let lean = if wilts { 1.75 } else { 1.32 };
            let angle = side * (0.06 + lean * age * age.sqrt());
            let length = full * age.sqrt().min(size * 1.2) * (1.0 - 0.012 * f64::from(index));
            let tone = ["leaf old", "leaf", "leaf young"][(index * 3 / LEAVES) as usize % 3];
            Some(el("path").class(tone).attr("d", leaf(angle, length)))
        })
        .collect::<Node>()
}

/// Numbers that look like chance and never change: a plant has the same roots on every day.
struct Chance(u32);

impl Chance {
    /// The next, from −1 to 1.
    fn next(&mut self) -> f64 {
        // Numerical Recipes' quick generator; its high bits are the better ones.
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        f64::from(self.0 >> 16) / 32_767.5 - 1.0
    }
}

/// The roots below the origin: those in air, those in solution. Their longest reaches the tip of the
/// core to the hundredth of a millimetre; how they branch is drawn, not computed.
pub fn roots(section: &Section, now: Moment) -> (String, String) {
    const STEP: f64 = 7.0;
    let top = now.underside_mm + section.cover_mm;
    let (foot, tip, surface) = (now.foot_mm - top, now.tip_mm - top, now.level_mm - top);
    let pot = &section.pot_mm;
    let start = (-pot.height * 0.4).max(-15.0);
    let (mut air, mut water) = (String::new(), String::new());
    for (index, share) in [1.0, 0.82, 0.93, 0.74, 0.88, 0.67, 0.79]
        .into_iter()
        .enumerate()
    {
        let mut chance = Chance(11 + 97 * u32::try_from(index).unwrap_or(0));
        // From the middle outwards, left and right in turn.
        let lane = index.div_ceil(2) as f64 * if index % 2 == 0 { 1.0 } else { -1.0 } / 3.5;
        let mut x = lane * pot.bottom * 0.42;
        // Most of them follow the solution closely; young ones have only their share of the length.
        let lag = (start - tip).min((surface - tip).max(0.0) * 2.5 + 12.0);
        let end = tip + lag * (1.0 - share);
        let mut y = start;
        let mut moved = true;
        let mut was_air = None;
        while y > end {
            let next = (y - STEP).max(end);
            let drift = chance.next() * 2.2 + lane * if next < foot { 1.7 } else { 0.3 };
            let next_x = x + drift * (y - next) / STEP;
            let in_air = y > surface && y <= foot + 1.0;
            let path = if in_air { &mut air } else { &mut water };
            if moved || was_air != Some(in_air) {
                let _ = write!(path, "M{x:.1} {y:.2}");
            }
            let _ = write!(path, "L{next_x:.1} {next:.2}");
            // Side roots: short and dense in moist air, long and loose in the solution.
            moved = false;
            let reach = if in_air { 6.0 } else { 15.0 };
            let long = ((y - end) * 0.3).min(reach) * (0.6 + 0.4 * chance.next());
            if y < foot && long > 1.0 {
                let side = if chance.next() > 0.0 { long } else { -long };
                let _ = write!(
                    path,
                    "m0 0q{:.1} {:.1} {side:.1} {:.1}",
                    side * 0.6,
                    -long * 0.1,
                    -long * if in_air { 0.45 } else { 0.8 }
                );
                moved = true;
            }
            was_air = Some(in_air);
            (x, y) = (next_x, next);
        }
    }
    (air, water)
}
