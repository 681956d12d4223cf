//! The melt curve: how much of cocoa butter is solid at each temperature, where the chocolate was
//! and where it settles; laid out for drawing, and in words.

use std::fmt::Write;

use crate::engine::chocolate::{MELTED, Melted, solid_fat};
use crate::engine::quantity::{Share, Temperature};
use crate::text::{format, format_options::FormatOptions, name, tr};

use super::{Mark, Tick};

/// The melt curve laid out on a field of [`MeltDrawing::WIDTH`] by [`MeltDrawing::HEIGHT`].
#[derive(Clone, Debug, PartialEq)]
pub struct MeltDrawing {
    /// The curve, as the outline of a path.
    pub line: String,
    /// Temperatures along the foot.
    pub across: Vec<Tick>,
    /// Shares up the left edge.
    pub up: Vec<Tick>,
    /// Where all has melted.
    pub melted: Mark,
    /// The final temperature of chocolate and liquid.
    pub equilibrium: Mark,
    /// How high the curve is there.
    pub settles_y: f64,
    /// What the foot tells.
    pub axis: String,
}

const LEFT: f64 = 44.0;
const RIGHT: f64 = 328.0;
const TOP: f64 = 42.0;
const BOTTOM: f64 = 170.0;
const COLD: f64 = 15.0;
const HOT: f64 = 50.0;

fn x(celsius: f64) -> f64 {
    LEFT + (RIGHT - LEFT) * ((celsius - COLD) / (HOT - COLD)).clamp(0.0, 1.0)
}

fn y(solid: Share) -> f64 {
    BOTTOM - (BOTTOM - TOP) * solid.fraction().min(1.0)
}

impl MeltDrawing {
    /// Width of the field.
    pub const WIDTH: f64 = 340.0;
    /// Height of the field.
    pub const HEIGHT: f64 = 210.0;
    /// Edges of the curve's own field.
    pub const LEFT: f64 = LEFT;
    /// See [`MeltDrawing::LEFT`].
    pub const RIGHT: f64 = RIGHT;
    /// See [`MeltDrawing::LEFT`].
    pub const TOP: f64 = TOP;
    /// See [`MeltDrawing::LEFT`].
    pub const BOTTOM: f64 = BOTTOM;

    /// Lays out the final temperature of chocolate and liquid.
    #[must_use]
    pub fn of(settled: &Melted, options: FormatOptions) -> Self {
        let at = x(settled.temperature.celsius());
        let melted = x(MELTED.celsius());
        Self {
            line: outline(),
            across: [20.0, 30.0, 40.0, 50.0]
                .into_iter()
                .map(|celsius| Tick {
                    at: x(celsius),
                    text: degrees(celsius, options),
                })
                .collect(),
            up: shares(options),
            melted: Mark {
                x: melted,
                text: tr!(
                    "melted at {value}",
                    value = format::temperature(MELTED, options)
                ),
                // On the side away from where it settles, whose line would run through it.
                ends: melted < at,
            },
            equilibrium: Mark {
                x: at,
                text: tr!(
                    "here {value}",
                    value = format::temperature(settled.temperature, options)
                ),
                ends: at > f64::midpoint(LEFT, RIGHT),
            },
            settles_y: y(settled.unmelted),
            axis: tr!(
                "temperature, {value}; upward: fat still solid",
                value = options.units.temperature.symbol()
            ),
        }
    }
}

/// The ticks of the upward axis.
fn shares(options: FormatOptions) -> Vec<Tick> {
    [0.0, 0.5, 1.0]
        .into_iter()
        .filter_map(|solid| Share::from_fraction(solid).ok())
        .map(|solid| Tick {
            at: y(solid),
            text: format::share(solid, options),
        })
        .collect()
}

fn outline() -> String {
    let mut line = String::new();
    for step in 0..=70_u8 {
        let celsius = COLD + f64::from(step) * 0.5;
        let pen = if step == 0 { 'M' } else { 'L' };
        let solid = Temperature::from_celsius(celsius)
            .ok()
            .and_then(|at| solid_fat(at).ok())
            .unwrap_or_default();
        // Writing into a string cannot fail.
        let _written = write!(line, "{pen}{:.1} {:.1}", x(celsius), y(solid));
    }
    line
}

fn degrees(celsius: f64, options: FormatOptions) -> String {
    Temperature::from_celsius(celsius).map_or_else(
        |_| String::new(),
        |at| format::plain(options.units.temperature.number_of(at), 0, options.numbers),
    )
}

/// The melt curve in words.
#[must_use]
pub fn melt_curve(settled: &Melted, options: FormatOptions) -> String {
    tr!(
        "At {first} before, {second} of what is solid at 20 °C was solid; where chocolate and liquid settle, \
         at {third}, it is {fourth}: {fifth}. All has melted at {sixth}.",
        first = format::temperature(settled.chocolate_at, options),
        second = format::share(settled.solid_before, options),
        third = format::temperature(settled.temperature, options),
        fourth = format::share(settled.unmelted, options),
        fifth = name::lumps(settled.lumps),
        sixth = format::temperature(MELTED, options)
    )
}
