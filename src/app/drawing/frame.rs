//! The frame of the drawing, and where its labels stand.

use crate::advice::{Moment, Section};

/// What the picture shows, in the drawing's own millimetres.
pub struct Frame {
    left: f64,
    /// Width.
    pub width: f64,
    bottom: f64,
    /// Height.
    pub height: f64,
}

impl Frame {
    /// Room for the container, for boards where they float highest, and for grown heads; the same on
    /// every day.
    pub fn of(section: &Section) -> Self {
        let head = section.head_width_mm;
        let outermost = section
            .pots
            .iter()
            .map(|middle| middle.abs() + head * 0.52)
            .fold(section.half_width_mm, f64::max);
        let highest = section
            .days
            .iter()
            .map(|day| day.underside_mm)
            .fold(section.rim_mm, f64::max);
        let high = highest + section.cover_mm + head * 0.66;
        let margin = (outermost * 2.0).max(high) * 0.02;
        let bottom = -(margin + outermost * 0.08);
        let height = high + margin - bottom;
        // A slender bottle would make a tower of the picture.
        let width = ((outermost + margin) * 2.0).max(height * 0.72);
        Self {
            left: -width / 2.0,
            width,
            bottom,
            height,
        }
    }

    /// Whether a tank is so wide that the picture wants the whole column.
    pub fn is_wide(&self) -> bool {
        self.width > self.height * 2.0
    }

    /// The picture is turned over so that y runs upwards.
    pub fn view_box(&self) -> String {
        format!(
            "{} {} {} {}",
            self.left,
            -(self.bottom + self.height),
            self.width,
            self.height
        )
    }

    /// The right edge.
    pub fn right(&self) -> f64 {
        self.left + self.width
    }

    /// Where the bar that shows the scale lies.
    pub fn bar(&self) -> f64 {
        self.bottom * 0.7
    }

    /// The left edge.
    pub fn left(&self) -> f64 {
        self.left
    }

    /// A height as a share of the picture, from its top downwards, per cent.
    pub fn down(&self, height: f64) -> f64 {
        (self.bottom + self.height - height) / self.height * 100.0
    }

    /// A label's line, in millimetres: about 18 px in a picture of a phone.
    fn line(&self) -> f64 {
        const PHONE_PX: f64 = 262.0;
        18.0 / PHONE_PX * self.width
    }
}

/// What is labelled beside the drawing.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// The fill mark.
    Fill,
    /// The moist air gap.
    Air,
    /// The level that no refill may pass.
    NeverAbove,
}

/// The labels of a moment: what, its height in the picture, and the height that its words stand at so
/// that none covers another.
pub fn labels(section: &Section, now: Moment, frame: &Frame) -> Vec<(Mark, f64, f64)> {
    let gap = now.underside_mm - now.level_mm;
    let mut labels = vec![(Mark::Fill, section.fill_mark_mm)];
    labels.extend(now.never_above_mm.map(|height| (Mark::NeverAbove, height)));
    // A gap that cannot be seen needs no name.
    if gap > section.rim_mm * 0.03 {
        labels.push((Mark::Air, now.level_mm + gap / 2.0));
    }
    labels.sort_by(|a, b| a.1.total_cmp(&b.1));
    let line = frame.line();
    let mut placed: Vec<(Mark, f64, f64)> = labels
        .into_iter()
        .map(|(mark, at)| (mark, at, at))
        .collect();
    // Neighbours push each other apart by halves; three settle within a few rounds.
    for _ in 0..24 {
        for index in 1..placed.len() {
            let short = line - (placed[index].2 - placed[index - 1].2);
            if short > 0.0 {
                placed[index].2 += short / 2.0;
                placed[index - 1].2 -= short / 2.0;
            }
        }
    }
    let below = placed.first().map_or(0.0, |lowest| {
        (frame.bottom + line / 2.0 - lowest.2).max(0.0)
    });
    for label in &mut placed {
        label.2 += below;
    }
    placed
}

/// Half the width between the walls at a height.
pub fn wall_at(section: &Section, height: f64) -> f64 {
    section
        .wall
        .windows(2)
        .find(|pair| pair[1].1 >= height)
        .map_or(section.half_width_mm, |pair| {
            let ((x0, y0), (x1, y1)) = (pair[0], pair[1]);
            if y1 > y0 {
                x0 + (x1 - x0) * (height - y0) / (y1 - y0)
            } else {
                x1
            }
        })
}
