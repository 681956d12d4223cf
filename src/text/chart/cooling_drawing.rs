//! The cooling curve laid out for drawing: the temperature at the centre, its surroundings, and the
//! walls that a rule sets, under which it must pass.

use std::fmt::Write;

use crate::engine::heat::{Cooled, Probe, StageResult, VesselStay};
use crate::engine::quantity::{Minutes, Temperature};
use crate::text::{format, format_options::FormatOptions, tr};

use super::Tick;
use super::text_width::text_width;

/// A stretch of time in one place.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// Where it begins.
    pub x: f64,
    /// How wide it is.
    pub width: f64,
    /// What is written above it; empty where there is no room.
    pub text: String,
    /// Whether it is one of every other.
    pub shaded: bool,
}

/// A wall that hangs from the top at a deadline: the curve must pass under its foot.
#[derive(Clone, Debug, PartialEq)]
pub struct Wall {
    /// The deadline.
    pub x: f64,
    /// Its foot.
    pub foot: f64,
    /// What is written beside it: "limit: 8 °C by 1 h 42 min".
    pub text: String,
    /// Where that text begins, or ends.
    pub text_x: f64,
    /// The foot of that text.
    pub text_y: f64,
    /// Whether the curve passes under it.
    pub passes: bool,
    /// Whether the text ends at the wall, not begins there.
    pub ends: bool,
}

/// The cooling curve laid out on a field of [`CoolingDrawing::WIDTH`] by
/// [`CoolingDrawing::HEIGHT`].
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingDrawing {
    /// Bench, ice water, fridge.
    pub stretches: Vec<Stretch>,
    /// Temperatures up the left edge.
    pub up: Vec<Tick>,
    /// Hours along the foot.
    pub across: Vec<Tick>,
    /// The limits.
    pub walls: Vec<Wall>,
    /// The middle, as the outline of a path.
    pub middle: String,
    /// The mean, as the outline of a path.
    pub mean: String,
}

const LEFT: f64 = 40.0;
const RIGHT: f64 = 332.0;
const TOP: f64 = 26.0;
const BOTTOM: f64 = 206.0;
/// The type size of the words, and the distance of two baselines.
const TYPE: f64 = 12.0;
const LINE: f64 = 17.0;
/// Between a wall and its words.
const AWAY: f64 = 5.0;
/// What is followed at the most, and at the least, min.
const LONGEST: f64 = 720.0;
const SHORTEST: f64 = 120.0;

struct Scale {
    minutes: f64,
    hot: f64,
    cold: f64,
}

impl Scale {
    fn x(&self, minutes: f64) -> f64 {
        LEFT + (RIGHT - LEFT) * (minutes / self.minutes).clamp(0.0, 1.0)
    }

    fn y(&self, celsius: f64) -> f64 {
        let component = (celsius - self.cold) / (self.hot - self.cold);
        BOTTOM - (BOTTOM - TOP) * component.clamp(0.0, 1.0)
    }
}

impl CoolingDrawing {
    /// Width of the field.
    pub const WIDTH: f64 = 340.0;
    /// Height of the field.
    pub const HEIGHT: f64 = 246.0;
    /// Edges of the curve's own field.
    pub const LEFT: f64 = LEFT;
    /// See [`CoolingDrawing::LEFT`].
    pub const RIGHT: f64 = RIGHT;
    /// See [`CoolingDrawing::LEFT`].
    pub const TOP: f64 = TOP;
    /// See [`CoolingDrawing::LEFT`].
    pub const BOTTOM: f64 = BOTTOM;

    /// How high that field is.
    pub const DOWN: f64 = BOTTOM - TOP;

    /// Lays out a cooling through these stays.
    #[must_use]
    pub fn of(cooled: &Cooled, stays: &[VesselStay], options: FormatOptions) -> Self {
        let binding = binding(&cooled.stages);
        let scale = scale(cooled, &binding);
        Self {
            stretches: stretches(stays, &scale),
            up: degrees(&scale, options),
            across: hours(&scale, options),
            walls: walls(&binding, &scale, options),
            middle: outline(cooled, Probe::Centre, &scale),
            mean: outline(cooled, Probe::Mean, &scale),
        }
    }
}

fn deadline(stage: &StageResult) -> f64 {
    stage.began.minutes() + stage.stage.within.minutes()
}

/// The limits that no other limit makes needless, by their deadline.
fn binding(stages: &[StageResult]) -> Vec<StageResult> {
    let is_needless = |at: usize, one: &StageResult| {
        stages.iter().enumerate().any(|(other_at, other)| {
            let tighter = deadline(other) <= deadline(one) && other.stage.to <= one.stage.to;
            let same = deadline(one) <= deadline(other) && one.stage.to <= other.stage.to;
            other_at != at && tighter && (!same || other_at < at)
        })
    };
    let numbered = stages.iter().enumerate();
    let mut binding: Vec<StageResult> = numbered
        .filter(|(at, one)| !is_needless(*at, one))
        .map(|(_, one)| *one)
        .collect();
    binding.sort_by(|one, other| deadline(one).total_cmp(&deadline(other)));
    binding
}

fn scale(cooled: &Cooled, binding: &[StageResult]) -> Scale {
    let ended = |stage: &StageResult| stage.ended.map_or(LONGEST, Minutes::minutes);
    let last = binding
        .iter()
        .map(|stage| deadline(stage).max(ended(stage)))
        .fold(SHORTEST, f64::max);
    let start = cooled.curve.moments.first();
    let start = start.map_or(60.0, |moment| moment.centre.celsius());
    Scale {
        minutes: (last * 1.08).min(LONGEST),
        hot: (libm::ceil(start / 10.0) * 10.0).max(30.0),
        cold: 0.0,
    }
}

fn stretches(stays: &[VesselStay], scale: &Scale) -> Vec<Stretch> {
    let mut begins = 0.0;
    let mut found = Vec::new();
    for (place, stay) in stays.iter().enumerate() {
        let ends = begins + stay.minutes.minutes();
        let (x, to) = (scale.x(begins), scale.x(ends));
        let words = if place + 1 == stays.len() {
            tr!("fridge")
        } else if stay.around.celsius() <= 0.0 {
            tr!("ice")
        } else {
            tr!("bench")
        };
        let has_room = to - x > text_width(words, TYPE);
        begins = ends;
        found.push(Stretch {
            x,
            width: to - x,
            text: if has_room {
                words.to_owned()
            } else {
                String::new()
            },
            shaded: place % 2 == 0 && stays.len() > 1,
        });
    }
    found
}

fn degrees(scale: &Scale, options: FormatOptions) -> Vec<Tick> {
    [0.0, 20.0, 40.0, 60.0, 80.0, 100.0]
        .into_iter()
        .filter(|celsius| *celsius <= scale.hot)
        .filter_map(|celsius| {
            let at = Temperature::from_celsius(celsius).ok()?;
            let number = options.units.temperature.number_of(at);
            Some(Tick {
                at: scale.y(celsius),
                text: format::plain(number, 0, options.numbers),
            })
        })
        .collect()
}

fn hours(scale: &Scale, options: FormatOptions) -> Vec<Tick> {
    let step = if scale.minutes > 420.0 { 2.0 } else { 1.0 };
    (0..=12_u8)
        .map(|count| f64::from(count) * step)
        .filter(|hours| hours * 60.0 <= scale.minutes)
        .map(|hours| Tick {
            at: scale.x(hours * 60.0),
            text: format::plain(hours, 0, options.numbers),
        })
        .collect()
}

fn walls(binding: &[StageResult], scale: &Scale, options: FormatOptions) -> Vec<Wall> {
    let lines: Vec<f64> = binding
        .iter()
        .map(|stage| scale.x(deadline(stage)))
        .collect();
    let mut text_y = TOP + LINE;
    binding
        .iter()
        .zip(&lines)
        .map(|(stage, x)| {
            let by = Minutes::from_minutes(deadline(stage)).unwrap_or(Minutes::ZERO);
            let text = tr!(
                "limit: {first} by {second}",
                first = format::temperature(stage.stage.to, options),
                second = format::minutes(by, options)
            );
            let (text_x, ends) = beside(*x, text_width(&text, TYPE), &lines);
            let wall = Wall {
                x: *x,
                foot: scale.y(stage.stage.to.celsius()),
                ends,
                text_x,
                text,
                text_y,
                passes: stage.passes,
            };
            text_y += LINE;
            wall
        })
        .collect()
}

/// Where words this wide begin or, where the second value says so, end beside a wall: clear of the other walls if they
/// can be, and always within the field if they are no wider than it.
fn beside(x: f64, wide: f64, walls: &[f64]) -> (f64, bool) {
    let places = [
        (x + AWAY, x + AWAY + wide, false),
        (x - AWAY - wide, x - AWAY, true),
    ];
    let is_inside = |(from, to, _): &(f64, f64, bool)| *from >= LEFT && *to <= RIGHT;
    let is_clear =
        |(from, to, _): &(f64, f64, bool)| walls.iter().all(|wall| wall < from || wall > to);
    let inside: Vec<_> = places.into_iter().filter(is_inside).collect();
    let best = inside.iter().find(|place| is_clear(place));
    match best.or(inside.first()) {
        Some((_, to, true)) => (*to, true),
        Some((from, _, false)) => (*from, false),
        None => ((RIGHT - wide).min(x + AWAY).max(LEFT), false),
    }
}

fn outline(cooled: &Cooled, place: Probe, scale: &Scale) -> String {
    let mut line = String::new();
    let mut pen = 'M';
    let mut last = f64::NEG_INFINITY;
    for moment in &cooled.curve.moments {
        let minutes = moment.time.minutes();
        let x = scale.x(minutes);
        // Closer together than a pixel they cannot be seen apart.
        if minutes > scale.minutes || x - last < 1.0 {
            continue;
        }
        last = x;
        // Writing into a string cannot fail.
        let _written = write!(
            line,
            "{pen}{x:.1} {:.1}",
            scale.y(moment.at(place).celsius())
        );
        pen = 'L';
    }
    line
}
