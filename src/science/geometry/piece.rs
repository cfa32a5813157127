//! One piece of a shape: a range of depth in which the volume is a cubic of depth.

use std::f64::consts::PI;

use super::invert::invert;

/// A range of depth whose area is a parabola of depth, so that its volume is a cubic: cylinder,
/// cone frustum, prismatoid and monotone cubic interpolation all are. All numbers are SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Piece {
    /// Depth at which the piece begins, m.
    pub depth: f64,
    /// Volume of everything below the piece, m³.
    pub volume: f64,
    /// Height of the piece, m.
    pub height: f64,
    /// Volume of the whole piece, m³.
    pub content: f64,
    /// Coefficients of the first, second and third power of the height above the beginning.
    coefficients: [f64; 3],
}

impl Piece {
    /// A piece by the coefficients of its cubic, standing on the floor.
    pub fn cubic(height: f64, coefficients: [f64; 3]) -> Self {
        let mut piece = Self {
            depth: 0.0,
            volume: 0.0,
            height,
            content: 0.0,
            coefficients,
        };
        piece.content = piece.content_at(height);
        piece
    }

    /// A piece of a cone: radius `bottom` below, `top` above.
    pub fn round(bottom: f64, top: f64, height: f64) -> Self {
        let slope = (top - bottom) / height;
        // The integral of π (r + k t)².
        Self::cubic(
            height,
            [
                PI * bottom * bottom,
                PI * bottom * slope,
                PI * slope * slope / 3.0,
            ],
        )
    }

    /// A prismatoid between two rectangles (length, width) with flat walls.
    pub fn rectangular(bottom: (f64, f64), top: (f64, f64), height: f64) -> Self {
        let along = (top.0 - bottom.0) / height;
        let across = (top.1 - bottom.1) / height;
        // The integral of (L + a t)(W + b t).
        Self::cubic(
            height,
            [
                bottom.0 * bottom.1,
                f64::midpoint(along * bottom.1, across * bottom.0),
                along * across / 3.0,
            ],
        )
    }

    /// The depth at which the piece ends, m.
    pub fn top(&self) -> f64 {
        self.depth + self.height
    }

    /// Whether the piece is made of usable numbers and holds something.
    pub fn is_usable(&self) -> bool {
        self.height > 0.0
            && self.content > 0.0
            && self.volume + self.content > self.volume
            && (self.volume + self.content).is_finite()
            && self.coefficients.iter().all(|value| value.is_finite())
    }

    /// Volume of the piece up to the height `t` above its beginning, m³.
    pub fn content_at(&self, t: f64) -> f64 {
        let [first, second, third] = self.coefficients;
        t * (first + t * (second + t * third))
    }

    /// Area at the height `t` above its beginning, m².
    pub fn area_at(&self, t: f64) -> f64 {
        let [first, second, third] = self.coefficients;
        first + t * (2.0 * second + t * (3.0 * third))
    }

    /// The height above its beginning at which the piece holds `content`; `guess` is a height to
    /// start from. What lies outside the piece by rounding gets the nearer end.
    pub fn height_at(&self, content: f64, guess: f64) -> f64 {
        if content <= 0.0 {
            return 0.0;
        }
        if content >= self.content {
            return self.height;
        }
        let start = if guess > 0.0 && guess < self.height {
            guess
        } else {
            self.height * (content / self.content)
        };
        let evaluate = |t: f64| (self.content_at(t), self.area_at(t));
        invert(evaluate, content, 0.0, self.height, start)
    }
}
