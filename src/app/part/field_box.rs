//! Field box: the number box of a [`Field`].

use leptos::prelude::*;

use super::NumberBox;
use super::field::{Field, FieldData};
use crate::app::state::{memo, use_app_state};
use crate::text::{ErrorText, language::text};

/// The box of a number. A text that cannot be stored is reported at the box and changes nothing.
#[component]
pub fn FieldBox<T: FieldData>(
    /// Which number.
    field: Field<T>,
) -> impl IntoView {
    let state = use_app_state();
    let source = T::source();
    let get = move |data: &T| {
        let options = state.options.get();
        state
            .kitchen
            .with(|kitchen| (field.get)(data, kitchen, options))
    };
    let figure = memo(move || T::read(source, &get));
    let changed = memo(move || {
        let saved = T::read_saved(source, &get);
        saved.is_some_and(|saved| figure.with(|now| *now != saved))
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        T::change(source, field.id, &|data| (field.set)(data, &text, options))
            .map_err(|error| error.sentence(options))
    };
    let unit = Signal::derive(move || (field.unit)(state.options.get()));
    view! { <NumberBox id=field.id label=text(field.label) unit figure changed store=Callback::new(store) /> }
}
