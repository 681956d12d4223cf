//! The answers of Batch's rows: one short sentence a row.

use crate::engine::batch::{ScaleSettings, Scaled};
use crate::engine::class::ClassSettings;
use crate::engine::formula::Formula;
use crate::engine::ingredients::Presence;
use crate::engine::nutrition::AllergenRow;
use crate::engine::quantity::Mass;
use crate::engine::tin::Fullness;
use crate::results::batch::allergens::AllergenResults;
use crate::results::batch::nutrition::NutritionResults;
use crate::results::batch::shopping::ShoppingResults;
use crate::results::batch::tins::TinResults;
use crate::results::batch::weighing::{HardToWeigh, weighs_more as weighs_more_of};
use crate::text::{chart::listed, format, format_options::FormatOptions, name, tr, weighing};

/// How much is made: "930 g of dough, 10 × 91.9 g".
#[must_use]
pub fn wanted(scaled: &Scaled, options: FormatOptions) -> String {
    tr!(
        "{dough} of dough, {pieces}",
        dough = format::mass(scaled.mixed, options),
        pieces = weighing::pieces(&scaled.pieces, options)
    )
}

/// Why less is divided than is weighed in, and more chocolate made than the pieces get.
#[must_use]
pub fn lost(scaled: &Scaled, options: FormatOptions) -> String {
    let mass = |mass| format::mass(mass, options);
    tr!(
        "{weighed} is weighed in: {steam} leaves the paste as steam, {left} stays in bowls and on the bench, {needed} is divided. Filling and syrup are made for the dough that is divided, with what stays in bag and bowl added: {share} of what is made.",
        weighed = mass(scaled.weighed_in),
        steam = mass(scaled.steam),
        left = mass(scaled.mixed.less(scaled.needed)),
        needed = mass(scaled.needed),
        share = format::share(scaled.losses.topping, options)
    )
}

/// Why the rows add up to more than the dough to mix, and fillings weigh more than in the formula;
/// `None` where they do not.
#[must_use]
pub fn weighs_more(scaled: &Scaled, options: FormatOptions) -> Option<String> {
    let more = weighs_more_of(scaled);
    let mass = |mass| format::mass(mass, options);
    let steam = more.steam.map(|steam| {
        tr!(
            "{weighed} weighed in, {steam} leaves as steam.",
            weighed = mass(scaled.weighed_in),
            steam = mass(steam)
        )
    });
    let stays = more.stays.map(|stays| {
        tr!(
            "Filling and drizzle: {share} stays in bag and bowl.",
            share = format::share(stays, options)
        )
    });
    let all: Vec<String> = steam.into_iter().chain(stays).collect();
    (!all.is_empty()).then(|| all.join(" "))
}

/// Whether the scale shows every weight: "Steps of 1 g: too coarse for instant yeast".
#[must_use]
pub fn scale(
    hard: &[HardToWeigh],
    formula: &Formula,
    scales: ScaleSettings,
    options: FormatOptions,
) -> String {
    let steps = format::division(scales.main, options);
    let mut foods: Vec<String> = Vec::new();
    for line in hard.iter().filter_map(|hard| formula.line(hard.at)) {
        let food = name::food_short(&line.food).into_owned();
        if !foods.contains(&food) {
            foods.push(food);
        }
    }
    match listed(&foods) {
        Some(foods) => tr!(
            "Steps of {steps}: too coarse for {foods}",
            steps = steps,
            foods = foods
        ),
        None => tr!("Steps of {steps}: it shows every weight", steps = steps),
    }
}

/// What comes from the oven: "10 × 82.2 g, 822 g in all".
#[must_use]
pub fn baked(scaled: &Scaled, options: FormatOptions) -> String {
    tr!(
        "{count} × {each}, {all} in all",
        count = format::count(scaled.pieces.count.get(), options),
        each = format::mass(scaled.baked_each, options),
        all = format::mass(scaled.baked, options)
    )
}

/// The tin and the dough in it: "Loaf tin: 919 g is right in it".
#[must_use]
pub fn tin(tins: Option<&TinResults>, options: FormatOptions) -> String {
    let Some(tins) = tins else {
        return tr!("No tin").to_owned();
    };
    let kind = name::tin_kind(tins.used.tins.tin.kind());
    let Ok(filling) = &tins.filling else {
        return kind.to_owned();
    };
    let beyond = format::mass(filling.beyond_usual(), options);
    match filling.fullness {
        Some(Fullness::TooFull { .. }) => {
            tr!(
                "{kind}: {beyond} too much in each",
                kind = kind,
                beyond = beyond
            )
        }
        Some(Fullness::TooEmpty { .. }) => {
            tr!(
                "{kind}: {beyond} too little in each",
                kind = kind,
                beyond = beyond
            )
        }
        Some(Fullness::Right) => tr!(
            "{kind}: {value} is right in it",
            kind = kind,
            value = format::mass(filling.there_each.unwrap_or_default(), options)
        ),
        None => kind.to_owned(),
    }
}

/// What to buy: "14 things, 12.30 kr used".
#[must_use]
pub fn shopping(found: &ShoppingResults, currency: &str, options: FormatOptions) -> String {
    let count = found.list.items.len();
    let things = if count == 1 {
        tr!("one thing to buy").to_owned()
    } else {
        tr!("{count} things to buy", count = count)
    };
    match found.used {
        Some(used) => tr!(
            "{things}, {cost} used",
            things = things,
            cost = format::money(used, currency, options)
        ),
        None => things,
    }
}

/// The energy of a hundred grams: "1180 kJ / 280 kcal in 100 g".
#[must_use]
pub fn nutrition(found: &NutritionResults, options: FormatOptions) -> String {
    tr!(
        "{energy} in 100 g",
        energy = format::declared_energy(found.hundred_grams.energy, options)
    )
}

/// The allergens by name: "Wheat (gluten), milk; perhaps soya".
#[must_use]
pub fn allergens(found: &AllergenResults) -> String {
    let names = |wanted: &dyn Fn(&&AllergenRow) -> bool| {
        let rows = found.rows.iter().filter(wanted);
        let names: Vec<String> = rows
            .map(|row| name::allergen_in_list(row.allergen))
            .collect();
        listed(&names)
    };
    let sure = names(&|row| row.presence() == Presence::Contains);
    let perhaps = names(&|row| row.presence() != Presence::Contains);
    match (sure, perhaps) {
        (Some(sure), Some(perhaps)) => tr!(
            "Contains {sure}; perhaps {perhaps}",
            sure = sure,
            perhaps = perhaps
        ),
        (Some(sure), None) => tr!("Contains {sure}", sure = sure),
        (None, Some(perhaps)) => tr!("Perhaps {perhaps}", perhaps = perhaps),
        (None, None) => tr!("None known").to_owned(),
    }
}

/// The class: "Students: 12. Loaves: 13 of 450 g"; where that does not suit the tin, with what the
/// tin takes.
#[must_use]
pub fn class(
    settings: &ClassSettings,
    tin: Option<(Mass, Mass)>,
    options: FormatOptions,
) -> String {
    let loaf = format::mass(settings.loaf, options);
    let students = format::count(settings.students.get(), options);
    let loaves = format::count(settings.loaves_in_all(), options);
    match tin {
        None => tr!(
            "Students: {students}. Loaves: {loaves} of {loaf}",
            students = students,
            loaves = loaves,
            loaf = loaf
        ),
        Some((takes, _)) => tr!(
            "Students: {students}. Loaves: {loaves} of {loaf}; the tin takes {tin}",
            students = students,
            loaves = loaves,
            loaf = loaf,
            tin = format::mass(takes, options)
        ),
    }
}
