//! Who is in the bowl, by name.

use crate::engine::formula::Formula;
use crate::engine::heat::LiquidUse;
use crate::results::heat::{HeatSource, LoadSource, MixerLoad};
use crate::text::{chart::listed, language::tr_dynamic, tr};

/// The liquids whose temperature can be chosen: "whole milk", or "liquid" where there are several.
pub(super) fn liquid_name(load: &MixerLoad) -> String {
    let liquids = load
        .dough
        .items
        .iter()
        .filter(|item| matches!(item.handling, LiquidUse::Water | LiquidUse::Liquid));
    let mut names: Vec<String> = liquids
        .map(|item| tr_dynamic(&item.component.of).to_lowercase())
        .collect();
    names.dedup();
    match names.as_slice() {
        [only] => only.clone(),
        _ => tr!("liquid").to_owned(),
    }
}

/// The pastes and preferments that can stand out: "Scald and Night dough"; `None` without any.
#[must_use]
pub fn standing_names(load: &MixerLoad) -> Option<String> {
    let standing = load
        .dough
        .items
        .iter()
        .filter(|item| matches!(item.handling, LiquidUse::Standing(_)));
    let names: Vec<String> = standing
        .map(|item| item.component.of.clone().into_owned())
        .collect();
    listed(&names)
}

/// Who brings heat or takes it.
#[must_use]
pub fn giver(giver: HeatSource, formula: &Formula, load: &MixerLoad) -> String {
    match giver {
        HeatSource::Part(part) => {
            let own = formula.parts.get(part);
            own.map(|own| own.name.clone()).unwrap_or_default()
        }
        HeatSource::Flour => tr!("flour").to_owned(),
        HeatSource::Liquid => liquid_name(load),
        HeatSource::Rest => rest(load),
        HeatSource::Bowl => tr!("bowl").to_owned(),
        HeatSource::Hydration => tr!("flour taking up water").to_owned(),
        HeatSource::Mixer => tr!("mixer").to_owned(),
        HeatSource::Room => tr!("room").to_owned(),
    }
}

/// The one other thing there is, or "the rest".
fn rest(load: &MixerLoad) -> String {
    let others = load
        .dough
        .items
        .iter()
        .zip(&load.from)
        .filter(|(item, from)| {
            matches!(from, LoadSource::Line(_)) && matches!(item.handling, LiquidUse::AsItIs)
        });
    let names: Vec<String> = others
        .map(|(item, _)| tr_dynamic(&item.component.of).to_lowercase())
        .collect();
    match names.as_slice() {
        [only] => only.clone(),
        _ => tr!("the rest").to_owned(),
    }
}
