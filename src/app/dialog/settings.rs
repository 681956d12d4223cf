//! Settings: units, language, light or dark.

use leptos::prelude::*;

use crate::app::part::Choice;
use crate::app::state::{State, memo};
use crate::sheet::{Language, Settings, Theme, Units};
use crate::words::{say, write};

/// How figures and pages are shown.
#[component]
pub fn SettingsDialog() -> impl IntoView {
    let state = State::here();
    let units = memo(move || state.settings.get().units);
    let theme = memo(move || state.settings.get().theme);
    let set_units = move |units| {
        let settings = state.settings.get_untracked();
        state.set_settings(Settings { units, ..settings });
    };
    let set_theme = move |theme| {
        let settings = state.settings.get_untracked();
        state.set_settings(Settings { theme, ..settings });
    };
    let language = memo(move || state.settings.get().language);
    let trouble = RwSignal::new("");
    let mut languages = vec![(None, say!("the browser’s"))];
    languages.extend(Language::ALL.map(|language| (Some(language), language.own_name())));
    let numbers = move || write::plain(1234.5, 1, state.manner.get().numbers);
    view! {
        <Choice
            id="units"
            label=say!("Units")
            answers=vec![(Units::Grams, say!("grams, °C")), (Units::Ounces, say!("ounces, pounds, °F"))]
            holds=units
            chosen=set_units
        />
        <Choice
            id="language"
            label=say!("Language")
            answers=languages
            holds=language
            chosen=move |chosen| state.choose_language(chosen, trouble)
        />
        <p class="trouble">{trouble}</p>
        <Choice
            id="theme"
            label=say!("Light or dark")
            answers=vec![(Theme::Device, say!("as the device")), (Theme::Light, say!("light")), (Theme::Dark, say!("dark"))]
            holds=theme
            chosen=set_theme
        />
        <p class="quiet">{say!("Numbers are written as this browser writes them: ")}{numbers}{say!(". A comma or a point can be typed.")}</p>
        <p class="quiet">{say!("Everything is kept in this browser only. Nothing leaves the device but what you hand out.")}</p>
    }
}
