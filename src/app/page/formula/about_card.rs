//! About the formula: its name, its kind of bread, the user's own words.

use leptos::prelude::*;

use crate::app::part::{Card, PickOne, TextBox};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::Bread;
use crate::sheet::Sheet;
use crate::text::{name, tr};

/// Name, kind of bread and note.
#[component]
pub fn AboutCard() -> impl IntoView {
    let state = use_app_state();
    let words = memo(move || state.with(|sheet| sheet.name.clone()));
    let bread = memo(move || state.with(|sheet| sheet.bread));
    let note = memo(move || state.with(|sheet| sheet.note.clone()));
    let breads = Bread::ALL
        .map(|bread| (bread, name::bread(bread).to_owned()))
        .to_vec();
    view! {
        <Card title=tr!("About it")>
            <div class="body">
                <TextBox
                    id="name"
                    label=tr!("Name")
                    text=words
                    on_input=move |typed| state.type_in("name", |sheet| sheet.name = typed)
                    max_length=Sheet::NAME_LENGTH
                />
                <PickOne
                    id="bread"
                    label=tr!("Kind of bread, which decides what is usual")
                    choices=Signal::stored(breads)
                    selected=bread
                    on_select=move |bread| state.edit(|sheet| sheet.bread = bread)
                />
                <div class="text-box">
                    <label for="note">{tr!("Note")}</label>
                    <textarea
                        id="note"
                        maxlength=Sheet::NOTE_LENGTH
                        prop:value=note
                        on:input:target=move |event| state.type_in("note", |sheet| sheet.note = event.target().value())
                    ></textarea>
                </div>
            </div>
        </Card>
    }
}
