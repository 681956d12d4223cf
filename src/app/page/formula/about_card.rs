//! About the formula: its name, its kind of bread, the user's own words.

use leptos::prelude::*;

use crate::app::part::{AnswerRow, PickOne, TextBox};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::Bread;
use crate::sheet::Sheet;
use crate::text::{name, tr};

/// Name, kind of bread and note, behind a row.
#[component]
pub fn AboutCard() -> impl IntoView {
    let state = use_app_state();
    let answer = memo(move || state.with(|sheet| name::bread(sheet.bread).to_owned()));
    view! {
        <AnswerRow title=tr!("About it") answer>
            <div class="body">
                <AboutFields ids=["name", "bread", "note"] />
            </div>
        </AnswerRow>
    }
}

/// Name, kind of bread and note.
#[component]
pub fn AboutFields(
    /// The ids of the three boxes: the row and the dialog can be there at once.
    ids: [&'static str; 3],
) -> impl IntoView {
    let state = use_app_state();
    let words = memo(move || state.with(|sheet| sheet.name.clone()));
    let bread = memo(move || state.with(|sheet| sheet.bread));
    let note = memo(move || state.with(|sheet| sheet.note.clone()));
    let breads = Bread::ALL
        .map(|bread| (bread, name::bread(bread).to_owned()))
        .to_vec();
    let [name_id, bread_id, note_id] = ids;
    view! {
        <TextBox
            id=name_id
            label=tr!("Name")
            text=words
            on_input=move |typed| state.type_in("name", |sheet| sheet.name = typed)
            max_length=Sheet::NAME_LENGTH
        />
        <PickOne
            id=bread_id
            label=tr!("Kind of bread, which decides what is usual")
            choices=Signal::stored(breads)
            selected=bread
            on_select=move |bread| state.edit(|sheet| sheet.bread = bread)
        />
        <div class="text-box">
            <label for=note_id>{tr!("Note")}</label>
            <textarea
                id=note_id
                maxlength=Sheet::NOTE_LENGTH
                prop:value=note
                on:input:target=move |event| state.type_in("note", |sheet| sheet.note = event.target().value())
            ></textarea>
        </div>
    }
}
