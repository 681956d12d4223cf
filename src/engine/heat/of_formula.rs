//! From a formula to the questions of heat: what each part is made of, and how warm it comes.

use super::body::Body;
use super::dough::{Dough, Handling, Item};
use super::error::HeatError;
use super::grain::Grain;
use super::heat_part::{HeatPart, ThermalMaterial};
use super::material::Vessel;
use super::matter::Matter;
use super::paste::{Paste, Scalded};
use crate::engine::formula::{Form, Formula, Line, LineAt, Part, PartKind};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};

/// How warm things are before they go into the bowl.
#[derive(Clone, Debug, PartialEq)]
pub struct StartTemperatures {
    /// The room: sugar, salt, fats left to soften.
    pub room: Temperature,
    /// The flour.
    pub flour: Temperature,
    /// The tap.
    pub tap: Temperature,
    /// The fridge: pastes, preferments, milk, eggs.
    pub fridge: Temperature,
    /// What is otherwise, ingredient by ingredient; the first of a line counts.
    pub lines: Vec<(LineAt, Temperature)>,
    /// What is otherwise, part by part; the first of a part counts.
    pub parts: Vec<(usize, Temperature)>,
}

/// What is at work beside the ingredients.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MixerEffect {
    /// The bowl.
    pub vessel: Option<Vessel>,
    /// How fast mixing warms the dough.
    pub friction: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
}

impl StartTemperatures {
    /// How warm this ingredient is.
    #[must_use]
    pub fn line(&self, at: LineAt, role: Role) -> Temperature {
        let own = self.lines.iter().find(|(place, _)| *place == at);
        own.map_or_else(|| self.kept(role), |(_, temperature)| *temperature)
    }

    /// How warm this paste or preferment is.
    #[must_use]
    pub fn part(&self, part: usize) -> Temperature {
        let own = self.parts.iter().find(|(place, _)| *place == part);
        own.map_or(self.fridge, |(_, temperature)| *temperature)
    }

    /// Where such a thing is kept. Common practice.
    const fn kept(&self, role: Role) -> Temperature {
        match role {
            Role::Flour => self.flour,
            Role::Water => self.tap,
            Role::Liquid | Role::Dairy | Role::Egg | Role::Yeast => self.fridge,
            Role::Fat | Role::Sugar | Role::Salt | Role::Chocolate | Role::Inclusion => self.room,
        }
    }
}

/// What a part weighs and is made of as it was made: what missed and the steam counted.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing is left of it; [`HeatError::UnknownFood`] for a food of
/// which nothing is known.
pub fn part_matter(part: &Part) -> Result<(Mass, Matter), HeatError> {
    let mut foods = Vec::with_capacity(part.lines.len());
    for line in weighing(&part.lines) {
        foods.push((
            Form::AsMade.mass(line),
            Matter::of(&line.food.composition())?,
        ));
    }
    let mass: Mass = foods.iter().map(|(mass, _)| *mass).sum();
    let matter = Matter::blend(&foods)?.dried(mass, part.steam)?;
    Ok((mass.less(part.steam), matter))
}

/// The dough of a formula as it goes into the mixer: pastes and preferments whole, as balls that
/// can stand out, and the rest line by line.
///
/// # Errors
/// Those of [`part_matter`]; [`HeatError::OffScale`] for a ball too large to be handled.
pub fn dough_of(
    formula: &Formula,
    stores: &StartTemperatures,
    mixer: &MixerEffect,
) -> Result<Dough, HeatError> {
    let mut items = Vec::new();
    let mut dry_flour = Mass::ZERO;
    for (place, part) in formula.parts.iter().enumerate() {
        match part.kind {
            PartKind::Paste | PartKind::Preferment => {
                if weighing(&part.lines).next().is_some() {
                    items.push(whole(part, stores.part(place), stores.room)?);
                }
            }
            PartKind::Final => {
                dry_flour = dry_flour + part.flour();
                items.extend(line_by_line(part, place, stores)?);
            }
            PartKind::Filling | PartKind::Topping | PartKind::Wash => {}
        }
    }
    Ok(Dough {
        items,
        vessel: mixer.vessel,
        dry_flour,
        friction: mixer.friction,
        minutes: mixer.minutes,
    })
}

/// The paste of a part, its liquids boiling; `None` where it has no liquid or no flour.
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food of which nothing is known.
pub fn paste_of(
    part: &Part,
    place: usize,
    stores: &StartTemperatures,
    boils: Temperature,
    vessel: Option<Vessel>,
) -> Result<Option<Paste>, HeatError> {
    let mut paste = Paste {
        flours: Vec::new(),
        others: Vec::new(),
        liquid: Mass::ZERO,
        liquid_matter: Matter::WATER,
        boils,
        drop: Paste::DROP,
        vessel,
    };
    let mut liquids = Vec::new();
    for (line_place, line) in part.lines.iter().enumerate() {
        let at = LineAt {
            part: place,
            line: line_place,
        };
        let component = part_of(line, stores.line(at, line.food.role()))?;
        let matter = Matter::of(&line.food.composition())?;
        if line.is_flour() {
            paste.flours.push(Scalded {
                of: component.of,
                mass: component.mass,
                matter,
                starch: line.food.composition().starch,
                grain: Grain::of(&line.food),
                temperature: component.temperature,
            });
        } else if matches!(line.food.role(), Role::Water | Role::Liquid) {
            liquids.push((component.mass, matter));
        } else {
            paste.others.push(component);
        }
    }
    paste.liquid = liquids.iter().map(|(mass, _)| *mass).sum();
    if paste.flours.is_empty() || paste.liquid <= Mass::ZERO {
        return Ok(None);
    }
    paste.liquid_matter = Matter::blend(&liquids)?;
    Ok(Some(paste))
}

/// Lines that weigh anything.
fn weighing(lines: &[Line]) -> impl Iterator<Item = &Line> {
    lines
        .iter()
        .filter(|line| Form::AsMade.mass(line) > Mass::ZERO)
}

fn part_of(line: &Line, temperature: Temperature) -> Result<HeatPart, HeatError> {
    Ok(HeatPart {
        of: line.food.name().to_owned().into(),
        mass: Form::AsMade.mass(line),
        stuff: ThermalMaterial::Food(Matter::of(&line.food.composition())?),
        temperature,
    })
}

fn whole(part: &Part, temperature: Temperature, room: Temperature) -> Result<Item, HeatError> {
    let (mass, matter) = part_matter(part)?;
    let ball = Body::ball_of(&matter, mass, (temperature, room))?;
    Ok(Item {
        component: HeatPart {
            of: part.name.clone().into(),
            mass,
            stuff: ThermalMaterial::Food(matter),
            temperature,
        },
        handling: Handling::Standing(ball),
    })
}

fn line_by_line(
    part: &Part,
    place: usize,
    stores: &StartTemperatures,
) -> Result<Vec<Item>, HeatError> {
    let mut items = Vec::with_capacity(part.lines.len());
    for (line_place, line) in part.lines.iter().enumerate() {
        if Form::AsMade.mass(line) <= Mass::ZERO {
            continue;
        }
        let role = line.food.role();
        let at = LineAt {
            part: place,
            line: line_place,
        };
        let handling = match role {
            Role::Water => Handling::Water,
            Role::Liquid => Handling::Liquid,
            Role::Flour
            | Role::Fat
            | Role::Sugar
            | Role::Salt
            | Role::Yeast
            | Role::Dairy
            | Role::Egg
            | Role::Chocolate
            | Role::Inclusion => {
                if line.is_flour() {
                    Handling::Flour
                } else {
                    Handling::AsItIs
                }
            }
        };
        items.push(Item {
            component: part_of(line, stores.line(at, role))?,
            handling,
        });
    }
    Ok(items)
}
