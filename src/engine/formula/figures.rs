//! Figures: everything that follows from a formula's weights, found in one pass.

use super::figure::Contribution;
use super::{Figure, Formula, FormulaError, Line, Part};
use crate::engine::quantity::{Mass, OutOfRange, Share};

/// Which weights are counted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Form {
    /// What the formula asks for.
    #[default]
    AsWritten,
    /// What really went in: missed weighings and the steam lost from pastes are counted.
    AsMade,
}

impl Form {
    /// The weight of a line that is counted.
    #[must_use]
    pub fn mass(self, line: &Line) -> Mass {
        match self {
            Self::AsWritten => line.mass,
            Self::AsMade => line.poured.unwrap_or(line.mass),
        }
    }
}

/// All derived figures of a dough.
#[derive(Clone, Debug, PartialEq)]
pub struct Figures {
    brought: [Mass; Figure::COUNT],
    steamed_off: [Mass; Figure::COUNT],
    /// The steam that was taken off, out of `TrueWater` and `TotalWater` and the paste's own.
    /// What was poured stays what was poured.
    pub steam: Mass,
    /// Which weights were counted.
    pub form: Form,
}

impl Figures {
    /// The figures of a formula's dough; fillings, toppings and washes are no part of it.
    ///
    /// A part cannot lose more steam than the true water that is in it.
    #[must_use]
    pub fn of(formula: &Formula, form: Form) -> Self {
        let mut figures = Self {
            brought: [Mass::ZERO; Figure::COUNT],
            steamed_off: [Mass::ZERO; Figure::COUNT],
            steam: Mass::ZERO,
            form,
        };
        for part in formula.dough_parts() {
            let water_before = figures.mass(Figure::TrueWater);
            for line in &part.lines {
                figures.add(&Contribution::new(part.kind, line), form.mass(line));
            }
            if form == Form::AsMade {
                let water_in_it = figures.mass(Figure::TrueWater).less(water_before);
                figures.take_steam(part, water_in_it);
            }
        }
        figures
    }

    fn add(&mut self, component: &Contribution, mass: Mass) {
        for (sum, figure) in self.brought.iter_mut().zip(Figure::ALL) {
            *sum = *sum + mass.component(figure.in_gram(component));
        }
    }

    fn take_steam(&mut self, part: &Part, water_in_it: Mass) {
        let lost = if part.steam < water_in_it {
            part.steam
        } else {
            water_in_it
        };
        for (sum, figure) in self.steamed_off.iter_mut().zip(Figure::ALL) {
            if figure.loses_steam_of(part.kind) {
                *sum = *sum + lost;
            }
        }
        self.steam = self.steam + lost;
    }

    /// The weight of a figure.
    #[must_use]
    pub fn mass(&self, figure: Figure) -> Mass {
        one_of(&self.brought, figure).less(self.steam_missing_from(figure))
    }

    /// As [`Figures::mass`].
    ///
    /// # Errors
    /// [`OutOfRange`] where the sum saturated, see [`Mass::unsaturated`].
    pub(super) fn try_mass(&self, figure: Figure) -> Result<Mass, OutOfRange> {
        let brought = one_of(&self.brought, figure).unsaturated()?;
        Ok(brought.less(self.steam_missing_from(figure)))
    }

    /// The steam that is missing from a figure; nothing for what was poured or weighed.
    #[must_use]
    pub fn steam_missing_from(&self, figure: Figure) -> Mass {
        one_of(&self.steamed_off, figure)
    }

    /// A figure as a share of the flour: its baker's percentage.
    ///
    /// # Errors
    /// [`FormulaError::NoFlour`] where the dough has none; [`FormulaError::OffScale`] where it
    /// has next to none, or a weight saturated.
    pub fn share(&self, figure: Figure) -> Result<Share, FormulaError> {
        of_flour(self.try_mass(figure)?, self.try_mass(Figure::Flour)?)
    }

    /// All water as a share of the dough: moisture, wet basis. `None` where there is no dough, or
    /// more than a tonne.
    #[must_use]
    pub fn moisture(&self) -> Option<Share> {
        let dough = self.try_mass(Figure::Dough).ok()?;
        self.mass(Figure::TotalWater).share_of(dough)
    }
}

fn one_of(masses: &[Mass; Figure::COUNT], wanted: Figure) -> Mass {
    let mut pairs = masses.iter().zip(Figure::ALL);
    pairs
        .find_map(|(mass, figure)| (figure == wanted).then_some(*mass))
        .unwrap_or_default()
}

/// A weight as a share of flour.
pub(super) fn of_flour(mass: Mass, flour: Mass) -> Result<Share, FormulaError> {
    if flour > Mass::ZERO {
        let (mass, flour) = (mass.unsaturated()?, flour.unsaturated()?);
        Ok(Share::from_fraction(mass.grams() / flour.grams())?)
    } else {
        Err(FormulaError::NoFlour)
    }
}
