//! Shopping: what to buy for a batch in whole packs, and what it costs.

use crate::engine::batch::Scaled;
use crate::engine::formula::Formula;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Money;
use crate::engine::shopping::{Pack, Shopping, ShoppingError, needs, shopping};
use crate::sheet::Pantry;

/// The shopping list of a batch with its cost.
#[derive(Clone, Debug, PartialEq)]
pub struct ShoppingResults {
    /// Every ingredient in packs, and what they cost.
    pub list: Shopping,
    /// The cost of what is used; none where no ingredient has a price.
    pub used: Option<Money>,
    /// The same for one piece.
    pub each: Option<Money>,
    /// What whole packs cost; none where no ingredient has a price.
    pub paid: Option<Money>,
}

/// The shopping list of a batch.
///
/// ```
/// use softcrumb::results::batch::{self, shopping};
/// use softcrumb::sheet::{Pantry, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let shopping = shopping::of(&scaled, &Pantry::default()).unwrap();
///
/// assert_eq!(shopping.list.items.len(), shopping::ingredients(&sheet.formula).len());
/// assert_eq!(shopping.used, None);
/// ```
///
/// # Errors
/// [`ShoppingError`] for a pack that holds nothing, or when packs or money leave their range.
pub fn of(scaled: &Scaled, pantry: &Pantry) -> Result<ShoppingResults, ShoppingError> {
    let list = shopping(needs(&scaled.formula), &packs(&scaled.formula, pantry))?;
    let is_priced = list.items.iter().any(|item| item.used.is_some());
    let priced = |money: Money| is_priced.then_some(money);
    Ok(ShoppingResults {
        used: priced(list.used),
        each: priced(list.used.among(scaled.pieces.count.get())),
        paid: priced(list.paid),
        list,
    })
}

/// Every ingredient of a formula that weighs something, once.
#[must_use]
pub fn ingredients(formula: &Formula) -> Vec<Food> {
    let needs = needs(formula).into_iter();
    needs.map(|need| need.food).collect()
}

/// How the ingredients of a formula are bought.
fn packs(formula: &Formula, pantry: &Pantry) -> Vec<Pack> {
    let of = |food: &Food| {
        let item = pantry.item(food)?;
        Some(Pack {
            food: food.clone(),
            holds: item.holds,
            price: item.price,
            on_hand: item.on_hand,
        })
    };
    let lines = formula.parts.iter().flat_map(|part| &part.lines);
    lines.filter_map(|line| of(&line.food)).collect()
}
