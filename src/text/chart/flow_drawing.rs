//! The flow curve laid out for drawing: the position of each line and word.

use std::fmt::Write;

use super::flow_label::{Spot, place};
use super::flow_scale::{BESIDE, BOTTOM, LEFT, Scale, TOP, WIDTH};
use super::text_width::text_width;
use crate::engine::chocolate::{Consistency, Flow, FlowCurve, Syrup};
use crate::engine::quantity::Share;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// A band of the chart for one kind of syrup.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// What a syrup does there: "drizzles".
    pub name: &'static str,
    /// Its upper edge.
    pub y: f64,
    /// How high it is.
    pub height: f64,
    /// The position of its name; none where there is no room for one.
    pub name_y: Option<f64>,
    /// Whether it is one of every other.
    pub shaded: bool,
}

/// A word at a place along an edge.
#[derive(Clone, Debug, PartialEq)]
pub struct Tick {
    /// How far along.
    pub at: f64,
    /// What is written there.
    pub text: String,
}

/// A line from top to bottom with its word.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// How far across.
    pub x: f64,
    /// What is written above it.
    pub text: String,
    /// Whether the word ends at the line, not begins there.
    pub ends: bool,
}

impl Mark {
    /// How wide the field is on its left.
    #[must_use]
    pub fn beyond_left(&self) -> f64 {
        (self.x - LEFT).max(0.0)
    }

    /// Where its word begins or ends.
    #[must_use]
    pub fn word_x(&self) -> f64 {
        if self.ends {
            self.x - AWAY
        } else {
            self.x + AWAY
        }
    }
}

/// The flow curve laid out on a field of [`FlowDrawing::WIDTH`] by [`FlowDrawing::HEIGHT`].
#[derive(Clone, Debug, PartialEq)]
pub struct FlowDrawing {
    /// How wide the curve's own field is.
    pub across_width: f64,
    /// Where the names of the kinds begin.
    pub names_x: f64,
    /// The kinds of syrup, thick to thin.
    pub bands: Vec<Band>,
    /// Thicknesses at which one kind becomes the next.
    pub up: Vec<Tick>,
    /// Liquid to 100 of chocolate.
    pub across: Vec<Tick>,
    /// Where it stops seizing, with its word; none where it flows with any liquid.
    pub seizes: Option<Mark>,
    /// The handbook's least liquid; none where it is off the picture.
    pub rule: Option<Mark>,
    /// The curve, as the outline of a path.
    pub line: String,
    /// The point of this syrup, with its two labels.
    pub current: Spot,
}

/// Between a line and its word.
const AWAY: f64 = 4.0;
/// The type size of the words, and the least distance of two baselines.
const TYPE: f64 = 12.0;
/// The size of bold type that runs as wide as the regular of [`TYPE`].
const REGULAR: f64 = 11.0;
const APART: f64 = 17.0;

impl FlowDrawing {
    /// Width of the field.
    pub const WIDTH: f64 = WIDTH;
    /// Height of the field.
    pub const HEIGHT: f64 = 284.0;
    /// Edges of the curve's own field.
    pub const LEFT: f64 = LEFT;
    /// See [`FlowDrawing::LEFT`].
    pub const TOP: f64 = TOP;
    /// See [`FlowDrawing::LEFT`].
    pub const BOTTOM: f64 = BOTTOM;
    /// Its height.
    pub const DOWN: f64 = BOTTOM - TOP;
    /// Where the thicknesses at the left end.
    pub const FIGURES: f64 = LEFT - 5.0;

    /// Lays out a syrup's flow curve.
    #[must_use]
    pub fn of(syrup: &Syrup, curve: &FlowCurve, options: FormatOptions) -> Self {
        let names = Consistency::ALL.map(|kind| text_width(name::handling(kind), REGULAR));
        let scale = Scale::of(curve, names.into_iter().fold(0.0, f64::max));
        let points = points(curve, &scale);
        let below = curve.seizes_below;
        Self {
            across_width: scale.right - LEFT,
            names_x: scale.right + BESIDE,
            bands: bands(&scale),
            up: thicknesses(&scale, options),
            across: amounts(&scale, options),
            seizes: (below != Some(Share::NONE)).then(|| seizes(below, &scale, options)),
            rule: rule(syrup, &scale, options),
            line: outline(&points),
            current: current(syrup, curve, &scale, &points, options),
        }
    }
}

/// The curve in the field's own units, from where it stops seizing.
fn points(curve: &FlowCurve, scale: &Scale) -> Vec<(f64, f64)> {
    let start = curve
        .seizes_below
        .filter(|below| *below > Share::NONE)
        .map(|below| (scale.x(below), TOP));
    let flowing = curve.points.iter().filter_map(|point| {
        let y = scale.y(point.thickness?);
        Some((scale.x(point.liquid_on_chocolate), y))
    });
    start.into_iter().chain(flowing).collect()
}

fn outline(points: &[(f64, f64)]) -> String {
    let mut line = String::new();
    for (index, (x, y)) in points.iter().enumerate() {
        let pen = if index == 0 { 'M' } else { 'L' };
        // Writing into a string cannot fail.
        let _written = write!(line, "{pen}{x:.1} {y:.1}");
    }
    line
}

fn bands(scale: &Scale) -> Vec<Band> {
    let mut bands = Vec::new();
    let mut lower = BOTTOM;
    for (index, handling) in Consistency::ALL.into_iter().enumerate() {
        let upper = handling.below().map_or(TOP, |end| scale.y(end));
        let height = lower - upper;
        if height > 0.0 {
            bands.push(Band {
                name: name::handling(handling),
                y: upper,
                height,
                name_y: (height >= APART).then_some((upper + lower) / 2.0 + 4.0),
                shaded: index % 2 == 0,
            });
        }
        lower = upper;
    }
    bands.reverse();
    bands
}

/// Where one kind becomes the next, as long as the figures do not touch.
fn thicknesses(scale: &Scale, options: FormatOptions) -> Vec<Tick> {
    let mut ticks: Vec<Tick> = Vec::new();
    for end in Consistency::ALL.into_iter().filter_map(Consistency::below) {
        let at = scale.y(end) + 4.0;
        let inside = at < BOTTOM && at > TOP + 9.0 + APART;
        let clear = ticks.last().is_none_or(|before| before.at - at >= APART);
        if inside && clear {
            let text = format::plain(end.pascal_seconds(), 2, options.numbers);
            ticks.push(Tick { at, text });
        }
    }
    ticks
}

fn amounts(scale: &Scale, options: FormatOptions) -> Vec<Tick> {
    let step = scale.step();
    (0..=8)
        .map(|count| f64::from(count) * step)
        .filter_map(|percent| Share::from_percent(percent).ok())
        .filter(|share| *share <= scale.to)
        .map(|share| Tick {
            at: scale.x(share),
            text: to_hundred(share, options),
        })
        .collect()
}

fn seizes(below: Option<Share>, scale: &Scale, options: FormatOptions) -> Mark {
    let (x, text) = match below {
        Some(below) => (
            scale.x(below),
            tr!("seizes below {value}", value = to_hundred(below, options)),
        ),
        None => (scale.right, tr!("seizes").to_owned()),
    };
    Mark {
        x,
        text,
        ends: false,
    }
}

fn rule(syrup: &Syrup, scale: &Scale, options: FormatOptions) -> Option<Mark> {
    let needed = syrup.liquid_by_rule()?.share_of(syrup.chocolate)?;
    (needed <= scale.to).then(|| {
        let x = scale.x(needed);
        let text = tr!(
            "handbook’s least {value}",
            value = to_hundred(needed, options)
        );
        let wide = text_width(&text, TYPE) + AWAY;
        // On the right while it fits there.
        let ends = x + wide > FlowDrawing::WIDTH;
        Mark { x, text, ends }
    })
}

fn current(
    syrup: &Syrup,
    curve: &FlowCurve,
    scale: &Scale,
    points: &[(f64, f64)],
    options: FormatOptions,
) -> Spot {
    let amount = curve.here.liquid_on_chocolate;
    let second = match syrup.flow {
        Flow::MeltedOnly => tr!("melted").to_owned(),
        Flow::Seized => tr!("seizes").to_owned(),
        Flow::Flows { thickness, .. } => format::viscosity(thickness, options),
    };
    // What does not flow has no thickness: it stands at the top, beyond what is too stiff.
    let beyond = match syrup.flow {
        Flow::MeltedOnly => BOTTOM - 12.0,
        Flow::Seized | Flow::Flows { .. } => TOP + 40.0,
    };
    let y = curve
        .here
        .thickness
        .map_or(beyond, |thickness| scale.y(thickness));
    let first = tr!("{value} g to 100 g", value = to_hundred(amount, options));
    place((scale.x(amount), y), [first, second], points, scale.right)
}

/// Liquid to 100 of chocolate.
fn to_hundred(liquid_on_chocolate: Share, options: FormatOptions) -> String {
    let components = liquid_on_chocolate.percent();
    format::plain(components, usize::from(components < 10.0), options.numbers)
}
