//! Card: a titled sheet that follows at once while it is on the screen, else in the frame after.

use leptos::context::Provider;
use leptos::prelude::*;

use crate::app::state::use_app_state;

/// A titled sheet.
#[component]
pub fn Card(
    /// What it is about.
    title: &'static str,
    /// A remark beside the title.
    #[prop(optional)]
    aside: &'static str,
    /// Its content.
    children: Children,
) -> impl IntoView {
    let (state, card) = use_app_state().card_scope();
    let aside = (!aside.is_empty()).then(|| view! { <span class="quiet">{aside}</span> });
    view! {
        <Provider value=state>
            <section class="card" node_ref=card>
                <header>
                    <h2>{title}</h2>
                    {aside}
                </header>
                {children()}
            </section>
        </Provider>
    }
}
