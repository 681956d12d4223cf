//! What ingredients' roles, allergens and sources are called.

use crate::engine::formula::{Formula, LineAt};
use crate::engine::ingredients::{Allergen, Food, Role};
use std::borrow::Cow;

use crate::text::{language::text, tr};

/// What a food is called, its kind included: "Milk, whole".
#[must_use]
pub fn food(food: &Food) -> String {
    match food {
        Food::Listed(listed) if !listed.row().detail.is_empty() => {
            let row = listed.row();
            tr!(
                "{name}, {detail}",
                name = text(row.name),
                detail = text(row.detail)
            )
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

/// What the food of a line is called among those of its formula: in short, with its kind where another
/// food of the formula has the same short name; `None` where there is no such line.
#[must_use]
pub fn food_of(formula: &Formula, at: LineAt) -> Option<String> {
    let own = &formula.line(at)?.food;
    let short = food_short(own);
    let is_ambiguous = formula
        .lines()
        .any(|(_, line)| line.food != *own && food_short(&line.food) == short);
    Some(if is_ambiguous {
        food(own)
    } else {
        short.into_owned()
    })
}

/// What a role is called.
#[must_use]
pub fn role(role: Role) -> &'static str {
    match role {
        Role::Flour => tr!("Flour"),
        Role::Water => tr!("Water"),
        Role::Liquid => tr!("Liquid"),
        Role::Fat => tr!("Fat"),
        Role::Sugar => tr!("Sugar"),
        Role::Salt => tr!("Salt"),
        Role::Yeast => tr!("Yeast"),
        Role::Dairy => tr!("Dairy"),
        Role::Egg => tr!("Egg"),
        Role::Chocolate => tr!("Chocolate"),
        Role::Inclusion => tr!("Nuts, fruit and flavourings"),
    }
}

/// What an allergen is called.
///
/// Source: Regulation (EU) 1169/2011, annex II.
#[must_use]
pub fn allergen(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::Wheat => tr!("Wheat (gluten)"),
        Allergen::Rye => tr!("Rye (gluten)"),
        Allergen::Barley => tr!("Barley (gluten)"),
        Allergen::Oats => tr!("Oats (gluten)"),
        Allergen::Crustaceans => tr!("Crustaceans"),
        Allergen::Eggs => tr!("Eggs"),
        Allergen::Fish => tr!("Fish"),
        Allergen::Peanuts => tr!("Peanuts"),
        Allergen::Soybeans => tr!("Soybeans"),
        Allergen::Milk => tr!("Milk"),
        Allergen::Almonds => tr!("Almonds"),
        Allergen::Hazelnuts => tr!("Hazelnuts"),
        Allergen::Walnuts => tr!("Walnuts"),
        Allergen::Cashews => tr!("Cashews"),
        Allergen::Pecans => tr!("Pecan nuts"),
        Allergen::BrazilNuts => tr!("Brazil nuts"),
        Allergen::Pistachios => tr!("Pistachio nuts"),
        Allergen::Macadamias => tr!("Macadamia nuts"),
        Allergen::Celery => tr!("Celery"),
        Allergen::Mustard => tr!("Mustard"),
        Allergen::Sesame => tr!("Sesame seeds"),
        Allergen::Sulphites => tr!("Sulphur dioxide and sulphites"),
        Allergen::Lupin => tr!("Lupin"),
        Allergen::Molluscs => tr!("Molluscs"),
    }
}

/// What an allergen is called inside a sentence.
#[must_use]
pub fn allergen_in_list(one: Allergen) -> String {
    allergen(one)
        .to_lowercase()
        .replace("brazil", "Brazil")
        .replace("brasil", "Brasil")
}

/// The allergens of a formula as a sentence, each once, in the order of the law.
#[must_use]
pub fn allergen_list<'a>(found: impl IntoIterator<Item = &'a Allergen>) -> String {
    let found: Vec<&Allergen> = found.into_iter().collect();
    let names: Vec<String> = Allergen::ALL
        .iter()
        .filter(|allergen| found.contains(allergen))
        .map(|one| allergen_in_list(*one))
        .collect();
    match names.split_last() {
        None => {
            tr!("None of the listed allergens is in these ingredients by composition.").to_owned()
        }
        Some((only, [])) => tr!("Contains {only}.", only = only),
        Some((last, others)) => tr!(
            "Contains {value} and {last}.",
            value = others.join(tr!(", ")),
            last = last
        ),
    }
}
