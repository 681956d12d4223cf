//! The trials of one tap that are offered, each with the liquid that it takes where that is not plain water.

use crate::engine::formula::{
    Formula, FormulaError, LineAt, PartKind, WhatIf, giving_way, less_water,
};
use crate::engine::ingredients::Role;
use crate::engine::quantity::Mass;
use crate::sheet::Sheet;

/// A trial of one tap.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Offer {
    /// What is tried.
    pub what_if: WhatIf,
    /// The liquid that it takes, where it takes one that is not plain water.
    pub takes: Option<LineAt>,
}

/// Returns the trials that change the dough, in the order they are offered.
///
/// Less water is offered once where the final dough has enough plain water to take; else once for each of its other
/// liquids that has enough, the heaviest first, so that the baker chooses which one is changed. An egg is offered only
/// where nothing else is poured.
///
/// ```
/// use softcrumb::results::formula::{self, try_what_if};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// for offer in formula::what_ifs(&sheet) {
///     assert!(try_what_if(&sheet, offer).is_ok());
/// }
/// ```
#[must_use]
pub fn what_ifs(sheet: &Sheet) -> Vec<Offer> {
    let formula = &sheet.formula;
    let offers = WhatIf::offered(formula).into_iter();
    offers
        .flat_map(|what_if| match what_if {
            WhatIf::LessWater => less_waters(formula),
            WhatIf::MoreWater | WhatIf::MilkForWater | WhatIf::WaterForMilk | WhatIf::LessPaste => {
                vec![Offer {
                    what_if,
                    takes: None,
                }]
            }
        })
        .collect()
}

fn less_waters(formula: &Formula) -> Vec<Offer> {
    let offer = |takes| Offer {
        what_if: WhatIf::LessWater,
        takes,
    };
    let usual = giving_way(formula);
    let has_enough = |at: &LineAt| less_water(formula, *at).is_ok();
    let is_plain = |at: &LineAt| formula.line(*at).is_some_and(|line| line.is_water());
    if usual.filter(is_plain).filter(has_enough).is_some() {
        return vec![offer(None)];
    }
    let mut liquids: Vec<(LineAt, Mass)> = formula
        .lines()
        .filter(|(at, line)| {
            let own = formula.parts.get(at.part);
            own.is_some_and(|own| own.kind == PartKind::Final)
                && line.food.role() == Role::Liquid
                && has_enough(at)
        })
        .map(|(at, line)| (at, line.mass))
        .collect();
    liquids.sort_by(|(_, one), (_, other)| other.grams().total_cmp(&one.grams()));
    if liquids.is_empty() {
        // Where nothing can be taken, the trial says so.
        let other = usual.filter(|at| !is_plain(at)).filter(has_enough);
        return vec![offer(other)];
    }
    let liquids = liquids.into_iter();
    liquids.map(|(at, _)| offer(Some(at))).collect()
}

/// Returns the sheet with one of the offered trials applied to its formula.
///
/// # Errors
/// As [`WhatIf::of`] and [`less_water`].
pub fn try_what_if(sheet: &Sheet, offer: Offer) -> Result<Sheet, FormulaError> {
    let formula = &sheet.formula;
    Ok(sheet.with_formula(match (offer.what_if, offer.takes) {
        (WhatIf::LessWater, Some(at)) => less_water(formula, at)?,
        (what_if, _) => what_if.of(formula)?,
    }))
}
