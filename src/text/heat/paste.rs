//! The paste: whether it gets hot enough, and what to do where it does not.

use crate::engine::heat::{CookedFlour, CookedPaste, PasteLimit, PasteRemedy};
use crate::results::heat::{PasteChange, paste_change};
use crate::text::{
    Advice,
    chart::{capitalized, stopped},
    format,
    format_options::FormatOptions,
    language::{text, tr_dynamic},
    name, tr, tr_noop,
};

const SOURCE: &str =
    tr_noop!("balance of heat; cooking ranges of each grain; water for starch: Donovan 1979");

/// How hot the paste gets and how much of its starch cooks.
#[must_use]
pub fn paste(cooked: &CookedPaste, options: FormatOptions) -> Advice {
    let hot = format::temperature(cooked.temperature, options);
    let share = format::share(cooked.cooked, options);
    if cooked.remedies.is_empty() {
        return Advice {
            means: tr!(
                "The paste comes to {hot} and {share} of its starch cooks.",
                hot = hot,
                share = share
            )
            .into(),
            to_do: tr!("Stir fast, cover it, and let it rest.").into(),
            source: text(SOURCE).into(),
        };
    }
    let steps: Vec<String> = cooked
        .remedies
        .iter()
        .map(|remedy| paste_remedy(remedy, options))
        .collect();
    Advice {
        means: tr!(
            "The paste comes only to {hot}: {share} of its starch cooks.",
            hot = hot,
            share = share
        )
        .into(),
        to_do: stopped(&steps.join(tr!(", or "))).into(),
        source: text(SOURCE).into(),
    }
}

/// One thing that mends a paste, to be put into a sentence.
#[must_use]
pub fn paste_remedy(remedy: &PasteRemedy, options: FormatOptions) -> String {
    match *remedy {
        PasteRemedy::WarmBowl { to } => {
            tr!(
                "warm the bowl to {value} first",
                value = format::temperature(to.up_to_half_degree(), options)
            )
        }
        PasteRemedy::MoreHeat { .. } => {
            tr!(
                "pour {value} more, boiling, for its heat",
                value = to_pour(remedy, options)
            )
        }
        PasteRemedy::MoreWater { .. } => tr!(
            "pour {value} more, for the starch lacks water",
            value = to_pour(remedy, options)
        ),
        PasteRemedy::Stove { to, .. } => tr!(
            "finish it on the stove, stirring, to {value}",
            value = format::temperature(to, options)
        ),
    }
}

/// The liquid that a tap would add, so that word and deed are one.
fn to_pour(remedy: &PasteRemedy, options: FormatOptions) -> String {
    match paste_change(remedy) {
        Some(PasteChange::Liquid(more)) => format::mass(more, options),
        Some(PasteChange::Bowl(_)) | None => String::new(),
    }
}

/// A remedy as a line of its own.
#[must_use]
pub fn paste_remedy_line(remedy: &PasteRemedy, options: FormatOptions) -> String {
    stopped(&capitalized(&paste_remedy(remedy, options)))
}

/// How one flour fares, and what holds it back.
#[must_use]
pub fn flour_cooks(flour: &CookedFlour, options: FormatOptions) -> String {
    let cooks = flour.grain.cooks();
    let range = format::temperature_range(cooks.begins, cooks.ends, options);
    let why = match flour.limit {
        PasteLimit::None => tr!("all of it cooks").to_owned(),
        PasteLimit::Temperature => tr!("it is not hot enough for the rest").to_owned(),
        PasteLimit::Water => tr!("there is too little water for the rest").to_owned(),
    };
    tr!(
        "{first}: {second} cooked. {third} starch cooks at {range}; {why}.",
        first = tr_dynamic(&flour.of),
        second = format::share(flour.cooked, options),
        third = capitalized(name::grain(flour.grain)),
        range = range,
        why = why
    )
}
