//! The numbers of a class that can be typed.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::engine::class::ClassSettings;
use crate::text::{FormatOptions, Trouble, format, language::text, read, read::ReadError, tr_noop};

/// A number of the class.
#[derive(Clone, Copy)]
struct Field {
    id: &'static str,
    label: &'static str,
    unit: Option<&'static str>,
    look: fn(&ClassSettings, FormatOptions) -> String,
    set: fn(&mut ClassSettings, &str, FormatOptions) -> Result<(), ReadError>,
}

macro_rules! counted {
    ($id:literal, $label:expr, $($place:ident).+) => {
        Field {
            id: $id,
            label: $label,
            unit: Some(""),
            look: |settings, options| format::box_count(settings.$($place).+.get(), options),
            set: |settings, text, options| {
                settings.$($place).+ = read::count(text, options)?;
                Ok(())
            },
        }
    };
}

macro_rules! timed {
    ($id:literal, $label:expr, $place:ident) => {
        Field {
            id: $id,
            label: $label,
            unit: Some("min"),
            look: |settings, options| format::box_minutes(settings.oven.$place, options),
            set: |settings, text, options| {
                settings.oven.$place = read::minutes(text, options)?;
                Ok(())
            },
        }
    };
}

const FIELDS: [Field; 8] = [
    counted!("class-students", tr_noop!("Students in the room"), students),
    counted!("class-bench", tr_noop!("At one bench"), at_bench),
    counted!("class-loaves", tr_noop!("Loaves each"), loaves),
    Field {
        id: "class-loaf",
        label: tr_noop!("Dough for one loaf"),
        unit: None,
        look: |settings, options| format::box_mass(settings.loaf, options),
        set: |settings, text, options| {
            settings.loaf = read::mass(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "class-shown",
        label: tr_noop!("Loaves the teacher makes"),
        unit: Some(""),
        look: |settings, options| format::box_count(settings.shown, options),
        set: |settings, text, options| {
            settings.shown = match text.trim() {
                "0" => 0,
                text => read::count(text, options)?.get(),
            };
            Ok(())
        },
    },
    counted!(
        "class-places",
        tr_noop!("Loaves in the oven at once"),
        oven.places
    ),
    timed!("class-bake", tr_noop!("One load bakes"), bake),
    timed!("class-between", tr_noop!("Between two loads"), between),
];

/// The boxes of the class.
#[component]
pub fn ClassBoxes() -> impl IntoView {
    let boxes = FIELDS.map(|field| view! { <WishBox field /> });
    view! { <div class="boxes">{boxes}</div> }
}

#[component]
fn WishBox(
    /// Which number.
    field: Field,
) -> impl IntoView {
    let state = use_app_state();
    let desk = WorkspaceStore::here();
    let figure = memo(move || {
        let options = state.options.get();
        desk.settings
            .with(|settings| (field.look)(settings, options))
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let mut settings = desk.settings.get_untracked();
        (field.set)(&mut settings, &text, options).map_err(|error| error.sentence(options))?;
        desk.set_wishes(settings);
        Ok(())
    };
    let unit = Signal::derive(move || {
        field
            .unit
            .unwrap_or_else(|| state.options.get().units.mass.symbol())
    });
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}
