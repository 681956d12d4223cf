//! The measures of the tin, and the layout of the formula in it.

use leptos::prelude::*;

use crate::app::part::{Choice, Field, FieldBox, FieldData, FieldError, NumberBox, no_unit};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::tin::{Tin, TinMeasure, TinRise};
use crate::sheet::TinUse;
use crate::text::{
    ErrorText, format, name, read, read::ReadError, tr, tr_noop, unit::ThicknessUnit,
};

/// The boxes of the tin.
#[component]
pub fn TinBoxes() -> impl IntoView {
    let state = use_app_state();
    let used = memo(move || state.with(|sheet| sheet.batch.tin));
    let measures = memo(move || {
        let measures = used
            .get()
            .map(|used| used.tins.tin.measures())
            .unwrap_or_default();
        measures
            .into_iter()
            .map(|(measure, _)| measure)
            .collect::<Vec<TinMeasure>>()
    });
    let can_have_lid = memo(move || used.get().is_some_and(|used| used.tins.tin.can_have_lid()));
    let lidded = memo(move || used.get().is_some_and(|used| used.tins.tin.lidded));
    let close = move |lid: bool| {
        change(state, |used| used.tins.tin = used.tins.tin.with_lid(lid));
    };
    view! {
        <div class="boxes">
            <For each=move || measures.get() key=|one| *one let(measure)>
                <MeasureBox measure />
            </For>
            <FieldBox field=COUNT />
            <FieldBox field=ROWS />
            <FieldBox field=ROOM />
            <FieldBox field=RISE />
        </div>
        <Show when=move || can_have_lid.get()>
            <Choice id="tin-lid" label=tr!("Lid") choices=vec![(false, tr!("open")), (true, tr!("with a lid"))] selected=lidded on_select=Callback::new(close) />
        </Show>
    }
}

/// Changes the tin, as one step.
fn change(state: AppState, change: impl FnOnce(&mut TinUse)) {
    state.edit(|sheet| {
        if let Some(used) = &mut sheet.batch.tin {
            change(used);
        }
    });
}

/// One measure of the tin.
#[component]
fn MeasureBox(
    /// Which.
    measure: TinMeasure,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("tin-{measure:?}").to_lowercase();
    let from = id.clone();
    let figure = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let used = sheet.batch.tin.as_ref();
            let tin = used.map(|used| used.tins.tin);
            tin.and_then(|tin| tin.measure(measure))
                .map(|length| format::box_thickness(length, options))
                .unwrap_or_default()
        })
    });
    let typing: StoredValue<Option<(Tin, Tin)>> = StoredValue::new(None);
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let length = read::optional(&text, options, read::thickness);
        let length = length.map_err(|error| error.sentence(options))?;
        let mut sheet = state.sheet();
        if let Some(used) = &mut sheet.batch.tin {
            // A digit on its way to a number is no measure: what it did to the bottom is undone.
            let from = typing.get_value().filter(|(_, now)| *now == used.tins.tin);
            let from = from.map_or(used.tins.tin, |(before, _)| before);
            let typed = from.with_typed(measure, length);
            let tin = typed.ok_or_else(|| ReadError::Empty.sentence(options))?;
            used.tins.tin = tin.map_err(|error| error.sentence(options))?;
            typing.set_value(Some((from, used.tins.tin)));
        }
        state.put(sheet, Some(&from));
        Ok(())
    };
    let unit = Signal::derive(move || ThicknessUnit::of(state.options.get().units).symbol());
    let called = name::tin_measure(measure);
    let may_follow = untrack(|| {
        state.with(|sheet| {
            let tin = sheet.batch.tin.map(|used| used.tins.tin);
            tin.is_some_and(|tin| tin.may_be_as_rim(measure))
        })
    });
    let label = if may_follow {
        tr!("{name}; empty: as the rim", name = called)
    } else {
        called.to_owned()
    };
    view! { <NumberBox id label unit figure store=Callback::new(store) /> }
}

impl FieldData for TinUse {
    type Source = AppState;
    type Error = ReadError;

    fn source() -> AppState {
        use_app_state()
    }

    fn read(state: AppState, get: &dyn Fn(&Self) -> String) -> String {
        let used = state.with(|sheet| sheet.batch.tin);
        used.as_ref().map(get).unwrap_or_default()
    }

    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        let mut sheet = state.sheet();
        if let Some(used) = &mut sheet.batch.tin {
            set(used)?;
        }
        state.put(sheet, Some(from));
        Ok(())
    }
}

const COUNT: Field<TinUse> = Field {
    id: "tin-count",
    label: tr_noop!("Tins"),
    unit: no_unit,
    get: |used, _, options| format::box_count(used.tins.count.get(), options),
    set: |used, text, options| {
        used.tins.count = read::count(text, options)?;
        Ok(())
    },
};

/// Empty leaves it to the tin.
const ROWS: Field<TinUse> = Field {
    id: "tin-rows",
    label: tr_noop!("Rows of pieces; empty: best fit"),
    unit: no_unit,
    get: |used, _, options| {
        used.rows
            .map(|rows| format::box_count(rows.get(), options))
            .unwrap_or_default()
    },
    set: |used, text, options| {
        used.rows = read::optional(text, options, read::count)?;
        Ok(())
    },
};

/// Empty leaves it to the kind of bread.
const ROOM: Field<TinUse> = Field {
    id: "tin-room",
    label: tr_noop!("Tin volume per gram; empty: usual"),
    unit: |_| "cm³",
    get: |used, _, options| {
        used.room
            .map(|room| format::box_room(room, options))
            .unwrap_or_default()
    },
    set: |used, text, options| {
        used.room = read::optional(text, options, read::room)?;
        Ok(())
    },
};

/// Empty leaves it to the bread and the tin.
const RISE: Field<TinUse> = Field {
    id: "tin-rise",
    label: tr_noop!("Rises to × its volume; empty: usual"),
    unit: |_| "×",
    get: |used, _, options| match used.rise {
        TinRise::Usual => String::new(),
        TinRise::Times(factor) => format::box_factor(factor, options),
    },
    set: |used, text, options| {
        let typed = read::optional(text, options, read::factor)?;
        used.rise = typed.map_or(TinRise::Usual, TinRise::Times);
        Ok(())
    },
};
