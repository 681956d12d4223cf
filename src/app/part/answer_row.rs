//! Answer row: a section that says its answer in one line and opens to its boxes, picture and working.

use std::collections::BTreeMap;

use leptos::prelude::*;

use crate::app::browser::screen;
use crate::app::state::{AppState, use_app_state};

/// How the answer of a row stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Verdict {
    /// A fact.
    #[default]
    Plain,
    /// It passes.
    Good,
    /// Something has to be done: the row is open when its place is opened.
    Wrong,
}

impl Verdict {
    /// The value of the attribute that style/ reads.
    const fn as_str(self) -> &'static str {
        match self {
            Self::Plain => "plain",
            Self::Good => "good",
            Self::Wrong => "wrong",
        }
    }
}

/// The rows that the user opened or closed, by their titles, as long as the page is open.
#[derive(Clone, Copy)]
struct OpenRows(StoredValue<BTreeMap<String, bool>>);

impl OpenRows {
    fn of(_: AppState) -> Self {
        Self(StoredValue::new(BTreeMap::new()))
    }

    fn from_context() -> Self {
        use_app_state().page_singleton(Self::of)
    }
}

/// A section that says its answer in one line; its content is drawn while it is open.
///
/// On a wide screen every row that is not `tucked` is open at first.
#[component]
pub fn AnswerRow(
    /// What it is about.
    #[prop(into)]
    title: Signal<String>,
    /// Its answer: one short sentence with its figures.
    #[prop(into)]
    answer: Signal<String>,
    /// How the answer stands.
    #[prop(optional, into)]
    verdict: Signal<Verdict>,
    /// Whether it is closed at first on a wide screen, too: it is long, and few need it at each visit.
    #[prop(optional)]
    tucked: bool,
    /// The fragment of links to it.
    #[prop(optional)]
    id: &'static str,
    /// Its content.
    children: ChildrenFn,
) -> impl IntoView {
    let rows = OpenRows::from_context();
    let name = title.get_untracked();
    let set_by_user = rows.0.with_value(|rows| rows.get(&name).copied());
    let at_first = set_by_user.unwrap_or_else(|| {
        (screen::is_wide() && !tucked) || verdict.get_untracked() == Verdict::Wrong
    });
    let is_open = RwSignal::new(at_first);
    // The browser reports the opening of a row that is drawn open, too: that is not the user's.
    let toggled = move |event: leptos::ev::Event| {
        let now = event_target::<web_sys::HtmlElement>(&event).has_attribute("open");
        if now != is_open.get_untracked() {
            rows.0.update_value(|rows| {
                rows.insert(title.get_untracked(), now);
            });
            is_open.set(now);
        }
    };
    view! {
        <section class="card answer" aria-label=title id=(!id.is_empty()).then_some(id) data-verdict=move || verdict.get().as_str()>
            <details open=at_first on:toggle=toggled>
                <summary>
                    <h2>{title}</h2>
                    <p class="follows">{answer}</p>
                </summary>
                <Show when=move || is_open.get()>{children()}</Show>
            </details>
        </section>
    }
}
