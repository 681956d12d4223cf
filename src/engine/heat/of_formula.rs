//! From a formula to the questions of heat: what each stream is made of, and how warm it comes.

use super::body::Body;
use super::dough::{Dough, Handling, Item};
use super::error::HeatError;
use super::grain::Grain;
use super::material::Vessel;
use super::matter::Matter;
use super::mix::{Part, Stuff};
use super::paste::{Paste, Scalded};
use crate::engine::formula::{Form, Formula, Line, LineAt, Stream, StreamKind};
use crate::engine::larder::Role;
use crate::engine::quantity::{Length, Mass, Minutes, Temperature, TemperatureChange, WarmingRate};

/// How warm things are before they go into the bowl.
#[derive(Clone, Debug, PartialEq)]
pub struct Stores {
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
    /// What is otherwise, stream by stream; the first of a stream counts.
    pub streams: Vec<(usize, Temperature)>,
}

/// What is at work beside the ingredients.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mixer {
    /// The bowl.
    pub vessel: Option<Vessel>,
    /// How fast mixing warms the dough.
    pub friction: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
}

impl Stores {
    /// How warm this ingredient is.
    #[must_use]
    pub fn line(&self, at: LineAt, role: Role) -> Temperature {
        let own = self.lines.iter().find(|(place, _)| *place == at);
        own.map_or_else(|| self.kept(role), |(_, temperature)| *temperature)
    }

    /// How warm this paste or preferment is.
    #[must_use]
    pub fn stream(&self, stream: usize) -> Temperature {
        let own = self.streams.iter().find(|(place, _)| *place == stream);
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

/// What a stream weighs and is made of as it was made: what missed and the steam counted.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing is left of it; [`HeatError::UnknownFood`] for a food of
/// which nothing is known.
pub fn stream_matter(stream: &Stream) -> Result<(Mass, Matter), HeatError> {
    let mut foods = Vec::with_capacity(stream.lines.len());
    for line in weighing(&stream.lines) {
        foods.push((
            Form::AsMade.mass(line),
            Matter::of(&line.food.composition())?,
        ));
    }
    let mass: Mass = foods.iter().map(|(mass, _)| *mass).sum();
    let matter = Matter::blend(&foods)?.dried(mass, stream.steam)?;
    Ok((mass.less(stream.steam), matter))
}

/// The dough of a formula as it goes into the mixer: pastes and preferments whole, as balls that
/// can stand out, and the rest line by line.
///
/// # Errors
/// Those of [`stream_matter`]; [`HeatError::OffScale`] for a ball too large to be handled.
pub fn dough_of(formula: &Formula, stores: &Stores, mixer: &Mixer) -> Result<Dough, HeatError> {
    let mut items = Vec::new();
    let mut dry_flour = Mass::ZERO;
    for (place, stream) in formula.streams.iter().enumerate() {
        match stream.kind {
            StreamKind::Paste | StreamKind::Preferment => {
                if weighing(&stream.lines).next().is_some() {
                    items.push(whole(stream, stores.stream(place), stores.room)?);
                }
            }
            StreamKind::Final => {
                dry_flour = dry_flour + stream.flour();
                items.extend(line_by_line(stream, place, stores)?);
            }
            StreamKind::Filling | StreamKind::Topping | StreamKind::Wash => {}
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

/// The paste of a stream, its liquids boiling; `None` where it has no liquid or no flour.
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food of which nothing is known.
pub fn paste_of(
    stream: &Stream,
    place: usize,
    stores: &Stores,
    boils: Temperature,
    vessel: Option<Vessel>,
) -> Result<Option<Paste>, HeatError> {
    let mut paste = Paste {
        flours: Vec::new(),
        others: Vec::new(),
        liquid: Mass::ZERO,
        liquid_matter: Matter::WATER,
        boils,
        drop: TemperatureChange::from_kelvin(Paste::DROP)?,
        vessel,
    };
    let mut liquids = Vec::new();
    for (line_place, line) in stream.lines.iter().enumerate() {
        let at = LineAt {
            stream: place,
            line: line_place,
        };
        let part = part_of(line, stores.line(at, line.food.role()))?;
        let matter = Matter::of(&line.food.composition())?;
        if line.is_flour() {
            paste.flours.push(Scalded {
                of: part.of,
                mass: part.mass,
                matter,
                starch: line.food.composition().starch,
                grain: Grain::of(&line.food),
                temperature: part.temperature,
            });
        } else if matches!(line.food.role(), Role::Water | Role::Liquid) {
            liquids.push((part.mass, matter));
        } else {
            paste.others.push(part);
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

fn part_of(line: &Line, temperature: Temperature) -> Result<Part, HeatError> {
    Ok(Part {
        of: line.food.name().to_owned().into(),
        mass: Form::AsMade.mass(line),
        stuff: Stuff::Food(Matter::of(&line.food.composition())?),
        temperature,
    })
}

fn whole(stream: &Stream, temperature: Temperature, room: Temperature) -> Result<Item, HeatError> {
    let (mass, matter) = stream_matter(stream)?;
    // Its size is found from its mass; any will do to begin with.
    let any = Length::from_metres(0.05)?;
    let shape = super::Shape::Sphere;
    let ball = Body::of(&matter, mass, shape, any, (temperature, room))?.ball()?;
    Ok(Item {
        part: Part {
            of: stream.name.clone().into(),
            mass,
            stuff: Stuff::Food(matter),
            temperature,
        },
        handling: Handling::Standing(ball),
    })
}

fn line_by_line(stream: &Stream, place: usize, stores: &Stores) -> Result<Vec<Item>, HeatError> {
    let mut items = Vec::with_capacity(stream.lines.len());
    for (line_place, line) in stream.lines.iter().enumerate() {
        if Form::AsMade.mass(line) <= Mass::ZERO {
            continue;
        }
        let role = line.food.role();
        let at = LineAt {
            stream: place,
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
            part: part_of(line, stores.line(at, role))?,
            handling,
        });
    }
    Ok(items)
}
