//! Room exchange: the heat that passes between a dough and the room while it is mixed.

use super::body::Air;
use super::error::HeatError;
use super::heat_part::{HeatPart, ThermalMaterial};
use super::matter::Matter;
use crate::engine::quantity::{
    HeatCapacity, Minutes, SurfaceCoefficient, Temperature, Volume, WarmingRate,
};
use crate::engine::working::{Given, WorkingLine, given};

/// The exchange of heat between a dough in its bowl and the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomExchange {
    /// The temperature of the room.
    pub room: Temperature,
    /// The volume of the dough, without air.
    pub volume: Volume,
    /// The heat capacity of the dough and the part of the bowl that warms with it, at 25 °C.
    pub capacity: HeatCapacity,
    /// The heat that passes through each square metre of its surface.
    pub coefficient: SurfaceCoefficient,
    /// The surface, m².
    surface: f64,
    /// The share of a difference from the room that is lost each minute.
    rate: f64,
}

/// What some minutes of mixing do to a dough, as a straight line: its temperature at the end is
/// `kept · T + gained`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct MixingLine {
    /// The share of the first temperature that is kept.
    pub(super) kept: f64,
    /// The minutes of friction that are left in the dough.
    pub(super) warmed: f64,
    /// What friction and room add, °C.
    pub(super) gained: f64,
}

/// The temperature at which density and specific heat are taken, °C: near that of every dough.
const TAKEN_AT: f64 = 25.0;
/// The density of what is given by its specific heat alone, kg/m³: that of water.
const PLAIN: f64 = 1000.0;
/// After so many time constants everything is as warm as its surroundings make it.
const LONGEST: f64 = 50.0;

impl RoomExchange {
    /// The coefficient between dough and room, through the open surface and the wall of the bowl.
    ///
    /// Source: Churchill and Chu 1975 with radiation, for a surface of 25 °C in still air of 20 °C,
    /// as [`Air::STILL`].
    pub const COEFFICIENT: SurfaceCoefficient = Air::STILL;

    /// The exchange of foods that are mixed in a bowl: `k = U·A / C`, with A the surface of a ball of its volume.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] when nothing weighs anything; [`HeatError::OffScale`] for a volume
    /// of more than [`Volume::RANGE`].
    pub(super) fn of<'p>(
        foods: impl Iterator<Item = &'p HeatPart> + Clone,
        bowl: Option<&'p HeatPart>,
        room: Temperature,
    ) -> Result<Self, HeatError> {
        let volume: f64 = foods.clone().map(cubic_metres).sum();
        let capacity: f64 = foods.chain(bowl).map(joules_per_kelvin).sum();
        if capacity <= 0.0 {
            return Err(HeatError::EmptyBowl);
        }
        let surface = libm::cbrt(36.0 * std::f64::consts::PI * volume * volume);
        let coefficient = Self::COEFFICIENT.watts_per_square_metre_kelvin();
        Ok(Self {
            room,
            volume: Volume::from_cubic_centimetres(1e6 * volume)?,
            capacity: HeatCapacity::from_joules_per_kelvin(capacity),
            coefficient: Self::COEFFICIENT,
            surface,
            rate: 60.0 * coefficient * surface / capacity,
        })
    }

    /// What mixing does in so many minutes, by the solution of `dT/dt = r − k·(T − T_room)`.
    pub(super) fn over(&self, friction: WarmingRate, minutes: Minutes) -> MixingLine {
        let spent = (self.rate * minutes.minutes()).min(LONGEST);
        let warmed = if self.rate > 0.0 {
            -libm::expm1(-spent) / self.rate
        } else {
            minutes.minutes()
        };
        let per_minute = friction.kelvin_per_minute() + self.rate * self.room.celsius();
        MixingLine {
            kept: libm::exp(-spent),
            warmed,
            gained: per_minute * warmed,
        }
    }

    /// The working of the rate, and of what it keeps.
    pub(super) fn working(&self, line: MixingLine, minutes: Minutes) -> Vec<WorkingLine> {
        let kept = given("E", "kept of the difference", line.kept, "");
        vec![
            self.surface_working(),
            self.rate_working(),
            WorkingLine {
                rule: "exp(−min(k × t, 50))".into(),
                with: vec![
                    self.given_rate(),
                    given("t", "mixing", minutes.minutes(), "min"),
                ],
                result: kept.clone(),
                source: "a stirred body in air of one temperature".into(),
            },
            self.warmed_working(line, kept, minutes),
        ]
    }

    fn given_rate(&self) -> Given {
        given(
            "k",
            "passed to the room, of the difference",
            self.rate,
            "1/min",
        )
    }

    fn given_surface(&self) -> Given {
        given("A", "surface", self.surface, "m²")
    }

    fn surface_working(&self) -> WorkingLine {
        WorkingLine {
            rule: "(36 × 3.141592653589793 × V × V) ^ (1 / 3) / 10000".into(),
            with: vec![given("V", "dough", self.volume.cubic_centimetres(), "cm³")],
            result: self.given_surface(),
            source: "surface of a ball of the dough's volume; density by composition: Choi and \
                     Okos 1986"
                .into(),
        }
    }

    fn rate_working(&self) -> WorkingLine {
        WorkingLine {
            rule: "60 × U × A / C".into(),
            with: vec![
                given(
                    "U",
                    "between dough and room",
                    self.coefficient.watts_per_square_metre_kelvin(),
                    "W/(m²·K)",
                ),
                self.given_surface(),
                given(
                    "C",
                    "heat capacity, dough and bowl",
                    self.capacity.joules_per_kelvin(),
                    "J/K",
                ),
            ],
            result: self.given_rate(),
            source: "free convection and radiation: Churchill and Chu 1975".into(),
        }
    }

    fn warmed_working(&self, line: MixingLine, kept: Given, minutes: Minutes) -> WorkingLine {
        let (rule, with) = if self.rate > 0.0 {
            ("(1 − E) / k", vec![kept, self.given_rate()])
        } else {
            ("t", vec![given("t", "mixing", minutes.minutes(), "min")])
        };
        WorkingLine {
            rule: rule.into(),
            with,
            result: given("τ", "minutes of friction left in it", line.warmed, "min"),
            source: "a stirred body in air of one temperature".into(),
        }
    }

    /// The share of a difference from the room that is lost each minute.
    pub(super) const fn rate(&self) -> f64 {
        self.rate
    }
}

impl MixingLine {
    /// The temperature after mixing, °C.
    pub(super) fn after(self, equilibrium: f64) -> f64 {
        self.kept * equilibrium + self.gained
    }

    /// The temperature before mixing that ends at this one, °C.
    pub(super) fn before(self, end: f64) -> f64 {
        (end - self.gained) / self.kept
    }
}

fn cubic_metres(part: &HeatPart) -> f64 {
    let kilograms = part.mass.grams() / 1000.0;
    let matter = match part.stuff {
        ThermalMaterial::Food(matter) => matter,
        ThermalMaterial::Ice => Matter::WATER,
        ThermalMaterial::Plain(_) => return kilograms / PLAIN,
    };
    let shares = matter.components();
    kilograms
        * shares
            .map(|(one, share)| share / one.density().at(TAKEN_AT))
            .sum::<f64>()
}

fn joules_per_kelvin(part: &HeatPart) -> f64 {
    part.mass.grams() / 1000.0 * part.stuff.curve().mean(TAKEN_AT, TAKEN_AT)
}
