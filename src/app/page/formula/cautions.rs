//! What to know about the formula before making it.

use leptos::prelude::*;

use crate::app::part::AdviceCard;
use crate::app::state::{State, memo};
use crate::engine::formula::{Caution, cautions};
use crate::words::{Advice, caution, name};

/// Cautions about the formula, each one with what to do.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = State::here();
    let found = memo(move || {
        let manner = state.manner.get();
        state.with(|sheet| {
            let found = cautions(&sheet.formula, sheet.bread).unwrap_or_default();
            found
                .iter()
                .map(|one| (title(one), caution::formula(one, &sheet.formula, manner)))
                .collect::<Vec<(String, Advice)>>()
        })
    });
    move || {
        found
            .get()
            .into_iter()
            .map(|(title, advice)| view! { <AdviceCard title advice=Signal::stored(Some(advice)) /> })
            .collect_view()
    }
}

/// What a caution is about.
fn title(caution: &Caution) -> String {
    match caution {
        Caution::Outside { usual, .. } => name::figure(usual.figure).to_owned(),
        Caution::SugarSlowsYeast { .. } => "Sugar slows yeast".to_owned(),
        Caution::SaltSlowsYeast { .. } => "Salt slows yeast".to_owned(),
        Caution::MuchMilkPowder { .. } => "Much milk powder".to_owned(),
        Caution::PasteTooDry { .. } => "A dry paste".to_owned(),
        Caution::RawFlour => "Raw flour".to_owned(),
    }
}
