//! What ingredients' roles, allergens and sources are called.

use crate::engine::larder::{Allergen, Food, Role, Source};

/// What a food is called, its kind included: "Milk, whole".
#[must_use]
pub fn food(food: &Food) -> String {
    match food {
        Food::Listed(listed) if !listed.row().detail.is_empty() => {
            format!("{}, {}", listed.row().name, listed.row().detail)
        }
        Food::Listed(_) | Food::Own(_) => food.name().to_owned(),
    }
}

/// What a role is called.
#[must_use]
pub const fn role(role: Role) -> &'static str {
    match role {
        Role::Flour => "Flour",
        Role::Water => "Water",
        Role::Liquid => "Liquid",
        Role::Fat => "Fat",
        Role::Sugar => "Sugar",
        Role::Salt => "Salt",
        Role::Yeast => "Yeast",
        Role::Dairy => "Dairy",
        Role::Egg => "Egg",
        Role::Chocolate => "Chocolate",
        Role::Inclusion => "Nuts, fruit and flavourings",
    }
}

/// What an allergen is called.
///
/// Source: Regulation (EU) 1169/2011, annex II.
#[must_use]
pub const fn allergen(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => "Wheat (gluten)",
        Allergen::Rye => "Rye (gluten)",
        Allergen::Barley => "Barley (gluten)",
        Allergen::Oats => "Oats (gluten)",
        Allergen::Crustaceans => "Crustaceans",
        Allergen::Eggs => "Eggs",
        Allergen::Fish => "Fish",
        Allergen::Peanuts => "Peanuts",
        Allergen::Soybeans => "Soybeans",
        Allergen::Milk => "Milk",
        Allergen::Almonds => "Almonds",
        Allergen::Hazelnuts => "Hazelnuts",
        Allergen::Walnuts => "Walnuts",
        Allergen::Cashews => "Cashews",
        Allergen::Pecans => "Pecan nuts",
        Allergen::BrazilNuts => "Brazil nuts",
        Allergen::Pistachios => "Pistachio nuts",
        Allergen::Macadamias => "Macadamia nuts",
        Allergen::Celery => "Celery",
        Allergen::Mustard => "Mustard",
        Allergen::Sesame => "Sesame seeds",
        Allergen::Sulphites => "Sulphur dioxide and sulphites",
        Allergen::Lupin => "Lupin",
        Allergen::Molluscs => "Molluscs",
    }
}

/// The allergens of a formula as a sentence, each once, in the order of the law.
#[must_use]
pub fn allergen_list<'a>(found: impl IntoIterator<Item = &'a Allergen>) -> String {
    let found: Vec<&Allergen> = found.into_iter().collect();
    let names: Vec<String> = Allergen::ALL
        .iter()
        .filter(|allergen| found.contains(allergen))
        .map(|one| allergen(*one).to_lowercase().replace("brazil", "Brazil"))
        .collect();
    match names.split_last() {
        None => "None of the listed allergens is in these ingredients by composition.".to_owned(),
        Some((only, [])) => format!("Contains {only}."),
        Some((last, others)) => format!("Contains {} and {last}.", others.join(", ")),
    }
}

/// Where a composition was read.
#[must_use]
pub fn source(source: Source) -> String {
    match source {
        Source::UsdaSr28(number) => {
            format!("USDA Standard Reference, Release 28 (2016), NDB {number:05}")
        }
        Source::Ciqual2020(code) => format!("ANSES, Table Ciqual 2020, food {code}"),
        Source::Label => "the packet’s label, as typed".to_owned(),
    }
}
