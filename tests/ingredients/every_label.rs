//! Every label, true or not, gives a valid composition.

use proptest::prelude::*;
use softcrumb::engine::ingredients::{
    Allergen, Composition, Constituent, Label, LabelError, OwnFood, Role,
};
use softcrumb::engine::quantity::Share;

fn line(most: f64) -> impl Strategy<Value = Option<Share>> {
    let grams = prop_oneof![Just(0.0), 0.0..most, Just(most)];
    prop::option::weighted(
        0.7,
        grams.prop_map(|grams| Share::from_percent(grams).unwrap()),
    )
}

fn label(most: f64) -> impl Strategy<Value = Label> {
    prop::collection::vec(line(most), 9).prop_map(|lines| Label {
        fat: lines[0],
        saturates: lines[1],
        carbohydrate: lines[2],
        sugars: lines[3],
        fibre: lines[4],
        protein: lines[5],
        salt: lines[6],
        water: lines[7],
        cocoa: lines[8],
    })
}

fn role() -> impl Strategy<Value = Role> {
    prop::sample::select(Role::ALL.to_vec())
}

fn side_by_side(made_of: &Composition) -> f64 {
    let apart = [
        Constituent::Water,
        Constituent::Protein,
        Constituent::Fat,
        Constituent::Carbohydrate,
        Constituent::Ash,
        Constituent::Alcohol,
    ];
    apart
        .iter()
        .map(|component| made_of.component(*component).fraction())
        .sum()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(crate::cases::cases(20_000)) })]

    /// Holds even for labels that no constructor checked: a record changed by hand, a line of 1e9 percent.
    #[test]
    fn each_part_is_a_number_from_none_to_twice_the_whole(
        label in label(1e9), role in role(), milk in any::<bool>(),
    ) {
        let allergens = if milk { vec![Allergen::Milk] } else { vec![] };
        let food = OwnFood { name: String::new(), role, label, allergens };
        let made_of = food.composition();
        for component in Constituent::ALL {
            let share = made_of.component(component).fraction();
            prop_assert!((0.0..=2.0).contains(&share), "{component:?} {share}");
        }
    }

    /// What lies side by side stays within the whole, what lies inside within what it is in.
    #[test]
    fn a_label_that_was_taken_gives_no_more_than_the_whole(
        label in label(60.0), role in role(), milk in any::<bool>(),
    ) {
        let allergens = if milk { vec![Allergen::Milk] } else { vec![] };
        let Ok(food) = OwnFood::new("Any", role, label, allergens) else { return Ok(()) };
        let made_of = food.composition();
        let protein = made_of.protein.fraction();
        let most = 1.0 + LabelError::ALLOWED / 100.0 + 0.28 * protein + 1e-9;
        prop_assert!(side_by_side(&made_of) <= most, "{made_of:?}");
        prop_assert!(made_of.starch.plus(made_of.sugars) <= made_of.carbohydrate.plus(Share::from_fraction(1e-9).unwrap()), "{made_of:?}");
        prop_assert!(made_of.fibre <= made_of.carbohydrate);
        prop_assert!(made_of.sodium <= made_of.ash);
        for (printed, component) in [(label.fat, made_of.fat), (label.protein, made_of.protein), (label.water, made_of.water)] {
            prop_assert!(printed.is_none_or(|printed| printed == component));
        }
    }
}
