//! Changing one stream while the bread stays what it is: what a paste or preferment takes up
//! leaves the final dough, and what it sets free goes back there.

use super::figure::{is_liquid, is_water};
use super::{Formula, FormulaError, Line, Stream, StreamKind};
use crate::engine::quantity::{Mass, Share};

/// The formula with another share of all its flour in one paste or preferment.
///
/// Every line of the stream is made `k = s F / f` times as heavy, with s the share asked for,
/// F all flour of the dough and f the stream's own. The overall weight of every ingredient is
/// held: the final dough gives or takes the difference, in proportion where it has the ingredient
/// on several lines, on a line of its own where it had none. A weighing that missed and the
/// steam that was lost are facts, and stay as they are.
///
/// # Errors
/// [`FormulaError::NoSuchStream`], [`FormulaError::NotMadeAhead`], [`FormulaError::NoFlourIn`],
/// [`FormulaError::NoFinalDough`]; [`FormulaError::BelowZero`] where the final dough holds less
/// of an ingredient than the stream would take; [`FormulaError::TooManyLines`].
pub fn set_stream_share(
    formula: &Formula,
    stream: usize,
    share: Share,
) -> Result<Formula, FormulaError> {
    let own = made_ahead(formula, stream)?;
    let wanted = formula.flour().part(share);
    let factor = factor(wanted, own.flour()).ok_or(FormulaError::NoFlourIn { stream })??;
    scale_held(formula, stream, factor, |_| true)
}

/// The formula with another ratio of liquid to flour in one paste or preferment, by weight.
///
/// What is poured into the stream (water, other liquids, eggs) is scaled; the final dough gives
/// or takes the difference. A stream that had no liquid is given the final dough's water.
///
/// # Errors
/// As [`set_stream_share`]; [`FormulaError::NothingIn`] where neither the stream has liquid nor
/// the final dough water.
pub fn set_paste_ratio(
    formula: &Formula,
    stream: usize,
    ratio: Share,
) -> Result<Formula, FormulaError> {
    let own = made_ahead(formula, stream)?;
    if own.flour() <= Mass::ZERO {
        return Err(FormulaError::NoFlourIn { stream });
    }
    let wanted = own.flour().part(ratio);
    match factor(wanted, own.liquid()) {
        Some(factor) => scale_held(formula, stream, factor?, is_liquid),
        None => pour_water(formula, stream, wanted),
    }
}

/// The formula with one stream made heavier or lighter, its lines in proportion; every other
/// stream stays as it is.
///
/// # Errors
/// [`FormulaError::NoSuchStream`]; [`FormulaError::NothingIn`] where it weighs nothing;
/// [`FormulaError::OffScale`].
pub fn set_stream_mass(
    formula: &Formula,
    stream: usize,
    mass: Mass,
) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let own = changed
        .streams
        .get_mut(stream)
        .ok_or(FormulaError::NoSuchStream { stream })?;
    let factor = factor(mass, own.mass()).ok_or(FormulaError::NothingIn { stream })??;
    for line in &mut own.lines {
        line.mass = on_scale(line.mass.part(factor))?;
    }
    Ok(changed)
}

fn made_ahead(formula: &Formula, stream: usize) -> Result<&Stream, FormulaError> {
    let own = formula
        .streams
        .get(stream)
        .ok_or(FormulaError::NoSuchStream { stream })?;
    match own.kind {
        StreamKind::Paste | StreamKind::Preferment => Ok(own),
        StreamKind::Final | StreamKind::Filling | StreamKind::Topping | StreamKind::Wash => {
            Err(FormulaError::NotMadeAhead { stream })
        }
    }
}

/// How many times `present` is wanted; `None` where there is none of it.
fn factor(wanted: Mass, present: Mass) -> Option<Result<Share, FormulaError>> {
    (present > Mass::ZERO).then(|| Ok(Share::from_fraction(wanted.grams() / present.grams())?))
}

fn on_scale(mass: Mass) -> Result<Mass, FormulaError> {
    Ok(Mass::from_grams(mass.grams())?)
}

fn scale_held(
    formula: &Formula,
    stream: usize,
    factor: Share,
    chosen: fn(&Line) -> bool,
) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let mut before = Vec::new();
    if let Some(own) = changed.streams.get_mut(stream) {
        for line in own.lines.iter_mut().filter(|line| chosen(line)) {
            before.push(line.clone());
            line.mass = on_scale(line.mass.part(factor))?;
        }
    }
    for old in before {
        let new = old.mass.part(factor);
        settle(&mut changed, &old, new)?;
    }
    Ok(changed)
}

/// Takes from the final dough what a line went up by, or gives it what the line went down by.
fn settle(changed: &mut Formula, old: &Line, new: Mass) -> Result<(), FormulaError> {
    const ROUNDING: f64 = 1e-9;
    let there = held(changed, old).map(|line| line.mass).sum::<Mass>();
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
                line.mass = line.mass.part(factor);
            }
            Ok(())
        }
        None => put(changed, old, left),
    }
}

/// The final dough's lines of the same ingredient.
fn held<'a>(changed: &'a mut Formula, like: &'a Line) -> impl Iterator<Item = &'a mut Line> {
    finals(changed)
        .flat_map(|stream| stream.lines.iter_mut())
        .filter(|line| line.food == like.food && line.is_flour() == like.is_flour())
}

fn finals(changed: &mut Formula) -> impl Iterator<Item = &mut Stream> {
    changed
        .streams
        .iter_mut()
        .filter(|stream| stream.kind == StreamKind::Final)
}

/// Lays so much of an ingredient into the final dough, where it weighed nothing before.
fn put(changed: &mut Formula, like: &Line, mass: Mass) -> Result<(), FormulaError> {
    if let Some(line) = held(changed, like).next() {
        line.mass = mass;
        return Ok(());
    }
    let room = changed.has_room();
    let stream = finals(changed).next().ok_or(FormulaError::NoFinalDough)?;
    if mass > Mass::ZERO {
        if !room {
            return Err(FormulaError::TooManyLines);
        }
        stream.lines.push(Line {
            mass,
            poured: None,
            ..like.clone()
        });
    }
    Ok(())
}

fn pour_water(formula: &Formula, stream: usize, wanted: Mass) -> Result<Formula, FormulaError> {
    let nothing = FormulaError::NothingIn { stream };
    if wanted <= Mass::ZERO {
        return Ok(formula.clone());
    }
    if !formula.has_room() {
        return Err(FormulaError::TooManyLines);
    }
    let mut changed = formula.clone();
    let water = finals(&mut changed)
        .flat_map(|stream| stream.lines.iter())
        .find(|line| is_water(line))
        .map(|line| Line::new(line.food.clone(), Mass::ZERO))
        .ok_or_else(|| nothing.clone())?;
    settle(&mut changed, &water, wanted)?;
    let own = changed.streams.get_mut(stream).ok_or(nothing)?;
    own.lines.push(Line {
        mass: on_scale(wanted)?,
        ..water
    });
    Ok(changed)
}
