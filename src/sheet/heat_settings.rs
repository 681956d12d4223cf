//! Heat settings: the temperatures and times of a formula that the kitchen does not decide.

use super::cooling_settings::CoolingSettings;
use super::kitchen::Oven;
use super::known_bake::KnownBake;
use crate::engine::heat::{HeatFrom, Paste, Phase};
use crate::engine::quantity::{Length, Minutes, Temperature, TemperatureChange};

/// What a formula asks of heat.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatSettings {
    /// The wanted temperature of the dough off the mixer.
    pub dough: Temperature,
    /// How long it is mixed; `None` leaves it to the kitchen's mixer.
    pub mixing: Option<Minutes>,
    /// How long pastes and preferments stand in the room before they go in.
    pub standing: Minutes,
    /// The temperature of the mixing bowl, warmed beforehand; `None` is that of the room.
    pub mixing_bowl: Option<Temperature>,
    /// The paste.
    pub paste: PasteSettings,
    /// How what is hot is cooled.
    pub cooling: CoolingSettings,
    /// The bake.
    pub bake: BakeSettings,
    /// Chocolate melted by a hot liquid.
    pub melt: MeltSettings,
}

/// How a paste is stirred.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PasteSettings {
    /// The temperature of its bowl, warmed beforehand; `None` is that of the room.
    pub bowl: Option<Temperature>,
    /// What the liquid loses between the boil and the bowl.
    pub drop: TemperatureChange,
}

/// How it is baked.
#[derive(Clone, Debug, PartialEq)]
pub struct BakeSettings {
    /// The programme; at most [`BakeSettings::MOST_PHASES`].
    pub phases: Vec<Phase>,
    /// A bake that is known to come out well, to scale from; `None` takes the usual one of the bread.
    pub known: Option<KnownBake>,
    /// How long the plan bakes.
    pub length: BakeLength,
}

/// How long the plan bakes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum BakeLength {
    /// As long as is worked out from the known bake; the phases keep their proportions.
    #[default]
    Predicted,
    /// As long as the phases of the programme take together.
    Programme,
}

impl BakeLength {
    /// Both, in the order lists are shown.
    pub const ALL: [Self; 2] = [Self::Predicted, Self::Programme];
}

/// Chocolate melted by a hot liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeltSettings {
    /// How warm the chocolate is; `None` leaves it as warm as the room.
    pub chocolate: Option<Temperature>,
    /// How hot the liquid is poured; `None` leaves it at the boil less the drop.
    pub liquid: Option<Temperature>,
    /// How warm its bowl is; `None` leaves it as warm as the room.
    pub bowl: Option<Temperature>,
    /// How large the pieces of chocolate are across.
    pub pieces: Length,
}

impl Default for HeatSettings {
    /// A dough of 25 °C. Common practice for soft enriched doughs.
    fn default() -> Self {
        Self {
            dough: Temperature::known(25.0),
            mixing: None,
            standing: Minutes::ZERO,
            mixing_bowl: None,
            paste: PasteSettings::default(),
            cooling: CoolingSettings::default(),
            bake: BakeSettings::default(),
            melt: MeltSettings::default(),
        }
    }
}

impl Default for PasteSettings {
    /// A bowl as warm as the room; 2 K lost on the way. Common practice.
    fn default() -> Self {
        Self {
            bowl: None,
            drop: Paste::DROP,
        }
    }
}

impl BakeSettings {
    /// The most phases a programme may have.
    pub const MOST_PHASES: usize = 8;

    /// Adds a phase like the last one, or one of this oven's; nothing where there are as many as
    /// there may be.
    pub fn add_phase(&mut self, oven: Oven) {
        let phase = self.phases.last().copied().unwrap_or(Phase {
            minutes: Minutes::known(10.0),
            temperature: Temperature::known(180.0),
            from: oven.from,
            fan: oven.fan,
        });
        if self.phases.len() < Self::MOST_PHASES {
            self.phases.push(phase);
        }
    }

    /// Takes a phase away.
    pub fn remove_phase(&mut self, phase: usize) {
        if phase < self.phases.len() {
            self.phases.remove(phase);
        }
    }
}

impl Default for BakeSettings {
    /// One phase at 180 °C, as long as the usual bake of the bread makes it. Common practice.
    fn default() -> Self {
        Self {
            phases: vec![Phase {
                minutes: Minutes::known(25.0),
                temperature: Temperature::known(180.0),
                from: HeatFrom::Both,
                fan: false,
            }],
            known: None,
            length: BakeLength::Predicted,
        }
    }
}

impl Default for MeltSettings {
    /// Chocolate and bowl as warm as the room, chopped to 6 mm, liquid just off the boil.
    fn default() -> Self {
        Self {
            chocolate: None,
            liquid: None,
            bowl: None,
            pieces: Length::known(0.006),
        }
    }
}
