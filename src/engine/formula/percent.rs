//! Baker's percentages: every line on the flour of the whole dough, or on its own part's.

use super::figures::of_flour;
use super::{Formula, FormulaError, LineAt, PartKind};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{WorkingLine, given};

/// Which flour is the hundred per cent. Both conventions are in use; a figure must say which.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Basis {
    /// All flour of the dough, that of pastes and preferments included.
    #[default]
    AllFlour,
    /// The flour of the line's own part.
    OwnPart,
}

impl Basis {
    /// The other one.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::AllFlour => Self::OwnPart,
            Self::OwnPart => Self::AllFlour,
        }
    }
}

/// One baker's percentage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Percentage {
    /// The weight of the ingredient.
    pub mass: Mass,
    /// The flour it is compared with.
    pub flour: Mass,
    /// Its share of that flour.
    pub share: Share,
}

impl Percentage {
    /// `share = mass / flour`.
    ///
    /// # Errors
    /// [`FormulaError::NoFlour`] where there is no flour; [`FormulaError::OffScale`] where there
    /// is next to none.
    pub fn of(mass: Mass, flour: Mass) -> Result<Self, FormulaError> {
        let share = of_flour(mass, flour)?;
        Ok(Self { mass, flour, share })
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "100 × m / F".into(),
            with: vec![
                given("m", "ingredient", self.mass.grams(), "g"),
                given("F", "flour", self.flour.grams(), "g"),
            ],
            result: given("p", "baker's percentage", self.share.percent(), "%"),
            source: "by definition".into(),
        }]
    }
}

/// The baker's percentage of one line.
///
/// `p = 100 m / F`, with m the weight of the line and F the flour of the basis, both in g.
///
/// # Errors
/// [`FormulaError::NoSuchLine`]; [`FormulaError::NoFlour`] or [`FormulaError::NoFlourIn`] where
/// the basis holds no flour.
pub fn percentage(formula: &Formula, at: LineAt, basis: Basis) -> Result<Percentage, FormulaError> {
    let line = formula.line(at).ok_or(FormulaError::NoSuchLine { at })?;
    Percentage::of(line.mass, flour_of(formula, at.part, basis)?)
}

fn flour_of(formula: &Formula, part: usize, basis: Basis) -> Result<Mass, FormulaError> {
    match basis {
        Basis::AllFlour => some_flour(formula.flour()).ok_or(FormulaError::NoFlour),
        Basis::OwnPart => {
            let own = formula
                .parts
                .get(part)
                .ok_or(FormulaError::NoSuchPart { part })?;
            some_flour(own.flour()).ok_or(FormulaError::NoFlourIn { part })
        }
    }
}

fn some_flour(flour: Mass) -> Option<Mass> {
    (flour > Mass::ZERO).then_some(flour)
}

/// The formula with one line set to a weight.
///
/// # Errors
/// [`FormulaError::NoSuchLine`].
pub fn set_mass(formula: &Formula, at: LineAt, mass: Mass) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    changed
        .line_mut(at)
        .ok_or(FormulaError::NoSuchLine { at })?
        .mass = mass;
    Ok(changed)
}

/// The formula with one line set to a baker's percentage, every other weight as it was.
///
/// `m = p F`; for a line that is itself flour of the basis, `m = p F₀ / (1 − p)` with F₀ the other
/// flour, since it raises the hundred per cent along with itself.
///
/// # Errors
/// [`FormulaError::NoSuchLine`]; [`FormulaError::NoFlour`] or [`FormulaError::NoFlourIn`] where
/// there is no flour to compare with; [`FormulaError::CannotMove`] for flour asked to be all of
/// the flour, or more, beside other flour, or for the only flour; [`FormulaError::OffScale`].
pub fn set_percentage(
    formula: &Formula,
    at: LineAt,
    basis: Basis,
    share: Share,
) -> Result<Formula, FormulaError> {
    let line = formula.line(at).ok_or(FormulaError::NoSuchLine { at })?;
    let flour = flour_of(formula, at.part, basis)?;
    let in_dough = formula
        .parts
        .get(at.part)
        .is_some_and(|part| part.kind.in_dough());
    let p = share.fraction();
    let raises_flour = line.is_flour() && (basis == Basis::OwnPart || in_dough);
    let grams = if raises_flour {
        let other = flour.less(line.mass).grams();
        if p >= 1.0 || other <= 0.0 {
            let food = line.food.name().to_owned();
            return Err(FormulaError::CannotMove { food });
        }
        p * other / (1.0 - p)
    } else {
        p * flour.grams()
    };
    set_mass(formula, at, Mass::from_grams(grams)?)
}

/// What one part is, compared with the flour of the whole dough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartTotals {
    /// What becomes of it.
    pub kind: PartKind,
    /// All of it.
    pub mass: Mass,
    /// Its flour.
    pub flour: Mass,
    /// What is poured into it: water, other liquids, eggs.
    pub liquid: Mass,
    /// All flour of the dough.
    pub dough_flour: Mass,
    /// Its weight on all flour of the dough.
    pub share: Share,
    /// Its flour as a share of all flour: prefermented or scalded flour.
    pub flour_share: Share,
}

impl PartTotals {
    /// How many times its flour is poured into it, by weight; `None` where it has no flour.
    #[must_use]
    pub fn liquid_to_flour(&self) -> Option<Share> {
        self.liquid.share_of(self.flour)
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let all = given("F", "all flour of the dough", self.dough_flour.grams(), "g");
        let own = given("f", "its own flour", self.flour.grams(), "g");
        let mut lines = vec![
            WorkingLine {
                rule: "100 × m / F".into(),
                with: vec![given("m", "part", self.mass.grams(), "g"), all.clone()],
                result: given("p", "part on flour", self.share.percent(), "%"),
                source: "by definition".into(),
            },
            WorkingLine {
                rule: "100 × f / F".into(),
                with: vec![own.clone(), all],
                result: given("s", "share of flour", self.flour_share.percent(), "%"),
                source: "by definition".into(),
            },
        ];
        if let Some(ratio) = self.liquid_to_flour() {
            lines.push(WorkingLine {
                rule: "L / f".into(),
                with: vec![given("L", "liquids", self.liquid.grams(), "g"), own],
                result: given("r", "liquid to flour", ratio.fraction(), ""),
                source: "by definition".into(),
            });
        }
        lines
    }
}

/// What one part is, compared with the flour of the whole dough.
///
/// # Errors
/// [`FormulaError::NoSuchPart`]; [`FormulaError::NoFlour`] where the dough has none.
pub fn part_totals(formula: &Formula, part: usize) -> Result<PartTotals, FormulaError> {
    let own = formula
        .parts
        .get(part)
        .ok_or(FormulaError::NoSuchPart { part })?;
    let dough_flour = formula.flour();
    Ok(PartTotals {
        kind: own.kind,
        mass: own.mass(),
        flour: own.flour(),
        liquid: own.liquid(),
        dough_flour,
        share: of_flour(own.mass(), dough_flour)?,
        flour_share: of_flour(own.flour(), dough_flour)?,
    })
}
