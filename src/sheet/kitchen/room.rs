//! The kitchen itself: room, fridge, tap, altitude, and its equipment.

use super::equipment::{Bowl, Mixer, Oven, Scales};
use crate::engine::heat::{
    Boiling, CoolingFactors, HeatError, LiquidRange, Material, Paste, RuleSet, Surroundings,
    Vessel, boiling_at, boiling_under,
};
use crate::engine::quantity::{Altitude, Division, Mass, Pressure, Temperature};

/// What decides where water boils.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BoilsBy {
    /// The kitchen's altitude, on a day of standard weather.
    Altitude(Altitude),
    /// What a barometer shows, not brought down to sea level.
    Pressure(Pressure),
}

/// What is true of a room and its equipment.
#[derive(Clone, Debug, PartialEq)]
pub struct Kitchen {
    /// As the user calls it; at most [`Kitchen::NAME_LENGTH`] characters.
    pub name: String,
    /// The scales.
    pub scales: Scales,
    /// The room.
    pub room: Temperature,
    /// Flour, where it is stored; `None` is as warm as the room.
    pub flour: Option<Temperature>,
    /// The fridge.
    pub fridge: Temperature,
    /// Water from the tap.
    pub tap: Temperature,
    /// What decides where water boils.
    pub boils_by: BoilsBy,
    /// Its bowls; at most [`Kitchen::MOST_BOWLS`].
    pub bowls: Vec<Bowl>,
    /// Which of them a paste is stirred in.
    pub paste_bowl: Option<usize>,
    /// Which of them a dough is mixed in.
    pub mixing_bowl: Option<usize>,
    /// The mixer.
    pub mixer: Mixer,
    /// The oven.
    pub oven: Oven,
    /// Whose food-safety rules are followed.
    pub rules: RuleSet,
    /// How cooling goes here, as the log has taught: of the log each time, in no record.
    pub cooling: CoolingFactors,
}

/// Where ice comes from, °C. Common practice for household freezers.
const FREEZER: Temperature = Temperature::known(-18.0);

impl Default for Kitchen {
    /// A room of 21 °C near the sea with one whole-gram scale, a light steel bowl for the paste and
    /// a mixer with a steel bowl.
    fn default() -> Self {
        let bowl = |name: &str, grams: f64| Bowl {
            name: name.to_owned(),
            material: Material::Steel,
            mass: Mass::from_grams(grams).unwrap_or_default(),
        };
        Self {
            name: "This kitchen".to_owned(),
            scales: Scales {
                main: Division::ONE_GRAM.mass(),
                pocket: None,
            },
            room: Temperature::known(21.0),
            flour: None,
            fridge: Temperature::known(4.0),
            tap: Temperature::known(14.0),
            boils_by: BoilsBy::Altitude(Altitude::SEA_LEVEL),
            bowls: vec![bowl("Small bowl", 320.0), bowl("Mixer bowl", 900.0)],
            paste_bowl: Some(0),
            mixing_bowl: Some(1),
            mixer: Mixer::default(),
            oven: Oven::default(),
            rules: RuleSet::default(),
            cooling: CoolingFactors::default(),
        }
    }
}

impl Kitchen {
    /// The most characters a name of a kitchen or bowl may have.
    pub const NAME_LENGTH: usize = 60;
    /// The most bowls a kitchen may have.
    pub const MOST_BOWLS: usize = 12;

    /// How warm flour is: as set, or as the room.
    #[must_use]
    pub const fn flour_at(&self) -> Temperature {
        match self.flour {
            Some(flour) => flour,
            None => self.room,
        }
    }

    /// Where water boils here.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of altitude and pressure.
    pub fn boiling(&self) -> Result<Boiling, HeatError> {
        match self.boils_by {
            BoilsBy::Altitude(altitude) => boiling_at(altitude),
            BoilsBy::Pressure(pressure) => boiling_under(pressure),
        }
    }

    /// Water just off the boil, as it reaches a bowl: 2 K below. Common practice.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of altitude and pressure.
    pub fn off_the_boil(&self) -> Result<Temperature, HeatError> {
        let boils = self.boiling()?.temperature.celsius();
        Ok(Temperature::from_celsius(boils - Paste::DROP.kelvin())?)
    }

    /// Adds a steel bowl of no weight yet; nothing where there are as many as there may be.
    pub fn add_bowl(&mut self) {
        if self.bowls.len() < Self::MOST_BOWLS {
            self.bowls.push(Bowl {
                name: "Another bowl".to_owned(),
                material: Material::Steel,
                mass: Mass::ZERO,
            });
        }
    }

    /// Takes a bowl away; what it was used for is used no more, the others keep theirs.
    pub fn remove_bowl(&mut self, bowl: usize) {
        if bowl >= self.bowls.len() {
            return;
        }
        self.bowls.remove(bowl);
        let follow = |used: Option<usize>| match used {
            Some(used) if used == bowl => None,
            Some(used) if used > bowl => Some(used.saturating_sub(1)),
            other => other,
        };
        self.paste_bowl = follow(self.paste_bowl);
        self.mixing_bowl = follow(self.mixing_bowl);
    }

    /// Sets whether altitude or the day's pressure decides where water boils; the boiling point is
    /// kept as near as the other can hold it.
    pub fn boil_by(&mut self, altitude: bool) {
        let Ok(boiling) = self.boiling() else { return };
        self.boils_by = match (self.boils_by, altitude) {
            (BoilsBy::Altitude(_), false) => BoilsBy::Pressure(boiling.pressure),
            (BoilsBy::Pressure(_), true) => BoilsBy::Altitude(Altitude::SEA_LEVEL),
            (same, _) => same,
        };
    }

    /// Another kitchen that begins like this one.
    #[must_use]
    pub fn another(&self) -> Self {
        Self {
            name: "Another kitchen".to_owned(),
            ..self.clone()
        }
    }

    /// What surrounds the work, as far as remedies for a dough need it.
    #[must_use]
    pub fn surroundings(&self) -> Surroundings {
        Surroundings {
            room: self.room,
            fridge: self.fridge,
            freezer: FREEZER,
            liquid: LiquidRange::default(),
        }
    }

    /// The bowl at a place of its list, this warm, or as warm as the room.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never.
    pub fn vessel(
        &self,
        bowl: Option<usize>,
        at: Option<Temperature>,
    ) -> Result<Option<Vessel>, HeatError> {
        let bowl = bowl.and_then(|place| self.bowls.get(place));
        bowl.map(|bowl| bowl.vessel(at.unwrap_or(self.room)))
            .transpose()
    }
}
