//! Rescue: what helps a syrup that has come out thick or lumpy, from what is seen of it.

use super::blend::Blend;
use super::error::ChocolateError;
use super::handling::Consistency;
use super::melt::{MELTED, Melted, Melting, heat_to_melt};
use super::melt_remedy::{BATH, DENSITY, DEPTH, warming_in_bath};
use super::syrup::Syrup;
use super::syrup_parts::SyrupParts;
use crate::engine::heat::{Air, HeatError};
use crate::engine::quantity::{Mass, Minutes, Temperature, Viscosity};
use crate::engine::working::{WorkingLine, given};

/// What is seen of a syrup that does not run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SyrupLook {
    /// Smooth, but it comes only when pressed.
    TooThick,
    /// Smooth, but it stays where a spoon puts it.
    StaysPut,
    /// Stiff, dull and grainy.
    Seized,
    /// It runs, with lumps of chocolate in it.
    Lumpy,
}

impl SyrupLook {
    /// Every look, in the order it is asked in.
    pub const ALL: [Self; 4] = [Self::TooThick, Self::StaysPut, Self::Seized, Self::Lumpy];

    /// The class of thickness that is seen; none where thickness is not what is wrong.
    const fn seen(self) -> Option<Consistency> {
        match self {
            Self::TooThick => Some(Consistency::Pipes),
            Self::StaysPut => Some(Consistency::Spreads),
            Self::Seized | Self::Lumpy => None,
        }
    }
}

/// Hot water that makes a thick or seized syrup drizzle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AddWater {
    /// From so much on it drizzles.
    pub from: Mass,
    /// With more than this it runs thin.
    pub to: Mass,
    /// Water with which this chocolate is as thick as what is seen.
    seen: f64,
    /// Water with which it just drizzles, and with which it is the thinnest drizzle.
    drizzles: (f64, f64),
    /// Water that the handbook's rule asks for beyond what is there, where the syrup has seized.
    rule: f64,
}

/// A bath that melts the lumps that are seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BathTime {
    /// How warm the bath is.
    pub bath: Temperature,
    /// How long where it is stirred all the time.
    pub from: Minutes,
    /// How long where it is not stirred.
    pub to: Minutes,
    /// How warm the chocolate is taken to be.
    pub starts: Temperature,
    specific: f64,
}

/// The hot water that makes a syrup drizzle that looks thick or has seized; none for lumps.
///
/// The look stands for the water with which this chocolate is as thick: what is missing is the
/// difference to the water of a drizzle, from its thick end to its thin end. For a seized syrup that
/// is at least what the handbook's rule asks for. Milk and cream count as the water they bring.
///
/// Source: thickness as [`Syrup`]; adding hot water to seized chocolate: common practice.
///
/// # Errors
/// [`ChocolateError::TooThin`] where no water thins this chocolate so far;
/// [`ChocolateError::OffScale`].
pub fn add_water(syrup: &Syrup, look: SyrupLook) -> Result<Option<AddWater>, ChocolateError> {
    let ends = (Consistency::Drizzles.below(), Consistency::Dips.below());
    let (SyrupLook::TooThick | SyrupLook::StaysPut | SyrupLook::Seized, (Some(thick), Some(thin))) =
        (look, ends)
    else {
        return Ok(None);
    };
    let with_water = SyrupParts {
        liquid: Blend::one_gram_of_water(),
        ..syrup.components
    };
    let (seen, rule) = match look.seen().and_then(Consistency::typical) {
        Some(typical) => (water_for(&with_water, typical)?, 0.0),
        None => (
            with_water
                .least_liquid()
                .unwrap_or_default()
                .min(syrup.water_brought.grams()),
            syrup.rule.needed.less(syrup.rule.brought).grams(),
        ),
    };
    let drizzles = (
        water_for(&with_water, thick)?,
        water_for(&with_water, thin)?,
    );
    let missing = |wanted: f64| Mass::from_grams((wanted - seen).max(rule));
    Ok(Some(AddWater {
        from: missing(drizzles.0)?,
        to: missing(drizzles.1)?,
        seen,
        drizzles,
        rule,
    }))
}

/// The least water with which a chocolate is as thin as `wished`, g.
fn water_for(with_water: &SyrupParts, wished: Viscosity) -> Result<f64, ChocolateError> {
    let (goal, conditions) = (wished.pascal_seconds(), &with_water.conditions);
    let found = with_water.least(|mix| {
        mix.pascal_seconds(conditions)
            .is_some_and(|eta| eta <= goal)
    });
    let thinnest = None;
    found.ok_or(ChocolateError::TooThin { wished, thinnest })
}

/// The temperature above which no clear lumps are left: 15 % of all fat is solid there.
/// Source: the table of solid fat in `melt`.
const LUMPS_AT: Temperature = Temperature::known(32.6);

/// The time in a bath of 50 °C until lumps have melted.
///
/// Lumps that are seen mean that the mix is no warmer than where they disappear, whatever the
/// balance of heat says. Stirred all the time, all of it is as warm as the rest:
/// `t = ρ d c / h × ln((B − T) / (B − M))`; unstirred, heat is conducted through it. `None` where
/// there is nothing to melt.
///
/// # Errors
/// [`HeatError::OffScale`] when a step leaves its range.
pub fn bath_time(melting: &Melting, melted: &Melted) -> Result<Option<BathTime>, HeatError> {
    let starts = if melted.temperature < LUMPS_AT {
        melted.temperature
    } else {
        LUMPS_AT
    };
    let mass = melting.chocolate + melting.liquid;
    let rise = (MELTED - starts).kelvin();
    if mass <= Mass::ZERO || rise <= 0.0 {
        return Ok(None);
    }
    let latent = heat_to_melt(melting.chocolate, melting.fat, starts, MELTED).melting;
    let warming = melted.mixed.capacity.joules_per_kelvin() * rise;
    let lacking = warming + latent.joules();
    let specific = (lacking / (mass.grams() / 1000.0) / rise).clamp(500.0, 10_000.0);
    let Some(to) = warming_in_bath(mass, starts, specific)? else {
        return Ok(None);
    };
    let span = (BATH - starts).kelvin() / (BATH - MELTED).kelvin();
    let coefficient = Air::WATER_BATH.watts_per_square_metre_kelvin();
    let stirred = DENSITY * DEPTH * specific / coefficient * libm::log(span) / 60.0;
    Ok(Some(BathTime {
        bath: BATH,
        from: Minutes::from_minutes(stirred.min(to.minutes()))?,
        to,
        starts,
        specific,
    }))
}

impl AddWater {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let line = |name, wanted: f64, result: Mass, label| WorkingLine {
            rule: "max(W − S, R)".into(),
            with: vec![
                given("W", name, wanted, "g"),
                given("S", "water as thick as it looks", self.seen, "g"),
                given("R", "lacking by the handbook", self.rule, "g"),
            ],
            result: given("A", label, result.grams(), "g"),
            source: "Krieger and Dougherty, as the thickness; common practice".into(),
        };
        let (thick, thin) = self.drizzles;
        vec![
            line(
                "water of the thickest drizzle",
                thick,
                self.from,
                "hot water, from",
            ),
            line(
                "water of the thinnest drizzle",
                thin,
                self.to,
                "hot water, to",
            ),
        ]
    }
}

impl BathTime {
    /// The working of the stirred time.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let coefficient = Air::WATER_BATH.watts_per_square_metre_kelvin();
        vec![WorkingLine {
            rule: "ρ × d × c / h × ln((B − T) / (B − M)) / 60".into(),
            with: vec![
                given("ρ", "density", DENSITY, "kg/m³"),
                given("d", "depth", DEPTH, "m"),
                given(
                    "c",
                    "specific heat, melting spread over it",
                    self.specific,
                    "J/(kg·K)",
                ),
                given("h", "heat passes from the bath", coefficient, "W/(m²·K)"),
                given("B", "bath", self.bath.celsius(), "°C"),
                given("T", "chocolate now", self.starts.celsius(), "°C"),
                given("M", "melted at", MELTED.celsius(), "°C"),
            ],
            result: given("t", "stirred all the time", self.from.minutes(), "min"),
            source: "Beckett (ed.), Industrial Chocolate Manufacture and Use, 4th ed., pp. 667-668"
                .into(),
        }]
    }
}
