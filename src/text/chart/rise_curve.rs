//! The rise curve: how the dough grows here, beside how it grew at the known rise.

use std::fmt::Write;

use crate::engine::quantity::Minutes;
use crate::engine::rise::{RisePoint, Risen};
use crate::text::{day, format, format_options::FormatOptions, tr};

use super::Tick;

/// The rise curve laid out on a field of [`RiseDrawing::WIDTH`] by [`RiseDrawing::HEIGHT`].
#[derive(Clone, Debug, PartialEq)]
pub struct RiseDrawing {
    /// How many times its volume, up the left edge.
    pub up: Vec<Tick>,
    /// Hours along the foot.
    pub across: Vec<Tick>,
    /// Where the dough is up at the soonest.
    pub soonest: f64,
    /// Where it is up most likely.
    pub due: f64,
    /// Where it is up at the latest.
    pub latest: f64,
    /// How high it then is.
    pub up_at: f64,
    /// This dough, as the outline of a path.
    pub current: String,
    /// The known rise, as the outline of a path.
    pub known: String,
}

const LEFT: f64 = 40.0;
const RIGHT: f64 = 332.0;
const TOP: f64 = 14.0;
const BOTTOM: f64 = 176.0;

struct Scale {
    minutes: f64,
    most: f64,
}

impl Scale {
    fn x(&self, minutes: f64) -> f64 {
        LEFT + (RIGHT - LEFT) * (minutes / self.minutes).clamp(0.0, 1.0)
    }

    fn y(&self, volume: f64) -> f64 {
        BOTTOM - (BOTTOM - TOP) * ((volume - 1.0) / (self.most - 1.0)).clamp(0.0, 1.0)
    }

    fn outline(&self, points: impl Iterator<Item = (f64, f64)>) -> String {
        let mut line = String::new();
        let mut pen = 'M';
        let mut last = f64::NEG_INFINITY;
        for (minutes, volume) in points {
            let x = self.x(minutes);
            // Closer together than a pixel they cannot be seen apart.
            if minutes > self.minutes || volume > self.most || x - last < 1.0 {
                continue;
            }
            last = x;
            // Writing into a string cannot fail.
            let _written = write!(line, "{pen}{x:.1} {:.1}", self.y(volume));
            pen = 'L';
        }
        line
    }
}

impl RiseDrawing {
    /// Width of the field.
    pub const WIDTH: f64 = 340.0;
    /// Height of the field.
    pub const HEIGHT: f64 = 210.0;
    /// Edges of the curve's own field.
    pub const LEFT: f64 = LEFT;
    /// See [`RiseDrawing::LEFT`].
    pub const RIGHT: f64 = RIGHT;
    /// See [`RiseDrawing::LEFT`].
    pub const TOP: f64 = TOP;
    /// See [`RiseDrawing::LEFT`].
    pub const BOTTOM: f64 = BOTTOM;

    /// Lays out a rise beside the known one, whose dough stayed at one temperature.
    #[must_use]
    pub fn of(risen: &Risen, options: FormatOptions) -> Self {
        let latest = risen.latest.unwrap_or(risen.due).minutes();
        let known = risen.asked.anchor.time.minutes();
        let grown = (risen.asked.volume.number() - 1.0).max(0.1);
        let scale = Scale {
            minutes: latest.max(known * 1.1) * 1.08,
            most: 1.0 + grown * 1.25,
        };
        let steady = (0..=40_u8).map(|component| {
            let minutes = scale.minutes * f64::from(component) / 40.0;
            (minutes, 1.0 + grown * minutes / known.max(0.1))
        });
        let current = risen.points.iter();
        let current =
            current.map(|point: &RisePoint| (point.time.minutes(), point.volume.number()));
        Self {
            up: volumes(&scale, grown, options),
            across: hours(&scale, options),
            soonest: scale.x(risen.soonest.minutes()),
            due: scale.x(risen.due.minutes()),
            latest: scale.x(latest),
            up_at: scale.y(1.0 + grown),
            current: scale.outline(current),
            known: scale.outline(steady),
        }
    }
}

/// "1×", half-way, and all of it.
fn volumes(scale: &Scale, grown: f64, options: FormatOptions) -> Vec<Tick> {
    [0.0, 0.5, 1.0]
        .into_iter()
        .map(|share| {
            let volume = 1.0 + grown * share;
            Tick {
                at: scale.y(volume),
                text: format!("{}×", format::significant(volume, 2, options.numbers)),
            }
        })
        .collect()
}

/// Every so many minutes, at most seven along the foot.
fn hours(scale: &Scale, options: FormatOptions) -> Vec<Tick> {
    let steps = [10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0];
    let step = steps.into_iter().find(|step| scale.minutes / step <= 7.0);
    let step = step.unwrap_or(960.0);
    (0..=8_u8)
        .map(|count| f64::from(count) * step)
        .filter(|minutes| *minutes <= scale.minutes)
        .map(|minutes| Tick {
            at: scale.x(minutes),
            text: format::minutes(
                Minutes::from_minutes(minutes).unwrap_or(Minutes::ZERO),
                options,
            ),
        })
        .collect()
}

/// The rise curve in words.
#[must_use]
pub fn rise_curve(risen: &Risen, options: FormatOptions) -> String {
    let times = [0.25, 0.5, 0.75].map(|share| {
        let time = Minutes::from_minutes(risen.due.minutes() * share).unwrap_or(Minutes::ZERO);
        let done = risen.done_at(time);
        tr!(
            "{first} of its rise after {second}",
            first = format::share(done, options),
            second = format::minutes(time, options)
        )
    });
    tr!(
        "The dough has done {first}. It is up after {second}, within {third}. The known rise took {fourth}.",
        first = super::listed(&times).unwrap_or_default(),
        second = format::minutes(risen.due, options),
        third = day::rise_range(risen, options),
        fourth = format::minutes(risen.asked.anchor.time, options)
    )
}
