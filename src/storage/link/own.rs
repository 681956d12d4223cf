//! The user's own ingredients in a link.

use serde::{Deserialize, Serialize};

use crate::engine::ingredients::{Allergen, Label, OwnFood, Role};
use crate::engine::quantity::Share;
use crate::sheet::plain;

use super::LinkError;
use super::choice::Choice;
use super::number::Short;

/// An own ingredient; `label` holds the figures in the order of [`Label`]'s fields.
#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedOwn {
    name: String,
    role: u8,
    label: [Option<Short>; 9],
    allergens: Vec<u8>,
}

impl PackedOwn {
    pub(super) fn of(food: &OwnFood) -> Self {
        let label = &food.label;
        let shares = [
            label.fat,
            label.saturates,
            label.carbohydrate,
            label.sugars,
            label.fibre,
            label.protein,
            label.salt,
            label.water,
            label.cocoa,
        ];
        Self {
            name: plain::name(&food.name, OwnFood::NAME_LENGTH),
            role: food.role.number(),
            label: shares.map(|share| share.map(|share| Short::of(share.fraction()))),
            allergens: food.allergens.iter().map(|a| a.number()).collect(),
        }
    }

    pub(super) fn food(self) -> Result<OwnFood, LinkError> {
        let allergens = self.allergens.into_iter().take(Allergen::ALL.len());
        let allergens = allergens.map(Allergen::numbered);
        Ok(OwnFood::new(
            &plain::name(&self.name, OwnFood::NAME_LENGTH),
            Role::numbered(self.role)?,
            read_label(self.label)?,
            allergens.collect::<Result<_, _>>()?,
        )?)
    }
}

fn read_label(packed: [Option<Short>; 9]) -> Result<Label, LinkError> {
    let share = |short: Option<Short>| short.map(|s| Share::from_fraction(s.value())).transpose();
    let [
        fat,
        saturates,
        carbohydrate,
        sugars,
        fibre,
        protein,
        salt,
        water,
        cocoa,
    ] = packed;
    Ok(Label {
        fat: share(fat)?,
        saturates: share(saturates)?,
        carbohydrate: share(carbohydrate)?,
        sugars: share(sugars)?,
        fibre: share(fibre)?,
        protein: share(protein)?,
        salt: share(salt)?,
        water: share(water)?,
        cocoa: share(cocoa)?,
    })
}
