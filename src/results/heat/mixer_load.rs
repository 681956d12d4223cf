//! The mixer's load: everything that goes into the mixer, each at its own temperature.

use super::part_matter::{heat_part, part_matter, weighs};
use super::start_temperatures::{line_start, part_start};
use crate::engine::formula::{Formula, Line, LineAt, Part, PartKind};
use crate::engine::heat::{
    Air, Body, Dough, DoughItem, Exposure, FactorMethod, HeatError, HeatPart, LiquidUse, Probe,
    ThermalMaterial, factor_method, simulate,
};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::{HeatSettings, Kitchen};

/// The part or line of the formula that an item of the load is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadSource {
    /// A whole paste or preferment.
    Part(usize),
    /// A line of the final dough.
    Line(LineAt),
}

/// A dough about to be mixed.
#[derive(Clone, Debug, PartialEq)]
pub struct MixerLoad {
    /// The dough.
    pub dough: Dough,
    /// Where each item comes from, in the order of the dough's own.
    pub from: Vec<LoadSource>,
    /// The temperature of each item before it warms in the room, in the same order.
    pub starts: Vec<Temperature>,
}

/// Everything that goes into the mixer: pastes and preferments whole, from the fridge unless they
/// say otherwise, after standing in the room as set; lines of the final dough each by itself.
///
/// ```
/// use softcrumb::results::heat::mixer_load;
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let load = mixer_load(&sheet.formula, &Kitchen::default(), &HeatSettings::default())?;
/// // Each item has a source and a temperature at the start.
/// assert_eq!(load.dough.items.len(), load.from.len());
/// assert_eq!(load.dough.items.len(), load.starts.len());
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food whose composition is empty; [`HeatError::EmptyBowl`] for a
/// paste of which steam leaves nothing; [`HeatError::OffScale`] for a paste or preferment too large
/// to be handled.
pub fn mixer_load(
    formula: &Formula,
    kitchen: &Kitchen,
    settings: &HeatSettings,
) -> Result<MixerLoad, HeatError> {
    let mut load = MixerLoad {
        dough: Dough {
            items: Vec::new(),
            vessel: kitchen.vessel(kitchen.mixing_bowl, settings.mixing_bowl)?,
            dry_flour: Mass::ZERO,
            friction: kitchen.mixer.friction,
            friction_spread: kitchen.mixer.friction_spread,
            stood: settings.standing,
            minutes: settings.mixing.unwrap_or(kitchen.mixer.minutes),
            usual: kitchen.mixer.minutes,
            room: kitchen.room,
        },
        from: Vec::new(),
        starts: Vec::new(),
    };
    for (place, part) in formula.parts.iter().enumerate() {
        match part.kind {
            PartKind::Paste | PartKind::Preferment => {
                if part.lines.iter().any(weighs) {
                    load.add(LoadSource::Part(place), whole(part, kitchen)?);
                }
            }
            PartKind::Final => {
                load.dough.dry_flour = load.dough.dry_flour + part.flour();
                load.add_lines(part, place, kitchen)?;
            }
            PartKind::Filling | PartKind::Topping | PartKind::Wash => {}
        }
    }
    if settings.standing > Minutes::ZERO {
        for item in &mut load.dough.items {
            stand_out(item, settings.standing, kitchen)?;
        }
    }
    Ok(load)
}

impl MixerLoad {
    fn add(&mut self, from: LoadSource, item: DoughItem) {
        self.from.push(from);
        self.starts.push(item.component.temperature);
        self.dough.items.push(item);
    }

    fn add_lines(&mut self, part: &Part, place: usize, kitchen: &Kitchen) -> Result<(), HeatError> {
        for (line_place, line) in part.lines.iter().enumerate() {
            if weighs(line) {
                let at = LineAt {
                    part: place,
                    line: line_place,
                };
                let item = DoughItem {
                    component: heat_part(line, line_start(line, kitchen))?,
                    handling: handling(line),
                };
                self.add(LoadSource::Line(at), item);
            }
        }
        Ok(())
    }

    /// Returns the item that a part or line is in this load; `None` where it is not in it.
    #[must_use]
    pub fn item(&self, source: LoadSource) -> Option<&DoughItem> {
        let mut items = self.from.iter().zip(&self.dough.items);
        items
            .find(|(from, _)| **from == source)
            .map(|(_, item)| item)
    }

    /// Returns the temperature in °C a part or line starts at, before it warms in the room.
    #[must_use]
    pub fn starts_at(&self, source: LoadSource) -> Option<Temperature> {
        let mut starts = self.from.iter().zip(&self.starts);
        starts.find(|(from, _)| **from == source).map(|(_, at)| *at)
    }
}

/// A paste or preferment as a ball that warms in the room.
fn whole(part: &Part, kitchen: &Kitchen) -> Result<DoughItem, HeatError> {
    let temperature = part_start(part, kitchen);
    let (mass, matter) = part_matter(part)?;
    let ball = Body::ball_of(&matter, mass, (temperature, kitchen.room))?;
    Ok(DoughItem {
        component: HeatPart {
            of: part.name.clone().into(),
            mass,
            stuff: ThermalMaterial::Food(matter),
            temperature,
        },
        handling: LiquidUse::Standing(ball),
    })
}

fn handling(line: &Line) -> LiquidUse {
    match line.food.role() {
        Role::Water if line.food.is_ice() => LiquidUse::AsItIs,
        Role::Water => LiquidUse::Water,
        Role::Liquid => LiquidUse::Liquid,
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
                LiquidUse::Flour
            } else {
                LiquidUse::AsItIs
            }
        }
    }
}

/// Warms a paste or preferment by its time in the room.
fn stand_out(item: &mut DoughItem, minutes: Minutes, kitchen: &Kitchen) -> Result<(), HeatError> {
    if let LiquidUse::Standing(body) = item.handling {
        let exposure = Exposure {
            minutes,
            air: Air::of_kitchen(kitchen.room, &kitchen.cooling),
        };
        let curve = simulate(&body, item.component.temperature, &[exposure])?;
        if let Some(warm) = curve.at(minutes, Probe::Mean) {
            item.component.temperature = warm;
        }
    }
    Ok(())
}

/// Returns the liquid's temperature in °C by the handbooks' factor method for the same load: room,
/// flour and each paste or preferment, with the printed friction factor that is chosen for the
/// mixer.
///
/// Source: as for [`factor_method`].
///
/// # Errors
/// [`HeatError::OffScale`] when no liquid is that hot or cold.
pub fn factor_method_for(
    load: &MixerLoad,
    kitchen: &Kitchen,
    target: Temperature,
) -> Result<FactorMethod, HeatError> {
    let mut others = vec![kitchen.room, kitchen.flour_at()];
    for item in &load.dough.items {
        if matches!(item.handling, LiquidUse::Standing(_)) {
            others.push(item.component.temperature);
        }
    }
    let printed = kitchen.mixer.printed;
    Ok(FactorMethod {
        source: printed.source(),
        ..factor_method(target, &others, printed.factor())?
    })
}
