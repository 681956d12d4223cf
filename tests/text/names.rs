//! Everything has a name, and no two of a kind the same.

use super::format_options::british;
use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::chocolate::{Consistency, KeepsAs};
use softcrumb::engine::formula::{Bread, Figure, LineAt, PartKind, WhatIf};
use softcrumb::engine::ingredients::{Allergen, Constituent, LabelLine, Listed, Role};
use softcrumb::engine::quantity::{Factor, Mass};
use softcrumb::sheet::Place;
use softcrumb::text::name;
use std::collections::HashSet;
use std::num::NonZeroU16;

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
    all_differ([KeepsAs::FreshFood, KeepsAs::MouldsSlowly].map(name::keeps_as));
    all_differ(LabelLine::ALL.map(name::label_line));
    all_differ(Constituent::ALL.map(name::component));
    all_differ(WhatIf::ALL.map(name::what_if));
    all_differ(Place::ALL.map(name::place));
    all_differ(Place::ALL.map(name::place_asks));
}

#[test]
fn batch_targets_are_named() {
    let g = |grams| Mass::from_grams(grams).unwrap();
    let n = |count| NonZeroU16::new(count).unwrap();
    let at = LineAt { part: 0, line: 0 };
    for (wanted, words) in [
        (BatchTarget::Times(Factor::ONE), "×_1 the formula"),
        (BatchTarget::Dough(g(900.0)), "900_g of dough"),
        (
            BatchTarget::Pieces {
                count: n(9),
                each: g(70.0),
            },
            "9_pieces of 70_g",
        ),
        (
            BatchTarget::Pieces {
                count: n(1),
                each: g(70.0),
            },
            "1_piece of 70_g",
        ),
        (
            BatchTarget::FlourOnHand(g(640.0)),
            "as much as 640_g of flour makes",
        ),
        (
            BatchTarget::OnHand { at, mass: g(180.0) },
            "as much as 180_g on hand makes",
        ),
        (
            BatchTarget::Class {
                students: n(6),
                loaves: n(2),
                loaf: g(480.0),
            },
            "6_students, 2_loaves each, 480_g of dough a loaf",
        ),
    ] {
        assert_eq!(
            name::wanted(&wanted, british()).replace('\u{A0}', "_"),
            words
        );
        assert!(!name::wanted_kind(&wanted).is_empty());
    }
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

#[test]
fn every_ingredient_names_its_source() {
    for listed in Listed::all() {
        assert!(name::source(listed.row().source).len() > 20);
    }
}
