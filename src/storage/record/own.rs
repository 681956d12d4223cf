//! The user's own ingredients in a record, and what their labels say.

use serde::{Deserialize, Serialize};

use crate::engine::ingredients::{Allergen, Label, OwnFood, Role};
use crate::engine::quantity::Share;
use crate::storage::enum_names::{ALLERGENS, ROLES};

use super::error::RecordError;
use super::read::{converted, described};
use super::text::{List, Name, words};

words! {
    Role: ROLES;
    Allergen: ALLERGENS;
}

described! { Label: LabelRecord; }

converted! { OwnFood: OwnFoodRecord; }

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct OwnFoodRecord {
    #[serde(with = "Name::<{ OwnFood::NAME_LENGTH }>")]
    name: String,
    role: Role,
    label: Label,
    #[serde(with = "List::<{ Allergen::ALL.len() }>")]
    allergens: Vec<Allergen>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Label", deny_unknown_fields)]
struct LabelRecord {
    #[serde(rename = "fat_share", skip_serializing_if = "Option::is_none")]
    fat: Option<Share>,
    #[serde(rename = "saturates_share", skip_serializing_if = "Option::is_none")]
    saturates: Option<Share>,
    #[serde(rename = "carbohydrate_share", skip_serializing_if = "Option::is_none")]
    carbohydrate: Option<Share>,
    #[serde(rename = "sugars_share", skip_serializing_if = "Option::is_none")]
    sugars: Option<Share>,
    #[serde(rename = "fibre_share", skip_serializing_if = "Option::is_none")]
    fibre: Option<Share>,
    #[serde(rename = "protein_share", skip_serializing_if = "Option::is_none")]
    protein: Option<Share>,
    #[serde(rename = "salt_share", skip_serializing_if = "Option::is_none")]
    salt: Option<Share>,
    #[serde(rename = "water_share", skip_serializing_if = "Option::is_none")]
    water: Option<Share>,
    #[serde(rename = "cocoa_share", skip_serializing_if = "Option::is_none")]
    cocoa: Option<Share>,
}

impl From<&OwnFood> for OwnFoodRecord {
    fn from(food: &OwnFood) -> Self {
        Self {
            name: food.name.clone(),
            role: food.role,
            label: food.label,
            allergens: food.allergens.clone(),
        }
    }
}

impl TryFrom<OwnFoodRecord> for OwnFood {
    type Error = RecordError;

    fn try_from(record: OwnFoodRecord) -> Result<Self, RecordError> {
        let OwnFoodRecord {
            name,
            role,
            label,
            allergens,
        } = record;
        Ok(Self::new(&name, role, label, allergens)?)
    }
}
