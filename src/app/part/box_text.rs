//! Box text: what a box shows, written to the browser only where that shows something else.

use leptos::tachys::html::property::IntoProperty;
use leptos::web_sys::{Element, HtmlInputElement};
use wasm_bindgen::JsCast;

/// The text of a box. A box that is set to what it shows already is laid out again, and its caret is
/// looked up, for nothing.
#[derive(Clone)]
pub(super) struct BoxText(pub(super) String);

impl BoxText {
    fn write(&self, element: &Element) {
        let Some(input) = element.dyn_ref::<HtmlInputElement>() else {
            return;
        };
        // The box that is typed into shows it before the page knows.
        if input.value() != self.0 {
            input.set_value(&self.0);
        }
    }
}

impl IntoProperty for BoxText {
    type State = (Element, String);
    type Cloneable = Self;
    type CloneableOwned = Self;

    fn hydrate<const FROM_SERVER: bool>(self, element: &Element, key: &str) -> Self::State {
        self.build(element, key)
    }

    fn build(self, element: &Element, _: &str) -> Self::State {
        self.write(element);
        (element.clone(), self.0)
    }

    fn rebuild(self, (element, shown): &mut Self::State, _: &str) {
        if *shown != self.0 {
            self.write(element);
            *shown = self.0;
        }
    }

    fn into_cloneable(self) -> Self::Cloneable {
        self
    }

    fn into_cloneable_owned(self) -> Self::CloneableOwned {
        self
    }
}
