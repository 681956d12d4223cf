//! Starts: how warm each thing is before the work begins, unless its line says otherwise.

use std::borrow::Cow;

use super::place::Kitchen;
use crate::engine::formula::Line;
use crate::engine::heat::{HeatError, Matter, Part, Stuff};
use crate::engine::larder::{Food, Role};
use crate::engine::quantity::Temperature;

/// Foods with less water than this keep in the cupboard.
const DRY: f64 = 0.10;

/// How warm an ingredient usually is in this kitchen: flour as flour is kept, water as it comes
/// from the tap, milk, eggs and what else is moist from the fridge, fats and dry things as the room.
///
/// Common practice; butter is taken soft, as it goes into a dough.
#[must_use]
pub fn usual_temperature(line: &Line, kitchen: &Kitchen) -> Temperature {
    if line.is_flour() {
        return kitchen.flour;
    }
    match line.food.role() {
        Role::Flour => kitchen.flour,
        Role::Water => kitchen.tap,
        Role::Liquid | Role::Dairy | Role::Egg => {
            let moist = line.food.composition().water.fraction() > DRY;
            if moist { kitchen.fridge } else { kitchen.room }
        }
        Role::Fat | Role::Sugar | Role::Salt | Role::Yeast | Role::Chocolate | Role::Inclusion => {
            kitchen.room
        }
    }
}

/// How warm it is here: as its line says, else as usual.
pub(super) fn starts_at(line: &Line, kitchen: &Kitchen) -> Temperature {
    line.temperature
        .unwrap_or_else(|| usual_temperature(line, kitchen))
}

/// A line as a part of a mix.
pub(super) fn part(line: &Line, temperature: Temperature) -> Result<Part, HeatError> {
    Ok(Part {
        of: name(&line.food),
        mass: line.mass,
        stuff: Stuff::Food(Matter::of(&line.food.composition())?),
        temperature,
    })
}

pub(super) fn name(food: &Food) -> Cow<'static, str> {
    match food {
        Food::Listed(listed) => Cow::Borrowed(listed.row().name),
        Food::Own(own) => Cow::Owned(own.name.clone()),
    }
}
