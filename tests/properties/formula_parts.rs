//! Percentages lead back to weights; parts change and the bread is held.

use proptest::prelude::*;
use softcrumb::engine::formula::{
    Basis, Formula, FormulaError, Line, PartKind, part_totals, percentage, set_part_mass,
    set_part_share, set_paste_ratio, set_percentage,
};
use softcrumb::engine::quantity::{Mass, Share};

use crate::dough::{alike, cases, close, likely, pick, places, same_bread};

/// How much of an ingredient would be missing if a part were made so many times as heavy.
fn missing(formula: &Formula, part: usize, like: &Line, factor: f64) -> f64 {
    let there: f64 = formula
        .parts
        .iter()
        .filter(|own| own.kind == PartKind::Final)
        .flat_map(|own| &own.lines)
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams())
        .sum();
    let taken: f64 = formula.parts[part]
        .lines
        .iter()
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams() * (factor - 1.0))
        .sum();
    taken - there
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(20_000)))]

    #[test]
    fn a_percentage_leads_back_to_its_weight(
        formula in likely(), nth in any::<prop::sample::Index>(),
    ) {
        let at = pick(&places(&formula), nth);
        for basis in [Basis::AllFlour, Basis::OwnPart] {
            let Ok(found) = percentage(&formula, at, basis) else { continue };
            match set_percentage(&formula, at, basis, found.share) {
                Ok(back) => for place in places(&formula) {
                    let was = formula.line(place).unwrap().mass.grams();
                    let is = back.line(place).unwrap().mass.grams();
                    // One minus a share near the whole loses digits: seven are left.
                    prop_assert!((was - is).abs() <= 1e-9 + 1e-7 * was, "{} {}", was, is);
                },
                // The only flour is all of the flour, whatever it weighs.
                Err(refused) => {
                    let cannot_move = matches!(refused, FormulaError::CannotMove { .. });
                    prop_assert!(cannot_move);
                    prop_assert!(formula.line(at).unwrap().is_flour());
                    prop_assert!(close(found.share.fraction(), 1.0));
                }
            }
        }
    }

    #[test]
    fn a_part_takes_another_share_and_the_bread_is_held(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 0.0..0.9f64,
    ) {
        let part = nth.index(formula.parts.len() - 2);
        let own = &formula.parts[part];
        let factor = asked * formula.flour().grams() / own.flour().grams();
        match set_part_share(&formula, part, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let totals = part_totals(&changed, part).unwrap();
                prop_assert!(close(totals.flour_share.fraction(), asked));
                for (was, is) in own.lines.iter().zip(&changed.parts[part].lines) {
                    prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
                }
                for (other, was) in formula.parts.iter().enumerate() {
                    if other != part && was.kind != PartKind::Final {
                        prop_assert_eq!(was, &changed.parts[other]);
                    }
                }
            }
            Err(FormulaError::BelowZero { food, short }) => {
                let worst = own.lines.iter()
                    .filter(|line| line.food.name() == food)
                    .map(|line| missing(&formula, part, line, factor))
                    .fold(0.0, f64::max);
                prop_assert!(worst > 0.0 && short.grams() <= worst * 1.000_001);
            }
            Err(other) => prop_assert!(false, "{:?}", other),
        }
    }

    #[test]
    fn a_paste_takes_another_ratio_and_the_bread_is_held(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 0.0..6.0f64,
    ) {
        let part = nth.index(formula.parts.len() - 2);
        match set_paste_ratio(&formula, part, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let (was, is) = (&formula.parts[part], &changed.parts[part]);
                let ratio = is.liquid().grams() / is.flour().grams();
                prop_assert!(close(ratio, asked));
                prop_assert_eq!(was.flour() > Mass::ZERO, is.flour() > Mass::ZERO);
            }
            Err(refused) => {
                let below_zero = matches!(refused, FormulaError::BelowZero { .. });
                prop_assert!(below_zero, "{:?}", refused);
            }
        }
    }

    #[test]
    fn a_part_takes_another_weight_in_proportion(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 1.0..5000.0f64,
    ) {
        let part = nth.index(formula.parts.len() - 1);
        let wanted = Mass::from_grams(asked).unwrap();
        let changed = set_part_mass(&formula, part, wanted).unwrap();
        let (was, is) = (&formula.parts[part], &changed.parts[part]);
        prop_assert!(close(is.mass().grams(), asked));
        let factor = asked / was.mass().grams();
        for (was, is) in was.lines.iter().zip(&is.lines) {
            prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
        }
    }
}
