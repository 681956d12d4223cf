//! The numbers of a class that can be typed.

use leptos::prelude::*;

use crate::app::part::{Field, FieldBox, FieldData, FieldError, minutes, no_unit, of_mass};
use crate::app::state::WorkspaceStore;
use crate::engine::class::ClassSettings;
use crate::text::{format, read, read::ReadError, tr_noop};

impl FieldData for ClassSettings {
    type Source = WorkspaceStore;
    type Error = ReadError;

    fn source() -> WorkspaceStore {
        WorkspaceStore::from_context()
    }

    fn read(workspace: WorkspaceStore, get: &dyn Fn(&Self) -> String) -> String {
        get(&workspace.class())
    }

    fn change(
        workspace: WorkspaceStore,
        _: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        let mut settings = workspace.settings.get_untracked();
        set(&mut settings)?;
        workspace.settings.change(|saved| *saved = settings);
        Ok(())
    }
}

macro_rules! counted {
    ($id:literal, $label:expr, $($place:ident).+) => {
        Field {
            id: $id,
            label: $label,
            unit: no_unit,
            get: |settings, _, options| format::box_count(settings.$($place).+.get(), options),
            set: |settings, text, options| {
                settings.$($place).+ = read::count(text, options)?;
                Ok(())
            },
        }
    };
}

const FIELDS: [Field<ClassSettings>; 7] = [
    counted!("class-students", tr_noop!("Students in the room"), students),
    counted!("class-bench", tr_noop!("At one bench"), at_bench),
    counted!("class-loaves", tr_noop!("Loaves each"), loaves),
    Field {
        id: "class-loaf",
        label: tr_noop!("Dough for one loaf"),
        unit: of_mass,
        get: |settings, _, options| {
            if settings.of_batch {
                format::box_own_mass(settings.loaf, options)
            } else {
                format::box_mass(settings.loaf, options)
            }
        },
        set: |settings, text, options| {
            *settings = settings.with_loaf(read::mass(text, options)?);
            Ok(())
        },
    },
    Field {
        id: "class-shown",
        label: tr_noop!("Loaves the teacher makes"),
        unit: no_unit,
        get: |settings, _, options| format::box_count(settings.shown, options),
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
    Field {
        id: "class-between",
        label: tr_noop!("Between two loads"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.oven.between, options),
        set: |settings, text, options| {
            settings.oven.between = read::minutes(text, options)?;
            Ok(())
        },
    },
];

/// The boxes of the class.
#[component]
pub fn ClassBoxes() -> impl IntoView {
    let boxes = FIELDS.map(|field| view! { <FieldBox field /> });
    view! { <div class="boxes">{boxes}</div> }
}
