//! Icons: small line drawings of our own, each one path.

use leptos::prelude::*;

/// What an icon shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Picture {
    /// Lines of a formula, one of them with its weight.
    Formula,
    /// A tin with pieces in it.
    Batch,
    /// A thermometer.
    Heat,
    /// A drop falling off a spoon.
    Chocolate,
    /// A kitchen clock.
    Day,
    /// Boxes on a shelf.
    Shelf,
    /// A sheet with an arrow: share.
    Share,
    /// Two sliders.
    Settings,
    /// Back a step.
    Undo,
    /// Forward a step.
    Redo,
    /// Away.
    Close,
    /// One more.
    Add,
    /// To the bin.
    Remove,
    /// More about this.
    More,
}

impl Picture {
    /// The outline, on a field of 24 by 24.
    const fn outline(self) -> &'static str {
        match self {
            Self::Formula => "M4 6h10M4 12h7M4 18h10M18 6h2M15 12h5M18 18h2",
            Self::Batch => "M3 9h18l-2 10H5zM9 9v10M15 9v10M3 9q3-4 6 0q3-4 6 0q3-4 6 0",
            Self::Heat => "M10 14V5a2.5 2.5 0 0 1 5 0v9a4.5 4.5 0 1 1-5 0zM12.5 9v8M18 6h2M18 10h2",
            Self::Chocolate => {
                "M20 3 11 12M11 12a3.5 3.5 0 1 1-5-1q3-2 5 1zM17 15q3 4 0 5.5q-3-1.5 0-5.5z"
            }
            Self::Day => "M4 13a8 8 0 1 0 16 0a8 8 0 1 0-16 0M12 8v5l3 3M9 3h6",
            Self::Shelf => "M3 20h18M3 11h18M5 11V5h5v6M13 11V7h5v4M6 20v-5h7v5M16 20v-6h3v6",
            Self::Share => "M6 10H5v10h14V10h-1M12 15V3M8 7l4-4 4 4",
            Self::Settings => "M4 8h8M17 8h3M4 16h3M12 16h8M14.5 5.5v5M9.5 13.5v5",
            Self::Undo => "M9 5 4 10l5 5M4 10h10a5 5 0 0 1 0 10h-3",
            Self::Redo => "M15 5l5 5-5 5M20 10H10a5 5 0 0 0 0 10h3",
            Self::Close => "M6 6l12 12M18 6 6 18",
            Self::Add => "M12 5v14M5 12h14",
            Self::Remove => "M5 7h14M9 7V4h6v3M7 7l1 13h8l1-13M10.5 11v5M13.5 11v5",
            Self::More => "M6 12h.01M12 12h.01M18 12h.01",
        }
    }
}

/// An icon; the label beside it says what it means.
#[component]
pub fn Icon(
    /// Its content.
    picture: Picture,
) -> impl IntoView {
    view! {
        <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
            <path d=picture.outline() />
        </svg>
    }
}
