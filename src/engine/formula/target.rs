//! Targets: a figure is set exactly, and one ingredient gives way.

use super::figure::Contribution;
use super::{Figure, Figures, Form, Formula, FormulaError, LineAt, set_mass};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{WorkingLine, given};

/// What is wanted of the dough as it is written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FigureTarget {
    /// A figure as so much of the flour: true water, salt, prefermented flour, …
    OfFlour(Figure, Share),
    /// All water as so much of the dough: moisture, wet basis.
    Moisture(Share),
    /// A figure of such a weight: the dough, the flour, …
    Weight(Figure, Mass),
}

/// A target that was reached, with the numbers met on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct Reached {
    /// The formula that reaches it.
    pub formula: Formula,
    /// What was wanted.
    pub target: FigureTarget,
    /// The line that gave way.
    pub at: LineAt,
    /// What it weighed before.
    pub before: Mass,
    /// What it weighs now.
    pub after: Mass,
    /// The figure without that line.
    pub rest: Mass,
    /// What the figure is compared with (flour, or the dough), without that line.
    pub rest_of_whole: Mass,
    /// How much of the figure one gram of the line brings.
    pub brings: Share,
    /// How much of what the figure is compared with one gram of the line brings.
    pub brings_to_whole: Share,
}

/// The formula that reaches `target` by changing nothing but the line at `at`.
///
/// Every figure is a sum over lines, so `t = (A + a m) / (B + b m)` and
/// `m = (t B − A) / (a − t b)`: A is the figure and B what it is compared with, without the line,
/// both in g; a and b are what one gram of the line brings to each. For a wanted weight M,
/// `m = (M − A) / a`.
///
/// # Errors
/// [`FormulaError::NoSuchLine`]; [`FormulaError::BelowZero`] where the line would go below zero;
/// [`FormulaError::CannotMove`] where no weight of it reaches the target;
/// [`FormulaError::NoFlour`] where no flour would be left to compare with;
/// [`FormulaError::OffScale`].
pub fn reach(formula: &Formula, target: FigureTarget, at: LineAt) -> Result<Reached, FormulaError> {
    let line = formula.line(at).ok_or(FormulaError::NoSuchLine { at })?;
    let part = formula
        .parts
        .get(at.part)
        .filter(|part| part.kind.in_dough())
        .ok_or_else(|| cannot_move(line.food.name()))?;
    let component = Contribution::new(part.kind, line);
    let rest = Figures::of(&set_mass(formula, at, Mass::ZERO)?, Form::AsWritten);
    let equation = Equation::new(target, &rest, &component)?;
    let after = equation.solve(line.food.name())?;
    Ok(Reached {
        formula: set_mass(formula, at, after)?,
        target,
        at,
        before: line.mass,
        after,
        rest: equation.rest,
        rest_of_whole: equation.rest_of_whole,
        brings: equation.brings,
        brings_to_whole: equation.brings_to_whole,
    })
}

fn cannot_move(food: &str) -> FormulaError {
    FormulaError::CannotMove {
        food: food.to_owned(),
    }
}

/// `t = (A + a m) / (B + b m)`, to be solved for m.
struct Equation {
    /// t, or M in g where a weight is wanted.
    wanted: f64,
    /// A.
    rest: Mass,
    /// B.
    rest_of_whole: Mass,
    /// a.
    brings: Share,
    /// b.
    brings_to_whole: Share,
    /// Whether a weight is wanted, so that B is one and b nothing.
    by_weight: bool,
}

impl Equation {
    fn new(
        target: FigureTarget,
        rest: &Figures,
        component: &Contribution,
    ) -> Result<Self, FormulaError> {
        let (figure, whole, wanted) = match target {
            FigureTarget::OfFlour(figure, share) => (figure, Some(Figure::Flour), share.fraction()),
            FigureTarget::Moisture(share) => {
                (Figure::TotalWater, Some(Figure::Dough), share.fraction())
            }
            FigureTarget::Weight(figure, mass) => (figure, None, mass.grams()),
        };
        let rest_of_whole = whole.map(|whole| rest.try_mass(whole)).transpose()?;
        Ok(Self {
            wanted,
            rest: rest.try_mass(figure)?,
            rest_of_whole: rest_of_whole.unwrap_or(Mass::ZERO),
            brings: figure.in_gram(component),
            brings_to_whole: whole.map_or(Share::NONE, |whole| whole.in_gram(component)),
            by_weight: whole.is_none(),
        })
    }

    fn solve(&self, food: &str) -> Result<Mass, FormulaError> {
        const ROUNDING: f64 = 1e-12;
        let (t, a, b) = (
            self.wanted,
            self.brings.fraction(),
            self.brings_to_whole.fraction(),
        );
        let (rest, whole) = (self.rest.grams(), self.rest_of_whole.grams());
        let (missing, slope) = if self.by_weight {
            (t - rest, a)
        } else {
            (t * whole - rest, a - t * b)
        };
        if slope.abs() <= ROUNDING * (a + t * b) {
            return Err(cannot_move(food));
        }
        let grams = missing / slope;
        if grams < -1e-9 * (1.0 + rest) {
            return Err(self.out_of_reach(grams, food));
        }
        if !self.by_weight && whole + b * grams.max(0.0) <= 0.0 {
            return Err(FormulaError::NoFlour);
        }
        Ok(Mass::from_grams(grams.max(0.0))?)
    }

    /// Less than none of the ingredient would do it, or even endlessly much would not.
    fn out_of_reach(&self, grams: f64, food: &str) -> FormulaError {
        let (a, b) = (self.brings.fraction(), self.brings_to_whole.fraction());
        let (rest, whole) = (self.rest.grams(), self.rest_of_whole.grams());
        // With none of it the figure is A/B, with endlessly much a/b.
        let rises = a * whole > rest * b;
        let wants_more = self.by_weight || self.wanted * whole > rest;
        if !self.by_weight && rises == wants_more {
            return cannot_move(food);
        }
        match Mass::from_grams(-grams) {
            Ok(short) => FormulaError::BelowZero {
                food: food.to_owned(),
                short,
            },
            Err(off) => FormulaError::OffScale(off),
        }
    }
}

impl Reached {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let rest = given("A", "the figure without it", self.rest.grams(), "g");
        let brings = given("a", "a gram brings", self.brings.fraction(), "");
        let (rule, with) = match self.target {
            FigureTarget::Weight(_, mass) => (
                "(M − A) / a",
                vec![given("M", "wanted", mass.grams(), "g"), rest, brings],
            ),
            FigureTarget::OfFlour(_, share) | FigureTarget::Moisture(share) => (
                "(t × B − A) / (a − t × b)",
                vec![
                    given("t", "wanted", share.fraction(), ""),
                    given("B", "the whole without it", self.rest_of_whole.grams(), "g"),
                    rest,
                    brings,
                    given(
                        "b",
                        "a gram brings to the whole",
                        self.brings_to_whole.fraction(),
                        "",
                    ),
                ],
            ),
        };
        vec![WorkingLine {
            rule: rule.into(),
            with,
            result: given("m", "what is adjusted", self.after.grams(), "g"),
            source: "by definition".into(),
        }]
    }
}
