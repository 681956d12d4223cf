//! Nutrition and allergens in words.

use std::num::NonZeroU16;

use super::format_options::all;
use super::plain_speech::{has_figures, is_plain};
use softcrumb::engine::ingredients::Allergen;
use softcrumb::engine::nutrition::LabelLaw;
use softcrumb::results::batch::{self, scale};
use softcrumb::sheet::{Pantry, examples};
use softcrumb::text::{self, name};

#[test]
fn nutrition_has_a_figure_in_every_cell() {
    for (_, mut sheet) in examples() {
        sheet.batch.tin.as_mut().unwrap().tins.count = NonZeroU16::new(2).unwrap();
        for law in LabelLaw::ALL {
            let scaled = scale(&sheet).unwrap();
            let found = batch::nutrition::of(&sheet, &scaled, law).unwrap();
            for options in all() {
                let view = text::nutrition::view(&found, options);
                assert_eq!((view.rows.len(), view.columns.len()), (8, 3));
                for row in &view.rows {
                    assert_eq!(row.figures.len(), view.columns.len(), "{}", row.name);
                    row.figures.iter().for_each(|figure| has_figures(figure));
                    assert!(!row.working.is_empty());
                }
                is_plain(view.note);
            }
        }
        has_figures(name::law(LabelLaw::Eu));
    }
}

#[test]
fn each_allergen_is_named_with_its_source() {
    let (_, sheet) = examples().remove(2);
    let pantry = Pantry {
        kitchen: vec![Allergen::BrazilNuts, Allergen::Lupin],
        ..Pantry::default()
    };
    let view = |law| {
        let found = batch::allergens::of(&sheet.formula, &pantry, law);
        text::allergens::view(&found, &sheet.formula)
    };
    let us = view(LabelLaw::Us);
    let view = view(LabelLaw::Eu);
    is_plain(&view.says);
    is_plain(view.note);
    assert_eq!(
        view.says,
        "Contains wheat (gluten), eggs and milk. May contain Brazil nuts and lupin."
    );
    let eggs = view
        .contains
        .iter()
        .find(|line| line.name == "Eggs")
        .unwrap();
    assert_eq!(eggs.sources, "Egg");
    assert_eq!(view.may_contain[0].sources, "your kitchen");
    assert_eq!(us.may_contain.len(), 1);
}
