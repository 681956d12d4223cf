//! Percentages lead back to weights; streams change and the bread is held.

use proptest::prelude::*;
use softcrumb::engine::formula::{
    Basis, Formula, FormulaError, Line, StreamKind, percentage, set_paste_ratio, set_percentage,
    set_stream_mass, set_stream_share, stream_totals,
};
use softcrumb::engine::quantity::{Mass, Share};

use crate::dough::{alike, cases, close, likely, pick, places, same_bread};

/// How much of an ingredient would be missing if a stream were made so many times as heavy.
fn missing(formula: &Formula, stream: usize, like: &Line, factor: f64) -> f64 {
    let there: f64 = formula
        .streams
        .iter()
        .filter(|own| own.kind == StreamKind::Final)
        .flat_map(|own| &own.lines)
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams())
        .sum();
    let taken: f64 = formula.streams[stream]
        .lines
        .iter()
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams() * (factor - 1.0))
        .sum();
    taken - there
}

proptest! {
    #![proptest_config(cases(20_000))]

    #[test]
    fn a_percentage_leads_back_to_its_weight(
        formula in likely(), nth in any::<prop::sample::Index>(),
    ) {
        let at = pick(&places(&formula), nth);
        for basis in [Basis::AllFlour, Basis::OwnStream] {
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
    fn a_stream_takes_another_share_and_the_bread_is_held(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 0.0..0.9f64,
    ) {
        let stream = nth.index(formula.streams.len() - 2);
        let own = &formula.streams[stream];
        let factor = asked * formula.flour().grams() / own.flour().grams();
        match set_stream_share(&formula, stream, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let totals = stream_totals(&changed, stream).unwrap();
                prop_assert!(close(totals.flour_share.fraction(), asked));
                for (was, is) in own.lines.iter().zip(&changed.streams[stream].lines) {
                    prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
                }
                for (other, was) in formula.streams.iter().enumerate() {
                    if other != stream && was.kind != StreamKind::Final {
                        prop_assert_eq!(was, &changed.streams[other]);
                    }
                }
            }
            Err(FormulaError::BelowZero { food, short }) => {
                let worst = own.lines.iter()
                    .filter(|line| line.food.name() == food)
                    .map(|line| missing(&formula, stream, line, factor))
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
        let stream = nth.index(formula.streams.len() - 2);
        match set_paste_ratio(&formula, stream, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let (was, is) = (&formula.streams[stream], &changed.streams[stream]);
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
    fn a_stream_takes_another_weight_in_proportion(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 1.0..5000.0f64,
    ) {
        let stream = nth.index(formula.streams.len() - 1);
        let wanted = Mass::from_grams(asked).unwrap();
        let changed = set_stream_mass(&formula, stream, wanted).unwrap();
        let (was, is) = (&formula.streams[stream], &changed.streams[stream]);
        prop_assert!(close(is.mass().grams(), asked));
        let factor = asked / was.mass().grams();
        for (was, is) in was.lines.iter().zip(&is.lines) {
            prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
        }
    }
}
