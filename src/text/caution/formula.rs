//! What to know about a formula.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::formula::{Caution, Formula, Usual};
use crate::engine::quantity::Share;
use crate::text::{format, format_options::FormatOptions, name, tr, tr_noop};

/// Less gas from 5 % of sugar, and from salt.
const MAREK: &str = tr_noop!("Marek and Bushuk 1967, Cereal Chemistry 44:300–307");

/// Water that starch needs.
const DONOVAN: &str = tr_noop!("Donovan 1979, Biopolymers 18:263–275");

/// What a caution about a formula says.
#[must_use]
pub fn formula(caution: &Caution, formula: &Formula, options: FormatOptions) -> Advice {
    match *caution {
        Caution::Outside { usual, value } => outside(&usual, value, options),
        Caution::SugarSlowsYeast {
            sugar,
            begins,
            certain,
        } => much_sugar([sugar, begins, certain].map(|share| format::share(share, options))),
        Caution::SaltSlowsYeast { salt, begins } => {
            much_salt([salt, begins].map(|share| format::share(share, options)))
        }
        Caution::MuchMilkPowder { powder, begins } => {
            much_milk_powder([powder, begins].map(|share| format::share(share, options)))
        }
        Caution::PasteTooDry {
            part,
            water_to_starch,
            complete,
        } => dry_paste(
            &part_name(formula, part),
            [water_to_starch, complete].map(|share| ratio(share, options)),
        ),
        Caution::RawFlour => super::safety(super::Hazard::RawDough, options),
    }
}

fn much_sugar([sugar, begins, certain]: [String; 3]) -> Advice {
    Advice::new(
        tr!(
            "Sugar is {sugar} of the flour. It begins to hold yeast back at {begins}, and surely \
             does above {certain}.",
            sugar = sugar,
            begins = begins,
            certain = certain
        ),
        tr!(
            "Count on a longer rise, use more yeast or one made for sweet doughs, or take some sugar \
         out."
        ),
        MAREK,
    )
}

fn much_salt([salt, begins]: [String; 2]) -> Advice {
    Advice::new(
        tr!(
            "Salt is {salt} of the flour; above {begins} it slows yeast down and tastes strong.",
            salt = salt,
            begins = begins
        ),
        tr!("Check its weight, or count on a longer rise."),
        MAREK,
    )
}

fn much_milk_powder([powder, begins]: [String; 2]) -> Advice {
    Advice::new(
        tr!(
            "Milk powder is {powder} of the flour; above {begins} the dough tightens and the \
             crust browns early.",
            powder = powder,
            begins = begins
        ),
        tr!("Add a little water, and cover the loaf once it is brown."),
        COMMON_PRACTICE,
    )
}

fn dry_paste(paste: &str, [water, complete]: [String; 2]) -> Advice {
    Advice::new(
        tr!(
            "{paste} has {water} g of water to 1 g of starch. Below {complete} g some of the \
             starch stays raw, however hot it gets.",
            paste = paste,
            water = water,
            complete = complete
        ),
        tr!("Move water from the final dough into the paste, or expect it to hold less."),
        DONOVAN,
    )
}

/// A figure outside what is usual for the bread.
fn outside(usual: &Usual, value: Share, options: FormatOptions) -> Advice {
    let (side, to_do) = if value < usual.low {
        (tr!("less"), tr!("Check that nothing was left out"))
    } else {
        (tr!("more"), tr!("Check for a weight typed too large"))
    };
    Advice::new(
        tr!(
            "{first}: {second} of flour, {side} than the {third} usual in this bread.",
            first = name::figure(usual.figure),
            second = format::share(value, options),
            side = side,
            third = format::share_range(usual.low, usual.high, options)
        ),
        tr!(
            "{to_do}, and that the kind of bread is the right one. If it is intended, go on.",
            to_do = to_do
        ),
        usual.source,
    )
}

/// What the user calls a part.
fn part_name(formula: &Formula, part: usize) -> String {
    let name = formula.parts.get(part).map(|part| part.name.trim());
    match name {
        Some(name) if !name.is_empty() => format!("“{name}”"),
        Some(_) | None => tr!("The paste").to_owned(),
    }
}

/// So many grams to one gram.
fn ratio(share: Share, options: FormatOptions) -> String {
    format::plain(share.fraction(), 2, options.numbers)
}

/// A caution about a formula in one short line.
#[must_use]
pub fn formula_answer(caution: &Caution, options: FormatOptions) -> String {
    let share = |share: Share| format::share(share, options);
    match *caution {
        Caution::Outside { usual, value } => tr!(
            "{value} of flour, usual {range}",
            value = share(value),
            range = format::share_range(usual.low, usual.high, options)
        ),
        Caution::SugarSlowsYeast { sugar, .. } => {
            tr!(
                "{value} of flour: expect a longer rise",
                value = share(sugar)
            )
        }
        Caution::SaltSlowsYeast { salt, .. } => {
            tr!(
                "{value} of flour: expect a longer rise",
                value = share(salt)
            )
        }
        Caution::MuchMilkPowder { powder, .. } => {
            tr!("{value} of flour: a tighter dough", value = share(powder))
        }
        Caution::PasteTooDry {
            water_to_starch, ..
        } => tr!(
            "{value} g of water to 1 g of starch: some stays raw",
            value = ratio(water_to_starch, options)
        ),
        Caution::RawFlour => super::safety_line(super::Hazard::RawDough, options),
    }
}

/// What a caution about a formula is about.
#[must_use]
pub fn formula_title(caution: &Caution) -> String {
    match caution {
        Caution::Outside { usual, .. } => name::figure(usual.figure).to_owned(),
        Caution::SugarSlowsYeast { .. } => tr!("Sugar slows yeast").to_owned(),
        Caution::SaltSlowsYeast { .. } => tr!("Salt slows yeast").to_owned(),
        Caution::MuchMilkPowder { .. } => tr!("Much milk powder").to_owned(),
        Caution::PasteTooDry { .. } => tr!("A dry paste").to_owned(),
        Caution::RawFlour => tr!("Raw flour").to_owned(),
    }
}
