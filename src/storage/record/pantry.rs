//! The pantry as a record: packs, prices, and what packets say of allergens.

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::engine::ingredients::{Allergen, OwnFood};
use crate::engine::quantity::{Mass, Money};
use crate::sheet::{FoodKey, Pantry, PantryItem};

use super::Record;
use super::error::{RecordError, RecordFault};
use super::formula::{Number, is_nothing};
use super::read::{converted, described};
use super::refused::refuse;
use super::text::{List, Name};

described! { Pantry: PantryRecord; }

converted! { PantryItem: ItemRecord; }

impl Record for Pantry {
    const KIND: &'static str = "pantry";
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Pantry", deny_unknown_fields)]
struct PantryRecord {
    #[serde(default, with = "Name::<{ Pantry::CURRENCY_LENGTH }>")]
    currency: String,
    #[serde(serialize_with = "write_items", deserialize_with = "read_items")]
    items: Vec<PantryItem>,
    #[serde(default, with = "Marked")]
    kitchen: Vec<Allergen>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct ItemRecord {
    #[serde(skip_serializing_if = "Option::is_none")]
    ingredient: Option<Number>,
    #[serde(skip_serializing_if = "Option::is_none")]
    own: Option<Own>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pack_g: Option<Mass>,
    #[serde(skip_serializing_if = "Option::is_none")]
    price: Option<Money>,
    #[serde(default, skip_serializing_if = "is_nothing")]
    on_hand_g: Mass,
    #[serde(default, with = "Marked")]
    contains: Vec<Allergen>,
    #[serde(default, with = "Marked")]
    may_contain: Vec<Allergen>,
}

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Own(#[serde(with = "Name::<{ OwnFood::NAME_LENGTH }>")] String);

fn write_items<S: Serializer>(items: &[PantryItem], to: S) -> Result<S::Ok, S::Error> {
    to.collect_seq(items.iter().take(Pantry::MOST))
}

/// Each ingredient once.
fn read_items<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<PantryItem>, D::Error> {
    let items: Vec<PantryItem> = List::<{ Pantry::MOST }>::deserialize(from)?;
    for (at, item) in items.iter().enumerate() {
        if items.iter().take(at).any(|before| before.food == item.food) {
            return Err(refuse(RecordError::from(RecordFault::Twice).item(at)));
        }
    }
    Ok(items)
}

/// Allergens, each once, in the order of the law.
struct Marked;

impl Marked {
    fn serialize<S: Serializer>(marked: &[Allergen], to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(Self::of(marked))
    }

    fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Allergen>, D::Error> {
        let marked: Vec<Allergen> = List::<{ 2 * Allergen::ALL.len() }>::deserialize(from)?;
        Ok(Self::of(&marked).collect())
    }

    fn of(marked: &[Allergen]) -> impl Iterator<Item = Allergen> {
        Allergen::ALL.into_iter().filter(|one| marked.contains(one))
    }
}

impl From<&PantryItem> for ItemRecord {
    fn from(item: &PantryItem) -> Self {
        let (ingredient, own) = match &item.food {
            FoodKey::Listed(number) => (Some(Number(*number)), None),
            FoodKey::Own(name) => (None, Some(Own(name.clone()))),
        };
        Self {
            ingredient,
            own,
            pack_g: item.holds,
            price: item.price,
            on_hand_g: item.on_hand,
            contains: item.contains.clone(),
            may_contain: item.may_contain.clone(),
        }
    }
}

impl TryFrom<ItemRecord> for PantryItem {
    type Error = RecordError;

    fn try_from(record: ItemRecord) -> Result<Self, RecordError> {
        let food = match (record.ingredient, record.own) {
            (Some(Number(number)), None) => FoodKey::Listed(number),
            (None, Some(Own(name))) => FoodKey::Own(name),
            (None, None) => return Err(RecordFault::Missing.at("ingredient")),
            (Some(_), Some(_)) => return Err(RecordFault::Twice.at("own")),
        };
        Ok(Self {
            food,
            holds: record.pack_g,
            price: record.price,
            on_hand: record.on_hand_g,
            contains: record.contains,
            may_contain: record.may_contain,
        })
    }
}
