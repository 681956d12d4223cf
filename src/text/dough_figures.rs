//! `DoughFigures`: every figure of a dough as it is written, in one value that the page follows.

use super::shown::{Shown, was_by};
use super::{FormatOptions, format, tr};
use crate::engine::formula::{Figure, Figures};
use crate::engine::quantity::Share;

/// Every figure of a dough written out, with what a trial changes of each.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct DoughFigures {
    /// As shares of the flour, in the order of [`Figure::ALL`]; `None` where there is no flour.
    shares: Vec<Option<Shown>>,
    /// By weight, in the same order.
    masses: Vec<Shown>,
    /// All water as a share of the dough; `None` where there is no dough.
    moisture: Option<Shown>,
}

impl DoughFigures {
    /// Writes the figures of a dough. `saved` are those before the trial that is on.
    #[must_use]
    pub fn of(now: &Figures, saved: Option<&Figures>, options: FormatOptions) -> Self {
        let share = |figure| {
            let old = saved.and_then(|saved| saved.share(figure).ok());
            let share = now.share(figure).ok()?;
            let value = format::share(share, options);
            Some(with_points(value, share, old, options))
        };
        let mass = |figure| {
            let new = now.mass(figure);
            let old = saved.map(|saved| saved.mass(figure));
            Shown {
                value: format::mass(new, options),
                was: old.filter(|old| *old != new).map(|old| {
                    was_by(
                        &format::mass(old, options),
                        &format::mass_change(old, new, options),
                    )
                }),
            }
        };
        let moisture = now.moisture().map(|share| {
            let value = tr!("{value} of dough", value = format::share(share, options));
            with_points(value, share, saved.and_then(Figures::moisture), options)
        });
        Self {
            shares: Figure::ALL.map(share).to_vec(),
            masses: Figure::ALL.map(mass).to_vec(),
            moisture,
        }
    }

    /// A figure as a share of the flour; `None` where there is no flour.
    #[must_use]
    pub fn share(&self, figure: Figure) -> Option<&Shown> {
        self.shares.get(index(figure)?)?.as_ref()
    }

    /// A figure by weight.
    #[must_use]
    pub fn mass(&self, figure: Figure) -> Option<&Shown> {
        self.masses.get(index(figure)?)
    }

    /// The water in one sentence: "True water 64.7 %, poured 38.8 %".
    #[must_use]
    pub fn water_answer(&self) -> String {
        let figures = [Figure::TrueWater, Figure::PouredWater].map(|figure| self.share(figure));
        let [Some(water), Some(poured)] = figures else {
            return tr!("no flour yet").to_owned();
        };
        tr!(
            "{water} in all, {poured} added",
            water = water.value,
            poured = poured.value
        )
    }

    /// The other figures in one sentence: "Flour 480 g, sugar 11 %, fat 9 %".
    #[must_use]
    pub fn others_answer(&self) -> String {
        let shares = [Figure::Sugar, Figure::Fat].map(|figure| self.share(figure));
        let (Some(flour), [Some(sugar), Some(fat)]) = (self.mass(Figure::Flour), shares) else {
            return tr!("no flour yet").to_owned();
        };
        tr!(
            "Flour {flour}, sugar {sugar}, fat {fat}",
            flour = flour.value,
            sugar = sugar.value,
            fat = fat.value
        )
    }

    /// All water as a share of the dough; `None` where there is no dough.
    #[must_use]
    pub const fn moisture(&self) -> Option<&Shown> {
        self.moisture.as_ref()
    }
}

/// A share as it is written, with what it was where it differs.
fn with_points(value: String, new: Share, old: Option<Share>, options: FormatOptions) -> Shown {
    Shown {
        value,
        was: old.filter(|old| *old != new).map(|old| {
            was_by(
                &format::share(old, options),
                &format::points_change(old, new, options),
            )
        }),
    }
}

/// Where a figure stands in [`Figure::ALL`].
fn index(figure: Figure) -> Option<usize> {
    Figure::ALL.iter().position(|one| *one == figure)
}
