//! An item of the list: one ingredient, in packs and in money.

use super::error::ShoppingError;
use super::need::Need;
use crate::engine::ingredients::{Food, Role};
use crate::engine::numerics::whole;
use crate::engine::quantity::{Mass, Money};

/// How an ingredient is bought.
#[derive(Clone, Debug, PartialEq)]
pub struct Pack {
    /// The ingredient.
    pub food: Food,
    /// What one pack holds, where that is known.
    pub holds: Option<Mass>,
    /// What one pack costs, where that is known.
    pub price: Option<Money>,
    /// What there is already.
    pub on_hand: Mass,
}

/// One ingredient on the list.
#[derive(Clone, Debug, PartialEq)]
pub struct ShoppingItem {
    /// The ingredient.
    pub food: Food,
    /// What the batch takes.
    pub needed: Mass,
    /// What there is already.
    pub on_hand: Mass,
    /// What is missing.
    pub to_buy: Mass,
    /// What one pack holds, where that is known.
    pub pack: Option<Mass>,
    /// What one pack costs, where that is known.
    pub price: Option<Money>,
    /// Whole packs to buy, where the pack is known.
    pub packs: Option<u32>,
    /// What is left over afterwards, what was on hand included.
    pub left: Option<Mass>,
    /// What the part that is used costs.
    pub used: Option<Money>,
    /// What is paid at the till for whole packs.
    pub paid: Option<Money>,
}

impl ShoppingItem {
    /// Whether it comes from the tap: it is weighed, but not bought.
    #[must_use]
    pub fn from_tap(&self) -> bool {
        self.food.role() == Role::Water && self.pack.is_none()
    }
}

/// A need in packs.
///
/// What is within a millionth of a pack counts as the pack.
pub(super) fn item(need: Need, pack: Option<&Pack>) -> Result<ShoppingItem, ShoppingError> {
    need.mass.unsaturated()?;
    let on_hand = pack.map_or(Mass::ZERO, |pack| pack.on_hand);
    let (holds, price) = pack.map_or((None, None), |pack| (pack.holds, pack.price));
    if holds.is_some_and(|holds| holds <= Mass::ZERO) {
        let name = need.food.name().to_owned();
        return Err(ShoppingError::EmptyPack { name });
    }
    let to_buy = need.mass.less(on_hand);
    let packs = holds.map(|holds| packs(to_buy, holds));
    let bought = match (holds, packs) {
        (Some(holds), Some(packs)) => Some(Mass::from_grams(holds.grams() * f64::from(packs))?),
        _ => None,
    };
    let used = match (price, need.mass.share_of(holds.unwrap_or_default())) {
        (Some(price), Some(share)) => Some(price.component(share)?),
        _ => None,
    };
    let paid = match (price, packs) {
        (Some(price), Some(packs)) => Some(price.times(packs)?),
        _ => None,
    };
    let held = bought.map(|bought| on_hand.try_add(bought)).transpose()?;
    let left = held.map(|held| held.less(need.mass));
    Ok(ShoppingItem {
        left,
        food: need.food,
        needed: need.mass,
        on_hand,
        to_buy,
        pack: holds,
        price,
        packs,
        used,
        paid,
    })
}

/// The fewest whole packs that hold `to_buy`.
fn packs(to_buy: Mass, holds: Mass) -> u32 {
    let exact = to_buy.grams() / holds.grams() - 1e-6;
    if exact <= 0.0 {
        0
    } else {
        whole(exact).saturating_add(1)
    }
}
