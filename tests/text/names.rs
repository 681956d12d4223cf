//! Everything has a name, and no two of a kind the same.

use softcrumb::engine::chocolate::{Consistency, Perishability};
use softcrumb::engine::formula::{Bread, Figure, PartKind, WhatIf};
use softcrumb::engine::ingredients::{Allergen, LabelLine, Role};
use softcrumb::results::batch;
use softcrumb::sheet::{Kitchen, Place, examples};
use softcrumb::text::share::plain_text;
use softcrumb::text::weighing::part_weights;
use softcrumb::text::{FormatOptions, name};
use std::collections::HashSet;

fn all_differ<const N: usize>(names: [&str; N]) {
    let different: HashSet<&str> = names.into_iter().collect();
    assert_eq!(different.len(), N);
    assert!(different.iter().all(|name| !name.trim().is_empty()));
}

#[test]
fn names_of_a_kind_differ() {
    all_differ(Role::ALL.map(name::role));
    all_differ(Allergen::ALL.map(name::allergen));
    all_differ(PartKind::ALL.map(name::part_kind));
    all_differ(Bread::ALL.map(name::bread));
    all_differ(Figure::ALL.map(name::figure));
    all_differ(Consistency::ALL.map(name::handling));
    all_differ(Consistency::ALL.map(name::handling_looks));
    all_differ([Perishability::FreshFood, Perishability::MouldsSlowly].map(name::keeps_as));
    all_differ(LabelLine::ALL.map(name::label_line));
    all_differ(WhatIf::ALL.map(name::what_if));
    all_differ(Place::ALL.map(name::place));
}

#[test]
fn allergens_are_listed_once_in_the_order_of_the_law() {
    let found = [
        Allergen::Milk,
        Allergen::Wheat,
        Allergen::Milk,
        Allergen::Eggs,
    ];
    assert_eq!(
        name::allergen_list(&found),
        "Contains wheat (gluten), eggs and milk."
    );
    assert_eq!(
        name::allergen_list(&[Allergen::BrazilNuts]),
        "Contains Brazil nuts."
    );
    assert_eq!(
        name::allergen_list(&[]),
        "None of the listed allergens is in these ingredients by composition."
    );
}

/// A heading without words leads nowhere. Source: WCAG 2.2, success criterion 2.4.6.
#[test]
fn a_part_without_a_name_is_called_by_its_kind_wherever_it_is_a_heading() {
    let mut sheet = examples().remove(0).1;
    for part in &mut sheet.formula.parts {
        part.name = "  ".to_owned();
    }
    let made = batch::of(&sheet, Kitchen::default().scales);
    let options = FormatOptions::default();
    let headings: Vec<String> = part_weights(made.rounded.as_ref().unwrap(), options)
        .into_iter()
        .map(|part| part.name)
        .collect();
    let kinds = sheet.formula.parts.iter().map(|part| part.kind);
    assert_eq!(headings, kinds.map(name::part_kind).collect::<Vec<_>>());
    assert!(
        !plain_text(&sheet, options).contains("\n ("),
        "a heading is empty"
    );
}
