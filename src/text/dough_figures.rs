//! `DoughFigures`: every figure of a dough as it is written, in one value that the page follows.

use super::shown::{Shown, was_by};
use super::{FormatOptions, format, tr};
use crate::engine::formula::{Figure, Figures};
use crate::engine::quantity::Share;

/// A figure that cannot be had; one sentence of the page says why.
const DASH: &str = "–";

/// Every figure of a dough written out, with what a trial changes of each.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct DoughFigures {
    /// As shares of the flour, in the order of [`Figure::ALL`].
    shares: Vec<Shown>,
    /// By weight, in the same order.
    masses: Vec<Shown>,
    /// All water as a share of the dough.
    moisture: Shown,
}

impl DoughFigures {
    /// Writes the figures of a dough. `saved` are those before the trial that is on.
    #[must_use]
    pub fn of(now: &Figures, saved: Option<&Figures>, options: FormatOptions) -> Self {
        let share = |figure| {
            let old = saved.and_then(|saved| saved.share(figure).ok());
            match now.share(figure) {
                Ok(share) => with_points(format::share(share, options), share, old, options),
                Err(_) => Shown::plain(DASH.to_owned()),
            }
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
        let moisture = match now.moisture() {
            Some(share) => {
                let value = tr!("{value} of dough", value = format::share(share, options));
                with_points(value, share, saved.and_then(Figures::moisture), options)
            }
            None => Shown::plain(DASH.to_owned()),
        };
        Self {
            shares: Figure::ALL.map(share).to_vec(),
            masses: Figure::ALL.map(mass).to_vec(),
            moisture,
        }
    }

    /// A figure as a share of the flour; a dash where there is none.
    #[must_use]
    pub fn share(&self, figure: Figure) -> Option<&Shown> {
        self.shares.get(index(figure)?)
    }

    /// A figure by weight.
    #[must_use]
    pub fn mass(&self, figure: Figure) -> Option<&Shown> {
        self.masses.get(index(figure)?)
    }

    /// The water in one sentence: "True water 64.7 %, poured 38.8 %".
    #[must_use]
    pub fn water_answer(&self) -> String {
        let value = |figure| self.share(figure).map(|shown| shown.value.as_str());
        if value(Figure::TrueWater).is_none_or(|water| water == DASH) {
            return tr!("no flour yet").to_owned();
        }
        tr!(
            "{water} in all, {poured} added",
            water = value(Figure::TrueWater).unwrap_or(DASH),
            poured = value(Figure::PouredWater).unwrap_or(DASH)
        )
    }

    /// The other figures in one sentence: "Flour 480 g, sugar 11 %, fat 9 %".
    #[must_use]
    pub fn others_answer(&self) -> String {
        let value = |figure| self.share(figure).map(|shown| shown.value.as_str());
        let flour = self.mass(Figure::Flour).map(|shown| shown.value.as_str());
        if value(Figure::Sugar).is_none_or(|sugar| sugar == DASH) {
            return tr!("no flour yet").to_owned();
        }
        tr!(
            "Flour {flour}, sugar {sugar}, fat {fat}",
            flour = flour.unwrap_or(DASH),
            sugar = value(Figure::Sugar).unwrap_or(DASH),
            fat = value(Figure::Fat).unwrap_or(DASH)
        )
    }

    /// All water as a share of the dough.
    #[must_use]
    pub const fn moisture(&self) -> &Shown {
        &self.moisture
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
