//! One ingredient of a part: its weight and its baker's percentage, either of which can be set.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{AppState, DialogKind, memo, use_app_state};
use crate::engine::formula::{LineAt, set_mass, set_percentage};
use crate::text::{ErrorText, LineTexts, LineWords, PartTexts, read, tr};

/// The texts of a part's card, and the part.
#[derive(Clone, Copy)]
pub struct CardTexts {
    part: usize,
    texts: Memo<PartTexts>,
}

impl CardTexts {
    /// Follows a part: one reader of the sheet for all numbers of a card.
    pub fn of(state: AppState, part: usize) -> Self {
        let texts = memo(move || {
            let saved = state.saved_in_trial();
            let (basis, options) = (state.basis.get(), state.options.get());
            PartTexts::of(&state.current(), saved.as_deref(), part, basis, options)
        });
        Self { part, texts }
    }

    /// Reads from the texts and follows them.
    pub fn with<T>(self, read: impl FnOnce(&PartTexts) -> T) -> T {
        self.texts.with(read)
    }

    /// A text of the card.
    pub fn text(self, select: fn(&PartTexts) -> &String) -> Signal<String> {
        Signal::derive(move || self.with(|card| select(card).clone()))
    }

    /// A number of a line.
    fn number(self, line: usize, select: fn(&LineTexts) -> &String) -> Signal<String> {
        Signal::derive(move || {
            self.with(|card| {
                card.lines
                    .get(line)
                    .map(select)
                    .cloned()
                    .unwrap_or_default()
            })
        })
    }
}

/// The lines of a part. They are drawn anew when the words of one change.
#[component]
pub fn LineRows(
    /// The texts of its card.
    card: CardTexts,
    /// Whether the percentages are left out.
    #[prop(optional)]
    weight_only: bool,
) -> impl IntoView {
    let state = use_app_state();
    let words =
        memo(move || state.with(|sheet| LineWords::of_part(sheet, card.part, state.options.get())));
    move || {
        let words = words.get().into_iter().enumerate();
        words
            .map(|(line, words)| line_row(card, line, words, weight_only))
            .collect::<Vec<_>>()
    }
}

/// One ingredient of a part; a tap on its name opens what can be done with it.
fn line_row(card: CardTexts, line: usize, words: LineWords, weight_only: bool) -> AnyView {
    let state = use_app_state();
    let at = LineAt {
        part: card.part,
        line,
    };
    let LineWords { food, note } = words;
    let changed = move || card.with(|card| card.lines.get(line).is_some_and(|own| own.is_changed));
    let percentage = (!weight_only).then(|| percent_box(card, at, &food));
    view! {
        <div class="line" class:one-box=weight_only class:changed=changed role="group" aria-label=food.clone()>
            <button type="button" class="food" aria-haspopup="dialog" on:click=move |_| state.open(DialogKind::Line(at))>
                <span class="name">{food.clone()}</span>
                <span class="said">{note}</span>
            </button>
            {mass_box(card, at, &food)}
            {percentage}
        </div>
    }
    .into_any()
}

fn mass_box(card: CardTexts, at: LineAt, food: &str) -> AnyView {
    let state = use_app_state();
    let id = format!("mass-{}-{}", at.part, at.line);
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| set_mass(formula, at, mass))
            .map_err(|error| error.sentence(options))
    };
    let label = tr!("{value}, weight", value = food);
    let unit = state.options.get_untracked().units.mass.symbol();
    let figure = card.number(at.line, |own| &own.mass);
    view! { <NumberBox id label unit figure store=Callback::new(store) /> }.into_any()
}

fn percent_box(card: CardTexts, at: LineAt, food: &str) -> AnyView {
    let state = use_app_state();
    let id = format!("percent-{}-{}", at.part, at.line);
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let basis = state.basis.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| set_percentage(formula, at, basis, share))
            .map_err(|error| error.sentence(options))
    };
    let label = tr!("{value}, baker’s percentage", value = food);
    let figure = card.number(at.line, |own| &own.percentage);
    view! { <NumberBox id label unit="%" figure store=Callback::new(store) /> }.into_any()
}
