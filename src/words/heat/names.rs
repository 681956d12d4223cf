//! Who is in the bowl, by name.

use crate::engine::formula::Formula;
use crate::engine::heat::Handling;
use crate::engine::kitchen::{Bowlful, Giver, Whence};
use crate::words::{picture::listed, say};

/// The liquids whose temperature can be chosen: "whole milk", or "liquid" where there are several.
pub(super) fn liquid_name(bowlful: &Bowlful) -> String {
    let liquids = bowlful
        .dough
        .items
        .iter()
        .filter(|item| matches!(item.handling, Handling::Water | Handling::Liquid));
    let mut names: Vec<String> = liquids.map(|item| item.part.of.to_lowercase()).collect();
    names.dedup();
    match names.as_slice() {
        [only] => only.clone(),
        _ => say!("liquid").to_owned(),
    }
}

/// The pastes and preferments that can stand out: "Scald and Night dough"; `None` without any.
#[must_use]
pub fn standing_names(bowlful: &Bowlful) -> Option<String> {
    let standing = bowlful
        .dough
        .items
        .iter()
        .filter(|item| matches!(item.handling, Handling::Standing(_)));
    let names: Vec<String> = standing
        .map(|item| item.part.of.clone().into_owned())
        .collect();
    listed(&names)
}

/// Who brings heat or takes it.
#[must_use]
pub fn giver(giver: Giver, formula: &Formula, bowlful: &Bowlful) -> String {
    match giver {
        Giver::Stream(stream) => {
            let own = formula.streams.get(stream);
            own.map(|own| own.name.clone()).unwrap_or_default()
        }
        Giver::Flour => say!("flour").to_owned(),
        Giver::Liquid => liquid_name(bowlful),
        Giver::Rest => rest(bowlful),
        Giver::Bowl => say!("bowl").to_owned(),
        Giver::Hydration => say!("flour taking up water").to_owned(),
        Giver::Mixer => say!("mixer").to_owned(),
    }
}

/// The one other thing there is, or "the rest".
fn rest(bowlful: &Bowlful) -> String {
    let others = bowlful
        .dough
        .items
        .iter()
        .zip(&bowlful.from)
        .filter(|(item, from)| {
            matches!(from, Whence::Line(_)) && matches!(item.handling, Handling::AsItIs)
        });
    let names: Vec<String> = others
        .map(|(item, _)| item.part.of.to_lowercase())
        .collect();
    match names.as_slice() {
        [only] => only.clone(),
        _ => say!("the rest").to_owned(),
    }
}
