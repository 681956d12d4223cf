//! The bowl in the morning: everything that goes into the mixer, each at its own temperature.

use super::body::{body, mass, matter};
use super::place::Kitchen;
use super::starts::{part, starts_at};
use super::wishes::HeatWishes;
use crate::engine::formula::{Formula, LineAt, Stream, StreamKind};
use crate::engine::heat::{
    Air, Dough, FactorMethod, Handling, HeatError, Item, Part, Place, Stay, Stuff, factor_method,
    follow,
};
use crate::engine::larder::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature, TemperatureChange};

/// What an item of the bowl is of the formula.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whence {
    /// A whole paste or preferment.
    Stream(usize),
    /// A line of the final dough.
    Line(LineAt),
}

/// A dough about to be mixed, with where each of its items stands in the formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Bowlful {
    /// The dough.
    pub dough: Dough,
    /// Where each item comes from, in the order of the dough's own.
    pub from: Vec<Whence>,
}

/// Everything that goes into the mixer: pastes and preferments whole, from the fridge unless they
/// say otherwise, having stood out as wished; lines of the final dough each by itself.
///
/// # Errors
/// [`HeatError::UnknownFood`] where nothing is known of an ingredient; [`HeatError::EmptyBowl`]
/// when there is no dough.
pub fn bowlful(
    formula: &Formula,
    kitchen: &Kitchen,
    wishes: &HeatWishes,
) -> Result<Bowlful, HeatError> {
    let (mut items, mut from) = (Vec::new(), Vec::new());
    let mut dry_flour = Mass::ZERO;
    for (stream, own) in formula.streams.iter().enumerate() {
        if matches!(own.kind, StreamKind::Paste | StreamKind::Preferment) && mass(own) > Mass::ZERO
        {
            items.push(standing(own, kitchen, wishes)?);
            from.push(Whence::Stream(stream));
        }
        if own.kind == StreamKind::Final {
            dry_flour = dry_flour + own.flour();
            for (line, written) in own.lines.iter().enumerate() {
                if written.mass > Mass::ZERO {
                    items.push(Item {
                        part: part(written, starts_at(written, kitchen))?,
                        handling: handling(written.is_flour(), written.food.role()),
                    });
                    from.push(Whence::Line(LineAt { stream, line }));
                }
            }
        }
    }
    let dough = Dough {
        items,
        vessel: kitchen.vessel(kitchen.mixing_bowl, wishes.mixing_bowl)?,
        dry_flour,
        friction: kitchen.mixer.friction,
        minutes: wishes.mixing.unwrap_or(kitchen.mixer.minutes),
    };
    Ok(Bowlful { dough, from })
}

/// A paste or preferment, having stood in the room.
fn standing(own: &Stream, kitchen: &Kitchen, wishes: &HeatWishes) -> Result<Item, HeatError> {
    let start = own.temperature.unwrap_or(kitchen.fridge);
    let body = body(own, &wishes.cooling, (start, kitchen.room))?;
    let temperature = if wishes.standing > Minutes::ZERO {
        let stay = Stay {
            minutes: wishes.standing,
            air: Air::still(kitchen.room),
        };
        let curve = follow(&body, start, &[stay])?;
        curve.at(wishes.standing, Place::Mean).unwrap_or(start)
    } else {
        start
    };
    let part = Part {
        of: own.name.clone().into(),
        mass: mass(own),
        stuff: Stuff::Food(matter(own)?),
        temperature,
    };
    Ok(Item {
        part,
        handling: Handling::Standing(body),
    })
}

const fn handling(is_flour: bool, role: Role) -> Handling {
    if is_flour {
        return Handling::Flour;
    }
    match role {
        Role::Flour => Handling::Flour,
        Role::Water => Handling::Water,
        Role::Liquid => Handling::Liquid,
        Role::Fat
        | Role::Sugar
        | Role::Salt
        | Role::Yeast
        | Role::Dairy
        | Role::Egg
        | Role::Chocolate
        | Role::Inclusion => Handling::AsItIs,
    }
}

/// The handbook's factor method for the same morning: room, flour and each paste or preferment,
/// the friction factor such that it stands for the same rise.
///
/// # Errors
/// [`HeatError::OffScale`] when no liquid is that hot or cold.
pub fn factor_method_for(
    bowlful: &Bowlful,
    kitchen: &Kitchen,
    target: Temperature,
) -> Result<FactorMethod, HeatError> {
    let mut others = vec![kitchen.room, kitchen.flour];
    for item in &bowlful.dough.items {
        if matches!(item.handling, Handling::Standing(_)) {
            others.push(item.part.temperature);
        }
    }
    let rate = bowlful.dough.friction.kelvin_per_minute();
    let count = others.iter().fold(1.0, |count, _| count + 1.0);
    let friction = count * rate * bowlful.dough.minutes.minutes();
    factor_method(target, &others, TemperatureChange::from_kelvin(friction)?)
}
