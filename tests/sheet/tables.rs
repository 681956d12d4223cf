//! The table for spreadsheets: what RFC 4180 wants, and no name that reckons.

use softcrumb::engine::formula::{Line, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Label, OwnFood, Role};
use softcrumb::engine::quantity::Mass;
use softcrumb::sheet::examples;
use softcrumb::storage::interchange::csv;
use softcrumb::text::name;

#[test]
fn every_ingredient_is_a_line_with_its_weight_and_percentages() {
    for (_, sheet) in examples() {
        let text = csv(&sheet.formula, name::food);
        let lines: Vec<&str> = text.split("\r\n").collect();
        let all: usize = sheet
            .formula
            .parts
            .iter()
            .map(|part| part.lines.len())
            .sum();
        // The table has a head, every line, and nothing after the last line break.
        assert_eq!(lines.len(), all + 2);
        assert_eq!(lines.last(), Some(&""));
        assert!(lines[0].starts_with("part,kind,ingredient,grams,"));
    }
}

/// A third of 84 g in binary is 28.000000000000004; a spreadsheet shows what a scale does. Common
/// practice.
#[test]
fn a_weight_is_written_without_the_last_places_of_a_binary_fraction() {
    let (_, mut sheet) = examples().remove(0);
    sheet.formula.parts[0].lines[0].mass = Mass::from_grams(28.000_000_000_000_004).unwrap();
    let text = csv(&sheet.formula, name::food);
    assert!(text.contains(",28,"), "{text}");
    assert!(!text.contains("000000"), "{text}");
}

#[test]
fn a_name_that_would_reckon_or_break_the_table_is_held() {
    let (_, mut sheet) = examples().remove(0);
    let own = |name: &str| {
        let food = OwnFood::new(name, Role::Inclusion, Label::default(), Vec::new()).unwrap();
        Line::new(Food::Own(food), Mass::from_grams(1.5).unwrap())
    };
    sheet.formula.parts = vec![Part {
        kind: PartKind::Final,
        name: "Dough, \"best\"".to_owned(),
        lines: vec![
            own("=1+1"),
            own("@SUM(A1)"),
            own("+7"),
            own("-2"),
            own("a, b"),
        ],
        steam: Mass::ZERO,
        temperature: None,
    }];
    let text = csv(&sheet.formula, name::food);
    for held in [
        "'=1+1",
        "'@SUM(A1)",
        "'+7",
        "'-2",
        "\"a, b\"",
        "\"Dough, \"\"best\"\"\"",
    ] {
        assert!(text.contains(held), "{held} in {text}");
    }
    assert!(text.contains(",1.5,,"), "no flour, no percentage: {text}");
}
