//! The pantry: how each ingredient is bought, and what its packet says beyond its name.

use crate::engine::ingredients::{Allergen, Food};
use crate::engine::quantity::{Mass, Money};

/// Which ingredient: a row of the tables, or one of the user's own by name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FoodKey {
    /// A row of the tables, by its number.
    Listed(u16),
    /// The user's own.
    Own(String),
}

/// What the user has noted about one ingredient.
#[derive(Clone, Debug, PartialEq)]
pub struct PantryItem {
    /// Which.
    pub food: FoodKey,
    /// What one pack holds.
    pub holds: Option<Mass>,
    /// What one pack costs.
    pub price: Option<Money>,
    /// What there is already.
    pub on_hand: Mass,
    /// The packet says that it contains these.
    pub contains: Vec<Allergen>,
    /// The packet says that it may contain these.
    pub may_contain: Vec<Allergen>,
}

/// Everything the user has noted about what is bought.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Pantry {
    /// What the user calls the money: "€", "kr"; at most [`Pantry::CURRENCY_LENGTH`] characters.
    pub currency: String,
    /// Ingredient by ingredient.
    pub items: Vec<PantryItem>,
    /// Allergens that may come from the kitchen itself.
    pub kitchen: Vec<Allergen>,
}

impl FoodKey {
    /// The key of a food.
    #[must_use]
    pub fn of(food: &Food) -> Self {
        match food {
            Food::Listed(listed) => Self::Listed(listed.row().number),
            Food::Own(own) => Self::Own(own.name.clone()),
        }
    }
}

impl Pantry {
    /// The most characters the name of the money may have.
    pub const CURRENCY_LENGTH: usize = 8;
    /// The most ingredients that are stored.
    pub const MOST: usize = 500;

    /// The notes on a food.
    #[must_use]
    pub fn item(&self, food: &Food) -> Option<&PantryItem> {
        let key = FoodKey::of(food);
        self.items.iter().find(|item| item.food == key)
    }

    /// The notes on a food, to be changed; new where there are none, `None` where the pantry is
    /// full.
    pub fn item_mut(&mut self, food: &Food) -> Option<&mut PantryItem> {
        let key = FoodKey::of(food);
        let known = self.items.iter().position(|item| item.food == key);
        let at = match known {
            Some(at) => at,
            None if self.items.len() >= Self::MOST => return None,
            None => {
                self.items.push(PantryItem {
                    food: key,
                    holds: None,
                    price: None,
                    on_hand: Mass::ZERO,
                    contains: Vec::new(),
                    may_contain: Vec::new(),
                });
                self.items.len().saturating_sub(1)
            }
        };
        self.items.get_mut(at)
    }
}
