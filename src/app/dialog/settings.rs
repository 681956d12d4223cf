//! Settings: units, language, light or dark.

use leptos::prelude::*;

use crate::app::part::Choice;
use crate::app::state::{memo, use_app_state};
use crate::sheet::{Language, Settings, Theme, UnitSystem};
use crate::text::{format, tr};

/// How figures and pages are shown.
#[component]
pub fn SettingsDialog() -> impl IntoView {
    let state = use_app_state();
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
    let error = RwSignal::new("");
    let mut languages = vec![(None, tr!("the browser’s"))];
    languages.extend(Language::ALL.map(|language| (Some(language), language.own_name())));
    let numbers = move || format::plain(1234.5, 1, state.options.get().numbers);
    view! {
        <Choice
            id="units"
            label=tr!("Units")
            choices=vec![(UnitSystem::Grams, tr!("grams, °C")), (UnitSystem::Ounces, tr!("ounces, pounds, °F"))]
            selected=units
            on_select=set_units
        />
        <Choice
            id="language"
            label=tr!("Language")
            choices=languages
            selected=language
            on_select=move |chosen| state.choose_language(chosen, error)
        />
        <p class="error">{error}</p>
        <Choice
            id="theme"
            label=tr!("Light or dark")
            choices=vec![(Theme::Device, tr!("same as the device")), (Theme::Light, tr!("light")), (Theme::Dark, tr!("dark"))]
            selected=theme
            on_select=set_theme
        />
        <p class="quiet">{tr!("Numbers are written as this browser writes them: ")}{numbers}{tr!(". A comma or a point can be typed.")}</p>
        <p class="quiet">{tr!("Everything is saved in this browser only. Nothing leaves the device except what you share.")}</p>
    }
}
