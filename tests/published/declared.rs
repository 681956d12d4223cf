//! Declared figures: the rounding tables of both laws, edge by edge.

use softcrumb::engine::nutrition::{Declared, LabelLaw, Nutrient, Nutrients, declare};
use softcrumb::engine::quantity::Mass;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

/// One nutrient alone in a portion.
fn only(nutrient: Nutrient, amount: f64) -> Nutrients {
    let mut held = Nutrients::default();
    match nutrient {
        Nutrient::Fat => held.fat = grams(amount),
        Nutrient::Saturates => held.saturates = grams(amount),
        Nutrient::Carbohydrate | Nutrient::TotalCarbohydrate => held.carbohydrate = grams(amount),
        Nutrient::Sugars => held.sugars = grams(amount),
        Nutrient::Fibre => held.fibre = grams(amount),
        Nutrient::Protein => held.protein = grams(amount),
        Nutrient::Salt => held.sodium = grams(amount / 2.5),
        Nutrient::Sodium => held.sodium = grams(amount),
    }
    held
}

/// As it would be printed: "0", "< 0.5", "9.9", "10".
fn printed(nutrient: Nutrient, amount: f64, law: LabelLaw) -> String {
    let (_, lines) = declare(&only(nutrient, amount), law).unwrap();
    let line = lines.iter().find(|line| line.nutrient == nutrient).unwrap();
    match line.declared {
        Declared::Nothing => "0".to_owned(),
        Declared::Below(limit) => format!("< {}", limit.grams()),
        Declared::Amount { mass, places } => {
            let unit = if nutrient == Nutrient::Sodium {
                1000.0
            } else {
                1.0
            };
            format!("{:.*}", usize::from(places), mass.grams() * unit)
        }
    }
}

fn calories(amount: f64, law: LabelLaw) -> u32 {
    // A gram of protein is 4 kcal by both laws.
    let held = only(Nutrient::Protein, amount / 4.0);
    declare(&held, law).unwrap().0.kilocalories
}

/// Source: Commission guidance on tolerances for nutrition labelling (December 2012), table 4: from
/// 10 g to the gram, above 0.5 g to the tenth, 0.5 g or less "0 g" or "< 0.5 g".
#[test]
fn the_eu_rounds_grams_as_table_4_has_it() {
    let five = [
        Nutrient::Fat,
        Nutrient::Carbohydrate,
        Nutrient::Sugars,
        Nutrient::Protein,
        Nutrient::Fibre,
    ];
    for nutrient in five {
        for (amount, text) in [
            (0.0, "0"),
            (0.01, "< 0.5"),
            (0.5, "< 0.5"),
            (0.51, "0.5"),
            (0.56, "0.6"),
            (9.94, "9.9"),
            (9.95, "10"),
            (10.0, "10"),
            (10.49, "10"),
            (10.5, "11"),
            (49.5, "50"),
        ] {
            assert_eq!(
                printed(nutrient, amount, LabelLaw::Eu),
                text,
                "{nutrient:?} {amount}"
            );
        }
    }
}

/// Source: the same table: saturates above 0.1 g to the tenth; salt from 1 g to the tenth, above
/// 0.0125 g to the hundredth.
#[test]
fn the_eu_rounds_saturates_and_salt_by_their_own_rows() {
    for (amount, text) in [
        (0.0, "0"),
        (0.1, "< 0.1"),
        (0.11, "0.1"),
        (0.15, "0.2"),
        (9.95, "10"),
        (10.5, "11"),
    ] {
        assert_eq!(printed(Nutrient::Saturates, amount, LabelLaw::Eu), text);
    }
    for (amount, text) in [
        (0.0, "0"),
        (0.0125, "< 0.01"),
        (0.0126, "0.01"),
        (0.015, "0.02"),
        (0.994, "0.99"),
        (0.995, "1.0"),
        (1.0, "1.0"),
        (1.04, "1.0"),
        (1.05, "1.1"),
        (1.25, "1.3"),
    ] {
        assert_eq!(
            printed(Nutrient::Salt, amount, LabelLaw::Eu),
            text,
            "{amount}"
        );
    }
}

/// Source: 21 CFR 101.9(c)(2): below 0.5 g zero, below 5 g by 0.5 g, from 5 g by 1 g.
#[test]
fn the_us_rounds_fat_by_halves_and_grams() {
    for nutrient in [Nutrient::Fat, Nutrient::Saturates] {
        for (amount, text) in [
            (0.0, "0"),
            (0.49, "0"),
            (0.5, "0.5"),
            (0.74, "0.5"),
            (0.75, "1.0"),
            (4.74, "4.5"),
            (4.75, "5"),
            (5.0, "5"),
            (5.49, "5"),
            (5.5, "6"),
        ] {
            assert_eq!(printed(nutrient, amount, LabelLaw::Us), text, "{amount}");
        }
    }
}

/// Source: 21 CFR 101.9(c)(6) and (7): below 0.5 g zero, below 1 g "less than 1 g", then by 1 g.
#[test]
fn the_us_rounds_carbohydrate_fibre_sugars_and_protein_by_grams() {
    let four = [
        Nutrient::TotalCarbohydrate,
        Nutrient::Fibre,
        Nutrient::Sugars,
        Nutrient::Protein,
    ];
    for nutrient in four {
        for (amount, text) in [
            (0.0, "0"),
            (0.49, "0"),
            (0.5, "< 1"),
            (0.99, "< 1"),
            (1.0, "1"),
            (1.49, "1"),
            (1.5, "2"),
        ] {
            assert_eq!(
                printed(nutrient, amount, LabelLaw::Us),
                text,
                "{nutrient:?} {amount}"
            );
        }
    }
}

/// Source: 21 CFR 101.9(c)(4): sodium below 5 mg zero, to 140 mg by 5 mg, above by 10 mg.
#[test]
fn the_us_rounds_sodium_by_fives_and_tens() {
    for (milligrams, text) in [
        (0.0, "0"),
        (4.9, "0"),
        (5.0, "5"),
        (7.4, "5"),
        (7.5, "10"),
        (140.0, "140"),
        (144.9, "140"),
        (145.0, "150"),
        (154.9, "150"),
        (155.0, "160"),
    ] {
        let found = printed(Nutrient::Sodium, milligrams / 1000.0, LabelLaw::Us);
        assert_eq!(found, text, "{milligrams}");
    }
}

/// Source: 21 CFR 101.9(c)(1): calories below 5 zero, to 50 by 5, above by 10; in the EU by one.
#[test]
fn calories_are_rounded_by_fives_tens_or_ones() {
    for (amount, us, eu) in [
        (0.0, 0, 0),
        (4.9, 0, 5),
        (5.0, 5, 5),
        (7.4, 5, 7),
        (7.5, 10, 8),
        (50.0, 50, 50),
        (51.0, 50, 51),
        (54.9, 50, 55),
        (55.0, 60, 55),
        (104.9, 100, 105),
        (105.0, 110, 105),
    ] {
        assert_eq!(calories(amount, LabelLaw::Us), us, "{amount}");
        assert_eq!(calories(amount, LabelLaw::Eu), eu, "{amount}");
    }
}

/// Source: Regulation (EU) No 1169/2011, annex XV; 21 CFR 101.9(c) for the other.
#[test]
fn each_law_keeps_its_order() {
    use Nutrient as N;
    let order = |law| {
        let (_, lines) = declare(&Nutrients::default(), law).unwrap();
        lines.iter().map(|line| line.nutrient).collect::<Vec<_>>()
    };
    let eu = [
        N::Fat,
        N::Saturates,
        N::Carbohydrate,
        N::Sugars,
        N::Fibre,
        N::Protein,
        N::Salt,
    ];
    assert_eq!(order(LabelLaw::Eu), eu);
    let us = [
        N::Fat,
        N::Saturates,
        N::Sodium,
        N::TotalCarbohydrate,
        N::Fibre,
        N::Sugars,
        N::Protein,
    ];
    assert_eq!(order(LabelLaw::Us), us);
}
