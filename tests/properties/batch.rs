//! Scaling conserves mass, over generated formulas, settings and losses.

use std::num::{NonZeroU16, NonZeroU32};

use softcrumb::engine::batch::{BatchTarget, Losses, ScaleSettings, Scaled, round, scale};
use softcrumb::engine::formula::{Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Division, Mass};

use crate::batches::{
    CASES, FOODS, alike, count, formula, fraction, grams, losses, runner, wanted,
};
use crate::cases::cases;

/// The mass of one food in all parts.
fn all_of(formula: &Formula, food: &Food) -> f64 {
    let lines = formula.parts.iter().flat_map(|part| &part.lines);
    let masses = lines
        .filter(|line| line.food == *food)
        .map(|line| line.mass);
    masses.sum::<Mass>().grams()
}

fn what_was_wanted_comes_out(formula: &Formula, scaled: &Scaled) {
    let needed = scaled.needed.grams();
    match scaled.wanted {
        BatchTarget::Times(factor) => alike(scaled.factor.number(), factor.number(), "factor"),
        BatchTarget::Dough(mass) => alike(needed, mass.grams(), "dough"),
        BatchTarget::Pieces { count, each } => {
            assert_eq!(scaled.pieces.count, NonZeroU32::from(count));
            alike(needed, f64::from(count.get()) * each.grams(), "pieces");
        }
        BatchTarget::FlourOnHand(mass) => {
            alike(scaled.formula.flour().grams(), mass.grams(), "flour");
        }
        BatchTarget::OnHand { at, mass } => {
            let food = &formula.line(at).unwrap().food;
            alike(all_of(&scaled.formula, food), mass.grams(), "on hand");
        }
        BatchTarget::Class {
            students,
            loaves,
            loaf,
        } => {
            let loaves = f64::from(students.get()) * f64::from(loaves.get());
            alike(needed, loaves * loaf.grams(), "loaves");
        }
    }
}

fn mass_is_conserved(formula: &Formula, scaled: &Scaled) {
    let losses = scaled.losses;
    let out = scaled.needed + scaled.left_behind + scaled.lost_dividing + scaled.steam;
    alike(scaled.weighed_in.grams(), out.grams(), "what went in");
    alike(
        scaled.formula.dough().grams(),
        scaled.weighed_in.grams(),
        "lines of the dough",
    );
    let pieces = scaled.pieces.each.grams() * f64::from(scaled.pieces.count.get());
    alike(pieces, scaled.needed.grams(), "pieces");
    let after = scaled.baked.grams() + scaled.lost_baking.grams();
    alike(
        after,
        scaled.needed.grams() + scaled.filling.grams(),
        "the oven",
    );
    for (before, after) in formula.parts.iter().zip(&scaled.formula.parts) {
        let reaches = if after.kind.in_dough() {
            scaled.factor.number()
        } else {
            let needed = scaled.needed.grams() / (formula.dough().grams() - steam(formula));
            needed / (1.0 - losses.topping.fraction())
        };
        for (line, made) in before.lines.iter().zip(&after.lines) {
            alike(line.mass.grams() * reaches, made.mass.grams(), "a line");
        }
    }
}

fn steam(formula: &Formula) -> f64 {
    formula.dough_parts().map(|part| part.steam.grams()).sum()
}

#[test]
fn scaling_keeps_mass_and_gives_what_was_wanted() {
    let answered = std::cell::Cell::new(0);
    let drawn = (formula(), wanted(), losses(), 1..40_u16);
    runner()
        .run(&drawn, |(formula, wanted, losses, pieces)| {
            if let Ok(scaled) = scale(&formula, wanted, losses, count(pieces)) {
                answered.set(answered.get() + 1);
                what_was_wanted_comes_out(&formula, &scaled);
                mass_is_conserved(&formula, &scaled);
            }
            Ok(())
        })
        .unwrap();
    // The rest ask for nothing, for what is not in the formula, or lose everything.
    let answered = answered.get();
    let least = cases(CASES).div_ceil(5) * 3;
    assert!(answered > least, "only {answered} had an answer");
}

/// Every kind of part with every food, each line so heavy.
fn everything(line: f64) -> Formula {
    let foods = FOODS.map(|food| Food::Listed(Listed::numbered(food).unwrap()));
    let part = |kind| Part {
        kind,
        name: String::new(),
        lines: foods
            .clone()
            .map(|food| Line::new(food, grams(line)))
            .to_vec(),
        steam: grams(line / 2.0),
        temperature: None,
    };
    Formula {
        parts: PartKind::ALL.map(part).to_vec(),
    }
}

/// Every wish at the ends of its range, on formulas with everything, with nothing, with a tonne.
#[test]
fn the_ends_of_every_range_are_answered() {
    let ends = [0.0, f64::MIN_POSITIVE, 1e-9, 1.0, 999_999.9, 1_000_000.0];
    let shares = [0.0, 1e-12, 0.5, 0.999_999, 1.0, 1e8];
    let mut seen = 0;
    for &line in &ends {
        let formula = everything(line);
        for &asked in &ends {
            for &share in &shares {
                let at = LineAt { part: 0, line: 0 };
                let losses = Losses {
                    residue: grams(asked),
                    residue_share: fraction(share),
                    dividing: fraction(share / 2.0),
                    bake: fraction(share),
                    topping: fraction(share),
                };
                for wanted in [
                    BatchTarget::Dough(grams(asked)),
                    BatchTarget::FlourOnHand(grams(asked)),
                    BatchTarget::OnHand {
                        at,
                        mass: grams(asked),
                    },
                    BatchTarget::Pieces {
                        count: NonZeroU16::MAX,
                        each: grams(asked),
                    },
                ] {
                    if let Ok(scaled) = scale(&formula, wanted, losses, NonZeroU16::MAX) {
                        assert!(scaled.baked_each.grams().is_finite());
                        let main = Division::ALL[0];
                        let rounded = round(&scaled.formula, ScaleSettings { main, pocket: None });
                        assert!(rounded.dough_weighed.grams().is_finite());
                    }
                    seen += 1;
                }
            }
        }
    }
    assert_eq!(seen, 6 * 6 * 6 * 4);
}
