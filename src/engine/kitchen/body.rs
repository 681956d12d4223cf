//! Bodies: a stream as something that cools or warms from outside.

use super::wishes::CoolingWishes;
use crate::engine::formula::{Stream, StreamKind};
use crate::engine::heat::{Air, Body, HeatError, Matter, Shape};
use crate::engine::quantity::{Length, Mass, SurfaceCoefficient, Temperature};

/// Still air against a lid with air under it: two films of still air in a row on the covered side,
/// one on the other, `(1/(1/9 + 1/9) + 9) / 2` W/(m²·K).
pub(super) const COVERED: SurfaceCoefficient = SurfaceCoefficient::known(6.75);

/// What a stream is made of, stirred together, steam left in.
pub(super) fn matter(stream: &Stream) -> Result<Matter, HeatError> {
    let mut foods = Vec::with_capacity(stream.lines.len());
    for line in stream.lines.iter().filter(|line| line.mass > Mass::ZERO) {
        foods.push((line.mass, Matter::of(&line.food.composition())?));
    }
    Matter::blend(&foods)
}

/// What it weighs once its steam is gone.
pub(super) fn mass(stream: &Stream) -> Mass {
    stream.mass().less(stream.steam)
}

/// A stream that stands: a paste as it was cooled, a preferment as a ball.
pub(super) fn body(
    stream: &Stream,
    wishes: &CoolingWishes,
    between: (Temperature, Temperature),
) -> Result<Body, HeatError> {
    let half = Length::from_metres(wishes.thick.metres() / 2.0)?;
    let food = matter(stream)?;
    let body = Body::of(&food, mass(stream), wishes.shape, half, between)?;
    if stream.kind == StreamKind::Preferment {
        Body {
            shape: Shape::Sphere,
            ..body
        }
        .ball()
    } else {
        Ok(body)
    }
}

/// The air round something that is cooled.
pub(super) fn air(temperature: Temperature, lid: bool) -> Air {
    Air {
        temperature,
        coefficient: if lid { COVERED } else { Air::STILL },
    }
}
