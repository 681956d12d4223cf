//! A syrup from a part: which lines are the chocolate, and how much to make for a batch.

use super::blend::{ChocolatePart, Portioned};
use super::error::ChocolateError;
use super::suspension::SyrupModel;
use super::syrup::Syrup;
use crate::engine::formula::Part;
use crate::engine::ingredients::{Food, Role};
use crate::engine::quantity::{Factor, Mass, Share, Temperature};

/// What to weigh so that so much syrup reaches the bread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SyrupAmounts {
    /// Syrup on the bread.
    pub on_the_bread: Mass,
    /// The share of what is made that stays in bag and bowl.
    pub stays: Share,
    /// Syrup to make.
    pub to_make: Mass,
    /// How many times the syrup as it stands.
    pub factor: Factor,
    /// Chocolate to weigh.
    pub chocolate: Mass,
    /// Liquid to weigh, all kinds together in the ratio they stand in.
    pub liquid: Mass,
}

impl Syrup {
    /// The syrup of a part: lines of chocolate (by role) against all others as liquid, with the
    /// default [`SyrupModel`].
    ///
    /// # Errors
    /// As [`Syrup::from_parts`].
    pub fn of(part: &Part, temperature: Temperature) -> Result<Self, ChocolateError> {
        Self::of_model(part, temperature, SyrupModel::default())
    }

    /// The syrup of a part on a model of the user's own.
    ///
    /// # Errors
    /// As [`Syrup::from_parts`].
    pub fn of_model(
        part: &Part,
        temperature: Temperature,
        model: SyrupModel,
    ) -> Result<Self, ChocolateError> {
        let mut chocolate = Vec::new();
        let mut liquid = Vec::new();
        for line in &part.lines {
            let composition = line.food.composition();
            let mass = line.mass;
            if line.food.role() == Role::Chocolate {
                chocolate.push(ChocolatePart {
                    composition,
                    mass,
                    cocoa: cocoa(&line.food),
                });
            } else {
                liquid.push(Portioned { composition, mass });
            }
        }
        Self::from_parts(&chocolate, &liquid, temperature, model)
    }

    /// What to weigh so that so much syrup reaches the bread: made = wanted / (1 − what stays).
    ///
    /// # Errors
    /// [`ChocolateError::NothingLeft`] when all of it stays behind; [`ChocolateError::OffScale`]
    /// when it is more than a tonne or next to nothing.
    pub fn amounts(
        &self,
        on_the_bread: Mass,
        stays: Share,
    ) -> Result<SyrupAmounts, ChocolateError> {
        let left = 1.0 - stays.fraction();
        if left <= 0.0 {
            return Err(ChocolateError::NothingLeft { stays });
        }
        let to_make = Mass::from_grams(on_the_bread.grams() / left)?;
        let stands = self.chocolate.grams() + self.liquid.grams();
        let factor = Factor::from_number(to_make.grams() / stands)?;
        Ok(SyrupAmounts {
            on_the_bread,
            stays,
            to_make,
            factor,
            chocolate: Mass::from_grams(self.chocolate.grams() * factor.number())?,
            liquid: Mass::from_grams(self.liquid.grams() * factor.number())?,
        })
    }
}

/// Cocoa as printed on the packet, where it is.
fn cocoa(food: &Food) -> Option<Share> {
    match food {
        Food::Listed(listed) => {
            let percent = listed.row().cocoa_percent;
            (percent > 0.0)
                .then(|| Share::from_percent(percent).ok())
                .flatten()
        }
        Food::Own(own) => own.label.cocoa,
    }
}
