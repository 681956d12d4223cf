//! The numbers of a class that can be typed.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{Desk, State, memo};
use crate::engine::class::ClassWishes;
use crate::words::{Manner, Trouble, language::text, message, read, read::ReadError, write};

/// A number of the class.
#[derive(Clone, Copy)]
struct Field {
    id: &'static str,
    label: &'static str,
    unit: Option<&'static str>,
    look: fn(&ClassWishes, Manner) -> String,
    set: fn(&mut ClassWishes, &str, Manner) -> Result<(), ReadError>,
}

macro_rules! counted {
    ($id:literal, $label:expr, $($place:ident).+) => {
        Field {
            id: $id,
            label: $label,
            unit: Some(""),
            look: |wishes, manner| write::box_count(wishes.$($place).+.get(), manner),
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
            look: |wishes, manner| write::box_minutes(wishes.oven.$place, manner),
            set: |wishes, text, manner| {
                wishes.oven.$place = read::minutes(text, manner)?;
                Ok(())
            },
        }
    };
}

const FIELDS: [Field; 8] = [
    counted!("class-students", message!("Students in the room"), students),
    counted!("class-bench", message!("At one bench"), at_bench),
    counted!("class-loaves", message!("Loaves each"), loaves),
    Field {
        id: "class-loaf",
        label: message!("Dough for one loaf"),
        unit: None,
        look: |wishes, manner| write::box_mass(wishes.loaf, manner),
        set: |wishes, text, manner| {
            wishes.loaf = read::mass(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "class-shown",
        label: message!("Loaves the teacher makes"),
        unit: Some(""),
        look: |wishes, manner| write::box_count(wishes.shown, manner),
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
        message!("Loaves in the oven at once"),
        oven.places
    ),
    timed!("class-bake", message!("One load bakes"), bake),
    timed!("class-between", message!("Between two loads"), between),
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
    let desk = Desk::here();
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
