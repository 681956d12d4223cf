//! What to know about a formula.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::formula::{Caution, Formula, Usual};
use crate::engine::quantity::Share;
use crate::words::{manner::Manner, message, name, say, write};

/// Less gas from 5 % of sugar, and from salt.
const MAREK: &str = message!("Marek and Bushuk 1967, Cereal Chemistry 44:300–307");

/// Water that starch needs.
const DONOVAN: &str = message!("Donovan 1979, Biopolymers 18:263–275");

/// What a caution about a formula says.
#[must_use]
pub fn formula(caution: &Caution, formula: &Formula, manner: Manner) -> Advice {
    match *caution {
        Caution::Outside { usual, value } => outside(&usual, value, manner),
        Caution::SugarSlowsYeast {
            sugar,
            begins,
            certain,
        } => much_sugar([sugar, begins, certain].map(|share| write::share(share, manner))),
        Caution::SaltSlowsYeast { salt, begins } => {
            much_salt([salt, begins].map(|share| write::share(share, manner)))
        }
        Caution::MuchMilkPowder { powder, begins } => {
            much_milk_powder([powder, begins].map(|share| write::share(share, manner)))
        }
        Caution::PasteTooDry {
            stream,
            water_to_starch,
            complete,
        } => dry_paste(
            &stream_name(formula, stream),
            [water_to_starch, complete].map(|share| ratio(share, manner)),
        ),
        Caution::RawFlour => super::safety(super::Step::RawDough, manner),
    }
}

fn much_sugar([sugar, begins, certain]: [String; 3]) -> Advice {
    Advice::new(
        say!(
            "Sugar is {sugar} of the flour. It begins to hold yeast back at {begins}, and surely \
             does above {certain}.",
            sugar,
            begins,
            certain
        ),
        say!(
            "Count on a longer rise, use more yeast or one made for sweet doughs, or take some sugar \
         out."
        ),
        MAREK,
    )
}

fn much_salt([salt, begins]: [String; 2]) -> Advice {
    Advice::new(
        say!(
            "Salt is {salt} of the flour; above {begins} it slows yeast down and tastes strong.",
            salt,
            begins
        ),
        say!("Check its weight, or count on a longer rise."),
        MAREK,
    )
}

fn much_milk_powder([powder, begins]: [String; 2]) -> Advice {
    Advice::new(
        say!(
            "Milk powder is {powder} of the flour; above {begins} the dough tightens and the \
             crust browns early.",
            powder,
            begins
        ),
        say!("Add a little water, and cover the loaf once it is brown."),
        COMMON_PRACTICE,
    )
}

fn dry_paste(paste: &str, [water, complete]: [String; 2]) -> Advice {
    Advice::new(
        say!(
            "{paste} has {water} g of water to 1 g of starch. Below {complete} g some of the \
             starch stays raw, however hot it gets.",
            paste,
            water,
            complete
        ),
        say!("Move water from the final dough into the paste, or expect it to hold less."),
        DONOVAN,
    )
}

/// A figure outside what is usual for the bread.
fn outside(usual: &Usual, value: Share, manner: Manner) -> Advice {
    let (side, to_do) = if value < usual.low {
        (say!("less"), say!("Check that nothing was left out"))
    } else {
        (say!("more"), say!("Check for a weight typed too large"))
    };
    Advice::new(
        say!(
            "{}: {} of flour, {side} than the {} usual in this bread.",
            name::figure(usual.figure),
            write::share(value, manner),
            side,
            write::share_range(usual.low, usual.high, manner)
        ),
        say!(
            "{to_do}, and that the kind of bread is the right one. If it is meant, go on.",
            to_do
        ),
        usual.source,
    )
}

/// What the user calls a stream.
fn stream_name(formula: &Formula, stream: usize) -> String {
    let name = formula.streams.get(stream).map(|stream| stream.name.trim());
    match name {
        Some(name) if !name.is_empty() => format!("“{name}”"),
        Some(_) | None => say!("The paste").to_owned(),
    }
}

/// So many grams to one gram.
fn ratio(share: Share, manner: Manner) -> String {
    write::plain(share.fraction(), 2, manner.numbers)
}
