//! A syrup from a part: which lines are the chocolate.

use super::blend::{ChocolatePart, Portioned};
use super::error::ChocolateError;
use super::suspension::SyrupModel;
use super::syrup::Syrup;
use crate::engine::formula::Part;
use crate::engine::ingredients::{Food, Role};
use crate::engine::quantity::{Share, Temperature};

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
