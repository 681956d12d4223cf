//! What ingredients' roles, allergens and sources are called.

use crate::engine::larder::{Allergen, Food, Role, Source};
use std::borrow::Cow;

use crate::words::{language::text, say};

/// What a food is called, its kind included: "Milk, whole".
#[must_use]
pub fn food(food: &Food) -> String {
    match food {
        Food::Listed(listed) if !listed.row().detail.is_empty() => {
            let row = listed.row();
            say!("{name}, {detail}", text(row.name), text(row.detail))
        }
        Food::Listed(_) | Food::Own(_) => food_short(food).into_owned(),
    }
}

/// What a food is called in short: "Milk".
#[must_use]
pub fn food_short(food: &Food) -> Cow<'static, str> {
    match food {
        Food::Listed(listed) => Cow::Borrowed(text(listed.row().name)),
        Food::Own(_) => Cow::Owned(food.name().to_owned()),
    }
}

/// What a role is called.
#[must_use]
pub fn role(role: Role) -> &'static str {
    match role {
        Role::Flour => say!("Flour"),
        Role::Water => say!("Water"),
        Role::Liquid => say!("Liquid"),
        Role::Fat => say!("Fat"),
        Role::Sugar => say!("Sugar"),
        Role::Salt => say!("Salt"),
        Role::Yeast => say!("Yeast"),
        Role::Dairy => say!("Dairy"),
        Role::Egg => say!("Egg"),
        Role::Chocolate => say!("Chocolate"),
        Role::Inclusion => say!("Nuts, fruit and flavourings"),
    }
}

/// What an allergen is called.
///
/// Source: Regulation (EU) 1169/2011, annex II.
#[must_use]
pub fn allergen(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => say!("Wheat (gluten)"),
        Allergen::Rye => say!("Rye (gluten)"),
        Allergen::Barley => say!("Barley (gluten)"),
        Allergen::Oats => say!("Oats (gluten)"),
        Allergen::Crustaceans => say!("Crustaceans"),
        Allergen::Eggs => say!("Eggs"),
        Allergen::Fish => say!("Fish"),
        Allergen::Peanuts => say!("Peanuts"),
        Allergen::Soybeans => say!("Soybeans"),
        Allergen::Milk => say!("Milk"),
        Allergen::Almonds => say!("Almonds"),
        Allergen::Hazelnuts => say!("Hazelnuts"),
        Allergen::Walnuts => say!("Walnuts"),
        Allergen::Cashews => say!("Cashews"),
        Allergen::Pecans => say!("Pecan nuts"),
        Allergen::BrazilNuts => say!("Brazil nuts"),
        Allergen::Pistachios => say!("Pistachio nuts"),
        Allergen::Macadamias => say!("Macadamia nuts"),
        Allergen::Celery => say!("Celery"),
        Allergen::Mustard => say!("Mustard"),
        Allergen::Sesame => say!("Sesame seeds"),
        Allergen::Sulphites => say!("Sulphur dioxide and sulphites"),
        Allergen::Lupin => say!("Lupin"),
        Allergen::Molluscs => say!("Molluscs"),
    }
}

/// The allergens of a formula as a sentence, each once, in the order of the law.
#[must_use]
pub fn allergen_list<'a>(found: impl IntoIterator<Item = &'a Allergen>) -> String {
    let found: Vec<&Allergen> = found.into_iter().collect();
    let names: Vec<String> = Allergen::ALL
        .iter()
        .filter(|allergen| found.contains(allergen))
        .map(|one| {
            allergen(*one)
                .to_lowercase()
                .replace("brazil", "Brazil")
                .replace("brasil", "Brasil")
        })
        .collect();
    match names.split_last() {
        None => {
            say!("None of the listed allergens is in these ingredients by composition.").to_owned()
        }
        Some((only, [])) => say!("Contains {only}.", only),
        Some((last, others)) => say!("Contains {} and {last}.", others.join(say!(", ")), last),
    }
}

/// Where a composition was read.
#[must_use]
pub fn source(source: Source) -> String {
    match source {
        Source::UsdaSr28(number) => {
            say!(
                "USDA Standard Reference, Release 28 (2016), NDB {number}",
                format!("{number:05}")
            )
        }
        Source::Ciqual2020(code) => say!("ANSES, Table Ciqual 2020, food {code}", code),
        Source::Label => say!("the packet’s label, as typed").to_owned(),
    }
}
