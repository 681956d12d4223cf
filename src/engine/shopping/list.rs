//! The list: every ingredient in packs, and what it all comes to.

use super::error::ShoppingError;
use super::item::{Pack, ShoppingItem, item};
use super::need::Need;
use crate::engine::numerics::saturating_u32;
use crate::engine::quantity::Money;

/// A shopping list with its cost.
#[derive(Clone, Debug, PartialEq)]
pub struct Shopping {
    /// Every ingredient once.
    pub items: Vec<ShoppingItem>,
    /// What the parts that are used cost, as far as prices are known.
    pub used: Money,
    /// What is paid for whole packs, as far as prices are known.
    pub paid: Money,
    /// How many ingredients have no price, water from the tap left out.
    pub unpriced: u32,
}

/// Puts needs into packs.
///
/// Whole packs = what is missing / what a pack holds, rounded up. What is used costs its share of a
/// pack, wherever it comes from; what is paid is whole packs.
///
/// Source: by definition.
///
/// # Errors
/// [`ShoppingError::EmptyPack`] for a pack that holds nothing; [`ShoppingError::OffScale`] when
/// packs or money leave their range.
pub fn shopping(needs: Vec<Need>, packs: &[Pack]) -> Result<Shopping, ShoppingError> {
    let mut items = Vec::new();
    for need in needs {
        let pack = packs.iter().find(|pack| pack.food == need.food);
        items.push(item(need, pack)?);
    }
    let all = |of: fn(&ShoppingItem) -> Option<Money>| items.iter().filter_map(of).sum::<Money>();
    let unpriced = items
        .iter()
        .filter(|item| item.used.is_none() && !item.from_tap())
        .count();
    Ok(Shopping {
        used: all(|item| item.used).unsaturated()?,
        paid: all(|item| item.paid).unsaturated()?,
        unpriced: saturating_u32(unpriced),
        items,
    })
}
