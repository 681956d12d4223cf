//! The bake that came out well: its time, oven, mass and shape, or the usual one of the bread.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::{
    Button, Choice, Field, FieldBox, FieldData, FieldError, degrees, minutes, of_mass,
};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::BakedShape;
use crate::sheet::KnownBake;
use crate::text::{format, heat, name, read, read::ReadError, tr, tr_noop};

/// The boxes of the known bake.
#[component]
pub fn KnownBakeBoxes() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let shape = memo(move || known(context).map_or(BakedShape::Loaf, |known| known.baked_as()));
    let shapes = BakedShape::ALL
        .map(|shape| (shape, name::baked_shape(shape)))
        .to_vec();
    let set_shape = move |shape: BakedShape| {
        if let Some(known) = current(context) {
            let shape = Some(shape);
            state.edit(|sheet| sheet.heat.bake.known = Some(KnownBake { shape, ..known }));
        }
    };
    let is_usual = memo(move || state.with(|sheet| sheet.heat.bake.known.is_none()));
    let clear = move |()| {
        state.edit(|sheet| sheet.heat.bake.known = None);
    };
    let boxes = KNOWN.map(|field| view! { <FieldBox field /> });
    view! {
        <h3>{tr!("A bake that worked")}</h3>
        <div class="boxes">{boxes}</div>
        <Choice id="heat-known-shape" label=tr!("It baked") choices=shapes selected=shape on_select=Callback::new(set_shape) />
        <p class="quiet">{move || heat::known_bake(is_usual.get())}</p>
        <Show when=move || !is_usual.get()>
            <Button label=tr!("Use the usual bake of this bread") class="bare" on_tap=clear />
        </Show>
    }
}

/// The known bake, or the usual one.
fn known(context: HeatContext) -> Option<KnownBake> {
    context
        .results
        .with(|results| results.baking.as_ref().ok().map(|baking| baking.known))
}

/// The known bake as it is shown, with its shape written down, so that it is kept as typed.
fn current(context: HeatContext) -> Option<KnownBake> {
    let known = untrack(|| known(context))?;
    Some(KnownBake {
        shape: Some(known.baked_as()),
        ..known
    })
}

impl FieldData for KnownBake {
    type Source = (AppState, HeatContext);
    type Error = ReadError;

    fn source() -> Self::Source {
        (use_app_state(), HeatContext::from_context())
    }

    fn read((_, context): Self::Source, get: &dyn Fn(&Self) -> String) -> String {
        known(context).as_ref().map(get).unwrap_or_default()
    }

    fn change(
        (state, context): Self::Source,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        if let Some(mut known) = current(context) {
            set(&mut known)?;
            let mut sheet = state.sheet();
            sheet.heat.bake.known = Some(known);
            state.put(sheet, Some(from));
        }
        Ok(())
    }
}

const KNOWN: [Field<KnownBake>; 3] = [
    Field {
        id: "heat-known-minutes",
        label: tr_noop!("It took"),
        unit: minutes,
        get: |known, _, options| format::box_minutes(known.minutes, options),
        set: |known, text, options| {
            read::some_minutes(text, options).map(|read| known.minutes = read)
        },
    },
    Field {
        id: "heat-known-oven",
        label: tr_noop!("Oven, conventional equivalent"),
        unit: degrees,
        get: |known, _, options| format::box_temperature(known.oven, options),
        set: |known, text, options| read::temperature(text, options).map(|read| known.oven = read),
    },
    Field {
        id: "heat-known-piece",
        label: tr_noop!("Dough in the tin, or in a piece"),
        unit: of_mass,
        get: |known, _, options| format::box_mass(known.piece, options),
        set: |known, text, options| read::mass(text, options).map(|read| known.piece = read),
    },
];
