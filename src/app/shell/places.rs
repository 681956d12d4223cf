//! The bar of places: at the bottom of a phone, a rail on a wide screen.

use leptos::prelude::*;

use crate::app::part::{Icon, Picture};
use crate::app::state::use_app_state;
use crate::sheet::Place;
use crate::storage::Fragment;
use crate::text::{name, tr};

/// The icon of a place.
const fn picture(place: Place) -> Picture {
    match place {
        Place::Formula => Picture::Formula,
        Place::Batch => Picture::Batch,
        Place::Heat => Picture::Heat,
        Place::Chocolate => Picture::Chocolate,
        Place::Day => Picture::Day,
    }
}

/// The places that there are, as links.
#[component]
pub fn Places() -> impl IntoView {
    let state = use_app_state();
    let links = Place::ALL
        .into_iter()
        .map(|place| {
            let current = move || (state.place.get() == place).then_some("page");
            view! {
                <li>
                    <a class="place" href=Fragment::Place(place).write() aria-current=current>
                        <Icon picture=picture(place) />
                        {name::place(place)}
                    </a>
                </li>
            }
        })
        .collect_view();
    view! {
        <nav class="places" aria-label=tr!("Places")>
            <ul>{links}</ul>
        </nav>
    }
}
