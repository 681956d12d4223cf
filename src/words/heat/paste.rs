//! The paste: whether it gets hot enough, and what to do where it does not.

use crate::engine::heat::{CookedFlour, CookedPaste, Limit, PasteRemedy};
use crate::words::{
    Advice, language::text, manner::Manner, message, name, picture::begun, say, write,
};

const SOURCE: &str =
    message!("balance of heat; cooking ranges of each grain; water for starch: Donovan 1979");

/// How hot the paste gets and how much of its starch cooks.
#[must_use]
pub fn paste(cooked: &CookedPaste, manner: Manner) -> Advice {
    let hot = write::temperature(cooked.temperature, manner);
    let share = write::share(cooked.cooked, manner);
    if cooked.remedies.is_empty() {
        return Advice {
            means: say!(
                "The paste comes to {hot} and {share} of its starch cooks.",
                hot,
                share
            )
            .into(),
            to_do: say!("Stir fast, cover it, and let it rest.").into(),
            source: text(SOURCE).into(),
        };
    }
    let ways: Vec<String> = cooked
        .remedies
        .iter()
        .map(|remedy| paste_remedy(remedy, manner))
        .collect();
    Advice {
        means: say!(
            "The paste comes only to {hot}: {share} of its starch cooks.",
            hot,
            share
        )
        .into(),
        to_do: format!("{}.", begun(&ways.join(say!(", or ")))).into(),
        source: text(SOURCE).into(),
    }
}

/// One thing that mends a paste, to be put into a sentence.
#[must_use]
pub fn paste_remedy(remedy: &PasteRemedy, manner: Manner) -> String {
    match *remedy {
        PasteRemedy::WarmBowl { to } => {
            say!("warm the bowl to {} first", write::temperature(to, manner))
        }
        PasteRemedy::MoreHeat { liquid } => {
            say!(
                "pour {} more, boiling, for its heat",
                write::mass(liquid, manner)
            )
        }
        PasteRemedy::MoreWater { liquid } => say!(
            "pour {} more, for the starch lacks water",
            write::mass(liquid, manner)
        ),
        PasteRemedy::Stove { to, .. } => say!(
            "finish it on the stove, stirring, to {}",
            write::temperature(to, manner)
        ),
    }
}

/// How one flour fares, and what holds it back.
#[must_use]
pub fn flour_cooks(flour: &CookedFlour, manner: Manner) -> String {
    let cooks = flour.grain.cooks();
    let range = write::temperature_range(cooks.begins, cooks.ends, manner);
    let why = match flour.limit {
        Limit::None => say!("all of it cooks").to_owned(),
        Limit::Temperature => say!("it is not hot enough for the rest").to_owned(),
        Limit::Water => say!("there is too little water for the rest").to_owned(),
    };
    say!(
        "{}: {} cooked. {} starch cooks at {range}; {why}.",
        flour.of,
        write::share(flour.cooked, manner),
        begun(name::grain(flour.grain)),
        range,
        why
    )
}
