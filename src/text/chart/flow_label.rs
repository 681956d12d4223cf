//! Where the words about the syrup itself stand in the flow curve, so that no line runs through.

use super::flow_scale::{BOTTOM, LEFT, TOP};
use super::text_width::text_width;

/// A dot with two short lines of words beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Spot {
    /// The position of the dot.
    pub x: f64,
    /// See [`Spot::x`].
    pub y: f64,
    /// The words.
    pub lines: [String; 2],
    /// Where the words begin or, where `ends` is set, end.
    pub words_x: f64,
    /// The foot of the first line.
    pub words_y: f64,
    /// Whether they end there.
    pub ends: bool,
}

impl Spot {
    /// The foot of the second line.
    #[must_use]
    pub fn second_y(&self) -> f64 {
        self.words_y + LINE
    }
}

/// The type size of the words, and the distance of two baselines.
const TYPE: f64 = 13.0;
const LINE: f64 = 18.0;
/// Between dot and words, and between words and line.
const AWAY: f64 = 11.0;
const CLEAR: f64 = 3.0;

/// Sets the words where the curve does not run through them: above on the right if it can be.
pub(super) fn place(dot: (f64, f64), lines: [String; 2], curve: &[(f64, f64)], right: f64) -> Spot {
    let widths = lines.iter().map(|line| text_width(line, TYPE));
    let width = widths.fold(0.0, f64::max);
    let (x, y) = dot;
    let beyond = beyond(curve, y);
    let tries = [
        (x + AWAY, y - AWAY - LINE, false),
        (x - AWAY, y + LINE, true),
        (beyond, y, false),
        (x + AWAY, y + LINE, false),
        (x - AWAY, y - AWAY - LINE, true),
    ];
    let held = tries.map(|(x, y, ends)| {
        let y = y.clamp(TOP + LINE, BOTTOM - LINE - 6.0);
        (x, y, ends)
    });
    let space = |(x, y, ends): &(f64, f64, bool)| Space::of(*x, *y, *ends, width);
    let inside: Vec<_> = held
        .iter()
        .filter(|held| space(held).is_inside(right))
        .collect();
    let clear = inside.iter().find(|held| is_clear(space(held), dot, curve));
    // Where each place is crossed by the curve, the words have a halo.
    let (words_x, words_y, ends) = clear
        .or(inside.first())
        .map_or((right, y, true), |held| **held);
    Spot {
        x,
        y,
        lines,
        words_x,
        words_y,
        ends,
    }
}

/// The room two lines take up.
#[derive(Clone, Copy)]
struct Space {
    from: f64,
    to: f64,
    top: f64,
    foot: f64,
}

impl Space {
    fn of(x: f64, y: f64, ends: bool, width: f64) -> Self {
        let from = if ends { x - width } else { x };
        Self {
            from,
            to: from + width,
            top: y - LINE + CLEAR,
            foot: y + LINE + CLEAR,
        }
    }

    /// Whether it is within the field.
    fn is_inside(self, right: f64) -> bool {
        self.from >= LEFT && self.to <= right + 2.0
    }

    fn holds(self, (x, y): (f64, f64)) -> bool {
        x > self.from - CLEAR
            && x < self.to + CLEAR
            && y > self.top - CLEAR
            && y < self.foot + CLEAR
    }
}

/// Whether the label's space is clear of the dot and the curve.
fn is_clear(space: Space, dot: (f64, f64), curve: &[(f64, f64)]) -> bool {
    let crossed = curve.windows(2).any(|pair| match *pair {
        [(x, y), (u, v)] => [0.0, 0.25, 0.5, 0.75, 1.0]
            .into_iter()
            .any(|component| space.holds((x + (u - x) * component, y + (v - y) * component))),
        _ => false,
    });
    !crossed && !space.holds(dot)
}

/// Right of where the curve has sunk below words at this height.
fn beyond(curve: &[(f64, f64)], y: f64) -> f64 {
    let sunk = curve
        .iter()
        .find(|(_, height)| *height > y + 2.0 * LINE + CLEAR);
    sunk.map_or(LEFT, |(x, _)| x + AWAY)
}
