//! Number box: a labelled box for one number, which keeps the text as typed and says what is
//! wrong with it.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, memo, use_app_state};

/// What was typed, and what came of it.
#[derive(Clone, PartialEq)]
struct Typed {
    /// The text, never rewritten.
    text: String,
    /// The figure as it stood right after; none while the text cannot be taken.
    gave: Option<String>,
    /// What is in the way.
    trouble: String,
    /// How often the page had been settled by then; once more, and the text is forgotten.
    input_resets: u32,
}

impl Typed {
    /// Whether it is still what the box shows: nothing else has changed the figure since.
    fn current(&self, figure: &str, input_resets: u32) -> bool {
        self.input_resets == input_resets && self.gave.as_deref().is_none_or(|gave| gave == figure)
    }
}

/// The box's own memory.
#[derive(Clone, Copy)]
struct Memory {
    state: AppState,
    id: StoredValue<String>,
    figure: Signal<String>,
    take: Callback<String, Result<(), String>>,
    typed: RwSignal<Option<Typed>>,
}

impl Memory {
    fn new(id: &str, figure: Signal<String>, take: Callback<String, Result<(), String>>) -> Self {
        let state = use_app_state();
        let unread = state.unread_text(id).map(|(text, trouble)| Typed {
            text,
            gave: None,
            trouble,
            input_resets: state.input_resets.get_untracked(),
        });
        Self {
            state,
            id: StoredValue::new(id.to_owned()),
            figure,
            take,
            typed: RwSignal::new(unread),
        }
    }

    /// What it shows: what was typed while that stands, else the figure.
    fn text(self) -> String {
        let typed = self.standing(|typed| typed.text.clone());
        typed.unwrap_or_else(|| self.figure.get())
    }

    /// What is in the way of reading it; empty when nothing is.
    fn trouble(self) -> String {
        self.standing(|typed| typed.trouble.clone())
            .unwrap_or_default()
    }

    /// Something of what was typed, while that stands. A box nothing was typed into follows nothing.
    fn standing(self, look: fn(&Typed) -> String) -> Option<String> {
        self.typed.with(|typed| {
            let typed = typed.as_ref()?;
            let (figure, input_resets) = (self.figure.get(), self.state.input_resets.get());
            typed.current(&figure, input_resets).then(|| look(typed))
        })
    }

    /// The box is left: one that was left empty and means something shows what holds.
    fn leave(self) {
        self.state.end_step();
        let is_blank = self.typed.with_untracked(|typed| {
            typed
                .as_ref()
                .is_some_and(|typed| typed.text.trim().is_empty() && typed.trouble.is_empty())
        });
        if is_blank {
            self.typed.set(None);
        }
    }

    /// Takes a text as it was typed.
    fn read(self, text: String) {
        self.state.show_now();
        // The figure typed back as it is shown changes nothing, though more digits stand behind it.
        let is_same = !text.trim().is_empty() && text.trim() == self.figure.get_untracked();
        let taken = if is_same {
            Ok(())
        } else {
            let id = self.id.get_value();
            self.state.typed_in(&id, || self.take.run(text.clone()))
        };
        let trouble = taken.err().unwrap_or_default();
        if !trouble.is_empty() {
            announce(&trouble);
        }
        self.id
            .with_value(|id| self.state.note_unread(id, &text, &trouble));
        let gave = trouble.is_empty().then(|| self.figure.get_untracked());
        let input_resets = self.state.input_resets.get_untracked();
        self.typed.set(Some(Typed {
            text,
            gave,
            trouble,
            input_resets,
        }));
    }
}

/// A labelled box for one number with its unit inside.
///
/// Where figures are tied to each other, the box shows what was typed for as long as the figure
/// is the one it gave, and the figure itself once something else has changed it.
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
    /// The figure as it stands, written for a box.
    #[prop(into)]
    figure: Signal<String>,
    /// Reads a text and keeps what it says; or says why it cannot.
    #[prop(into)]
    take: Callback<String, Result<(), String>>,
    /// Whether a trial has changed it.
    #[prop(optional, into)]
    changed: Signal<bool>,
) -> impl IntoView {
    let own = Memory::new(&id, figure, take);
    let text = memo(move || own.text());
    let trouble = memo(move || own.trouble());
    let is_unread = move || trouble.with(|trouble| !trouble.is_empty());
    let trouble_id = format!("{id}-trouble");
    let described = trouble_id.clone();
    view! {
        <div class="number-box" class:changed=changed class:unread=is_unread>
            <label for=id.clone()>{label}</label>
            <label class="field" for=id.clone()>
                <input
                    id=id.clone()
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    prop:value=move || text.get()
                    aria-invalid=move || is_unread().then_some("true")
                    aria-describedby=move || is_unread().then(|| described.clone())
                    on:input:target=move |event| own.read(event.target().value())
                    on:change=move |_| own.leave()
                />
                <span class="unit">{unit}</span>
            </label>
            {move || is_unread().then(|| view! { <p class="trouble" id=trouble_id.clone()>{trouble.get()}</p> })}
        </div>
    }
}
