//! Doughs: how warm one comes off the mixer.

use super::balance::Balance;
use super::body::Body;
use super::error::HeatError;
use super::heat_part::HeatPart;
use super::material::Vessel;
use super::mix::{Mixed, mix};
use super::room_exchange::{MixingLine, RoomExchange};
use crate::engine::quantity::{
    HeatPerMass, Mass, Minutes, Temperature, TemperatureChange, WarmingRate,
};
use crate::engine::working::{WorkingLine, given};

/// How a thing that goes into the mixer can be handled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LiquidUse {
    /// Plain water: its temperature can be chosen, and some of it can go in as ice.
    Water,
    /// Another liquid: its temperature can be chosen.
    Liquid,
    /// Flour: it can be kept cold or warm.
    Flour,
    /// A paste or preferment from the fridge, of this shape: it can stand out first.
    Standing(Body),
    /// Anything else: it goes in as it is.
    AsItIs,
}

/// One thing that goes into the mixer.
#[derive(Clone, Debug, PartialEq)]
pub struct DoughItem {
    /// What, how much and how warm.
    pub component: HeatPart,
    /// How it can be handled.
    pub handling: LiquidUse,
}

/// A dough about to be mixed.
#[derive(Clone, Debug, PartialEq)]
pub struct Dough {
    /// Everything that goes in.
    pub items: Vec<DoughItem>,
    /// What it is mixed in.
    pub vessel: Option<Vessel>,
    /// Flour that is still dry: that of pastes and preferments has had its heat of hydration.
    pub dry_flour: Mass,
    /// How fast friction warms it.
    pub friction: WarmingRate,
    /// How far the true friction may lie above or below that.
    pub friction_spread: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
    /// How long a dough is usually mixed; no advice goes beyond one and a half times that.
    pub usual: Minutes,
    /// How long its cold pastes and preferments have stood in the room already.
    pub stood: Minutes,
    /// The room it is mixed in.
    pub room: Temperature,
}

/// How a dough's temperature comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct DoughTemperature {
    /// Flour that takes up water.
    pub dry_flour: Mass,
    /// Everything brought together, heat of hydration included, before the mixer warms it.
    pub mixed: Mixed,
    /// How fast friction warms it.
    pub friction: WarmingRate,
    /// How far the true friction may lie above or below that.
    pub friction_spread: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
    /// What passes between it and the room.
    pub exchange: RoomExchange,
    /// What mixing adds, less what the room takes; negative where it takes more.
    pub rise: TemperatureChange,
    /// How warm it comes off the mixer.
    pub temperature: Temperature,
    /// The lower end of where it may come off.
    pub low: Temperature,
    /// The upper end of where it may come off.
    pub high: Temperature,
}

/// Heat that a gram of dry flour gives as it takes up water.
///
/// Source: *Baking & Snack*, "Targeting dough temperatures": 6.5 Btu a pound of flour.
pub const HEAT_OF_HYDRATION: HeatPerMass = HeatPerMass::known(15.1);

impl Dough {
    /// Friction of a stand mixer at medium speed, until the log knows better.
    ///
    /// A straight dough of 1 kg in a steel bowl warms by some 4 K in ten minutes, 3 K of them by its
    /// own hydration. Printed factors of the sum of three temperatures are three times the whole
    /// warming: 20 °F (*Cook's Illustrated*) is 3.7 K, 22 to 24 °F (common practice) 4.1 to 4.4 K.
    pub const FRICTION: WarmingRate = WarmingRate::known(0.12);

    /// How far a mixer's friction may lie from [`Dough::FRICTION`]. Sources disagree by a factor of
    /// five: 'two to three °F in all' (a baking school's class notes) is 1.1 to 1.7 K of warming,
    /// 35 °F (*Pizza Today*, June 2018) is 6.5 K.
    pub const FRICTION_SPREAD: WarmingRate = WarmingRate::known(0.21);

    /// What the temperatures of the ingredients, the bowl and the hydration leave open together
    /// where nothing is measured. Common practice.
    pub const OPEN: TemperatureChange = TemperatureChange::known(1.5);

    /// Everything that shares its heat, the bowl included.
    #[must_use]
    pub fn components(&self) -> Vec<HeatPart> {
        let items = self.items.iter().map(|item| item.component.clone());
        items
            .chain(self.vessel.as_ref().map(Vessel::component))
            .collect()
    }

    /// What mixing does to it.
    ///
    /// # Errors
    /// Those of [`RoomExchange::of`].
    pub(super) fn mixing(&self) -> Result<MixingLine, HeatError> {
        Ok(self.exchange()?.over(self.friction, self.minutes))
    }

    fn exchange(&self) -> Result<RoomExchange, HeatError> {
        let foods = self.items.iter().map(|item| &item.component);
        let bowl = self.vessel.as_ref().map(Vessel::component);
        RoomExchange::of(foods, bowl.as_ref(), self.room)
    }

    /// Itself with some of its items changed.
    pub(super) fn with(&self, change: impl Fn(&mut DoughItem)) -> Self {
        let mut changed = self.clone();
        changed.items.iter_mut().for_each(change);
        changed
    }
}

/// How warm the dough comes off the mixer.
///
/// Everything settles as in [`mix`], the heat of hydration of the dry flour included. While it is
/// mixed, friction warms it and the room takes or gives heat through bowl and surface:
/// `dT/dt = r − k·(T − T_room)`, so that `T_end = T·E + (r + k·T_room)·τ` with `E = exp(−k·t)` and
/// `τ = (1 − E) / k`. The range is `√(b² + (s·τ)²)` to either side, with s the spread of the friction
/// and b = [`Dough::OPEN`]. Butter's melting and sugar's dissolving are left out.
///
/// # Errors
/// Those of [`mix`].
pub fn dough_temperature(dough: &Dough) -> Result<DoughTemperature, HeatError> {
    let mixed = mix(&dough.components(), HEAT_OF_HYDRATION * dough.dry_flour)?;
    let exchange = dough.exchange()?;
    let line = exchange.over(dough.friction, dough.minutes);
    let temperature = Temperature::from_celsius(line.after(mixed.temperature.celsius()))?;
    let either_side = either_side(dough.friction_spread, line);
    Ok(DoughTemperature {
        dry_flour: dough.dry_flour,
        rise: temperature - mixed.temperature,
        mixed,
        friction: dough.friction,
        friction_spread: dough.friction_spread,
        minutes: dough.minutes,
        exchange,
        temperature,
        low: nearest(temperature.celsius() - either_side)?,
        high: nearest(temperature.celsius() + either_side)?,
    })
}

fn either_side(spread: WarmingRate, line: MixingLine) -> f64 {
    let (open, friction) = (
        Dough::OPEN.kelvin(),
        spread.kelvin_per_minute() * line.warmed,
    );
    libm::sqrt(open * open + friction * friction)
}

/// The temperature nearest to this that a thermometer shows.
fn nearest(celsius: f64) -> Result<Temperature, HeatError> {
    let (least, most) = (*Temperature::RANGE.start(), *Temperature::RANGE.end());
    Ok(Temperature::from_celsius(celsius.clamp(least, most))?)
}

/// As [`dough_temperature`], without the numbers met on the way: for finding by trying.
///
/// # Errors
/// Those of [`dough_temperature`].
pub(super) fn comes_off(dough: &Dough) -> Result<Temperature, HeatError> {
    let vessel = dough.vessel.as_ref().map(Vessel::component);
    let balance = Balance::of(
        dough
            .items
            .iter()
            .map(|item| &item.component)
            .chain(&vessel),
    );
    if balance.is_empty() {
        return Err(HeatError::EmptyBowl);
    }
    let hydration = HEAT_OF_HYDRATION * dough.dry_flour;
    let equilibrium = balance.equilibrium_with(hydration.joules())?;
    if balance.ice && equilibrium < 0.0 {
        return Err(HeatError::IceLeft);
    }
    Ok(Temperature::from_celsius(
        dough.mixing()?.after(equilibrium),
    )?)
}

impl DoughTemperature {
    /// The minutes of friction that are left in the dough at the end; what friction gave before has
    /// partly gone to the room. Friction warms the dough by this times its rate.
    #[must_use]
    pub fn warmed_for(&self) -> Minutes {
        let line = self.exchange.over(self.friction, self.minutes);
        // Never more than the minutes mixed, so within the range.
        Minutes::from_minutes(line.warmed).unwrap_or(self.minutes)
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = vec![WorkingLine {
            rule: "H × F".into(),
            with: vec![
                given(
                    "H",
                    "heat of hydration",
                    HEAT_OF_HYDRATION.joules_per_gram(),
                    "J/g",
                ),
                given("F", "dry flour", self.dry_flour.grams(), "g"),
            ],
            result: given("Q", "heat gained", self.mixed.gained.joules(), "J"),
            source: "Baking & Snack, Targeting dough temperatures".into(),
        }];
        lines.extend(self.mixed.working());
        let mixing = self.exchange.over(self.friction, self.minutes);
        lines.extend(self.exchange.working(mixing, self.minutes));
        lines.push(self.end_working(mixing));
        lines.push(self.range_working(mixing));
        lines
    }

    fn end_working(&self, mixing: MixingLine) -> WorkingLine {
        WorkingLine {
            rule: "T × E + (r + k × R) × τ".into(),
            with: vec![
                given("T", "all together", self.mixed.temperature.celsius(), "°C"),
                given("E", "kept of the difference", mixing.kept, ""),
                given("r", "friction", self.friction.kelvin_per_minute(), "K/min"),
                given(
                    "k",
                    "passed to the room, of the difference",
                    self.exchange.rate(),
                    "1/min",
                ),
                given("R", "room", self.exchange.room.celsius(), "°C"),
                given("τ", "minutes of friction left in it", mixing.warmed, "min"),
            ],
            result: given("D", "dough", self.temperature.celsius(), "°C"),
            source:
                "heat balance while mixing; friction: common practice, then this kitchen's own \
                     log"
                .into(),
        }
    }

    fn range_working(&self, mixing: MixingLine) -> WorkingLine {
        WorkingLine {
            rule: "sqrt(b × b + s × τ × s × τ)".into(),
            with: vec![
                given(
                    "b",
                    "temperatures, bowl and hydration",
                    Dough::OPEN.kelvin(),
                    "K",
                ),
                given(
                    "s",
                    "spread of the friction",
                    self.friction_spread.kelvin_per_minute(),
                    "K/min",
                ),
                given("τ", "minutes of friction left in it", mixing.warmed, "min"),
            ],
            result: given(
                "S",
                "dough, to either side",
                either_side(self.friction_spread, mixing),
                "K",
            ),
            source: "printed friction factors of 7 to 35 °F, then this kitchen's own log".into(),
        }
    }
}
