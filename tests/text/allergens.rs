//! Allergens in words: what packets decide is said wherever the allergens are.

use softcrumb::engine::ingredients::{Allergen, Food, Listed};
use softcrumb::engine::nutrition::LabelLaw;
use softcrumb::results::batch::{self, allergens as found, shopping};
use softcrumb::sheet::{Kitchen, Pantry, Sheet, examples};
use softcrumb::text::share::{CardList, bench_card};
use softcrumb::text::{allergens, shopping as list};

use super::format_options::british;
use super::plain_speech::is_plain;

fn bread() -> Sheet {
    examples().remove(0).1
}

fn says(sheet: &Sheet, pantry: &Pantry) -> String {
    let found = found::of(&sheet.formula, pantry, LabelLaw::Eu);
    allergens::view(&found, &sheet.formula).says
}

/// Regulation (EU) No 1169/2011, annex II; label of hazelnut spread: hazelnuts, skimmed milk, soya.
#[test]
fn packets_that_are_not_read_are_said_to_be_read() {
    let mut sheet = bread();
    let all = says(&sheet, &Pantry::default());
    assert!(
        all.contains("Usually contains soybeans (read the packet)."),
        "{all}"
    );
    assert!(
        all.contains("What else is in dark chocolate is not known: read the packet."),
        "{all}"
    );
    for part in &mut sheet.formula.parts {
        part.lines.truncate(1);
        part.lines[0].food = Food::Listed(Listed::numbered(1030).unwrap());
    }
    assert_eq!(
        says(&sheet, &Pantry::default()),
        "Contains hazelnuts. Usually contains soybeans and milk (read the packet). What else is in \
         hazelnut and chocolate spread is not known: read the packet."
    );
    for part in &mut sheet.formula.parts {
        part.lines[0].food = Food::Listed(Listed::numbered(510).unwrap());
    }
    assert_eq!(
        says(&sheet, &Pantry::default()),
        "May contain soybeans and milk (read the packet). What else is in margarine, unsalted is \
         not known: read the packet."
    );
}

/// Common practice: silence only of single foods.
#[test]
fn none_is_said_of_single_foods_only() {
    let mut sheet = bread();
    for part in &mut sheet.formula.parts {
        part.lines.truncate(1);
        part.lines[0].food = Food::Listed(Listed::numbered(200).unwrap());
    }
    let none = says(&sheet, &Pantry::default());
    assert!(none.starts_with("None of the listed allergens"), "{none}");
    sheet.formula.parts[0].lines[0].food = Food::Listed(Listed::numbered(811).unwrap());
    let unknown = says(&sheet, &Pantry::default());
    assert!(!unknown.contains("None of"), "{unknown}");
}

/// What is read on a packet takes its place.
#[test]
fn a_packet_that_was_read_is_known() {
    let sheet = bread();
    let mut pantry = Pantry::default();
    for line in sheet.formula.parts.iter().flat_map(|part| &part.lines) {
        if line.food.packet_decides() {
            pantry.item_mut(&line.food).unwrap().contains = vec![Allergen::Soybeans];
        }
    }
    let all = says(&sheet, &pantry);
    assert!(
        all.contains("soybeans") && !all.contains("not known"),
        "{all}"
    );
}

/// Card, class sheet and shopping say the same.
#[test]
fn card_class_and_shopping_say_what_the_packet_decides() {
    let (sheet, kitchen, pantry) = (bread(), Kitchen::default(), Pantry::default());
    let results = batch::of(&sheet, kitchen.scales);
    let all = says(&sheet, &pantry);
    let list = CardList {
        list: &[],
        steps: &[],
    };
    let card = bench_card(&sheet, &results, list, (&pantry, None), british()).unwrap();
    assert_eq!(card.allergens, all);
    let bought = shopping::of(&results.scaled.clone().unwrap(), &pantry).unwrap();
    let view = list::view(&bought, "", british());
    for (item, row) in bought.list.items.iter().zip(&view.rows) {
        assert_eq!(
            row.packet.is_some(),
            item.food.packet_decides(),
            "{}",
            row.name
        );
    }
    assert!(
        view.text
            .contains("Usually contains soybeans and milk (read the packet).")
    );
    is_plain(&all);
}
