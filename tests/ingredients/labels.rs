//! Each constituent that the label does not print is named.

use softcrumb::engine::ingredients::{Allergen, Constituent, Food, Label, Listed, OwnFood, Role};
use softcrumb::engine::quantity::Share;

fn grams(grams: f64) -> Option<Share> {
    Some(Share::from_percent(grams).unwrap())
}

#[test]
fn a_full_label_leaves_ash_and_the_starch_of_flour_to_be_worked_out() {
    let label = Label {
        fat: grams(1.0),
        saturates: grams(0.2),
        carbohydrate: grams(71.0),
        sugars: grams(1.5),
        fibre: grams(3.0),
        protein: grams(11.0),
        salt: grams(0.01),
        water: grams(12.5),
        cocoa: None,
    };
    let flour = OwnFood::new("Mill's own", Role::Flour, label, vec![Allergen::Wheat]).unwrap();
    assert_eq!(flour.worked_out(), [Constituent::Starch, Constituent::Ash]);
}

#[test]
fn an_empty_label_tells_that_everything_is_worked_out() {
    let salt = OwnFood::new("Sea salt", Role::Salt, Label::default(), vec![]).unwrap();
    let told = salt.worked_out();
    for component in [
        Constituent::Water,
        Constituent::Protein,
        Constituent::Fat,
        Constituent::Ash,
        Constituent::Sodium,
    ] {
        assert!(told.contains(&component), "{component:?}");
    }
    assert_eq!(salt.composition().ash, Share::WHOLE);
    assert!((salt.composition().sodium.percent() - 40.0).abs() < 1e-9);
}

#[test]
fn water_is_not_made_up_where_a_main_part_is_missing() {
    let label = Label {
        fat: grams(30.0),
        ..Label::default()
    };
    let filling = OwnFood::new("Filling", Role::Inclusion, label, vec![]).unwrap();
    assert_eq!(filling.composition().water, Share::NONE);
    assert!(filling.worked_out().contains(&Constituent::Water));
}

#[test]
fn fat_free_cocoa_is_known_for_plain_chocolate_only() {
    let label = Label {
        fat: grams(40.0),
        cocoa: grams(70.0),
        ..Label::default()
    };
    let plain = OwnFood::new("Plain", Role::Chocolate, label, vec![]).unwrap();
    let cocoa = plain.fat_free_cocoa().unwrap().percent();
    assert!((cocoa - 30.0).abs() < 1e-9, "{cocoa}");
    let milk = OwnFood::new("Milk", Role::Chocolate, label, vec![Allergen::Milk]).unwrap();
    assert_eq!(milk.fat_free_cocoa(), None);
}

#[test]
fn a_listed_flour_tells_that_its_starch_is_worked_out_and_butter_has_nothing_to_tell() {
    let bread_flour = Food::Listed(Listed::numbered(1).unwrap());
    assert_eq!(bread_flour.worked_out(), [Constituent::Starch]);
    let butter = Food::Listed(Listed::numbered(500).unwrap());
    assert_eq!(butter.worked_out(), []);
    let evaporated = Food::Listed(Listed::numbered(330).unwrap());
    assert_eq!(evaporated.worked_out(), [Constituent::Sugars]);
}
