//! Cautions: what a baker should know about a formula before making it. None is an error.

use super::{Bread, Figure, Figures, Form, Formula, FormulaError, Usual, scald};
use crate::engine::quantity::Share;

/// Something to know about a formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Caution {
    /// A figure lies outside what is usual for the bread.
    Outside {
        /// What is usual.
        usual: Usual,
        /// What it is.
        value: Share,
    },
    /// So much sugar on the flour slows yeast down: sources begin at 5 or at 7 %.
    ///
    /// Source: Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307 (less gas above 5 %); a yeast
    /// maker's note (held back above 7 %).
    SugarSlowsYeast {
        /// Sugars, honey and syrups as weighed, on the flour.
        sugar: Share,
        /// Where it begins.
        begins: Share,
        /// From where all sources agree.
        certain: Share,
    },
    /// So much salt slows yeast and costs gas.
    ///
    /// Source: Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307; the limit is common practice.
    SaltSlowsYeast {
        /// Salt on the flour.
        salt: Share,
        /// Where it begins.
        begins: Share,
    },
    /// So much dried milk wants more water and browns early. The limit is common practice.
    MuchMilkPowder {
        /// Dried milk on the flour.
        powder: Share,
        /// Where it begins.
        begins: Share,
    },
    /// The paste has too little water for all of its starch to gelatinise, however hot it is.
    ///
    /// Source: Donovan 1979, *Biopolymers* 18:263–275 (one stage from 1.5 g of water to 1 g of
    /// starch); *Journal of Food Science* 55 (1990), 543 (85 % at 1.0 g, complete at 1.5 g).
    PasteTooDry {
        /// Which part.
        part: usize,
        /// All its water, flour's own included and steam taken off, to its starch.
        water_to_starch: Share,
        /// What is needed.
        complete: Share,
    },
    /// The dough, or something that goes with it, holds raw flour: not to be tasted before it
    /// is baked.
    RawFlour,
}

const SUGAR_BEGINS: Share = Share::in_hundred(5.0);
const SUGAR_CERTAIN: Share = Share::in_hundred(7.0);
const SALT_BEGINS: Share = Share::in_hundred(2.5);
const POWDER_BEGINS: Share = Share::in_hundred(6.0);

/// The least water to starch at which all of it gelatinises: 1.5 g to 1 g.
const COMPLETE: Share = Share::WHOLE.plus(Share::in_hundred(50.0));

/// What to know about a formula, for such a bread, as it is written; the paste as it was made.
///
/// A figure that is nothing at all is no caution where the bread can do without it: only salt,
/// yeast and water are missed.
///
/// # Errors
/// [`FormulaError::NoFlour`] where the dough has none; [`FormulaError::OffScale`] where it has
/// next to none.
pub fn cautions(formula: &Formula, bread: Bread) -> Result<Vec<Caution>, FormulaError> {
    let figures = Figures::of(formula, Form::AsWritten);
    let mut found = Vec::new();
    for usual in bread.usual() {
        let value = figures.share(usual.figure)?;
        if value < usual.low || value > usual.high {
            found.push(Caution::Outside { usual, value });
        }
    }
    found.extend(slow_yeast(&figures)?);
    let parts = 0..formula.parts.len();
    found.extend(parts.filter_map(|part| too_dry(formula, part)));
    found.push(Caution::RawFlour);
    Ok(found)
}

fn slow_yeast(figures: &Figures) -> Result<impl Iterator<Item = Caution>, FormulaError> {
    let (sugar, begins) = (figures.share(Figure::Sugar)?, SUGAR_BEGINS);
    let certain = SUGAR_CERTAIN;
    let sweet = (sugar > begins).then_some(Caution::SugarSlowsYeast {
        sugar,
        begins,
        certain,
    });
    let (salt, begins) = (figures.share(Figure::Salt)?, SALT_BEGINS);
    let salty = (salt > begins).then_some(Caution::SaltSlowsYeast { salt, begins });
    let (powder, begins) = (figures.share(Figure::MilkPowder)?, POWDER_BEGINS);
    let milky = (powder > begins).then_some(Caution::MuchMilkPowder { powder, begins });
    Ok([sweet, salty, milky].into_iter().flatten())
}

/// Nothing where it is no paste, has water enough, or no starch is known of.
fn too_dry(formula: &Formula, part: usize) -> Option<Caution> {
    let water_to_starch = scald(formula, part, Form::AsMade).ok()??.water_to_starch;
    (water_to_starch < COMPLETE).then_some(Caution::PasteTooDry {
        part,
        water_to_starch,
        complete: COMPLETE,
    })
}
