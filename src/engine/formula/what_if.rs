//! What if: trials that a baker makes again and again, each one step from the formula.

use super::swap::as_much_water;
use super::{
    Figure, FigureTarget, Figures, Form, Formula, FormulaError, Line, LineAt, Part, PartKind,
    reach, set_part_share,
};
use crate::engine::ingredients::{Allergen, Food, Listed, Role};
use crate::engine::quantity::{Mass, OutOfRange, Share};

/// A trial.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WhatIf {
    /// Two points more of true water on flour.
    MoreWater,
    /// Two points less of true water on flour.
    LessWater,
    /// Half of the final dough's water as milk, the true water held.
    MilkForWater,
    /// Half of the final dough's milk as water, the true water held.
    WaterForMilk,
    /// A quarter of each paste given back to the final dough, the whole held.
    LessPaste,
}

const TWO_POINTS: Share = Share::in_hundred(2.0);
const HALF: Share = Share::in_hundred(50.0);
const THREE_QUARTERS: Share = Share::in_hundred(75.0);

impl WhatIf {
    /// Every trial.
    pub const ALL: [Self; 5] = [
        Self::MoreWater,
        Self::LessWater,
        Self::MilkForWater,
        Self::WaterForMilk,
        Self::LessPaste,
    ];

    /// The trials that mean something for this dough, in the order they are offered: milk for
    /// water where the final dough has water, else water for its milk; less paste where it has one.
    #[must_use]
    pub fn offered(formula: &Formula) -> Vec<Self> {
        let has = |chosen: fn(&Line) -> bool| {
            final_lines(formula).any(|(_, line)| chosen(line) && line.mass > Mass::ZERO)
        };
        let mut offered = vec![Self::MoreWater, Self::LessWater];
        if has(Line::is_water) {
            offered.push(Self::MilkForWater);
        } else if has(is_milk_line) {
            offered.push(Self::WaterForMilk);
        }
        let is_paste = |own: &Part| own.kind == PartKind::Paste && own.flour() > Mass::ZERO;
        if formula.parts.iter().any(is_paste) {
            offered.push(Self::LessPaste);
        }
        offered
    }

    /// The formula as it would be.
    ///
    /// # Errors
    /// [`FormulaError::NothingGivesWay`] where the dough has no such ingredient or part; as
    /// [`with_water_line`], [`reach`] and [`set_part_share`] otherwise.
    pub fn of(self, formula: &Formula) -> Result<Formula, FormulaError> {
        match self {
            Self::MoreWater => {
                let (poured, at) = with_water_line(formula)?;
                with_true_water(&poured, at, Share::try_plus)
            }
            Self::LessWater => {
                let at = giving_way(formula).ok_or(FormulaError::NothingGivesWay)?;
                less_water(formula, at)
            }
            Self::MilkForWater => {
                let milk = usual_milk(formula).ok_or(FormulaError::NothingGivesWay)?;
                milk_for_water(formula, &milk)
            }
            Self::WaterForMilk => half_as(formula, is_milk_line, &plain_water()?),
            Self::LessPaste => less_paste(formula),
        }
    }
}

/// The formula with two points less of true water on flour, by less of the line at `at` alone.
///
/// # Errors
/// Those of [`reach`].
pub fn less_water(formula: &Formula, at: LineAt) -> Result<Formula, FormulaError> {
    with_true_water(formula, at, |now, less| Ok(now.less(less)))
}

/// The line that gives way when the water changes: the final dough's water, else its heaviest
/// other liquid.
#[must_use]
pub fn giving_way(formula: &Formula) -> Option<LineAt> {
    let heaviest = |chosen: fn(&Line) -> bool| {
        final_lines(formula)
            .filter(|(_, line)| chosen(line) && line.mass > Mass::ZERO)
            .max_by(|(_, one), (_, other)| one.mass.grams().total_cmp(&other.mass.grams()))
            .map(|(at, _)| at)
    };
    heaviest(Line::is_water).or_else(|| heaviest(Line::is_liquid))
}

fn final_lines(formula: &Formula) -> impl Iterator<Item = (LineAt, &Line)> {
    formula
        .parts
        .iter()
        .enumerate()
        .filter(|(_, own)| own.kind == PartKind::Final)
        .flat_map(|(part, own)| {
            own.lines
                .iter()
                .enumerate()
                .map(move |(line, written)| (LineAt { part, line }, written))
        })
}

/// The line of plain water in the final dough, the heaviest where it has several; where it has
/// none, a new line without a weight at its end.
///
/// # Errors
/// [`FormulaError::NoFinalDough`]; [`FormulaError::TooManyLines`].
pub fn with_water_line(formula: &Formula) -> Result<(Formula, LineAt), FormulaError> {
    let water = final_lines(formula).filter(|(_, line)| line.is_water());
    let heaviest =
        water.max_by(|(_, one), (_, other)| one.mass.grams().total_cmp(&other.mass.grams()));
    if let Some((at, _)) = heaviest {
        return Ok((formula.clone(), at));
    }
    if !formula.has_room() {
        return Err(FormulaError::TooManyLines);
    }
    let mut poured = formula.clone();
    let mut parts = poured.parts.iter_mut().enumerate();
    let (part, own) = parts
        .find(|(_, own)| own.kind == PartKind::Final)
        .ok_or(FormulaError::NoFinalDough)?;
    let line = own.lines.len();
    own.lines.push(Line::new(plain_water()?, Mass::ZERO));
    Ok((poured, LineAt { part, line }))
}

/// The first water of the ingredient table.
fn plain_water() -> Result<Food, FormulaError> {
    let mut all = Listed::all().map(Food::Listed);
    let water = all.find(|food| food.role() == Role::Water);
    water.ok_or(FormulaError::NothingGivesWay)
}

fn with_true_water(
    formula: &Formula,
    at: LineAt,
    change: fn(Share, Share) -> Result<Share, OutOfRange>,
) -> Result<Formula, FormulaError> {
    let now = Figures::of(formula, Form::AsWritten).share(Figure::TrueWater)?;
    let target = FigureTarget::OfFlour(Figure::TrueWater, change(now, TWO_POINTS)?);
    Ok(reach(formula, target, at)?.formula)
}

fn is_milk(food: &Food) -> bool {
    food.role() == Role::Liquid && food.allergens().contains(&Allergen::Milk)
}

fn is_milk_line(line: &Line) -> bool {
    is_milk(&line.food) && !line.is_flour()
}

/// The milk the dough has already, else the first of the ingredient table.
fn usual_milk(formula: &Formula) -> Option<Food> {
    formula
        .dough_parts()
        .flat_map(|part| part.lines.iter())
        .map(|line| line.food.clone())
        .find(is_milk)
        .or_else(|| Listed::all().map(Food::Listed).find(is_milk))
}

/// The formula with half of the final dough's plain water taken as milk.
///
/// The milk brings as much water as is taken out, so the true water stays.
///
/// # Errors
/// [`FormulaError::NothingGivesWay`] where the final dough has no plain water;
/// [`FormulaError::CannotMove`] for a milk without water; [`FormulaError::TooManyLines`].
pub fn milk_for_water(formula: &Formula, milk: &Food) -> Result<Formula, FormulaError> {
    half_as(formula, Line::is_water, milk)
}

/// The formula with half of the chosen lines of the final dough taken as another food that brings
/// as much water.
fn half_as(
    formula: &Formula,
    chosen: fn(&Line) -> bool,
    other: &Food,
) -> Result<Formula, FormulaError> {
    let places: Vec<LineAt> = final_lines(formula)
        .filter(|(_, line)| chosen(line) && line.mass > Mass::ZERO)
        .map(|(at, _)| at)
        .collect();
    let first = *places.first().ok_or(FormulaError::NothingGivesWay)?;
    let mut changed = formula.clone();
    let mut water = Mass::ZERO;
    for at in places {
        if let Some(line) = changed.line_mut(at) {
            line.mass = line.mass.component(HALF);
            water = water.try_add(line.mass.component(line.food.composition().water))?;
        }
    }
    let mass = as_much_water(water, other)?;
    let there = final_lines(&changed)
        .find(|(_, line)| line.food == *other && !line.is_flour())
        .map(|(at, _)| at);
    let room = changed.has_room();
    if let Some(line) = there.and_then(|at| changed.line_mut(at)) {
        line.mass = line.mass.try_add(mass)?;
    } else if !room {
        return Err(FormulaError::TooManyLines);
    } else if let Some(part) = changed.parts.get_mut(first.part) {
        let after_it = (first.line + 1).min(part.lines.len());
        part.lines.insert(after_it, Line::new(other.clone(), mass));
    }
    Ok(changed)
}

fn less_paste(formula: &Formula) -> Result<Formula, FormulaError> {
    let flour = formula.flour().unsaturated()?;
    let mut changed = formula.clone();
    let mut found = false;
    for (part, own) in formula.parts.iter().enumerate() {
        if own.kind != PartKind::Paste || own.flour() <= Mass::ZERO {
            continue;
        }
        let wanted = own.flour().component(THREE_QUARTERS);
        let share = wanted.share_of(flour).ok_or(FormulaError::NoFlour)?;
        changed = set_part_share(&changed, part, share)?;
        found = true;
    }
    if found {
        Ok(changed)
    } else {
        Err(FormulaError::NothingGivesWay)
    }
}
