//! The four examples: a soft tin loaf as the trade knows it, and three to compare with.

use softcrumb::engine::formula::{Caution, Form, PartKind, WaterLedger, cautions};
use softcrumb::engine::ingredients::Role;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::storage::link;

fn main_example() -> Sheet {
    examples().into_iter().next().unwrap().1
}

fn of_flour(sheet: &Sheet, wanted: impl Fn(&softcrumb::engine::formula::Line) -> bool) -> f64 {
    let lines = sheet.formula.dough_parts().flat_map(|part| &part.lines);
    let grams: f64 = lines
        .filter(|line| wanted(line))
        .map(|line| line.mass.grams())
        .sum();
    100.0 * grams / sheet.formula.flour().grams()
}

#[test]
fn all_four_are_set_out_with_every_line() {
    let lines = |sheet: &Sheet| {
        sheet
            .formula
            .parts
            .iter()
            .map(|s| s.lines.len())
            .sum::<usize>()
    };
    let counts: Vec<usize> = examples().iter().map(|(_, sheet)| lines(sheet)).collect();
    assert_eq!(counts, [17, 7, 12, 12]);
}

/// Common practice for a soft tin loaf with a scald; the scald's least water is engine §4's rule
/// of 1.5 g for each g of starch, with a little to spare.
#[test]
fn the_first_is_a_plausible_soft_tin_loaf() {
    let sheet = main_example();
    let within = |what: &str, got: f64, low: f64, high: f64| {
        assert!(
            (low..=high).contains(&got),
            "{what}: {got:.2} is not in {low} to {high}"
        );
    };
    let role = |role| of_flour(&sheet, move |line| line.food.role() == role);
    within("sugar", role(Role::Sugar), 10.5, 11.5);
    within("butter", role(Role::Fat), 8.5, 9.5);
    within("salt", role(Role::Salt), 1.75, 1.85);
    within("yeast", role(Role::Yeast), 0.5, 1.0);
    let flour = sheet.formula.flour().grams();
    for (kind, low, high) in [
        (PartKind::Paste, 14.0, 17.0),
        (PartKind::Preferment, 28.0, 32.0),
    ] {
        let own: f64 = sheet
            .formula
            .parts
            .iter()
            .filter(|s| s.kind == kind)
            .map(|s| s.flour().grams())
            .sum();
        within("flour of a part", 100.0 * own / flour, low, high);
    }
    within("dough", sheet.formula.dough().grams(), 900.0, 1000.0);
    let water = WaterLedger::of(&sheet.formula, Form::AsMade).unwrap();
    within(
        "true hydration",
        water.true_water.share.percent(),
        62.0,
        72.0,
    );
}

#[test]
fn every_scald_has_water_enough_for_its_starch() {
    for (_, sheet) in examples() {
        for paste in sheet
            .formula
            .parts
            .iter()
            .filter(|s| s.kind == PartKind::Paste)
        {
            let sum = |of: fn(&softcrumb::engine::ingredients::Composition) -> f64| -> f64 {
                let components = paste
                    .lines
                    .iter()
                    .map(|l| l.mass.grams() * of(&l.food.composition()));
                components.sum()
            };
            let (water, starch) = (sum(|c| c.water.fraction()), sum(|c| c.starch.fraction()));
            assert!(
                water - paste.steam.grams() > 1.6 * starch,
                "{}: {water} {starch}",
                sheet.name
            );
        }
    }
}

#[test]
fn the_first_fits_a_link_of_600_characters() {
    let text = link::write(&main_example()).unwrap();
    assert!(text.len() <= 600, "{} characters", text.len());
}

#[test]
fn all_four_lie_within_what_is_usual_for_their_bread() {
    for (_, sheet) in examples() {
        for caution in cautions(&sheet.formula, sheet.bread).unwrap() {
            let usual = !matches!(
                caution,
                Caution::Outside { .. }
                    | Caution::PasteTooDry { .. }
                    | Caution::SaltSlowsYeast { .. }
            );
            assert!(usual, "{}: {caution:?}", sheet.name);
        }
    }
}
