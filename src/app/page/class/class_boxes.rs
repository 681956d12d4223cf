//! The numbers of a class that can be typed.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{WorkspaceStore, State, memo};
use crate::engine::class::ClassSettings;
use crate::text::{FormatOptions, Trouble, language::text, tr_noop, read, read::ReadError, format};

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
            look: |wishes, manner| format::box_count(wishes.$($place).+.get(), manner),
            set: |wishes, text, manner| {
                wishes.$($place).+ = read::count(text, manner)?;
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
            look: |wishes, manner| format::box_minutes(wishes.oven.$place, manner),
            set: |wishes, text, manner| {
                wishes.oven.$place = read::minutes(text, manner)?;
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
        look: |wishes, manner| format::box_mass(wishes.loaf, manner),
        set: |wishes, text, manner| {
            wishes.loaf = read::mass(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "class-shown",
        label: tr_noop!("Loaves the teacher makes"),
        unit: Some(""),
        look: |wishes, manner| format::box_count(wishes.shown, manner),
        set: |wishes, text, manner| {
            wishes.shown = match text.trim() {
                "0" => 0,
                text => read::count(text, manner)?.get(),
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
    let state = State::here();
    let desk = WorkspaceStore::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        desk.wishes.with(|wishes| (field.look)(wishes, manner))
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mut wishes = desk.wishes.get_untracked();
        (field.set)(&mut wishes, &text, manner).map_err(|error| error.sentence(manner))?;
        desk.set_wishes(wishes);
        Ok(())
    };
    let unit = Signal::derive(move || {
        field
            .unit
            .unwrap_or_else(|| state.manner.get().units.mass.symbol())
    });
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}
