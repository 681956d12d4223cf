//! Shopping: what to buy for a batch in whole packs, and what it costs.

use std::num::NonZeroU32;

use super::BatchResults;
use super::class::{self, ClassWeights};
use crate::engine::batch::Scaled;
use crate::engine::class::ClassSettings;
use crate::engine::formula::Formula;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Money;
use crate::engine::shopping::{Pack, Shopping, ShoppingError, needs, shopping};
use crate::sheet::{Pantry, Scales, Sheet};

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
    /// Whether it is for the class: all benches, the teacher's loaves, and what each loses.
    pub of_class: bool,
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
    of_lines(&scaled.formula, scaled.pieces.count, pantry)
}

/// Returns the shopping list of a sheet: of the class where the batch is made by it, bench by bench
/// as the scales show it, else of the batch. `None` where neither has an answer.
///
/// # Errors
/// As [`of`].
#[must_use]
pub fn of_sheet(
    sheet: &Sheet,
    batch: &BatchResults,
    settings: &ClassSettings,
    scales: Scales,
    pantry: &Pantry,
) -> Option<Result<ShoppingResults, ShoppingError>> {
    if settings.is_made_by(sheet.batch.wanted) {
        let weights = class::of(sheet, settings, scales).weights.ok()?;
        let pieces = batch.scaled.as_ref().ok()?.pieces.count;
        return Some(of_class(&weights, pieces, pantry));
    }
    Some(of(batch.scaled.as_ref().ok()?, pantry))
}

/// Returns the shopping list of a class of so many pieces: the sum of what the benches and the teacher
/// weigh, in g.
///
/// # Errors
/// As [`of`].
pub fn of_class(
    weights: &ClassWeights,
    pieces: NonZeroU32,
    pantry: &Pantry,
) -> Result<ShoppingResults, ShoppingError> {
    let bought = of_lines(&weights.total.formula, pieces, pantry)?;
    Ok(ShoppingResults {
        of_class: true,
        ..bought
    })
}

fn of_lines(
    formula: &Formula,
    pieces: NonZeroU32,
    pantry: &Pantry,
) -> Result<ShoppingResults, ShoppingError> {
    let list = shopping(needs(formula), &packs(formula, pantry))?;
    let is_priced = list.items.iter().any(|item| item.used.is_some());
    let priced = |money: Money| is_priced.then_some(money);
    Ok(ShoppingResults {
        used: priced(list.used),
        each: priced(list.used.among(pieces.get())),
        paid: priced(list.paid),
        of_class: false,
        list,
    })
}

/// Returns every ingredient of a formula that weighs something, once.
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
