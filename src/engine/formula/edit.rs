//! Changing one part while the bread stays what it is: what a paste or preferment takes up
//! leaves the final dough, and what it sets free goes back there.

use super::{Formula, FormulaError, Line, Part, PartKind};
use crate::engine::quantity::{Mass, Share};

/// The formula with another share of all its flour in one paste or preferment.
///
/// Every line of the part is made `k = s F / f` times as heavy, with s the share asked for,
/// F all flour of the dough and f the part's own. The overall weight of every ingredient is
/// held: the final dough gives or takes the difference, in proportion where it has the ingredient
/// on several lines, on a line of its own where it had none. A weighing that missed and the
/// steam that was lost are facts, and stay as they are.
///
/// # Errors
/// [`FormulaError::NoSuchPart`], [`FormulaError::NotMadeAhead`], [`FormulaError::NoFlourIn`],
/// [`FormulaError::NoFinalDough`]; [`FormulaError::BelowZero`] where the final dough holds less
/// of an ingredient than the part would take; [`FormulaError::TooManyLines`].
pub fn set_part_share(
    formula: &Formula,
    part: usize,
    share: Share,
) -> Result<Formula, FormulaError> {
    let own = made_ahead(formula, part)?;
    let wanted = formula.flour().unsaturated()?.try_component(share)?;
    let factor = factor(wanted, own.flour()).ok_or(FormulaError::NoFlourIn { part })??;
    scale_held(formula, part, factor, |_| true)
}

/// The formula with another ratio of liquid to flour in one paste or preferment, by weight.
///
/// What is poured into the part (water, other liquids, eggs) is scaled; the final dough gives
/// or takes the difference. A part that had no liquid is given the final dough's water.
///
/// # Errors
/// As [`set_part_share`]; [`FormulaError::NothingIn`] where neither the part has liquid nor
/// the final dough water.
pub fn set_paste_ratio(
    formula: &Formula,
    part: usize,
    ratio: Share,
) -> Result<Formula, FormulaError> {
    let own = made_ahead(formula, part)?;
    if own.flour() <= Mass::ZERO {
        return Err(FormulaError::NoFlourIn { part });
    }
    let wanted = own.flour().unsaturated()?.try_component(ratio)?;
    match factor(wanted, own.liquid().unsaturated()?) {
        Some(factor) => scale_held(formula, part, factor?, Line::is_liquid),
        None => pour_water(formula, part, wanted),
    }
}

/// The formula with one part made heavier or lighter, its lines in proportion; every other
/// part stays as it is.
///
/// # Errors
/// [`FormulaError::NoSuchPart`]; [`FormulaError::NothingIn`] where it weighs nothing;
/// [`FormulaError::OffScale`].
pub fn set_part_mass(formula: &Formula, part: usize, mass: Mass) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let own = changed
        .parts
        .get_mut(part)
        .ok_or(FormulaError::NoSuchPart { part })?;
    let factor =
        factor(mass, own.mass().unsaturated()?).ok_or(FormulaError::NothingIn { part })??;
    for line in &mut own.lines {
        line.mass = line.mass.try_component(factor)?;
    }
    Ok(changed)
}

fn made_ahead(formula: &Formula, part: usize) -> Result<&Part, FormulaError> {
    let own = formula
        .parts
        .get(part)
        .ok_or(FormulaError::NoSuchPart { part })?;
    if own.kind.is_made_ahead() {
        Ok(own)
    } else {
        Err(FormulaError::NotMadeAhead { part })
    }
}

/// How many times `present` is wanted; `None` where there is none of it.
fn factor(wanted: Mass, present: Mass) -> Option<Result<Share, FormulaError>> {
    (present > Mass::ZERO).then(|| Ok(Share::from_fraction(wanted.grams() / present.grams())?))
}

fn scale_held(
    formula: &Formula,
    part: usize,
    factor: Share,
    chosen: fn(&Line) -> bool,
) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let mut before = Vec::new();
    if let Some(own) = changed.parts.get_mut(part) {
        for line in own.lines.iter_mut().filter(|line| chosen(line)) {
            before.push(line.clone());
            line.mass = line.mass.try_component(factor)?;
        }
    }
    for old in before {
        let new = old.mass.try_component(factor)?;
        balance_final_dough(&mut changed, &old, new)?;
    }
    Ok(changed)
}

/// Takes from the final dough what a line went up by, or gives it what the line went down by.
fn balance_final_dough(changed: &mut Formula, old: &Line, new: Mass) -> Result<(), FormulaError> {
    const ROUNDING: f64 = 1e-9;
    let there = held(changed, old)
        .map(|line| line.mass)
        .sum::<Mass>()
        .unsaturated()?;
    let left = there.grams() + old.mass.grams() - new.grams();
    if left < -ROUNDING * new.grams() {
        return Err(FormulaError::BelowZero {
            food: old.food.name().to_owned(),
            short: Mass::from_grams(-left)?,
        });
    }
    let left = Mass::from_grams(left.max(0.0))?;
    match factor(left, there) {
        Some(factor) => {
            let factor = factor?;
            for line in held(changed, old) {
                line.mass = line.mass.try_component(factor)?;
            }
            Ok(())
        }
        None => set_in_final_dough(changed, old, left),
    }
}

/// The final dough's lines of the same ingredient.
fn held<'a>(changed: &'a mut Formula, like: &'a Line) -> impl Iterator<Item = &'a mut Line> {
    finals(changed)
        .flat_map(|part| part.lines.iter_mut())
        .filter(|line| line.food == like.food && line.is_flour() == like.is_flour())
}

fn finals(changed: &mut Formula) -> impl Iterator<Item = &mut Part> {
    changed
        .parts
        .iter_mut()
        .filter(|part| part.kind == PartKind::Final)
}

/// Lays so much of an ingredient into the final dough, where it weighed nothing before.
fn set_in_final_dough(changed: &mut Formula, like: &Line, mass: Mass) -> Result<(), FormulaError> {
    if let Some(line) = held(changed, like).next() {
        line.mass = mass;
        return Ok(());
    }
    let room = changed.has_room();
    let part = finals(changed).next().ok_or(FormulaError::NoFinalDough)?;
    if mass > Mass::ZERO {
        if !room {
            return Err(FormulaError::TooManyLines);
        }
        part.lines.push(Line {
            mass,
            poured: None,
            ..like.clone()
        });
    }
    Ok(())
}

fn pour_water(formula: &Formula, part: usize, wanted: Mass) -> Result<Formula, FormulaError> {
    let nothing = FormulaError::NothingIn { part };
    if wanted <= Mass::ZERO {
        return Ok(formula.clone());
    }
    if !formula.has_room() {
        return Err(FormulaError::TooManyLines);
    }
    let mut changed = formula.clone();
    let water = finals(&mut changed)
        .flat_map(|part| part.lines.iter())
        .find(|line| line.is_water())
        .map(|line| Line::new(line.food.clone(), Mass::ZERO))
        .ok_or_else(|| nothing.clone())?;
    balance_final_dough(&mut changed, &water, wanted)?;
    let own = changed.parts.get_mut(part).ok_or(nothing)?;
    own.lines.push(Line {
        mass: wanted,
        ..water
    });
    Ok(changed)
}
