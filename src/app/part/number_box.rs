//! Number box: a labelled box for one number, which keeps the text as typed and reports what is
//! wrong with it.

use leptos::prelude::*;

use super::box_text::BoxText;
use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, use_app_state};

/// A typed text and its effect.
#[derive(Clone, PartialEq)]
struct Typed {
    /// The text, never rewritten.
    text: String,
    /// The figure right after it was stored; none where the text is invalid.
    figure: Option<String>,
    /// Why the text is invalid; empty where it is valid.
    error: String,
    /// How often inputs had been reset by then; after another reset the text is forgotten.
    input_resets: u32,
}

impl Typed {
    /// Whether the box still shows it: nothing else has changed the figure since.
    fn is_current(&self, figure: &str, input_resets: u32) -> bool {
        let is_same = self.figure.as_deref().is_none_or(|own| own == figure);
        self.input_resets == input_resets && is_same
    }
}

/// The state of one box.
#[derive(Clone, Copy)]
struct BoxState {
    state: AppState,
    id: StoredValue<String>,
    figure: Signal<String>,
    store: Callback<String, Result<(), String>>,
    typed: RwSignal<Option<Typed>>,
}

impl BoxState {
    fn new(id: &str, figure: Signal<String>, store: Callback<String, Result<(), String>>) -> Self {
        let state = use_app_state();
        let invalid = state.invalid_text(id).map(|(text, error)| Typed {
            text,
            figure: None,
            error,
            input_resets: state.input_resets.get_untracked(),
        });
        Self {
            state,
            id: StoredValue::new(id.to_owned()),
            figure,
            store,
            typed: RwSignal::new(invalid),
        }
    }

    /// The text shown: the typed one while that is current, else the figure.
    fn text(self) -> String {
        let typed = self.current(|typed| typed.text.clone());
        typed.unwrap_or_else(|| self.figure.get())
    }

    /// Why the text is invalid; empty where it is valid.
    fn error(self) -> String {
        self.current(|typed| typed.error.clone())
            .unwrap_or_default()
    }

    /// Reads the typed text while that is current. Without one, nothing is followed.
    fn current(self, read: fn(&Typed) -> String) -> Option<String> {
        self.typed.with(|typed| {
            let typed = typed.as_ref()?;
            let (figure, input_resets) = (self.figure.get(), self.state.input_resets.get());
            typed.is_current(&figure, input_resets).then(|| read(typed))
        })
    }

    /// Ends the step when the box is left. One left empty, where that is valid, shows its default.
    fn leave(self) {
        self.state.end_step();
        // A box that is removed while it has the focus is left once it is gone.
        let is_blank = self.typed.try_with_untracked(|typed| {
            typed
                .as_ref()
                .is_some_and(|typed| typed.text.trim().is_empty() && typed.error.is_empty())
        });
        if is_blank == Some(true) {
            self.typed.set(None);
        }
    }

    /// Stores a text as it is typed.
    fn input(self, text: String) {
        self.state.show_now();
        // Typing the shown figure changes nothing, though the stored number has more digits.
        let is_same = text.trim() == self.figure.get_untracked();
        let stored = if is_same {
            Ok(())
        } else {
            let id = self.id.get_value();
            self.state.typed_in(&id, || self.store.run(text.clone()))
        };
        let error = stored.err().unwrap_or_default();
        if !error.is_empty() {
            announce(&error);
        }
        self.id
            .with_value(|id| self.state.note_invalid(id, &text, &error));
        self.typed.set(Some(Typed {
            text,
            figure: error.is_empty().then(|| self.figure.get_untracked()),
            error,
            input_resets: self.state.input_resets.get_untracked(),
        }));
    }
}

/// A labelled box for one number, with its unit inside.
///
/// It shows the typed text as long as the figure is the one which that gave, and the figure once
/// something else has changed it.
#[component]
pub fn NumberBox(
    /// Unique on the page, the same for the same box at each visit.
    #[prop(into)]
    id: String,
    /// What is asked for: "Bread flour, weight".
    #[prop(into)]
    label: Signal<String>,
    /// The unit, shown in the box.
    #[prop(into)]
    unit: Signal<&'static str>,
    /// The current figure, written for a box.
    #[prop(into)]
    figure: Signal<String>,
    /// Reads and stores a text, or returns the reason why it cannot.
    #[prop(into)]
    store: Callback<String, Result<(), String>>,
    /// Whether a trial has changed it.
    #[prop(optional, into)]
    changed: Signal<bool>,
) -> impl IntoView {
    let own = BoxState::new(&id, figure, store);
    let error_id = format!("{id}-error");
    view! {
        <div class="number-box" class:changed=changed>
            <label for=id.clone()>{label}</label>
            <label class="field" for=id.clone()>
                <input
                    id=id.clone()
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    enterkeyhint="next"
                    value=drawn_value(figure)
                    prop:value=move || BoxText(own.text())
                    aria-invalid=move || (!own.error().is_empty()).then_some("true")
                    aria-describedby=error_id.clone()
                    on:input:target=move |event| own.input(event.target().value())
                    on:change=move |_| own.leave()
                />
                <span class="unit">{unit}</span>
            </label>
            <p class="error" id=error_id.clone()>{move || own.error()}</p>
        </div>
    }
}

/// The figure as an attribute, for the first screen that the build draws; none in a browser, where the property holds it.
fn drawn_value(figure: Signal<String>) -> Option<String> {
    cfg!(not(target_arch = "wasm32")).then(|| figure.get_untracked())
}
