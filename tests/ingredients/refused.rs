//! Labels that cannot be true, and names that cannot be shown.

use softcrumb::engine::ingredients::{Label, LabelError, LabelLine, OwnFood, Role};
use softcrumb::engine::quantity::Share;

fn grams(grams: f64) -> Share {
    Share::from_percent(grams).unwrap()
}

fn refusal(label: Label) -> LabelError {
    OwnFood::new("Bar", Role::Chocolate, label, vec![]).unwrap_err()
}

fn named(name: &str) -> Result<OwnFood, LabelError> {
    OwnFood::new(name, Role::Flour, Label::default(), vec![])
}

#[test]
fn no_line_may_pass_a_hundred_grams() {
    let share = grams(100.5);
    for line in LabelLine::ALL {
        let some = |this: LabelLine| (this == line).then_some(share);
        let label = Label {
            fat: some(LabelLine::Fat),
            saturates: some(LabelLine::Saturates),
            carbohydrate: some(LabelLine::Carbohydrate),
            sugars: some(LabelLine::Sugars),
            fibre: some(LabelLine::Fibre),
            protein: some(LabelLine::Protein),
            salt: some(LabelLine::Salt),
            water: some(LabelLine::Water),
            cocoa: some(LabelLine::Cocoa),
        };
        assert_eq!(refusal(label), LabelError::LineAboveWhole { line, share });
    }
}

#[test]
fn parts_may_not_pass_what_they_lie_in() {
    let (sugars, carbohydrate) = (grams(51.0), grams(50.9));
    let label = Label {
        sugars: Some(sugars),
        carbohydrate: Some(carbohydrate),
        ..Label::default()
    };
    let expected = LabelError::SugarsAboveCarbohydrate {
        sugars,
        carbohydrate,
    };
    assert_eq!(refusal(label), expected);
    let (saturates, fat) = (grams(20.1), grams(20.0));
    let label = Label {
        saturates: Some(saturates),
        fat: Some(fat),
        ..Label::default()
    };
    let expected = LabelError::SaturatesAboveFat { saturates, fat };
    assert_eq!(refusal(label), expected);
}

#[test]
fn cocoa_and_sugars_must_find_room_together() {
    let (cocoa, sugars) = (grams(72.0), grams(36.0));
    let label = Label {
        cocoa: Some(cocoa),
        sugars: Some(sugars),
        ..Label::default()
    };
    let expected = LabelError::CocoaAndSugarsAboveWhole { cocoa, sugars };
    assert_eq!(refusal(label), expected);
}

/// Source: ANSES, *Table Ciqual 2020*, baking chocolate (31085): its printed lines add up to
/// 100.6 without water and ash. Such a label is taken, one of 104 is not.
#[test]
fn rounding_above_a_hundred_grams_is_forgiven_but_no_more() {
    let mut label = Label {
        fat: Some(grams(33.1)),
        carbohydrate: Some(grams(51.4)),
        fibre: Some(grams(8.76)),
        protein: Some(grams(6.39)),
        salt: Some(grams(0.015)),
        water: Some(grams(0.9)),
        ..Label::default()
    };
    assert!(OwnFood::new("Bar", Role::Chocolate, label, vec![]).is_ok());
    label.fat = Some(grams(36.6));
    let LabelError::SumAboveWhole { sum } = refusal(label) else {
        panic!("{:?}", refusal(label));
    };
    assert!((sum.percent() - 104.065).abs() < 1e-9, "{sum:?}");
}

#[test]
fn a_name_must_be_there_and_be_short_enough() {
    assert_eq!(named("  "), Err(LabelError::NameEmpty));
    assert_eq!(named(" Rye \n").unwrap().name, "Rye");
    let long = "é".repeat(OwnFood::NAME_LENGTH);
    assert_eq!(named(&long).unwrap().name, long);
    let length = OwnFood::NAME_LENGTH + 1;
    let longer = "é".repeat(length);
    assert_eq!(named(&longer), Err(LabelError::NameTooLong { length }));
}

#[test]
fn a_name_may_be_in_any_script_but_not_turn_the_page_around() {
    for name in ["<b>Flour</b>", "קמח לבן", "小麦粉", "Bob's flour 🌾"] {
        assert_eq!(named(name).unwrap().name, name);
    }
    for character in ['\0', '\n', '\u{7f}', '\u{202e}', '\u{2067}'] {
        let name = format!("Fl{character}our");
        assert_eq!(named(&name), Err(LabelError::NameUnprintable { character }));
    }
}
